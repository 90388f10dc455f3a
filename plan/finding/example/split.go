package example

import "strings"

// Lines are some of the lines of a text.
type Lines struct {
	Text string
	of   []int // where each of them is in the text, from 1
}

// Line returns the line of the whole text that is the nth of these, or 0 where
// there is none.
func (l Lines) Line(n int) int {
	if n < 1 || n > len(l.of) {
		return 0
	}
	return l.of[n-1]
}

// Split keeps the lines of a plan and those of a log apart. The latter begin with a
// day, with which no line of a plan begins.
func Split(text string) (plan, log Lines) {
	n := 0
	for line := range strings.Lines(text) {
		n++
		to := &plan
		if line[0] >= '0' && line[0] <= '9' {
			to = &log
		}
		to.Text += line
		to.of = append(to.of, n)
	}
	return plan, log
}
