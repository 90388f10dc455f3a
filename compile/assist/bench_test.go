package assist

import (
	"strings"
	"testing"

	"vivary/internal/generated"
)

// BenchmarkComplete measures the slowest places: names of enclosures, of species, a body, a line
// of a log, in a collection of 1,000 enclosures, on a page of 40 enclosures.
func BenchmarkComplete(b *testing.B) {
	files := generated.Collection(1000, "Europe/London")
	r := compiled(b, files)
	page := files["rooms/room-20.care.hcl"]
	for _, c := range []struct{ name, file, end string }{
		{"body", "rooms/room-20.care.hcl", "\nenclosure \"x\" {\n  "},
		{"outermost", "rooms/room-20.care.hcl", "\nencl"},
		{"species", "rooms/room-20.care.hcl", "\nenclosure \"x\" {\n  species = \""},
		{"enclosures", "rooms/room-20.care.hcl", "\ncalendar \"x\" {\n  enclosures = [\"tub-1"},
		{"prey", "rooms/room-20.care.hcl", "\nenclosure \"x\" {\n  feeding \"y\" {\n    rotate = [\""},
		{"rules", "rooms/room-20.care.hcl", "\nenclosure \"tub-800\" {\n  accept \""},
		{"source", "rooms/room-20.care.hcl", "\nspecies \"x\" {\n  source = [\""},
		{"unit", "rooms/room-20.care.hcl", "\nroom \"x\" {\n  temperature = \"20 to 22 "},
		{"zone", "rooms/room-20.care.hcl", "\ncollection \"x\" {\n  time_zone = \"Eur"},
		{"log enclosures", "a.care.log", "2026-11-30 "},
		{"log word", "a.care.log", "2026-11-30 tub-800 "},
		{"log done", "a.care.log", "2026-11-30 tub-800 done "},
		{"log prey", "a.care.log", "2026-11-30 tub-800 fed "},
	} {
		text := c.end
		if c.file != "a.care.log" {
			text = page + page[:len(page)/2] + text
		}
		p := &Page{Name: c.file, Text: []byte(text), Result: r}
		b.Run(c.name, func(b *testing.B) {
			n := 0
			for b.Loop() {
				n = len(p.Complete(len(text)))
			}
			if n == 0 {
				b.Fatal("no offers")
			}
			b.ReportMetric(float64(n), "offers")
			b.ReportMetric(float64(len(text)), "bytes")
		})
	}
}

// BenchmarkHover measures what takes longest to be told.
func BenchmarkHover(b *testing.B) {
	files := generated.Collection(1000, "Europe/London")
	r := compiled(b, files)
	page := files["rooms/room-20.care.hcl"]
	for _, c := range []struct{ name, file, text, at string }{
		{"attribute", "rooms/room-20.care.hcl", page, "warm_end"},
		{"quantity", "rooms/room-20.care.hcl", page, "27 to"},
		{"enclosure", "rooms/room-20.care.hcl", page, "tub-800"},
		{"care", "rooms/room-20.care.hcl", page, "mist\" {"},
		{"species", "rooms/room-20.care.hcl", page, "pandinus"},
		{"round", "rooms/room-20.care.hcl", page, "round-20\" {"},
		{"room", "rooms/room-20.care.hcl", page, "room-20\" {"},
		{"feeder", "rooms/room-20.care.hcl", page, "cricket"},
		{"log word", "a.care.log", "2026-11-30 tub-800 died", "died"},
		{"log enclosure", "a.care.log", "2026-11-30 tub-800 died", "tub-800"},
	} {
		p := &Page{Name: c.file, Text: []byte(c.text), Result: r}
		at := strings.Index(c.text, c.at)
		b.Run(c.name, func(b *testing.B) {
			for b.Loop() {
				if _, _, said := p.Hover(at); said == "" {
					b.Fatal("nothing is said")
				}
			}
		})
	}
}
