package compile_test

import (
	"runtime"
	"sort"
	"testing"
	"time"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/internal/hostile"
	"vivary/plan"
)

// BenchmarkPlain measures what a plan of 4 MiB takes of which nothing is wrong, 16,687
// enclosures as short as they can be: it is what hostile texts are held against. Beside it
// the HCL library parses the same text in the same run; the ratio is the median of the pairs.
func BenchmarkPlain(b *testing.B) {
	text := hostile.Plain(plan.MaxFile).Plan
	disk := afero.NewMemMapFs()
	if err := afero.WriteFile(disk, "c/a.care.hcl", []byte(text), 0o644); err != nil {
		b.Fatal(err)
	}
	now := time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)
	var parse, load, rest, ratio []float64
	var before, after runtime.MemStats
	var live uint64
	for range b.N {
		runtime.GC()
		begin := time.Now()
		if _, diags := hclsyntax.ParseConfig([]byte(text), "a.care.hcl", hcl.InitialPos); diags.HasErrors() {
			b.Fatal(diags)
		}
		p := time.Since(begin).Seconds()
		runtime.GC()
		runtime.ReadMemStats(&before)
		begin = time.Now()
		c, found, err := plan.Load(disk, "c")
		if err != nil {
			b.Fatal(err)
		}
		l := time.Since(begin).Seconds()
		r := compile.Compile(c, found, now)
		t := time.Since(begin).Seconds()
		runtime.ReadMemStats(&after)
		allocated := after.TotalAlloc
		runtime.GC()
		runtime.ReadMemStats(&after)
		live = after.HeapAlloc - before.HeapAlloc
		after.TotalAlloc = allocated
		if r.Refused() {
			b.Fatal("refused")
		}
		parse, load, rest, ratio = append(parse, p), append(load, l), append(rest, t-l), append(ratio, t/p)
		runtime.KeepAlive(r)
	}
	middle := func(x []float64) float64 { sort.Float64s(x); return x[len(x)/2] }
	b.ReportMetric(0, "ns/op") // of all together, which says nothing
	b.ReportMetric(1e3*middle(parse), "parse-ms")
	b.ReportMetric(1e3*middle(load), "load-ms")
	b.ReportMetric(1e3*middle(rest), "compile-ms")
	b.ReportMetric(middle(ratio), "ratio")
	b.ReportMetric(float64(live)/(1<<20), "live-MiB")
	b.ReportMetric(float64(after.TotalAlloc-before.TotalAlloc)/(1<<20), "allocated-MiB")
}
