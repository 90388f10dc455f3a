package publish

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strconv"

	"github.com/spf13/afero"

	"vivary/schema/wording"
)

// most is how much of a file is read. No calendar of ours comes near.
const most = 64 << 20

// ErrNoFile says that what bears the name is no file that could be read: a folder, a
// pipe, a device, a link to nothing, one that is far too long or not ours to read.
var ErrNoFile = errors.New("no file to read")

// Last returns what was last published under a name, or nil for nothing. What is not a
// file is never opened: a pipe would be waited for for ever.
func Last(disk afero.Fs, dir, name string) ([]byte, error) {
	file, err := open(disk, dir, name)
	if file == nil || err != nil {
		return nil, err
	}
	defer file.Close()
	return io.ReadAll(io.LimitReader(file, most))
}

// Head returns the beginning of what was last published under a name, up to the first
// component of the calendar.
func Head(disk afero.Fs, dir, name string) ([]byte, error) {
	file, err := open(disk, dir, name)
	if file == nil || err != nil {
		return nil, err
	}
	defer file.Close()
	var head []byte
	r := bufio.NewReader(io.LimitReader(file, most/4))
	for {
		line, err := r.ReadSlice('\n')
		head = append(head, line...)
		if err != nil && err != bufio.ErrBufferFull || len(head) > len(line) && bytes.HasPrefix(line, []byte("BEGIN:")) {
			return head, nil
		}
	}
}

// open opens what counts as published under a name; nil for nothing.
func open(disk afero.Fs, dir, name string) (afero.File, error) {
	path, err := follow(disk, filepath.Join(dir, name))
	if err != nil {
		return nil, err
	}
	staged, err := listed(disk, dir)
	if err != nil {
		return nil, err
	}
	if from := staged[name]; from != "" {
		if file, err := regular(disk, filepath.Join(filepath.Dir(path), from)); file != nil && err == nil {
			return file, nil
		} // else it has just been put in place
	}
	return regular(disk, path)
}

// regular opens a file; nil where there is none.
func regular(disk afero.Fs, path string) (afero.File, error) {
	switch info, err := lstat(disk, path); {
	case errors.Is(err, os.ErrNotExist):
		return nil, nil
	case err != nil:
		return nil, err
	case !info.Mode().IsRegular():
		return nil, fmt.Errorf("it is %s, %w", wording.FileKind(info.Mode()), ErrNoFile)
	case info.Size() > most:
		return nil, fmt.Errorf("it has %d MB, %w", info.Size()>>20, ErrNoFile)
	}
	file, err := disk.Open(path)
	switch {
	case errors.Is(err, os.ErrNotExist):
		return nil, nil
	case errors.Is(err, os.ErrPermission):
		return nil, fmt.Errorf("it may be read by others only, %w", ErrNoFile)
	case err != nil:
		return nil, err // not the file: it would be an interface that is not nil
	}
	return file, nil
}

func lstat(disk afero.Fs, path string) (os.FileInfo, error) {
	if l, ok := disk.(afero.Lstater); ok {
		info, _, err := l.LstatIfPossible(path)
		return info, err
	}
	return disk.Stat(path)
}

// follow returns the path of what a link points to, or the path itself.
func follow(disk afero.Fs, path string) (string, error) {
	links, ok := disk.(afero.LinkReader)
	if !ok {
		return path, nil
	}
	at := path
	for range 40 {
		info, err := lstat(disk, at)
		switch {
		case errors.Is(err, os.ErrNotExist) && at != path:
			return "", fmt.Errorf("it is a link to %q, which is not there, %w", at, ErrNoFile)
		case errors.Is(err, os.ErrNotExist):
			return at, nil
		case err != nil:
			return "", err
		case info.Mode()&fs.ModeSymlink == 0:
			return at, nil
		}
		to, err := links.ReadlinkIfPossible(at)
		if err != nil {
			return "", fmt.Errorf("the link %q cannot be read: %w", at, err)
		}
		if !filepath.IsAbs(to) {
			to = filepath.Join(filepath.Dir(at), to)
		}
		at = to
	}
	return "", fmt.Errorf("it is a link that leads to itself, %w", ErrNoFile)
}

// Aside keeps what stands under a name under another one that is free, once the batch is
// put in place: text where it could be read, else the thing itself. It returns that name.
func (b *Batch) Aside(name string, text []byte) (string, error) {
	path, err := b.f.free(filepath.Join(b.f.dir, name))
	if err != nil {
		return "", err
	}
	free := filepath.Base(path)
	if text != nil {
		return free, b.Stage(free, text)
	}
	b.mu.Lock()
	defer b.mu.Unlock()
	b.aside = append(b.aside, move{free, filepath.Join(b.f.dir, name), path})
	return free, nil
}

// free returns a path for what is kept aside that nothing has.
func (f *Folder) free(path string) (string, error) {
	for n := 1; ; n++ {
		free := path + ".aside-" + strconv.Itoa(n)
		switch _, err := lstat(f.disk, free); {
		case errors.Is(err, os.ErrNotExist):
			return free, nil
		case err != nil:
			return "", err
		}
	}
}

// Names returns the names of the calendars that count as published, in order, also of
// those that are not in place yet.
func Names(disk afero.Fs, dir string) ([]string, error) {
	names := map[string]bool{}
	staged, err := listed(disk, dir)
	if err != nil {
		return nil, err
	}
	for name := range staged {
		names[name] = true
	}
	files, err := afero.ReadDir(disk, dir)
	if err != nil {
		return nil, err
	}
	for _, x := range files {
		names[x.Name()] = true
	}
	for name := range names {
		if filepath.Ext(name) != ".ics" || name[0] == '.' {
			delete(names, name)
		}
	}
	return slices.Sorted(maps.Keys(names)), nil
}
