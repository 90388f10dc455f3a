package keys

import (
	"crypto/rand"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/spf13/afero"
)

// TestRenamed: whatever is called otherwise keeps its address, however often, whatever else
// takes its old name, and also where it had been given another one meanwhile.
func TestRenamed(t *testing.T) {
	type step struct {
		calendars string // "NAME" or "NAME<FIRST"
		standing  string
		leads     string // "NAME:KEYS", by the order in which keys were made
	}
	for about, steps := range map[string][]step{
		"once":                      {{"a", "", "a:1"}, {"b<a", "", "b:1"}, {"b<a", "a", "b:1"}},
		"again":                     {{"a", "", "a:1"}, {"b<a", "", "b:1"}, {"c<a", "b a", "c:1"}},
		"and back":                  {{"a", "", "a:1"}, {"b<a", "", "b:1"}, {"a", "", "a:1"}, {"a b", "", "a:1 b:2"}},
		"two change names":          {{"a b", "", "a:1 b:2"}, {"b<a a<b", "", "b:1 a:2"}, {"b<a a<b", "", "b:1 a:2"}, {"a b", "", "a:1 b:2"}},
		"three in a ring":           {{"a b c", "", "a:1 b:2 c:3"}, {"b<a c<b a<c", "", "b:1 c:2 a:3"}},
		"built before it was said":  {{"a", "", "a:1"}, {"b", "a", "a:1 b:2"}, {"b<a", "a", "b:1,2"}, {"c<a", "b", "c:1,2"}},
		"the wrong first name":      {{"a", "", "a:1"}, {"b<a", "", "b:1"}, {"c<b", "", "c:1"}, {"d<a", "", "d:1"}},
		"a block that is torn":      {{"a", "", "a:1"}, {"b<a", "a", "b:1"}, {"", "a b", "b:1"}, {"b<a", "a", "b:1"}},
		"gone, and there again":     {{"a", "", "a:1"}, {"b<a", "", "b:1"}, {"", "", "b:1"}, {"b<a", "", "b:1"}},
		"not built yet":             {{"a", "", "a:1"}, {"", "a", "a:1"}, {"b<a", "a", "b:1"}},
		"another of a name of once": {{"a", "", "a:1"}, {"b<a", "", "b:1"}, {"c<a b", "", "c:1 b:2"}},
	} {
		disk := afero.NewMemMapFs()
		made := map[Key]string{}
		for i, s := range steps {
			want := Wanted{Standing: strings.Fields(s.standing)}
			for _, x := range strings.Fields(s.calendars) {
				name, first, other := strings.Cut(x, "<")
				if !other {
					first = name
				}
				want.Calendars = append(want.Calendars, Named{name, first})
			}
			want.Keepers = want.Calendars
			r, _, err := Fill(disk, path, want, rand.Reader)
			if err != nil {
				t.Fatalf("%s, %d: %v", about, i, err)
			}
			text, _ := afero.ReadFile(disk, path)
			if _, _, err := Fill(disk, path, want, rand.Reader); err != nil {
				t.Fatal(err)
			}
			if again, _ := afero.ReadFile(disk, path); string(again) != string(text) {
				t.Errorf("%s, %d: written again\n%s\n%s", about, i, text, again)
			}
			var leads []string
			for _, name := range byKey(r, made) {
				of := made[r.Calendars[name]]
				for _, k := range r.Former["calendar "+name].Keys {
					of += "," + made[k]
				}
				leads = append(leads, name+":"+of)
			}
			slices.Sort(leads)
			now := strings.Fields(s.leads)
			slices.Sort(now)
			if !slices.Equal(leads, now) {
				t.Errorf("%s, %d: %v, not %v\n%s", about, i, leads, now, text)
			}
			if i == len(steps)-1 && s.standing == "" && len(r.Keepers) != len(r.Calendars) {
				t.Errorf("%s: keepers are not as calendars are:\n%s", about, text)
			}
		}
	}
}

// byKey are the names of calendars, and numbers keys that are new in the order of names.
func byKey(r *Ring, made map[Key]string) []string {
	all := slices.Sorted(maps.Keys(r.Calendars))
	for _, name := range all {
		if k := r.Calendars[name]; made[k] == "" {
			made[k] = string(rune('1' + len(made)))
		}
	}
	return all
}

// TestRenamedMail: a keeper's mail goes with the name, a comment stays, and a key that is
// renewed takes every address of before away.
func TestRenamedMail(t *testing.T) {
	disk := afero.NewMemMapFs()
	text := "# ours\nkeeper \"relief\" {\n  key  = \"AAAAAAAAAAAAAAAAAAAAAA\"\n  mail = \"relief@quillmoor.example\" # at home\n}\n\nkeeper \"sam\" {\n  key = \"BBBBBBBBBBBBBBBBBBBBBB\"\n}\n"
	if err := afero.WriteFile(disk, path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	r, _, err := Fill(disk, path, Wanted{Keepers: []Named{{"sam", "relief"}}}, rand.Reader)
	if err != nil || len(r.Keepers) != 1 || r.Keepers["sam"] != (Keeper{"AAAAAAAAAAAAAAAAAAAAAA", "relief@quillmoor.example"}) || r.Former["keeper sam"].Keys[0] != "BBBBBBBBBBBBBBBBBBBBBB" {
		t.Fatal(r, err)
	}
	if now, _ := afero.ReadFile(disk, path); !strings.Contains(string(now), "# ours") || !strings.Contains(string(now), "# at home") {
		t.Errorf("a comment is lost:\n%s", now)
	}
	if _, err := Renew(disk, path, "sam", rand.Reader); err != nil {
		t.Fatal(err)
	}
	r, err = Read(disk, path)
	if err != nil || r.Keepers["sam"].Key[0] == 'A' && r.Keepers["sam"].Key[1] == 'A' || len(r.Former["keeper sam"].Keys) != 0 || r.Keepers["sam"].Mail == "" {
		t.Error(r, err)
	}
}
