package compile_test

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"vivary/plan/finding"
)

// dampBox is an enclosure of testdata/damp: what it is called, what is found, and its text.
type dampBox struct{ at, name, finds, text string }

// dampBoxes reads testdata/damp. A line "== name" begins an enclosure, and a line
// "# finds: rule severity" says what is found that is a caution or worse.
func dampBoxes(t *testing.T) (all []dampBox) {
	t.Helper()
	for _, file := range []string{"ordinary.txt", "harmful.txt"} {
		text, err := os.ReadFile(filepath.Join("testdata", "damp", file))
		if err != nil {
			t.Fatal(err)
		}
		for _, part := range strings.Split("\n"+string(text), "\n== ")[1:] {
			name, body, _ := strings.Cut(part, "\n")
			_, finds, ok := strings.Cut(body, "# finds: ")
			finds, _, _ = strings.Cut(finds, "\n")
			if !ok || file == "ordinary.txt" != (finds == "nothing") {
				t.Errorf("%s, %s: does not say what it finds", file, name)
			}
			all = append(all, dampBox{file + ", " + name, name, finds, body})
		}
	}
	return all
}

// What a good keeper waters and mists builds without a word; what drowns, stifles or dries
// an animal is refused, and the one mistake has one finding.
func TestDampBoxes(t *testing.T) {
	for _, b := range dampBoxes(t) {
		r := on(t, "2027-03-02", setupHead+b.text, "")
		var got []string
		advice := 0
		for _, f := range r.Findings {
			if f.Severity >= finding.Caution {
				got = append(got, f.Rule.ID+" "+f.Severity.String())
			} else {
				advice++
			}
		}
		slices.Sort(got)
		said := strings.Join(got, ", ")
		if said == "" {
			said = "nothing"
		}
		if said != b.finds || b.finds == "nothing" && advice > 1 {
			t.Errorf("%s: %s, want %s", b.at, said, b.finds)
			for _, f := range r.Findings {
				t.Logf("  %s %s: %s (%s; %s)", f.Severity, f.Rule.ID, f.Text, f.Limit, f.Write)
			}
		}
	}
}

// TestDampVerdicts holds the rows of climate/testdata/damp-checks.csv that are about what
// is found: the worst finding of the enclosure of that name lies between mildest and
// hardest.
func TestDampVerdicts(t *testing.T) {
	f, err := os.Open("climate/testdata/damp-checks.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	order := []string{"none", "advice", "caution", "error", "danger"}
	ran := 0
	for _, row := range rows {
		if row[1] != "verdict" {
			continue
		}
		for _, b := range dampBoxes(t) {
			if b.name != row[0] {
				continue
			}
			ran++
			worst := 0
			for _, f := range on(t, "2027-03-02", setupHead+b.text, "").Findings {
				worst = max(worst, slices.Index(order, f.Severity.String()))
			}
			if worst < slices.Index(order, row[3]) || worst > slices.Index(order, row[5]) {
				t.Errorf("%s: %s, want %s to %s", row[0], order[worst], row[3], row[5])
			}
		}
	}
	if ran != 2 {
		t.Errorf("%d verdicts, want 2", ran)
	}
}

// Who mists daily with ordinary volumes, 30 to 150 ml in 40 to 140 litres, has no caution and
// one piece of advice at most, whether openings are stated or not (common practice, no source).
func TestOrdinaryMisting(t *testing.T) {
	for _, species := range []string{"pandinus-imperator", "heterometrus"} {
		for _, inside := range []string{"20 x 10 x 12 in", "60 x 30 x 30 cm", "60 x 45 x 40 cm", "76 x 46 x 41 cm"} {
			for _, moisture := range []string{"", "moisture = \"damp\"", "moisture = \"damp below\""} {
				for _, vents := range []string{"", "vents = \"some\"", "vents = \"cross\""} {
					for _, ml := range []string{"30 ml", "60 ml", "100 ml", "150 ml"} {
						text := setupHead + "enclosure \"box\" {\n species = \"" + species + "\"\n room = \"warm\"\n housing {\n kind = \"glass\"\n inside = \"" + inside + "\"\n lid = \"solid, latched\"\n" +
							vents + "\n" + moisture + "\n substrate = \"coir\"\n depth = \"15 cm\"\n hides = 1\n }\n animals \"one\" {\n count = 1\n stage = \"adult\"\n origin = \"captive bred\"\n paper = \"invoice 1\"\n }\n" +
							" care \"mist\" {\n every = \"day\"\n amount = \"" + ml + "\"\n }\n}\n"
						advice := 0
						for _, f := range on(t, "2027-03-02", text, "").Findings {
							if advice++; f.Severity > finding.Advice || advice > 1 {
								t.Errorf("%s in %s, %s %s, %s: %s %s: %s", species, inside, vents, moisture, ml, f.Severity, f.Rule.ID, f.Text)
							}
						}
					}
				}
			}
		}
	}
}

// What waters more never lets the finding be milder, down to what drowns.
func TestMoreWaterIsNoMilder(t *testing.T) {
	last := finding.Advice
	for _, ml := range []string{"30 ml", "150 ml", "300 ml", "500 ml", "700 ml", "1 L", "1.5 L", "2 L", "5 L"} {
		text := ""
		for _, b := range dampBoxes(t) {
			if b.name == "an emperor misted daily" {
				text = strings.Replace(b.text, "150 ml", ml, 1)
			}
		}
		worst := finding.Advice
		for _, f := range on(t, "2027-03-02", setupHead+text, "").Findings {
			worst = max(worst, f.Severity)
		}
		if worst < last {
			t.Errorf("%s: %s after %s", ml, worst, last)
		}
		last = worst
	}
	if last != finding.Error {
		t.Errorf("5 L a day: %s", last)
	}
}
