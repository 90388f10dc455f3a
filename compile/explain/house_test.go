package explain

import (
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/deadline"
)

func answered(all []Answer) string {
	var out strings.Builder
	for _, a := range all {
		for _, p := range a.Parts {
			for _, l := range p.Lines {
				out.WriteString(l.Text + "\n" + strings.Join(l.Under, "\n") + "\n")
			}
		}
	}
	return out.String()
}

// TestHouseIsExplained: what is said of dates of the house and of feeder animals is what their
// calendars and orders say, to the day and the word.
func TestHouseIsExplained(t *testing.T) {
	r := quillmoor(t)
	for name, wants := range map[string][]string{
		"dwa-licence": {"To be done by Mon 28 Feb 2028, told from Tue 30 Nov 2027 on", "apply, book vet, check insurance", "By Lead keeper", "council"},
		"rcd":         {"Done last on Sun 1 Mar 2026", "Overdue since Tue 1 Sep 2026", "`deadline rcd done`", "6 months"},
		"some-day":    {"Told on no day", "paint the door"},
		"roaches":     {"There are about "},
		"crickets":    {"The meals of the plan take "},
	} {
		text := answered(Of(r, name))
		for _, want := range wants {
			if !strings.Contains(text, want) {
				t.Errorf("%s is explained without %q:\n%s", name, want, text)
			}
		}
	}
	for _, d := range deadline.Told(r.Deadlines, r.Today) {
		if d.Name != "" && !strings.Contains(answered(Of(r, d.Name)), d.Time.By.Words()) {
			t.Errorf("%s is told today, and not explained by %s", d.Name, d.Time.By.Words())
		}
	}
	orders := 0
	for _, l := range r.Stock.Lots {
		for _, x := range l.Supplies {
			for i := range x.Orders {
				if o := &x.Orders[i]; o.By >= r.Today && orders < comingOrders {
					orders++
					if !strings.Contains(answered(Of(r, x.Plan.Name.V)), x.Words(o)) {
						t.Errorf("the order %q is not told", x.Words(o))
					}
				}
			}
		}
	}
	if orders == 0 {
		t.Error("nothing is ordered: that says little")
	}
	var none compile.Result
	none.Plan = r.Plan
	if text := answered(explainStore(&none, "crickets")); text != "" {
		t.Errorf("without a plan that is worked out it is said of a supply: %s", text)
	}
}
