package assist

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/internal/hostile"
	"vivary/plan"
	"vivary/schema"
)

// cut is a word of an example that is cut away: what stands there, and of what sort it is.
type cut struct {
	file     string
	from, to int
	sort     string
	want     string
}

// cutsOf are the words of a plan that are the language's or a name, which is all of which a list
// can know.
func cutsOf(file, src string) (all []cut) {
	var walk func(b *block)
	add := func(t token, sort string) {
		from, to := t.inside()
		all = append(all, cut{file, from, to, sort, src[from:to]})
	}
	walk = func(b *block) {
		for i := range b.attrs {
			a := &b.attrs[i]
			is := attribute(b.is, a.name)
			if is == nil {
				continue // some examples are mistakes
			}
			add(a.at, "attribute")
			for _, v := range a.values {
				switch is.Kind {
				case schema.Word, schema.Truth:
					add(v, "word")
				case schema.Ref, schema.Refs, schema.Prey, schema.Menu:
					add(v, "name")
				}
			}
		}
		for _, c := range b.blocks {
			if c.is == nil {
				continue
			}
			add(c.at, "block")
			if c.is.Names != "" || c.is.Attr("kind") != nil && c.is.Attr("kind").Default == "the name" {
				add(c.labelled, "label")
			}
			walk(c)
		}
	}
	walk(newTree(src, nil).root)
	return all
}

// examples are the folders of examples with their collections.
func examples(t testing.TB) map[string]map[string]string {
	t.Helper()
	all := map[string]map[string]string{"quillmoor": folder(t, "../../examples/quillmoor")}
	for _, of := range []string{"ordinary", "mistakes"} {
		dirs, err := os.ReadDir("../../examples/" + of)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range dirs {
			all[d.Name()] = folder(t, filepath.Join("../../examples", of, d.Name()))
		}
	}
	return all
}

// TestCutAway types each word of the examples anew, as far as it goes: with all that follows
// it gone, and with only the rest of its line gone. What was cut away is among the offers, but
// for what somebody may name himself.
func TestCutAway(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	said, hit, first := map[string]int{}, map[string]int{}, map[string]int{}
	for _, name := range slices.Sorted(maps.Keys(examples(t))) {
		files := examples(t)[name]
		r := compiled(t, files)
		for _, file := range slices.Sorted(maps.Keys(files)) {
			if !strings.HasSuffix(file, plan.PlanSuffix) {
				continue
			}
			src := files[file]
			for _, c := range cutsOf(file, src) {
				at := c.from + rng.IntN(c.to-c.from+1)
				rest := src[lineEnd(src, at):]
				if rng.IntN(2) == 0 {
					rest = ""
				}
				p := &Page{file, []byte(src[:at] + rest), r}
				got := labels(p.Complete(at))
				said[c.sort]++
				n := slices.Index(got, c.want)
				if n >= 0 {
					hit[c.sort]++
				} else if c.sort == "name" || c.sort == "label" {
					t.Logf("%s/%s: %q is not offered at %q", name, file, c.want, line(src, at))
				} else {
					t.Errorf("%s/%s: %q is not offered at %q: %.5q", name, file, c.want, line(src, at), got)
				}
				if n >= 0 && n < 5 {
					first[c.sort]++
				}
			}
		}
	}
	for _, sort := range slices.Sorted(maps.Keys(said)) {
		t.Logf("%s: of %d cut away %d are offered (%d %%), %d among the first five", sort, said[sort], hit[sort], 100*hit[sort]/said[sort], first[sort])
		if 100*hit[sort] < 97*said[sort] {
			t.Errorf("of %ss only %d of %d are offered", sort, hit[sort], said[sort])
		}
	}
}

// TestCutAwayOfLogs does the same with the words of logs, which know enclosures, animals and what
// may be said of them.
func TestCutAwayOfLogs(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	files := examples(t)["quillmoor"]
	r := compiled(t, files)
	said, first := 0, 0
	for name, src := range files {
		if !strings.HasSuffix(name, plan.LogSuffix) {
			continue
		}
		for text := range strings.Lines(src) {
			words, _, _ := strings.Cut(strings.TrimSpace(text), `"`)
			for i, word := range strings.Fields(words) {
				if i == 0 || text[0] == '#' || strings.Trim(word, "0123456789") == "" {
					continue
				}
				from := strings.Index(text, word)
				at := from + rng.IntN(len(word)+1)
				got := labels((&Page{name, []byte(text[:at]), r}).Complete(at))
				n := slices.Index(got, word)
				if n < 0 {
					t.Errorf("%q is not offered at %q: %.5q", word, text[:at], got)
				}
				if said++; n < 5 {
					first++
				}
			}
		}
	}
	t.Logf("of %d words of logs all are offered, %d among the first five", said, first)
}

func line(src string, at int) string { return src[lineStart(src, at):at] }

// TestHostile holds that no text makes it fail, or take long, wherever the cursor stands.
func TestHostile(t *testing.T) {
	r := hostileResult(t)
	rng := rand.New(rand.NewPCG(3, 4))
	slowest, which := time.Duration(0), ""
	for in := range hostile.Inputs(16_000, func(string) bool { return true }) {
		for name, text := range map[string]string{"a.care.hcl": in.Plan, "a.care.log": in.Log} {
			p := &Page{name, []byte(text), r}
			for _, at := range []int{0, len(text), rng.IntN(len(text) + 1)} {
				begin := time.Now()
				all := p.Complete(at)
				if start, end, said := p.Hover(at); said != "" && (start > at || end <= at || end > len(text)) {
					t.Fatalf("%s: at %d something is said of %d to %d", in.Name, at, start, end)
				}
				if took := time.Since(begin); took > slowest {
					slowest, which = took, fmt.Sprintf("%s %s at %d", in.Name, name, at)
				}
				if len(all) > Most {
					t.Errorf("%s: %d offers", in.Name, len(all))
				}
				for _, x := range all {
					if e := x.Edit; e.Start < 0 || e.Start > at || e.End < at || e.End > len(text) {
						t.Fatalf("%s: at %d the edit goes from %d to %d", in.Name, at, e.Start, e.End)
					}
				}
			}
		}
	}
	t.Logf("the slowest: %v, %s", slowest, which)
	if slowest > time.Second {
		t.Errorf("%v is long: %s", slowest, which)
	}
}

func hostileResult(t testing.TB) *compile.Result {
	t.Helper()
	return compiled(t, folder(t, "../../examples/quillmoor"))
}

func FuzzComplete(f *testing.F) {
	r := hostileResult(f)
	for _, text := range folder(f, "../../examples/quillmoor") {
		f.Add(text, 100)
	}
	f.Add("enclosure \"a\" {\n housing { lid = \"so", 35)
	f.Fuzz(func(t *testing.T, text string, at int) {
		for _, name := range []string{"a.care.hcl", "a.care.log"} {
			p := &Page{name, []byte(text), r}
			p.Hover(at)
			for _, x := range p.Complete(at) {
				if e := x.Edit; e.Start < 0 || e.Start > e.End || e.End > len(text) {
					t.Fatalf("the edit goes from %d to %d", e.Start, e.End)
				}
			}
		}
	})
}
