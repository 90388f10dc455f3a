package revision

import (
	"maps"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"
)

func TestFind(t *testing.T) {
	w := begin(t)
	w.write("a.care.hcl", "one\n")
	first := w.commit("First")
	w.git("tag", "plain")
	w.git("tag", "-a", "-m", "Words", "told")
	w.git("tag", "text", "HEAD:a.care.hcl")
	w.git("branch", "--", "männer/2")
	w.write("a.care.hcl", "two\n")
	second := w.commit("Mist every second day\n\nMore words.")
	w.git("tag", "hold", "HEAD")

	r := open(t, w.dir)
	for rev, id := range map[string]string{
		"HEAD": second, "main": second, "hold": second, "@": second, second: second, second[:7]: second, strings.ToUpper(second[:9]): second,
		"HEAD~1": first, "HEAD^": first, "plain": first, "told": first, "männer/2": first, "refs/tags/told": first, "main@{0}": second,
	} {
		c, err := r.Find(rev)
		if err != nil || c.ID != id {
			t.Errorf("%q is %q, %v; it is to be %s", rev, c.ID, err, id)
		}
	}
	c := r.mustFind(t, "HEAD")
	when := time.Date(2026, 3, 12, 9, 30, 0, 0, time.FixedZone("", 3600))
	if !strings.HasPrefix(second, c.Short) || len(c.Short) < 7 || c.Author != "Lead Keeper" || c.Subject != "Mist every second day" || !c.When.Equal(when) || c.When.Format("15:04 -0700") != "09:30 +0100" {
		t.Errorf("%+v", c)
	}
	for rev, words := range map[string]string{
		"": "no revision is named", " ": "no revision is named", "a\nb": "no revision is named",
		"a..b": "name one, such as a", "...main": "name one, such as main", "..": "name one, such as HEAD",
		"^HEAD": "names no single", "HEAD:a.care.hcl": "names no single", ":/First": "names no single",
		"text": "is no commit", "nowhere": "git log --oneline lists them", "HEAD~9": "there is no revision",
		"--all": "there is no revision", "-n1": "there is no revision", "--output=x": "there is no revision", "--git-dir": "there is no revision",
	} {
		if c, err := r.Find(rev); err == nil || !strings.Contains(err.Error(), words) {
			t.Errorf("%q: %+v, %v, and not %q", rev, c, err, words)
		}
	}
}

func TestFindAmbiguous(t *testing.T) {
	w := begin(t)
	for i := range 40 { // among so many two begin with the same four digits hardly, so one digit is asked
		w.write("a.care.hcl", strings.Repeat("x", i))
		w.commit("More")
	}
	ids := strings.Fields(w.git("rev-list", "HEAD"))
	short := map[string]int{}
	for _, id := range ids {
		short[id[:4]]++
	}
	r := open(t, w.dir)
	for s, n := range short {
		if _, err := r.Find(s); n > 1 && (err == nil || !strings.Contains(err.Error(), "write more")) {
			t.Errorf("%s: %v", s, err)
		}
	}
}

func TestFindNothingCommitted(t *testing.T) {
	w := begin(t)
	_, err := open(t, w.dir).Find("HEAD")
	if err == nil || !strings.Contains(err.Error(), "nothing has been committed yet") {
		t.Error(err)
	}
}

// history makes a repository whose collection is not at its top, with a merge.
func history(t *testing.T) work {
	w := begin(t)
	w.write("house/a.care.hcl", strings.Repeat("a line of a plan\n", 10))
	w.commit("One")
	w.write("other.care.hcl", "elsewhere\n")
	w.write("house/notes.txt", "no plan\n")
	w.commit("Nothing of the plans")
	w.write("house/keeper.care.log", "a line\n")
	w.commit("Two")
	w.git("checkout", "-q", "-b", "side")
	w.write("house/b.care.hcl", "of the side\n")
	w.commit("Of the side")
	w.git("checkout", "-q", "main")
	w.write("house/notes.txt", "still no plan\n")
	w.commit("Nothing again")
	w.git("merge", "-q", "--no-ff", "-m", "Three", "side")
	w.git("mv", "house/a.care.hcl", "house/é [x].care.hcl")
	w.commit("Four")
	return w
}

func subjects(all []Commit) (out []string) {
	for _, c := range all {
		out = append(out, c.Subject)
	}
	return out
}

func TestLog(t *testing.T) {
	w := history(t)
	bare := filepath.Join(filepath.Dir(w.dir), "plans.git")
	w.git("clone", "-q", "--bare", w.dir, bare)
	for _, folder := range []string{filepath.Join(w.dir, "house"), filepath.Join(bare, "house")} {
		r := open(t, folder)
		all, cut, err := r.Log(r.mustFind(t, "HEAD"), 10)
		if got := subjects(all); err != nil || cut || !slices.Equal(got, []string{"Four", "Three", "Two", "One"}) {
			t.Errorf("%v, %v, %v", got, cut, err)
		}
		all, cut, err = r.Log(r.mustFind(t, "HEAD~1"), 2)
		if got := subjects(all); err != nil || cut || !slices.Equal(got, []string{"Three", "Two"}) {
			t.Errorf("%v, %v, %v", got, cut, err)
		}
		names, err := r.Renames(r.mustFind(t, "HEAD~1"), r.mustFind(t, "HEAD"))
		if err != nil || !maps.Equal(names, map[string]string{"é [x].care.hcl": "a.care.hcl"}) {
			t.Errorf("%v, %v", names, err)
		}
	}
}

// What a pattern of git would take for a pattern is a name.
func TestLogOfOddFolder(t *testing.T) {
	w := begin(t)
	for _, dir := range []string{"[ab]*", "a", ":(top)x", "-n"} {
		w.write(dir+"/x.care.hcl", dir)
		w.commit(dir)
	}
	for _, dir := range []string{"[ab]*", "a", ":(top)x", "-n"} {
		r := open(t, filepath.Join(w.dir, dir))
		all, _, err := r.Log(r.mustFind(t, "HEAD"), 10)
		if got := subjects(all); err != nil || !slices.Equal(got, []string{dir}) {
			t.Errorf("%s: %v, %v", dir, got, err)
		}
	}
}

func TestShallow(t *testing.T) {
	w := history(t)
	dir := filepath.Join(filepath.Dir(w.dir), "shallow")
	w.git("clone", "-q", "--depth=3", "file://"+w.dir, dir)
	r := open(t, filepath.Join(dir, "house"))
	head := r.mustFind(t, "HEAD")
	all, cut, err := r.Log(head, 10)
	if got := subjects(all); err != nil || !cut || !slices.Equal(got, []string{"Four", "Three", "Nothing again"}) {
		t.Errorf("%v, %v, %v", got, cut, err)
	}
	if all, cut, err := r.Log(head, 1); err != nil || cut || len(all) != 1 {
		t.Errorf("%v, %v, %v", subjects(all), cut, err)
	}
	if _, err := r.Find("HEAD~5"); err == nil || !strings.Contains(err.Error(), "git fetch --unshallow") {
		t.Error(err)
	}
	w.run(dir, "git", "fetch", "-q", "--unshallow")
	r = open(t, filepath.Join(dir, "house"))
	if all, cut, err := r.Log(head, 10); err != nil || cut || len(all) != 4 {
		t.Errorf("%v, %v, %v", subjects(all), cut, err)
	}
}

// A partial clone says what is to be typed, and that helps.
func TestPartial(t *testing.T) {
	w := history(t)
	w.git("config", "uploadpack.allowFilter", "true")
	dir := filepath.Join(filepath.Dir(w.dir), "partial")
	w.git("clone", "-q", "--filter=blob:none", "--no-checkout", "file://"+w.dir, dir)
	r := open(t, filepath.Join(dir, "house"))
	_, err := r.Files(r.mustFind(t, "HEAD"))
	if err == nil || !strings.Contains(err.Error(), "git fetch --refetch --no-filter") {
		t.Fatal(err)
	}
	w.run(dir, "git", "fetch", "-q", "--refetch", "--no-filter")
	open(t, filepath.Join(dir, "house")).mustFiles(t, "HEAD")
}
