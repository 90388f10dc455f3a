package serve

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/base64"
	"io"
	"net/http"
	"strconv"
	"strings"
	"time"

	"vivary/cmd/internal/served"
)

// feed is a calendar as it goes out. It is kept compressed: most who fetch calendars take it
// so, and ten thousand of them are to be served from little memory.
type feed struct {
	name   string
	packed []byte
	size   int // of what is packed

	// The headers are made once. A strong validator is of the bytes that are sent (RFC 9110,
	// 8.8.3), so that what is compressed has one of its own.
	plain, gzip          headers
	modified             time.Time
	kind, control, named []string
}

// headers are those that differ with how the calendar is sent.
type headers struct {
	tag    string
	tags   []string
	length []string
}

// newFeed makes a feed of a calendar's bytes.
func newFeed(name string, text []byte, modified time.Time) *feed {
	f := &feed{name: name, packed: served.Gzip(text), size: len(text), modified: modified.UTC().Truncate(time.Second)}
	f.kind, f.control = []string{served.ContentType}, []string{served.CacheControl(text)}
	f.named = []string{`inline; filename="` + name + `"`}
	sum := sha256.Sum256(text)
	tag := base64.RawURLEncoding.EncodeToString(sum[:12])
	f.plain = newHeaders(tag, f.size)
	f.gzip = newHeaders(tag+"-gzip", len(f.packed))
	return f
}

func newHeaders(tag string, length int) headers {
	tag = `"` + tag + `"`
	return headers{tag, []string{tag}, []string{strconv.Itoa(length)}}
}

var (
	gzipped = []string{"gzip"}
	varies  = []string{"Accept-Encoding"}
)

// serve answers a request for the feed, and returns the status and how many bytes were sent.
func (f *feed) serve(w http.ResponseWriter, r *http.Request) (status, sent int) {
	h := w.Header()
	as, packed := &f.plain, takesGzip(r.Header)
	if packed {
		as = &f.gzip
	}
	h["Etag"], h["Cache-Control"], h["Vary"] = as.tags, f.control, varies
	h["Last-Modified"] = []string{f.modified.Format(http.TimeFormat)}
	if fresh(r.Header, as.tag, f.modified) {
		w.WriteHeader(http.StatusNotModified)
		return http.StatusNotModified, 0
	}
	h["Content-Type"], h["Content-Length"], h["Content-Disposition"] = f.kind, as.length, f.named
	if packed {
		h["Content-Encoding"] = gzipped
	}
	if r.Method == http.MethodHead {
		w.WriteHeader(http.StatusOK)
		return http.StatusOK, 0
	}
	if packed {
		n, _ := writeWhole(w, r, f.packed) // whoever has gone is gone
		return http.StatusOK, n
	}
	un, err := gzip.NewReader(bytes.NewReader(f.packed))
	if err != nil {
		panic(err) // it was packed here
	}
	n, _ := io.Copy(w, un)
	return http.StatusOK, int(n)
}

// fresh reports whether whoever asks has what there is (RFC 9110, 13.2.2): by the tag where
// there is one, else by the time.
func fresh(h http.Header, tag string, modified time.Time) bool {
	if none := h["If-None-Match"]; len(none) > 0 {
		for _, list := range none {
			for one := range strings.SplitSeq(list, ",") {
				if one = strings.TrimSpace(one); one == "*" || strings.TrimPrefix(one, "W/") == tag {
					return true
				}
			}
		}
		return false
	}
	since, err := http.ParseTime(h.Get("If-Modified-Since"))
	return err == nil && !modified.After(since)
}

// takesGzip reports whether whoever asks takes what is compressed (RFC 9110, 12.5.3).
func takesGzip(h http.Header) bool {
	any := false
	for _, list := range h["Accept-Encoding"] {
		for one := range strings.SplitSeq(list, ",") {
			name, weight, _ := strings.Cut(one, ";")
			name = strings.ToLower(strings.TrimSpace(name))
			if name != "gzip" && name != "x-gzip" && name != "*" {
				continue
			}
			takes := true
			if q, ok := strings.CutPrefix(strings.ReplaceAll(strings.ToLower(weight), " ", ""), "q="); ok {
				v, err := strconv.ParseFloat(q, 64)
				takes = err == nil && v > 0
			}
			if name != "*" {
				return takes
			}
			any = takes
		}
	}
	return any
}
