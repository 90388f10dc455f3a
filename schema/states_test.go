package schema

import (
	"strings"
	"testing"
	"unicode"
)

// Drinking water is never held, and everybody may look: the principle of the table.
func TestWaterAndLookAreNeverHeld(t *testing.T) {
	for _, s := range States {
		for _, r := range []Row{RowWater, RowLook} {
			if m := s.May[r]; m.Manner == Held || m.From > 0 {
				t.Errorf("%s holds %s", s.Name, r)
			}
		}
	}
}

// Live prey bites: where killed prey must not be offered, live prey must not either,
// and live prey is never allowed sooner or more often.
func TestLivePreyIsTheStricter(t *testing.T) {
	for _, s := range States {
		if s.May[RowLive].Weaker(s.May[RowKilled]) {
			t.Errorf("%s: live %v, killed %v", s.Name, s.May[RowLive], s.May[RowKilled])
		}
	}
}

// Who cannot be touched is not dug up, and who must not be dug up is not handled
// sooner: each of these is at least as strict as the one before it.
func TestDisturbingIsOrdered(t *testing.T) {
	for _, s := range States {
		if s.May[RowCount].Weaker(s.May[RowClean]) || s.May[RowDeep].Weaker(s.May[RowClean]) {
			t.Errorf("%s: substrate %v, count %v, spot clean %v", s.Name, s.May[RowDeep], s.May[RowCount], s.May[RowClean])
		}
		if s.May[RowLook].Manner == Outside && s.May[RowHandle].Manner != Held {
			t.Errorf("%s: looked at from outside and handled", s.Name)
		}
	}
}

// The course of a birth and of a moult: a state is in no row weaker than the one that
// comes after it, which is less delicate (common practice, no source).
func TestCourses(t *testing.T) {
	for _, c := range [][2]*State{
		{StateGravidLate, StateGravid}, {StateBirth, StateBrood}, {StateBrood, StateYoungRound}, {StateYoungRound, StateAfterBrood},
		{StateSac, StateBrood}, {StateMoulting, StateSoft}, {StateSoft, StateHardening},
	} {
		for r := RowLook; r < Rows; r++ {
			if c[0].May[r].Weaker(c[1].May[r]) {
				t.Errorf("%s: %s is %v, in %s %v", r, c[0].Name, c[0].May[r], c[1].Name, c[1].May[r])
			}
		}
	}
}

// What is held needs no interval, and what somebody reads in front of a tank is short,
// begins without a capital and ends without a full stop.
func TestCellsAreForReading(t *testing.T) {
	short := func(where, s string, limit int) {
		if s != "" && (unicode.IsUpper([]rune(s)[0]) || strings.HasSuffix(s, ".") || len([]rune(s)) > limit) {
			t.Errorf("%s: %q", where, s)
		}
	}
	for _, s := range States {
		short(s.Name, s.Is, 30)
		short(s.Name, s.Rule, 90)
		if s.Is == "" || s.Rule == "" || s.Doc == "" {
			t.Errorf("%s does not say everything", s.Name)
		}
		for r := RowLook; r < Rows; r++ {
			m := s.May[r]
			short(s.Name+", "+r.String(), m.Words, 60)
			if m.Manner == Held && (m.Every > 0 || m.From > 0) {
				t.Errorf("%s, %s: held, with days", s.Name, r)
			}
		}
		if s.May[RowFree] != (May{}) {
			t.Errorf("%s holds what is not at the animals", s.Name)
		}
	}
}

func TestWeaker(t *testing.T) {
	for _, x := range []struct {
		a, b May
		want bool
	}{
		{May{}, May{Manner: Hatch}, true},
		{May{Manner: Held}, May{Manner: Hatch}, false},
		{May{Manner: Held}, May{Manner: Held, Every: 7}, false},
		{May{Manner: Hatch, Every: 7}, May{Manner: Hatch, Every: 14}, true},
		{May{Manner: Hatch}, May{Manner: Hatch, Every: 14}, true},
		{May{Manner: Hatch, Every: 14}, May{Manner: Hatch}, false},
		{May{Manner: Hatch, From: 1}, May{Manner: Hatch, From: 3}, true},
		{May{Manner: Hatch, From: 3, Every: 7}, May{Manner: Hatch, From: 3, Every: 7}, false},
	} {
		if got := x.a.Weaker(x.b); got != x.want {
			t.Errorf("%+v weaker than %+v: %v", x.a, x.b, got)
		}
	}
}

// Sheets are written with the words of rows and manners: they do not change.
func TestWordsOfTheTable(t *testing.T) {
	for r := RowLook; r < Rows; r++ {
		if got := FindRows(r.Word()); len(got) != 1 || got[0] != r {
			t.Errorf("%s is found as %v", r.Word(), got)
		}
	}
	if n := len(FindRows(AllRows)); n != int(Rows)-1 {
		t.Errorf("all is %d rows", n)
	}
	for m := AsUsual; m <= Held; m++ {
		if got, ok := FindManner(Manners[m].Name); !ok || got != m {
			t.Errorf("%v is found as %v", m, got)
		}
	}
	if _, ok := FindManner("at will"); ok || FindRows("tail") != nil {
		t.Error("unknown words are found")
	}
}
