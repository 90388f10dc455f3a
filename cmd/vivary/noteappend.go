package main

import (
	"errors"
	"os"
	"path/filepath"

	"github.com/spf13/afero"
)

// appendTo appends to a file in one write, so that of two that append at once neither
// is lost. What a full disk took of it is taken away again, or half a line would stand
// before the next; so is a file that was made for it.
func appendTo(disk afero.Fs, path string, text []byte) error {
	if err := disk.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return err
	}
	_, err := disk.Stat(path)
	made := errors.Is(err, os.ErrNotExist)
	file, err := disk.OpenFile(path, os.O_WRONLY|os.O_APPEND|os.O_CREATE, 0o644)
	if err != nil {
		return err
	}
	size := int64(-1)
	if info, e := file.Stat(); e == nil {
		size = info.Size()
	}
	n, err := file.Write(text)
	if err == nil {
		err = file.Sync()
	}
	if err != nil {
		err = errors.Join(err, takeAway(file, size, n))
	}
	if e := file.Close(); err == nil {
		err = e
	}
	if err != nil && made {
		if info, e := disk.Stat(path); e == nil && info.Size() == 0 {
			_ = disk.Remove(path)
		}
	}
	return err
}

// takeAway takes the last n bytes away from a file that had size before them. Where somebody
// appended meanwhile they stay: a torn line costs itself alone.
func takeAway(file afero.File, size int64, n int) error {
	info, err := file.Stat()
	if err != nil || n == 0 || info.Size() != size+int64(n) {
		return nil
	}
	return file.Truncate(size)
}
