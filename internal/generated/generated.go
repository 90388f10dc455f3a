// Package generated makes collections of any size for measurements and tests: all
// alike in shape, none copied from anywhere.
package generated

import (
	"fmt"
	"strings"
)

// PerRoom is how many enclosures a room has.
const PerRoom = 40

// Collection returns the files of a collection of n enclosures, by name: a file
// for each room with its round, its calendar and 40 enclosures of about 60 lines
// and 12 series each.
func Collection(n int, zone string) map[string]string {
	files := map[string]string{"collection.care.hcl": fmt.Sprintf(
		"collection \"bench\" {\n  title     = \"Measured collection\"\n  time_zone = %q\n}\n\nkeeper \"lead\" {\n  title = \"Lead keeper\"\n}\n", zone)}
	for room := 0; room*PerRoom < n; room++ {
		var b strings.Builder
		fmt.Fprintf(&b, "room \"room-%d\" {\n  temperature = \"21 to 24 C\"\n  humidity    = \"40 to 60 %%\"\n  order       = %d\n  round       = \"round-%d\"\n}\n\n", room, room+1, room)
		fmt.Fprintf(&b, "round \"round-%d\" {\n  at     = \"%02d:%02d\"\n  keeper = \"lead\"\n  within = \"120 min\"\n}\n\n", room, 8+room%12, room%4*15)
		fmt.Fprintf(&b, "calendar \"calendar-%d\" {\n  rounds = [\"round-%d\"]\n  remind = \"10 min\"\n}\n", room, room)
		for i := room * PerRoom; i < min(n, (room+1)*PerRoom); i++ {
			enclosure(&b, i, room)
		}
		files[fmt.Sprintf("rooms/room-%d.care.hcl", room)] = b.String()
	}
	return files
}

func enclosure(b *strings.Builder, i, room int) {
	fmt.Fprintf(b, `
enclosure "tub-%[1]d" {
  title   = "Tub %[1]d"
  species = "pandinus-imperator"
  room    = "room-%[2]d"

  housing {
    kind      = "glass"
    inside    = "60 x 45 x 40 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 3
  }

  animals "adult" {
    count  = "0.1.0"
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice %[1]d"
  }

  climate {
    warm_end    = "27 to 29 C"
    cool_end    = "24 to 25 C"
    night       = "22 to 24 C"
    humidity    = "70 to 80 %%"
    thermometer = true

    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "side"
      thermostat = "29 C"
    }
  }

  care "mist" {
    every  = "day"
    amount = "%[3]d ml"
  }

  care "water" {
    every = "2 days"
  }

  care "weigh" {
    on = ["first sun"]
  }

  feeding "adult" {
    on         = ["%[4]s", "%[5]s"]
    per_animal = %[6]d
    rotate     = ["cricket adult", "cricket adult", "roach medium"]
  }
}
`, i, room, 60+i%5*10, [7]string{"mon", "tue", "wed", "thu", "fri", "sat", "sun"}[i%7], [7]string{"thu", "fri", "sat", "sun", "mon", "tue", "wed"}[i%7], 1+i%3)
}
