package schema

// This is the table of states: what may be done with an enclosure while animals are in
// a state. In each state what is not named is as usual. STATES.md is made from it, for
// veterinarians and reviewers. Where nobody is named by the code of a source, a cell is
// common practice.

// Words that several states share.
const (
	readOutside = "if readable from outside"
	heatBack    = "heat off at most 15 minutes"
	onlyEmpty   = "only if seen empty, by bottle"
	farEnd      = "far end only"
	notOnHer    = "far end only, never on her"
	mouldOnly   = "mould only"
	ifInReach   = "only what is in reach"
)

// Ill, hurt, or without appetite.
var (
	StateIll = state(State{Name: "ill", Is: "ill", Rule: "as the veterinarian says; no live prey, do not dig",
		Doc: "It is ill, or hurt in a way that needs watching."},
		usual("only as far as the veterinarian wants it", RowHandle),
		usual("once, to a clean box", RowRehouse),
		held(RowLive).mind("live prey bites what cannot defend itself"),
		held(RowDeep, RowCount))

	StateInjured = state(State{Name: "injured", Is: "injured", Rule: "killed prey only, do not handle",
		Doc: "It has lost a limb, bleeds or has fallen."},
		usual("once, to a clean and low box", RowRehouse),
		held(RowLive, RowDeep, RowCount, RowHandle))

	StateTreated = state(State{Name: "treated", Is: "under treatment", Rule: "as the veterinarian says",
		Doc: "A veterinarian's course of treatment."},
		usual("only as the course wants it", RowHandle, RowRehouse),
		held(RowCount))

	StateRefused = state(State{Name: "refused", Is: "meals refused", Rule: "no food for now",
		Doc: "It refused its last meals, and meals pause. What was left is taken out on the same day."},
		usual("the same day", RowRemains),
		held(RowLive, RowKilled))
)

// Round a moult.
var (
	StatePremoult = state(State{Name: "premoult", Is: "before a moult", Rule: "water through the hatch, no live prey or digging",
		Doc: "It is about to moult. Damp keeps it; live prey can kill it."},
		hatch("", RowWater),
		hatch(farEnd, RowMist),
		hatch(mouldOnly, RowDish, RowClean),
		hatch("one small item at its mouth, not if it is sealed in", RowKilled).from(30).every(7),
		usual("live prey out at once", RowRemains),
		held(RowLive).by("K105"),
		held(RowDeep, RowCount, RowHandle, RowRehouse))

	StateSealed = state(State{Name: "sealed", Is: "sealed in", Rule: "keep damp through the hatch, lift nothing",
		Doc: "It has shut itself in, and why is not known yet: a moult, a sac, a birth or a rest."},
		outside("", RowLook),
		hatch("", RowWater, RowDish, RowMist, RowRemains),
		held(RowLive, RowKilled, RowClean, RowDeep, RowCount, RowHandle, RowRehouse).by("N19"))

	StateMoulting = state(State{Name: "moulting", Is: "moulting", Rule: "look from outside, open nothing",
		Doc: "It hangs, or lies on its back, and is moulting. That takes from a quarter of an hour to half a day."},
		outside("every few hours", RowLook).by("K62, K48, N23"),
		outside(readOutside, RowReading),
		outside(onlyEmpty, RowWater),
		hatch("live prey only, and touch nothing else", RowRemains),
		held(RowDish, RowMist, RowClean, RowLive, RowKilled, RowDevice, RowDeep, RowCount, RowHandle, RowRehouse).by("K105"))

	StateSoft = state(State{Name: "soft", Is: "soft after a moult", Rule: "water through the hatch, no food, lift nothing",
		Doc: "It has moulted, and fangs, jaws or sting are soft."},
		outside("", RowLook),
		outside(heatBack, RowDevice),
		hatch("", RowWater),
		hatch(farEnd, RowMist),
		hatch("mould only; leave the old skin", RowClean).from(3),
		hatch("live prey out", RowRemains),
		held(RowDish, RowLive, RowKilled, RowDeep, RowCount, RowHandle, RowRehouse).by("K55, N25a"))

	StateHardening = state(State{Name: "hardening", Is: "hardening after a moult", Rule: "one small item first; do not dig, do not handle",
		Doc: "It eats again, but is not yet hard enough to be handled."},
		usual("one small item", RowLive, RowKilled),
		usual("the old skin too", RowClean),
		held(RowDeep, RowCount, RowHandle, RowRehouse).by("K37, K49"))
)

// Mothers and young.
var (
	StateGravid = state(State{Name: "gravid", Is: "may be gravid", Rule: "look first for young, do not dig or handle",
		Doc: "Mated, or thought to carry young; no signs of a birth near. The substrate is not changed within 60 days of the earliest birth."},
		usual("look first", RowDish, RowClean),
		usual("once, to a box of her own, with her hide", RowRehouse).by("N9"),
		held(RowDeep, RowCount, RowHandle))

	StateGravidLate = state(State{Name: "gravid-late", Is: "birth near", Rule: "water, killed prey through the hatch, lift nothing",
		Doc: "She refuses and is fat, digs or seals herself in, or shows white at her sides: a birth is near."},
		outside("", RowLook).by("N3, N30, S58c"),
		outside(readOutside, RowReading),
		outside(heatBack, RowDevice),
		hatch("", RowWater, RowRemains),
		hatch(notOnHer, RowMist),
		hatch(mouldOnly, RowClean),
		hatch("one small item at her door", RowKilled).every(7).by("N3"),
		held(RowDish, RowLive, RowDeep, RowCount, RowHandle, RowRehouse).by("S27b, N5"))

	StateBirth = state(State{Name: "birth", Is: "giving birth", Rule: "leave alone; water only if seen empty, by bottle",
		Doc: "The first two days of a birth. Disturbed, she throws the young off and eats them."},
		outside("once, from the side", RowLook).by("N7"),
		outside(readOutside, RowReading),
		outside(onlyEmpty, RowWater),
		held(RowDish, RowMist, RowClean, RowLive, RowKilled, RowRemains, RowDevice, RowDeep, RowCount, RowHandle, RowRehouse).by("S27b, N5"))

	StateBrood = state(State{Name: "brood", Is: "young on her", Rule: "water, killed prey through the hatch, lift nothing",
		Doc: "Young ride on her, before their first moult."},
		outside("", RowLook).by("N7"),
		outside(readOutside, RowReading),
		outside(heatBack, RowDevice),
		hatch("", RowWater),
		hatch(notOnHer, RowMist),
		hatch("one small item at her door", RowKilled).from(3).every(7).by("N1, N6"),
		hatch(ifInReach, RowRemains),
		held(RowDish, RowClean, RowLive, RowDeep, RowCount, RowHandle, RowRehouse).by("S27b, N5"))

	StateSac = state(State{Name: "sac", Is: "with an egg sac", Rule: "water through the hatch, no food, lift nothing",
		Doc: "She carries or guards an egg sac. Disturbed, she drops or eats it."},
		outside("", RowLook),
		outside(readOutside, RowReading),
		outside(heatBack, RowDevice),
		hatch("", RowWater),
		hatch(notOnHer, RowMist),
		hatch(ifInReach, RowRemains),
		held(RowDish, RowClean, RowLive, RowKilled, RowDeep, RowCount, RowHandle, RowRehouse))

	StateYoungRound = state(State{Name: "young-round", Is: "young round her", Rule: "killed prey only, through the hatch, lift nothing",
		Doc: "The young have moulted and are off her or round her, until a week after the last has left her."},
		outside("", RowLook),
		outside(readOutside, RowReading),
		outside(heatBack, RowDevice),
		hatch("", RowWater),
		hatch(farEnd, RowMist),
		hatch("mould and remains only", RowClean, RowRemains),
		hatch("half as much again", RowKilled).by("P1, N2"),
		held(RowDish).mind("a second, shallow dish instead"),
		held(RowLive, RowDeep, RowCount, RowHandle, RowRehouse))

	StateNewborn = state(State{Name: "newborn", Is: "on their mother", Rule: "no food yet; water through the hatch, lift nothing",
		Doc: "Young before their first moult. They cannot feed."},
		outside("", RowLook),
		outside(readOutside, RowReading),
		outside(heatBack, RowDevice),
		hatch("", RowWater),
		hatch("far end only, never on them", RowMist),
		hatch(ifInReach, RowRemains),
		held(RowLive, RowKilled).by("N1"),
		held(RowDish, RowClean, RowDeep, RowCount, RowHandle, RowRehouse).by("S27b, N5"))

	StateYoungLoose = state(State{Name: "young-loose", Is: "young loose in the box", Rule: "do not dig, do not change the substrate",
		Doc: "Young that nothing carries are loose where they hatched. What is tipped out takes them with it."},
		held(RowDeep, RowCount))

	StateAfterBrood = state(State{Name: "after-brood", Is: "after her brood", Rule: "do not dig, do not handle",
		Doc: "A mother whose young are out, for two weeks."},
		usual("", RowLive).from(3),
		usual("", RowDeep, RowCount, RowHandle, RowRehouse).from(14))
)

// Kept apart, at rest, or new.
var (
	StateQuarantine = state(State{Name: "quarantine", Is: "in quarantine", Rule: "last in the round, tools of its own",
		Doc: "Kept apart after it came. What a birth or a moult forbids comes before what a quarantine wants cleaned."},
		held(RowRehouse).mind("not before its end"))

	StateMites = state(State{Name: "mites", Is: "mites", Rule: "last in the round, tools of its own", Box: true,
		Doc: "Mites were seen, and the clean weeks since the last of them are not over."},
		usual("look for mites each week", RowClean).by("N21"),
		held(RowRehouse).mind("not before its end"))

	StateBeforeRest = state(State{Name: "before-rest", Is: "empty before a cool rest", Rule: "no food; heat and water as ever",
		Doc: "Between the last meal and the cool: what was eaten is digested at full heat, or it rots."},
		held(RowLive, RowKilled).by("N20"))

	StateRest = state(State{Name: "rest", Is: "cool rest", Rule: "dish full and a look; no food, do not dig", Box: true,
		Doc: "A cool rest, with heaters off or down."},
		usual("keep it full", RowWater),
		hatch(mouldOnly, RowClean),
		held(RowLive, RowKilled).mind("nothing is digested in the cold").by("N20"),
		held(RowDeep, RowCount, RowHandle, RowRehouse))

	StateAfterRest = state(State{Name: "after-rest", Is: "warming up after a cool rest", Rule: "no food until the heat is back",
		Doc: "From the first step up until the first meal, some days after the heat is back."},
		held(RowLive, RowKilled, RowDeep))

	StateSettling = state(State{Name: "settling", Is: "settling in", Rule: "water only for now, do not handle",
		Doc: "It came a few days ago. Water at once, heat over hours, and nothing else on the first day."},
		usual("", RowDish, RowClean, RowRemains).from(1),
		held(RowLive, RowKilled).mind("then one small item"),
		held(RowHandle).by("K62"),
		held(RowDeep, RowCount, RowRehouse))
)
