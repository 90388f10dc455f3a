package finding

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"vivary/plan/source"
)

// Edit is a change of a text: what stands at At gives way to Text. Where At is empty,
// Text is put in there.
type Edit struct {
	At   source.Place
	Text string
}

// Instead returns the edit that writes another word for one that was read at a place.
// Quotes around it stay as they are. Where the place holds something else than the
// word, such as an escape that stands for a letter, there is no edit.
func Instead(at source.Place, word, better string) []Edit {
	switch int(at.End-at.Start) - len(word) {
	case 0:
	case 2:
		at.Start, at.End = at.Start+1, at.End-1
	default:
		return nil
	}
	if !at.Written() {
		return nil
	}
	return []Edit{{at, better}}
}

// Text returns the edit that writes a text in quotes for the value at a place, and Plain
// that which writes a number or a truth. There is none where the place is in no file of the
// collection.
func Text(at source.Place, better string) []Edit { return Plain(at, strconv.Quote(better)) }

// Plain is Text for a value without quotes.
func Plain(at source.Place, better string) []Edit {
	if at.File <= 0 { // the built-in sheets lie below zero
		return nil
	}
	return []Edit{{at, better}}
}

// Apply returns a text as it is once the edits are made. All of them belong to that
// text, and no two change the same part of it.
func Apply(text []byte, edits []Edit) ([]byte, error) {
	sorted := inOrder(edits)
	var out []byte
	done := int32(0)
	for _, e := range sorted {
		switch {
		case e.At.File != sorted[0].At.File:
			return nil, errors.New("the edits are of more than one file")
		case e.At.Start > e.At.End || e.At.Start < 0 || int(e.At.End) > len(text):
			return nil, fmt.Errorf("bytes %d to %d are not in a text of %d", e.At.Start, e.At.End, len(text))
		case e.At.Start < done:
			return nil, fmt.Errorf("two edits change what stands at byte %d", e.At.Start)
		}
		out = append(out, text[done:e.At.Start]...)
		out = append(out, e.Text...)
		done = e.At.End
	}
	return append(out, text[done:]...), nil
}

func inOrder(edits []Edit) []Edit {
	return slices.SortedStableFunc(slices.Values(edits), func(a, b Edit) int {
		return cmp.Or(cmp.Compare(a.At.File, b.At.File), cmp.Compare(a.At.Start, b.At.Start), cmp.Compare(a.At.End, b.At.End))
	})
}

// edited returns the lines that edits change as they are once the edits are made,
// without what indents them. It returns none where the edits cannot be made, or where
// a line would be longer than width bytes: a part of it would not be what to write.
func edited(files *source.Set, edits []Edit, width int) []string {
	var all []string
	for left := inOrder(edits); len(left) > 0; {
		text := files.Text(left[0].At.File)
		start, end := wholeLines(text, left[0].At)
		n := 1
		for n < len(left) && left[n].At.File == left[0].At.File && left[n].At.Start <= end {
			_, end = wholeLines(text, left[n].At)
			n++
		}
		changed, err := Apply(text[start:end], moved(left[:n], start))
		if err != nil {
			return nil
		}
		for line := range strings.Lines(string(changed)) {
			if len(line) > width {
				return nil
			}
			if line = strings.TrimSpace(line); line != "" {
				all = append(all, line)
			}
		}
		left = left[n:]
	}
	return all
}

// wholeLines returns from where to where the lines reach in which a place is.
func wholeLines(text []byte, at source.Place) (start, end int32) {
	from, to := min(int(at.Start), len(text)), min(int(at.End), len(text))
	start = int32(bytes.LastIndexByte(text[:from], '\n') + 1)
	if i := bytes.IndexByte(text[to:], '\n'); i >= 0 {
		return start, int32(to + i)
	}
	return start, int32(len(text))
}

// moved returns edits of a text as edits of what of it begins at start.
func moved(edits []Edit, start int32) []Edit {
	out := slices.Clone(edits)
	for i := range out {
		out[i].At.Start -= start
		out[i].At.End -= start
	}
	return out
}
