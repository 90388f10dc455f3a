package explain

import (
	"fmt"

	"vivary/compile"
	"vivary/plan"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

func listRacks(r *compile.Result) []Line {
	var out []Line
	for _, k := range r.Plan.Racks {
		out = append(out, Line{Name: k.Name.V, Text: describeRack(k)})
	}
	return out
}

// describeRack says what a rack is: its title, how many stand in it and where it stands.
func describeRack(k *plan.Rack) string {
	out := k.Shown() + ", " + wording.Count(len(k.Enclosures), "enclosure", "enclosures")
	if k.Place != nil {
		out += ", in " + k.Place.Shown()
	}
	return out
}

func explainRack(r *compile.Result, word string) []Answer {
	var out []Answer
	for i, k := range r.Plan.Racks {
		if !worked(r) || !means(word, k.Name.V, k.Shown()) {
			continue
		}
		var here, lent []Line
		for _, e := range k.Enclosures {
			here = append(here, Line{Name: e.Name.V, Text: describe(e)})
		}
		if here == nil {
			here = plainly([]string{"nothing yet: rack = \"" + k.Name.V + "\" in an enclosure puts it here"})
		}
		for _, h := range k.Heaters {
			lent = append(lent, Line{Name: h.Name.V, Text: heat(k, h)})
		}
		if k.Thermometer.V {
			lent = append(lent, Line{Name: "thermometer", Text: "one for all"})
		}
		if k.StandsOn.Set() {
			lent = append(lent, Line{Name: "stands_on", Text: k.StandsOn.V})
		}
		if k.ShelfRise.Set() {
			lent = append(lent, Line{Name: "shelf_rise", Text: k.ShelfRise.V.String()})
		}
		parts := part(nil, "Said once for all in it", lent)
		parts = part(parts, "Care", careLines(r.Roster.Racks[i].Entries, r))
		parts = part(parts, "Who stands in it", here)
		out = append(out, Answer{Title: "Rack " + k.Name.V + ": " + describeRack(k), Parts: parts, Written: block(&k.Head)})
	}
	return out
}

// heat says what a heater of a rack gives, and to each box.
func heat(k *plan.Rack, h *plan.Heater) string {
	out := h.Power.V.String()
	if k.Share > 1 {
		out += fmt.Sprintf(", %s for each of %d places", quantity.Format(h.Power.V.Value/float64(k.Share), h.Power.V.Unit), k.Share)
	}
	if h.Thermostat.Set() {
		out += ", thermostat " + h.Thermostat.V.String()
	}
	return out
}
