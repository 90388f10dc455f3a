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

// repeated repeats a text as often as fits into a size, and once at least: a file that is
// larger than what is read would show nothing. A # in it is the number of the repeat; a ~ is
// a number in letters, so that names differ in more than digits.
func repeated(unit string, size int) string {
	if !strings.ContainsAny(unit, "#~") {
		return strings.Repeat(unit, max(size/len(unit), 1))
	}
	b := make([]byte, 0, size+len(unit))
	for i := 0; ; i++ {
		before := len(b)
		for k := range len(unit) {
			switch c := unit[k]; c {
			case '#':
				b = strconv.AppendInt(b, int64(i), 10)
			case '~':
				b = append(b, letters(i)...)
			default:
				b = append(b, c)
			}
		}
		if i > 0 && len(b) > size {
			return string(b[:before])
		}
	}
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

// Inputs are the inputs with a name that is wanted, each of about that many bytes; those that
// are small are the same for every size.
func Inputs(size int, wanted func(name string) bool) iter.Seq[Input] {
	as := func(unit string, n int) string { return strings.Repeat(unit, max(n/len(unit), 1)) }
	filled := func(repeat func(string, int) string, before, unit, after string) string {
		return sound + before + repeat(unit, size-len(sound)-len(before)-len(after)) + after
	}
	return func(yield func(Input) bool) {
		for _, unit := range units {
			for _, p := range places {
				name := fmt.Sprintf("%s %q", p.name, unit)
				if wanted(name) && !yield(Input{Name: name, Plan: filled(as, p.before, unit, p.after)}) {
					return
				}
			}
			for _, p := range logPlaces {
				name := fmt.Sprintf("%s %q", p.name, unit)
				if wanted(name) && !yield(Input{Name: name, Plan: sound + one, Log: p.before + as(unit, size-len(p.before)-len(p.after)) + p.after}) {
					return
				}
			}
		}
		for _, m := range many {
			if name := "many " + m.name; wanted(name) && !yield(Input{Name: name, Plan: filled(repeated, m.before, m.unit, m.after)}) {
				return
			}
		}
		for _, l := range lines {
			if name := "log of " + l.name; wanted(name) && !yield(Input{Name: name, Plan: sound + one + l.plan, Log: repeated(l.unit, size)}) {
				return
			}
		}
		for _, name := range slices.Sorted(maps.Keys(small)) {
			if text := small[name]; wanted("small: "+name) && !yield(Input{Name: "small: " + name, Plan: text, Log: "2026-11-02 one moult\n"}) {
				return
			}
		}
	}
}
