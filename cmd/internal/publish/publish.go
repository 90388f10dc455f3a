// Package publish replaces files in a folder all together or not at all. What is
// in them is not its business.
package publish

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"sync"

	"github.com/spf13/afero"
)

// Batch is a set of files being replaced. Stage writes each under a name of its
// own beside the old one; Commit puts them all in place; Abandon takes back what
// was staged. Until Commit, no old file is touched.
type Batch struct {
	disk afero.Fs
	dir  string

	mu     sync.Mutex
	staged []string
}

const staging = ".new"

// Begin makes the folder, if it is not there.
func Begin(disk afero.Fs, dir string) (*Batch, error) {
	if err := disk.MkdirAll(dir, 0o755); err != nil {
		return nil, fmt.Errorf("the folder %q cannot be made: %w", dir, err)
	}
	return &Batch{disk: disk, dir: dir}, nil
}

// Last returns what was last published under a name, or nil for nothing.
func Last(disk afero.Fs, dir, name string) ([]byte, error) {
	text, err := afero.ReadFile(disk, filepath.Join(dir, name))
	if errors.Is(err, os.ErrNotExist) {
		return nil, nil
	}
	return text, err
}

// headMost is how much of a calendar's beginning is read.
const headMost = 16 << 20

// Head returns the beginning of what was last published under a name, up to the first
// component of the calendar.
func Head(disk afero.Fs, dir, name string) ([]byte, error) {
	f, err := disk.Open(filepath.Join(dir, name))
	if err != nil {
		return nil, err
	}
	defer f.Close()
	var head []byte
	r := bufio.NewReader(io.LimitReader(f, headMost))
	for line, err := r.ReadSlice('\n'); ; line, err = r.ReadSlice('\n') {
		head = append(head, line...)
		if err != nil && err != bufio.ErrBufferFull || len(head) > len(line) && bytes.HasPrefix(line, []byte("BEGIN:")) {
			return head, nil
		}
	}
}

// Stage writes a file beside the one that it is to replace. It may be called from
// several goroutines at a time: most of it is waiting for the disk.
func (b *Batch) Stage(name string, text []byte) error {
	path := filepath.Join(b.dir, name+staging)
	b.mu.Lock()
	b.staged = append(b.staged, name)
	b.mu.Unlock()
	f, err := b.disk.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_TRUNC, 0o644)
	if err != nil {
		return fmt.Errorf("%q cannot be written: %w", path, err)
	}
	_, err = f.Write(text)
	if err == nil {
		err = f.Sync()
	}
	if e := f.Close(); err == nil {
		err = e
	}
	if err != nil {
		return fmt.Errorf("%q cannot be written: %w", path, err)
	}
	return nil
}

// Commit puts every staged file in place. Each is replaced whole; should one fail,
// those after it keep their old content and the error says so.
func (b *Batch) Commit() error {
	for i, name := range b.staged {
		path := filepath.Join(b.dir, name)
		if err := b.disk.Rename(path+staging, path); err != nil {
			b.staged = b.staged[i:]
			b.Abandon()
			return fmt.Errorf("%q cannot be replaced: %w", path, err)
		}
	}
	b.staged = nil
	return nil
}

// Abandon removes what was staged.
func (b *Batch) Abandon() {
	for _, name := range b.staged {
		_ = b.disk.Remove(filepath.Join(b.dir, name+staging))
	}
	b.staged = nil
}
