package plan

import (
	"fmt"
	"io/fs"
	"maps"
	"math/rand/v2"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/spf13/afero"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
)

// quillmoor returns the files of the example, by name.
func quillmoor(t testing.TB) map[string]string {
	t.Helper()
	files := map[string]string{}
	const root = "../examples/quillmoor"
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		text, err := os.ReadFile(path)
		files[strings.TrimPrefix(filepath.ToSlash(path), root+"/")] = string(text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// ownSheets lays sheets of a collection's own over built-in ones and over each other.
const ownSheets = `species "pandinus-imperator" {
  figure "temperature-hard" {
    value   = "16 to 33 C"
    because = "measured"
    source  = ["own"]
    review  = "2027-09-01"
  }
}

species "its-kin" {
  like  = "pandinus-imperator"
  title = "a kin of it"
}

feeder "cricket" {
  title = "cricket of ours"

  size "huge" {
    mass = "900 mg"
  }
}

source "own" {
  cite = "our records"
  kind = "own"
}
`

// shelf is a template, and enclosures that say again what it says.
const shelf = `template "shelf" {
  species = "pandinus-imperator"
  room    = "west"

  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
  }

  care "water" {
    every = "2 days"
  }
}

enclosure "shelf-1" {
  template = "shelf"

  housing {
    depth = "16 cm"
  }

  animals "one" {
    count = 1
  }

  care "mist" {
    every = "2 days"
  }

  care "water" {
    amount = "20 ml"
  }
}

enclosure "shelf-2" {
  template = "shelf"

  housing {
    depth = "18 cm"
  }

  animals "two" {
    count = 1
  }
}
`

// tubs are several enclosures with numbers.
const tubs = `enclosure "tub" {
  template = "shelf"
  numbers  = "1 to 3, 5"

  animals "one" {
    count = 1
  }

  number "2"      { count = 3 }
  number "3"      { depth = "18 cm" }
  number "1 to 2" {
    care "mist" {
      every = "2 days"
    }
  }
}
`

func again(t testing.TB, r *Reader, files map[string]string) (*Collection, []finding.Finding) {
	t.Helper()
	c, found, err := r.Load(disk(t, files), "c")
	if err != nil {
		t.Fatal(err)
	}
	return c, found
}

// said is everything that a collection says and that was found in it, with every
// place, in a form that does not depend on the ids of files.
func said(c *Collection, found []finding.Finding) string {
	var b strings.Builder
	d := dumper{&b, c.Files}
	for _, part := range []any{c.About, c.Rooms, c.Keepers, c.Rounds, c.Aways, c.Calendars, c.Enclosures, c.Log, found} {
		d.value(reflect.ValueOf(part))
	}
	for _, name := range c.Library.SpeciesNames() {
		s := c.Library.Species(name)
		if shared, ok := builtIn().joined.Load(name); ok && shared.(func() joinedSheet)().sheet == s {
			fmt.Fprintf(&b, "%s is %p\n", name, s)
		} else {
			d.value(reflect.ValueOf(s).Elem())
		}
	}
	for _, name := range c.Library.FeederNames() {
		d.value(reflect.ValueOf(c.Library.Feeder(name)))
	}
	d.value(reflect.ValueOf(c.Library.own.sources))
	_ = finding.Printer{Files: c.Files}.Print(&b, found)
	return b.String()
}

type dumper struct {
	w     *strings.Builder
	files *source.Set
}

func (d dumper) value(v reflect.Value) {
	switch x := v.Interface().(type) {
	case source.Place:
		fmt.Fprintf(d.w, "%s:%d-%d\n", d.files.Name(x.File), x.Start, x.End)
		return
	case *SpeciesSheet: // each is written once, by its name
		if x != nil {
			d.w.WriteString(x.Name.V)
		}
		return
	case *finding.Rule:
		d.w.WriteString(x.ID)
		return
	}
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			d.value(v.Elem())
		}
	case reflect.Slice:
		fmt.Fprintf(d.w, "%d of:\n", v.Len())
		for i := range v.Len() {
			d.value(v.Index(i))
		}
	case reflect.Map:
		for _, k := range slices.SortedFunc(slices.Values(v.MapKeys()), func(a, b reflect.Value) int { return strings.Compare(a.String(), b.String()) }) {
			d.value(v.MapIndex(k))
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.IsExported() {
				d.w.WriteString(f.Name + " ")
				d.value(v.Field(i))
			}
		}
	default:
		fmt.Fprintln(d.w, v.Interface())
	}
}

// edits are what happens to the files of a collection between two loads.
var edits = []func(rnd *rand.Rand, files map[string]string, name string){
	func(rnd *rand.Rand, files map[string]string, name string) { // a remark, which moves what follows it
		lines := strings.SplitAfter(files[name], "\n")
		files[name] = strings.Join(slices.Insert(lines, rnd.IntN(len(lines)), "# a remark\n"), "")
	},
	func(rnd *rand.Rand, files map[string]string, name string) { // another figure, of the same length
		b := []byte(files[name])
		for i := range b {
			if j := (i + rnd.IntN(len(b))) % len(b); b[j] >= '1' && b[j] <= '8' {
				b[j]++
				break
			}
		}
		files[name] = string(b)
	},
	func(rnd *rand.Rand, files map[string]string, name string) { // a line lost, whatever stood on it
		lines := strings.SplitAfter(files[name], "\n")
		i := rnd.IntN(len(lines))
		files[name] = strings.Join(slices.Delete(lines, i, i+1), "")
	},
	func(rnd *rand.Rand, files map[string]string, name string) { // moved to another folder
		files[fmt.Sprintf("d%d/%s", rnd.IntN(3), filepath.Base(name))] = files[name]
		delete(files, name)
	},
	func(_ *rand.Rand, files map[string]string, name string) { delete(files, name) },
	func(_ *rand.Rand, files map[string]string, name string) { files[name] = strings.ToUpper(files[name]) },
	func(_ *rand.Rand, files map[string]string, name string) { files[name] += "\x00" },
}

// However files change between two loads, what a Reader returns is what a fresh
// load returns, and no block is changed by what is made from it.
func TestReaderIsAFreshLoad(t *testing.T) {
	start := quillmoor(t)
	start["sheets.care.hcl"], start["shelf.care.hcl"], start["tubs.care.hcl"] = ownSheets, shelf, tubs
	for seed := range uint64(8) {
		rnd := rand.New(rand.NewPCG(seed, 7))
		files, r := maps.Clone(start), &Reader{}
		for step := range 10 {
			c, found := again(t, r, files)
			fresh, foundFresh := load(t, files)
			if got, want := said(c, found), said(fresh, foundFresh); got != want {
				t.Fatalf("seed %d, step %d: %s", seed, step, difference(got, want))
			}
			for range 1 + rnd.IntN(2) {
				if names := slices.Sorted(maps.Keys(files)); len(names) > 0 {
					edits[rnd.IntN(len(edits))](rnd, files, names[rnd.IntN(len(names))])
				}
			}
			if rnd.IntN(3) == 0 { // a file comes back
				names := slices.Sorted(maps.Keys(start))
				name := names[rnd.IntN(len(names))]
				files[name] = start[name]
			}
		}
		asDecoded(t, r)
	}
}

func difference(got, want string) string {
	g, w := strings.Split(got, "\n"), strings.Split(want, "\n")
	for i := range min(len(g), len(w)) {
		if g[i] != w[i] {
			return fmt.Sprintf("line %d is %q, fresh it is %q", i, g[i], w[i])
		}
	}
	return fmt.Sprintf("%d lines, fresh %d", len(g), len(w))
}

// asDecoded fails if a block that the reader holds, or a built-in one, is not as it
// comes out of the decoder.
func asDecoded(t *testing.T, r *Reader) {
	t.Helper()
	for _, f := range r.files {
		if f.text == nil || unfit(f.name, f.text) != nil {
			continue
		}
		anew := &file{id: f.id, name: f.name, text: f.text}
		anew.decode(nil)
		if !reflect.DeepEqual(anew.blocks, f.blocks) || !reflect.DeepEqual(anew.events, f.events) || !reflect.DeepEqual(anew.found, f.found) {
			t.Fatalf("%s: a block was changed after it was decoded", f.name)
		}
	}
	for name, f := range builtIn().species {
		s := f().blocks.species[0]
		if anew := decodeFile(s.At.File, source.Over(&builtIn().files).Text(s.At.File), 0, false); !reflect.DeepEqual(anew.blocks[0], any(s)) {
			t.Fatalf("the built-in sheet %s was changed", name)
		}
	}
}

// What did not change is not made anew: an enclosure is made anew if and only if
// something that it is made from changed.
func TestReaderKeeps(t *testing.T) {
	base := map[string]string{
		"c.care.hcl": sound, "room.care.hcl": "room \"b\" {\n  temperature = \"18 to 22 C\"\n}\n",
		"t.care.hcl": "template \"t\" {\n  room = \"b\"\n  species = \"its-kin\"\n}\n", "s.care.hcl": ownSheets,
		"own.care.hcl":  "enclosure \"own\" {\n  room = \"a\"" + box,
		"tub.care.hcl":  "enclosure \"tub\" {\n  template = \"t\"\n" + strings.Replace(box, "species = \"pandinus-imperator\"", "", 1),
		"pair.care.hcl": "enclosure \"first\" {\n  room = \"a\"" + strings.Replace(box, "pandinus-imperator", "hadrurus-arizonensis", 1) + "\nenclosure \"second\" {\n  room = \"b\"" + strings.Replace(box, "pandinus-imperator", "hadrurus-arizonensis", 1),
	}
	for name, x := range map[string]struct {
		file, old, new string
		anew           string
		shared         bool // whether what enclosures have in common stays
	}{
		"nothing":            {"c.care.hcl", "", "", "", true},
		"the enclosure":      {"own.care.hcl", "60 x 45", "61 x 45", "own", true},
		"its template":       {"t.care.hcl", "\"b\"", "\"a\"", "tub", true},
		"its room":           {"room.care.hcl", "18", "19", "second tub", false},
		"the own sheet":      {"s.care.hcl", "33 C", "34 C", "own tub", true},
		"a sheet it is like": {"s.care.hcl", "measured", "reckoned", "own tub", true},
		"the sheet on top":   {"s.care.hcl", "a kin of it", "kin", "tub", false}, // the feeder below it moves,
		"further down":       {"pair.care.hcl", "\nenclosure \"second\"", "\n\nenclosure \"second\"", "second", true},
		"a new room":         {"c.care.hcl", "}\n", "}\nroom \"z\" {\n  temperature = \"18 to 22 C\"\n}\n", "first own", false},
		"the log":            {"x.care.log", "", "2026-11-02 own moult\n", "", true},
	} {
		t.Run(name, func(t *testing.T) {
			r := &Reader{}
			before, found := again(t, r, base)
			if len(found) > 0 {
				t.Fatal(texts(found))
			}
			files := maps.Clone(base)
			files[x.file] = strings.Replace(files[x.file], x.old, x.new, 1)
			if files[x.file] == base[x.file] && x.old != "" {
				t.Fatal("nothing is replaced")
			}
			after, _ := again(t, r, files)
			var anew []string
			for _, e := range after.Enclosures {
				was := before.Enclosure(e.Name.V)
				if e.SameAs(was) != (e == was) {
					t.Errorf("%s: the same, but not kept", e.Name.V)
				}
				if !e.SameAs(was) {
					anew = append(anew, e.Name.V)
				}
			}
			if got := after.SharesWith(before); got != x.shared {
				t.Errorf("what they have in common is the same: %t", got)
			}
			slices.Sort(anew)
			if got := strings.Join(anew, " "); got != x.anew {
				t.Errorf("made anew: %q, not %q", got, x.anew)
			}
		})
	}
}

// A file keeps its id while others come and go, and when it comes back.
func TestReaderIds(t *testing.T) {
	r := &Reader{}
	files := map[string]string{"b.care.hcl": sound, "c.care.hcl": "keeper \"k\" {\n}\n"}
	c, _ := again(t, r, files)
	id := c.Keepers[0].At.File
	files["a.care.hcl"] = "keeper \"j\" {\n}\n"
	delete(files, "b.care.hcl")
	if c, _ = again(t, r, files); c.Keeper("k").At.File != id || c.Files.Name(id) != "c/c.care.hcl" || c.Files.Len() != 2 {
		t.Errorf("id %d, then %d, which is %q of %d", id, c.Keeper("k").At.File, c.Files.Name(id), c.Files.Len())
	}
	delete(files, "c.care.hcl")
	if c, _ = again(t, r, files); c.Files.Name(id) != "" || c.Files.Text(id) != nil {
		t.Errorf("a file that is gone is still there")
	}
	files["c.care.hcl"] = "keeper \"l\" {\n}\n"
	if c, _ = again(t, r, files); c.Keeper("l").At.File != id {
		t.Errorf("id %d, then %d", id, c.Keeper("l").At.File)
	}
	if n := len(r.files); n != len(files) {
		t.Errorf("%d files are kept of %d", n, len(files))
	}
}

// Collections share the built-in sheets. What one lays over them is its own.
func TestCollectionsAreApart(t *testing.T) {
	plain := map[string]string{"a.care.hcl": sound + "enclosure \"e\" {" + box}
	own := maps.Clone(plain)
	own["s.care.hcl"] = ownSheets
	first, _ := load(t, plain)
	want := said(first, nil)
	var together sync.WaitGroup
	for _, files := range []map[string]string{own, plain, own, plain} {
		together.Go(func() {
			c, found := load(t, files)
			hard := c.Enclosure("e").Sheet.Figure(schema.FigureTemperatureHard, "")
			_, overlaid := files["s.care.hcl"]
			if len(found) > 0 || hard.Own != overlaid || (c.Library.Feeder("cricket").Size("huge") != nil) != overlaid || (c.Library.Source("own") != nil) != overlaid {
				t.Errorf("own sheets %t: %v, %s", overlaid, texts(found), hard.Value.V)
			}
			if !overlaid && said(c, nil) != want {
				t.Error("a plain collection is not as it was")
			}
			if !overlaid && c.Enclosure("e").Sheet != first.Enclosure("e").Sheet {
				t.Error("the built-in sheet is read twice")
			}
		})
	}
	together.Wait()
}

// Nothing is to be found in what comes with the program, and its places can be shown.
func TestBuiltInSheets(t *testing.T) {
	c, _ := load(t, map[string]string{"a.care.hcl": sound})
	for name, f := range builtIn().species {
		if found := f().found; len(found) > 0 {
			t.Errorf("%s: %v", name, texts(found))
		}
		s := c.Library.Species(name)
		if p := c.Files.Start(s.At); p.File != "schema/species/"+name+".care.hcl" || c.Files.Of(s.Name.At) != quote(name) {
			t.Errorf("%s stands at %v, which is %s", name, p, c.Files.Of(s.Name.At))
		}
	}
	for name, f := range builtIn().feeders {
		if found := f().found; len(found) > 0 || c.Library.Feeder(name).Name.V != name {
			t.Errorf("%s: %v", name, texts(found))
		}
	}
}

// What a reader keeps does not stand in the way of files of another disk.
func TestReaderOfTwoDisks(t *testing.T) {
	r := &Reader{}
	a, _ := again(t, r, map[string]string{"a.care.hcl": sound})
	b, _ := again(t, r, map[string]string{"a.care.hcl": strings.Replace(sound, "22 C", "24 C", 1)})
	if a.Rooms[0].Temperature.V.High != 22 || b.Rooms[0].Temperature.V.High != 24 {
		t.Errorf("%v, %v", a.Rooms[0].Temperature, b.Rooms[0].Temperature)
	}
	if _, _, err := r.Load(afero.NewMemMapFs(), "c"); err == nil {
		t.Error("a missing folder is no error")
	}
}
