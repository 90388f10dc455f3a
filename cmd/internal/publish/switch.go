package publish

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"sync"

	"github.com/spf13/afero"
)

// SwitchName is the file that says which staged files count as published already: on each
// line the name of a file, a tab, and the name of what is staged for it beside it.
const SwitchName = ".vivary-switch"

// list writes the list. It is there whole or not at all.
func (f *Folder) list(moves []move) error {
	var text strings.Builder
	for _, m := range moves {
		text.WriteString(m.name + "\t" + filepath.Base(m.from) + "\n")
	}
	path := filepath.Join(f.dir, SwitchName)
	b := f.Begin()
	from, err := b.write(path, []byte(text.String()), 0o644)
	if err == nil {
		if err = f.disk.Rename(from, path); err != nil {
			_ = f.disk.Remove(from)
		}
	}
	if err != nil {
		return fmt.Errorf("%q cannot be written: %w", path, err)
	}
	if err := f.sync([]move{{to: path}}); err != nil {
		_ = f.unlist()
		return fmt.Errorf("%q cannot be written: %w", path, err)
	}
	return nil
}

func (f *Folder) unlist() error {
	if err := f.disk.Remove(filepath.Join(f.dir, SwitchName)); err != nil && !errors.Is(err, os.ErrNotExist) {
		return err
	}
	return nil
}

// listed returns what a list has staged, by name; nil where there is no list.
func listed(disk afero.Fs, dir string) (map[string]string, error) {
	path := filepath.Join(dir, SwitchName)
	switch info, err := lstat(disk, path); {
	case errors.Is(err, os.ErrNotExist):
		return nil, nil
	case err != nil:
		return nil, err
	case !info.Mode().IsRegular(), info.Size() > most:
		return nil, nil // no list of ours
	}
	text, err := afero.ReadFile(disk, path)
	if errors.Is(err, os.ErrNotExist) {
		return nil, nil // it has just been done
	}
	if err != nil {
		return nil, err
	}
	out := map[string]string{}
	for line := range strings.Lines(string(text)) {
		name, from, ok := strings.Cut(strings.TrimSuffix(line, "\n"), "\t")
		if ok && isStaged(from) && name == filepath.Base(name) && from == filepath.Base(from) {
			out[name] = from
		}
	}
	return out, nil
}

// isStaged reports whether a name is one that Stage gives to a calendar, to what of one
// is kept aside, or to the list.
func isStaged(name string) bool { return stagedFor(name) != "" }

// stagedFor returns for which name a file is staged; "" for none.
func stagedFor(name string) string {
	if m := stagedForm().FindStringSubmatch(name); m != nil {
		return m[1]
	}
	return ""
}

var stagedForm = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`^\.(.+\.ics(?:\.aside-\d+)?|\.vivary-switch)\.\d+\.new$`)
})

// recover puts in place what a build before staged and listed, and takes away what it
// staged and did not.
func (f *Folder) recover() error {
	all, err := listed(f.disk, f.dir)
	if err != nil {
		return err
	}
	var moves []move
	for name, base := range all {
		path := filepath.Join(f.dir, name)
		to, old, err := target(f.disk, path)
		if err != nil {
			return err
		}
		from := filepath.Join(filepath.Dir(to), base)
		if info, err := lstat(f.disk, from); err != nil || !info.Mode().IsRegular() {
			continue // it is in place
		}
		if _, err := lstat(f.disk, to); err == nil && old == nil {
			free, err := f.free(to)
			if err == nil {
				err = f.disk.Rename(to, free)
			}
			if err != nil {
				return fmt.Errorf("%q cannot be put aside: %w", to, err)
			}
		}
		if err := f.disk.Rename(from, to); err != nil {
			return fmt.Errorf("a build before this one ended half way, and %q cannot be replaced: %w", path, err)
		}
		moves = append(moves, move{name, from, to})
	}
	if len(moves) > 0 {
		if err := f.sync(moves); err != nil {
			return err
		}
	}
	if all != nil {
		if err := f.unlist(); err != nil {
			return err // what is staged from now on would count as published
		}
	}
	if f.Unlocked == "" {
		f.sweep()
	}
	return nil
}

// sweep takes away what builds staged and never came to put in place. Nobody else is at
// work here.
func (f *Folder) sweep() {
	f.sweepOf(f.dir, "")
	files, err := afero.ReadDir(f.disk, f.dir)
	if err != nil {
		return
	}
	for _, x := range files {
		path := filepath.Join(f.dir, x.Name())
		if info, err := lstat(f.disk, path); err != nil || info.Mode()&fs.ModeSymlink == 0 {
			continue
		}
		if to, err := follow(f.disk, path); err == nil && filepath.Ext(to) == ".ics" {
			f.sweepOf(filepath.Dir(to), filepath.Base(to))
		}
	}
}

// sweepOf does it in one folder, where a name is given for that name only.
func (f *Folder) sweepOf(dir, name string) {
	files, err := afero.ReadDir(f.disk, dir)
	if err != nil {
		return
	}
	for _, x := range files {
		if of := stagedFor(x.Name()); of != "" && (name == "" || of == name) && x.Mode().IsRegular() {
			_ = f.disk.Remove(filepath.Join(dir, x.Name()))
		}
	}
}
