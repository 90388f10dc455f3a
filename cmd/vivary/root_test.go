package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/spf13/afero"
)

// Whatever folder of a collection a command is given, it is about the whole of it.
func TestRoot(t *testing.T) {
	const block = "collection \"c\" {\n}\n"
	for _, x := range []struct {
		name, named, want string
		files             map[string]string
	}{
		{"the folder itself", "c", "c", map[string]string{"c/a.care.hcl": block}},
		{"a folder of enclosures", "c/enclosures", "c", map[string]string{"c/a.care.hcl": block, "c/enclosures/x.care.hcl": "enclosure \"x\" {\n}\n"}},
		{"a folder without plans", "c/records/old", "c", map[string]string{"c/a.care.hcl": block, "c/records/old/2024.care.log": ""}},
		{"the block below", "c", "c", map[string]string{"c/setup/a.care.hcl": block, "a.care.hcl": block}},
		{"the nearest", "c/d/e", "c/d", map[string]string{"c/a.care.hcl": block, "c/d/a.care.hcl": block, "c/d/e/x.care.log": ""}},
		{"a plan that is torn", "c/enclosures", "c", map[string]string{"c/a.care.hcl": "collection \"c {\n", "c/enclosures/x.care.hcl": ""}},
		{"with a byte order mark", "c/enclosures", "c", map[string]string{"c/a.care.hcl": "\ufeffcollection \"c\" {\n}\n", "c/enclosures/x.care.hcl": ""}},
		{"no block at all", "c/d/e", "c", map[string]string{"c/a.care.hcl": "", "c/d/b.care.hcl": "", "c/d/e/x.care.hcl": ""}},
		{"no block, and a stranger above", "c/d/e", "c/d/e", map[string]string{"c/a.care.hcl": "", "c/d/e/x.care.hcl": ""}},
		{"no plan at all", "c/d", "c/d", map[string]string{"c/d/x.txt": ""}},
		{"a word only", "c/d", "c/d", map[string]string{"c/a.care.hcl": "# a collection of mine\nroom \"a\" {\n}\n", "c/d/x.txt": ""}},
		{"hidden", "c/d", "c/d", map[string]string{"c/.a.care.hcl": block, "c/d/x.txt": ""}},
		{"not there", "c/x", "c/x", map[string]string{"c/a.care.hcl": block}},
	} {
		disk := afero.NewMemMapFs()
		for path, text := range x.files {
			_ = afero.WriteFile(disk, path, []byte(text), 0o644)
		}
		if got := filepath.ToSlash(rootOf(disk, x.named)); got != x.want {
			t.Errorf("%s: the collection of %s is in %s, want %s", x.name, x.named, got, x.want)
		}
	}
}

// A note in a folder of the collection goes into its one log, and where there is no
// collection it is not written.
func TestOneLog(t *testing.T) {
	disk := afero.NewBasePathFs(afero.NewOsFs(), t.TempDir())
	at(disk, noon, "start", "c")
	for _, in := range []string{"c/enclosures", "c/records", "c"} {
		s, out, e := at(disk, noon, "note", "--in", in, "burrow-a", "remark", "in "+in)
		if s != fine || !strings.HasPrefix(out, "c/records/2026.care.log: ") {
			t.Errorf("in %s: status %d, %s%s", in, s, out, e)
		}
		if said := strings.Contains(e, "The collection is the one in "); said != (in != "c") {
			t.Errorf("in %s: %q", in, e)
		}
	}
	var logs []string
	_ = afero.Walk(disk, "c", func(path string, _ os.FileInfo, _ error) error {
		if strings.HasSuffix(path, ".care.log") {
			logs = append(logs, path)
		}
		return nil
	})
	if len(logs) != 1 {
		t.Errorf("logs: %v", logs)
	}
	_ = disk.MkdirAll("d/e", 0o755)
	_ = afero.WriteFile(disk, "d/e/x.care.hcl", []byte("enclosure \"box\" {\n  species = \"pandinus-imperator\"\n\n  animals \"one\" {\n    count = 1\n  }\n}\n"), 0o644)
	if s, out, e := at(disk, noon, "note", "--in", "d/e", "box", "refused"); s != refused || !strings.Contains(e, "collection block") || out != "" {
		t.Errorf("without a collection: status %d, %s%s", s, out, e)
	}
}
