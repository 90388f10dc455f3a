package main

import (
	"slices"
	"strings"
	"sync"

	"vivary/compile"
	"vivary/compile/explain"
	"vivary/compile/logger"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// typing is a command line of which the last word is being typed.
type typing struct {
	w      *world
	before []string // the words before it
	word   string   // what of it is there
	line   commandLine

	once   sync.Once
	c      *plan.Collection // read when it is first asked for; nil where there is none
	result *compile.Result  // the same compiled
}

// plan is the collection that the line is about, as far as it can be read. Nothing is
// compiled: names are there in a plan that is refused too.
func (a *typing) plan() *plan.Collection {
	a.once.Do(func() {
		f, args := *a.line.flags, a.line.rest
		if a.line.command == nil || !strings.HasPrefix(a.line.command.args, "[FOLDER]") {
			args = nil
		}
		if rest, home := strings.CutPrefix(f.in, "~/"); home && a.w.env != nil {
			f.in = a.w.env("HOME") + "/" + rest // which a shell has not done yet
		}
		named, err := folder(&f, args)
		if err != nil {
			named = "."
		}
		a.c, _, _ = plan.Load(a.w.disk, rootOf(a.w.disk, named))
	})
	if a.c == nil {
		return &plan.Collection{Library: plan.NewLibrary()}
	}
	return a.c
}

// today is the day where the animals are, or of the machine.
func (a *typing) today() civil.Date {
	now, err := a.w.moment(a.line.flags, a.plan().Location)
	if err != nil {
		now = a.w.clock()
	}
	return civil.FromTime(now)
}

// formFor is what each form is for.
var formFor = map[string]string{"text": "for people", "json": "for programs", "sarif": "for systems in which changes are reviewed", "markdown": "for a comment on a change", "csv": "for a spreadsheet"}

// values are what may stand behind a flag.
func (a *typing) values(flag int) []offer {
	f := &flagTable[flag]
	switch f.name {
	case "keeper", "by":
		return a.keepers()
	case "round":
		return a.rounds()
	case "renew":
		return append(append(a.calendars(), a.keepers()...), offer{"page", "the page of everything"}, offer{"labels", "the pages behind labels"})
	case "type":
		return a.types()
	case "on":
		if c := a.line.command; c != nil && c.name == "register" {
			return a.days(-1, 7)
		}
		return a.days(1, 14)
	case "from":
		return a.days(-1, 7)
	case "now":
		return a.days(1, 7)
	case "week":
		return a.days(-1, 14)
	case "enclosure":
		return a.enclosures()
	case "dates":
		return []offer{{logger.Orders[logger.DayFirst], "31.12.2027"}, {logger.Orders[logger.MonthFirst], "12/31/2027"}, {logger.Orders[logger.YearFirst], "27-12-31"}}
	case "degrees":
		return []offer{{"C", "Celsius"}, {"F", "Fahrenheit"}}
	case "format":
		forms := printed
		if c := a.line.command; c != nil {
			forms = c.forms()
		}
		var all []offer
		for _, name := range forms {
			all = append(all, offer{name, formFor[name]})
		}
		return all
	}
	switch f.value {
	case "FOLDER":
		return folders
	case "FILE":
		return files
	}
	return nil
}

// args are what may stand where no flag is.
func (a *typing) args() []offer {
	switch name := a.line.command.name; {
	case name == "note" && a.line.flags.undo:
		return a.enclosures()
	case name == "note":
		return a.noted(a.line.rest)
	case name == "labels", name == "caresheet", name == "history" && len(a.line.rest) == 0:
		return a.enclosures()
	case name == "readings":
		return files
	case name == "why" && len(a.line.rest) == 0:
		return a.explained()
	case name == "help" && len(a.line.rest) == 0:
		return theCommands()
	case name == "completion" && len(a.line.rest) == 0:
		var all []offer
		for _, s := range shells {
			all = append(all, offer{s[0], "for " + s[0]})
		}
		return all
	case strings.Contains(a.line.command.args, "FILE"):
		return files
	case strings.Contains(a.line.command.args, "FOLDER") || name == "publish":
		return folders
	}
	return nil
}

// noted are what may stand next in a line of the log: a day, whom it is about, the animals,
// a word, and what stands behind that.
func (a *typing) noted(words []string) []offer {
	c := a.plan()
	if len(words) == 0 {
		return slices.Concat(a.whom(), []offer{{"yesterday", ""}}, a.days(-1, 7))
	}
	_, words, err := takeDay(c, a.today(), words)
	switch {
	case err != nil:
		return nil
	case len(words) == 0:
		return a.whom()
	case words[0] == schema.LogKeeper && called(c, words[0]) == "":
		return a.ofKeeper(words[1:])
	case words[0] == schema.LogDeadline && called(c, words[0]) == "":
		return a.ofDeadline(words[1:])
	}
	of, rest, err := takeWho(c, words)
	if err != nil {
		return nil
	}
	return a.seen(of.names[len(of.names)-1], rest)
}

// ofKeeper are what may stand behind the word that begins a line about one of the people.
func (a *typing) ofKeeper(typed []string) []offer {
	switch len(typed) {
	case 0:
		return a.keepers()
	case 1:
		return words(schema.KeeperWords)
	}
	return nil
}

// ofDeadline are what may stand behind the word that begins a line about a date of the house.
func (a *typing) ofDeadline(typed []string) (all []offer) {
	switch len(typed) {
	case 0:
		for _, d := range a.plan().Deadlines {
			all = append(all, offer{d.Name.V, d.Shown()})
		}
	case 1:
		return words(schema.DeadlineWords)
	}
	return all
}

// seen are what may stand behind an enclosure.
func (a *typing) seen(enclosure string, typed []string) (all []offer) {
	e := a.plan().Enclosure(enclosure)
	if len(typed) == 0 {
		if e != nil {
			for _, g := range e.Animals {
				all = append(all, offer{g.Name.V, "animals of " + enclosure})
			}
		}
		return append(all, words(schema.LogWords)...)
	}
	if slices.Equal(typed, []string{"to"}) { // tub-7 to 12
		return a.enclosures()
	}
	if e != nil && e.Group(typed[0]) != nil {
		typed = typed[1:]
	}
	s, n := spelledIn(typed)
	switch {
	case len(typed) == 0:
		return words(schema.LogWords)
	case s == nil || s.Word == nil:
		return nil
	}
	behind := len(flat(typed)) - n
	switch after := s.Word.After; {
	case after == schema.AfterCare && behind == 0:
		return a.cares(enclosure, "")
	case after == schema.AfterEnclosure:
		return a.enclosures()
	case after == schema.AfterMeasure:
		for _, w := range schema.MeasuredAt {
			all = append(all, offer{w.Name, w.Doc})
		}
	case after == schema.AfterTest:
		if behind == 0 {
			for _, g := range a.plan().GaugesAt(enclosure) {
				all = append(all, offer{g.Name.V, "a gauge there"})
			}
		}
		for _, salt := range schema.Salts {
			all = append(all, offer{salt.Name, salt.Doc})
		}
	case after == schema.AfterWord && behind == 0:
		return words(schema.LogWords)
	}
	return all
}

// whom are of whom a line of the log can be.
func (a *typing) whom() []offer {
	all := append(a.enclosures(), offer{schema.LogKeeper, "one of the people"})
	if len(a.plan().Deadlines) > 0 {
		all = append(all, offer{schema.LogDeadline, "a date of the house"})
	}
	return all
}

// words are words of the log.
func words(of []*schema.LogWord) (all []offer) {
	for _, w := range of {
		all = append(all, offer{w.Name, w.Doc})
	}
	return all
}

func (a *typing) enclosures() (all []offer) {
	for _, e := range a.plan().Enclosures {
		all = append(all, offer{e.Name.V, e.Shown()})
	}
	for _, k := range a.plan().Racks {
		all = append(all, offer{k.Name.V, k.Shown()})
	}
	return all
}

func (a *typing) keepers() (all []offer) {
	for _, k := range a.plan().Keepers {
		all = append(all, offer{k.Name.V, k.Title.V})
	}
	return all
}

func (a *typing) rounds() (all []offer) {
	for _, r := range plan.Wholes(a.plan().Rounds) {
		all = append(all, offer{r.Name.V, r.Title.V})
	}
	return all
}

func (a *typing) calendars() (all []offer) {
	for _, c := range a.plan().Calendars {
		all = append(all, offer{c.Name.V, c.Title.V})
	}
	return all
}

func (a *typing) types() (all []offer) {
	lib := a.plan().Library
	for _, name := range lib.TypeNames() {
		all = append(all, offer{name, lib.Type(name).Title.V})
	}
	return all
}

// days are today and so many more, onward or back.
func (a *typing) days(step civil.Date, n int) (all []offer) {
	for i := range civil.Date(n) {
		day := a.today() + step*i
		about := day.Weekday().String()
		if i == 0 {
			about = "today, " + about
		}
		all = append(all, offer{day.String(), about})
	}
	return all
}

// explained are the names that why explains. Cares are offered once an enclosure and a
// slash stand there, since they have to be worked out.
func (a *typing) explained() []offer {
	if enclosure, _, slash := strings.Cut(a.word, "/"); slash {
		return a.cares(enclosure, enclosure+"/")
	}
	var all []offer
	for _, l := range explain.Names(&compile.Result{Plan: a.plan()}, a.word) {
		all = append(all, offer{l.Name, l.Text})
	}
	return append(all, a.rounds()...)
}

// cares are the cares of an enclosure, each behind a beginning.
func (a *typing) cares(enclosure, begin string) (all []offer) {
	if a.result == nil {
		now, err := a.w.moment(a.line.flags, a.plan().Location)
		if err != nil {
			return nil
		}
		a.result = compile.Compile(a.plan(), nil, now)
	}
	for _, name := range explain.Cares(a.result, enclosure) {
		all = append(all, offer{begin + strings.TrimPrefix(name, enclosure+"/"), ""})
	}
	return all
}
