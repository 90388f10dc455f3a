package plan

import (
	"slices"
	"strings"
	"sync"
	"unicode"

	"vivary/plan/syntax"
)

// unread is what the files hold that could not be read. What may be defined in it is not
// called undefined, and what depends on it is not judged.
type unread struct {
	whole  bool // of some file nothing could be read
	blocks []unreadBlock
	// without are the enclosures that are not judged for it.
	without map[string]bool
	once    sync.Once
	words   map[string]bool // that stand in it
}

type unreadBlock struct {
	syntax.Region
	text []byte // of its file
}

// mayHold reports whether what could not be read may define a name: where all words of the
// name stand in it.
func (u *unread) mayHold(name string) bool {
	if u.whole || u.without[name] || len(u.blocks) == 0 {
		return u.whole || u.without[name]
	}
	u.once.Do(func() {
		u.words = map[string]bool{}
		for _, b := range u.blocks {
			for w := range strings.FieldsFuncSeq(string(b.text[b.At.Start:b.At.End]), notInName) {
				u.words[w] = true
			}
		}
	})
	words := strings.FieldsFunc(name, notInName)
	return len(words) > 0 && !slices.ContainsFunc(words, func(w string) bool { return !u.words[w] && !u.words[unnumbered(w)] })
}

// unnumbered is the name of a block with numbers of which a name may be one.
func unnumbered(name string) string {
	return strings.TrimSuffix(strings.TrimRight(name, "0123456789"), "-")
}

// unsaid reports whether nothing is said of a name for what could not be read.
func (r *resolver) unsaid(name string) bool {
	if !r.unread.mayHold(name) {
		return false
	}
	r.quiet++
	return true
}

func notInName(r rune) bool {
	return r != '-' && r != '_' && !unicode.IsLetter(r) && !unicode.IsDigit(r) && !unicode.IsMark(r)
}

// has reports whether a block of a type, and of a name where one is given, could not be read.
func (u *unread) has(kind, name string) bool {
	return slices.ContainsFunc(u.blocks, func(b unreadBlock) bool { return b.Type == kind && (name == "" || b.Name == name) })
}

// shared are the types of blocks on which what is judged of every enclosure depends.
var shared = []string{"collection", "round", "dates", "keeper", "away", "calendar", "feeder", "type"}

// isShared reports whether something could not be read on which everything may depend.
func (u *unread) isShared() bool {
	return u.whole || slices.ContainsFunc(u.blocks, func(b unreadBlock) bool {
		return slices.Contains(shared, b.Type) || b.Type != "" && topTypes[b.Type] == nil
	})
}

// doubt looks at something of an enclosure, which is doubtful where something is not said
// for what could not be read.
func (r *resolver) doubt(e *Enclosure, doubtful map[string]bool, look func()) {
	before, from := r.quiet, len(r.found.All)
	look()
	for i := from; i < len(r.found.All); i++ {
		r.found.All[i].In = e.Box() // where it stands may be said of many
	}
	if r.quiet > before {
		doubtful[e.Name.V] = true
	}
}

// setAside leaves out the enclosures that depend on what could not be read: what would be
// found of them may follow from that.
func (r *resolver) setAside(doubtful map[string]bool) {
	if len(doubtful) == 0 {
		return
	}
	r.unread.without = doubtful
	r.c.Enclosures = slices.DeleteFunc(r.c.Enclosures, func(e *Enclosure) bool { return doubtful[e.Name.V] })
	for name := range doubtful {
		delete(r.c.enclosures, name)
	}
}

// depends reports whether an enclosure takes something from what could not be read.
func (r *resolver) depends(e *Enclosure) bool {
	u := r.unread
	if !u.whole && len(u.blocks) == 0 {
		return false // as most often
	}
	return e.Rack.Set() && (u.has("rack", e.Rack.V) || e.rack != nil && !e.rack.Places.Set() && u.mayHold(e.Rack.V)) || e.Species.Set() && u.has("species", slug(e.Species.V)) ||
		e.Sheet != nil && e.Sheet.Like.Set() && u.has("species", e.Sheet.Like.V) || !e.Room.Set() && u.has("room", "")
}

// Understood reports whether everything could be read on which what is judged depends.
// Where it could not, only what was found in the text is true.
func (c *Collection) Understood() bool { return !c.unread.isShared() }

// Complete reports whether every block could be read: what is found of all together is true
// only then.
func (c *Collection) Complete() bool { return !c.unread.whole && len(c.unread.blocks) == 0 }
