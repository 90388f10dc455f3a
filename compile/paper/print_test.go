package paper

import (
	"bytes"
	"context"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/internal/planned"
)

// none is what zbarimg returns where a picture has no code.
const none = 4

// run runs a program of another make; one that is missing fails the test.
func run(t *testing.T, name string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(name); err != nil {
		t.Fatalf("%s is missing: bash testdata/oracles/setup installs it", name)
	}
	limit, cancel := context.WithTimeout(t.Context(), 90*time.Second)
	defer cancel()
	var out, errs bytes.Buffer
	c := exec.CommandContext(limit, name, args...)
	c.Stdout, c.Stderr = &out, &errs
	if err := c.Run(); err != nil && c.ProcessState.ExitCode() != none {
		t.Fatalf("%s: %v\n%s", name, err, errs.String())
	}
	return out.String()
}

// printed prints a document by a browser, and returns the name of the file.
func printed(t *testing.T, d *Document) string {
	t.Helper()
	dir := t.TempDir()
	page, pdf := filepath.Join(dir, "page.html"), filepath.Join(dir, "page.pdf")
	var b bytes.Buffer
	if err := d.HTML(&b, Options{}); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(page, b.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
	profile, err := os.MkdirTemp("", "vivary-print-")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { os.RemoveAll(profile) }) // the browser may still write into it
	run(t, "chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
		"--disable-component-update", "--disable-sync", "--user-data-dir="+profile, "--no-pdf-header-footer", "--print-to-pdf="+pdf, "file://"+page)
	if dir := os.Getenv("VIVARY_PICTURES"); dir != "" { // to look at it
		text, err := os.ReadFile(pdf)
		if err == nil {
			err = os.WriteFile(filepath.Join(dir, strings.ReplaceAll(t.Name(), "/", "-")+".pdf"), text, 0o600)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	return pdf
}

// words counts the words of a text.
func words(text string) map[string]int {
	out := map[string]int{}
	for _, w := range strings.Fields(text) {
		out[w]++
	}
	return out
}

// holdsAll holds that every word of a document is on the paper, as often, on sheets of the size.
func holdsAll(t *testing.T, d *Document, pdf, size string) {
	t.Helper()
	if info := run(t, "pdfinfo", pdf); !strings.Contains(info, size) {
		t.Errorf("the sheets are not of size %s:\n%s", size, info)
	}
	text := run(t, "pdftotext", "-raw", pdf, "-")
	got, joined := words(text), strings.Join(strings.Fields(text), "")
	for w, n := range words(strings.Join(asHTML(t, d, Options{}).lines, " ")) {
		if got[w] < n && !(len(w) > 30 && strings.Contains(joined, w)) { // it may be on two lines
			t.Errorf("%q stands %d times on paper, and %d in the document", w, got[w], n)
		}
	}
}

// codes are the addresses that a reader finds in the codes on the first pages.
func codes(t *testing.T, pdf string, pages int) []string {
	t.Helper()
	stem := strings.TrimSuffix(pdf, ".pdf")
	run(t, "pdftoppm", "-r", "200", "-gray", "-png", "-l", strconv.Itoa(pages), pdf, stem)
	drawn, err := filepath.Glob(stem + "-*.png")
	if err != nil || len(drawn) == 0 {
		t.Fatalf("no pages: %v", err)
	}
	out := strings.Fields(run(t, "zbarimg", append([]string{"--quiet", "--raw", "-Sdisable", "-Sqrcode.enable"}, drawn...)...))
	slices.Sort(out)
	return out
}

func TestPrintedCover(t *testing.T) {
	t.Parallel()
	r := collection(t, "examples/quillmoor", "2027-07-22")
	stints := r.Roster.Stints()
	const address = "https://house.example/key/4e1f0c2b9d7a46d8/stand-in"
	d, err := Cover(r, &stints[0], address)
	if err != nil {
		t.Fatal(err)
	}
	pdf := printed(t, d)
	holdsAll(t, d, pdf, "(A4)")
	if found := codes(t, pdf, 2); !slices.Equal(found, []string{address}) {
		t.Errorf("a reader finds %q, want %q", found, address)
	}
	heads(t, d, pdf, 1)
	together(t, r, pdf)
}

// heads holds that each page from one on says as of when it is, and which of how many.
func heads(t *testing.T, d *Document, pdf string, from int) {
	t.Helper()
	pages := strings.Split(strings.TrimSuffix(run(t, "pdftotext", "-layout", pdf, "-"), "\f"), "\f")
	for i, page := range pages {
		if i < from-1 {
			continue
		}
		if !strings.Contains(page, d.stamp) {
			t.Errorf("page %d does not say as of when it is:\n%s", i+1, page)
		}
		if want := fmt.Sprintf("%d of %d", i+1, len(pages)); !strings.Contains(page, want) {
			t.Errorf("page %d does not say %q", i+1, want)
		}
	}
}

// together holds that what is done at a tank stands on one page.
func together(t *testing.T, r *compile.Result, pdf string) {
	t.Helper()
	pages := strings.Split(run(t, "pdftotext", "-layout", pdf, "-"), "\f")
	for i := range pages {
		pages[i] = strings.Join(strings.Fields(pages[i]), " ")
	}
	for _, l := range daylist.Of(r, daylist.Asked{Days: 4, Keeper: "relief"}) {
		for _, x := range l.Walk {
			if len(x.Jobs) < 2 {
				continue
			}
			first, last := x.Names+" "+x.Jobs[0].Text, x.Jobs[len(x.Jobs)-1].Text
			if !slices.ContainsFunc(pages, func(p string) bool {
				k := strings.Index(p, strings.Join(strings.Fields(first), " "))
				return k >= 0 && strings.Contains(p[k:], last)
			}) {
				t.Errorf("%s on %s is on no one page", x.Names, l.Date)
			}
		}
	}
}

// american is a house that prints on letter, with names that hardly have room on a label.
func american(t *testing.T) *compile.Result {
	t.Helper()
	var b strings.Builder
	b.WriteString("collection \"c\" {\n  title = \"The house of many boxes\"\n  time_zone = \"America/Denver\"\n}\nkeeper \"lead\" {\n  title = \"Keeper of the southern room\"\n  phone = \"303 555 0147\"\n}\n" +
		"round \"evening\" {\n  at = \"7:30 pm\"\n  keeper = \"lead\"\n}\nroom \"r\" {\n  temperature = \"68 to 77 F\"\n}\n")
	for i, title := range []string{"Tub 1", "The long low vivarium at the southern window, second shelf, box 12", strings.Repeat("W", 70), "Mmmmmmmmmmmmmmmm Wwwwwwwwwwwwwww 7", "Dune"} {
		for k, species := range []string{"pandinus-imperator", "brachypelma-hamorii", "parabuthus-transvaalicus"} {
			fmt.Fprintf(&b, "enclosure \"e-%d-%d\" {\n  title = %q\n  species = %q\n  animals \"one\" {\n    title = \"Somebody with a title\"\n    count = 1\n    stage = \"adult\"\n  }\n  animals \"two\" {\n    count = 2\n    instar = 4\n  }\n}\n", i, k, title, species)
		}
	}
	c, found := planned.Files(t, planned.With(b.String(), ""))
	r := compile.Compile(c, found, noonOf(c, planned.Day("2026-11-30")))
	if r.Roster == nil {
		t.Fatal(found)
	}
	return r
}

// Labels and a round, on letter: what is printed of both at once takes a browser half the time.
func TestPrintedLabels(t *testing.T) {
	t.Parallel()
	r := american(t)
	var want []string
	for _, l := range r.Lives {
		want = append(want, "https://house.example/key/4e1f0c2b9d7a46d8/enclosure/"+l.Plan.Name.V)
	}
	slices.Sort(want)
	d, err := Labels(r, r.Lives, func(name string) string { return "https://house.example/key/4e1f0c2b9d7a46d8/enclosure/" + name })
	if err != nil {
		t.Fatal(err)
	}
	pages := len(d.Sheets)
	d.Sheets = append(d.Sheets, Round(r, daylist.Of(r, daylist.Asked{Days: 1})).Sheets...)
	pdf := printed(t, d)
	holdsAll(t, d, pdf, "(letter)")
	heads(t, d, pdf, pages+1)
	if got := codes(t, pdf, pages); !slices.Equal(got, want) {
		t.Errorf("a reader finds\n%q, want\n%q", got, want)
	}
	within(t, pdf, pages)
}

// box is where a word stands on a page, in points.
type box struct {
	word           string
	x0, y0, x1, y1 float64
}

var placed = regexp.MustCompile(`<page|<word xMin="([0-9.]+)" yMin="([0-9.]+)" xMax="([0-9.]+)" yMax="([0-9.]+)">([^<]*)`)

// within holds that no word on the first pages, of labels, lies across an edge of its label or
// on another.
func within(t *testing.T, pdf string, pages int) {
	t.Helper()
	const mm = 72 / 25.4
	var page []box
	n := 0
	for _, m := range placed.FindAllStringSubmatch(run(t, "pdftotext", "-bbox", "-l", strconv.Itoa(pages), pdf, "-"), -1) {
		if m[5] == "" {
			page = nil
			continue
		}
		b := box{word: m[5]}
		for i, to := range []*float64{&b.x0, &b.y0, &b.x1, &b.y1} {
			*to, _ = strconv.ParseFloat(m[i+1], 64)
		}
		n++
		column := func(x float64) float64 { return math.Floor((x/mm - 10) / 90) }
		row := func(y float64) float64 { return math.Floor((y/mm - 10) / 55) }
		if column(b.x0) != column(b.x1) || row(b.y0) != row(b.y1) || column(b.x0) < 0 || column(b.x0) > 1 {
			t.Errorf("%q lies across an edge: %+v", b.word, b)
		}
		// Lines may touch: a word's box is as tall as its font.
		for _, o := range page {
			if b.x0 < o.x1-0.5 && o.x0 < b.x1-0.5 && b.y0 < o.y1-2.5 && o.y0 < b.y1-2.5 {
				t.Errorf("%q lies on %q: %+v %+v", b.word, o.word, b, o)
			}
		}
		page = append(page, b)
	}
	if n < 200 {
		t.Errorf("only %d words", n)
	}
}
