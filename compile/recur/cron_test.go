package recur_test

import (
	"errors"
	"fmt"
	"math/bits"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"github.com/robfig/cron/v3"

	"vivary/compile/recur"
	"vivary/schema/civil"
)

// sameAsLibrary asks robfig/cron/v3 for every time of the line from begin on,
// until the given day, in UTC so that no clock change enters.
func sameAsLibrary(t testing.TB, line string, until civil.Date) {
	t.Helper()
	rule, times, err := recur.ParseCron(line)
	if err != nil {
		t.Fatal(err)
	}
	schedule, err := cron.ParseStandard(line)
	if err != nil {
		t.Fatalf("%q: taken here, but %v", line, err)
	}
	at := begin.At(0, time.UTC).Add(-time.Second)
	for d, ok := rule.Next(begin); ok && d <= until; d, ok = rule.Next(d + 1) {
		for _, c := range times {
			at = schedule.Next(at)
			if want := d.At(c, time.UTC); !at.Equal(want) {
				t.Fatalf("%q: here %v, robfig/cron %v", line, want, at)
			}
		}
	}
	if at = schedule.Next(at); !at.IsZero() && civil.FromTime(at) <= until {
		t.Fatalf("%q: robfig/cron goes on at %v", line, at)
	}
}

func TestCronAgainstLibrary(t *testing.T) {
	until := begin + 730
	for _, line := range strings.Split(strings.TrimSpace(cronLines), "\n") {
		sameAsLibrary(t, line, until)
	}
	rng := rand.New(rand.NewPCG(3, 30))
	taken := 0
	for range 500 {
		line := randomCron(rng)
		if _, _, err := recur.ParseCron(line); err == nil {
			taken++
			sameAsLibrary(t, line, until)
		}
	}
	if taken < 250 {
		t.Errorf("only %d random lines were taken", taken)
	}
}

const cronLines = `
30 19 * * *
0 8 * * ?
0 8 ? * 1
15 7,19 * * *
0 6-22/2 * * *
0,30 8-12 * * *
*/20 9 * * *
0 8 * * 0
0 8 * * SUN
0 8 * * sat,sun
0 8 * * 1-5
0 8 * * MON-FRI
0 8 * * mon-Fri/2
0 8 * * */2
0 8 * * */1
0 8 * * 0-6
0 8 * * 1,3-5
0 8 1 * *
0 8 1,15 * *
0 8 28-31 * *
0 8 29 * *
0 8 30 * *
0 8 31 * *
0 8 */2 * *
0 8 */13 * *
0 8 5/10 * *
0 8 1-31 * *
0 8 1-31/3 * *
0 8 */1 * *
0 8 1 1 *
0 8 1 JAN,jul *
0 8 1 */3 *
0 8 1 */2 *
0 8 1 2-12/2 *
0 8 1 */6 *
0 8 1 5,10 *
0 8 29 2 *
0 8 30 2,4 *
0 8 * 3 *
0 8 * mar-may *
0 8 * 6-8 4
0 8 13 * 5
0 8 */13 * 5
0 8 1-31 * 5
0 8 */1 * 5
0 8 */2 * */2
0 8 13 * */1
0 8 13 * 0-6
0 8 ?/2 * 5
0 8 *,5 * 5
0 8 1 6 1
0 8 1,15 6-8 MON,FRI
0 8 31 2 1
0 23 31 12 *
0 0 1 1 0`

// How robfig/cron joins day of month and day of week, in words; its own test
// file (spec_test.go, TestActivation) has "* * 1,15 * Sun" and its kin.
func TestCronEitherOr(t *testing.T) {
	fri := civil.Must(2027, time.August, 13) // a Friday
	for line, want := range map[string][4]bool{
		// Friday the 13th, Saturday the 14th, Friday the 20th, Friday 13 Aug as 1+13-step
		"0 8 13 * 5":   {true, false, true, false},
		"0 8 */13 * 5": {true, true, true, true}, // 1, 14, 27 or Friday
		"0 8 1-31 * 5": {true, true, true, true},
		"0 8 * * 5":    {true, false, true, false},
		"0 8 */1 * 5":  {true, false, true, false},
		"0 8 13 * *":   {true, false, false, false},
		"0 8 13 * */1": {true, false, false, false},
	} {
		r, _, err := recur.ParseCron(line)
		if err != nil {
			t.Fatal(err)
		}
		// the last is Sunday 1 August
		if got := [4]bool{r.Contains(fri), r.Contains(fri + 1), r.Contains(fri + 7), r.Contains(fri - 12)}; got != want {
			t.Errorf("%s: %v, want %v", line, got, want)
		}
	}
}

func TestCronRefusals(t *testing.T) {
	for line, want := range map[string]string{
		"@every 72h":                   "every = \"3 days\"",
		"@daily":                       "write the time",
		"@reboot":                      "write five fields",
		"TZ=UTC 0 8 * * *":             "zone",
		"CRON_TZ=Asia/Tokyo 0 8 * * *": "zone",
		"TZ=":                          "zone",
		"0 8 * * 7":                    "Sunday is 0 or SUN",
		"0 8 * * 5-7":                  "5,6,0",
		"0 8 * * 5-1":                  "upward",
		"0 8 L * *":                    "day of month \"L\"",
		"0 25 * * *":                   "0 to 23",
		"0 8 * FOO *":                  "JAN to DEC",
		"0 8 , * *":                    "no value",
		"0 8 TZ= * *":                  "day of month",
		"* * * * *":                    "1440 times a day",
		"*/15 0-6 * * *":               "28 times a day",
		"0 8 30 2 *":                   "no such day",
		"0 8 31 2,4,6,9,11 *":          "no such day",
		"0 0 8 * * *":                  "six fields",
		"0 8 * *":                      "4 fields",
		"":                             "0 fields",
	} {
		_, _, err := recur.ParseCron(line)
		var refused *recur.CronError
		if !errors.As(err, &refused) || !strings.Contains(refused.Reason, want) {
			t.Errorf("%q: %v, want %q", line, err, want)
		}
		if notes := recur.CronNotes(line); notes != nil {
			t.Errorf("%q is refused, and has notes %q", line, notes)
		}
	}
	if _, times, err := recur.ParseCron("0 * * * *"); err != nil || len(times) != 24 {
		t.Errorf("24 times a day are allowed: %v, %v", times, err)
	}
}

func TestCronNotes(t *testing.T) {
	for line, want := range map[string]string{
		"0 8 * * 1":     "",
		"0 8 1,15 * *":  "",
		"0 8 */3 * *":   "every = \"3 days\"",
		"0 8 1/4 * *":   "every = \"4 days\"",
		"0 8 13 * 5":    "the 13th and every Fri",
		"0 8 */1 * 5":   "",
		"0 8 31 * *":    "no 31st",
		"0 8 29-31 * *": "no 29th",
	} {
		notes := recur.CronNotes(line)
		if want == "" && len(notes) != 0 || want != "" && (len(notes) != 1 || !strings.Contains(notes[0], want)) {
			t.Errorf("%q: notes %q, want %q", line, notes, want)
		}
	}
	if notes := recur.CronNotes("0 8 */2 * 5"); len(notes) != 2 {
		t.Errorf("both notes: %q", notes)
	}
}

func randomCron(rng *rand.Rand) string {
	item := func(lo, hi int) string {
		a := lo + rng.IntN(hi-lo+1)
		b := a + rng.IntN(hi-a+1)
		switch rng.IntN(6) {
		case 0:
			return fmt.Sprintf("%d-%d", a, b)
		case 1:
			return fmt.Sprintf("%d-%d/%d", a, b, 1+rng.IntN(4))
		case 2:
			return fmt.Sprintf("*/%d", 1+rng.IntN(hi))
		case 3:
			return fmt.Sprintf("%d/%d", a, 1+rng.IntN(hi))
		}
		return fmt.Sprint(a)
	}
	field := func(lo, hi int) string {
		switch rng.IntN(5) {
		case 0, 1:
			return "*"
		case 2:
			return item(lo, hi) + "," + item(lo, hi)
		}
		return item(lo, hi)
	}
	return fmt.Sprintf("%d %s %s %s %s", rng.IntN(60), item(0, 23), field(1, 31), field(1, 12), field(0, 6))
}

func FuzzParseCron(f *testing.F) {
	for _, line := range strings.Split(strings.TrimSpace(cronLines), "\n") {
		f.Add(line)
	}
	for _, line := range []string{"@every 1h", "TZ=", "CRON_TZ=UTC 0 8 * * *", "0 8 * * 7", "* * * * *", "0 8 30 2 *", ", , , , ,", "1-2-3 / - + \x00"} {
		f.Add(line)
	}
	f.Fuzz(func(t *testing.T, line string) {
		_, times, err := recur.ParseCron(line)
		recur.CronNotes(line)
		if err == nil {
			if len(times) == 0 || len(times) > 24 {
				t.Fatalf("%q: %d times", line, len(times))
			}
			sameAsLibrary(t, strings.TrimSpace(line), begin+730)
			return
		}
		var refused *recur.CronError
		if !errors.As(err, &refused) || refused.Reason == "" {
			t.Fatalf("%q: %v", line, err)
		}
		// What the library takes may be refused only for the reasons promised.
		trimmed := strings.TrimSpace(line)
		if strings.HasPrefix(trimmed, "@") || strings.Contains(strings.ToUpper(trimmed), "TZ=") {
			return
		}
		schedule, err := cron.ParseStandard(trimmed)
		if err != nil {
			return
		}
		s := schedule.(*cron.SpecSchedule)
		if bits.OnesCount64(s.Minute<<1)*bits.OnesCount64(s.Hour<<1) > 24 || s.Dom == 0 || s.Month == 0 || s.Dow == 0 {
			return
		}
		if next := schedule.Next(instant(begin)); !next.IsZero() {
			t.Fatalf("%q refused (%s), but robfig/cron has %v", line, refused.Reason, next)
		}
	})
}
