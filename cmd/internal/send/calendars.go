package send

import (
	"bytes"
	"errors"
	"fmt"
	"maps"
	"path"
	"regexp"
	"slices"
	"strings"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
	"vivary/compile/ical"
	"vivary/schema/wording"
)

// Calendar is one that was built.
type Calendar struct {
	Name string // without .ics
	Text []byte
}

// readings is how often a folder is read in which builds go on all the while.
const readings = 20

// Read returns the calendars of vivary's that stand in a folder as published, by name.
// They are all of one build, though the folder is neither held nor written to: it is read
// until two readings after one another have found the same.
func Read(disk afero.Fs, dir string) ([]Calendar, error) {
	var before map[string][]byte
	for range readings {
		now, err := read(disk, dir)
		if err != nil {
			return nil, err
		}
		if before != nil && maps.EqualFunc(before, now, bytes.Equal) {
			var all []Calendar
			for _, name := range slices.Sorted(maps.Keys(now)) {
				all = append(all, Calendar{strings.TrimSuffix(name, ".ics"), now[name]})
			}
			return all, nil
		}
		before = now
	}
	return nil, fmt.Errorf("builds go on in %q all the while: publish when they are done", dir)
}

func read(disk afero.Fs, dir string) (map[string][]byte, error) {
	names, err := publish.Names(disk, dir)
	if err != nil {
		return nil, err
	}
	all := map[string][]byte{}
	for _, name := range names {
		text, err := publish.Last(disk, dir, name)
		switch {
		case errors.Is(err, publish.ErrNoFile):
			continue
		case err != nil:
			return nil, fmt.Errorf("%q cannot be read: %w", path.Join(dir, name), err)
		case ical.Ours(text):
			if !whole(text) {
				return nil, fmt.Errorf("%q has no end, as if it had been cut off: build again", path.Join(dir, name))
			}
			all[name] = text
		}
	}
	return all, nil
}

// whole reports whether a calendar has its end.
func whole(text []byte) bool { return bytes.HasSuffix(text, []byte("END:VCALENDAR\r\n")) }

// private is the folder of calendars whose addresses nobody can guess.
const private = "c"

// stored is the form of all paths under which calendars are put: NAME.ics, c/KEY/NAME.ics.
var stored = regexp.MustCompile(`^(?:c/[A-Za-z0-9_-]+/)?[^./][^/]*\.ics(?:\.gz)?$`)

// Paths returns where calendars are put below a target, by their names: NAME.ics, or
// where keys gives each its keys, c/KEY/NAME.ics for each of them, which nobody can guess. So
// their addresses end alike whichever way they are served.
func Paths(names []string, keys func(name string) []string) (map[string][]string, error) {
	all := map[string][]string{}
	var without []string
	for _, name := range names {
		if keys == nil {
			all[name] = []string{name + ".ics"}
			continue
		}
		of := keys(name)
		for _, key := range of {
			all[name] = append(all[name], path.Join(private, key, name+".ics"))
		}
		if len(of) == 0 || slices.Contains(of, "") {
			without = append(without, name)
		}
	}
	if without != nil {
		return nil, fmt.Errorf("%s %s no key, without which anybody could guess the address", wording.And(without), wording.Noun(len(without), "has", "have"))
	}
	return all, nil
}

// Shown is a path as it is printed: of a key only the beginning, since what is printed is
// kept in logs that more people read than the calendar.
func Shown(p string) string {
	part := strings.Split(p, "/")
	if len(part) == 3 && len(part[1]) > 4 {
		part[1] = part[1][:4] + "…"
	}
	return strings.Join(part, "/")
}
