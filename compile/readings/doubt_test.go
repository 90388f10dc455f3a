package readings

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"vivary/compile/logger"
	"vivary/compile/measure"
)

// What cannot be of a file as a whole is told, and nothing of it is for plan or log; what is hot or
// cold, and is read by the right scale, is.
func TestDoubts(t *testing.T) {
	for _, x := range []struct {
		name, head string
		year       int
		heat       float64
		want       string
	}{
		{"Fahrenheit under °C", "temp °C", 2027, 75, "--degrees F"},
		{"Celsius under °F", "temp °F", 2027, 6, ""}, // -14 °C may be a shed in winter
		{"Celsius of a tank under °F", "temp °F", 2027, 24, "--degrees C"},
		{"a clock that nobody set", "temp °C", 1970, 24, "never set"},
		{"a hot spot", "temp °C", 2027, 44, ""},
		{"as it should be", "temp °F", 2027, 75, ""},
	} {
		var out strings.Builder
		out.WriteString("time," + x.head + "\n")
		at := time.Date(x.year, 5, 3, 9, 0, 0, 0, time.UTC)
		for k := range 300 {
			fmt.Fprintf(&out, "%s,%.1f\n", at.Add(time.Duration(k)*10*time.Minute).Format("2006-01-02 15:04"), x.heat+float64(k%5)/10)
		}
		s, err := logger.Read(strings.NewReader(out.String()), logger.Options{Zone: time.UTC})
		if err != nil {
			t.Fatal(x.name, err)
		}
		res := compiled(t, strings.Replace(tub, "#HERE", "", 1))
		rep := Of(res, res.Lives[0], []*File{{Name: "a.csv", Place: measure.Air, Series: s, Off: measure.Sold}}, Options{})
		text := ""
		for _, f := range doubts(s) {
			text += f.Text
		}
		if !strings.Contains(text, x.want) || x.want == "" && text != "" || x.want != "" && (len(rep.Lines) > 0 || rep.Measured != nil) {
			t.Errorf("%s: %q, lines %v", x.name, text, rep.Lines)
		}
	}
}
