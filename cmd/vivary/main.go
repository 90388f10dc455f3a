// Command vivary checks care plans and makes calendars of them.
//
// This package reads flags and prints; what it prints is worked out elsewhere.
package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"os"
	"runtime/debug"
	"slices"
	"strconv"
	"strings"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
	"vivary/plan/finding"
)

// The exit status says how a command ended.
const (
	fine     = 0
	refused  = 1 // findings refuse the plan, or something could not be written
	usage    = 2 // the command was not understood
	pressing = 3 // something is urgent, where that was asked for
)

func main() {
	if os.Getenv("GOGC") == "" {
		// A build reads much, keeps little and ends: fewer collections make it
		// faster, and the limit keeps a large collection from taking all memory.
		debug.SetGCPercent(400)
		debug.SetMemoryLimit(1 << 30)
	}
	os.Exit(run(os.Args[1:], &world{
		disk: afero.NewOsFs(), out: os.Stdout, err: os.Stderr, clock: time.Now,
		color: terminal(os.Stdout) && os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb",
		live:  terminal(os.Stderr),
		lock: publish.Waiting(patience, time.Now, func(who string) {
			fmt.Fprintf(os.Stderr, "Another build has the folder of the calendars (%s): waiting for it.\n", who)
		}),
	}))
}

// world is everything that a command has to do with outside the program.
type world struct {
	disk     afero.Fs
	out, err io.Writer
	clock    func() time.Time
	color    bool // standard output shows colours
	live     bool // standard error is a terminal
	lock     publish.Lock
}

// patience is how long a build waits for another.
const patience = 2 * time.Minute

func terminal(f *os.File) bool {
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}

// command is one of the program's commands.
type command struct {
	name  string
	args  string // what follows the name, in words
	short string // what it does, in one line
	long  string
	run   func(*world, *flags, []string) int
	flags string // the names of the flags it takes, besides in and now
}

var commands = []command{
	{"start", "[FOLDER]", "write a first collection to learn from", "Writes a small collection that compiles, with comments that teach. The folder must not hold a plan yet. With --sheet it writes a sheet of a species that is not built in, to be filled in, beside the plan that is there.", start, "sheet type"},
	{"check", "[FOLDER]", "look for mistakes", "Reads all plans and logs below the folder and prints what it finds. Exit status 1 if a finding would keep the plan from being built. What is urgent never does; with --urgent-fails the exit status is 3 while anything is.", checkPlan, "format urgent-fails"},
	{"build", "[FOLDER]", "write the calendars", "Checks, and writes one calendar file for each calendar of the plan. If anything refuses the plan, nothing is written and the last good calendars stay.", build, "out"},
	{"due", "[FOLDER]", "what is due today and in the coming days", "Prints the rounds of today and the coming days. Calendars on phones lag by hours; this never does. While the plan is refused the list is that of the calendars last built, and the exit status is 1.", dueRounds, "days format round keeper"},
	{"note", "[DAY] ENCLOSURE [ANIMALS] WORD … [NOTE]", "append a line to the log", "Checks a line, appends it to records/YEAR.care.log and says what follows from it. Without a day it is today. What was seen can be noted while the plan is refused too. With --undo it appends the line that takes back the last one, or the last one by the keeper named with --by. After -- everything is taken as it stands, so that a note may begin with a hyphen.", note, "at by undo"},
	{"why", "[NAME | ENCLOSURE/CARE]", "why something is as it is", "Explains a rule, a species, a figure, a source, a feeder, a need, a kind of care, a round, an enclosure with its whole proof, or one care and why it is, or is not, on a day. A name that means several things is explained in each. Without a name it lists what can be explained.", why, "on svg"},
}

// has reports whether the command takes a flag.
func (c *command) has(flag string) bool {
	return flag == "in" || flag == "now" || slices.Contains(strings.Fields(c.flags), flag)
}

// flags are the values of all flags of all commands.
type flags struct {
	in, now, format, out, round, keeper, on, svg, at, by, sheet, kind string
	days                                                              int
	undo, urgentFails                                                 bool
}

var flagDocs = []struct{ name, value, doc string }{
	{"in", "FOLDER", "the folder of the collection (default: this folder)"},
	{"now", "MOMENT", "take this for the present: 2027-03-01, or 2027-03-01T08:00"},
	{"format", "FORM", "text or json"},
	{"out", "FOLDER", "where calendars are written (default: feeds, in the collection's folder)"},
	{"days", "N", "how many days (default 3)"},
	{"round", "NAME", "only this round"},
	{"keeper", "NAME", "only what this keeper does"},
	{"on", "DAY", "the day to explain"},
	{"at", "TIME", "the time of day of what is noted: 19:42"},
	{"by", "KEEPER", "who notes it"},
	{"sheet", "NAME", "the species to begin a sheet of: parabuthus-villosus"},
	{"type", "TYPE", "its care type (default: the one that has its genus)"},
	{"undo", "", "take back the last line"},
	{"urgent-fails", "", "exit status 3 while anything is urgent"},
	{"svg", "FILE", "draw the enclosure's year into this file"},
}

func run(args []string, w *world) int {
	if len(args) == 0 || args[0] == "help" || args[0] == "-h" || args[0] == "--help" {
		name := ""
		if len(args) > 1 {
			name = args[1]
		}
		return help(w, name)
	}
	for i := range commands {
		c := &commands[i]
		if c.name != args[0] {
			continue
		}
		f, rest, err := parse(c, args[1:])
		if errors.Is(err, errHelp) {
			return help(w, c.name)
		}
		if err != nil {
			fmt.Fprintf(w.err, "vivary %s: %v\nSee: vivary help %s\n", c.name, err, c.name)
			return usage
		}
		out := bufio.NewWriter(w.out)
		inner := *w
		inner.out = out
		status := c.run(&inner, f, rest)
		if err := out.Flush(); err != nil {
			fmt.Fprintf(w.err, "vivary %s: what is said here could not all be printed: %v\n", c.name, err)
			return refused
		}
		return status
	}
	fmt.Fprintf(w.err, "vivary: there is no command %q.\n", args[0])
	help(&world{out: w.err}, "")
	return usage
}

// errHelp is a flag that asks for help.
var errHelp = errors.New("help is asked for")

// parse reads flags, which may stand before, between and after what else there is.
// What follows "--" is taken as it stands. It is not the standard library's, whose
// flags stand before all else and whose errors cannot be told from each other.
func parse(c *command, args []string) (*flags, []string, error) {
	f := &flags{format: "text"}
	days := "3"
	targets := map[string]*string{"in": &f.in, "now": &f.now, "format": &f.format, "out": &f.out, "days": &days, "round": &f.round, "keeper": &f.keeper, "on": &f.on, "svg": &f.svg, "at": &f.at, "by": &f.by, "sheet": &f.sheet, "type": &f.kind}
	switches := map[string]*bool{"urgent-fails": &f.urgentFails, "undo": &f.undo}
	var rest []string
	for len(args) > 0 {
		arg := args[0]
		args = args[1:]
		if arg == "--" {
			rest = append(rest, args...)
			break
		}
		if len(arg) < 2 || arg[0] != '-' {
			rest = append(rest, arg)
			continue
		}
		name, value, given := strings.Cut(strings.TrimPrefix(arg[1:], "-"), "=")
		if name == "h" || name == "help" {
			return nil, nil, errHelp
		}
		if !c.has(name) {
			return nil, nil, noFlag(c, arg, name)
		}
		if on := switches[name]; on != nil && !given {
			*on = true
			continue
		}
		if switches[name] != nil {
			return nil, nil, fmt.Errorf("--%s stands alone: nothing comes after it", name)
		}
		if !given {
			if len(args) == 0 {
				return nil, nil, fmt.Errorf("nothing stands after --%s", name)
			}
			value, args = args[0], args[1:]
		}
		*targets[name] = value
	}
	if f.format != "text" && f.format != "json" {
		return nil, nil, fmt.Errorf("--format is text or json, not %q", f.format)
	}
	var err error
	if f.days, err = strconv.Atoi(days); err != nil {
		return nil, nil, fmt.Errorf("--days is a number of days, not %q", days)
	}
	return f, rest, nil
}

// noFlag says that a command does not take a flag, and which one may be meant.
func noFlag(c *command, arg, name string) error {
	var known []string
	for _, f := range flagDocs {
		if c.has(f.name) {
			known = append(known, f.name)
		}
	}
	if s := finding.Suggest(name, known); s != "" {
		return fmt.Errorf("%q means nothing here: did you mean --%s?", arg, s)
	}
	return fmt.Errorf("%q means nothing here: %s takes --%s", arg, c.name, strings.Join(known, ", --"))
}

func help(w *world, name string) int {
	for _, c := range commands {
		if c.name != name {
			continue
		}
		fmt.Fprintf(w.out, "vivary %s %s\n\n%s\n\n", c.name, c.args, c.long)
		for _, f := range flagDocs {
			if c.has(f.name) {
				fmt.Fprintf(w.out, "  --%-12s %-8s %s\n", f.name, f.value, f.doc)
			}
		}
		return fine
	}
	fmt.Fprint(w.out, "vivary checks care plans for animals in enclosures and makes calendars of them.\n\n")
	for _, c := range commands {
		fmt.Fprintf(w.out, "  %-8s %s\n", c.name, c.short)
	}
	fmt.Fprint(w.out, "\nMore: vivary help COMMAND\n")
	if name != "" {
		fmt.Fprintf(w.err, "vivary: there is no command %q.\n", name)
		return usage
	}
	return fine
}

// moment returns the present, or what was given in its place. Without a zone of
// its own it is read in loc.
func (w *world) moment(f *flags, loc *time.Location) (time.Time, error) {
	if f.now == "" {
		now := w.clock()
		if now.Year() < 2026 || now.Year() > 9000 {
			return now, fmt.Errorf("the clock of this machine says %s: set it, or say --now and the day", now.Format("2 January 2006"))
		}
		return now, nil
	}
	if loc == nil {
		loc = time.UTC
	}
	for _, form := range []string{"2006-01-02", "2006-01-02T15:04", "2006-01-02 15:04", time.RFC3339} {
		if t, err := time.ParseInLocation(form, f.now, loc); err == nil {
			if t.Year() < 1971 || t.Year() > 9000 {
				return time.Time{}, fmt.Errorf("--now %q is too far from the present", f.now)
			}
			if form == "2006-01-02" {
				t = t.Add(12 * time.Hour)
			}
			return t, nil
		}
	}
	return time.Time{}, fmt.Errorf("--now %q is not a moment: write 2027-03-01 or 2027-03-01T08:00", f.now)
}
