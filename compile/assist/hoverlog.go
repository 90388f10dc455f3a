package assist

import (
	"strings"

	"vivary/schema"
	"vivary/schema/quantity"
)

// hoverLog explains a word of a line of a log.
func (p *Page) hoverLog(at int) (start, end int, markdown string) {
	l := p.logLine(at + 1)
	if l.noted {
		return 0, 0, ""
	}
	whole := string(p.Text[l.from:l.to])
	switch l.next {
	case aDay:
		markdown = p.date(whole)
	case aWriter, aKeeper:
		markdown = p.about("keeper", whole)
	case aHead, aBy, aPlace:
		markdown = p.place(whole)
	case aSubject, aWord:
		if l.next == aSubject && p.isGroup(l, whole) {
			markdown = p.animals(p.Result.Plan.Enclosure(l.enclosure), whole)
		} else {
			markdown = p.logWord(l)
		}
	case aKeeperWord:
		if w := schema.FindKeeperWord(whole); w != nil {
			markdown = aboutWord(w)
		}
	case anAfter:
		markdown = p.aboutAfter(l, whole)
	}
	if markdown == "" {
		return 0, 0, ""
	}
	return l.from, l.to, markdown
}

// place explains an enclosure or a rack.
func (p *Page) place(name string) string {
	if text := p.about("enclosure", name); text != "" {
		return text
	}
	return p.about("rack", name)
}

// logWord explains the word at which a line goes on, with what belongs to it: some ways of
// writing a word are several.
func (p *Page) logWord(l *logLine) string {
	s, _ := schema.Spelled(strings.Fields(string(p.Text[l.from:lineEnd(p.Text, l.from)])))
	switch {
	case s == nil:
		return ""
	case s.Asked():
		return "**" + s.Text + "** may mean several things: " + s.Hint + "\n\nOne of: " + strings.Join(s.May, ", ")
	case s.Care != nil:
		return "**" + s.Means() + "**\n\n" + s.Care.Doc
	}
	return aboutWord(s.Word)
}

func aboutWord(w *schema.LogWord) string {
	text := "**" + w.Name + "**\n\n" + w.Doc
	if after := w.After.String(); after != "" {
		text += "\n\nBehind it: " + after + "."
	}
	return text
}

// aboutAfter explains what stands behind a word of the log.
func (p *Page) aboutAfter(l *logLine, whole string) string {
	switch l.word.After {
	case schema.AfterPrey:
		return p.about("feeder", whole)
	case schema.AfterEnclosure:
		return p.place(whole)
	case schema.AfterCare:
		if e := p.Result.Plan.Enclosure(l.enclosure); e != nil {
			if text := p.care(e, whole); text != "" {
				return text
			}
		}
		return p.about(schema.NamesKind, whole)
	case schema.AfterTest:
		if text := choice(schema.Salts, whole); text != "" {
			return text
		}
		return p.measured(l, whole)
	case schema.AfterMeasure, schema.AfterWeight:
		return p.measured(l, whole)
	}
	return ""
}

// measured is a value of a line in other units, or what a word means for where it was measured.
func (p *Page) measured(l *logLine, whole string) string {
	if text := choice(schema.MeasuredAt, whole); text != "" {
		return text
	}
	written := whole
	if n := len(l.args); n > 0 && strings.Trim(l.args[n-1], "0123456789.") == "" {
		written = l.args[n-1] + " " + whole
	} else if rest := strings.Fields(string(p.Text[l.to:lineEnd(p.Text, l.to)])); len(rest) > 0 {
		written += " " + rest[0]
	}
	for _, d := range []quantity.Dimension{quantity.Temperature, quantity.Mass} {
		if text := told(written, &schema.Attr{Kind: schema.Quantity, Dimension: d}); text != "" {
			return text
		}
	}
	return ""
}
