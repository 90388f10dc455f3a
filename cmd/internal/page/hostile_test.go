package page

import (
	"net/http"
	"net/http/httptest"
	"net/url"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"
)

// nasty are texts that would be something else if they were not escaped.
var nasty = []string{
	`<script>alert(1)</script>`, `"><img src=x onerror=alert(1)>`, `' onmouseover='alert(1)`, `</title></head><body onload=alert(1)>`, `{{.Home}}`, `javascript:alert(1)`,
	"\u202Etxet desrever", "مرحبا بالعالم", strings.Repeat("long ", 100), strings.Repeat("x", 500), "&lt;b&gt;", "a\u0301\u0301\u0301\u0301",
}

// TestHostile gives everything that a keeper names such a text. It comes out as the words that
// it is: no element and no attribute is made of it.
func TestHostile(t *testing.T) {
	for i, text := range nasty {
		disk := copied(t, "../../../examples/quillmoor")
		edit := func(file, old, better string) {
			b, err := afero.ReadFile(disk, "c/"+file)
			if err != nil || !strings.Contains(string(b), old) {
				t.Fatalf("%s has no %s: %v", file, old, err)
			}
			_ = afero.WriteFile(disk, "c/"+file, []byte(strings.ReplaceAll(string(b), old, better)), 0o644)
		}
		quoted := strings.NewReplacer(`\`, `\\`, `"`, `\"`).Replace(text)
		edit("collection.care.hcl", `"Quillmoor Field Centre"`, `"`+quoted+`"`)
		edit("collection.care.hcl", `"Lead keeper"`, `"`+quoted+`"`)
		edit("collection.care.hcl", `"Practice on the green"`, `"`+quoted+`"`)
		edit("collection.care.hcl", `"Relief at Quillmoor"`, `"`+quoted+`"`)
		edit("rooms.care.hcl", `"East room"`, `"`+quoted+`"`)
		edit("enclosures/burrow-a.care.hcl", `enclosure "burrow-a" {`, "enclosure \"burrow-a\" {\n  title = \""+quoted+"\"\n")
		log, _ := afero.ReadFile(disk, "c/records/2026.care.log")
		_ = afero.WriteFile(disk, "c/records/2026.care.log", append(log, []byte("2026-11-25 by lead burrow-a remark \""+quoted+"\"\nnonsense "+text+"\n")...), 0o644)
		s := open(t, disk, time.Date(2026, 11, 25, 19, 42, 0, 0, time.UTC))
		s.visitor.Keeper = "lead"
		for _, path := range append(append([]string{}, sortsOf...), "/tanks?for="+url.QueryEscape(text), "/tank/burrow-a", "/tank/burrow-a/log/remark?note="+url.QueryEscape(text)+"&group="+url.QueryEscape(text)) {
			at := home + path
			if path == "label" {
				at = "/t/key/burrow-a"
			}
			w := s.get(at)
			d := wellFormed(t, itoa(i)+" "+path, w.Body.String())
			for _, link := range d.links {
				d.inside(t, link)
			}
			if strings.Contains(strings.ToLower(w.Body.String()), "<img src=x") || strings.Contains(w.Header().Get("Location"), "script") {
				t.Errorf("%s: %s came out as it was written", path, text)
			}
		}
		w := s.post(home+"/tank/burrow-a/log/remark", url.Values{"note": {text}, "day": {"2026-11-25"}, "at": {"19:42"}})
		if w.Code != http.StatusSeeOther {
			t.Errorf("%q: %d", text, w.Code)
			continue
		}
		wellFormed(t, text, s.get(w.Header().Get("Location")).Body.String())
	}
}

// sortsOf are pages of each sort.
var sortsOf = []string{"/", "/week", "/tanks", "/tank/burrow-a", "/calendars", "/findings", "/round/evening/all", "label"}

// TestFormsFromElsewhere: what another site makes a browser send is refused, and so is what is
// too long, what no page sends, and what comes by an address that only reads. Nothing is
// written.
func TestFormsFromElsewhere(t *testing.T) {
	s := quillmoor(t)
	before := s.text(t)
	good := url.Values{"day": {"2026-11-25"}, "round": {"evening"}, "tick": {"done water*burrow-a"}}
	send := func(what string, form url.Values, want int, change func(*http.Request)) {
		t.Helper()
		r := httptest.NewRequest(http.MethodPost, home+"/tick", strings.NewReader(form.Encode()))
		r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
		change(r)
		w := httptest.NewRecorder()
		s.ServeHTTP(w, r)
		if w.Code != want {
			t.Errorf("%s: %d, and not %d", what, w.Code, want)
		}
		if got := s.text(t); got != before {
			t.Errorf("%s wrote %q", what, strings.TrimPrefix(got, before))
		}
		wellFormed(t, what, w.Body.String())
	}
	as := func(name, value string) func(*http.Request) {
		return func(r *http.Request) { r.Header.Set(name, value) }
	}
	same := as("Sec-Fetch-Site", "same-origin")
	with := func(name, value string) url.Values {
		out := url.Values{}
		for k, v := range good {
			out[k] = v
		}
		out.Set(name, value)
		return out
	}
	send("from another site", good, http.StatusForbidden, as("Sec-Fetch-Site", "cross-site"))
	send("from a site beside", good, http.StatusForbidden, as("Sec-Fetch-Site", "same-site"))
	send("from another origin", good, http.StatusForbidden, as("Origin", "https://elsewhere.example"))
	send("from no origin", good, http.StatusForbidden, as("Origin", "null"))
	send("too long", with("tick", strings.Repeat("x", maxBody)), http.StatusRequestEntityTooLarge, same)
	send("of another day", with("day", "2026-11-20"), http.StatusConflict, same)
	send("of a day to come", with("day", "2026-11-26"), http.StatusConflict, same)
	send("of no day", with("day", "soon"), http.StatusConflict, same)
	send("of no round", with("round", "midnight"), http.StatusConflict, same)
	send("of what is not due", with("tick", "done deep-clean*burrow-a"), http.StatusConflict, same)
	send("of nobody", with("tick", "done water*nobody"), http.StatusConflict, same)
	send("of nothing", with("tick", ""), http.StatusConflict, same)
	send("of a line more", with("tick", "done water*burrow-a\n2026-11-25 tub-1 died"), http.StatusConflict, same)
	send("all, by an old page", with("tick", "all"), http.StatusConflict, same)
	s.visitor.Writes = false
	send("by a reader", good, http.StatusForbidden, same)
	if page := s.get(home + "/").Body.String(); strings.Contains(page, "<button") || strings.Contains(page, "/log/") {
		t.Error("a reader is shown buttons")
	}
	if code := s.get(home + "/tank/burrow-a/log/moult").Code; code != http.StatusNotFound {
		t.Errorf("a reader is shown a form: %d", code)
	}
}

// TestPastMidnight: what is ticked off after midnight on the page of the evening before is of
// that evening.
func TestPastMidnight(t *testing.T) {
	s := quillmoor(t)
	s.now = time.Date(2026, 11, 26, 0, 10, 0, 0, time.UTC)
	form := url.Values{"day": {"2026-11-25"}, "round": {"evening"}, "tick": {"done water*burrow-a"}}
	for range 2 { // before the server has built for the new day, and after
		if w := s.post(home+"/tick", form); w.Code != http.StatusSeeOther {
			t.Fatalf("%d: %s", w.Code, w.Body)
		}
		s.build()
	}
	if n := strings.Count(s.text(t), "2026-11-25 by lead burrow-a done water"); n != 1 {
		t.Errorf("%d lines of the evening:\n%s", n, s.text(t))
	}
}

// TestLongTicks: a button that would send more than a form may hold is not there, and each of
// its places can be ticked off.
func TestLongTicks(t *testing.T) {
	text, err := afero.ReadFile(afero.NewOsFs(), "../../../testdata/jobs/house.care.hcl")
	if err != nil {
		t.Fatal(err)
	}
	long := strings.Repeat("veryverylong", 4)
	plan := strings.NewReplacer(`enclosure "tub"`, `enclosure "`+long+`"`, `"1 to 40"`, `"1 to 1500"`).Replace(string(text))
	s := open(t, written(t, map[string]string{"house.care.hcl": plan}), time.Date(2026, 12, 1, 19, 30, 0, 0, time.UTC))
	s.visitor.Keeper = "lead"
	page := s.get(home + "/").Body.String()
	if !strings.Contains(page, `value="done look*`+long+`-1500"`) || strings.Contains(page, long+"-1."+long+"-2."+long+"-3."+long+"-4."+long+"-5."+long+"-6") {
		t.Error("the buttons are not as they should be")
	}
	all := s.get(home + "/round/evening/all").Body.String()
	_, sum, _ := strings.Cut(all, `name="sum" value="`)
	sum, _, _ = strings.Cut(sum, `"`)
	w := s.post(home+"/tick", url.Values{"day": {"2026-12-01"}, "round": {"evening"}, "tick": {"all"}, "sum": {sum}})
	if n := strings.Count(s.text(t), "done look"); w.Code != http.StatusSeeOther || n != 1500 {
		t.Fatalf("%d: %d lines", w.Code, n)
	}
	if w := s.post(home+"/undo", url.Values{"noted": {"1"}}); w.Code != http.StatusSeeOther || strings.Count(s.text(t), "withdrawn done look") != 1500 {
		t.Errorf("it was not taken back: %d", w.Code)
	}
}

// TestTakeBack takes back what was ticked off, once, however often the button is tapped; and
// never what others wrote.
func TestTakeBack(t *testing.T) {
	s := quillmoor(t)
	before := left(s, "lead")
	w := s.post(home+"/tick", url.Values{"day": {"2026-11-25"}, "round": {"evening"}, "tick": {"done water*burrow-a!done mist*burrow-a"}})
	page := s.get(w.Header().Get("Location")).Body.String()
	if !strings.Contains(page, `name="noted" value="1"`) {
		t.Fatal("the page does not offer to take it back")
	}
	form := url.Values{"noted": {"1"}}
	for range 2 {
		if w := s.post(home+"/undo", form); w.Code != http.StatusSeeOther || !strings.HasPrefix(w.Header().Get("Location"), home+"/?noted=") {
			t.Fatalf("%d %s", w.Code, w.Header())
		}
	}
	if n := strings.Count(s.text(t), "withdrawn"); n != 2 {
		t.Errorf("%d lines take back:\n%s", n, s.text(t))
	}
	if after := left(s, "lead"); strings.Join(before, "\n") != strings.Join(after, "\n") {
		t.Errorf("what is left is %v, and was %v", after, before)
	}
	if w := s.post(home+"/undo", url.Values{"noted": {"999"}}); w.Code != http.StatusConflict {
		t.Errorf("what nobody knows is taken back: %d", w.Code)
	}
	was := s.text(t)
	for _, line := range []string{"2026-11-05 burrow-b born 14 \"white, on her back; lid not opened\"", "2026-11-25 19:42 by relief burrow-a done water", "nonsense"} {
		s.post(home+"/undo", url.Values{"at": {"2026-11-25 19:43"}, "line": {line}, "back": {"//elsewhere.example/?"}})
	}
	if got := s.text(t); got != was {
		t.Errorf("it took back what is not the keeper's: %s", strings.TrimPrefix(got, was))
	}
}
