//go:build unix

package publish

import (
	"errors"
	"os"
	"syscall"

	"github.com/spf13/afero"
)

// like gives a file the owner, group and mode of another, as far as the system lets us:
// only root may give a file away.
func like(disk afero.Fs, path string, old os.FileInfo) {
	mine, err := disk.Stat(path)
	if err != nil {
		return
	}
	of, ok := old.Sys().(*syscall.Stat_t)
	is, known := mine.Sys().(*syscall.Stat_t)
	if ok && known && (is.Uid != of.Uid || is.Gid != of.Gid) && disk.Chown(path, int(of.Uid), int(of.Gid)) != nil {
		_ = disk.Chown(path, -1, int(of.Gid))
	}
	if mine.Mode().Perm() != old.Mode().Perm() {
		_ = disk.Chmod(path, old.Mode().Perm()) // it has no more than that already
	}
}

// cannotSync reports whether a file system does not sync folders.
func cannotSync(err error) bool {
	return errors.Is(err, syscall.EINVAL) || errors.Is(err, errors.ErrUnsupported)
}

// unlockable reports whether a file system knows no locks.
func unlockable(err error) bool {
	return errors.Is(err, errors.ErrUnsupported) || errors.Is(err, syscall.ENOLCK)
}
