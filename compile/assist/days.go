package assist

import (
	"strings"
	"time"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
	"vivary/schema/zone"
)

// dates offers days by their distance from today.
func (p *Page) dates(v *valued) {
	for _, d := range near(p.Result.Today, soon) {
		v.text(offer{Offer: Offer{Label: d.date.String(), Detail: d.words, Doc: d.date.Words(), Kind: KindValue}, also: []string{d.words}})
	}
}

// nearDay is a day and how far off it is.
type nearDay struct {
	date  civil.Date
	words string
}

// soon and lately are days by how far off they are: the first for plans, which look ahead, the
// second for logs, which look back.
var (
	soon   = []int{0, 1, 7, 14, 30, 91, -1}
	lately = []int{0, -1, -2, -3, -4, -5, -6, -7}
)

func near(today civil.Date, off []int) (out []nearDay) {
	for _, n := range off {
		d := today + civil.Date(n)
		words := ""
		switch {
		case n == 0:
			words = "today"
		case n == 1:
			words = "tomorrow"
		case n == -1:
			words = "yesterday"
		case n < 0:
			words = d.Weekday().String() + ", " + wording.Days(-n) + " ago"
		case n%7 == 0 && n < 91:
			words = "in " + wording.Count(n/7, "week", "weeks")
		default:
			d = today.AddMonths((n + 15) / 30)
			words = "in " + wording.Count((n+15)/30, "month", "months")
		}
		if n == 0 || n == 1 || n == -1 {
			words += ", " + d.Weekday().String()
		}
		out = append(out, nearDay{d, words})
	}
	return out
}

// days offers days of a list: names of dates blocks, weekdays, days of the month.
func (p *Page) days(v *valued) {
	for _, n := range p.known(v.w, v.a.Ref) {
		v.text(offer{Offer: Offer{Label: n.name, Detail: n.detail, Doc: "The days of the dates block " + n.name + ".", Kind: KindName}})
	}
	first := p.Result.Plan.Units.Week()
	for i := range 7 {
		day := (first + time.Weekday(i)) % 7
		v.text(offer{Offer: Offer{Label: strings.ToLower(day.String()[:3]), Detail: "every " + day.String(), Kind: KindValue}, also: []string{day.String()}})
	}
	for _, d := range [...][2]string{{"mon to fri", "on the days of the week"}, {"sat", "every Saturday"}, {"first sun", "the first Sunday of the month"}, {"last fri", "the last Friday of the month"},
		{"1st", "the first of the month"}, {"15th", "the 15th of the month"}, {"last", "the last day of the month"}} {
		if v.has(d[0]) {
			continue
		}
		v.text(offer{Offer: Offer{Label: d[0], Detail: d[1], Kind: KindValue}})
	}
	p.dates(v)
}

// has reports whether a label is offered already.
func (o *offers) has(label string) bool {
	for i := range o.all {
		if o.all[i].Label == label {
			return true
		}
	}
	return false
}

// times offers times of day, steps of the calendar and days of the year.
func (p *Page) times(v *valued) {
	var all [][2]string
	switch v.a.Kind {
	case schema.Every:
		all = [][2]string{{"day", ""}, {"2 days", "every other day"}, {"3 days", ""}, {"week", ""}, {"2 weeks", "every other week"}, {"month", ""}, {"3 months", ""}, {"year", ""}}
	case schema.DayOfYear:
		for m := time.January; m <= time.December; m++ {
			all = append(all, [2]string{"1 " + strings.ToLower(m.String()[:3]), "the first of " + m.String()})
		}
	case schema.Clock, schema.Clocks:
		for _, r := range plan.Wholes(p.Result.Plan.Rounds) {
			if r.Clock.Set() {
				all = append(all, [2]string{wording.Clock(r.Clock.V, p.Result.Plan.Units), "the time of the " + r.Shown()})
			}
		}
		for h := 6; h <= 22; h++ {
			all = append(all, [2]string{wording.Clock(civil.Clock(h*60), p.Result.Plan.Units), ""})
		}
	case schema.Cron:
		v.given()
		for _, c := range [...][2]string{{"0 8 * * *", "every day at 08:00"}, {"30 19 * * 1,4", "Mondays and Thursdays at 19:30"}, {"0 18 1 * *", "the first of the month at 18:00"}} {
			all = append(all, c)
		}
	}
	for _, x := range all {
		if !v.has(x[0]) {
			v.text(offer{Offer: Offer{Label: x[0], Detail: x[1], Kind: KindValue}})
		}
	}
}

// zones offers time zones, that of the collection first.
func (v *valued) zones() {
	own := ""
	if about := v.page.Result.Plan.About; about != nil {
		own = about.TimeZone.V
	}
	for _, n := range zone.Names() {
		_, city, _ := strings.Cut(n, "/")
		x := offer{Offer: Offer{Label: n, Kind: KindKnown}, also: []string{strings.ReplaceAll(city, "_", " ")}}
		if n == own {
			x.usual = 1
		} else if !strings.Contains(n, "/") {
			x.usual = -1
		}
		v.text(x)
	}
}

// prey offers feeders with their sizes: what is on the menus of the collection first, then what
// the species' sheet has.
func (p *Page) prey(v *valued) {
	usual := map[string]int{}
	for _, e := range p.Result.Plan.Enclosures {
		for _, f := range e.Feeding {
			for _, x := range f.Menu() {
				usual[x.V.String()]++
			}
		}
	}
	if s := p.sheet(v.w); s != nil {
		for _, f := range s.Feeding {
			for _, x := range f.Menu() {
				usual[x.V.String()] += required
			}
		}
	}
	for _, x := range p.feeders() {
		x.usual = usual[x.Label]
		v.text(x)
	}
}

// feeders are all prey that is known, by feeder and size.
func (p *Page) feeders() (all []offer) {
	l := p.Result.Plan.Library
	u := p.Result.Plan.Units
	for _, n := range l.FeederNames() {
		f := l.Feeder(n)
		for _, size := range f.Sizes {
			var says []string
			if size.Length.Set() {
				says = append(says, u.TellRange(size.Length.V))
			}
			if size.Mass.Set() {
				says = append(says, u.TellRange(size.Mass.V))
			}
			x := offer{Offer: Offer{Label: n + " " + size.Name.V, Detail: strings.Join(says, ", "), Doc: f.Title.Or(n) + ", *" + f.Latin.V + "*", Kind: KindKnown}}
			if h := hazards(f); h != "" {
				x.Doc += "\n\n" + h
			}
			for _, other := range f.Names() {
				x.also = append(x.also, other+" "+size.Name.V)
			}
			for _, a := range size.Alone {
				x.also = append(x.also, a.V)
			}
			all = append(all, x)
		}
	}
	return all
}
