package explain

import (
	"slices"
	"strings"

	"vivary/compile"
	"vivary/plan"
	"vivary/schema/wording"
)

func listKeepers(r *compile.Result) []Line {
	var out []Line
	for _, k := range r.Plan.Keepers {
		out = append(out, Line{Name: k.Name.V, Text: k.Shown()})
	}
	return out
}

// explainKeeper says what a keeper may do and does, and when they are away. A number to ring
// is for lists on paper.
func explainKeeper(r *compile.Result, word string) []Answer {
	var out []Answer
	for _, k := range r.Plan.Keepers {
		if !means(word, k.Name.V, k.Shown()) {
			continue
		}
		trained := "Trained in nothing special"
		if all := trainedIn(k); len(all) > 0 {
			trained = "Trained in " + wording.And(all)
		}
		first := append([]Line{{Text: trained}}, hoursOf(k)...)
		if rounds := doneBy(r, k); len(rounds) > 0 {
			first = append(first, Line{Text: "Does the " + wording.And(rounds)})
		}
		first = append(first, plainly(turnsOf(r, k))...)
		first = append(first, plainly(awayOf(r, k))...)
		if k.Note.Set() {
			first = append(first, Line{Text: k.Note.V})
		}
		out = append(out, Answer{Title: "Keeper " + k.Name.V + ": " + k.Shown(), Parts: []Part{{Lines: first}},
			Written: absent(block(&k.Head), r, func(a *plan.Away) bool { return a.Name.V == k.Name.V || a.Cover.V == k.Name.V })})
	}
	return out
}

// trainedIn is what a keeper was shown, each with until when that holds.
func trainedIn(k *plan.Keeper) (out []string) {
	for _, text := range k.Skills() {
		if t := k.Ends(text); t != nil {
			text += " until " + t.Until.V.Words()
		}
		out = append(out, text)
	}
	return out
}

// hoursOf says how long and when a keeper works, and where they stand in.
func hoursOf(k *plan.Keeper) (out []Line) {
	add := func(text string) { out = append(out, Line{Text: text}) }
	if k.Budget.Set() {
		add("Has " + k.Budget.V.String() + " on one day")
	}
	if k.Week.Set() {
		add("Has " + k.Week.V.String() + " in a week")
	}
	if len(k.Off) > 0 {
		add("Rests on " + spoken(k.Off))
	}
	if where := texts(slices.Concat(k.Rooms, k.Enclosures)); len(where) > 0 {
		add("Stands in for others only at " + wording.And(where))
	}
	return out
}

// doneBy names the rounds of a keeper.
func doneBy(r *compile.Result, k *plan.Keeper) (names []string) {
	if !worked(r) {
		return nil
	}
	for _, x := range r.Roster.Rounds {
		if x.Of == nil && keeper(r, x) == k.Name.V {
			names = append(names, x.Shown()+" at "+wording.Clock(x.Clock.V, r.Plan.Units))
		}
	}
	return names
}

// turnsOf says on whose rotas a keeper has days.
func turnsOf(r *compile.Result, k *plan.Keeper) (out []string) {
	for _, x := range r.Plan.Rotas {
		if slices.ContainsFunc(x.Turns, func(t *plan.RotaTurn) bool { return t.Name.V == k.Name.V }) {
			out = append(out, "Has days by the rota "+x.Name.V)
		}
	}
	return out
}

// awayOf says when a keeper is away, and for whom they stand in.
func awayOf(r *compile.Result, k *plan.Keeper) (out []string) {
	for _, a := range r.Plan.Aways {
		of := "From " + a.From.V.Words() + ", back on " + a.To.V.Words()
		switch {
		case a.To.V < r.Today:
		case a.Name.V == k.Name.V && a.Cover.Set():
			out = append(out, of+": away, and "+person(r, a.Cover.V)+" stands in")
		case a.Name.V == k.Name.V:
			out = append(out, of+": away, and nobody stands in")
		case a.Cover.V == k.Name.V:
			out = append(out, of+": stands in for "+person(r, a.Name.V))
		}
	}
	return out
}

func listRooms(r *compile.Result) []Line {
	var out []Line
	for _, x := range r.Plan.Rooms {
		out = append(out, Line{Name: x.Name.V, Text: x.Shown()})
	}
	return out
}

// explainRoom says what a thermometer and a hygrometer show in a room, and what stands there.
func explainRoom(r *compile.Result, word string) []Answer {
	var out []Answer
	for _, x := range r.Plan.Rooms {
		if !means(word, x.Name.V, x.Shown()) {
			continue
		}
		var first []Line
		if x.Temperature.Set() {
			first = append(first, Line{Text: "Temperature: " + x.Temperature.V.String()})
		}
		if x.Winter.Set() {
			first = append(first, Line{Text: "In winter: " + x.Winter.V.String()})
		}
		if x.Summer.Set() {
			first = append(first, Line{Text: "In summer: " + x.Summer.V.String()})
		}
		if x.Humidity.Set() {
			first = append(first, Line{Text: "Humidity: " + x.Humidity.V.String()})
		}
		if len(x.Round) > 0 {
			first = append(first, Line{Text: "Round: " + strings.Join(texts(x.Round), ", ")})
		}
		if x.Note.Set() {
			first = append(first, Line{Text: x.Note.V})
		}
		parts := part(nil, "", first)
		out = append(out, Answer{Title: "Room " + x.Name.V + ": " + x.Shown(), Parts: part(parts, "Enclosures", standing(r, x)), Written: block(&x.Head)})
	}
	return out
}

// standing are the enclosures of a room, in walking order.
func standing(r *compile.Result, x *plan.Room) (out []Line) {
	for _, e := range r.Plan.Enclosures {
		if e.Place == x {
			out = append(out, Line{Name: e.Name.V, Text: describe(e)})
		}
	}
	return out
}
