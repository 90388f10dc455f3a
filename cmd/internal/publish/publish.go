// Package publish replaces files in a folder that others read all the while, so that
// none is ever seen half written, two builds at once wait for each other, and what is cut
// off half way is brought to its end by the next one. What is in the files is not its
// business.
//
// A build holds the folder (Open), reads what was last published (Folder.Last), stages
// every file that changes beside the one that it replaces, under a name that nobody else
// has, and puts them all in place (Commit). Each file is replaced at once, by a rename.
// Where there are several, a list of them is written first, .vivary-switch: from then on
// they count as published. Who finds the list reads the staged files in their place, and
// the next build puts in place what is left. So whoever reads by this package sees all
// files of one build, and whoever does not, a phone, sees each file whole.
package publish

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"

	"github.com/spf13/afero"
)

// Folder is a folder of published files that one build holds.
type Folder struct {
	disk    afero.Fs
	dir     string
	made    bool // by Open
	release func()

	// Unlocked says why other builds cannot be kept away; "" where they are.
	Unlocked string
}

// Open makes the folder if it is not there, waits for other builds by the lock (nil for
// none), and brings to its end what a build before left half done.
func Open(disk afero.Fs, dir string, lock Lock) (*Folder, error) {
	f := &Folder{disk: disk, dir: dir, release: func() {}}
	there, err := afero.DirExists(disk, dir)
	if err != nil {
		return nil, err
	}
	if !there {
		if err := mkdir(disk, dir); err != nil {
			return nil, fmt.Errorf("the folder %q cannot be made: %w", dir, err)
		}
		f.made = true
	}
	if lock != nil {
		switch release, err := lock(dir); {
		case errors.Is(err, errors.ErrUnsupported):
			f.Unlocked = err.Error()
		case err != nil:
			f.tidy()
			return nil, err
		default:
			f.release = release
		}
	}
	if err := f.recover(); err != nil {
		f.Close()
		return nil, err
	}
	return f, nil
}

// mkdir makes a folder. Another build that takes it away in the midst of that is no error
// yet.
func mkdir(disk afero.Fs, dir string) (err error) {
	for range 10 {
		if err = disk.MkdirAll(dir, 0o755); !errors.Is(err, os.ErrExist) {
			break
		}
	}
	return err
}

// Close lets others have the folder. One that was made and in which nothing was published
// goes again.
func (f *Folder) Close() {
	f.release()
	f.tidy()
}

func (f *Folder) tidy() {
	if empty, err := afero.IsEmpty(f.disk, f.dir); f.made && empty && err == nil {
		_ = f.disk.Remove(f.dir)
	}
}

// Batch is a set of files being replaced. Stage writes each under a name of its own
// beside the old one; Commit puts them all in place; Abandon takes back what was staged.
// Until Commit, no old file is touched.
type Batch struct {
	f *Folder

	mu     sync.Mutex
	staged []move
	aside  []move
}

// move is a file that is to have another name.
type move struct {
	name string // in the folder, as it is to be
	from string // the whole path where it stands
	to   string // the whole path where it is to stand
}

// Last returns what was last published under a name, or nil for nothing.
func (f *Folder) Last(name string) ([]byte, error) { return Last(f.disk, f.dir, name) }

// Begin begins a batch.
func (f *Folder) Begin() *Batch { return &Batch{f: f} }

// staging ends the name of a staged file, which begins with a dot: no server lists it,
// and no app takes it for a calendar.
const staging = ".new"

// Stage writes a file beside the one that it is to replace. It may be called from
// several goroutines at a time: most of it is waiting for the disk. Where the old one is
// a link, what it points to is replaced; owner, group and mode stay as they are, as far
// as the system lets them.
func (b *Batch) Stage(name string, text []byte) error {
	path := filepath.Join(b.f.dir, name)
	to, old, err := target(b.f.disk, path)
	if err != nil {
		return err
	}
	mode := fs.FileMode(0o644)
	if old != nil {
		mode = old.Mode().Perm()
	}
	from, err := b.write(to, text, mode)
	if err != nil {
		return fmt.Errorf("%q cannot be written: %w", path, err)
	}
	if old != nil {
		like(b.f.disk, from, old)
	}
	b.mu.Lock()
	defer b.mu.Unlock()
	b.staged = append(b.staged, move{name, from, to})
	return nil
}

// target returns the path that a file is to have, and the file that is there, nil for
// none: what a link points to, or the path itself where what is there is no file.
func target(disk afero.Fs, path string) (string, os.FileInfo, error) {
	to, err := follow(disk, path)
	if errors.Is(err, ErrNoFile) {
		return path, nil, nil
	}
	if err != nil {
		return "", nil, err
	}
	switch info, err := lstat(disk, to); {
	case errors.Is(err, os.ErrNotExist):
		return to, nil, nil
	case err != nil:
		return "", nil, fmt.Errorf("%q cannot be read: %w", path, err)
	case info.Mode().IsRegular():
		return to, info, nil
	}
	return path, nil, nil
}

// write writes a file beside another, under a name that no file has, to the disk itself.
func (b *Batch) write(beside string, text []byte, mode fs.FileMode) (path string, err error) {
	dir, base := filepath.Split(beside)
	var file afero.File
	for n := 0; ; n++ {
		path = dir + "." + base + "." + strconv.Itoa(n) + staging
		if file, err = b.f.disk.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode); !errors.Is(err, os.ErrExist) {
			break
		}
	}
	if err != nil {
		return "", err
	}
	return path, fill(b.f.disk, path, file, text)
}

// fill writes a text into a file that was just made, to the disk itself. What could not
// be written whole goes again.
func fill(disk afero.Fs, path string, file afero.File, text []byte) error {
	n, err := file.Write(text)
	if err == nil && n < len(text) {
		err = errors.New("the disk took only a part")
	}
	if err == nil {
		err = file.Sync()
	}
	if e := file.Close(); err == nil {
		err = e
	}
	if err != nil {
		_ = disk.Remove(path)
	}
	return err
}

// Partial is the error of files of which some were replaced. The others are put in place
// by the next build, and whoever reads by this package has them now.
type Partial struct {
	Replaced []string
	Name     string // of the first that was not
	err      error
}

func (p *Partial) Error() string {
	return fmt.Sprintf("%q cannot be replaced: %v", p.Name, p.err)
}

// Unwrap returns what went wrong.
func (p *Partial) Unwrap() error { return p.err }

// Commit puts every staged file in place. Where it returns an error that is not a
// Partial, nothing was replaced.
func (b *Batch) Commit() error {
	if len(b.staged) == 0 {
		return nil
	}
	slices.SortFunc(b.staged, func(x, y move) int { return strings.Compare(x.name, y.name) })
	moves := slices.Concat(b.aside, b.staged)
	if len(moves) > 1 {
		if err := b.f.list(b.staged); err != nil {
			b.Abandon()
			return err
		}
	}
	for i, m := range moves {
		if err := b.f.disk.Rename(m.from, m.to); err != nil {
			if i == 0 {
				_ = b.f.unlist()
				b.Abandon()
				return fmt.Errorf("%q cannot be replaced: %w", m.to, err)
			}
			return &Partial{Replaced: done(moves[len(b.aside):max(i, len(b.aside))]), Name: m.to, err: err}
		}
	}
	b.staged, b.aside = nil, nil
	if err := b.f.sync(moves); err != nil {
		return &Partial{Replaced: done(moves), Name: b.f.dir, err: err}
	}
	_ = b.f.unlist() // else the next build does
	return nil
}

func done(moves []move) (names []string) {
	for _, m := range moves {
		names = append(names, m.name)
	}
	return names
}

// Abandon removes what was staged.
func (b *Batch) Abandon() {
	for _, m := range b.staged {
		_ = b.f.disk.Remove(m.from)
	}
	b.staged, b.aside = nil, nil
}

// ErrForeign says that what bears a name was made by somebody else.
var ErrForeign = errors.New("it is there already, and vivary did not make it")

// Replace writes one file, whole or not at all. What is there goes only where ours says
// of its text that it may: what is no file, or somebody else's, is not touched.
func Replace(disk afero.Fs, path string, text []byte, ours func([]byte) bool) error {
	dir, name := filepath.Split(path)
	old, err := Last(disk, dir, name)
	if err == nil && old != nil && !ours(old) {
		err = ErrForeign
	}
	if err != nil {
		return fmt.Errorf("%q cannot be written: %w", path, err)
	}
	if err := disk.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return err
	}
	f := &Folder{disk: disk, dir: filepath.Dir(path)}
	b := f.Begin()
	if err := b.Stage(filepath.Base(path), text); err != nil {
		return err
	}
	return b.Commit()
}

// ErrChanged says that a file is no longer what was read of it.
var ErrChanged = errors.New("it has been changed meanwhile, by somebody else")

// Swap writes a file in place of what was read of it, whole or not at all, and only while it is
// still that. What a link leads to is written, and the link stays.
func Swap(disk afero.Fs, path string, was, text []byte) error {
	dir, name := filepath.Split(path)
	f := &Folder{disk: disk, dir: filepath.Dir(path)}
	b := f.Begin()
	if err := b.Stage(name, text); err != nil {
		return err
	}
	now, err := Last(disk, dir, name) // as late as can be: there is no lock that editors heed
	if err == nil && !bytes.Equal(now, was) {
		err = ErrChanged
	}
	if err != nil {
		b.Abandon()
		return fmt.Errorf("%q cannot be written: %w", path, err)
	}
	return b.Commit()
}

// Create writes a file that is not there yet, whole or not at all, and the folder for it.
// Whatever bears the name already, a link to nothing too, is not touched, also where it
// appears meanwhile: then the error is os.ErrExist.
func Create(disk afero.Fs, path string, text []byte) error {
	if err := disk.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return err
	}
	file, err := disk.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	return fill(disk, path, file, text)
}

// sync makes sure that the disk knows of the new names.
func (f *Folder) sync(moves []move) error {
	var dirs []string
	for _, m := range moves {
		if d := filepath.Dir(m.to); !slices.Contains(dirs, d) {
			dirs = append(dirs, d)
		}
	}
	for _, d := range dirs {
		if err := Settle(f.disk, d); err != nil {
			return err
		}
	}
	return nil
}

// Settle makes sure that the disk knows of the new names in a folder. Some file systems
// cannot do it: there they are as safe as they get.
func Settle(disk afero.Fs, dir string) error {
	d, err := disk.Open(dir)
	if err != nil {
		return err
	}
	err = d.Sync()
	if e := d.Close(); err == nil {
		err = e
	}
	if err != nil && cannotSync(err) {
		return nil
	}
	return err
}
