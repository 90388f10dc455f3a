package feeds_test

import (
	"bytes"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/internal/randomplan"
	"vivary/plan"
	"vivary/plan/tidy"
)

// calendarsOf are the calendars of a collection, all of them, and what refuses it.
func calendarsOf(t *testing.T, files map[string]string, now time.Time) []byte {
	t.Helper()
	disk := afero.NewMemMapFs()
	for name, text := range files {
		if err := afero.WriteFile(disk, "c/"+name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	c, found, err := plan.Load(disk, "c")
	if err != nil {
		t.Fatal(err)
	}
	r := compile.Compile(c, found, now)
	var out bytes.Buffer
	said := make([]string, len(r.Findings))
	for i, f := range r.Findings { // in the order of their lines, which is another
		said[i] = f.Rule.ID
	}
	slices.Sort(said)
	out.WriteString(strings.Join(said, " ") + "\n")
	if r.Refused() || r.Roster == nil {
		return out.Bytes()
	}
	for _, f := range feeds.Of(r) {
		text, err := f.Bytes(nil)
		if err != nil {
			t.Fatal(err)
		}
		out.Write(text)
	}
	return out.Bytes()
}

// TestTidyMeansTheSame: collections at random, and all examples, have the same calendars to the
// byte as they stand, with their layout spoilt, and tidy.
func TestTidyMeansTheSame(t *testing.T) {
	all, now := map[string]map[string]string{}, map[string]time.Time{}
	for seed := range uint64(40) {
		p := randomplan.New(seed)
		name := "random " + string(rune('a'+seed))
		all[name], now[name] = p.Files(p.Today), p.Today.At(12*60, time.UTC)
	}
	roots, err := filepath.Glob("../../examples/[mo]*/*")
	if err != nil {
		t.Fatal(err)
	}
	for _, root := range append(roots, "../../examples/quillmoor") {
		if files := filesBelow(t, root); len(files) > 0 {
			all[root], now[root] = files, time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)
		}
	}
	changed, built := 0, 0
	for name, files := range all {
		neat, rough := map[string]string{}, map[string]string{}
		for path, text := range files {
			neat[path], rough[path] = text, text
			if strings.HasSuffix(path, plan.PlanSuffix) {
				rough[path] = roughened(text)
				out, _ := tidy.Text(1, []byte(rough[path]))
				if neat[path] = string(out); neat[path] != text {
					changed++
				}
			}
		}
		want := calendarsOf(t, files, now[name])
		if bytes.Contains(want, []byte("BEGIN:VEVENT")) {
			built++
		}
		if got := calendarsOf(t, rough, now[name]); !bytes.Equal(got, want) {
			t.Errorf("%s: roughened it is something else: %s", name, firstApart(got, want))
		}
		if got := calendarsOf(t, neat, now[name]); !bytes.Equal(got, want) {
			t.Errorf("%s: tidy it is something else: %s", name, firstApart(got, want))
		}
	}
	if changed < 10 || built < 30 {
		t.Errorf("only %d files were not tidy, and %d collections were built", changed, built)
	}
}

func firstApart(got, want []byte) string {
	a, b := strings.Split(string(got), "\n"), strings.Split(string(want), "\n")
	for i := range min(len(a), len(b)) {
		if a[i] != b[i] {
			return a[i] + "\nin place of\n" + b[i]
		}
	}
	return "it is cut off"
}

func filesBelow(t *testing.T, root string) map[string]string {
	files := map[string]string{}
	err := filepath.Walk(root, func(path string, x os.FileInfo, err error) error {
		if err != nil || x.IsDir() || !strings.HasSuffix(path, plan.PlanSuffix) && !strings.HasSuffix(path, plan.LogSuffix) {
			return err
		}
		text, err := os.ReadFile(path)
		rel, _ := filepath.Rel(root, path)
		files[filepath.ToSlash(rel)] = string(text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// spelt is how somebody in a hurry writes what a tidy plan has otherwise.
var spelt = strings.NewReplacer(` C"`, `C"`, ` %"`, ` percent"`, ` cm"`, `cm"`, ` ml"`, `mls"`, ` min"`, ` minutes"`, ` days"`, `d"`,
	`"tue"`, `"Tuesday"`, `"fri"`, `"every Friday"`, `"19:30"`, `"19.30"`, `"8:`, `"08:`)

var fromTo = regexp.MustCompile(`"([\d.]+) to (\d)`)

// roughened is a plan with its layout and its spelling spoilt.
func roughened(text string) string {
	rng := rand.New(rand.NewPCG(uint64(len(text)), 1))
	var out []string
	for line := range strings.Lines(text) {
		name, value, ok := strings.Cut(strings.TrimSpace(line), " = ")
		switch {
		case ok && !strings.ContainsAny(name, "#{\""):
			if !slices.Contains([]string{"title", "note", "because", "task", "brood", "paper"}, strings.TrimSpace(name)) {
				value = spelt.Replace(fromTo.ReplaceAllString(value, `"$1-$2`))
			}
			line = strings.TrimSpace(name) + "=" + value + "\n"
		default:
			line = strings.TrimSpace(line) + "\n"
		}
		line = strings.Repeat(" ", rng.IntN(4)) + line
		if n := len(out); n > 0 && ok && strings.Contains(out[n-1], "=") && !strings.ContainsAny(line+out[n-1], "{}#[") && rng.IntN(2) == 0 {
			out[n-1], line = line, out[n-1]
		}
		out = append(out, line)
	}
	return strings.ReplaceAll(strings.Join(out, ""), "\n", "\r\n")
}
