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
		// Feeds are built again and again; a question that was answered long ago is not to
		// stand in one that was not.
		last := min(h.Last(), max(h.Now(), a.From)+asked*civil.Date(max(a.Every, 1)))
		if a.Until != 0 {
			last = min(last, a.Until-1)
		}
		if a.From > last || last < h.Now() {
			continue
		}
		t := &life.Task{Name: a.Name, Kind: cmp.Or(a.Kind, schema.KindWatch), On: a.From, Interval: max(a.Every, 1), Text: question(a), Minutes: schema.KindWatch.Minutes, High: a.Urgent, At: a.At, Cited: a.Cited}
		if late := int(h.Now() - a.From); late > 0 {
			t.On += civil.Date((late + t.Interval - 1) / t.Interval * t.Interval)
		}
		if t.On > last {
			continue
		}
		t.Times = int(last-t.On)/t.Interval + 1
		b.once(g, t, a)
	}
}

// asked is how often a question stands in a calendar that nobody builds again.
const asked = 14

// question is an ask as it stands in a round, with the words to log.
func question(a *life.Ask) string {
	if a.Write == "" || strings.Contains(a.Text, "log ") {
		return a.Text
	}
	return a.Text + "; log " + a.Write
}
