package change

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/syntax"
)

// Over lays the text of a plan over a collection: a value that it has takes the place of the one
// that is there, a block within another of the type and name that is there is laid over that, and
// all else is added. Lines of a log are added to the logs. The texts are of the files that are
// others then; the findings say what of it cannot be read, and the error why it says nothing.
func Over(c *plan.Collection, name string, text []byte) (map[string][]byte, []finding.Finding, error) {
	const trial = 1 << 20 // the id of a file that no collection has
	if strings.HasSuffix(name, plan.LogSuffix) {
		if found := plan.Unread(trial, text); len(found) > 0 {
			return nil, found, nil
		}
		return map[string][]byte{free(c, name): text}, nil, nil
	}
	tree := plan.TreeOf(trial, text)
	switch {
	case tree.Unfit || len(tree.Broken) > 0 || finding.Refuses(tree.Found):
		return nil, tree.Found, nil
	case len(tree.Loose) > 0:
		return nil, nil, fmt.Errorf("%q stands in no block of the trial: write it in the block of what it is about", tree.Loose[0].Name)
	case len(tree.Blocks) == 0:
		return nil, nil, errors.New("no block stands in the trial")
	}
	all := &Changes{a: c}
	var there []stand
	files := texts(c)
	for _, path := range slices.Sorted(maps.Keys(files)) {
		if strings.HasSuffix(path, plan.PlanSuffix) {
			there = append(there, all.blocks(path, files[path])...)
		}
	}
	own := free(c, name)
	for _, b := range tree.Blocks {
		x := stand{b, own, text}
		i := slices.IndexFunc(there, func(o stand) bool { return o.key() == x.key() })
		if i < 0 || repeats[b.Type] {
			all.Pieces = append(all.Pieces, Piece{Type: b.Type, Name: label(b), adds: []added{{own, string(text[b.Whole.Start:b.Whole.End]) + "\n"}}})
		} else {
			all.over(&there[i], &x, there[i].Block, b)
		}
	}
	pieces := make([]int, len(all.Pieces))
	for i := range pieces {
		pieces[i] = i
	}
	out, ok := all.With(pieces...)
	if !ok {
		return nil, nil, errors.New("the trial says something twice of one thing: write it once")
	}
	return out, nil, nil
}

// repeats are blocks of which several of one name may stand side by side.
var repeats = map[string]bool{"away": true, "gone": true}

// over lays a block over one that is there.
func (c *Changes) over(a, b *stand, x, y *syntax.Block) {
	for i := range y.Attrs {
		c.Pieces = append(c.Pieces, Piece{edits: a.attrEdits(x, &y.Attrs[i], b)})
	}
	for _, in := range y.Blocks {
		i := slices.IndexFunc(x.Blocks, func(o *syntax.Block) bool { return o.Type == in.Type && label(o) == label(in) })
		if i < 0 {
			c.Pieces = append(c.Pieces, Piece{edits: a.insert(x, string(b.text[in.Whole.Start:in.Whole.End]))})
		} else {
			c.over(a, b, x.Blocks[i], in)
		}
	}
}

// free is the name of a file as the folder does not have it yet.
func free(c *plan.Collection, name string) string {
	if i := strings.LastIndexAny(name, `/\`); i >= 0 {
		name = name[i+1:]
	}
	for there := texts(c); there[name].there; {
		name = "if-" + name
	}
	return name
}
