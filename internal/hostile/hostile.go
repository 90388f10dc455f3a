// Package hostile makes texts that nobody writes and a program must bear: patterns that are
// repeated to any size, at each place of a plan and in a log, and small nasty ones. It is for
// tests and measurements.
package hostile

import (
	"fmt"
	"iter"
	"maps"
	"slices"
	"strconv"
	"strings"
)

// Input is a plan and a log.
type Input struct {
	Name      string
	Plan, Log string
}

// Files returns the files of the collection.
func (in Input) Files() map[string]string {
	return map[string]string{"a.care.hcl": in.Plan, "b.care.log": in.Log}
}

// Plain is a plan of about that many bytes in which everything is as keepers write it: as
// many enclosures as fit in, each as short as it can be.
func Plain(size int) Input {
	return Input{Name: "plain", Plan: sound + repeated("\nenclosure \"tub-#\" {"+box+"}\n", size-len(sound))}
}

// sound is the beginning of each plan.
const sound = `collection "bench" {
  time_zone = "Europe/London"
}

room "east" {
  temperature = "21 to 24 C"
  humidity    = "40 to 60 %"
}

keeper "lead" {
  title = "Lead keeper"
}

round "evening" {
  at     = "19:30"
  keeper = "lead"
}
`

// box is what stands in an enclosure.
const box = `
  species = "pandinus-imperator"
  room    = "east"

  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
    depth  = "16 cm"
    hides  = 1
  }

  animals "adult" {
    count = 1
    stage = "adult"
  }
`

// one is an enclosure of which the logs speak.
const one = "\nenclosure \"one\" {" + box + "}\n\nenclosure \"two\" {" + box + "}\n"

// repeated repeats a text to a size. A # in it is the number of the repeat; a ~ is a number
// in letters, so that names differ in more than digits.
func repeated(unit string, size int) string {
	if !strings.ContainsAny(unit, "#~") {
		return strings.Repeat(unit, max(size/len(unit), 1))
	}
	var b strings.Builder
	b.Grow(size)
	for i := 0; b.Len() < size; i++ {
		for _, c := range unit {
			switch c {
			case '#':
				b.WriteString(strconv.Itoa(i))
			case '~':
				b.WriteString(letters(i))
			default:
				b.WriteRune(c)
			}
		}
	}
	return b.String()
}

// letters is a number in letters, spread so that names that follow each other are not alike.
func letters(i int) string {
	n := uint32(i) * 2654435761
	out := make([]byte, 7)
	for k := range out {
		out[k] = 'a' + byte(n%26)
		n /= 26
	}
	return string(out)
}

// Inputs are all inputs, each of about that many bytes; those that are small are the same
// for every size.
func Inputs(size int) iter.Seq[Input] {
	room := size - len(sound)
	return func(yield func(Input) bool) {
		for _, unit := range units {
			for _, p := range places {
				if !yield(Input{Name: fmt.Sprintf("%s %q", p.name, unit), Plan: sound + p.before + repeated(unit, room) + p.after}) {
					return
				}
			}
		}
		for _, m := range many {
			if !yield(Input{Name: "many " + m.name, Plan: sound + m.before + repeated(m.unit, room) + m.after}) {
				return
			}
		}
		for _, l := range lines {
			if !yield(Input{Name: "log of " + l.name, Plan: sound + one + l.plan, Log: repeated(l.unit, size)}) {
				return
			}
		}
		for _, name := range slices.Sorted(maps.Keys(small)) {
			if !yield(Input{Name: "small: " + name, Plan: small[name], Log: "2026-11-02 one moult\n"}) {
				return
			}
		}
	}
}
