// Package randomplan makes collections at random for tests: what keepers write,
// sensible in most of it and odd in some. A seed gives the same files for ever, so
// that a plan on which something went wrong can be looked at again.
package randomplan

import (
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"

	"vivary/schema/civil"
)

// Plan is a collection made at random, on a day.
type Plan struct {
	Seed  uint64
	Today civil.Date
	Zone  string

	about     *Block
	rooms     []*Block
	racks     []*Block
	keepers   []*Block
	rounds    []*Block
	dates     []*Block
	rotas     []*Block
	inTurn    string // the rounds that take turns, as a list; "" for none
	aways     []*Block
	calendars []*Block
	templates []*Block
	Boxes     []*Box
	Log       []Line

	numbered *Block   // the boxes that are written as one block, and
	apart    []string // what differs in them

	rng *rand.Rand
}

// Box is an enclosure, with what tests have to know of it.
type Box struct {
	*Block
	Species string
	Heated  bool
	Groups  []*Group
}

// Title is the name that people see.
func (b *Box) Title() string { return b.get("title") }

// Seasonal reports whether a part of the year is unlike the rest.
func (b *Box) Seasonal() bool { return len(b.of("season")) > 0 }

// Group is the animals of one block.
type Group struct {
	Name, Stage string
	Count       int
	left        int // after the lines of the log so far
}

// zones are taken at random; the first is what most plans have.
var zones = []string{"Europe/London", "Europe/London", "America/New_York", "Australia/Sydney", "UTC"}

// New makes the plan of a seed.
func New(seed uint64) *Plan {
	p := &Plan{Seed: seed, rng: rand.New(rand.NewPCG(seed, 0x766976617279))}
	p.Today = civil.Must(2026, 3, 1) + civil.Date(p.rng.IntN(600))
	p.Zone = pick(p, zones)
	p.about = block("collection", "random").text("time_zone", p.Zone).text("quarantine", "60 days")
	p.people()
	p.turns()
	p.houses()
	p.enclosures()
	p.absences()
	p.views()
	p.history()
	p.shares()
	return p
}

// Keepers are the names of the people.
func (p *Plan) Keepers() []string { return names(p.keepers) }

// Absent reports whether anybody is away on some day after from and before to.
func (p *Plan) Absent(from, to civil.Date) bool {
	return slices.ContainsFunc(p.aways, func(a *Block) bool {
		return date(a.get("from")) < to && date(a.get("to")) > from
	})
}

// Box returns the enclosure of that name, or nil.
func (p *Plan) Box(name string) *Box {
	for _, b := range p.Boxes {
		if b.Name == name {
			return b
		}
	}
	return nil
}

// Files are the collection's files by name, with the log as it is on a day.
func (p *Plan) Files(on civil.Date) map[string]string {
	return map[string]string{"plan.care.hcl": p.Text(), "records.care.log": p.LogUntil(on)}
}

// Text is the whole plan.
func (p *Plan) Text() string {
	var out strings.Builder
	p.about.write(&out, "")
	for _, blocks := range [][]*Block{p.rooms, p.racks, p.keepers, p.dates, p.rotas, p.rounds, p.aways, p.calendars, p.templates} {
		for _, b := range blocks {
			b.write(&out, "")
		}
	}
	for _, b := range p.Boxes {
		b.write(&out, "")
	}
	if p.numbered != nil {
		var text strings.Builder
		p.numbered.write(&text, "")
		out.WriteString(strings.TrimSuffix(text.String(), "}\n") + strings.Join(p.apart, "") + "}\n")
	}
	return out.String()
}

// LogUntil is the log with the lines that were written until a day.
func (p *Plan) LogUntil(on civil.Date) string {
	var out strings.Builder
	for _, l := range p.Log {
		if l.Date <= on {
			out.WriteString(l.Text())
		}
	}
	return out.String()
}

// Clone returns a copy that can be changed on its own. It goes on with random
// numbers of its own, so that what is done to it does not hang on what was done
// to the other.
func (p *Plan) Clone() *Plan {
	q := *p
	q.rng = rand.New(rand.NewPCG(p.Seed, 0x636c6f6e65))
	q.about = p.about.clone()
	for _, blocks := range []*[]*Block{&q.rooms, &q.racks, &q.keepers, &q.dates, &q.rounds, &q.aways, &q.calendars, &q.templates} {
		*blocks = slices.Clone(*blocks)
		for i, b := range *blocks {
			(*blocks)[i] = b.clone()
		}
	}
	q.Boxes = nil
	for _, b := range p.Boxes {
		q.Boxes = append(q.Boxes, &Box{Block: b.Block.clone(), Species: b.Species, Heated: b.Heated, Groups: b.Groups})
	}
	q.Log = slices.Clone(p.Log)
	return &q
}

// Rack puts the boxes of the first room into a rack, with a thermometer for all or none, and
// a heater that so many boxes share or none for 0.
func (p *Plan) Rack(thermometer bool, share int) {
	room := p.rooms[0].Name
	k := block("rack", "rack").text("room", room)
	if thermometer {
		k.set("thermometer", "true")
	}
	if share > 0 {
		k.set("places", strconv.Itoa(share))
		k.add(block("heater", "cable").text("power", "60 W").text("place", "back").text("thermostat", "26 C"))
	}
	p.racks = []*Block{k}
	for _, b := range p.Boxes {
		if b.drop("rack"); b.get("room") == room {
			b.text("rack", k.Name)
		}
	}
}

// PerCare makes every calendar hold one entry a care, or else one a round.
func (p *Plan) PerCare(care bool) {
	if len(p.calendars) == 0 {
		p.calendars = append(p.calendars, block("calendar", "everything"))
	}
	entry := "per round"
	if care {
		entry = "per care"
	}
	for _, c := range p.calendars {
		c.text("entry", entry)
	}
}

// OwnCalendars gives every keeper a calendar of what they do, care by care, and
// returns its name by that of the keeper.
func (p *Plan) OwnCalendars() map[string]string {
	out := map[string]string{}
	for _, k := range p.Keepers() {
		name := "own-" + k
		out[k] = name
		p.calendars = append(p.calendars, block("calendar", name).set("keepers", list(k)).text("entry", "per care"))
	}
	return out
}

func names(blocks []*Block) (out []string) {
	for _, b := range blocks {
		out = append(out, b.Name)
	}
	return out
}

func pick[T any](p *Plan, of []T) T { return of[p.rng.IntN(len(of))] }

// chance is true in so many of a hundred cases.
func (p *Plan) chance(percent int) bool { return p.rng.IntN(100) < percent }

// between is a number from one to another.
func (p *Plan) between(from, to int) int { return from + p.rng.IntN(to-from+1) }

func date(s string) civil.Date {
	d, err := civil.Parse(s)
	if err != nil {
		panic(err)
	}
	return d
}
