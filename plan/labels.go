package plan

import (
	"bytes"
	"errors"
	"iter"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
	"vivary/schema"
)

func (d *decoder) label(blk *syntax.Block, b *schema.Block, h *Head) {
	want := 0
	if b.Label != "" {
		want = 1
	}
	if len(blk.Labels) > want {
		at := blk.Labels[want].At
		text := "block " + b.Name + " takes one name only"
		if want == 0 {
			text = "block " + b.Name + " takes no name"
		}
		f := finding.Finding{Rule: ruleValue, At: at, Text: text, Write: opening(b) + ", and no more"}
		if name := asName(allLabels(blk)); want == 1 && name != "" && d.own {
			at.Start = blk.Labels[0].At.Start
			at.End = blk.Labels[len(blk.Labels)-1].At.End
			f.Write, f.Edits = quote(name), finding.Text(at, name)
		}
		d.found.Add(f)
	}
	if want == 0 {
		return
	}
	if len(blk.Labels) == 0 {
		d.found.Add(finding.Finding{Rule: ruleMissing, At: h.At,
			Text: "block " + b.Name + " has no " + b.Label + " after it", Write: opening(b)})
		return
	}
	h.Name = wrote(blk.Labels[0].Text, blk.Labels[0].At)
	if b == schema.Face {
		if name := schema.Called(schema.Faces, h.Name.V); name != "" {
			h.Name.V = name
		}
	}
	if b == schema.Accept || b == schema.NumberBlock || b == schema.FigureBlock || b == schema.Season || b == schema.FeederSize {
		return // these are words of the language, or free text
	}
	if !validName(h.Name.V) {
		d.found.Add(d.noName(blk, b, h))
	}
}

// allLabels are the words that stand where one name should.
func allLabels(blk *syntax.Block) string {
	var all []string
	for _, l := range blk.Labels {
		all = append(all, l.Text)
	}
	return strings.Join(all, " ")
}

// noName finds a name that cannot be one. A name is made of it, wherever it stands in the
// file; in a block that has a title the words that were meant for it go there.
func (d *decoder) noName(blk *syntax.Block, b *schema.Block, h *Head) finding.Finding {
	f := finding.Finding{Rule: ruleValue, At: h.Name.At,
		Text:  quote(h.Name.V) + " cannot be a name: a name is made of letters, digits, hyphens and underscores, at most 60 of them",
		Write: "a name of these"}
	name := asName(h.Name.V)
	if name == "" {
		return f
	}
	f.Write = quote(name)
	old, taken := strconv.Quote(h.Name.V), bytes.Contains(d.source, []byte(strconv.Quote(name)))
	if edits := finding.Instead(h.Name.At, h.Name.V, name); edits != nil && !taken {
		for from := range indexes(d.source, old) {
			at := source.Place{File: h.Name.At.File, Start: int32(from + 1), End: int32(from + len(old) - 1)}
			if at.Start != edits[0].At.Start && !d.saysWords(at) {
				f.Edits = append(f.Edits, finding.Edit{At: at, Text: name})
			}
		}
		f.Edits = append(edits, f.Edits...)
	}
	if b.Attr("title") != nil && blk.Attr("title") == nil {
		f.Write += " as its name, and " + quote(h.Name.V) + " as its title"
		if f.Edits != nil {
			f.Edits = append(f.Edits, finding.Inside(d.source, h.At, h.Whole, "title = "+old)...)
		}
	}
	return f
}

// asName makes a name of words, or returns "".
func asName(words string) string {
	kept := strings.FieldsFunc(strings.Map(func(r rune) rune {
		switch {
		case inName(r) && r != '-':
			return r
		case r == '\'' || r == '’':
			return -1
		}
		return '-'
	}, strings.ToLower(words)), func(r rune) bool { return r == '-' })
	if name := strings.Join(kept, "-"); validName(name) {
		return name
	}
	return ""
}

// indexes are where a text holds another.
func indexes(text []byte, part string) iter.Seq[int] {
	return func(use func(int) bool) {
		for from := 0; ; {
			i := bytes.Index(text[from:], []byte(part))
			if i < 0 || !use(from+i) {
				return
			}
			from += i + len(part)
		}
	}
}

// saysWords reports whether a place is on a line that holds words for people, or behind a
// remark.
func (d *decoder) saysWords(at source.Place) bool {
	start := bytes.LastIndexByte(d.source[:at.Start], '\n') + 1
	line := bytes.TrimSpace(d.source[start:at.Start])
	word, _, _ := bytes.Cut(line, []byte{' '})
	return bytes.ContainsRune(line, '#') || slices.Contains([]string{"title", "note", "because", "task"}, string(word))
}

// validName reports whether a label can be written without quotes in a log line.
func validName(s string) bool {
	if s == "" || len(s) > 60 {
		return false
	}
	for _, r := range s {
		if !inName(r) {
			return false
		}
	}
	return true
}

// inName reports whether a name may hold a character.
func inName(r rune) bool {
	return r == '-' || r == '_' || unicode.IsDigit(r) || unicode.IsLetter(r) || unicode.IsMark(r)
}

// FitName says why something cannot be called so; nil where it can.
func FitName(name string) error {
	if !validName(name) {
		return errors.New(quote(name) + " cannot be a name: a name is made of letters, digits, hyphens and underscores, at most 60 of them")
	}
	return nil
}
