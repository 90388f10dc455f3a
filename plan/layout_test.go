package plan

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/spf13/afero"
)

// A duplicate shows both places, in whichever order the files are read.
func TestDuplicateAcrossFiles(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": sound, "x/b.care.hcl": "enclosure \"e\" {" + box, "y/c.care.hcl": "enclosure \"e\" {" + box})
	if len(found) != 1 || found[0].Rule.ID != "twice" || len(found[0].Also) != 1 {
		t.Fatal(texts(found))
	}
	if a, b := c.Files.Name(found[0].At.File), c.Files.Name(found[0].Also[0].At.File); a != "c/y/c.care.hcl" || b != "c/x/b.care.hcl" {
		t.Errorf("places: %s and %s", a, b)
	}
}

// The folder and the order of files make no difference to what is read.
func TestLayoutMakesNoDifference(t *testing.T) {
	parts := []string{sound, "enclosure \"tub-10\" {" + box, "enclosure \"tub-2\" {" + box, "keeper \"k\" {\n  titel = \"K\"\n}\n",
		"round \"b\" {\n  at = \"08:00\"\n}\nround \"a\" {\n  at = \"08:00\"\n}\nround \"c\" {\n  at = \"07:00\"\n}\n",
		"away \"k\" {\n  from = \"2027-06-10\"\n  to = \"2027-06-12\"\n}\naway \"k\" {\n  from = \"2027-05-10\"\n  to = \"2027-05-12\"\n}\n",
		"species \"x\" {\n  like = \"y\"\n}\nspecies \"y\" {\n  like = \"nothing\"\n}\n"}
	all := func(files map[string]string) string {
		c, found := load(t, files)
		var s []string
		for _, e := range c.Enclosures {
			s = append(s, e.Name.V)
		}
		for _, r := range c.Rounds {
			s = append(s, r.Name.V)
		}
		for _, a := range c.Aways {
			s = append(s, a.From.V.String())
		}
		said := texts(found)
		slices.Sort(said)
		return strings.Join(append(s, said...), "\n")
	}
	want := all(map[string]string{"all.care.hcl": strings.Join(parts, "")})
	if !strings.HasPrefix(want, "tub-2\ntub-10\nc\na\nb\n2027-05-10\n2027-06-10\n") {
		t.Error(want)
	}
	for shift := range parts {
		files := map[string]string{}
		for i, p := range parts {
			// 3 and the number of parts have no factor in common: each order is another.
			files[strings.Repeat("d/", i%3)+string(rune('a'+(3*i+shift)%len(parts)))+".care.hcl"] = p
		}
		if got := all(files); got != want {
			t.Errorf("order %d:\n%s\nand in one file:\n%s", shift, got, want)
		}
	}
}

// A root that is a link to a folder is followed.
func TestLinkedRoot(t *testing.T) {
	dir := t.TempDir()
	if err := os.MkdirAll(filepath.Join(dir, "there"), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "there", "a.care.hcl"), []byte(sound), 0o644); err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(dir, "link")
	if err := os.Symlink("there", link); err != nil {
		t.Fatal(err)
	}
	c, found, err := Load(afero.NewOsFs(), link)
	if err != nil || len(found) > 0 || len(c.Rooms) != 1 {
		t.Fatalf("%v, %v", texts(found), err)
	}
	if name := c.Files.Name(c.Rooms[0].At.File); name != filepath.ToSlash(link)+"/a.care.hcl" {
		t.Errorf("it is shown as %s", name)
	}
}

// Folders whose names begin with a dot are passed over: git and systems keep copies there.
func TestHiddenFolders(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": sound, ".git/b.care.hcl": sound, "notes.txt": "}"})
	if len(found) > 0 || c.Files.Len() != 1 {
		t.Error(texts(found))
	}
}

func TestNothingToRead(t *testing.T) {
	fs := afero.NewMemMapFs()
	_ = fs.MkdirAll("c", 0o755)
	if _, found, err := Load(fs, "c"); err != nil || !has(found, "no-plan") {
		t.Errorf("an empty folder: %v, %v", texts(found), err)
	}
	if _, _, err := Load(fs, "nowhere"); err == nil {
		t.Error("a missing folder is no error")
	}
	_ = afero.WriteFile(fs, "f", nil, 0o644)
	if _, _, err := Load(fs, "f"); err == nil {
		t.Error("a file in place of a folder is no error")
	}
}
