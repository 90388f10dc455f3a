//go:build unix

package send

import (
	"bytes"
	"compress/gzip"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/spf13/afero"

	"vivary/cmd/internal/served"
)

// calendar is one as a build writes it, of a collection; text makes it another.
func calendar(name, collection, text string) Calendar {
	var b strings.Builder
	b.WriteString("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//vivary//care calendar//EN\r\nREFRESH-INTERVAL;VALUE=DURATION:PT6H\r\nX-VIVARY-SALT:" + collection + "\r\n")
	for i := range 60 {
		fmt.Fprintf(&b, "BEGIN:VEVENT\r\nUID:%d@%s\r\nSUMMARY:%s\r\nEND:VEVENT\r\n", i, name, text)
	}
	b.WriteString("END:VCALENDAR\r\n")
	return Calendar{name, []byte(b.String())}
}

// set are the calendars of a build.
func set(text string, names ...string) (all []Calendar) {
	for _, n := range names {
		all = append(all, calendar(n, "house", text))
	}
	return all
}

// order puts calendars where anybody finds them.
func order(t testing.TB, all []Calendar) Order {
	t.Helper()
	var names []string
	for _, c := range all {
		names = append(names, c.Name)
	}
	paths, err := Paths(names, nil)
	if err != nil {
		t.Fatal(err)
	}
	return Order{Paths: paths}
}

// published publishes, and holds that nothing goes wrong.
func published(t testing.TB, to Target, all []Calendar, o Order) *Report {
	t.Helper()
	r, err := Publish(to, all, o)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func states(r *Report) (out string) {
	for _, c := range r.Calendars {
		out += c.Name + " " + c.State + " "
	}
	return strings.TrimSpace(out)
}

// everyTarget runs a test in each kind of place.
func everyTarget(t *testing.T, test func(t *testing.T, open func() Target, raw afero.Fs)) {
	t.Run("folder", func(t *testing.T) {
		dir := filepath.Join(t.TempDir(), "www")
		open := func() Target {
			to, err := Open(dir, Access{Disk: afero.NewOsFs()})
			if err != nil {
				t.Fatal(err)
			}
			return to
		}
		test(t, open, afero.NewBasePathFs(afero.NewOsFs(), dir))
	})
	t.Run("sftp", func(t *testing.T) {
		dir := filepath.Join(t.TempDir(), "www")
		s := startSSH(t)
		test(t, func() Target { return s.open(t, dir) }, afero.NewBasePathFs(afero.NewOsFs(), dir))
	})
	t.Run("sftp that cannot replace", func(t *testing.T) {
		dir := filepath.Join(t.TempDir(), "www")
		s := startSSH(t, "-P", "posix-rename,fsync")
		test(t, func() Target { return s.open(t, dir) }, afero.NewBasePathFs(afero.NewOsFs(), dir))
	})
	t.Run("s3", func(t *testing.T) {
		s := startStore(t)
		test(t, func() Target { return s.open(t, "s3://care/house") }, afero.NewBasePathFs(afero.NewOsFs(), filepath.Join(s.Dir, "care", "house")))
	})
}

// Only what changed is sent; what was lost or changed there by others is sent again; what
// is no calendar any more goes when that is asked.
func TestOnlyWhatChanged(t *testing.T) {
	everyTarget(t, func(t *testing.T, open func() Target, raw afero.Fs) {
		step := func(want string, all []Calendar, change func(*Order)) *Report {
			t.Helper()
			to := open()
			defer to.Close()
			o := order(t, all)
			if change != nil {
				change(&o)
			}
			r := published(t, to, all, o)
			if got := states(r); got != want {
				t.Errorf("%s, not %s", got, want)
			}
			return r
		}
		try := func(o *Order) { o.Try = true }
		remove := func(o *Order) { o.Remove = true }
		one := set("one", "a", "b", "d")
		if r := step("a new b new d new", one, try); r.Files == 0 {
			t.Error("nothing would be sent")
		}
		if left, _ := afero.ReadDir(raw, ""); len(left) > 0 {
			t.Errorf("a look leaves %v", left[0].Name())
		}
		first := step("a new b new d new", one, nil)
		stands(t, raw, one)
		if r := step("a unchanged b unchanged d unchanged", one, nil); r.Files != 0 {
			t.Errorf("%d files are sent again", r.Files)
		}
		two := []Calendar{one[0], calendar("b", "house", "two"), one[2]}
		if r := step("a unchanged b changed d unchanged", two, nil); r.Files != first.Files/3 {
			t.Errorf("%d files are sent for one calendar", r.Files)
		}
		stands(t, raw, two)

		// Of the same size, and lost.
		if err := afero.WriteFile(raw, "a.ics", bytes.ReplaceAll(one[0].Text, []byte("one"), []byte("eno")), 0o644); err != nil {
			t.Fatal(err)
		}
		_ = raw.Chtimes("a.ics", later, later)
		if err := raw.Remove("d.ics"); err != nil {
			t.Fatal(err)
		}
		if _, err := raw.Stat("a.ics.gz"); err == nil { // not in storage, whose mark is of its own
			step("a changed b unchanged d new", two, nil)
			stands(t, raw, two)
		} else {
			step("a unchanged b unchanged d new", two, nil)
		}

		fewer := two[:2]
		r := step("a unchanged b unchanged", fewer, nil)
		if len(r.Standing) == 0 || len(r.Removed) > 0 || r.Standing[0] != "d.ics" {
			t.Errorf("stands %v, removed %v", r.Standing, r.Removed)
		}
		if r := step("a unchanged b unchanged", fewer, func(o *Order) { try(o); remove(o) }); len(r.Removed) != first.Files/3 {
			t.Errorf("would remove %v", r.Removed)
		}
		stands(t, raw, two[2:])
		if r := step("a unchanged b unchanged", fewer, remove); len(r.Removed) != first.Files/3 {
			t.Errorf("removed %v", r.Removed)
		}
		if _, err := raw.Stat("d.ics"); !errors.Is(err, os.ErrNotExist) {
			t.Errorf("d is there: %v", err)
		}
		if r := step("a unchanged b unchanged", fewer, remove); len(r.Removed)+len(r.Standing) > 0 {
			t.Errorf("gone twice: %+v", r)
		}

		// Each address gets its key, and the old ones go.
		keys := func(o *Order) {
			o.Paths, _ = Paths([]string{"a", "b"}, func(name string) []string { return []string{"key-of-" + name} })
			o.Remove = true
		}
		if r := step("a new b new", fewer, keys); len(r.Removed) != 2*first.Files/3 {
			t.Errorf("%+v", r)
		}
		if text, err := afero.ReadFile(raw, "c/key-of-b/b.ics"); err != nil || !bytes.Equal(text, fewer[1].Text) {
			t.Errorf("%v", err)
		}
		text, err := afero.ReadFile(raw, manifestName)
		if err != nil || bytes.Contains(text, []byte("key-of")) {
			t.Errorf("the manifest names keys: %v", err)
		}
		if r := step("a unchanged b unchanged", fewer, keys); r.Files+len(r.Removed) > 0 {
			t.Errorf("%+v", r)
		}
	})
}

// stands holds that calendars stand there, and compressed beside them where there is such.
func stands(t testing.TB, raw afero.Fs, all []Calendar) {
	t.Helper()
	for _, c := range all {
		text, err := afero.ReadFile(raw, c.Name+".ics")
		if err != nil || !bytes.Equal(text, c.Text) {
			t.Errorf("%s is another one: %v, %d bytes", c.Name, err, len(text))
		}
		packed, err := afero.ReadFile(raw, c.Name+".ics.gz")
		if errors.Is(err, os.ErrNotExist) {
			continue
		}
		if text, e := unpacked(packed); err != nil || e != nil || !bytes.Equal(text, c.Text) {
			t.Errorf("%s is another one, compressed: %v, %v", c.Name, err, e)
		}
	}
}

func unpacked(packed []byte) ([]byte, error) {
	r, err := gzip.NewReader(bytes.NewReader(packed))
	if err != nil {
		return nil, err
	}
	return io.ReadAll(r)
}

// A manifest that is lost, damaged or of another time means that all is sent, and is whole
// again afterwards; what it says is of the form that is published.
func TestManifest(t *testing.T) {
	described := schemaOf(t, "sent")
	everyTarget(t, func(t *testing.T, open func() Target, raw afero.Fs) {
		all := set("one", "a", "b")
		to := open()
		defer to.Close()
		published(t, to, all, order(t, all))
		whole, err := afero.ReadFile(raw, manifestName)
		if err != nil {
			t.Fatal(err)
		}
		for _, text := range []string{"", "{", string(whole[:len(whole)/2]), "[]", "null", strings.Replace(string(whole), `"version": 1`, `"version": 2`, 1), "\x00\xff", "gone"} {
			if text == "gone" {
				err = raw.Remove(manifestName)
			} else {
				err = afero.WriteFile(raw, manifestName, []byte(text), 0o644)
			}
			if err != nil {
				t.Fatal(err)
			}
			r := published(t, to, all, order(t, all))
			if states(r) != "a changed b changed" || r.Damaged != (text != "gone") {
				t.Errorf("%.9q: %s, damaged %t", text, states(r), r.Damaged)
			}
			stands(t, raw, all)
			if states(published(t, to, all, order(t, all))) != "a unchanged b unchanged" {
				t.Errorf("%.9q: sent again", text)
			}
		}
		text, _ := afero.ReadFile(raw, manifestName)
		form, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
		if err != nil {
			t.Fatal(err)
		}
		if err := described.Validate(form); err != nil {
			t.Error(err)
		}
		var m manifest
		if err := json.Unmarshal(text, &m); err != nil || len(m.Files) < 2 || m.Files[0].Cache != served.CacheControl(all[0].Text) || m.Files[0].Sum != sum(all[0].Text) {
			t.Errorf("%v, %+v", err, m)
		}
	})
}

// What somebody else put there is never replaced or removed, and the calendars of two
// collections do not mix.
func TestWhoseItIs(t *testing.T) {
	everyTarget(t, func(t *testing.T, open func() Target, raw afero.Fs) {
		all := set("one", "a", "b")
		to := open()
		defer to.Close()
		_ = raw.MkdirAll("", 0o755)
		if err := afero.WriteFile(raw, "b.ics", []byte("BEGIN:VCALENDAR\r\nPRODID:-//else//EN\r\nEND:VCALENDAR\r\n"), 0o644); err != nil {
			t.Fatal(err)
		}
		if _, err := Publish(to, all, order(t, all)); !errors.Is(err, ErrForeign) {
			t.Errorf("it is replaced: %v", err)
		}
		if _, err := raw.Stat("a.ics"); !errors.Is(err, os.ErrNotExist) {
			t.Errorf("and yet something was sent: %v", err)
		}
		if err := raw.Remove("b.ics"); err != nil {
			t.Fatal(err)
		}
		published(t, to, all, order(t, all))
		other := []Calendar{calendar("a", "barn", "three")}
		if _, err := Publish(to, other, order(t, other)); !errors.Is(err, ErrOther) {
			t.Errorf("two collections in one place: %v", err)
		}
		stands(t, raw, all)

		// Ours once, and somebody else's now.
		if err := raw.Remove("b.ics"); err != nil {
			t.Fatal(err)
		}
		if err := afero.WriteFile(raw, "b.ics", []byte("BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n"), 0o644); err != nil {
			t.Fatal(err)
		}
		o := order(t, all[:1])
		o.Remove = true
		r := published(t, to, all[:1], o)
		if len(r.Others) != 1 || r.Others[0] != "b.ics" {
			t.Errorf("%+v", r)
		}
		if _, err := raw.Stat("b.ics"); err != nil {
			t.Error(err)
		}
	})
}

func schemaOf(t *testing.T, name string) *jsonschema.Schema {
	t.Helper()
	c := jsonschema.NewCompiler()
	text, err := os.ReadFile("../../../schema/json/" + name + ".schema.json")
	if err != nil {
		t.Fatal(err)
	}
	schema, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err == nil {
		err = c.AddResource("http://forms.example/x", schema)
	}
	if err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("http://forms.example/x")
	if err != nil {
		t.Fatal(err)
	}
	return s
}
