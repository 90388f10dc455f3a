package slip

import (
	"strings"
	"testing"
)

// A slip is a letter or two neighbours, and nothing where two are as near. What is named by
// a figure or by one letter is another thing, however near.
func TestSlip(t *testing.T) {
	for _, c := range []struct{ written, known, want string }{
		{"temprature", "temperature humidity note", "temperature"},
		{"HUMIDITY", "temperature humidity note", "humidity"},
		{"nte", "temperature humidity note", "note"},
		{"colour", "temperature humidity note", ""},
		{"", "temperature humidity note", ""},
		{strings.Repeat("note", 30), "note", ""},
		{"emporer", "emperor", ""},
		{"hangign", "hanging", "hanging"},
		{"gnahing", "hanging", ""},
		{"of", "on off", ""},
		{"of", "off", ""},
		{"shed", "fed died", ""},
		{"fasting", "hanging", ""},
		{"water", "mated", ""},
		{"fad", "fed", ""},
		{"fde", "fed", "fed"},
		{"mite", "mites mate", ""},
		{"tub-13", "tub-12 tub-14", ""},
		{"tub-13", "tub-1", ""},
		{"tub-1", "tub-13", ""},
		{"tub13", "tub-13", "tub-13"},
		{"burrow-b", "burrow-a", ""},
		{"burow-a", "burrow-a burrow-b", "burrow-a"},
		{"burrow", "burrow-a burrow-b", ""},
		{"thermostta", "thermostat", "thermostat"},
		{"temperature-harmfull", "temperature-harmful temperature-unusual", "temperature-harmful"},
	} {
		if got := Of(c.written, strings.Fields(c.known)); got != c.want {
			t.Errorf("%q among %s: %q, want %q", c.written, c.known, got, c.want)
		}
	}
	same := func(a, b string) bool { return a[:3] == b[:3] }
	if got := Among("moltd", []string{"molted", "molts"}, same); got != "molted" {
		t.Errorf("of two that mean the same: %q", got)
	}
}
