// Package journal appends lines to the logs of a collection, for whoever does: the note
// command, a form on a phone, a list of tasks that was ticked. Lines are tried first on a copy
// of the collection that holds them, and what came of it is returned as data; how that is
// told is the business of others.
package journal

import (
	"errors"
	"os"
	"path/filepath"
	"strconv"
	"sync"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/plan"
	"vivary/schema/civil"
)

// Journal is the logs of one collection.
type Journal struct {
	Disk afero.Fs
	Root string
	Lock publish.Lock // nil for none

	// Compile compiles the collection as it stands on a disk. It is called by one goroutine
	// at a time.
	Compile func(disk afero.Fs) (*compile.Result, error)

	// Stamped says that the times of day of lines are a clock's, as those of a form are, and
	// that nobody typed them in order to say that it was another time. Then a line that
	// differs only in its time from one that stands says nothing new, where what it says can
	// be so only once in a round.
	Stamped bool

	mu sync.Mutex // where no disk knows locks too, one writes at a time
}

// Held is a journal in which nobody else writes.
type Held struct {
	// Now is the collection as it stands now, with what was written while it was held.
	Now *compile.Result

	journal *Journal
	release func()
}

// Unread is the error of a collection that cannot be compiled as it stands.
type Unread struct{ Err error }

func (e *Unread) Error() string { return e.Err.Error() }
func (e *Unread) Unwrap() error { return e.Err }

// Hold waits until nobody else writes, and reads the collection as it stands then: of two who
// note the same at the same moment the second sees that it stands already. Whoever holds it
// lets it go.
func (j *Journal) Hold() (*Held, error) {
	j.mu.Lock()
	release, err := j.alone()
	if err != nil {
		j.mu.Unlock()
		return nil, err
	}
	h := &Held{journal: j, release: func() { release(); j.mu.Unlock() }}
	if h.Now, err = j.Compile(j.Disk); err != nil {
		h.release()
		return nil, &Unread{err}
	}
	return h, nil
}

// Release lets others write. The collection as it stood may be read on.
func (h *Held) Release() { h.release() }

// alone takes the lock. Where none can be made, on some disks of others, it goes on: a line
// that stands twice counts once.
func (j *Journal) alone() (release func(), err error) {
	nothing := func() {}
	if j.Lock == nil {
		return nothing, nil
	}
	if there, err := afero.DirExists(j.Disk, j.Root); err != nil || !there {
		return nothing, nil // whoever compiles it says so
	}
	release, err = j.Lock(j.Root)
	if errors.Is(err, errors.ErrUnsupported) || errors.Is(err, os.ErrPermission) {
		return nothing, nil
	}
	return release, err
}

// LogName is the name of the log into which what was seen on a day is written, by a keeper
// where each has a log: so that two who write at once, each in a copy of the collection, write
// into two files, and git puts them together.
func LogName(day civil.Date, keeper string) string {
	if keeper != "" {
		keeper = "-" + keeper
	}
	year, _, _ := day.YMD()
	return strconv.Itoa(year) + keeper + plan.LogSuffix
}

// path is that of a log.
func (j *Journal) path(name string) string { return filepath.Join(j.Root, "records", name) }
