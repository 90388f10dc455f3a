package send

import (
	"crypto/rand"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
)

// folder is a target on this machine.
func folder(on afero.Fs, dir string, lock publish.Lock) (Target, error) {
	t := &tree{disk: local{on}, dir: filepath.ToSlash(filepath.Clean(dir)), shut: func() error { return nil }, token: rand.Text()}
	switch info, err := on.Stat(dir); {
	case err == nil && !info.IsDir():
		return nil, fmt.Errorf("%q is no folder", dir)
	case err != nil && !errors.Is(err, fs.ErrNotExist):
		return nil, err
	}
	t.hold = func() (func(), error) {
		if err := t.folder(t.dir); err != nil {
			return nil, err
		}
		if lock == nil {
			return func() {}, nil
		}
		switch release, err := lock(dir); {
		case errors.Is(err, errors.ErrUnsupported):
			t.remarks = append(t.remarks, fmt.Sprintf("%s cannot be locked (%v): let no other publish run at the same time", dir, err))
		case err != nil:
			return nil, err
		default:
			t.sweep(time.Unix(1<<40, 0)) // nobody else is at work here
			return release, nil
		}
		return func() {}, nil
	}
	return t, nil
}

// local is the disk of this machine.
type local struct{ afero.Fs }

func (d local) Open(path string) (io.ReadCloser, error) { return d.Fs.Open(path) }

func (d local) Make(path string, mode os.FileMode) (file, error) {
	return d.Fs.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
}

func (d local) List(dir string) ([]os.FileInfo, error) { return afero.ReadDir(d.Fs, dir) }

func (d local) Lstat(path string) (os.FileInfo, error) {
	if l, ok := d.Fs.(afero.Lstater); ok {
		info, _, err := l.LstatIfPossible(path)
		return info, err
	}
	return d.Fs.Stat(path)
}

func (d local) Settle(dir string) error { return publish.Settle(d.Fs, dir) }
