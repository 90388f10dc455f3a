package main

import (
	"encoding/json"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
)

const repository = "../.."

// pagesThereAre returns the paths of all pages that keepers read, below the repository.
func pagesThereAre(t *testing.T) []string {
	t.Helper()
	out := []string{"README.md", "DEVELOPERS.md"}
	for _, pattern := range []string{"examples/*.md", "schema/*.md", "schema/pages/*.md", "schema/pages/*/*.md", "compile/*.md"} {
		found, err := filepath.Glob(filepath.Join(repository, pattern))
		if err != nil || len(found) == 0 {
			t.Fatalf("%s: %v", pattern, err)
		}
		for _, f := range found {
			rel, err := filepath.Rel(repository, f)
			if err != nil {
				t.Fatal(err)
			}
			out = append(out, filepath.ToSlash(rel))
		}
	}
	return out
}

func page(t *testing.T, name string) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(repository, name))
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// fence is a block of a page between lines of three backticks.
type fence struct {
	page   string
	line   int    // of its first line
	head   string // under which it stands
	before string // the paragraph above it
	lang   string
	text   string
}

func (f *fence) name() string { return f.page + ":" + strconv.Itoa(f.line) }

func fences(t *testing.T, name string) []*fence {
	t.Helper()
	var out []*fence
	var open *fence
	head, before := "", ""
	for i, line := range strings.Split(page(t, name), "\n") {
		rest, isFence := strings.CutPrefix(line, "```")
		switch {
		case isFence && open == nil:
			open = &fence{page: name, line: i + 2, head: head, before: before, lang: rest}
		case isFence:
			out = append(out, open)
			open = nil
		case open != nil:
			open.text += line + "\n"
		case strings.HasPrefix(line, "#"):
			head, before = strings.TrimLeft(line, "# "), ""
		case line != "":
			before = line
		}
	}
	if open != nil {
		t.Errorf("%s: the block is not closed", open.name())
	}
	return out
}

// around is what stands round a block that is shown without what it stands in.
var around = map[string]string{
	"climate": "climate {\n  warm_end = \"28 C\"\n%}\n",
	"keeper":  "keeper \"second\" {\n%}\n",
	"rota":    "rota \"weekends\" {\n  week_a = \"2026-11-30\"\n%}\nround \"evening\" {\n  at = \"19:30\"\n  keeper = \"lead\"\n  rota = \"weekends\"\n}\n",
	"room":    "room \"west\" {\n  temperature = \"20 to 22 C\"\n%}\n",
	"gauge":   "climate {\n  warm_end = \"28 C\"\n  gauge \"logger-1\" {\n%}\n}\n",
	"housing": "housing {\n  inside = \"76 x 46 x 41 cm\"\n  lid    = \"solid, latched\"\n  depth  = \"16 cm\"\n  hides  = 4\n%}\n",
	"season":  "season \"cool rest\" {\n  from = \"1 nov\"\n  to   = \"28 feb\"\n%}\n",
	"species": "species \"pandinus-imperator\" {\n%}\n",
	"feeder":  "feeder \"house-cricket\" {\n%}\n",
	"type":    "type \"mine\" {\n  title   = \"a type of one's own\"\n  source  = [\"K20\"]\n  quality = \"keeper\"\n  seen    = \"2026-11-25\"\n%}\n",
}

// inHead finds what a block stands in by the heading of a reference.
var inHead = regexp.MustCompile("^`[a-z]+` in `([a-z]+)`")

// used are blocks whose names the pages use, for those that a block of a page does not
// write itself.
var used = []struct{ name, text string }{
	{"relief", "keeper \"relief\" {\n  trained = \"feeding\"\n  phone = \"on the door\"\n}\n"},
	{"fen", "seller \"fen\" {\n  delivers = [\"tue to fri\"]\n}\n"},
	{"morning", "round \"morning\" {\n  at = \"08:15\"\n  keeper = \"lead\"\n}\n"},
	{"weekday", "round \"weekday\" {\n  at = \"08:30\"\n  keeper = \"lead\"\n  on = [\"mon to fri\"]\n}\n"},
	{"weekend", "round \"weekend\" {\n  at = \"11:00\"\n  keeper = \"lead\"\n  on = [\"sat\", \"sun\"]\n}\n"},
	{"school-holidays", "dates \"school-holidays\" {\n  on = [\"2027-07-20 to 2027-09-01\"]\n}\n"},
	{"desert-tub", "template \"desert-tub\" {\n  species = \"hadrurus-arizonensis\"\n  room = \"east\"\n  housing {\n    kind = \"tub\"\n    inside = \"40 x 30 x 40 cm\"\n    lid = \"solid, latched\"\n    vents = \"some\"\n    moisture = \"dry\"\n    depth = \"16 cm\"\n    hides = 1\n  }\n  climate {\n    warm_end = \"29 to 31 C\"\n    night = \"22 to 25 C\"\n    thermometer = true\n    heater \"cable\" {\n      power = \"8 W\"\n      place = \"back\"\n      contact = \"gap\"\n      thermostat = \"30 C\"\n    }\n  }\n}\n"},
	{"K20", "source \"K20\" {\n  cite = \"A keeper, 2022\"\n  kind = \"keeper\"\n}\n"},
}

// whole makes a collection of a block of a page, as of a rule's example: what it does not
// write is sound.
func (f *fence) whole() (text, log string) {
	shown := f.text
	if in := inHead.FindStringSubmatch(f.head); in != nil && around[in[1]] != "" {
		shown = strings.Replace(around[in[1]], "%", shown, 1)
	}
	if strings.Contains(shown, "collection \"") && strings.Contains(shown, "enclosure \"") {
		return shown, ""
	}
	text, log = check.Example(shown)
	text = strings.Replace(text, "keeper \"lead\" {\n}", "keeper \"lead\" {\n  trained = \"hairs, feeding\"\n}", 1)
	for _, u := range used {
		head, _, _ := strings.Cut(u.text, "{")
		if strings.Contains(shown, strconv.Quote(u.name)) && !strings.Contains(shown, head+"{") {
			text += u.text
		}
	}
	return text, log
}

// Every block of a page is what a keeper could have typed: a plan or a part of one that is
// built, lines of a log that are read, commands that do what they say.
func TestPagesAreTrue(t *testing.T) {
	kinds := map[string]int{}
	for _, name := range pagesThereAre(t) {
		var commands []*fence
		for _, f := range fences(t, name) {
			kinds[f.lang]++
			switch f.lang {
			case "hcl":
				t.Run(f.name(), f.isPlan)
			case "care.log":
				t.Run(f.name(), f.isLog)
			case "json":
				if !json.Valid([]byte(f.text)) {
					t.Errorf("%s is no JSON", f.name())
				}
			case "sh":
				commands = append(commands, f)
			case "bash", "nginx":
				if name != servingPage && name != gitPage { // TestServing and TestGitPage run what is there
					t.Errorf("%s: nothing runs this block", f.name())
				}
			default:
				t.Errorf("%s: a block is hcl, care.log, json, sh, bash or nginx, and not %q", f.name(), f.lang)
			}
		}
		if len(commands) > 0 {
			t.Run(name, func(t *testing.T) { areDone(t, commands) })
		}
	}
	if kinds["hcl"] < 45 || kinds["care.log"] < 3 || kinds["sh"] < 8 {
		t.Errorf("only so many blocks were found: %v", kinds)
	}
}

// These find the rules in the brackets behind what refuses, and behind what is said of the
// log of a page.
var (
	refusing = regexp.MustCompile(`(?m): (?:error|danger): .*\[([a-z-]+)\]$`)
	ofLog    = regexp.MustCompile(`(?m)^records/page.care.log:.*\[([a-z-]+)\]$`)
)

// isPlan holds that a block is built without a word of caution, since it would be one for
// whoever copies it. The reference shows how things are written, in a box for which they are
// not meant: there the text has to be right.
func (f *fence) isPlan(t *testing.T) {
	text, log := f.whole()
	status, out, errs := checked(text, log)
	if strings.HasPrefix(f.page, "schema/") {
		for _, r := range refusing.FindAllStringSubmatch(out, -1) {
			if slices.Contains(slices.Concat(plan.Rules, roster.Rules), compile.FindRule(r[1])) {
				t.Errorf("%s\n%s", out, text)
			}
		}
		return
	}
	if status != fine || errs != "" || strings.Contains(out, ": caution: ") || strings.Contains(out, ": urgent: ") {
		t.Errorf("%d %s\n%s\n%s%s", status, errs, out, text, log)
	}
}

// tubs are what the logs and commands of pages are about besides Quillmoor: the enclosures
// that a how-to makes, and one that has no animal yet.
const tubs = `
enclosure "tub" {
  numbers  = "7 to 46"
  template = "tub"

  animals "one" {
    count  = 1
    instar = 5
    origin = "captive bred"
    paper  = "own brood"
  }
}

enclosure "big-1" {
  template = "tub"

  housing {
    places = 1
  }

  animals "one" {
    count = 0
  }
}
`

// copied is a folder of the repository, of which what is written goes elsewhere.
func copied(name string) (disk, written afero.Fs) {
	written = afero.NewMemMapFs()
	return afero.NewCopyOnWriteFs(afero.NewReadOnlyFs(afero.NewBasePathFs(afero.NewOsFs(), filepath.Join(repository, name))), written), written
}

// quillmoorWith is a copy of Quillmoor with those tubs.
func quillmoorWith(t *testing.T) afero.Fs {
	t.Helper()
	disk, _ := copied("examples/quillmoor")
	if err := afero.WriteFile(disk, "enclosures/more-tubs.care.hcl", []byte(tubs), 0o644); err != nil {
		t.Fatal(err)
	}
	return disk
}

// isLog holds that the lines of a log are read, and can have come to pass.
func (f *fence) isLog(t *testing.T) {
	inside := quillmoorWith(t)
	burrow, _ := afero.ReadFile(inside, "enclosures/burrow-a.care.hcl")
	_ = afero.WriteFile(inside, "enclosures/burrow-a.care.hcl", []byte(strings.ReplaceAll(string(burrow), `"adults"`, `"young"`)), 0o644)
	_ = afero.WriteFile(inside, "records/page.care.log", []byte(f.text), 0o644)
	_, out, errs := at(inside, noon, "check", ".")
	for _, r := range ofLog.FindAllStringSubmatch(out, -1) {
		if slices.Contains(slices.Concat(plan.Rules, life.Rules), compile.FindRule(r[1])) {
			t.Errorf("%s\n%s", errs, out)
		}
	}
}

func checked(text, log string) (status int, out, errs string) {
	disk := afero.NewMemMapFs()
	_ = afero.WriteFile(disk, "a.care.hcl", []byte(text), 0o644)
	if log != "" {
		_ = afero.WriteFile(disk, "a.care.log", []byte(log), 0o644)
	}
	return at(disk, noon, "check", ".")
}

// areDone runs the commands of a page one after another: those that begin with go run in
// the repository and leave nothing there that git would ask about, others in Quillmoor.
func areDone(t *testing.T, commands []*fence) {
	t.Setenv("XDG_CONFIG_HOME", "/.settings") // for the keys; a folder that no plan is looked for in
	inside := quillmoorWith(t)
	repo, written := copied("")
	for _, f := range commands {
		for line := range strings.Lines(f.text) {
			line = strings.TrimSpace(line)
			words, want := shellWords(line), fine
			if k := slices.Index(words, "#"); k >= 0 {
				if s, ok := strings.CutPrefix(strings.Join(words[k:], " "), "# exit status "); ok {
					want, _ = strconv.Atoi(s)
				}
				words = words[:k]
			}
			place := inside
			switch {
			case strings.HasPrefix(line, "go run ./cmd/vivary "):
				place, words = repo, words[3:]
			case strings.HasPrefix(line, "vivary "):
				words = words[1:]
			case line == "bash .ci/test":
				continue
			default:
				t.Errorf("%s: %s: not a command of this program", f.name(), line)
				continue
			}
			if status, out, errs := at(place, noon, words...); status != want || out == "" {
				t.Errorf("%s: %s: status %d, not %d: %s%s", f.name(), line, status, want, out, errs)
			}
		}
	}
	if _, err := os.Stat(filepath.Join(repository, ".git")); err != nil {
		return
	}
	_ = afero.Walk(written, ".", func(name string, info os.FileInfo, err error) error {
		if err == nil && !info.IsDir() && exec.Command("git", "-C", repository, "check-ignore", "-q", name).Run() != nil {
			t.Errorf("the commands of %s leave %s in the checkout", commands[0].page, name)
		}
		return err
	})
}

// The README asks for the Go that go.mod asks for.
func TestWhichGo(t *testing.T) {
	wanted := regexp.MustCompile(`(?m)^go (\d+\.\d+)`).FindStringSubmatch(page(t, "go.mod"))
	if wanted == nil || !strings.Contains(page(t, "README.md"), "Go "+wanted[1]+" or later") {
		t.Errorf("go.mod asks for %v, and the README for another Go", wanted)
	}
}

var (
	linked   = regexp.MustCompile(`\]\(([^)\s]+)\)`)
	headings = regexp.MustCompile(`(?m)^#+ (.+)$`)
	anchored = regexp.MustCompile(`<a id="([^"]+)"></a>`)
	notSlug  = regexp.MustCompile(`[^\pL\pN _-]`)
)

// anchor returns what a heading is called in a link.
func anchor(heading string) string {
	return strings.ReplaceAll(notSlug.ReplaceAllString(strings.ToLower(heading), ""), " ", "-")
}

// Links lead to pages that there are, and to headings on them.
func TestLinks(t *testing.T) {
	anchors := map[string]map[string]bool{}
	of := func(name string) map[string]bool {
		if anchors[name] == nil {
			all := map[string]bool{}
			text := page(t, name)
			for _, h := range headings.FindAllStringSubmatch(text, -1) {
				all[anchor(h[1])] = true
			}
			for _, a := range anchored.FindAllStringSubmatch(text, -1) {
				all[a[1]] = true
			}
			anchors[name] = all
		}
		return anchors[name]
	}
	for _, name := range pagesThereAre(t) {
		for _, l := range linked.FindAllStringSubmatch(page(t, name), -1) {
			if strings.Contains(l[1], "://") {
				continue
			}
			file, head, _ := strings.Cut(l[1], "#")
			to := name
			if file != "" {
				to = path.Join(path.Dir(name), file)
			}
			if _, err := os.Stat(filepath.Join(repository, to)); err != nil {
				t.Errorf("%s links to %s, which is not there", name, l[1])
			} else if head != "" && !of(to)[head] {
				t.Errorf("%s links to %s, and %s has no such heading", name, l[1], to)
			}
		}
	}
}

// The README and the how-to list what they hold, all of it and in its order.
func TestContents(t *testing.T) {
	for _, name := range []string{"README.md", "examples/HOWTO.md", servingPage, gitPage} {
		var want []string
		for _, h := range regexp.MustCompile(`(?m)^## (.+)$`).FindAllStringSubmatch(page(t, name), -1) {
			want = append(want, "["+h[1]+"](#"+anchor(h[1])+")")
		}
		got := regexp.MustCompile(`\[[^\]]+\]\(#[^)]+\)`).FindAllString(page(t, name), -1)
		if len(want) < 5 || !slices.Equal(want, got) {
			t.Errorf("%s lists\n%s\nand holds\n%s", name, strings.Join(got, "\n"), strings.Join(want, "\n"))
		}
	}
}
