package serve

import (
	"context"
	"crypto/tls"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/internal/postbox"
)

var withCertificate *tls.Config

func TestMain(m *testing.M) {
	dir, err := os.MkdirTemp("", "postbox")
	if err == nil {
		withCertificate, err = postbox.Certificate(dir)
	}
	if err != nil {
		fmt.Println(err)
		os.Exit(1)
	}
	status := m.Run()
	_ = os.RemoveAll(dir)
	os.Exit(status)
}

const secret = "hunter2-secret"

// mailed serves a house whose evening round is ticked, with a mail block for a server.
func mailed(t *testing.T, addr string, more string) *house {
	t.Helper()
	h := serving(t)
	h.put("collection.care.hcl", strings.Replace(begin, "keeper = \"lead\"", "keeper = \"lead\"\n  ticked = true", 1))
	h.block("server = \"" + addr + "\"\n  from = \"vivary@quillmoor.example\"\n  to = [\"club@quillmoor.example\"]\n  user = \"vivary\"\n  password = \"" + secret + "\"\n" + more)
	for _, name := range []string{"lead", "relief"} {
		h.edit(fmt.Sprintf("keeper %q {\n", name), fmt.Sprintf("keeper %q {\n  mail = \"%s@quillmoor.example\"\n", name, name))
	}
	h.Rebuild(t.Context())
	return h
}

// block adds a mail block to the file of keys.
func (h *house) block(text string) { h.edit("", "mail {\n  "+text+"}\n") }

// edit replaces the first of a text in the file of keys.
func (h *house) edit(old, now string) {
	h.Helper()
	text, err := os.ReadFile(h.Keys)
	if err != nil || !strings.Contains(string(text), old) {
		h.Fatalf("the file of keys has no %q: %v", old, err)
	}
	if err := os.WriteFile(h.Keys, []byte(strings.Replace(string(text), old, now, 1)), 0o600); err != nil {
		h.Fatal(err)
	}
}

// at builds and looks round at a moment, and returns who was told of what.
func (h *house) at(on *Server, box *postbox.Box, when string) string {
	h.Helper()
	at, err := time.Parse("2006-01-02 15:04", when)
	if err != nil {
		h.Fatal(err)
	}
	h.later(at.Sub(h.clock()))
	on.Rebuild(h.Context())
	on.lookRound(h.Context())
	var out []string
	for _, l := range box.Take() {
		name, _, _ := strings.Cut(l.To, "@")
		what := "round"
		if strings.Contains(l.Subject, "calendars are old") {
			what = "build"
		}
		out = append(out, what+" "+name)
		page := strings.Contains(l.Raw, "/k/")
		if page != (name == "lead" || name == "relief") || strings.Contains(l.Raw, secret) {
			h.Errorf("to %s: %s", l.To, l.Raw)
		}
	}
	slices.Sort(out)
	return strings.Join(out, ", ")
}

// TestTold: who is there is told, once of each day, by one server or the next, and not where
// somebody ticked.
func TestTold(t *testing.T) {
	box := postbox.Open(t, "", secret, withCertificate)
	h := mailed(t, box.Addr, "")
	const all = "round club, round lead"
	tell := func(on *Server, when, want string) {
		t.Helper()
		if got := h.at(on, box, when); got != want {
			t.Errorf("%s: %q, not %q", when, got, want)
		}
	}
	tell(h.Server, "2026-11-25 21:29", "")
	tell(h.Server, "2026-11-25 21:30", all)
	tell(h.Server, "2026-11-25 21:35", "")
	tell(New(h.Options), "2026-11-25 22:00", "")
	tell(New(h.Options), "2026-11-26 08:00", "")
	tell(h.Server, "2026-11-26 21:31", all)
	h.put("2026.care.log", "2026-11-27 19:40 tub-1 done water\n")
	tell(h.Server, "2026-11-27 21:31", "")
	h.put("away.care.hcl", "away \"lead\" {\n  from = \"2026-11-28\"\n  to = \"2026-12-02\"\n  cover = \"relief\"\n}\n")
	tell(h.Server, "2026-11-28 21:31", "round club, round relief")
	h.edit("mail {\n", "mail {\n  urgent_at = \"7:00\"\n")
	h.put("tub.care.hcl", tub[:len(tub)/2])
	tell(h.Server, "2026-11-28 22:00", "") // a plan that is not understood tells of nothing for a day
	if got := h.at(h.Server, box, "2026-12-03 07:30"); !strings.Contains(got, "build club") || strings.Contains(got, "round") {
		t.Errorf("refused for days: %q", got)
	}
	tell(h.Server, "2026-12-03 08:30", "")
	h.put("tub.care.hcl", tub)
	h.put("2026.care.log", "2026-12-04 19:40 tub-1 done water\n")
	tell(h.Server, "2026-12-04 06:30", "round club, round lead") // of the evening before
	for _, text := range []string{secret, "/k/", "quillmoor.example", "01632"} {
		if strings.Contains(h.log.String(), text) {
			t.Error("the log has " + text)
		}
	}
	if info, err := os.Stat(h.Keys + ".told"); err != nil || info.Mode().Perm() != 0o600 {
		t.Error("others can read whom it told", err)
	}
}

// TestToldNothing: without a mail block nobody is told, and no file is made.
func TestToldNothing(t *testing.T) {
	box := postbox.Open(t, "", secret, withCertificate)
	h := serving(t)
	h.put("collection.care.hcl", strings.Replace(begin, "keeper = \"lead\"", "keeper = \"lead\"\n  ticked = true", 1))
	if got := h.at(h.Server, box, "2026-11-25 21:30"); got != "" {
		t.Error(got)
	}
	if _, err := os.Stat(h.Keys + ".told"); err == nil {
		t.Error("a file of whom it told")
	}
}

// TestToldLater: what cannot be sent is sent once it can be; who is refused by the server
// keeps nobody else from being told; what is wrong stands in the log, without the password.
func TestToldLater(t *testing.T) {
	box := postbox.Open(t, "", secret, withCertificate)
	addr := box.Addr
	box.Close()
	h := mailed(t, addr, "")
	if got := h.at(h.Server, box, "2026-11-25 21:30"); got != "" {
		t.Error(got)
	}
	if !strings.Contains(h.log.String(), "no mail can be sent now") {
		t.Error("the log does not say that the server is down")
	}
	bare := postbox.Open(t, addr, secret, nil)
	if got := h.at(h.Server, bare, "2026-11-25 21:35"); got != "" || !strings.Contains(h.log.String(), "STARTTLS") {
		t.Errorf("told %q by a server that does not encrypt: %s", got, h.log)
	}
	bare.Close()
	box = postbox.Open(t, addr, secret, withCertificate)
	box.Refuse("lead@quillmoor.example", 450)
	if got := h.at(h.Server, box, "2026-11-25 21:40"); got != "round club" {
		t.Error(got)
	}
	h.forget()
	box.Refuse("lead@quillmoor.example", 550)
	for _, on := range []*Server{h.Server, h.Server, New(h.Options)} {
		if got := h.at(on, box, "2026-11-25 21:45"); got != "" {
			t.Error(got)
		}
	}
	if n := strings.Count(h.logged(), "not tried again for this day"); n != 1 || strings.Contains(h.logged(), "quillmoor.example") {
		t.Errorf("who is refused for good is told of %d times: %s", n, h.log)
	}
	h.edit("lead@quillmoor", "lead.keeper@quillmoor")
	h.Disk = afero.NewReadOnlyFs(h.disk)
	h.teller = New(h.Options).teller
	if h.lookRound(t.Context()); len(box.Take()) > 0 || !strings.Contains(h.log.String(), "it cannot be written who was told") {
		t.Error("told by who cannot remember it")
	}
	h.Disk = h.disk
	h.teller = New(h.Options).teller
	h.lookRound(t.Context())
	if got := box.Take(); len(got) != 1 || got[0].To != "lead.keeper@quillmoor.example" {
		t.Errorf("%+v", got)
	}
	h.edit("server = \""+addr, "plain = true\n  server = \"smtp.quillmoor.example:25")
	h.lookRound(t.Context())
	if !strings.Contains(h.log.String(), "on this machine only") {
		t.Error("plain mail to another machine")
	}
	if err := os.Chmod(h.Keys, 0o644); err != nil {
		t.Fatal(err)
	}
	h.lookRound(t.Context())
	if !strings.Contains(h.log.String(), "can be read by others") || strings.Contains(h.log.String(), secret) {
		t.Error(h.log.String())
	}
}

// TestToldUnread: a folder that cannot be read from the start on is told too, after a day.
func TestToldUnread(t *testing.T) {
	box := postbox.Open(t, "", secret, withCertificate)
	h := mailed(t, box.Addr, "")
	if err := os.Rename(h.root, h.root+"-elsewhere"); err != nil {
		t.Fatal(err)
	}
	again := New(h.Options)
	again.Rebuild(t.Context())
	if got := h.at(again, box, "2026-11-26 17:00"); got != "" {
		t.Error(got)
	}
	if got := h.at(again, box, "2026-11-26 18:30"); got != "build club, build lead, build relief" {
		t.Error(got)
	}
	if got := h.at(h.Server, box, "2026-11-26 19:30"); got != "" {
		t.Error(got)
	}
}

// TestToldSince: since when nothing is built is known to a server that is started anew, and
// forgotten once something is.
func TestToldSince(t *testing.T) {
	box := postbox.Open(t, "", secret, withCertificate)
	h := mailed(t, box.Addr, "")
	keep := h.disk
	broken := func(when, want string) {
		t.Helper()
		o := h.Options
		o.Disk = &withoutFeeds{keep}
		on := New(o)
		on.Rebuild(t.Context())
		if got := h.at(on, box, when); got != want {
			t.Errorf("%s: %q, not %q: %s", when, got, want, h.log)
		}
	}
	h.put("collection.care.hcl", strings.Replace(begin, "19:30", "20:15", 1))
	broken("2026-11-25 18:05", "")
	broken("2026-11-26 09:00", "")
	broken("2026-11-26 18:10", "build club, build lead")
	broken("2026-11-26 18:15", "")
	if got := h.at(New(h.Options), box, "2026-11-26 18:20"); got != "" {
		t.Error(got)
	}
	h.put("collection.care.hcl", strings.Replace(begin, "19:30", "20:25", 1))
	broken("2026-11-27 10:00", "")
}

// withoutFeeds is a disk on which no calendar can be written.
type withoutFeeds struct{ afero.Fs }

func (d *withoutFeeds) OpenFile(name string, flag int, mode os.FileMode) (afero.File, error) {
	if flag&(os.O_WRONLY|os.O_RDWR) != 0 && strings.Contains(name, "feeds") {
		return nil, &os.PathError{Op: "open", Path: name, Err: syscall.ENOSPC}
	}
	return d.Fs.OpenFile(name, flag, mode)
}

func (d *withoutFeeds) LstatIfPossible(name string) (os.FileInfo, bool, error) {
	return d.Fs.(afero.Lstater).LstatIfPossible(name)
}

// TestToldWhileRunning: a server that runs tells by itself, also while others read, and ends
// at once though the mail server says nothing.
func TestToldWhileRunning(t *testing.T) {
	box := postbox.Open(t, "", secret, withCertificate)
	h := mailed(t, box.Addr, "")
	h.later(3*time.Hour + 30*time.Minute)
	h.Rebuild(t.Context())
	ctx, cancel := context.WithCancel(t.Context())
	ended := make(chan struct{})
	go func() { h.Server.Run(ctx, nil); close(ended) }()
	page := "/k/" + string(h.state.Load().ring.Keepers["lead"].Key) + "/"
	n := 0
	h.await("a mail", func() bool {
		h.ask("GET", page)
		h.Rebuild(ctx)
		n += len(box.Take())
		return n == 2
	})
	cancel()
	select {
	case <-ended:
	case <-time.After(20 * time.Second):
		t.Error("it does not end")
	}
	if _, err := os.Stat(filepath.Join(h.root, "feeds")); err != nil {
		t.Error(err)
	}
}
