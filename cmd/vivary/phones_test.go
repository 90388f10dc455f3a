package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/feeds"
	"vivary/internal/randomplan"
	"vivary/plan"
)

var phoneLine = regexp.MustCompile(`(?m)^\s*phone\s*=\s*"([^"]+)"`)

// numbers are what a folder's plans have as phone numbers.
func numbers(t testing.TB, dir string) (out []string) {
	t.Helper()
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ".care.hcl") {
			return err
		}
		text, err := os.ReadFile(path)
		for _, m := range phoneLine.FindAllStringSubmatch(string(text), -1) {
			out = append(out, m[1])
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// tells returns the number that a feed has, or "". Lines are put together first: one may
// be folded within a number.
func tells(feed []byte, numbers []string) string {
	whole := bytes.ReplaceAll(feed, []byte("\r\n "), nil)
	for _, n := range numbers {
		if bytes.Contains(whole, []byte(n)) {
			return n
		}
	}
	return ""
}

// No feed of an example has a phone number in it: calendars are shared and served.
func TestNoFeedHasANumber(t *testing.T) {
	dirs, _ := filepath.Glob("../../examples/*")
	mistakes, _ := filepath.Glob("../../examples/mistakes/*")
	frozen, _ := filepath.Glob("../../testdata/frozen/*")
	known := 0
	for _, dir := range append(append(dirs, mistakes...), frozen...) {
		list := numbers(t, dir)
		if known += len(list); len(list) == 0 {
			continue
		}
		c, found, err := plan.Load(afero.NewBasePathFs(afero.NewOsFs(), dir), ".")
		if err != nil {
			t.Fatal(err)
		}
		if c.Location == nil {
			continue
		}
		for _, f := range feeds.Of(compile.Compile(c, found, noon)) {
			text, err := f.Bytes(nil)
			if err != nil {
				t.Fatal(err)
			}
			if n := tells(text, list); n != "" {
				t.Errorf("%s of %s has the number %s", f.Name, dir, n)
			}
		}
	}
	if known == 0 {
		t.Error("no example has a number")
	}
}

func TestNoFeedOfAnyPlanHasANumber(t *testing.T) {
	list := []string{randomplan.Phone(0), randomplan.Phone(1), randomplan.Phone(2)}
	hold(t, 8, func(t testing.TB, p *randomplan.Plan) error {
		m, err := builtOn(t, p, p.Today, nil)
		if err != nil {
			return err
		}
		for name, text := range m.feeds {
			if n := tells(text, list); n != "" {
				return fmt.Errorf("a number: %s has %s", name, n)
			}
		}
		return nil
	})
}

// A box that stays shut: its feed says whom to ring and not the number, and the list of
// whoever stands in has it.
func TestNumberIsOnTheSheet(t *testing.T) {
	const text = `collection "c" {
  time_zone = "Europe/London"
}
room "east" {
  temperature = "24 to 26 C"
  humidity    = "50 to 60 %"
}
keeper "lead" {
  title   = "Lead keeper"
  phone   = "01632 960157"
  trained = "breeding, feeding"
}
keeper "relief" {
  phone = "01632 960158"
}
contact "vet" {
  phone = "01632 960159"
}
round "evening" {
  at     = "19:30"
  keeper = "lead"
}
away "lead" {
  from  = "2026-11-26"
  to    = "2026-11-28"
  cover = "relief"
}
enclosure "box" {
  species = "pandinus-imperator"
  room    = "east"
  housing {
    kind      = "glass"
    inside    = "76 x 46 x 41 cm"
    lid       = "solid, latched"
    substrate = "coir and topsoil"
    depth     = "16 cm"
    hides     = 4
  }
  animals "mother" {
    count = "0.1"
    stage = "adult"
    state = "with brood"
  }
}
`
	disk := disk(t, map[string]string{"plan.care.hcl": text})
	c, found, err := plan.Load(disk, "c")
	if err != nil {
		t.Fatal(err)
	}
	r := compile.Compile(c, found, noon)
	const shut = "Box: do not open (young on her; ring Lead keeper, number on your sheet)"
	for _, f := range feeds.Of(r) {
		feed, err := f.Bytes(nil)
		if err != nil {
			t.Fatal(err)
		}
		whole := strings.ReplaceAll(strings.ReplaceAll(string(feed), "\r\n ", ""), "\\", "")
		if !strings.Contains(whole, shut) {
			t.Errorf("the feed does not say %q", shut)
		}
		if n := tells(feed, []string{"01632"}); n != "" {
			t.Error("the feed has a number")
		}
	}
	sheets := daylist.Of(r, daylist.Asked{Keeper: "relief", Days: 3})
	if len(sheets) == 0 {
		t.Fatal("no list for who stands in")
	}
	for _, s := range sheets {
		if got := strings.Join(s.Ring, "; "); got != "Lead keeper 01632 960157; Vet 01632 960159" {
			t.Errorf("%s: rings %q", s.Date, got)
		}
		if lines := strings.Join(s.Lines, "\n"); !strings.Contains(lines, shut) {
			t.Errorf("%s:\n%s", s.Date, lines)
		}
	}
	for _, s := range daylist.Of(r, daylist.Asked{Keeper: "lead", Days: 1}) {
		if len(s.Ring) > 0 {
			t.Errorf("the keeper's own list has numbers: %v", s.Ring)
		}
	}
}
