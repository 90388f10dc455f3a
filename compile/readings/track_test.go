package readings

import (
	"bytes"
	"encoding/xml"
	"io"
	"math"
	"strings"
	"testing"
	"time"

	"vivary/compile/measure"
	"vivary/internal/planned"
)

// The picture is sound XML in both widths, says in words what it shows, and grows with the
// picture and not with the readings.
func TestDrawn(t *testing.T) {
	res := compiled(t, tub)
	for _, n := range []int{2, 40, 1008, 60_000} {
		heat := func(k int) float64 {
			if k == n-1 {
				return 36.5
			}
			return 24 + 3*math.Sin(float64(k)/70)
		}
		rep := Of(res, res.Lives[0], []*File{file(t, measure.Air, n, 10*time.Minute, heat, func(int) float64 { return 80 })}, Options{})
		for _, narrow := range []bool{false, true} {
			for _, week := range []string{"", "2027-05-20", "2020-01-01"} {
				on := planned.Day("2027-05-20") * 0
				if week != "" {
					on = planned.Day(week)
				}
				var b bytes.Buffer
				if err := rep.Track(on).Draw(&b, narrow); err != nil {
					t.Fatal(err)
				}
				d := xml.NewDecoder(&b)
				size := b.Len()
				text := b.String()
				for {
					if _, err := d.Token(); err == io.EOF {
						break
					} else if err != nil {
						t.Fatalf("%d readings: %v", n, err)
					}
				}
				if size > 400_000 || strings.Contains(text, "NaN") || strings.Contains(text, "Inf") {
					t.Errorf("%d readings, narrow %v, week %q: %d bytes", n, narrow, week, size)
				}
				if week == "2020-01-01" && !strings.Contains(text, "no reading in this time") {
					t.Errorf("an empty week says nothing")
				}
				if week == "" && n == 1008 && !strings.Contains(text, "not as aimed for: about") {
					t.Error("what is outside is not said")
				}
			}
		}
	}
}
