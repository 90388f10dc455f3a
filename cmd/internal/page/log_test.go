package page

import (
	"net/http"
	"net/url"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/schema"
)

// TestEachForm fills in the form of each word of the log, as a keeper would, and holds that
// the log has that line, or that the page says why not; then the form has still what was typed.
func TestEachForm(t *testing.T) {
	fill := map[schema.After]url.Values{
		schema.AfterNumber:    {"n": {"1"}},
		schema.AfterPrey:      {"n": {"2"}, "prey": {"cricket"}},
		schema.AfterEnclosure: {"n": {"1"}, "to": {"tub-2"}},
		schema.AfterWeight:    {"weight": {"12.4 g"}},
		schema.AfterCare:      {"care": {"water"}},
		schema.AfterDays:      {"n": {"10"}},
		schema.AfterMeasure:   {"humidity": {"74"}, "spot": {"28.5"}, "air": {"24,5"}, "room": {"23"}},
		schema.AfterTest:      {"test": {"NaCl 22 C 71 %"}},
	}
	want := map[string]string{
		"fed": "tub-1 fed 2 cricket", "moved": "tub-1 moved 1 to tub-2", "weighed": "tub-1 weighed 12.4 g", "done": "tub-1 done water", "treated": "tub-1 treated 10 days",
		"measured": "tub-1 measured 74 % spot 28.5 C air 24.5 C room 23 C", "moult": "tub-1 moult 1", "remark": `tub-1 remark "as seen \"twice\""`,
	}
	written := 0
	for _, w := range schema.LogWords {
		s := quillmoor(t)
		path := home + "/tank/tub-1/log/" + w.Name
		if w == schema.WordWithdrawn {
			if s.get(path).Code != http.StatusNotFound {
				t.Error("a form takes back any line")
			}
			continue
		}
		wellFormed(t, w.Name, s.get(path).Body.String())
		form := url.Values{"day": {"2026-11-25"}, "at": {"19:40"}, "note": {"as seen\n\"twice\""}}
		for k, v := range fill[w.After] {
			form[k] = v
		}
		a := s.post(path, form)
		switch line := "2026-11-25 19:40 by lead " + want[w.Name]; {
		case a.Code == http.StatusSeeOther:
			page := s.get(a.Header().Get("Location")).Body.String()
			wellFormed(t, w.Name, page)
			if strings.Contains(page, "Noted: ") {
				written++
			}
			if want[w.Name] != "" && !strings.Contains(s.text(t), line) {
				t.Errorf("%s: the log has no %s:\n%s", w.Name, line, s.text(t))
			}
			log := s.text(t)
			s.now = s.now.Add(time.Minute)
			if s.post(path, form); s.text(t) != log && w != schema.WordDied {
				t.Errorf("%s: the same form sent twice wrote twice:\n%s", w.Name, s.text(t))
			}
		case a.Code == http.StatusUnprocessableEntity:
			page := a.Body.String()
			wellFormed(t, w.Name, page)
			if want[w.Name] != "" || !strings.Contains(page, "Nothing was written.") || !strings.Contains(page, "as seen") {
				t.Errorf("%s: refused: %s", w.Name, pageWords(page))
			}
		default:
			t.Errorf("%s: %d", w.Name, a.Code)
		}
	}
	if written < 20 {
		t.Errorf("only %d words were written", written)
	}
}

// TestWrongFields: what cannot be so is said beside the form, and nothing is written.
func TestWrongFields(t *testing.T) {
	s := quillmoor(t)
	before := s.text(t)
	for _, c := range []struct {
		word, says string
		form       url.Values
	}{
		{"moult", "the day is missing", url.Values{}},
		{"moult", "still to come", url.Values{"day": {"2026-11-26"}}},
		{"moult", "the time", url.Values{"day": {"2026-11-25"}, "at": {"soon"}}},
		{"moult", "how many is a number", url.Values{"day": {"2026-11-25"}, "n": {"some"}}},
		{"moult", "", url.Values{"day": {"2026-11-25"}, "group": {"nobody"}}},
		{"moult", "no word of a log", url.Values{"day": {"2026-11-25"}, "group": {"a \"b"}}},
		{"moved", "where they went is missing", url.Values{"day": {"2026-11-25"}}},
		{"weighed", "the weight is missing", url.Values{"day": {"2026-11-25"}}},
		{"measured", "what was measured is missing", url.Values{"day": {"2026-11-25"}}},
		{"measured", "is no number", url.Values{"day": {"2026-11-25"}, "air": {"warm"}}},
		{"done", "which care is missing", url.Values{"day": {"2026-11-25"}}},
		{"remark", "what was observed is missing", url.Values{"day": {"2026-11-25"}}},
	} {
		w := s.post(home+"/tank/tub-1/log/"+c.word, c.form)
		if w.Code != http.StatusUnprocessableEntity || !strings.Contains(pageWords(w.Body.String()), c.says) {
			t.Errorf("%s %v: %d, and it does not say %q: %s", c.word, c.form, w.Code, c.says, pageWords(w.Body.String()))
		}
	}
	if after := s.text(t); after != before {
		t.Errorf("it wrote %s", strings.TrimPrefix(after, before))
	}
}

// TestManyAtOnce: of many who look, and two who tick the same off at the same moment, none is
// in the way of another, and one line is written.
func TestManyAtOnce(t *testing.T) {
	s := quillmoor(t)
	house, visitor := s.house, s.visitor // that of before is shown until the last of them is answered
	serve := func(method, path string, form url.Values) int {
		w := &answered{header: http.Header{}}
		r, _ := http.NewRequest(method, home+path, strings.NewReader(form.Encode()))
		r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
		r.Header.Set("Sec-Fetch-Site", "same-origin")
		s.pages.Serve(w, r, house, visitor, strings.Split(path, "?")[0])
		return w.code
	}
	var wg sync.WaitGroup
	for _, path := range []string{"/", "/?who=all", "/week", "/tanks", "/tank/burrow-b", "/tank/burrow-b/year.svg", "/findings", "/calendars", "/paper/labels", "/round/evening/all"} {
		for range 3 {
			wg.Go(func() {
				if code := serve(http.MethodGet, path, nil); code != http.StatusOK {
					t.Errorf("%s: %d", path, code)
				}
			})
		}
	}
	form := url.Values{"day": {"2026-11-25"}, "round": {"evening"}, "tick": {"done water*burrow-a"}}
	for range 4 {
		wg.Go(func() {
			if code := serve(http.MethodPost, "/tick", form); code != http.StatusSeeOther {
				t.Errorf("a tick: %d", code)
			}
		})
	}
	wg.Wait()
	if n := strings.Count(s.text(t), "burrow-a done water"); n != 1 {
		t.Errorf("%d lines", n)
	}
}

// answered is a recorder of which only the status counts.
type answered struct {
	header http.Header
	code   int
}

func (a *answered) Header() http.Header         { return a.header }
func (a *answered) Write(b []byte) (int, error) { a.WriteHeader(http.StatusOK); return len(b), nil }
func (a *answered) WriteHeader(code int) {
	if a.code == 0 {
		a.code = code
	}
}

// TestClock: times are told as the collection tells them.
func TestClock(t *testing.T) {
	disk := copied(t, "../../../examples/quillmoor")
	text, _ := afero.ReadFile(disk, "c/collection.care.hcl")
	_ = afero.WriteFile(disk, "c/collection.care.hcl", []byte(strings.Replace(string(text), "collection \"quillmoor\" {", "collection \"quillmoor\" {\n  units = \"us\"\n  clock = \"12 h\"\n", 1)), 0o644)
	s := open(t, disk, time.Date(2026, 11, 25, 19, 42, 0, 0, time.UTC))
	s.visitor.Keeper = "lead"
	if s.house.Result.Refused() {
		t.Fatal(s.house.Result.Findings)
	}
	for path, want := range map[string][]string{"/": {"7:30 pm", "F, air"}, "/week": {"7:30 pm"}, "/tank/tub-1": {"7:30 pm"}, "/tank/tub-1/log/measured": {"Air, F"}} {
		page := pageWords(s.get(home + path).Body.String())
		for _, w := range want {
			if !strings.Contains(page, w) {
				t.Errorf("%s does not say %q: %s", path, w, page)
			}
		}
		if strings.Contains(page, "19:30") {
			t.Errorf("%s says 19:30", path)
		}
	}
}
