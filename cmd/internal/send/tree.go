package send

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"regexp"
	"strconv"
	"time"
)

// tree is a folder of this machine or of another one, from which a web server serves. A
// file is written beside the one that it is to replace, under a name that nobody else has,
// and takes its name when all files of a publish stand ready: so a reader never sees a
// half of one, and all change within moments.
type tree struct {
	disk disk
	dir  string
	hold func() (func(), error)
	shut func() error
	// token is in the names of what this publish stages: others may be at work there.
	token string

	remarks []string
}

// disk is what a tree needs of a file system.
type disk interface {
	Open(path string) (io.ReadCloser, error)
	// Make makes a file that is not there yet.
	Make(path string, mode os.FileMode) (file, error)
	Mkdir(path string, mode os.FileMode) error
	Rename(from, to string) error
	Remove(path string) error
	Chmod(path string, mode os.FileMode) error
	Chtimes(path string, read, written time.Time) error
	Stat(path string) (os.FileInfo, error)
	// Lstat does not follow a link.
	Lstat(path string) (os.FileInfo, error)
	List(dir string) ([]os.FileInfo, error)
	// Settle makes sure that the new names in a folder last.
	Settle(dir string) error
}

// file is one that is being written.
type file interface {
	io.WriteCloser
	Sync() error
}

// Forms are the calendar and, beside it, the calendar compressed: a web server hands out
// the one or the other, and has nothing to reckon.
func (t *tree) Forms() []Form { return []Form{{}, {Suffix: ".gz", Packed: true}} }

func (t *tree) Hold() (func(), error) { return t.hold() }
func (t *tree) Remarks() []string     { return t.remarks }
func (t *tree) Close() error          { return t.shut() }

func (t *tree) path(p string) string { return path.Join(t.dir, p) }

// mark is what a file system says of a file. A file that replaces another gets a time of
// its own.
func mark(info os.FileInfo) string {
	return strconv.FormatInt(info.ModTime().Unix(), 16) + "-" + strconv.FormatInt(info.Size(), 16)
}

func (t *tree) List() (map[string]string, error) {
	all := map[string]string{}
	if err := t.list("", all); err != nil {
		return nil, err
	}
	dirs, err := t.dirs(private)
	if err != nil {
		return nil, err
	}
	for _, d := range dirs {
		if err := t.list(d, all); err != nil {
			return nil, err
		}
	}
	return all, nil
}

// list lists the calendars in a folder of the tree. A folder that is not there has none.
func (t *tree) list(dir string, all map[string]string) error {
	files, err := t.disk.List(t.path(dir))
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("%q cannot be read: %w", t.path(dir), err)
	}
	for _, x := range files {
		if p := path.Join(dir, x.Name()); inPlace(p) && x.Mode().IsRegular() {
			all[p] = mark(x)
		}
	}
	return nil
}

// dirs lists the folders in a folder of the tree.
func (t *tree) dirs(dir string) (dirs []string, err error) {
	files, err := t.disk.List(t.path(dir))
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, fmt.Errorf("%q cannot be read: %w", t.path(dir), err)
	}
	for _, x := range files {
		if x.IsDir() {
			dirs = append(dirs, path.Join(dir, x.Name()))
		}
	}
	return dirs, nil
}

func (t *tree) Read(p string) ([]byte, error) {
	switch info, err := t.disk.Lstat(t.path(p)); {
	case errors.Is(err, fs.ErrNotExist):
		return nil, nil
	case err != nil:
		return nil, fmt.Errorf("%q cannot be read: %w", t.path(p), err)
	case !info.Mode().IsRegular(), info.Size() > most:
		return []byte{}, nil // nothing of ours
	}
	file, err := t.disk.Open(t.path(p))
	if err != nil {
		return nil, fmt.Errorf("%q cannot be read: %w", t.path(p), err)
	}
	defer file.Close()
	text, err := io.ReadAll(io.LimitReader(file, most))
	if err != nil {
		return nil, fmt.Errorf("%q cannot be read: %w", t.path(p), err)
	}
	return text, nil
}

// ready is a file that is to take its name.
type ready struct{ from, to, mark string }

func (t *tree) Put(files []File, sending func(int), stored func(int, string)) error {
	all := make([]ready, 0, len(files))
	abandon := func(from int) {
		for _, r := range all[from:] {
			_ = t.disk.Remove(r.from)
		}
	}
	for i := range files {
		sending(i)
		r, err := t.stage(&files[i])
		if err != nil {
			abandon(0)
			return fmt.Errorf("%s cannot be written: %w", Shown(files[i].Path), err)
		}
		all = append(all, r)
	}
	dirs := map[string]bool{}
	for i, r := range all {
		if err := t.disk.Rename(r.from, r.to); err != nil {
			abandon(i)
			return fmt.Errorf("%s cannot be replaced: %w", Shown(files[i].Path), err)
		}
		dirs[path.Dir(r.to)] = true
		stored(i, r.mark)
	}
	for d := range dirs {
		if err := t.disk.Settle(d); err != nil {
			return fmt.Errorf("%q cannot be written: %w", d, err)
		}
	}
	return nil
}

// stage writes a file beside the one that it is to replace, to the disk itself.
func (t *tree) stage(f *File) (ready, error) {
	to := t.path(f.Path)
	if err := t.folder(path.Dir(to)); err != nil {
		return ready{}, err
	}
	mode := fs.FileMode(0o644) // a web server reads it, as another user
	old, err := t.disk.Lstat(to)
	switch {
	case err == nil && old.Mode().IsRegular():
		mode = old.Mode().Perm()
	case err == nil && old.IsDir():
		return ready{}, errors.New("a folder has its name")
	case err != nil && !errors.Is(err, fs.ErrNotExist):
		return ready{}, err
	default:
		old = nil
	}
	from, err := t.write(to, f.Text, mode)
	if err != nil {
		return ready{}, err
	}
	r := ready{from: from, to: to}
	if r.mark, err = t.newer(from, old); err != nil {
		_ = t.disk.Remove(from)
	}
	return r, err
}

// newer gives a file a later second than that of the one that it replaces, and returns its
// mark: web servers tell files of one size apart by it, and so do all who keep copies.
func (t *tree) newer(path string, old os.FileInfo) (string, error) {
	info, err := t.disk.Lstat(path)
	if err != nil || old == nil || info.ModTime().Unix() > old.ModTime().Unix() {
		return markOf(info, err)
	}
	at := time.Unix(old.ModTime().Unix()+1, 0)
	if err := t.disk.Chtimes(path, at, at); err != nil {
		return "", err
	}
	return markOf(t.disk.Lstat(path))
}

func markOf(info os.FileInfo, err error) (string, error) {
	if err != nil {
		return "", err
	}
	return mark(info), nil
}

// write writes a file beside another, under a name that no file has. What could not be
// written whole goes again.
func (t *tree) write(beside string, text []byte, mode fs.FileMode) (p string, err error) {
	dir, base := path.Split(beside)
	p = dir + "." + base + "." + t.token + ".new"
	file, err := t.disk.Make(p, mode)
	if err != nil {
		return "", err
	}
	n, err := file.Write(text)
	if err == nil && n < len(text) {
		err = io.ErrShortWrite
	}
	if err == nil {
		err = file.Sync()
	}
	if e := file.Close(); err == nil {
		err = e
	}
	if err == nil {
		err = t.disk.Chmod(p, mode) // whatever is usual here, a web server has to read it
	}
	if err != nil {
		_ = t.disk.Remove(p)
	}
	return p, err
}

// folder makes a folder of the tree that is not there. Of the tree itself the folder above
// has to be there: else it is likely another path that was meant, or a disk is missing.
func (t *tree) folder(dir string) error {
	if info, err := t.disk.Stat(dir); err == nil {
		if !info.IsDir() {
			return fmt.Errorf("%q is no folder", dir)
		}
		return nil
	} else if !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	if dir == path.Clean(t.dir) {
		if _, err := t.disk.Stat(path.Dir(dir)); err != nil {
			return fmt.Errorf("the folder %q, in which it is to be made, cannot be found: %w", path.Dir(dir), err)
		}
	} else if err := t.folder(path.Dir(dir)); err != nil {
		return err
	}
	err := t.disk.Mkdir(dir, 0o755)
	if info, e := t.disk.Stat(dir); err != nil && e == nil && info.IsDir() {
		return nil // somebody else made it meanwhile
	}
	if err != nil {
		return err
	}
	return t.disk.Chmod(dir, 0o755)
}

func (t *tree) Remove(p string) error {
	if err := t.disk.Remove(t.path(p)); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	if dir := path.Dir(p); dir != "." {
		_ = t.disk.Remove(t.path(dir)) // where it is empty now
	}
	return nil
}

// staged is the form of the names of files that were written and have not taken their name.
var staged = regexp.MustCompile(`^\.(?:[^/]+\.ics(?:\.gz)?|` + regexp.QuoteMeta(manifestName) + `)\.[0-9A-Z]+\.new$`)

// sweep takes away what publishes that were cut off left behind: what is older than
// before.
func (t *tree) sweep(before time.Time) {
	dirs, _ := t.dirs(private)
	for _, d := range append(dirs, "") {
		files, _ := t.disk.List(t.path(d))
		for _, x := range files {
			if staged.MatchString(x.Name()) && x.Mode().IsRegular() && x.ModTime().Before(before) {
				_ = t.disk.Remove(t.path(path.Join(d, x.Name())))
			}
		}
	}
}
