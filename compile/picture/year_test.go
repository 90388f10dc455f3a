package picture

import (
	"bytes"
	"encoding/xml"
	"errors"
	"github.com/spf13/afero"
	"io"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/internal/planned"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

var now = time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)

// read compiles a collection of one plan and one log.
func read(t *testing.T, text, log string) *compile.Result {
	t.Helper()
	c, found := planned.Files(t, planned.With(text, log))
	return compiled(t, c, found)
}

// quillmoor compiles the example.
func quillmoor(t *testing.T) *compile.Result {
	t.Helper()
	c, found, err := plan.Load(afero.NewOsFs(), "../../examples/quillmoor")
	if err != nil {
		t.Fatal(err)
	}
	return compiled(t, c, found)
}

func compiled(t *testing.T, c *plan.Collection, found []finding.Finding) *compile.Result {
	t.Helper()
	r := compile.Compile(c, found, now)
	if len(r.Lives) == 0 {
		t.Fatalf("no enclosure was read: %v", found)
	}
	return r
}

func draw(t *testing.T, r *compile.Result, i int) string {
	t.Helper()
	var b bytes.Buffer
	if err := Year(&b, r, i); err != nil {
		t.Fatal(err)
	}
	if dir := os.Getenv("VIVARY_PICTURES"); dir != "" { // to look at them
		name := filepath.Join(dir, strings.ReplaceAll(t.Name(), "/", "-")+strconv.Itoa(i)+".svg")
		if err := os.WriteFile(name, b.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return b.String()
}

const (
	house = "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nkeeper \"lead\" {\n}\nround \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n}\n"
	box   = "  housing {\n    kind = \"glass\"\n    inside = \"60 x 45 x 40 cm\"\n    lid = \"solid, latched\"\n    vents = \"some\"\n    substrate = \"coir\"\n    depth = \"16 cm\"\n    hides = 2\n  }\n"
)

// The collections are chosen for what is hard to draw.
var collections = []struct {
	name, text, log string
	want            []string // labels that stand in the picture
}{
	{"nothing but animals", house + "enclosure \"bare\" {\n  species = \"hadrurus-arizonensis\"\n  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n}\n", "",
		[]string{"Bare: the year from Wed 25 Nov 2026", "for this the plan has to say inside, room temperature and species", "harmful above 40 C", "harmful below 5 C", "species sheet 20 to 50 %", "no temperature planned"}},
	{"no such species", house + "enclosure \"bare\" {\n  species = \"unknown-thing\"\n  animals \"one\" {\n    count = 1\n  }\n}\n", "", []string{"Temperature, C"}},
	{"no heater", house + "room \"r\" {\n  temperature = \"19 to 24 C\"\n}\nenclosure \"plain\" {\n  species = \"brachypelma-hamorii\"\n" + box + "  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n}\n", "",
		[]string{"as the room 19 to 24 C", "without a heater the inside stays as the room is, 19 C at the coldest"}},
	// 40 C is 104 F and 5 C is 41 F: NIST SP 811 (2008), B.8.
	{"fahrenheit", house + "room \"r\" {\n  temperature = \"50 to 75 F\"\n}\nenclosure \"us\" {\n  species = \"hadrurus-arizonensis\"\n" + box + "  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n  climate {\n    warm_end = \"86 to 88 F\"\n    cool_end = \"75 to 79 F\"\n    night = \"68 F\"\n    heater \"mat\" {\n      power = \"25 W\"\n      size  = \"28 x 43 cm\"\n      place = \"side\"\n      thermostat = \"88 F\"\n    }\n  }\n}\n", "",
		[]string{"Temperature, F", "warm end 86 to 88 F", "cool end 75 to 79 F", "night 68 F", "room 50 to 75 F", "harmful above 104 F", "harmful below 41 F"}},
	// The room is colder than what harms, so the air falls to it.
	{"cold room", house + "room \"r\" {\n  temperature = \"14 to 20 C\"\n}\nenclosure \"cold\" {\n  species = \"pandinus-imperator\"\n" + box + "  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n  climate {\n    warm_end = \"29 C\"\n    cool_end = \"25 C\"\n    heater \"mat\" {\n      power = \"25 W\"\n      size  = \"28 x 43 cm\"\n      place = \"side\"\n      thermostat = \"29 C\"\n    }\n  }\n}\n", "",
		[]string{"After a power cut:", "air, likely course", "substrate, likely course", "harmful", "falls to 15 C in about"}},
	{"cool rest", house + "room \"r\" {\n  temperature = \"14 to 24 C\"\n}\nenclosure \"dune\" {\n  species = \"hadrurus-arizonensis\"\n" + box + "  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n  climate {\n    warm_end = \"30 C\"\n    heater \"mat\" {\n      power = \"25 W\"\n      size  = \"28 x 43 cm\"\n      place = \"side\"\n      thermostat = \"30 C\"\n    }\n  }\n  season \"rest\" {\n    from = \"15 nov\"\n    to = \"20 feb\"\n    feeding = \"none\"\n    heating = \"off\"\n  }\n}\n", "",
		[]string{"rest, 15 Nov to 20 Feb: no meals, left alone, no misting, heaters off"}},
	{"south", strings.Replace(house, "Europe/London\"", "Australia/Perth\"", 1) + "room \"r\" {\n  temperature = \"15 to 30 C\"\n}\nenclosure \"wet\" {\n  species = \"pandinus-imperator\"\n" + box + "  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n  climate {\n    warm_end = \"28 C\"\n    humidity = \"70 to 75 %\"\n    heater \"mat\" {\n      power = \"25 W\"\n      size  = \"28 x 43 cm\"\n      place = \"side\"\n      thermostat = \"28 C\"\n    }\n  }\n  season \"rains\" {\n    from = \"15 dec\"\n    to = \"20 feb\"\n    feeding = \"half\"\n    climate {\n      warm_end = \"31 C\"\n      humidity = \"80 to 85 %\"\n    }\n  }\n}\n", "",
		[]string{"rains, 15 Dec to 20 Feb: every second meal", "in rains: 31 C", "in rains: 80 to 85 %", "planned 70 to 75 %"}},
	{"crowd", house + "keeper \"second\" {\n}\naway \"lead\" {\n  from = \"2027-03-01\"\n  to = \"2027-03-20\"\n}\naway \"lead\" {\n  from = \"2027-03-25\"\n  to = \"2027-04-20\"\n  cover = \"second\"\n  visits = [\"mon\"]\n}\naway \"lead\" {\n  from = \"2027-10-01\"\n  to = \"2027-12-20\"\n  cover = \"second\"\n}\nroom \"r\" {\n  temperature = \"20 to 24 C\"\n}\nenclosure \"crowd\" {\n  species = \"pandinus-imperator\"\n" + box + crowd() + "}\n", crowdLog(),
		[]string{"Season (2 more not drawn)", "Held (7 more not drawn)", "Away (1 more not drawn)", "17 other kinds of meal", "Lead away 1 Mar, back 20 Mar, nobody comes", "Lead away 25 Mar, back 20 Apr, Second comes on 4 days"}},
	{"measured", house + "room \"r\" {\n  temperature = \"19 to 23 C\"\n}\nenclosure \"lit\" {\n  species = \"pandinus-imperator\"\n" + box + "  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n  climate {\n    warm_end = \"28 to 31 C\"\n    cool_end = \"22 to 25 C\"\n    humidity = \"70 to 85 %\"\n    heater \"mat\" {\n      power = \"25 W\"\n      size  = \"28 x 43 cm\"\n      place = \"side\"\n      thermostat = \"30 C\"\n    }\n  }\n}\n", measuredLog,
		[]string{"spot 29 to 32.5 C", "1 of 3 not as aimed for", "air 12 to 23 C", "1 of 3 harmful", "night 21 C", "room 20 C", "no place said 26 C", "none harmful", "measured 60 to 80 %", "1 of 3 not as aimed for", "1 Oct", "1 Nov", "1 Dec"}},
	{"nasty", house + "room \"r\" {\n  title = \"</svg><script>alert(1)</script>\"\n  temperature = \"20 to 24 C\"\n}\nenclosure \"nasty\" {\n  title = \"<b>&\\\"'\\n\\u202eevil\\u0007 ]]> " + strings.Repeat("Wide ", 30) + "\"\n  species = \"pandinus-imperator\"\n" + box + "  animals \"one\" {\n    title = \"<i>&amp; 蠍 🦂\"\n    count = 1\n    stage = \"adult\"\n  }\n  animals \"two\" {\n    count = 1\n    stage = \"adult\"\n  }\n  season \"<rest & \\\"quiet\\\" \" {\n    from = \"1 dec\"\n    to = \"28 feb\"\n    misting = \"none\"\n  }\n}\n", "",
		[]string{"<rest & \"quiet\", 1 Dec to 28 Feb: no misting"}},
}

// measuredLog is what a keeper typed: of one day twice, at all places, of before the picture, one
// line taken back, and a slip of the pen.
const measuredLog = "2026-05-01 lit measured spot 50 C\n" +
	"2026-09-20 lit measured spot 29 C air 22 C room 20 C 80 %\n" +
	"2026-10-10 07:00 lit measured spot 30 C air 12 C 60 %\n" +
	"2026-10-10 19:00 lit measured spot 32.5 C air 23 C 75 %\n" +
	"2026-11-01 lit measured night 21 C\n" +
	"2026-11-02 lit measured 26 C\n" +
	"2026-11-03 lit measured spot 99 C\n2026-11-03 lit withdrawn measured\n"

// crowd is more groups, prey, holds and windows than a page has rows for.
func crowd() string {
	var b strings.Builder
	for i, name := range []string{"a", "b", "c", "d", "e"} {
		b.WriteString("  animals \"" + name + "\" {\n    title = \"The long-named group " + strconv.Itoa(i) + "\"\n    count = 2\n    instar = 5\n  }\n")
		b.WriteString("  feeding \"" + name + "\" {\n    on = [\"tue\"]\n    per_animal = 1\n    rotate = [\"cricket medium\", \"roach small\", \"mealworm small\"]\n  }\n")
	}
	for i, from := range []string{"10 jan", "20 jan", "1 feb", "10 feb"} {
		b.WriteString("  season \"s" + strconv.Itoa(i) + "\" {\n    from = \"" + from + "\"\n    to = \"1 may\"\n    feeding = \"half\"\n  }\n")
	}
	return b.String()
}

func crowdLog() string {
	var b strings.Builder
	for _, name := range []string{"a", "b", "c", "d", "e"} {
		b.WriteString("2026-11-24 crowd " + name + " moult 2\n")
	}
	return b.String()
}

// each draws all collections and the example.
func each(t *testing.T, use func(t *testing.T, r *compile.Result, i int, drawn string)) {
	for _, c := range collections {
		t.Run(c.name, func(t *testing.T) {
			r := read(t, c.text, c.log)
			use(t, r, 0, draw(t, r, 0))
		})
	}
	t.Run("quillmoor", func(t *testing.T) {
		r := quillmoor(t)
		for i := range r.Lives {
			use(t, r, i, draw(t, r, i))
		}
	})
}

// label is a text element with the box that it takes.
type label struct {
	words          string
	x0, y0, x1, y1 float64
}

// labels decodes a picture with the standard library's reader of XML.
func labels(t *testing.T, drawn string) (all []label, title, desc string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(drawn))
	d.Strict = true
	var open []xml.StartElement
	var words string
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatal(err)
		}
		switch e := token.(type) {
		case xml.StartElement:
			open, words = append(open, e), ""
			if e.Name.Local == "script" || e.Name.Local == "image" || e.Name.Local == "i" || e.Name.Local == "b" {
				t.Errorf("an element %q", e.Name.Local)
			}
		case xml.CharData:
			words += string(e)
		case xml.EndElement:
			last := open[len(open)-1]
			open = open[:len(open)-1]
			switch e.Name.Local {
			case "title":
				title = words
			case "desc":
				desc = words
			case "text":
				all = append(all, measured(t, last, words))
			}
		}
	}
	return all, title, desc
}

func measured(t *testing.T, e xml.StartElement, words string) label {
	t.Helper()
	get := map[string]string{}
	for _, a := range e.Attr {
		get[a.Name.Local] = a.Value
	}
	number := func(name string) float64 {
		v, err := strconv.ParseFloat(get[name], 64)
		if err != nil {
			t.Fatalf("text %q has no %s: %v", words, name, err)
		}
		return v
	}
	x, y, size := number("x"), number("y"), number("font-size")
	w := dejavu(words) * size
	if get["font-weight"] == "bold" {
		w *= 1.1
	}
	switch get["text-anchor"] {
	case "middle":
		x -= w / 2
	case "end":
		x -= w
	}
	return label{words, x, y - 0.76*size, x + w, y + 0.2*size}
}

// advance are the widths of the characters from the space to the tilde in DejaVu
// Sans 2.37, in thousandths of the size: its table hmtx.
var advance = [95]float64{318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838}

func dejavu(s string) float64 {
	w := 0.0
	for _, r := range s {
		switch {
		case r >= ' ' && r <= '~':
			w += advance[r-' ']
		case r == '·':
			w += 318
		default:
			w += 1000
		}
	}
	return w / 1000
}

func TestWidthIsEnough(t *testing.T) {
	for r := ' '; r <= '~'; r++ {
		if got, want := wording.Width(string(r), 1, false), advance[r-' ']/1000; got < want {
			t.Errorf("%q is taken to be %.3f wide, and is %.3f in DejaVu Sans", r, got, want)
		}
	}
}

// Every text lies within the page, and none on another.
func TestTextsApart(t *testing.T) {
	each(t, func(t *testing.T, r *compile.Result, i int, drawn string) {
		all, _, _ := labels(t, drawn)
		if len(all) < 30 {
			t.Errorf("only %d texts", len(all))
		}
		for k, a := range all {
			if a.x0 < 0 || a.y0 < 0 || a.x1 > pageWidth || a.y1 > pageHeight {
				t.Errorf("%s: %q lies outside the page: %.0f,%.0f to %.0f,%.0f", r.Lives[i].Plan.Name.V, a.words, a.x0, a.y0, a.x1, a.y1)
			}
			for _, b := range all[:k] {
				if a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1 {
					t.Errorf("%s: %q lies on %q", r.Lives[i].Plan.Name.V, a.words, b.words)
				}
			}
		}
	})
}

func TestLabels(t *testing.T) {
	for _, c := range collections {
		t.Run(c.name, func(t *testing.T) {
			all, title, desc := labels(t, draw(t, read(t, c.text, c.log), 0))
			var words []string
			for _, l := range all {
				words = append(words, l.words)
			}
			drawn := strings.Join(words, " | ")
			for _, w := range c.want {
				if !strings.Contains(drawn, w) {
					t.Errorf("the picture does not say %q:\n%s", w, drawn)
				}
			}
			if !strings.Contains(title, "the year from Wed 25 Nov 2026") || !strings.Contains(desc, "Temperatures:") || !strings.Contains(desc, "After a power cut:") {
				t.Errorf("title %q, description %q", title, desc)
			}
			if strings.ContainsAny(drawn+title+desc, "\u202e\u0007\ufffd") {
				t.Error("marks that are not seen were kept")
			}
		})
	}
}

// What the example's pictures are looked at for.
func TestExample(t *testing.T) {
	want := map[string][]string{
		"dune-1":    {"Dune 1: the year from Wed 25 Nov 2026", "today, Wed 25 Nov 2026", "2027", "1 Jan", "warm end ", "cool end ", "in cool rest: 19 to 20 C", "cool rest, 15 Nov to 20 Feb", "harmful above 40 C", "unusual above 35 C", "1 adult cricket", "Fresh water", "Lead keeper away 10 Jul, back 24 Jul"},
		"burrow-a":  {"2 adult crickets each", "2 medium roaches each", "Mist 150 ml", "harmful below 15 C"},
		"burrow-b":  {"Fern: young on her since 5 Nov 2026, until ", "Fern: First moult of the brood possible, 19 Nov to 26 Nov"},
		"arrival-1": {"Quarantine, 18 Oct to 16 Dec"},
	}
	r := quillmoor(t)
	for i, l := range r.Lives {
		all, _, _ := labels(t, draw(t, r, i))
		for _, w := range want[l.Plan.Name.V] {
			found := false
			for _, x := range all {
				found = found || strings.HasPrefix(x.words, w)
			}
			if !found {
				t.Errorf("%s: no %q", l.Plan.Name.V, w)
			}
		}
		delete(want, l.Plan.Name.V)
	}
	if len(want) > 0 {
		t.Errorf("not in the example: %v", want)
	}
}

func TestSameBytes(t *testing.T) {
	again := map[string]string{}
	for range 2 {
		each(t, func(t *testing.T, r *compile.Result, i int, drawn string) {
			name := r.Lives[i].Plan.Name.V + strings.Split(t.Name(), "#")[0]
			if before, ok := again[name]; ok && before != drawn {
				t.Errorf("%s is drawn in two ways", name)
			}
			again[name] = drawn
		})
	}
}

// A season reaches and leaves its temperature at its ramp, within its own days:
// 3 °C a week is three sevenths of a degree a day, so 28 to 31 C takes seven days.
func TestCourse(t *testing.T) {
	r := read(t, collection(t, "south"), "")
	p := &page{r: r, life: r.Lives[0], plan: r.Lives[0].Plan, from: r.Today - daysBack, days: 375}
	base := quantity.Range{Low: 28, High: 28, Unit: quantity.Celsius}
	rains := quantity.Range{Low: 31, High: 31, Unit: quantity.Celsius}
	of := func(*plan.Season) *quantity.Range { return &rains }
	for _, c := range []struct {
		on            civil.Date
		ramps, atOnce float64
	}{
		{civil.Must(2026, 12, 14), 28, 28},
		{civil.Must(2026, 12, 15), 28, 31},
		{civil.Must(2026, 12, 16), 28 + 3.0/7, 31},
		{civil.Must(2026, 12, 22), 31, 31},
		{civil.Must(2027, 1, 1), 31, 31}, // over the new year
		{civil.Must(2027, 2, 14), 31, 31},
		{civil.Must(2027, 2, 20), 28 + 3.0/7, 31},
		{civil.Must(2027, 2, 21), 28, 28},
		{civil.Must(2027, 7, 1), 28, 28},
	} {
		i := int(c.on - p.from)
		if got := p.course(&base, true, of).low[i]; math.Abs(got-c.ramps) > 1e-9 {
			t.Errorf("%s with a ramp: %v, want %v", c.on, got, c.ramps)
		}
		if got := p.course(&base, false, of).low[i]; got != c.atOnce {
			t.Errorf("%s at once: %v, want %v", c.on, got, c.atOnce)
		}
	}
}

type failing struct{}

func (failing) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

func TestErrors(t *testing.T) {
	r := read(t, collections[0].text, "")
	for _, i := range []int{-1, 1} {
		if err := Year(io.Discard, r, i); err == nil {
			t.Errorf("there is no enclosure %d, and no error", i)
		}
	}
	if err := Year(failing{}, r, 0); !errors.Is(err, io.ErrShortWrite) {
		t.Errorf("the writer's error is lost: %v", err)
	}
}
