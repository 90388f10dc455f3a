package page

import (
	"bytes"
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"html/template"
	"net/http"
	"strconv"
	"strings"
	"sync/atomic"

	"vivary/plan/finding"
)

//go:embed templates style.css
var files embed.FS

// StylePath is where every page asks for the style sheet, which ServeStyle answers.
const StylePath = "/style.css"

var (
	style     = must(files.ReadFile("style.css"))
	styleLink = StylePath + "?" + sum(string(style))
)

// Style answers for StylePath. The sheet is the same for everybody, and the address by which
// pages ask for it changes with it, so that a phone asks once.
func Style(w http.ResponseWriter) {
	h := w.Header()
	h.Set("Content-Type", "text/css; charset=utf-8")
	h.Set("Cache-Control", "public, max-age=31536000, immutable")
	_, _ = w.Write(style) // whoever asked has gone, if it fails
}

// Nothing answers at an address that leads nowhere. It tells nobody whose animals are here.
func Nothing(w http.ResponseWriter) {
	reply(w, http.StatusNotFound, render("message", message{frame: frame{Title: "Nothing here", House: "vivary", Style: styleLink},
		Text: "This address leads nowhere, or no longer. Everybody who has to do with the animals here has one of their own: ask whoever keeps them for yours."}))
}

func must[T any](x T, err error) T {
	if err != nil {
		panic(err)
	}
	return x
}

// sum is a short name for a text, the same for the same text.
func sum(text string) string {
	h := sha256.Sum256([]byte(text))
	return hex.EncodeToString(h[:6])
}

// frame is what every page has.
type frame struct {
	Title  string // of the page, without anything private
	House  string // the collection
	Home   string
	Here   string // which of the links of the head is this page's: "day", "week"
	Style  string
	Who    string // the keeper, as people call them
	Banner *banner
	Failed []string // that calendars cannot be written: since when, what that means, why
	Urgent int      // how many findings are urgent
	Found  int      // how many there are
}

// banner says on each page that the plan is refused.
type banner struct {
	Since string // "since Tue 3 Mar, 19:40", or ""
	Lists string // where the day's list is from
}

func (q *request) frame(title, here string) frame {
	h := q.h
	f := frame{Title: title, House: h.Result.Plan.Title(), Home: q.v.Home, Here: here, Style: styleLink, Found: len(h.Result.Findings), Urgent: h.Result.Urgent()}
	if k := h.Result.Plan.Keeper(q.v.Keeper); k != nil {
		f.Who = k.Shown()
	}
	if h.Result.Refused() {
		f.Banner = &banner{Lists: q.shutWords()}
		if !h.Refused.IsZero() {
			f.Banner.Since = "since " + q.moment(h.Refused)
		}
	}
	if h.Failed != "" {
		f.Failed = q.failed()
	}
	return f
}

// failed says that calendars cannot be written: since when, what that means, and why.
func (q *request) failed() []string {
	last := "as they were last"
	if !q.h.Built.IsZero() {
		last = "as they were on " + q.moment(q.h.Built)
	}
	pages := "These pages show what was: go by them."
	if q.h.Behind {
		pages = "The plan cannot be read either: these pages are of before too, and ticks are not taken."
	}
	return []string{"since " + q.moment(q.h.Since), "Phones show them " + last + ", without what was planned or logged since. " + pages,
		"It is tried again each minute. Whoever looks after the server has to see to it, which says: " + q.h.Failed + "."}
}

// moment words a time: "Tue 3 Mar, 19:40".
func (q *request) moment(t interface{ Unix() int64 }) string {
	return momentIn(q.h, t.Unix())
}

// templates are the pages by their names, each with the frame around it.
var templates = parse("day", "whole", "week", "tank", "log", "tanks", "calendars", "findings", "message", "public")

// sized is a page with about how many bytes it has.
type sized struct {
	*template.Template
	size atomic.Int64
}

func parse(names ...string) map[string]*sized {
	out := map[string]*sized{}
	base := template.Must(template.New("").Funcs(template.FuncMap{"dict": dict, "add": func(a, b int) int { return a + b }}).ParseFS(files, "templates/frame.html", "templates/parts.html"))
	for _, name := range names {
		out[name] = &sized{Template: template.Must(template.Must(base.Clone()).ParseFS(files, "templates/"+name+".html"))}
	}
	return out
}

// dict puts values together for a part of a page: dict "A" a "B" b.
func dict(pairs ...any) map[string]any {
	out := map[string]any{}
	for i := 0; i+1 < len(pairs); i += 2 {
		out[pairs[i].(string)] = pairs[i+1]
	}
	return out
}

// page makes a page. There is room for one like the last of its kind, since that of a large
// house would be copied again and again while it grows.
func render(name string, data any) []byte {
	var b bytes.Buffer
	t := templates[name]
	b.Grow(int(t.size.Load()))
	if err := t.ExecuteTemplate(&b, "frame", data); err != nil {
		panic(err) // a template that does not go with its data, which tests find
	}
	t.size.Store(int64(b.Len() + b.Len()/16))
	return b.Bytes()
}

// show answers with a page.
func (q *request) show(status int, name string, data any) { q.send(status, render(name, data)) }

func (q *request) send(status int, page []byte) { reply(q.w, status, page) }

func reply(w http.ResponseWriter, status int, page []byte) {
	h := w.Header()
	h.Set("Content-Type", "text/html; charset=utf-8")
	h.Set("Cache-Control", "private, no-store")
	w.WriteHeader(status)
	_, _ = w.Write(page) // whoever asked has gone, if it fails; of a HEAD nothing is sent
}

// message is a page that says one thing.
type message struct {
	frame
	Text  string
	Lines []string
	Back  string // where to go from here
	Word  string // what that is called
}

func (q *request) fail(status int, text string, lines ...string) {
	q.show(status, "message", message{q.frame(http.StatusText(status), ""), text, lines, q.v.Home + "/", "What is due today"})
}

func (q *request) lost() {
	q.fail(http.StatusNotFound, "There is no such page. What it was about may have another name now.")
}

// see sends a browser on to a page with another request, so that going back or loading it
// again sends no form twice.
func (q *request) see(path string) {
	h := q.w.Header()
	h.Set("Location", q.v.Home+path)
	h.Set("Cache-Control", "private, no-store")
	q.w.WriteHeader(http.StatusSeeOther)
}

// found is how much was found, in words.
func found(all []finding.Finding) string { return strings.TrimSpace(finding.Summary(all)) }

func itoa(n int) string { return strconv.Itoa(n) }
