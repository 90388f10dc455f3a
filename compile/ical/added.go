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

// Sourced returns a feed of ours that names an address as the one from which it is fetched
// (RFC 7986, 5.8), in place of the one that it had; "", or what is no address, for none.
// Whoever serves a feed under an address that nobody may know but the reader says it by this:
// the file has none. What is no feed is returned as it is.
func Sourced(feed []byte, address string) []byte {
	if !Ours(feed) {
		return feed
	}
	w := &lines{out: make([]byte, 0, len(feed)+len(address)+40)}
	rest, own, put := feed, false, !ValidURI(address)
	for len(rest) > 0 {
		end := bytes.IndexByte(rest, '\n') + 1
		if end == 0 {
			end = len(rest)
		}
		line := rest[:end]
		if own = bytes.HasPrefix(line, []byte(sourceName+";")) || bytes.HasPrefix(line, []byte(sourceName+":")) || own && line[0] == ' '; !own {
			begins := bytes.HasPrefix(line, []byte("BEGIN:")) && !bytes.HasPrefix(line, []byte("BEGIN:VCALENDAR"))
			if !put && (begins || bytes.HasPrefix(line, []byte(refreshName))) {
				w.typed(sourceName, "URI", address)
				put = true
			}
			if begins {
				break
			}
			w.out = append(w.out, line...)
		}
		rest = rest[end:]
	}
	return append(w.out, rest...)
}
