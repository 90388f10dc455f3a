package roster

import (
	"embed"

	"vivary/plan/finding"
)

// Rules are what can be found while series are made. Each example is the inside
// of an enclosure of emperor scorpions that is otherwise sound.
var Rules = []*finding.Rule{ruleNoTiming, ruleTwoTimings, ruleCron, ruleCronMeaning, ruleNeverHappens, ruleOffRound, ruleWindow, ruleClockChange, ruleTwoCovers, ruleOneIdentity, ruleTooManySeries}

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
	ruleWindow = &finding.Rule{ID: "window-days", Severity: finding.Advice,
		Title:   "A window is taken as another than is written.",
		Why:     "Care is moved by whole days, and by 32 of them at the most.",
		Source:  "the design of this program",
		Instead: "Write whole days, up to 32."}
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
