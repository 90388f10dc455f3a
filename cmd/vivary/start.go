package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/wording"
)

// firstFile is a file that start writes, by its path below the collection's folder.
type firstFile struct{ name, text string }

// first is the collection that start writes. It compiles as it stands.
var first = []firstFile{
	{"collection" + plan.PlanSuffix, `# The collection as a whole. Files that end in .care.hcl are read together, in
# any folder below this one and in any order.
collection "my-collection" {
  title     = "My collection"
  time_zone = "Europe/London" # where the animals are; all times are local there
}

# A room, with the lowest and the highest its thermometer shows over the year.
room "spare-room" {
  temperature = "21 to 25 C" # or "70 to 77 F": write the units you think in
  humidity    = "40 to 60 %"
}

keeper "me" {
  title = "Me"
}

# One pass past the enclosures. A calendar shows one entry a round and day.
round "evening" {
  at     = "19:30"
  keeper = "me"
  within = "30 min"
}
`},
	{"enclosures/burrow-a" + plan.PlanSuffix, `# One enclosure. A species, a housing and animals are enough for a whole calendar:
# the species sheet brings the care that is usual. Write only what differs.
# To see what it brings and why:  vivary why burrow-a
enclosure "burrow-a" {
  title   = "Burrow A"
  species = "pandinus-imperator"

  housing {
    kind      = "glass"
    inside    = "60 x 45 x 40 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 1
  }

  animals "adult" {
    count  = "0.1.0" # males.females.unsexed
    stage  = "adult"
    origin = "captive bred"
    paper  = "the breeder's invoice, with its number"
  }

  climate {
    warm_end    = "27 to 29 C"
    cool_end    = "22 to 25 C"
    night       = "22 to 24 C"
    humidity    = "70 to 80 %"
    thermometer = true

    # On a wall, not beneath an animal that digs. Power and size together decide how hot
    # it gets. Always with a thermostat, its probe on the warmest surface inside.
    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "side"
      thermostat = "29 C"
    }
  }

  # Takes the place of the sheet's own misting.
  care "mist" {
    every  = "day"
    amount = "60 ml"
  }
}
`},
	{"records/README.txt", `Logs are kept here, one line a fact, for example

  2027-02-10 burrow-a refused "left the cricket, belly round"

written by hand into a file that ends in .care.log, or by

  vivary note burrow-a refused "left the cricket, belly round"
`},
}

func start(w *world, f *flags, args []string) int {
	root, err := folder(f, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary start: %v\n", wording.Plain(err))
		return usage
	}
	if f.sheet != "" {
		return startSheet(w, f, root)
	}
	if found := plan.Standing(w.disk, root); found != "" {
		fmt.Fprintf(w.err, "vivary start: there is a plan already, or what may be one: %s. Nothing was written.\n", filepath.ToSlash(found))
		return refused
	}
	written, err := writeFirst(w.disk, root)
	if err != nil {
		fmt.Fprintf(w.err, "vivary start: %v. Nothing was written.\n", wording.Plain(err))
		return refused
	}
	for _, path := range written {
		fmt.Fprintln(w.out, filepath.ToSlash(path))
	}
	sayForGit(w.out, w.disk, root)
	fmt.Fprintf(w.out, "\nMains and water are close together: %s.\n\nNext: vivary check %[2]s, then vivary build %[2]s\n", schema.Mains, quoted(root))
	return fine
}

// writeFirst writes the files of the first collection, all or none: half of them would
// stand in the way of the next try. A file of the keeper's own that is no plan stays.
func writeFirst(disk afero.Fs, root string) (written []string, err error) {
	for _, x := range slices.Concat(first, forGit) {
		path := filepath.Join(root, filepath.FromSlash(x.name))
		err := publish.Create(disk, path, []byte(x.text))
		if errors.Is(err, os.ErrExist) && !strings.HasSuffix(path, plan.PlanSuffix) {
			continue
		}
		if err != nil {
			for _, path := range written {
				_ = disk.Remove(path)
			}
			return nil, err
		}
		written = append(written, path)
	}
	return written, nil
}
