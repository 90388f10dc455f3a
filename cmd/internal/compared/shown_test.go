package compared_test

import (
	"maps"
	"regexp"
	"strings"
	"testing"

	"vivary/plan/change"
	"vivary/schema/civil"
)

// TestNoNumbers: what is shown around and posted has no phone number of anybody, however the plan
// is laid out, and says that it is another.
func TestNoNumbers(t *testing.T) {
	base := house()
	base["people.care.hcl"] = "contact \"vet\" {\n  title = \"Vet\"\n  phone = \"020 7946 0001\"\n}\n\nkeeper \"cy\" { phone = \"020 7946 0002\" }\n"
	is := maps.Clone(base)
	is["people.care.hcl"] = "contact \"vet\" {\n  title = \"Vet\"\n  phone = \"020 7946 0003\"\n}\n\nkeeper \"cy\" { phone = \"020 7946 0004\" }\n\nkeeper \"di\" {\n  phone = \"020 7946 0005\"\n}\n"
	is["shared.care.hcl"] = strings.Replace(is["shared.care.hcl"], "keeper \"ann\" {\n", "keeper \"ann\" {\n  phone = \"020 7946 0006\"\n", 1)
	for _, both := range [][2]map[string]string{{base, is}, {is, base}} {
		r := between(t, both[0], both[1], civil.Must(2026, 11, 30))
		text := printed(r)
		var page strings.Builder
		_ = r.Markdown(&page, "title")
		text += page.String()
		for i := range r.Pieces {
			for _, s := range []change.Side{r.Pieces[i].Was, r.Pieces[i].Is} {
				text += s.Text
			}
		}
		if strings.Contains(text, "7946") {
			t.Errorf("a number is told:\n%s", text)
		}
		for _, says := range []string{"contact vet, phone: another number", "keeper cy: another number"} {
			if !strings.Contains(text, says) {
				t.Errorf("%q is not told:\n%s", says, text)
			}
		}
	}
}

// escape is a character that is no mark.
var escape = regexp.MustCompile(`\\[[:punct:]]`)

// TestPageIsSafe: whatever a plan is called, a comment on a change calls nobody, names no other
// thread, leads nowhere and has no marks but its own.
func TestPageIsSafe(t *testing.T) {
	base := house()
	is := maps.Clone(base)
	name := tank(3)
	for _, files := range []map[string]string{base, is} {
		files[name+".care.hcl"] = strings.Replace(files[name+".care.hcl"], "  species", "  title = \"#7 @ann *b* WWW.x.example\"\n  species", 1)
	}
	put(`every  = "day"`, `every  = "9 days"`)(is, name)
	is["shared.care.hcl"] += "\ncontact \"vet\" {\n  title = \"](http://x.example) <img src=x> `c`\"\n  phone = \"on the door\"\n}\n"
	is["zz.care.hcl"] = "room \"r\" {\n  title = \"https://x.example @bo\"\n  temperature = \"22 to 25 C\"\n}\n"
	is["shared.care.hcl"] = strings.Replace(is["shared.care.hcl"], "keeper \"bo\" {\n", "keeper \"bo\" {\n  title = \"](http://x.example) <i> `c` #8 @di\"\n", 1)
	var page strings.Builder
	r := between(t, base, is, civil.Must(2026, 11, 30))
	_ = r.Markdown(&page, "from @eve #9")
	open, _, _ := strings.Cut(page.String(), "<details>")
	open = escape.ReplaceAllString(strings.ReplaceAll(open, "&#8203;", "\u200b"), "") // as a reader of Markdown has it
	for _, bad := range []string{"@ann", "@bo", "@di", "@eve", "#7", "#8", "#9", "://", "www.x", "WWW.x", "<i", "](", "*b*", "`c`"} {
		if strings.Contains(open, bad) {
			t.Errorf("%q stands in\n%s", bad, open)
		}
	}
	for _, there := range []string{"ann", "di", "http:", "x.example"} {
		if !strings.Contains(open, there) {
			t.Errorf("%q does not stand in\n%s", there, open)
		}
	}
}

// TestUnread: of a plan that is not understood only that is said, and why: nothing is compared, so
// that nothing else is found, and nothing is without an effect.
func TestUnread(t *testing.T) {
	base := house()
	is := maps.Clone(base)
	put(`"solid, latched"`, `"mesh"`)(is, tank(3))
	is["moved/tank-04.care.hcl"] = is["tank-04.care.hcl"]
	delete(is, "tank-04.care.hcl")
	is["rooms.care.hcl"] += "\nroom \"west\" {\n"
	r := between(t, base, is, civil.Must(2026, 11, 30))
	if text := printed(r); strings.Contains(text, "another file") || !strings.Contains(text, "cannot be understood") {
		t.Error(text)
	}
	for i := range r.Refuses {
		if !r.Refuses[i].Severity.Refuses() {
			t.Error(r.Refuses[i].Text)
		}
	}
}

// TestCover: who stands in is told what that asks of them, live prey and training.
func TestCover(t *testing.T) {
	base := house()
	base["shared.care.hcl"] = strings.Replace(base["shared.care.hcl"], "keeper \"bo\" {\n  trained = \"venom, breeding, feeding\"", "keeper \"bo\" {\n  trained = \"venom, breeding, feeding\"\n}\n\nkeeper \"cy\" {\n  trained = \"feeding\"\n}\n\nkeeper \"di\" {", 1)
	away := func(cover string) map[string]string {
		out := maps.Clone(base)
		out["shared.care.hcl"] += "\naway \"ann\" {\n  from  = \"2027-02-01\"\n  to    = \"2027-02-16\"\n  cover = \"" + cover + "\"\n}\n"
		return out
	}
	text := printed(between(t, away("cy"), away("di"), civil.Must(2026, 11, 30)))
	if !strings.Contains(text, "gives no live prey any more") {
		t.Error(text)
	}
	text = printed(between(t, away("di"), away("cy"), civil.Must(2026, 11, 30)))
	if !strings.Contains(text, "gives live prey now") {
		t.Error(text)
	}
}
