package ical

import (
	"bytes"
	"time"
)

// With returns a feed of ours with one more all-day entry, as of a moment, in place of the
// end of the feed. Whoever serves it says by it what the feed itself cannot know: that it is
// no longer built. What is no feed is returned as it is.
func With(feed []byte, e *Entry, sequence int, at time.Time) []byte {
	const end = "END:VCALENDAR\r\n"
	if !Ours(feed) || !bytes.HasSuffix(feed, []byte(end)) {
		return feed
	}
	w := &lines{out: bytes.Clone(feed[:len(feed)-len(end)])}
	if i := bytes.Index(w.out, []byte("\r\n"+madeName+":")); i >= 0 && i < bytes.Index(w.out, []byte("\r\nBEGIN:")) {
		copy(w.out[i+len("\r\n"+madeName+":"):], stamp(at))
	}
	w.event(&Feed{}, e, revision{sequence, stamp(at)})
	return append(w.out, end...)
}
