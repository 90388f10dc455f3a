package life_test

import (
	"strings"
	"testing"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/schema/civil"
)

// TestIllIsAskedLessOften: how one is that is ill is asked each day for two weeks, and then
// each week; a new line begins the days anew (common practice, no source).
func TestIllIsAskedLessOften(t *testing.T) {
	first := civil.Must(2027, 3, 1)
	for _, c := range []struct {
		log  string
		last civil.Date // that said so
	}{
		{first.String() + " box one ill\n", first},
		{first.String() + " box one ill\n" + (first + 30).String() + " box one ill\n", first + 30},
	} {
		e := lived(t, resting(), c.log, horizon.Horizon{From: first, Days: 400, Today: 60})
		var asks []life.Ask
		for _, a := range e.Groups[0].Asks {
			if strings.HasPrefix(a.Name, "ill") {
				asks = append(asks, a)
			}
		}
		if len(asks) != 2 || asks[0].Every != 1 || asks[0].From != first || asks[0].Until != c.last+14 ||
			asks[1].Every != 7 || asks[1].From != asks[0].Until || asks[1].Until != 0 || asks[0].Name == asks[1].Name {
			t.Errorf("after %q it is asked as %+v", c.log, asks)
		}
		for _, a := range asks {
			if !a.Urgent || a.Harm != life.HarmIll {
				t.Errorf("it is not asked first: %+v", a)
			}
		}
	}
}
