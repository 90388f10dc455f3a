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

// Items returns the edit that writes other things, in quotes, for those of a list from the
// first to the last. Where these do not stand in square brackets, there is none.
func Items(text []byte, first, last source.Place, better []string) []Edit {
	if first.File <= 0 || last.File != first.File || int(last.End) > len(text) {
		return nil
	}
	before, after := bytes.TrimRight(text[:first.Start], " \t\r\n"), bytes.TrimLeft(text[last.End:], ", \t\r\n")
	if !bytes.HasSuffix(before, []byte{'['}) || !bytes.HasPrefix(after, []byte{']'}) {
		return nil
	}
	var quoted []string
	for _, s := range better {
		quoted = append(quoted, strconv.Quote(s))
	}
	first.End = last.End
	return []Edit{{first, strings.Join(quoted, ", ")}}
}

// Without returns the edit that takes a block out, with what indents it and the end of its
// line where nothing else stands there.
func Without(text []byte, whole source.Place) []Edit {
	if whole.File <= 0 || int(whole.End) > len(text) {
		return nil
	}
	start, end := wholeLines(text, whole)
	if strings.TrimSpace(string(text[start:whole.Start])+string(text[whole.End:end])) == "" {
		whole.Start, whole.End = start, min(end+1, int32(len(text)))
	}
	return []Edit{{At: whole}}
}

// Inside returns the edit that puts a line into a block of a text, as its first. head is the
// first line of the block without its brace, and whole is all of the block.
func Inside(text []byte, head, whole source.Place, line string) []Edit {
	if head.File <= 0 || int(whole.End) > len(text) {
		return nil
	}
	open := bytes.IndexByte(text[head.End:whole.End], '{')
	if open < 0 {
		return nil
	}
	from := int(head.End) + open + 1
	start := bytes.LastIndexByte(text[:head.Start], '\n') + 1
	indent := string(text[start:head.Start])
	if strings.TrimSpace(indent) != "" {
		return nil // something stands before it on its line
	}
	end := bytes.IndexByte(text[from:whole.End], '\n')
	if end < 0 { // all of it stands on one line
		inner := string(text[from : whole.End-1])
		if inner = strings.TrimSpace(inner); inner != "" {
			inner = indent + "  " + inner + "\n"
		}
		at := source.Place{File: head.File, Start: int32(from), End: whole.End - 1}
		return []Edit{{at, "\n" + indent + "  " + line + "\n" + inner + indent}}
	}
	end += from
	eol := "\n"
	if text[end-1] == '\r' {
		end, eol = end-1, "\r\n"
	}
	at := source.Place{File: head.File, Start: int32(end), End: int32(end)}
	return []Edit{{at, eol + indent + "  " + line}}
}

// Apply returns a text as it is once the edits are made. All of them belong to that
// text, and no two change the same part of it; one that is there twice is made once.
func Apply(text []byte, edits []Edit) ([]byte, error) {
	sorted := InOrder(edits)
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

// InOrder returns edits in the order in which they are made: by file and place, those of one
// place as they were given. One that is there twice is left out.
func InOrder(edits []Edit) []Edit {
	return slices.Compact(slices.SortedStableFunc(slices.Values(edits), func(a, b Edit) int {
		return cmp.Or(cmp.Compare(a.At.File, b.At.File), cmp.Compare(a.At.Start, b.At.Start), cmp.Compare(a.At.End, b.At.End))
	}))
}

// Edited returns the lines to write that edits make; none where they cannot be made, or are
// too long to be copied from a page.
func Edited(files *source.Set, edits []Edit) []string { return edited(files, edits, width) }

// edited returns the lines that edits change as they are once the edits are made,
// without what indents them. It returns none where the edits cannot be made, or where
// a line would be longer than width bytes: a part of it would not be what to write.
func edited(files *source.Set, edits []Edit, width int) []string {
	var all []string
	gone := func(e Edit) bool {
		text := files.Text(e.At.File)
		return e.Text == "" && 0 < e.At.End && int(e.At.End) <= len(text) && text[e.At.End-1] == '\n'
	}
	for left := slices.DeleteFunc(InOrder(edits), gone); len(left) > 0; { // of lines taken out nothing is left to show
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
