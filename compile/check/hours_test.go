package check_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/internal/planned"
)

// hours are the rules about how long somebody works.
var hours = []string{"rest-short", "week-too-long", "weeks-too-long", "break-short", "rest-day-worked"}

// TestHours is against what directive 2003/88/EC has, as figures that a house sets: off at 22:00
// and on at 08:00 are 10 h, less than 11; and 830 h in 17 weeks, 48.8 a week, are more than 48; 6 h 15 without a break are more than 6 h.
func TestHours(t *testing.T) {
	for _, x := range []struct {
		keeper, late, early, minutes string
		rule, says                   string
	}{
		{`rest = "11 h"`, "21:30", "08:00", "30 min", "rest-short", "about 10 h: under the figure you set"},
		{`rest = "11 h"`, "20:00", "08:00", "30 min", "", ""},
		{`week = "48 h"`, "20:00", "08:00", "209 min", "week-too-long", "up to about 48.8 h a week: over the figure you set"},
		{`week = "49 h"`, "20:00", "08:00", "206 min", "", ""},
		{`mean_week = "48 h"`, "20:00", "08:00", "206 min", "weeks-too-long", "a week on average over 17 weeks: over the figure you set"},
		{"mean_week = \"40 h\"\n  mean_over = 4", "20:00", "08:00", "206 min", "weeks-too-long", "over 4 weeks"},
		{`mean_week = "49 h"`, "20:00", "08:00", "206 min", "", ""},
		{`break = "20 min"`, "20:00", "08:00", "375 min", "break-short", "up to about 6.3 h without a break of 20 min: over"},
		{`break = "20 min"`, "20:00", "08:00", "358 min", "", ""},
		{"break = \"20 min\"\n  break_after = \"5 h\"", "20:00", "08:00", "310 min", "break-short", "5.2 h"},
		{`break = "20 min"`, "13:00", "08:00", "285 min", "break-short", "9.8 h"},
		{`break = "10 min"`, "13:00", "08:00", "285 min", "", ""},
		{`off = ["sun"]`, "20:00", "08:00", "30 min", "rest-day-worked", "Lead has work on Sundays, on rest days"},
	} {
		text, _ := check.Example("keeper \"lead\" {\n  " + x.keeper + "\n}\nround \"evening\" {\n  at = \"" + x.late + "\"\n  keeper = \"lead\"\n}\nround \"morning\" {\n  at = \"" + x.early + "\"\n  keeper = \"lead\"\n}\n")
		at := strings.LastIndex(text, "}\n")
		for _, care := range []string{"look", "heat", "water", "spot-clean", "device-test", "dish", "mist", "moisture", "deep-clean"} {
			text = text[:at] + "care \"" + care + "\" {\n  off     = true\n  because = \"of this test\"\n}\n" + text[at:]
		}
		text = text[:at] + "care \"round\" {\n  kind    = \"other\"\n  task    = \"the rounds\"\n  every   = \"day\"\n  round   = [\"morning\", \"evening\"]\n  minutes = \"" + x.minutes + "\"\n}\nfeeding \"adults\" {\n  off     = true\n  because = \"of this test\"\n}\n" + text[at:]
		c, found := planned.Files(t, planned.With(text, ""))
		r := compile.Compile(c, found, time.Date(2026, 11, 25, 9, 0, 0, 0, time.UTC))
		if r.Roster == nil {
			t.Fatalf("%+v\n%s", r.Findings, text)
		}
		got := ""
		for _, f := range r.Findings {
			if slices.Contains(hours, f.Rule.ID) {
				got += f.Rule.ID + ": " + f.Text + "\n"
			}
			if f.Severity.Refuses() && f.Rule.ID != "device-untested" && !strings.HasSuffix(f.Rule.ID, "-gap") && f.Rule.ID != "lid-unchecked" {
				t.Logf("%s: %s", f.Rule.ID, f.Text)
			}
		}
		if x.rule == "" && got != "" || x.rule != "" && (!strings.HasPrefix(got, x.rule+": ") || !strings.Contains(got, x.says)) {
			t.Errorf("%+v: %q", x, got)
		}
	}
}
