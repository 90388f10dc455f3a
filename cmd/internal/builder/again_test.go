package builder_test

import (
	"fmt"
	"maps"
	"path"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/builder"
	"vivary/internal/randomplan"
	"vivary/schema/civil"
)

// at is a moment of a day.
func at(day civil.Date, hour int) builder.Moment {
	return func(loc *time.Location) (time.Time, error) {
		if loc == nil {
			loc = time.UTC
		}
		return day.At(civil.Clock(hour*60), loc), nil
	}
}

// put makes files of a folder what they are to be.
func put(t *testing.T, disk afero.Fs, root string, files map[string]string) {
	t.Helper()
	for name, text := range files {
		was, err := afero.ReadFile(disk, path.Join(root, name))
		if err == nil && string(was) == text {
			continue
		}
		if err := afero.WriteFile(disk, path.Join(root, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// copied copies the files of a folder to another disk.
func copied(t *testing.T, disk afero.Fs, root string) afero.Fs {
	t.Helper()
	out := afero.NewMemMapFs()
	for name, text := range read(t, disk, root) {
		if err := afero.WriteFile(out, name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return out
}

func read(t *testing.T, disk afero.Fs, root string) map[string]string {
	t.Helper()
	out := map[string]string{}
	files, err := afero.ReadDir(disk, root)
	if err != nil {
		return out
	}
	for _, f := range files {
		name := path.Join(root, f.Name())
		if f.IsDir() {
			for k, v := range read(t, disk, name) {
				out[k] = v
			}
			continue
		}
		text, err := afero.ReadFile(disk, name)
		if err != nil {
			t.Fatal(err)
		}
		out[name] = string(text)
	}
	return out
}

// said is what a build says and writes.
func said(t *testing.T, disk afero.Fs, b *builder.Built) string {
	t.Helper()
	var out strings.Builder
	for _, f := range b.Findings() {
		fmt.Fprintln(&out, f.Rule.ID, f.Said(), b.Result.Plan.Files.Start(f.At))
	}
	for _, c := range b.Calendars {
		fmt.Fprintln(&out, c.File, c.State, c.Bytes, c.Wrong, len(c.Noisy))
	}
	files := read(t, disk, "c/feeds")
	for _, name := range slices.Sorted(maps.Keys(files)) {
		fmt.Fprintln(&out, name)
		out.WriteString(files[name])
	}
	return out.String()
}

// TestKeptIsAsFresh: whoever builds a collection again and again, through edits, lines of the
// log, days that pass and calendars that somebody deletes, says and writes what a build that
// begins with nothing does.
func TestKeptIsAsFresh(t *testing.T) {
	stood := 0
	for seed := range uint64(25) {
		p := randomplan.New(seed)
		disk := afero.NewMemMapFs()
		kept := &builder.Builder{Root: "c", Out: "c/feeds"}
		for step := range 8 {
			day := p.Today + civil.Date(step/3)
			if step%2 == 1 {
				p.Edit()
			}
			files := p.Files(day)
			if step == 4 {
				files["more.care.hcl"] = "keeper \"somebody-new\" {\n}\n"
			}
			put(t, disk, "c", files)
			if step == 6 {
				for name := range read(t, disk, "c/feeds") {
					if err := disk.Remove(name); err != nil {
						t.Fatal(err)
					}
					break
				}
			}
			other := copied(t, disk, "c")
			kept.Now = at(day, 8+step)
			fresh := &builder.Builder{Root: "c", Out: "c/feeds", Now: at(day, 8+step)}
			got, err := kept.Build(disk, nil, true)
			if err != nil {
				t.Fatal(err)
			}
			want, err := fresh.Build(other, nil, true)
			if err != nil {
				t.Fatal(err)
			}
			if g, w := said(t, disk, got), said(t, other, want); g != w {
				t.Fatalf("seed %d, step %d: %s", seed, step, differ(g, w))
			}
			for _, c := range got.Calendars {
				if c.State == builder.Unchanged {
					stood++
				}
			}
		}
	}
	if stood < 20 {
		t.Errorf("only %d calendars stood", stood)
	}
}

// differ returns the first line in which two texts differ.
func differ(a, b string) string {
	x, y := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := range min(len(x), len(y)) {
		if x[i] != y[i] {
			return fmt.Sprintf("line %d: %q, fresh %q", i+1, x[i], y[i])
		}
	}
	return fmt.Sprintf("%d lines, fresh %d", len(x), len(y))
}
