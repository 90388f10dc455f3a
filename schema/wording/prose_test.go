package wording_test

import (
	"testing"

	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Texts for everybody are told in the keeper's units, and what is no value with a unit stays
// as it is.
func TestProse(t *testing.T) {
	for _, c := range []struct{ text, us string }{
		{"27 to 32 C warm and 21 to 26 C cool (K2)", "81 to 90 F warm and 70 to 79 F cool (K2)"},
		{"24 to 29.5 C (K11)", "75 to 85.1 F (K11)"},
		{"reached 89 °C", "reached 192 F"},
		{"comes within 2 K of it", "comes within 3.6 F of it"},
		{"from 20 x 30 cm.", "from 7.9 x 12 in."},
		{"wild burrows reach 1.8 m (K20)", "wild burrows reach 5.9 ft (K20)"},
		{"From 25 g for an adult", "From 0.88 oz for an adult"},
		{"1290 cm2 (10 gal) of K2", "200 sq in (10 gal) of K2"},
		{"36 L (K6), 38 L (K2)", "9.5 gal (K6), 10 gal (K2)"},
		{"K20 gives P19, 4 of 5, one in 10, L4 and 2i", "K20 gives P19, 4 of 5, one in 10, L4 and 2i"},
		{"seen 2026-11-28; doi 10.1093/zoolinnean/zlz046", "seen 2026-11-28; doi 10.1093/zoolinnean/zlz046"},
		{"planned at 97 F", "planned at 97 F"},
		{"70 to 78 F (21 to 26 C)", "70 to 78 F"},
		{"5.4 to 14 F (3 to 8 C), more or less", "5.4 to 14 F, more or less"},
		{"70 F (K2, 21 C by night)", "70 F (K2, 70 F by night)"},
		{"half die at -4.5 and -4.7 C, at -1.4 to -4.6 C and within 20-30 C", "half die at 23.9 and 23.5 F, at 29.5 to 23.7 F and within 68-86 F"},
		{"from 04:00 to 23:59, J. Arachnol. 18:13-18", "from 4:00 am to 11:59 pm, J. Arachnol. 18:13-18"},
		{"", ""},
	} {
		if got := wording.Prose(c.text, quantity.Customary); got != c.us {
			t.Errorf("%q is told as %q, want %q", c.text, got, c.us)
		}
		if got := wording.Prose(c.text, quantity.Units{}); got != c.text {
			t.Errorf("to nobody %q is told as %q", c.text, got)
		}
	}
	for text, want := range map[string]string{
		"K2 has 70 to 78 F": "K2 has 21 to 26 C", "27 to 32 C": "27 to 32 C", "2 K less": "2 C less", "2 in a box": "2 in a box", "a tank of 10 gal": "a tank of 38 L",
	} {
		if got := wording.Prose(text, quantity.Metric); got != want {
			t.Errorf("%q is told as %q, want %q", text, got, want)
		}
	}
}

// Noon and midnight are twelve, and a clock of 24 hours stays as it is.
func TestClock(t *testing.T) {
	for c, want := range map[int]string{0: "12:00 am", 1: "12:01 am", 4 * 60: "4:00 am", 719: "11:59 am", 720: "12:00 pm", 19*60 + 30: "7:30 pm", 1439: "11:59 pm"} {
		if got := wording.Clock(clock(c), quantity.Customary); got != want {
			t.Errorf("%d: %s, want %s", c, got, want)
		}
		if got := wording.Clock(clock(c), quantity.Metric); got != clock(c).String() {
			t.Errorf("%d: %s", c, got)
		}
	}
}

func clock(minutes int) civil.Clock { return civil.Clock(minutes) }
