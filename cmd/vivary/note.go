package main

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"vivary/cmd/internal/journal"
	"vivary/schema/wording"
)

// note appends lines to the log, one for each enclosure that is named. They are tried first
// on a copy of the collection that holds them: where one cannot be read, or cannot be so,
// none is written. Whatever else is wrong, with the lines or with the plan, what was seen is
// written.
func note(w *world, f *flags, args []string) int {
	root, _ := w.root(f, nil)
	held, err := w.journal(f, root).Hold()
	if err != nil {
		return w.unheld(err)
	}
	defer held.Release()
	before := held.Now
	if before.Plan.About == nil && !hasCollection(w.disk, root) {
		fmt.Fprintf(w.err, "vivary note: no plan in %s or above it has a collection block, so that this would begin a log that nobody reads: go to the folder of the collection, or name it with --in. Nothing was written.\n", filepath.ToSlash(root))
		return refused
	}
	n, err := w.noteLines(before.Plan, before.Today, f, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary note: %v\n", wording.Plain(err))
		return usage
	}
	out, err := held.Write(journal.LogName(n.day, ""), n.lines)
	if err != nil {
		fmt.Fprintf(w.err, "vivary note: %v. Nothing was written.\n", wording.Plain(err))
		return refused
	}
	if !w.written(&n, &out) {
		return refused
	}
	w.wrote(&n, &out)
	w.follows(before, out.With, out.Findings, n.word)
	return fine
}

// journal is the logs of a collection.
func (w *world) journal(f *flags, root string) *journal.Journal {
	return &journal.Journal{Disk: w.disk, Root: root, Lock: w.lock, Compile: w.builder(f, root).Compile}
}

// unheld says why the log cannot be written at all, and returns the exit status.
func (w *world) unheld(err error) int {
	var unread *journal.Unread
	if errors.As(err, &unread) {
		fmt.Fprintf(w.err, "vivary: %v\n", wording.Plain(unread.Err))
		return usage
	}
	fmt.Fprintf(w.err, "vivary note: %v. Nothing was written.\n", wording.Plain(err))
	return refused
}

// written says what is wrong with lines, and which stood already, and reports whether the
// others were written.
func (w *world) written(n *noted, out *journal.Outcome) bool {
	if len(out.Already) > 0 && out.With == nil {
		fmt.Fprintf(w.err, "vivary note: %s says that already, and a line that stands twice counts once: two deaths are died 2; if it happened again, say when with --at, or in the note. Nothing was written.\n", out.Already[n.lines[0]])
		return false
	}
	n.leaveOut(out.Already, func(at, of string) { fmt.Fprintf(w.err, "%s says that of %s already: it is left out.\n", at, of) })
	_ = out.With.Printer().Print(w.err, out.Findings)
	if out.Slips {
		fmt.Fprintln(w.err, "\nNothing was written.")
		return false
	}
	if len(out.Findings) > 0 {
		fmt.Fprintln(w.err)
	}
	if out.Idle != nil {
		fmt.Fprintf(w.err, "vivary note: this changes nothing: nothing was held, asked or begun there that %[1]s would end or begin. See vivary due for how it stands; is it another enclosure, or other animals? What was seen all the same is a remark: remark \"%[1]s\". Nothing was written.\n", out.Idle.Name)
		return false
	}
	return true
}

// leaveOut leaves out the lines that stood already, and says of each where, and of whom it is.
func (n *noted) leaveOut(already map[string]string, say func(at, of string)) {
	all := *n
	n.lines, n.of, n.taken = nil, nil, nil
	for i, line := range all.lines {
		if at := already[line]; at != "" {
			say(at, all.of[i])
			continue
		}
		n.lines = append(n.lines, line)
		if i < len(all.of) { // a line about a keeper is of no enclosure
			n.of = append(n.of, all.of[i])
		}
		if i < len(all.taken) {
			n.taken = append(n.taken, all.taken[i])
		}
	}
}

// wrote says what was written, and how it is taken back where that was more than a line.
func (w *world) wrote(n *noted, out *journal.Outcome) {
	if len(n.taken) > 0 || len(n.lines) == 1 {
		for i, line := range n.lines {
			fmt.Fprintf(w.out, "%s: %s\n", out.Path, line)
			if i < len(n.taken) {
				fmt.Fprintln(w.out, "  taken back: "+n.taken[i])
			}
		}
		return
	}
	fmt.Fprintf(w.out, "%s: %s\n  and the same of %s\n", out.Path, n.lines[0], strings.Join(n.of[1:], ", "))
	fmt.Fprintf(w.out, "  To take all of it back: vivary note --undo %s\n", strings.Join(n.of, ","))
}
