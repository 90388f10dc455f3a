package house

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
	"strings"

	"vivary/schema/civil"
)

// World is a house and the truth about it on a day. What happens is decided by the
// seed alone; the log is what its keepers wrote of it.
type World struct {
	Seed  uint64
	Today civil.Date
	Boxes []*Box
	Log   []Line
	Trips []Trip
	// Came and Went are how many animals came into the house, those that were born here
	// among them, and how many left it: died, or were sold.
	Came, Went int
	// Loose is how many are out of their boxes, and looked for.
	Loose int
	// Careful is a house whose log has no line that cannot be so.
	Careful bool

	rng *rand.Rand
}

// Trip is an absence of the keeper; somebody stands in.
type Trip struct {
	From, To civil.Date // the last day
	Visits   string     // how often somebody comes, as the plan has it; "" for daily
}

// Box is an enclosure of the house.
type Box struct {
	Name, Title, Template string
	Lots                  []*Lot
	// Lost is the day since when animals were taken out of here, and nobody has written
	// where to; 0 for none.
	Lost civil.Date
	// Rests says that its animals take a cool rest in winter. They are healthy and do not
	// breed.
	Rests bool
}

// Lot is animals of one kind and stage in one box: those of a block of the plan, or a
// brood, which has no block.
type Lot struct {
	Block  string // "" for a brood
	Stage  string
	Instar int // 0 where the species has no table of instars
	Count  int
	Female bool
	Mother *Lot // while a brood is with her
	States map[State]Span
	// Out is how many have escaped and were not found.
	Out int
	// Refusals is how many meals in a row were refused.
	Refusals int

	matedFor int // days from the mating until the birth
	// next is the day of what comes next: of a brood its first moult and then its parting,
	// before a moult the moult, of a sac its taking.
	next    civil.Date
	planned asPlanned
}

// asPlanned is how the plan has a lot, before the log.
type asPlanned struct {
	Count  int
	Stage  string
	Instar int
}

// Span is the days of a state; Until is the first day after it, Open for a state that
// only something else ends.
type Span struct{ From, Until civil.Date }

// Open is the end of a span that has none yet.
const Open = civil.Date(1 << 29)

// Line is a line of the log.
type Line struct {
	Date civil.Date
	Text string // after the day
	Slip bool   // it cannot be so
}

// Total is how many animals live in a box.
func (b *Box) Total() (n int) {
	for _, l := range b.Lots {
		n += l.Count
	}
	return n
}

// Out is how many of a box are loose.
func (b *Box) Out() (n int) {
	for _, l := range b.Lots {
		n += l.Out
	}
	return n
}

// free reports whether nobody lives in a box or is expected back there.
func (b *Box) free() bool { return b.Total()+b.Out() == 0 }

// nursing reports whether young are with a mother.
func (b *Box) nursing(mother *Lot) bool {
	return slices.ContainsFunc(b.Lots, func(l *Lot) bool { return l.Mother == mother })
}

// Here is how many animals live in the house.
func (w *World) Here() (n int) {
	for _, b := range w.Boxes {
		n += b.Total()
	}
	return n
}

// Box returns the box of that name, or nil.
func (w *World) Box(name string) *Box {
	for _, b := range w.Boxes {
		if b.Name == name {
			return b
		}
	}
	return nil
}

// Kind is what a box's animals are: the figures of its species that the house lives by.
func (b *Box) Kind() *Kind { return kinds[b.Template] }

// In reports whether a lot is in a state on a day.
func (l *Lot) In(s State, on civil.Date) bool {
	span, ok := l.States[s]
	return ok && on >= span.From && on < span.Until
}

func (l *Lot) begin(s State, from, until civil.Date) {
	if l.States == nil {
		l.States = map[State]Span{}
	}
	l.States[s] = Span{from, until}
}

func (l *Lot) end(s State, on civil.Date) {
	if span, ok := l.States[s]; ok && span.Until > on {
		l.States[s] = Span{span.From, on}
	}
}

// Away reports whether the keeper is away on a day, and the day before or after, when
// things are made ready and made good.
func (w *World) Away(on civil.Date) bool {
	return slices.ContainsFunc(w.Trips, func(t Trip) bool { return on >= t.From-1 && on <= t.To+1 })
}

// LogUntil is the log as it is on a day.
func (w *World) LogUntil(on civil.Date) string {
	var out strings.Builder
	for _, l := range w.Log {
		if l.Date <= on {
			out.WriteString(l.Date.String() + " " + l.Text + "\n")
		}
	}
	return out.String()
}

// Last returns the last lines of the log about a box, for whoever reads a failure.
func (w *World) Last(box string, n int) string {
	var out []string
	for _, l := range w.Log {
		if strings.HasPrefix(l.Text, box+" ") || strings.Contains(l.Text, " "+box) {
			out = append(out, l.Date.String()+" "+l.Text)
		}
	}
	return strings.Join(out[max(0, len(out)-n):], "\n")
}

func (w *World) chance(perMille int) bool { return w.rng.IntN(1000) < perMille }

func (w *World) between(from, to int) int { return from + w.rng.IntN(to-from+1) }

func (w *World) write(b *Box, l *Lot, word string, rest ...any) {
	text := b.Name
	if l != nil && l.Block != "" {
		text += " " + l.Block
	}
	text += " " + word
	for _, r := range rest {
		if s := fmt.Sprint(r); s != "" {
			text += " " + s
		}
	}
	w.Log = append(w.Log, Line{Date: w.Today, Text: text})
}

// Said reports whether the log of a day has a word about a lot.
func (w *World) Said(b *Box, l *Lot, word string, on civil.Date) bool {
	return slices.ContainsFunc(w.Log, func(x Line) bool {
		return x.Date == on && !x.Slip && strings.HasPrefix(x.Text, strings.TrimSpace(b.Name+" "+l.Block)+" "+word)
	})
}

// Truth says who lives in a box on a day, and in which states.
func (b *Box) Truth(on civil.Date) string {
	var out []string
	for _, l := range b.Lots {
		name := l.Block
		if name == "" {
			name = "(brood or guest)"
		}
		text := fmt.Sprintf("  %s: %d, %s, instar %d", name, l.Count, l.Stage, l.Instar)
		for _, s := range slices.Sorted(maps.Keys(l.States)) {
			if l.In(s, on) {
				text += fmt.Sprintf("; %s since %s", s, l.States[s].From)
			}
		}
		out = append(out, text)
	}
	return strings.Join(out, "\n")
}
