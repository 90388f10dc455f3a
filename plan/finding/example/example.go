// Package example reads the examples of rules: one file a rule, named for its id,
// with a plan that the rule finds and one that it does not. Whether a rule does so
// is the business of the tests of those who have the rules.
package example

import (
	"fmt"
	"io/fs"
	"regexp"
	"strconv"
	"strings"

	"github.com/rogpeppe/go-internal/txtar"
)

// Folder is where the examples of a package's rules stand, beside it.
const Folder = "examples"

// Suffix ends the name of a file with an example; the id of the rule begins it.
const Suffix = ".txtar"

// The names of the sections of a file.
const (
	foundSection    = "found"
	notFoundSection = "not found"
)

// Example shows a rule.
type Example struct {
	Words    string // what there is to say first, such as why there is no plan to show
	Found    Plan   // what the rule finds
	NotFound Plan   // the same, put right
}

// Plan is a plan or a part of one, with the lines of a log where they belong to it.
type Plan struct {
	Text  string // as a keeper would have written it, without the wants
	Wants []Want
}

// Shown returns the text with a mark for each byte that is not text, as editors do.
func (p Plan) Shown() string { return strings.ToValidUTF8(p.Text, "\ufffd") }

// Want is what the rule has to say about a line.
type Want struct {
	Line int    // from 1; 0 for what is about no line of the text
	Says string // a part of the finding's text
}

// Read returns the example of the rule of that id.
func Read(files fs.FS, id string) (Example, error) {
	name := Folder + "/" + id + Suffix
	text, err := fs.ReadFile(files, name)
	if err != nil {
		return Example{}, err
	}
	e, err := parse(text)
	if err != nil {
		return Example{}, fmt.Errorf("%s: %w", name, err)
	}
	return e, nil
}

func parse(text []byte) (Example, error) {
	a := txtar.Parse(text)
	e := Example{Words: strings.TrimSpace(string(a.Comment))}
	seen := map[string]bool{}
	for _, f := range a.Files {
		if seen[f.Name] {
			return e, fmt.Errorf("there are two sections %q", f.Name)
		}
		seen[f.Name] = true
		p, err := parsePlan(string(f.Data))
		if err != nil {
			return e, err
		}
		switch f.Name {
		case foundSection:
			e.Found = p
		case notFoundSection:
			e.NotFound = p
		default:
			return e, fmt.Errorf("there is no section %q", f.Name)
		}
	}
	return e, nil
}

// wantMark begins what is wanted of a line. It ends the line, also in a log, where
// nothing else does so.
const wantMark = "# want: "

// parsePlan takes the wants out of a text. A line that is nothing but a want is
// about no line of the text, and is none of its lines.
func parsePlan(marked string) (Plan, error) {
	var p Plan
	var text strings.Builder
	line := 0
	for marked := range strings.Lines(marked) {
		typed, wants, has := strings.Cut(marked, wantMark)
		alone := has && strings.TrimSpace(typed) == ""
		if !alone {
			line++
			if has {
				typed = strings.TrimRight(typed, " ") + "\n"
			}
			text.WriteString(typed)
		}
		if !has {
			continue
		}
		at := line
		if alone {
			at = 0
		}
		says, err := quoted(strings.TrimSpace(wants))
		if err != nil {
			return p, err
		}
		for _, s := range says {
			p.Wants = append(p.Wants, Want{at, s})
		}
	}
	p.Text = text.String()
	return p, nil
}

var quotedText = regexp.MustCompile(`^"(?:[^"\\]|\\.)*"`)

// quoted reads one or several texts in quotes.
func quoted(s string) (out []string, err error) {
	for s != "" {
		q := quotedText.FindString(s)
		says, err := strconv.Unquote(q)
		if err != nil || says == "" {
			return nil, fmt.Errorf("what is wanted stands in quotes: %s", s)
		}
		out = append(out, says)
		s = strings.TrimSpace(s[len(q):])
	}
	return out, nil
}
