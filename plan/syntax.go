package plan

import (
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"vivary/plan/finding"
)

// syntaxWords says in a keeper's words what the parser stumbles over, by the
// beginning of its summary.
var syntaxWords = [][2]string{
	{"Unclosed configuration block", "this block is never closed: its } is missing"},
	{"Unterminated", "this is never closed"},
	{"Invalid multi-line string", "this text is never closed: its \" is missing on the same line"},
	{"Invalid character encoding", "these bytes are not UTF-8 text"},
	{"Invalid character", "this character means nothing here"},
	{"Invalid quote", "texts stand in straight double quotes"},
	{"Invalid single-quoted", "texts stand in double quotes"},
	{"Invalid block definition", "this is not a block: a block is a word, its name in quotes, and {"},
	{"Argument or block definition", "here should stand a block, or name = value"},
	{"Missing newline after", "what follows belongs on a line of its own"},
	{"Invalid expression", "here should stand a value"},
	{"Missing expression", "there is no value after the ="},
	{"Unbalanced parentheses", "a bracket is not closed"},
	{"Missing item separator", "there is no comma between two items of the list"},
	{"Invalid single-argument block", "a block on one line can hold one attribute only: put each on its own line"},
	{"Unsupported operator", "this sign means nothing in a plan"},
}

// syntax turns what the parser says into a finding.
func (d *decoder) syntax(diag *hcl.Diagnostic, body *hclsyntax.Body) {
	if diag.Subject == nil {
		return
	}
	f := finding.Finding{Rule: ruleSyntax, At: d.place(*diag.Subject), Text: "this cannot be read here"}
	for _, w := range syntaxWords {
		if strings.HasPrefix(diag.Summary, w[0]) {
			f.Text = w[1]
			break
		}
	}
	if diag.Summary == "Attribute redefined" {
		f.Rule, f.Text, f.Write = ruleTwice, "this attribute is written twice in one block", "take one of them out"
		if first := firstOf(body, diag.Subject.Start.Byte); first != nil {
			f.Also = []finding.Related{{At: d.place(first.NameRange), Text: "the first"}}
		}
	}
	d.found.Add(f)
}

// firstOf returns the last attribute of the innermost body around offset at that
// stands before it and has the name that stands at it.
func firstOf(body *hclsyntax.Body, at int) *hclsyntax.Attribute {
	if body == nil {
		return nil
	}
	for _, b := range body.Blocks {
		if r := b.Body.SrcRange; r.Start.Byte <= at && at < r.End.Byte {
			return firstOf(b.Body, at)
		}
	}
	var last *hclsyntax.Attribute
	for _, a := range sortedAttrs(body) {
		if a.NameRange.Start.Byte < at {
			last = a
		}
	}
	return last
}
