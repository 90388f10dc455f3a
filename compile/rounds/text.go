package rounds

import (
	"bytes"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// MaxText is how many bytes the text of an entry has at most. A calendar program
// that keeps less than what it was sent would do so in silence (8,192 characters
// is the least that we remember of any; no source), so that we say it ourselves.
const MaxText = 8000

// more ends a text that is longer than that, and cutShort a part of it.
const (
	more     = "\nMore than fits here: split this round.\n"
	cutShort = " …\n"
)

// Text appends the body of a calendar entry for the round on one day. Every
// enclosure is named in it, whatever their number, unless it would grow past
// MaxText.
func (r *Round) Text(dst []byte, on int) []byte {
	start, end := len(dst), r.end(on)
	limit := MaxText - len(end)
	dst = r.write(dst, on, limit)
	if r.day.full {
		dst = r.shortened(dst[:start], on, limit)
	}
	if len(dst) > start {
		dst = append(dst, end...)
	}
	return dst
}

// end is the last line of a text.
func (r *Round) end(on int) string {
	return "\nAbout " + strconv.Itoa(max(1, r.Minutes(on))) + " min"
}

// cut shortens text to at most n bytes, between words: half a name may be another.
func cut(text []byte, n int) []byte {
	if i := bytes.LastIndexAny(text[:n], " \n"); i >= 0 {
		n = i
	}
	return text[:n]
}

// TooLong returns the day with the longest text among those on which it does not
// fit into an entry, and how many bytes it has; ok reports whether there is one.
// Days that cannot come near it are not written.
func (r *Round) TooLong() (on, length int, ok bool) {
	var text []byte
	r.day.lengths = r.measure()
	defer func() { r.day.lengths = nil }()
	near := false // where one day comes near it most do, and writing costs no more than counting
	for i := r.Days.Next(0); i >= 0; i = r.Days.Next(i + 1) {
		if near = near || r.atMost(i) > MaxText; !near {
			continue
		}
		text = r.write(text[:0], i, 1<<30)
		if n := len(text) + len(r.end(i)); n > MaxText && n > length {
			on, length, ok = i, n, true
		}
	}
	return on, length, ok
}

// atMost is no less than the length of a day's text, found by counting.
func (r *Round) atMost(on int) int {
	const head, mark = 64, 16 // what stands between the words: headings, commas
	n, labels := head+r.showsLength(on), 0
	for i, room := range r.room {
		if i == 0 || room != r.room[i-1] {
			labels += len(r.sections[room].label) + mark
		}
	}
	for i := range r.holds {
		h := &r.holds[i]
		n += len(h.text) + len(h.group) + mark
		for k := range h.spans {
			n += len(r.names[h.spans[k].place].text) + mark
		}
	}
	for i := range r.cautions {
		if c := &r.cautions[i]; c.line.count(on) > 0 {
			n += len(c.text) + mark + labels
			for _, k := range c.kinds {
				n += len(k.Short()) + mark
			}
			c.line.each(on, func(c *cell) { n += len(r.names[c.place].text) + mark })
		}
	}
	for i := range r.sections {
		n += len(r.sections[i].title) + mark
	}
	for i := range r.lines {
		l := &r.lines[i]
		if due := l.count(on); due > 0 {
			t := &r.tasks[l.task]
			longest := len(t.text) + mark
			if t.common || t.high || t.leaving || r.sections[l.section].byTask {
				n += longest + labels
			} else {
				n += due * longest
			}
			l.each(on, func(c *cell) { n += len(r.names[c.place].text) + mark })
		}
	}
	return n
}

// Summary appends the title of a calendar entry: what is more than routine first,
// since a month shows twelve letters of it, in the order in which it is done; the
// round last, since its time says which it is. On a day of routine that is named.
//
//	1 FIRST, feed 4, clean 2, 1 held · Evening round
//	Look, water · Evening round
//
// Where a rota says whose the day is, who does it stands behind the round.
func (r *Round) Summary(dst []byte, on int) []byte {
	start := len(dst)
	say := func(n int, word string) {
		if len(dst) > start {
			dst = append(dst, ", "...)
		}
		if n > 0 {
			dst = strconv.AppendInt(dst, int64(n), 10)
		}
		dst = append(dst, word...)
	}
	pressing, filled, kinds := r.tally(on)
	if pressing > 0 {
		say(pressing, " FIRST")
	}
	routine := filled == 0
	if !routine {
		say(0, "fill up ")
		dst = strconv.AppendInt(dst, int64(filled), 10)
	}
	for i, k := range r.kinds {
		if kinds[i] > 0 && !k.Routine {
			routine = false
			if k.Phrase == "" {
				r.other(say, on, i, kinds[i])
				continue
			}
			say(0, k.Short())
			dst = append(dst, ' ')
			dst = strconv.AppendInt(dst, int64(kinds[i]), 10)
		}
	}
	for i, k := range r.kinds {
		if kinds[i] > 0 && routine {
			say(0, k.Short())
		}
	}
	if n := r.heldPlaces(on); n > 0 {
		say(n, " held")
	}
	if c := dst[start]; 'a' <= c && c <= 'z' {
		dst[start] -= 'a' - 'A'
	}
	dst = append(dst, " · "...)
	dst = append(dst, flat(r.Plan.Shown())...)
	if r.by != nil {
		dst = append(append(dst, ", "...), flat(r.by(on))...)
	}
	return dst
}

// other says how many there are of a kind that has no words of its own: by the first
// words of its task, or as so many more where there are several tasks.
func (r *Round) other(say func(int, string), on, kind, n int) {
	word := ""
	for i := range r.tasks {
		if t := &r.tasks[i]; t.kind == kind && !t.high && !t.leaving && t.count(on) > 0 {
			w := begins(r.items[t.lines[0].cells[0].item].Phrase)
			if word != "" && w != word {
				word = ""
				break
			}
			word = w
		}
	}
	if word == "" {
		say(n, " more")
	} else {
		say(0, word+" "+strconv.Itoa(n))
	}
}

// maxWords is how many bytes of a task stand in a summary.
const maxWords = 16

// dangling are words with which what is cut short does not end.
var dangling = []string{"a", "an", "and", "at", "by", "each", "for", "from", "if", "in", "is", "it", "its", "of", "or", "that", "the", "to", "what", "with"}

// begins returns the first words of a task, as they stand within a summary. It is empty
// where not even the first word is short enough.
func begins(task string) string {
	task = strings.TrimSpace(flat(task))
	if i := strings.IndexAny(task, ".,;:?!("); i >= 0 {
		task = task[:i]
	}
	out := ""
	for word := range strings.FieldsSeq(task) {
		if len(out)+1+len(word) > maxWords {
			break
		}
		out = strings.TrimSpace(out + " " + word)
	}
	out = strings.TrimSpace(out)
	for { // "take out what is" says less than "take out"
		i := strings.LastIndexByte(out, ' ')
		if i < 0 || !slices.Contains(dangling, strings.ToLower(out[i+1:])) {
			break
		}
		out = out[:i]
	}
	if r, n := utf8.DecodeRuneInString(out); n < len(out) && 'a' <= out[n] && out[n] <= 'z' {
		return string(unicode.ToLower(r)) + out[n:]
	}
	return out
}

// tally counts what is done before everything else, at how many enclosures that is
// filled up before leaving, and at how many there is something of each of the
// round's kinds.
func (r *Round) tally(on int) (pressing, filled int, kinds []int) {
	d := &r.day
	clear(d.seen)
	clear(d.kinds)
	for i := range r.tasks {
		t := &r.tasks[i]
		switch {
		case t.high:
			pressing += t.count(on)
		case t.leaving:
			filled += t.count(on)
		case r.kinds[t.kind].Routine:
			d.kinds[t.kind] += t.count(on)
		default:
			for k := range t.lines {
				t.lines[k].each(on, func(c *cell) {
					if bit := uint64(1) << t.kind; d.seen[c.place]&bit == 0 {
						d.seen[c.place] |= bit
						d.kinds[t.kind]++
					}
				})
			}
		}
	}
	return pressing, filled, d.kinds
}

// heldPlaces returns at how many enclosures care is not as usual, for the state of the
// animals.
func (r *Round) heldPlaces(on int) int {
	if len(r.holds) == 0 {
		return 0
	}
	d := &r.day
	clear(d.seen)
	n := 0
	for i := range r.holds {
		if r.holds[i].team {
			continue
		}
		for _, p := range r.holds[i].places(on, d.due[:0]) {
			n += 1 - int(d.seen[p])
			d.seen[p] = 1
		}
	}
	return n
}
