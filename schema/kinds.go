package schema

// CareKind is one kind of thing that keepers do, with the words for it. Kinds are
// the vocabulary shared by plans, species sheets, holds and the lists in a round.
type CareKind struct {
	Name     string
	Phrase   string // what to do, as it begins a line of a round
	Needs    string // the need that it satisfies, or empty
	Rank     int    // the order of the lines in a round, lowest first
	Minutes  int    // how long it takes where the plan is silent (common practice, no source)
	Disturbs bool   // whether it opens up, digs or moves: held while animals must be left alone
	Meal     bool   // whether it offers food: held with meals
	Water    bool   // whether it brings drinking water: never held, never hidden
	Doc      string
}

// CareKinds are the kinds of care.
var CareKinds = []CareKind{
	{Name: "look", Phrase: "Lid shut? Animals seen or hidden", Needs: "look", Rank: 10, Minutes: 1, Doc: "The look-round: lid shut, every animal seen or plausibly hidden."},
	{Name: "heat", Phrase: "Read lowest and highest temperature, reset", Needs: "heat", Rank: 20, Minutes: 1, Doc: "Reading the lowest and the highest temperature since the last time."},
	{Name: "moisture", Phrase: "Feel the substrate, read the gauge", Needs: "", Rank: 22, Minutes: 1, Doc: "Feeling the substrate and reading the gauge."},
	{Name: "water", Phrase: "Fresh water", Needs: "water", Rank: 30, Minutes: 1, Water: true, Doc: "Fresh drinking water."},
	{Name: "mist", Phrase: "Mist", Needs: "moisture", Rank: 40, Minutes: 1, Doc: "Spraying fine water."},
	{Name: "moisten", Phrase: "Water the substrate", Needs: "moisture", Rank: 41, Minutes: 2, Doc: "Watering the substrate."},
	{Name: "feed", Phrase: "Feed", Needs: "food", Rank: 50, Minutes: 2, Meal: true, Doc: "A meal."},
	{Name: "leftovers", Phrase: "Take out leftovers", Needs: "leftovers", Rank: 35, Minutes: 1, Doc: "Taking out what was not eaten."},
	{Name: "gut-load", Phrase: "Feed the feeders well for tomorrow", Needs: "", Rank: 60, Minutes: 2, Doc: "Feeding the feeder animals before they are used."},
	{Name: "leaves", Phrase: "Top up leaves and wood", Needs: "food", Rank: 52, Minutes: 3, Doc: "Topping up the leaf litter that is the food."},
	{Name: "spot-clean", Phrase: "Spot clean, look for mould and mites", Needs: "cleaning", Rank: 70, Minutes: 3, Doc: "Taking out waste, looking for mould and mites."},
	{Name: "dish", Phrase: "Scrub the dish", Needs: "", Rank: 71, Minutes: 2, Doc: "Scrubbing the water dish."},
	{Name: "deep-clean", Phrase: "Change the substrate", Needs: "", Rank: 80, Minutes: 45, Disturbs: true, Doc: "Changing the substrate."},
	{Name: "count", Phrase: "Head count", Needs: "", Rank: 72, Minutes: 5, Doc: "Counting a group; some may stay hidden."},
	{Name: "weigh", Phrase: "Weigh", Needs: "", Rank: 73, Minutes: 5, Disturbs: true, Doc: "Weighing."},
	{Name: "handle", Phrase: "Handle", Needs: "", Rank: 74, Minutes: 5, Disturbs: true, Doc: "Taking an animal into the hand."},
	{Name: "rehouse", Phrase: "Rehouse", Needs: "", Rank: 81, Minutes: 30, Disturbs: true, Doc: "Moving to another box."},
	{Name: "separate", Phrase: "Separate", Needs: "", Rank: 82, Minutes: 30, Disturbs: true, Doc: "Taking young from the mother, or animals from each other."},
	{Name: "pair", Phrase: "Pair", Needs: "", Rank: 83, Minutes: 60, Disturbs: true, Doc: "Bringing a pair together, watched."},
	{Name: "watch", Phrase: "Look without opening", Needs: "", Rank: 12, Minutes: 1, Doc: "Looking without opening or lifting anything."},
	{Name: "device-test", Phrase: "Test heater and thermostat", Needs: "device-test", Rank: 90, Minutes: 5, Doc: "Testing that the thermostat switches off."},
	{Name: "calibrate", Phrase: "Test the gauge", Needs: "", Rank: 91, Minutes: 10, Doc: "Testing a thermometer or hygrometer."},
	{Name: "prepare", Phrase: "Prepare", Needs: "", Rank: 84, Minutes: 15, Doc: "Getting something ready."},
	{Name: "other", Phrase: "", Needs: "", Rank: 99, Minutes: 5, Doc: "Anything else; `task` says what."},
}

// FindKind returns the kind of that name, or nil.
func FindKind(name string) *CareKind {
	for i := range CareKinds {
		if CareKinds[i].Name == name {
			return &CareKinds[i]
		}
	}
	return nil
}

// NeedName is something that animals need again and again.
type NeedName struct {
	Name string
	Noun string // as it stands in a sentence: "goes 5 days without fresh water"
	Doc  string
}

// Needs are the needs that a species sheet may state.
var Needs = []NeedName{
	{"look", "a look at lid and animals", "Somebody sees that the lid is shut and the animals are there."},
	{"water", "fresh water", "Drinking water is renewed."},
	{"moisture", "misting or watering of the substrate", "The substrate or the air is made damp again."},
	{"food", "a meal", "Food is offered."},
	{"leftovers", "a look for leftovers", "What was not eaten is taken out. Its time runs from each live meal."},
	{"heat", "a reading of the temperature", "Lowest and highest temperature are read."},
	{"cleaning", "a spot clean", "Waste and mould are taken out."},
	{"device-test", "a test of heater and thermostat", "The thermostat is seen to switch off."},
}

// FindNeed returns the need of that name, or nil.
func FindNeed(name string) *NeedName {
	for i := range Needs {
		if Needs[i].Name == name {
			return &Needs[i]
		}
	}
	return nil
}
