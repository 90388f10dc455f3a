package compile

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"
)

// expected is a rule that keepers expect of a plan, and what serves it here.
type expected struct {
	id    string
	what  string
	rules string // the rules that serve it, by their ids
	how   string // what else serves it: a table, a step of the roster, a question of the log
	not   string // what of it is not served, and why
}

// expectations are the rules that keepers expect, by family.
var expectations = []expected{
	{"H1", "the setting of a thermostat, with its swing, stays under what the species bears", "heater-overshoot temperature-harmful", "", ""},
	{"H2", "a temperature that is borne but not usual has a season or a reason", "temperature-unusual off-target too-warm unheated", "", ""},
	{"H3", "no heater without a thermostat", "heater-bare stuck-hot stuck-scalds", "what a thermostat that fails comes to is reckoned too", ""},
	{"H4", "a thermometer that is not the thermostat's own", "heater-unchecked", "", ""},
	{"H5", "no heat from beneath for what digs", "heat-beneath", "one beneath is judged by how hot the floor gets once the substrate over it is dry; below that both sides of the dispute are told", ""},
	{"H6", "a heater leaves a cool end", "heater-wide no-gradient", "", ""},
	{"H7", "a room's temperature is a figure with a unit, and one for each season", "room-one-number room-seasons unit value", "a room may say its winter and its summer", ""},
	{"H8", "where the room is too cold in some season, something warms the box", "room-too-cold unheated heat-lost heat-short night-cold", "", "how long it stays warm in a power cut is judged by no rule yet"},
	{"H9", "a species of cool nights has them", "no-night-drop", "", ""},
	{"H10", "seasons change no faster than the ramp", "season-short", "the steps of the thermostat into a season and out of it are worked out from the ramp, and stand in the rounds on their days", ""},
	{"H11", "heaters on one outlet ask for the same", "channel-clash", "", ""},
	{"H12", "margin on hot days", "room-near-limit room-too-hot too-warm", "shelf_rise says how much warmer its shelf is than the thermometer of the room", ""},

	{"M1", "a humidity that the species bears", "humidity-harmful humidity-unusual air-too-wet humidity-lost measured-harmful act-now", "what the log says was measured is asked about until it is better", "a season is held to what is good only where such seasons make more than 122 days of the year, and to what harms always"},
	{"M2", "what lives dry is not misted often", "misted-too-often air-too-wet water-stands", "water of any care with an amount is counted, and a dish by what it does not hold; a misting without an amount as 0.4 mm on the floor", "young are asked only whether the air gets too wet: they are kept damper; a care of the keeper's own without an amount is not counted"},
	{"M3", "what depends on damp is misted or watered", "moisture-gap mist-volume", "the sheet brings the care where the plan has none", ""},
	{"M4", "damp air has an opening", "stale-air wet-sealed no-cross-air air-too-wet air-unclear", "", ""},
	{"M5", "the smallest are not dried out at side vents", "young-draught", "", "species that need moving air and those of dry places are not asked: to them still air is the greater harm, and what dries their young is too long between two mistings"},
	{"M6", "water for what drinks from a dish", "no-water", "", ""},
	{"M7", "no stretch without water longer than the stage may go, anywhere in the year", "water-gap", "counted on the days that stand and are shown to somebody who is there", ""},
	{"M8", "a dish in which the smallest cannot drown", "dish-deep", "the young on a mother count too", "pebbles are not in the language: a dish that has them is accepted with a reason"},
	{"M9", "gauges are tested within a year", "gauge-untested gauge-off gauge-test-odd", "", "of a gauge that has a block; readings of its files are corrected by its tests"},
	{"M10", "humidity is a band", "humidity-exact", "", ""},

	{"F1", "no stage goes longer without a meal than it may", "food-gap", "", ""},
	{"F2", "meals are not closer together than is sensible", "fed-too-often portion-odd", "", ""},
	{"F3", "prey is of a size that the stage can take", "prey-heavy prey-long", "", ""},
	{"F4", "what is left of a live meal is out within a day", "leftovers-late", "a look for leftovers follows each live meal by itself", ""},
	{"F5", "no meal while soft after a moult", "fed-early", "the table of states takes the meals out until it is hard", ""},
	{"F6", "no live meal before a moult", "act-now", "the table of states takes it out, and offers one killed item once the stage's time has come", ""},
	{"F7", "no meals in the cold", "fed-while-cold rest-warm", "", ""},
	{"F8", "no live meal on the last day before nobody comes", "leftovers-late", "the meal is moved, killed or left out, and the round says so", ""},
	{"F9", "not the same prey for ever", "prey-same", "", ""},
	{"F10", "no prey caught outdoors", "prey-wild", "", ""},
	{"F11", "who feeds may feed", "live-prey-untrained venom-untrained", "who is not trained gives killed prey, or leaves it", ""},
	{"F12", "no supplement or vertebrate where the species has no use for it", "prey-rich prey-uneaten", "", "no sheet states what is wrong with a supplement or a mouse for its species: there is no figure to judge by"},

	{"G1", "one to a box, unless the species is known to live together", "kept-alone", "", ""},
	{"G2", "a group is no larger than is known, on floor enough and with a hide for each", "group-large floor-small hides-few", "", ""},
	{"G3", "animals of very different size are apart", "mixed-sizes", "", ""},
	{"G4", "one grown male, where males fight", "two-males sex-unsaid", "", ""},
	{"G5", "whoever moults among others is watched", "moult-in-group", "nothing loose and alive is given to any of them meanwhile", ""},
	{"G6", "a female near birth is alone in time", "brood-in-group", "the log asks for it, first in the round", ""},
	{"G7", "nobody digs, moves or handles late in pregnancy or with young on her", "disturbing-held", "the table of states", ""},
	{"G8", "no separation before the first moult", "separated-early first-moult-late", "", ""},
	{"G9", "a first meal of the young has its latest day", "food-gap", "the task stands on its days, and becomes a question that is asked until the log answers it", ""},
	{"G10", "there are boxes for the young that may come", "nursery-full", "", ""},
	{"G11", "dates in an order that can be", "log-order birth-unlikely young-unlikely date", "", ""},
	{"G12", "no moult of what does not moult any more", "moult-of-adult", "", ""},
	{"G13", "room and hold for what hangs to moult", "drop-short no-perch height-low", "", ""},
	{"G14", "no pairing of kin", "kin-together", "", "goes by young that grow up together: a pair from two boxes is not traced to its parents, since no line of the log says who they are"},
	{"G15", "no pairing after a moult or in quarantine", "disturbing-held quarantine-mixed", "the table of states holds pairing while one is soft or hardening", "in quarantine the table holds moves only; whoever was put to others is found as quarantine-mixed"},
	{"G16", "an unknown stage is judged as the strictest", "stage-unknown", "", ""},

	{"P1", "somebody looks at every lid on every day", "lid-unchecked", "", "a colony that nobody counts (woodlice, roaches) is looked at with its watering, every three days"},
	{"P2", "what is a danger to life is behind two locks", "venom-unlocked", "", ""},
	{"P3", "and in no list of somebody who is not trained", "venom-untrained hairs-untrained pain-untrained left-untrained", "a stand-in who is not trained is told to leave it shut, and whom to ring", ""},
	{"P4", "what to do after a sting is at hand", "sting-card venom-unsaid venom-doubted", "the entry with which somebody's time as stand-in begins says it for each class of venom in their care (`schema/cautions.go`)", "whether the card hangs there nobody can see from a plan"},
	{"P5", "no hand round a scorpion without a reason", "handled", "the round says before which care gloves, forceps or a box are wanted (`schema/cautions.go`)", ""},
	{"P6", "no opening that the smallest fits through", "gap-wide gap-unsaid lid-loose", "", "how wide the openings are is asked of a lid of mesh only: the holes of a tub are judged where `gap` says how wide they are, and passed over where it does not"},
	{"P7", "a round of two has two", "people-few", "", ""},

	{"B1", "feeders enough for the week", "", "", "stocks of feeders are not in the language: the portions of each day are, and no rule adds them up yet"},
	{"B2", "an order comes before it is needed, and not into frost", "", "", "orders are not in the language; a care of the keeper's own can stand on the day of one"},
	{"B3", "a second culture of what a brood depends on", "", "", "a culture can be an enclosure of its own; on which one a brood depends is not in the language"},
	{"B4", "a culture is begun in time", "", "a care of the kind prepare has its day", "how long a culture takes is no figure of a feeder's sheet yet"},

	{"A1", "nobody is left alone for longer than it bears", "water-gap lid-unchecked food-gap left-untrained", "the proof runs through absences", ""},
	{"A2", "no birth, separation or first meal falls into an absence unseen", "birth-while-away", "before leaving the round asks for somebody who may", "a delivery is not in the language"},
	{"A3", "who stands in can ring somebody", "contact-unsaid", "the list of the day has the numbers, and calendars the names", "the numbers of who leaves and who stands in are asked for, a veterinarian's is not"},

	{"R1", "a licence is renewed in time", "deadline-overdue", "it is told from its lead on, each week until it is logged", "what the law asks is for somebody who knows it"},
	{"R2", "the origin of a listed species is written", "origin-unsaid", "", ""},
	{"R3", "where each animal is from, and since when", "arrival-unsaid origin-unsaid", "", "one of origin, arrival and birth is enough; of a listed species the origin. Since when it is here is not asked for by itself"},
	{"R4", "nobody joins others before quarantine is over", "quarantine-mixed quarantine-unstated", "", ""},

	{"X1", "what sets a limit aside has a reason, a source and a day on which it is looked at again", "unreasoned review-far figure-overdue accept-over accept-long accept-never", "", ""},
	{"X2", "a number has its unit", "unit", "", ""},
	{"X3", "a name that is not known gets the nearest ones", "unknown-name unknown-word old-name", "", ""},
	{"X4", "an animal is in one place on one day", "log-gone moved-nowhere species-mixed", "what came in is here or has gone: moves are read over all enclosures between which a line moved animals", ""},
	{"X5", "a day has no more work than there is time", "day-too-long round-long", "", ""},
	{"X6", "a calendar is not drowned", "calendar-noisy round-crowded", "", ""},
	{"X7", "no line about the dead", "log-gone", "", ""},
	{"X8", "a plan that nobody logs in is asked about", "log-silent question-open", "", ""},
}

// families are how many there are of each.
var families = []struct {
	letter, title string
	n             int
}{{"H", "Heat", 12}, {"M", "Moisture, air and water", 10}, {"F", "Feeding", 12}, {"G", "Groups, stages and breeding", 16}, {"P", "Security and people", 7},
	{"B", "Feeders", 4}, {"A", "Absence", 3}, {"R", "Papers", 4}, {"X", "The plan itself", 8}}

// expectedPage is the page of what keepers expect, as Markdown.
func expectedPage() string {
	var b strings.Builder
	b.WriteString("# Rules that keepers expect\n\nThis page is generated from the table in `compile/expected_test.go`: `go test ./compile -run Expected -update`. For each rule that a keeper expects of a checked plan: what serves it, by the ids of [the rules](RULES.md), and what does not yet, with the reason.\n")
	for _, f := range families {
		fmt.Fprintf(&b, "\n## %s\n\n| | expected | rules | what else serves it | what does not, and why |\n|---|---|---|---|---|\n", f.title)
		for _, x := range expectations {
			if !strings.HasPrefix(x.id, f.letter) {
				continue
			}
			var rules []string
			for _, id := range strings.Fields(x.rules) {
				rules = append(rules, fmt.Sprintf("[`%s`](RULES.md#%s)", id, id))
			}
			fmt.Fprintf(&b, "| %s | %s | %s | %s | %s |\n", x.id, x.what, strings.Join(rules, ", "), x.how, x.not)
		}
	}
	return b.String()
}

// Every rule that keepers expect is in the table, once and in order; each says what serves
// it, by rules that there are, or why nothing does; and the page is the table's.
func TestExpected(t *testing.T) {
	var ids []string
	for _, f := range families {
		for i := range f.n {
			ids = append(ids, fmt.Sprint(f.letter, i+1))
		}
	}
	var have []string
	for _, x := range expectations {
		have = append(have, x.id)
		for _, id := range strings.Fields(x.rules) {
			if FindRule(id) == nil {
				t.Errorf("%s: there is no rule %q", x.id, id)
			}
		}
		if x.what == "" || x.rules == "" && x.not == "" {
			t.Errorf("%s does not say what serves it, or why nothing does", x.id)
		}
	}
	if !slices.Equal(have, ids) {
		t.Errorf("the table has %v\nwant %v", have, ids)
	}
	text := expectedPage()
	if *update {
		if err := os.WriteFile("EXPECTED.md", []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if got, err := os.ReadFile("EXPECTED.md"); err != nil || string(got) != text {
		t.Errorf("EXPECTED.md is stale: run go test ./compile -run Expected -update (%v)", err)
	}
}
