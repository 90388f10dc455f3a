package serve

import (
	"context"
	"hash/maphash"
	"io/fs"
	"log/slog"
	"path/filepath"
	"strings"
	"time"

	"github.com/fsnotify/fsnotify"
)

const (
	// settle is how long nothing has to change until what was written counts as whole: an
	// editor writes a file in several steps.
	settle = 100 * time.Millisecond
	// patience is how long it is waited for that at the most.
	patience = 2 * time.Second
	// looking is how often the files are looked through: on disks of others nothing tells of a
	// change, and where very much changes at once, not of all of it.
	looking = 20 * time.Second
)

// Watch sends on the channel that it returns when a plan, a log or the file of keys has
// changed, until the context ends. What it cannot watch it looks through again and again.
func (s *Server) Watch(ctx context.Context) <-chan struct{} {
	out := make(chan struct{}, 1)
	w, err := fsnotify.NewWatcher()
	if err != nil {
		s.Log.LogAttrs(ctx, slog.LevelWarn, "folders are looked through, not watched", slog.String("why", err.Error()))
	}
	go s.watch(ctx, w, out)
	return out
}

func (s *Server) watch(ctx context.Context, w *fsnotify.Watcher, out chan<- struct{}) {
	var events chan fsnotify.Event
	var wrong chan error
	if w != nil {
		defer w.Close()
		events, wrong = w.Events, w.Errors
	}
	seen := s.look(ctx, w)
	tick := time.NewTicker(looking)
	defer tick.Stop()
	var settled <-chan time.Time
	var first time.Time
	changed := func() {
		now := time.Now()
		if settled == nil {
			first = now
		}
		settled = time.After(min(settle, max(0, patience-now.Sub(first))))
	}
	changed() // between the build before and the first look something may have been written
	for {
		select {
		case <-ctx.Done():
			return
		case e := <-events:
			if s.concerns(e.Name) || e.Has(fsnotify.Create) && s.below(e.Name) && filepath.Dir(e.Name) != filepath.Dir(s.Keys) {
				changed()
			}
		case <-wrong: // of too much at once: what is missed is found by looking
			changed()
		case <-tick.C:
			if now := s.look(ctx, w); now != seen {
				seen = now
				changed()
			}
		case <-settled:
			settled = nil
			seen = s.look(ctx, w) // folders that are new are watched from now on
			select {
			case out <- struct{}{}:
			default: // somebody is told already
			}
		}
	}
}

// concerns reports whether a file is a plan, a log, one that may be meant for one, or the
// file of keys. What a build writes is none of these.
func (s *Server) concerns(name string) bool {
	base := filepath.Base(name)
	if filepath.Clean(name) == filepath.Clean(s.Keys) {
		return true
	}
	return s.below(name) && !strings.HasPrefix(base, ".vivary-") && !strings.HasSuffix(base, "~") && !strings.HasSuffix(base, ".swp") &&
		(strings.Contains(base, ".care.") || strings.Contains(base, ".hcl") || strings.HasSuffix(base, ".log"))
}

// below reports whether a file is not among the calendars.
func (s *Server) below(name string) bool {
	return filepath.Dir(filepath.Clean(name)) != filepath.Clean(s.Builder.Out)
}

// most is how many folders and files are looked at.
const most = 200_000

// look returns a sum over the names, sizes and times of all files that concern, and has the
// folders watched.
func (s *Server) look(ctx context.Context, w *fsnotify.Watcher) uint64 {
	var sum maphash.Hash
	sum.SetSeed(seed)
	n := 0
	dirs := map[string]bool{filepath.Dir(s.Keys): true}
	add := func(path string, info fs.FileInfo) {
		if info != nil && !info.IsDir() && s.concerns(path) {
			maphash.WriteComparable(&sum, struct {
				name string
				size int64
				time int64
			}{path, info.Size(), info.ModTime().UnixNano()})
		}
	}
	walk := func(path string, d fs.DirEntry, err error) error {
		if n++; err != nil || n > most {
			return nil // it is said when the collection is read
		}
		if d.IsDir() {
			if path != s.Builder.Root && (strings.HasPrefix(d.Name(), ".") || filepath.Clean(path) == filepath.Clean(s.Builder.Out)) {
				return filepath.SkipDir
			}
			dirs[path] = true
			return nil
		}
		if info, err := d.Info(); err == nil {
			add(path, info)
		}
		return nil
	}
	_ = filepath.WalkDir(s.Builder.Root, walk)
	// Links lead to folders elsewhere: those from which something was read.
	if now := s.state.Load(); now != nil {
		for _, id := range now.house.Result.Plan.Files.Files() {
			name := filepath.FromSlash(now.house.Result.Plan.Files.Name(id))
			to, err := filepath.EvalSymlinks(name)
			if err != nil || to == filepath.Clean(name) {
				continue
			}
			dirs[filepath.Dir(to)] = true
			if info, err := s.Disk.Stat(to); err == nil {
				add(name, info)
			}
		}
	}
	if info, err := s.Disk.Stat(s.Keys); err == nil {
		add(s.Keys, info)
	}
	if w != nil {
		for dir := range dirs {
			if err := w.Add(dir); err != nil && ctx.Err() == nil {
				s.Log.LogAttrs(ctx, slog.LevelDebug, "a folder is looked through, not watched", slog.String("why", err.Error()))
			}
		}
	}
	return sum.Sum64()
}

var seed = maphash.MakeSeed()
