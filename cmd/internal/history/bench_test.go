package history_test

import (
	"fmt"
	"maps"
	"strings"
	"testing"
	"time"

	"vivary/cmd/internal/builder"
	"vivary/cmd/internal/history"
	"vivary/internal/generated"
	"vivary/schema/civil"
)

// BenchmarkHistory: ten revisions of 1,000 enclosures, beside a build of one of them with its
// calendars, in the same run. Either three of them touch the enclosure that is asked about, as when
// one of many is looked at, or each does, an absence among them.
func BenchmarkHistory(b *testing.B) {
	b.Run("three", func(b *testing.B) { besideABuild(b, 4) })
	b.Run("all", func(b *testing.B) { besideABuild(b, 1) })
}

func besideABuild(b *testing.B, every int) {
	day := civil.Must(2026, 11, 30)
	files := maps.Clone(generated.Collection(1000, "Europe/London"))
	is := maps.Clone(files)
	var all []history.Revision
	for i := range 10 {
		on := day - civil.Date(300-30*i)
		tub := 100 + i
		if i%every == 0 {
			tub = 500
		}
		mistOtherwise(b, is, tub)
		if i == 8 && every == 1 {
			is["collection.care.hcl"] += "\naway \"lead\" {\n  from = \"2027-02-01\"\n  to   = \"2027-02-20\"\n}\n"
		}
		all = append([]history.Revision{rev(b, on, is)}, all...)
		is = maps.Clone(is)
	}
	var build, took time.Duration
	runs, steps := 0, 0
	for b.Loop() {
		runs++
		begun := time.Now()
		built := &builder.Builder{Root: ".", Out: "feeds", Now: builder.Moment(on(day))}
		if _, err := built.Build(disk(b, files), nil, true); err != nil {
			b.Fatal(err)
		}
		build += time.Since(begun)
		begun = time.Now()
		steps = len(told(b, "tub-500", day, all...).Steps)
		took += time.Since(begun)
	}
	ms := func(d time.Duration) float64 { return d.Seconds() * 1000 / float64(runs) }
	b.ReportMetric(ms(build), "build-ms")
	b.ReportMetric(ms(took), "history-ms")
	b.ReportMetric(ms(took)/ms(build), "ratio")
	b.ReportMetric(float64(steps), "steps")
}

// mistOtherwise changes how often an enclosure is misted.
func mistOtherwise(b *testing.B, files map[string]string, tub int) {
	b.Helper()
	for name, text := range files {
		at := strings.Index(text, fmt.Sprintf("enclosure \"tub-%d\" {", tub))
		if at < 0 {
			continue
		}
		at += strings.Index(text[at:], `care "mist"`)
		was, is := `"day"`, `"2 days"`
		if line := text[at : at+strings.Index(text[at:], "amount")]; strings.Contains(line, is) {
			was, is = is, was
		}
		files[name] = text[:at] + strings.Replace(text[at:], was, is, 1)
		return
	}
	b.Fatal("there is no such tub")
}
