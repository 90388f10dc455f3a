package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"strings"

	"github.com/spf13/afero"

	"vivary/plan"
)

// root returns the folder of the collection that a command is about, and says which it is
// where that is not the one that was named, or the current one.
func (w *world) root(f *flags, args []string) (string, error) {
	named, err := folder(f, args)
	if err != nil {
		return "", err
	}
	root := rootOf(w.disk, named)
	if root != named {
		shown := root
		if whole, err := filepath.Abs(root); err == nil {
			shown = whole
		}
		fmt.Fprintf(w.err, "The collection is the one in %s\n", filepath.ToSlash(shown))
	}
	return root, nil
}

// rootOf finds the collection to which a folder belongs: the folder itself where a
// collection block stands in it or below, else the nearest above in which one stands. Where
// there is none, it is the last on the way up of folders that hold plans. A log that was
// begun in a folder of enclosures would be read, and its lines would be in two places.
func rootOf(disk afero.Fs, named string) string {
	info, err := disk.Stat(named)
	if err != nil || !info.IsDir() || hasCollection(disk, named) || hasCollectionBelow(disk, named) {
		return named
	}
	root, chain := named, hasPlans(disk, named)
	for at := named; ; {
		up := filepath.Join(at, "..")
		parent, err := disk.Stat(up)
		if err != nil || up == at || os.SameFile(info, parent) {
			return root
		}
		if hasCollection(disk, up) {
			return up
		}
		if chain = chain && hasPlans(disk, up); chain {
			root = up
		}
		at, info = up, parent
	}
}

// collectionLine begins a collection block.
var collectionLine = regexp.MustCompile(`(?m)^(?:\x{feff})?[ \t]*collection[ \t]`)

// hasCollection reports whether a plan in a folder has a collection block. It looks at the
// text alone: one that cannot be read for a slip of the keyboard is a collection still.
func hasCollection(disk afero.Fs, dir string) bool {
	for _, path := range plansIn(disk, dir) {
		if startsCollection(disk, path) {
			return true
		}
	}
	return false
}

func hasPlans(disk afero.Fs, dir string) bool { return len(plansIn(disk, dir)) > 0 }

func plansIn(disk afero.Fs, dir string) (paths []string) {
	list, _ := afero.ReadDir(disk, dir)
	for _, x := range list {
		if isPlan(disk, dir, x) {
			paths = append(paths, filepath.Join(dir, x.Name()))
		}
	}
	return paths
}

func isPlan(disk afero.Fs, dir string, x os.FileInfo) bool {
	if !strings.HasSuffix(x.Name(), plan.PlanSuffix) || strings.HasPrefix(x.Name(), ".") {
		return false
	}
	if x.Mode()&os.ModeSymlink != 0 {
		to, err := disk.Stat(filepath.Join(dir, x.Name()))
		return err == nil && to.Mode().IsRegular()
	}
	return x.Mode().IsRegular()
}

var errFound = errors.New("found")

func hasCollectionBelow(disk afero.Fs, dir string) bool {
	err := afero.Walk(disk, dir, func(path string, x os.FileInfo, err error) error {
		switch {
		case err != nil:
			return nil // it is said when the collection is read
		case x.IsDir() && path != dir && strings.HasPrefix(x.Name(), "."):
			return filepath.SkipDir
		case isPlan(disk, filepath.Dir(path), x) && startsCollection(disk, path):
			return errFound
		}
		return nil
	})
	return errors.Is(err, errFound)
}

func startsCollection(disk afero.Fs, path string) bool {
	f, err := disk.Open(path)
	if err != nil {
		return false
	}
	defer f.Close()
	text, _ := io.ReadAll(io.LimitReader(f, plan.MaxFile))
	return collectionLine.Match(text)
}
