package serve

import (
	"strings"
	"testing"
)

// TestRenamed: an address that was given away goes on leading to a calendar, a keeper's pages
// and an enclosure that are called otherwise now, also where that was built before the plan
// said what they were formerly, and while the plan cannot be read.
func TestRenamed(t *testing.T) {
	h := serving(t)
	ring := h.state.Load().ring
	calendar, keeper := h.calendar("evening"), "/k/"+string(ring.Keepers["relief"].Key)
	label := h.state.Load().house.Label("tub-1")
	collection := func(name, person, formerly string) {
		text := strings.Replace(begin, "calendar \"evening\" {\n", "calendar \""+name+"\" {\n  title = \"Called "+name+"\"\n"+strings.ReplaceAll(formerly, "IT", "evening"), 1)
		h.put("collection.care.hcl", strings.Replace(text, "keeper \"relief\" {\n", "keeper \""+person+"\" {\n"+strings.ReplaceAll(formerly, "IT", "relief"), 1))
		h.Rebuild(t.Context())
	}
	leads := func(when, name, person, tank string) {
		t.Helper()
		if got := h.ask("GET", calendar); got.StatusCode != 200 || !strings.Contains(body(t, got), "Called "+name) || !strings.Contains(got.Header.Get("Content-Disposition"), name+".ics") {
			t.Errorf("%s: the calendar: %s", when, got.Status)
		}
		home := h.ask("GET", keeper+"/")
		if text := body(t, home); home.StatusCode != 200 || !strings.Contains(text, keeper+"/") || h.state.Load().ring.Keepers[person].Key == "" {
			t.Errorf("%s: the keeper: %s", when, home.Status)
		}
		if got := h.ask("GET", label); got.StatusCode != 200 {
			t.Errorf("%s: the label: %s", when, got.Status)
		}
		key := strings.TrimPrefix(keeper, "/k/")
		if to := h.ask("GET", label, "Cookie", "keeper="+key).Header.Get("Location"); to != keeper+"/tank/"+tank || h.ask("GET", to).StatusCode != 200 {
			t.Errorf("%s: the label leads a keeper to %s", when, to)
		}
		if to := h.ask("GET", keeper+"/tank/tub-1"); tank != "tub-1" && to.Header.Get("Location") != keeper+"/tank/"+tank {
			t.Errorf("%s: what was kept of a page leads to %s", when, to.Header.Get("Location"))
		}
	}
	collection("late", "sam", "") // saved before it was said
	if got := h.ask("GET", calendar); got.StatusCode != 200 {
		t.Errorf("a calendar that the plan has no more: %s", got.Status)
	}
	meanwhile := h.calendar("late")
	said := "  formerly = \"IT\"\n"
	collection("late", "sam", said)
	leads("said later", "late", "sam", "tub-1")
	if h.ask("GET", meanwhile).StatusCode != 200 {
		t.Error("the address that it had meanwhile leads nowhere")
	}
	h.put("tub.care.hcl", strings.Replace(tub, "enclosure \"tub-1\" {\n", "enclosure \"glass-1\" {\n  formerly = \"tub-1\"\n", 1))
	collection("night", "kim", said)
	leads("again", "night", "kim", "glass-1")
	if again := h.state.Load().house.Label("glass-1"); again != label {
		t.Errorf("the label that is printed now is another: %s", again)
	}
	if got := h.ask("GET", strings.Replace(calendar, "evening.ics", "late.ics", 1)); got.StatusCode != 200 || !strings.Contains(body(t, got), "Called night") {
		t.Errorf("by the name between: %s", got.Status)
	}
	if got := h.ask("GET", strings.Replace(calendar, "evening.ics", "morning.ics", 1)); got.StatusCode != 404 {
		t.Errorf("by the name of another: %s", got.Status)
	}
	h.put("more.care.hcl", "calendar \"")
	h.Rebuild(t.Context())
	leads("torn", "night", "kim", "glass-1")
	h.Server = New(h.Options) // which knows no good plan
	h.Rebuild(t.Context())
	if got := h.ask("GET", calendar); got.StatusCode != 200 || !strings.Contains(body(t, got), "Called night") {
		t.Errorf("begun anew: the calendar: %s", got.Status)
	}
	if got := h.ask("GET", keeper+"/"); got.StatusCode != 200 {
		t.Errorf("begun anew: the keeper: %s", got.Status)
	}
}
