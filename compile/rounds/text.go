package rounds

import (
	"strconv"
	"unicode/utf8"

	"vivary/schema"
)

// MaxText is the length in bytes that the text of a round is kept to, however
// many enclosures it passes.
const MaxText = 1500

// Text is the body of a calendar entry for a round on one day. Its lines are
// written straight from the round, since a year of rounds for many rooms is most
// of what a build writes.
//
// Where the text would grow past MaxText, the lines with most names give numbers
// instead; the list of what is due and the printed sheet have the names.
func (r *Round) Text(dst []byte, day int) []byte {
	start := len(dst)
	dst = r.body(dst, day, 1<<30)
	for names := 24; len(dst)-start > MaxText && names >= 0; names = names*2/3 - 1 {
		dst = r.body(dst[:start], day, names)
	}
	if len(dst)-start > MaxText {
		dst = cut(dst, start+MaxText-len(more))
		dst = append(dst, more...)
	}
	return dst
}

// more ends a text whose words alone are too long.
const more = "…\nMore than fits here: see vivary due"

// cut shortens text to at most n bytes, between characters.
func cut(text []byte, n int) []byte {
	for n > 0 && !utf8.RuneStart(text[n]) {
		n--
	}
	return text[:n]
}

// body appends the text with at most so many names in a line.
func (r *Round) body(dst []byte, day, names int) []byte {
	start := len(dst)
	held := 0
	for k := range r.holds {
		h := &r.holds[k]
		if h.from > day || day >= h.until {
			continue
		}
		if held++; held <= max(4, names) {
			dst = append(dst, h.text...)
			dst = append(dst, '\n')
		}
	}
	if extra := held - max(4, names); extra > 0 {
		dst = append(dst, "and "...)
		dst = strconv.AppendInt(dst, int64(extra), 10)
		dst = append(dst, " more holds: see vivary due\n"...)
	}
	if held > 0 {
		dst = append(dst, '\n')
	}
	minutes, lasts := 0, false
	r.walk(day, func(x run) {
		first := &r.items[x.from]
		minutes += x.minutes
		if first.last && !lasts {
			lasts = true
			dst = append(dst, "\nLast, with tools of their own:\n"...)
		}
		if first.high {
			dst = append(dst, "FIRST: "...)
		} else {
			dst = append(dst, "- "...)
		}
		dst = append(dst, first.text...)
		dst = append(dst, ": "...)
		switch {
		case r.all(&x, day):
			dst = append(dst, "all "...)
			dst = strconv.AppendInt(dst, int64(x.boxes), 10)
		case x.stops > names:
			dst = strconv.AppendInt(dst, int64(x.boxes), 10)
			dst = append(dst, " of "...)
			dst = strconv.AppendInt(dst, int64(r.part(first.last, day)), 10)
			dst = append(dst, ", see vivary due"...)
		default:
			dst = r.names(dst, x, day)
		}
		dst = append(dst, '\n')
	})
	if len(dst) > start {
		dst = append(dst, "\nAbout "...)
		dst = strconv.AppendInt(dst, int64(max(1, minutes)), 10)
		dst = append(dst, " min"...)
	}
	return dst
}

func (r *Round) names(dst []byte, x run, day int) []byte {
	r.stops(x.line, day, func(i, last int) {
		if last >= 0 {
			dst = append(dst, ", "...)
		}
		it := &r.items[i]
		dst = append(dst, it.target...)
		if it.total != "" {
			dst = append(dst, ' ')
			dst = append(dst, it.total...)
		}
	})
	return dst
}

// Summary is the title of a calendar entry: the round, and what is more than
// routine in it, in the order in which it is done.
func (r *Round) Summary(dst []byte, day int) []byte {
	dst = append(dst, r.Plan.Shown()...)
	said, pressing := 0, 0
	say := func(n int, before, after string) {
		if said++; said == 1 {
			dst = append(dst, ": "...)
		} else {
			dst = append(dst, ", "...)
		}
		dst = append(dst, before...)
		dst = strconv.AppendInt(dst, int64(n), 10)
		dst = append(dst, after...)
	}
	var kinds [4]struct {
		kind  *schema.CareKind
		count int
	}
	used := 0
	r.walk(day, func(x run) {
		first := &r.items[x.from]
		if first.high {
			pressing += x.stops
			return
		}
		if first.kind.Routine {
			return
		}
		// What is kept apart comes last with kinds that were there before.
		for k := range kinds {
			if k == used {
				kinds[k].kind = first.kind
				used++
			}
			if kinds[k].kind == first.kind {
				kinds[k].count += x.stops
				return
			}
		}
	})
	for _, k := range kinds[:used] {
		say(k.count, k.kind.Name+" ", "")
	}
	if pressing > 0 {
		say(pressing, "", " pressing")
	}
	held := 0
	for k := range r.holds {
		if h := &r.holds[k]; h.from <= day && day < h.until {
			held++
		}
	}
	if held > 0 {
		say(held, "", " held")
	}
	return dst
}
