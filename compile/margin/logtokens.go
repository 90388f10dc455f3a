package margin

import (
	"bytes"

	"vivary/plan"
	"vivary/plan/source"
	"vivary/schema"
)

// log takes in the lines of a log: its days, words, what stands behind them, notes and remarks.
func (t *tokens) log(c *plan.Collection) {
	joined := map[int32]*plan.Event{}
	for i := range c.Log {
		if e := &c.Log[i]; e.At.File == t.id {
			joined[e.At.Start] = e
		}
	}
	for from := 0; from < len(t.text); {
		end := from + lineEnd(t.text[from:])
		t.logLine(from, end, joined[int32(from)])
		from = end + 1
	}
}

// logLine takes in a line, of which e is what it says: nil where nothing follows from it.
func (t *tokens) logLine(from, end int, e *plan.Event) {
	line := t.text[from:end]
	body := bytes.TrimLeft(line, " \t\ufeff")
	from += len(line) - len(body)
	if bytes.HasPrefix(body, []byte("#")) {
		t.remark(from, end)
		return
	}
	shift := int32(0)
	if e == nil {
		one, wrong := plan.ParseLogLine(t.id, string(line))
		if len(wrong) > 0 && !one.At.Written() {
			return
		}
		e, shift = &one, int32(end-len(line))
	}
	at := func(p source.Place, s Sort) {
		if p.Written() {
			p.Start, p.End = p.Start+shift, p.End+shift
			t.add(p, s)
		}
	}
	if n := bytes.IndexAny(body, " \t"); n > 0 {
		t.add(source.Place{File: t.id, Start: int32(from), End: int32(from + n)}, When)
	}
	at(e.Clock.At, When)
	if e.By.At.Written() {
		t.between(body, from, "by")
	}
	if e.Keeper.At.Written() {
		t.between(body, from, schema.LogKeeper)
	}
	if e.Deadline.At.Written() {
		t.between(body, from, schema.LogDeadline)
	}
	if n := bytes.IndexByte(body, '"'); n >= 0 && e.Note != "" {
		t.add(source.Place{File: t.id, Start: int32(from + n), End: int32(from + len(bytes.TrimRight(body, " \t")))}, Text)
	}
	if e.Word == schema.WordRemark {
		return // what is meant is not known
	}
	at(e.WordAt, BlockType)
	at(e.Number.At, Amount)
	for _, a := range e.Args {
		s := Word
		if a.V != "" && (a.V[0] >= '0' && a.V[0] <= '9' || a.V[0] == '-') {
			s = Amount
		}
		at(a.At, s)
	}
}

// between takes in the word before somebody's name, which stands behind day and time.
func (t *tokens) between(body []byte, from int, word string) {
	if n := bytes.Index(body, []byte(" "+word+" ")); n >= 0 && n < len("2026-11-02 19:42 by whoever ") {
		t.add(source.Place{File: t.id, Start: int32(from + n + 1), End: int32(from + n + 1 + len(word))}, BlockType)
	}
}
