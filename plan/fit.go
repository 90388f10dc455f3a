package plan

import (
	"bytes"

	"vivary/plan/finding"
	"vivary/plan/source"
)

// blank says of a text in which nothing stands that it is so: somebody's animals, or
// what was seen of them, may have stood there. It returns nil for any other.
func blank(plan bool, text []byte) *finding.Finding {
	if len(bytes.TrimSpace(bytes.TrimPrefix(text, byteOrderMark))) > 0 {
		return nil
	}
	f := found(finding.Finding{Rule: ruleBlank, Text: "the file holds nothing", Write: "what stood in it, from a copy; or delete the file"})
	if !plan {
		f.Severity = finding.Caution // a log of a new year has nothing yet
	}
	return f
}

// loneReturn finds the first end of a line that only old computers read as one. To the
// parser of plans it is a blank, and what follows a comment would be one too.
func loneReturn(text []byte) *finding.Finding {
	for from := 0; ; {
		i := bytes.IndexByte(text[from:], '\r')
		if i < 0 {
			return nil
		}
		if from += i + 1; from == len(text) || text[from] != '\n' {
			at := source.Place{Start: int32(from - 1), End: int32(from)}
			return found(finding.Finding{Rule: ruleLineEnds, At: at, Text: "a line ends in a carriage return alone here, which is not read as its end", Write: "nothing else: save the file with line ends of Unix or of Windows"})
		}
	}
}
