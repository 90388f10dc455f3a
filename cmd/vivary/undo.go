package main

import (
	"errors"
	"fmt"
	"strings"
	"time"

	"vivary/plan"
	"vivary/plan/source"
)

// undo returns the words that take back the last line of the log, or the last by a
// keeper, and that line. Lines are appended, so that the last of a file was written last; of several
// files it is the one that was changed last.
func (w *world) undo(c *plan.Collection, by string) (words, line string, err error) {
	var newest time.Time
	for id := source.ID(1); c.Files.Name(id) != ""; id++ {
		name := c.Files.Name(id)
		if !strings.HasSuffix(name, plan.LogSuffix) {
			continue
		}
		last := lastLine(string(c.Files.Text(id)), by)
		info, err := w.disk.Stat(name)
		if last != "" && err == nil && !info.ModTime().Before(newest) {
			line, newest = last, info.ModTime()
		}
	}
	switch {
	case line == "" && by != "":
		return "", "", fmt.Errorf("there is no line by %s to take back", by)
	case line == "":
		return "", "", errors.New("there is no line to take back")
	}
	if words, err = c.Withdrawal(line); err != nil {
		return "", "", fmt.Errorf("the last line cannot be taken back: %w; correct it in the file: %s", err, line)
	}
	return words, line, nil
}

// lastLine returns the last line that says something, of a keeper where one is named.
func lastLine(text, by string) string {
	lines := strings.Split(text, "\n")
	for i := len(lines) - 1; i >= 0; i-- {
		line := strings.TrimRight(lines[i], "\r")
		if plan.Blank(line) {
			continue
		}
		if by == "" {
			return line
		}
		if e, _ := plan.ParseLogLine(1, line); e.By.V == by {
			return line
		}
	}
	return ""
}
