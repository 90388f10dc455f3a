package plan

import (
	"errors"
	"math"
	"math/big"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/slip"
	"vivary/schema/wording"
	"vivary/schema/zone"
)

// value reads one attribute into its field. What a kind of value may look like is
// decided here and nowhere else.
func (d *decoder) value(a *hclsyntax.Attribute, attr *schema.Attr, v reflect.Value) {
	if w, ok := v.Addr().Interface().(interface{ spoil(source.Place) }); ok {
		defer w.spoil(d.place(a.Expr.Range()))
	}
	if t, ok := a.Expr.(*hclsyntax.TupleConsExpr); ok && len(t.Exprs) == 0 {
		d.bad(a.Expr, attr, attr.Name+" is an empty list: it is not clear whether none or all is meant", attr.Example+", or leave it out")
		return
	}
	switch to := v.Addr().Interface().(type) {
	case *Written[string]:
		if s, ok := d.text(a.Expr, attr); ok {
			s = d.meant(attr, s)
			if attr.Kind == schema.Link {
				s.V = strings.TrimRight(s.V, "/") // names of files follow it after a /
			}
			*to = s
		}
	case *Written[[]string]:
		d.words(a.Expr, attr, to)
	case *[]Written[string]:
		for _, e := range d.items(a.Expr, attr) {
			if s, ok := d.text(e, attr); ok {
				*to = append(*to, d.meant(attr, s))
			}
		}
	case *Written[bool]:
		if lit, ok := a.Expr.(*hclsyntax.LiteralValueExpr); ok && lit.Val.Type() == cty.Bool {
			*to = wrote(lit.Val.True(), d.place(a.Expr.Range()))
			return
		}
		d.bad(a.Expr, attr, attr.Name+" is true or false, without quotes", "true")
	case *Written[int]:
		if f, ok := d.number(a.Expr, attr); ok {
			if f != math.Trunc(f) || f < 0 || f > 1e6 {
				d.bad(a.Expr, attr, attr.Name+" is a whole number from 0 to 1,000,000", attr.Example)
				return
			}
			*to = wrote(int(f), d.place(a.Expr.Range()))
		}
	case *Written[float64]:
		if f, ok := d.number(a.Expr, attr); ok {
			if f < 0.001 || f > 1e6 {
				d.bad(a.Expr, attr, attr.Name+" is a number above 0, up to 1,000,000", attr.Example)
				return
			}
			*to = wrote(f, d.place(a.Expr.Range()))
		}
	case *Written[quantity.Quantity]:
		parse(d, a.Expr, attr, to, func(s string) (quantity.Quantity, error) {
			q, err := quantity.Parse(s, attr.Dimension)
			if err == nil && attr.Positive && q.Value <= 0 {
				err = errors.New(quote(s) + " is nothing: it is as if it were not done")
			}
			return q, err
		})
	case *Written[quantity.Range]:
		if attr.Kind == schema.Numbers {
			d.numbers(a.Expr, attr, to)
			return
		}
		parse(d, a.Expr, attr, to, func(s string) (quantity.Range, error) { return quantity.ParseRange(s, attr.Dimension) })
	case *Written[quantity.Size]:
		parse(d, a.Expr, attr, to, quantity.ParseSize)
	case *Written[Spans]:
		parse(d, a.Expr, attr, to, someNumbers)
	case *Written[quantity.Face]:
		parse(d, a.Expr, attr, to, quantity.ParseFace)
	case *Written[quantity.Interval]:
		parse(d, a.Expr, attr, to, quantity.ParseInterval)
	case *Written[quantity.Count]:
		if lit, ok := a.Expr.(*hclsyntax.LiteralValueExpr); ok && lit.Val.Type() == cty.Number {
			if f, ok := d.number(a.Expr, attr); ok {
				if c, err := quantity.ParseCount(strconv.FormatFloat(f, 'f', -1, 64)); err != nil {
					d.bad(a.Expr, attr, err.Error(), attr.Example)
				} else {
					*to = wrote(c, d.place(a.Expr.Range()))
				}
			}
			return
		}
		parse(d, a.Expr, attr, to, quantity.ParseCount)
	case *Written[civil.Date]:
		parse(d, a.Expr, attr, to, civil.Parse)
	case *Written[civil.Clock]:
		parse(d, a.Expr, attr, to, clock)
	case *[]Written[civil.Clock]:
		list(d, a.Expr, attr, to, clock)
	case *[]Written[Day]:
		d.days(a.Expr, attr, to)
	case *Written[Day]:
		parse(d, a.Expr, attr, to, func(s string) (Day, error) {
			day, ok := ParseDay(s)
			if !ok || day.Kind != DateOfYear {
				return Day{}, errors.New(quote(s) + " is not a day of the year: write a day and a month, for example \"1 nov\"")
			}
			return day, nil
		})
	case *Written[Prey]:
		parse(d, a.Expr, attr, to, prey)
	case *[]Written[Prey]:
		list(d, a.Expr, attr, to, prey)
	default:
		panic("plan: no way to read a " + v.Type().String())
	}
}

// parse reads a text and turns it into a T.
func parse[T any](d *decoder, e hclsyntax.Expression, attr *schema.Attr, to *Written[T], read func(string) (T, error)) {
	s, ok := d.text(e, attr)
	if !ok {
		return
	}
	t, err := read(s.V)
	if err != nil {
		d.refuse(s, attr, err)
		return
	}
	*to = wrote(t, s.At)
}

// list reads a list of texts, or one text alone.
func list[T any](d *decoder, e hclsyntax.Expression, attr *schema.Attr, to *[]Written[T], read func(string) (T, error)) {
	for _, item := range d.items(e, attr) {
		var w Written[T]
		parse(d, item, attr, &w, read)
		if w.Set() {
			*to = append(*to, w)
		}
	}
}

func clock(s string) (civil.Clock, error) {
	c, err := civil.ParseClock(s)
	if err == nil && c < 4*60 {
		err = earlyError{s}
	}
	return c, err
}

// earlyError is a time of day that clock changes can remove or repeat.
type earlyError struct{ text string }

func (e earlyError) Error() string {
	return quote(e.text) + " lies between 00:00 and 03:59, where a clock change can leave a time out or repeat it and calendars disagree about the day"
}

// days reads a list of days. An item that is several of them gives each, at its own place.
func (d *decoder) days(e hclsyntax.Expression, attr *schema.Attr, to *[]Written[Day]) {
	for _, item := range d.items(e, attr) {
		var all Written[[]Day]
		parse(d, item, attr, &all, ParseDays)
		for _, day := range all.V {
			*to = append(*to, wrote(day, all.At))
		}
	}
}

func prey(s string) (Prey, error) {
	w := strings.Fields(s)
	if len(w) == 0 || len(w) > maxPreyWords {
		return Prey{}, errors.New(quote(s) + " is not prey: write a feeder and its size, for example \"cricket adult\"")
	}
	if _, err := strconv.ParseFloat(w[0], 64); err == nil && !sizedBy(w) {
		return Prey{}, errors.New(quote(s) + " begins with a number: how many each animal gets is written as per_animal = " + w[0] + ", and prey is a feeder and its size")
	}
	if len(w) == 1 {
		return Prey{Feeder: w[0]}, nil
	}
	last := len(w) - 1
	return Prey{Feeder: strings.Join(w[:last], " "), Size: w[last]}, nil
}

// sizedBy reports whether prey begins with a length or an age: that is no number of items.
func sizedBy(words []string) bool {
	if len(words) < 2 {
		return false
	}
	_, long := longAs(words[0] + " " + words[1])
	return long || slices.Contains([]string{"week", "weeks", "wk", "day", "days"}, strings.ToLower(words[1]))
}

// maxPreyWords bounds the words of prey: trade names have several.
const maxPreyWords = 6

// nearest returns the last day of the month that a date with too late a day names.
func nearest(date string) (string, bool) {
	if len(date) != 10 {
		return "", false
	}
	first, err := civil.Parse(date[:8] + "01")
	if err != nil {
		return "", false
	}
	y, m, _ := first.YMD()
	return civil.Must(y, m, civil.DaysIn(y, m)).String(), true
}

// refuse turns an error of a value's text into a finding of the right rule.
func (d *decoder) refuse(s Written[string], attr *schema.Attr, err error) {
	f := finding.Finding{Rule: ruleValue, At: s.At, Text: attr.Name + ": " + err.Error(), Write: attr.Name + " = " + attr.Example}
	var q *quantity.Error
	var early earlyError
	var spans spanError
	switch {
	case errors.As(err, &q):
		switch q.Kind {
		case quantity.NoUnit, quantity.WrongUnit, quantity.UnknownUnit:
			f.Rule = ruleUnit
		}
		if q.Instead != "" {
			f.Write = attr.Name + " = " + quote(q.Instead)
		}
	case errors.As(err, &spans):
		if spans.instead != "" {
			f.Write, f.Edits = attr.Name+" = "+quote(spans.instead), finding.Instead(s.At, s.V, spans.instead)
		}
	case errors.As(err, &early):
		f.Rule, f.Write = ruleTime, attr.Name+" = \"04:00\", or a later time"
	default:
		switch attr.Kind {
		case schema.Date, schema.DayOfYear:
			f.Rule = ruleDate
			if near, ok := nearest(s.V); ok {
				f.Write = attr.Name + " = " + quote(near)
			}
		case schema.Clock, schema.Clocks:
			f.Rule = ruleTime
		}
	}
	d.found.Add(f)
}

func (d *decoder) bad(e hclsyntax.Expression, attr *schema.Attr, text, write string) {
	d.found.Add(finding.Finding{Rule: ruleValue, At: d.place(e.Range()), Text: text, Write: attr.Name + " = " + write})
}

// most returns how many things a list of an attribute may hold. Names of blocks may
// be as many as there are blocks.
func most(attr *schema.Attr) int {
	if attr.Kind == schema.Refs {
		return MaxEnclosures
	}
	return MaxList
}

// items returns the members of a list, or the value itself where it is none.
func (d *decoder) items(e hclsyntax.Expression, attr *schema.Attr) []hclsyntax.Expression {
	if t, ok := e.(*hclsyntax.TupleConsExpr); ok {
		if most := most(attr); len(t.Exprs) > most {
			d.found.Add(finding.Finding{Rule: ruleTooMany, At: d.place(e.Range()), Text: attr.Name + " lists " + strconv.Itoa(len(t.Exprs)) + " things",
				Limit: strconv.Itoa(most) + " in one list", Write: "a shorter list"})
			return t.Exprs[:most]
		}
		return t.Exprs
	}
	return []hclsyntax.Expression{e}
}

// text reads a plain text in quotes. Plan text is never computed, so a text with
// something to fill in is a finding.
func (d *decoder) text(e hclsyntax.Expression, attr *schema.Attr) (Written[string], bool) {
	if t, ok := e.(*hclsyntax.TemplateExpr); ok {
		var s string
		for _, part := range t.Parts {
			lit, ok := part.(*hclsyntax.LiteralValueExpr)
			if !ok || lit.Val.Type() != cty.String {
				d.bad(e, attr, "a text cannot hold ${…} or %{…}: a plan computes nothing", attr.Example)
				return Written[string]{}, false
			}
			s += lit.Val.AsString()
		}
		if utf8.RuneCountInString(s) > MaxText {
			d.found.Add(finding.Finding{Rule: ruleTooLarge, At: d.place(e.Range()),
				Text: attr.Name + " has more than " + strconv.Itoa(MaxText) + " characters", Write: "a shorter text"})
			return Written[string]{}, false
		}
		if strings.ContainsFunc(s, hidden) {
			d.bad(e, attr, attr.Name+" holds a character that cannot be seen", attr.Example)
			return Written[string]{}, false
		}
		if seen(attr) && strings.TrimSpace(s) == "" {
			// It harms nobody: what stands in its place is known.
			d.found.Soft(finding.Finding{Rule: ruleValue, At: d.place(e.Range()), Text: attr.Name + " is blank, and counts as not written",
				Write: attr.Name + " = " + attr.Example + ", or leave it out"}, finding.Caution)
			return Written[string]{}, false
		}
		return wrote(s, d.place(e.Range())), true
	}
	switch x := e.(type) {
	case *hclsyntax.TupleConsExpr:
		d.bad(e, attr, attr.Name+" is one value, not a list", attr.Example)
	case *hclsyntax.LiteralValueExpr:
		if x.Val.Type() == cty.Number && (attr.Kind == schema.Quantity || attr.Kind == schema.Range) {
			d.found.Add(finding.Finding{Rule: ruleUnit, At: d.place(e.Range()),
				Text:  attr.Name + " has no unit: a " + attr.Dimension.String() + " is written in " + strings.Join(attr.Dimension.Units(), ", ") + ", in quotes",
				Write: attr.Name + " = " + attr.Example})
			break
		}
		d.bad(e, attr, attr.Name+" is a text in quotes", attr.Example)
	default:
		d.bad(e, attr, attr.Name+" is a plain value in quotes: a plan computes nothing", attr.Example)
	}
	return Written[string]{}, false
}

// seen reports whether people read the text in lists, where a blank one would be a gap.
func seen(attr *schema.Attr) bool {
	return attr.Kind == schema.Text && (attr.Name == "title" || attr.Name == "task")
}

// hidden reports whether a character has no place in a text that people read: one
// that steers a terminal. Ends of lines are let through, and marks that turn the
// direction of writing, which Hebrew or Arabic among other words needs.
func hidden(r rune) bool { return unicode.IsControl(r) && !strings.ContainsRune("\t\n\r", r) }

func (d *decoder) number(e hclsyntax.Expression, attr *schema.Attr) (float64, bool) {
	lit, ok := e.(*hclsyntax.LiteralValueExpr)
	if !ok || lit.Val.Type() != cty.Number || !lit.Val.IsKnown() { // a number too large to hold is unknown
		d.bad(e, attr, attr.Name+" is a number without quotes, 0 or above", attr.Example)
		return 0, false
	}
	f, _ := lit.Val.AsBigFloat().Float64()
	if math.IsInf(f, 0) || lit.Val.AsBigFloat().Cmp(big.NewFloat(1e9)) > 0 {
		d.bad(e, attr, attr.Name+" is far too large a number", attr.Example)
		return 0, false
	}
	return f, true
}

// numbers reads "10 to 35" or "6", or a plain number.
func (d *decoder) numbers(e hclsyntax.Expression, attr *schema.Attr, to *Written[quantity.Range]) {
	if lit, ok := e.(*hclsyntax.LiteralValueExpr); ok && lit.Val.Type() == cty.Number {
		if f, ok := d.number(e, attr); ok {
			*to = wrote(quantity.Range{Low: f, High: f}, d.place(e.Range()))
		}
		return
	}
	parse(d, e, attr, to, ParseNumbers)
}

// ParseNumbers reads a plain number, or two with "to" between them.
func ParseNumbers(s string) (quantity.Range, error) {
	low, high, two := strings.Cut(s, " to ")
	l, err := strconv.ParseFloat(strings.TrimSpace(low), 64)
	h := l
	if err == nil && two {
		h, err = strconv.ParseFloat(strings.TrimSpace(high), 64)
	}
	if err != nil || l < 0 || h < l || h > 1e9 || math.IsNaN(l) || math.IsNaN(h) {
		return quantity.Range{}, errors.New(quote(s) + " is not a number or a range of numbers, such as \"10 to 35\"")
	}
	return quantity.Range{Low: l, High: h}, nil
}

func (d *decoder) words(e hclsyntax.Expression, attr *schema.Attr, to *Written[[]string]) {
	s, ok := d.text(e, attr)
	if !ok {
		return
	}
	var out []string
	for _, w := range listed(s) {
		out = append(out, d.choice(attr, w).V)
	}
	*to = wrote(out, s.At)
}

// listed returns the words of a text, which commas part, each at its own place.
// Where something in the text is written as an escape, it is that of the whole.
func listed(s Written[string]) []Written[string] {
	var out []Written[string]
	plain := int(s.At.End-s.At.Start) == len(s.V)+2
	from := s.At.Start + 1
	for _, part := range strings.Split(s.V, ",") {
		word := strings.TrimSpace(part)
		at := s.At
		if plain {
			at.Start = from + int32(strings.Index(part, word))
			at.End = at.Start + int32(len(word))
		}
		out = append(out, wrote(word, at))
		from += int32(len(part)) + 1
	}
	return out
}

// meant checks a text, and returns what is understood by it.
func (d *decoder) meant(attr *schema.Attr, s Written[string]) Written[string] {
	switch attr.Kind {
	case schema.Word:
		return d.choice(attr, s)
	case schema.Zone:
		d.zone(attr, s)
	case schema.Link:
		if !validLink(s.V) {
			d.found.Add(finding.Finding{Rule: ruleValue, At: s.At, Text: attr.Name + " is a web address that begins with https://", Write: attr.Name + " = " + attr.Example})
		}
	}
	if attr.Ref == schema.NamesKind {
		s.V = kindCalled(s.V)
	}
	return s
}

// kindCalled is the name of the kind of care that is called so, or the name as it is.
func kindCalled(name string) string {
	if k := schema.KindCalled(name); k != nil {
		return k.Name
	}
	return name
}

// zone finds a name that is no time zone, and one that is and means no place: whoever lives
// where clocks change is an hour off with it for half of the year. None of them is ever
// taken for another; only capitals, blanks and a region that was left out are put right.
func (d *decoder) zone(attr *schema.Attr, s Written[string]) {
	_, err := zone.Load(s.V)
	var unknown *zone.UnknownError
	if errors.As(err, &unknown) {
		f := finding.Finding{Rule: ruleZone, At: s.At, Text: err.Error(), Write: attr.Name + " = the zone of your place, " + suchAs(unknown.Offered)}
		if unknown.Is != "" {
			f.Write, f.Edits = attr.Name+" = "+quote(unknown.Is), finding.Instead(s.At, s.V, unknown.Is)
		}
		d.found.Add(f)
		return
	}
	o := zone.NoPlace(s.V)
	if err != nil || o == nil {
		return
	}
	severity := finding.Advice
	f := finding.Finding{Rule: ruleZone, At: s.At, Text: quote(s.V) + " is no place's: " + o.Says, Write: attr.Name + " = the zone of your place, " + suchAs(o.Zones)}
	if o.Fixed {
		severity = finding.Caution
		f.Text += ". As a time zone it never changes"
	}
	d.found.Soft(f, severity)
}

// suchAs lists names of which one may be meant, or another.
func suchAs(names []string) string {
	if len(names) == 0 {
		return "region and city as the IANA database has them"
	}
	return "such as " + wording.Or(quotedEach(names))
}

func validLink(s string) bool {
	if !strings.HasPrefix(s, "https://") && !strings.HasPrefix(s, "http://") {
		return false
	}
	for i := 0; i < len(s); i++ {
		if s[i] <= ' ' || s[i] >= 0x7f || strings.IndexByte(`"<>\^{|}`+"`", s[i]) >= 0 {
			return false
		}
	}
	return true
}

// choice reads one of the words of an attribute, also by another name that keepers have
// for it.
func (d *decoder) choice(attr *schema.Attr, s Written[string]) Written[string] {
	if name := schema.Called(attr.Choices, s.V); name != "" {
		s.V = name
		return s
	}
	known := choiceNames(attr.Choices)
	f := finding.Finding{Rule: ruleUnknownWord, At: s.At, Text: attr.Name + " cannot be " + quote(s.V),
		Write: "one of: " + strings.Join(known, ", ")}
	if q := schema.AskedBack(attr.Unclear, s.V); q != nil {
		f.Text += ": " + q.Ask
		f.Write = q.Write
	} else if n := slip.Of(s.V, known); n != "" {
		f.Text += ": did you mean " + quote(n) + "?"
		f.Write = attr.Name + " = " + quote(n)
		f.Edits = finding.Instead(s.At, s.V, n)
	}
	d.found.Add(f)
	return s
}
