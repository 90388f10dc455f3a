package compare

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/deadline"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// datesOf are the dates of a house: from when on each is told, by when it is due, and whose it is.
func datesOf(r *compile.Result) (out []matter) {
	nth := map[string]int{} // what the plan alone ends may end on several days
	for i := range r.Deadlines {
		d := &r.Deadlines[i]
		m := matter{key: "date " + d.First, topic: Dates, of: d.Name, where: d.Title, name: "told", rank: unranked, blocks: []string{"deadline " + d.Name}}
		if d.Name == "" {
			nth[d.Title]++
			m.key, m.blocks = "date of the plan "+d.Title+" "+strconv.Itoa(nth[d.Title]), nil
		}
		who := m
		for k := range d.Times {
			t := &d.Times[k]
			if t.Done > 0 || t.From >= r.Today+year {
				continue
			}
			m.each = append(m.each, toldFrom(t))
		}
		switch {
		case d.Undated:
			m.text = "on no day, since none is known"
		case len(m.each) == 0 && next(d) != nil:
			m.each = append(m.each, toldFrom(next(d)))
		case len(m.each) == 0:
			m.text = "no more"
		case len(m.each) > 1:
			m.text = wording.Count(len(m.each), "time", "times") + " in the coming year"
		}
		out = append(out, m)
		who.key, who.name = who.key+" by", "is for"
		who.text, who.means = "whoever looks after the house", "\x00"
		who.minor = d.Keeper == ""
		if d.Keeper != "" {
			who.text, who.means = daylist.Shown(r.Plan, d.Keeper), first(r.Plan, d.Keeper)
		}
		does := who
		does.key, does.name, does.text, does.means = m.key+" does", "what is done", cmp.Or(d.Does, "as its title says"), ""
		does.minor = true
		out = append(out, who, does)
	}
	return out
}

// toldFrom is from when on one time is told.
func toldFrom(t *deadline.Time) when {
	if t.From == t.By {
		return when{on: t.By, text: "on " + t.By.Words()}
	}
	return when{on: t.From, text: "from " + t.From.Words() + " on, by " + t.By.Words()}
}

// next is the first time that is open, or nil.
func next(d *deadline.Deadline) *deadline.Time {
	for k := range d.Times {
		if d.Times[k].Done == 0 {
			return &d.Times[k]
		}
	}
	return nil
}

// figuresOf are the figures that the plan sets for its keepers, with what their work comes to;
// nothing where neither of two compilations has any.
func figuresOf(r, beside *compile.Result) (out []matter) {
	if !figured(r.Plan) && !figured(beside.Plan) {
		return nil
	}
	hours := r.Hours()
	for i, k := range r.Plan.Keepers {
		h := hours[i]
		add := func(name string, set plan.Written[quantity.Quantity], n int, over bool, text string) {
			m := matter{key: "figure " + first(r.Plan, k.Name.V) + "/" + name, topic: People, of: k.Name.V, where: k.Shown(), name: name, rank: unranked,
				blocks: []string{schema.Keeper.Name + " " + k.Name.V}}
			if !set.Set() {
				m.text, m.means = "no figure", "none"
			} else {
				m.text = set.V.String() + ", and the plan has " + strings.Replace(text, "#", quantity.Format(float64(n), set.V.Unit), 1)
				if m.means = strconv.FormatFloat(set.V.Value, 'g', -1, 64); over {
					m.text += ": not kept"
					m.means += " over"
				}
			}
			out = append(out, m)
		}
		add("budget of a day", k.Budget, h.Day, float64(h.Day) > k.Budget.V.Value, "up to about #")
		add("time in a week", k.Week, h.Week, float64(h.Week) > k.Week.V.Value, "up to about #")
		text := "no days on which that is asked"
		if h.Rested {
			text = "about # at the least"
		}
		add("rest from day to day", k.Rest, h.Rest, h.Rested && float64(h.Rest) < k.Rest.V.Value, text)
	}
	return out
}

// figured reports whether the plan sets any figure for a keeper.
func figured(c *plan.Collection) bool {
	return slices.ContainsFunc(c.Keepers, func(k *plan.Keeper) bool { return k.Budget.Set() || k.Week.Set() || k.Rest.Set() })
}
