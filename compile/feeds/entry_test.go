package feeds_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/teambition/rrule-go"

	"vivary/compile/rounds"
	"vivary/internal/oracles"
)

// TestStartsBelongToTheirRule: the start of every repeating entry is one of its
// own days, since RFC 5545, 3.8.5.3, leaves undefined what else would mean. Judge:
// github.com/teambition/rrule-go.
func TestStartsBelongToTheirRule(t *testing.T) {
	for _, zone := range zones {
		r := compiled(t, everyKind(zone), everyState, today)
		repeating := 0
		for _, e := range entries(t, built(t, r, "care", nil)) {
			rule := property(e, "RRULE")
			if rule == "" {
				continue
			}
			repeating++
			form := "20060102T150405"
			if len(property(e, "DTSTART")) == 8 {
				form = "20060102"
			}
			start, err := time.ParseInLocation(form, property(e, "DTSTART"), r.Plan.Location)
			if err != nil {
				t.Fatal(err)
			}
			opt, err := rrule.StrToROptionInLocation(rule, r.Plan.Location)
			if err != nil {
				t.Fatalf("%s: %v", rule, err)
			}
			opt.Dtstart = start
			set, err := rrule.NewRRule(*opt)
			if err != nil {
				t.Fatalf("%s: %v", rule, err)
			}
			if first := set.After(start.Add(-time.Second), true); !first.Equal(start) {
				t.Errorf("%s: %s begins on %s, and its first day is %s", zone, rule, start, first)
			}
		}
		if repeating < 12 {
			t.Errorf("%s: only %d entries repeat", zone, repeating)
		}
	}
}

// TestNothingBeginsAtNight: from 00:00 to 03:59 clock changes leave times out or
// repeat them, and calendars disagree about what they do then.
func TestNothingBeginsAtNight(t *testing.T) {
	for _, zone := range zones {
		r := compiled(t, everyKind(zone), everyState, today)
		for _, calendar := range []string{"all", "care", "relief"} {
			for _, e := range entries(t, built(t, r, calendar, nil)) {
				if s := property(e, "DTSTART"); len(s) == len("20270215T193000") && s[9:11] < "04" {
					t.Errorf("%s begins at %s", property(e, "SUMMARY"), s)
				}
			}
		}
	}
}

// nasty is a title with what text in a calendar can break on.
var nasty = "a\nb\r, c; d\\ e: \"f\" 🦂 \u202bעקרב\u202c " + strings.TrimSpace(strings.Repeat("long und übel ", 36))

// TestNastyTitles: words with line breaks, separators, emoji, right-to-left text
// and 500 characters is read back as it is, but for the carriage return, which
// the grammar of RFC 5545, 3.1, has no place for.
func TestNastyTitles(t *testing.T) {
	if n := len([]rune(nasty)); n < 500 {
		t.Fatalf("%d characters", n)
	}
	quoted := strings.NewReplacer("\\", `\\`, "\n", `\n`, "\r", `\r`, `"`, `\"`).Replace(nasty)
	text := strings.Replace(everyKind("Europe/London"), `enclosure "alpha" {`, "enclosure \"alpha\" {\n  title = \""+quoted+"\"", 1)
	text = strings.Replace(text, `care "water" {`, "care \"water\" {\n    task = \""+quoted+"\"", 1)
	text = strings.Replace(text, `room "east" {`, "room \"east\" {\n  title = \""+quoted+"\"", 1)
	r := compiled(t, text, everyState, today)
	if r.Lives[0].Plan.Shown() != nasty {
		t.Fatalf("the plan has the title %q", r.Lives[0].Plan.Shown())
	}
	shown := strings.ReplaceAll(nasty, "\r", "")
	target := rounds.Target(find(t, r, "alpha", "water"))
	if strings.ContainsAny(target, "\r\n") || len([]rune(target)) > 60 || !strings.Contains(target, "; d\\ e: \"f\" 🦂 \u202bעקרב\u202c") {
		t.Errorf("in a list the enclosure is called %q", target)
	}
	title := strings.Join(strings.FieldsFunc(nasty, func(r rune) bool { return r <= ' ' || r == 0x7f }), " ") + ": " + target
	feed := built(t, r, "care", nil)

	cal, err := ics.ParseCalendar(bytes.NewReader(feed))
	if err != nil {
		t.Fatal(err)
	}
	found := 0
	for _, e := range cal.Events() {
		if p := e.GetProperty(ics.ComponentPropertySummary); p.Value == title {
			found++
			if l := e.GetProperty(ics.ComponentPropertyLocation); l.Value != shown {
				t.Errorf("golang-ical reads the place %q", l.Value)
			}
		}
	}
	if found != 1 {
		t.Errorf("golang-ical finds %d entries of that title", found)
	}

	want := strings.NewReplacer("\\", `\\`, "\n", `\n`).Replace(title)
	from, to := today.At(0, time.UTC), (today+40).At(0, time.UTC)
	for reader, answer := range oracles.Expand(t, [][]byte{feed}, from, to) {
		n := 0
		for _, o := range answer.Feed(0) {
			if o.Summary == want {
				n++
			}
		}
		// Every second day from 1 March to 26 March.
		if n != 13 {
			t.Errorf("%s sees that title %d times; refused: %q", reader, n, answer.Refused[0])
		}
	}
}

// crowd is a collection with very many enclosures in one round, each with a moult
// behind it where held says so, and titles of some length.
func crowd(n int, held int, title string) (plan, log string) {
	var b, l strings.Builder
	b.WriteString("collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\nroom \"east\" {\n  temperature = \"21 to 24 C\"\n}\nround \"evening\" {\n  at = \"19:30\"\n}\n" + sheet)
	for i := range n {
		b.WriteString(box(fmt.Sprintf("tub-%d", i), fmt.Sprintf(`
  title = "%s %d"
  animals "only" {
    count = 1
    stage = "juvenile"
  }
  care "look" {
    every = "day"
  }
  care "water" {
    every = "%d days"
  }
  feeding "only" {
    every      = "%d days"
    per_animal = 1
    rotate     = ["cricket small", "roach medium"]
  }
`, title, i, 1+i%3, 2+i%5)))
		if i < held {
			fmt.Fprintf(&l, "2027-02-%02d tub-%d moult\n", 10+i%5, i)
		}
	}
	return b.String(), l.String()
}

// TestTextIsShort: the text of a round stays short enough to be read on a phone,
// however many enclosures it passes, however many are held and whatever they are
// called.
func TestTextIsShort(t *testing.T) {
	for _, c := range []struct {
		n, held int
		title   string
	}{{400, 0, "Tub"}, {400, 30, "Tub"}, {30, 30, "Tub"}, {40, 30, strings.Repeat("long title ", 45)}, {1, 1, strings.Repeat("🦂", 500)}} {
		text, log := crowd(c.n, c.held, c.title)
		r := compiled(t, text, log, today)
		name := r.Plan.About.Name.V
		cal, err := ics.ParseCalendar(bytes.NewReader(built(t, r, name, nil)))
		if err != nil {
			t.Fatal(err)
		}
		longest := 0
		for _, e := range cal.Events() {
			if p := e.GetProperty(ics.ComponentPropertyDescription); p != nil {
				longest = max(longest, len(p.Value))
			}
		}
		if longest > rounds.MaxText || longest < 100 {
			t.Errorf("%d enclosures, %d held, titles of %d bytes: the longest text has %d bytes", c.n, c.held, len(c.title), longest)
		}
	}
}

// TestClocksChange: on Sunday 28 March 2027 the clocks of London go forward, on
// 31 October back. A round at 19:30 stays at 19:30 there.
func TestClocksChange(t *testing.T) {
	text, _ := crowd(1, 0, "Tub")
	cal, err := ics.ParseCalendar(bytes.NewReader(built(t, compiled(t, text, "", today), "fixtures", nil)))
	if err != nil {
		t.Fatal(err)
	}
	at := map[string]string{}
	for _, e := range cal.Events() {
		if start, err := e.GetStartAt(); err == nil && e.GetProperty(ics.ComponentPropertySummary).Value != "This calendar ends here" {
			at[start.UTC().Format("2 Jan 2006")] = start.UTC().Format("15:04")
		}
	}
	for day, want := range map[string]string{"27 Mar 2027": "19:30", "28 Mar 2027": "18:30", "30 Oct 2027": "18:30", "31 Oct 2027": "19:30"} {
		if at[day] != want {
			t.Errorf("%s at %s UTC, want %s", day, at[day], want)
		}
	}
}
