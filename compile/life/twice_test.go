package life_test

import (
	"slices"
	"strings"
	"testing"
)

// What two lines of a day tell of the same is asked only where it counts, and no longer once
// it is answered. Days are those of February 2027; "grown" are four, "mother" is one.
func TestToldTwice(t *testing.T) {
	text := sheet(mother+"  animals \"grown\" {\n    count = 4\n    stage = \"juvenile\"\n  }\n", "gestation=7 to 18 months", "on-mother=14 to 21 days", "moults-as-adult=false", "separation=separate")
	for _, x := range []struct{ log, found string }{
		{`6 grown died "a"|6 grown died "b"`, "log-twice"},
		{`6 grown died "a"|6 grown died "b"|6 grown died "c"`, "log-twice log-twice"},
		{"6 08:10 by lead grown died|6 08:40 by lead grown died", ""},
		{"6 08:10 by lead grown died|6 08:40 by relief grown died", "log-twice"},
		{"6 08:10 by lead grown died|6 09:11 by relief grown died", ""},
		{"6 08:10 grown died|6 08:40 grown died", ""},
		{`6 by lead grown died|6 by lead grown died "another"`, ""},
		{"6 by lead grown died|6 by relief grown died 2", "log-twice"},
		{`6 grown died|6 grown died 2 "others"`, ""},
		{`6 grown died "a"|7 grown died "b"`, ""},
		{`6 grown died 3 "a"|6 grown died 3 "b"`, "log-number"},
		{`6 grown escaped 3 "a"|6 grown escaped 3 "b"`, "act-now log-number"},
		{`6 grown escaped "a"|6 grown escaped "b"`, "act-now log-twice"},
		// A count of all that are here answers it, one that misses some does not.
		{`6 grown died "a"|6 grown died "b"|7 grown counted 2`, ""},
		{`6 grown died "a"|6 grown died "b"|7 grown counted 1`, "log-twice"},
		{`6 grown died "a"|6 grown died "b"|7 counted 3`, ""},
		{`6 grown died "a"|6 grown died "b"|7 grown moved 2`, ""},
		{`6 mother born 5 "a"|6 mother born 5 "b"|7 young counted 10`, "act-now"},
		// What tells no number brings nobody.
		{`6 mother born|6 mother born "white"`, "act-now"},
		{`6 mother born 5|6 mother born 7 "the others"`, "act-now"},
		{`6 mother born 5|6 mother born 5 "the others"`, "act-now log-twice"},
		// One that is gone, and what was before it.
		{`6 mother died "a"|6 mother died "b"`, "log-gone caution"},
		{"6 mother died|6 mother weighed 20 g", "log-gone advice"},
		{"6 mother died|6 mother premoult", "log-gone advice"},
		{"6 mother moved|6 mother premoult", "log-gone urgent"},
		{"6 mother moved|6 mother fed", "log-gone advice"},
		{"6 mother died|6 mother moved", "log-gone urgent"},
		{"6 09:00 mother died|6 19:00 mother fed", "log-gone urgent"},
		{"6 mother died|7 mother fed", "log-gone urgent"},
		// Of which it is not known which was later.
		{"6 by lead mother fed|6 by relief mother refused", "log-differs"},
		{"6 by lead mother refused|6 by relief mother fed|8 mother fed", ""},
		{"6 by lead grown fed|6 by relief grown refused", ""},
		{"6 by lead mother fed|6 mother refused", ""},
		{"6 mother fed|6 mother refused", ""},
		{"6 by lead grown counted 4|6 by relief grown counted 3", "log-differs"},
		{"6 by lead grown counted 3|6 by relief grown counted 4|8 grown counted 4", ""},
		{"6 by lead grown counted 4|6 grown counted 3", ""},
		{"6 19:30 by lead grown counted 4|6 19:40 by relief grown counted 3", ""},
		{"6 by lead grown counted 4|6 by relief grown counted 3(1 may hide)", ""},
		{"6 by lead grown counted 4|6 by relief grown counted 2(1 may hide)", "log-differs"},
		{"6 by lead counted 5|6 by relief counted 3", "log-differs"},
	} {
		var log strings.Builder
		for line := range strings.SplitSeq(strings.TrimSuffix(x.log, "(1 may hide)"), "|") {
			words := strings.Fields(line)
			k := 1
			if strings.Contains(words[k], ":") {
				k++
			}
			if words[k] == "by" {
				k += 2
			}
			log.WriteString("2027-02-0" + strings.Join(slices.Insert(words, k, "box"), " ") + "\n")
		}
		plan := text
		if strings.HasSuffix(x.log, "(1 may hide)") {
			plan = strings.Replace(text, "count = 4\n", "count = 4\n    hidden = 1\n", 1)
		}
		_, found := read(t, plan, log.String(), day("2027-03-01"))
		var got []string
		for _, f := range found {
			switch f.Rule.ID {
			case "log-gone":
				got = append(got, f.Rule.ID+" "+f.Severity.String())
			case "log-twice", "log-differs", "log-number", "act-now":
				got = append(got, f.Rule.ID)
			}
		}
		slices.Sort(got)
		if g := strings.Join(got, " "); g != x.found {
			t.Errorf("%s: %q, not %q", x.log, g, x.found)
		}
	}
}
