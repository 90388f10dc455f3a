package compile_test

import (
	"bytes"
	"fmt"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/internal/generated"
	"vivary/plan"
)

// BenchmarkTyped: a collection of 1,000 enclosures compiled again as somebody types: a
// letter of a title, a figure of a plan, a line of a log, nothing.
func BenchmarkTyped(b *testing.B) {
	disk := afero.NewMemMapFs()
	n := 0
	for name, text := range generated.Collection(1000, "Europe/London") {
		n++
		afero.WriteFile(disk, "c/"+name, []byte(text), 0o644)
	}
	name := "c/rooms/room-7.care.hcl"
	text, err := afero.ReadFile(disk, name)
	if err != nil {
		b.Fatal(err)
	}
	now := time.Date(2026, 11, 25, 18, 0, 0, 0, time.UTC)
	for _, kind := range []string{"nothing", "title", "every", "log"} {
		b.Run(kind, func(b *testing.B) {
			var reader plan.Reader
			var last *compile.Result
			var load, from time.Duration
			k := 0
			for b.Loop() {
				k++
				switch kind {
				case "title":
					t := bytes.Replace(text, []byte(`title   = "Tub `), []byte(fmt.Sprintf(`title   = "Tub %d`, k)), 1)
					afero.WriteFile(disk, name, t, 0o644)
				case "every":
					t := bytes.Replace(text, []byte("every"), []byte("every"+[]string{"", " "}[k%2]), 1)
					afero.WriteFile(disk, name, t, 0o644)
				case "log":
					afero.WriteFile(disk, "c/records/x.care.log", []byte(fmt.Sprintf("2026-11-25 18:%02d tub-7 fed\n", k%60)), 0o644)
				}
				begun := time.Now()
				c, found, err := reader.Load(disk, "c")
				if err != nil {
					b.Fatal(err)
				}
				t1 := time.Now()
				last = compile.From(compile.Input{Plan: c, Loaded: found, Now: now, Last: last})
				t2 := time.Now()
				if k > 1 {
					load += t1.Sub(begun)
					from += t2.Sub(t1)
				}
			}
			b.ReportMetric(load.Seconds()*1000/float64(k-1), "load-ms")
			b.ReportMetric(from.Seconds()*1000/float64(k-1), "from-ms")
			b.ReportMetric(float64(len(last.Findings)), "findings")
		})
	}
}
