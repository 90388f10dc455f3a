// Package faulty is a disk that fails where a test wants it to.
package faulty

import (
	"errors"
	"os"
	"strings"
	"sync"
	"syscall"
	"time"

	"github.com/spf13/afero"
)

// Disk fails one call of its own or of its files, or that one and all that come after, as a
// machine does that is switched off there. A write that fails takes a half.
type Disk struct {
	afero.Fs
	At    int // the call that fails, from 1; 0 for none
	Dead  bool
	Short bool // a write takes a half and does not say so

	// Full is a folder in which there is no room for another file; "" for none.
	Full string

	// Each is called before every call; nil for nothing.
	Each func()

	// What says which call failed first: what it does, and the name where it has one.
	What string

	mu    sync.Mutex
	calls int
}

var errBroken = errors.New("input/output error")

func (d *Disk) fail(what string) error {
	if d.Each != nil {
		d.Each()
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	d.calls++
	if d.At == 0 || d.calls < d.At || d.calls > d.At && !d.Dead {
		return nil
	}
	if d.What == "" {
		d.What = what
	}
	return &os.PathError{Op: what, Path: "disk", Err: errBroken}
}

func (d *Disk) Open(name string) (afero.File, error) { return d.OpenFile(name, os.O_RDONLY, 0) }

func (d *Disk) OpenFile(name string, flag int, mode os.FileMode) (afero.File, error) {
	if err := d.fail("open " + name); err != nil {
		return nil, err
	}
	if d.Full != "" && flag&(os.O_WRONLY|os.O_RDWR) != 0 && strings.HasPrefix(name, d.Full) {
		return nil, &os.PathError{Op: "open", Path: name, Err: syscall.ENOSPC}
	}
	opened, err := d.Fs.OpenFile(name, flag, mode)
	if err != nil {
		return nil, err
	}
	return &file{opened, d}, nil
}

func (d *Disk) Rename(from, to string) error {
	if err := d.fail("rename to " + to); err != nil {
		return err
	}
	return d.Fs.Rename(from, to)
}

func (d *Disk) Remove(name string) error {
	if err := d.fail("remove " + name); err != nil {
		return err
	}
	return d.Fs.Remove(name)
}

func (d *Disk) MkdirAll(name string, mode os.FileMode) error {
	if err := d.fail("mkdir"); err != nil {
		return err
	}
	return d.Fs.MkdirAll(name, mode)
}

func (d *Disk) Mkdir(name string, mode os.FileMode) error {
	if err := d.fail("mkdir"); err != nil {
		return err
	}
	return d.Fs.Mkdir(name, mode)
}

func (d *Disk) Chtimes(name string, a, m time.Time) error {
	if err := d.fail("chtimes"); err != nil {
		return err
	}
	return d.Fs.Chtimes(name, a, m)
}

func (d *Disk) Stat(name string) (os.FileInfo, error) {
	if err := d.fail("stat " + name); err != nil {
		return nil, err
	}
	return d.Fs.Stat(name)
}

func (d *Disk) Chmod(name string, mode os.FileMode) error {
	if err := d.fail("chmod"); err != nil {
		return err
	}
	return d.Fs.Chmod(name, mode)
}

func (d *Disk) Chown(name string, uid, gid int) error {
	if err := d.fail("chown"); err != nil {
		return err
	}
	return d.Fs.Chown(name, uid, gid)
}

func (d *Disk) LstatIfPossible(name string) (os.FileInfo, bool, error) {
	if err := d.fail("lstat " + name); err != nil {
		return nil, false, err
	}
	return d.Fs.(afero.Lstater).LstatIfPossible(name)
}

func (d *Disk) ReadlinkIfPossible(name string) (string, error) {
	if err := d.fail("readlink"); err != nil {
		return "", err
	}
	return d.Fs.(afero.LinkReader).ReadlinkIfPossible(name)
}

type file struct {
	afero.File
	d *Disk
}

func (f *file) Write(p []byte) (int, error) {
	if err := f.d.fail("write"); err != nil {
		n, _ := f.File.Write(p[:len(p)/2])
		if f.d.Short {
			err = nil
		}
		return n, err
	}
	return f.File.Write(p)
}

func (f *file) Read(p []byte) (int, error) {
	if err := f.d.fail("read"); err != nil {
		return 0, err
	}
	return f.File.Read(p)
}

func (f *file) Sync() error {
	if err := f.d.fail("sync"); err != nil {
		return err
	}
	return f.File.Sync()
}

func (f *file) Close() error {
	err := f.d.fail("close")
	if e := f.File.Close(); err == nil {
		err = e
	}
	return err
}

func (f *file) Readdir(n int) ([]os.FileInfo, error) {
	if err := f.d.fail("readdir"); err != nil {
		return nil, err
	}
	return f.File.Readdir(n)
}

func (f *file) Stat() (os.FileInfo, error) {
	if err := f.d.fail("file-stat"); err != nil {
		return nil, err
	}
	return f.File.Stat()
}

func (f *file) Truncate(size int64) error {
	if err := f.d.fail("truncate"); err != nil {
		return err
	}
	return f.File.Truncate(size)
}
