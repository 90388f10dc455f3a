package plan

import (
	"bytes"
	"io/fs"
	"path"
	"strings"
	"sync"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
)

// libraryPrefix begins the name under which a built-in sheet is shown.
const libraryPrefix = "schema/"

// builtInSheets is the sheets that come with the program. Each is read and decoded
// when the first collection asks for it, once a process, and then only read.
type builtInSheets struct {
	files   source.Shelf
	ids     map[string]source.ID
	species map[string]func() *builtInFile
	types   map[string]func() *builtInFile
	feeders map[string]func() *builtInFile
	sources func() map[string]func() *Source
	joined  sync.Map // of a species sheet with its type: func() joinedSheet, by the name
}

// builtInFile is one decoded file of the library. That nothing is found in it is
// tested.
type builtInFile struct {
	blocks blocks
	found  []finding.Finding
}

var builtIn = sync.OnceValue(func() *builtInSheets {
	b := &builtInSheets{ids: map[string]source.ID{}}
	b.species = b.shelve("species")
	b.types = b.shelve("types")
	b.feeders = b.shelve("feeders")
	b.sources = sync.OnceValue(func() map[string]func() *Source { return b.cut("sources") })
	b.shelve("sources")
	return b
})

// shelve puts the files of a folder on the shelf, in the order of their names, so
// that their ids are the same in every run of a program.
func (b *builtInSheets) shelve(dir string) map[string]func() *builtInFile {
	all := map[string]func() *builtInFile{}
	entries, _ := fs.ReadDir(schema.Library, dir)
	for _, e := range entries {
		file := path.Join(dir, e.Name())
		text := sync.OnceValue(func() []byte {
			text, _ := fs.ReadFile(schema.Library, file)
			return text
		})
		id := b.files.Add(libraryPrefix+file, text)
		b.ids[file] = id
		all[strings.TrimSuffix(e.Name(), PlanSuffix)] = sync.OnceValue(func() *builtInFile {
			read := decodeFile(id, text(), 0, false)
			f := &builtInFile{found: read.found}
			f.blocks.add(read.blocks)
			return f
		})
	}
	return all
}

// cut finds the blocks of the files of a folder that hold nothing but short blocks, by
// their labels. Each is decoded when it is asked for: a check names a few sources of many
// hundreds.
func (b *builtInSheets) cut(dir string) map[string]func() *Source {
	all := map[string]func() *Source{}
	entries, _ := fs.ReadDir(schema.Library, dir)
	for _, e := range entries {
		file := path.Join(dir, e.Name())
		text, _ := fs.ReadFile(schema.Library, file)
		head, end := []byte("source \""), []byte("\n}\n")
		for at := 0; ; {
			n := bytes.Index(text[at:], head)
			if n < 0 {
				break
			}
			from := at + n
			label, _, _ := bytes.Cut(text[from+len(head):], []byte{'"'})
			at = from + bytes.Index(text[from:], end) + len(end)
			block := text[from:at]
			all[string(label)] = sync.OnceValue(func() *Source {
				return decodeFile(b.ids[file], block, from, false).blocks[0].(*Source)
			})
		}
	}
	return all
}

// sheet returns the built-in species sheet of that name, or nil.
func (b *builtInSheets) sheet(name string) *SpeciesSheet {
	if file := b.species[name]; file != nil {
		return file().blocks.species[0]
	}
	return nil
}

// typeSheet returns the built-in sheet of a care type, or nil.
func (b *builtInSheets) typeSheet(name string) *TypeSheet {
	if file := b.types[name]; file != nil {
		return file().blocks.types[0]
	}
	return nil
}

// feeder returns the built-in feeder sheet of that name, or nil.
func (b *builtInSheets) feeder(name string) *FeederSheet {
	if file := b.feeders[name]; file != nil {
		return file().blocks.feeders[0]
	}
	return nil
}
