package plan

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/internal/generated"
)

// apart gives each enclosure of a generated collection a file of its own.
func apart(files map[string]string) map[string]string {
	out := map[string]string{}
	for name, text := range files {
		head, rest, _ := strings.Cut(text, "\nenclosure ")
		out[name] = head
		if rest == "" {
			continue
		}
		for _, e := range strings.Split(rest, "\nenclosure ") {
			tub, _, _ := strings.Cut(strings.TrimPrefix(e, "\""), "\"")
			out["enclosures/"+tub+".care.hcl"] = "enclosure " + e
		}
	}
	return out
}

// BenchmarkReload measures a second load of 1,000 enclosures by the same Reader
// after one enclosure has changed, beside a fresh load of the same files in the
// same run.
func BenchmarkReload(b *testing.B) {
	rooms := generated.Collection(1000, "Europe/London")
	for _, x := range []struct {
		name, changed string
		files         map[string]string
	}{
		{"40 in a file", "rooms/room-7.care.hcl", rooms},
		{"a file each", "enclosures/tub-299.care.hcl", apart(rooms)},
	} {
		b.Run(x.name, func(b *testing.B) {
			fs := afero.NewMemMapFs()
			write := func(name, text string) {
				if err := afero.WriteFile(fs, filepath.Join("c", name), []byte(text), 0o644); err != nil {
					b.Fatal(err)
				}
			}
			for name, text := range x.files {
				write(name, text)
			}
			r := &Reader{}
			if _, _, err := r.Load(fs, "c"); err != nil {
				b.Fatal(err)
			}
			var fresh, again time.Duration
			for i := range b.N {
				write(x.changed, x.files[x.changed]+fmt.Sprintf("# edit %d\n", i))
				begin := time.Now()
				if _, _, err := r.Load(fs, "c"); err != nil {
					b.Fatal(err)
				}
				between := time.Now()
				if _, _, err := Load(fs, "c"); err != nil {
					b.Fatal(err)
				}
				again += between.Sub(begin)
				fresh += time.Since(between)
			}
			b.ReportMetric(0, "ns/op") // of both together, which says nothing
			b.ReportMetric(again.Seconds()*1e3/float64(b.N), "again-ms")
			b.ReportMetric(fresh.Seconds()*1e3/float64(b.N), "fresh-ms")
			b.ReportMetric(again.Seconds()/fresh.Seconds(), "ratio")
		})
	}
}
