package plan

import (
	"bytes"
	"io"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"unicode/utf8"

	"github.com/spf13/afero"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
	"vivary/schema/wording"
)

// file is one file as it was read: its text, and what stands in it. Once it is made
// nobody changes it, and all collections that are made from it share it.
type file struct {
	id     source.ID
	name   string  // as people see it
	text   []byte  // nil where it cannot be read as text
	blocks []any   // pointers to structs, in the order of their lines
	events []Event // the lines of a log
	found  []finding.Finding
	// broken says that it could not be read at all, so that anything named elsewhere may
	// stand in it; unread is what of it could not.
	broken bool
	unread []syntax.Region
	// torn says that something is wrong with the text itself, and not only with what stands in
	// its blocks.
	torn bool
	// mentions returns the names that stand in it, looked for when first asked.
	mentions func() []mention
	// units counts in which units it is written, when first asked.
	units func() tally
}

// readFile reads and decodes a file. Where its text is that of the file as it was,
// it is that file: the texts themselves are compared, which is quicker than a sum
// over them and never wrong.
func readFile(disk afero.Fs, path string, id source.ID, was *file) *file {
	text, found := readText(disk, path)
	return fileOf(path, id, was, text, found)
}

// fileOf decodes the text of a file. found is why there is none.
func fileOf(path string, id source.ID, was *file, text []byte, found *finding.Finding) *file {
	f := &file{id: id, name: filepath.ToSlash(path)}
	f.mentions = sync.OnceValue(f.everyName)
	f.units = sync.OnceValue(f.countUnits)
	if found == nil && len(text) > MaxFile {
		found = tooLarge()
	}
	if found == nil && was != nil && was.text != nil && bytes.Equal(text, was.text) {
		return was
	}
	if found == nil {
		if found = unfit(path, text); found != nil && utf8.Valid(text) {
			f.text = text // to show the place
		}
	}
	if found != nil {
		found.At.File = id
		f.found = []finding.Finding{*found}
		f.broken = strings.HasSuffix(path, PlanSuffix) // nothing named elsewhere stands in a log
		return f
	}
	f.text = text
	f.decode(was)
	f.keep(was)
	return f
}

// readText reads a file up to the bound. The finding, which does not know its file
// yet, says why that did not work.
func readText(disk afero.Fs, path string) ([]byte, *finding.Finding) {
	unreadable := func(err error) ([]byte, *finding.Finding) {
		return nil, found(finding.Finding{Rule: ruleUnreadable, Text: "the file cannot be read: " + wording.Reason(err), Write: mayRead})
	}
	f, err := disk.Open(path)
	if err != nil {
		return unreadable(err)
	}
	defer f.Close()
	size := 0
	if info, err := f.Stat(); err == nil && info.Size() <= MaxFile {
		size = int(info.Size())
	}
	buf := bytes.NewBuffer(make([]byte, 0, size+bytes.MinRead))
	n, err := buf.ReadFrom(io.LimitReader(f, MaxFile+1))
	switch {
	case err != nil:
		return unreadable(err)
	case n > MaxFile:
		return nil, tooLarge()
	}
	return buf.Bytes(), nil
}

func tooLarge() *finding.Finding {
	return found(finding.Finding{Rule: ruleTooLarge, Text: "the file is larger than what is read",
		Limit: strconv.Itoa(MaxFile>>20) + " MiB a file", Write: "split it into several files"})
}

// unfit says why a text is not given to the parser, or returns nil.
func unfit(path string, text []byte) *finding.Finding {
	plan := strings.HasSuffix(path, PlanSuffix)
	// In a log one line that is not text hides no other; one in which every second byte
	// is a zero has no lines.
	if plan && (bytes.IndexByte(text, 0) >= 0 || !utf8.Valid(text)) || bytes.HasPrefix(text, []byte("\xff\xfe")) || bytes.HasPrefix(text, []byte("\xfe\xff")) {
		return found(finding.Finding{Rule: ruleNotText, Text: "the file is not UTF-8 text", Write: "save it as UTF-8, or give it another name"})
	}
	if f := blank(plan, text); f != nil || !plan {
		return f
	}
	return loneReturn(text)
}

// found is a finding with the severity of its rule.
func found(f finding.Finding) *finding.Finding {
	var l finding.List
	l.Add(f)
	return &l.All[0]
}

func (f *file) decode(was *file) {
	if strings.HasSuffix(f.name, LogSuffix) {
		f.events, f.found = parseLog(f.id, f.text)
		return
	}
	kept, from := f.begins(was)
	read := decodeAfter(kept, f.id, f.text, from, 0, true)
	f.blocks, f.unread, f.found, f.broken, f.torn = read.blocks, read.unread, read.found, read.cut, read.torn
}

// begins returns the blocks with which the file begins as it did when its text could be read,
// with what was found in them, and where they end. Of those the last is left out: what is wrong
// behind it may begin there.
func (f *file) begins(was *file) (kept decoded, end int) {
	if was == nil || was.broken || was.torn || len(was.blocks) < 3 {
		return decoded{}, 0
	}
	same := 0
	for same < min(len(f.text), len(was.text)) && f.text[same] == was.text[same] {
		same++
	}
	n := 0
	for n < len(was.blocks) && int(wholeOf(was.blocks[n]).End) < same && f.text[wholeOf(was.blocks[n]).End] == '\n' {
		n++
	}
	if n < 2 {
		return decoded{}, 0
	}
	end = int(wholeOf(was.blocks[n-2]).End) + 1
	kept.blocks = slices.Clip(was.blocks[:n-1])
	for i := range was.found { // each is in the block of which it is
		if int(was.found[i].At.Start) < end {
			kept.found = append(kept.found, was.found[i])
		}
	}
	return kept, end
}

// keep takes over the blocks of the file as it was that stand where they stood and
// read as they read. What is made from them then need not be made again.
func (f *file) keep(was *file) {
	if was == nil {
		return
	}
	stood := make(map[source.Place]any, len(was.blocks))
	for _, b := range was.blocks {
		stood[wholeOf(b)] = b
	}
	for i, b := range f.blocks {
		at := wholeOf(b)
		if old := stood[at]; old != nil && bytes.Equal(was.text[at.Start:at.End], f.text[at.Start:at.End]) {
			f.blocks[i] = old
		}
	}
}

func wholeOf(block any) source.Place {
	return block.(interface{ head() *Head }).head().Whole
}
