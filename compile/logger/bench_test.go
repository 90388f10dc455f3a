package logger

import (
	"bytes"
	"fmt"
	"testing"
	"time"
)

// BenchmarkYear reads a year of minutes.
func BenchmarkYear(b *testing.B) {
	var text bytes.Buffer
	text.WriteString("time,temp,rh\n")
	start := time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC)
	for k := range 525_600 {
		fmt.Fprintf(&text, "%s,%.1f,%.1f\n", start.Add(time.Duration(k)*time.Minute).Format("2006-01-02 15:04"), 20+float64(k%90)/10, 60+float64(k%70)/10)
	}
	b.SetBytes(int64(text.Len()))
	b.ReportAllocs()
	for b.Loop() {
		s, err := Read(bytes.NewReader(text.Bytes()), Options{})
		if err != nil || len(s.Samples) != 525_600 {
			b.Fatal(err)
		}
	}
}
