package plan

import (
	"path/filepath"
	"strconv"

	"vivary/plan/finding"
)

// Bounds on what is read. They are far above what people write, and low enough
// that no text makes the program run away.
const (
	MaxFile       = 4 << 20   // bytes in one file
	MaxBytes      = 128 << 20 // bytes in all files together
	MaxFiles      = 20_000    // files in a collection
	MaxEntries    = 200_000   // files and folders below that of a collection
	MaxEnclosures = 20_000    // enclosures in a collection
	MaxInside     = 200       // blocks of one type in another, but for number blocks
	MaxFound      = 500       // things that refuse, in one file or in what files have in common
	MaxLogLines   = 2_000_000 // lines in all logs together
	MaxText       = 2_000     // characters in one text
	MaxList       = 60        // things in one list that names no blocks
	MaxAways      = 500       // absences in a collection
)

// maxOutermost bounds the blocks of a file that stand in no other.
const maxOutermost = MaxEnclosures + 10_000

// maxGuesses bounds with how many names those are compared that are nowhere defined.
const maxGuesses = 1_000_000

// bounded leaves out what of a type of block is more than what is read, and says so.
func bounded[T interface{ head() *Head }](r *resolver, all *[]T, what string, most int) {
	n := len(*all)
	if n <= most {
		return
	}
	r.found.Add(finding.Finding{Rule: ruleTooMany, At: (*all)[most].head().At, Text: "there are " + strconv.Itoa(n) + " " + what,
		Limit: strconv.Itoa(most) + " in a collection", Write: "take out those that are not needed, or split the collection"})
	*all = (*all)[:most]
	r.unread.whole = true
}

// bounds leaves out what there is too much of.
func (r *resolver) bounds() {
	b := &r.blocks
	bounded(r, &b.rooms, "rooms", 5_000)
	bounded(r, &b.racks, "racks", 5_000)
	bounded(r, &b.keepers, "keepers", 1_000)
	bounded(r, &b.contacts, "contacts", 1_000)
	bounded(r, &b.rounds, "rounds", 1_000)
	bounded(r, &b.rotas, "rotas", 200)
	bounded(r, &b.dates, "dates blocks", 1_000)
	bounded(r, &b.aways, "absences", MaxAways)
	bounded(r, &b.calendars, "calendars", 1_000)
	bounded(r, &b.deadlines, "deadlines", 1_000)
	bounded(r, &b.templates, "templates", 5_000)
	bounded(r, &b.species, "species sheets", 300)
	bounded(r, &b.types, "care types", 300)
	bounded(r, &b.feeders, "feeder sheets", 300)
	bounded(r, &b.sources, "sources", 5_000)
}

// full reports whether so much is wrong that no more is looked for. That is said once.
func (r *resolver) full() bool {
	if r.found.Refusing() < MaxFound {
		return false
	}
	if !r.cut {
		r.cut, r.unread.whole = true, true
		r.found.Add(tooMuch())
	}
	return true
}

// tooMuch says that more may be wrong.
func tooMuch() finding.Finding {
	return finding.Finding{Rule: ruleTooMany, Text: "so much is wrong that no more is looked for",
		Limit: strconv.Itoa(MaxFound) + " findings that refuse", Write: "mend those first: one mistake may have made many"}
}

// bound leaves out the files that are beyond what is read of all together. What is in
// the others is looked at.
func (w *walker) bound() {
	if len(w.paths) > MaxFiles {
		w.bounds.Add(finding.Finding{Rule: ruleTooMany, Text: "there are " + strconv.Itoa(len(w.paths)) + " files",
			Limit: strconv.Itoa(MaxFiles) + " files in a collection", Write: "put several enclosures into one file, or split the collection"})
		w.paths = w.paths[:MaxFiles]
	}
	size := int64(0)
	for i, path := range w.paths {
		info, err := w.disk.Stat(path)
		if err != nil {
			continue // that it cannot be read is said when it is read
		}
		if size += min(info.Size(), MaxFile); size > MaxBytes {
			w.bounds.Add(finding.Finding{Rule: ruleTooMany, Text: "the files are larger than what is read: " + quote(filepath.ToSlash(path)) + " and those behind it are left out",
				Limit: strconv.Itoa(MaxBytes>>20) + " MiB in all files together", Write: "move old logs out of the folder, or split the collection"})
			w.paths, w.broken = w.paths[:i], true
			return
		}
	}
}
