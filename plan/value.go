package plan

import (
	"errors"
	"math"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// value reads one attribute into its field.
func (d *decoder) value(x *syntax.Value, attr *schema.Attr, v reflect.Value) {
	before := len(d.found.All)
	d.read(x, attr, v)
	d.mend(x, attr, v.Type(), d.found.All[before:])
}

// read reads one attribute into its field. What a kind of value may look like is decided
// here and nowhere else.
func (d *decoder) read(x *syntax.Value, attr *schema.Attr, v reflect.Value) {
	if w, ok := v.Addr().Interface().(interface{ spoil(source.Place) }); ok {
		defer w.spoil(x.At)
	}
	if x.Kind == syntax.List && len(x.Items) == 0 {
		d.found.Add(finding.Finding{Rule: ruleValue, At: x.At, Text: attr.Name + " is an empty list: it is not clear whether none or all is meant",
			Write: attr.Form() + "; or leave it out"})
		return
	}
	switch to := v.Addr().Interface().(type) {
	case *Written[string]:
		if s, ok := d.text(x, attr); ok {
			s = d.meant(attr, s)
			if attr.Kind == schema.Link {
				s.V = strings.TrimRight(s.V, "/") // names of files follow it after a /
			}
			*to = s
		}
	case *Written[[]string]:
		d.words(x, attr, to)
	case *[]Written[string]:
		for _, item := range d.items(x, attr) {
			if s, ok := d.text(item, attr); ok {
				*to = append(*to, d.meant(attr, s))
			}
		}
	case *Written[bool]:
		if x.Kind == syntax.Truth {
			*to = wrote(x.Text == "true", x.At)
			return
		}
		d.bad(x, attr, attr.Name+" is true or false, without quotes")
	case *Written[int]:
		if f, ok := d.number(x, attr); ok {
			if f != math.Trunc(f) || f < 0 || f > 1e6 {
				d.bad(x, attr, attr.Name+" is a whole number from 0 to 1,000,000")
				return
			}
			*to = wrote(int(f), x.At)
		}
	case *[]Written[int]:
		for _, item := range d.items(x, attr) {
			if f, ok := d.number(item, attr); ok && (f != math.Trunc(f) || f < 1 || f > 1e6) {
				d.bad(item, attr, attr.Name+" is whole numbers from 1 to 1,000,000")
			} else if ok {
				*to = append(*to, wrote(int(f), item.At))
			}
		}
	case *Written[float64]:
		if f, ok := d.number(x, attr); ok {
			if f < 0.001 || f > 1e6 {
				d.bad(x, attr, attr.Name+" is a number above 0, up to 1,000,000")
				return
			}
			*to = wrote(f, x.At)
		}
	case *Written[quantity.Quantity]:
		parse(d, x, attr, to, func(s string) (quantity.Quantity, error) {
			q, err := quantity.Parse(s, attr.Dimension)
			if err == nil && attr.Positive && q.Value <= 0 {
				err = errors.New(quote(s) + " is nothing: it is as if it were not done")
			}
			if err == nil {
				err = beside(attr, quantity.Range{Low: q.Value, High: q.Value, Unit: q.Unit})
			}
			return q, err
		})
	case *Written[quantity.Range]:
		if attr.Kind == schema.Numbers {
			d.numbers(x, attr, to)
			return
		}
		parse(d, x, attr, to, func(s string) (quantity.Range, error) {
			r, err := quantity.ParseRange(s, attr.Dimension)
			if err == nil {
				err = beside(attr, r)
			}
			return r, err
		})
	case *Written[quantity.Size]:
		parse(d, x, attr, to, quantity.ParseSize)
	case *Written[Spans]:
		if !d.numberList(x, attr) {
			parse(d, x, attr, to, someNumbers)
		}
	case *Written[quantity.Face]:
		parse(d, x, attr, to, quantity.ParseFace)
	case *Written[quantity.Interval]:
		parse(d, x, attr, to, quantity.ParseInterval)
	case *Written[quantity.Count]:
		if x.Kind == syntax.Number {
			if f, ok := d.number(x, attr); ok {
				if c, err := quantity.ParseCount(strconv.FormatFloat(f, 'f', -1, 64)); err != nil {
					d.bad(x, attr, attr.Name+": "+err.Error())
				} else {
					*to = wrote(c, x.At)
				}
			}
			return
		}
		parse(d, x, attr, to, quantity.ParseCount)
	case *Written[civil.Date]:
		parse(d, x, attr, to, civil.Read)
	case *Written[civil.Clock]:
		parse(d, x, attr, to, clock)
	case *[]Written[civil.Clock]:
		list(d, x, attr, to, clock)
	case *[]Written[Day]:
		d.days(x, attr, to)
	case *Written[Day]:
		parse(d, x, attr, to, dayOfYear)
	case *Written[Prey]:
		parse(d, x, attr, to, prey)
	case *[]Written[Prey]:
		list(d, x, attr, to, prey)
	default:
		panic("plan: no way to read a " + v.Type().String())
	}
}

// parse reads a text and turns it into a T.
func parse[T any](d *decoder, x *syntax.Value, attr *schema.Attr, to *Written[T], read func(string) (T, error)) {
	s, ok := d.text(x, attr)
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
func list[T any](d *decoder, x *syntax.Value, attr *schema.Attr, to *[]Written[T], read func(string) (T, error)) {
	for _, item := range d.items(x, attr) {
		var w Written[T]
		parse(d, item, attr, &w, read)
		if w.Set() {
			*to = append(*to, w)
		}
	}
}

// days reads a list of days, of which one text may stand for several.
func (d *decoder) days(x *syntax.Value, attr *schema.Attr, to *[]Written[Day]) {
	for _, item := range d.items(x, attr) {
		var w Written[[]Day]
		parse(d, item, attr, &w, ParseDays)
		for _, day := range w.V {
			*to = append(*to, wrote(day, w.At))
		}
	}
}

func dayOfYear(s string) (Day, error) {
	day, ok := ParseDay(s)
	if ok && day.Kind == DateOfYear {
		return day, nil
	}
	e, _ := noDay(s).(*civil.Unread)
	if ok || e.Either == nil && !strings.Contains(e.Instead, " ") {
		e = &civil.Unread{Fault: quote(s) + " is not a day of the year"}
	}
	return Day{}, e
}

func clock(s string) (civil.Clock, error) {
	c, err := civil.ReadClock(s)
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

func prey(s string) (Prey, error) {
	w := strings.Fields(s)
	if len(parted(s)) > 1 {
		return Prey{}, errors.New(quote(s) + " is several feeders: what is given in turn stands in rotate, each by itself")
	}
	if len(w) == 0 || len(w) > maxPreyWords {
		return Prey{}, errors.New(quote(s) + " is not prey")
	}
	if _, err := strconv.ParseFloat(w[0], 64); err == nil && !sizedBy(w) {
		return Prey{}, errors.New(quote(s) + " begins with a number: how many each animal gets is said by per_animal, and prey is a feeder and its size")
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

// most returns how many things a list of an attribute may hold. Names of blocks may
// be as many as there are blocks.
func most(attr *schema.Attr) int {
	if attr.Kind == schema.Refs {
		return MaxEnclosures
	}
	return MaxList
}

// items returns the members of a list, or the value itself where it is none.
func (d *decoder) items(x *syntax.Value, attr *schema.Attr) []*syntax.Value {
	if x.Kind != syntax.List {
		return []*syntax.Value{x}
	}
	n := len(x.Items)
	if most := most(attr); n > most {
		d.found.Add(finding.Finding{Rule: ruleTooMany, At: x.At, Text: attr.Name + " lists " + strconv.Itoa(n) + " things",
			Limit: strconv.Itoa(most) + " in one list", Write: "a shorter list"})
		n = most
	}
	all := make([]*syntax.Value, n)
	for i := range all {
		all[i] = &x.Items[i]
	}
	return all
}

func (d *decoder) number(x *syntax.Value, attr *schema.Attr) (float64, bool) {
	f, err := strconv.ParseFloat(x.Text, 64)
	switch {
	case x.Kind != syntax.Number || f < 0 || err != nil && !math.IsInf(f, 1):
		d.bad(x, attr, attr.Name+" is a number without quotes, 0 or above")
		return 0, false
	case f > 1e9:
		d.bad(x, attr, attr.Name+" is far too large a number")
		return 0, false
	}
	return f, true
}

// numbers reads "10 to 35" or "6", or a plain number.
func (d *decoder) numbers(x *syntax.Value, attr *schema.Attr, to *Written[quantity.Range]) {
	if x.Kind == syntax.Number {
		if f, ok := d.number(x, attr); ok {
			*to = wrote(quantity.Range{Low: f, High: f}, x.At)
		}
		return
	}
	parse(d, x, attr, to, quantity.ParseNumbers)
}
