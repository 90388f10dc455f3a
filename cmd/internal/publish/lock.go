package publish

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"time"

	"github.com/gofrs/flock"
	"github.com/spf13/afero"
)

// Lock waits until nobody else has a folder, and returns what lets it go. Its error wraps
// errors.ErrUnsupported where the file system knows no locks.
type Lock func(dir string) (release func(), err error)

const (
	lockName = ".vivary-lock"
	again    = 20 * time.Millisecond // between two tries
)

// Waiting is a Lock on the disk of this machine. It waits as long as patience; once it
// has waited a second it says so, and who has the folder.
func Waiting(patience time.Duration, clock func() time.Time, say func(who string)) Lock {
	return func(dir string) (func(), error) {
		path := filepath.Join(dir, lockName)
		said := false
		for waited := time.Duration(0); ; waited += again {
			l, err := try(path)
			if err != nil {
				return nil, err
			}
			if l != nil {
				// Whoever waits reads it; it says nothing that must be right.
				_ = os.WriteFile(path, []byte("process "+strconv.Itoa(os.Getpid())+", since "+clock().Format("15:04:05")+"\n"), 0o644)
				_ = os.Chmod(path, 0o644) // whoever comes after must be able to open it
				return func() {
					_ = os.Remove(path) // while it is held: try looks whether it is still the one
					_ = l.Unlock()
				}, nil
			}
			if _, err := os.Stat(dir); errors.Is(err, os.ErrNotExist) {
				// Another build made it, had nothing to put into it, and took it away.
				if err := mkdir(afero.NewOsFs(), dir); err != nil {
					return nil, err
				}
			}
			if waited >= patience {
				return nil, fmt.Errorf("another vivary has the folder %q (%s)", dir, holder(path))
			}
			if waited >= time.Second && !said {
				said = true
				say(holder(path))
			}
			time.Sleep(again)
		}
	}
}

func holder(path string) string {
	if text, err := os.ReadFile(path); err == nil && len(text) > 0 && len(text) < 100 {
		return strings.TrimSpace(string(text))
	}
	return "which one is not known"
}

// try takes the lock; nil where another has it. A lock whose file was removed meanwhile
// is nobody's.
func try(path string) (*flock.Flock, error) {
	flag := os.O_CREATE | os.O_RDONLY
	switch info, err := os.Lstat(path); {
	case err == nil && !info.Mode().IsRegular():
		return nil, fmt.Errorf("%q is not a file of vivary's: delete it", path)
	case err == nil:
		flag = os.O_RDONLY // with O_CREATE others' files are refused in a sticky folder
	}
	l := flock.New(path, flock.SetFlag(flag), flock.SetPermissions(0o644))
	switch ok, err := l.TryLock(); {
	case errors.Is(err, os.ErrNotExist):
		return nil, nil // it was removed between the two
	case unlockable(err):
		return nil, fmt.Errorf("%w: %w", err, errors.ErrUnsupported)
	case err != nil:
		return nil, fmt.Errorf("the folder cannot be held: %w", err)
	case !ok:
		return nil, nil
	}
	held, err := l.Stat()
	now, e := os.Lstat(path)
	if err == nil && e == nil && os.SameFile(held, now) {
		return l, nil
	}
	return nil, l.Unlock()
}
