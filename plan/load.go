package plan

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"sort"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"

	"github.com/spf13/afero"

	"vivary/plan/finding"
	"vivary/plan/source"
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

// Reader reads a collection again and again. What it has decoded it keeps until the
// next time, so that only the files that have changed are decoded anew. The zero
// Reader is ready to use, by one goroutine at a time; what it has returned may be
// read by any number meanwhile.
type Reader struct {
	// ids are of all paths ever read: a path has the same id in every collection.
	ids   map[string]source.ID
	files map[string]*file // of the last load, by path
	last  *Collection
}

// maxIDs bounds the paths that are remembered. Beyond it all is begun anew.
const maxIDs = 4 * MaxFiles

// Load is as the function Load. Files, enclosures and sheets that are made from
// the same text as in the last load are the same values.
func (r *Reader) Load(disk afero.Fs, root string) (*Collection, []finding.Finding, error) {
	info, err := disk.Stat(root)
	if err != nil {
		if errors.Is(err, os.ErrNotExist) {
			return nil, nil, errors.New("there is no folder " + quote(root))
		}
		return nil, nil, err
	}
	if !info.IsDir() {
		return nil, nil, errors.New(quote(root) + " is a file: name the folder that holds the collection")
	}
	l := &loader{disk: disk}
	l.walk(root)
	if len(l.paths) == 0 {
		l.found.Add(finding.Finding{Rule: ruleEmpty, Text: "no file below " + quote(root) + " has a name that ends in " + PlanSuffix,
			Write: "vivary start, in an empty folder, for a first plan"})
	}
	files := r.read(l)
	c := &Collection{Files: source.Over(&builtIn().files), Library: NewLibrary(), files: files, unread: &unread{}}
	resolver := &resolver{c: c, unread: c.unread}
	if r.last != nil {
		c.Library.after(r.last.Library)
		resolver.before, resolver.numbered = r.last.enclosures, r.last.numbered
	}
	l.gather(files, resolver)
	resolver.resolve()
	r.last = c
	return c, finding.Sort(c.Files, append(l.found.All, resolver.found.All...)), nil
}

// read reads and decodes the files, several at a time, those that are as they were
// excepted.
func (r *Reader) read(l *loader) []*file {
	if len(r.ids) > maxIDs {
		*r = Reader{}
	}
	if r.ids == nil {
		r.ids = make(map[string]source.ID, len(l.paths))
	}
	for _, path := range l.paths {
		if r.ids[path] == 0 {
			r.ids[path] = source.ID(len(r.ids) + 1)
		}
	}
	files := make([]*file, len(l.paths))
	parallel(len(l.paths), func(i int) {
		path := l.paths[i]
		files[i] = readFile(l.disk, path, r.ids[path], r.files[path])
	})
	r.files = make(map[string]*file, len(files))
	for i, path := range l.paths {
		r.files[path] = files[i]
	}
	return files
}

type loader struct {
	disk  afero.Fs
	paths []string
	found finding.List
	// broken says that something could not be read, in which something named
	// elsewhere may stand.
	broken bool
}

// walk lists the plan and log files in the order of their names. Folders and
// files whose names begin with a dot are passed over.
func (l *loader) walk(root string) {
	// With a separator after it, a root that is a link to a folder is followed.
	top := filepath.Clean(root) + string(filepath.Separator)
	err := afero.Walk(l.disk, top, func(path string, info fs.FileInfo, err error) error {
		name := filepath.Base(path)
		if err != nil {
			l.unreadable(path, err)
			if info != nil && info.IsDir() {
				return filepath.SkipDir
			}
			return nil
		}
		if path != top && strings.HasPrefix(name, ".") {
			if info.IsDir() {
				return filepath.SkipDir
			}
			return nil
		}
		if !strings.HasSuffix(name, PlanSuffix) && !strings.HasSuffix(name, LogSuffix) {
			return nil
		}
		if info.Mode()&fs.ModeSymlink != 0 {
			if info, err = l.disk.Stat(path); err != nil {
				l.unreadable(path, err)
				return nil
			}
		}
		if info.Mode().IsRegular() {
			l.paths = append(l.paths, path)
		}
		return nil
	})
	if err != nil {
		l.unreadable(root, err)
	}
	sort.Strings(l.paths)
	if len(l.paths) > MaxFiles {
		l.found.Add(finding.Finding{Rule: ruleTooMany, Text: "there are " + strconv.Itoa(len(l.paths)) + " files",
			Limit: strconv.Itoa(MaxFiles) + " files in a collection", Write: "put several enclosures into one file, or split the collection"})
		l.paths = l.paths[:MaxFiles]
	}
}

func (l *loader) unreadable(path string, err error) {
	f := finding.Finding{Rule: ruleUnreadable, Text: quote(filepath.ToSlash(path)) + " cannot be read: " + err.Error(),
		Write: "look at its permissions"}
	if strings.HasSuffix(path, LogSuffix) {
		l.found.Soft(f, finding.Urgent) // what was seen never refuses, nor does what cannot be seen
		return
	}
	l.broken = true
	l.found.Add(f)
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
