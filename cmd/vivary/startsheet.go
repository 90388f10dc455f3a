package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
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
	name := strings.ToLower(strings.ReplaceAll(strings.TrimSpace(f.sheet), " ", "-"))
	if !regexp.MustCompile(`^[a-z][a-z0-9-]{1,59}$`).MatchString(name) {
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
	latin := strings.ToUpper(name[:1]) + strings.ReplaceAll(name[1:], "-", " ")
	text := fmt.Sprintf(`# What only the species itself can tell. All else is common practice for
# %[3]s: vivary why %[2]s
# Take the # from a line once you know what it says; what stays out is named as not
# judged, and without venom no calendar is built.
species "%[1]s" {
  latin = "%[4]s" # with its author and year
  type  = "%[2]s"
  # source             = ["who says so: a page, a person, your own records"]
  # quality            = "keeper" # paper, society, keeper, practice, memory or own
  # seen               = "2027-03-01"
  # length             = "9 to 15 cm" # of the grown; a scorpion with its tail
  # span               = "14 to 16 cm" # leg span, of spiders
  # temperature_target = "26 to 30 C" # what to aim for by day
  # night              = "20 to 24 C"
  # keeping            = "alone" # or groups, or groups of one male
  # venom              = "mild" # or none, painful, medically significant: look it up
  # hairs              = "none" # or contact, or thrown
  # cites              = "none" # or I, II, III
  # law                = "what to look up where you live"
}
`, name, kind, t.Title.V, latin)
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
