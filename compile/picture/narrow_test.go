package picture

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"vivary/compile"
)

func drawNarrow(t *testing.T, r *compile.Result, i int) string {
	t.Helper()
	var b bytes.Buffer
	if err := YearNarrow(&b, r, i); err != nil {
		t.Fatal(err)
	}
	if dir := os.Getenv("VIVARY_PICTURES"); dir != "" { // to look at them
		name := filepath.Join(dir, strings.ReplaceAll(t.Name(), "/", "-")+strconv.Itoa(i)+"-narrow.svg")
		if err := os.WriteFile(name, b.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return b.String()
}

var (
	markedDays = regexp.MustCompile(`<path d="(M[^"]*)" stroke="` + ink + `" stroke-width="1.7"`)
)

// strokesIn counts the marks of meals, given and left out.
func strokesIn(drawn string) (n int) {
	for _, m := range markedDays.FindAllStringSubmatch(drawn, -1) {
		n += strings.Count(m[1], "M")
	}
	return n
}

// The narrow form says and shows what the wide one does: the same to those who do not see it,
// as many marks of meals, and in writing every season, state, window and absence.
func TestNarrowShowsTheSame(t *testing.T) {
	each(t, func(t *testing.T, r *compile.Result, i int, drawn string) {
		tall := drawNarrow(t, r, i)
		all, title, desc := labels(t, tall)
		_, wideTitle, wideDesc := labels(t, drawn)
		if title != wideTitle || desc != wideDesc {
			t.Errorf("another description:\n%s\n%s", desc, wideDesc)
		}
		if a, b := strokesIn(tall), strokesIn(drawn); a != b && !strings.Contains(drawn, "other kinds of meal") {
			t.Errorf("%d marks of meals, and %d in the wide form", a, b)
		}
		var words []string
		for _, l := range all {
			words = append(words, l.words)
		}
		written := strings.Join(words, " ")
		p := newPage(r, i)
		for _, kind := range [][]stripe{p.seasons(), p.holds(), p.windows(), p.absences()} {
			if len(kind) > mostStripes {
				kind = kind[:mostStripes]
			}
			for _, s := range kind {
				if text := strings.Join(strings.Fields(s.label), " "); len(text) < 200 && p.shows(s.from, s.until) && !strings.Contains(written, text) {
					t.Errorf("not written: %q in\n%s", text, written)
				}
			}
		}
	})
}

// At 360 pixels no letter is smaller than 11, none is outside of the picture, and none lies on
// another.
func TestNarrowIsReadable(t *testing.T) {
	sizes := regexp.MustCompile(`font-size="([0-9.]+)"`)
	height := regexp.MustCompile(`width="360" height="(\d+)"`)
	each(t, func(t *testing.T, r *compile.Result, i int, _ string) {
		drawn := drawNarrow(t, r, i)
		for _, m := range sizes.FindAllStringSubmatch(drawn, -1) {
			if v, _ := strconv.ParseFloat(m[1], 64); v < 11 {
				t.Errorf("letters of %s", m[1])
			}
		}
		tall, _ := strconv.ParseFloat(height.FindStringSubmatch(drawn)[1], 64)
		all, _, _ := labels(t, drawn)
		for k, a := range all {
			if a.x0 < 0 || a.y0 < 0 || a.x1 > narrowWidth || a.y1 > tall {
				t.Errorf("%q lies outside: %.0f,%.0f to %.0f,%.0f", a.words, a.x0, a.y0, a.x1, a.y1)
			}
			for _, b := range all[:k] {
				if a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1 {
					t.Errorf("%q lies on %q", a.words, b.words)
				}
			}
		}
		if again := drawNarrow(t, r, i); again != drawn {
			t.Error("it is drawn in two ways")
		}
	})
	if err := YearNarrow(&bytes.Buffer{}, quillmoor(t), 99); err == nil {
		t.Error("there is no enclosure 99, and no error")
	}
}
