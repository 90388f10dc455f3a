package paper

import (
	"cmp"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/qrcode"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// Labels are labels for tanks, to be cut out, for some enclosures. Address returns where the
// page of an enclosure is, by its name, "" for nowhere; nil for none of them. An address of
// which no code can be made is an error.
func Labels(r *compile.Result, of []*life.Enclosure, address func(enclosure string) string) (*Document, error) {
	d := document(r, "Labels, "+r.Plan.Title())
	var all []label
	for _, l := range of {
		x := labelOf(r, l)
		if address != nil {
			if a := address(l.Plan.Name.V); a != "" {
				code, err := coded(a, l.Plan.Shown(), codeWidth, qrcode.Worn)
				if err != nil {
					return nil, err
				}
				x.code, x.address = code.svg, a
			}
		}
		all = append(all, x)
	}
	rows := 5
	if d.letter {
		rows = 4
	}
	for page := range slices.Chunk(all, 2*rows) {
		d.Sheets = append(d.Sheets, Sheet{Head: d.Title, Parts: []Part{labels(page)}, Bare: true})
	}
	if len(all) == 0 {
		d.add(d.Title, Title{Text: "No enclosure stands in the plan"})
	}
	return d, nil
}

// codeWidth is how many millimetres wide the code on a label is.
const codeWidth = 25

// label is what stands on the label of a tank. A part of it that is longer than its line has
// room for is shortened, and never runs out of the label.
type label struct {
	name    string
	species []string // by its name for people, and the scientific one
	animals []string
	danger  string   // a danger to life
	says    []string // what its venom and hairs do, and what to put on
	shut    []string // why little may be done for now
	moults  string   // how a moult looks, of what moults on its back
	ring    string
	stamp   string
	code    string // in SVG; "" for none
	address string
}

func labelOf(r *compile.Result, l *life.Enclosure) label {
	x := label{name: cmp.Or(l.Plan.Shown(), l.Plan.Name.V), stamp: l.Plan.Name.V + ", " + r.Plan.Title() + ", " + r.Today.Words()}
	if s := l.Plan.Sheet; s != nil {
		x.species = []string{s.Shown()}
		if latin := strings.Fields(s.Latin.V); len(latin) > 1 {
			x.species = append(x.species, latin[0]+" "+latin[1])
		}
	}
	x.animals = inhabitants(l, r.Today)
	if l.Plan.Sheet != nil {
		x.animals = x.animals[1:]
	}
	x.danger, x.says = cautions(l, r.Today)
	for _, g := range l.Groups {
		for i := range g.Holds {
			if h := &g.Holds[i]; h.From <= r.Today && r.Today < h.Until && h.Out(schema.RowDeep) {
				x.shut = append(x.shut, whose(l, g)+h.State.Is+": "+h.State.Rule)
			}
		}
	}
	x.shut = slices.Compact(x.shut)
	if slices.ContainsFunc(roster.SheetsOf([]*life.Enclosure{l}), hardens) {
		x.moults = "On its back, or hanging: it moults. Keep shut"
	}
	x.ring = ringing(r.Plan)
	return x
}

// whose is a group where there are several in an enclosure.
func whose(l *life.Enclosure, g *life.Group) string {
	if len(l.Groups) < 2 {
		return ""
	}
	return g.Animals.Shown() + ": "
}

// cautions are what a label says of danger to people: of venom and hairs, and what is put on
// before anything is done inside.
func cautions(l *life.Enclosure, today civil.Date) (danger string, says []string) {
	sheets := roster.SheetsOf([]*life.Enclosure{l})
	if len(sheets) == 0 {
		says = append(says, "Venom: not known")
	}
	for _, s := range sheets {
		switch f := s.Figure(schema.FigureVenom, ""); {
		case f == nil:
			says = append(says, "Venom: not known")
		case slices.Contains(f.Words, "medically significant"):
			danger = "VENOM: A DANGER TO LIFE"
		case !slices.Contains(f.Words, "none"):
			says = append(says, "Venom: "+strings.Join(f.Words, ", "))
		}
	}
	for _, caution := range schema.Cautions {
		asked := func(k *schema.CareKind) bool {
			return slices.Contains(roster.Cautions(l, k, today), caution)
		}
		if caution.Places == nil && slices.ContainsFunc(schema.CareKinds, asked) {
			says = append(says, rounds.Before(caution))
		}
	}
	return danger, says
}

// ringing is whom to ring: the first contact and the first keeper who have a number.
func ringing(c *plan.Collection) string {
	var out []string
	for _, k := range c.Keepers {
		if k.Phone.Set() {
			out = append(out, k.Shown()+" "+k.Phone.V)
			break
		}
	}
	for _, x := range c.Contacts {
		if x.Phone.Set() {
			out = append(out, x.Shown()+" "+x.Phone.V)
			break
		}
	}
	if len(out) == 0 {
		return "Ring: ____________________"
	}
	return "Ring: " + strings.Join(out, "; ")
}

// labels are as many labels as a page has room for.
type labels []label

func (all labels) html(m *markup) {
	m.open("div", "labels")
	for i := range all {
		all[i].html(m)
	}
	m.close("div")
}

// The room on a label, in millimetres: 90 x 55 less the padding, with the code at the right and
// whom to ring across the foot.
const (
	labelWidth, labelHeight = 84.0, 49.5
	besideCode              = labelWidth - codeWidth - 2
	point                   = 25.4 / 72
	leading                 = 1.15
	afterPara               = 0.7
	foot                    = 3.2
)

// style is how something stands on a label.
type style struct {
	class  string
	points float64
	bold   bool
	lines  int // at the most
}

var (
	// A name is as large as it has room for.
	nameStyles  = []style{{"name l", 19, true, 1}, {"name m", 14, true, 1}, {"name s", 10.5, true, 2}}
	dangerStyle = style{"danger", 10, true, 2}
	strong      = style{"strong", 9, true, 2}
	usual       = style{"", 9, false, 3}
)

// tall is how much room so many lines take.
func (s *style) tall(lines int) float64 {
	frame := 0.0
	if s.class == dangerStyle.class {
		frame = 2
	}
	return float64(lines)*s.points*point*leading + afterPara + frame
}

func (x *label) html(m *markup) {
	ring := wrapped(x.ring, strong, labelWidth)
	left := labelHeight - foot - strong.tall(len(ring))
	wide, beside := labelWidth, 0.0 // how much room is left beside the code
	if x.code != "" {
		wide, beside = besideCode, codeWidth
		left -= codeWidth
	}
	m.open("div", "label")
	m.open("div", "top")
	m.open("div", "says")
	room := &left
	if x.code != "" {
		room = &beside
	}
	for _, p := range x.paragraphs(wide) {
		lines := wrapped(p.text, p.style, wide)
		if room == &beside && p.tall(len(lines)) > beside { // it goes on below the code
			x.square(m)
			room, wide = &left, labelWidth
			lines = wrapped(p.text, p.style, wide)
		}
		if p.tall(len(lines)) <= *room && len(lines) > 0 {
			paragraph(m, p.class, lines)
			*room -= p.tall(len(lines))
		}
	}
	if room == &beside || x.code == "" {
		x.square(m)
	}
	m.close("div")
	paragraph(m, "strong", ring)
	m.words("p", "foot", shortened(x.stamp, 80))
	m.close("div")
}

// square ends what stands beside the code with the code, and begins what stands below it.
func (x *label) square(m *markup) {
	m.close("div")
	if x.code != "" {
		m.open("div", "square")
		m.raw(x.code + "\n")
		m.close("div")
	}
	m.close("div")
	m.open("div", "below")
}

// said is a text on a label, in its style.
type said struct {
	style
	text string
}

// paragraphs are the texts of a label, the most important first: what has no room is left out
// from the end.
func (x *label) paragraphs(wide float64) []said {
	out := []said{{nameStyle(x.name, wide), x.name}}
	add := func(s style, texts ...string) {
		for _, t := range texts {
			out = append(out, said{s, t})
		}
	}
	if x.danger != "" {
		add(dangerStyle, x.danger)
	}
	add(strong, x.species...)
	add(usual, strings.Join(x.animals, "; "))
	add(usual, x.shut...)
	add(usual, x.says...)
	add(usual, x.moults)
	return out
}

// nameStyle is the largest in which a name has room.
func nameStyle(name string, wide float64) style {
	for _, s := range nameStyles {
		if wording.Width(name, s.points*point, s.bold) <= wide {
			return s
		}
	}
	return nameStyles[len(nameStyles)-1]
}

// wrapped are the lines that a text takes, the last shortened where there would be too many. Of
// a name the number at its end is not cut off.
func wrapped(text string, s style, wide float64) []string {
	text = wording.Printed(text)
	if !strings.HasPrefix(s.class, "name") {
		return wording.Wrap(text, s.points*point, wide, s.bold, s.lines)
	}
	for most := longName; ; most-- {
		short := shortened(text, most)
		lines := wording.Wrap(short, s.points*point, wide, s.bold, s.lines)
		if strings.Join(lines, " ") == short || most < shortName {
			return lines
		}
	}
}

// longName and shortName are between how many characters a name is shortened to.
const longName, shortName = 44, 12

// paragraph writes lines that were broken already: no font is narrower than was reckoned with.
func paragraph(m *markup, class string, lines []string) {
	for i := range lines {
		lines[i] = escape(lines[i])
	}
	if class != "" {
		class = ` class="` + class + `"`
	}
	m.raw("<p" + class + ">" + strings.Join(lines, "<br>") + "</p>\n")
}

// shortened is a text of so many characters at the most. The number at its end, which tells a
// tank from its neighbours, stays.
func shortened(s string, most int) string {
	r := []rune(s)
	if len(r) <= most {
		return s
	}
	end := len(r)
	for end > 0 && len(r)-end < 9 && r[end-1] >= '0' && r[end-1] <= '9' {
		end--
	}
	number := string(r[end:])
	return strings.TrimRight(string(r[:most-1-len(number)]), " ,;:") + "…" + number
}

func (all labels) text(p *plain) {
	for i := range all {
		x := &all[i]
		p.gap()
		p.line(x.name)
		for _, lines := range [][]string{{x.danger}, x.species, x.animals, x.says, x.shut, {x.moults}, {x.ring, x.address}} {
			for _, s := range lines {
				if s != "" {
					p.line("  " + s)
				}
			}
		}
	}
}
