package paper

import (
	"bytes"
	"regexp"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/rounds"
	"vivary/internal/planned"
	"vivary/internal/randomplan"
	"vivary/plan"
)

// Care sheets are printed on either paper by a browser, and no word of them is cut off.
func TestPrintedCareSheets(t *testing.T) {
	t.Parallel()
	for _, letter := range []bool{false, true} {
		r := collection(t, "examples/quillmoor", "2026-11-25")
		d := CareSheets(r, r.Lives[:4])
		d.letter = letter
		size := "A4"
		if letter {
			size = "612 x 792"
		}
		pdf := printed(t, d)
		holdsAll(t, d, pdf, size)
		if pages := strings.Count(run(t, "pdftotext", pdf, "-"), "\f"); pages < len(d.Sheets) || pages > 2*len(d.Sheets)+4 {
			t.Errorf("%s: %d sheets on %d pages", size, len(d.Sheets), pages)
		}
	}
}

// A sheet for somebody new says what to mind first, what is eaten, and what is not known is a
// line to write on; nobody's telephone stands there.
func TestCareSheetForSomebodyNew(t *testing.T) {
	r := collection(t, "examples/quillmoor", "2026-11-25")
	var one []*life.Enclosure
	for _, l := range r.Lives {
		if l.Plan.Name.V == "burrow-b" {
			one = append(one, l)
		}
	}
	text := plainOf(t, CareSheets(r, one))
	for _, want := range []string{"MIND", "lift nothing", "As long as what stands under Mind is so, it comes first", "cricket", "Harms outside: 15 to 35 C",
		"To go with burrow-b/fern", "Number of its paper: EU-Q-2021-119", "Name on the paper: ____", "2026-04-06 mated", "Mother: burrow-b/fern", "To (name, address): ____", "Signed, to ____"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not on the sheet:\n%s", want, text)
		}
	}
	for _, c := range r.Plan.Contacts {
		if strings.Contains(text, c.Phone.V) {
			t.Errorf("the telephone of %s is on the sheet", c.Shown())
		}
	}
}

func plainOf(t *testing.T, d *Document) string {
	t.Helper()
	var b bytes.Buffer
	if err := d.Text(&b); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

var number = regexp.MustCompile(`[0-9]+(?:\.[0-9]+)?`)

// Of any plan, each number on its sheets stands in the plan, the log or a species sheet, or is one
// that is resolved from them: how many there are, a day, a step of the care, what a gauge should show.
func TestEachNumberOfACareSheetIsKnown(t *testing.T) {
	seen := 0
	for seed := range uint64(60) {
		p := randomplan.New(seed)
		c, found := planned.Files(t, p.Files(p.Today))
		r := compile.Compile(c, found, p.Today.At(12*60, time.UTC))
		if r.Roster == nil {
			t.Fatal("the plan was not understood")
		}
		known := map[string]bool{}
		add := func(text string) {
			for _, n := range number.FindAllString(text, -1) {
				known[n] = true
				known[strings.TrimLeft(n, "0")] = true
			}
		}
		add(p.Text() + p.LogUntil(p.Today))
		for i, l := range r.Lives {
			add(l.Plan.Shown())
			for _, x := range rounds.Shows(r.Roster, l) {
				add(x.Text + x.Harm)
			}
			for k := range r.Roster.Of[i] {
				e := &r.Roster.Of[i][k]
				task := rounds.TaskOf(e)
				add(e.Words() + " " + task.Sentence() + fed(e))
			}
			for _, g := range l.Groups {
				for _, h := range g.Holds {
					add(h.State.Rule + h.State.Is)
				}
			}
			if s := l.Plan.Sheet; s != nil {
				sheetNumbers(s, add)
			}
		}
		for _, of := range r.Lives {
			text := plainOf(t, CareSheets(r, []*life.Enclosure{of}))
			add(r.Today.Words() + " " + r.Now.Format("15:04"))
			for _, line := range strings.Split(text, "\n") {
				for _, n := range number.FindAllString(line, -1) {
					seen++
					if !known[n] && !derived(line) {
						t.Errorf("plan %d: %q, in %q, is in no plan, log or sheet", seed, n, line)
					}
				}
			}
		}
	}
	if seen < 3000 {
		t.Errorf("only %d numbers were seen", seen)
	}
}

// derived are the lines of numbers that the register counts from plan and log, which has tests of
// its own.
func derived(line string) bool {
	for _, begins := range []string{"  How many", "  Who lives there", "  Stage", "  Born", "  Arrived", "  Parted from", "  Animals", "To go with", "  Mother"} {
		if strings.HasPrefix(line, begins) {
			return true
		}
	}
	return false
}

func sheetNumbers(s *plan.SpeciesSheet, add func(string)) {
	for _, f := range s.Figures {
		add(f.Value.V)
	}
}
