package plan

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"

	"github.com/spf13/afero"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/wording"
)

// The endings of the names of files that are read.
const (
	PlanSuffix = ".care.hcl"
	LogSuffix  = ".care.log"
)

// Load reads every plan and log below root and returns what they say, with all
// findings made on the way, sorted. The collection is never nil; after findings
// that refuse, it holds what could be read. The error is for a root that is no
// folder; everything else is a finding.
func Load(disk afero.Fs, root string) (*Collection, []finding.Finding, error) {
	return new(Reader).Load(disk, root)
}

// Standing returns the path of a plan below root, or of what may be one; "" for none.
func Standing(disk afero.Fs, root string) string {
	if _, err := disk.Stat(root); err != nil {
		return ""
	}
	w := walk(disk, root)
	for _, path := range w.paths {
		if strings.HasSuffix(path, PlanSuffix) {
			return path
		}
	}
	for _, x := range w.odd {
		if x.found.Severity.Refuses() {
			return x.path
		}
	}
	return ""
}

// Reader reads a collection again and again. What it has decoded it keeps until the
// next time, so that only the files that have changed are decoded anew. The zero
// Reader is ready to use, by one goroutine at a time; what it has returned may be
// read by any number meanwhile.
type Reader struct {
	// Open are the texts of files that somebody is editing, by their paths as Load forms
	// them, below the root: each is read in place of what the disk has, if anything.
	Open map[string][]byte
	// Sheets are those by which the collection is judged; nil for those that are built in. They
	// stay the same.
	Sheets *Sheets

	root   string
	walked *walker // of the last load
	// ids are of all paths ever read: a path has the same id in every collection.
	ids   map[string]source.ID
	files map[string]*file // of the last load, by path
	read  []*file          // those of the last load, in order, where nothing else was found
	last  *Collection
	found []finding.Finding
}

// maxIDs bounds the paths that are remembered. Beyond it all is begun anew.
const maxIDs = 4 * MaxFiles

// Load is as the function Load. Files, enclosures and sheets that are made from
// the same text as in the last load are the same values, and where nothing has changed the
// collection is.
func (r *Reader) Load(disk afero.Fs, root string) (*Collection, []finding.Finding, error) {
	info, err := disk.Stat(root)
	if err != nil {
		if errors.Is(err, os.ErrNotExist) {
			return nil, nil, errors.New("there is no folder " + quote(root))
		}
		return nil, nil, fmt.Errorf("the folder %s cannot be read: %w", quote(root), wording.Plain(err))
	}
	if !info.IsDir() {
		return nil, nil, errors.New(quote(root) + " is a file: name the folder that holds the collection")
	}
	r.root, r.walked = root, walk(disk, root)
	r.walked.bound()
	c, found := r.load(func(path string, was *file) *file { return readFile(disk, path, r.ids[path], was) })
	return c, found, nil
}

// Again is as Load, of the same root, where since the last load nothing has changed but Open:
// it does not look at the disk. What was opened or closed since is for Load.
func (r *Reader) Again() (*Collection, []finding.Finding) {
	return r.load(func(_ string, was *file) *file { return was })
}

// load makes a collection of what was walked. read reads a file that nobody is editing.
func (r *Reader) load(read func(path string, was *file) *file) (*Collection, []finding.Finding) {
	root := r.root
	l := &loader{walker: r.walked.with(r.Open)}
	l.found.All = slices.Clone(l.bounds.All)
	if len(l.paths) == 0 && !l.broken {
		l.found.Add(finding.Finding{Rule: ruleEmpty, Text: "no file below " + quote(root) + " has a name that ends in " + PlanSuffix,
			Write: "vivary start, in an empty folder, for a first plan"})
	}
	files := r.readAll(l, read)
	plain := len(l.found.All) == 0 && len(l.odd) == 0
	if plain && r.read != nil && slices.Equal(files, r.read) {
		return r.last, slices.Clone(r.found)
	}
	sheets := r.Sheets
	if sheets == nil {
		sheets = builtIn()
	}
	c := &Collection{Files: source.Over(&sheets.files), Library: sheets.library(), files: files, unread: &unread{}}
	for _, x := range l.odd {
		x.found.At.File = r.id(x.path)
		c.Files.Put(x.found.At.File, filepath.ToSlash(x.path), nil)
		l.found.All = append(l.found.All, x.found)
	}
	resolver := &resolver{c: c, unread: c.unread}
	if r.last != nil {
		c.Library.after(r.last.Library)
		resolver.before, resolver.numbered, resolver.last = r.last.enclosures, r.last.numbered, r.last
	}
	l.gather(files, resolver)
	resolver.resolve()
	r.last, r.read = c, nil
	r.found = finding.Sort(c.Files, append(l.found.All, resolver.found.All...))
	if plain {
		r.read = files
	}
	return c, slices.Clone(r.found)
}

// readAll reads and decodes the files, several at a time, those that are as they were
// excepted.
func (r *Reader) readAll(l *loader, read func(path string, was *file) *file) []*file {
	if len(r.ids) > maxIDs {
		*r = Reader{Open: r.Open, Sheets: r.Sheets, root: r.root, walked: r.walked}
	}
	if r.ids == nil {
		r.ids = make(map[string]source.ID, len(l.paths))
	}
	for _, path := range l.paths {
		r.id(path)
	}
	files := make([]*file, len(l.paths))
	parallel(len(l.paths), func(i int) {
		path := l.paths[i]
		was := r.files[path]
		if text, open := r.Open[path]; open {
			files[i] = fileOf(path, r.ids[path], was, text, nil)
		} else {
			files[i] = read(path, was)
		}
	})
	r.files = make(map[string]*file, len(files))
	for i, path := range l.paths {
		r.files[path] = files[i]
	}
	return files
}

// id is that of a path, the same in every load.
func (r *Reader) id(path string) source.ID {
	if r.ids[path] == 0 {
		r.ids[path] = source.ID(len(r.ids) + 1)
	}
	return r.ids[path]
}

// loader is one load.
type loader struct {
	*walker
	found finding.List
}

// gather puts what stands in the files together, in the order of their names.
func (l *loader) gather(files []*file, r *resolver) {
	lines := 0
	for _, f := range files {
		lines += len(f.events)
	}
	log := make([]Event, 0, lines) // a copy: the resolver works on it
	for _, f := range files {
		r.c.Files.Put(f.id, f.name, f.text)
		r.blocks.add(f.blocks)
		log = append(log, f.events...)
		l.broken = l.broken || f.broken
		for _, b := range f.unread {
			r.unread.blocks = append(r.unread.blocks, unreadBlock{b, f.text})
		}
		l.found.All = append(l.found.All, f.found...)
	}
	if len(log) > MaxLogLines {
		l.found.Add(finding.Finding{Rule: ruleTooMany, At: log[MaxLogLines].At, Text: "the logs have " + strconv.Itoa(len(log)) + " lines",
			Limit: strconv.Itoa(MaxLogLines) + " lines", Write: "move old years out of the folder"})
		log = log[:MaxLogLines]
	}
	r.events, r.unread.whole = log, l.broken
}

// parallel calls do for 0 to n-1 from as many goroutines as there are processors.
func parallel(n int, do func(i int)) {
	workers := min(runtime.GOMAXPROCS(0), n)
	var next atomic.Int64
	var wg sync.WaitGroup
	for range workers {
		wg.Go(func() {
			for {
				i := int(next.Add(1)) - 1
				if i >= n {
					return
				}
				do(i)
			}
		})
	}
	wg.Wait()
}
