package main

import (
	"io"
	"os"
	"path/filepath"
	"runtime"
	"sort"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/spf13/afero"

	"vivary/internal/generated"
)

var benchNow = time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)

func write(b testing.TB, n int) afero.Fs {
	disk := afero.NewMemMapFs()
	for name, text := range generated.Collection(n, "Europe/London") {
		if err := afero.WriteFile(disk, filepath.Join("c", name), []byte(text), 0o644); err != nil {
			b.Fatal(err)
		}
	}
	return disk
}

// BenchmarkBuild measures a whole build, from reading the files to the last feed
// written, beside parsing the same files with the HCL library alone on as many
// goroutines. The two are run in turn, pair by pair, under the same garbage
// collector settings in the same process; the ratio is the median of the pairs.
func BenchmarkBuild(b *testing.B) {
	for _, n := range []int{100, 1000, 10000} {
		disk := write(b, n)
		b.Run(strconv.Itoa(n), func(b *testing.B) {
			var parse, build, ratio []float64
			var before, after runtime.MemStats
			for range b.N {
				begin := time.Now()
				parseAll(b, disk)
				p := time.Since(begin).Seconds()

				over := afero.NewCopyOnWriteFs(disk, afero.NewMemMapFs())
				runtime.ReadMemStats(&before)
				begin = time.Now()
				w := &world{disk: over, out: io.Discard, err: io.Discard, clock: func() time.Time { return benchNow }}
				if got := run([]string{"build", "c"}, w); got != fine {
					b.Fatalf("exit status %d", got)
				}
				t := time.Since(begin).Seconds()
				runtime.ReadMemStats(&after)
				parse, build, ratio = append(parse, p), append(build, t), append(ratio, t/p)
			}
			b.ReportMetric(0, "ns/op") // of both together, which says nothing
			b.ReportMetric(1e3*median(parse), "parse-ms")
			b.ReportMetric(1e3*median(build), "build-ms")
			b.ReportMetric(1e6*median(build)/float64(n), "build-µs/enclosure")
			b.ReportMetric(median(ratio), "ratio")
			b.ReportMetric(float64(after.TotalAlloc-before.TotalAlloc)/float64(n), "build-B/enclosure")
			b.ReportMetric(float64(after.Mallocs-before.Mallocs)/float64(n), "build-allocs/enclosure")
		})
	}
}

func median(x []float64) float64 {
	sort.Float64s(x)
	return x[len(x)/2]
}

func parseAll(b *testing.B, disk afero.Fs) {
	var paths []string
	_ = afero.Walk(disk, "c", func(p string, _ os.FileInfo, _ error) error {
		if strings.HasSuffix(p, ".care.hcl") {
			paths = append(paths, p)
		}
		return nil
	})
	sort.Strings(paths)
	var next atomic.Int64
	var wg sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		wg.Add(1)
		go func() {
			defer wg.Done()
			for {
				i := int(next.Add(1)) - 1
				if i >= len(paths) {
					return
				}
				text, err := afero.ReadFile(disk, paths[i])
				if err != nil {
					b.Error(err)
					return
				}
				if _, diags := hclsyntax.ParseConfig(text, paths[i], hcl.InitialPos); diags.HasErrors() {
					b.Error(diags)
				}
			}
		}()
	}
	wg.Wait()
}
