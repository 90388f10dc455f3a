package register_test

import (
	"encoding/json"
	"fmt"
	"io"
	"os/exec"
	"reflect"
	"slices"
	"strings"
	"testing"

	"vivary/compile/register"
	"vivary/internal/planned"
	"vivary/schema/quantity"
)

// boxes is a plan of two boxes, one of them with a listed species.
const boxes = `collection "c" {
  time_zone = "Europe/London"
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
    count  = "1.2.3"
    stage  = "adult"
    origin = "captive bred"
    brood  = "=2025 fern"
  }
}
enclosure "nursery" {
  species = "pandinus-imperator"
  housing {
    inside = "60 x 45 x 30 cm"
    lid    = "solid, latched"
  }
  animals "moss" {
    count   = "0.1.0"
    stage   = "juvenile"
    origin  = "wild caught"
    paper   = "EU-Q-7"
    arrived = "2027-01-10"
    note    = "+44 is no formula, and \"quotes\", commas"
  }
}
`

func row(t *testing.T, r *register.Register, id string) *register.Row {
	t.Helper()
	i := slices.IndexFunc(r.Rows, func(x *register.Row) bool { return x.ID == id })
	if i < 0 {
		t.Fatalf("there is no row %s among %v", id, seen(r))
	}
	return r.Rows[i]
}

func of(t *testing.T, log, today string) *register.Register {
	t.Helper()
	on := planned.Day(today)
	return register.Of(compiled(t, planned.With(boxes, log), on), on)
}

// 1.2.3 + 0.0.12 born - 0.1.0 died - 0.0.5 sold = 1.1.10, the published check of a register
// by sexes, here of one enclosure.
func TestBySexes(t *testing.T) {
	for _, log := range []string{
		"2027-02-01 burrow emperors born 12\n2027-02-20 burrow emperors first_moult\n2027-03-01 burrow emperors died 0.1.0 \"found on back\"\n2027-03-10 burrow young sold 5 \"to a school\"\n",
		"2027-02-01 burrow emperors born 0.0.12\n2027-03-01 burrow emperors died 0.1.0\n2027-03-10 burrow emperors sold 0.0.2\n2027-03-10 burrow young sold 0.0.3\n",
	} {
		b := of(t, log, "2027-04-01").Balance(planned.Day("2027-02-01"), planned.Day("2027-04-01"))
		l := b.Lines[0]
		got := []string{register.Sexes(l.Were), register.Sexes(l.Born), register.Sexes(l.Died), register.Sexes(l.Left), register.Sexes(l.Fixed), register.Sexes(l.Are)}
		if want := []string{"1.2.3", "0.0.12", "0.1.0", "0.0.5", "", "1.1.10"}; !slices.Equal(got, want) {
			t.Errorf("it is %v, not %v, after\n%s", got, want, log)
		}
	}
}

// Where a line does not say of which sex they were, as many count as males and females as are
// so for certain; a count by sexes says what they are.
func TestSexesUnsaid(t *testing.T) {
	for _, c := range []struct{ log, are string }{
		{"2027-03-01 burrow died\n", "0.1.4"},
		{"2027-03-01 burrow died 0.0.1\n", "1.2.2"},
		{"2027-03-01 burrow died 1.0.0\n", "0.2.3"},
		{"2027-03-01 burrow died 0.3.0\n", "1.0.2"}, // one of them was not known to be a female
		{"2027-03-01 burrow died 3.0.1\n", "0.2.0"},
		{"2027-03-01 burrow died\n2027-03-02 burrow counted 1.1.3\n", "1.1.3"},
		{"2027-03-01 burrow counted 2.4.0\n", "2.4.0"},
		{"2027-03-01 burrow moved 1.1.0 nursery\n2027-03-05 nursery emperors moved 2 burrow\n", "1.2.3"},
		{"2027-03-01 burrow escaped 1.0.0\n2027-03-02 burrow found\n", "1.2.3"},
		{"2027-03-01 burrow arrived 0.3.0\n", "1.5.3"},
		{"2027-03-01 burrow died 9.0.0\n", "1.2.3"}, // there are not that many
	} {
		if x := row(t, of(t, c.log, "2027-04-01"), "burrow/emperors"); register.Sexes(x.Count) != c.are {
			t.Errorf("they are %s, not %s, after\n%s", register.Sexes(x.Count), c.are, c.log)
		}
	}
}

// A death: the record stays and says when and how, and nothing else of the book changes.
func TestDeath(t *testing.T) {
	const log = "2027-02-01 nursery treated 10 days \"iodine\"\n"
	was := of(t, log, "2027-05-02")
	is := of(t, log+"2027-05-02 nursery died \"found on back, dry\"\n", "2027-05-02")
	x := row(t, is, "nursery/moss")
	if x.Here() || x.Out != planned.Day("2027-05-02") || x.Reason != "died" || x.To != "found on back, dry" || x.Came != planned.Day("2027-01-10") || x.Stage != "juvenile" {
		t.Errorf("the row of who died is %+v", x)
	}
	differ := 0
	a, b := seen(was), seen(is)
	for i := range a {
		if a[i] != b[i] {
			differ++
		}
	}
	if differ != 1 || len(a) != len(b) {
		t.Errorf("a death changes %d rows:\n%v\n%v", differ, a, b)
	}
}

// Where all of a group go to a place of their own their row goes with them; some of it are a
// row of their own, which knows from whom they are. Who comes under the name of one that died
// is another.
func TestRowsFollowAnimals(t *testing.T) {
	r := of(t, `2027-02-01 burrow moved 2 nursery "to see whether they breed"
2027-02-02 nursery moss moved burrow
2027-02-10 burrow moss treated "mite oil"
2027-02-20 burrow moss died
2027-03-01 burrow moss arrived 1.0.0 "from a friend"
2027-03-05 nursery emperors gave away "to the school"
`, "2027-04-01")
	moss, parted, second := row(t, r, "nursery/moss"), row(t, r, "nursery/emperors"), row(t, r, "burrow/moss")
	if moss.Reason != "died" || moss.Place.Name.V != "burrow" || moss.Paper != "EU-Q-7" || moss.Steps[1].Words() != "2027-02-02 moved to burrow/moss: 0.1.0" || moss.Steps[2].Words() != "2027-02-10 treated (mite oil)" {
		t.Errorf("the row of who moved and died is %+v", moss)
	}
	if parted.Parted != "burrow/emperors" || parted.Origin != "CB" || parted.Brood != "=2025 fern" || parted.Reason != "gave away" || parted.To != "to the school" {
		t.Errorf("the row of those who were parted is %+v", parted)
	}
	if !second.Here() || second.From != "from a friend" || second.Paper != "" || second.Count != (quantity.Count{Males: 1}) || !reflect.DeepEqual(second.Blank, []string{"origin", "paper"}) {
		t.Errorf("the row of who came under the name is %+v", second)
	}
}

// Another reader of CSV reads of each cell what the register has, none of them begins as a
// formula does, and every line ends as RFC 4180 says.
func TestAnotherReader(t *testing.T) {
	r := of(t, "2027-02-01 nursery treated \"=HYPERLINK(1)\"\n2027-03-01 nursery moved out \"@somebody, 12 \"\n", "2027-04-01")
	var out strings.Builder
	if err := r.CSV(&out); err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(out.String(), "\n"); n != strings.Count(out.String(), "\r\n") || n != len(r.Rows)+1 {
		t.Errorf("%d lines do not end with CR LF:\n%q", n, out.String())
	}
	ask := exec.Command("python3", "-c", `import csv, io, json, sys
print(json.dumps(list(csv.DictReader(io.TextIOWrapper(sys.stdin.buffer, "utf-8", newline=""), strict=True))))`)
	ask.Stdin = strings.NewReader(out.String())
	told, err := ask.Output()
	if err != nil {
		t.Fatal(err)
	}
	var rows []map[string]string
	if err := json.Unmarshal(told, &rows); err != nil || len(rows) != len(r.Rows) {
		t.Fatal(err, string(told))
	}
	for i, x := range r.Rows {
		got := rows[i]
		for _, c := range []struct{ name, want string }{{"id", x.ID}, {"brood", x.Brood}, {"note", x.Note}, {"paper", x.Paper}, {"to", x.To}} {
			if is := strings.TrimPrefix(got[c.name], "'"); is != c.want {
				t.Errorf("%s of %s is read as %q, not %q", c.name, x.ID, is, c.want)
			}
		}
		for name, cell := range got {
			if cell != "" && strings.ContainsAny(cell[:1], "=+-@\t\r") {
				t.Errorf("%s of %s begins as a formula: %q", name, x.ID, cell)
			}
		}
	}
	if rows[1]["note"][0] != '\'' || rows[1]["to"][0] != '\'' || rows[0]["brood"][0] != '\'' {
		t.Errorf("what would be reckoned stands bare: %v", rows)
	}
}

// Grown kin that live together are named, where one of them is a male and one a female; young
// are not, nor those of whom nothing is written.
func TestKin(t *testing.T) {
	if r := of(t, "", "2027-04-01"); len(r.Kin) != 1 || r.Kin[0].Why != "one brood, =2025 fern" {
		t.Errorf("of a brood that is kept together it says %+v", r.Kin)
	}
	if r := of(t, "2027-02-01 burrow counted 0.6.0\n", "2027-04-01"); len(r.Kin) != 0 {
		t.Errorf("of sisters it says %+v", r.Kin)
	}
}

// Who had escaped and was found dead died, and is lost no more. Who died before the day on
// which the plan has them come had come by then. Young that are taken out of their mother's
// box to cups beside it move nowhere, and none of these is counted twice.
func TestOddLines(t *testing.T) {
	for _, c := range []struct {
		log, line string // the columns of the nursery, or of the burrow
		at        int
		to        string
	}{
		{"2027-02-01 nursery escaped\n2027-02-09 nursery died\n", "were  came 0.1.0 born  found 0.1.0 moved  died 0.1.0 lost 0.1.0 are ", 1, "2027-04-01"},
		{"2027-01-05 nursery died \"on the way\"\n", "were  came 0.1.0 born  found  moved  died 0.1.0 lost  are ", 1, "2027-01-07"},
		{"2027-02-01 burrow born 12\n2027-02-20 burrow first_moult\n2027-03-01 burrow young separated 5\n", "were 1.2.3 came  born 0.0.12 found  moved  died  lost  are 1.2.15", 0, "2027-04-01"},
	} {
		r := of(t, c.log, "2027-04-01")
		l := r.Balance(planned.Day("2027-01-01"), planned.Day(c.to)).Lines[c.at]
		is := "were " + register.Sexes(l.Were) + " came " + register.Sexes(l.Came) + " born " + register.Sexes(l.Born) + " found " + register.Sexes(l.Found) +
			" moved " + register.Sexes(l.Moved()) + " died " + register.Sexes(l.Died) + " lost " + register.Sexes(l.Lost) + " are " + register.Sexes(l.Are)
		if is != c.line {
			t.Errorf("it is %q, not %q, after\n%s", is, c.line, c.log)
		}
	}
}

func BenchmarkRegister(b *testing.B) {
	var plan, log strings.Builder
	plan.WriteString(boxes)
	one := boxes[strings.Index(boxes, "enclosure \"nursery\""):]
	for i := range 1000 {
		name := fmt.Sprintf("tub-%d", i)
		plan.WriteString(strings.Replace(one, "nursery", name, 1))
		fmt.Fprintf(&log, "2027-02-01 %s moult\n2027-02-15 %s treated\n2027-03-01 %s moved nursery\n", name, name, name)
	}
	on := planned.Day("2027-04-01")
	r := compiled(b, planned.With(plan.String(), log.String()), on)
	b.ReportAllocs()
	for b.Loop() {
		book := register.Of(r, on)
		book.Balance(on-365, on)
		if err := book.CSV(io.Discard); err != nil {
			b.Fatal(err)
		}
	}
}
