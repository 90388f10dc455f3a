package schema

import "vivary/schema/quantity"

// NeedName is something that animals need again and again.
type NeedName struct {
	Name    string
	Noun    string // as it stands in a sentence: "goes 5 days without fresh water"
	OfGroup bool   // whether it is each group's own; what is done for the box serves all that live in it
	PerMeal bool   // whether its time runs from each live meal
	Heated  bool   // whether it holds only where there is a heater
	Doc     string
}

// Needs are the needs that a species sheet may state.
var Needs []*NeedName

// The needs, in the order in which they are listed.
var (
	NeedLook       = listed(&Needs, NeedName{Name: "look", Noun: "a look at lid and animals", Doc: "Somebody sees that the lid is shut and the animals are there."})
	NeedWater      = listed(&Needs, NeedName{Name: "water", Noun: "fresh water", Doc: "Drinking water is renewed."})
	NeedMoisture   = listed(&Needs, NeedName{Name: "moisture", Noun: "misting or watering of the substrate", Doc: "The substrate or the air is made damp again."})
	NeedFood       = listed(&Needs, NeedName{Name: "food", Noun: "a meal", OfGroup: true, Doc: "Food is offered."})
	NeedLeftovers  = listed(&Needs, NeedName{Name: "leftovers", Noun: "a look for leftovers", OfGroup: true, PerMeal: true, Doc: "What was not eaten is taken out. Its time runs from each live meal."})
	NeedHeat       = listed(&Needs, NeedName{Name: "heat", Noun: "a reading of the temperature", Doc: "Lowest and highest temperature are read."})
	NeedCleaning   = listed(&Needs, NeedName{Name: "cleaning", Noun: "a spot clean", Doc: "Waste and mould are taken out."})
	NeedDeviceTest = listed(&Needs, NeedName{Name: "device-test", Noun: "a test of heater and thermostat", Heated: true, Doc: "The thermostat is seen to switch off."})
)

// FindNeed returns the need of that name, or nil.
func FindNeed(name string) *NeedName {
	for _, n := range Needs {
		if n.Name == name {
			return n
		}
	}
	return nil
}

// CareKind is one kind of thing that keepers do, with the words for it. Kinds are
// the vocabulary shared by plans, species sheets, holds and the lists in a round.
// What is done with a kind follows from its fields and never from its name.
type CareKind struct {
	Name    string
	Phrase  string    // what to do, as it begins a line of a round
	Needs   *NeedName // the need that it satisfies, or nil
	Rank    int       // the order of the lines in a round, lowest first
	Minutes int       // how long it takes where the plan is silent (common practice, no source)
	Row     Row       // in the table of states: how it may be done in which state
	Meal    bool      // whether it offers food: held with meals
	Water   bool      // whether it brings drinking water: never held, never hidden
	StandIn bool      // whether somebody who stands in does it: what keeps an animal alive and opens nothing that must stay shut
	OfMeal  int       // how many days after a meal that brings it, or 0 where none does
	Routine bool      // whether a round's summary names it only on a day that has nothing else
	// Reads says what the gauge shows that is read, 0 for none: what is right stands beside it.
	Reads  quantity.Dimension
	OfRack string   // the name of the care that does it once for all in a rack, at the thermometer or the heaters that they share; "" for none
	Word   string   // in a summary; the name where there is none
	Also   []string // what keepers call it otherwise: each is understood as it
	Doc    string
}

// CareKinds are the kinds of care.
var CareKinds []*CareKind

// The kinds of care, in the order in which they are listed. What they satisfy stands
// above: Go fills in what is ready first.
var (
	KindLook       = listed(&CareKinds, CareKind{Name: "look", Also: []string{"check", "daily check", "look round"}, Row: RowLook, Phrase: "Lid shut? Animals seen or hidden", Needs: NeedLook, Rank: 10, Minutes: 1, StandIn: true, Routine: true, Doc: "The look-round: lid shut, every animal seen or plausibly hidden."})
	KindHeat       = listed(&CareKinds, CareKind{Name: "heat", Also: []string{"temperature", "temperatures", "temps", "read temperature", "reading"}, Row: RowReading, Reads: quantity.Temperature, Phrase: "Read lowest and highest temperature, reset", Word: "read", Needs: NeedHeat, Rank: 20, Minutes: 1, StandIn: true, Routine: true, OfRack: "reading", Doc: "Reading the lowest and the highest temperature since the last time."})
	KindMoisture   = listed(&CareKinds, CareKind{Name: "moisture", Also: []string{"humidity", "hygrometer"}, Row: RowReading, Reads: quantity.Humidity, Phrase: "Feel the substrate, read the gauge", Word: "feel", Rank: 22, Minutes: 1, StandIn: true, Routine: true, Doc: "Feeling the substrate and reading the gauge."})
	KindWater      = listed(&CareKinds, CareKind{Name: "water", Also: []string{"watering", "fresh water", "drinking water", "change water", "water change", "refill"}, Row: RowWater, Phrase: "Fresh water", Needs: NeedWater, Rank: 30, Minutes: 1, Water: true, StandIn: true, Routine: true, Doc: "Fresh drinking water."})
	KindMist       = listed(&CareKinds, CareKind{Name: "mist", Also: []string{"misting", "spray", "spraying", "spritz"}, Row: RowMist, Phrase: "Mist", Needs: NeedMoisture, Rank: 40, Minutes: 1, StandIn: true, Routine: true, Doc: "Spraying fine water."})
	KindMoisten    = listed(&CareKinds, CareKind{Name: "moisten", Also: []string{"water substrate", "wet substrate", "moistening"}, Row: RowMist, Phrase: "Water the substrate", Needs: NeedMoisture, Rank: 41, Minutes: 2, StandIn: true, Routine: true, Doc: "Watering the substrate."})
	KindFeed       = listed(&CareKinds, CareKind{Name: "feed", Also: []string{"feeding", "food", "meal"}, Row: RowLive, Phrase: "Feed", Needs: NeedFood, Rank: 50, Minutes: 2, Meal: true, Doc: "A meal."})
	KindLeftovers  = listed(&CareKinds, CareKind{Name: "leftovers", Also: []string{"leftover", "remove leftovers", "uneaten prey", "boluses"}, Row: RowRemains, Phrase: "Take out leftovers", Needs: NeedLeftovers, Rank: 35, Minutes: 1, StandIn: true, OfMeal: 1, Routine: true, Doc: "Taking out what was not eaten."})
	KindGutLoad    = listed(&CareKinds, CareKind{Name: "gut-load", Also: []string{"gut loading"}, Phrase: "Feed the feeders well for tomorrow", Rank: 60, Minutes: 2, OfMeal: -1, Doc: "Feeding the feeder animals before they are used."})
	KindLeaves     = listed(&CareKinds, CareKind{Name: "leaves", Also: []string{"leaf litter", "leaves and wood"}, Row: RowClean, Phrase: "Top up leaves and wood", Needs: NeedFood, Rank: 52, Minutes: 3, StandIn: true, Doc: "Topping up the leaf litter that is the food."})
	KindSpotClean  = listed(&CareKinds, CareKind{Name: "spot-clean", Also: []string{"spot cleaning", "poop", "waste"}, Row: RowClean, Phrase: "Spot clean, look for mould and mites", Word: "clean", Needs: NeedCleaning, Rank: 70, Minutes: 3, StandIn: true, Doc: "Taking out waste, looking for mould and mites."})
	KindDish       = listed(&CareKinds, CareKind{Name: "dish", Also: []string{"scrub dish", "dish scrub", "clean dish", "dish clean"}, Row: RowDish, Phrase: "Scrub, fill the dish", Rank: 71, Minutes: 2, StandIn: true, Doc: "Scrubbing the water dish."})
	KindDeepClean  = listed(&CareKinds, CareKind{Name: "deep-clean", Also: []string{"full clean", "substrate change", "change substrate", "deep cleaning", "new substrate"}, Row: RowDeep, Phrase: "Change the substrate", Word: "new substrate", Rank: 80, Minutes: 45, Doc: "Changing the substrate."})
	KindCount      = listed(&CareKinds, CareKind{Name: "count", Also: []string{"head count", "counting"}, Row: RowCount, Phrase: "Head count", Rank: 72, Minutes: 5, Doc: "Counting a group; some may stay hidden."})
	KindWeigh      = listed(&CareKinds, CareKind{Name: "weigh", Also: []string{"weighing", "weight"}, Row: RowHandle, Phrase: "Weigh", Rank: 73, Minutes: 5, Doc: "Weighing."})
	KindHandle     = listed(&CareKinds, CareKind{Name: "handle", Also: []string{"handling"}, Row: RowHandle, Phrase: "Handle", Rank: 74, Minutes: 5, Doc: "Taking an animal into the hand."})
	KindRehouse    = listed(&CareKinds, CareKind{Name: "rehouse", Also: []string{"rehousing"}, Row: RowRehouse, Phrase: "Rehouse", Rank: 81, Minutes: 30, Doc: "Moving to another box."})
	KindSeparate   = listed(&CareKinds, CareKind{Name: "separate", Also: []string{"separating", "separation"}, Row: RowRehouse, Phrase: "Separate", Rank: 82, Minutes: 30, Doc: "Taking young from the mother, or animals from each other."})
	KindPair       = listed(&CareKinds, CareKind{Name: "pair", Also: []string{"pairing"}, Row: RowHandle, Phrase: "Pair", Rank: 83, Minutes: 60, Doc: "Bringing a pair together, watched."})
	KindTreat      = listed(&CareKinds, CareKind{Name: "treat", Also: []string{"treatment", "medication", "medicate"}, Phrase: "Treat, as the veterinarian ordered", Rank: 15, Minutes: 5, Doc: "A treatment that a veterinarian ordered."})
	KindWatch      = listed(&CareKinds, CareKind{Name: "watch", Row: RowLook, Phrase: "Look without opening", Rank: 12, Minutes: 1, StandIn: true, Doc: "Looking without opening or lifting anything."})
	KindDeviceTest = listed(&CareKinds, CareKind{Name: "device-test", Also: []string{"test heater", "heater test", "thermostat test", "test thermostat"}, Row: RowDevice, Phrase: "Test heater and thermostat", Word: "test heaters", Needs: NeedDeviceTest, OfRack: "device-test", Rank: 90, Minutes: 5, Doc: "Testing that the thermostat switches off."})
	KindCalibrate  = listed(&CareKinds, CareKind{Name: "calibrate", Also: []string{"calibration", "gauge test", "test gauge"}, Row: RowDevice, Phrase: "Test the gauge", Word: "test gauges", Rank: 91, Minutes: 10, Doc: "Testing a thermometer or hygrometer."})
	KindDelivery   = listed(&CareKinds, CareKind{Name: "delivery", Also: []string{"unpack"}, Phrase: "Unpack the delivery", Rank: 61, Minutes: 10, StandIn: true, Doc: "Unpacking feeder animals on the day they come."})
	KindOrder      = listed(&CareKinds, CareKind{Name: "order", Also: []string{"reorder"}, Phrase: "Order feeders", Rank: 62, Minutes: 5, StandIn: true, Doc: "Ordering feeder animals."})
	KindStart      = listed(&CareKinds, CareKind{Name: "start-culture", Also: []string{"new culture", "new jar"}, Phrase: "Set up a new culture", Word: "new culture", Rank: 63, Minutes: 5, Doc: "Setting up a new culture of feeder animals."})
	KindTend       = listed(&CareKinds, CareKind{Name: "feeder-care", Also: []string{"tend feeders"}, Phrase: "Food and water gel for the feeders, no open dish", Word: "feeders", Rank: 64, Minutes: 3, StandIn: true, Doc: "Food and water for the feeder animals themselves."})
	KindClear      = listed(&CareKinds, CareKind{Name: "feeder-clean", Also: []string{"clean feeders"}, Phrase: "Take out dead feeders and frass", Word: "clean feeders", Rank: 65, Minutes: 10, StandIn: true, Doc: "Taking out dead feeder animals and what they leave."})
	KindPrepare    = listed(&CareKinds, CareKind{Name: "prepare", Phrase: "Prepare", Rank: 84, Minutes: 15, Doc: "Getting something ready."})
	KindOther      = listed(&CareKinds, CareKind{Name: "other", Row: RowClean, Rank: 99, Minutes: 5, Doc: "Anything else; `task` says what."})
)

// Disturbs reports whether it opens up, digs or moves.
func (k *CareKind) Disturbs() bool {
	return k.Row == RowDeep || k.Row == RowHandle || k.Row == RowRehouse
}

// Short is the word for a kind in a summary, where there is little room.
func (k *CareKind) Short() string {
	if k.Word != "" {
		return k.Word
	}
	return k.Name
}

// UnclearKinds are the words for care that mean several kinds.
var UnclearKinds = []Question{
	{[]string{"clean", "cleaning", "maintenance"}, "it may be waste taken out, the dish scrubbed or all of the substrate changed", "spot-clean, dish or deep-clean as kind"},
	{[]string{"moult check", "molt check", "observe", "observation"}, "it may be the look-round, or a look without opening", "look or watch as kind"},
}

// KindCalled returns the kind of that name, or the one that keepers call so, or nil.
func KindCalled(name string) *CareKind {
	if k := FindKind(name); k != nil {
		return k
	}
	return calledKinds[unparted(name)]
}

// calledKinds are the kinds by all that they are called.
var calledKinds = func() map[string]*CareKind {
	all := map[string]*CareKind{}
	for _, k := range CareKinds {
		for _, n := range append(k.Also, k.Name) {
			key := unparted(n)
			if all[key] != nil {
				panic("schema: two kinds of care are called " + n)
			}
			all[key] = k
		}
	}
	return all
}()

// FindKind returns the kind of that name, or nil.
func FindKind(name string) *CareKind {
	for _, k := range CareKinds {
		if k.Name == name {
			return k
		}
	}
	return nil
}
