package paper

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// Title is what a sheet is, large, with what belongs to it beneath.
type Title struct {
	Text  string
	Under []string
}

func (t Title) html(m *markup) {
	m.words("h1", "", t.Text)
	for _, u := range t.Under {
		m.words("p", "under", u)
	}
}

func (t Title) text(p *plain) {
	p.gap()
	p.line(t.Text)
	for _, u := range t.Under {
		p.line(u)
	}
}

// Head is the heading of what follows, which begins on its page. A large one begins a round.
type Head struct {
	Text  string
	Large bool
}

func (h Head) html(m *markup) {
	class := ""
	if h.Large {
		class = "large"
	}
	m.words("h2", class, h.Text)
}

func (h Head) text(p *plain) {
	p.gap()
	p.line(strings.ToUpper(h.Text))
}

// Look is how a list looks.
type Look int

// The looks of lists.
const (
	Ticks  Look = iota // a box to tick before each
	Steps              // numbered, in the order in which they are done
	Points             // neither
	Alarm              // in a frame, in large letters: what must not be missed
)

// List is lines that belong together, one thing a line, on one page where it has room for
// them.
type List struct {
	Head  string // whose they are: the name of a tank
	Look  Look
	Items []Item
}

// Item is a line of a list.
type Item struct {
	Text string
	// Blanks are what is filled in behind it with a pencil: "lowest".
	Blanks []string
}

// items are lines without blanks.
func items(texts ...string) []Item {
	out := make([]Item, len(texts))
	for i, t := range texts {
		out[i].Text = t
	}
	return out
}

// long is how many lines stay on one page: those of a tank, or steps.
const long = 12

var looks = [...]struct{ class, element string }{Ticks: {"ticks", "ul"}, Steps: {"steps", "ol"}, Points: {"points", "ul"}, Alarm: {"alarm", "ul"}}

func (l List) html(m *markup) {
	if len(l.Items) == 0 {
		return
	}
	look := looks[l.Look]
	class := "list " + look.class
	if len(l.Items) > long {
		class += " long" // it may go on on the next page
	}
	m.open("div", class)
	m.words("h3", "", l.Head)
	m.open(look.element, "")
	for _, it := range l.Items {
		m.raw("<li>" + escape(it.Text))
		for _, b := range it.Blanks {
			m.raw(` <span class="blank">` + escape(b) + "</span>")
		}
		m.raw("</li>\n")
	}
	m.close(look.element)
	m.close("div")
}

func (l List) text(p *plain) {
	if len(l.Items) == 0 {
		return
	}
	margin := "  "
	if l.Head != "" {
		p.line(margin + l.Head)
		margin += "  "
	}
	for i, it := range l.Items {
		begin := [...]string{Ticks: "[ ] ", Steps: strconv.Itoa(i+1) + ". ", Points: "- ", Alarm: "! "}[l.Look]
		text := it.Text
		for _, b := range it.Blanks {
			text += "  " + b + " ____"
		}
		p.line(margin + begin + text)
	}
}

// Para is a paragraph; Small is what need not be read in a hurry.
type Para struct {
	Text  string
	Small bool
}

func (x Para) html(m *markup) {
	class := ""
	if x.Small {
		class = "small"
	}
	m.words("p", class, x.Text)
}

func (x Para) text(p *plain) { p.line("  " + x.Text) }

// Table has columns; a row stays on its page.
type Table struct {
	Columns []string
	Rows    [][]string
	// Long is a table of texts, six columns of which have the widths of a register: a browser
	// would give the room to the longest name, and the texts a word a line.
	Long bool
}

func (t Table) html(m *markup) {
	if len(t.Rows) == 0 {
		return
	}
	class := ""
	if t.Long {
		class = "long"
	}
	m.open("table", class)
	m.open("thead", "")
	m.open("tr", "")
	for _, c := range t.Columns {
		m.raw("<th>" + escape(c) + "</th>\n")
	}
	m.close("tr")
	m.close("thead")
	m.open("tbody", "")
	for _, r := range t.Rows {
		m.open("tr", "")
		for _, c := range r {
			m.raw("<td>" + escape(c) + "</td>\n")
		}
		m.close("tr")
	}
	m.close("tbody")
	m.close("table")
}

// text writes a table as a line for each row, since what stands in it is longer than a terminal
// is wide.
func (t Table) text(p *plain) {
	for _, r := range t.Rows {
		p.line("  " + r[0])
		for i, c := range r[1:] {
			if c != "" {
				p.line("      " + t.Columns[i+1] + ": " + c)
			}
		}
	}
}

// Facts are names, each with what is known of it.
type Facts struct{ Of []Fact }

// Fact is a name and what is known.
type Fact struct{ Name, Text string }

func (f Facts) html(m *markup) {
	m.open("table", "facts")
	m.open("tbody", "")
	for _, x := range f.Of {
		m.raw("<tr><th>" + escape(x.Name) + "</th><td>" + escape(x.Text) + "</td></tr>\n")
	}
	m.close("tbody")
	m.close("table")
}

func (f Facts) text(p *plain) {
	for _, x := range f.Of {
		p.line("  " + x.Name + ": " + x.Text)
	}
}

// Numbers are whom to ring, each with a number or with room for one.
type Numbers struct{ Of []Number }

// Number is somebody to ring; where the plan has no number of theirs there is room for it.
type Number struct{ Who, Phone string }

func (n Numbers) html(m *markup) {
	m.open("table", "numbers")
	m.open("tbody", "")
	for _, x := range n.Of {
		class := ""
		if x.Phone == "" {
			class = "empty"
		}
		m.raw("<tr><th>" + escape(x.Who) + `</th><td class="` + class + `">` + escape(x.Phone) + "</td></tr>\n")
	}
	m.close("tbody")
	m.close("table")
}

func (n Numbers) text(p *plain) {
	wide := 0
	for _, x := range n.Of {
		wide = max(wide, utf8.RuneCountInString(x.Who))
	}
	for _, x := range n.Of {
		phone := x.Phone
		if phone == "" {
			phone = "______________"
		}
		p.line("  " + x.Who + strings.Repeat(" ", wide-utf8.RuneCountInString(x.Who)) + "  " + phone)
	}
}

// Blank is room for a pencil: empty lines below a heading.
type Blank struct {
	Head  string
	Lines int
}

func (b Blank) html(m *markup) {
	m.open("div", "lines")
	m.words("h3", "", b.Head)
	for range b.Lines {
		m.raw(`<div class="line"></div>` + "\n")
	}
	m.close("div")
}

func (b Blank) text(p *plain) {
	p.gap()
	p.line("  " + b.Head)
	for range b.Lines {
		p.line("  " + rule[:60])
	}
}

// Sign is what is filled in at the end.
type Sign struct{ Fields []string }

func (s Sign) html(m *markup) {
	m.open("div", "sign")
	for _, f := range s.Fields {
		m.words("span", "field", f)
	}
	m.close("div")
}

func (s Sign) text(p *plain) {
	p.gap()
	for _, f := range s.Fields {
		p.line("  " + f + " ______________________")
	}
}

// Code is a code that a phone reads, with what it leads to.
type Code struct {
	Words   string
	Address string
	svg     string
}

func (c Code) html(m *markup) {
	m.open("div", "code")
	m.raw(c.svg + "\n")
	m.words("p", "", c.Words)
	m.words("p", "small", c.Address)
	m.close("div")
}

func (c Code) text(p *plain) {
	p.gap()
	p.line("  " + c.Words + ": " + c.Address)
}
