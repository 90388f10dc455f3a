package page

import (
	"net/url"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile/daylist"
)

// breaks makes the plan such that it is refused, and readable or not.
func (s *site) breaks(t *testing.T, readable bool) {
	t.Helper()
	const file = "c/rooms.care.hcl"
	text, err := afero.ReadFile(s.disk, file)
	if err != nil {
		t.Fatal(err)
	}
	broken := strings.Replace(string(text), `"22 to 25 C"`, `"22 to 95 C"`, 1)
	if !readable {
		broken = string(text)
		_ = afero.WriteFile(s.disk, "c/collection.care.hcl", []byte("collection \"quillmoor\" {\n  time_zone = \"Nowhere/At all\"\n}\n"), 0o644)
	}
	_ = afero.WriteFile(s.disk, file, []byte(broken), 0o644)
	s.build()
	if !s.house.Result.Refused() || (s.house.Result.Roster != nil) != readable {
		t.Fatal("the plan is not as it should be", readable)
	}
}

// TestRefused: while a plan is refused the list of the day is that of the last good one, on
// the day that it is now, without what was logged as done since; each page says so; and what
// is done is ticked off.
func TestRefused(t *testing.T) {
	for _, readable := range []bool{true, false} {
		s := quillmoor(t)
		s.now = s.now.Add(24 * time.Hour)
		s.build()
		want := left(s, "lead") // of the good plan, on the next day
		s.now = s.now.Add(-24 * time.Hour)
		s.build()
		s.breaks(t, readable)
		s.now = s.now.Add(24 * time.Hour)
		s.build()
		for _, path := range []string{"/", "/week", "/tanks", "/findings", "/calendars", "/tank/burrow-a"} {
			page := s.get(home + path).Body.String()
			wellFormed(t, path, page)
			if !strings.Contains(page, "The plan is refused") || !strings.Contains(page, "last good plan") {
				t.Errorf("%s does not say that the plan is refused", path)
			}
		}
		if sheet := s.get(home + "/paper/round?day=2026-11-26&round=evening"); sheet.Code != 200 || !strings.Contains(sheet.Body.String(), "<li>The plan is refused. ") {
			t.Errorf("a sheet that is printed does not say it: %d", sheet.Code)
		}
		q := &request{Pages: s.pages, h: s.house, v: s.visitor}
		r, shut := q.listed()
		if r == nil || shut == nil {
			t.Fatal("there is no list")
		}
		if got := stopsOf(daylist.Of(r, daylist.Asked{Days: 1, Keeper: "lead"})); !slices.Equal(got, want) {
			t.Errorf("readable %v: the list is\n%s\nand was\n%s", readable, strings.Join(got, "\n"), strings.Join(want, "\n"))
		}
		if !readable {
			continue // nothing can be noted: nobody knows the enclosures
		}
		w := s.post(home+"/tick", url.Values{"day": {"2026-11-26"}, "round": {"evening"}, "tick": {"done water*burrow-b"}})
		page := s.get(w.Header().Get("Location")).Body.String()
		if !strings.Contains(s.text(t), "2026-11-26 19:42 by lead burrow-b done water") || strings.Contains(page, `value="done water*burrow-b"`) {
			t.Errorf("it was not ticked off: %d\n%s", w.Code, s.text(t))
		}
		if !strings.Contains(page, "Logged since") || !strings.Contains(page, "2026-11-26 19:42 by lead burrow-b done water") {
			t.Error("the page does not tell what was logged since")
		}
	}
}

// TestRefusedFromTheStart: a server that was started with a refused plan knows no good one.
func TestRefusedFromTheStart(t *testing.T) {
	s := quillmoor(t)
	s.house = nil
	disk := s.disk
	text, _ := afero.ReadFile(disk, "c/rooms.care.hcl")
	_ = afero.WriteFile(disk, "c/rooms.care.hcl", []byte(strings.Replace(string(text), `"22 to 25 C"`, `"22 to 95 C"`, 1)), 0o644)
	s.build()
	if page := s.get(home + "/").Body.String(); !strings.Contains(page, "it may lack something, and it may be wrong") || !strings.Contains(page, "Burrow A") {
		t.Error("what can be read is not shown, or not as what it is")
	}
	_ = afero.WriteFile(disk, "c/collection.care.hcl", []byte("collection \"q\" {\n"), 0o644)
	s.build()
	for _, path := range []string{"/", "/week", "/tanks", "/findings", "/calendars"} {
		page := s.get(home + path).Body.String()
		wellFormed(t, path, page)
		if !strings.Contains(page, "there is no list. Look at every animal, and fill every dish.") {
			t.Errorf("%s says nothing of what to do", path)
		}
	}
}
