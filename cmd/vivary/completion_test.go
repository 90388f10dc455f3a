package main

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"
)

// offered are the names that are offered for the last word of a line, in a collection.
func offered(t *testing.T, disk afero.Fs, line ...string) []string {
	t.Helper()
	status, out, errs := at(disk, noon, append([]string{hidden}, line...)...)
	if status != fine || errs != "" {
		t.Errorf("%q: status %d, %s", line, status, errs)
	}
	var names []string
	for l := range strings.Lines(out) {
		name, _, tab := strings.Cut(strings.TrimSpace(l), "\t")
		if !tab && name[0] != ':' && !strings.HasSuffix(l, "\t\n") {
			t.Errorf("%q: %q has no tab", line, l)
		}
		names = append(names, name)
	}
	return names
}

// At each place what may stand there is offered, and nothing else: flags of the command, names
// of the collection, words of the log.
func TestOffers(t *testing.T) {
	disk := quillmoorWith(t)
	all := func(words string) []string { return strings.Fields(words) }
	for _, c := range []struct{ line, want []string }{
		{[]string{"co"}, all("cover compare completion")},
		{[]string{"note", "bur"}, all("burrow-a burrow-b")},
		{[]string{"note", "yesterday", "bur"}, all("burrow-a burrow-b")},
		{[]string{"note", "2", "days", "ago", "bur"}, all("burrow-a burrow-b")},
		{[]string{"note", "burrow-a,bur"}, all("burrow-a,burrow-b")},
		{[]string{"note", "tub-7", "to", "tub-1"}, all("tub-1 tub-10 tub-11 tub-12 tub-13 tub-14 tub-15 tub-16 tub-17 tub-18 tub-19")},
		{[]string{"note", "burrow-a", "ref"}, all("refused")},
		{[]string{"note", "burrow-a", "adults", "ref"}, all("refused")},
		{[]string{"note", "burrow-a", "done", "wa"}, all("water")},
		{[]string{"note", "burrow-a", "measured", "29", "C", "ro"}, all("room")},
		{[]string{"note", "burrow-b", "separated", "12", "bur"}, all("burrow-a burrow-b")},
		{[]string{"note", "keeper", ""}, all("lead relief")},
		{[]string{"note", "keeper", "lead", ""}, all("away back")},
		{[]string{"note", "--undo", "burrow-"}, all("burrow-a burrow-b")},
		{[]string{"note", "--", "burrow-a", "--"}, nil},
		{[]string{"note", "2026-11-2"}, all("2026-11-25 2026-11-24 2026-11-23 2026-11-22 2026-11-21 2026-11-20")},
		{[]string{"due", "--keeper", ""}, all("lead relief")},
		{[]string{"due", "--round=e"}, all("--round=evening")},
		{[]string{"due", "--round", "=", "e"}, all("evening")}, // as bash parts it
		{[]string{"due", "--round", "="}, all("morning evening")},
		{[]string{"due", "--d"}, all("--days")},
		{[]string{"--days", "3", "due", "--d"}, nil},
		{[]string{"due", "--undo"}, nil},
		{[]string{"check", "--format", ""}, all("text json sarif")},
		{[]string{"due", "--format", ""}, all("text json")},
		{[]string{"register", "--format", ""}, all("text json csv")},
		{[]string{"register", "--from", "2026-11-2"}, all("2026-11-25 2026-11-24 2026-11-23 2026-11-22 2026-11-21 2026-11-20")},
		{[]string{"due", ""}, all(":folders")},
		{[]string{"due", "--paper", ""}, all(":files")},
		{[]string{"due", "--out=f"}, all(":folders")},
		{[]string{"keys", "--renew", "re"}, all("relief relief")}, // a calendar and a keeper
		{[]string{"why", "burrow-b/mi"}, all("burrow-b/mist")},
		{[]string{"why", "burrow-b/mist", "--on", ""}, all("2026-11-25 2026-11-26 2026-11-27 2026-11-28 2026-11-29 2026-11-30 2026-12-01 2026-12-02 2026-12-03 2026-12-04 2026-12-05 2026-12-06 2026-12-07 2026-12-08")},
		{[]string{"why", "venom-unl"}, all("venom-unlocked")},
		{[]string{"why", "pandinus"}, all("pandinus-imperator")},
		{[]string{"why", "K1"}, all("K1 K10 K11 K12 K13 K14 K15 K16 K17 K18 K19")},
		{[]string{"start", "--type", "centi"}, all("centipede")},
		{[]string{"help", "w"}, all("why")},
		{[]string{"completion", ""}, all("bash zsh fish")},
		{[]string{"labels", "burrow-a", "burrow"}, all("burrow-a burrow-b")},
		{[]string{"weather", ""}, nil},
		{[]string{"version", ""}, nil},
		{[]string{"--in", "nowhere", "due", "--keeper", ""}, nil},
	} {
		got := offered(t, disk, c.line...)
		if c.line[0] == "why" && c.line[1] == "K1" {
			got = slices.DeleteFunc(got, func(s string) bool { return len(s) > 3 })
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%q: %q, not %q", c.line, got, c.want)
		}
	}
	if n := len(offered(t, disk)); n != len(commands) {
		t.Errorf("%d commands are offered of %d", n, len(commands))
	}
}

// Whatever is wrong with a plan, what can be read of it is offered, and nothing is said.
func TestOffersOfBrokenPlans(t *testing.T) {
	for name, plan := range map[string]string{
		"torn": "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nkeeper \"lead\" {\n}\nenclosure \"tub-1\" {\n  species = \"pandinus-imperator\"\n}\nenclosure \"tub-2\" {\n  species = \"",
		"odd":  "keeper \"le\x1b[2Jad\tx\" {\n}\nenclosure \"a b\" {\n}\nenclosure \"\xff\" {\n}\nroom {", "none": "",
	} {
		disk := afero.NewMemMapFs()
		if err := afero.WriteFile(disk, "a.care.hcl", []byte(plan), 0o644); err != nil {
			t.Fatal(err)
		}
		for _, line := range [][]string{{"note", ""}, {"note", "tub-1", ""}, {"note", "tub-1", "done", ""}, {"why", ""}, {"why", "tub-1/"}, {"due", "--keeper", ""}, {"due", "--now", "x", "--now", ""}, {"labels", "a,,"}, {"note", "to", "to", ""}, {"note", ",", ""}, {"note", "last", ""}, {"note", "\"", ""}} {
			got := offered(t, disk, line...)
			if name == "torn" && line[0] == "note" && len(line) == 2 && !slices.Contains(got, "tub-1") {
				t.Errorf("%s: %q: %q", name, line, got)
			}
			if slices.ContainsFunc(got, func(s string) bool { return strings.ContainsAny(s, "\x1b\n") }) {
				t.Errorf("%s: %q: %q", name, line, got)
			}
		}
	}
}

// installed builds the program, as it is installed, and returns the folder it is in.
func installed(t *testing.T) string {
	t.Helper()
	bin := t.TempDir()
	if out, err := exec.Command("go", "build", "-o", filepath.Join(bin, "vivary"), ".").CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	t.Setenv("PATH", bin+string(os.PathListSeparator)+os.Getenv("PATH"))
	return bin
}

// In each shell, what is typed up to the tabulator is completed or its names are shown.
func TestShells(t *testing.T) {
	installed(t)
	house, err := filepath.Abs("../../examples/quillmoor")
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	for _, s := range shells {
		status, text, errs := at(nil, noon, "completion", s[0])
		if err := os.WriteFile(filepath.Join(dir, s[1]), []byte(text), 0o644); status != fine || errs != "" || err != nil {
			t.Fatal(status, errs, err)
		}
	}
	t.Setenv("HOME", dir)
	t.Setenv("TERM", "xterm")
	begin := func(first string) [2]string {
		return [2]string{first + " cd " + house + "; PS1='rea''dy:'\n", "ready:$"}
	}
	steps := map[string][][2]string{
		"bash": {begin("bind 'set show-all-if-ambiguous on'; source " + dir + "/vivary.bash;"),
			{"vivary note bur\t", `burrow-a +burrow-b`}, {"a ref\t", `refused $`}, {"\x15vivary due --round=ev\t", `--round=evening $`},
			{"\x15vivary why burrow-b/mi\t", `burrow-b/mist $`}, {"\x15vivary due encl\t", `enclosures/$`}},
		"zsh": {begin("unset zle_bracketed_paste; unsetopt promptsp; autoload -U compinit; compinit -u -D; source " + dir + "/_vivary;"),
			{"vivary note bur\t\t", `burrow-a +-- Burrow A\s+burrow-b +-- Burrow B`}, {"\x15vivary note burrow-a ref\t", `refused`}, {"\x15vivary due --round=ev\t", `--round=evening`},
			{"\x15vivary why burrow-b/mi\t", `burrow-b/mist`}, {"\x15vivary due encl\t", `enclosures/`}},
	}
	for shell, typed := range steps {
		text, err := json.Marshal(typed)
		if err != nil {
			t.Fatal(err)
		}
		command := map[string][]string{"bash": {"bash", "--norc", "--noprofile", "-i"}, "zsh": {"zsh", "-f", "-i"}}[shell]
		if out, err := exec.Command("python3", append([]string{filepath.Join("../../testdata/oracles/programs", "typed.py"), string(text)}, command...)...).CombinedOutput(); err != nil {
			t.Errorf("%s: %v\n%s", shell, err, out)
		}
	}
	for line, want := range map[string]string{"note bur": "burrow-a\tBurrow A\nburrow-b\tBurrow B\n", "note burrow-a ref": "refused\tA meal was refused.\n", "due --round=ev": "--round=evening\n", "why burrow-b/mi": "burrow-b/mist\n", "due encl": "enclosures/\tfolder\n"} {
		fish := exec.Command("fish", "--no-config", "-c", "source "+dir+"/vivary.fish; cd "+house+"; complete -C 'vivary "+line+"'")
		out, err := fish.CombinedOutput()
		if err != nil || string(out) != want {
			t.Errorf("fish: %s: %v\n%s", line, err, out)
		}
	}
}

// Names are there before anybody waits for them: in a hundred milliseconds of the processor,
// all that goes on beside it left out; and half as much again where two processors share a
// core, which is not to be seen from here.
func TestOffersAtOnce(t *testing.T) {
	bin := installed(t)
	for _, line := range []string{"note ", "why ", "why p", "note burrow-a done ", "why burrow-a/", "keys --renew "} {
		least := time.Minute
		for range 15 {
			c := exec.Command(filepath.Join(bin, "vivary"), append([]string{hidden}, strings.Split(line, " ")...)...)
			c.Dir = "../../examples/quillmoor"
			if err := c.Run(); err != nil {
				t.Fatal(err)
			}
			least = min(least, c.ProcessState.UserTime()+c.ProcessState.SystemTime())
		}
		if t.Logf("%q: %v", line, least); least > 150*time.Millisecond {
			t.Errorf("%q takes %v", line, least)
		}
	}
}
