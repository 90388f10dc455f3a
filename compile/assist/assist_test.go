package assist

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/plan"
)

// now is the moment of all tests here.
var now = time.Date(2026, 11, 30, 12, 0, 0, 0, time.UTC)

// compiled compiles files.
func compiled(t testing.TB, files map[string]string) *compile.Result {
	t.Helper()
	c, found, err := plan.Load(inMemory(t, files), "/c")
	if err != nil {
		t.Fatal(err)
	}
	return compile.Compile(c, found, now)
}

func inMemory(t testing.TB, files map[string]string) afero.Fs {
	t.Helper()
	disk := afero.NewMemMapFs()
	for name, text := range files {
		write(t, disk, name, text)
	}
	return disk
}

func write(t testing.TB, disk afero.Fs, name, text string) {
	t.Helper()
	if err := afero.WriteFile(disk, filepath.Join("/c", name), []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// folder reads a folder of the repository.
func folder(t testing.TB, root string) map[string]string {
	t.Helper()
	files := map[string]string{}
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, plan.PlanSuffix) && !strings.HasSuffix(path, plan.LogSuffix) {
			return err
		}
		text, err := os.ReadFile(path)
		rel, _ := filepath.Rel(root, path)
		files[filepath.ToSlash(rel)] = string(text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}
