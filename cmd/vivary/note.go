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
	"vivary/schema"
	"vivary/schema/civil"
)

// note appends one line to the log. The line is tried first on a copy of the
// collection that holds it: one that cannot be read, or cannot be so, is not written.
// Whatever else is wrong, with the line or with the plan, what was seen is written.
func note(w *world, f *flags, args []string) int {
	root, _ := w.root(f, nil)
	before, status := w.compiled(f, root, feedsIn(root))
	if status != fine {
		return status
	}
	if before.Plan.About == nil && !hasCollection(w.disk, root) {
		fmt.Fprintf(w.err, "vivary note: no plan in %s or above it has a collection block, so that this would begin a log that nobody reads: go to the folder of the collection, or name it with --in. Nothing was written.\n", filepath.ToSlash(root))
		return refused
	}
	line, taken, err := w.line(f, before, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary note: %v\n", err)
		return usage
	}
	if at, ok := standing(before, line); ok {
		fmt.Fprintf(w.err, "vivary note: %s says that already, and a line that stands twice counts once: two deaths are died 2; if it happened again, say when with --at, or in the note. Nothing was written.\n", at)
		return refused
	}
	year, _, _ := strings.Cut(line, "-")
	path := filepath.Join(root, "records", year+plan.LogSuffix)
	added, after, start, status := w.trial(f, root, path, line)
	if status != fine {
		return status
	}
	bad := about(after, filepath.ToSlash(path), start)
	p := finding.Printer{Files: after.Plan.Files}
	_ = p.Print(w.err, bad)
	if slices.ContainsFunc(bad, slips) {
		fmt.Fprintln(w.err, "\nNothing was written.")
		return refused
	}
	if len(bad) > 0 {
		fmt.Fprintln(w.err)
	}
	if err := appendTo(w.disk, path, added); err != nil {
		fmt.Fprintf(w.err, "vivary note: %v\n", err)
		return refused
	}
	fmt.Fprintf(w.out, "%s: %s\n", filepath.ToSlash(path), line)
	if taken != "" {
		fmt.Fprintln(w.out, "  taken back: "+taken)
	}
	w.follows(before, after, bad, wordOf(after, line))
	return fine
}

// line makes the line that is to be written, and says which it takes back, if any.
func (w *world) line(f *flags, before *compile.Result, args []string) (line, taken string, err error) {
	var head []string
	if f.at != "" {
		if _, err := civil.ParseClock(f.at); err != nil {
			return "", "", err
		}
		head = append(head, f.at)
	}
	if f.by != "" {
		head = append(head, "by", f.by)
	}
	today := before.Today.String()
	if f.undo {
		if len(args) > 0 {
			return "", "", errors.New("with --undo nothing else is written: it takes back the last line")
		}
		words, taken, err := w.undo(before.Plan, f.by)
		return strings.Join(append(append([]string{today}, head...), words), " "), taken, err
	}
	if len(args) < 2 {
		return "", "", errors.New("write an enclosure, the animals where there are several, a word and a note, for example:\n  vivary note burrow-a young moult \"left alone\"")
	}
	day := today
	if _, err := civil.Parse(args[0]); err == nil {
		day, args = args[0], args[1:]
	} else if likeADay.MatchString(args[0]) {
		return "", "", err
	}
	return logLine(slices.Concat([]string{day}, head, args)), "", nil
}

// likeADay is a word that is meant for a day, though it may be none.
var likeADay = regexp.MustCompile(`^\d+[-./]\d+[-./]\d+$`)

// logLine joins the words of a line and puts the note in quotes. A phrase that is a
// word of the log is none: a shell takes the quotes off "gave birth".
func logLine(args []string) string {
	var b strings.Builder
	worded := false
	for i, a := range args {
		if i > 0 {
			b.WriteByte(' ')
		}
		words := strings.Fields(a)
		spelled, n := schema.Spelled(words)
		phrase := i > 1 && spelled != nil && n == len(words) && !worded
		worded = worded || phrase
		if a == "" || !phrase && strings.ContainsAny(a, " \t\"\n\r") {
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

// standing returns where a line stands already, and counts.
func standing(r *compile.Result, line string) (at string, ok bool) {
	for i := range r.Plan.Log {
		if e := &r.Plan.Log[i]; r.Plan.Files.Of(e.At) == line {
			where := r.Plan.Files.Start(e.At)
			return fmt.Sprintf("%s:%d", where.File, where.Line), true
		}
	}
	return "", false
}

// wordOf returns the word of a line of the log, or nil.
func wordOf(r *compile.Result, line string) *schema.LogWord {
	for i := len(r.Plan.Log) - 1; i >= 0; i-- {
		if e := &r.Plan.Log[i]; r.Plan.Files.Of(e.At) == line {
			return e.Word
		}
	}
	return nil
}

// trial compiles the collection as it is with the line. It returns what is to be
// appended and from which byte of the file the line begins.
func (w *world) trial(f *flags, root, path, line string) (added []byte, after *compile.Result, start, status int) {
	fail := func(err error) ([]byte, *compile.Result, int, int) {
		fmt.Fprintf(w.err, "vivary note: %v\n", err)
		return nil, nil, 0, refused
	}
	old, err := afero.ReadFile(w.disk, path)
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		return fail(err)
	}
	if len(old) > 0 && old[len(old)-1] != '\n' {
		added = append(added, '\n')
	}
	start = len(old) + len(added)
	added = append(added, line+"\n"...)
	disk := afero.NewCopyOnWriteFs(w.disk, afero.NewMemMapFs())
	if err := disk.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return fail(err)
	}
	if err := afero.WriteFile(disk, path, slices.Concat(old, added), 0o644); err != nil {
		return fail(err)
	}
	inner := *w
	inner.disk = disk
	after, status = inner.compiled(f, root, feedsIn(root))
	return added, after, start, status
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

// slips reports whether a finding about a line keeps it from being written: it cannot
// be read, or what it says cannot be so.
func slips(f finding.Finding) bool {
	return f.Rule.Slip || f.Rule.Severity.Refuses() && slices.Contains(plan.Rules, f.Rule)
}

// appendTo appends to a file in one write, so that of two that append at once neither
// is lost. What a full disk took of it is taken away again, or half a line would stand
// before the next.
func appendTo(disk afero.Fs, path string, text []byte) error {
	if err := disk.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return err
	}
	file, err := disk.OpenFile(path, os.O_WRONLY|os.O_APPEND|os.O_CREATE, 0o644)
	if err != nil {
		return err
	}
	size := int64(-1)
	if info, e := file.Stat(); e == nil {
		size = info.Size()
	}
	n, err := file.Write(text)
	if err == nil {
		err = file.Sync()
	} else if info, e := file.Stat(); n > 0 && e == nil && info.Size() == size+int64(n) {
		err = errors.Join(err, file.Truncate(size))
	}
	if e := file.Close(); err == nil {
		err = e
	}
	return err
}
