package revision

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/plan"
	"vivary/plan/finding"
)

// read is all that the loader makes of a folder.
func read(t *testing.T, disk afero.Fs, root string) string {
	t.Helper()
	c, found, err := plan.Load(disk, root)
	if err != nil {
		return "not read: " + err.Error()
	}
	var all strings.Builder
	p := finding.Printer{Files: c.Files}
	_ = p.Print(&all, found)
	for _, id := range c.Files.Files() {
		fmt.Fprintf(&all, "%s holds %d bytes: %.40q\n", c.Files.Name(id), len(c.Files.Text(id)), c.Files.Text(id))
	}
	for _, e := range c.Enclosures {
		fmt.Fprintln(&all, "enclosure", e.Name.V)
	}
	return all.String()
}

// What the loader makes of a commit is what it makes of the work tree of that commit, under
// each path by which the folder can be named.
func TestFilesAsInWorkTree(t *testing.T) {
	for _, form := range []string{"sha1", "sha256"} {
		t.Run(form, func(t *testing.T) {
			w := begin(t, "--object-format="+form)
			w.write("house/plan.care.hcl", "collection \"House\" {\n  time_zone = \"Europe/Berlin\"\n}\n\nenclosure \"tub-1\" {\n}\n")
			w.write("house/é ü/ne\nw\t\"x\".care.hcl", "# odd\n")
			w.write("house/keeper.care.log", "2026-03-01 tub-1 fed\n")
			w.write("house/empty.care.hcl", "")
			w.write("house/Big.CARE.HCL", "misnamed\n")
			w.write("house/x.care.hcl.txt", "misnamed\n")
			w.write("house/x.care.hcl~", "left\n")
			w.write("house/.hidden/y.care.hcl", "not read\n")
			w.write("house/.dot.care.hcl", "not read\n")
			w.write("house/dir.care.hcl/z.care.hcl", "# in a folder with a file's name\n")
			w.write("house/large.care.hcl", strings.Repeat("# far too much\n", plan.MaxFile/10))
			w.write("house/binary.care.hcl", "a\x00b")
			w.write("house/readme.txt", "text\n")
			w.write("house/run.sh", "#!/bin/sh\n")
			w.write("common/s.care.hcl", "# common\n")
			w.write("common/more/t.care.hcl", "# common too\n")
			w.write("common/words.txt", "# words of a plan\n")
			w.link("../common", "house/away")
			w.link("../common/words.txt", "house/named.care.hcl")
			w.link("plan.care.hcl", "house/again.care.hcl")
			w.link("nowhere", "house/broken.care.hcl")
			w.link("nowhere", "house/broken.txt")
			w.link("round-b.care.hcl", "house/round-a.care.hcl")
			w.link("round-a.care.hcl", "house/round-b.care.hcl")
			w.link("..", "house/up")
			w.link(filepath.Join(w.dir, "common/more"), "house/whole")
			w.link(".hidden", "house/shown")
			w.write("house/module/.keep", "")
			w.git("add", "-A")
			w.git("rm", "-q", "--cached", "house/module/.keep")
			w.git("update-index", "--add", "--cacheinfo", "160000,"+strings.Repeat("1", map[string]int{"sha1": 40, "sha256": 64}[form])+",house/module")
			if err := os.Remove(filepath.Join(w.dir, "house/module/.keep")); err != nil {
				t.Fatal(err)
			}
			w.git("commit", "-q", "-m", "All of it")
			w.run(filepath.Dir(w.dir), "ln", "-s", filepath.Join(w.dir, "house"), "through")
			compared := 0
			for _, x := range [][2]string{
				{w.dir, "."}, {w.dir, "house"}, {filepath.Join(w.dir, "house"), "."}, {filepath.Join(w.dir, "common"), "../house"},
				{filepath.Join(w.dir, "house"), "é ü"}, {w.dir, "house/module"}, {w.dir, w.dir}, {w.dir, filepath.Join(w.dir, "house")},
				{filepath.Dir(w.dir), "through"}, {filepath.Dir(w.dir), "house/house/"}, {w.dir, "house/away"}, {w.dir, "house/plan.care.hcl"},
			} {
				t.Chdir(x[0])
				r := open(t, x[1])
				disk, err := r.Files(r.mustFind(t, "HEAD"))
				want := read(t, afero.NewOsFs(), x[1])
				if err != nil {
					if !strings.HasPrefix(want, "not read:") {
						t.Errorf("%v: %v", x, err)
					}
					continue
				}
				compared++
				if got := read(t, disk, x[1]); got != want {
					t.Errorf("%v: of the commit and of the work tree different things are said:\n%s", x, apart(got, want))
				}
			}
			if compared < 10 {
				t.Errorf("only %d were compared", compared)
			}
		})
	}
}

// apart are the lines that only one of two texts has.
func apart(a, b string) string {
	var out strings.Builder
	x, y := strings.Split(a, "\n"), strings.Split(b, "\n")
	for _, l := range x {
		if !slices.Contains(y, l) {
			out.WriteString("< " + l + "\n")
		}
	}
	for _, l := range y {
		if !slices.Contains(x, l) {
			out.WriteString("> " + l + "\n")
		}
	}
	return out.String()
}

// A revision that is not the one in the work tree is what a work tree of it holds.
func TestFilesOfOtherRevision(t *testing.T) {
	w := begin(t)
	w.write("a.care.hcl", "# one\n")
	w.write("old/b.care.hcl", "# two\n")
	w.link("old/b.care.hcl", "c.care.hcl")
	w.commit("First")
	first := read(t, afero.NewOsFs(), w.dir)
	w.git("rm", "-q", "-r", "old", "c.care.hcl")
	w.write("a.care.hcl", "# one and more\n")
	w.write("new.care.hcl", "# three\n")
	w.commit("Second")
	second := read(t, afero.NewOsFs(), w.dir)
	w.write("a.care.hcl", "# not committed\n")

	r := open(t, w.dir)
	for rev, want := range map[string]string{"HEAD~1": first, "HEAD": second} {
		if got := read(t, r.mustFiles(t, rev), w.dir); got != want {
			t.Errorf("%s is read as\n%s\nand was\n%s", rev, got, want)
		}
	}
}

// What has not changed is not read again, neither here nor by a reader.
func TestFilesAreKept(t *testing.T) {
	w := begin(t)
	w.write("a.care.hcl", "# one\n")
	w.write("b/b.care.hcl", "# two\n")
	w.commit("First")
	w.commit("Nothing new")
	w.write("a.care.hcl", "# three\n")
	w.commit("Second")
	r := open(t, w.dir)
	var reader plan.Reader
	c, _, err := reader.Load(r.mustFiles(t, "HEAD~2"), w.dir)
	if err != nil {
		t.Fatal(err)
	}
	same := r.mustFind(t, "HEAD~1")
	other := r.mustFind(t, "HEAD")
	r.program = filepath.Join(w.dir, "no-git-is-asked")
	disk, err := r.Files(same)
	if err != nil {
		t.Fatal(err)
	}
	if again, _, _ := reader.Load(disk, w.dir); again != c {
		t.Error("a collection in which nothing changed was made again")
	}
	if _, err := r.Files(other); err == nil {
		t.Error("a file that was never read was known")
	}
	before, _ := disk.Stat(filepath.Join(w.dir, "b/b.care.hcl"))
	r = open(t, w.dir)
	after, _ := r.mustFiles(t, "HEAD").Stat(filepath.Join(w.dir, "b/b.care.hcl"))
	if before.Size() != after.Size() || !before.ModTime().Equal(after.ModTime()) {
		t.Errorf("the same file is %v, and later %v", before, after)
	}
}

// Nothing can be written.
func TestFilesAreReadOnly(t *testing.T) {
	w := begin(t)
	w.write("a.care.hcl", "# one\n")
	w.commit("First")
	disk := open(t, w.dir).mustFiles(t, "HEAD")
	name := filepath.Join(w.dir, "a.care.hcl")
	if f, err := disk.OpenFile(name, os.O_RDWR|os.O_TRUNC, 0); err == nil {
		if _, err := f.Write([]byte("x")); err == nil {
			t.Error("a revision was written")
		}
	}
	if disk.Remove(name) == nil || disk.Rename(name, name+"x") == nil || afero.WriteFile(disk, name, nil, 0o644) == nil {
		t.Error("a revision was changed")
	}
	if text, err := afero.ReadFile(disk, name); err != nil || string(text) != "# one\n" {
		t.Errorf("%q, %v", text, err)
	}
}

// A few objects can stand for more files than there are atoms.
func TestFilesBounds(t *testing.T) {
	w := begin(t)
	w.write("a.care.hcl", "# one\n")
	w.commit("First")
	tree := w.git("rev-parse", "HEAD^{tree}")
	for range 12 {
		var all strings.Builder
		for i := range 20 {
			fmt.Fprintf(&all, "040000 tree %s\t%02d\n", tree, i)
		}
		tree = w.piped(all.String(), "git", "mktree")
	}
	// Names that no folder can have, which git refuses to make but not to hold.
	var odd strings.Builder
	for _, name := range []string{"", ".", "..", "a/b.care.hcl", "c.care.hcl"} {
		fmt.Fprintf(&odd, "100644 %s\x00%s", name, strings.Repeat("\x11", 20))
	}
	if l, err := listingOf([]byte(odd.String()), 20); err != nil || len(l) != 1 || l[0].name != "c.care.hcl" {
		t.Errorf("%v, %v", l, err)
	}
	for i := range odd.Len() {
		_, _ = listingOf([]byte(odd.String()[:i]), 20)
	}

	began := time.Now()
	bomb := w.git("commit-tree", "-m", "Many", tree)
	r := open(t, w.dir)
	text := read(t, r.mustFiles(t, bomb), w.dir)
	if !strings.Contains(text, "more files and folders here than are looked through") {
		t.Errorf("%.400s", text)
	}
	if took := time.Since(began); took > 20*time.Second {
		t.Errorf("that took %v", took)
	}
}

// All files together are read as far as the loader reads them.
func TestFilesTogether(t *testing.T) {
	w := begin(t)
	most := plan.MaxBytes / plan.MaxFile
	var names []string
	for i := range most + 3 {
		name := fmt.Sprintf("%02d/x.care.hcl", i)
		names = append(names, name)
		w.write(name, strings.Repeat(" ", plan.MaxFile-1)+"\n")
	}
	w.commit("Large")
	slices.Sort(names)
	got, want := read(t, open(t, w.dir).mustFiles(t, "HEAD"), w.dir), read(t, afero.NewOsFs(), w.dir)
	if got != want {
		t.Errorf("read as\n%.2000s\nand not\n%.2000s", got, want)
	}
	if !strings.Contains(want, "in all files together") {
		t.Errorf("it is not too much: %.400s", want)
	}
}

// piped runs a program with something to read.
func (w work) piped(text, name string, args ...string) string {
	w.Helper()
	file := filepath.Join(w.TempDir(), "in")
	if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
		w.Fatal(err)
	}
	return w.run(w.dir, "sh", append([]string{"-c", `in="$1"; shift; exec "$@" <"$in"`, "sh", file, name}, args...)...)
}
