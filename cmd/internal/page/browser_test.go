package page

import (
	"context"
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	cdplog "github.com/chromedp/cdproto/log"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/spf13/afero"

	"vivary/internal/oracles"
)

// policy is what a server lets a page have, as package serve says it.
const policy = "default-src 'none'; style-src 'self'; img-src 'self' data:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"

// TestBrowser opens the pages in a browser, as a keeper does: on a phone and on a wide screen,
// by finger, by keyboard and on paper. It is one browser for all, and one test after another.
func TestBrowser(t *testing.T) {
	b := browse(t)
	t.Run("look", b.look)
	t.Run("code", b.code)
	t.Run("tap", b.tap)
	t.Run("note", b.note)
	t.Run("keyboard", b.keyboard)
	t.Run("paper", b.paper)
}

// browser is Chromium with a site.
type browser struct {
	ctx  context.Context
	site *site
	base string

	mu      sync.Mutex
	foreign []string // what was asked of anybody else
	wrong   []string // what the browser complained of
}

// needs fails where a program is not there.
func needs(t *testing.T, program string) string {
	t.Helper()
	path, err := exec.LookPath(program)
	if err != nil {
		t.Fatalf("run testdata/oracles/setup: %s is not there", program)
	}
	return path
}

func browse(t *testing.T) *browser {
	b := &browser{site: quillmoor(t)}
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		b.mu.Lock() // a House is shown while another is made
		defer b.mu.Unlock()
		w.Header().Set("Content-Security-Policy", policy)
		w.Header().Set("Referrer-Policy", "no-referrer")
		b.site.ServeHTTP(w, r)
	}))
	t.Cleanup(server.Close)
	b.base = server.URL
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(needs(t, "chromium")), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.Flag("disable-quic", true), chromedp.Flag("disable-background-networking", true), chromedp.Flag("disable-component-update", true), chromedp.Flag("disable-sync", true))
	ctx, cancel := chromedp.NewExecAllocator(context.Background(), options...)
	t.Cleanup(cancel)
	ctx, cancel = chromedp.NewContext(ctx)
	t.Cleanup(cancel)
	ctx, cancel = context.WithTimeout(ctx, 6*time.Minute)
	t.Cleanup(cancel)
	b.ctx = ctx
	chromedp.ListenTarget(ctx, b.hear)
	if err := chromedp.Run(ctx, network.Enable(), cdplog.Enable()); err != nil { // with its context the browser lives
		t.Fatal(err)
	}
	return b
}

// hear keeps what a page asks for and what the browser complains of.
func (b *browser) hear(event any) {
	switch e := event.(type) {
	case *network.EventRequestWillBeSent:
		if u := e.Request.URL; !strings.HasPrefix(u, b.base) && !strings.HasPrefix(u, "data:") && u != "about:blank" {
			go b.keep(&b.foreign, u)
		}
	case *cdplog.EventEntryAdded:
		if e.Entry.Level == cdplog.LevelError || e.Entry.Level == cdplog.LevelWarning {
			go b.keep(&b.wrong, e.Entry.Text)
		}
	}
}

func (b *browser) keep(list *[]string, what string) {
	b.mu.Lock()
	defer b.mu.Unlock()
	*list = append(*list, what)
}

func (b *browser) run(t *testing.T, actions ...chromedp.Action) {
	t.Helper()
	ctx, cancel := context.WithTimeout(b.ctx, 30*time.Second)
	defer cancel()
	if err := chromedp.Run(ctx, actions...); err != nil {
		t.Fatal(err)
	}
}

// open opens a page below the keeper's address.
func (b *browser) open(path string) chromedp.Action { return chromedp.Navigate(b.base + home + path) }

// screen is a device: how wide, and whether it is dark.
func screen(wide int64, scheme string) chromedp.Action {
	return chromedp.Tasks{emulation.SetDeviceMetricsOverride(wide, 800, 1, wide < 600), emulation.SetTouchEmulationEnabled(wide < 600),
		emulation.SetEmulatedMedia().WithFeatures([]*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: scheme}})}
}

// sorts are a page of each sort.
var sorts = []string{"/", "/?who=all", "/round/evening/all", "/week", "/tanks", "/tanks?for=dune", "/tank/burrow-b", "/tank/burrow-b/log/moult", "/tank/tub-1/log/measured",
	"/tank/tub-1/log/moved", "/tank/tub-1/log/fed", "/calendars", "/findings", "/nowhere"}

// look holds that a page fits, that nobody is shut out of it as far as axe can tell, and that
// it asks nobody else for anything.
func (b *browser) look(t *testing.T) {
	b.site.logged(t, "2026-11-24 tub-3 escaped", "2026-11-25 18:20 by lead tub-2 premoult \"dull\"", "2026-11-25 18:23 by lead dune-2 done heat")
	rules, err := os.ReadFile(filepath.Join(oracles.Folder(t), "node_modules", "axe-core", "axe.min.js"))
	if err != nil {
		t.Fatalf("run testdata/oracles/setup: %v", err)
	}
	for _, wide := range []int64{360, 1440} {
		for _, scheme := range []string{"light", "dark"} {
			b.run(t, screen(wide, scheme))
			paths := append(slices.Clone(sorts), "label")
			if wide < 600 == (scheme == "dark") {
				paths = []string{"/", "/tank/burrow-b", "/findings"} // the others were seen so wide, and in such light
			}
			for _, path := range paths {
				at := fmt.Sprintf("%s at %d, %s", path, wide, scheme)
				open := b.open(path)
				if path == "label" {
					open = chromedp.Navigate(b.base + "/t/key/burrow-b")
				}
				var scroll int64
				var small, broken []string
				b.run(t, open, chromedp.Evaluate(`document.querySelectorAll("details").forEach(d => d.open = true); document.documentElement.scrollWidth`, &scroll),
					chromedp.Evaluate(tooSmall, &small))
				if scroll > wide {
					t.Errorf("%s: it is %d wide", at, scroll)
				}
				if len(small) > 0 {
					t.Errorf("%s: too small for a finger: %v", at, small)
				}
				b.run(t, chromedp.Evaluate(string(rules)+";0", nil), chromedp.Evaluate(judge, &broken, awaited))
				for _, v := range broken {
					t.Errorf("%s: %s", at, v)
				}
			}
		}
	}
	var found []string
	b.run(t, chromedp.Evaluate(`document.querySelector("main").append(document.createElement("button")); 0`, nil), chromedp.Evaluate(judge, &found, awaited))
	if len(found) == 0 {
		t.Error("axe finds nothing wrong with a button that has no name: it looks at nothing")
	}
	b.mu.Lock()
	defer b.mu.Unlock()
	if len(b.foreign) > 0 {
		t.Errorf("others were asked for %v", b.foreign)
	}
	for _, w := range b.wrong {
		if !strings.Contains(w, "404") { // one page is not there
			t.Errorf("the browser says: %s", w)
		}
	}
}

func awaited(p *runtime.EvaluateParams) *runtime.EvaluateParams { return p.WithAwaitPromise(true) }

// judge asks axe for everything that it knows to be wrong.
const judge = `axe.run(document, {resultTypes: ["violations"]}).then(r => r.violations.flatMap(v => v.nodes.map(n => v.id + ": " + v.help + ": " + n.target + " " + n.html.slice(0, 160))))`

// tooSmall names what is to be touched and is not 44 pixels high and wide; links in a text are
// as high as it.
const tooSmall = `[...document.querySelectorAll("button, summary, nav a, a.answer, a.big, input:not([type=hidden]):not([type=radio]), select, textarea, label.pick")].filter(e => {
	const r = e.getBoundingClientRect();
	return r.width > 0 && (r.height < 43.9 || r.width < 43.9);
}).map(e => e.outerHTML.slice(0, 90) + " " + Math.round(e.getBoundingClientRect().width) + "x" + Math.round(e.getBoundingClientRect().height))`

// code holds that what a camera reads off the screen is the address beside it.
func (b *browser) code(t *testing.T) {
	zbar := needs(t, "zbarimg")
	var shot []byte
	var address string
	for _, scheme := range []string{"light", "dark"} {
		b.run(t, screen(360, scheme), b.open("/calendars"), chromedp.Value(".cal input", &address, chromedp.ByQuery), chromedp.Screenshot(".cal img", &shot, chromedp.ByQuery))
		file := filepath.Join(t.TempDir(), "code.png")
		if err := os.WriteFile(file, shot, 0o600); err != nil {
			t.Fatal(err)
		}
		got, err := exec.Command(zbar, "-q", "--raw", file).Output()
		want := "webcal://" + strings.TrimPrefix(address, "https://")
		if strings.TrimSpace(string(got)) != want || err != nil {
			t.Errorf("the code says %q, and not %q: %v", got, want, err)
		}
	}
}

// logged appends lines to the log, as somebody else does.
func (s *site) logged(t *testing.T, lines ...string) {
	t.Helper()
	text := s.text(t) + strings.Join(lines, "\n") + "\n"
	if err := afero.WriteFile(s.disk, "c/records/2026.care.log", []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	s.build()
}

// text is the whole log.
func (s *site) text(t testing.TB) string {
	t.Helper()
	text, err := afero.ReadFile(s.disk, "c/records/2026.care.log")
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// log is the log while the server writes.
func (b *browser) log(t *testing.T) string {
	b.mu.Lock()
	defer b.mu.Unlock()
	return b.site.text(t)
}

// finger taps the middle of what a selector finds, so many times in a row.
func finger(selector string, times int) chromedp.Action {
	return chromedp.ActionFunc(func(ctx context.Context) error {
		var at []float64
		err := chromedp.Run(ctx, chromedp.Evaluate(fmt.Sprintf(`(e => { e.scrollIntoView({block: "center"}); const r = e.getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2] })(document.querySelector(%q))`, selector), &at))
		if err != nil {
			return err
		}
		for range times {
			if err := input.DispatchTouchEvent(input.TouchStart, []*input.TouchPoint{{X: at[0], Y: at[1]}}).Do(ctx); err != nil {
				return err
			}
			if err := input.DispatchTouchEvent(input.TouchEnd, []*input.TouchPoint{}).Do(ctx); err != nil {
				return err
			}
		}
		return nil
	})
}

// tap ticks off with a finger, once and twice, and takes it back.
func (b *browser) tap(t *testing.T) {
	water := `button[value="done water*burrow-a"]`
	b.run(t, screen(360, "light"), b.open("/"), finger(water, 1), chromedp.WaitVisible("#noted"))
	if n := strings.Count(b.log(t), "by lead burrow-a done water"); n != 1 {
		t.Fatalf("one tap wrote %d lines", n)
	}
	var seen bool
	var has int
	b.run(t, chromedp.Evaluate(`(r => r.top >= 0 && r.bottom <= innerHeight)(document.querySelector("#noted").getBoundingClientRect())`, &seen),
		chromedp.Evaluate(`document.querySelectorAll('`+water+`').length`, &has))
	if !seen || has != 0 {
		t.Errorf("what came of it is seen: %v; the button is there %d times", seen, has)
	}
	b.run(t, finger(`#noted button`, 1), chromedp.WaitVisible(water))
	if !strings.Contains(b.log(t), "by lead burrow-a withdrawn done water") {
		t.Errorf("it was not taken back")
	}
	mist := `button[value="done mist*burrow-a"]`
	b.run(t, b.open("/"), finger(mist, 2), chromedp.WaitVisible("#noted"))
	if n := strings.Count(b.log(t), "by lead burrow-a done mist"); n != 1 {
		t.Errorf("two fast taps wrote %d lines", n)
	}
}

// note writes a line of the log by its form.
func (b *browser) note(t *testing.T) {
	b.run(t, screen(360, "light"), b.open("/"), finger(`.names a[href$="/tank/tub-1"]`, 1), chromedp.WaitVisible(`.tank`),
		finger(`a.answer[href$="/log/refused"]`, 1), chromedp.WaitVisible(`.fields`), chromedp.SendKeys(`textarea`, `left it, "belly" round`), finger(`.fields button`, 1), chromedp.WaitVisible("#noted"))
	if line := `2026-11-25 19:42 by lead tub-1 refused "left it, \"belly\" round"`; strings.Count(b.log(t), line) != 1 {
		t.Errorf("the log has no %s:\n%s", line, b.log(t))
	}
}

// keyboard goes through the page of the day by the keyboard alone: everything is reached, what
// has the focus is seen to have it, and a button is pressed.
func (b *browser) keyboard(t *testing.T) {
	var all int
	b.run(t, screen(1440, "light"), b.open("/"), chromedp.Evaluate(`document.querySelectorAll("a[href], button, summary, input:not([type=hidden])").length - document.querySelectorAll("details:not([open]) > :not(summary) :is(a, button, summary)").length`, &all))
	reached := map[string]bool{}
	for range all + 5 {
		var now struct {
			Path string
			Seen bool
		}
		b.run(t, chromedp.KeyEvent(kb.Tab), chromedp.Evaluate(`(e => { const all = [...document.querySelectorAll("*")], s = getComputedStyle(e); return {Path: e === document.body ? "" : e.tagName + all.indexOf(e), Seen: s.outlineStyle !== "none" && parseFloat(s.outlineWidth) >= 2} })(document.activeElement)`, &now))
		if now.Path == "" {
			continue
		}
		reached[now.Path] = true
		if !now.Seen {
			t.Errorf("%s has the focus, and nobody sees it", now.Path)
		}
	}
	if len(reached) != all {
		t.Errorf("%d of %d are reached", len(reached), all)
	}
	b.run(t, b.open("/"), chromedp.Focus(`button[value="done heat*dune-1"]`), chromedp.KeyEvent(kb.Enter), chromedp.WaitVisible("#noted"))
	if !strings.Contains(b.log(t), "by lead dune-1 done heat") {
		t.Error("Enter pressed no button")
	}
}

// paper prints the day, and holds that the list is on the paper.
func (b *browser) paper(t *testing.T) {
	text := needs(t, "pdftotext")
	var pdf []byte
	b.run(t, b.open("/"), chromedp.ActionFunc(func(ctx context.Context) (err error) {
		pdf, _, err = page.PrintToPDF().WithPaperWidth(8.27).WithPaperHeight(11.69).Do(ctx)
		return err
	}))
	file := filepath.Join(t.TempDir(), "day.pdf")
	if err := os.WriteFile(file, pdf, 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command(text, "-raw", file, "-").Output()
	if err != nil {
		t.Fatal(err)
	}
	printed := strings.Join(strings.Fields(string(out)), " ")
	l := new(kept).listOf(b.site.house.Result, "lead")
	for i := range l.Rounds {
		for _, x := range l.Rounds[i].lines() {
			for _, j := range x.Jobs {
				if want := strings.Join(strings.Fields(j.Text), " "); !strings.Contains(printed, want) {
					t.Errorf("%q is not on the paper", want)
				}
			}
		}
	}
	if strings.Contains(printed, "Take it back") || strings.Contains(printed, "Calendars") {
		t.Errorf("what is for a screen is on the paper:\n%s", printed)
	}
}
