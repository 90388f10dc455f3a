package sarif_test

import (
	"cmp"
	"slices"
	"strings"
	"unicode/utf8"
)

// What a reader of SARIF takes from a log, and how it finds a region in a text: written from
// the standard, and from nothing that made the log.

type logged struct {
	Runs []struct {
		Tool struct {
			Driver struct {
				Rules []struct {
					ID    string
					Short struct{ Text string } `json:"shortDescription"`
					Full  struct{ Text string } `json:"fullDescription"`
				}
			}
		}
		Results []result
	}
}

type result struct {
	RuleID       string
	RuleIndex    int
	Level        string
	Message      struct{ Text string }
	Locations    []location
	Fingerprints map[string]string `json:"partialFingerprints"`
	Suppressions *[]struct {
		Kind, Status, Justification string
		Location                    location
	}
	Fixes []struct {
		Changes []change `json:"artifactChanges"`
	}
	Properties struct{ Severity string }
}

type location struct {
	Physical *struct {
		Artifact artifact `json:"artifactLocation"`
		Region   region
	} `json:"physicalLocation"`
	Logical []struct{ Name string } `json:"logicalLocations"`
}

type artifact struct {
	URI  string
	Base string `json:"uriBaseId"`
}

type region struct {
	StartLine, StartColumn, EndLine, EndColumn, CharOffset, CharLength int
	ByteOffset, ByteLength                                             *int
}

type change struct {
	Artifact     artifact `json:"artifactLocation"`
	Replacements []struct {
		Deleted  region                `json:"deletedRegion"`
		Inserted struct{ Text string } `json:"insertedContent"`
	}
}

// lines returns the bytes of a text from which to which a region is, by lines and columns. A
// line ends with a line feed, with or without a carriage return before it.
func (r region) lines(text string) (from, to int) {
	at := func(line, column int) int {
		start := len(text) - len(strings.TrimPrefix(text, "\ufeff"))
		for range line - 1 {
			start += strings.IndexByte(text[start:], '\n') + 1
		}
		return past(text, start, column-1)
	}
	return at(r.StartLine, r.StartColumn), at(r.EndLine, r.EndColumn)
}

// characters returns them by the offset and the length.
func (r region) characters(text string) (from, to int) {
	from = past(text, len(text)-len(strings.TrimPrefix(text, "\ufeff")), r.CharOffset)
	return from, past(text, from, r.CharLength)
}

// past returns where so many code points end that begin at a byte of a text.
func past(text string, at, n int) int {
	for range n {
		_, size := utf8.DecodeRuneInString(text[at:])
		if size == 0 {
			panic("a region ends behind its text")
		}
		at += size
	}
	return at
}

// made returns a text once the replacements are made, each where it was in the text as it is.
func (c change) made(text string, find func(region, string) (from, to int)) string {
	type part struct {
		from, to int
		text     string
	}
	var parts []part
	for _, r := range c.Replacements {
		from, to := find(r.Deleted, text)
		parts = append(parts, part{from, to, r.Inserted.Text})
	}
	slices.SortStableFunc(parts, func(a, b part) int { return cmp.Compare(a.from, b.from) })
	out, done := "", 0
	for _, p := range parts {
		out, done = out+text[done:p.from]+p.text, p.to
	}
	return out + text[done:]
}
