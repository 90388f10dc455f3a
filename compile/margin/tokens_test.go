package margin

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/internal/hostile"
	"vivary/internal/planned"
	"vivary/plan/source"
)

// sound holds that tokens stand in order, cover nothing twice, and stay within their lines.
func sound(t *testing.T, r *compile.Result, id source.ID) []Token {
	t.Helper()
	all, end := Tokens(r, id), int32(0)
	text := r.Plan.Files.Text(id)
	for _, x := range all {
		if x.At.File != id || x.At.Start < end || x.At.End <= x.At.Start || int(x.At.End) > len(text) || strings.ContainsAny(string(text[x.At.Start:x.At.End]), "\r\n") {
			t.Fatalf("%s: a token at %v after %d", r.Plan.Files.Name(id), x.At, end)
		}
		end = x.At.End
	}
	return all
}

// Whatever has a name has a token of that name, in plans and in logs.
func TestNamesHaveTokens(t *testing.T) {
	dirs, _ := filepath.Glob("../../examples/ordinary/*")
	kinds := map[string]bool{}
	for _, dir := range append(dirs, "../../examples/quillmoor", "../../testdata/jobs") {
		r := compiled(t, dir)
		at := map[source.Place]Token{}
		for _, id := range r.Plan.Files.Files() {
			for _, x := range sound(t, r, id) {
				at[x.At] = x
			}
		}
		for _, u := range r.Plan.Uses() {
			kinds[u.Kind] = true
			if x, ok := at[u.At]; !ok || x.Sort != Name || x.Of == "" {
				t.Errorf("%s: %s %q has no token at %v", dir, u.Kind, u.Name, r.Plan.Files.Start(u.At))
			}
		}
	}
	for _, k := range []string{"enclosure", "keeper", "round", "species", "room", "rack", "animals", "feeder", "feeder-size", "care"} {
		if !kinds[k] && !kinds[strings.ReplaceAll(k, "feeder-size", "size")] {
			t.Errorf("no example names a %s", k)
		}
	}
}

// spelled are tokens as words, for a test.
func spelled(r *compile.Result, all []Token) (out []string) {
	sorts := [...]string{"block", "attribute", "name", "word", "amount", "when", "text", "remark"}
	for _, x := range all {
		s := sorts[x.Sort]
		if x.Of != "" {
			s = x.Of
		}
		for mark, is := range map[string]bool{"+": x.Given, "-": x.Out, "!": x.Accepts} {
			if is {
				s += mark
			}
		}
		out = append(out, s+" "+r.Plan.Files.Of(x.At))
	}
	return out
}

// What the words of a plan and of a log are.
func TestTokens(t *testing.T) {
	const text = `# for people
enclosure "a" { /* two
lines */
  species = "pandinus-imperator" // here
  culture = true
  housing {
    inside = "60 x 45 x 40 cm"
    hides  = 3
  }
  care "mist" {
    off = true
    at  = ["08:15", "19:30"]
  }
  feeding "b" {
    on     = ["tue", "2026-12-24"]
    rotate = ["cricket adult"]
  }
  accept "too-damp" { because = "a # is no remark" }
}
calendar "k" { kinds = ["feed"] }
`
	const log = "# seen\n2026-11-02 19:42 by lead a moult \"left alone\"\n2026-11-03 a counted 4\n2026-11-04 what is this\n2026-11-05 keeper lead away \"ill\"\n"
	c, found := planned.Files(t, planned.With(text, log))
	r := compile.Compile(c, found, monday)
	for _, id := range r.Plan.Files.Files() {
		got := strings.Join(spelled(r, sound(t, r, id)), "\n")
		want := wantLog
		if strings.HasSuffix(r.Plan.Files.Name(id), ".hcl") {
			want = wantPlan
		}
		if got != strings.TrimSpace(want) {
			t.Errorf("%s", got)
		}
	}
}

const wantPlan = `
remark # for people
block enclosure
enclosure+ a
remark /* two
remark lines */
attribute species
species pandinus-imperator
remark // here
attribute culture
word true
block housing
attribute inside
amount "60 x 45 x 40 cm"
attribute hides
amount 3
block- care
care+ mist
attribute off
word true
attribute at
when "08:15"
when "19:30"
block feeding
animals b
attribute on
when "tue"
when "2026-12-24"
attribute rotate
feeder cricket
size adult
block! accept
rule too-damp
attribute because
text "a # is no remark"
block calendar
calendar+ k
attribute kinds
kind feed
`

const wantLog = `
remark # seen
when 2026-11-02
when 19:42
block by
keeper lead
enclosure a
block moult
text "left alone"
when 2026-11-03
enclosure a
block counted
amount 4
when 2026-11-04
enclosure what
when 2026-11-05
block keeper
keeper lead
block away
text "ill"
`

// Whatever is typed, nothing breaks, and what stands beside the lines stands in the file.
func TestAnyText(t *testing.T) {
	plans, _ := filepath.Glob("../../examples/ordinary/*/plan.care.hcl")
	for seed := range 150 {
		rnd := rand.New(rand.NewPCG(7, uint64(seed)))
		text, err := os.ReadFile(plans[seed%len(plans)])
		if err != nil {
			t.Fatal(err)
		}
		by := make([]byte, 60)
		for i := range by {
			by[i] = byte(rnd.Uint32())
		}
		in := hostile.Mutated(string(text), "2026-11-02 box moult \"🦂\"\n", by)
		files := in.Files()
		for name, text := range files { // and torn in the middle
			if rnd.IntN(3) == 0 {
				files[name] = text[:rnd.IntN(len(text)+1)] + text[rnd.IntN(len(text)+1):]
			}
		}
		c, found := planned.Files(t, files)
		r := compile.Compile(c, found, monday)
		for _, id := range r.Plan.Files.Files() {
			sound(t, r, id)
			for _, n := range append(Lenses(r, id), Hints(r, id, whole(r, id))...) {
				if n.At.File != id || n.Text == "" || strings.ContainsAny(n.Text, "\n\r") {
					t.Fatal(fmt.Sprint(n))
				}
			}
		}
	}
}
