//go:build unix

package main

import (
	"bytes"
	"context"
	"errors"
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
)

var (
	atOnce = flag.Int("at-once", 30, "how many times builds are begun at once")
	killed = flag.Int("killed", 30, "how many builds are killed")
)

// rivals are two plans of one collection whose calendars differ in every entry, and a
// folder that both are built into.
type rivals struct {
	*testing.T
	program string // as it is built for people, without a race detector
	plans   [2]string
	out     string
	say     string
}

var calendars = []string{"a", "b", "c"}

func rivalry(t *testing.T) *rivals {
	t.Helper()
	dir := t.TempDir()
	r := &rivals{T: t, program: filepath.Join(dir, "vivary"), out: filepath.Join(dir, "out")}
	if out, err := exec.Command("go", "build", "-o", r.program, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	for i := range r.plans {
		r.plans[i] = t.TempDir()
		var text strings.Builder
		for _, name := range calendars {
			fmt.Fprintf(&text, "calendar %q {\n  remind = \"%d min\"\n}\n", name, 5+5*i)
		}
		disk := afero.NewOsFs()
		if s, _, e := at(disk, noon, "start", r.plans[i]); s != fine {
			t.Fatal(e)
		}
		if err := os.WriteFile(filepath.Join(r.plans[i], "z.care.hcl"), []byte(text.String()), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	return r
}

// build is a build of one of the plans, a moment after those before.
func (r *rivals) build(ctx context.Context, plan, n int) *exec.Cmd {
	now := noon.Add(time.Duration(n) * time.Second).Format(time.RFC3339)
	return exec.CommandContext(ctx, r.program, "build", r.plans[plan], "--out", r.out, "--now", now)
}

var reminder = regexp.MustCompile(`\r\nTRIGGER:-PT(\d+)M\r\n`)

// of returns which of the two plans a feed was made of: 5 or 10. What is torn or of both
// is an error.
func of(feed []byte) (string, error) {
	if !bytes.HasPrefix(feed, []byte("BEGIN:VCALENDAR\r\n")) || !bytes.HasSuffix(feed, []byte("\r\nEND:VCALENDAR\r\n")) {
		return "", fmt.Errorf("torn: %d bytes", len(feed))
	}
	plan := ""
	for _, m := range reminder.FindAllSubmatch(feed, -1) {
		if plan != "" && plan != string(m[1]) {
			return "", errors.New("of two builds")
		}
		plan = string(m[1])
	}
	if plan == "" {
		return "", errors.New("without a reminder")
	}
	return plan, nil
}

// set reads all feeds and holds that they are of one build.
func (r *rivals) set(read func(name string) ([]byte, error)) map[string][]byte {
	r.Helper()
	all, plan := map[string][]byte{}, ""
	for _, name := range calendars {
		feed, err := read(name + ".ics")
		if err != nil {
			r.Fatalf("%s: %v", r.say, err)
		}
		if len(feed) == 0 && len(all) == 0 && plan == "" {
			return nil // nothing was built yet
		}
		is, err := of(feed)
		if err != nil || plan != "" && is != plan {
			r.Fatalf("%s: %s is of %s, and others are of %s: %v", r.say, name, is, plan, err)
		}
		all[name], plan = feed, is
	}
	return all
}

func (r *rivals) seen(name string) ([]byte, error) { return os.ReadFile(filepath.Join(r.out, name)) }

func (r *rivals) known(name string) ([]byte, error) {
	return publish.Last(afero.NewOsFs(), r.out, name)
}

// rises holds that no SEQUENCE fell.
func (r *rivals) rises(was, is map[string][]byte) {
	for name := range was {
		rises(r.T, r.say, was[name], is[name])
	}
}

// clean holds that nothing lies in the folder but the feeds.
func (r *rivals) clean() {
	list, err := os.ReadDir(r.out)
	if err != nil {
		r.Fatal(err)
	}
	for _, x := range list {
		if filepath.Ext(x.Name()) != ".ics" {
			r.Errorf("%s: %s lies there", r.say, x.Name())
		}
	}
}

// readers read the feeds all the while, as a web server does and as the program does,
// until they are stopped.
func (r *rivals) readers() (stop func() int) {
	done := make(chan struct{})
	var wg sync.WaitGroup
	reads := make([]int, 2)
	for i, read := range []func(string) ([]byte, error){r.seen, r.known} {
		wg.Go(func() {
			for n := 0; ; n++ {
				select {
				case <-done:
					return
				default:
				}
				name := calendars[n%len(calendars)] + ".ics"
				feed, err := read(name)
				if errors.Is(err, os.ErrNotExist) || err == nil && feed == nil {
					continue // before the first build
				}
				if err == nil {
					_, err = of(feed)
				}
				if err != nil {
					r.Errorf("%s is read as %v", name, err)
					return
				}
				reads[i]++
				time.Sleep(time.Millisecond)
			}
		})
	}
	return func() int { close(done); wg.Wait(); return reads[0] + reads[1] }
}

// Builds at once into one folder wait for each other: none fails, every file is whole
// whenever it is read, all are of one build in the end, and no SEQUENCE falls.
func TestBuildsAtOnce(t *testing.T) {
	r := rivalry(t)
	stop := r.readers()
	var last map[string][]byte
	builds := 0
	for round := range *atOnce {
		n := []int{2, 2, 2, 3, 2, 3, 2, 2, 3, 10}[round%10]
		r.say = fmt.Sprintf("round %d, %d builds", round, n)
		var wg sync.WaitGroup
		for i := range n {
			wg.Go(func() {
				if out, err := r.build(context.Background(), (round+i)%2, round).CombinedOutput(); err != nil {
					r.Errorf("%s: %v: %s", r.say, err, out)
				}
			})
		}
		wg.Wait()
		builds += n
		is := r.set(r.seen)
		r.rises(last, is)
		r.clean()
		if last = is; t.Failed() {
			break
		}
	}
	t.Logf("%d builds, %d reads", builds, stop())
}

// A build that is killed leaves every file whole, and those that count as published are
// of one build; the next one is none the wiser and leaves nothing behind.
func TestKilledBuild(t *testing.T) {
	r := rivalry(t)
	stop := r.readers()
	begun := time.Now()
	if out, err := r.build(context.Background(), 0, 0).CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	takes := time.Since(begun)
	random := rand.New(rand.NewPCG(1, 2))
	last := r.set(r.seen)
	half := 0
	for n := range *killed {
		r.say = fmt.Sprintf("kill %d", n)
		begun := time.Now()
		ctx, cancel := context.WithTimeout(context.Background(), time.Duration((0.4+0.7*random.Float64())*float64(takes)))
		_, err := r.build(ctx, n%2, n+1).CombinedOutput()
		cancel()
		if err != nil {
			half++
		} else {
			takes = time.Since(begun) // the machine has other work at times
		}
		for _, name := range calendars {
			if feed, err := r.seen(name + ".ics"); err != nil {
				t.Fatal(r.say, err)
			} else if _, err := of(feed); err != nil {
				t.Fatal(r.say, err)
			}
		}
		is := r.set(r.known)
		r.rises(last, is)
		if n%5 == 4 {
			if out, err := r.build(context.Background(), 1-n%2, n+1).CombinedOutput(); err != nil {
				t.Fatalf("%s: the next build: %v: %s", r.say, err, out)
			}
			r.rises(is, r.set(r.seen))
			is = r.set(r.seen)
			r.clean()
		}
		if last = is; t.Failed() {
			break
		}
	}
	t.Logf("%d of %d were killed, %d reads", half, *killed, stop())
}
