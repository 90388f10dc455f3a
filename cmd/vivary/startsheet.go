package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"vivary/cmd/internal/publish"
	"vivary/plan"
	"vivary/schema/wording"
)

// startSheet writes a sheet of a species of one's own, to be filled in: what only the
// species itself can tell, each with an example beside it.
func startSheet(w *world, f *flags, root string) int {
	fail := func(format string, a ...any) int {
		fmt.Fprintf(w.err, "vivary start: "+format+"\n", a...)
		return usage
	}
	name := plan.SheetName(f.sheet)
	if !plan.FitsSheet(name) {
		return fail("%q cannot be the name of a sheet: letters, digits and hyphens, as in parabuthus-villosus", f.sheet)
	}
	lib := plan.NewLibrary()
	if lib.Species(name) != nil {
		return fail("%s is built in: vivary why %s", name, name)
	}
	genus, _, _ := strings.Cut(name, "-")
	kind, known := f.kind, lib.TypeNames()
	if kind == "" {
		of := lib.TypesOf(genus)
		if len(of) != 1 {
			return fail("say of which care type it is, with --type, one of: %s", strings.Join(known, ", "))
		}
		kind = of[0]
	}
	t := lib.Type(kind)
	if t == nil {
		return fail("there is no care type %q: one of %s", kind, strings.Join(known, ", "))
	}
	if x := t.Exception(genus); x != nil && x.Empty() {
		return fail("%s is not cared for like %s: %s", name, t.Title.V, x.Because.V)
	}
	text := plan.BlankSheet(name, t)
	path := filepath.Join(root, "sheets", name+plan.PlanSuffix)
	switch err := publish.Create(w.disk, path, []byte(text)); {
	case errors.Is(err, os.ErrExist):
		return fail("%s is there already. Nothing was written.", filepath.ToSlash(path))
	case err != nil:
		fmt.Fprintf(w.err, "vivary start: %v. Nothing was written.\n", wording.Plain(err))
		return refused
	}
	fmt.Fprintf(w.out, "%s\n\nFill in what you know of it; vivary check names what is missing.\n", filepath.ToSlash(path))
	return fine
}
