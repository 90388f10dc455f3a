package plan

import (
	"path/filepath"

	"github.com/spf13/afero"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
)

// Tree is what stands in the text of a plan file, before anything of it is judged: the
// outermost blocks that can be read, in the order of their lines, and what cannot be.
type Tree struct {
	Blocks []*syntax.Block
	Broken []syntax.Region
	Loose  []syntax.Attr // attributes that stand in no block
	Found  []finding.Finding
	// Unfit says that the text is none that is read as a plan: all else is empty then but
	// Found, which says why.
	Unfit bool
}

// TreeOf reads the text of a plan file. The findings are those that a collection with this
// file has of the text alone.
func TreeOf(id source.ID, text []byte) (o Tree) {
	if f := misfit(text); f != nil {
		f.At.File = id
		return Tree{Found: []finding.Finding{*f}, Unfit: true}
	}
	f := syntax.Read(id, text, 0, words, func(b *syntax.Block) bool {
		o.Blocks = append(o.Blocks, b)
		return true
	})
	var found finding.List
	for _, m := range f.Mistakes {
		found.Add(syntaxFinding(m))
	}
	o.Broken, o.Loose, o.Found = f.Broken, f.Loose, found.All
	return o
}

// misfit says why a text is not given to the reader, or returns nil.
func misfit(text []byte) *finding.Finding {
	if len(text) > MaxFile {
		return tooLarge()
	}
	return unfit(PlanSuffix, text)
}

// TooLarge finds that a file is larger than what is read.
func TooLarge(id source.ID) finding.Finding {
	f := tooLarge()
	f.At.File = id
	return *f
}

// TextOf reads a file as a collection does, up to the bound. The findings, in file id, say why
// that did not work.
func TextOf(disk afero.Fs, path string, id source.ID) ([]byte, []finding.Finding) {
	text, f := readText(disk, path)
	if f != nil {
		f.At.File = id
		return nil, []finding.Finding{*f}
	}
	return text, nil
}

// Unread are the findings of the lines of a log that cannot be read.
func Unread(id source.ID, text []byte) []finding.Finding {
	if f := unfit(LogSuffix, text); f != nil {
		f.At.File = id
		return []finding.Finding{*f}
	}
	_, found := parseLog(id, text)
	return found
}

// Readable is a plan or a log that a collection in a folder would read.
type Readable struct {
	Path string
	// Linked says that a link leads to it from there: it has another name of its own.
	Linked bool
}

// Odd is what is found of a path that is not read.
type Odd struct {
	Path  string
	Found finding.Finding
}

// Below lists the plans and logs below a folder, in the order of their names. What may hold a
// plan and is not read is found.
func Below(disk afero.Fs, root string) (all []Readable, odd []Odd) {
	w := walk(disk, root)
	for _, path := range w.paths {
		rel, err := filepath.Rel(root, path)
		all = append(all, Readable{path, err != nil || w.resolve(absolute(path)) != filepath.Join(w.root, rel)})
	}
	for _, x := range w.odd {
		if x.found.Severity.Refuses() {
			odd = append(odd, Odd{x.path, x.found})
		}
	}
	return all, odd
}
