package plan

import (
	"embed"

	"vivary/plan/finding"
)

// Rules are what can be found while a plan is read, before anything is known of
// the animals. Each example is a whole plan file, and a log where it has one.
var Rules = []*finding.Rule{
	ruleSyntax, ruleNotText, ruleTooLarge, ruleTooDeep, ruleTooMany, ruleUnreadable, ruleNotRead, ruleBlank, ruleLineEnds,
	ruleUnknownWord, ruleMissing, ruleTwice, ruleValue, ruleUnit, ruleDate, ruleTime,
	ruleNoCollection, ruleUnknownName, ruleZone, ruleElsewhere, ruleOldName, ruleEmpty, RuleUnreasoned,
	ruleLogLine, ruleLogWord, ruleLogAsked, ruleLogWithdrawn, ruleLogKeeper, ruleLogRepeat, ruleCrew, ruleDatesUnnamed, ruleDeadlineUnknown,
}

// Examples are what the rules are shown by, a file for each.
//
//go:embed examples
var Examples embed.FS

var (
	ruleSyntax = &finding.Rule{ID: "syntax", Severity: finding.Error,
		Title:   "The text cannot be read as a plan.",
		Why:     "A bracket or a quote that is not closed, or a line that is neither a block nor `name = value`.",
		Source:  "HCL native syntax specification",
		Instead: "Look at the place named and just before it. A block is `word \"name\" {` … `}`, an attribute `name = value`, a text stands in double quotes."}
	ruleNotText = &finding.Rule{ID: "not-text", Severity: finding.Error,
		Title:   "The file is not text.",
		Why:     "Plans and logs are UTF-8 text. This file holds bytes that are not.",
		Source:  "HCL native syntax specification",
		Instead: "Save it as UTF-8, or give it another name if it is not a plan."}
	ruleTooLarge = &finding.Rule{ID: "too-large", Severity: finding.Error,
		Title:   "A file is larger than what is read.",
		Why:     "A bound keeps a broken file from using up the machine. No plan that people write comes near it.",
		Source:  "a bound of this program",
		Instead: "Split the file; files of a collection are read together."}
	ruleTooDeep = &finding.Rule{ID: "too-deep", Severity: finding.Error,
		Title:   "Brackets are nested deeper than what is read.",
		Why:     "A bound keeps a broken file from using up the machine. A plan needs five levels at most.",
		Source:  "a bound of this program",
		Instead: "Look for a bracket that is opened again and again."}
	ruleTooMany = &finding.Rule{ID: "too-many", Severity: finding.Error,
		Title:   "There is more of something than what is read.",
		Why:     "A bound keeps a mistake from using up the machine.",
		Source:  "a bound of this program",
		Instead: "Split the collection."}
	ruleUnreadable = &finding.Rule{ID: "unreadable", Severity: finding.Error,
		Title:   "A file cannot be opened.",
		Why:     "A plan that is only half read could look right and leave an animal out.",
		Source:  "the file system",
		Instead: "Look at the file's permissions."}
	ruleNotRead = &finding.Rule{ID: "not-read", Severity: finding.Error,
		Title:   "A file is nearly a plan or a log by its name, and is not read.",
		Why:     "Editors and file managers add \".txt\", capitals or a copy's number to a name. An animal in such a file would be fed by nobody, and a moult in it would stop no meal.",
		Source:  "the design of this program",
		Instead: "Give it a name that ends in `.care.hcl` or `.care.log`, or move it out of the folder."}
	ruleBlank = &finding.Rule{ID: "blank-file", Severity: finding.Error,
		Title:   "A plan or a log holds nothing.",
		Why:     "A disk that was full or a copy that was cut off leaves files empty. What stood in it may be animals.",
		Source:  "the design of this program",
		Instead: "Fetch what stood in it from a copy, or delete the file."}
	ruleLineEnds = &finding.Rule{ID: "line-ends", Severity: finding.Error,
		Title:   "Lines end in a way that is not read as the end of a line.",
		Why:     "A carriage return alone ended lines on computers of before 2001. To the reader of plans all of them are one line, and a comment hides whatever stands behind it.",
		Source:  "HCL native syntax specification: lines end in a line feed, which a carriage return may precede",
		Instead: "Save the file with line ends of Unix or of Windows."}
	ruleEmpty = &finding.Rule{ID: "no-plan", Severity: finding.Error,
		Title:   "There is no plan in the folder.",
		Why:     "Plans are files whose names end in `.care.hcl`.",
		Source:  "the design of this program",
		Instead: "Run `vivary start` in an empty folder for a first plan."}
	ruleUnknownWord = &finding.Rule{ID: "unknown-word", Severity: finding.Error,
		Title:   "A word is not part of the language, or not here.",
		Why:     "A misspelt attribute that were passed over would leave something undone.",
		Source:  "schema/REFERENCE.md",
		Instead: "Use the word suggested, or look the block up in the reference page."}
	ruleMissing = &finding.Rule{ID: "missing", Severity: finding.Error,
		Title:   "Something that must be written is not there.",
		Why:     "Nothing safe can be assumed for it.",
		Source:  "schema/REFERENCE.md",
		Instead: "Add the attribute or block named."}
	ruleTwice = &finding.Rule{ID: "twice", Severity: finding.Error,
		Title:   "Two things have one name, or one thing is said twice.",
		Why:     "It would not be known which holds.",
		Source:  "the design of this program",
		Instead: "Rename one, or take one out."}
	ruleValue = &finding.Rule{ID: "value", Severity: finding.Error,
		Title:   "A value does not have the form that is needed here.",
		Why:     "It cannot be understood.",
		Source:  "schema/REFERENCE.md",
		Instead: "Write it as in the example."}
	ruleUnit = &finding.Rule{ID: "unit", Severity: finding.Error,
		Title:   "A quantity has no unit, or one that does not fit.",
		Why:     "30 may be hot or cold: 30 C is a warm end, 30 F is frost.",
		Source:  "NIST SP 811, 7.1: the value of a quantity is a number and a unit",
		Instead: "Write the number with a unit, such as \"30 C\" or \"86 F\"."}
	ruleDate = &finding.Rule{ID: "date", Severity: finding.Error,
		Title:   "There is no such day, or days are in the wrong order.",
		Why:     "A care on a day that does not exist would never be done.",
		Source:  "ISO 8601, Gregorian calendar",
		Instead: "Write year-month-day, such as \"2027-02-28\"."}
	ruleTime = &finding.Rule{ID: "time-of-day", Severity: finding.Error,
		Title:   "A time of day does not exist, or calendars disagree about it.",
		Why:     "Between 00:00 and 03:59 a clock change can leave a time out or repeat it, and calendar programs give four different answers.",
		Source:  "RFC 5545, 3.3.5; tried with five calendar programs",
		Instead: "Choose a time from 04:00 to 23:59."}
	ruleNoCollection = &finding.Rule{ID: "no-collection", Severity: finding.Error,
		Title:   "There is no collection block.",
		Why:     "Without its time zone no time in the plan means anything.",
		Source:  "the design of this program",
		Instead: "Write `collection \"my-name\" { time_zone = \"Europe/London\" }` with your own zone, in any file."}
	ruleUnknownName = &finding.Rule{ID: "unknown-name", Severity: finding.Error,
		Title:   "Something is named that is nowhere defined.",
		Why:     "A care for an enclosure or keeper that does not exist is done by nobody.",
		Source:  "the design of this program",
		Instead: "Use the name suggested, or define it."}
	ruleDatesUnnamed = &finding.Rule{ID: "dates-unnamed", Severity: finding.Caution,
		Title:   "A dates block or a rota is named nowhere.",
		Why:     "Whoever wrote it thinks that the rounds know of the holidays, or of the weeks, and they do not.",
		Source:  "the design of this program",
		Instead: "Name dates where days are listed: in `not_on`, `also_on` or `on` of a round, of care or of a turn, or in `visits`; a rota in the rounds that go by it."}
	ruleZone = &finding.Rule{ID: "time-zone", Severity: finding.Error,
		Title:   "There is no such time zone, or it is none of a place.",
		Why:     "Every time in the plan depends on it. Letters such as EST or BST and distances such as GMT+1 are the time of a part of the year, and some are used in several countries: taken as they are, every round is an hour off for months. So nothing is put in their place.",
		Source:  "IANA time zone database",
		Instead: "Write region and city, as the database has them: \"Europe/London\", \"America/Chicago\". It is the zone of a large city of your country, not your own town."}
	ruleElsewhere = &finding.Rule{ID: "name-elsewhere", Severity: finding.Caution,
		Title:   "A name is another's under Windows or macOS, or none at all.",
		Why:     "A collection is copied, shared and served from other machines. There a file takes the place of another, a calendar is written over the next, or cannot be written.",
		Source:  "Microsoft, Naming Files, Paths, and Namespaces; Apple File System Reference; Unicode, UAX #15",
		Instead: "Another name; the name that it had as formerly, so that nothing moves on phones."}
	ruleOldName = &finding.Rule{ID: "old-name", Severity: finding.Advice,
		Title:   "A species or a feeder is written by an old or another name.",
		Why:     "Names change, and sellers' labels often mean another species. The sheet that is used is named, so that you can tell whether it is the right one.",
		Source:  "the sheet of the species or the feeder",
		Instead: "Write the name of the sheet."}
	ruleLogLine = &finding.Rule{ID: "log-line", Severity: finding.Urgent, Slip: true,
		Title:   "A line of the log cannot be read.",
		Why:     "A moult that is not read does not stop the next meal. The line changes nothing until it is put right; the others count.",
		Source:  "schema/REFERENCE.md",
		Instead: "Write a day, the enclosure, the animals where there are several, a word of the log, and a note in quotes: `2026-11-02 burrow-a young moult \"left alone\"`."}
	ruleLogWord = &finding.Rule{ID: "log-word", Severity: finding.Caution, Slip: true,
		Title:   "A word is not one of the log.",
		Why:     "What it means is not guessed. The line is kept as a remark, and nothing follows from it.",
		Source:  "schema/REFERENCE.md",
		Instead: "Use the word suggested, or `remark` and a note in quotes."}
	ruleLogAsked = &finding.Rule{ID: "log-asked", Severity: finding.Caution, Slip: true,
		Title:   "A word of the log means different things to different keepers.",
		Why:     "\"Dropped\" may be a brood, a tail or a fall. What is guessed wrongly stops meals for nothing, or does not stop those that it should. The line is kept as a remark until it is answered.",
		Source:  "general usage of keepers, from memory",
		Instead: "Write the word that is meant, as a line of its own, and take this one back with `withdrawn`; or change the word."}
	ruleLogWithdrawn = &finding.Rule{ID: "log-withdrawn", Severity: finding.Caution, Slip: true,
		Title:   "A line takes back what nobody wrote.",
		Why:     "The line that was meant still counts.",
		Source:  "the design of this program",
		Instead: "Write the enclosure, the animals, the word and the day of the line that is meant."}
	ruleLogKeeper = &finding.Rule{ID: "log-keeper", Severity: finding.Caution,
		Title:   "A line of the log was written by somebody who is not in the plan.",
		Why:     "Whoever has a question about the line does not know whom to ask. The line counts.",
		Source:  "the design of this program",
		Instead: "Write the name of a keeper block after `by`, or leave it out."}
	ruleDeadlineUnknown = &finding.Rule{ID: "log-deadline", Severity: finding.Caution, Slip: true,
		Title:   "A line of the log is about a date of the house that is not in the plan.",
		Why:     "What was done counts for nothing, and the date that was meant goes on being told.",
		Source:  "the design of this program",
		Instead: "Write the name of the deadline block. Where that was taken out since, nothing has to be done."}
	ruleLogRepeat = &finding.Rule{ID: "log-repeat", Severity: finding.Advice,
		Title:   "A line stands twice in one log.",
		Why:     "Logs are merged by union, so that the same line twice is one fact. Two deaths on one day would count as one.",
		Source:  "the design of this program",
		Instead: "Write how many (`died 2`), or a time after the day. Where it happened once nothing has to be done."}

	ruleCrew = &finding.Rule{ID: "crew-as-animals", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "A clean-up crew is written as animals of the enclosure.",
		Why:     "The animals of an enclosure are of its species, and are fed, counted and housed as these. Nobody counts woodlice and springtails in a substrate.",
		Source:  "common practice, no source",
		Instead: "Name them in the substrate, and take the block out."}

	// RuleUnreasoned is about figures and silenced rules alike.
	RuleUnreasoned = &finding.Rule{ID: "unreasoned", Severity: finding.Error,
		Title:   "A known limit is set aside without a reason, a source and a date.",
		Why:     "Species limits are disputed, and a keeper may know better. But whoever reads the plan next year must see why, on whose word, and when it was to be looked at again.",
		Source:  "common practice, no source",
		Instead: "Write because, source and review (in an accept block: because and until)."}
)
