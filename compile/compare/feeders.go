package compare

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/horizon"
	"vivary/compile/identity"
	"vivary/compile/roster"
	"vivary/compile/stock"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// feedersOf are the matters of the feeder animals of a compilation: whether there are enough, what
// is ordered and set up when, and what is done for them.
func feedersOf(r, beside *compile.Result) (out []matter) {
	lots := func(r *compile.Result) []*stock.Lot {
		if r.Stock == nil {
			return nil
		}
		return r.Stock.Lots
	}
	asked := map[plan.Prey]bool{} // of which one of the two says where they come from
	for _, l := range slices.Concat(lots(r), lots(beside)) {
		asked[l.Prey] = asked[l.Prey] || l.InPlan()
	}
	report := r.Stock
	if report == nil && len(asked) > 0 {
		report = stock.Look(r.Roster) // what its meals take
	}
	if report == nil {
		return nil
	}
	for _, l := range report.Lots {
		if !asked[l.Prey] {
			continue
		}
		out = append(out, lacks(r, l)...)
		for _, x := range l.Supplies {
			out = append(out, orders(r, x))
		}
		for _, c := range l.Cultures {
			out = append(out, starts(r, c)...)
		}
	}
	for _, s := range r.Roster.Stores {
		if m, some := care(r, s); some {
			out = append(out, m)
		}
	}
	return out
}

// blocksOf are the blocks of a lot, by type and name.
func blocksOf(r *compile.Result, l *stock.Lot) (out []string) {
	for _, s := range r.Plan.Stores {
		if s.Of == l.Prey {
			out = append(out, s.Kind().Name+" "+s.Name.V)
			if s.From != nil {
				out = append(out, "seller "+s.From.Name.V)
			}
		}
	}
	return out
}

// The ranks of how sure a food is: what is not said lies between what is enough and what is not.
const (
	enough  = 0
	unsaid  = 0.5
	lacking = 1
)

// lacks say whether there are enough of a lot that is fed, and how many there are.
func lacks(r *compile.Result, l *stock.Lot) (out []matter) {
	m := matter{key: "lack " + l.Prey.String(), topic: Food, of: l.Prey.String(), where: l.Many(), name: "in the house", blocks: blocksOf(r, l)}
	h := r.Horizon
	if l.Fed(h) {
		switch n := len(l.Short.Days); {
		case n > 0:
			first := h.Date(l.Short.First)
			m.text = strconv.Itoa(l.Short.Lacks) + " lack on " + first.Words()
			if names := eaters(l.Short.Who); len(names) > 0 {
				m.text += ", for " + r.Printer().Named(names)
			}
			if n > 1 {
				m.text += ", and on " + wording.Days(n-1) + " after it"
			}
			m.rank, m.from = lacking+float64(n), first
		case len(l.Supplies) > 0 || l.Known && len(l.Cultures) == 0:
			m.text, m.rank = "enough", enough
		case len(l.Cultures) > 0:
			m.text, m.rank, m.from = yields(l)
		default:
			m.text, m.rank = "nothing in the plan says where they come from", unsaid
		}
		out = append(out, m)
	}
	hand := matter{key: "hand " + l.Prey.String(), topic: Feeders, of: l.Prey.String(), where: l.Many(), name: "there today", blocks: m.blocks, text: "not counted", rank: unranked, minor: true}
	if l.Known {
		hand.text = "about " + wording.Number(math.Floor(l.Hand+0.5))
	}
	return append(out, hand)
}

// yields says whether cultures alone yield in time.
func yields(l *stock.Lot) (text string, rank float64, from civil.Date) {
	text, rank = "as many as the cultures yield", enough
	for _, c := range l.Cultures {
		switch late := c.Late(); {
		case !c.Lead.Known():
			return "when a culture yields is not known", unsaid, 0
		case c.Gap > 0:
			text, rank, from = "none yields on "+c.Gap.Words(), lacking+float64(max(0, c.Next-c.Gap)), c.Gap
		case late > 0:
			text, rank, from = "needed from "+c.Need.Words()+" on, and the first culture yields "+wording.Days(late)+" after that", lacking+float64(late), c.Need
		default: // one that is in time is enough to begin with
			return "as many as the cultures yield", enough, 0
		}
	}
	return text, rank, from
}

// eaters are the names of those who are without, each once.
func eaters(all []stock.Eater) (out []string) {
	for i := range all {
		if name := all[i].Entry.Plan().Name.V; !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	return out
}

// orders are the orders of a supply in the coming year.
func orders(r *compile.Result, x *stock.Supply) matter {
	s := x.Plan
	m := matter{key: "orders " + identity.Enclosure(s.Stop), topic: Feeders, of: s.Name.V, where: s.Shown(), name: "orders", blocks: blocksOf(r, x.Lot), rank: unranked}
	n, all := 0, 0
	for i := range x.Orders {
		o := &x.Orders[i]
		if o.By < r.Today || o.Deliver >= r.Today+year {
			continue // it was ordered; the last weeks of the window are not full
		}
		whole := strings.Replace(strings.TrimPrefix(x.Words(o), "Order "), " from "+s.From.Shown(), "", 1) // whatever they are called
		text, weather, _ := strings.Cut(whole, "; ")
		if o.Short > 0 {
			short, _, _ := strings.Cut(weather, "; ")
			text += "; " + short
		}
		if o.Number == 0 {
			text = "none by " + o.By.Short() + ", for " + o.Deliver.Short() + ": they give less than a pack, and " + strconv.Itoa(o.Short) + " are wanted"
		} else {
			n, all = n+1, all+o.Packing.Total
		}
		if o.Late {
			text += "; after the first meal that it is for"
		}
		m.each = append(m.each, when{o.By, text, whole})
	}
	m.text, m.means = "nothing is ordered", "none"
	if n > 0 {
		sum := wording.Count(n, "order", "orders") + " of " + wording.Number(float64(all)) + " in all in the coming year"
		m.text, m.means = sum+", from "+s.From.Shown(), sum+" "+s.From.Formerly.Or(s.From.Name.V)
	}
	return m
}

// starts are when cultures are set up in the coming year, and how they yield.
func starts(r *compile.Result, c *stock.Culture) []matter {
	s := c.Plan
	base := matter{topic: Feeders, of: s.Name.V, where: s.Shown(), blocks: blocksOf(r, c.Lot), rank: unranked}
	set, how := base, base
	set.key, set.name = "starts "+identity.Enclosure(s.Stop), "set up"
	for _, d := range c.Starts {
		if d >= r.Today && d < r.Today+year {
			from, to := c.First(d)
			set.each = append(set.each, when{on: d, text: "one on " + d.Words() + ", of which the first come " + wording.Between(from, to)})
		}
	}
	set.minor = len(set.each) == 0
	set.text = wording.Count(len(set.each), "new one", "new ones") + " in the coming year"
	how.minor = true
	how.key, how.name = "yields "+identity.Enclosure(s.Stop), "yields"
	how.text = "when is not known: " + c.Lead.Why
	if c.Lead.Known() {
		how.text = wording.Span(math.Floor(c.Lead.Low), math.Ceil(c.Lead.High-1e-9)) + " days after it is set up, for " + wording.Days(c.Lasts) + "; " + strconv.Itoa(c.Rotation.House) + " in the house"
	}
	if c.Yield.High > 0 {
		how.text += "; " + c.Yield.String() + " a week each"
	}
	return []matter{set, how}
}

// care is what is done again and again for a store, in which rounds; false where that is nothing.
func care(r *compile.Result, s *roster.Store) (matter, bool) {
	p := s.Plan
	m := matter{key: "care " + identity.Enclosure(p.Stop), topic: Feeders, of: p.Name.V, where: p.Shown(), name: "care", rank: unranked,
		blocks: []string{p.Kind().Name + " " + p.Name.V}}
	by := map[string]horizon.Days{}
	var order, rounds, ids []string
	for k := range s.Entries {
		e := &s.Entries[k]
		if id := identity.Round(e.Round); !slices.Contains(ids, id) {
			ids, rounds = append(ids, id), append(rounds, e.Round.Shown())
		}
		name := e.Name
		switch {
		case e.Kind == schema.KindOrder || e.Kind == schema.KindDelivery || e.Kind == schema.KindStart:
			continue // that is told of by its days
		case e.Once != nil:
			name = e.Kind.Name
		}
		if by[name] == nil {
			by[name] = r.Horizon.New()
			order = append(order, name)
		}
		by[name].Union(e.Days)
	}
	var parts []string
	for _, name := range order { // as they are done
		by[name].Keep(between(r.Horizon, r.Horizon.Today, r.Horizon.Today+year))
		switch low, high := usual(by[name]); {
		case by[name].Empty():
		case low == 0:
			parts = append(parts, name+" once")
		default:
			parts = append(parts, name+" every "+span(low, high))
		}
	}
	if len(ids) == 0 {
		return m, false
	}
	if m.minor = len(parts) == 0; m.minor {
		m.name = "done"
	}
	slices.Sort(rounds)
	slices.Sort(ids)
	what := wording.And(parts)
	m.text, m.means = strings.TrimPrefix(what+", in the "+wording.And(rounds), ", "), what+" "+strings.Join(ids, " ")
	return m, true
}

// fed compares the days on which something is done for feeder animals, by kind and store.
func (r *Report) fed(by map[*schema.CareKind]*Care) {
	type of struct {
		store string
		kind  *schema.CareKind
	}
	var order []of
	seen := map[of]bool{}
	all := func(x *compile.Result) map[of][]*roster.Entry {
		out := map[of][]*roster.Entry{}
		for _, s := range x.Roster.Stores {
			for k := range s.Entries {
				e := &s.Entries[k]
				k := of{e.ID.Enclosure, e.Kind}
				if out[k] = append(out[k], e); !seen[k] {
					seen[k], order = true, append(order, k)
				}
			}
		}
		return out
	}
	a, b := all(r.Was), all(r.Is)
	h := r.Is.Horizon
	for _, k := range order {
		known := by[k.kind] != nil
		if r.count(by, k.kind, daysOf(r.Was, a[k], h), daysOf(r.Is, b[k], h)) && !known {
			for i := range r.House {
				if r.House[i].Topic == Feeders {
					by[k.kind].Cause = append(by[k.kind].Cause, r.House[i].Cause...)
				}
			}
			slices.Sort(by[k.kind].Cause)
			by[k.kind].Cause = slices.Compact(by[k.kind].Cause)
		}
	}
}
