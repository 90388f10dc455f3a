package feeds

import (
	"bytes"
	"fmt"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/compile/ical"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

const (
	// MaxEntries and MaxBytes are what a feed may hold before it looks less far ahead:
	// apps are slow with more, or drop some of it (common practice, no source).
	MaxEntries = 800
	MaxBytes   = 700_000
	// Least is how many days a feed looks ahead at the least, however large it is.
	Least = 180
)

// Size is what was really written of a feed.
type Size struct {
	Entries, Bytes int
	Until          civil.Date // the first day of which it says nothing
}

// fits reports whether apps read a feed of that size well.
func (x Size) fits() bool { return x.Entries <= MaxEntries && x.Bytes <= MaxBytes }

// Sized is Bytes that says how large the feed is, and appends to dst, so that the feeds of
// many rooms can be made in one buffer, one after another. One that is too large looks
// less far ahead, by whole months, so that it does not change from day to day.
func (f *Feed) Sized(dst []byte, last *ical.Memory) ([]byte, Size, error) {
	begin, reaches := len(dst), f.reaches()
	out, size, err := f.write(dst, last, reaches[0])
	if err != nil || size.fits() || len(reaches) == 1 {
		return out, size, err
	}
	// The farthest that fits, or else the nearest of all: what lies between is halved.
	lo, hi := 1, len(reaches)-1
	for lo < hi {
		k := (lo + hi) / 2
		if out, size, err = f.write(out[:begin], last, reaches[k]); err != nil {
			return out, size, err
		}
		if size.fits() {
			hi = k
		} else {
			lo = k + 1
		}
	}
	if size.Until != reaches[lo] {
		out, size, err = f.write(out[:begin], last, reaches[lo])
	}
	return out, size, err
}

func (f *Feed) write(dst []byte, last *ical.Memory, reach civil.Date) ([]byte, Size, error) {
	feed, err := f.make(last, reach)
	if err != nil {
		return dst, Size{}, err
	}
	begin := len(dst)
	out := ical.Write(dst, feed, last, f.r.Now, f.r.Today-Kept, f.r.Today)
	return out, Size{bytes.Count(out[begin:], []byte("\r\nBEGIN:VEVENT\r\n")), len(out) - begin, reach}, nil
}

// reaches are the days up to which the feed may look, the farthest first. A series has
// its end at the end of a month, or it would change every day.
func (f *Feed) reaches() []civil.Date {
	far := f.r.Today + Days
	if f.perCare() {
		far = month(f.r.Today + compile.Ahead - 1)
	}
	out := []civil.Date{far}
	for m := month(far - 1); m >= f.r.Today+Least; m = month(m - 1) {
		out = append(out, m)
	}
	return out
}

// Noisy says of a feed of that size that it is too large even so, or nothing.
func (f *Feed) Noisy(x Size) []finding.Finding {
	if x.fits() {
		return nil
	}
	r := &check.Noisy.Rule
	out := finding.Finding{Rule: r, Severity: r.Severity, At: f.Plan.At, Source: r.Source,
		Text: fmt.Sprintf("calendar %q has %s, %s, though it looks only %s ahead", f.Name,
			wording.Count(x.Entries, "entry", "entries"), wording.Bytes(x.Bytes+999), wording.Days(int(x.Until-f.r.Today))),
		Limit: fmt.Sprintf("%d entries, %s in a feed", MaxEntries, wording.Bytes(MaxBytes)),
		Write: "a calendar for each of some rounds (rounds), or for each room (rooms)"}
	if !out.At.Written() { // a plan without calendars
		out.At = f.Plan.Title.At
	}
	if f.perCare() {
		out.At, out.Write = f.Plan.Entry.At, "entries per round, or a calendar for each room (rooms)"
		out.Edits = finding.Text(f.Plan.Entry.At, "per round")
	}
	return []finding.Finding{out}
}
