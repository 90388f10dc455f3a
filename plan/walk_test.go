//go:build unix

package plan

import (
	"io/fs"
	"maps"
	"net"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/plan/finding"
)

// tree makes files below a new folder: a text of "-> x" is a link to x, "|" a pipe, "@" a
// socket, and a name that ends in a slash a folder.
func tree(t *testing.T, files map[string]string) string {
	t.Helper()
	root := t.TempDir()
	for _, name := range slices.Sorted(maps.Keys(files)) {
		path, text := filepath.Join(root, name), files[name]
		err := os.MkdirAll(filepath.Dir(path), 0o755)
		to, link := strings.CutPrefix(text, "-> ")
		switch {
		case err != nil:
		case strings.HasSuffix(name, "/"):
			err = os.MkdirAll(path, 0o755)
		case link:
			err = os.Symlink(strings.ReplaceAll(to, "ROOT", root), path)
		case text == "|":
			err = syscall.Mkfifo(path, 0o644)
		case text == "@":
			var l net.Listener
			if l, err = net.Listen("unix", path); err == nil {
				t.Cleanup(func() { l.Close() })
			}
		default:
			err = os.WriteFile(path, []byte(text), 0o644)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	return root
}

const aRoom = "room \"b\" {\n  temperature = \"20 to 22 C\"\n}\n"

// What is linked is read once, by its own name where it has one in the folder; what leads
// round or to nothing, and what is no file, is said at its path. Nothing is waited for.
func TestLinksAndNoFiles(t *testing.T) {
	for say, c := range map[string]struct {
		files map[string]string
		read  string // the files that are read
		said  string // the findings: severity, path, and a part of the words
	}{
		"a linked folder":             {map[string]string{"c/a.care.hcl": sound, "c/l": "-> ../o", "o/b.care.hcl": aRoom}, "a.care.hcl l/b.care.hcl", ""},
		"a linked folder, absolute":   {map[string]string{"c/a.care.hcl": sound, "c/l": "-> ROOT/o", "o/b.care.hcl": aRoom}, "a.care.hcl l/b.care.hcl", ""},
		"a link over a link":          {map[string]string{"c/a.care.hcl": sound, "c/l": "-> ../p", "p": "-> q", "q": "-> o", "o/b.care.hcl": aRoom}, "a.care.hcl l/b.care.hcl", ""},
		"links within what is linked": {map[string]string{"c/a.care.hcl": sound, "c/l": "-> ../o", "o/m": "-> ../p", "p/b.care.hcl": aRoom}, "a.care.hcl l/m/b.care.hcl", ""},
		"linked twice":                {map[string]string{"c/a.care.hcl": sound, "c/l": "-> ../o", "c/m": "-> ../o", "c/n": "-> l", "o/b.care.hcl": aRoom}, "a.care.hcl l/b.care.hcl", ""},
		"linked, and there by itself": {map[string]string{"c/z/a.care.hcl": sound, "c/l": "-> z"}, "z/a.care.hcl", ""},
		"linked from within":          {map[string]string{"c/z/a.care.hcl": sound, "c/z/l": "-> ../z"}, "z/a.care.hcl", ""},
		"the folder itself":           {map[string]string{"c/a.care.hcl": sound, "c/l": "-> ."}, "a.care.hcl", ""},
		"the folder above":            {map[string]string{"c/a.care.hcl": sound, "c/l": "-> ..", "b.care.hcl": aRoom}, "a.care.hcl", "caution l holds the collection itself"},
		"the whole disk":              {map[string]string{"c/a.care.hcl": sound, "c/x/l": "-> /"}, "a.care.hcl", "caution x/l holds the collection itself"},
		"a link to itself":            {map[string]string{"c/a.care.hcl": sound, "c/l.care.hcl": "-> l.care.hcl"}, "a.care.hcl", "error l.care.hcl lead round in a circle"},
		"a folder's link to itself":   {map[string]string{"c/a.care.hcl": sound, "c/l": "-> l"}, "a.care.hcl", ""},
		"a linked file":               {map[string]string{"c/a.care.hcl": sound, "c/l.care.hcl": "-> ../o.txt", "o.txt": aRoom}, "a.care.hcl l.care.hcl", ""},
		"a file linked beside itself": {map[string]string{"c/a.care.hcl": sound, "c/0.care.hcl": "-> a.care.hcl"}, "a.care.hcl", ""},
		"a file linked twice":         {map[string]string{"c/l.care.hcl": "-> ../o.care.hcl", "c/m.care.hcl": "-> ../o.care.hcl", "o.care.hcl": sound}, "l.care.hcl", ""},
		"a link to nothing":           {map[string]string{"c/a.care.hcl": sound, "c/l.care.hcl": "-> nowhere"}, "a.care.hcl", "error l.care.hcl it is not there"},
		"a log that is not there":     {map[string]string{"c/a.care.hcl": sound, "c/l.care.log": "-> nowhere"}, "a.care.hcl", "urgent l.care.log it is not there"},
		"a near name to nothing":      {map[string]string{"c/a.care.hcl": sound, "c/L.CARE.HCL": "-> nowhere"}, "a.care.hcl", "error L.CARE.HCL it is not there"},
		"another's link to nothing":   {map[string]string{"c/a.care.hcl": sound, "c/notes": "-> nowhere", "c/.#a.care.hcl": "-> me@here.1234"}, "a.care.hcl", ""},
		"a hidden linked folder":      {map[string]string{"c/a.care.hcl": sound, "c/.l": "-> ../o", "o/b.care.hcl": aRoom}, "a.care.hcl", ""},
		"a near name by a link":       {map[string]string{"c/a.care.hcl": sound, "c/l.hcl": "-> ../o", "o": aRoom}, "a.care.hcl", "error l.hcl is not read"},
		"a pipe":                      {map[string]string{"c/a.care.hcl": sound, "c/p.care.hcl": "|"}, "a.care.hcl", "error p.care.hcl this is a pipe"},
		"a pipe for a log":            {map[string]string{"c/a.care.hcl": sound, "c/p.care.log": "|"}, "a.care.hcl", "urgent p.care.log this is a pipe"},
		"a linked pipe":               {map[string]string{"c/a.care.hcl": sound, "c/p.care.hcl": "-> ../p", "p": "|"}, "a.care.hcl", "error p.care.hcl this is a pipe"},
		"a socket":                    {map[string]string{"c/a.care.hcl": sound, "c/s.care.hcl": "@"}, "a.care.hcl", "error s.care.hcl this is a socket"},
		"a device":                    {map[string]string{"c/a.care.hcl": sound, "c/d.care.hcl": "-> /dev/zero"}, "a.care.hcl", "error d.care.hcl this is a device"},
		"a folder with a file's name": {map[string]string{"c/a.care.hcl": sound, "c/x.care.hcl/b.care.hcl": aRoom}, "a.care.hcl x.care.hcl/b.care.hcl", "caution x.care.hcl this is a folder"},
		"a folder for a log":          {map[string]string{"c/a.care.hcl": sound, "c/x.care.log/": ""}, "a.care.hcl", "caution x.care.log this is a folder"},
		"a folder of a near name":     {map[string]string{"c/a.care.hcl": sound, "c/x.hcl/b.care.hcl": aRoom}, "a.care.hcl x.hcl/b.care.hcl", ""},
	} {
		root := filepath.Join(tree(t, c.files), "c")
		got, found, err := Load(afero.NewOsFs(), root)
		if err != nil {
			t.Fatal(err)
		}
		var read, said []string
		for _, f := range got.files {
			read = append(read, strings.TrimPrefix(f.name, filepath.ToSlash(root)+"/"))
		}
		for _, f := range found {
			said = append(said, f.Severity.String()+" "+strings.TrimPrefix(got.Files.Start(f.At).File, filepath.ToSlash(root)+"/")+" "+f.Text)
		}
		head, words := c.said, ""
		if parts := strings.SplitN(c.said, " ", 3); len(parts) == 3 {
			head, words = parts[0]+" "+parts[1]+" ", parts[2]
		}
		if all := strings.Join(said, "; "); strings.Join(read, " ") != c.read || len(said) > 1 || !strings.HasPrefix(all, head) || !strings.Contains(all, words) || c.said == "" && all != "" {
			t.Errorf("%s: read %v, said %q", say, read, all)
		}
	}
}

// sealed is a disk that does not give out one path.
type sealed struct {
	afero.Fs
	path string
}

func (d sealed) Open(name string) (afero.File, error) {
	if name == d.path {
		return nil, &fs.PathError{Op: "open", Path: name, Err: syscall.EACCES}
	}
	return d.Fs.Open(name)
}

// What cannot be opened is said in a keeper's words, at its path. (A compilation makes
// urgent what is in a log.)
func TestSealed(t *testing.T) {
	files := map[string]string{"a.care.hcl": sound, "x/b.care.hcl": aRoom, "x/c.care.log": "2026-11-02 keeper lead away\n"}
	for path, want := range map[string]finding.Severity{"c/x": finding.Error, "c/x/b.care.hcl": finding.Error, "c/x/c.care.log": finding.Error, "c": finding.Error} {
		c, found, err := Load(sealed{disk(t, files), path}, "c")
		if err != nil {
			t.Fatal(err)
		}
		i := slices.IndexFunc(found, func(f finding.Finding) bool { return f.Rule == ruleUnreadable })
		if i < 0 || c.Files.Start(found[i].At).File != path || found[i].Severity != want || !strings.HasSuffix(found[i].Text, "cannot be read: you have no permission for it") {
			t.Errorf("%s: %v", path, texts(found))
		}
	}
}

// A folder with more than is looked through is not gone through to its end.
func TestTooManyEntries(t *testing.T) {
	_, found, err := Load(&endless{Fs: afero.NewMemMapFs()}, "c")
	if err != nil || !has(found, "too-many") || len(found) != 1 {
		t.Errorf("%v, %v", texts(found), err)
	}
}

// endless is a disk on which each folder holds ten others.
type endless struct{ afero.Fs }

func (d *endless) Stat(string) (os.FileInfo, error) { return folderInfo("c"), nil }

func (d *endless) Open(name string) (afero.File, error) {
	return endlessFolder{deepest: strings.Count(name, sep) > 20}, nil
}

type endlessFolder struct {
	afero.File
	deepest bool
}

func (endlessFolder) Close() error { return nil }

func (f endlessFolder) Readdir(int) (all []os.FileInfo, err error) {
	for i := 0; i < 10 && !f.deepest; i++ {
		all = append(all, folderInfo(string(rune('a'+i))))
	}
	return all, nil
}

type folderInfo string

func (folderInfo) Size() int64        { return 0 }
func (folderInfo) ModTime() time.Time { return time.Time{} }
func (f folderInfo) Name() string     { return string(f) }
func (folderInfo) Mode() os.FileMode  { return os.ModeDir }
func (folderInfo) IsDir() bool        { return true }
func (folderInfo) Sys() any           { return nil }
