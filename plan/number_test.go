package plan

import (
	"cmp"
	"fmt"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"vivary/plan/finding"
)

func TestSpans(t *testing.T) {
	for _, c := range []struct{ text, want, instead string }{
		{"1 to 40", "1 to 40", ""}, {"7", "7", ""}, {"0 to 3", "0 to 3", ""}, {"7 to 7", "7", ""},
		{"1 to 12, 15, 20 to 24", "1 to 12, 15, 20 to 24", ""}, {"20 to 24, 1 to 12,15", "1 to 12, 15, 20 to 24", ""},
		{"1-40", "1 to 40", ""}, {"1–12, 15 and 20 – 24", "1 to 12, 15, 20 to 24", ""}, {"  1  to  3 ", "1 to 3", ""},
		{"01 to 40", "01 to 40", ""}, {"1 to 040", "001 to 040", ""}, {"08 to 110", "008 to 110", ""}, {"000 to 001", "000 to 001", ""},
		{"40 to 1", "", "1 to 40"}, {"1 to 12, 24-20", "", "1 to 12, 20 to 24"}, {"1 to 12, 7", "", "1 to 12"}, {"1 to 12, 12 to 20, 30", "", "1 to 20, 30"},
		{"7, 7", "", "7"}, {"7, 07", "", ""}, {"", "", ""}, {",", "", ""}, {"1 to", "", ""}, {"1 to 2 to 3", "", ""}, {"one to forty", "", ""}, {"1 to 40,", "", ""},
		{"-3", "", ""}, {"1.5", "", ""}, {"1000000", "", ""}, {"999999", "999999", ""}, {"99999999999999999999", "", ""}, {"+1 to 4", "", ""}, {"1 2 3", "", ""}, {"٣", "", ""},
	} {
		got, err := ParseSpans(c.text)
		e, _ := err.(spanError)
		if (err == nil) != (c.want != "") || got.String() != c.want || e.instead != c.instead {
			t.Errorf("%q: %q, %v, instead %q", c.text, got, err, e.instead)
		}
	}
}

// What is among both, and what is not among the others, by looking at each number.
func TestSpansTogether(t *testing.T) {
	texts := []string{"1 to 9", "3", "1, 3, 5 to 8", "2 to 4, 6, 9 to 12", "0 to 20", "15 to 18", "4 to 5, 7 to 9"}
	for _, a := range texts {
		for _, b := range texts {
			x, _ := ParseSpans(a)
			y, _ := ParseSpans(b)
			for n := range 25 {
				if got := x.and(y).has(n); got != (x.has(n) && y.has(n)) {
					t.Errorf("%s and %s: %d %v", a, b, n, got)
				}
				if got := x.less(y).has(n); got != (x.has(n) && !y.has(n)) {
					t.Errorf("%s less %s: %d %v", a, b, n, got)
				}
			}
			if x.and(y).Count()+x.less(y).Count() != x.Count() {
				t.Errorf("%s, %s: %d numbers", a, b, x.Count())
			}
		}
	}
}

const (
	around    = "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"a\" {\n  temperature = \"18 to 22 C\"\n}\n"
	tubsOf    = "enclosure \"tub\" {\n  numbers = %q\n" + inTub
	inTub     = "  species = \"pandinus-imperator\"\n  housing {\n    inside = \"60 x 45 x 40 cm\"\n    lid    = \"solid, latched\"\n  }\n" + oneAnimal
	oneAnimal = "  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n"
)

// meaning is all that a collection says of its enclosures, without the places at which it
// does.
func meaning(c *Collection) string {
	var b strings.Builder
	dumper{&b, c.Files}.value(reflect.ValueOf(c.Enclosures))
	return regexp.MustCompile(`(?m)[^ \n]*:\d+-\d+$|Of .*$`).ReplaceAllString(b.String(), "")
}

// A block with numbers means what the same enclosures mean that are written out.
func TestNumbersAreWrittenOut(t *testing.T) {
	const with = around + `
template "t" {
  species = "pandinus-imperator"

  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
    depth  = "12 cm"
  }

  animals "one" {
    count  = 1
    origin = "captive bred"
  }
}

template "deep" {
  species = "hadrurus-arizonensis"

  housing {
    inside = "40 x 30 x 40 cm"
    lid    = "solid"
    depth  = "20 cm"
  }

  animals "one" {
    count = 1
  }
}

rack "shelf" {
  room = "a"
}

`
	numbered := with + `enclosure "tub" {
  title    = "Long tub"
  numbers  = "8 to 12, 15"
  template = "t"
  rack     = "shelf"
  formerly = "old"

  animals "one" {
    stage = "adult"
  }

  care "look" {
    every = "day"
  }

  number "9"        { instar = 5 }
  number "9"        { born = "2024-06-02" }
  number "9, 10"    { depth = "18 cm" }
  number "10 to 12" { title = "Short" }
  number "12"       { formerly = "first" }
  number "08 to 09" { formerly = "box" }
  number "15" {
    template = "deep"
    title    = "The deep one"

    care "look" {
      on = ["tue"]
    }

    care "mist" {
      every = "2 days"
    }
  }
}
`
	written := with
	for _, e := range []struct{ n, title, former, template, stage, more, care string }{
		{"8", "Long tub 8", "box-08", "t", "", "", "every = \"day\""},
		{"9", "Long tub 9", "box-09", "t", "instar = 5\nborn = \"2024-06-02\"\n", "housing {\ndepth = \"18 cm\"\n}\n", "every = \"day\""},
		{"10", "Short 10", "old-10", "t", "", "housing {\ndepth = \"18 cm\"\n}\n", "every = \"day\""},
		{"11", "Short 11", "old-11", "t", "", "", "every = \"day\""},
		{"12", "Short 12", "first", "t", "", "", "every = \"day\""},
		{"15", "The deep one", "old-15", "deep", "", "", "on = [\"tue\"]\n}\ncare \"mist\" {\nevery = \"2 days\""},
	} {
		written += fmt.Sprintf("enclosure \"tub-%s\" {\ntitle = %q\nformerly = %q\ntemplate = %q\nrack = \"shelf\"\nanimals \"one\" {\nstage = \"adult\"\n%s}\n%scare \"look\" {\n%s\n}\n}\n", e.n, e.title, e.former, e.template, e.stage, e.more, e.care)
	}
	a, found := load(t, map[string]string{"a.care.hcl": numbered})
	if len(found) > 0 {
		t.Fatal(texts(found))
	}
	b, found := load(t, map[string]string{"a.care.hcl": written})
	if len(found) > 0 {
		t.Fatal(texts(found))
	}
	if got, want := meaning(a), meaning(b); got != want {
		t.Error(difference(got, want))
	}
}

// Without a template all share the blocks that do not differ.
func TestNumbersShareBlocks(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": around + fmt.Sprintf(tubsOf, "01 to 40") + "  number \"7\" { count = 2 }\n}\n"})
	if len(found) > 0 || len(c.Enclosures) != 40 || c.Enclosures[0].Name.V != "tub-01" || c.Enclosures[39].Name.V != "tub-40" {
		t.Fatal(texts(found), len(c.Enclosures))
	}
	one, seven, last := c.Enclosure("tub-01"), c.Enclosure("tub-07"), c.Enclosure("tub-40")
	if one.Housing != last.Housing || one.Animals[0] != last.Animals[0] || one.Housing != seven.Housing {
		t.Error("what is the same is there more than once")
	}
	if seven.Animals[0].Count.V.Total() != 2 || one.Animals[0].Count.V.Total() != 1 {
		t.Error("the line of one is said of others")
	}
	if seven.Box() == one.Box() {
		t.Error("findings cannot tell them apart")
	}
}

// Findings of what is written with numbers, and what their edits make of it.
func TestNumbersFound(t *testing.T) {
	tubs := func(numbers string) string { return fmt.Sprintf(tubsOf, numbers) }
	for _, c := range []struct{ name, typed, want, old, better string }{
		{"nothing", tubs("1 to 40") + "}\n", "", "", ""},
		{"one number", tubs("40") + "}\n", "value: numbers: \"40\" is one number: it is not clear", "", ""},
		{"no text", "enclosure \"tub\" {\n  numbers = 40\n" + inTub + "}\n", "value: numbers is a text in quotes", "", ""},
		{"a list", strings.Replace(tubs("@"), "\"@\"", "[\"1 to 12\", \"15\"]", 1) + "}\n", "value: numbers is one text, not a list", "[\"1 to 12\", \"15\"]", "\"1 to 12, 15\""},
		{"a list of numbers", strings.Replace(tubs("@"), "\"@\"", "[1, 2]", 1) + "}\n", "value: numbers is one text, not a list", "[1, 2]", "\"1, 2\""},
		{"housing with and without a block", tubs("1 to 4") + "  number \"2\" {\n    depth = \"12 cm\"\n    housing {\n      hides = 2\n    }\n  }\n}\n", "twice: something of the housing stands here in a block", "", ""},
		{"empty", tubs("") + "}\n", "value: numbers: \"\" is not a number", "", ""},
		{"reversed", tubs("40 to 1") + "}\n", "value: numbers: \"40 to 1\" ends before it begins", "40 to 1", "1 to 40"},
		{"twice", tubs("1 to 12, 7") + "}\n", "value: numbers: number 7 is there twice", "1 to 12, 7", "1 to 12"},
		{"not there, after the last", tubs("1 to 40") + "  number \"41\" { count = 2 }\n}\n", "unknown-name: 41 is not among the numbers of enclosure \"tub\", \"1 to 40\"", "1 to 40", "1 to 41"},
		{"not there, further on", tubs("1 to 40") + "  number \"47\" { count = 2 }\n}\n", "unknown-name: 47 is not among", "", ""},
		{"taken out", tubs("1 to 6, 8 to 40") + "  number \"7\" { count = 2 }\n}\n", "unknown-name: 7 is not among", "  number \"7\" { count = 2 }\n", ""},
		{"partly not there", tubs("1 to 40") + "  number \"31 to 45\" { count = 2 }\n}\n", "unknown-name: 41 to 45 is not among", "31 to 45", "31 to 40"},
		{"over one that was taken out", tubs("1 to 6, 8 to 40") + "  number \"5 to 9\" { count = 2 }\n}\n", "", "", ""},
		{"all taken out", tubs("1 to 6, 9 to 40") + "  number \"7 to 8\" { count = 2 }\n}\n", "unknown-name: 7 to 8 is not among", "  number \"7 to 8\" { count = 2 }\n", ""},
		{"before the first", tubs("5 to 40") + "  number \"3 to 8\" { count = 2 }\n}\n", "unknown-name: 3 to 4 is not among", "3 to 8", "5 to 8"},
		{"a label that is no number", tubs("1 to 40") + "  number \"seven\" { count = 2 }\n}\n", "value: \"seven\" is not a number", "", ""},
		{"a reversed label", tubs("1 to 40") + "  number \"9 to 7\" { count = 2 }\n}\n", "value: \"9 to 7\" ends before", "9 to 7", "7 to 9"},
		{"no label", tubs("1 to 40") + "  number { count = 2 }\n}\n", "missing: block number has no number, or several after it", "", ""},
		{"without numbers", "enclosure \"tub\" {\n" + inTub + "  number \"7\" { count = 2 }\n}\n", "missing: enclosure \"tub\" has no numbers", "", ""},
		{"an exception of many", tubs("1 to 40") + "  number \"7\" { instar = 6 }\n  number \"5 to 9\" { instar = 5 }\n}\n", "twice: instar of tub 7 is said twice", "5 to 9", "5 to 6, 8 to 9"},
		{"one of two", tubs("1 to 40") + "  number \"7\" { instar = 6 }\n  number \"7\" { instar = 5 }\n}\n", "twice: instar of tub 7 is said twice", "", ""},
		{"said in two ways", tubs("1 to 40") + "  number \"7\" { instar = 6 }\n  number \"7\" {\n    animals \"one\" {\n      instar = 5\n    }\n  }\n}\n", "twice: instar is said twice", "", ""},
		{"two ways of saying when", tubs("1 to 40") + "  number \"7\" {\n    care \"mist\" {\n      every = \"day\"\n    }\n  }\n  number \"7, 8\" {\n    care \"mist\" {\n      on = [\"tue\"]\n    }\n  }\n}\n", "twice: on of tub 7 is said twice", "number \"7, 8\"", "number \"8\""},
		{"a misspelt attribute", tubs("1 to 40") + "  number \"7\" { conut = 2 }\n}\n", "unknown-word: there is no attribute \"conut\" in block number: did you mean count?", "conut", "count"},
		{"several animals", tubs("1 to 40") + strings.Replace(oneAnimal, "one", "two", 1) + "  number \"7\" { count = 2 }\n}\n", "missing: there are several animals blocks, one and two: it is not said which", "", ""},
		{"written out besides", tubs("1 to 40") + "}\nenclosure \"tub-7\" {\n" + inTub + "}\n", "twice: tub-7 stand", "1 to 40", "1 to 6, 8 to 40"},
		{"written out, and a line", tubs("1 to 40") + "  number \"7\" { count = 2 }\n}\nenclosure \"tub-7\" {\n" + inTub + "}\n", "twice: tub-7 stand", "", ""},
		{"in two blocks", tubs("1 to 40") + "}\n" + tubs("39 to 44") + "}\n", "twice: tub-39 and tub-40 stand in another block with numbers too", "", ""},
		{"alone and with numbers", tubs("1 to 4") + "}\nenclosure \"tub\" {\n" + inTub + "}\n", "twice: enclosure \"tub\" is there alone and with numbers", "", ""},
		{"a long name", strings.Replace(tubs("1 to 40"), "tub", strings.Repeat("tub", 20), 1) + "}\n", "value: \"tubtub", "", ""},
		{"too many", tubs("1 to 20001") + "}\n", "too-many: with these numbers there are 20001 enclosures", "", ""},
		{"in a log", tubs("1 to 40") + "}\n|2026-11-02 tub fed\n", "unknown-name: \"tub\" is 40 enclosures with numbers, 1 to 40: the log takes", "", ""},
	} {
		typed, log, _ := strings.Cut(c.typed, "|")
		_, found := load(t, map[string]string{"a.care.hcl": around + typed, "a.care.log": log})
		if c.want == "" && len(found) > 0 || c.want != "" && (len(found) != 1 || !strings.HasPrefix(texts(found)[0], c.want)) {
			t.Errorf("%s: %v", c.name, texts(found))
		}
		want := around + typed + "|" + log
		if c.old != "" {
			want = strings.Replace(want, c.old, c.better, 1)
		}
		if c.want == "" {
			continue
		}
		if got := mend(t, around+typed+"|"+log); got != want {
			t.Errorf("%s becomes\n%s", c.name, got)
		}
	}
}

// Taking one out and adding one leaves the names of all others, and a block that did not
// change is not made anew.
func TestNumbersOfTheLoadBefore(t *testing.T) {
	r := &Reader{}
	files := map[string]string{"a.care.hcl": around, "tubs.care.hcl": fmt.Sprintf(tubsOf, "1 to 40") + "  number \"7\" { count = 2 }\n}\n"}
	first, _ := again(t, r, files)
	files["a.care.hcl"] = "# a remark\n" + around
	second, _ := again(t, r, files)
	for _, e := range first.Enclosures {
		if o := second.Enclosure(e.Name.V); o.block != e.block || o.Animals[0] != e.Animals[0] {
			t.Fatalf("%s is made anew", e.Name.V)
		}
	}
	files["tubs.care.hcl"] = strings.Replace(files["tubs.care.hcl"], "1 to 40", "1 to 6, 8 to 41", 1)
	third, found := again(t, r, files)
	if len(third.Enclosures) != 40 || third.Enclosure("tub-7") != nil || third.Enclosure("tub-41") == nil || len(found) != 1 {
		t.Error(len(third.Enclosures), texts(found))
	}
}

// No numbers make the program run away.
func TestNumbersAreBounded(t *testing.T) {
	many := func(n int, line func(i int) string) string {
		var b strings.Builder
		for i := range n {
			b.WriteString(line(i))
		}
		return b.String()
	}
	odd := func(i int) string {
		var of []string
		for n := i % 7; n < 1900; n += 5 + i%3 {
			of = append(of, fmt.Sprint(n+1))
		}
		return strings.Join(of[:min(300, len(of))], ", ")
	}
	for name, text := range map[string]string{
		"all numbers":      fmt.Sprintf(tubsOf, "0 to 999999") + "}\n",
		"block upon block": many(3000, func(i int) string { return fmt.Sprintf("enclosure \"t%d\" {\n numbers = \"1 to 20000\"\n}\n", i) }),
		"lines about all": fmt.Sprintf(tubsOf, "1 to 20000") + many(3000, func(i int) string {
			return fmt.Sprintf("number \"1 to 20000\" {\ncare \"c%d\" {\n every = \"day\"\n}\n}\n", i)
		}) + "}\n",
		"lines about one": fmt.Sprintf(tubsOf, "1 to 2") + many(20000, func(i int) string { return "number \"1\" { note = \"a\" }\n" }) + "}\n",
		"cares about one": fmt.Sprintf(tubsOf, "1 to 2") + many(20000, func(i int) string { return fmt.Sprintf("number \"1\" {\ncare \"c%d\" {\n every = \"day\"\n}\n}\n", i) }) + "}\n",
		"all different": fmt.Sprintf(tubsOf, "1 to 2000") + many(650, func(i int) string {
			return fmt.Sprintf("number %q {\ncare \"c%d\" {\n every = \"day\"\n}\n}\n", odd(i), i)
		}) + "}\n",
		"many, and much":     fmt.Sprintf(tubsOf, "1 to 20000") + many(5000, func(i int) string { return fmt.Sprintf("care \"c%d\" {\n every = \"day\"\n}\n", i) }) + "}\n",
		"lines about nobody": fmt.Sprintf(tubsOf, "1 to 2") + many(20000, func(i int) string { return "number \"3 to 999999\" { note = \"a\" }\n" }) + "}\n",
	} {
		t.Run(name, func(t *testing.T) {
			c, found := load(t, map[string]string{"a.care.hcl": around + text})
			if !finding.Refuses(found) {
				t.Error("nothing is found")
			}
			t.Log(len(c.Enclosures), "enclosures,", len(found), "findings", slices.Compact(texts(found))[:min(1, len(found))])
		})
	}
}

// has reports whether a number is among them.
func (all Spans) has(n int) bool {
	i, _ := slices.BinarySearchFunc(all, n, func(x Span, n int) int { return cmp.Compare(x.High, n) })
	return i < len(all) && all[i].Low <= n
}
