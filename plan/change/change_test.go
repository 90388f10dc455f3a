package change_test

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/internal/randomplan"
	"vivary/plan"
	"vivary/plan/change"
)

func load(t *testing.T, files map[string]string) *plan.Collection {
	t.Helper()
	disk := afero.NewMemMapFs()
	for name, text := range files {
		if err := afero.WriteFile(disk, name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	c, _, err := plan.Load(disk, ".")
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// with is a collection's files with others in their place.
func with(files map[string]string, others map[string][]byte) map[string]string {
	out := maps.Clone(files)
	for name, text := range others {
		out[name] = string(text)
	}
	return out
}

// paths are the places of pieces.
func paths(c *change.Changes) (out []string) {
	for i := range c.Pieces {
		out = append(out, c.Pieces[i].Path())
	}
	return out
}

// TestAllPiecesMakeTheSecond: all pieces made in the first collection are the second, whatever was
// edited; each one by itself leaves all others to be made, and none of its own.
func TestAllPiecesMakeTheSecond(t *testing.T) {
	pieces := 0
	for seed := range uint64(80) {
		p := randomplan.New(seed)
		was := p.Files(p.Today - 20)
		for range 1 + int(seed%4) {
			p.Edit()
		}
		switch seed % 5 {
		case 1:
			p = p.Templated()
		case 2:
			p = p.Racked()
		}
		is := p.Files(p.Today)
		a, b := load(t, was), load(t, is)
		c := change.Between(a, b)
		pieces += len(c.Pieces)
		all := make([]int, len(c.Pieces))
		for i := range all {
			all[i] = i
		}
		texts, ok := c.With(all...)
		if !ok {
			t.Errorf("seed %d: the pieces cannot be made together: %q", seed, paths(c))
			continue
		}
		if left := change.Between(load(t, with(was, texts)), b); len(left.Pieces) > 0 {
			t.Errorf("seed %d: of %q there are left %q", seed, paths(c), paths(left))
		}
		for i := range all {
			texts, ok := c.With(i)
			if !ok {
				t.Errorf("seed %d: %q cannot be made alone", seed, c.Pieces[i].Path())
				continue
			}
			left := paths(change.Between(load(t, with(was, texts)), b))
			others := append(slices.Clone(paths(c)[:i]), paths(c)[i+1:]...)
			// Lines of a log about a name that was changed are those of two names.
			if path := c.Pieces[i].Path(); !c.Pieces[i].Log() && slices.Contains(left, path) && !slices.Contains(others, path) {
				t.Errorf("seed %d: %q was made, and is left", seed, c.Pieces[i].Path())
			}
			if len(left) >= len(c.Pieces) {
				t.Errorf("seed %d: %d pieces were %d, and %q was made", seed, len(left), len(c.Pieces), c.Pieces[i].Path())
			}
		}
		if back := change.Between(b, a); len(back.Pieces) != len(c.Pieces) {
			t.Errorf("seed %d: %d pieces one way, %d the other:\n%q\n%q", seed, len(c.Pieces), len(back.Pieces), paths(c), paths(back))
		}
	}
	if pieces < 150 {
		t.Errorf("only %d pieces in all", pieces)
	}
}

const house = `collection "c" {
  time_zone = "Europe/London"
}

keeper "ann" {
}

enclosure "a" {
  species = "pandinus-imperator"

  climate {
    humidity = "70 to 80 %"

    heater "mat" {
      power = "20 W"
    }
  }

  animals "adults" { count = 2 }
}
`

// TestPieces: what a keeper would call one change is one piece, and is called as they would.
func TestPieces(t *testing.T) {
	for name, x := range map[string]struct {
		old, now string
		want     []string
	}{
		"a value":           {`"70 to 80 %"`, `"60 to 70 %"`, []string{"a, climate, humidity"}},
		"another layout":    {`humidity = "70 to 80 %"`, `humidity="70 to 80 %" # damp`, nil},
		"an attribute more": {`power = "20 W"`, "power = \"20 W\"\n      place = \"side\"", []string{"a, climate, heater mat, place"}},
		"one less":          {"    humidity = \"70 to 80 %\"\n", "", []string{"a, climate, humidity"}},
		"a block less":      {"    heater \"mat\" {\n      power = \"20 W\"\n    }\n", "", []string{"a, climate, heater mat"}},
		"another name":      {`enclosure "a" {`, "enclosure \"b\" {\n  formerly = \"a\"", []string{"b, name"}},
		"another, unsaid":   {`enclosure "a" {`, `enclosure "b" {`, []string{"a", "b"}},
		"a keeper more":     {`keeper "ann" {`, "keeper \"bo\" {\n}\n\nkeeper \"ann\" {", []string{"keeper bo"}},
		"on one line":       {`{ count = 2 }`, `{ count = 3 }`, []string{"a, animals adults"}},
		"out of one line":   {`{ count = 2 }`, "{\n    count = 2\n  }", nil},
		"two heaters":       {`heater "mat" {`, "heater \"lamp\" {\n      power = \"40 W\"\n    }\n\n    heater \"mat\" {", []string{"a, climate, heater lamp"}},
		"ends of lines":     {"\n", "\r\n", nil},
	} {
		n := 1
		if name == "ends of lines" {
			n = -1
		}
		a, b := load(t, map[string]string{"a.care.hcl": house}), load(t, map[string]string{"a.care.hcl": strings.Replace(house, x.old, x.now, n)})
		if got := paths(change.Between(a, b)); !slices.Equal(got, x.want) {
			t.Errorf("%s: %q, not %q", name, got, x.want)
		}
		if n := len(change.Between(b, a).Pieces); n != len(x.want) {
			t.Errorf("%s: %d pieces back, not %d", name, n, len(x.want))
		}
	}
}

// TestLogs: a log is a set of facts, wherever and in whichever order they stand; a fact that stands
// twice has come once more.
func TestLogs(t *testing.T) {
	log := "2026-11-01 a adults fed\n2026-11-02 a adults fed\n2026-11-03 keeper ann away \"ill\"\n"
	files := func(parts ...string) map[string]string {
		out := map[string]string{"a.care.hcl": house}
		for i, p := range parts {
			out[string(rune('a'+i))+".care.log"] = p
		}
		return out
	}
	lines := strings.SplitAfter(log, "\n")
	a := load(t, files(log))
	if c := change.Between(a, load(t, files(lines[2]+lines[0], "# more\n"+lines[1]))); len(c.Pieces) > 0 {
		t.Errorf("the same facts are %q", paths(c))
	}
	c := change.Between(a, load(t, files(log+"2026-11-04 a adults refused\n")))
	if len(c.Pieces) != 1 || c.Pieces[0].Head() != "the log of a" || c.Pieces[0].Is.Line != 4 {
		t.Errorf("%+v", c.Pieces)
	}
	if c = change.Between(a, load(t, files(lines[0]+lines[1]))); len(c.Pieces) != 1 || len(c.Pieces[0].Gone) != 1 || c.Pieces[0].Name != "ann" {
		t.Errorf("%+v", c.Pieces)
	}
}

// TestOver: a trial takes the place of what it names, adds what is not there, and leaves the rest;
// what cannot be read is found at its place.
func TestOver(t *testing.T) {
	files := map[string]string{"a.care.hcl": house}
	a := load(t, files)
	for name, x := range map[string]struct {
		text string
		want []string
	}{
		"a heater":      {"enclosure \"a\" {\n  climate {\n    heater \"mat\" {\n      power = \"60 W\"\n    }\n  }\n}\n", []string{"a, climate, heater mat, power"}},
		"more of one":   {"enclosure \"a\" {\n  title = \"A\"\n\n  animals \"young\" {\n    count = 3\n  }\n}\n", []string{"a, title", "a, animals young"}},
		"an enclosure":  {"enclosure \"b\" {\n}\n", []string{"b"}},
		"a trip":        {"away \"ann\" {\n  from = \"2027-01-01\"\n  to = \"2027-01-09\"\n}\n", []string{"away ann"}},
		"nothing new":   {"enclosure \"a\" {\n  species = \"pandinus-imperator\"\n}\n", nil},
		"two of a kind": {"keeper \"bo\" {\n}\n\nenclosure \"a\" {\n  room = \"x\"\n}\n", []string{"keeper bo", "a, room"}},
	} {
		texts, found, err := change.Over(a, "some/where/a.care.hcl", []byte(x.text))
		if len(found) > 0 || err != nil {
			t.Errorf("%s: %v %v", name, found, err)
			continue
		}
		got := paths(change.Between(a, load(t, with(files, texts))))
		slices.Sort(got)
		slices.Sort(x.want)
		if !slices.Equal(got, x.want) {
			t.Errorf("%s: %q, not %q", name, got, x.want)
		}
	}
	if texts, found, err := change.Over(a, "x.care.log", []byte("2026-11-28 a adults moult\n")); err != nil || len(found) > 0 || len(texts) != 1 {
		t.Error(texts, found)
	}
	for _, broken := range []string{"enclosure \"a\" {", "x = 1\n", "", "enclosure \"a\" { climate { } \n", "# nothing\n"} {
		if texts, found, err := change.Over(a, "x.care.hcl", []byte(broken)); len(found) == 0 && err == nil {
			t.Errorf("%q makes %q", broken, texts)
		}
	}
}
