package compile_test

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/explain"
	"vivary/compile/feeds"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// inCare finds a value of a plan that a keeper in the United States would write otherwise.
var inCare = regexp.MustCompile(`(\w+) = "(\d[^"]*?) (C|mm|cm|ml|L|g)(\+?)"`)

// time24 finds a time of day of a plan.
var time24 = regexp.MustCompile(`"(\d\d:\d\d)"`)

var digits = regexp.MustCompile(`\d+(?:\.\d+)?`)

// inUS is a plan as it is written in the United States: the same values to the last digit,
// and times with am and pm.
func inUS(t *testing.T, text string) string {
	t.Helper()
	from := map[string]quantity.Unit{"C": quantity.Celsius, "mm": quantity.Millimetre, "cm": quantity.Centimetre, "ml": quantity.Millilitre, "L": quantity.Litre, "g": quantity.Gram}
	text = inCare.ReplaceAllStringFunc(text, func(s string) string {
		m := inCare.FindStringSubmatch(s)
		u := from[m[3]]
		if slices.Contains([]string{"swing", "ramp", "shelf_rise"}, m[1]) {
			u = quantity.CelsiusStep
		}
		to := quantity.Customary.Of(u)
		values := digits.ReplaceAllStringFunc(m[2], func(n string) string {
			x, err := strconv.ParseFloat(n, 64)
			if err != nil {
				t.Fatal(err)
			}
			return strconv.FormatFloat(quantity.Decimals(quantity.Convert(x, u, to), 9), 'f', -1, 64)
		})
		return m[1] + ` = "` + values + " " + to.String() + m[4] + `"`
	})
	return time24.ReplaceAllStringFunc(text, func(s string) string {
		c, err := civil.ParseClock(strings.Trim(s, `"`))
		if err != nil {
			t.Fatal(err)
		}
		return `"` + wording.Clock(c, quantity.Customary) + `"`
	})
}

// notUS and notMetric are what no text may hold that is told to a keeper of the one kind: the
// units of the other. Watts, minutes, percent and kilowatt-hours are everybody's: the meter
// has them in both countries, and kilocalories are written in both. A dose of milligrams a kilogram is one of medicine.
var (
	notUS     = regexp.MustCompile(`\d ?(?:°?C|K|mm|cm|cm2|m|m2|ml|mL|l|L|mg|g|kg|kJ|kJ/g|litres?|grams?|centimetres?|degrees C)(?:$|[^\w/])|\b(?:[01]\d|2[0-3]):[0-5]\d(?:$|[^-\d ]| [^ap])`)
	notMetric = regexp.MustCompile(`\d ?(?:°?F|oz|fl oz|gal|qt|ft|sq in|sq ft|cu in|lb|gallons?|inch|inches|ounces?|pounds?)(?:$|[^\w/])|\d in(?:$|[,;:)])|\d [ap]m\b`)
)

// quoted are words of a source that are no value of ours.
var quoted = strings.NewReplacer("Biol. 18:13-18", "", "'23 mm'", "", "Superworm fact sheet, 1.5 to 2.25 inches", "")

// wordsOf are all texts that a keeper is told: findings, rounds as the feeds have them, and what
// why explains.
func wordsOf(t *testing.T, r *compile.Result, about ...string) (all []string) {
	t.Helper()
	for _, f := range r.Findings {
		all = append(all, f.Text, f.Limit, f.Source, f.Write)
		for _, x := range f.Also {
			all = append(all, x.Text)
		}
		for _, x := range f.Edits {
			all = append(all, x.Text)
		}
		for _, x := range f.First {
			all = append(all, x.Text)
		}
	}
	for _, f := range feeds.Of(r) {
		entries, err := f.Entries(nil)
		if err != nil {
			t.Fatal(err)
		}
		for _, e := range entries {
			all = append(all, e.Summary, e.Description)
		}
	}
	for _, w := range about {
		for _, a := range explain.Of(r, w) {
			all = append(all, a.Title)
			for _, p := range a.Parts {
				all = append(all, p.Head)
				for _, l := range p.Lines {
					all = append(append(all, l.Name, l.Text), l.Under...)
				}
			}
		}
	}
	return all
}

// foreign says which of the texts hold what may not be in them, each pattern of words once.
func foreign(texts []string, no *regexp.Regexp) (out []string) {
	for _, text := range texts {
		for line := range strings.Lines(text) {
			if m := no.FindString(quoted.Replace(line)); m != "" && !slices.Contains(out, strings.TrimSpace(line)) {
				out = append(out, strings.TrimSpace(line))
			}
		}
	}
	return out
}

// facts are what is found, by rule, severity and place, and what is to be done, on which days
// and by whom: all but the words.
func facts(r *compile.Result) (out []string) {
	for _, f := range r.Findings {
		out = append(out, fmt.Sprint(f.Severity, " ", f.Rule.ID, " line ", r.Plan.Files.Start(f.At).Line))
	}
	for _, of := range r.Roster.Of {
		for i := range of {
			e := &of[i]
			out = append(out, fmt.Sprint(e.ID, " ", e.Round.Name.V, " ", e.Keeper, " ", e.Days))
		}
	}
	slices.Sort(out)
	return out
}

// The same collection, written in the units and by the clock of the United States and in
// metric ones, has the same findings at the same places and the same tasks, and each is told
// in the units in which it is written and in no others: the set-ups of all species, and the
// mistakes that are typical for them.
func TestSameInEitherUnits(t *testing.T) {
	for _, s := range setups(t) {
		t.Run(s.species, func(t *testing.T) {
			t.Parallel()
			texts := []string{s.text}
			for _, w := range s.wrong {
				texts = append(texts, strings.Replace(s.text, w.old, w.new, 1))
			}
			for i, text := range texts {
				metric := on(t, "2027-03-02", setupHead+text, "")
				us := on(t, "2027-03-02", inUS(t, setupHead+text), "")
				if us.Plan.Units.Temperature != quantity.Fahrenheit || !us.Plan.Units.TwelveHours {
					t.Fatalf("%s %d: it is told in %v", s.at, i, us.Plan.Units)
				}
				a, b := facts(metric), facts(us)
				for _, x := range a {
					if !slices.Contains(b, x) {
						t.Errorf("%s %d: not so in the United States: %s", s.at, i, x)
					}
				}
				for _, x := range b {
					if !slices.Contains(a, x) {
						t.Errorf("%s %d: only in the United States: %s", s.at, i, x)
					}
				}
				about := []string{us.Plan.Enclosures[0].Name.V, s.species}
				if i > 0 {
					about = nil // explained as above
				}
				for _, x := range foreign(wordsOf(t, us, about...), notUS) {
					t.Errorf("%s %d: in the United States they are told: %s", s.at, i, x)
				}
				for _, x := range foreign(wordsOf(t, metric, about...), notMetric) {
					t.Errorf("%s %d: in metric they are told: %s", s.at, i, x)
				}
			}
		})
	}
}

// What why explains of rules, figures, feeders, types and all else is told so too.
func TestExplainedInEitherUnits(t *testing.T) {
	text := setupHead + setups(t)[0].text
	metric, us := on(t, "2027-03-02", text, ""), on(t, "2027-03-02", inUS(t, text), "")
	var about []string
	for _, topic := range explain.Topics {
		for _, a := range explain.Of(us, topic.Name) {
			for _, p := range a.Parts {
				for _, l := range p.Lines {
					about = append(about, l.Name)
				}
			}
		}
	}
	if len(about) < 500 {
		t.Fatalf("%d are explained", len(about))
	}
	for _, x := range foreign(wordsOf(t, us, about...), notUS) {
		t.Errorf("in the United States they are told: %s", x)
	}
	for _, x := range foreign(wordsOf(t, metric, about...), notMetric) {
		t.Errorf("in metric they are told: %s", x)
	}
}
