// Package internal holds what only tests and those who work on the program use.
package internal

import (
	"go/build"
	"io/fs"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// layers are the packages from the ground up. A package imports only what stands
// in layers before its own: should it want to import sideways, the type that it
// wants lives in the wrong place.
var layers = []string{
	"schema/civil schema/slip",
	"schema/quantity",
	"schema/zone",
	"schema/wording",
	"schema",
	"plan/source",
	"plan/finding",
	"plan/finding/example plan/syntax",
	"plan",
	"plan/change plan/tidy",
	"compile/climate compile/horizon compile/ical compile/logger compile/qrcode compile/vtimezone",
	"compile/recur",
	"compile/identity",
	"compile/life",
	"compile/balance compile/growth compile/measure compile/roster",
	"compile/deadline compile/food compile/prove compile/rounds compile/stock",
	"compile/check",
	"compile",
	"compile/daylist compile/explain compile/feeds compile/picture compile/register compile/sarif",
	"compile/assist compile/compare compile/margin compile/paper compile/readings",
	"compile/level compile/past compile/tasks",
	"cmd/internal/keys cmd/internal/protocol cmd/internal/publish cmd/internal/revision cmd/internal/screen cmd/internal/served",
	"cmd/internal/builder cmd/internal/compared cmd/internal/history cmd/internal/journal cmd/internal/lastlist cmd/internal/send",
	"cmd/internal/caldav cmd/internal/editor cmd/internal/page cmd/internal/silence",
	"cmd/internal/serve",
	"cmd/vivary",
}

// folders are the phases. Each imports itself and those before it, whatever layers
// says.
var folders = []string{"schema", "plan", "compile", "cmd"}

// TestImportsRunOneWay holds the order of the packages, and that the helpers of
// tests are no part of the program.
func TestImportsRunOneWay(t *testing.T) {
	height := map[string]int{}
	for i, layer := range layers {
		for name := range strings.FieldsSeq(layer) {
			if height[name] != 0 {
				t.Errorf("%s stands in layers twice", name)
			}
			height[name] = i + 1
		}
	}
	ours := packages(t)
	for name, imports := range ours {
		if strings.HasPrefix(name, "internal/") {
			continue
		}
		if height[name] == 0 {
			t.Errorf("%s has no place in layers", name)
		}
		for _, other := range imports {
			switch {
			case strings.HasPrefix(other, "internal/"):
				t.Errorf("%s imports %s, which is for tests only", name, other)
			case height[other] >= height[name]:
				t.Errorf("%s imports %s, which does not lie below it", name, other)
			case slices.Index(folders, folder(other)) > slices.Index(folders, folder(name)):
				t.Errorf("%s imports %s, of a later phase", name, other)
			}
		}
	}
	for name := range height {
		if _, there := ours[name]; !there {
			t.Errorf("layers names %s, which does not exist", name)
		}
	}
}

func folder(name string) string {
	first, _, _ := strings.Cut(name, "/")
	return first
}

// packages returns what each package of the module imports of the others, without
// its tests. Names are paths below the module's root.
func packages(t *testing.T) map[string][]string {
	t.Helper()
	out := map[string][]string{}
	const root = ".."
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || !d.IsDir() {
			return err
		}
		if name := d.Name(); name == "testdata" || len(name) > 2 && name[0] == '.' {
			return filepath.SkipDir
		}
		p, err := build.Default.ImportDir(path, 0)
		if err != nil || len(p.GoFiles) == 0 {
			return nil // no package, or one of tests only: the compiler reads the rest
		}
		rel, err := filepath.Rel(root, path)
		if err != nil {
			return err
		}
		name := filepath.ToSlash(rel)
		out[name] = nil
		for _, other := range p.Imports {
			if other, ok := strings.CutPrefix(other, "vivary/"); ok {
				out[name] = append(out[name], other)
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}
