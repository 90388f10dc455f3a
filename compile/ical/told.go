package ical

import (
	"bytes"
	"encoding/base64"
	"slices"
	"strings"

	"vivary/schema/civil"
)

// Told is what a feed showed of some things that recur: on which days from a first
// one on. A later build reads it as evidence of what people were told before the plan
// changed. The ids say nothing to anybody else.
type Told struct {
	IDs  []string // as Short makes them, in order
	From civil.Date
	Days []bool
}

// toldName is the property of ours that carries it, one line for all things with the
// same days.
const toldName = "X-VIVARY-TOLD"

// Short returns a short id of the parts, for a place where a UID would be too long.
func Short(parts ...string) string {
	return strings.ReplaceAll(UID(parts...)[:13], "-", "")
}

// told writes what the feed shows.
func (w *lines) told(all []Told) {
	for _, t := range all {
		w.begin(toldName)
		w.line = append(w.line, ";FROM="...)
		w.line = t.From.Append(w.line, "")
		w.line = append(w.line, ':')
		w.line = append(w.line, packed(t.Days)...)
		for _, id := range t.IDs {
			w.line = append(w.line, ' ')
			w.line = append(w.line, id...)
		}
		w.end()
	}
}

// packed writes days as bits, the first day lowest, by RFC 4648, 5, without padding. A
// last bit ends them.
func packed(days []bool) string {
	b := make([]byte, len(days)/8+1)
	for i, on := range append(slices.Clone(days), true) {
		if on {
			b[i/8] |= 1 << (i % 8)
		}
	}
	return base64.RawURLEncoding.EncodeToString(b)
}

func unpacked(text string) ([]bool, bool) {
	b, err := base64.RawURLEncoding.DecodeString(text)
	if err != nil {
		return nil, false
	}
	var days []bool
	for _, x := range b {
		for i := range 8 {
			days = append(days, x&(1<<i) != 0)
		}
	}
	for n := len(days) - 1; n >= 0; n-- {
		if days[n] {
			return days[:n], true
		}
	}
	return nil, false
}

// ReadTold reads what a feed of ours showed from its beginning, up to the first of its
// components. What cannot be read is passed over: it would be evidence of nothing.
func ReadTold(feed []byte) []Told {
	head := feed
	if i := bytes.Index(feed, []byte("\r\nBEGIN:")); i >= 0 {
		head = feed[:i+2]
	}
	head = bytes.ReplaceAll(head, []byte("\r\n "), nil)
	var all []Told
	for line := range bytes.Lines(head) {
		rest, ok := strings.CutPrefix(strings.TrimRight(string(line), "\r\n"), toldName+";FROM=")
		if !ok {
			continue
		}
		from, value, _ := strings.Cut(rest, ":")
		words := strings.Fields(value)
		at, dated := parseStart(from)
		if len(words) < 2 || !dated {
			continue
		}
		if days, ok := unpacked(words[0]); ok {
			all = append(all, Told{IDs: words[1:], From: at.date, Days: days})
		}
	}
	return all
}
