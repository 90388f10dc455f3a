package ical

import (
	"bytes"
	"strconv"
	"strings"
	"time"
)

// Here is what a feed tells of one enclosure that it shows: how many animals lived there
// when it was made. A later build sees by it that animals are missing, without any file of
// its own. The ids say nothing to anybody else.
type Here struct {
	// IDs are by the name that the enclosure had first, and by that of then where it was
	// another.
	IDs     []string
	Animals int // that lived there
	Planned int // of them that the plan itself put there
	Lines   int // of the log that may have changed their number
	Left    int // that left by the log
	Gone    int // that were gone by the plan
	Species string
	Shown   string // what people call it; the feed shows it anyway
}

// The properties of ours that carry it: the salt of the ids, and a line for each enclosure.
const (
	saltName = "X-VIVARY-SALT"
	hereName = "X-VIVARY-HERE"
)

// here writes what the feed tells of its enclosures.
func (w *lines) here(salt string, all []Here) {
	if len(all) == 0 {
		return
	}
	w.raw(saltName, salt)
	for _, h := range all {
		w.begin(hereName)
		w.line = append(w.line, ':')
		w.line = append(w.line, strings.Join(h.IDs, "/")...)
		w.line = append(w.line, ' ')
		for i, n := range []int{h.Animals, h.Planned, h.Lines, h.Left, h.Gone} {
			if i > 0 {
				w.line = append(w.line, '.')
			}
			w.line = strconv.AppendInt(w.line, int64(n), 10)
		}
		w.line = append(w.line, ' ')
		w.line = append(w.line, h.Species...)
		w.line = append(w.line, ' ')
		w.line = appendText(w.line, h.Shown)
		w.end()
	}
}

// ReadHere reads what a feed of ours told of its enclosures from its beginning, up to the
// first of its components, and when it was revised. What cannot be read is passed over: it
// would be evidence of nothing.
func ReadHere(feed []byte) (salt string, all []Here, made time.Time) {
	head := feed
	if i := bytes.Index(feed, []byte("\r\nBEGIN:")); i >= 0 {
		head = feed[:i+2]
	}
	head = bytes.ReplaceAll(head, []byte("\r\n "), nil)
	made, _ = time.Parse(instant, headOf(head, madeName))
	salt = headOf(head, saltName)
	for line := range bytes.Lines(head) {
		if value, ok := strings.CutPrefix(strings.TrimRight(string(line), "\r\n"), hereName+":"); ok {
			if h, ok := readHere(value); ok {
				all = append(all, h)
			}
		}
	}
	return salt, all, made
}

func readHere(value string) (h Here, ok bool) {
	part := strings.SplitN(value, " ", 4)
	if len(part) < 4 {
		return h, false
	}
	h.IDs, h.Species, h.Shown = strings.Split(part[0], "/"), part[2], unescaped.Replace(part[3])
	counts := strings.Split(part[1], ".")
	into := []*int{&h.Animals, &h.Planned, &h.Lines, &h.Left, &h.Gone}
	if len(counts) != len(into) {
		return h, false
	}
	for i, text := range counts {
		n, err := strconv.ParseInt(text, 10, 48)
		if err != nil || n < 0 {
			return h, false
		}
		*into[i] = int(n)
	}
	return h, true
}

// unescaped reads TEXT (RFC 5545, 3.3.11) as one line.
var unescaped = strings.NewReplacer(`\\`, `\`, `\,`, `,`, `\;`, `;`, `\n`, " ", `\N`, " ")
