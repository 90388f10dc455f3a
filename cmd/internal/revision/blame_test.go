package revision

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// Line for line it is what git says itself.
func TestBlameAsGit(t *testing.T) {
	for _, form := range []string{"sha1", "sha256"} {
		w := begin(t, "--object-format="+form)
		var text []string
		const name = "-n é [x].care.hcl"
		for i := range 30 {
			at := (i * 7) % (len(text) + 1)
			text = append(text[:at:at], append([]string{fmt.Sprintf("line %d written in turn", i), fmt.Sprintf("another of %d", i)}, text[at:]...)...)
			w.write("house/"+name, strings.Join(text, "\n")+"\n")
			w.commit(fmt.Sprint("Step ", i))
		}
		r := open(t, filepath.Join(w.dir, "house"))
		var asked []Lines
		for i := range text {
			asked = append(asked, Lines{i + 1, i + 1})
		}
		got, err := r.Blame(name, []byte(strings.Join(text, "\n")+"\n"), asked)
		if err != nil {
			t.Fatal(err)
		}
		for i, line := range strings.Split(w.git("blame", "-l", "-s", "--root", "--", "house/"+name), "\n") {
			if id, _, _ := strings.Cut(line, " "); id != got[i].ID || got[i].Open || got[i].Earlier {
				t.Errorf("line %d: %+v, and git says %s", i+1, got[i], line)
			}
		}
		all, err := r.Blame(name, []byte(strings.Join(text, "\n")+"\n"), []Lines{{1, len(text)}})
		if err != nil || all[0].ID == "" {
			t.Errorf("of all of it: %+v, %v", all, err)
		}
	}
}

// written is the subject of what wrote a line, or what else is known of it.
func (w work) written(name, text string, line int) string {
	w.Helper()
	got, err := open(w.T, w.dir).Blame(name, []byte(text), []Lines{{line, line}})
	switch {
	case err != nil:
		return err.Error()
	case got[0].Open:
		return "open"
	case got[0].Earlier:
		return got[0].Subject + " or before"
	}
	return got[0].Subject
}

func (w work) holds(name, text string, line int, want string) {
	w.Helper()
	if got := w.written(name, text, line); got != want {
		w.Errorf("line %d of %s: %q, not %q", line, name, got, want)
	}
}

const block = `  care "mist" {
    every  = "2 days"
    amount = "60 ml"
    because = "the substrate dries within two days in this room"
  }
`

func TestBlame(t *testing.T) {
	w := begin(t)
	text := "# a plan\n" + block
	w.write("a.care.hcl", text)
	w.holds("a.care.hcl", text, 3, "open") // nothing has been committed at all
	w.git("add", "-A")
	w.holds("a.care.hcl", text, 3, "open")
	w.commit("First")
	w.holds("a.care.hcl", text, 3, "First")

	// What is read counts, not what stands there by now.
	more := "# a plan\n# and more\n" + block
	w.write("a.care.hcl", "# something else\n")
	w.holds("a.care.hcl", more, 2, "open")
	w.holds("a.care.hcl", more, 4, "First")

	w.write("new.care.hcl", text)
	w.holds("new.care.hcl", text, 3, "open")
	w.write(".gitignore", "new.*\n")
	w.holds("new.care.hcl", text, 3, ErrNoRepo.Error())

	// A block that was moved was not written by whoever moved it.
	moved := "# a plan\n" + strings.Repeat("# a line between\n", 30) + block
	w.write("a.care.hcl", text+strings.Repeat("# a line between\n", 30))
	w.commit("Second")
	w.write("a.care.hcl", moved)
	w.commit("Moved")
	w.holds("a.care.hcl", moved, 33, "First")
	w.holds("a.care.hcl", moved, 20, "Second")

	// Ends of lines are as git is told to keep them.
	w.git("config", "core.autocrlf", "true")
	w.holds("a.care.hcl", strings.ReplaceAll(moved, "\n", "\r\n"), 33, "First")
	w.git("config", "core.autocrlf", "false")
	w.holds("a.care.hcl", strings.TrimSuffix(moved, "\n"), 35, "First")

	// Revisions that only lay out anew are passed over where the repository says so.
	t.Setenv("GIT_AUTHOR_DATE", "2026-03-13T09:30:00+01:00")
	laid := strings.ReplaceAll(moved, "# a line", "#  a line")
	w.write("a.care.hcl", laid)
	w.write("passed-over", w.commit("Laid out")+"\n")
	w.holds("a.care.hcl", laid, 20, "Laid out")
	w.git("config", "blame.ignoreRevsFile", "passed-over")
	w.holds("a.care.hcl", laid, 20, "Second")
	w.git("config", "--unset", "blame.ignoreRevsFile")

	r := open(t, w.dir)
	for _, l := range []Lines{{0, 1}, {3, 2}, {1, 1000}} {
		if got, err := r.Blame("a.care.hcl", []byte(laid), []Lines{l}); err == nil {
			t.Errorf("lines %v: %+v", l, got)
		}
	}
	// Of several lines the last that was written counts.
	for _, x := range []struct {
		text string
		want string
	}{{laid, "Laid out"}, {"# new\n" + laid, "open"}} {
		got, err := r.Blame("a.care.hcl", []byte(x.text), []Lines{{1, 34}})
		if err != nil || got[0].Open != (x.want == "open") || !got[0].Open && got[0].Subject != x.want {
			t.Errorf("%+v, %v; it is to be %s", got, err, x.want)
		}
	}
}

func TestBlameInShallowClone(t *testing.T) {
	w := begin(t)
	text := block
	for _, subject := range []string{"First", "Second", "Third"} {
		text += "# " + subject + "\n"
		w.write("a.care.hcl", text)
		w.commit(subject)
	}
	dir := filepath.Join(filepath.Dir(w.dir), "shallow")
	w.git("clone", "-q", "--depth=2", "file://"+w.dir, dir)
	shallow := work{t, dir}
	shallow.holds("a.care.hcl", text, 2, "Second or before")
	shallow.holds("a.care.hcl", text, 8, "Third")
	w.holds("a.care.hcl", text, 2, "First")
}

// Nothing is run that a configuration names for a file.
func TestBlameHostile(t *testing.T) {
	w := begin(t)
	w.write("a.care.hcl", block)
	w.write(".gitattributes", "*.hcl diff=trap filter=trap\n")
	w.commit("First")
	marker, trap := filepath.Join(filepath.Dir(w.dir), "sprung"), filepath.Join(filepath.Dir(w.dir), "trap")
	if err := os.WriteFile(trap, []byte("#!/bin/sh\ntouch '"+marker+"'\ncat \"$@\"\n"), 0o755); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"core.fsmonitor", "diff.trap.textconv", "filter.trap.clean", "filter.trap.process", "filter.trap.smudge"} {
		w.git("config", name, trap)
	}
	w.git("config", "filter.trap.required", "true")
	sprung := func() bool {
		_, err := os.Stat(marker)
		return !errors.Is(err, os.ErrNotExist) && os.Remove(marker) == nil
	}
	w.holds("a.care.hcl", block+"# more\n", 2, "First")
	if sprung() {
		t.Error("a program ran that the configuration names")
	}
	w.git("config", "--unset", "filter.trap.process")
	w.holds("a.care.hcl", block+"# more\n", 2, "First")
	if sprung() {
		t.Error("a program ran that the configuration names")
	}
	w.write("more", block+"# more\n")
	if w.git("blame", "--contents", "more", "a.care.hcl"); !sprung() {
		t.Error("the traps are none")
	}
	w.git("config", "filter.a=b.clean", trap)
	if got := w.written("a.care.hcl", block, 2); got == "First" || sprung() {
		t.Errorf("a filter that cannot be turned off: %s", got)
	}
}
