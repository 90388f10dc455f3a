package main

import (
	"fmt"
	"io/fs"
	"path/filepath"
	"runtime"
	"runtime/debug"

	"github.com/spf13/afero"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/wording"
	"vivary/schema/zone"
)

// versionForm is what the program tells of itself.
type versionForm struct {
	envelope
	Module   string `json:"module_version,omitempty"` // none where it was built outside of any
	Revision string `json:"revision,omitempty"`       // of the source
	Time     string `json:"revision_time,omitempty"`
	Changed  bool   `json:"changed_since,omitempty"` // the source was not that of the revision
	Go       string `json:"go"`
	System   string `json:"system"`
	Zones    string `json:"time_zones"`
	Species  int    `json:"species"`
}

// version prints which program this is. What is built in decides what a plan means, so
// that a report of a mistake can say it.
func version(w *world, f *flags, args []string) int {
	if len(args) > 0 {
		fmt.Fprintf(w.err, "vivary version: nothing comes after it, and here stands %q\n", args[0])
		return usage
	}
	if f.library != "" {
		return writeLibrary(w, f.library)
	}
	v := versionForm{envelope: begin("version"), Go: runtime.Version(), System: runtime.GOOS + "/" + runtime.GOARCH, Zones: zone.Version, Species: len(plan.NewLibrary().SpeciesNames())}
	if info, ok := debug.ReadBuildInfo(); ok {
		v.read(info)
	}
	if f.format == "json" {
		printJSON(w, v)
		return fine
	}
	fmt.Fprintln(w.out, "vivary "+v.number())
	if v.Revision != "" {
		changed := ""
		if v.Changed {
			changed = ", and changed since"
		}
		fmt.Fprintf(w.out, "  source      %s of %s%s\n", v.Revision, v.Time, changed)
	}
	fmt.Fprintf(w.out, "  built with  %s, for %s\n  time zones  %s, of the IANA\n  species     %d built in\n", v.Go, v.System, v.Zones, v.Species)
	return fine
}

func (v *versionForm) read(info *debug.BuildInfo) {
	if info.Main.Version != "(devel)" {
		v.Module = info.Main.Version
	}
	for _, s := range info.Settings {
		switch s.Key {
		case "vcs.revision":
			v.Revision = s.Value
		case "vcs.time":
			v.Time = s.Value
		case "vcs.modified":
			v.Changed = s.Value == "true"
		}
	}
}

func (v *versionForm) number() string {
	if v.Module == "" {
		return "without a version, built from source"
	}
	return v.Module
}

// number is the version of the program.
func number() string {
	var v versionForm
	if info, ok := debug.ReadBuildInfo(); ok {
		v.read(info)
	}
	return v.number()
}

// writeLibrary writes the sheets that are built in, as another version of the program reads them
// to say what changes between the two. Into a folder that holds anything it writes nothing.
func writeLibrary(w *world, folder string) int {
	fail := func(err error) int {
		fmt.Fprintf(w.err, "vivary version: the sheets cannot be written: %v\n", wording.Plain(err))
		return refused
	}
	if there, err := afero.ReadDir(w.disk, folder); err == nil && len(there) > 0 {
		fmt.Fprintf(w.err, "vivary version: something stands in %s already: name a folder that is empty, or not there yet\n", quoted(folder))
		return usage
	}
	n := 0
	err := fs.WalkDir(schema.Library, ".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		text, err := fs.ReadFile(schema.Library, path)
		if err != nil {
			return err
		}
		to := filepath.Join(folder, filepath.FromSlash(path))
		if err := w.disk.MkdirAll(filepath.Dir(to), 0o755); err != nil {
			return err
		}
		n++
		return afero.WriteFile(w.disk, to, text, 0o644)
	})
	if err != nil {
		return fail(err)
	}
	fmt.Fprintf(w.out, "Wrote %d sheets into %s. With a later vivary: vivary compare --library %s\n", n, quoted(folder), quoted(folder))
	return fine
}
