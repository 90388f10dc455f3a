package compile_test

import (
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/internal/planned"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// larder is a house in testdata/stock: a plan behind the head, and what is logged on which day.
type larder struct {
	name, plan string
	log        []string       // of days before the day of the plan, or on it
	later      map[int]string // by days after it
}

var (
	dated    = regexp.MustCompile(`^\d{4}-\d\d-\d\d `)
	daysLate = regexp.MustCompile(`^\+(\d+) (.*)`)
)

// larderDay is the day of the plans in testdata/stock.
var larderDay = civil.Must(2027, 1, 4)

func larders(t *testing.T, file string) (out []larder) {
	t.Helper()
	head, err := os.ReadFile("testdata/stock/head.txt")
	text, also := os.ReadFile("testdata/stock/" + file)
	if err != nil || also != nil {
		t.Fatal(err, also)
	}
	for _, part := range strings.Split("\n"+string(text), "\n== ")[1:] {
		name, body, _ := strings.Cut(part, "\n")
		h := larder{name: name, plan: string(head), later: map[int]string{}}
		for line := range strings.Lines(body) {
			if m := daysLate.FindStringSubmatch(line); m != nil {
				n, _ := strconv.Atoi(m[1])
				h.later[n] += (larderDay + civil.Date(n)).String() + " " + m[2] + "\n"
			} else if dated.MatchString(line) {
				h.log = append(h.log, line)
			} else {
				h.plan += line
			}
		}
		out = append(out, h)
	}
	return out
}

// after compiles a house so many days after the day of its plan, with what was logged until then.
func (h *larder) after(t *testing.T, days int) *compile.Result {
	t.Helper()
	log := strings.Join(h.log, "")
	for n := range days + 1 {
		log += h.later[n]
	}
	c, found := planned.Files(t, planned.With(h.plan, log))
	return compile.Compile(c, found, (larderDay+civil.Date(days)).At(12*60, time.UTC))
}

// What good keepers of feeder animals write builds without a word, and goes on so with an honest
// log: no caution or worse, on no day of the first month, and one piece of advice at the most of
// what is about feeders.
func TestGoodLarders(t *testing.T) {
	all := larders(t, "good.txt")
	if len(all) < 20 {
		t.Errorf("%d houses", len(all))
	}
	for _, h := range all {
		t.Run(h.name, func(t *testing.T) {
			for _, days := range []int{0, 1, 7, 14, 28} {
				advice := 0
				r := h.after(t, days)
				for i := range r.Findings {
					f := &r.Findings[i]
					feeders := strings.HasPrefix(f.Rule.ID, "stock-") || strings.HasPrefix(f.Rule.ID, "culture-") || strings.HasPrefix(f.Rule.ID, "delivery-") || strings.HasPrefix(f.Rule.ID, "feeder-")
					if f.Severity == finding.Advice && feeders {
						advice++
					}
					if f.Severity != finding.Advice || advice > 1 {
						t.Errorf("day %d: %s: %s [%s] write: %s", days, f.Severity, f.Text, f.Rule.ID, f.Write)
					}
				}
				if r.Stock == nil || r.Refused() {
					t.Fatal("nothing is known of the feeders")
				}
			}
		})
	}
}

// What goes wrong with feeder animals is told, each by its rule, and nothing that the log says of
// them refuses the plan.
func TestBadLarders(t *testing.T) {
	for _, h := range larders(t, "bad.txt") {
		name, rule, _ := strings.Cut(h.name, " => ")
		t.Run(name, func(t *testing.T) {
			r := h.after(t, 0)
			var all []string
			for i := range r.Findings {
				if f := &r.Findings[i]; f.Rule.ID == rule {
					if f.Write == "" || f.Text == "" {
						t.Errorf("nothing is said to be written: %+v", f)
					}
					return
				}
				all = append(all, r.Findings[i].Rule.ID+": "+r.Findings[i].Text)
			}
			t.Errorf("%s is not found, but %q", rule, all)
		})
	}
}
