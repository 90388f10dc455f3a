package ical

import "testing"

func TestValidURI(t *testing.T) {
	for s, want := range map[string]bool{
		// RFC 3986, 1.1.2, the examples.
		"ftp://ftp.is.co.za/rfc/rfc1808.txt":                  true,
		"ldap://[2001:db8::7]/c=GB?objectClass?one":           true,
		"mailto:John.Doe@example.com":                         true,
		"tel:+1-816-555-1212":                                 true,
		"urn:oasis:names:specification:docbook:dtd:xml:4.1.2": true,
		// RFC 3986, 2 and 3.1: what is outside the character set or has no scheme.
		"": false, "example.org/a": false, "//example.org": false, ":x": false, "1a:x": false, "https:": false,
		"https://example.org/a b": false, "https://example.org/ä": false, "https://example.org/\"": false,
		"https://example.org/\r\nSUMMARY:other": false, "https://example.org/\x00": false,
	} {
		if got := ValidURI(s); got != want {
			t.Errorf("%q: %v", s, got)
		}
	}
}

func TestValidDuration(t *testing.T) {
	for s, want := range map[string]bool{
		// RFC 5545, 3.3.6, the examples, and RFC 7986, 5.7.
		"P15DT5H0M20S": true, "P7W": true, "P1W": true, "PT6H": true, "P1D": true, "PT15M": true,
		// Against its grammar: no T, a skipped unit, a week with a day; not positive.
		"P1H": false, "PT1H20S": false, "P1W1D": false, "P": false, "PT": false, "P1DT": false, "-PT6H": false, "+PT6H": false, "PT0S": false, "": false, "PT6H\n": false,
	} {
		if got := ValidDuration(s); got != want {
			t.Errorf("%q: %v", s, got)
		}
	}
}
