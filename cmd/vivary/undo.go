package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"time"

	"vivary/plan"
)

// undo makes the lines that take back the last line of the log, or the last about each of
// some enclosures, or the last by a keeper; begin is what stands before the enclosure. Lines
// are appended, so that the last of a file was written last; of several files it is the one
// that was changed last.
func (w *world) undo(c *plan.Collection, begin, by string, args []string) (out noted, err error) {
	of := who{names: []string{""}}
	if len(args) > 0 {
		var rest []string
		if of, rest, err = takeWho(c, args); err != nil {
			return out, err
		}
		if len(rest) > 0 {
			return out, errors.New("with --undo nothing stands but enclosures: it takes back the last line, or the last about each of them")
		}
	}
	logs := w.logsByAge(c)
	for _, name := range of.names {
		line := ""
		for _, text := range logs {
			if line = lastLine(text, by, name); line != "" {
				break
			}
		}
		if line == "" {
			return out, fmt.Errorf("there is no line%s%s to take back", behindWord(" about ", name), behindWord(" by ", by))
		}
		words, err := c.Withdrawal(line)
		if err != nil {
			return out, fmt.Errorf("the last line cannot be taken back: %w; correct it in the file: %s", err, line)
		}
		out.of = append(out.of, name)
		out.lines, out.taken = append(out.lines, begin+" "+words), append(out.taken, line)
	}
	return out, nil
}

func behindWord(word, name string) string {
	if name == "" {
		return ""
	}
	return word + name
}

// logsByAge returns the texts of the logs, the one that was changed last first.
func (w *world) logsByAge(c *plan.Collection) (texts []string) {
	type log struct {
		text string
		when time.Time
	}
	var all []log
	for _, id := range c.Files.Files() {
		name := c.Files.Name(id)
		if !strings.HasSuffix(name, plan.LogSuffix) {
			continue
		}
		if info, err := w.disk.Stat(name); err == nil {
			all = append(all, log{string(c.Files.Text(id)), info.ModTime()})
		}
	}
	slices.Reverse(all) // of two of one time the later name
	slices.SortStableFunc(all, func(a, b log) int { return b.when.Compare(a.when) })
	for _, x := range all {
		texts = append(texts, x.text)
	}
	return texts
}

// lastLine returns the last line that says something: of a keeper and about an enclosure,
// where they are named.
func lastLine(text, by, of string) string {
	lines := strings.Split(text, "\n")
	for i := len(lines) - 1; i >= 0; i-- {
		line := strings.TrimRight(lines[i], "\r")
		if plan.Blank(line) {
			continue
		}
		if by == "" && of == "" {
			return line
		}
		if e, _ := plan.ParseLogLine(1, line); (by == "" || e.By.V == by) && (of == "" || e.Enclosure.V == of) {
			return line
		}
	}
	return ""
}
