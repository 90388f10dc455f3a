//go:build linux

package serve

import (
	"bytes"
	"fmt"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"vivary/internal/faulty"
)

// send sends a form below the page of the lead, as a browser does, follows where it is sent on
// to, and returns what the page says.
func (h *house) send(path string, form url.Values) string {
	h.Helper()
	home := "/k/" + string(h.state.Load().ring.Keepers["lead"].Key)
	r := httptest.NewRequest(http.MethodPost, home+path, strings.NewReader(form.Encode()))
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	r.Header.Set("Sec-Fetch-Site", "same-origin")
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	if to := w.Header().Get("Location"); to != "" {
		to, _, _ = strings.Cut(to, "#")
		return body(h.T, h.ask(http.MethodGet, to))
	}
	return w.Body.String()
}

// leads is the log of the lead.
func (h *house) leads() string { return filepath.Join(h.root, "records/2026-lead.care.log") }

func (h *house) read(path string) string {
	h.Helper()
	text, err := os.ReadFile(path)
	if err != nil {
		h.Fatal(err)
	}
	return string(text)
}

var (
	ticked = url.Values{"day": {"2026-11-25"}, "round": {"evening"}, "tick": {"done look*tub-1"}}
	typed  = url.Values{"day": {"2026-11-25"}, "at": {"17:50"}, "note": {"left all of it where it was, and dug"}}
)

// TestFullDisk: on a real disk that is full a tick and a note are said not to be written, and
// are not; the calendars go on being served; once there is room both are done by doing them
// again.
func TestFullDisk(t *testing.T) {
	dir := t.TempDir()
	if out, err := exec.Command("mount", "-t", "tmpfs", "-o", "size=512k", "tmpfs", dir).CombinedOutput(); err != nil {
		t.Fatalf("a small disk is made by root only: %v, %s", err, out)
	}
	t.Cleanup(func() { _ = exec.Command("umount", dir).Run() })
	h := servingIn(t, dir)
	// A page is the least that this disk gives: the log has some bytes left in its last one.
	before := strings.Repeat("# "+strings.Repeat("x", 60)+"\n", 65)[:4096-21] + "\n"
	if err := os.MkdirAll(filepath.Dir(h.leads()), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(h.leads(), []byte(before), 0o600); err != nil {
		t.Fatal(err)
	}
	h.Rebuild(t.Context())
	calendar := body(t, h.ask("GET", h.calendar("evening")))
	filler, err := os.Create(filepath.Join(dir, "filler"))
	if err != nil {
		t.Fatal(err)
	}
	for err == nil {
		_, err = filler.Write(bytes.Repeat([]byte{'x'}, 4096))
	}
	filler.Close()
	for range 2 {
		for path, form := range map[string]url.Values{"/tick": ticked, "/tank/tub-1/log/remark": typed} {
			page := h.send(path, form)
			if !strings.Contains(page, "Nothing was written") || !strings.Contains(page, "the disk is full") || strings.Contains(page, "Noted: ") {
				t.Errorf("%s: the page does not say that nothing was written: %s", path, page)
			}
			if note := form.Get("note"); !strings.Contains(page, note) {
				t.Errorf("%s: what was typed is gone: %s", path, page)
			}
		}
		if log := h.read(h.leads()); log != before {
			t.Errorf("the log has %q behind it", strings.TrimPrefix(log, before))
		}
		h.Rebuild(t.Context())
		if body(t, h.ask("GET", h.calendar("evening"))) != calendar {
			t.Error("another calendar is served")
		}
	}
	if err := os.Remove(filler.Name()); err != nil {
		t.Fatal(err)
	}
	for path, form := range map[string]url.Values{"/tick": ticked, "/tank/tub-1/log/remark": typed} {
		if page := h.send(path, form); !strings.Contains(page, "Noted: ") {
			t.Errorf("%s: it is not written where there is room: %s", path, page)
		}
	}
	if log := h.read(h.leads()); strings.Count(log, " tub-1 done look\n") != 1 || strings.Count(log, "and dug\"\n") != 1 {
		t.Error(strings.TrimPrefix(log, before))
	}
}

// TestEachCallOfANoteFails: whatever call of the disk fails while something is noted on a page,
// the page says what is so: that it stands in the log, or that nothing was written. Done again
// it stands there once, on a line of its own.
func TestEachCallOfANoteFails(t *testing.T) {
	h := serving(t)
	real := h.disk
	failed := 0
	fails := func(n int, short bool) (what string) {
		note := fmt.Sprintf("seen %t %d", short, n)
		form := url.Values{"day": {"2026-11-25"}, "at": {"17:50"}, "note": {note}}
		bad := &faulty.Disk{Fs: real, At: n, Short: short}
		h.journal.Disk = bad
		page := h.send("/tank/tub-1/log/remark", form)
		h.journal.Disk = real
		log, _ := os.ReadFile(h.leads()) // it may not be there yet
		written := strings.Contains(string(log), note)
		if says := strings.Contains(page, "Noted: "); says != written || !says && !strings.Contains(page, "Nothing was written") {
			t.Fatalf("call %d, %s: written %t, and the page says\n%s", n, bad.What, written, page)
		}
		if !written {
			failed++
			if page := h.send("/tank/tub-1/log/remark", form); !strings.Contains(page, "Noted: ") {
				t.Fatalf("call %d, %s: again: %s", n, bad.What, page)
			}
		}
		if log := h.read(h.leads()); strings.Count(log, " tub-1 remark \""+note+"\"\n") != 1 {
			t.Fatalf("call %d, %s: %s", n, bad.What, log)
		}
		return bad.What
	}
	for n := 1; ; n++ {
		what := fails(n, false)
		if what == "write" {
			fails(n, true)
		}
		if what == "" {
			break
		}
	}
	if failed < 10 {
		t.Errorf("only %d calls kept something from being written", failed)
	}
}
