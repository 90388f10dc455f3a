package rounds

import (
	"regexp"
	"slices"
	"time"

	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/schema/civil"
)

// near is for how many days before and after a day everybody knows of which year it is.
const near = 300

// told finds days with their years: "20 Feb 2027".
var told = regexp.MustCompile(`\b(\d{1,2} (?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)) (\d{4})\b`)

// daysIn returns the days that a text tells with their years.
func daysIn(text string) (out []civil.Date) {
	for _, m := range told.FindAllStringSubmatch(text, -1) {
		if d, ok := dayOf(m[1], m[2]); ok {
			out = append(out, d)
		}
	}
	return out
}

func dayOf(brief, year string) (civil.Date, bool) {
	t, err := time.Parse("2 Jan 2006", brief+" "+year)
	if err != nil {
		return 0, false
	}
	return civil.Of(t.Date())
}

// Told is what an entry asks for as it is told on a day: without the year of what is near
// it, where the log brought it.
func Told(x *roster.Entry, t Task, on civil.Date) Task {
	if x.Once != nil {
		t.Phrase = yearless(t.Phrase, on)
	}
	if x.Group != nil && x.Group.Logged {
		t.Group = yearless(t.Group, on)
	}
	return t
}

// Turns reports whether what the log asks for is told otherwise on some of its days.
func Turns(x *roster.Entry) bool {
	for _, d := range turns(x.Once.Text) {
		if last := x.Once.On + civil.Date((x.Once.Times-1)*max(x.Once.Interval, 1)); x.Once.On < d && d <= last {
			return true
		}
	}
	return false
}

// yearless is a text as it is told on a day: without the year of what is near it.
func yearless(text string, on civil.Date) string {
	return told.ReplaceAllStringFunc(text, func(s string) string {
		m := told.FindStringSubmatch(s)
		if d, ok := dayOf(m[1], m[2]); ok && d-near <= on && on <= d+near {
			return m[1]
		}
		return s
	})
}

// turns are the days from which on yearless tells a text otherwise.
func turns(text string) (out []civil.Date) {
	for _, d := range daysIn(text) {
		out = append(out, d-near, d+near+1)
	}
	return out
}

// telling is a run of days on which a text is told the same, cut from two sets of days.
type telling struct {
	on          civil.Date // one of them
	days, usual horizon.Days
}

// tellings cuts days where a text is told otherwise. Most texts tell of no year.
func (g *gatherer) tellings(text string, days, usual horizon.Days) []telling {
	h := g.roster.Horizon
	cuts := []int{h.Days}
	for _, d := range turns(text) {
		if i, in := h.Index(d); in {
			cuts = append(cuts, i)
		}
	}
	slices.Sort(cuts)
	var out []telling
	from := 0
	for _, to := range slices.Compact(cuts) {
		p := telling{on: h.Date(from), days: days, usual: usual}
		if len(cuts) > 1 {
			run := h.New()
			run.AddRun(from, to, h.Days)
			p.days, p.usual = both(days, run), both(usual, run)
		}
		if from = to; p.days.Next(0) >= 0 {
			out = append(out, p)
		}
	}
	return out
}
