package roster_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/schema/civil"
)

// example is a small plan and what some of its entries say of some days. All days
// are of 2027, which begins on a Friday.
type example struct {
	title    string
	now      string // "1 Jul": the day of the build
	plan     string
	log      string // a line a fact, its day as "1 Jul"
	from, to string // the first and the last day that are shown
	// want has a line for each entry of box ash: its name, and its days. A day that is
	// as planned stands alone. Else the reasons follow, each with the first day of the
	// absence, or with the hold; "not" stands before a day that is out.
	want string
}

// names of the reasons, as examples have them.
var names = map[roster.Why]string{
	roster.Held: "held", roster.Halved: "halved", roster.NoRound: "no round", roster.Moved: "moved", roster.Nobody: "nobody",
	roster.Waits: "waits", roster.LeftIn: "left in", roster.Visit: "visit", roster.Leaving: "leaving", roster.Return: "return", roster.Skipped: "skipped",
	roster.InPlace: "another stands in its place", roster.TooSoon: "too soon", roster.CaughtUp: "caught up", roster.Done: "done",
	roster.PreyKilled: "killed", roster.WithMeal: "with a meal", roster.Untrained: "untrained", roster.TooFew: "too few", roster.Enough: "enough",
	roster.NotOn: "not on", roster.AlsoOn: "also on", roster.OtherRound: "other round",
}

// on reads a day of 2027 such as "1 Jul".
func on(s string) civil.Date {
	var n int
	var month string
	if _, err := fmt.Sscan(s, &n, &month); err != nil {
		panic(err)
	}
	m := 1 + strings.Index("JanFebMarAprMayJunJulAugSepOctNovDec", month)/3
	return day(fmt.Sprintf("2027-%02d-%02d", m, n))
}

// short is a day as examples have it.
func short(d civil.Date) string {
	_, m, n := d.YMD()
	return fmt.Sprintf("%s %d %s", d.Weekday().String()[:3], n, m.String()[:3])
}

func (x *example) compiled(t testing.TB) *compile.Result {
	t.Helper()
	text, need := x.plan, ""
	if _, rest, ok := strings.Cut(text, "NEED"); ok {
		need, text, _ = strings.Cut(rest, "NEED")
	}
	return compiled(t, with(need, text), logged(x.log), on(x.now))
}

// logged is a log of lines that begin with a day such as "1 Jul".
func logged(log string) string {
	var b strings.Builder
	for line := range strings.Lines(log) {
		if line = strings.TrimSpace(line); line == "" {
			continue
		}
		words := strings.SplitN(line, " ", 3)
		fmt.Fprintf(&b, "%s %s\n", on(words[0]+" "+words[1]), words[2])
	}
	return b.String()
}

// run compares what an example wants with what the entries say.
func (x *example) run(t *testing.T) {
	r := x.compiled(t)
	for line := range strings.Lines(strings.TrimSpace(x.want)) {
		name, want, _ := strings.Cut(strings.TrimSpace(line), ":")
		if got := said(t, r, find(t, r, "ash", name), on(x.from), on(x.to)); got != strings.TrimSpace(want) {
			t.Errorf("%s\n got %s\nwant %s", name, got, strings.TrimSpace(want))
		}
	}
}

// saidOnce fails where two causes of an entry say the same: days of one reason are one
// cause.
func saidOnce(t testing.TB, e *roster.Entry) {
	t.Helper()
	for i := range e.Causes {
		for k := range i {
			a, b := e.Causes[i], e.Causes[k]
			if a.Days, b.Days = nil, nil; fmt.Sprint(a) == fmt.Sprint(b) {
				t.Errorf("%s says %q twice", e.Name, names[a.Why])
			}
		}
	}
}

// said is what an entry says of the days from one to another.
func said(t testing.TB, r *compile.Result, e *roster.Entry, from, to civil.Date) string {
	t.Helper()
	saidOnce(t, e)
	var out []string
	for d := from; d <= to; d++ {
		i, ok := r.Horizon.Index(d)
		if !ok {
			t.Fatalf("%s is not in the window", d)
		}
		why := reasons(t, e, i)
		switch {
		case e.Days.Has(i):
			if who, there := r.Roster.Doer(e, i); who != e.Keeper || !there {
				why += ", by " + who
			}
			if e.Killed != nil && e.Killed.Has(i) {
				why += ", killed"
			}
			out = append(out, short(d)+why)
		case why != "":
			out = append(out, "not "+short(d)+why)
		}
	}
	return strings.Join(out, "; ")
}

// reasons are those of a day that agree with whether it stands, of which the last one
// is the reason.
func reasons(t testing.TB, e *roster.Entry, i int) string {
	t.Helper()
	var all []string // in the order of the kinds
	var last *roster.Cause
	for k := range e.Causes {
		c := &e.Causes[k]
		if !c.Days.Has(i) || c.Why.Stands() != e.Days.Has(i) || c.Why == roster.PreyKilled {
			continue
		}
		last = c
		text := fmt.Sprintf("%02d, %s", c.Why, names[c.Why])
		switch {
		case c.Away != nil:
			text += strings.TrimPrefix(short(c.Away.From.V), c.Away.From.V.Weekday().String()[:3])
			if c.At != c.Away.At {
				t.Errorf("%s is not written at the absence", names[c.Why])
			}
		case c.Hold != nil:
			text += " " + c.Hold.Why
			if c.At != c.Hold.At {
				t.Errorf("%s is not written at the hold", names[c.Why])
			}
		}
		if c.Last != 0 {
			text += ", last " + short(c.Last)[4:]
		}
		all = append(all, text)
		if out := e.Out(c.Why); out.Has(i) == c.Why.Stands() {
			t.Errorf("of the days taken out by %q: %v", names[c.Why], out.Has(i))
		}
		if got := e.Cause(c.Why, i); got == nil || !got.Days.Has(i) || got.Why != c.Why {
			t.Errorf("no cause %q on day %d", names[c.Why], i)
		}
	}
	if e.Reason(i) != last {
		t.Errorf("the reason of day %d is not the last: %+v", i, e.Reason(i))
	}
	slices.Sort(all)
	text := ""
	for _, s := range all {
		text += s[2:]
	}
	return text
}

func each(t *testing.T, all []example) {
	for i := range all {
		t.Run(all[i].title, all[i].run)
	}
}

// TestEveryReasonHasAnExample: of each kind of reason a plan of these examples has a
// day.
func TestEveryReasonHasAnExample(t *testing.T) {
	seen := map[roster.Why]bool{}
	for _, all := range [][]example{peopleDays, absenceDays, mealDays, stateDays, roundDays, dateDays, logDays} {
		for i := range all {
			for e := range all[i].compiled(t).Roster.All() {
				for _, c := range e.Causes {
					seen[c.Why] = true
				}
			}
		}
	}
	n := reasonsThereAre(t)
	if len(names) != n {
		t.Errorf("%d reasons have a name in these examples, of %d", len(names), n)
	}
	for w := range roster.Why(n) {
		if !seen[w] {
			t.Errorf("no example has a day that is %q", names[w])
		}
	}
}

// reasonsThereAre counts the kinds of reasons in the source.
func reasonsThereAre(t *testing.T) int {
	t.Helper()
	f, err := parser.ParseFile(token.NewFileSet(), "cause.go", nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	for _, d := range f.Decls {
		if d, ok := d.(*ast.GenDecl); ok && d.Tok == token.CONST {
			n += len(d.Specs)
		}
	}
	return n
}
