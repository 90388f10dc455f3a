package recur_test

import (
	"testing"
	"time"

	"github.com/teambition/rrule-go"

	"vivary/compile/horizon"
	"vivary/compile/recur"
)

// benchRules are the shapes that plans have, each with the rrule-go option that
// gives the same days.
var benchRules = []struct {
	name   string
	rule   recur.Rule
	oracle rrule.ROption
}{
	{"every-day", recur.EveryDays(1, begin), rrule.ROption{Freq: rrule.DAILY}},
	{"every-3-days", recur.EveryDays(3, begin), rrule.ROption{Freq: rrule.DAILY, Interval: 3}},
	{"every-90-days", recur.EveryDays(90, begin), rrule.ROption{Freq: rrule.DAILY, Interval: 90}},
	{"tue-fri", recur.Weekly(set(time.Tuesday, time.Friday), 1, begin), rrule.ROption{Freq: rrule.WEEKLY, Byweekday: []rrule.Weekday{rrule.TU, rrule.FR}}},
	{"every-2-weeks-tue", recur.Weekly(set(time.Tuesday), 2, begin), rrule.ROption{Freq: rrule.WEEKLY, Interval: 2, Byweekday: []rrule.Weekday{rrule.TU}}},
	{"1st-and-15th", recur.MonthDays(bit(1, 15), false, 1, begin), rrule.ROption{Freq: rrule.MONTHLY, Bymonthday: []int{1, 15}}},
	{"last-day", recur.MonthDays(0, true, 1, begin), rrule.ROption{Freq: rrule.MONTHLY, Bymonthday: []int{-1}}},
	{"last-friday", recur.MonthWeekday(-1, time.Friday, 1, begin), rrule.ROption{Freq: rrule.MONTHLY, Byweekday: []rrule.Weekday{oracleDays[5].Nth(-1)}}},
	{"every-3-months", recur.EveryMonths(3, begin), rrule.ROption{Freq: rrule.MONTHLY, Interval: 3, Bymonthday: []int{1}}},
	{"1-april", recur.Yearly(time.April, 1), rrule.ROption{Freq: rrule.YEARLY, Bymonth: []int{4}, Bymonthday: []int{1}}},
}

// BenchmarkOccurrences goes through 400 days of each shape by Next, by Fill, and
// by rrule-go's Iterator and All, whose rules are built beforehand. The four take
// turns in short batches, and the least time of each counts, so that what else
// the machine does falls out. Reported are nanoseconds for one occurrence, how
// many times longer the faster of rrule-go's two takes than Next and than Fill,
// and allocations for the 400 days.
func BenchmarkOccurrences(b *testing.B) {
	h := horizon.Horizon{From: begin, Days: 400}
	s := h.New()
	for _, c := range benchRules {
		o := c.oracle
		o.Wkst, o.Dtstart, o.Until = rrule.MO, instant(h.From), instant(h.Last())
		theirs, err := rrule.NewRRule(o)
		if err != nil {
			b.Fatal(err)
		}
		count := len(days(c.rule, h.From, h.Last()))
		if n := len(theirs.All()); n != count || n == 0 {
			b.Fatalf("%s: %d days here, %d by rrule-go", c.name, count, n)
		}
		ways := []struct {
			name string
			run  func()
		}{
			{"Next", func() {
				for d, ok := c.rule.Next(h.From); ok && d <= h.Last(); d, ok = c.rule.Next(d + 1) {
				}
			}},
			{"Fill", func() { c.rule.Fill(s, h) }},
			{"Iterator", func() {
				it := theirs.Iterator()
				for _, ok := it(); ok; _, ok = it() {
				}
			}},
			{"All", func() { theirs.All() }},
		}
		b.Run(c.name, func(b *testing.B) {
			const batch = 20
			least := [4]time.Duration{1 << 60, 1 << 60, 1 << 60, 1 << 60}
			for b.Loop() {
				for i, way := range ways {
					start := time.Now()
					for range batch {
						way.run()
					}
					least[i] = min(least[i], time.Since(start))
				}
			}
			b.ReportMetric(0, "ns/op")
			for i, way := range ways {
				b.ReportMetric(float64(least[i].Nanoseconds())/batch/float64(count), "ns/"+way.name)
				b.ReportMetric(testing.AllocsPerRun(10, way.run), "allocs/"+way.name)
			}
			library := min(least[2], least[3])
			b.ReportMetric(float64(library)/float64(least[0]), "x-Next")
			b.ReportMetric(float64(library)/float64(least[1]), "x-Fill")
		})
	}
}

// BenchmarkCollection fills 120,000 rules of mixed shapes over 400 days.
func BenchmarkCollection(b *testing.B) {
	h := horizon.Horizon{From: begin, Days: 400}
	s := h.New()
	for b.Loop() {
		for i := range 120000 {
			benchRules[i%len(benchRules)].rule.Fill(s, h)
		}
	}
}

func BenchmarkParseCron(b *testing.B) {
	for b.Loop() {
		if _, _, err := recur.ParseCron("30 19 * * 1,4"); err != nil {
			b.Fatal(err)
		}
	}
}
