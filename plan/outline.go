package plan

import (
	"errors"

	"vivary/plan/source"
	"vivary/plan/syntax"
)

// Outline returns the outermost blocks of a plan's text that can be read, as trees, in the
// order of their lines, and the stretches that cannot.
func Outline(id source.ID, text []byte) (blocks []*syntax.Block, broken []syntax.Region) {
	f := syntax.Read(id, text, 0, words, func(b *syntax.Block) bool {
		blocks = append(blocks, b)
		return len(blocks) <= maxOutermost
	})
	return blocks, f.Broken
}

// FitName says why something cannot be called so; nil where it can.
func FitName(name string) error {
	if !validName(name) {
		return errors.New(quote(name) + " cannot be a name: a name is made of letters, digits, hyphens and underscores, at most 60 of them")
	}
	return nil
}
