// Command vivary checks care plans and makes calendars of them.
//
// This package reads flags and prints; what it prints is worked out elsewhere.
package main

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"runtime/debug"
	"strings"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
	"vivary/cmd/internal/screen"
	"vivary/schema/wording"
)

// The exit status says how a command ended.
const (
	fine     = 0
	refused  = 1 // findings refuse the plan, or something could not be written
	usage    = 2 // the command was not understood
	pressing = 3 // something is urgent, where that was asked for
)

func main() { os.Exit(program()) }

// program is the whole of the program, as a process; it returns the exit status.
func program() int {
	if os.Getenv("GOMEMLIMIT") == "" {
		// As long as there is room for it what is no longer needed may stay; a large
		// collection does not take all memory.
		debug.SetMemoryLimit(1 << 30)
	}
	if os.Getenv("GOGC") == "" {
		// Half of what a large plan needs lives as long as the program: collecting somewhat
		// earlier costs no time that could be measured (testdata/bench/plain.txt).
		debug.SetGCPercent(50)
		if len(os.Args) > 1 && os.Args[1] == hidden {
			debug.SetGCPercent(-1) // somebody waits for the name that they type; the limit holds
		}
	}
	return run(os.Args[1:], &world{
		disk: afero.NewOsFs(), in: os.Stdin, out: os.Stdout, err: os.Stderr, clock: time.Now,
		color: terminal(os.Stdout) && os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb",
		live:  terminal(os.Stderr),
		env:   os.Getenv, revisions: true,
		lock: publish.Waiting(patience, time.Now, func(who string) {
			fmt.Fprintf(screen.New(os.Stderr, false), "Another vivary is at work in that folder (%s): waiting for it.\n", who)
		}),
	})
}

// world is everything that a command has to do with outside the program.
type world struct {
	disk      afero.Fs
	in        io.Reader // nil for nothing
	out, err  io.Writer
	raw       io.Writer // standard output as it is, for a program that reads it; set by run
	clock     func() time.Time
	color     bool // standard output shows colours
	live      bool // standard error is a terminal
	lock      publish.Lock
	env       func(string) string // the environment; nil for none
	revisions bool                // git may be asked who wrote a line
	until     context.Context     // that ends what goes on for ever; nil for none

	flush func() // what was printed is to be seen now
}

// context ends what goes on for ever.
func (w *world) context() context.Context {
	if w.until == nil {
		return context.Background()
	}
	return w.until
}

// patience is how long a build waits for another.
const patience = 2 * time.Minute

func terminal(f *os.File) bool {
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}

// run carries out what the words of a command line say, and returns the exit status. All
// that is printed goes over a screen, so that nothing of what was read steers a terminal.
func run(args []string, outside *world) int {
	w := *outside
	w.raw = outside.out
	out := bufio.NewWriter(outside.out)
	w.out, w.err = screen.New(out, w.color), screen.New(outside.err, w.color && w.live)
	w.flush = func() { _ = out.Flush() } // the last time it is looked at
	status := w.obey(args)
	if err := out.Flush(); err != nil {
		fmt.Fprintf(w.err, "vivary: what is said here could not all be printed: %v\n", wording.Plain(err))
		return refused
	}
	return status
}

// obey finds the command and its flags, and runs it.
func (w *world) obey(args []string) int {
	if len(args) > 0 && args[0] == hidden {
		return complete(w, args[1:])
	}
	line, err := parse(args)
	c := line.command
	switch {
	case line.version:
		return version(w, line.flags, nil)
	case line.help && line.word != "":
		return help(w, nil, []string{line.word})
	case line.help, len(args) == 0:
		return help(w, nil, nil)
	case c == nil && line.word != "":
		return w.noCommand(line.word)
	case err != nil:
		return w.unclear(c, err)
	case c == nil:
		return w.unclear(nil, errors.New("there are flags here and no command"))
	}
	return c.run(w, line.flags, line.rest)
}

// unclear says what of a command line is not understood.
func (w *world) unclear(c *command, err error) int {
	name, stop := "", "."
	if c != nil {
		name = " " + c.name
	}
	if strings.HasSuffix(err.Error(), "?") {
		stop = ""
	}
	fmt.Fprintf(w.err, "vivary%s: %v%s\nSee: vivary help%s\n", name, wording.Plain(err), stop, name)
	return usage
}

// noCommand says that a word is no command, and which is likely meant.
func (w *world) noCommand(word string) int {
	if c := nearCommand(word); c != nil {
		fmt.Fprintf(w.err, "vivary: there is no command %q: did you mean vivary %s, to %s?\nAll commands: vivary help\n", word, c.name, c.short)
		return usage
	}
	if info, err := w.disk.Stat(word); err == nil && info.IsDir() {
		fmt.Fprintf(w.err, "vivary: %q is a folder: say what to do with it, such as vivary check %s\nAll commands: vivary help\n", word, quoted(word))
		return usage
	}
	fmt.Fprintf(w.err, "vivary: there is no command %q.\n\n", word)
	listCommands(w.err)
	return usage
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
