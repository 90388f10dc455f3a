package roster

import "vivary/plan/finding"

// Rules are what can be found while series are made. Each example is the inside
// of an enclosure of emperor scorpions that is otherwise sound.
var Rules = []*finding.Rule{ruleNoTiming, ruleTwoTimings, ruleCron, ruleCronMeaning, ruleNeverHappens, ruleOffRound, ruleWindow, ruleClockChange, ruleTwoCovers, ruleOneIdentity, ruleTooManySeries}

var (
	ruleNoTiming = &finding.Rule{ID: "no-timing", Severity: finding.Error,
		Title:   "A care does not say how often.",
		Why:     "It would never come up in a calendar.",
		Source:  "the design of this program",
		Instead: "Write `every = \"3 days\"`, `on = [\"tue\"]`, `after_last = \"7 days\"` or a cron line.",
		Bad:     "care \"weigh\" {\n}\n", Good: "care \"weigh\" {\n  on = [\"first sun\"]\n}\n"}
	ruleTwoTimings = &finding.Rule{ID: "two-timings", Severity: finding.Error,
		Title:   "A care says in two ways how often it is done.",
		Why:     "It would not be known which of them holds.",
		Source:  "the design of this program",
		Instead: "Keep one of every, on, cron and after_last. `every` goes together with `on` where both speak of weeks or of months.",
		Bad:     "care \"weigh\" {\n  every      = \"30 days\"\n  after_last = \"30 days\"\n}\n", Good: "care \"weigh\" {\n  every = \"30 days\"\n}\n"}
	ruleCron = &finding.Rule{ID: "cron-line", Severity: finding.Error,
		Title:   "A cron line cannot be used.",
		Why:     "It cannot be read, or its times mean different things to different calendars.",
		Source:  "the cron library's grammar; RFC 5545, 3.3.5 for times between 00:00 and 03:59",
		Instead: "Write five fields: minute, hour, day of the month, month, weekday from 0 (Sunday) to 6. Times from 04:00 to 23:59.",
		Bad:     "care \"weigh\" {\n  cron = \"30 1 * * 0\"\n}\n", Good: "care \"weigh\" {\n  cron = \"30 19 * * 0\"\n}\n"}
	ruleCronMeaning = &finding.Rule{ID: "cron-meaning", Severity: finding.Advice,
		Title:   "A cron line may mean something else than it seems to.",
		Why:     "`*/2` in the days field begins anew each month, and a line with a day of the month and a weekday means either of them.",
		Source:  "the cron library's grammar",
		Instead: "Write `every` or `on` where they say it more plainly.",
		Bad:     "care \"weigh\" {\n  cron = \"30 19 */2 * *\"\n}\n", Good: "care \"weigh\" {\n  every = \"2 days\"\n}\n"}
	ruleNeverHappens = &finding.Rule{ID: "never-happens", Severity: finding.Error,
		Title:   "A care never comes up.",
		Why:     "No day of the coming year fits what is written, so nobody would do it.",
		Source:  "the design of this program",
		Instead: "Look at its days and at from and until.",
		Bad:     "care \"weigh\" {\n  on    = [\"29 feb\"]\n  from  = \"2027-01-01\"\n  until = \"2027-12-31\"\n}\n",
		Good:    "care \"weigh\" {\n  on = [\"28 feb\"]\n}\n"}
	ruleOffRound = &finding.Rule{ID: "off-round", Severity: finding.Error,
		Title:   "A care falls on days on which its round is not held.",
		Why:     "Nobody passes the enclosure on that day.",
		Source:  "the design of this program",
		Instead: "Give the care a window in which it may be moved, choose days on which there is a round, or hold the round more often.",
		Bad:     "care \"weigh\" {\n  on    = [\"tue\"]\n  round = \"mondays\"\n}\n",
		Good:    "care \"weigh\" {\n  on     = [\"tue\"]\n  round  = \"mondays\"\n  window = \"1 day\"\n}\n"}
	ruleWindow = &finding.Rule{ID: "window-days", Severity: finding.Advice,
		Title:   "A window is taken as another than is written.",
		Why:     "Care is moved by whole days, and by 32 of them at the most.",
		Source:  "the design of this program",
		Instead: "Write whole days, up to 32.",
		Bad:     "care \"weigh\" {\n  on     = [\"tue\"]\n  round  = \"mondays\"\n  window = \"36 hours\"\n}\n",
		Good:    "care \"weigh\" {\n  on     = [\"tue\"]\n  round  = \"mondays\"\n  window = \"1 day\"\n}\n"}
	ruleClockChange = &finding.Rule{ID: "clock-change", Severity: finding.Error,
		Title:   "A round begins at a time that a clock change leaves out or repeats.",
		Why:     "On that day calendars show the round at different times, or not at all.",
		Source:  "RFC 5545, 3.3.5; tried with five calendar programs",
		Instead: "Choose a time outside the hour of the change.",
		Bad:     "collection \"c\" {\n  time_zone = \"America/Nuuk\"\n}\nround \"evening\" {\n  at     = \"23:30\"\n  keeper = \"lead\"\n}\n",
		Good:    "collection \"c\" {\n  time_zone = \"America/Nuuk\"\n}\nround \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n}\n"}
	ruleTwoCovers = &finding.Rule{ID: "two-covers", Severity: finding.Error,
		Title:   "Two people stand in for the same keeper on the same day.",
		Why:     "Each thinks that the other comes, and nobody does.",
		Source:  "the design of this program",
		Instead: "Let absences that overlap have the same cover, or visits on different days.",
		Bad:     "keeper \"lead\" {\n}\nkeeper \"relief\" {\n  phone   = \"1\"\n  trained = \"feeding\"\n}\nkeeper \"second\" {\n  phone   = \"2\"\n  trained = \"feeding\"\n}\naway \"lead\" {\n  from  = \"2027-03-01\"\n  to    = \"2027-03-05\"\n  cover = \"relief\"\n}\naway \"lead\" {\n  from  = \"2027-03-03\"\n  to    = \"2027-03-08\"\n  cover = \"second\"\n}\n",
		Good:    "keeper \"lead\" {\n}\nkeeper \"relief\" {\n  phone   = \"1\"\n  trained = \"feeding\"\n}\nkeeper \"second\" {\n  phone   = \"2\"\n  trained = \"feeding\"\n}\naway \"lead\" {\n  from  = \"2027-03-01\"\n  to    = \"2027-03-05\"\n  cover = \"relief\"\n}\naway \"lead\" {\n  from  = \"2027-03-05\"\n  to    = \"2027-03-08\"\n  cover = \"second\"\n}\n"}
	ruleOneIdentity = &finding.Rule{ID: "one-identity", Severity: finding.Error,
		Title:   "Two things would be one and the same in every calendar.",
		Why:     "A phone knows an entry by the names that things had first. Two of one name overwrite each other, and one is never shown.",
		Source:  "RFC 5545, 3.8.4.7: a UID is unique; the design of this program",
		Instead: "Look at formerly: it names what this very thing was called before, and nothing else may have that name.",
		Bad:     "enclosure \"box-2\" {\n  formerly = \"box\"\n  species  = \"pandinus-imperator\"\n  room     = \"east\"\n  housing {\n    kind      = \"glass\"\n    inside    = \"76 x 46 x 41 cm\"\n    lid       = \"solid, latched\"\n    substrate = \"coir and topsoil\"\n    moisture  = \"damp\"\n    depth     = \"16 cm\"\n    hides     = 4\n  }\n  animals \"adults\" {\n    count  = 1\n    stage  = \"adult\"\n    origin = \"captive bred\"\n    paper  = \"invoice 118\"\n  }\n}\n",
		Good:    "enclosure \"box-2\" {\n  formerly = \"tank\"\n  species  = \"pandinus-imperator\"\n  room     = \"east\"\n  housing {\n    kind      = \"glass\"\n    inside    = \"76 x 46 x 41 cm\"\n    lid       = \"solid, latched\"\n    substrate = \"coir and topsoil\"\n    moisture  = \"damp\"\n    depth     = \"16 cm\"\n    hides     = 4\n  }\n  animals \"adults\" {\n    count  = 1\n    stage  = \"adult\"\n    origin = \"captive bred\"\n    paper  = \"invoice 118\"\n  }\n}\n"}
	ruleTooManySeries = &finding.Rule{ID: "too-many-series", Severity: finding.Error,
		Title:   "The collection has more repeating cares than are read.",
		Why:     "A bound keeps a mistake from using up the machine.",
		Source:  "a bound of this program",
		Instead: "Split the collection."}
)
