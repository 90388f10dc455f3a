package schedule

import "vivary/plan"

// Leave is what an absence means for people on one day, apart from the rounds.
type Leave struct {
	Name  string // stable: part of the entry's identity
	Title string
	Lines []string
	From  int // place on the horizon of the first day
	Days  int
	// Keeper says whom it is for: the one who is away, the one who stands in, or
	// everybody, "".
	Keeper string
	Away   string // who is away
}

// Leaves returns what an absence means: getting ready on the last day before it,
// the days away, and the return, for the keeper; standing in and handing back for
// whoever covers.
func (p *People) Leaves(c *plan.Collection) []Leave {
	var out []Leave
	for k := range p.Absences {
		a := &p.Absences[k]
		keeper, cover := shown(c, a.Away.Name.V), shown(c, a.Away.Cover.V)
		id := a.Away.Name.V + "/" + a.Away.From.V.String()
		until := a.Away.To.V.Short()
		away := Leave{Away: a.Away.Name.V, Name: id + "/away", Title: keeper + " is away", From: a.Before, Days: int(a.Away.To.V - a.Away.From.V)}
		ready := []string{"Fill every dish", "Check every lid, lock and thermostat"}
		back := []string{"Count the animals and look at every lid", "Read the lowest and the highest temperatures", "Write down what was seen"}
		if a.Away.Cover.Set() {
			away.Lines = []string{cover + " stands in until " + until}
			ready = append(ready, "Lay out the portions and label them with their dates", "Leave the numbers of a mentor and a veterinarian")
			back = append([]string{"Tell " + cover + " that you are back", "Read the notes"}, back...)
			out = append(out,
				Leave{Away: a.Away.Name.V, Name: id + "/stand-in", Title: "You stand in for " + keeper, From: a.Before, Days: 1, Keeper: a.Away.Cover.V,
					Lines: []string{"Do what each round says, and no more", "Lift no animal; open no lid that need not be opened", "Write down what looks wrong, and ring"}},
				Leave{Away: a.Away.Name.V, Name: id + "/handed-back", Title: "Handed back to " + keeper, From: a.To, Days: 1, Keeper: a.Away.Cover.V,
					Lines: []string{keeper + " does the rounds again from today"}})
		} else {
			away.Lines = []string{"Nobody stands in until " + until}
		}
		out = append(out, away,
			Leave{Away: a.Away.Name.V, Name: id + "/ready", Title: "Get ready to leave tomorrow", Lines: ready, From: a.Before - 1, Days: 1, Keeper: a.Away.Name.V},
			Leave{Away: a.Away.Name.V, Name: id + "/return", Title: "Back today", Lines: back, From: a.To, Days: 1, Keeper: a.Away.Name.V})
	}
	return out
}

func shown(c *plan.Collection, keeper string) string {
	if k := c.Keeper(keeper); k != nil {
		return k.Shown()
	}
	return keeper
}

// Regular reports whether a keeper does any round as their own, and does not only
// stand in for others.
func (s *Schedule) Regular(keeper string) bool {
	for x := range s.All() {
		if x.Keeper == keeper {
			return true
		}
	}
	return false
}
