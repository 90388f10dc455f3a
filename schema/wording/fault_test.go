package wording_test

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"vivary/schema/wording"
)

// What the system itself answers to what keepers do is told in their words: no call of
// the system, none of its terms.
func TestReasonOfTheSystem(t *testing.T) {
	dir := t.TempDir()
	file := filepath.Join(dir, "file")
	if err := os.WriteFile(file, nil, 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink("round", filepath.Join(dir, "round")); err != nil {
		t.Fatal(err)
	}
	read := func(name string) error { _, err := os.ReadFile(filepath.Join(dir, name)); return err }
	for want, err := range map[string]error{
		"it is not there": read("none"),
		"it is a folder":  read("."),
		"a part of its path is a file and no folder":    read("file/x"),
		"its links lead round in a circle":              read("round"),
		"its name or its path is too long":              read(strings.Repeat("x", 5000)),
		"something of that name is there already":       os.Mkdir(file, 0o755),
		"the disk is full":                              &fs.PathError{Op: "write", Path: file, Err: syscall.ENOSPC},
		"you have no permission for it":                 &fs.PathError{Op: "open", Path: file, Err: syscall.EACCES},
		"the disk can only be read":                     &fs.PathError{Op: "open", Path: file, Err: syscall.EROFS},
		"too many files are open: close other programs": &fs.PathError{Op: "open", Path: file, Err: syscall.EMFILE},
		"another program has it open":                   &os.LinkError{Op: "rename", Old: file, New: file, Err: syscall.EBUSY},
		"what nobody has words for":                     &fs.PathError{Op: "open", Path: file, Err: errors.New("what nobody has words for")},
		"a sentence of ours":                            errors.New("a sentence of ours"),
		"your share of the disk is full":                os.NewSyscallError("write", syscall.EDQUOT),
		"it would have to move to another disk":         &os.LinkError{Op: "rename", Old: file, New: file, Err: syscall.EXDEV},
		"the system says \"broken pipe\"":               os.NewSyscallError("write", syscall.EPIPE),
	} {
		if err == nil {
			t.Fatalf("%s: no error", want)
		}
		if got := wording.Reason(fmt.Errorf("wrapped: %w", err)); got != want && !strings.Contains(want, "ours") {
			t.Errorf("%v: %q, want %q", err, got, want)
		}
	}
	if got := wording.Reason(errors.New("a sentence of ours")); got != "a sentence of ours" {
		t.Error(got)
	}
}

// An error keeps what it is and what was said around it; the path is named once.
func TestPlain(t *testing.T) {
	bare := &fs.PathError{Op: "open", Path: "c/x.care.log", Err: syscall.EACCES}
	wrapped := fmt.Errorf("%q cannot be written: %w. Nothing was", "c/x.care.log", bare)
	ours := errors.New("the folder has no plan")
	for want, err := range map[string]error{
		`"c/x.care.log": you have no permission for it`:                                bare,
		`"c/x.care.log" cannot be written: you have no permission for it. Nothing was`: wrapped,
		"the folder has no plan": ours,
		"the disk is full":       syscall.ENOSPC,
	} {
		got := wording.Plain(err)
		if got.Error() != want || !errors.Is(got, err) {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if !errors.Is(wording.Plain(wrapped), fs.ErrPermission) {
		t.Error("it is no longer what it was")
	}
	if wording.Plain(nil) != nil {
		t.Error("nothing became an error")
	}
}

// An error of the library that has no path is told in plain words too.
func TestPlainWithoutPath(t *testing.T) {
	if got := wording.Plain(fmt.Errorf("feeds/all.ics cannot be read: %w", fs.ErrNotExist)).Error(); got != "feeds/all.ics cannot be read: it is not there" {
		t.Error(got)
	}
}
