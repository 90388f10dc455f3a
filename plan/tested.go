package plan

import (
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// gaugeAt is a gauge with where it is: one block of a template is a gauge of each enclosure.
type gaugeAt struct {
	place string
	gauge *Gauge
}

// Tests are the tests of a gauge in the enclosure, the rack or the room of that name: those of
// its block, then those of the log by day.
func (c *Collection) Tests(place string, g *Gauge) []*GaugeTest {
	if g == nil {
		return nil
	}
	return slices.Concat(g.Tests, c.tests[gaugeAt{place, g}])
}

// GaugesAt are the gauges of the enclosure, the rack or the room of that name.
func (c *Collection) GaugesAt(place string) []*Gauge {
	if e := c.enclosures[place]; e != nil {
		if e.Climate == nil {
			return nil
		}
		return e.Climate.Gauges
	}
	if k := c.racks[place]; k != nil {
		return k.Gauges
	}
	if room := c.rooms[place]; room != nil {
		return room.Gauges
	}
	return nil
}

// tested reads which gauge, over which salt, how warm it was there and what it showed:
// "logger-3 NaCl 22 C 71 %", "logger-3 22 C shows 22.4 C"; of two temperatures the first is that
// beside the gauge, with the word between them or without. A gauge's name becomes the first of
// Args.
func (l *lineReader) tested(e *Event, at int) (next int) {
	t := &GaugeTest{On: wrote(e.Date, e.At)}
	t.At = e.At
	shows := false
	for at < len(l.words) {
		word := l.words[at].text
		salt, n := l.salt(at)
		q, m := l.shown(at)
		switch {
		case n > 0 && !t.Salt.Set():
			t.Salt, at = wrote(salt, l.span(at, at+n)), at+n
		case strings.EqualFold(word, schema.ShowsWord) && !shows:
			shows, at = true, at+1
		case m > 0 && q.Unit.Dimension() == quantity.Humidity && !t.Humidity.Set():
			t.Humidity, at = wrote(q, l.span(at, at+m)), at+m
		case m > 0 && q.Unit.Dimension() == quantity.Temperature && !t.Beside.Set():
			t.Beside, at = wrote(q, l.span(at, at+m)), at+m
		case m > 0 && q.Unit.Dimension() == quantity.Temperature && t.Beside.Set() && !t.Temperature.Set():
			t.Temperature, at = wrote(q, l.span(at, at+m)), at+m
		case m == 0 && n == 0 && len(e.Args) == 0 && !t.Beside.Set() && !t.Salt.Set() && !t.Humidity.Set() && !shows:
			e.Args, at = append(e.Args, l.written(at)), at+1
		default:
			e.Test = t
			return at
		}
	}
	e.Test = t
	return at
}

// salt returns the salt that stands at a word, and of how many words it is.
func (l *lineReader) salt(at int) (name string, n int) {
	for n := min(2, len(l.words)-at); n > 0; n-- {
		if name := schema.Called(schema.Salts, l.text(at, at+n)); name != "" {
			return name, n
		}
	}
	return "", 0
}

// shown returns the temperature or the humidity that stands at a word, and of how many words.
func (l *lineReader) shown(at int) (quantity.Quantity, int) {
	for n := min(2, len(l.words)-at); n > 0; n-- {
		for _, d := range []quantity.Dimension{quantity.Temperature, quantity.Humidity} {
			if q, err := quantity.Parse(unlisted(l.text(at, at+n)), d); err == nil {
				return q, n
			}
		}
	}
	return quantity.Quantity{}, 0
}

// mistested says what is wrong with a line about a test, or "".
func mistested(e *Event, name string) (text string, at source.Place) {
	t := e.Test
	form := "after " + name + " stands " + e.Word.After.String()
	switch {
	case len(e.Args) > 1:
		return "it is not clear what " + quote(e.Args[1].V) + " is: " + form, e.Args[1].At
	case !t.Beside.Set():
		return "the temperature there is missing: " + form, e.WordAt
	case t.Salt.Set() && !t.Humidity.Set():
		return "what the gauge showed over the salt is missing: " + form, t.Salt.At
	case t.Humidity.Set() && !t.Salt.Set():
		return "over which salt it lay is missing: " + form, t.Humidity.At
	case !t.Temperature.Set() && !t.Humidity.Set():
		return "what the gauge showed is missing: " + form, e.WordAt
	}
	return "", source.Place{}
}

// gaugeTests joins the tests of the log to their gauges.
func (r *resolver) gaugeTests() {
	r.c.tests = map[gaugeAt][]*GaugeTest{}
	for i := range r.c.Log {
		e := &r.c.Log[i]
		if e.Word != schema.WordTested || e.Test == nil {
			continue
		}
		all, place := r.c.GaugesAt(e.Enclosure.V), quote(e.Enclosure.V)
		var names []string
		for _, g := range all {
			names = append(names, g.Name.V)
		}
		f := finding.Finding{Rule: ruleLogLine, At: e.WordAt}
		switch {
		case len(all) == 0:
			f.Text, f.Write = place+" has no gauge block, so that it is not known which gauge this is of: the line is a remark, from which nothing follows", "a gauge block of that name in the climate of the enclosure, in the rack or in the room"
		case len(e.Args) == 0 && len(all) > 1:
			f.Text, f.Write = place+" has several gauges: the line does not say which of them was tested, and is a remark", wording.Or(names)+" behind the word"
		case len(e.Args) > 0 && !slices.Contains(names, e.Args[0].V):
			f.At = e.Args[0].At
			f.Text, f.Write = place+" has no gauge "+quote(e.Args[0].V)+": the line is a remark, from which nothing follows", "the name of the gauge: "+wording.Or(names)
		default:
			g := all[0]
			if len(e.Args) > 0 {
				g = all[slices.Index(names, e.Args[0].V)]
			}
			at := gaugeAt{e.Enclosure.V, g}
			r.c.tests[at] = append(r.c.tests[at], e.Test)
			continue
		}
		e.remark(f)
	}
}
