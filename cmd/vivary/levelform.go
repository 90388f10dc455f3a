package main

import (
	"maps"
	"slices"

	"vivary/compile/level"
)

// levelForm is the JSON form of a layout; schema/json/level.schema.json describes it.
type levelForm struct {
	envelope
	Measures []measureForm `json:"measures"`
	Moves    []moveForm    `json:"moves"`
	Kept     []string      `json:"kept"`
	Best     bool          `json:"best"`
	Files    []string      `json:"files"`
	Written  bool          `json:"written"`
}

// measureForm is how long the days of somebody, or of a round, are and would be.
type measureForm struct {
	Keeper string     `json:"keeper,omitempty"`
	Round  string     `json:"round,omitempty"`
	Limit  int        `json:"limit_minutes"`
	Week   int        `json:"week_minutes"`
	Bound  int        `json:"days_a_week_at_least"`
	Most   int        `json:"most_minutes"`
	On     string     `json:"most_on"`
	Over   int        `json:"days_over"`
	Is     longForm   `json:"would_be"`
	Stays  []stayForm `json:"stays"`
	Borne  bool       `json:"left_so"`
}

type longForm struct {
	Most int    `json:"most_minutes"`
	On   string `json:"most_on"`
	Over int    `json:"days_over"`
}

type stayForm struct {
	Minutes int    `json:"minutes"`
	Why     string `json:"why"`
}

type moveForm struct {
	Enclosure string `json:"enclosure"`
	Care      string `json:"care,omitempty"`
	Feeding   string `json:"feeding,omitempty"`
	Days      string `json:"days"`
	By        int    `json:"by_days"`
	Next      string `json:"next"`
}

func newLevelForm(l *level.Layout, written bool) levelForm {
	out := levelForm{envelope: begin("level"), Measures: []measureForm{}, Moves: []moveForm{}, Kept: []string{}, Best: l.Best, Files: []string{}, Written: written}
	out.Kept = append(out.Kept, l.Kept...)
	out.Files = append(out.Files, slices.Sorted(maps.Keys(l.Texts))...)
	for i := range l.Was {
		was, is := &l.Was[i], &l.Is[i]
		m := measureForm{Limit: was.Cap, Week: was.Week(), Bound: was.Bound(), Most: was.Most, On: was.On.String(), Over: was.Over, Borne: was.Borne,
			Is: longForm{is.Most, is.On.String(), is.Over}, Stays: []stayForm{}}
		if was.Keeper != nil {
			m.Keeper = was.Keeper.Name.V
		} else {
			m.Round = was.Round.Name.V
		}
		for _, s := range is.Stays {
			m.Stays = append(m.Stays, stayForm{s.Minutes, s.Why})
		}
		out.Measures = append(out.Measures, m)
	}
	for _, x := range l.Moves {
		m := moveForm{Enclosure: x.Key.Enclosure, Days: x.Days, By: x.By, Next: x.Next.String()}
		if x.Key.Meal {
			m.Feeding = x.Key.Name
		} else {
			m.Care = x.Key.Name
		}
		out.Moves = append(out.Moves, m)
	}
	return out
}
