package compare

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/horizon"
	"vivary/compile/identity"
	"vivary/compile/roster"
	"vivary/schema"
	"vivary/schema/civil"
)

// Work is what changes for one of the people.
type Work struct {
	Keeper string // by name; "" for nobody in particular
	Shown  string
	// Was and Is are minutes a week, on the average of the coming year.
	Was, Is float64
	// Live says that they give live prey now and did not, or did and do not; Skills are what
	// they now have to be trained in, Unasked what no longer.
	LiveWas, LiveIs bool
	Skills, Unasked []string
	// From is the first day on which the time is another.
	From  civil.Date
	Cause []int
}

// Month is how often a care of a kind came, went or moved in a month.
type Month struct {
	Year, Month, Added, Gone, Moved int
}

// Care is what changes of the times at which care of a kind stands, in the coming year.
type Care struct {
	Kind *schema.CareKind
	// Added, Gone and Moved are on how many days it is done besides, no more, or in place of
	// another near it.
	Added, Gone, Moved int
	From               civil.Date // the first of these days
	Months             []Month
	Cause              []int
}

// year is over how many days work is told.
const year = 364

// people compares who has to do how much, and what.
func (r *Report) people() {
	a, b := workOf(r.Was), workOf(r.Is)
	keys := map[string]bool{}
	for k := range a {
		keys[k] = true
	}
	for k := range b {
		keys[k] = true
	}
	for k := range keys {
		x, y := a[k], b[k]
		if x == nil {
			x = &load{}
		}
		if y == nil {
			y = &load{}
		}
		w := Work{Keeper: k, Was: x.week(r.Was.Horizon), Is: y.week(r.Is.Horizon), LiveWas: x.live, LiveIs: y.live,
			Skills: without(y.skills, x.skills), Unasked: without(x.skills, y.skills)}
		if y.shown != "" {
			w.Shown = y.shown
		} else {
			w.Shown = x.shown
		}
		if math.Round(w.Was) == math.Round(w.Is) && w.LiveWas == w.LiveIs && len(w.Skills)+len(w.Unasked) == 0 {
			continue
		}
		for i := r.Is.Horizon.Today; i < r.Is.Horizon.Today+year; i++ {
			if x.on(i) != y.on(i) {
				w.From = r.Is.Horizon.Date(i)
				break
			}
		}
		r.People = append(r.People, w)
	}
	slices.SortFunc(r.People, func(a, b Work) int {
		return cmp.Or(cmp.Compare(math.Abs(b.Is-b.Was), math.Abs(a.Is-a.Was)), strings.Compare(a.Keeper, b.Keeper))
	})
	cause := r.causesOf(r.care())
	for i := range r.Rounds { // what it takes to begin one
		cause = append(cause, r.Rounds[i].Cause...)
	}
	for i := range r.House {
		if r.House[i].Topic == Feeders {
			cause = append(cause, r.House[i].Cause...)
		}
	}
	slices.Sort(cause)
	cause = slices.Compact(cause)
	for i := range r.People {
		r.People[i].Cause = cause
	}
}

func without(a, b []string) (out []string) {
	for _, s := range a {
		if !slices.Contains(b, s) {
			out = append(out, s)
		}
	}
	return out
}

// load is what one of the people has to do.
type load struct {
	shown   string
	minutes []int // of each day of the window
	live    bool
	skills  []string
}

func (l *load) on(i int) int {
	if i < len(l.minutes) {
		return l.minutes[i]
	}
	return 0
}

func (l *load) week(h horizon.Horizon) float64 {
	sum := 0
	for i := h.Today; i < h.Today+year; i++ {
		sum += l.on(i)
	}
	return float64(sum) / (year / 7)
}

// workOf is what everybody has to do, by first name; what nobody in particular does is of "".
func workOf(r *compile.Result) map[string]*load {
	out := map[string]*load{}
	of := func(name string) *load {
		id, shown := name, "nobody in particular"
		if k := r.Plan.Keeper(name); k != nil {
			id, shown = identity.Keeper(k), k.Shown()
		}
		l := out[id]
		if l == nil {
			l = &load{shown: shown, minutes: make([]int, r.Horizon.Days)}
			out[id] = l
		}
		return l
	}
	for _, x := range r.Roster.Rounds {
		by := map[string][]*roster.Entry{}
		for _, e := range r.Roster.In[x] {
			by[e.Keeper] = append(by[e.Keeper], e)
		}
		begun := map[*load]horizon.Days{} // the days on which somebody begins the round
		for name, all := range by {
			d := r.Roster.People.Of(name)
			own := of(name)
			for i, minutes := range r.Takes(all) {
				if minutes == 0 || i >= r.Horizon.Days {
					continue
				}
				l := own
				if d != nil && d.Away.Has(i) {
					doer, ok := r.Roster.People.Doer(name, i)
					if !ok {
						continue
					}
					l = of(doer)
				}
				l.minutes[i] += minutes
				if begun[l] == nil {
					begun[l] = r.Horizon.New()
				}
				if !begun[l].Has(i) {
					begun[l].Add(i)
					l.minutes[i] += x.Starts()
				}
			}
			for _, e := range all {
				theirs := e.Days
				if d != nil {
					away := e.Days.Clone()
					away.Keep(d.Away)
					theirs = e.Days.Clone()
					theirs.Subtract(d.Away)
					for i := away.Next(r.Horizon.Today); i >= 0; i = away.Next(i + 1) {
						if doer, ok := r.Roster.People.Doer(name, i); ok {
							of(doer).does(e, !has(e.Killed, i))
						}
					}
				}
				if theirs.Next(r.Horizon.Today) >= 0 {
					alive := theirs.Clone()
					if len(e.Killed) > 0 {
						alive.Subtract(e.Killed)
					}
					own.does(e, alive.Next(r.Horizon.Today) >= 0)
				}
			}
		}
	}
	for _, l := range out {
		slices.Sort(l.skills)
	}
	return out
}

// does adds what an entry asks of whoever does it; alive says that its prey is.
func (l *load) does(e *roster.Entry, alive bool) {
	l.live = l.live || alive && len(e.Menu) > 0
	for _, s := range roster.Skills(e.Life) {
		if !slices.Contains(l.skills, s) {
			l.skills = append(l.skills, s)
		}
	}
}

// care compares the days of every care, and returns the enclosures of which any is another, or takes
// another time.
func (r *Report) care() map[string]bool {
	touched := map[string]bool{}
	by := map[*schema.CareKind]*Care{}
	for _, p := range r.pair {
		if p.was >= 0 && p.is >= 0 && sameBox(r.Was, r.Is, p) {
			continue
		}
		a, b := entriesOf(r.Was, p.was), entriesOf(r.Is, p.is)
		for k := range union(a, b) {
			x, y := a[k], b[k]
			h := r.Is.Horizon
			was, is := daysOf(r.Was, x, h), daysOf(r.Is, y, h)
			kind := kindOf(x, y)
			if r.count(by, kind, was, is) || minutes(x) != minutes(y) {
				touched[p.id] = true
			}
		}
	}
	cause := r.causesOf(touched)
	for _, c := range by {
		c.Cause = cause
	}
	r.fed(by)
	for _, c := range by {
		slices.SortFunc(c.Months, func(a, b Month) int { return cmp.Or(cmp.Compare(a.Year, b.Year), cmp.Compare(a.Month, b.Month)) })
		r.Care = append(r.Care, *c)
	}
	slices.SortFunc(r.Care, func(a, b Care) int {
		return cmp.Or(cmp.Compare(a.Kind.Rank, b.Kind.Rank), strings.Compare(a.Kind.Name, b.Kind.Name))
	})
	return touched
}

// minutes is how long the entries of one care take each time.
func minutes(all []*roster.Entry) (n int) {
	for _, e := range all {
		n += e.Minutes
	}
	return n
}

// entriesOf are the entries of an enclosure by what they are for ever, those of one care in
// several rounds together.
func entriesOf(r *compile.Result, i int) map[identity.Identity][]*roster.Entry {
	out := map[identity.Identity][]*roster.Entry{}
	if i < 0 {
		return out
	}
	for k := range r.Roster.Of[i] {
		e := &r.Roster.Of[i][k]
		out[e.ID] = append(out[e.ID], e)
	}
	return out
}

func union(a, b map[identity.Identity][]*roster.Entry) map[identity.Identity]bool {
	out := make(map[identity.Identity]bool, len(a)+len(b))
	for k := range a {
		out[k] = true
	}
	for k := range b {
		out[k] = true
	}
	return out
}

func kindOf(a, b []*roster.Entry) *schema.CareKind {
	if len(b) > 0 {
		return b[0].Kind
	}
	return a[0].Kind
}

// daysOf are the days of the coming year on which entries stand.
func daysOf(r *compile.Result, all []*roster.Entry, h horizon.Horizon) horizon.Days {
	out := h.New()
	for _, e := range all {
		for i := e.Days.Next(r.Horizon.Today); i >= 0 && i < min(r.Horizon.Today+year, h.Days); i = e.Days.Next(i + 1) {
			out.Add(i)
		}
	}
	return out
}

// count adds what differs between two sets of days to what is told of a kind.
func (r *Report) count(by map[*schema.CareKind]*Care, kind *schema.CareKind, was, is horizon.Days) bool {
	came, went := is.Clone(), was.Clone()
	came.Subtract(was)
	went.Subtract(is)
	if came.Empty() && went.Empty() {
		return false
	}
	c := by[kind]
	if c == nil {
		c = &Care{Kind: kind}
		by[kind] = c
	}
	h := r.Is.Horizon
	month := func(i int) *Month {
		y, m, _ := h.Date(i).YMD()
		for k := range c.Months {
			if c.Months[k].Year == y && c.Months[k].Month == int(m) {
				return &c.Months[k]
			}
		}
		c.Months = append(c.Months, Month{Year: y, Month: int(m)})
		return &c.Months[len(c.Months)-1]
	}
	first := func(i int) {
		if d := h.Date(i); c.From == 0 || d < c.From {
			c.From = d
		}
	}
	// A day in place of another within a week is one that moved.
	for i := came.Next(0); i >= 0; i = came.Next(i + 1) {
		first(i)
		for d := max(0, i-6); d <= i+6 && d < h.Days; d++ {
			if went.Has(d) {
				first(d)
				went.Remove(d)
				came.Remove(i)
				c.Moved++
				month(i).Moved++
				break
			}
		}
	}
	for i := came.Next(0); i >= 0; i = came.Next(i + 1) {
		c.Added++
		month(i).Added++
	}
	for i := went.Next(0); i >= 0; i = went.Next(i + 1) {
		first(i)
		c.Gone++
		month(i).Gone++
	}
	return true
}

// causesOf are the pieces of some enclosures, and where one has none of its own what all share.
func (r *Report) causesOf(touched map[string]bool) []int {
	w := &trials{r: r, own: map[string][]int{}}
	w.sort()
	var out []int
	for id := range touched {
		if len(w.own[id]) == 0 {
			out = append(append(out, w.shared...), w.sheets(id)...)
		}
		out = append(out, w.own[id]...)
	}
	slices.Sort(out)
	return slices.Compact(out)
}
