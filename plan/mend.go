package plan

import (
	"errors"
	"reflect"
	"strconv"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/syntax"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// refuse turns an error of a value's text into a finding of the right rule. Where the
// error knows what is meant that is the edit; where it may be more than one thing all of
// them are told; else how such a value is written.
func (d *decoder) refuse(s Written[string], attr *schema.Attr, err error) {
	f := finding.Finding{Rule: ruleValue, At: s.At, Text: attr.Name + ": " + err.Error(), Write: attr.Form()}
	instead, either := "", []string(nil)
	var q *quantity.Error
	var u *civil.Unread
	var early earlyError
	var other scaleError
	var spans spanError
	switch {
	case errors.As(err, &q):
		switch q.Kind {
		case quantity.NoUnit, quantity.NoScale, quantity.WrongUnit, quantity.UnknownUnit:
			f.Rule = ruleUnit
		}
		if instead, either = q.Instead, q.Either; attr.Dimension != 0 {
			instead, either = d.within(&f, q, attr)
		}
	case errors.As(err, &spans):
		instead = spans.instead
	case errors.As(err, &early):
		f.Rule, f.Write = ruleTime, "a time from 04:00 to 23:59"
	case errors.As(err, &other):
		f.Rule, f.Limit, instead = ruleUnit, other.limit, other.instead
	case errors.As(err, &u):
		instead, either = u.Instead, u.Either
		switch attr.Kind {
		case schema.Date, schema.DayOfYear:
			f.Rule = ruleDate
		case schema.Clock, schema.Clocks:
			f.Rule = ruleTime
		}
	}
	switch {
	case instead != "":
		f.Write, f.Edits = quote(instead), finding.Instead(s.At, s.V, instead)
		if int(s.At.End-s.At.Start) == len(s.V) { // a number without quotes
			f.Edits = []finding.Edit{{At: s.At, Text: strconv.Quote(instead)}}
		}
	case len(either) > 0:
		f.Write = wording.Or(quotedEach(either)) + ", whichever is meant"
	}
	d.found.Add(f)
}

// within chooses among what a number without a unit may mean by what is ordinary for the
// attribute, and says so.
func (d *decoder) within(f *finding.Finding, q *quantity.Error, attr *schema.Attr) (instead string, either []string) {
	if q.Instead != "" || len(q.Either) == 0 || q.Kind == quantity.Malformed {
		return q.Instead, q.Either
	}
	all, fit := q.Readings(attr.Dimension, quantity.Range{}, attr.In), q.Readings(attr.Dimension, attr.Band, attr.In)
	if len(fit) != 1 {
		return "", all
	}
	if len(all) > 1 {
		f.Text += "; only " + quote(fit[0]) + " is likely here"
		f.Limit = quantity.FormatRange(attr.Band.Low, attr.Band.High, attr.Band.Unit)
	}
	return fit[0], nil
}

// scaleError is a temperature whose figures only fit the other scale.
type scaleError struct{ text, instead, limit string }

func (e scaleError) Error() string {
	return e.text + " is no temperature at which animals are kept; " + e.instead + " is one"
}

// beside says of a temperature that it was read on the other scale, or nothing.
func beside(attr *schema.Attr, r quantity.Range) error {
	if attr.Dimension != quantity.Temperature || attr.Band == (quantity.Range{}) {
		return nil
	}
	if other, ok := quantity.OtherScale(r, attr.Band); ok {
		return scaleError{r.String(), other, quantity.FormatRange(attr.Band.Low, attr.Band.High, r.Unit)}
	}
	return nil
}

// bad finds that a value is not of the form that is needed.
func (d *decoder) bad(x *syntax.Value, attr *schema.Attr, text string) {
	d.found.Add(finding.Finding{Rule: ruleValue, At: x.At, Text: text, Write: attr.Form()})
}

// mend looks, for what was found of a value, for a way to write the same that is read
// without a finding.
func (d *decoder) mend(x *syntax.Value, attr *schema.Attr, t reflect.Type, found []finding.Finding) {
	if len(found) == 0 || !d.own {
		return
	}
	for _, part := range append([]*syntax.Value{x}, parts(x)...) {
		if len(part.Text) > MaxText {
			continue
		}
		for i := range found {
			f := &found[i]
			if f.At != part.At || len(f.Edits) > 0 || f.Rule == ruleTooMany || f.Rule == ruleTooLarge {
				continue
			}
			for _, better := range candidates(part, attr) {
				if d.reads(better, attr, t) {
					f.Write = better.written()
					f.Edits = finding.Plain(f.At, f.Write)
					break
				}
			}
		}
	}
}

// parts are the things in a list; none of what is no list.
func parts(x *syntax.Value) (all []*syntax.Value) {
	for i := range x.Items {
		all = append(all, &x.Items[i])
	}
	return all
}

// reads reports whether a value is read without a finding.
func (d *decoder) reads(x value, attr *schema.Attr, t reflect.Type) bool {
	scratch := &decoder{file: d.file, own: d.own}
	scratch.read(x.v, attr, reflect.New(t).Elem())
	return len(scratch.found.All) == 0
}

// value is what could be written in place of what was.
type value struct{ v *syntax.Value }

func asText(s string) value   { return value{&syntax.Value{Kind: syntax.Text, Text: s}} }
func asNumber(s string) value { return value{&syntax.Value{Kind: syntax.Number, Text: s}} }
func asTruth(s string) value  { return value{&syntax.Value{Kind: syntax.Truth, Text: s}} }

// asTexts is a list of texts.
func asTexts(all []string) value {
	list := &syntax.Value{Kind: syntax.List}
	for _, s := range all {
		list.Items = append(list.Items, *asText(s).v)
	}
	return value{list}
}

// written is the value as it stands in a plan.
func (x value) written() string {
	switch x.v.Kind {
	case syntax.Text:
		return strconv.Quote(x.v.Text)
	case syntax.List:
		var all []string
		for i := range x.v.Items {
			all = append(all, value{&x.v.Items[i]}.written())
		}
		return "[" + strings.Join(all, ", ") + "]"
	}
	return x.v.Text
}

// candidates are ways to write what was typed as a value of another kind.
func candidates(x *syntax.Value, attr *schema.Attr) (all []value) {
	typed := strings.TrimSpace(x.Text)
	switch {
	case x.Filled:
		return nil
	case x.Kind == syntax.List:
		return fromList(x, attr)
	}
	switch attr.Kind {
	case schema.Truth:
		switch strings.ToLower(typed) {
		case "true", "yes", "y", "on", "1":
			return []value{asTruth("true")}
		case "false", "no", "n", "off", "0", "none":
			return []value{asTruth("false")}
		}
		return nil
	case schema.Whole, schema.Number:
		all = append(all, asNumber(typed), asNumber(strings.ReplaceAll(typed, ",", ".")))
		return append(all, asNumber(quantity.Numeral(typed)))
	case schema.On:
		if n, err := strconv.Atoi(typed); err == nil && n >= 1 && n <= 31 {
			all = append(all, asText(civil.Ordinal(n)))
		}
	case schema.Every:
		if _, err := quantity.ParseInterval(typed); err != nil {
			all = append(all, asText(err.(*quantity.Error).Instead))
		}
	case schema.Clocks:
		var each []string
		for _, part := range parted(typed) {
			if c, err := clock(part); err == nil {
				each = append(each, c.String())
			}
		}
		if n := len(parted(typed)); n > 1 && len(each) == n {
			all = append(all, asTexts(each))
		}
	case schema.Quantity, schema.Range:
		all = append(all, united(typed, attr)...)
	case schema.Link:
		all = append(all, asText("https://"+typed))
	}
	if x.Kind == syntax.Bare && syntax.Plain(typed) || x.Kind == syntax.Number || x.Kind == syntax.Truth {
		all = append(all, asText(typed))
	}
	return all
}

// fromList returns what a list is where one value is wanted.
func fromList(x *syntax.Value, attr *schema.Attr) []value {
	var words []string
	for i := range x.Items {
		words = append(words, x.Items[i].Text)
	}
	switch {
	case attr.Kind == schema.Words:
		return []value{asText(strings.Join(words, ", "))}
	case len(words) == 1:
		return []value{{&x.Items[0]}, asText(words[0]), asNumber(words[0])}
	case attr.Kind == schema.Size || attr.Kind == schema.Face2D:
		return []value{asText(strings.Join(words, " x "))}
	}
	return nil
}

// united is for a quantity that is no text: bare words with a unit that is meant, and a
// time that is said as an interval.
func united(typed string, attr *schema.Attr) (all []value) {
	_, err := quantity.ParseRange(typed, attr.Dimension)
	var q *quantity.Error
	if errors.As(err, &q) && q.Instead != "" {
		all = append(all, asText(q.Instead))
	}
	if v, err := quantity.ParseInterval(typed); err == nil && attr.Dimension == quantity.Duration {
		all = append(all, asText(strconv.Itoa(v.N)+" "+v.Unit.String()), asText(v.String()))
	}
	return all
}
