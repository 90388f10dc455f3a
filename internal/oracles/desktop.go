package oracles

import (
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
)

// Desktop is a Thunderbird that subscribed to one calendar, on a screen that nobody sees. It
// keeps nothing outside a folder of the test.
type Desktop struct {
	dir, display string
}

// NewDesktop makes its profile and its screen.
func NewDesktop(t testing.TB, address string) *Desktop {
	t.Helper()
	for _, program := range []string{"thunderbird", "Xvfb", "sqlite3"} {
		if _, err := exec.LookPath(program); err != nil {
			t.Fatalf("%v: run testdata/oracles/setup", err)
		}
	}
	d := &Desktop{dir: t.TempDir()}
	const id = "5c0a3c5e-0f0b-4f6e-9d7f-6b6f2f1d7a11"
	prefs := fmt.Sprintf(`user_pref("calendar.registry.%[1]s.cache.enabled", true);
user_pref("calendar.registry.%[1]s.calendar-main-in-composite", true);
user_pref("calendar.registry.%[1]s.name", "Care");
user_pref("calendar.registry.%[1]s.readOnly", true);
user_pref("calendar.registry.%[1]s.refreshInterval", "1");
user_pref("calendar.registry.%[1]s.type", "ics");
user_pref("calendar.registry.%[1]s.uri", %[2]q);
user_pref("app.update.enabled", false);
user_pref("browser.cache.disk.enable", true);
user_pref("datareporting.policy.dataSubmissionEnabled", false);
user_pref("toolkit.telemetry.enabled", false);
user_pref("network.connectivity-service.enabled", false);
user_pref("network.captive-portal-service.enabled", false);
user_pref("mail.provider.enabled", false);
user_pref("mail.spotlight.firstRunDone", true);
user_pref("mail.shell.checkDefaultClient", false);
user_pref("mailnews.start_page.enabled", false);
user_pref("extensions.update.enabled", false);
`, id, address)
	if err := os.WriteFile(filepath.Join(d.dir, "user.js"), []byte(prefs), 0o600); err != nil {
		t.Fatal(err)
	}
	screen := exec.Command("Xvfb", "-displayfd", "3", "-screen", "0", "1280x1024x24", "-nolisten", "tcp")
	r, w, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	screen.ExtraFiles = []*os.File{w}
	if err := screen.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = screen.Process.Kill(); _ = screen.Wait() })
	_ = w.Close()
	number := make([]byte, 16)
	n, err := r.Read(number)
	if err != nil {
		t.Fatal("no screen: ", err)
	}
	d.display = ":" + strings.TrimSpace(string(number[:n]))
	return d
}

// While runs Thunderbird until something is so, and fails the test where it is not within
// three minutes: it asks again once a minute.
func (d *Desktop) While(t testing.TB, what string, so func() bool) {
	t.Helper()
	ctx, cancel := context.WithTimeout(t.Context(), 3*time.Minute)
	defer cancel()
	c := exec.CommandContext(ctx, "thunderbird", "--profile", d.dir, "--no-remote", "-calendar")
	c.Env = append(os.Environ(), "DISPLAY="+d.display, "HOME="+d.dir, "MOZ_CRASHREPORTER_DISABLE=1", "LC_ALL=C.UTF-8")
	c.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	c.Cancel = func() error { return syscall.Kill(-c.Process.Pid, syscall.SIGTERM) }
	c.WaitDelay = 15 * time.Second
	if err := c.Start(); err != nil {
		t.Fatal(err)
	}
	ok := false
	for ctx.Err() == nil {
		if ok = so(); ok {
			break
		}
		time.Sleep(200 * time.Millisecond)
	}
	cancel()
	_ = c.Wait() // it was told to end
	if !ok {
		t.Fatalf("Thunderbird: %s: not within 3 minutes", what)
	}
}

// Entries are the titles and starts, in UTC microseconds, of what it has of the calendar.
func (d *Desktop) Entries(t testing.TB) (out []string) {
	t.Helper()
	// It keeps the file locked: a copy is read.
	dir := t.TempDir()
	for _, name := range []string{"cache.sqlite", "cache.sqlite-wal"} {
		text, err := os.ReadFile(filepath.Join(d.dir, "calendar-data", name))
		if err != nil {
			continue // not yet
		}
		if err := os.WriteFile(filepath.Join(dir, name), text, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if _, err := os.Stat(filepath.Join(dir, "cache.sqlite")); err != nil {
		return nil
	}
	text, err := exec.Command("sqlite3", filepath.Join(dir, "cache.sqlite"), "select id || ' ' || event_start || ' ' || title from cal_events order by 1").Output()
	if err != nil {
		return nil // its tables are not there yet
	}
	for line := range strings.Lines(string(text)) {
		out = append(out, strings.TrimSpace(line))
	}
	return out
}
