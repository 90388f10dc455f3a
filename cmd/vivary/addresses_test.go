package main

import (
	"path"
	"strings"
	"testing"

	"github.com/spf13/afero"
)

const addressed = `collection "home" {
  time_zone = "Europe/London"
  web       = "https://public.example/feeds"
}
keeper "lead" {
}
round "evening" {
  at = "19:30"
}
calendar "evening" {
}
room "east" {
  temperature = "22 to 25 C"
}
`

// published are the calendars that stand in a folder, by their paths there, unfolded.
func published(t *testing.T, disk afero.Fs, dir string) map[string]string {
	t.Helper()
	all := map[string]string{}
	for _, pattern := range []string{"*.ics", "c/*/*.ics"} {
		found, err := afero.Glob(disk, path.Join(dir, pattern))
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range found {
			text, err := afero.ReadFile(disk, name)
			if err != nil {
				t.Fatal(err)
			}
			all[strings.TrimPrefix(name, dir+"/")] = strings.ReplaceAll(string(text), "\r\n ", "")
		}
	}
	return all
}

// does runs a command that has to succeed, and returns what it prints.
func does(t *testing.T, disk afero.Fs, line string) string {
	t.Helper()
	status, out, wrong := at(disk, noon, strings.Fields(line)...)
	if status != fine {
		t.Fatalf("%s: %d\n%s%s", line, status, out, wrong)
	}
	return out + wrong
}

// TestPublishedSource: a calendar that is published says the address at which it is read: its
// private one where it is said how the place is reached, else none, and never a public one
// beside a key.
func TestPublishedSource(t *testing.T) {
	disk := afero.NewMemMapFs()
	if err := afero.WriteFile(disk, "c/plan.care.hcl", []byte(addressed), 0o644); err != nil {
		t.Fatal(err)
	}
	does(t, disk, "build c")
	for _, c := range []struct{ flags, want string }{
		{"", "https://public.example/feeds/evening.ics"},
		{" --private --keys /k/home.keys", ""},
		{" --private --keys /k/home.keys --address https://care.example/", "https://care.example/"},
	} {
		does(t, disk, "publish c www"+c.flags+" --remove")
		all := published(t, disk, "www")
		if len(all) != 1 {
			t.Fatalf("%s: %d calendars", c.flags, len(all))
		}
		for at, text := range all {
			want := c.want
			if strings.HasSuffix(want, "/") {
				want += at
			}
			_, source, _ := strings.Cut(text, "\r\nSOURCE;VALUE=URI:")
			if source, _, _ = strings.Cut(source, "\r\n"); source != want {
				t.Errorf("%s: %q, not %q", c.flags, source, want)
			}
		}
		if again := does(t, disk, "publish c www"+c.flags); !strings.Contains(again, "Nothing to send") {
			t.Error(again)
		}
	}
	if status, _, wrong := at(disk, noon, "publish", "c", "www", "--address", "https://care.example"); status != usage || !strings.Contains(wrong, "--private") {
		t.Error(status, wrong)
	}
}

// TestPublishedRenamed: whoever fetches a calendar by the name and the key that it had before
// has what it is now, also after it was renamed again.
func TestPublishedRenamed(t *testing.T) {
	disk := afero.NewMemMapFs()
	write := func(calendar string) {
		text := strings.Replace(addressed, "calendar \"evening\" {\n", calendar, 1)
		if err := afero.WriteFile(disk, "c/plan.care.hcl", []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		does(t, disk, "build c")
		does(t, disk, "publish c www")
		does(t, disk, "publish c secret --private --keys /k/home.keys --address https://care.example")
	}
	write("calendar \"evening\" {\n")
	var old []string
	for _, dir := range []string{"www", "secret"} {
		for at := range published(t, disk, dir) {
			old = append(old, dir+" "+at)
		}
	}
	for _, name := range []string{"late", "night"} {
		write("calendar \"" + name + "\" {\n  title = \"Now " + name + "\"\n  formerly = \"evening\"\n")
		for _, x := range old {
			dir, at, _ := strings.Cut(x, " ")
			all := published(t, disk, dir)
			now := path.Join(path.Dir(at), name+".ics")
			if all[at] == "" || all[at] != all[now] || !strings.Contains(all[at], "Now "+name) {
				t.Errorf("%s does not lead to %s", x, now)
			}
			if want := map[string]string{"www": "https://public.example/feeds/", "secret": "https://care.example/"}[dir] + now; !strings.Contains(all[at], "\r\nSOURCE;VALUE=URI:"+want+"\r\n") {
				t.Errorf("%s does not say that it is at %s now", x, want)
			}
		}
	}
	if out := does(t, disk, "keys c --keys /k/home.keys"); strings.Contains(out, "New:") || strings.Count(out, "calendar") != 1 || !strings.Contains(out, "/night.ics") {
		t.Error(out)
	}
}

// TestPublishedTwoKeys: a calendar that was published under its new name before anybody wrote
// what it was called formerly has two addresses, and goes on under both.
func TestPublishedTwoKeys(t *testing.T) {
	disk := afero.NewMemMapFs()
	write := func(calendar string) map[string]string {
		text := strings.Replace(addressed, "calendar \"evening\" {\n", calendar, 1)
		if err := afero.WriteFile(disk, "c/plan.care.hcl", []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		does(t, disk, "build c")
		does(t, disk, "publish c secret --private --keys /k/home.keys --address https://care.example --remove")
		return published(t, disk, "secret")
	}
	old := write("calendar \"evening\" {\n")
	between := write("calendar \"late\" {\n  title = \"Late\"\n")
	now := write("calendar \"late\" {\n  title = \"It is late\"\n  formerly = \"evening\"\n")
	for what, all := range map[string]map[string]string{"evening": old, "late": between} {
		for at := range all {
			if path.Base(at) == what+".ics" && !strings.Contains(now[at], "It is late") {
				t.Errorf("%s of before does not lead to what it is now", at)
			}
		}
	}
	sources := map[string]bool{}
	for _, text := range now {
		_, source, _ := strings.Cut(text, "\r\nSOURCE;VALUE=URI:")
		source, _, _ = strings.Cut(source, "\r\n")
		sources[source] = true
	}
	if len(sources) != 1 {
		t.Errorf("its own address is told in several ways: %v", sources)
	}
}
