package compile_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/internal/hostile"
	"vivary/internal/planned"
)

// loggedIn compiles a small plan with a log of so many lines about its first enclosure.
func loggedIn(t *testing.T, n int, line string) *compile.Result {
	t.Helper()
	var log strings.Builder
	for i := range n {
		fmt.Fprintf(&log, line+"\n", i)
	}
	c, found := planned.Files(t, planned.With(hostile.Plain(2000).Plan, log.String()))
	return compile.Compile(c, found, time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC))
}

// Two lines of arrivals on one day are one question, with one name in the calendars.
func TestArrivalsOfOneDayAreOneQuestion(t *testing.T) {
	r := loggedIn(t, 3, `2026-11-02 tub-0 arrived 2 "%d"`)
	asked := 0
	for _, f := range r.Findings {
		if f.Rule.ID == "one-identity" {
			t.Error(f.Text)
		}
		if strings.HasPrefix(f.Text, "animals in quarantine and others were put together") {
			asked++
		}
	}
	if asked != 1 || len(r.Lives[0].Asks) == 0 {
		t.Errorf("asked %d times", asked)
	}
}

// More groups than are followed are told of once, and the others stay.
func TestGroupsOfALogAreBounded(t *testing.T) {
	r := loggedIn(t, 2000, `2026-11-02 tub-0 separated 1 to tub-1 "%d"`)
	told := 0
	for _, f := range r.Findings {
		if strings.Contains(f.Text, "more groups of animals") {
			told++
		}
	}
	if n := len(r.Lives[0].Groups); told != 1 || n > 300 || n < 100 {
		t.Errorf("told %d times, and %d groups", told, n)
	}
}
