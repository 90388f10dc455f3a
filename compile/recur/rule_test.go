package recur_test

import (
	"fmt"
	"hash/fnv"
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"github.com/teambition/rrule-go"

	"vivary/compile/horizon"
	"vivary/compile/recur"
	"vivary/schema/civil"
)

func instant(d civil.Date) time.Time { return d.At(12*60, time.UTC) }

// sample is a random rule, and what rrule-go is to be asked for the same days.
type sample struct {
	text   string
	rule   recur.Rule
	shift  func(k int) recur.Rule // the same rule, anchored k intervals away
	oracle rrule.ROption
}

var (
	oracleDays = [7]rrule.Weekday{rrule.SU, rrule.MO, rrule.TU, rrule.WE, rrule.TH, rrule.FR, rrule.SA}
	begin      = civil.Must(2027, time.January, 1)
	after3     = civil.Must(2029, time.December, 31)
)

func randomSample(rng *rand.Rand) sample {
	anchor := begin + civil.Date(rng.IntN(400)-200)
	n := 1 + rng.IntN(6)
	if rng.IntN(4) == 0 {
		n = 1 + rng.IntN(40)
	}
	o := rrule.ROption{Interval: n, Wkst: rrule.MO, Dtstart: instant(anchor), Until: instant(after3)}
	y, m, day := anchor.YMD()
	first := civil.Must(y, m, 1)
	s := sample{}
	switch kind := rng.IntN(6); kind {
	case 0:
		s.text = fmt.Sprintf("EveryDays(%d, %v)", n, anchor)
		s.shift = func(k int) recur.Rule { return recur.EveryDays(n, anchor+civil.Date(k*n)) }
		o.Freq = rrule.DAILY
	case 1:
		days := civil.Weekdays(1 + rng.IntN(127))
		s.text = fmt.Sprintf("Weekly(%07b, %d, %v)", days, n, anchor)
		s.shift = func(k int) recur.Rule { return recur.Weekly(days, n, anchor+civil.Date(7*k*n)) }
		o.Freq = rrule.WEEKLY
		for w := range time.Weekday(7) {
			if days>>w&1 == 1 {
				o.Byweekday = append(o.Byweekday, oracleDays[w])
			}
		}
	case 2:
		days := rng.Uint32() & rng.Uint32() & rng.Uint32() &^ 1
		last := rng.IntN(3) == 0
		if days == 0 {
			days = 1 << 31
		}
		s.text = fmt.Sprintf("MonthDays(%032b, %v, %d, %v)", days, last, n, anchor)
		s.shift = func(k int) recur.Rule { return recur.MonthDays(days, last, n, first.AddMonths(k*n)) }
		o.Freq = rrule.MONTHLY
		for d := 1; d <= 31; d++ {
			if days>>d&1 == 1 {
				o.Bymonthday = append(o.Bymonthday, d)
			}
		}
		if last {
			o.Bymonthday = append(o.Bymonthday, -1)
		}
	case 3:
		nth := []int{1, 2, 3, 4, 5, -1}[rng.IntN(6)]
		w := time.Weekday(rng.IntN(7))
		s.text = fmt.Sprintf("MonthWeekday(%d, %v, %d, %v)", nth, w, n, anchor)
		s.shift = func(k int) recur.Rule { return recur.MonthWeekday(nth, w, n, first.AddMonths(k*n)) }
		o.Freq, o.Byweekday = rrule.MONTHLY, []rrule.Weekday{oracleDays[w].Nth(nth)}
	case 4:
		if rng.IntN(2) == 0 { // the interesting end
			anchor = anchor - civil.Date(day) + civil.Date(civil.DaysIn(y, m)-rng.IntN(3))
			_, _, day = anchor.YMD()
			o.Dtstart = instant(anchor)
		}
		s.text = fmt.Sprintf("EveryMonths(%d, %v)", n, anchor)
		s.shift = func(k int) recur.Rule {
			if a := anchor.AddMonths(k * n); a.AddMonths(-k*n) == anchor {
				return recur.EveryMonths(n, a)
			}
			return recur.EveryMonths(n, anchor)
		}
		// The latest of the days up to the anchor's that the month has.
		o.Freq, o.Bysetpos = rrule.MONTHLY, []int{-1}
		for d := min(day, 28); d <= day; d++ {
			o.Bymonthday = append(o.Bymonthday, d)
		}
	case 5:
		month, day := time.Month(1+rng.IntN(12)), 1+rng.IntN(31)
		s.text = fmt.Sprintf("Yearly(%v, %d)", month, day)
		s.shift = func(int) recur.Rule { return recur.Yearly(month, day) }
		o.Freq, o.Interval, o.Bymonth, o.Bymonthday = rrule.YEARLY, 1, []int{int(month)}, []int{day}
	}
	s.rule, s.oracle = s.shift(0), o
	return s
}

func days(r recur.Rule, from, until civil.Date) []civil.Date {
	var out []civil.Date
	for d, ok := r.Next(from); ok && d <= until; d, ok = r.Next(d + 1) {
		out = append(out, d)
	}
	return out
}

func oracleDates(t testing.TB, o rrule.ROption) []civil.Date {
	t.Helper()
	r, err := rrule.NewRRule(o)
	if err != nil {
		t.Fatal(err)
	}
	var out []civil.Date
	for _, at := range r.All() {
		out = append(out, civil.FromTime(at))
	}
	return out
}

// github.com/teambition/rrule-go is the judge, on 3,000 random rules over up to
// three and a half years: once of the options that say the same, once of our own
// RRULE text, and once of the texts of the series together.
func TestAgainstRRuleGo(t *testing.T) {
	rng := rand.New(rand.NewPCG(5545, 3))
	texts, split := 0, 0
	for range 3000 {
		s := randomSample(rng)
		from := civil.FromTime(s.oracle.Dtstart)
		want := oracleDates(t, s.oracle)
		if got := days(s.rule, from, after3); !slices.Equal(got, want) {
			t.Fatalf("%s:\n got %v\nwant %v", s.text, got, want)
		}
		if k := rng.IntN(9) - 4; s.rule != s.shift(k) {
			t.Errorf("%s: not equal to itself anchored %d intervals away", s.text, k)
		}
		series := s.rule.Series()
		if len(series) == 0 {
			continue
		}
		if _, ok := s.rule.RRule(); ok {
			texts++
		} else {
			split++
		}
		var together []civil.Date
		for _, part := range series {
			text, ok := part.RRule()
			if !ok {
				t.Fatalf("%s: part %v of the series has no RRULE", s.text, part.Words())
			}
			o, err := rrule.StrToROption(text)
			if err != nil {
				t.Fatalf("%s: %q: %v", s.text, text, err)
			}
			start, ok := part.Next(from)
			if !ok {
				t.Fatalf("%s: part %q has no day", s.text, text)
			}
			o.Dtstart, o.Until = instant(start), instant(after3)
			together = append(together, oracleDates(t, *o)...)
		}
		slices.Sort(together)
		if !slices.Equal(together, want) {
			t.Errorf("%s: series together\n got %v\nwant %v", s.text, together, want)
		}
	}
	if texts < 1000 || split < 50 {
		t.Errorf("only %d rules had a text and %d a series: the sample proves too little", texts, split)
	}
}

// Contains, Next and Fill are three separate computations; each must say what
// the others say, with and without bounds, on any horizon. (Which days are right
// is judged by rrule-go and robfig/cron in the other tests.)
func TestContainsNextAndFillAgree(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 3000 {
		s := randomSample(rng)
		r := s.rule
		if rng.IntN(3) == 0 {
			line := randomCron(rng)
			if c, _, err := recur.ParseCron(line); err == nil {
				s.text, r = line, c
			}
		}
		h := horizon.Horizon{From: begin + civil.Date(rng.IntN(300)-150), Days: rng.IntN(420)}
		if rng.IntN(2) == 0 {
			from := h.From + civil.Date(rng.IntN(500)-50)
			r = r.Between(from, from+civil.Date(rng.IntN(300)))
		}
		got := h.New()
		r.Fill(got, h)
		want := h.New()
		for i := range h.Days {
			if r.Contains(h.Date(i)) {
				want.Add(i)
			}
		}
		if !slices.Equal(got, want) {
			t.Fatalf("%s on %+v: Fill and Contains differ\n got %b\nwant %b", s.text, h, got, want)
		}
		for i := range h.Days {
			d, ok := r.Next(h.Date(i))
			if j := want.Next(i); j >= 0 && (!ok || d != h.Date(j)) || j < 0 && ok && d <= h.Last() {
				t.Fatalf("%s: Next(%v) = %v, %v; the set says %d", s.text, h.Date(i), d, ok, j)
			}
		}
	}
}

// By hand, from the rules' own words.
func TestEdges(t *testing.T) {
	jan31 := civil.Must(2027, time.January, 31)
	for _, c := range []struct {
		name string
		rule recur.Rule
		from string
		want string
	}{
		{"clipped to the month", recur.EveryMonths(1, civil.Must(2027, time.January, 30)), "2027-01-01", "2027-01 30;2027-02 28;2027-03 30;2027-04 30"},
		{"clipped in a leap year", recur.EveryMonths(1, jan31), "2028-01-31", "2028-01 31;2028-02 29;2028-03 31;2028-04 30"},
		{"31st skips short months", recur.MonthDays(bit(31), false, 1, begin), "2027-01-01", "2027-01 31;2027-03 31;2027-05 31;2027-07 31;2027-08 31"},
		{"leap day, past the common year 2100", recur.Yearly(time.February, 29), "2095-01-01", "2096-02 29;2104-02 29"},
		{"backwards from the anchor", recur.EveryDays(3, jan31), "2027-01-20", "2027-01 22,25,28,31"},
		{"before 1970", recur.EveryDays(7, jan31), "1969-12-20", "1969-12 21,28;1970-01 4"},
		{"fifth Monday", recur.MonthWeekday(5, time.Monday, 1, begin), "2027-01-01", "2027-03 29;2027-05 31;2027-08 30"},
	} {
		want := dates(t, c.want)
		if got := take(len(want), date(t, c.from), c.rule); !slices.Equal(got, want) {
			t.Errorf("%s: got %v, want %v", c.name, got, want)
		}
	}
	for name, r := range map[string]recur.Rule{
		"interval 0":              recur.EveryDays(0, begin),
		"interval too long":       recur.EveryDays(recur.MaxInterval+1, begin),
		"no weekday":              recur.Weekly(0, 1, begin),
		"no day":                  recur.MonthDays(1, false, 1, begin),
		"30 February":             recur.Yearly(time.February, 30),
		"31st of every April":     recur.MonthDays(bit(31), false, 12, civil.Must(2027, time.April, 1)),
		"29 Feb, every 4 from 27": recur.MonthDays(bit(29), false, 48, civil.Must(2027, time.February, 1)),
		"sixth Monday":            recur.MonthWeekday(6, time.Monday, 1, begin),
		"empty bounds":            recur.EveryDays(1, begin).Between(begin, begin-1),
		"no day in the bounds":    recur.EveryDays(10, begin).Between(begin+1, begin+9),
	} {
		if r != (recur.Rule{}) || !r.Never() || r.Contains(begin) {
			t.Errorf("%s: want the zero rule, got %+v", name, r)
		}
		if d, ok := r.Next(recur.MinDate); ok {
			t.Errorf("%s: Next gives %v", name, d)
		}
	}
	last, ok := recur.EveryDays(1, 0).Next(recur.MaxDate)
	if _, more := recur.EveryDays(1, 0).Next(recur.MaxDate + 1); !ok || last != recur.MaxDate || more {
		t.Errorf("the calendar's end: %v, %v, %v", last, ok, more)
	}
	if min, max := recur.MinDate.String(), recur.MaxDate.String(); min != "0001-01-01" || max != "9999-12-31" {
		t.Errorf("the calendar runs from %s to %s", min, max)
	}
}

// Shapes as RFC 5545 3.3.10 spells them; which of them are given out follows
// from the limits of Exchange that RRule's comment cites.
func TestRRuleAndWords(t *testing.T) {
	apr := civil.Must(2027, time.April, 6)
	for _, c := range []struct {
		rule   recur.Rule
		rrule  string // "" for none
		series int
		words  string
	}{
		{recur.EveryDays(1, apr), "FREQ=DAILY", 1, "every day"},
		{recur.EveryDays(3, apr), "FREQ=DAILY;INTERVAL=3", 1, "every 3 days"},
		{recur.EveryDays(1000, apr), "", 0, "every 1000 days"},
		{recur.Weekly(civil.EveryDay, 1, apr), "FREQ=DAILY", 1, "every day"},
		{recur.Weekly(set(time.Tuesday, time.Friday), 1, apr), "FREQ=WEEKLY;BYDAY=TU,FR;WKST=MO", 1, "Tue and Fri"},
		{recur.Weekly(set(time.Sunday, time.Tuesday), 2, apr), "FREQ=WEEKLY;INTERVAL=2;BYDAY=TU,SU;WKST=MO", 1, "every 2 weeks on Tue and Sun"},
		{recur.MonthDays(bit(15), false, 1, apr), "FREQ=MONTHLY;BYMONTHDAY=15", 1, "the 15th"},
		{recur.MonthDays(bit(1, 15), false, 1, apr), "", 2, "the 1st and 15th"},
		{recur.MonthDays(bit(1), true, 1, apr), "", 2, "the 1st and last day of the month"},
		{recur.MonthDays(bit(28), true, 1, apr), "", 0, "the 28th and last day of the month"},
		{recur.MonthDays(0, true, 1, apr), "FREQ=MONTHLY;BYMONTHDAY=-1", 1, "the last day of the month"},
		{recur.MonthDays(bit(31), false, 1, apr), "", 0, "the 31st"},
		{recur.MonthDays(bit(31), true, 1, apr), "FREQ=MONTHLY;BYMONTHDAY=-1", 1, "the last day of the month"},
		{recur.MonthDays(bit(31), false, 12, civil.Must(2027, time.May, 1)), "FREQ=YEARLY;BYMONTH=5;BYMONTHDAY=31", 1, "31 May each year"},
		{recur.MonthDays(bit(3), false, 3, apr), "FREQ=MONTHLY;INTERVAL=3;BYMONTHDAY=3", 1, "the 3rd of Jan, Apr, Jul and Oct"},
		{recur.MonthDays(bit(22), false, 5, apr), "FREQ=MONTHLY;INTERVAL=5;BYMONTHDAY=22", 1, "every 5 months on the 22nd"},
		{recur.MonthDays(bit(1), false, 24, apr), "FREQ=MONTHLY;INTERVAL=24;BYMONTHDAY=1", 1, "every 2 years on 1 Apr"},
		{recur.MonthWeekday(-1, time.Friday, 1, apr), "FREQ=MONTHLY;BYDAY=-1FR", 1, "the last Fri of the month"},
		{recur.MonthWeekday(2, time.Sunday, 2, apr), "FREQ=MONTHLY;INTERVAL=2;BYDAY=2SU", 1, "the 2nd Sun of Feb, Apr, Jun, Aug, Oct and Dec"},
		{recur.MonthWeekday(5, time.Sunday, 1, apr), "", 0, "the 5th Sun of the month"},
		{recur.EveryMonths(1, apr), "FREQ=MONTHLY;BYMONTHDAY=6", 1, "the 6th"},
		{recur.EveryMonths(1, civil.Must(2027, time.January, 30)), "", 0, "the 30th or else the last day of the month"},
		{recur.EveryMonths(1, civil.Must(2027, time.January, 31)), "FREQ=MONTHLY;BYMONTHDAY=-1", 1, "the last day of the month"},
		{recur.EveryMonths(12, civil.Must(2028, time.February, 29)), "FREQ=MONTHLY;INTERVAL=12;BYMONTHDAY=-1", 1, "the last day of Feb each year"},
		{recur.Yearly(time.April, 1), "FREQ=YEARLY;BYMONTH=4;BYMONTHDAY=1", 1, "1 Apr each year"},
		{recur.Yearly(time.February, 29), "", 0, "29 Feb each year"},
		{cronDays(t, "0 8 1 */3 *"), "FREQ=MONTHLY;INTERVAL=3;BYMONTHDAY=1", 1, "the 1st of Jan, Apr, Jul and Oct"},
		{cronDays(t, "0 8 30 2,4,6 *"), "", 2, "the 30th of Feb, Apr and Jun"},
		{cronDays(t, "0 8 * 3 *"), "", 0, "every day of Mar each year"},
		{cronDays(t, "0 8 * 3,4 5"), "", 0, "every Fri of Mar and Apr"},
		{cronDays(t, "0 8 13 * 5"), "", 0, "the 13th and every Fri"},
		{recur.Rule{}, "", 0, "never"},
	} {
		text, ok := c.rule.RRule()
		if ok != (c.rrule != "") || ok && text != c.rrule {
			t.Errorf("%s: RRule gives %q, %v; want %q", c.words, text, ok, c.rrule)
		}
		if got := len(c.rule.Series()); got != c.series {
			t.Errorf("%s: %d series, want %d", c.words, got, c.series)
		}
		if got := c.rule.Words(); got != c.words {
			t.Errorf("Words gives %q, want %q", got, c.words)
		}
	}
}

func TestPhase(t *testing.T) {
	// The hash itself is judged by the standard library's.
	for n := 1; n <= 30; n++ {
		for i := range 50 {
			id := fmt.Sprintf("tub-%02d/mist", i)
			h := fnv.New64a()
			h.Write([]byte(id))
			sum := h.Sum64()
			if got, want := recur.Phase(id, n), civil.Date((sum>>32^sum&0xffffffff)%uint64(n)); got != want {
				t.Fatalf("Phase(%q, %d) = %d, want %d", id, n, got, want)
			}
		}
	}
	// 400 like-named tubs spread evenly: no day has a third more than its share
	// (a bound chosen here; a fair die passes it for these n).
	for n := 2; n <= 10; n++ {
		count := make([]int, n)
		for i := range 400 {
			count[recur.Phase(fmt.Sprintf("tub-%03d/mist", i), n)]++
		}
		if most := slices.Max(count); most > 400/n*4/3 {
			t.Errorf("every %d days: %v", n, count)
		}
	}
	if recur.Phase("x", 0) != 0 {
		t.Error("no interval, no phase")
	}
}

func TestNoAllocation(t *testing.T) {
	h := horizon.Horizon{From: begin, Days: 400}
	s := h.New()
	for _, b := range benchRules {
		if n := testing.AllocsPerRun(10, func() {
			b.rule.Fill(s, h)
			for d, ok := b.rule.Next(h.From); ok && d <= h.Last(); d, ok = b.rule.Next(d + 1) {
			}
		}); n != 0 {
			t.Errorf("%s: %v allocations", b.name, n)
		}
	}
}
