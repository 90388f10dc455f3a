package schema

// Weaker says in which direction a figure of a collection's own asks for less than the
// known one. A figure that only describes has none.
type Weaker uint8

const (
	// Neither is for what only describes: no value of it is safer than another.
	Neither Weaker = iota
	// Higher is weaker: a longest time, a widest gap, the largest group. Of words it is one
	// that stands later among the choices.
	Higher
	// Lower is weaker: a least depth, a wait, a danger. Of words it is one that stands
	// earlier among the choices; of several words, fewer; of a truth, false.
	Lower
	// Wider is weaker: limits that reach further at either end.
	Wider
	// Other is weaker: any other word than the known one.
	Other
)

// Weaker returns in which direction a value of the figure asks for less.
func (f *Figure) Weaker() Weaker { return weaker[f.Name] }

// AtMost reports whether the figure is a limit that a value must not pass: the widest gap,
// the longest time. Others are what there must be at the least.
func (f *Figure) AtMost() bool { return f.Most || f.Weaker() == Higher }

// weaker has the direction of each figure that has one, by its name.
var weaker = map[string]Weaker{
	"temperature-hard": Wider, "temperature-soft": Wider, "humidity-hard": Wider, "humidity-soft": Wider,
	"winter-rest": Wider, "moisture": Other, "eats": Other,

	"gap-max": Higher, "fall-max": Higher, "surface-max": Higher, "group-max": Higher, "keeping": Higher, "gestation": Higher,
	"prey-mass-share": Higher, "prey-length-share": Higher,
	"on-mother": Higher, "first-meal": Higher, "first-killed": Higher, "separate-within": Higher,
	"fast-look": Higher, "fast-try": Higher, "fast-alarm": Higher, "fast-help": Higher, "weight-loss": Higher,
	"premoult-look": Higher, "premoult-try": Higher, "premoult-help": Higher, "refusal-pause": Higher,
	"unattended": Higher, "unattended-sealed": Higher, "unattended-rest": Higher, "substrate-change": Higher,
	"rest-length": Higher, "rest-step": Higher, "rest-water": Higher, "cooler": Higher, "rest": Higher,

	"mist-interval-min": Lower, "spot-needed": Lower, "ventilation": Lower, "substrate-depth-min": Lower,
	"floor-first": Lower, "floor-further": Lower, "volume-first": Lower, "height-min": Lower,
	"climbs": Lower, "lid": Lower, "hangs-to-moult": Lower, "moults-as-adult": Lower, "heater-not": Lower, "uv-not": Lower, "lives-in-food": Lower,
	"brood-size": Lower, "isolate-before": Lower, "undisturbed": Lower, "gestation-longest": Lower, "after-sac": Lower,
	"wait-after-moult": Lower, "handling-wait": Lower, "settling": Lower, "quarantine": Lower, "quarantine-wild": Lower, "mites-clear": Lower,
	"rest-age": Lower, "rest-full-heat": Lower, "rest-first-meal": Lower, "rest-full-meals": Lower,
	"items-a-week": Lower, "prey-length-least": Lower, "venom": Lower, "hairs": Lower, "spray": Lower, "touch": Lower, "cites": Lower,
}
