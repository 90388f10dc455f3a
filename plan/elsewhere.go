package plan

import (
	"bytes"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/syntax"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// elsewhere looks, for what was found of a value, for another attribute of the block that
// can say it: "twice a week" is no interval, and two weekdays are.
func (d *decoder) elsewhere(a *syntax.Attr, b *binding, v reflect.Value, in *syntax.Block, found []finding.Finding) {
	if len(found) != 1 || len(found[0].Edits) > 0 || !d.own {
		return
	}
	f, attr := &found[0], b.attrs[a.Name].attr
	x := &a.Value
	if x.Kind == syntax.List && len(x.Items) == 1 {
		x = &x.Items[0]
	}
	if x.Kind != syntax.Text && x.Kind != syntax.Bare || x.Filled || f.At != x.At {
		return
	}
	if attr.Kind == schema.Prey || attr.Kind == schema.Menu {
		d.perAnimal(a, f, x.Text, b, v, in)
		d.inTurn(a, f, x.Text, b, v, in)
		return
	}
	name, better, words := turned(attr, x.Text)
	if words == "" || b.attrs[name] == nil {
		return
	}
	f.Write = words
	to := b.attrs[name]
	if better.v == nil || in.Attr(name) != nil || !d.reads(better, to.attr, v.FieldByIndex(to.field).Type()) {
		return
	}
	f.Edits = finding.Plain(a.At, name+" = "+better.written())
}

// turned returns the attribute that can say what an interval or a list of days cannot, its
// value where that is plain, and both in words.
func turned(attr *schema.Attr, typed string) (name string, better value, words string) {
	switch attr.Kind {
	case schema.Every:
		if days, err := ParseDays(typed); err == nil && !slices.ContainsFunc(days, func(d Day) bool { return d.Kind == NamedDays }) {
			return "on", listOf(days), "on, which says the days"
		}
		_, err := quantity.ParseInterval(typed)
		q, ok := err.(*quantity.Error)
		if !ok || q.Kind != quantity.TooOften {
			return "", value{}, ""
		}
		switch q.Per {
		case quantity.Week, quantity.Month:
			return "on", spreadOver(q.Times, q.Per), "on, which says the days"
		case quantity.Day:
			return "at", value{}, "every day, in as many rounds, such as one in the morning and one in the evening; or at as many times of day"
		}
	case schema.On:
		if v, err := quantity.ParseInterval(typed); err == nil {
			return "every", asText(v.String()), "every, which says how often"
		}
	}
	return "", value{}, ""
}

// listOf writes days as a list.
func listOf(days []Day) value {
	var all []string
	for _, d := range days {
		all = append(all, d.String())
	}
	return asTexts(all)
}

// spreadOver returns days that lie evenly in a week or a month, or none.
func spreadOver(times int, per quantity.IntervalUnit) value {
	var days []string
	switch {
	case per == quantity.Week && times >= 2 && times <= 6:
		days = [...][]string{2: {"mon", "thu"}, 3: {"mon", "wed", "fri"}, 4: {"mon", "wed", "fri", "sun"}, 5: {"mon", "tue", "wed", "thu", "fri"}, 6: {"mon", "tue", "wed", "thu", "fri", "sat"}}[times]
	case per == quantity.Month && times >= 2 && times <= 4:
		for n := range times {
			days = append(days, civil.Ordinal(1+n*(28/times)))
		}
	default:
		return value{}
	}
	return asTexts(days)
}

// perAnimal takes the number off what is written as prey, which per_animal says.
func (d *decoder) perAnimal(a *syntax.Attr, f *finding.Finding, typed string, b *binding, v reflect.Value, in *syntax.Block) {
	count, rest, two := strings.Cut(strings.TrimSpace(typed), " ")
	n, err := strconv.Atoi(count)
	per := b.attrs["per_animal"]
	if err != nil || n < 1 || !two || per == nil || in.Attr("per_animal") != nil {
		return
	}
	to, prey := b.attrs[a.Name], asText(strings.TrimSpace(rest))
	if d.reads(prey, to.attr, v.FieldByIndex(to.field).Type()) {
		f.Edits = finding.Plain(a.At, a.Name+" = "+prey.written()+"\n"+d.indent(a)+"per_animal = "+strconv.Itoa(n))
	}
}

// inTurn makes several feeders of one text a list, which are given in turn.
func (d *decoder) inTurn(a *syntax.Attr, f *finding.Finding, typed string, b *binding, v reflect.Value, in *syntax.Block) {
	to, each := b.attrs["rotate"], parted(typed)
	if to == nil || len(each) < 2 || len(f.Edits) > 0 || a.Name != "rotate" && in.Attr("rotate") != nil {
		return
	}
	for i := range each {
		each[i] = strings.TrimSpace(each[i])
	}
	if all := asTexts(each); d.reads(all, to.attr, v.FieldByIndex(to.field).Type()) {
		f.Write = "rotate, with each by itself"
		f.Edits = finding.Plain(a.At, "rotate = "+all.written())
	}
}

// indent returns the blanks before an attribute.
func (d *decoder) indent(a *syntax.Attr) string {
	line := d.source[:a.At.Start]
	return string(line[len(bytes.TrimRight(line, " \t")):])
}
