package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/wording"
)

// note appends lines to the log, one for each enclosure that is named. They are tried first
// on a copy of the collection that holds them: where one cannot be read, or cannot be so,
// none is written. Whatever else is wrong, with the lines or with the plan, what was seen is
// written.
func note(w *world, f *flags, args []string) int {
	root, _ := w.root(f, nil)
	release, err := w.alone(root)
	if err != nil {
		fmt.Fprintf(w.err, "vivary note: %v. Nothing was written.\n", wording.Plain(err))
		return refused
	}
	defer release()
	before, status := w.compiled(f, root, f.calendars(root))
	if status != fine {
		return status
	}
	if before.Plan.About == nil && !hasCollection(w.disk, root) {
		fmt.Fprintf(w.err, "vivary note: no plan in %s or above it has a collection block, so that this would begin a log that nobody reads: go to the folder of the collection, or name it with --in. Nothing was written.\n", filepath.ToSlash(root))
		return refused
	}
	n, err := w.noteLines(before.Plan, before.Today, f, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary note: %v\n", wording.Plain(err))
		return usage
	}
	year, _, _ := strings.Cut(n.lines[0], "-")
	path := filepath.Join(root, "records", year+plan.LogSuffix)
	t, status := w.trial(f, root, path, n.lines)
	if status != fine {
		return status
	}
	if again := t.standing(before); len(again) > 0 {
		if len(again) == len(n.lines) {
			fmt.Fprintf(w.err, "vivary note: %s says that already, and a line that stands twice counts once: two deaths are died 2; if it happened again, say when with --at, or in the note. Nothing was written.\n", again[n.lines[0]])
			return refused
		}
		if t, status = w.without(f, root, path, &n, again); status != fine {
			return status
		}
	}
	bad := t.about()
	p := t.after.Printer()
	_ = p.Print(w.err, bad)
	if slices.ContainsFunc(bad, slips) {
		fmt.Fprintln(w.err, "\nNothing was written.")
		return refused
	}
	if len(bad) > 0 {
		fmt.Fprintln(w.err)
	}
	if how := idle(before, t.after, n.word); how != "" && len(bad) == 0 {
		fmt.Fprintf(w.err, "vivary note: %s Nothing was written.\n", how)
		return refused
	}
	if err := appendTo(w.disk, path, t.added); err != nil {
		fmt.Fprintf(w.err, "vivary note: %v. Nothing was written.\n", wording.Plain(err))
		return refused
	}
	w.wrote(path, &n)
	w.follows(before, t.after, bad, n.word)
	return fine
}

// alone waits until nobody else notes in a collection: of two who note the same at the same
// moment the second is to see that it stands already. Where no lock can be made, on some
// disks of others, it goes on: a line that stands twice counts once.
func (w *world) alone(root string) (release func(), err error) {
	nothing := func() {}
	if w.lock == nil {
		return nothing, nil
	}
	if there, err := afero.DirExists(w.disk, root); err != nil || !there {
		return nothing, nil // it is said in a moment
	}
	release, err = w.lock(root)
	if errors.Is(err, errors.ErrUnsupported) || errors.Is(err, os.ErrPermission) {
		return nothing, nil
	}
	return release, err
}

// wrote says what was written, and how it is taken back where that was more than a line.
func (w *world) wrote(path string, n *noted) {
	path = filepath.ToSlash(path)
	if len(n.taken) > 0 || len(n.lines) == 1 {
		for i, line := range n.lines {
			fmt.Fprintf(w.out, "%s: %s\n", path, line)
			if i < len(n.taken) {
				fmt.Fprintln(w.out, "  taken back: "+n.taken[i])
			}
		}
		return
	}
	fmt.Fprintf(w.out, "%s: %s\n  and the same of %s\n", path, n.lines[0], strings.Join(n.of[1:], ", "))
	fmt.Fprintf(w.out, "  To take all of it back: vivary note --undo %s\n", strings.Join(n.of, ","))
}

// trial is the collection as it is with some lines.
type trial struct {
	lines []string
	added []byte // what is to be appended to the log
	after *compile.Result
	path  string // of the log, as findings name it
	start int    // the byte of the log with which the lines begin
}

// trial compiles the collection as it is with some lines.
func (w *world) trial(f *flags, root, path string, lines []string) (*trial, int) {
	fail := func(err error) (*trial, int) {
		fmt.Fprintf(w.err, "vivary note: %v\n", wording.Plain(err))
		return nil, refused
	}
	old, err := afero.ReadFile(w.disk, path)
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		return fail(err)
	}
	t := &trial{lines: lines, path: filepath.ToSlash(path)}
	if len(old) > 0 && old[len(old)-1] != '\n' {
		t.added = append(t.added, '\n') // the last line was torn, or its end is missing
	}
	t.start = len(old) + len(t.added)
	t.added = append(t.added, strings.Join(lines, "\n")+"\n"...)
	disk := afero.NewCopyOnWriteFs(w.disk, afero.NewMemMapFs())
	if err := disk.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return fail(err)
	}
	if err := afero.WriteFile(disk, path, slices.Concat(old, t.added), 0o644); err != nil {
		return fail(err)
	}
	inner := *w
	inner.disk = disk
	status := fine
	t.after, status = inner.compiled(f, root, f.calendars(root))
	return t, status
}

// without tries again without the lines that stand already, and says which those are.
func (w *world) without(f *flags, root, path string, n *noted, again map[string]string) (*trial, int) {
	var lines, of []string
	for i, line := range n.lines {
		if at := again[line]; at != "" {
			fmt.Fprintf(w.err, "%s says that of %s already: it is left out.\n", at, n.of[i])
			continue
		}
		lines, of = append(lines, line), append(of, n.of[i])
	}
	n.lines, n.of = lines, of
	return w.trial(f, root, path, lines)
}

// standing returns, by the new lines that say what stands already, where that is: in the same
// words, or in others without a note or a time of their own.
func (t *trial) standing(before *compile.Result) map[string]string {
	out := map[string]string{}
	at := func(e *plan.Event, files *compile.Result) string {
		where := files.Plan.Files.Start(e.At)
		return fmt.Sprintf("%s:%d", where.File, where.Line)
	}
	for i := range before.Plan.Log {
		e := &before.Plan.Log[i]
		if line := before.Plan.Files.Of(e.At); slices.Contains(t.lines, line) {
			out[line] = at(e, before)
		}
	}
	log := t.after.Plan.Log
	for i := range log {
		e := &log[i]
		if !t.is(e) {
			continue
		}
		for k := range log {
			if o := &log[k]; o.Date == e.Date && !t.is(o) && repeats(e, o) {
				out[t.after.Plan.Files.Of(e.At)] = at(o, t.after)
			}
		}
	}
	return out
}

// is reports whether a line is one of the new ones.
func (t *trial) is(e *plan.Event) bool {
	return int(e.At.Start) >= t.start && t.after.Plan.Files.Name(e.At.File) == t.path
}

// repeats reports whether a line says of a day no more than another does.
func repeats(e, o *plan.Event) bool {
	args := func(a, b plan.Written[string]) bool { return strings.EqualFold(a.V, b.V) }
	return e.Word != schema.WordRemark && e.Word == o.Word && e.Enclosure.V == o.Enclosure.V && e.Keeper.V == o.Keeper.V && e.Group.V == o.Group.V &&
		e.Number.V == o.Number.V && slices.EqualFunc(e.Args, o.Args, args) &&
		(e.Note == "" || e.Note == o.Note) && (!e.Clock.Set() || e.Clock.V == o.Clock.V && o.Clock.Set())
}

// about returns the findings about the new lines, or about the file as a whole, which one
// line can make unreadable.
func (t *trial) about() []finding.Finding {
	var out []finding.Finding
	for _, f := range t.after.Findings {
		if f.At.Written() && (int(f.At.Start) >= t.start || f.At.End == 0) && t.after.Plan.Files.Name(f.At.File) == t.path {
			out = append(out, f)
		}
	}
	return out
}

// slips reports whether a finding about a line keeps it from being written: it cannot
// be read, or what it says cannot be so.
func slips(f finding.Finding) bool {
	return f.Rule.Slip || f.Rule.Severity.Refuses() && slices.Contains(plan.Rules, f.Rule)
}
