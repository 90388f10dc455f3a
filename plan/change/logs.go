package change

import (
	"strings"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
)

// logs finds the lines that came to the logs or went: a log is a set of facts, in whichever
// order and file they stand. Those about one enclosure are one piece. A line that stands in both
// and is about nothing in one, since the enclosure is not there, is no difference of the logs.
func (c *Changes) logs(a, b *plan.Collection) {
	was, is := lines(a), lines(b)
	var aside, beside map[string]int
	at := map[string]int{}
	piece := func(of string) *Piece {
		i, known := at[of]
		if !known {
			i = len(c.Pieces)
			at[of] = i
			c.Pieces = append(c.Pieces, Piece{Name: of})
		}
		return &c.Pieces[i]
	}
	count := make(map[string]int, len(was))
	for i := range was {
		count[was[i].side.Text]++
	}
	for i := range is {
		l := &is[i]
		if count[l.side.Text] > 0 {
			count[l.side.Text]--
			continue
		}
		if before := idle(a, was, &aside); before[l.side.Text] > 0 {
			before[l.side.Text]--
			continue
		}
		p := piece(l.of)
		p.Lines = append(p.Lines, l.side)
		p.Between = p.Between || l.event.Word.After == schema.AfterEnclosure
		p.adds = append(p.adds, added{l.side.File, l.side.Text + "\n"})
		if !p.Is.Written() {
			p.Is = l.side
		}
	}
	now := make(map[string]int, len(is))
	for i := range is {
		now[is[i].side.Text]++
	}
	for i := range was {
		l := &was[i]
		if now[l.side.Text] > 0 {
			now[l.side.Text]--
			continue
		}
		if after := idle(b, is, &beside); after[l.side.Text] > 0 {
			after[l.side.Text]--
			continue
		}
		p := piece(l.of)
		p.Gone = append(p.Gone, l.side)
		p.Between = p.Between || l.event.Word.After == schema.AfterEnclosure
		p.edits = append(p.edits, finding.Edit{At: l.event.At})
		if !p.Was.Written() {
			p.Was = l.side
		}
	}
}

// idle counts the texts that stand in the logs of a collection and are no line of which anything
// follows there. They are looked for once, when the first is asked for.
func idle(c *plan.Collection, all []line, counted *map[string]int) map[string]int {
	if *counted != nil {
		return *counted
	}
	out := map[string]int{}
	for _, id := range c.Files.Files() {
		if !strings.HasSuffix(c.Files.Name(id), plan.LogSuffix) {
			continue
		}
		for text := range strings.Lines(string(c.Files.Text(id))) {
			out[strings.TrimRight(text, "\r\n")]++
		}
	}
	for i := range all {
		out[all[i].side.Text]--
	}
	*counted = out
	return out
}

// line is a line of a log.
type line struct {
	event *plan.Event
	of    string // the enclosure, the store, the keeper or the date of the house that it is about
	side  Side
}

func lines(c *plan.Collection) []line {
	out := make([]line, len(c.Log))
	for i := range c.Log {
		e := &c.Log[i]
		at := c.Files.Start(e.At)
		of := e.Enclosure.V
		switch {
		case e.Deadline.Set():
			of = schema.LogDeadline + " " + e.Deadline.V
		case of == "":
			of = e.Keeper.V
		}
		out[i] = line{e, of, Side{at.File, at.Line, c.Files.Of(e.At)}}
	}
	return out
}
