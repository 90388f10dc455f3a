package ical

import (
	"bytes"
	"io"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"

	"vivary/schema/civil"
)

// thousand is a feed of 1000 entries with about 1 KB of description each.
func thousand(b *testing.B) *Feed {
	item := "Burrow A, adults: 4 crickets (adult), dusted; lid latched, count animals.\n- Wasser prüfen: 150 ml, 27 to 32 °C\n"
	entries := make([]Entry, 1000)
	for i := range entries {
		d := today + civil.Date(i)
		entries[i] = Entry{
			UID: UID("round", d.String()), Date: d, At: 19*60 + 30, Minutes: 45, Summary: "Evening round: feed, mist, count",
			Description: strings.Repeat(item, 9) + d.Words(), Location: "East room",
			Categories: []string{"care"}, Remind: 10,
		}
	}
	return sample(b, entries...)
}

// library returns the feed in golang-ical's own model, having made sure that it
// writes the same content.
func library(b *testing.B, feed []byte) *ics.Calendar {
	cal, err := ics.ParseCalendar(bytes.NewReader(feed))
	if err != nil {
		b.Fatal(err)
	}
	var out bytes.Buffer
	if err := cal.SerializeTo(&out, ics.WithNewLineWindows); err != nil {
		b.Fatal(err)
	}
	if unfold(out.String()) != unfold(string(feed)) {
		b.Fatal("the library writes something else")
	}
	return cal
}

func BenchmarkWrite(b *testing.B) {
	f := thousand(b)
	feed := Write(nil, f, nil, now, keepFrom, today)
	m, err := Remember(feed)
	if err != nil {
		b.Fatal(err)
	}
	cal := library(b, feed)
	var dst []byte
	ours := func(m *Memory) func(*testing.B) {
		return func(b *testing.B) {
			b.SetBytes(int64(len(feed)))
			b.ReportAllocs()
			for b.Loop() {
				dst = Write(dst[:0], f, m, now.Add(time.Hour), keepFrom, today)
			}
		}
	}
	b.Run("ours/first", ours(nil))
	b.Run("ours/unchanged", ours(m))
	b.Run("golang-ical", func(b *testing.B) {
		b.SetBytes(int64(len(feed)))
		b.ReportAllocs()
		var out bytes.Buffer
		for b.Loop() {
			out.Reset()
			if err := cal.SerializeTo(&out, ics.WithNewLineWindows); err != nil {
				b.Fatal(err)
			}
		}
	})
}

func BenchmarkRemember(b *testing.B) {
	feed := Write(nil, thousand(b), nil, now, keepFrom, today)
	b.Run("Remember", func(b *testing.B) {
		b.SetBytes(int64(len(feed)))
		b.ReportAllocs()
		for b.Loop() {
			if _, err := Remember(feed); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("parsing", func(b *testing.B) {
		b.SetBytes(int64(len(feed)))
		b.ReportAllocs()
		for b.Loop() {
			if _, err := ics.ParseCalendar(io.Reader(bytes.NewReader(feed))); err != nil {
				b.Fatal(err)
			}
		}
	})
}
