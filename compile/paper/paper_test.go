package paper

import (
	"bytes"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"
	"golang.org/x/net/html"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/internal/planned"
	"vivary/internal/randomplan"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// collection reads a folder of the repository and compiles it as of a day, at noon.
func collection(t *testing.T, folder, day string) *compile.Result {
	t.Helper()
	c, found, err := plan.Load(afero.NewOsFs(), "../../"+folder)
	if err != nil {
		t.Fatal(err)
	}
	r := compile.Compile(c, found, noonOf(c, planned.Day(day)))
	if r.Roster == nil {
		t.Fatal("the collection was not understood")
	}
	return r
}

func noonOf(c *plan.Collection, day civil.Date) time.Time {
	loc := c.Location
	if loc == nil {
		loc = time.UTC
	}
	return time.Unix(int64(day)*86400+12*3600, 0).In(loc)
}

// each calls use for collections of examples and for random ones.
func each(t *testing.T, use func(t *testing.T, r *compile.Result)) {
	t.Helper()
	folders, err := afero.Glob(afero.NewOsFs(), "../../examples/ordinary/*")
	if err != nil || len(folders) == 0 {
		t.Fatal(err)
	}
	days := map[string]string{"examples/quillmoor": "2027-07-08", "testdata/jobs": "2026-11-30"}
	for _, f := range folders {
		days[strings.TrimPrefix(f, "../../")] = "2026-11-30"
	}
	for folder, day := range days {
		t.Run(folder, func(t *testing.T) { use(t, collection(t, folder, day)) })
	}
	n := 0
	for seed := uint64(0); n < 25; seed++ {
		p := randomplan.New(seed)
		c, found := planned.Files(t, p.Files(p.Today-1))
		r := compile.Compile(c, found, noonOf(c, p.Today))
		if r.Roster == nil {
			continue
		}
		n++
		t.Run("random "+wording.Number(float64(seed)), func(t *testing.T) { use(t, r) })
	}
}

// read is a document read by another library: the words of it, one line for each element that
// holds any, and what is wrong with it.
type read struct {
	lines   []string
	classes map[string]int
}

func asHTML(t *testing.T, d *Document, o Options) read {
	t.Helper()
	var b bytes.Buffer
	if err := d.HTML(&b, o); err != nil {
		t.Fatal(err)
	}
	balanced(t, b.Bytes())
	root, err := html.Parse(bytes.NewReader(b.Bytes()))
	if err != nil {
		t.Fatal(err)
	}
	out := read{classes: map[string]int{}}
	var walk func(*html.Node, bool)
	walk = func(n *html.Node, skip bool) {
		if n.Type == html.ElementNode {
			skip = skip || n.Data == "style" || n.Data == "svg" || n.Data == "head"
			for _, a := range n.Attr {
				switch {
				case a.Key == "class":
					out.classes[a.Val]++
				case a.Key == "style" || strings.HasPrefix(a.Key, "on") || n.Data == "script":
					t.Errorf("<%s %s=%q>", n.Data, a.Key, a.Val)
				}
			}
		}
		if n.Type == html.TextNode && !skip {
			if s := strings.Join(strings.Fields(n.Data), " "); s != "" {
				out.lines = append(out.lines, s)
			}
		}
		for c := n.FirstChild; c != nil; c = c.NextSibling {
			walk(c, skip)
		}
	}
	walk(root, false)
	return out
}

// balanced holds that every element that is opened is closed, in order.
func balanced(t *testing.T, text []byte) {
	t.Helper()
	z := html.NewTokenizer(bytes.NewReader(text))
	var open []string
	void := []string{"meta", "link", "br"}
	for {
		switch z.Next() {
		case html.ErrorToken:
			if len(open) > 0 {
				t.Errorf("not closed: %v", open)
			}
			return
		case html.StartTagToken:
			if name, _ := z.TagName(); !slices.Contains(void, string(name)) {
				open = append(open, string(name))
			}
		case html.EndTagToken:
			name, _ := z.TagName()
			if len(open) == 0 || open[len(open)-1] != string(name) {
				t.Fatalf("</%s> closes nothing of %v", name, open)
			}
			open = open[:len(open)-1]
		}
	}
}

func (x *read) has(text string) bool {
	return slices.Contains(x.lines, strings.Join(strings.Fields(text), " "))
}

// Every line of a list of a day stands on its sheet, each thing to be done with a box.
func TestEveryLineStandsOnTheSheet(t *testing.T) {
	boxes := 0
	each(t, func(t *testing.T, r *compile.Result) {
		lists := daylist.Of(r, daylist.Asked{Days: 3})
		doc := Round(r, lists)
		got := asHTML(t, doc, Options{})
		for i := range lists {
			l := lists[i]
			for _, x := range l.Walk {
				holdsLine(t, &got, &x)
				boxes += len(x.Jobs)
			}
			for _, d := range l.Ticked {
				if !got.has(d) {
					t.Errorf("what is done does not stand there: %s", d)
				}
			}
		}
		for _, number := range daylist.Numbers(r.Plan, nil) {
			for _, l := range lists {
				if len(l.Keepers) > 0 {
					continue
				}
				if n := strings.Join(got.lines, " "); !strings.Contains(n, number) {
					t.Errorf("no %q", number)
				}
			}
		}
	})
	if boxes < 400 {
		t.Errorf("only %d jobs", boxes)
	}
}

func holdsLine(t *testing.T, got *read, x *rounds.Line) {
	t.Helper()
	switch x.Sort {
	case rounds.Todo:
		if len(x.Jobs) < 2 {
			break
		}
		if !got.has(x.Names) {
			t.Errorf("no heading %q", x.Names)
		}
		for i := range x.Jobs {
			if text := x.Jobs[i].Text + shouldShow(&x.Jobs[i]); !got.has(text) {
				t.Errorf("no line %q", text)
			}
		}
		return
	case rounds.Amiss:
		for _, s := range sentences(x.Text) {
			if !got.has(s) {
				t.Errorf("no line %q", s)
			}
		}
		return
	}
	text := strings.TrimSuffix(strings.TrimPrefix(strings.TrimPrefix(x.Text, "FIRST: "), "- "), ":")
	if !got.has(text) && !got.has(strings.TrimPrefix(x.Text, "- ")) {
		t.Errorf("no line %q", x.Text)
	}
}

// Every class of sting, and of what else hurts, that lives in the care of somebody who stands
// in is on their sheet with its species, and none that does not.
func TestStingsInTheirCare(t *testing.T) {
	some := 0
	each(t, func(t *testing.T, r *compile.Result) {
		stints := r.Roster.Stints()
		for i := range stints {
			x := &stints[i]
			doc, err := Cover(r, x, "")
			if err != nil {
				t.Fatal(err)
			}
			got := asHTML(t, doc, Options{})
			for _, a := range schema.Aids {
				want := false
				for _, s := range roster.SheetsOf(covering(r, x).lives) {
					want = want || roster.Says(s, a.Figure, a.Words...)
				}
				said := slices.IndexFunc(got.lines, func(line string) bool {
					return strings.HasPrefix(line, a.Title+": ") || strings.HasPrefix(line, a.Title+" sting or bite: ")
				})
				has := said >= 0 && got.lines[said+1] == pieces(a.Text)[0]
				if has != want {
					t.Errorf("%s, for %s: %q stands there: %t, and lives there: %t", x.Keeper, x.For, a.Title, has, want)
				}
				if want {
					some++
				}
			}
		}
	})
	if some < 10 {
		t.Errorf("only %d classes", some)
	}
}

// digits finds numbers as they stand in a text.
var digits = regexp.MustCompile(`\d+(?:\.\d+)?`)

// No number stands on the sheet of somebody who stands in that neither its lists nor what is
// known of the collection has.
func TestNumbersAreKnown(t *testing.T) {
	each(t, func(t *testing.T, r *compile.Result) {
		stints := r.Roster.Stints()
		for i := range stints {
			x := &stints[i]
			doc, err := Cover(r, x, "")
			if err != nil {
				t.Fatal(err)
			}
			var known strings.Builder
			c := covering(r, x)
			for _, l := range c.lists {
				known.WriteString(strings.Join(l.Lines, "\n") + strings.Join(l.Ring, " ") + " " + l.Date.Words() + " " + wording.Clock(l.Round.Clock.V, r.Plan.Units) + l.Round.Shown() + "\n")
			}
			for _, a := range schema.Aids {
				known.WriteString(a.Text + " " + a.Title + "\n")
			}
			known.WriteString(strings.Join(daylist.Numbers(r.Plan, nil), " ") + doc.stamp + r.Plan.Title())
			known.WriteString(x.Back.Words() + strings.Join(schema.AidAlways, ""))
			for _, l := range c.lives {
				known.WriteString(l.Plan.Shown() + " " + strings.Join(inhabitants(l, r.Today), " ") + " ")
				for _, s := range rounds.Shows(r.Roster, l) {
					known.WriteString(s.Text + " " + s.Harm + " " + r.Horizon.Date(s.From).Short() + " ")
				}
				for _, s := range rounds.Stretches(l) {
					known.WriteString(s.Text + " " + s.From.Short() + " ")
				}
				for _, g := range l.Groups {
					for _, w := range g.Windows {
						known.WriteString(w.Title + w.Text + w.From.Words() + " " + (w.Until - 1).Words() + " ")
					}
				}
				text, _ := c.fall(l)
				known.WriteString(strings.ReplaceAll(text, "\x00", " ") + " ")
			}
			known.WriteString(c.degrees(0))
			for _, k := range r.Plan.Keepers {
				known.WriteString(" " + k.Shown() + " ")
			}
			all := map[string]bool{}
			for _, n := range digits.FindAllString(known.String(), -1) {
				all[n] = true
			}
			for _, line := range asHTML(t, doc, Options{}).lines {
				for _, n := range digits.FindAllString(line, -1) {
					if !all[n] && !strings.Contains(known.String(), n) {
						t.Errorf("%s stands in %q, and nobody said it", n, line)
					}
				}
			}
		}
	})
}

// What is hard to print: marks of HTML, letters of other scripts, and more than there is room
// for. Nothing of it gets out of its element.
func TestNastyTexts(t *testing.T) {
	long := strings.Repeat("Wide", 200)
	text := strings.NewReplacer("NASTY", `</li><script>alert(1)</script> & \"quoted\" \u202eevil`, "LONG", long).Replace(`collection "c" {
  title = "NASTY"
  time_zone = "Europe/London"
}
keeper "lead" {
  title = "NASTY"
  phone = "NASTY"
}
keeper "other" {
  title = "LONG"
}
contact "vet" {
  title = "LONG"
  phone = "LONG"
}
round "evening" {
  title = "NASTY"
  at     = "19:30"
  keeper = "lead"
}
away "lead" {
  from = "2026-12-01"
  to = "2026-12-05"
  cover = "other"
}
room "r" {
  title = "LONG"
  temperature = "20 to 24 C"
}
enclosure "a" {
  title = "LONG 12345"
  species = "pandinus-imperator"
  animals "one" {
    title = "NASTY"
    count = 1
    stage = "adult"
  }
  care "own" {
    kind = "other"
    task = "NASTY"
    every = "1 day"
  }
}
`)
	c, found := planned.Files(t, planned.With(text, ""))
	r := compile.Compile(c, found, noonOf(c, planned.Day("2026-11-30")))
	if r.Roster == nil {
		t.Fatal(found)
	}
	stints := r.Roster.Stints()
	if len(stints) != 1 {
		t.Fatalf("%d stints", len(stints))
	}
	cover, err := Cover(r, &stints[0], "https://h.example/x?a=1&b=<2>")
	if err != nil {
		t.Fatal(err)
	}
	labels, err := Labels(r, r.Lives, func(string) string { return "https://h.example/x" })
	if err != nil {
		t.Fatal(err)
	}
	for _, d := range []*Document{cover, labels, Round(r, daylist.Of(r, daylist.Asked{Days: 2}))} {
		got := asHTML(t, d, Options{Style: "/paper.css"})
		if all := strings.Join(got.lines, ""); strings.Contains(all, "\u202e") {
			t.Error("a mark that turns the direction of writing was kept")
		}
	}
	if got := asHTML(t, labels, Options{}); !strings.Contains(strings.Join(got.lines, " "), "12345") {
		t.Error("the number that tells a tank from its neighbours was cut off its label")
	}
}

func TestNoCodeOfABadAddress(t *testing.T) {
	r := collection(t, "examples/quillmoor", "2027-07-08")
	stints := r.Roster.Stints()
	if _, err := Cover(r, &stints[0], "no address at all"); err == nil {
		t.Error("a cover was made")
	}
	if _, err := Labels(r, r.Lives, func(string) string { return strings.Repeat("x", 500) }); err == nil {
		t.Error("labels were made")
	}
}

// A document is the same bytes each time, knows itself, and has its style in it or at an address.
func TestSameBytesAndOurs(t *testing.T) {
	r := collection(t, "examples/quillmoor", "2027-07-08")
	stints := r.Roster.Stints()
	var before []byte
	for range 2 {
		d, err := Cover(r, &stints[0], "https://h.example/k")
		if err != nil {
			t.Fatal(err)
		}
		var b bytes.Buffer
		if err := d.HTML(&b, Options{}); err != nil {
			t.Fatal(err)
		}
		if before != nil && !bytes.Equal(before, b.Bytes()) {
			t.Error("one document is written in two ways")
		}
		before = b.Bytes()
	}
	if !Ours(before) || Ours([]byte("<!DOCTYPE html>\n<html>")) {
		t.Error("a document of ours is not known, or another's is")
	}
	if !bytes.Contains(before, CSS) {
		t.Error("the style does not stand in it")
	}
}

// The plain text has all that the pages have.
func TestTextHasAll(t *testing.T) {
	r := collection(t, "examples/quillmoor", "2027-07-08")
	stints := r.Roster.Stints()
	d, err := Cover(r, &stints[0], "https://h.example/k")
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := d.Text(&b); err != nil {
		t.Fatal(err)
	}
	plain := strings.ToLower(strings.Join(strings.Fields(b.String()), " "))
	for _, line := range asHTML(t, d, Options{}).lines {
		if !strings.Contains(plain, strings.ToLower(line)) && line != d.stamp && !columnHead(line) {
			t.Errorf("not in the text: %q", line)
		}
	}
}

// columnHead reports whether a line heads the first column of a table, which text does not have.
func columnHead(line string) bool {
	return slices.Contains([]string{"Box", "You see", "Visit"}, line)
}
