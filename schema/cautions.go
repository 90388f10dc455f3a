package schema

import "slices"

// This is the table of cautions: what whoever does the care puts on, has ready or switches
// off first, by what the species is known to do to people and by which devices are at the
// box. It is about people; what animals bear stands in the table of states.

// Caution is something to see to before care of some kinds is done.
type Caution struct {
	Name string
	// Text is what to do, in a few words, as it stands in a round: "gloves on, eyes covered
	// (barbed hairs)". It begins without a capital.
	Text   string
	Why    string
	Source string // on whose word
	// For says at which species, and Places at which heaters: one of either is enough.
	For    []Trait
	Places []string    // words of a heater's place
	Kinds  []*CareKind // before which care, at heaters of these places
}

// Trait is a word of a species' figure, and the kinds of care for which it matters.
type Trait struct {
	Figure *Figure
	Words  []string
	Kinds  []*CareKind
	// Grown says that it is not for newborn and young ones: hairs and stings of animals of
	// a centimetre or two reach nobody's eyes. Those of which the stage is not known count as grown.
	Grown bool
}

// Of reports whether care of a kind asks for the caution: has says whether a species that
// is there has a trait, and heater whether one is at one of some places.
func (c *Caution) Of(k *CareKind, has func(*Trait) bool, heater func(places []string) bool) bool {
	for i := range c.For {
		if t := &c.For[i]; slices.Contains(t.Kinds, k) && has(t) {
			return true
		}
	}
	return slices.Contains(c.Kinds, k) && heater(c.Places)
}

// Kinds of care, by how far a person comes into the box. Care in a keeper's own words
// ("other") is in none: what it needs, those words say.
var (
	// handsIn are those for which hands or what they hold go in among the furniture.
	handsIn = []*CareKind{KindDish, KindSpotClean, KindLeaves, KindDeepClean, KindCount, KindWeigh, KindHandle, KindTreat, KindRehouse, KindSeparate, KindPair}
	// near are those of picked, and those by which the animal is sprayed at or startled with the lid open.
	near = slices.Concat(picked, []*CareKind{KindMist, KindMoisten})
	// picked are these, and taking something out from beside the animal.
	picked = slices.Concat(handsIn, []*CareKind{KindLeftovers})
	// wet are those by which water comes near leads and lamps.
	wet = []*CareKind{KindMist, KindMoisten, KindDish, KindSpotClean, KindLeaves, KindDeepClean}
	// opened are all for which the lid is open at all.
	opened = slices.Concat(near, []*CareKind{KindWater, KindFeed})
)

// Cautions are the cautions there are, in the order in which they are said.
var Cautions = []*Caution{
	{Name: "hairs", Text: "gloves on, eyes covered (barbed hairs)",
		Why:    "Barbed hairs in the cornea meant months of trouble to two keepers: the reports ask that whoever works inside covers the eyes.",
		Source: "T19, T20; of goggles from juveniles on T124",
		For:    []Trait{{FigureHairs, []string{"thrown"}, near, true}}},
	{Name: "contact", Text: "gloves on, hands off the face (hairs)",
		Why:    "Hairs that are pressed on, or lie in the web, itch for days and hurt an eye that is rubbed.",
		Source: "common practice, no source",
		For:    []Trait{{FigureHairs, []string{"contact"}, handsIn, true}}},
	{Name: "fluid", Text: "gloves on, hands off eyes and mouth (fluid)",
		Why:    "Its fluid stains the skin, and harms eyes and mouth.",
		Source: "K96, K98, OK25",
		For:    []Trait{{FigureTouch, []string{"fluid"}, handsIn, false}}},
	{Name: "spray", Text: "eyes covered (it may spray)",
		Why:    "Venom or acid is sprayed at the eyes as soon as the box is open, from as far as 3 m.",
		Source: "C22, C133, N13, OS4",
		For:    []Trait{{FigureSpray, []string{"venom", "acid"}, opened, false}}},
	{Name: "tools", Text: "long forceps, empty lidded box (stings, bites)",
		Why:    "Fingers are stung and bitten where they look for what forceps can reach, and an animal that has run out is caught in a box and never by hand.",
		Source: "common practice, no source",
		For: []Trait{
			{FigureVenom, []string{"mild"}, handsIn, true},
			{FigureVenom, []string{"painful"}, picked, true},
			{FigureVenom, []string{"medically significant"}, opened, false},
			{FigureSpeed, []string{"very quick"}, picked, false},
		}},
	{Name: "germs", Text: "hands washed with soap afterwards (salmonella)",
		Why:    "Healthy geckos carry salmonella, and whatever is in the box has it too.",
		Source: "common practice, no source",
		For:    []Trait{{FigureTouch, []string{"germs"}, opened, false}}},
	// A heater that is forgotten harms the animals, and so it says also what comes after; one
	// that is off for a season stays off.
	{Name: "mains", Text: "unplug heater and lamp while at it, then plug in as before",
		Why:    "Water runs down leads and lamps, and wet hands touch them.",
		Source: "M. Owen, Tank Talk, Canberra & District Aquarium Society, as republished at tropicalfishcafe.com: switch off before hands go into water",
		Places: []string{"inside", "under", "above"}, Kinds: wet},
}

// Mains is the usual care where mains and water are close together, in a sentence or two:
// said once where a keeper begins, and once under the list of a day. Sources: a GFCI of
// class A trips at 6 mA (UL 943, as cited at profengineering.com/glossary/gfci), a
// residual-current device for outlets at 30 mA (IEC 60364-4-41, 415.1, from memory); the
// drip loop and unplugging, M. Owen, Tank Talk, as above; the rest is common practice.
const Mains = "a residual-current device (GFCI) before every heater and lamp, a drip loop in each lead, the plug out before water or wet hands come to a heater or lamp that is inside, under or above a box, and the maker's instructions; fixed wiring is work for a licensed electrician"

// MainsBrief is the same under the list of a day, which is read every evening.
const MainsBrief = "residual-current device (GFCI), drip loops, the plug out before water or wet hands come near; fixed wiring: a licensed electrician"

// Aid is what to do after an animal has hurt somebody, for those who stand in and do not
// know it: common first-aid wording, which leaves what is more to doctors.
type Aid struct {
	Figure *Figure
	Words  []string
	Title  string // what it is about, before the names of the species: "Painful"
	Text   string
	Source string // on whose word
	Stings bool   // it is about venom, so that AidAlways stands before it
}

// AidAlways stands before the rest where anything stings or bites with venom. Poison
// centres and first aiders say the same: scorpiology.ir; docslib.org/doc/13341371;
// timcltd.org; health.am; sja.org.uk.
var AidAlways = []string{
	"After a sting or bite: lid shut, keep calm and still, rings off; soap and water; a cool pack, no ice on the skin. Do not cut, suck or tie it off",
	"Ring your local emergency number at once for trouble breathing, a swollen face or throat, fainting, chest pain, cramps or twitching, or signs that spread; for a small child always. With trouble breathing, a swollen face or throat or fainting their adrenaline pen first, if they carry one. Say the species' name, and any allergy",
}

// AidOther is for what has no venom: claws, jaws and teeth.
const AidOther = "Any other bite, pinch or scratch: wash with soap and water; a doctor if it is deep or turns red"

// AidAny is the same where nothing else is said.
const AidAny = "A bite, pinch or scratch: wash with soap and water; a doctor if it is deep or turns red"

// AidDanger is that of them for a danger to life: it comes before everything else.
var AidDanger = Aids[0]

// Aids are what to do for each class of venom, and for hairs and spray; the most urgent
// first.
var Aids = []*Aid{
	{Figure: FigureVenom, Words: []string{"medically significant"}, Title: "Danger to life", Stings: true,
		Text:   "do not wait for signs, they may come hours later: your local emergency number and a poison centre at once; keep the limb still, and do not stay alone for 24 hours",
		Source: "C22, C23: signs began within 4 h, or 1 to 8 h, and who is at risk is watched for 12 to 24 h; A1 of cramps after hours"},
	{Figure: FigureVenom, Words: []string{"painful"}, Title: "Painful", Stings: true,
		Text:   "hours or days of pain; a doctor if anything is felt away from the place, or it goes on swelling; children, the old, the ill, the pregnant and whoever has an allergy at once",
		Source: "common practice, no source"},
	{Figure: FigureVenom, Words: []string{"mild"}, Title: "Mild", Stings: true,
		Text:   "as a bee's sting: swollen at 30 min, going down by 90 min; a doctor if it is not",
		Source: "common practice, no source"},
	{Figure: FigureHairs, Words: []string{"thrown", "contact"}, Title: "Hairs in the eye",
		Text:   "do not rub; rinse with much water, and an eye doctor the same day: say “tarantula hairs”. Take them off the skin with sticky tape",
		Source: "T19, T20: one was taken for an infection for weeks; T146"},
	{Figure: FigureSpray, Words: []string{"venom", "acid"}, Title: "Sprayed in the eye",
		Text:   "do not rub; rinse with much water at once, then a doctor",
		Source: "C133, OS4"},
	{Figure: FigureTouch, Words: []string{"fluid"}, Title: "Fluid in the eye or mouth",
		Text:   "do not rub; rinse with much water at once, then a doctor. Off the skin with soap and water",
		Source: "OK25, K98"},
	{Figure: FigureTouch, Words: []string{"germs"}, Title: "Salmonella",
		Text:   "hands washed with soap after every box, and no food or drink beside it; with fever or diarrhoea in the days after a doctor: say “gecko”",
		Source: "common practice, no source"},
}
