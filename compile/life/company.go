package life

import (
	"slices"
	"strconv"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// mixed notes that animals came to where others live. Where one of both is in
// quarantine, all are from that day, and moving them back changes nothing.
func (r *reader) mixed(from, j *track, e *plan.Event) {
	broken := seen{}
	for _, t := range r.living() {
		if t != j && r.clock(t, e.Date).ok {
			broken = see(e)
		}
	}
	if from != j && r.clock(from, e.Date).ok {
		broken = see(e)
	}
	if from == j && !r.out.Plan.Culture.V && r.length(j) > 0 {
		broken = see(e) // one that has just come
	}
	if !broken.ok || from == j && r.out.Plan.Culture.V {
		return
	}
	for _, t := range r.living() {
		t.arrived = broken
	}
	j.arrived = broken
	name := "quarantine-broken/" + e.Date.String()
	if slices.ContainsFunc(r.out.Asks, func(a Ask) bool { return a.Name == name }) {
		return // it is asked once for a day
	}
	r.out.Asks = append(r.out.Asks, Ask{Name: name, From: e.Date, Until: e.Date + civil.Date(max(r.length(j), r.clear())), Every: 7, Urgent: true, At: e.At,
		Text:  "quarantine was broken " + e.Date.Words() + ": all here are in it now, own tools, no one leaves; log mites, if any",
		Said:  "animals in quarantine and others were put together on " + e.Date.Words() + ": all of them are in quarantine from that day",
		Write: "mites, ill or died, where that is seen: moving them back changes nothing"})
}

// company asks for animals to be parted that the log put together and that must not
// be: two kinds, or more than one of a kind that is kept one to a box.
func (r *reader) company() {
	living := r.living()
	for _, t := range living {
		if !t.joined.ok || t.Mother != nil {
			continue
		}
		kinds, total, males := false, 0, 0
		for _, o := range living {
			kinds = kinds || o.Sheet != t.Sheet
			if o.Mother == nil && o.Sheet == t.Sheet {
				total += o.now()
				if o.stage().Stage == "adult" {
					males += o.males
				}
			}
		}
		a := Ask{Name: "part/" + t.Animals.Name.V + "/" + t.joined.on.String(), From: t.joined.on, Every: 1, Urgent: true, Harm: HarmBirth, At: t.joined.at, Write: "moved, how many and the enclosure that they go to"}
		switch {
		case kinds:
			a.Rule = ruleMixed
			a.Text = "two kinds of animals are in one box: part them today; log moved"
			a.Said = t.Animals.Name.V + ", " + count(t.now()) + " " + t.kind() + ", came to animals of another kind on " + t.joined.on.Words()
		case males > 1 && t.Sheet != nil && t.Sheet.Is(schema.FigureKeeping, "groups of one male"):
			a.About = AboutCompany
			a.Text = count(males) + " grown males are in one box: part them today; log moved"
			a.Said = t.Animals.Name.V + " came to others on " + t.joined.on.Words() + ", and " + count(males) + " of them are males"
			a.Limit = "groups with one adult male, species sheet " + t.Sheet.Name.V
		case total > 1 && t.lonely() && !r.boxes():
			a.About = AboutCompany
			a.Text = "kept one to a box, and " + count(total) + " are here: part them today; log moved"
			a.Said = t.Animals.Name.V + " came to others on " + t.joined.on.Words() + ", and " + t.Sheet.Shown() + " is kept one to a box"
			if f := t.Sheet.Figure(schema.FigureKeeping, ""); f != nil {
				a.Cited = f.Cited
			}
			a.Limit = "keeping, species sheet " + t.Sheet.Name.V
		default:
			continue
		}
		r.out.Asks = append(r.out.Asks, a)
	}
}

// joined is the last line by which animals came to others.
func (r *reader) joined() (last seen) {
	for _, t := range r.living() {
		if t.joined.ok && t.joined.on >= last.on {
			last = t.joined
		}
	}
	return last
}

// kind is what animals are, as a keeper knows it.
func (t *track) kind() string {
	if t.Sheet == nil {
		return "of a species that is not known"
	}
	return t.Sheet.Shown()
}

// lonely reports whether a kind is kept one to a box.
func (t *track) lonely() bool {
	return t.Sheet != nil && (t.Sheet.Is(schema.FigureKeeping, "alone") || t.Sheet.Is(schema.FigureKeeping, "alone, or mother with brood"))
}

// boxes reports whether the enclosure has places apart for each.
func (r *reader) boxes() bool {
	h := r.out.Plan.Housing
	return h != nil && h.Places.Set() && h.Places.V > 1
}

func count(n int) string { return strconv.Itoa(n) }
