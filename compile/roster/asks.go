package roster

import (
	"cmp"
	"strings"

	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
)

// asks adds the questions that stand until the log answers them: looks, done by
// whoever does the round, or what only those do who may open the enclosure. One whose day is over stands today, and again on each of its
// days to come.
func (b *builder) asks(g *life.Group, asks []life.Ask) {
	h := b.Horizon
	for i := range asks {
		a := &asks[i]
		if a.From > h.Last() {
			continue
		}
		t := &life.Task{Name: a.Name, Kind: cmp.Or(a.Kind, schema.KindWatch), On: a.From, Interval: max(a.Every, 1), Text: question(a), Minutes: schema.KindWatch.Minutes, High: a.Urgent, At: a.At, Cited: a.Cited}
		if late := int(h.Now() - a.From); late > 0 {
			t.On += civil.Date((late + t.Interval - 1) / t.Interval * t.Interval)
		}
		last := h.Last()
		if a.Until != 0 {
			last = min(last, a.Until-1)
		}
		t.Times = max(0, (int(last-t.On)+t.Interval)/t.Interval)
		b.once(g, t, a)
	}
}

// question is an ask as it stands in a round, with the words to log.
func question(a *life.Ask) string {
	if a.Write == "" || strings.Contains(a.Text, "log ") {
		return a.Text
	}
	return a.Text + "; log " + a.Write
}
