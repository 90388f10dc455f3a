package compile

import (
	"fmt"
	"slices"
	"testing"

	"github.com/spf13/afero"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// TestBareAgainIsAsFresh: while somebody types in a plan that is refused, what the log alone
// would refuse stays urgent and what the plan does not, as for whoever compiles it anew; and
// boxes that did not change are not worked out without their log again.
func TestBareAgainIsAsFresh(t *testing.T) {
	box := func(name, inside string, males int) string {
		return fmt.Sprintf("enclosure %q {\n  species = \"hadrurus-arizonensis\"\n  housing {\n    inside = %q\n    lid    = \"solid, latched\"\n    vents  = \"cross\"\n    depth  = \"16 cm\"\n    hides  = 4\n  }\n  animals \"all\" {\n    count = \"%d.1.0\"\n    stage = \"adult\"\n  }\n}\n", name, inside, males)
	}
	const house = "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"east\" {\n  temperature = \"24 to 26 C\"\n}\n"
	disk := afero.NewMemMapFs()
	put := func(name, text string) {
		if err := afero.WriteFile(disk, "c/"+name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	put("house.care.hcl", house)
	put("ash.care.hcl", box("ash", "76 x 46 x 41 cm", 0))
	var reader plan.Reader
	var last *Result
	kept, urgent, refused := 0, 0, 0
	const fed, moved = "2027-02-20 ash fed\n", "2027-02-20 ash moved birch\n"
	for step, x := range []struct{ birch, log string }{
		{box("birch", "76 x 46 x 41 cm", 1), ""},
		{box("birch", "76 x 46 x 41 cm", 1), fed},
		{box("birch", "76 x 46 x 42 cm", 1), fed},
		{box("birch", "76 x 46 x", 1), fed},
		{box("birch", "76 x 46 x 4 cm", 1), fed},
		{box("birch", "76 x 46 x 42 cm", 0), fed},
		{box("birch", "76 x 46 x 42 cm", 0), fed + moved},
		{box("birch", "76 x 46 x 43 cm", 0), fed + moved},
		{box("birch", "76 x 46 x 43 cm", 1), fed + moved},
		{box("birch", "76 x 46 x 43 cm", 1), fed},
	} {
		put("birch.care.hcl", x.birch)
		put("2027.care.log", x.log)
		c, found, err := reader.Load(disk, "c")
		if err != nil {
			t.Fatal(err)
		}
		now := civil.Must(2027, 3, 1).At(12*60, c.Location)
		last = From(Input{Plan: c, Loaded: found, Now: now, Last: last})
		fresh, found, err := plan.Load(disk, "c")
		if err != nil {
			t.Fatal(err)
		}
		want := From(Input{Plan: fresh, Loaded: found, Now: now})
		said := func(r *Result) (all []string) {
			for i := range r.Findings {
				f := &r.Findings[i]
				all = append(all, fmt.Sprint(r.Plan.Files.Start(f.At), f.Severity, " ", f.Rule.ID, " ", f.Said()))
			}
			return all
		}
		if got, want := said(last), said(want); !slices.Equal(got, want) {
			t.Errorf("step %d: again\n%q\nfresh\n%q", step, got, want)
		}
		if b := last.bare; b != nil && len(b.boxes) == 2 && b.boxes[0].stands {
			kept++
		}
		n := finding.Count(last.Findings)
		urgent += n[finding.Urgent]
		if last.Refused() {
			refused++
		}
	}
	if kept < 6 || urgent < 3 || refused < 5 {
		t.Errorf("a box was kept %d times, %d findings are urgent, it was refused %d times", kept, urgent, refused)
	}
}
