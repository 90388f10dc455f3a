package compile_test

import "testing"

// Figures are kept in the unit of their source, and half a degree is what becomes of one
// that is turned into the other scale: 90 F is not too warm where a source says 70 to 90 F.
func TestHalfADegree(t *testing.T) {
	for warm, want := range map[string]string{"90 F": "", "32.5 C": "", "91 F": "caution", "33 C": "caution", "32 C": ""} {
		text := dwelling + box("colony", "pandinus-imperator", "3", "  climate {\n    warm_end = \""+warm+"\"\n    cool_end = \"25 C\"\n  }\n")
		if got := worst(on(t, "2027-03-02", text, ""), "temperature-unusual"); got != want {
			t.Errorf("%s: %q, want %q", warm, got, want)
		}
	}
}
