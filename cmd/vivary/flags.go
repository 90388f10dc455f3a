package main

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"vivary/schema/slip"
	"vivary/schema/wording"
)

// flags are the values of all flags of all commands.
type flags struct {
	in, now, format, out, round, keeper, on, from, svg, at, by, sheet, kind, paper, address string

	listen, certificate, privateKey, keys, renew, measures, noticeAfter string

	days                            int
	undo, urgentFails, narrow, unit bool

	// What is only looked at, and the name of what is read from standard input.
	check, whole, ownDays, write bool
	trial, library               string
	name                         string

	// How what a logger wrote is read.
	enclosure, columns, dates, zone, degrees, day, power, week string
	note                                                       bool

	// How a server is asked.
	login       string
	unencrypted bool

	// Where calendars are sent, and what of them.
	sshKey, knownHosts, endpoint string
	try, remove, gzip, private   bool
}

// notGiven is a number of days where none is said.
const notGiven = -1

// flagTable describes every flag once: what follows it, "" for a switch, what it does, and
// where its value goes. The type of that says what may be written.
var flagTable = []struct {
	name, value, doc string
	to               func(*flags) any
}{
	{"in", "FOLDER", "the folder of the collection (default: this folder)", func(f *flags) any { return &f.in }},
	{"now", "MOMENT", "take this for the present: 2027-03-01, or 2027-03-01T08:00", func(f *flags) any { return &f.now }},
	{"format", "FORM", "text or json; of findings sarif too, of a comparison markdown, of the register csv", func(f *flags) any { return (*form)(&f.format) }},
	{"out", "FOLDER", "the folder of the calendars (default: feeds, in the collection's folder)", func(f *flags) any { return &f.out }},
	{"days", "N", "so many days in full (default: today, and two more in a line each)", func(f *flags) any { return &f.days }},
	{"round", "NAME", "only this round", func(f *flags) any { return &f.round }},
	{"paper", "FILE", "write it as pages to be printed into this file: today.html", func(f *flags) any { return &f.paper }},
	{"keeper", "NAME", "only what this keeper does", func(f *flags) any { return &f.keeper }},
	{"on", "DAY", "the day to explain, or with whose end the register ends", func(f *flags) any { return &f.on }},
	{"from", "DAY", "the first day of the balance (default: so that it is of a year)", func(f *flags) any { return &f.from }},
	{"at", "TIME", "the time of day of what is noted: 19:42", func(f *flags) any { return &f.at }},
	{"by", "KEEPER", "who notes it", func(f *flags) any { return &f.by }},
	{"sheet", "NAME", "the species to begin a sheet of: parabuthus-villosus", func(f *flags) any { return &f.sheet }},
	{"type", "TYPE", "its care type (default: the one that has its genus)", func(f *flags) any { return &f.kind }},
	{"enclosure", "NAME", "the enclosure that the files are about", func(f *flags) any { return &f.enclosure }},
	{"columns", "COLUMNS", "which column is what, by its number or a part of its heading: \"time=1 temperature=3 humidity=4\"", func(f *flags) any { return &f.columns }},
	{"dates", "ORDER", "how days are written: day-first, month-first or year-first", func(f *flags) any { return &f.dates }},
	{"zone", "ZONE", "the time zone of the logger's clock (default: that of the collection)", func(f *flags) any { return &f.zone }},
	{"degrees", "C|F", "what the logger's temperatures are in", func(f *flags) any { return &f.degrees }},
	{"day", "TIMES", "from when to when it is day: \"07:00 to 21:00\" (default: 08:00 to 20:00)", func(f *flags) any { return &f.day }},
	{"power", "WATTS", "what the heaters draw while they are on, by a power meter: \"16 W\"", func(f *flags) any { return &f.power }},
	{"week", "DAY", "draw only the week that begins on this day", func(f *flags) any { return &f.week }},
	{"note", "", "append to the log what is said to be for it, but for lines that stand there", func(f *flags) any { return &f.note }},
	{"undo", "", "take back the last line", func(f *flags) any { return &f.undo }},
	{"urgent-fails", "", "exit status 3 while anything is urgent", func(f *flags) any { return &f.urgentFails }},
	{"login", "FILE", "a file that only you can read, with the user on its first line and the password on its second", func(f *flags) any { return &f.login }},
	{"unencrypted", "", "ask over http too, in a network that is yours alone", func(f *flags) any { return &f.unencrypted }},
	{"listen", "ADDRESS", "where to listen (default: 127.0.0.1:8424, this machine only)", func(f *flags) any { return &f.listen }},
	{"address", "ADDRESS", "how it is reached from outside: https://care.example", func(f *flags) any { return &f.address }},
	{"certificate", "FILE", "a certificate, to encrypt what is sent", func(f *flags) any { return &f.certificate }},
	{"private-key", "FILE", "the key of the certificate", func(f *flags) any { return &f.privateKey }},
	{"keys", "FILE", "the file of private addresses (default: in the folder of your settings)", func(f *flags) any { return &f.keys }},
	{"renew", "NAME", "another address for a calendar or a keeper, for page or labels", func(f *flags) any { return &f.renew }},
	{"measures", "ADDRESS", "where counts and times are served, for whoever watches the server", func(f *flags) any { return &f.measures }},
	{"notice-after", "TIME", "how long a plan is refused until calendars say so (default: 1 day)", func(f *flags) any { return &f.noticeAfter }},
	{"unit", "", "print a unit for systemd, to start with the machine", func(f *flags) any { return &f.unit }},
	{"try", "", "only say what would be sent and removed", func(f *flags) any { return &f.try }},
	{"remove", "", "take away what was published there once and is no calendar any more", func(f *flags) any { return &f.remove }},
	{"private", "", "put each calendar where nobody guesses it, c/KEY/NAME.ics, as vivary keys has it", func(f *flags) any { return &f.private }},
	{"gzip", "", "store calendars compressed in object storage; every reader has to understand it", func(f *flags) any { return &f.gzip }},
	{"endpoint", "URL", "the object storage (default: AWS_ENDPOINT_URL, else Amazon's)", func(f *flags) any { return &f.endpoint }},
	{"ssh-key", "FILE", "the private key for SFTP (default: those of ssh-agent)", func(f *flags) any { return &f.sshKey }},
	{"known-hosts", "FILE", "the keys of servers (default: ~/.ssh/known_hosts)", func(f *flags) any { return &f.knownHosts }},
	{"svg", "FILE", "draw the enclosure's year, what was measured, or how an animal grew, into this file", func(f *flags) any { return &f.svg }},
	{"check", "", "write nothing, and say what would change; exit status 1 if anything would", func(f *flags) any { return &f.check }},
	{"write", "", "write the changes, if no file has changed meanwhile", func(f *flags) any { return &f.write }},
	{"name", "FILE", "the name of what is read from standard input, for what is found in it", func(f *flags) any { return &f.name }},
	{"if", "FILE", "compare with the plan as it would be with this file over it: a purchase, a trip", func(f *flags) any { return &f.trial }},
	{"own-days", "", "tell what was as it was on the day of its revision, and what is as of its own", func(f *flags) any { return &f.ownDays }},
	{"library", "FOLDER", "the sheets of species of another vivary: version writes them, and compare judges the first by them", func(f *flags) any { return &f.library }},
	{"whole", "", "tell all of it, however much it is", func(f *flags) any { return &f.whole }},
	{"narrow", "", "draw it as wide as a phone", func(f *flags) any { return &f.narrow }},
}

// form is the form in which something is printed.
type form string

// printed are the forms that there are. What is no finding has no SARIF, and what is no table
// no CSV.
var printed = []string{"text", "json", "sarif", "markdown", "csv"}

// forms are those in which a command prints.
func (c *command) forms() []string {
	switch {
	case c.finds:
		return []string{"text", "json", "sarif"}
	case c.name == "compare":
		return []string{"text", "json", "markdown"}
	case c.name == "register":
		return []string{"text", "json", "csv"}
	}
	return []string{"text", "json"}
}

// formedBy are the commands that print in a form.
func formedBy(form string) (names []string) {
	for i := range commands {
		if c := &commands[i]; c.has("format") && slices.Contains(c.forms(), form) {
			names = append(names, c.name)
		}
	}
	return names
}

// commandLine is what the words of a command line say.
type commandLine struct {
	word    string   // that stands for the command; "" for none
	command *command // that it names, or nil
	flags   *flags
	rest    []string // all else

	help, version bool // asked for instead, whatever else is wrong
}

// parse reads a command line. Flags stand before, between and after what else there is,
// before the command too; what follows "--" is taken as it stands. It is not the standard
// library's, whose flags stand before all else and whose errors cannot be told from each
// other.
func parse(args []string) (commandLine, error) {
	l := commandLine{flags: &flags{format: "text", days: notGiven}}
	var given []string // names of flags, in order
	var failed error   // the first
	for len(args) > 0 {
		arg := args[0]
		args = args[1:]
		name, value, set := strings.Cut(flagName(arg), "=")
		switch {
		case arg == "--":
			l.take(args...)
			args = nil
		case name == "":
			l.take(arg)
		case name == "h" || name == "help":
			l.help = true
		case name == "version":
			l.version = true
		default:
			f := flagOf(name)
			if f < 0 {
				failed = cmp.Or(failed, noFlag(l.command, arg, name))
				continue
			}
			if flagTable[f].value != "" && !set && len(args) > 0 && !isFlag(args[0]) {
				value, set, args = args[0], true, args[1:]
			}
			if slices.Contains(given, name) {
				failed = cmp.Or(failed, fmt.Errorf("--%s stands here twice: once is enough", name))
			}
			given = append(given, name)
			failed = cmp.Or(failed, l.set(f, value, set))
		}
	}
	if c := l.command; c != nil {
		for _, name := range given {
			if !c.has(name) {
				failed = cmp.Or(failed, notOf(c, name))
			}
		}
		if l.flags.format != "text" && c.has("format") && !slices.Contains(c.forms(), l.flags.format) {
			failed = cmp.Or(failed, fmt.Errorf("--format %s goes with %s: with %s it is %s", l.flags.format, wording.And(formedBy(l.flags.format)), c.name, wording.Or(c.forms())))
		}
	}
	return l, failed
}

// take takes words that are no flags: the first is the command.
func (l *commandLine) take(words ...string) {
	if l.word == "" && len(words) > 0 {
		l.word, words = words[0], words[1:]
		l.command = findCommand(l.word)
	}
	l.rest = append(l.rest, words...)
}

// flagName returns the name of a flag, with its value if it has one, or "" for a word that
// is none. Two hyphens are often made one dash where text is written.
func flagName(arg string) string {
	if len(arg) > 1 && arg[0] == '-' {
		return strings.TrimPrefix(arg[1:], "-")
	}
	if name := strings.TrimLeft(arg, "–—"); name != arg && isFlag("--"+name) {
		return name
	}
	return ""
}

// isFlag reports whether a word names a flag of any command.
func isFlag(arg string) bool {
	name, hyphens := strings.CutPrefix(arg, "--")
	name, _, _ = strings.Cut(name, "=")
	return hyphens && flagOf(name) >= 0
}

func flagOf(name string) int {
	for i := range flagTable {
		if flagTable[i].name == name {
			return i
		}
	}
	return -1
}

// set puts the value of a flag in its place.
func (l *commandLine) set(flag int, value string, given bool) error {
	f := &flagTable[flag]
	to := f.to(l.flags)
	if on, ok := to.(*bool); ok {
		if *on = true; given {
			return fmt.Errorf("--%s stands alone: nothing comes after it", f.name)
		}
		return nil
	}
	if value == "" {
		return fmt.Errorf("after --%s stands its %s: %s", f.name, f.value, f.doc)
	}
	switch to := to.(type) {
	case *string:
		*to = value
	case *form:
		if *to = form(strings.ToLower(value)); !slices.Contains(printed, string(*to)) {
			forms := printed
			if l.command != nil && l.command.has("format") {
				forms = l.command.forms()
			}
			return fmt.Errorf("--%s is %s, not %q", f.name, wording.Or(forms), value)
		}
	case *int:
		n, err := strconv.Atoi(value)
		if *to = n; err != nil {
			return fmt.Errorf("--%s is a whole number, such as --%s 7, and not %q", f.name, f.name, value)
		}
	}
	return nil
}

// noFlag says that there is no such flag, and which one may be meant.
func noFlag(c *command, arg, name string) error {
	var known []string
	for _, f := range flagTable {
		if c == nil || c.has(f.name) {
			known = append(known, f.name)
		}
	}
	if s := slip.Of(name, known); s != "" {
		return fmt.Errorf("%q means nothing here: did you mean --%s?", arg, s)
	}
	return fmt.Errorf("%q means nothing here: there is %s; after -- all is taken as it stands", arg, wording.And(hyphened(known)))
}

// notOf says that a command does not take a flag, and which commands do.
func notOf(c *command, name string) error {
	var of []string
	for i := range commands {
		if commands[i].has(name) {
			of = append(of, commands[i].name)
		}
	}
	return fmt.Errorf("--%s goes with %s, not with %s", name, wording.And(of), c.name)
}

func hyphened(names []string) []string {
	out := slices.Clone(names)
	for i := range out {
		out[i] = "--" + out[i]
	}
	return out
}
