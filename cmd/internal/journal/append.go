package journal

import (
	"errors"
	"io"
	"os"
	"path/filepath"

	"github.com/spf13/afero"
)

// appendTo appends to a file in one write, so that of two that append at once neither
// is lost. What a full disk took of it is taken away again, or half a line would stand
// before the next; so is a file that was made for it.
func appendTo(disk afero.Fs, path string, text []byte) error {
	dir := filepath.Dir(path)
	if err := disk.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	_, err := disk.Stat(path)
	made := errors.Is(err, os.ErrNotExist)
	file, err := disk.OpenFile(path, os.O_WRONLY|os.O_APPEND|os.O_CREATE, 0o644)
	if err != nil {
		return err
	}
	err = put(file, text)
	_ = file.Close() // what was written is on the disk by now, and what was not is gone
	switch {
	case err == nil && made:
		syncFolder(disk, dir)
	case made:
		if info, e := disk.Stat(path); e == nil && info.Size() == 0 {
			_ = disk.Remove(path)
		}
	}
	return err
}

// put writes to the end of a file, all or nothing.
func put(file afero.File, text []byte) error {
	size := int64(-1)
	if info, err := file.Stat(); err == nil {
		size = info.Size()
	}
	n, err := file.Write(text)
	if err == nil && n < len(text) {
		err = io.ErrShortWrite
	}
	if err == nil {
		err = file.Sync()
	}
	if err != nil {
		return errors.Join(err, takeAway(file, size, n))
	}
	return nil
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

// syncFolder makes the name of a new file as safe as the disk can: some cannot.
func syncFolder(disk afero.Fs, dir string) {
	if file, err := disk.Open(dir); err == nil {
		_ = file.Sync()
		_ = file.Close()
	}
}
