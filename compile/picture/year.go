// Package picture draws the coming year of one enclosure at a glance, on one page
// that can be printed and read without colours. It works nothing out itself: all
// that it shows is said by the plan, the species sheet, the roster and the
// climate balance.
package picture

import (
	"fmt"
	"io"
	"strings"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// The page is A4 landscape, ISO 216, with four units to the millimetre.
const (
	pageWidth, pageHeight = 1188, 840

	left, right      = 28, 1164   // of everything
	plotLeft         = 252.0      // of everything that has days
	plotRight        = 1016.0     //
	noteLeft         = 1024       // of what is said at the right of a line
	top              = 104        // of the first chart
	bottom           = 626        // of the last part, the power cut
	keyWidth         = 188        // of what is said at the left of a chart
	rowWidth         = 214        // of what is said at the left of a row
	daysBack         = 10         // so much of the past is shown where nothing was measured
	gap              = 17         // between charts
	size, small, big = 12, 11, 21 // of text; 11 is 7.8 points in print
)

// page is one picture while it is drawn. All parts share its days.
type page struct {
	draw   canvas
	r      *compile.Result
	life   *life.Enclosure
	plan   *plan.Enclosure
	series []roster.Entry
	from   civil.Date // the first day shown
	days   int
	x0, x1 float64       // of everything that has days
	deg    quantity.Unit // in which the keeper writes temperatures
	said   []string      // the whole picture in sentences, for those who do not see it
}

// Year writes the picture of the coming year of r.Lives[i] as SVG 1.1: the
// temperatures and the humidity that are planned against what the species bears,
// seasons, holds, windows, absences, meals, water, and the fall of the
// temperature after a power cut. What the log says was measured stands among
// them, for up to a quarter before today. The same result gives the same bytes. The error
// is for an i that is no place in r.Lives, and the writer's own.
func Year(w io.Writer, r *compile.Result, i int) error {
	if i < 0 || i >= len(r.Lives) {
		return fmt.Errorf("there is no enclosure %d: the collection has %d", i, len(r.Lives))
	}
	p := newPage(r, i)
	p.page()
	return p.write(w, `width="297mm"`, `height="210mm"`, fmt.Sprintf(`viewBox="0 0 %d %d"`, pageWidth, pageHeight))
}

// newPage begins the picture of an enclosure.
func newPage(r *compile.Result, i int) *page {
	l := r.Lives[i]
	p := &page{r: r, life: l, plan: l.Plan, deg: l.Plan.Degrees(), x0: plotLeft, x1: plotRight}
	p.from = p.firstShown()
	p.days = int(r.Today.AddMonths(12) - p.from)
	if i < len(r.Roster.Of) {
		p.series = r.Roster.Of[i]
	}
	return p
}

// write writes what was drawn, in a picture of a size.
func (p *page) write(w io.Writer, size ...string) error {
	var all canvas
	all.out.WriteString(mark)
	all.begin("svg", append(size, `xmlns="http://www.w3.org/2000/svg"`)...)
	all.words("title", wording.Printed(p.title()))
	all.words("desc", wording.Printed(strings.Join(p.said, " ")))
	patterns(&all)
	all.out.Write(p.draw.out.Bytes())
	all.end("svg")
	_, err := w.Write(all.out.Bytes())
	return err
}

func (p *page) title() string { return p.plan.Shown() + ": the year from " + p.r.Today.Words() }

// page draws the parts from the top down. Rows are as many as there is something
// to say; the temperatures get the height that is left.
func (p *page) page() {
	p.draw.begin("g", `font-family="Helvetica, Arial, sans-serif"`, `fill="`+ink+`"`)
	p.draw.rect(0, 0, pageWidth, pageHeight, `fill="white"`)
	p.heading()
	rows := p.rows()
	const humidity = 66
	end := bottom - 30.0
	heat := end - rows.height() - humidity - 2*gap
	p.axis(top, end)
	p.chart(p.temperatures(), top, heat-top)
	p.chart(p.humidity(), heat+gap, humidity)
	p.today(top, end)
	rows.draw(p, heat+humidity+2*gap)
	p.powerCut(bottom)
	p.legend(bottom)
	p.draw.end("g")
}

func (p *page) heading() {
	p.text(left, 46, big, "start", wording.Fit(p.title(), big, right-left, true), bold)
	line := p.inhabitants()
	p.text(left, 66, 13, "start", wording.Fit(line, 13, right-left, false))
	p.say(line + ".")
}

// inhabitants are who lives there, and where that is.
func (p *page) inhabitants() string {
	var parts []string
	if s := p.plan.Sheet; s != nil {
		parts = append(parts, s.Shown())
		if s.Latin.Set() && s.Latin.V != s.Shown() {
			parts[0] += ", " + s.Latin.V
		}
	}
	for _, g := range p.life.Groups {
		words := fmt.Sprintf("%s: %d", g.Animals.Shown(), g.Count(p.r.Today))
		if stage := g.Stage(p.r.Today); stage != "" {
			words += " " + stage
		}
		parts = append(parts, words)
	}
	if p.plan.Place != nil {
		parts = append(parts, p.plan.Place.Shown())
	}
	parts = append(parts, p.r.Plan.Title())
	return strings.Join(parts, " · ")
}

// say adds to what is said to those who do not see the picture.
func (p *page) say(sentence string) { p.said = append(p.said, sentence) }

// x is where a day begins, cut to the days shown.
func (p *page) x(d civil.Date) float64 {
	i := min(max(int(d-p.from), 0), p.days)
	return p.x0 + (p.x1-p.x0)*float64(i)/float64(p.days)
}

// until is the first day that is not shown.
func (p *page) until() civil.Date { return p.from + civil.Date(p.days) }

// shows reports whether any of a stretch of days is shown.
func (p *page) shows(from, until civil.Date) bool { return until > p.from && from < p.until() }
