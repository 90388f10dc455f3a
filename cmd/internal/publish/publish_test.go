package publish

import (
	"errors"
	"strings"
	"testing"

	"github.com/spf13/afero"
)

// stuck is a disk on which one file cannot be replaced.
type stuck struct {
	afero.Fs
	name string
}

func (d stuck) Rename(from, to string) error {
	if strings.HasSuffix(to, d.name) {
		return errors.New("in use")
	}
	return d.Fs.Rename(from, to)
}

// Where a file cannot be replaced, it and those after it stay whole, nothing
// staged is left behind, and the error names it.
func TestStuck(t *testing.T) {
	mem := afero.NewMemMapFs()
	for _, name := range []string{"a", "b", "c"} {
		_ = afero.WriteFile(mem, "d/"+name, []byte("old"), 0o644)
	}
	batch, err := Begin(stuck{mem, "b"}, "d")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"a", "b", "c"} {
		if err := batch.Stage(name, []byte("new")); err != nil {
			t.Fatal(err)
		}
	}
	if err := batch.Commit(); err == nil || !strings.Contains(err.Error(), "d/b") {
		t.Errorf("error: %v", err)
	}
	var got []string
	list, _ := afero.ReadDir(mem, "d")
	for _, x := range list {
		text, _ := afero.ReadFile(mem, "d/"+x.Name())
		got = append(got, x.Name()+" "+string(text))
	}
	if s := strings.Join(got, ", "); s != "a new, b old, c old" {
		t.Error(s)
	}
}
