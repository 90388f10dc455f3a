package prove

import (
	"embed"

	"vivary/plan/finding"
	"vivary/schema"
)

// Rules are the breaches that the proof can find, one for each need. Each example
// is the inside of an enclosure of emperor scorpions that is otherwise sound.
var Rules = []*finding.Rule{ruleNoLook, ruleNoWater, ruleNoMoisture, ruleNoFood, ruleLeftovers, ruleNoHeatCheck, ruleNoCleaning, ruleNoDeviceTest, RuleMissed}

var byNeed = map[*schema.NeedName]*finding.Rule{
	schema.NeedLook: ruleNoLook, schema.NeedWater: ruleNoWater, schema.NeedMoisture: ruleNoMoisture, schema.NeedFood: ruleNoFood,
	schema.NeedLeftovers: ruleLeftovers, schema.NeedHeat: ruleNoHeatCheck, schema.NeedCleaning: ruleNoCleaning, schema.NeedDeviceTest: ruleNoDeviceTest,
}

// NeedOf is the need that a rule is about, or nil.
func NeedOf(rule *finding.Rule) *schema.NeedName {
	for need, r := range byNeed {
		if r == rule {
			return need
		}
	}
	return nil
}

// Examples are what the rules are shown by, a file for each.
//
//go:embed examples
var Examples embed.FS

var (
	ruleNoLook = &finding.Rule{ID: "lid-unchecked", Severity: finding.Error, Silence: finding.OnlyCaution,
		Title:   "A day passes on which nobody looks at the lid and the animals.",
		Why:     "Escapes begin with a lid that was not shut, and a moult or a birth goes unseen.",
		Source:  "keepers' safety measures, arachnoboards.com/threads/safety-precautions.29291",
		Instead: "Keep a `look` on every day, or let somebody cover the day."}
	ruleNoWater = &finding.Rule{ID: "water-gap", Severity: finding.Error, Silence: finding.OnlyCaution,
		Title:   "Animals go without fresh water for longer than they may.",
		Why:     "A dish dries out or fouls; of all gaps this one kills first after heat.",
		Source:  "the species sheet's need for water",
		Instead: "Water more often, or have the absence covered by visits close enough together."}
	ruleNoMoisture = &finding.Rule{ID: "moisture-gap", Severity: finding.Error, Silence: finding.OnlyCaution,
		Title:   "A species that depends on damp goes without misting or watering for too long.",
		Why:     "A dry animal sticks in its moult and dies of it.",
		Source:  "the species sheet's need for moisture",
		Instead: "Mist or water the substrate more often."}
	ruleNoFood = &finding.Rule{ID: "food-gap", Severity: finding.Caution, Silence: finding.OnlyCaution,
		Title:   "The time between two meals is longer than this stage may go.",
		Why:     "Young starve: unfed second instars of one species all died between day 11 and day 30. Adults can wait, but not for ever.",
		Source:  "Sarmento et al. 2008, J. Arachnol. 36:476-479, for young; the species sheet's need for food",
		Instead: "Feed more often, or say with `accept` why not."}
	ruleLeftovers = &finding.Rule{ID: "leftovers-late", Severity: finding.Caution, Silence: finding.OnlyCaution,
		Title:   "What is left of a live meal stays in for too long.",
		Why:     "Feeder insects bite soft animals, and what rots brings mites.",
		Source:  "keepers: remove uneaten prey within a day; the species sheet's need for leftovers",
		Instead: "Take leftovers out the next day, or offer killed prey."}
	ruleNoHeatCheck = &finding.Rule{ID: "heat-unchecked", Severity: finding.Caution, Silence: finding.OnlyCaution,
		Title:   "The temperature is not read as often as it should be.",
		Why:     "Heating that sticks kills within hours; the lowest and the highest reading show it before.",
		Source:  "the species sheet's need for a reading",
		Instead: "Read the temperature every day."}
	ruleNoCleaning = &finding.Rule{ID: "cleaning-gap", Severity: finding.Caution, Silence: finding.OnlyCaution,
		Title:   "Waste and mould are not looked for often enough.",
		Why:     "Mould and mites take hold within weeks.",
		Source:  "the species sheet's need for cleaning",
		Instead: "Spot clean more often."}
	ruleNoDeviceTest = &finding.Rule{ID: "device-untested", Severity: finding.Caution, Silence: finding.OnlyCaution,
		Title:   "Heater and thermostat are not tested often enough.",
		Why:     "A thermostat that no longer switches off shows nothing until it is too late.",
		Source:  "the species sheet's need for a test",
		Instead: "Test them every month."}

	// RuleMissed is about the days before today; what was missed comes first in the next
	// round.
	RuleMissed = &finding.Rule{ID: "need-missed", Severity: finding.Urgent, Silence: finding.OnlyCaution,
		Title:   "A need was not met in time before today.",
		Why:     "The log says that care was skipped, or nobody was there. That cannot be undone and refuses nothing; the next round brings it first, and the animals need a closer look.",
		Source:  "the species sheet's need",
		Instead: "Do what the round says first, and log what you find.",
		Now:     "look closely at the animals, and log it: care came too late"}
)
