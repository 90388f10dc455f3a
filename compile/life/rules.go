package life

import (
	"embed"

	"vivary/plan/finding"
)

// Rules are what can be found while the log is read. The examples are lines of a
// log as of 1 March 2027, about "mother", an adult female of a species that is
// carried for 7 to 18 months and does not moult once it is adult, and about "spider", of
// another species, in the enclosure "other".
var Rules = []*finding.Rule{
	RuleFuture, ruleOrder, ruleEarly, ruleTerm, ruleGone, ruleAdult, ruleNowhere,
	ruleNumber, ruleTwice, ruleDiffer, ruleWeight, ruleCare, ruleQuarantine, ruleNoTerm, ruleLate, ruleMixed, ruleNow, ruleOpen, ruleEarlyMeal,
}

// Examples are what the rules are shown by, a file for each.
//
//go:embed examples
var Examples embed.FS

var (
	RuleFuture = &finding.Rule{ID: "log-future", Severity: finding.Urgent, Slip: true, Silence: finding.ByReason,
		Title:   "A line of the log is of a day that has not come.",
		Why:     "The log is what was seen. A moult of next month would stop meals for nothing, or not stop those that it should.",
		Source:  "the design of this program",
		Instead: "Write the day on which it was seen. What is to come belongs in the plan."}
	ruleOrder = &finding.Rule{ID: "log-order", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Something is logged that cannot have come before what is missing.",
		Why:     "Windows and deadlines of a brood are counted from its birth. Without it there are none.",
		Source:  "common practice, no source",
		Instead: "Add the line that is missing, with the day as well as it is known."}
	ruleEarly = &finding.Rule{ID: "separated-early", Severity: finding.Urgent, Silence: finding.ByReason,
		Title:   "Young are taken from their mother before their first moult.",
		Why:     "Until they have moulted they live on their reserves, on her back, and die without her.",
		Source:  "Sarmento et al. 2008, J. Arachnol. 36:476-479; Mahsberg 1990, Acta Zool. Fennica 190:267-272",
		Instead: "Wait for the first moult and log it with first_moult; only then is there a day for a separation."}
	ruleTerm = &finding.Rule{ID: "birth-unlikely", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A birth lies outside the species' gestation.",
		Why:     "It is often a slip in a date, or another mating. Where it is true it is worth knowing.",
		Source:  "the species sheet",
		Instead: "Look at both days."}
	ruleGone = &finding.Rule{ID: "log-gone", Severity: finding.Urgent, Slip: true, Silence: finding.ByReason,
		Title:   "A line is about animals that were already dead or gone.",
		Why:     "The day or the animals are wrong, or an earlier line is.",
		Source:  "the earlier line of the log",
		Instead: "Correct the one that is wrong. The line does not count.",
		Now:     "the log speaks of animals that are not here: look who is, and log it right"}
	ruleAdult = &finding.Rule{ID: "moult-of-adult", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A moult of an adult that does not moult any more.",
		Why:     "Scorpions do not moult once they are adult; tarantulas and whip spiders do. The stage in the plan may be wrong, and with it the limits. Meals wait in any case.",
		Source:  "the species sheet",
		Instead: "Correct the stage or the instar, or the animals in the line."}
	ruleNowhere = &finding.Rule{ID: "moved-nowhere", Severity: finding.Urgent, Slip: true, Silence: finding.ByReason,
		Title:   "An animal was moved to a place that is not in the plan.",
		Why:     "Nobody would look after it there.",
		Source:  "the design of this program",
		Instead: "Name the enclosure as the plan does. Name none where it left the collection.",
		Now:     "animals were moved to a place that is not in the plan: where are they? log moved"}
	ruleNumber = &finding.Rule{ID: "log-number", Severity: finding.Urgent, Slip: true, Silence: finding.ByReason,
		Title:   "A number in the log does not fit with how many there are.",
		Why:     "Food, floor and head counts are reckoned by it.",
		Source:  "the plan and the earlier lines of the log",
		Instead: "Correct it, or add the line that is missing.",
		Now:     "a number in the log cannot be so: count, and log it right"}
	ruleTwice = &finding.Rule{ID: "log-twice", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Two lines of a day may tell of the same animals.",
		Why:     "An identical line is one fact; in other words it is two. Where two people logged one death, without knowing of each other, the plan has an animal less than the box. Lines of one person, and lines with times more than an hour apart, are taken for two.",
		Source:  "common practice, no source",
		Instead: "Take one back, where both tell the same. Where they do not, a count of all that are here answers it."}
	ruleDiffer = &finding.Rule{ID: "log-differs", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Two people logged different things of one day, and which was later is not known.",
		Why:     "What follows depends on which was later: whether one is missing, whether refusals go on. Lines with a time say it by themselves.",
		Source:  "common practice, no source",
		Instead: "Look again and log it: the next count or meal answers it."}
	ruleWeight = &finding.Rule{ID: "log-weight", Severity: finding.Caution, Slip: true, Silence: finding.ByReason,
		Title:   "A weight cannot be read.",
		Why:     "A number without a unit may be grams or ounces.",
		Source:  "NIST SP 811, 7.1: the value of a quantity is a number and a unit",
		Instead: "Write the number and its unit."}
	ruleCare = &finding.Rule{ID: "log-unknown-care", Severity: finding.Caution, Slip: true, Silence: finding.ByReason,
		Title:   "A care is named that is not in the plan.",
		Why:     "What runs from the last time it was done would go on as if nothing had been said.",
		Source:  "the design of this program",
		Instead: "Use the name in the plan, in the species sheet, or a kind of care."}
	ruleQuarantine = &finding.Rule{ID: "quarantine-unstated", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "An animal came, and neither the plan nor its species sheet says how long it is kept apart.",
		Why:     "Mites and disease come with new animals. The built-in sheets have the lengths that are in use, 30 to 90 days; there is no good source for them in invertebrates, and for other species none is assumed.",
		Source:  "common practice, no source",
		Instead: "State quarantine in the collection block, or in the sheet of the species."}
	ruleNoTerm = &finding.Rule{ID: "birth-window-unknown", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "When a birth is possible is not known.",
		Why:     "Gestation of scorpions runs from months to years, and a date would be made up. There is a weekly look instead, and nothing is disturbed.",
		Source:  "common practice, no source",
		Instead: "Log the mating, where its day is known."}
	ruleEarlyMeal = &finding.Rule{ID: "fed-early", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "It ate before its fangs or sting were hard.",
		Why:     "Soft fangs break, and live prey bites back. What is done is done; the next meal waits as long as it should.",
		Source:  "the species sheet's wait after a moult",
		Instead: "Look at fangs and mouth, take out what is left, and wait."}
	ruleMixed = &finding.Rule{ID: "species-mixed", Severity: finding.Urgent, Silence: finding.Never,
		Title:   "Animals of two species are in one enclosure.",
		Why:     "One eats the other, and heat, damp and food that are right for one are wrong for the other.",
		Source:  "common practice, no source",
		Instead: "An enclosure for each species. In the log, the move that was meant."}
	ruleNow = &finding.Rule{ID: "act-now", Severity: finding.Urgent, Silence: finding.Never,
		Title:   "An animal is in danger now, by what the log says.",
		Why:     "What was seen is a fact: it refuses no plan, and it stands first in the next round until the log says what became of it.",
		Source:  "the line of the log; the limit that is named",
		Instead: "Do what the round says, and log it."}
	ruleOpen = &finding.Rule{ID: "question-open", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A question to the log is open.",
		Why:     "What is held stays held until the answer is known, and the question comes again in the round.",
		Source:  "the line of the log; the limit that is named",
		Instead: "Look, and log what you see."}
	ruleLate = &finding.Rule{ID: "first-moult-late", Severity: finding.Urgent, Silence: finding.ByReason,
		Title:   "The first moult of a brood is not in the log, though its time is over.",
		Why:     "Separation and the first meal are counted from it; young that are not fed starve within weeks.",
		Source:  "Sarmento et al. 2008, J. Arachnol. 36:476-479",
		Instead: "Look, and log what you see."}
)
