package plan

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"vivary/schema"
)

// In the example every name stands where the table says, and everything but words
// of the program is given somewhere.
func TestUses(t *testing.T) {
	c, _ := load(t, quillmoor(t))
	count := map[string]int{}
	for _, u := range c.Uses() {
		if got := c.Files.Of(u.At); got != u.Name {
			t.Errorf("%s %q stands at %v, which is %q", u.Kind, u.Name, c.Files.Start(u.At), got)
		}
		count[u.Kind]++
		if u.Kind == schema.NamesKind || u.Kind == schema.NamesRule {
			continue
		}
		if u.Kind == "animals" && strings.HasPrefix(u.Name, "young-") {
			continue // the log itself made them
		}
		if !u.Defined.Written() {
			t.Errorf("%v: %s %q is given nowhere", c.Files.Start(u.At), u.Kind, u.Name)
		} else if got := c.Files.Of(u.Defined); got != u.Name {
			t.Errorf("%v: %s %q is given as %q", c.Files.Start(u.At), u.Kind, u.Name, got)
		}
	}
	for _, kind := range []string{"room", "keeper", "round", "calendar", "enclosure", "template", "species", "animals", "care", "feeder", "size", "rule"} {
		if count[kind] == 0 {
			t.Errorf("no %s is named", kind)
		}
	}
}

// usesOf returns the uses at a name's places as "kind name line -> line", of which
// built-in ones are "-> below" and those that are given nowhere "-> nowhere".
func usesOf(c *Collection, name string) (all []string) {
	for _, u := range c.Uses() {
		if u.Name != name {
			continue
		}
		to := "nowhere"
		switch {
		case u.Defines():
			to = "itself"
		case u.Defined.File < 0:
			to = "below"
		case u.Defined.Written():
			to = fmt.Sprint(c.Files.Start(u.Defined).Line)
		}
		all = append(all, fmt.Sprintf("%s %d -> %s", u.Kind, c.Files.Start(u.At).Line, to))
	}
	return all
}

// What is named by whom, kind by kind.
func TestUsesByKind(t *testing.T) {
	c, _ := load(t, map[string]string{"a.care.hcl": `keeper "kim" {
}
round "late" {
  at     = "19:30"
  keeper = "kim"
}
away "kim" {
  cover = "nobody-known"
}
calendar "all" {
  rounds     = ["late", "early"]
  enclosures = ["tub"]
  kinds      = ["feed"]
}
template "box" {
  feeding "old" {
    prey   = "cricket  adult"
    source = ["K20", "kim"]
  }
  care "dusk" {
    kind = "mist"
  }
}
enclosure "tub" {
  template = "box"
  species  = "pandinus-imperator"
  animals "old" {
  }
  care "dusk" {
    round = ["late"]
  }
  accept "lid" {
  }
}
enclosure "shed" {
  animals "old" {
  }
  feeding "old" {
    rotate = ["cricket adult", "roach huge"]
  }
}
enclosure "tub" {
}
`, "b.care.log": `2026-11-02 tub old moult
2026-11-02 tub old moult
2026-11-03 tub old moved shed old
2026-11-04 tub done dusk
2026-11-04 tub done water
2026-11-04 shed skipped leaves
2026-11-04 shed skipped nothing
2026-11-05 shed fed 3 cricket adult
2026-11-05 shed fed 3 greens
2026-11-05 gone refused
`})
	for name, want := range map[string][]string{
		"kim":                {"keeper 1 -> itself", "keeper 5 -> 1", "keeper 7 -> 1"},
		"nobody-known":       {"keeper 8 -> nowhere"},
		"late":               {"round 3 -> itself", "round 11 -> 3", "round 30 -> 3"},
		"early":              {"round 11 -> nowhere"},
		"feed":               {"kind 13 -> nowhere"},
		"box":                {"template 15 -> itself", "template 25 -> 15"},
		"tub":                {"enclosure 12 -> 24", "enclosure 24 -> itself", "enclosure 42 -> 24", "enclosure 1 -> 24", "enclosure 2 -> 24", "enclosure 3 -> 24", "enclosure 4 -> 24", "enclosure 5 -> 24"},
		"shed":               {"enclosure 35 -> itself", "enclosure 3 -> 35", "enclosure 6 -> 35", "enclosure 7 -> 35", "enclosure 8 -> 35", "enclosure 9 -> 35"},
		"gone":               {"enclosure 10 -> nowhere"},
		"old":                {"animals 16 -> 27", "animals 27 -> itself", "animals 36 -> itself", "animals 38 -> 36", "animals 1 -> 27", "animals 2 -> 27", "animals 3 -> 27", "animals 3 -> 36"},
		"cricket":            {"feeder 17 -> below", "feeder 39 -> below", "feeder 8 -> below"},
		"adult":              {"size 17 -> below", "size 39 -> below", "size 8 -> below"},
		"huge":               {"size 39 -> nowhere"},
		"K20":                {"source 18 -> below"},
		"dusk":               {"care 20 -> itself", "care 29 -> itself", "care 29 -> 20", "care 4 -> 29", "care 4 -> 20"},
		"mist":               {"kind 21 -> nowhere"},
		"pandinus-imperator": {"species 26 -> below"},
		"lid":                {"rule 32 -> nowhere"},
		"water":              {"care 5 -> below"},
		"leaves":             {"kind 6 -> nowhere"},
		"nothing":            nil,
		"greens":             nil,
	} {
		if got := usesOf(c, name); !slices.Equal(got, want) {
			t.Errorf("%s:\n%s\nnot\n%s", name, strings.Join(got, "\n"), strings.Join(want, "\n"))
		}
	}
}

// The table of a Reader's collection is that of a fresh load.
func TestUsesAfterReload(t *testing.T) {
	r, files := &Reader{}, quillmoor(t)
	again(t, r, files)
	files = maps.Clone(files)
	files["rooms.care.hcl"] = "# moved down by a line\n" + files["rooms.care.hcl"]
	c, _ := again(t, r, files)
	fresh, _ := load(t, files)
	a, b := c.Uses(), fresh.Uses()
	if len(a) != len(b) {
		t.Fatalf("%d uses, fresh %d", len(a), len(b))
	}
	for i := range a {
		if a[i].Kind != b[i].Kind || a[i].Name != b[i].Name || c.Files.Start(a[i].At) != fresh.Files.Start(b[i].At) || c.Files.Start(a[i].Defined) != fresh.Files.Start(b[i].Defined) {
			t.Errorf("%+v, fresh %+v", a[i], b[i])
		}
	}
}

// A rack is named by what stands in it, and by the log in the place of an enclosure.
func TestUsesOfARack(t *testing.T) {
	c, _ := load(t, map[string]string{"a.care.hcl": `rack "shelf" {
}
template "box" {
  rack = "shelf"
}
enclosure "tub" {
  rack = "shelf"
}
`, "b.care.log": `2026-11-02 shelf done reading
2026-11-02 tub done reading
`})
	if got := usesOf(c, "shelf"); !slices.Equal(got, []string{"rack 1 -> itself", "rack 4 -> 1", "rack 7 -> 1", "rack 1 -> 1"}) {
		t.Error(got)
	}
}
