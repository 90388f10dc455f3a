package main

import (
	"bytes"
	"context"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"vivary/internal/hostile"
)

var (
	hostileSize = flag.Int("hostile", 16<<10, "how many bytes a hostile text has; from a MiB on its time and memory are held against those of a plain plan")
	hostileOnly = flag.String("hostile-only", "", "only hostile texts that have this in their names; what each takes is printed")
)

// taken is what a check took, as a process of its own.
type taken struct {
	seconds float64 // of all processors
	mebi    float64 // of memory at its peak
}

func (a taken) least(b taken) taken { return taken{min(a.seconds, b.seconds), min(a.mebi, b.mebi)} }

// most is how much more time and memory a hostile text may take than a plain plan.
const most = 1.5

// Whatever stands in a text: the check ends as it should, and takes no more than half as
// much again of time and memory than that of a plain plan of the size does in the same run.
func TestHostile(t *testing.T) {
	plain := checkOf(t, hostile.Plain(*hostileSize))
	for range 2 {
		plain = plain.least(checkOf(t, hostile.Plain(*hostileSize)))
	}
	t.Logf("plain: %.2f s, %.0f MiB", plain.seconds, plain.mebi)
	for in := range hostile.Inputs(*hostileSize) {
		if !strings.Contains(in.Name, *hostileOnly) {
			continue
		}
		took := checkOf(t, in)
		measured := *hostileSize >= 1<<20
		for again := 0; measured && again < 2 && (took.seconds > most*plain.seconds || took.mebi > most*plain.mebi); again++ {
			took = took.least(checkOf(t, in)) // other work of the machine is no fault of the text
		}
		told := fmt.Sprintf("%-50.50s time %5.2f memory %5.2f", in.Name, took.seconds/plain.seconds, took.mebi/plain.mebi)
		switch {
		case measured && (took.seconds > most*plain.seconds || took.mebi > most*plain.mebi):
			t.Error(told)
		case *hostileOnly != "":
			t.Log(told)
		}
	}
}

// measured is the program, which says on its last line of standard error what memory it had
// at its peak: that of a child is not told apart from its parent's.
func measured() {
	code := program()
	status, _ := os.ReadFile("/proc/self/status")
	_, peak, _ := strings.Cut(string(status), "VmHWM:")
	fmt.Fprintln(os.Stderr, strings.Fields(peak + " 0")[0])
	os.Exit(code)
}

// checkOf checks a collection in a process of its own, and fails the test where it does not
// end as a check does.
func checkOf(t *testing.T, in hostile.Input) taken {
	dir := t.TempDir()
	for name, text := range in.Files() {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	defer os.RemoveAll(dir)
	ctx, cancel := context.WithTimeout(t.Context(), 15*time.Second)
	defer cancel()
	var out, wrong bytes.Buffer
	c := exec.CommandContext(ctx, os.Args[0])
	c.Args = []string{"measured", "check", dir, "--now", "2026-11-25"}
	c.Stdout, c.Stderr = &out, &wrong
	_ = c.Run()
	var kibi float64
	if _, err := fmt.Sscanln(wrong.String(), &kibi); err != nil {
		t.Errorf("%s: %s:\n%.2000s", in.Name, c.ProcessState, wrong.String())
	}
	if code := c.ProcessState.ExitCode(); code != fine && code != refused {
		t.Errorf("%s: exit status %d", in.Name, code)
	}
	if out.Len() == 0 {
		t.Errorf("%s: nothing is said", in.Name)
	}
	return taken{(c.ProcessState.UserTime() + c.ProcessState.SystemTime()).Seconds(), kibi / 1024}
}
