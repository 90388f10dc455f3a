package paper

import (
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/balance"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/internal/planned"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Each card names whom to ring and who knows more; nothing stands there of what does not live here,
// everything of what does; and no number that neither the plan nor its physics has.
func TestCards(t *testing.T) {
	each(t, func(t *testing.T, r *compile.Result) {
		d, lacking := Cards(r)
		got := asHTML(t, d, Options{})
		if len(lacking) != 2 {
			t.Errorf("frames that are empty: %q", lacking)
		}
		lives := inhabited(r)
		for _, a := range schema.Aids {
			want := slices.ContainsFunc(roster.SheetsOf(lives), func(s *plan.SpeciesSheet) bool { return roster.Says(s, a.Figure, a.Words...) })
			if has := strings.Contains(strings.Join(got.lines, "\n"), pieces(a.Text)[0]); want && !has {
				t.Errorf("%q lives here and stands nowhere", a.Title)
			}
		}
		// What is a danger to life is carried by nobody who is not trained.
		for _, row := range (&hazards{r: r, lives: lives}).order().(Table).Rows {
			for _, l := range lives {
				if deadly(l.Plan.Sheet) && strings.Contains(row[1], l.Plan.Shown()) && !strings.HasSuffix(row[1], "by somebody trained, or left") && len(l.Plan.Shown()) > 3 {
					t.Errorf("%s is a danger to life, and anybody carries it: %q", l.Plan.Shown(), row)
				}
			}
		}
		known := d.stamp + r.Plan.Title() + strings.Join(schema.AidAlways, " ") + " 1 2 3 4 5 6 7 8 9 "
		for _, a := range schema.Aids {
			known += a.Title + a.Text + " "
		}
		for _, k := range r.Plan.Keepers {
			known += k.Shown() + " " + k.Phone.V + " "
		}
		for _, x := range r.Plan.Contacts {
			known += x.Shown() + " " + x.Phone.V + " "
		}
		h := &hazards{r: r, lives: lives}
		known += h.degrees(0) + " "
		for _, in := range h.rooms() {
			known += in.name + " " + wording.Number(float64(len(in.of))) + " "
		}
		for _, l := range lives {
			text, _ := h.fall(l)
			known += l.Plan.Shown() + " " + strings.ReplaceAll(text, "\x00", " ") + " "
			if b, ok := balance.Of(r.Plan, l.Plan, l); ok && b.Limited() {
				known += quantity.FormatAtMost(float64(b.HardHigh), l.Plan.Degrees()) + " " + wording.Degrees(b.Warmest().Air, l.Plan.Degrees()) + " "
			}
		}
		for _, line := range got.lines {
			for _, n := range digits.FindAllString(line, -1) {
				if !strings.Contains(known, n) {
					t.Errorf("%s stands in %q, and nobody said it", n, line)
				}
			}
		}
	})
}

// The boxes stand in the order in which time runs out, and in which there is least to spare: the
// order of the physics, asked again.
func TestCardsInOrder(t *testing.T) {
	r := collection(t, "examples/quillmoor", "2026-12-01")
	h := &hazards{r: r, lives: inhabited(r)}
	soonest := func(l *life.Enclosure) float64 {
		b, _ := balance.Of(r.Plan, l.Plan, l)
		return float64(min(b.Cooldown().Air.Low, b.ColdHouse().Air.Low))
	}
	var last float64
	for _, f := range h.falls() {
		first := soonest(f.of[0])
		for _, l := range f.of {
			first = min(first, soonest(l))
		}
		if first < last-30 { // rows that say the same are one
			t.Errorf("%s falls in %.0f min, after what takes %.0f", named(f.of), first, last)
		}
		last = first
	}
}

// What lives here decides which cards there are.
func TestWhichCards(t *testing.T) {
	titles := func(text string) (out []string) {
		t.Helper()
		c, found := planned.Files(t, planned.With("collection \"c\" {\n  time_zone = \"Europe/London\"\n}\n"+text, ""))
		r := compile.Compile(c, found, noonOf(c, planned.Day("2026-11-30")))
		if r.Roster == nil {
			t.Fatal(found)
		}
		d, _ := Cards(r)
		for _, s := range d.Sheets {
			out = append(out, s.Parts[0].(Title).Text)
		}
		return out
	}
	box := func(species, more string) string {
		return "enclosure \"e\" {\n  species = \"" + species + "\"\n  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n" + more + "}\n"
	}
	for name, x := range map[string]struct {
		text      string
		has, lack string
	}{
		"nobody":    {"", "No animal lives here", "stung"},
		"woodlice":  {box("armadillidium-vulgare", ""), "bite or scratch", "stung"},
		"a sting":   {box("pandinus-imperator", ""), "stung or bitten", "power fails"},
		"heated":    {box("pandinus-imperator", "  climate {\n    heater \"mat\" {\n      power = \"10 W\"\n      thermostat = \"28 C\"\n    }\n  }\n"), "power fails", "No animal"},
		"all leave": {box("pandinus-imperator", ""), "has to be left", "No animal"},
	} {
		all := strings.Join(titles(x.text), "\n")
		if !strings.Contains(all, x.has) || strings.Contains(all, x.lack) {
			t.Errorf("%s: %s", name, all)
		}
	}
}

// A number with its role stands in its frame, on every card that has one, and nowhere twice.
func TestRoles(t *testing.T) {
	c, found := planned.Files(t, planned.With(`collection "c" {
  time_zone = "Europe/London"
}

contact "help" {
  phone = "the red one"
  role  = "emergency"
}

contact "poison" {
  title = "Poison line"
  phone = "the green one"
  role  = "poison-centre"
}

enclosure "e" {
  species = "parabuthus-transvaalicus"

  animals "one" {
    count = 1
    stage = "adult"
  }
}
`, ""))
	r := compile.Compile(c, found, noonOf(c, planned.Day("2026-11-30")))
	d, lacking := Cards(r)
	if len(lacking) > 0 {
		t.Errorf("the plan has both, and lacking are %q", lacking)
	}
	for _, s := range d.Sheets {
		n := s.Parts[1].(Numbers)
		count := map[string]int{}
		for _, x := range n.Of {
			count[x.Phone]++
			if x.Phone == "the red one" && x.Who != "Emergency number here" {
				t.Errorf("%s is called %s", x.Phone, x.Who)
			}
		}
		if count["the red one"] != 1 || count["the green one"] > 1 || count[""] > 0 {
			t.Errorf("%s: %+v", s.Head, n.Of)
		}
	}
	text := strings.Join(asHTML(t, d, Options{}).lines, "\n")
	if at := strings.Index(text, schema.AidDanger.Title); at < 0 || at > strings.Index(text, "Soap and water") {
		t.Errorf("a danger to life comes after what can wait:\n%s", text)
	}
}

// Each card is one side of paper, as a browser prints it, and all of it is there: in a small house,
// in one with a species whose venom is a danger to life, and in one of forty tubs on letter.
func TestPrintedCards(t *testing.T) {
	t.Parallel()
	for name, x := range map[string]struct {
		r    *compile.Result
		size string
	}{"quillmoor": {collection(t, "examples/quillmoor", "2026-12-01"), "(A4)"}, "american": {american(t), "letter"}, "forty": {collection(t, "testdata/jobs", "2026-11-30"), "(A4)"}} {
		d, _ := Cards(x.r)
		pdf := printed(t, d)
		if name != "american" { // whose names are longer than a line
			holdsAll(t, d, pdf, x.size)
		}
		pages := strings.Split(strings.TrimSuffix(run(t, "pdftotext", "-layout", pdf, "-"), "\f"), "\f")
		if len(pages) != len(d.Sheets) {
			t.Errorf("%s: %d cards are %d sides", name, len(d.Sheets), len(pages))
		}
	}
}
