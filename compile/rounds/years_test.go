package rounds

import (
	"testing"

	"vivary/schema/civil"
)

// A day is told with its year where the entry is of another time, and without it where
// nobody could take it for a day of another year.
func TestYears(t *testing.T) {
	on := func(s string) civil.Date {
		d, err := civil.Parse(s)
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	for _, c := range []struct{ text, day, want string }{
		{"since 20 Feb 2027", "2027-03-01", "since 20 Feb"},
		{"since 20 Feb 2027", "2027-12-17", "since 20 Feb"},      // 300 days after it
		{"since 20 Feb 2027", "2027-12-18", "since 20 Feb 2027"}, // 301
		{"by Sat 20 Feb 2027", "2026-04-25", "by Sat 20 Feb 2027"},
		{"by Sat 20 Feb 2027", "2026-04-26", "by Sat 20 Feb"},
		{"20 Feb 2026 to 20 Feb 2027", "2027-01-01", "20 Feb 2026 to 20 Feb"},
		{"31 Feb 2027, 20 February 2027, 120 Feb 2027", "2027-03-01", "31 Feb 2027, 20 February 2027, 120 Feb 2027"},
	} {
		if got := yearless(c.text, on(c.day)); got != c.want {
			t.Errorf("%s on %s: %q, want %q", c.text, c.day, got, c.want)
		}
	}
	if got := turns("since 20 Feb 2027, 3 May"); len(got) != 2 || got[0] != on("2026-04-26") || got[1] != on("2027-12-18") {
		t.Errorf("it is told otherwise from %v on", got)
	}
}
