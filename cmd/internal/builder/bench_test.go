package builder_test

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/builder"
	"vivary/internal/generated"
)

// BenchmarkEdit: one file of 1,000 enclosures changes, on a real disk; built by whoever has
// built it before, beside a build that begins with nothing.
func BenchmarkEdit(b *testing.B) {
	disk, root := afero.NewOsFs(), b.TempDir()
	for name, text := range generated.Collection(1000, "Europe/London") {
		name = filepath.Join(root, name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			b.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			b.Fatal(err)
		}
	}
	now := func(loc *time.Location) (time.Time, error) { return time.Date(2026, 11, 25, 12, 0, 0, 0, loc), nil }
	kept := &builder.Builder{Root: root, Out: filepath.Join(root, "feeds"), Now: now}
	if _, err := kept.Build(disk, nil, true); err != nil {
		b.Fatal(err)
	}
	var path string
	for name := range generated.Collection(1000, "Europe/London") {
		if bytes.Contains([]byte(name), []byte("7")) {
			path = filepath.Join(root, name)
		}
	}
	text, err := os.ReadFile(path)
	if err != nil {
		b.Fatal(err)
	}
	var again, fresh time.Duration
	n := 0
	for b.Loop() {
		n++
		text = append(text, "# a remark\n"...)
		if n%2 == 0 {
			text = bytes.Replace(text, []byte("every"), []byte("every "), 1)
		}
		if err := os.WriteFile(path, text, 0o644); err != nil {
			b.Fatal(err)
		}
		begun := time.Now()
		if _, err := kept.Build(disk, nil, true); err != nil {
			b.Fatal(err)
		}
		again += time.Since(begun)
		begun = time.Now()
		anew := &builder.Builder{Root: root, Out: filepath.Join(root, "feeds"), Now: now}
		if _, err := anew.Build(disk, nil, true); err != nil {
			b.Fatal(err)
		}
		fresh += time.Since(begun)
	}
	ms := func(d time.Duration) float64 { return d.Seconds() * 1000 / float64(n) }
	b.ReportMetric(ms(again), "again-ms")
	b.ReportMetric(ms(fresh), "fresh-ms")
}
