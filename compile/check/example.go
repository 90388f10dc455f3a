package check

import "strings"

// sound is a collection about which little is to be said: what the examples of
// rules change. Each part begins with the words that take its place.
var sound = []struct{ head, text string }{
	{"collection ", "collection \"examples\" {\n  time_zone  = \"Europe/London\"\n  quarantine = \"60 days\"\n}\n"},
	{"room \"east\"", "room \"east\" {\n  temperature = \"24 to 26 C\"\n  humidity    = \"50 to 60 %\"\n}\n"},
	{"keeper \"lead\"", "keeper \"lead\" {\n}\n"},
	{"round \"evening\"", "round \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n}\n"},
	{"round \"mondays\"", "round \"mondays\" {\n  at     = \"20:30\"\n  keeper = \"lead\"\n  on     = [\"mon\"]\n}\n"},
}

// soundBox is the inside of the enclosure "box" of that collection.
var soundBox = []struct{ head, text string }{
	{"species ", "species = \"pandinus-imperator\"\n"},
	{"room ", "room = \"east\"\n"},
	{"housing ", "housing {\n  kind      = \"glass\"\n  inside    = \"76 x 46 x 41 cm\"\n  lid       = \"solid, latched\"\n  vents     = \"some\"\n  substrate = \"coir and topsoil\"\n  moisture  = \"damp\"\n  depth     = \"16 cm\"\n  hides     = 4\n}\n"},
	{"animals ", "animals \"adults\" {\n  count  = 3\n  stage  = \"adult\"\n  origin = \"captive bred\"\n  paper  = \"invoice 118\"\n}\n"},
	{"climate ", "climate {\n  warm_end    = \"28 to 29 C\"\n  cool_end    = \"26 C\"\n  night       = \"22 to 25 C\"\n  humidity    = \"70 to 82 %\"\n  thermometer = true\n\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"29 C\"\n  }\n}\n"},
}

// outer are the blocks that stand outside of enclosures. A species, a room or a
// template inside of one is an attribute.
var outer = []string{"collection", "room", "keeper", "round", "away", "calendar", "enclosure", "template", "species", "feeder", "source"}

// Example makes a whole plan, and a log, of an example of a rule. An example that
// begins with a block of the outermost level is a set of such blocks; any other is
// the inside of an enclosure "box" of emperor scorpions. What it does not write is
// sound: the blocks and attributes that it begins a line with take the place of
// the sound ones. Lines that begin with a day belong to the log.
func Example(fragment string) (plan, log string) {
	var text strings.Builder
	for line := range strings.Lines(fragment) {
		if line[0] >= '0' && line[0] <= '9' {
			log += line
		} else {
			text.WriteString(line)
		}
	}
	fragment = text.String()
	box, blocks := fragment, ""
	if isOuter(fragment) {
		box, blocks = "", fragment
	}
	var out strings.Builder
	for _, p := range sound {
		if !begins(blocks, p.head) {
			out.WriteString(p.text)
		}
	}
	out.WriteString(blocks)
	if begins(blocks, "enclosure \"box\"") {
		return out.String(), log
	}
	out.WriteString("enclosure \"box\" {\n")
	for _, p := range soundBox {
		if !begins(box, p.head) {
			out.WriteString(p.text)
		}
	}
	out.WriteString(box + "}\n")
	return out.String(), log
}

func isOuter(fragment string) bool {
	word, rest, _ := strings.Cut(fragment, " ")
	for _, w := range outer {
		if word == w {
			return !strings.HasPrefix(strings.TrimLeft(rest, " "), "=")
		}
	}
	return false
}

// begins reports whether a line of the text begins with head.
func begins(text, head string) bool {
	return strings.HasPrefix(text, head) || strings.Contains(text, "\n"+head)
}
