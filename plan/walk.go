package plan

import (
	"io/fs"
	"path/filepath"
	"slices"
	"sort"
	"strconv"
	"strings"

	"github.com/spf13/afero"

	"vivary/plan/finding"
	"vivary/schema/wording"
)

// walker lists the files of a collection. Nothing below the folder that is, or nearly
// is, a plan or a log is passed over without a word.
type walker struct {
	disk    afero.Fs
	root    string   // without links
	paths   []string // of what is to be read
	odd     []oddity
	broken  bool            // something that may hold a plan is not read
	entries int             // looked at
	seen    map[string]bool // folders and files, by their paths without links
	links   []link
	bounds  finding.List // how much more there is than is read
}

// oddity is what is found of an entry, mostly that it is not read.
type oddity struct {
	path  string
	found finding.Finding
}

// with is what was walked with files that somebody is editing, where they are not there yet.
func (w *walker) with(open map[string][]byte) *walker {
	out := *w
	for path := range open {
		if _, there := slices.BinarySearch(w.paths, path); !there {
			out.paths = append(slices.Clip(out.paths), path)
		}
	}
	if len(out.paths) > len(w.paths) {
		sort.Strings(out.paths)
	}
	return &out
}

// say says something of an entry. Where it refuses, the entry may hold a plan.
func (w *walker) say(path string, s finding.Severity, f finding.Finding) {
	f.Severity = s
	w.broken = w.broken || s.Refuses()
	w.odd = append(w.odd, oddity{path, f})
}

// link is one that is looked at once all that stands in the folder itself is known, so
// that what it leads to there keeps its own name.
type link struct {
	path, real string
	beside     bool // with a file of the name that it should have, or was left by
}

// walk lists what is below root, in the order of the names.
func walk(disk afero.Fs, root string) *walker {
	w := &walker{disk: disk, seen: map[string]bool{}}
	root = filepath.Clean(root)
	w.root = w.resolve(absolute(root))
	w.folder(root, w.root)
	for len(w.links) > 0 && w.entries <= MaxEntries {
		next := w.links
		w.links = nil
		for _, l := range next {
			w.follow(l)
		}
	}
	if w.entries > MaxEntries {
		w.odd = nil // what comes of the wrong folder
		w.say(root, finding.Error, finding.Finding{Rule: ruleTooMany, Text: "there are more files and folders here than are looked through",
			Limit: strconv.Itoa(MaxEntries) + " below the folder of a collection", Write: "the folder of the collection alone"})
	}
	sort.Strings(w.paths)
	w.portable(root)
	return w
}

// folder looks through a folder, of which real is the path without links.
func (w *walker) folder(path, real string) {
	if w.seen[real] || w.entries > MaxEntries {
		return
	}
	w.seen[real] = true
	all, err := afero.ReadDir(w.disk, path)
	if err != nil {
		w.say(path, finding.Error, finding.Finding{Rule: ruleUnreadable, Text: "the folder cannot be read: " + wording.Reason(err), Write: mayRead})
		return
	}
	beside := make(map[string]bool, len(all))
	for _, x := range all {
		beside[x.Name()] = true
	}
	for _, x := range all {
		if w.entries++; w.entries > MaxEntries {
			return
		}
		w.entry(filepath.Join(path, x.Name()), filepath.Join(real, x.Name()), x, beside)
	}
}

// mayRead is what to do about what the system does not give out.
const mayRead = "nothing: let it be read, or move it out of the folder"

func (w *walker) entry(path, real string, x fs.FileInfo, beside map[string]bool) {
	is, asked := likenessOf(x.Name())
	switch {
	// A link; some systems have others that are neither file nor folder.
	case x.Mode()&(fs.ModeSymlink|fs.ModeIrregular) != 0:
		w.links = append(w.links, link{path, real, beside[asked]})
	case !x.IsDir():
		w.file(path, real, x, beside[asked])
	case x.Name()[0] != '.':
		if is == planFile || is == logFile {
			w.say(path, finding.Caution, finding.Finding{Rule: ruleNotRead, Text: "this is a folder, and has the name of a file; what is in it is read", Write: "another name for the folder"})
		}
		w.folder(path, real)
	}
}

// file takes a file to be read, or says why it is not.
func (w *walker) file(path, real string, x fs.FileInfo, beside bool) {
	is, asked := likenessOf(filepath.Base(path))
	switch {
	case is == otherFile, w.seen[real]:
	case (is == planFile || is == logFile) && x.Mode().IsRegular():
		w.seen[real] = true
		w.paths = append(w.paths, path)
	case is == planFile || is == logFile:
		w.unread(path, is, finding.Finding{Rule: ruleUnreadable, Text: "this is " + wording.FileKind(x.Mode()) + " and no file, and cannot be read", Write: "another name for it, or a file in its place"})
	case is == leftover && !beside:
		w.unread(path, is, finding.Finding{Rule: ruleNotRead, Text: "this is not read: it looks like what an editor leaves beside " + quote(asked) + ", which is not there",
			Write: "another name, where it is all that there is: " + asked})
	case is != leftover:
		w.near(path, is, asked, beside)
	}
}

// near says that a file is not read though its name is nearly that of a plan or a log.
func (w *walker) near(path string, is likeness, asked string, beside bool) {
	suffix, what := PlanSuffix, "plan"
	if is != nearPlan {
		suffix, what = LogSuffix, "log"
	}
	f := finding.Finding{Rule: ruleNotRead, Text: "this is not read: the name of a " + what + " ends in " + suffix + ", in small letters, and does not begin with a dot", Write: "another name: " + asked}
	switch {
	case strings.HasSuffix(path, cloudSuffix):
		f.Text, f.Write = "this stands for a "+what+" that is in a cloud and not on this machine", "nothing: let the system load "+asked
	case beside:
		f.Write = "another name, since " + quote(asked) + " is there already; or move it out of the folder"
	}
	w.unread(path, is, f)
}

// unread says of what may be a plan or a log that it is not read. A plan refuses; what
// cannot be seen of a log refuses as little as what was seen.
func (w *walker) unread(path string, is likeness, f finding.Finding) {
	s := finding.Error
	switch is {
	case logFile, nearLog:
		s = finding.Urgent
	case maybeLog:
		s = finding.Advice
	case leftover:
		s = finding.Caution
	}
	w.say(path, s, f)
}

// follow looks at what a link leads to: at each folder and file once.
func (w *walker) follow(l link) {
	is, _ := likenessOf(filepath.Base(l.path))
	hidden := filepath.Base(l.path)[0] == '.'
	x, err := w.disk.Stat(l.path)
	switch {
	case err != nil && (is == otherFile || hidden):
	case err != nil:
		w.unread(l.path, is, finding.Finding{Rule: ruleUnreadable, Text: "this is a link, and what it leads to cannot be read: " + wording.Reason(err), Write: "a link to what there is, or none"})
	case !x.IsDir():
		w.file(l.path, w.resolve(l.real), x, l.beside)
	case hidden:
	default:
		real := w.resolve(l.real)
		if strings.HasPrefix(w.root, strings.TrimSuffix(real, sep)+sep) {
			w.say(l.path, finding.Caution, finding.Finding{Rule: ruleNotRead, Text: "this link leads to a folder that holds the collection itself, and is not followed", Write: "a link to the folder that is meant, or none"})
			return
		}
		w.folder(l.path, real)
	}
}

const sep = string(filepath.Separator)

func absolute(path string) string {
	if abs, err := filepath.Abs(path); err == nil {
		return abs
	}
	return path
}

// maxLinks is how many links may lead on from one to the next.
const maxLinks = 40

// resolve returns the path of what a path leads to, without links; what cannot be
// resolved stays as it is.
func (w *walker) resolve(path string) string {
	links, ok := w.disk.(afero.LinkReader)
	if !ok {
		return path
	}
	done, rest := filepath.VolumeName(path)+sep, strings.Split(strings.TrimPrefix(path[len(filepath.VolumeName(path)):], sep), sep)
	for n := 0; len(rest) > 0; {
		next := filepath.Join(done, rest[0])
		rest = rest[1:]
		to, err := links.ReadlinkIfPossible(next)
		switch {
		case err != nil: // it is none
			done = next
			continue
		case n == maxLinks:
			return path
		case filepath.IsAbs(to):
			done = filepath.VolumeName(to) + sep
		}
		n++
		rest = append(strings.Split(strings.TrimPrefix(to[len(filepath.VolumeName(to)):], sep), sep), rest...)
	}
	return done
}
