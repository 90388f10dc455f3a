package plan

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"
	"sync"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
)

// libraryPrefix begins the name under which a built-in sheet is shown.
const libraryPrefix = "schema/"

// Sheets are the sheets of species, care types and feeders, with their sources, by which
// collections are judged: those that come with the program, or those of another version of it.
// Each is read and decoded when the first collection asks for it, once, and then only read.
type Sheets struct {
	from    fs.FS
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

var builtIn = sync.OnceValue(func() *Sheets { return shelved(schema.Library) })

// BuiltIn returns the sheets that come with the program.
func BuiltIn() *Sheets { return builtIn() }

// SheetsFrom reads the sheets of another version of the program from a file system with the
// folders that the built-in library has. The error says which file cannot be read as one.
func SheetsFrom(from fs.FS) (*Sheets, error) {
	b := shelved(from)
	if len(b.species) == 0 {
		return nil, errors.New("no sheets of species stand in it: what is asked for is a folder that vivary version --library wrote")
	}
	for _, dir := range []map[string]func() *builtInFile{b.species, b.types, b.feeders} {
		for _, name := range slices.Sorted(maps.Keys(dir)) {
			f := dir[name]()
			if n := len(f.blocks.species) + len(f.blocks.types) + len(f.blocks.feeders); n != 1 || finding.Refuses(f.found) {
				return nil, fmt.Errorf("the sheet %s cannot be read by this vivary", name)
			}
		}
	}
	return b, nil
}

// Texts are the texts of the sheets by the names under which they are shown; sources apart.
func (b *Sheets) Texts() map[string][]byte {
	out := map[string][]byte{}
	for file, id := range b.ids {
		if !strings.HasPrefix(file, "sources/") {
			out[libraryPrefix+file] = source.Over(&b.files).Text(id)
		}
	}
	return out
}

func shelved(from fs.FS) *Sheets {
	b := &Sheets{from: from, ids: map[string]source.ID{}}
	b.species = b.shelve("species")
	b.types = b.shelve("types")
	b.feeders = b.shelve("feeders")
	b.sources = sync.OnceValue(func() map[string]func() *Source { return b.cut("sources") })
	b.shelve("sources")
	return b
}

// shelve puts the files of a folder on the shelf, in the order of their names, so
// that their ids are the same in every run of a program.
func (b *Sheets) shelve(dir string) map[string]func() *builtInFile {
	all := map[string]func() *builtInFile{}
	entries, _ := fs.ReadDir(b.from, dir)
	for _, e := range entries {
		file := path.Join(dir, e.Name())
		text := sync.OnceValue(func() []byte {
			text, _ := fs.ReadFile(b.from, file)
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
func (b *Sheets) cut(dir string) map[string]func() *Source {
	all := map[string]func() *Source{}
	entries, _ := fs.ReadDir(b.from, dir)
	for _, e := range entries {
		file := path.Join(dir, e.Name())
		text, _ := fs.ReadFile(b.from, file)
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
				if read := decodeFile(b.ids[file], block, from, false).blocks; len(read) == 1 {
					src, _ := read[0].(*Source)
					return src
				}
				return nil
			})
		}
	}
	return all
}

// sheet returns the built-in species sheet of that name, or nil.
func (b *Sheets) sheet(name string) *SpeciesSheet {
	if file := b.species[name]; file != nil {
		return file().blocks.species[0]
	}
	return nil
}

// typeSheet returns the built-in sheet of a care type, or nil.
func (b *Sheets) typeSheet(name string) *TypeSheet {
	if file := b.types[name]; file != nil {
		return file().blocks.types[0]
	}
	return nil
}

// feeder returns the built-in feeder sheet of that name, or nil.
func (b *Sheets) feeder(name string) *FeederSheet {
	if file := b.feeders[name]; file != nil {
		return file().blocks.feeders[0]
	}
	return nil
}
