package roster

import (
	"embed"

	"vivary/plan/finding"
)

// Rules are what can be found while series are made. Each example is the inside
// of an enclosure of emperor scorpions that is otherwise sound.
var Rules = []*finding.Rule{ruleNoTiming, ruleTwoTimings, ruleCron, ruleCronMeaning, ruleNeverHappens, ruleOffRound, ruleTwoRounds, ruleIdleDate, ruleOverDate, ruleOnceOnly, ruleWindow, ruleClockChange, ruleTwoCovers, ruleTwoTurns, ruleOneIdentity, ruleTooManySeries}

// Examples are what the rules are shown by, a file for each.
//
//go:embed examples
var Examples embed.FS

var (
	ruleNoTiming = &finding.Rule{ID: "no-timing", Severity: finding.Error,
		Title:   "A care does not say how often.",
		Why:     "It would never come up in a calendar.",
		Source:  "the design of this program",
		Instead: "Write `every = \"3 days\"`, `on = [\"tue\"]`, `after_last = \"7 days\"` or a cron line."}
	ruleTwoTimings = &finding.Rule{ID: "two-timings", Severity: finding.Error,
		Title:   "A care says in two ways how often it is done.",
		Why:     "It would not be known which of them holds.",
		Source:  "the design of this program",
		Instead: "Keep one of every, on, cron and after_last. `every` goes together with `on` where both speak of weeks or of months."}
	ruleCron = &finding.Rule{ID: "cron-line", Severity: finding.Error,
		Title:   "A cron line cannot be used.",
		Why:     "It cannot be read, or its times mean different things to different calendars.",
		Source:  "the cron library's grammar; RFC 5545, 3.3.5 for times between 00:00 and 03:59",
		Instead: "Write five fields: minute, hour, day of the month, month, weekday from 0 (Sunday) to 6. Times from 04:00 to 23:59."}
	ruleCronMeaning = &finding.Rule{ID: "cron-meaning", Severity: finding.Advice,
		Title:   "A cron line may mean something else than it seems to.",
		Why:     "`*/2` in the days field begins anew each month, and a line with a day of the month and a weekday means either of them.",
		Source:  "the cron library's grammar",
		Instead: "Write `every` or `on` where they say it more plainly."}
	ruleNeverHappens = &finding.Rule{ID: "never-happens", Severity: finding.Error,
		Title:   "A care never comes up.",
		Why:     "No day of the coming year fits what is written, so nobody would do it.",
		Source:  "the design of this program",
		Instead: "Look at its days and at from and until."}
	ruleOffRound = &finding.Rule{ID: "off-round", Severity: finding.Error,
		Title:   "A care falls on days on which its round is not held.",
		Why:     "Nobody passes the enclosure on that day.",
		Source:  "the design of this program",
		Instead: "Give the care a window in which it may be moved, choose days on which there is a round, or hold the round more often."}
	ruleTwoRounds = &finding.Rule{ID: "two-rounds", Severity: finding.Error,
		Title:   "Of rounds that take turns two are held on one day.",
		Why:     "It is not known which of them is meant: all that is done there would be done twice on that day, and once on others.",
		Source:  "the design of this program",
		Instead: "Let the rounds have different days. What is to be done twice a day says so itself: a care or a feeding that names a morning and an evening round."}
	ruleIdleDate = &finding.Rule{ID: "date-idle", Severity: finding.Caution,
		Title:   "A date in not_on, also_on or visits changes nothing.",
		Why:     "Most often it is another day that was meant, and on that one all is as before.",
		Source:  "the design of this program",
		Instead: "Look at the weekday of the date."}
	ruleOverDate = &finding.Rule{ID: "date-over", Severity: finding.Advice,
		Title:   "All dates of a list are over, or further ahead than is looked.",
		Why:     "It says nothing of the year to come. The year may be another than was meant, or those of the next year are still to be written.",
		Source:  "the design of this program",
		Instead: "Write the dates of the coming year, or take the line out."}
	ruleOnceOnly = &finding.Rule{ID: "once-only", Severity: finding.Caution,
		Title:   "A care that is done once stands in place of one that is done again and again.",
		Why:     "A care of the plan's own takes the place of the species sheet's of the same name, and then nothing of that comes up any more.",
		Source:  "the design of this program",
		Instead: "For a day besides the usual ones write `also_on` in place of `on`; or give the care a name of its own, with `kind`."}
	ruleWindow = &finding.Rule{ID: "window-days", Severity: finding.Advice,
		Title:   "A length of time is taken as another than is written.",
		Why:     "Care is done on days and moved by whole days, and by 32 of them at the most.",
		Source:  "the design of this program",
		Instead: "Write whole days; of a window up to 32."}
	ruleClockChange = &finding.Rule{ID: "clock-change", Severity: finding.Error,
		Title:   "A round begins at a time that a clock change leaves out or repeats.",
		Why:     "On that day calendars show the round at different times, or not at all.",
		Source:  "RFC 5545, 3.3.5; tried with five calendar programs",
		Instead: "Choose a time outside the hour of the change."}
	ruleTwoCovers = &finding.Rule{ID: "two-covers", Severity: finding.Error,
		Title:   "Two people stand in for the same keeper on the same day.",
		Why:     "Each thinks that the other comes, and nobody does.",
		Source:  "the design of this program",
		Instead: "Let absences that overlap have the same cover, or visits on different days."}
	ruleTwoTurns = &finding.Rule{ID: "two-turns", Severity: finding.Error,
		Title:   "Two people have the same day of a rota.",
		Why:     "Each thinks that the other comes, and nobody does.",
		Source:  "the design of this program",
		Instead: "Other days for one of the turns, or weeks that differ. A turn with dates goes before one with days of the week."}
	ruleOneIdentity = &finding.Rule{ID: "one-identity", Severity: finding.Error,
		Title:   "Two things would be one and the same in every calendar.",
		Why:     "A phone knows an entry by the names that things had first. Two of one name overwrite each other, and one is never shown.",
		Source:  "RFC 5545, 3.8.4.7: a UID is unique; the design of this program",
		Instead: "Look at formerly: it names what this very thing was called before, and nothing else may have that name."}
	ruleTooManySeries = &finding.Rule{ID: "too-many-series", Severity: finding.Error,
		Title:   "The collection has more repeating cares than are read.",
		Why:     "A bound keeps a mistake from using up the machine.",
		Source:  "a bound of this program",
		Instead: "Split the collection."}
)
