package journal

import (
	"strings"
	"testing"

	"vivary/compile/life"
	"vivary/schema"
)

// Each state is said of one animal, of some of a group, and when it is over. What is
// put before its words must fit all of them: "some are may be gravid" did not.
func TestStatesAreSaidInSentences(t *testing.T) {
	for _, s := range schema.States {
		for _, got := range []string{over(s), held(&life.Hold{State: s, Part: true})} {
			for _, bad := range []string{"longer may", "are may", "are young", "are after"} {
				if strings.Contains(got, bad) {
					t.Errorf("%s: %q", s.Name, got)
				}
			}
		}
	}
}
