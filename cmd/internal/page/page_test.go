package page

import (
	"context"
	"net/http"
	"net/http/httptest"
	"net/url"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/journal"
	"vivary/compile"
	"vivary/internal/randomplan"
	"vivary/plan"
)

// site is a house with its pages, as a server shows them: what is noted is in the next page.
type site struct {
	t       testing.TB
	pages   *Pages
	house   *House
	disk    afero.Fs
	now     time.Time
	visitor Visitor

	reader plan.Reader
	last   *compile.Result
}

const home = "/k/secret"

// open shows a collection that stands on a disk in "c", as of a time.
func open(t testing.TB, disk afero.Fs, now time.Time) *site {
	s := &site{t: t, disk: disk, now: now, visitor: Visitor{Writes: true, Home: home}}
	s.build()
	if c := s.house.Result.Plan; len(c.Keepers) > 0 {
		s.visitor.Keeper = c.Keepers[0].Name.V
	}
	log := &journal.Journal{Disk: disk, Root: "c", Stamped: true, Compile: s.compile}
	s.pages = &Pages{Now: func() time.Time { return s.now }, Note: func(_ context.Context, v Visitor, lines []string) (journal.Outcome, error) {
		h, err := log.Hold()
		if err != nil {
			return journal.Outcome{}, err
		}
		defer h.Release()
		out, err := h.Write("2026.care.log", lines)
		s.build()
		return out, err
	}}
	return s
}

// compile compiles the collection after what was compiled before, as a server does.
func (s *site) compile(disk afero.Fs) (*compile.Result, error) {
	c, found, err := s.reader.Load(disk, "c")
	if err != nil {
		return nil, err
	}
	s.last = compile.From(compile.Input{Plan: c, Loaded: found, Now: s.now, Last: s.last})
	return s.last, nil
}

// build compiles the collection anew, as a server does when a file has changed.
func (s *site) build() {
	r, err := s.compile(s.disk)
	if err != nil {
		s.t.Fatal(err)
	}
	h := &House{Result: r, Good: r, Built: s.now, Base: "https://care.example", Label: func(tank string) string { return "/t/key/" + tank }}
	for _, x := range r.Plan.Calendars {
		h.Calendars = append(h.Calendars, Calendar{Name: x.Name.V, Title: x.Shown(), Path: "/c/key-of-" + x.Name.V + "/" + x.Name.V + ".ics"})
	}
	if r.Refused() {
		h.Good, h.Refused = nil, s.now
		if s.house != nil {
			h.Good = s.house.Good
		}
	}
	s.house = h
}

func (s *site) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	switch path := r.URL.Path; {
	case path == StylePath:
		Style(w)
	case strings.HasPrefix(path, "/t/key/"):
		s.pages.Public(w, r, s.house, strings.TrimPrefix(path, "/t/key/"))
	default:
		s.pages.Serve(w, r, s.house, s.visitor, strings.TrimPrefix(path, home))
	}
}

// get asks for a page below the visitor's home, or for a path.
func (s *site) get(path string) *httptest.ResponseRecorder {
	w := httptest.NewRecorder()
	path, _, _ = strings.Cut(path, "#")
	s.ServeHTTP(w, httptest.NewRequest(http.MethodGet, path, nil))
	return w
}

// post sends a form as a browser does from a page of the same site.
func (s *site) post(path string, form url.Values) *httptest.ResponseRecorder {
	r := httptest.NewRequest(http.MethodPost, path, strings.NewReader(form.Encode()))
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	r.Header.Set("Sec-Fetch-Site", "same-origin")
	w := httptest.NewRecorder()
	s.ServeHTTP(w, r)
	return w
}

// copied is a folder of the repository as a collection on a disk in memory.
func copied(t testing.TB, folder string) afero.Fs {
	t.Helper()
	from, to := afero.NewBasePathFs(afero.NewOsFs(), folder), afero.NewMemMapFs()
	names, err := afero.Glob(from, "*")
	for _, pattern := range []string{"*/*", "*/*/*"} {
		more, _ := afero.Glob(from, pattern)
		names = append(names, more...)
	}
	if err != nil || len(names) == 0 {
		t.Fatal(folder, len(names), err)
	}
	for _, name := range names {
		if info, _ := from.Stat(name); info.IsDir() {
			continue
		}
		text, err := afero.ReadFile(from, name)
		if err == nil {
			err = afero.WriteFile(to, "c/"+name, text, 0o644)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	return to
}

// written is a plan that stands in a test.
func written(t testing.TB, files map[string]string) afero.Fs {
	t.Helper()
	to := afero.NewMemMapFs()
	for name, text := range files {
		if err := afero.WriteFile(to, "c/"+name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return to
}

// quillmoor is the example, on the evening of the day on which its log ends.
func quillmoor(t testing.TB) *site {
	s := open(t, copied(t, "../../../examples/quillmoor"), time.Date(2026, 11, 25, 19, 42, 0, 0, time.UTC))
	s.visitor.Keeper = "lead"
	return s
}

// sites are all that is crawled: the example, a house of forty tubs, and random plans.
func sites(t testing.TB, random int) map[string]*site {
	out := map[string]*site{
		"quillmoor": quillmoor(t),
		"jobs":      open(t, copied(t, "../../../testdata/jobs"), time.Date(2026, 11, 30, 19, 30, 0, 0, time.UTC)),
	}
	for seed := range uint64(random) {
		p := randomplan.New(seed)
		s := open(t, written(t, p.Files(p.Today-1)), time.Unix(int64(p.Today)*86400+13*3600, 0).UTC())
		out["seed "+itoa(int(seed))] = s
	}
	return out
}
