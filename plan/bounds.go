package plan

import (
	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// Bounds on what is read. They are far above what people write, and low enough
// that no text makes the program run away.
const (
	MaxFile       = 4 << 20   // bytes in one file
	MaxFiles      = 20_000    // files in a collection
	MaxNesting    = 40        // brackets open at once
	MaxOperators  = 1_000     // operators in one file: the language has none
	MaxEnclosures = 20_000    // enclosures in a collection
	MaxLogLines   = 2_000_000 // lines in all logs together
	MaxText       = 2_000     // characters in one text
	MaxList       = 60        // things in one list that names no blocks
	MaxAways      = 500       // absences in a collection
)

// tooDeep returns the offset at which brackets or operators are nested deeper
// than what is read, or -1. The parser works by recursion and has no bound of its
// own, so this runs before it: first over the bytes, counting too much rather
// than too little, and only where that is not enough over the parser's tokens.
func tooDeep(text []byte) int {
	depth, deepest, operators := 0, 0, 0
	var before byte = '\n'
	for _, c := range text {
		switch c {
		case '{', '[', '(':
			depth++
			deepest = max(deepest, depth)
		case '}', ']', ')':
			depth = max(depth-1, 0)
		case '?':
			operators++
		case '-', '!':
			if !letterOrDigit(before) {
				operators++
			}
		}
		if c > ' ' {
			before = c
		}
	}
	if deepest <= MaxNesting && operators <= MaxOperators {
		return -1
	}
	return tokensTooDeep(text)
}

func letterOrDigit(c byte) bool {
	return c >= '0' && c <= '9' || c|0x20 >= 'a' && c|0x20 <= 'z'
}

func tokensTooDeep(text []byte) int {
	tokens, _ := hclsyntax.LexConfig(text, "", hcl.InitialPos)
	depth, operators := 0, 0
	for _, t := range tokens {
		switch t.Type {
		case hclsyntax.TokenOBrace, hclsyntax.TokenOBrack, hclsyntax.TokenOParen,
			hclsyntax.TokenTemplateInterp, hclsyntax.TokenTemplateControl:
			depth++
		case hclsyntax.TokenCBrace, hclsyntax.TokenCBrack, hclsyntax.TokenCParen, hclsyntax.TokenTemplateSeqEnd:
			depth = max(depth-1, 0)
		case hclsyntax.TokenMinus, hclsyntax.TokenBang, hclsyntax.TokenQuestion:
			operators++
		}
		if depth > MaxNesting || operators > MaxOperators {
			return t.Range.Start.Byte
		}
	}
	return -1
}
