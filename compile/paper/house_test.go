package paper

import (
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/register"
	"vivary/internal/planned"
	"vivary/plan"
	"vivary/schema/civil"
)

// What lives in a rack is named together on the card for a power cut, and nobody is fed before a
// day in range.
func TestPowerCutCardGoesShelfByShelf(t *testing.T) {
	box := func(name, rack string) *life.Enclosure {
		e := &plan.Enclosure{}
		e.Name.V, e.Title.V, e.Rack.V = name, "", rack
		return &life.Enclosure{Plan: e}
	}
	got := byShelf([]*life.Enclosure{box("tub-1", "low"), box("tub-9", "high"), box("tub-2", "low"), box("tank", "")})
	if want := "rack low: Tub 1 and 2; rack high: Tub 9; Tank"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
	d, _ := Cards(collection(t, "examples/quillmoor", "2026-11-25"))
	if text := plainOf(t, d); !strings.Contains(text, "Do not feed until the box has been back in range for 24 hours") {
		t.Error("the card does not say when to feed again")
	}
}

// Of a listed species the register has the name on its paper and when the list was looked up; and
// until when records are kept, from the last of them, as the plan says.
func TestRegisterHasNameOnPaperAndHowLongItIsKept(t *testing.T) {
	c, found := planned.Files(t, map[string]string{"a.care.hcl": `collection "c" {
  time_zone    = "Europe/London"
  records_kept = "3 years"
}
room "r" {
  temperature = "26 to 28 C"
}
enclosure "burrow" {
  species = "pandinus-imperator"
  housing {
    inside = "90 x 45 x 45 cm"
    lid    = "solid, latched"
  }
  animals "emperors" {
    count         = "1.2.3"
    stage         = "adult"
    origin        = "captive bred"
    paper         = "EU-1"
    paper_species = "Pandinus imperator (Koch)"
    list_checked  = "2026-09-01"
  }
}
`, "a.care.log": "2028-02-29 burrow emperors sold 1 \"to a school\"\n"})
	on := civil.Must(2028, 3, 1)
	r := compile.Compile(c, found, on.At(12*60, c.Location))
	x := register.Of(r, on).Rows[0]
	if x.OnPaper != "Pandinus imperator (Koch)" || x.Checked != civil.Must(2026, 9, 1) || x.Kept != civil.Must(2031, 3, 1) {
		t.Errorf("%q %s %s", x.OnPaper, x.Checked, x.Kept)
	}
	text := plainOf(t, Register(r, register.Of(r, on), register.Of(r, on).Balance(on-365, on)))
	for _, want := range []string{"on it: Pandinus imperator (Koch)", "list looked up 2026-09-01", "records kept until 2031-03-01"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not in the register:\n%s", want, text)
		}
	}
}
