package served

import (
	"bytes"
	"compress/gzip"
	"io"
	"strings"
	"testing"
)

func calendar(refresh string) []byte {
	return []byte("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n" + refresh + "BEGIN:VEVENT\r\nREFRESH-INTERVAL;VALUE=DURATION:PT1M\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n")
}

// A copy is handed out for a part of the time after which the calendar is fetched anew,
// never longer than that.
func TestCacheControl(t *testing.T) {
	for refresh, want := range map[string]string{
		"REFRESH-INTERVAL;VALUE=DURATION:PT6H\r\n":      "max-age=1800,",
		"REFRESH-INTERVAL;VALUE=DURATION:PT1H30M\r\n":   "max-age=450,",
		"REFRESH-INTERVAL;VALUE=DURATION:P1DT12H\r\n":   "max-age=10800,",
		"REFRESH-INTERVAL;VALUE=DURATION:P1W\r\n":       "max-age=50400,",
		"REFRESH-INTERVAL;VALUE=DURATION:PT5M\r\n":      "max-age=60,",
		"REFRESH-INTERVAL;VALUE=DURATION:P1H\r\n":       "max-age=1800,",
		"REFRESH-INTERVAL;VALUE=DURATION:\r\n":          "max-age=1800,",
		"REFRESH-INTERVAL;VALUE=DURATION:P9999999W\r\n": "max-age=1800,",
		"": "max-age=1800,",
	} {
		if got := CacheControl(calendar(refresh)); !strings.HasPrefix(got, "public, "+want) || !strings.HasSuffix(got, "stale-if-error=86400") {
			t.Errorf("%q: %s", refresh, got)
		}
	}
}

// What is compressed is the calendar, in the same bytes each time.
func TestGzip(t *testing.T) {
	text := bytes.Repeat(calendar(""), 500)
	packed := Gzip(text)
	if !bytes.Equal(packed, Gzip(text)) || len(packed) > len(text)/20 {
		t.Errorf("%d bytes of %d", len(packed), len(text))
	}
	r, err := gzip.NewReader(bytes.NewReader(packed))
	if err != nil || !r.ModTime.IsZero() || r.Name != "" {
		t.Fatal(err, r)
	}
	if back, err := io.ReadAll(r); err != nil || !bytes.Equal(back, text) {
		t.Error(err)
	}
}
