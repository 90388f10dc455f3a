package revision

import (
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/afero"

	"vivary/plan"
)

// Files returns the folder as it was at a commit, to be read under the path that was given
// to Open. Every name is there that a work tree would have. Of the files those are read that
// a collection reads, up to its bounds; the others are empty. What stands in folders that
// begin with a dot is not looked at, and another repository is an empty folder. A link leads
// to what it leads to in that commit; out of the repository it leads nowhere, since what is
// there now is not what was there then.
func (r *Repo) Files(c Commit) (afero.Fs, error) {
	r.kept.begin()
	b := &batch{r: r}
	defer func() { _ = b.end() }()
	s := r.snapshot(c)
	g := &gathering{s: s, b: b, seen: map[string]bool{}}
	s.ask = g
	root, at, err := s.lookup(r.below, true)
	switch {
	case errors.Is(err, fs.ErrNotExist) || err == nil && !root.isFolder():
		return nil, fmt.Errorf("at %s there is no folder %q", c.Short, r.below)
	case err != nil:
		return nil, err
	}
	if err := g.folder(at, at, root); err != nil {
		return nil, err
	}
	for len(g.links) > 0 && g.entries <= plan.MaxEntries {
		next := g.links
		g.links = nil
		for _, l := range next {
			if err := g.follow(l); err != nil {
				return nil, err
			}
		}
	}
	if err := g.read(); err != nil {
		return nil, err
	}
	s.ask = nil
	return linked{afero.FromIOFS{FS: s}, s}, nil
}

// gathering reads what a snapshot is to have, in the order in which the loader would.
type gathering struct {
	s       *snapshot
	b       *batch
	seen    map[string]bool // folders
	entries int
	links   []string
	wanted  []wanted
}

type wanted struct{ path, id string }

// isRead reports whether a file of that name is one of a collection.
func isRead(name string) bool {
	return name[0] != '.' && (strings.HasSuffix(name, plan.PlanSuffix) || strings.HasSuffix(name, plan.LogSuffix))
}

// folder looks through a folder, of which real is the path without links.
func (g *gathering) folder(p, real string, e entry) error {
	if g.seen[real] || e.mode != folderMode {
		return nil
	}
	g.seen[real] = true
	all, err := g.list(e.id)
	if err != nil {
		return err
	}
	for _, x := range all {
		if g.entries++; g.entries > plan.MaxEntries {
			return nil
		}
		at := path.Join(p, x.name)
		switch {
		case x.mode == linkMode:
			g.links = append(g.links, at)
		case x.mode == folderMode && x.name[0] != '.':
			if err := g.folder(at, path.Join(real, x.name), x); err != nil {
				return err
			}
		case !x.isFolder() && isRead(x.name):
			g.wanted = append(g.wanted, wanted{at, x.id})
		}
	}
	return nil
}

// follow looks at what a link leads to.
func (g *gathering) follow(p string) error {
	e, real, err := g.s.lookup(p, true)
	name := path.Base(p)
	switch {
	case errors.Is(err, fs.ErrNotExist), errors.Is(err, errOutside), errors.Is(err, errLinks):
		return nil // the loader says so
	case err != nil:
		return err
	case e.isFolder() && name[0] != '.':
		return g.folder(p, real, e)
	case !e.isFolder() && isRead(name):
		g.wanted = append(g.wanted, wanted{p, e.id})
	}
	return nil
}

// read reads the files, as far as they are read of a collection.
func (g *gathering) read() error {
	slices.SortFunc(g.wanted, func(a, b wanted) int {
		return cmp.Compare(filepath.FromSlash(a.path), filepath.FromSlash(b.path))
	})
	size := int64(0)
	for _, w := range g.wanted[:min(len(g.wanted), plan.MaxFiles)] {
		f, err := g.b.file(w.id)
		if err != nil {
			return err
		}
		g.s.files[w.id] = f
		if size += min(f.size, plan.MaxFile); size > plan.MaxBytes {
			break
		}
	}
	return nil
}

// list and link read what a snapshot does not have yet.
func (g *gathering) list(id string) (listing, error) {
	l, err := g.b.folder(id)
	if err == nil {
		g.s.folders[id] = l
	}
	return l, err
}

func (g *gathering) link(id string) (blob, error) {
	f, err := g.b.file(id)
	if err == nil {
		g.s.files[id] = f
	}
	return f, err
}
