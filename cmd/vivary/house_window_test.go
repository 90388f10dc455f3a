package main

import (
	"bytes"

	"vivary/schema/civil"
)

// window leaves out of a feed what begins once and on none of the days from one until
// another, so that a year is read in a minute. What repeats stays, and with it what is
// told of one of its days. Now and then a whole feed is read.
func window(feed []byte, from, until civil.Date) []byte {
	first, last := compact(from-2), compact(until+1)
	const begin, end = "BEGIN:VEVENT\r\n", "END:VEVENT\r\n"
	var out bytes.Buffer
	for {
		i := bytes.Index(feed, []byte(begin))
		if i < 0 {
			break
		}
		out.Write(feed[:i])
		n := i + bytes.Index(feed[i:], []byte(end)) + len(end)
		if e := feed[i:n]; bytes.Contains(e, []byte("\r\nRRULE:")) || bytes.Contains(e, []byte("\r\nRECURRENCE-ID")) || begins(e, first, last) {
			out.Write(e)
		}
		feed = feed[n:]
	}
	out.Write(feed)
	return out.Bytes()
}

// begins reports whether an entry begins on one of the days from first to last, and
// true where it does not say.
func begins(e []byte, first, last string) bool {
	m := dated.FindSubmatch(bytes.ReplaceAll(e, []byte("\r\n"), []byte("\n")))
	return m == nil || string(m[1]) >= first && string(m[1]) <= last
}
