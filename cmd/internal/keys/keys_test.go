package keys

import (
	"crypto/rand"
	"errors"
	"io"
	"os"
	"strings"
	"testing"

	"github.com/spf13/afero"
)

const path = "private/quillmoor.keys"

var want = Wanted{Title: "Quillmoor", Calendars: names("evening", "morning"), Keepers: names("lead")}

// names are names that were never others.
func names(all ...string) (out []Named) {
	for _, name := range all {
		out = append(out, Named{name, name})
	}
	return out
}

func filled(t *testing.T) (afero.Fs, *Ring) {
	t.Helper()
	disk := afero.NewMemMapFs()
	r, added, err := Fill(disk, path, want, rand.Reader)
	if err != nil || strings.Join(added, ",") != "calendar evening,calendar morning,keeper lead,page,labels" {
		t.Fatal(added, err)
	}
	return disk, r
}

// A file that is made has a key for each name, no two of them the same, and only its owner
// can read it; a second time nothing is written.
func TestFill(t *testing.T) {
	disk, r := filled(t)
	info, err := disk.Stat(path)
	if err != nil || info.Mode().Perm() != 0o600 {
		t.Fatal(info.Mode(), err)
	}
	before, _ := afero.ReadFile(disk, path)
	seen := map[Key]bool{}
	for _, k := range []Key{r.Calendars["evening"], r.Calendars["morning"], r.Keepers["lead"].Key, r.Page, r.Labels} {
		if !keyForm.MatchString(string(k)) || seen[k] {
			t.Errorf("key %q", k)
		}
		seen[k] = true
	}
	_, added, err := Fill(disk, path, want, rand.Reader)
	after, _ := afero.ReadFile(disk, path)
	if err != nil || len(added) > 0 || string(before) != string(after) {
		t.Error(added, err)
	}
	more := want
	more.Calendars = names("night")
	again, added, err := Fill(disk, path, more, rand.Reader)
	if err != nil || strings.Join(added, ",") != "calendar night" || again.Calendars["evening"] != r.Calendars["evening"] {
		t.Error(added, err)
	}
	if files, _ := afero.ReadDir(disk, "private"); len(files) != 1 {
		t.Error("something is left beside it")
	}
}

// A renewed key is another, and all else stays, comments and mail too.
func TestRenew(t *testing.T) {
	disk, r := filled(t)
	text, _ := afero.ReadFile(disk, path)
	mail := "\n# where it goes\nmail {\n  server = \"localhost:25\"\n  from = \"vivary@quillmoor.example\"\n  plain = true\n}\n"
	if err := afero.WriteFile(disk, path, append(text, mail...), 0o600); err != nil {
		t.Fatal(err)
	}
	for name, only := range map[string]string{"evening": "calendar evening", "keeper lead": "keeper lead", "labels": "labels", "page": "page"} {
		if got, err := Renew(disk, path, name, rand.Reader); err != nil || strings.Join(got, ",") != only {
			t.Fatal(got, err)
		}
	}
	now, err := Read(disk, path)
	if err != nil || now.Calendars["evening"] == r.Calendars["evening"] || now.Keepers["lead"].Key == r.Keepers["lead"].Key || now.Page == r.Page || now.Labels == r.Labels {
		t.Error("not renewed", err)
	}
	if now.Calendars["morning"] != r.Calendars["morning"] || now.Mail == nil || now.Mail.Server != "localhost:25" {
		t.Error("something else changed")
	}
	if text, _ := afero.ReadFile(disk, path); !strings.Contains(string(text), "# where it goes") {
		t.Error("a comment is lost")
	}
	if _, err := Renew(disk, path, "evenign", rand.Reader); !errors.Is(err, ErrNoName) {
		t.Error(err)
	}
}

// What is wrong with a file is told with its place, and without a key or a password.
func TestWrong(t *testing.T) {
	const key = "AAAAAAAAAAAAAAAAAAAAAA"
	for text, says := range map[string]string{
		"calendar \"a\" {\n  key = \"short-secret\"\n}\n":                                                   "the key of calendar a",
		"calendar \"a\" {\n  key = \"" + key + "\"\n}\nkeeper \"b\" {\n  key = \"" + key + "\"\n}\n":        "calendar a and keeper b have the same key",
		"calendar \"a\" {\n  key = \"" + key + "\"\n}\ncalendar \"a\" {\n  key = \"B" + key[1:] + "\"\n}\n": "twice",
		"mail {\n  pasword = \"hunter2-secret\"\n}\n":                                                       ":1: this is not understood",
		"calendar \"a\" {\n  key = secret-word\n":                                                           "this is not understood",
		"<<<<<<< ours\n": "this is not understood",
	} {
		disk := afero.NewMemMapFs()
		if err := afero.WriteFile(disk, path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		_, err := Read(disk, path)
		if err == nil || !strings.Contains(err.Error(), says) || strings.Contains(err.Error(), "secret") || strings.Contains(err.Error(), key) {
			t.Errorf("%q: %v", text, err)
		}
		if _, _, err := Fill(disk, path, want, rand.Reader); err == nil {
			t.Errorf("%q is written to", text)
		}
		if now, _ := afero.ReadFile(disk, path); string(now) != text {
			t.Errorf("%q was changed", text)
		}
	}
	disk := afero.NewMemMapFs()
	if err := afero.WriteFile(disk, path, nil, 0o640); err != nil {
		t.Fatal(err)
	}
	if _, err := Read(disk, path); err == nil || !strings.Contains(err.Error(), "chmod 600") {
		t.Error(err)
	}
	if _, err := Read(afero.NewMemMapFs(), path); !errors.Is(err, os.ErrNotExist) {
		t.Error(err)
	}
}

// Without random numbers, or where the disk fails, there is no key and no file.
func TestNoKeys(t *testing.T) {
	disk := afero.NewMemMapFs()
	if _, _, err := Fill(disk, path, want, io.LimitReader(rand.Reader, 40)); err == nil {
		t.Error("keys of nothing")
	}
	if _, err := disk.Stat(path); err == nil {
		t.Error("a file of no keys")
	}
	if _, _, err := Fill(afero.NewReadOnlyFs(disk), path, want, rand.Reader); err == nil {
		t.Error("written where nothing can be")
	}
}

// Keys of labels follow from one, and differ; only the whole of a key is right.
func TestOf(t *testing.T) {
	_, r := filled(t)
	a, b := r.Labels.Of("tub-1"), r.Labels.Of("tub-2")
	if a == b || a != r.Labels.Of("tub-1") || !keyForm.MatchString(string(a)) {
		t.Error(a, b)
	}
	if !a.Is(string(a)) || a.Is(string(b)) || a.Is(string(a[:21])) || a.Is("") || Key("").Is("") {
		t.Error("what is right is not")
	}
}
