package check

import (
	"strings"

	"vivary/plan"
	"vivary/plan/finding/example"
)

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
	{"climate ", "climate {\n  warm_end    = \"28 to 29 C\"\n  cool_end    = \"26 C\"\n  night       = \"22 to 25 C\"\n  humidity    = \"70 to 82 %\"\n  thermometer = true\n\n  heater \"mat\" {\n    power      = \"25 W\"\n    size       = \"28 x 43 cm\"\n    place      = \"side\"\n    thermostat = \"29 C\"\n  }\n}\n"},
}

// outer are the blocks that stand outside of enclosures. A species, a room or a
// template inside of one is an attribute.
var outer = []string{"collection", "room", "rack", "keeper", "contact", "round", "rota", "away", "calendar", "dates", "deadline", "enclosure", "gone", "seller", "supply", "tub", "culture", "template", "species", "type", "feeder", "source"}

// Example makes a whole plan, and a log, of an example of a rule: see Splice.
func Example(fragment string) (plan, log string) {
	s := Splice(fragment)
	return s.plan, s.log.Text
}

// Spliced is a whole plan and a log, made of an example. It knows which of their
// lines are the example's.
type Spliced struct {
	plan  string
	above int           // lines of the plan above those of the example
	typed example.Lines // the lines of the example that belong to the plan
	log   example.Lines // and those that belong to the log
}

// The names of the files of an example.
const (
	planFile = "a" + plan.PlanSuffix
	logFile  = "a" + plan.LogSuffix
)

// Splice makes a whole of an example. One that begins with a block of the outermost
// level is a set of such blocks; any other is the inside of an enclosure "box" of
// emperor scorpions. What it does not write is sound: the blocks and attributes that
// it begins a line with take the place of the sound ones. Lines that begin with a
// day belong to the log.
func Splice(fragment string) *Spliced {
	s := &Spliced{}
	s.typed, s.log = example.Split(fragment)
	box, blocks := s.typed.Text, ""
	if isOuter(box) {
		box, blocks = "", box
	}
	var out strings.Builder
	for _, p := range sound {
		if !begins(blocks, p.head) {
			out.WriteString(p.text)
		}
	}
	if blocks != "" {
		s.above = strings.Count(out.String(), "\n")
	}
	out.WriteString(blocks)
	if !begins(blocks, "enclosure \"box\"") {
		s.box(&out, box)
	}
	s.plan = out.String()
	return s
}

// box writes the enclosure of which the example is the inside, or a sound one.
func (s *Spliced) box(out *strings.Builder, inside string) {
	out.WriteString("enclosure \"box\" {\n")
	for _, p := range soundBox {
		if !begins(inside, p.head) {
			out.WriteString(p.text)
		}
	}
	if inside != "" {
		s.above = strings.Count(out.String(), "\n")
	}
	out.WriteString(inside + "}\n")
}

// Files returns the plan and the log by the names of their files.
func (s *Spliced) Files() map[string]string {
	return map[string]string{planFile: s.plan, logFile: s.log.Text}
}

// Line returns the line of the example that is this line of a file, or 0 for what
// the example did not write.
func (s *Spliced) Line(file string, line int) int {
	if file == logFile {
		return s.log.Line(line)
	}
	return s.typed.Line(line - s.above)
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
