// Package zone holds the IANA time zones, pinned to one release of the tz
// database, so that feeds depend neither on the machine nor on the Go release.
// It never reads the machine's own zone files and has no notion of local time.
//
// zoneinfo.zip is lib/time/zoneinfo.zip of the Go 1.26.8 distribution,
// unchanged; the tz database is in the public domain. To move to another
// release copy that file again and change Version and the sum in the test.
package zone

import (
	"archive/zip"
	_ "embed"
	"fmt"
	"io"
	"slices"
	"strings"
	"sync"
	"time"
)

// Version is the release of the tz database, as lib/time/update.bash of the Go
// distribution names it for this archive.
const Version = "2025c"

//go:embed zoneinfo.zip
var archive string

// placeholder is tzdb's name for a machine whose zone nobody has set.
const placeholder = "Factory"

type listing struct {
	files map[string]*zip.File
	names []string // sorted
}

// index is the archive's directory, read on first use.
var index = sync.OnceValues(readIndex)

func readIndex() (listing, error) {
	r, err := zip.NewReader(strings.NewReader(archive), int64(len(archive)))
	if err != nil {
		return listing{}, fmt.Errorf("the embedded time zones cannot be read: %w", err)
	}
	l := listing{make(map[string]*zip.File, len(r.File)), make([]string, 0, len(r.File))}
	for _, f := range r.File {
		if f.Name == placeholder || strings.HasSuffix(f.Name, "/") {
			continue
		}
		l.files[f.Name] = f
		l.names = append(l.names, f.Name)
	}
	slices.Sort(l.names)
	return l, nil
}

// loaded maps names to the *time.Location already read.
var loaded sync.Map

// Load returns the zone of an IANA name such as "Europe/London". Older names
// that the database keeps, such as "GB" or "US/Eastern", are zones too. The
// error of an unknown name is meant for a keeper and offers the nearest names.
// Two calls with one name return the same location.
func Load(name string) (*time.Location, error) {
	if loc, ok := loaded.Load(name); ok {
		return loc.(*time.Location), nil
	}
	l, err := index()
	if err != nil {
		return nil, err
	}
	f, ok := l.files[name]
	if !ok {
		return nil, unknown(name, l.names)
	}
	data, err := read(f)
	if err != nil {
		return nil, fmt.Errorf("the embedded time zone %q cannot be read: %w", name, err)
	}
	loc, err := time.LoadLocationFromTZData(name, data)
	if err != nil {
		return nil, fmt.Errorf("the embedded time zone %q cannot be read: %w", name, err)
	}
	first, _ := loaded.LoadOrStore(name, loc)
	return first.(*time.Location), nil
}

// Names returns every name that Load accepts, sorted.
func Names() []string {
	l, _ := index() // the tests prove that the archive can be read
	return slices.Clone(l.names)
}

func read(f *zip.File) ([]byte, error) {
	r, err := f.Open()
	if err != nil {
		return nil, err
	}
	defer r.Close()
	return io.ReadAll(r)
}
