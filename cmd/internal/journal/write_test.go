package journal

import (
	"testing"

	"vivary/plan/finding"
)

// What cannot be so is not written; what is only bad is.
func TestSlips(t *testing.T) {
	for want, rule := range map[bool]*finding.Rule{true: {ID: "x", Severity: finding.Caution, Slip: true}, false: {ID: "y", Severity: finding.Error}} {
		if got := slips(finding.Finding{Rule: rule}); got != want {
			t.Errorf("%s: %v", rule.ID, got)
		}
	}
}
