//go:build !unix

package publish

import (
	"errors"
	"os"

	"github.com/spf13/afero"
)

// like gives a file the mode of another.
func like(disk afero.Fs, path string, old os.FileInfo) { _ = disk.Chmod(path, old.Mode().Perm()) }

// cannotSync reports whether a folder cannot be synced: here none can.
func cannotSync(error) bool { return true }

// unlockable reports whether a file system knows no locks.
func unlockable(err error) bool { return errors.Is(err, errors.ErrUnsupported) }
