package compared_test

import (
	"strings"
	"testing"
	"time"

	"vivary/cmd/internal/builder"
	"vivary/cmd/internal/compared"
	"vivary/internal/generated"
	"vivary/schema/civil"
)

// BenchmarkCompare: two revisions of 1,000 enclosures, beside a build of one of them with its
// calendars, in the same run. Between them six lines differ of as many enclosures; or, in the
// worst case, also an absence that all of them feel.
func BenchmarkCompare(b *testing.B) {
	for _, away := range []bool{false, true} {
		b.Run(map[bool]string{false: "lines", true: "absence"}[away], func(b *testing.B) { beside(b, away) })
	}
}

func beside(b *testing.B, away bool) {
	was := map[string]string{}
	for name, text := range generated.Collection(1000, "Europe/London") {
		was[name] = string(text)
	}
	is := map[string]string{}
	n := 0
	for name, text := range was {
		if n < 6 && strings.Contains(text, "enclosure") && strings.Contains(text, `every`) {
			text = strings.Replace(text, `every  = "day"`, `every  = "2 days"`, 1)
			n++
		}
		is[name] = text
	}
	if away {
		is["collection.care.hcl"] += "\naway \"lead\" {\n  from = \"2027-02-01\"\n  to   = \"2027-02-20\"\n}\n"
	}
	day := civil.Must(2026, 11, 30)
	x, y := disk(b, was), disk(b, is)
	var build, compare time.Duration
	runs := 0
	for b.Loop() {
		runs++
		begun := time.Now()
		built := &builder.Builder{Root: ".", Out: "feeds", Now: builder.Moment(on(day))}
		if _, err := built.Build(disk(b, was), nil, true); err != nil {
			b.Fatal(err)
		}
		build += time.Since(begun)
		begun = time.Now()
		r, err := compared.Of(compared.Side{Disk: x}, compared.Side{Disk: y}, on(day))
		if err != nil {
			b.Fatal(err)
		}
		if len(r.Pieces) == 0 {
			b.Fatal("nothing differs")
		}
		compare += time.Since(begun)
	}
	ms := func(d time.Duration) float64 { return d.Seconds() * 1000 / float64(runs) }
	b.ReportMetric(ms(build), "build-ms")
	b.ReportMetric(ms(compare), "compare-ms")
	b.ReportMetric(ms(compare)/ms(build), "ratio")
}
