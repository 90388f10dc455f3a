// Package served says how a calendar goes out to whoever subscribed, whichever way it is
// served: by vivary itself, by a web server or by object storage. It opens no connection
// and no file.
package served

import (
	"bytes"
	"compress/gzip"
	"strconv"
	"time"

	"vivary/compile/ical"
)

// ContentType is that of a calendar (RFC 5545, 8.1).
const ContentType = "text/calendar; charset=utf-8"

// part of the time after which a calendar asks to be fetched anew is how long a copy may
// be handed out without asking: who asks as often as the calendar says has it at most so
// much older, and who asks more often does not get yesterday's.
const part = 12

// outage is how long a copy may be handed out while the server does not answer (RFC 5861,
// 4): a phone that shows the calendar of yesterday is better off than one with an error.
const outage = 24 * time.Hour

// CacheControl returns what the header of that name says of a calendar: from its
// REFRESH-INTERVAL, as of one of six hours where it has none.
func CacheControl(calendar []byte) string {
	refresh := ical.RefreshOf(calendar)
	if refresh == 0 {
		refresh = 6 * time.Hour
	}
	age := max(time.Minute, refresh/part)
	return "public, max-age=" + seconds(age) + ", stale-if-error=" + seconds(outage)
}

func seconds(d time.Duration) string { return strconv.Itoa(int(d / time.Second)) }

// Gzip compresses a calendar as far as it goes. Equal calendars have equal bytes: the
// head has neither a time nor a name (RFC 1952, 2.3).
func Gzip(text []byte) []byte {
	var out bytes.Buffer
	w, _ := gzip.NewWriterLevel(&out, gzip.BestCompression) // a level that there is
	_, _ = w.Write(text)
	_ = w.Close() // a buffer takes everything
	return out.Bytes()
}
