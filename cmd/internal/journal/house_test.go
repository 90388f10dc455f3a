package journal

import (
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/plan"
)

var noon = time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)

// house is a collection in which water is given in the morning and in the evening, and all
// else in the evening.
const house = `collection "c" {
  time_zone = "Europe/London"
}

keeper "lead" {
}

keeper "relief" {
}

round "morning" {
  at = "08:00"
}

round "evening" {
  at = "19:30"
}

room "east" {
  temperature = "22 to 25 C"
}

enclosure "tub" {
  numbers = "1 to 3"
  species = "pandinus-imperator"
  room    = "east"

  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
    vents  = "some"
    depth  = "16 cm"
    hides  = 1
  }

  care "water" {
    every = "1 day"
    round = ["morning", "evening"]
  }

  animals "adult" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 118"
  }
}
`

// at opens the journal of a collection on a disk.
func at(disk afero.Fs) *Journal {
	return &Journal{Disk: disk, Root: "c", Stamped: true, Compile: func(disk afero.Fs) (*compile.Result, error) {
		c, found, err := plan.Load(disk, "c")
		if err != nil {
			return nil, err
		}
		return compile.Compile(c, found, noon), nil
	}}
}

// keep puts a collection on a disk.
func keep(t *testing.T, disk afero.Fs, log string) {
	t.Helper()
	if err := disk.MkdirAll("c/records", 0o755); err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string]string{"c/plan.care.hcl": house, "c/records/2026.care.log": log} {
		if text == "" {
			continue
		}
		if err := afero.WriteFile(disk, name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// write writes lines, as one who comes for that.
func write(j *Journal, name string, lines ...string) (Outcome, error) {
	h, err := j.Hold()
	if err != nil {
		return Outcome{}, err
	}
	defer h.Release()
	return h.Write(name, lines)
}

// logs are all lines of all logs.
func logs(t *testing.T, disk afero.Fs) (all []string) {
	t.Helper()
	files, _ := afero.ReadDir(disk, "c/records")
	for _, f := range files {
		text, err := afero.ReadFile(disk, "c/records/"+f.Name())
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, strings.Split(strings.TrimSuffix(string(text), "\n"), "\n")...)
	}
	return all
}
