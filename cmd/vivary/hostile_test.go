package main

import (
	"bytes"
	"context"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/internal/hostile"
	"vivary/plan"
)

var (
	hostileSize = flag.Int("hostile", 16<<10, "how many bytes a hostile text has; from a MiB on its time and memory are held against those of a plain plan")
	hostileOnly = flag.String("hostile-only", "", "of large hostile texts only those whose names match this expression")
)

// taken is what a check took, as a process of its own.
type taken struct {
	seconds float64 // of all processors
	mebi    float64 // of memory at its peak
}

func (a taken) least(b taken) taken { return taken{min(a.seconds, b.seconds), min(a.mebi, b.mebi)} }

// most is how much more time and memory a hostile text may take than a plain plan.
const most = 1.5

// Whatever stands in a text: the check ends as it should, and a large text takes no more than
// half as much again of time and memory than a plain plan of the size does in the same run.
func TestHostile(t *testing.T) {
	if *hostileSize < 1<<20 {
		hostileSmall(t)
		return
	}
	plain := checkOf(t, hostile.Plain(*hostileSize))
	for range 2 {
		plain = plain.least(checkOf(t, hostile.Plain(*hostileSize)))
	}
	t.Logf("plain: %.2f s, %.0f MiB", plain.seconds, plain.mebi)
	for in := range hostile.Inputs(*hostileSize, regexp.MustCompile(*hostileOnly).MatchString) {
		took := checkOf(t, in)
		for again := 0; again < 2 && took.over(plain); again++ {
			took = took.least(checkOf(t, in)) // other work of the machine is no fault of the text
		}
		told := fmt.Sprintf("time %5.2f memory %5.2f  %.60s", took.seconds/plain.seconds, took.mebi/plain.mebi, in.Name)
		if took.over(plain) {
			t.Error(told)
		} else {
			t.Log(told)
		}
	}
}

// over reports whether it is more than a hostile text may take beside a plain one.
func (a taken) over(plain taken) bool {
	return a.seconds > most*plain.seconds || a.mebi > most*plain.mebi
}

// whole are hostile texts that are cheap enough to be checked whole every time. Each has once
// overflowed the stack, or taken half a minute or half a gigabyte.
var whole = []string{`as a value "[*]"`, `outside "%{if a}"`, `as a value "@"`, `as a value "\""`, "as a value \"e\u0301\"", `in a block "a {"`, `in a list "“"`, `in a log "a"`, "many rooms", "many cares in an enclosure"}

// hostileSmall checks in this process, where there is nothing to be measured.
func hostileSmall(t *testing.T) {
	n := 0
	for in := range hostile.Inputs(*hostileSize, func(string) bool { return true }) {
		n++
		t.Run(in.Name, func(t *testing.T) { ends(t, in) })
	}
	if n < 272 {
		t.Errorf("only %d inputs", n)
	}
	n = 0
	for in := range hostile.Inputs(plan.MaxFile, func(name string) bool { return slices.Contains(whole, name) }) {
		n++
		t.Run("whole "+in.Name, func(t *testing.T) { ends(t, in) })
	}
	if n != len(whole) {
		t.Errorf("%d of %d whole inputs", n, len(whole))
	}
}

// ends checks that a check ends as it should.
func ends(t *testing.T, in hostile.Input) {
	var out, wrong bytes.Buffer
	disk := afero.NewMemMapFs()
	for name, text := range in.Files() {
		if err := afero.WriteFile(disk, filepath.Join("c", name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	begin := time.Now()
	code := run([]string{"check", "c"}, &world{disk: disk, out: &out, err: &wrong, clock: func() time.Time { return benchNow }})
	if code != fine && code != refused {
		t.Errorf("exit status %d:\n%s", code, wrong.String())
	}
	if out.Len() == 0 {
		t.Error("nothing is said")
	}
	if took := time.Since(begin); took > time.Minute {
		t.Errorf("took %s", took)
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
	ctx, cancel := context.WithTimeout(t.Context(), 3*time.Minute)
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
