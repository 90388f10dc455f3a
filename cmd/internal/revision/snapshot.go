package revision

import (
	"bytes"
	"errors"
	"io"
	"io/fs"
	"path/filepath"
	"strings"
	"time"

	"github.com/spf13/afero"
)

// snapshot is the files of a commit, as a file system. Once it is made nobody changes it.
type snapshot struct {
	root    entry
	mounts  []mount
	links   map[string]string // of the disk, on the way to the folder
	folders map[string]listing
	files   map[string]blob
	ask     *gathering // while it is made
}

// mount says where on the disk a folder of the tree would stand.
type mount struct{ dir, at string }

func (r *Repo) snapshot(c Commit) *snapshot {
	s := &snapshot{root: entry{"", folderMode, c.tree}, links: r.links, folders: map[string]listing{}, files: map[string]blob{}}
	s.mounts = []mount{{r.folder, r.below}}
	if above, ok := cutTail(r.folder, r.below); ok {
		s.mounts = []mount{{above, ""}}
	}
	s.mounts = append(s.mounts, mount{r.top, ""})
	return s
}

// cutTail returns the folder in which a path of a tree stands as whole does, where their
// names are the same: through a link they need not be.
func cutTail(whole, below string) (string, bool) {
	names := segments(below)
	for i := len(names) - 1; i >= 0; i-- {
		if filepath.Base(whole) != names[i] {
			return "", false
		}
		whole = filepath.Dir(whole)
	}
	return whole, true
}

// place returns where in the tree a path of the disk is.
func (s *snapshot) place(name string) (string, bool) {
	whole, err := filepath.Abs(name)
	if err != nil {
		return "", false
	}
	for _, m := range s.mounts {
		if rel, ok := inside(m.dir, whole); ok {
			return strings.Trim(m.at+"/"+rel, "/"), true
		}
	}
	return "", false
}

var (
	errOutside = errors.New("it leads out of the repository, and git does not know what was there")
	errLinks   = errors.New("its links lead round in a circle")
)

// maxLinks is how many links may lead on from one to the next.
const maxLinks = 40

// lookup returns what stands at a path of the tree, and where that is without links. The
// last name is followed where it is a link and last says so.
func (s *snapshot) lookup(p string, last bool) (entry, string, error) {
	trail, rest := []entry{s.root}, segments(p)
	for links := 0; len(rest) > 0; {
		name := rest[0]
		rest = rest[1:]
		switch {
		case name == "" || name == ".":
			continue
		case name == ".." && len(trail) == 1:
			return entry{}, "", errOutside
		case name == "..":
			trail = trail[:len(trail)-1]
			continue
		}
		all, err := s.list(trail[len(trail)-1])
		if err != nil {
			return entry{}, "", err
		}
		e, found := all.find(name)
		if !found {
			return entry{}, "", fs.ErrNotExist
		}
		if e.mode != linkMode || len(rest) == 0 && !last {
			trail = append(trail, e)
			continue
		}
		if links++; links > maxLinks {
			return entry{}, "", errLinks
		}
		to, err := s.target(e)
		if err != nil {
			return entry{}, "", err
		}
		if filepath.IsAbs(filepath.FromSlash(to)) {
			in, ok := s.place(filepath.FromSlash(to))
			if !ok {
				return entry{}, "", errOutside
			}
			to, trail = in, trail[:1]
		}
		rest = append(segments(to), rest...)
	}
	names := make([]string, 0, len(trail))
	for _, e := range trail[1:] {
		names = append(names, e.name)
	}
	return trail[len(trail)-1], strings.Join(names, "/"), nil
}

// list returns what stands in a folder; in what is none stands nothing.
func (s *snapshot) list(e entry) (listing, error) {
	l, have := s.folders[e.id]
	if have || e.mode != folderMode || s.ask == nil {
		return l, nil
	}
	return s.ask.list(e.id)
}

// target returns where a link leads.
func (s *snapshot) target(e entry) (string, error) {
	f, have := s.files[e.id]
	if !have && s.ask != nil {
		var err error
		if f, err = s.ask.link(e.id); err != nil {
			return "", err
		}
	}
	if len(f.text) == 0 {
		return "", fs.ErrNotExist
	}
	return string(f.text), nil
}

// at returns what stands at a path of the disk.
func (s *snapshot) at(op, name string, last bool) (entry, error) {
	p, ok := s.place(name)
	if !ok {
		return entry{}, &fs.PathError{Op: op, Path: name, Err: fs.ErrNotExist}
	}
	e, _, err := s.lookup(p, last)
	if err != nil {
		return entry{}, &fs.PathError{Op: op, Path: name, Err: err}
	}
	return e, nil
}

// Open opens a file or a folder.
func (s *snapshot) Open(name string) (fs.File, error) {
	e, err := s.at("open", name, true)
	if err != nil {
		return nil, err
	}
	i := s.info(name, e)
	if e.isFolder() {
		all, _ := s.list(e)
		return &folder{i, s, all}, nil
	}
	f := s.files[e.id]
	if f.text == nil {
		return &file{i, io.LimitReader(zeros{}, f.size)}, nil
	}
	return &file{i, bytes.NewReader(f.text)}, nil
}

// Stat says what stands at a path, behind its links.
func (s *snapshot) Stat(name string) (fs.FileInfo, error) {
	e, err := s.at("stat", name, true)
	if err != nil {
		return nil, err
	}
	return s.info(name, e), nil
}

// linked is a snapshot as the loader knows file systems that have links.
type linked struct {
	afero.Fs
	s *snapshot
}

// LstatIfPossible says what stands at a path, of a link too.
func (l linked) LstatIfPossible(name string) (fs.FileInfo, bool, error) {
	e, err := l.s.at("lstat", name, false)
	if err != nil {
		return nil, true, err
	}
	return l.s.info(name, e), true, nil
}

// ReadlinkIfPossible returns where a link leads.
func (l linked) ReadlinkIfPossible(name string) (string, error) {
	if to, ok := l.s.links[name]; ok {
		return to, nil
	}
	e, err := l.s.at("readlink", name, false)
	if err != nil {
		return "", err
	}
	if e.mode != linkMode {
		return "", &fs.PathError{Op: "readlink", Path: name, Err: fs.ErrInvalid}
	}
	to, err := l.s.target(e)
	return filepath.FromSlash(to), err
}

func (e entry) isFolder() bool { return e.mode == folderMode || e.mode == moduleMode }

// info is what is known of a file. What has the same contents is of the same time.
type info struct {
	name string
	mode fs.FileMode
	size int64
}

func (s *snapshot) info(name string, e entry) info {
	i := info{filepath.Base(name), 0o444, s.files[e.id].size}
	switch {
	case e.isFolder():
		i.mode, i.size = fs.ModeDir|0o555, 0
	case e.mode == linkMode:
		i.mode = fs.ModeSymlink | 0o777
	}
	return i
}

func (i info) Name() string       { return i.name }
func (i info) Size() int64        { return i.size }
func (i info) Mode() fs.FileMode  { return i.mode }
func (i info) ModTime() time.Time { return time.Time{} }
func (i info) IsDir() bool        { return i.mode.IsDir() }
func (i info) Sys() any           { return nil }

type file struct {
	info
	io.Reader
}

func (f *file) Stat() (fs.FileInfo, error) { return f.info, nil }
func (f *file) Close() error               { return nil }

// zeros is what a file holds that is too large to be read.
type zeros struct{}

func (zeros) Read(p []byte) (int, error) {
	clear(p)
	return len(p), nil
}

type folder struct {
	info
	s    *snapshot
	left listing
}

func (f *folder) Stat() (fs.FileInfo, error) { return f.info, nil }
func (f *folder) Close() error               { return nil }

func (f *folder) Read([]byte) (int, error) {
	return 0, &fs.PathError{Op: "read", Path: f.name, Err: errors.New("it is a folder")}
}

// ReadDir returns the next n of what stands in the folder, or all.
func (f *folder) ReadDir(n int) (out []fs.DirEntry, err error) {
	if n <= 0 {
		n = len(f.left)
	} else if len(f.left) == 0 {
		return nil, io.EOF
	}
	n = min(n, len(f.left))
	for _, e := range f.left[:n] {
		out = append(out, fs.FileInfoToDirEntry(f.s.info(e.name, e)))
	}
	f.left = f.left[n:]
	return out, nil
}
