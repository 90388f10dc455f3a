package journal

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
)

// Outcome is what came of lines that were to be written. Those that stood already are left
// out; of the others all were written or none: none where one of them Slips, or all are Idle.
type Outcome struct {
	Path    string   // of the log, with slashes
	Written []string // in order
	// Already is where a line stood, as file:line, by the line.
	Already map[string]string
	// Findings are what is wrong with the lines that did not stand, and places in With.
	Findings []finding.Finding
	// Slips says that one of them cannot be read, or cannot be so.
	Slips bool
	// Idle is the word of lines that end or begin something, and do neither: they are most
	// often about the wrong enclosure. It is nil for all others.
	Idle *schema.LogWord
	// With is the collection with the lines that did not stand: as it is now if they were
	// written, else as it would be. It is nil if all stood.
	With *compile.Result
}

// Write appends lines to a log, such as LogName(day, ""), unless they stand already. After an
// error nothing was written.
func (h *Held) Write(name string, lines []string) (Outcome, error) {
	path := h.journal.path(name)
	out := Outcome{Path: filepath.ToSlash(path), Already: map[string]string{}}
	lines, err := once(lines)
	if err != nil || len(lines) == 0 {
		return out, err
	}
	t, err := h.try(path, lines)
	if err != nil {
		return out, err
	}
	if out.Already = t.standing(h); len(out.Already) > 0 {
		lines = slices.DeleteFunc(lines, func(line string) bool { return out.Already[line] != "" })
		if len(lines) == 0 {
			return out, nil
		}
		if t, err = h.try(path, lines); err != nil {
			return out, err
		}
	}
	out.With, out.Findings = t.after, t.about()
	if out.Slips = slices.ContainsFunc(out.Findings, slips); out.Slips {
		return out, nil
	}
	if len(out.Findings) == 0 {
		if out.Idle = idle(h.Now, t.after, t.words()); out.Idle != nil {
			return out, nil
		}
	}
	if err := appendTo(h.journal.Disk, path, t.added); err != nil {
		return out, err
	}
	out.Written, h.Now = lines, t.after
	return out, nil
}

// once leaves out lines that are there twice. An end of a line within one is refused: what
// stands behind it would be a line that nobody meant to write.
func once(lines []string) (out []string, err error) {
	for _, line := range lines {
		if strings.ContainsAny(line, "\n\r") {
			return nil, fmt.Errorf("a line of the log is one line, and this is more than one: %q", line)
		}
		if !slices.Contains(out, line) {
			out = append(out, line)
		}
	}
	return out, nil
}

// trial is the collection as it is with some lines.
type trial struct {
	lines []string
	added []byte // what is to be appended to the log
	after *compile.Result
	path  string // of the log, as findings name it
	start int    // the byte of the log with which the lines begin
}

// try compiles the collection as it is with some lines.
func (h *Held) try(path string, lines []string) (*trial, error) {
	old, err := afero.ReadFile(h.journal.Disk, path)
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		return nil, err
	}
	t := &trial{lines: lines, path: filepath.ToSlash(path)}
	if len(old) > 0 && old[len(old)-1] != '\n' {
		t.added = append(t.added, '\n') // the last line was torn, or its end is missing
	}
	t.start = len(old) + len(t.added)
	t.added = append(t.added, strings.Join(lines, "\n")+"\n"...)
	disk := afero.NewCopyOnWriteFs(h.journal.Disk, afero.NewMemMapFs())
	if err := disk.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return nil, err
	}
	if err := afero.WriteFile(disk, path, slices.Concat(old, t.added), 0o644); err != nil {
		return nil, err
	}
	t.after, err = h.journal.Compile(disk)
	return t, err
}

// is reports whether a line is one of the new ones.
func (t *trial) is(e *plan.Event) bool {
	return int(e.At.Start) >= t.start && t.after.Plan.Files.Name(e.At.File) == t.path
}

// words are those of the log in the new lines.
func (t *trial) words() (all []*schema.LogWord) {
	for i := range t.after.Plan.Log {
		if e := &t.after.Plan.Log[i]; t.is(e) {
			all = append(all, e.Word)
		}
	}
	return all
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
