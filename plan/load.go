package plan

import (
	"bytes"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"sort"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"unicode/utf8"

	"github.com/spf13/afero"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
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
	files := &source.Set{}
	l := &loader{disk: disk, files: files}
	l.walk(root)
	texts := l.read()
	plans, logs := l.decode(texts)
	if len(l.paths) == 0 {
		l.found.Add(finding.Finding{Rule: ruleEmpty, Text: "no file below " + quote(root) + " has a name that ends in " + PlanSuffix,
			Write: "vivary start, in an empty folder, for a first plan"})
	}
	c := &Collection{Files: files, Library: NewLibrary(schema.Library, files)}
	r := &resolver{c: c, blocks: plans, events: logs, silent: l.broken}
	r.resolve()
	all := append(l.found.All, r.found.All...)
	all = append(all, c.Library.found.All...)
	return c, finding.Sort(files, all), nil
}

type loader struct {
	disk  afero.Fs
	files *source.Set
	paths []string // of file i+1 of the set
	found finding.List
	// broken says that a file could not be read whole, so that something named
	// elsewhere may stand in it.
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
		if info.Mode()&fs.ModeSymlink != 0 {
			if info, err = l.disk.Stat(path); err != nil {
				l.unreadable(path, err)
				return nil
			}
		}
		if info.Mode().IsRegular() && (strings.HasSuffix(name, PlanSuffix) || strings.HasSuffix(name, LogSuffix)) {
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
	for _, p := range l.paths {
		l.files.Add(filepath.ToSlash(p), nil)
	}
}

func (l *loader) unreadable(path string, err error) {
	l.broken = true
	l.found.Add(finding.Finding{Rule: ruleUnreadable, Text: quote(filepath.ToSlash(path)) + " cannot be read: " + err.Error(),
		Write: "look at its permissions"})
}

// read reads the files, several at a time.
func (l *loader) read() [][]byte {
	texts := make([][]byte, len(l.paths))
	found := make([]finding.List, len(l.paths))
	parallel(len(l.paths), func(i int) {
		id := source.ID(i + 1)
		texts[i] = l.readOne(id, l.paths[i], &found[i])
	})
	for i := range found {
		l.files.Fill(source.ID(i+1), texts[i])
		if len(found[i].All) > 0 {
			l.broken = true
			l.found.All = append(l.found.All, found[i].All...)
		}
	}
	return texts
}

func (l *loader) readOne(id source.ID, path string, found *finding.List) []byte {
	at := source.Place{File: id}
	f, err := l.disk.Open(path)
	if err != nil {
		found.Add(finding.Finding{Rule: ruleUnreadable, At: at, Text: "the file cannot be read: " + err.Error()})
		return nil
	}
	defer f.Close()
	size := 0
	if info, err := f.Stat(); err == nil && info.Size() <= MaxFile {
		size = int(info.Size())
	}
	buf := bytes.NewBuffer(make([]byte, 0, size+bytes.MinRead))
	n, err := buf.ReadFrom(io.LimitReader(f, MaxFile+1))
	text := buf.Bytes()
	switch {
	case err != nil:
		found.Add(finding.Finding{Rule: ruleUnreadable, At: at, Text: "the file cannot be read: " + err.Error()})
		return nil
	case n > MaxFile:
		found.Add(finding.Finding{Rule: ruleTooLarge, At: at, Text: "the file is larger than what is read",
			Limit: strconv.Itoa(MaxFile>>20) + " MiB a file", Write: "split it into several files"})
		return nil
	case bytes.IndexByte(text, 0) >= 0 || !utf8.Valid(text):
		found.Add(finding.Finding{Rule: ruleNotText, At: at, Text: "the file is not UTF-8 text", Write: "save it as UTF-8, or give it another name"})
		return nil
	}
	if strings.HasSuffix(path, PlanSuffix) {
		if i := tooDeep(text); i >= 0 {
			f := finding.Finding{Rule: ruleTooDeep, At: source.Place{File: id, Start: int32(i), End: int32(i) + 1},
				Text: "brackets are nested too deep here", Limit: strconv.Itoa(MaxNesting) + " open at once", Write: "look for a bracket that is opened again and again"}
			if strings.IndexByte("-!?", text[i]) >= 0 {
				f.Text, f.Limit, f.Write = "up to here the file has more operators than what is read", strconv.Itoa(MaxOperators)+" in a file", "plain values: a plan computes nothing"
			}
			found.Add(f)
			return nil
		}
	}
	return text
}

// decode turns the texts into blocks and log lines, several files at a time, and
// puts them together in the order of the files' names.
func (l *loader) decode(texts [][]byte) (*blocks, []Event) {
	files := make([][]any, len(texts))
	events := make([][]Event, len(texts))
	found := make([][]finding.Finding, len(texts))
	parallel(len(texts), func(i int) {
		if texts[i] == nil {
			return
		}
		if strings.HasSuffix(l.paths[i], LogSuffix) {
			events[i], found[i] = parseLog(source.ID(i+1), texts[i])
			return
		}
		files[i], found[i] = decodeFile(source.ID(i+1), texts[i])
	})
	all := &blocks{}
	var log []Event
	for i := range texts {
		all.add(files[i])
		log = append(log, events[i]...)
		for _, f := range found[i] {
			if f.Rule == ruleSyntax {
				l.broken = true
			}
		}
		l.found.All = append(l.found.All, found[i]...)
	}
	if len(log) > MaxLogLines {
		l.found.Add(finding.Finding{Rule: ruleTooMany, At: log[MaxLogLines].At, Text: "the logs have " + strconv.Itoa(len(log)) + " lines",
			Limit: strconv.Itoa(MaxLogLines) + " lines", Write: "move old years out of the folder"})
		log = log[:MaxLogLines]
	}
	return all, log
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
