package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// note appends one line to the log. The line is tried first on a copy of the
// collection that holds it, so that whatever refuses a line in a file refuses it
// here, before it is written.
func note(w *world, f *flags, args []string) int {
	root, _ := folder(f, nil)
	if len(args) < 2 {
		fmt.Fprintln(w.err, "vivary note: write an enclosure, the animals where there are several, a word and a note, for example:\n  vivary note burrow-a young moult \"left alone\"")
		return usage
	}
	before, status := w.compiled(f, root, feedsIn(root))
	if status != fine {
		return status
	}
	if _, err := civil.Parse(args[0]); err != nil {
		if likeADay.MatchString(args[0]) {
			fmt.Fprintf(w.err, "vivary note: %v\n", err)
			return usage
		}
		args = append([]string{before.Today.String()}, args...)
	}
	line := logLine(args)
	for i := range before.Plan.Log {
		if at := before.Plan.Log[i].At; before.Plan.Files.Of(at) == line {
			where := before.Plan.Files.Start(at)
			fmt.Fprintf(w.err, "vivary note: %s:%d says that already, and a line that stands twice counts once: if it happened again, say so in the note. Nothing was written.\n", where.File, where.Line)
			return refused
		}
	}
	year, _, _ := strings.Cut(args[0], "-")
	path := filepath.Join(root, "records", year+plan.LogSuffix)

	old, err := afero.ReadFile(w.disk, path)
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		fmt.Fprintf(w.err, "vivary note: %v\n", err)
		return refused
	}
	text := old
	if len(text) > 0 && text[len(text)-1] != '\n' {
		text = append(text, '\n')
	}
	start := len(text)
	text = append(text, line+"\n"...)

	trial := afero.NewCopyOnWriteFs(w.disk, afero.NewMemMapFs())
	if err := trial.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		fmt.Fprintf(w.err, "vivary note: %v\n", err)
		return refused
	}
	if err := afero.WriteFile(trial, path, text, 0o644); err != nil {
		fmt.Fprintf(w.err, "vivary note: %v\n", err)
		return refused
	}
	inner := *w
	inner.disk = trial
	after, status := inner.compiled(f, root, feedsIn(root))
	if status != fine {
		return status
	}
	if bad := about(after, filepath.ToSlash(path), start); len(bad) > 0 {
		p := finding.Printer{Files: after.Plan.Files, Color: w.color && w.live}
		_ = p.Print(w.err, bad)
		if slices.ContainsFunc(bad, wrong) {
			fmt.Fprintln(w.err, "\nNothing was written.")
			return refused
		}
		fmt.Fprintln(w.err)
	}
	if err := appendTo(w.disk, path, text[len(old):]); err != nil {
		fmt.Fprintf(w.err, "vivary note: %v\n", err)
		return refused
	}
	fmt.Fprintf(w.out, "%s: %s\n", filepath.ToSlash(path), line)
	follows(w, before, after)
	return fine
}

// likeADay is a word that is meant for a day, though it may be none.
var likeADay = regexp.MustCompile(`^\d+[-./]\d+[-./]\d+$`)

// logLine joins the words of a line and puts the note in quotes.
func logLine(args []string) string {
	var b strings.Builder
	for i, a := range args {
		if i > 0 {
			b.WriteByte(' ')
		}
		if a == "" || strings.ContainsAny(a, " \t\"\n\r") {
			a = strings.Map(func(r rune) rune {
				if r < ' ' {
					return ' '
				}
				return r
			}, a)
			a = "\"" + strings.ReplaceAll(a, "\"", "\\\"") + "\""
		}
		b.WriteString(a)
	}
	return b.String()
}

// about returns the findings about the new line, or about the file as a whole,
// which one line can make unreadable.
func about(r *compile.Result, path string, start int) []finding.Finding {
	var out []finding.Finding
	for _, f := range r.Findings {
		if f.At.Written() && (int(f.At.Start) >= start || f.At.End == 0) && r.Plan.Files.Name(f.At.File) == path {
			out = append(out, f)
		}
	}
	return out
}

// wrong reports whether a finding about a new line keeps it from being written. In the
// log it would refuse nothing; here whoever writes it can still put it right.
func wrong(f finding.Finding) bool { return f.Rule.Slip || f.Rule.Severity.Refuses() }

func appendTo(disk afero.Fs, path string, text []byte) error {
	if err := disk.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return err
	}
	file, err := disk.OpenFile(path, os.O_WRONLY|os.O_APPEND|os.O_CREATE, 0o644)
	if err != nil {
		return err
	}
	_, err = file.Write(text)
	if e := file.Close(); err == nil {
		err = e
	}
	return err
}

// follows says what the line changed: the holds that are new.
func follows(w *world, before, after *compile.Result) {
	was := map[string]bool{}
	each := func(r *compile.Result, use func(string)) {
		for _, l := range r.Lives {
			for _, g := range l.Groups {
				for _, h := range g.Holds {
					use(l.Plan.Shown() + " " + g.Animals.Name.V + ": held, " + h.Why + "; " + h.End)
				}
				for _, x := range g.Windows {
					use(l.Plan.Shown() + " " + g.Animals.Name.V + ": " + x.Title + ", " + wording.Dates(x.From, x.Until-1))
				}
			}
		}
	}
	each(before, func(s string) { was[s] = true })
	each(after, func(s string) {
		if !was[s] {
			fmt.Fprintln(w.out, "  "+s)
		}
	})
}
