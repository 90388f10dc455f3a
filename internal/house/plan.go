package house

import (
	"fmt"
	"math/rand/v2"
	"strings"

	"vivary/schema/civil"
)

// shelf is boxes of one sort.
type shelf struct {
	template, block string
	many            int
	count           string
	total           int
	stage           string
	instar          int
}

// shelves are the sixty boxes: eight species, breeders, a few empty boxes for what is
// born and what comes.
var shelves = []shelf{
	{"emperor", "mother", 8, "0.1.0", 1, "adult", 0},
	{"emperors", "colony", 3, "1.2.0", 3, "adult", 0},
	{"emperor-tub", "one", 11, "1", 1, "juvenile", 4},
	{"emperor-tub", "one", 4, "0", 0, "young", 2},
	{"forest", "mother", 4, "0.1.0", 1, "adult", 0},
	{"desert", "mother", 5, "0.1.0", 1, "adult", 0},
	{"desert", "cool", 1, "0.1.0", 1, "adult", 0},
	{"desert", "one", 2, "0", 0, "young", 2},
	{"redknee", "knee", 5, "0.1.0", 1, "adult", 0},
	{"redknee-tub", "knee", 7, "1", 1, "juvenile", 0},
	{"vinegaroon", "tail", 3, "0.1.0", 1, "adult", 0},
	{"whip", "tailless", 2, "0.1.0", 1, "adult", 0},
	{"whip", "one", 1, "0", 0, "young", 2},
	{"millipedes", "all", 2, "4", 4, "adult", 0},
	{"woodlice", "all", 2, "20", 20, "adult", 0},
}

// New is the house of a seed, on its first day.
func New(seed uint64) *World {
	w := &World{Seed: seed, Today: civil.Must(2027, 3, 1), rng: rand.New(rand.NewPCG(seed, 0x686f757365))}
	for _, s := range shelves {
		for range s.many {
			n := len(w.Boxes) + 1
			b := &Box{Name: fmt.Sprintf("box-%02d", n), Title: fmt.Sprintf("Box %02d", n), Template: s.template}
			instar := s.instar
			if s.total > 0 && instar > 0 {
				instar += w.rng.IntN(2)
			}
			l := &Lot{Block: s.block, Stage: s.stage, Instar: instar, Count: s.total, Female: strings.HasPrefix(s.count, "0.1")}
			l.planned = asPlanned{l.Count, l.Stage, l.Instar}
			if all := kinds[s.template].Stage; l.Stage == "adult" && all != nil {
				l.Instar = len(all)
			}
			if b.Rests = s.block == "cool"; b.Rests {
				w.rest(l)
			}
			b.Lots = append(b.Lots, l)
			w.Boxes = append(w.Boxes, b)
		}
	}
	w.Came = w.Here()
	july, winter := w.Today+civil.Date(w.between(120, 150)), w.Today+civil.Date(w.between(250, 280))
	w.Trips = []Trip{{From: july, To: july + civil.Date(w.between(7, 14))}, {From: winter, To: winter + civil.Date(w.between(5, 9)), Visits: `["mon", "tue", "thu", "fri", "sun"]`}}
	w.before()
	return w
}

// before is what had happened before the first day: matings, of which the births fall
// into the year.
func (w *World) before() {
	first := w.Today
	for _, b := range w.Boxes {
		k, l := b.Kind(), b.Lots[0]
		if k.Carry[1] == 0 || !l.Female || b.Rests || w.chance(300) {
			continue
		}
		w.Today = first - civil.Date(w.between(10, k.Carry[0]-10))
		w.mate(b, l, w.between(k.Carry[0], k.Carry[1]))
	}
	w.Today = first
	w.sort()
}

// Files are the files of the house, with the log as it is on a day.
func (w *World) Files(on civil.Date) map[string]string {
	return map[string]string{"collection.care.hcl": w.common(), "templates.care.hcl": Templates, "boxes.care.hcl": w.boxes(), "records.care.log": w.LogUntil(on)}
}

func (w *World) common() string {
	var out strings.Builder
	out.WriteString(strings.NewReplacer(`  at     = "19:30"`, `  at     = "19:30"`+"\n"+`  keeper = "lead"`, `  humidity    = "50 to 60 %"`, `  humidity    = "50 to 60 %"`+"\n"+`  round       = "evening"`).Replace(Common))
	for _, k := range []string{"lead", "relief", "second"} {
		fmt.Fprintf(&out, "\nkeeper %q {\n  trained = \"venom, hairs, breeding, feeding\"\n}\n", k)
	}
	out.WriteString("\nroom \"litter\" {\n  temperature = \"22 to 25 C\"\n  humidity    = \"50 to 60 %\"\n  round       = \"litter\"\n}\n")
	out.WriteString("\nround \"litter\" {\n  at     = \"18:00\"\n  keeper = \"relief\"\n  within = \"60 min\"\n}\n")
	for i, t := range w.Trips {
		fmt.Fprintf(&out, "\naway \"lead\" {\n  from  = %q\n  to    = %q\n  cover = %q\n", t.From, t.To, []string{"relief", "second"}[i])
		if t.Visits != "" {
			fmt.Fprintf(&out, "  visits = %s\n", t.Visits)
		}
		out.WriteString("}\n")
	}
	out.WriteString("\ncalendar \"care\" {\n  entry = \"per care\"\n}\n\ncalendar \"rounds\" {\n}\n")
	return out.String()
}

// coolRest is the season of a box whose animals rest in winter. The days of its truth
// are those of rest.
const coolRest = `
  season "cool rest" {
    from    = "1 nov"
    to      = "15 feb"
    ramp    = "2.5 C"
    feeding = "none"
    heating = "off"

    climate {
      warm_end = "19 to 20 C"
      cool_end = "19 to 20 C"
    }
  }
`

// rest is the winter of one that rests: empty for two weeks at full heat, the rest, and
// up to a week until it eats (life in a cool rest: common practice, no source).
func (w *World) rest(l *Lot) {
	year, _, _ := w.Today.YMD()
	from, until := civil.Must(year, 11, 1), civil.Must(year+1, 2, 16)
	l.begin(Empty, from-14, from)
	l.begin(Rest, from, until)
	l.begin(Warming, until, until+14)
}

// boxes is the plan of the boxes. It is never edited: all that happens is in the log.
func (w *World) boxes() string {
	var out strings.Builder
	for i, b := range w.Boxes {
		l := b.Lots[0]
		fmt.Fprintf(&out, "enclosure %q {\n  title    = %q\n  template = %q\n", b.Name, b.Title, b.Template)
		if b.Kind().Water == 0 {
			out.WriteString("  room     = \"litter\"\n") // they bear no day without a look, also while the keeper is away
		}
		fmt.Fprintf(&out, "\n  animals %q {\n", l.Block)
		count := fmt.Sprint(l.planned.Count)
		if l.Female {
			count = `"0.1.0"`
		}
		fmt.Fprintf(&out, "    count  = %s\n", count)
		if l.planned.Instar > 0 {
			fmt.Fprintf(&out, "    instar = %d\n", l.planned.Instar)
		} else {
			fmt.Fprintf(&out, "    stage  = %q\n", l.planned.Stage)
		}
		out.WriteString("    origin = \"captive bred\"\n    paper  = \"invoice 118\"\n  }\n")
		if b.Rests {
			out.WriteString(coolRest)
		}
		if i%6 == 0 && b.Kind().Prey {
			out.WriteString("\n  care \"weigh\" {\n    on = [\"first sun\"]\n  }\n")
		}
		out.WriteString("}\n\n")
	}
	return out.String()
}
