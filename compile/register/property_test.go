package register_test

import (
	"fmt"
	"reflect"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/register"
	"vivary/internal/house"
	"vivary/internal/planned"
	"vivary/internal/randomplan"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

func compiled(t testing.TB, files map[string]string, today civil.Date) *compile.Result {
	t.Helper()
	c, found := planned.Files(t, files)
	r := compile.Compile(c, found, today.At(12*60, time.UTC))
	if r.Roster == nil {
		t.Fatalf("the plan was not understood: %v", r.Findings)
	}
	return r
}

// many makes collections whose logs say all that can be said: honest ones, silly ones, and
// those of a house that knows what is true.
func many(t *testing.T, n uint64, each func(name string, files func(civil.Date) map[string]string, today civil.Date)) {
	t.Helper()
	for seed := range n {
		p := randomplan.New(seed)
		each(fmt.Sprint("plan ", seed), p.Files, p.Today)
		p = randomplan.New(seed)
		p.Silly(12 * len(p.Boxes))
		each(fmt.Sprint("silly ", seed), p.Files, p.Today)
		if seed%10 == 0 {
			w := house.New(seed)
			w.Pass(120)
			each(fmt.Sprint("house ", seed), w.Files, w.Today)
		}
	}
}

// The balance agrees with the lives of the groups on every day, whatever the log says: in
// each enclosure, and in all; nobody is counted below none, and what a year ends with the
// next begins with.
func TestBalanceAgreesWithLife(t *testing.T) {
	told := 0
	many(t, 60, func(name string, files func(civil.Date) map[string]string, today civil.Date) {
		r := compiled(t, files(today), today)
		book := register.Of(r, today)
		first := today - 150
		for on := first; on <= today && told < 5; on++ {
			b := book.Balance(first, on)
			if wrong := unlike(r, b, on); wrong != "" {
				told++
				t.Errorf("%s, %s: %s", name, on, wrong)
			}
			if next := book.Balance(on+1, today); next.All.Were != b.All.Are {
				told++
				t.Errorf("%s, %s: it ends with %v and the next begins with %v", name, on, b.All.Are, next.All.Were)
			}
		}
	})
}

// unlike says in which enclosure a balance is another than the lives, or what is wrong with
// it by itself; else "".
func unlike(r *compile.Result, b *register.Balance, on civil.Date) string {
	are := map[string]int{}
	for _, l := range append(b.Lines, &b.All) {
		name := "all"
		if l.Enclosure != nil {
			name = l.Enclosure.Name.V
			are[name] += l.Are.Total()
		}
		for i, c := range []quantity.Count{l.Were, l.Born, l.Came, l.In, l.Found, l.Died, l.Left, l.Lost, l.Out, l.Are} {
			if c.Males < 0 || c.Females < 0 || c.Unsexed < 0 {
				return fmt.Sprintf("%s: column %d is %v", name, i, c)
			}
		}
		sum := func(of func(quantity.Count) int) int {
			return of(l.Were) + of(l.Born) + of(l.Came) + of(l.In) + of(l.Found) - of(l.Died) - of(l.Left) - of(l.Lost) - of(l.Out) + of(l.Fixed) - of(l.Are)
		}
		for _, of := range []func(quantity.Count) int{quantity.Count.Total, func(c quantity.Count) int { return c.Males }, func(c quantity.Count) int { return c.Females }} {
			if sum(of) != 0 {
				return fmt.Sprintf("%s: it does not add up: %+v", name, *l)
			}
		}
	}
	for _, l := range r.Lives {
		n := 0
		for _, g := range l.Groups {
			n += g.Count(on)
		}
		if name := l.Plan.Name.V; are[name] != n {
			return fmt.Sprintf("%s: %d, and %d live there", name, are[name], n)
		}
	}
	if b.All.In.Total() != b.All.Out.Total() {
		return fmt.Sprintf("%v moved in, and %v out", b.All.In, b.All.Out)
	}
	return ""
}

// The rows of a day hold just those that live on it, each in the enclosure where they do; the
// register of a day from the whole log is that from the log as it was then.
func TestRowsAgreeWithLife(t *testing.T) {
	told, compared := 0, 0
	many(t, 60, func(name string, files func(civil.Date) map[string]string, today civil.Date) {
		r := compiled(t, files(today), today)
		for on := today - 60; on <= today && told < 5; on += 12 {
			reg := register.Of(r, on)
			n := map[string]int{}
			ids := map[string]bool{}
			for _, row := range reg.Rows {
				n[row.Place.Name.V] += row.Count.Total()
				if ids[row.ID] {
					t.Errorf("%s: there are two rows %s", name, row.ID)
				}
				ids[row.ID] = true
				if row.Here() == (row.Out > 0) {
					t.Errorf("%s: %s are %v, and out on %v", name, row.ID, row.Count, row.Out)
				}
			}
			for _, l := range r.Lives {
				if live := alive(l, on); live != n[l.Plan.Name.V] {
					told++
					t.Errorf("%s, %s: %d in the rows of %s, and %d live there", name, on, n[l.Plan.Name.V], l.Plan.Name.V, live)
				}
			}
			then := compiled(t, files(on), on)
			if told := toldLater(r, then, on); told {
				continue
			}
			compared++
			if was := register.Of(then, on); !reflect.DeepEqual(seen(reg), seen(was)) {
				told++
				t.Errorf("%s, %s: it is\n%v\nand was\n%v", name, on, seen(reg), seen(was))
			}
		}
	})
	if compared < 100 {
		t.Errorf("only %d days were compared", compared)
	}
}

func alive(l *life.Enclosure, on civil.Date) (n int) {
	for _, g := range l.Groups {
		n += g.Count(on)
	}
	return n
}

// toldLater reports whether a line after a day tells of a day before it: of a brood of which
// the plan spoke, or of animals that the plan has and the log lets come.
func toldLater(now, then *compile.Result, on civil.Date) bool {
	for i, l := range now.Lives {
		if alive(l, on) != alive(then.Lives[i], on) {
			return true
		}
	}
	return false
}

// seen are the rows as they are read, without the sources, whose bytes may move.
func seen(r *register.Register) (out []string) {
	for _, x := range r.Rows {
		s := fmt.Sprint(x.ID, " ", x.Count, " ", x.Place.Name.V, " ", x.Origin, x.Paper, x.Brood, x.Dam, x.Born, x.Came, x.From, x.Parted, x.Out, x.Reason, x.To, x.Blank)
		for _, e := range x.Steps {
			s += fmt.Sprint("; ", e.On, " ", e.What, " ", e.Count, " ", e.To, " ", e.Note)
		}
		out = append(out, s)
	}
	return out
}
