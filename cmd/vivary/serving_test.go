//go:build unix

package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"vivary/cmd/internal/served"
	"vivary/internal/servers"
)

// servingPage is the page of recipes, whose blocks are run here.
const servingPage = "examples/SERVING.md"

// blocks are the blocks of that page in a language, beneath a heading.
func blocks(t *testing.T, head, lang string) (texts []string) {
	t.Helper()
	for _, f := range fences(t, servingPage) {
		if f.head == head && f.lang == lang {
			texts = append(texts, f.text)
		}
	}
	if texts == nil {
		t.Fatalf("%s has no block of %s beneath %q", servingPage, lang, head)
	}
	return texts
}

// recipes is a machine on which blocks of the page are run as they stand, but for the
// addresses, which are those of servers of the test.
type recipes struct {
	t    *testing.T
	dir  string // the folder in which they are run
	home string
	web  string // what is /srv/www on the page
	env  []string
	here []string // what stands on the page, and in its place here
}

func newRecipes(t *testing.T) *recipes {
	r := &recipes{t: t, dir: t.TempDir(), home: t.TempDir(), web: filepath.Join(t.TempDir(), "www")}
	// nginx reads as another user.
	for _, dir := range []string{filepath.Dir(filepath.Dir(r.web)), filepath.Dir(r.web)} {
		if err := os.Chmod(dir, 0o755); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Mkdir(r.web, 0o755); err != nil {
		t.Fatal(err)
	}
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	bin := filepath.Join(r.home, "bin")
	if err := os.MkdirAll(filepath.Join(bin, "the"), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(self, filepath.Join(bin, "the", "vivary")); err != nil {
		t.Fatal(err)
	}
	r.write(filepath.Join(bin, "vivary"), "#!/bin/sh\nexec '"+bin+"/the/vivary' --now 2026-11-25 \"$@\"\n")
	if err := os.Chmod(filepath.Join(bin, "vivary"), 0o755); err != nil {
		t.Fatal(err)
	}
	r.env = []string{"PATH=" + bin + ":" + os.Getenv("PATH"), "HOME=" + r.home, "LC_ALL=C.UTF-8"}
	r.here = []string{"/srv/www", r.web}
	return r
}

func (r *recipes) write(path, text string) {
	r.t.Helper()
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		r.t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		r.t.Fatal(err)
	}
}

// put puts what is here in the place of what stands on the page.
func (r *recipes) put(text string) string { return strings.NewReplacer(r.here...).Replace(text) }

// do runs a block, by the shell that its language names.
func (r *recipes) do(text string, env ...string) (string, error) {
	cmd := exec.Command("bash", "-e", "-c", r.put(text))
	cmd.Dir, cmd.Env = r.dir, append(r.env, env...)
	out, err := cmd.CombinedOutput()
	return string(out), err
}

// done holds that a block does what it says.
func (r *recipes) done(text string, env ...string) string {
	r.t.Helper()
	out, err := r.do(text, env...)
	if err != nil {
		r.t.Fatalf("%s\n%v\n%s", text, err, out)
	}
	return out
}

func (r *recipes) quillmoor() {
	r.t.Helper()
	if err := os.CopyFS(r.dir, os.DirFS(filepath.Join(repository, "examples/quillmoor"))); err != nil {
		r.t.Fatal(err)
	}
}

// The commands for object storage do what the page says of them, with a server that others
// wrote.
func TestServingObjects(t *testing.T) {
	r := newRecipes(t)
	r.quillmoor()
	store := servers.Objects(t, "quillmoor-care")
	r.here = append(r.here, "https://objects.quillmoor.example", "http://"+store.Address)
	r.env = append(r.env, "AWS_ACCESS_KEY_ID="+servers.StoreKey, "AWS_SECRET_ACCESS_KEY="+servers.StoreSecret)
	for _, text := range blocks(t, "Object storage behind a CDN, for many readers", "bash") {
		if out := r.done(text); !strings.Contains(out, "Sent 4 of 4 calendars to s3://quillmoor-care/feeds: 4 files") || strings.Contains(out, servers.StoreSecret) {
			t.Error(out)
		}
		if out := r.done(text); !strings.Contains(out, "Nothing to send") {
			t.Error(out)
		}
	}
	text, err := os.ReadFile(filepath.Join(store.Dir, "quillmoor-care/feeds/evening.ics"))
	built, e := os.ReadFile(filepath.Join(r.dir, "feeds/evening.ics"))
	if err != nil || e != nil || !bytes.Equal(text, built) {
		t.Errorf("%v, %v: another one is stored", err, e)
	}
	r.says(served.CacheControl(built))
	r.says(fmt.Sprintf("are %d KB, and %d KB compressed", len(built)/1000, (len(served.Gzip(built))+500)/1000))
}

// says holds that the page says something.
func (r *recipes) says(text string) {
	r.t.Helper()
	if !strings.Contains(page(r.t, servingPage), text) {
		r.t.Errorf("%s does not say: %s", servingPage, text)
	}
}

// The ways to build a hundred collections do what the page says of them: all are built and
// published, and one that is refused keeps no other away.
func TestServingManyCollections(t *testing.T) {
	names := []string{"alder", "birch", "cedar", "dogwood", "elder"}
	setUp := func(t *testing.T) *recipes {
		r := newRecipes(t)
		for _, name := range names {
			r.done("vivary start collections/" + name)
		}
		return r
	}
	published := func(r *recipes, not string) {
		r.t.Helper()
		for _, name := range names {
			found, err := filepath.Glob(filepath.Join(r.web, name, "*.ics"))
			if err != nil || (len(found) > 0) != (name != not) {
				r.t.Errorf("%s: %v, %v", name, found, err)
			}
		}
	}
	refused := func(r *recipes, name string) {
		r.write(filepath.Join(r.dir, "collections", name, "zz.care.hcl"), "nonsense {\n}\n")
	}
	ways := blocks(t, "A hundred collections side by side", "bash")
	if len(ways) != 3 {
		t.Fatalf("%d ways", len(ways))
	}
	t.Run("cron", func(t *testing.T) {
		r := setUp(t)
		refused(r, "cedar")
		out, err := r.do(ways[0])
		if err == nil || !strings.Contains(out, "cedar") {
			t.Errorf("%v, %s", err, out)
		}
		published(r, "cedar")
		if err := os.Remove(filepath.Join(r.dir, "collections/cedar/zz.care.hcl")); err != nil {
			t.Fatal(err)
		}
		r.done(ways[0])
		published(r, "")
	})
	t.Run("jobs", func(t *testing.T) {
		r := setUp(t)
		refused(r, "birch")
		for job := range 3 {
			r.done(ways[1], fmt.Sprintf("JOB=%d", job), "JOBS=3")
		}
		published(r, "birch")
		if failed, err := os.ReadFile(filepath.Join(r.dir, "failed")); err != nil || string(failed) != "birch\n" {
			t.Errorf("%v, %q", err, failed)
		}
	})
	t.Run("queue", func(t *testing.T) {
		r := setUp(t)
		refused(r, "elder")
		r.write(filepath.Join(r.dir, "queue"), strings.Join(append(names, names...), "\n")+"\n")
		r.done(ways[2])
		published(r, "elder")
		if again, err := os.ReadFile(filepath.Join(r.dir, "again")); err != nil || string(again) != "elder\n" {
			t.Errorf("%v, %q", err, again)
		}
	})
}
