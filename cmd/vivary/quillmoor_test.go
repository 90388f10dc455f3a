package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"sort"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/spf13/afero"
)

// quillmoor returns the example collection as it stood on a day: log lines of later
// days are left out.
func quillmoor(t *testing.T, day string) afero.Fs {
	t.Helper()
	disk := afero.NewMemMapFs()
	const root = "../../examples/quillmoor"
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || strings.HasSuffix(path, ".ics") {
			return err
		}
		text, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		if strings.HasSuffix(path, ".care.log") {
			var kept []string
			for line := range strings.Lines(string(text)) {
				if line[0] == '#' || line[:10] <= day {
					kept = append(kept, line)
				}
			}
			text = []byte(strings.Join(kept, ""))
		}
		rel, err := filepath.Rel(root, path)
		if err != nil {
			return err
		}
		return afero.WriteFile(disk, filepath.Join("q", rel), text, 0o644)
	})
	if err != nil {
		t.Fatal(err)
	}
	return disk
}

// The field centre through its year: what stands in its feeds on four days, as a
// phone shows it, for three days and with the bands of three months. The files are
// to be read by people. UPDATE_EXAMPLES=1 writes them anew.
func TestQuillmoorYear(t *testing.T) {
	for _, x := range []struct{ day, feed, about string }{
		{"2026-02-11", "evening", "a juvenile moulted yesterday, after two refusals"},
		{"2026-04-08", "evening", "a female was mated two days ago"},
		{"2026-07-19", "evening", "a brood that moulted yesterday and will be separated"},
		{"2026-11-08", "evening", "a brood on its mother, a male in quarantine"},
		{"2026-11-25", "desert", "the desert shelf at the beginning of its cool rest"},
		{"2027-07-08", "relief", "two days before the lead keeper goes away"},
		{"2027-07-08", "evening", "the same, for everybody"},
	} {
		t.Run(x.day+"-"+x.feed, func(t *testing.T) {
			now, err := time.Parse("2006-01-02", x.day)
			if err != nil {
				t.Fatal(err)
			}
			disk := quillmoor(t, x.day)
			if s, _, e := at(disk, now.Add(9*time.Hour), "build", "q"); s != fine {
				t.Fatal(e)
			}
			text, err := afero.ReadFile(disk, "q/feeds/"+x.feed+".ics")
			if err != nil {
				t.Fatal(err)
			}
			got := fmt.Sprintf("%s, calendar %s: %s\n", x.day, x.feed, x.about) + shown(t, text, now)
			path := filepath.Join("../../testdata/quillmoor", x.day+"-"+x.feed+".txt")
			if os.Getenv("UPDATE_EXAMPLES") != "" {
				if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			if want, err := os.ReadFile(path); err != nil || string(want) != got {
				t.Errorf("%s is not what is shown (%v):\n%s", path, err, got)
			}
		})
	}
}

// shown is a feed as a calendar app shows it, read by the calendar library.
func shown(t *testing.T, feed []byte, now time.Time) string {
	t.Helper()
	c, err := ics.ParseCalendar(bytes.NewReader(feed))
	if err != nil {
		t.Fatal(err)
	}
	value := func(e *ics.VEvent, p ics.ComponentProperty) string {
		if x := e.GetProperty(p); x != nil {
			return x.Value
		}
		return ""
	}
	var bands, timed []string
	for _, e := range c.Events() {
		start, end := value(e, ics.ComponentPropertyDtStart), value(e, ics.ComponentPropertyDtEnd)
		from, err := time.Parse("20060102", start[:8])
		if err != nil {
			t.Fatal(err)
		}
		text := value(e, ics.ComponentPropertySummary)
		if rule := value(e, ics.ComponentPropertyRrule); rule != "" {
			text += "  (" + rule + ")"
			for _, p := range e.Properties {
				if p.IANAToken == "EXDATE" {
					text += " not " + p.Value[:8]
				}
			}
		}
		if d := value(e, ics.ComponentPropertyDescription); d != "" {
			text += "\n    " + strings.ReplaceAll(d, "\n", "\n    ")
		}
		if len(start) == 8 {
			if from.Before(now.AddDate(0, 0, 92)) {
				bands = append(bands, fmt.Sprintf("%s to %s  %s\n", start, end, text))
			}
			continue
		}
		if from.Before(now.AddDate(0, 0, 3)) && from.After(now.AddDate(0, 0, -1)) {
			timed = append(timed, fmt.Sprintf("%s %s:%s to %s:%s  %s\n", start[:8], start[9:11], start[11:13], end[9:11], end[11:13], text))
		}
	}
	sort.Strings(bands)
	sort.Strings(timed)
	return "\n" + strings.Join(bands, "") + "\n" + strings.Join(timed, "\n")
}
