package page

import (
	"net/http"
	"net/url"
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// TestCrawl opens every page to which a page leads: each answers, is HTML in which every
// element is closed and every id is there once, asks nothing of anybody else, and has no form
// that leads nowhere.
func TestCrawl(t *testing.T) {
	pages := 0
	for name, s := range sites(t, 8) {
		seen, todo := map[string]bool{}, []string{home + "/"}
		for len(todo) > 0 {
			at := todo[0]
			todo = todo[1:]
			if seen[at] {
				continue
			}
			seen[at] = true
			w := s.get(at)
			if w.Code != http.StatusOK {
				t.Errorf("%s: %s answers %d", name, at, w.Code)
				continue
			}
			if !strings.HasPrefix(w.Header().Get("Content-Type"), "text/html") {
				continue
			}
			pages++
			d := wellFormed(t, name+" "+at, w.Body.String())
			for _, link := range d.links {
				path, ok := d.inside(t, link)
				if ok && (strings.HasPrefix(path, home+"/tank/") && strings.Contains(path, "/log/") && len(seen) > 150) {
					continue // the forms are alike
				}
				if ok {
					todo = append(todo, path)
				}
			}
			for _, action := range d.forms {
				if got := s.post(action, nil).Code; got == http.StatusNotFound && !strings.HasSuffix(action, "/undo") {
					t.Errorf("%s: the form of %s is sent to %s, which is not there", name, at, action)
				}
			}
			if t.Failed() {
				return
			}
		}
	}
	if pages < 200 {
		t.Errorf("only %d pages", pages)
	}
}

// document is what a test wants to know of a page.
type document struct {
	at           string
	links, forms []string
	ids          map[string]bool
	text         string
}

var void = map[string]bool{"meta": true, "link": true, "input": true, "img": true, "br": true, "hr": true, "col": true, "source": true}

// wellFormed reads a page as strictly as XML would be read.
func wellFormed(t *testing.T, at, page string) *document {
	t.Helper()
	d := &document{at: at, ids: map[string]bool{}}
	var open []string
	var text strings.Builder
	for z := html.NewTokenizer(strings.NewReader(page)); ; {
		switch kind := z.Next(); kind {
		case html.ErrorToken:
			if len(open) > 0 {
				t.Errorf("%s: %v are not closed", at, open)
			}
			d.text = text.String()
			d.fragments(t)
			return d
		case html.TextToken:
			text.Write(z.Text())
		case html.StartTagToken, html.SelfClosingTagToken:
			tag := z.Token()
			if !void[tag.Data] && kind == html.StartTagToken {
				open = append(open, tag.Data)
			}
			d.element(t, &tag, open)
		case html.EndTagToken:
			tag := z.Token()
			if len(open) == 0 || open[len(open)-1] != tag.Data {
				t.Fatalf("%s: </%s> closes %v", at, tag.Data, open)
			}
			open = open[:len(open)-1]
		}
	}
}

func (d *document) element(t *testing.T, tag *html.Token, open []string) {
	t.Helper()
	attrs := map[string]string{}
	for _, a := range tag.Attr {
		if _, twice := attrs[a.Key]; twice {
			t.Errorf("%s: <%s> has %s twice", d.at, tag.Data, a.Key)
		}
		attrs[a.Key] = a.Val
		if a.Key == "style" || strings.HasPrefix(a.Key, "on") {
			t.Errorf("%s: <%s> has %s, which the policy of the pages forbids", d.at, tag.Data, a.Key)
		}
	}
	switch tag.Data {
	case "script", "style", "iframe", "base":
		t.Errorf("%s: there is a <%s>", d.at, tag.Data)
	case "a", "link":
		d.links = append(d.links, attrs["href"])
	case "source":
		d.links = append(d.links, attrs["srcset"])
	case "img":
		d.links = append(d.links, attrs["src"])
		if attrs["alt"] == "" {
			t.Errorf("%s: a picture without words", d.at)
		}
	case "form":
		for _, o := range open[:len(open)-1] {
			if o == "form" {
				t.Errorf("%s: a form in a form", d.at)
			}
		}
		if attrs["method"] == "post" {
			d.forms = append(d.forms, attrs["action"])
		}
	case "button":
		d.links = append(d.links, "#"+attrs["form"])
	}
	if id, has := attrs["id"]; has {
		if d.ids[id] || id == "" || strings.ContainsAny(id, " \t\n") {
			t.Errorf("%s: the id %q is there twice, or is none", d.at, id)
		}
		d.ids[id] = true
	}
	if of := attrs["aria-labelledby"]; of != "" {
		d.links = append(d.links, "#"+of)
	}
}

// fragments holds that what a page names within itself is there.
func (d *document) fragments(t *testing.T) {
	for _, link := range d.links {
		if id, ok := strings.CutPrefix(link, "#"); ok && id != "" && !d.ids[id] {
			t.Errorf("%s: there is no #%s", d.at, id)
		}
	}
}

// inside returns the path to which a link leads; none leads outside.
func (d *document) inside(t *testing.T, link string) (path string, ok bool) {
	u, err := url.Parse(link)
	switch {
	case err != nil:
		t.Errorf("%s: %q is no address: %v", d.at, link, err)
		return "", false
	case u.Scheme == "webcal" && u.Host == "care.example":
		return "", false
	case u.Scheme == "data" || strings.HasPrefix(link, "#"):
		return "", false
	case u.Scheme != "" || u.Host != "":
		t.Errorf("%s leads to %s", d.at, link)
		return "", false
	}
	u.Fragment = ""
	return u.String(), true
}
