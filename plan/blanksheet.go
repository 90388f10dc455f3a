package plan

import (
	"fmt"
	"regexp"
	"strings"
)

// SheetName is the name of a sheet for a species as people write it: "Parabuthus villosus" is
// "parabuthus-villosus".
func SheetName(species string) string {
	return strings.ToLower(strings.ReplaceAll(strings.TrimSpace(species), " ", "-"))
}

var sheetName = regexp.MustCompile(`^[a-z][a-z0-9-]{1,59}$`)

// FitsSheet reports whether a sheet can have a name.
func FitsSheet(name string) bool { return sheetName.MatchString(name) }

// BlankSheet is the text of a sheet of a species of one's own, of a care type, to be filled in:
// what only the species itself can tell, each with an example beside it.
func BlankSheet(name string, t *TypeSheet) string {
	latin := strings.ToUpper(name[:1]) + strings.ReplaceAll(name[1:], "-", " ")
	return fmt.Sprintf(`# What only the species itself can tell. All else is common practice for
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
`, name, t.Name.V, t.Title.V, latin)
}
