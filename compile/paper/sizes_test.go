package paper

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/register"
	"vivary/compile/stock"
	"vivary/internal/planned"
	"vivary/plan"
	"vivary/schema"
)

// everyPaper is all that is printed of a house, one after the other.
func everyPaper(t *testing.T, r *compile.Result) *Document {
	t.Helper()
	all := Round(r, daylist.Of(r, daylist.Asked{Days: 2}))
	stints := r.Roster.Stints()
	cover, err := Cover(r, &stints[0], "")
	if err != nil {
		t.Fatal(err)
	}
	labels, err := Labels(r, r.Lives, nil)
	if err != nil {
		t.Fatal(err)
	}
	cards, _ := Cards(r)
	old := &Old{Warning: "The plan is refused.", Items: []OldItem{{Day: r.Today, Clock: "19:30", Text: "Evening round", Lines: []string{"Burrow A: feed 2 adult crickets"}}}}
	book := register.Of(r, r.Today)
	for _, d := range []*Document{cover, cards, CareSheets(r, r.Lives[:2]), labels, OldRound(r, old), Stock(r, stock.Look(r.Roster), 4), Register(r, book, book.Balance(r.Today-90, r.Today))} {
		if d.letter != all.letter {
			t.Errorf("%s is on another paper than the rounds", d.Title)
		}
		all.Sheets = append(all.Sheets, d.Sheets...)
	}
	return all
}

// Everything is printed on the paper that the plan says, the same for all, and whole: each word
// is there and none lies beyond what a printer reaches.
func TestEveryPaperOnEitherSize(t *testing.T) {
	t.Parallel()
	const mm = 72 / 25.4
	for _, size := range []struct {
		name          string
		width, height float64 // ISO 216; ANSI A
	}{{schema.PaperA4, 210 * mm, 297 * mm}, {schema.PaperLetter, 612, 792}} {
		r := collection(t, "examples/quillmoor", "2027-07-05")
		r.Plan.About.PaperSize = plan.Written[string]{V: size.name, At: r.Plan.About.At}
		d := everyPaper(t, r)
		pdf := printed(t, d)
		text := run(t, "pdftotext", "-raw", pdf, "-")
		joined := strings.Join(strings.Fields(text), "")
		for w, n := range words(strings.Join(asHTML(t, d, Options{}).lines, " ")) {
			if strings.Count(joined, w) < n { // a word may be on two lines
				t.Errorf("%s: %q stands %d times on paper, and %d in the document", size.name, w, strings.Count(joined, w), n)
			}
		}
		pages := 0
		for _, m := range regexp.MustCompile(`Pages: +(\d+)`).FindAllStringSubmatch(run(t, "pdfinfo", pdf), -1) {
			pages, _ = strconv.Atoi(m[1])
		}
		if pages < len(d.Sheets) || pages > 2*len(d.Sheets)+8 {
			t.Errorf("%s: %d sheets on %d sides", size.name, len(d.Sheets), pages)
		}
		for _, m := range regexp.MustCompile(`<page width="([0-9.]+)" height="([0-9.]+)"`).FindAllStringSubmatch(run(t, "pdftotext", "-bbox", pdf, "-"), -1) {
			w, _ := strconv.ParseFloat(m[1], 64)
			h, _ := strconv.ParseFloat(m[2], 64)
			if math.Abs(w-size.width) > 1 || math.Abs(h-size.height) > 1 {
				t.Fatalf("%s: a side of %.0f by %.0f points", size.name, w, h)
			}
		}
		const reach = 5 * mm // what printers of a house leave white, at the most (common practice, no source)
		for _, m := range placed.FindAllStringSubmatch(run(t, "pdftotext", "-bbox", pdf, "-"), -1) {
			if m[5] == "" {
				continue
			}
			var at [4]float64
			for i := range at {
				at[i], _ = strconv.ParseFloat(m[i+1], 64)
			}
			if at[0] < reach || at[1] < reach || at[2] > size.width-reach || at[3] > size.height-reach {
				t.Errorf("%s: %q lies at the edge: %v", size.name, m[5], at)
			}
		}
	}
}

// The plan says it for all papers; else it is as where the house stands, or as its units are.
func TestPaperSize(t *testing.T) {
	for _, x := range []struct {
		about  string
		letter bool
	}{
		{`time_zone = "Europe/London"`, false},
		{`time_zone = "America/Denver"`, true},
		{"time_zone = \"Europe/London\"\n  units = \"US\"", true},
		{"time_zone = \"Europe/London\"\n  paper_size = \"letter\"", true},
		{"time_zone = \"America/Denver\"\n  paper_size = \"A4\"", false},
		{"time_zone = \"America/Denver\"\n  paper_size = \"DIN A4\"", false},
		{"time_zone = \"Europe/London\"\n  units = \"US\"\n  paper_size = \"a4\"", false},
	} {
		c, found := planned.Files(t, planned.With("collection \"c\" {\n  "+x.about+"\n}\n", ""))
		if got := c.Letter(); got != x.letter {
			t.Errorf("%s: letter %v, %v", strings.ReplaceAll(x.about, "\n", ","), got, found)
		}
	}
	c, found := planned.Files(t, planned.With("collection \"c\" {\n  time_zone = \"Europe/London\"\n  paper_size = \"A5\"\n}\n", ""))
	if len(found) == 0 || c.Letter() {
		t.Errorf("A5 is taken: %v", found)
	}
}
