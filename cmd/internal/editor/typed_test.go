package editor

import (
	"context"
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/spf13/afero"

	"vivary/cmd/internal/builder"
	"vivary/compile"
	"vivary/internal/randomplan"
)

// TestTypedIsAsFresh: after any edits, at places and of texts that are no plan in between, in
// several files and logs, with what others write on the disk, what is known is what a program
// that begins with these texts finds, and what is shown is that.
func TestTypedIsAsFresh(t *testing.T) {
	for seed := range uint64(30) {
		rng := rand.New(rand.NewPCG(seed, 14))
		p := randomplan.New(seed)
		switch seed % 4 {
		case 1:
			p = p.Templated()
		case 2:
			p = p.Racked()
		case 3:
			p = p.Numbered()
		}
		disk := afero.NewMemMapFs()
		files := p.Files(p.Today - 1)
		for name, text := range files {
			if err := afero.WriteFile(disk, "/c/"+name, []byte(text), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		now := time.Unix(int64(p.Today)*86400+13*3600, 0).UTC()
		c := meet(t, disk, capable, now)
		names := slices.Sorted(maps.Keys(files))
		for _, name := range names {
			if rng.IntN(4) > 0 {
				c.open(name)
			}
		}
		for step := range 12 {
			for range 1 + rng.IntN(4) {
				name := names[rng.IntN(len(names))]
				if _, open := c.texts[name]; !open {
					c.open(name)
				}
				c.slip(rng, name)
			}
			if rng.IntN(4) == 0 { // somebody else writes
				name := names[rng.IntN(len(names))]
				text, _ := afero.ReadFile(disk, "/c/"+name)
				if err := afero.WriteFile(disk, "/c/"+name, append(text, "\n# another\n"...), 0o644); err != nil {
					t.Fatal(err)
				}
				c.tell("workspace/didChangeWatchedFiles", map[string]any{"changes": []any{}})
			}
			c.settled()
			diff := c.differs(now)
			for wait := 0; diff != "" && wait < 50; wait++ { // what was found is sent behind the answers
				time.Sleep(20 * time.Millisecond)
				diff = c.differs(now)
			}
			if diff != "" {
				t.Fatalf("seed %d, step %d: %s", seed, step, diff)
			}
		}
		c.end()
	}
}

// slip does to a file what fingers do: letters come and go, lines are doubled, moved and taken
// out, words of other places are put in.
func (c *client) slip(rng *rand.Rand, name string) {
	text := c.texts[name]
	edge := func(at int) int { // nobody types into the middle of a letter
		for at < len(text) && !utf8.RuneStart(text[at]) {
			at++
		}
		return at
	}
	at := edge(rng.IntN(len(text) + 1))
	line := func(at int) (int, int) {
		start := strings.LastIndexByte(text[:at], '\n') + 1
		if end := strings.IndexByte(text[at:], '\n'); end >= 0 {
			return start, at + end + 1
		}
		return start, len(text)
	}
	start, end := line(at)
	switch rng.IntN(9) {
	case 0:
		c.edit(name, at, at, []string{"x", "1", "\"", "{", "}", "\n", "é", "𝄞", "  ", "#", "="}[rng.IntN(11)])
	case 1:
		c.edit(name, at, edge(min(len(text), at+1+rng.IntN(3))), "")
	case 2:
		c.edit(name, start, end, "")
	case 3:
		c.edit(name, end, end, text[start:end])
	case 4:
		from, to := line(rng.IntN(len(text) + 1))
		c.edit(name, start, start, text[from:to])
	case 5:
		c.edit(name, at, at, "title = \"Box\"\n")
	case 6: // a figure
		if i := strings.IndexAny(text[at:], "0123456789"); i >= 0 {
			c.edit(name, at+i, at+i+1, fmt.Sprint(rng.IntN(10)))
		}
	case 7: // what was typed last is taken back: all of the text at once
		c.edit(name, 0, len(text), text[:start]+text[end:])
		c.edit(name, 0, len(c.texts[name]), text)
	case 8:
		c.edit(name, at, at, "   ")
	}
}

// differs compares what the server knows, and what it shows, with what is found by whoever
// begins with the texts of now; "" for the same.
func (c *client) differs(now time.Time) string {
	disk := afero.NewCopyOnWriteFs(afero.NewReadOnlyFs(c.disk), afero.NewMemMapFs())
	for name, text := range c.texts {
		if err := afero.WriteFile(disk, "/c/"+name, []byte(text), 0o644); err != nil {
			return err.Error()
		}
	}
	b := &builder.Builder{Root: "/c", Out: "/c/feeds", Now: c.server.Now}
	fresh, err := b.Compile(disk)
	if err != nil {
		return err.Error()
	}
	h := c.server.everywhere()[0]
	got := h.settled(context.Background())
	if a, b := follows(got.result), follows(fresh); a != b {
		return apart(a, b)
	}
	want := c.server.textsOf(fresh).diagnostics(fresh)
	c.mu.Lock()
	defer c.mu.Unlock()
	for path, all := range want {
		if a, b := fmt.Sprint(c.shown[uriOf(path)].Diagnostics), fmt.Sprint(all); a != b {
			return path + " shows " + apart(a, b)
		}
	}
	for at, p := range c.shown {
		if len(p.Diagnostics) > 0 && want[pathOf(at)] == nil {
			return at + " shows what is not found any more"
		}
	}
	return ""
}

// follows is all that follows from a collection, in words.
func follows(r *compile.Result) string {
	var out strings.Builder
	for i := range r.Findings {
		f := &r.Findings[i]
		fmt.Fprintln(&out, f.Rule.ID, f.Severity, f.Said(), r.Plan.Files.Start(f.At), f.Edits, f.Of, f.Also)
	}
	if r.Roster == nil {
		return out.String()
	}
	for e := range r.Roster.All() {
		fmt.Fprintln(&out, e.ID, e.Round.Name.V, e.Keeper, e.Days, e.Shown, e.Task, e.Logged)
	}
	for i := range r.Proofs {
		for k := range r.Proofs[i] {
			p := &r.Proofs[i][k]
			fmt.Fprintln(&out, r.Lives[i].Plan.Name.V, p.Name.Name, p.Longest, p.Allowed, p.Breach, p.Times)
		}
	}
	for _, k := range r.Roster.Calendars {
		fmt.Fprint(&out, k.Plan.Name.V)
		for _, p := range k.Picks() {
			fmt.Fprint(&out, p.Entry.ID, p.Days)
		}
		fmt.Fprintln(&out)
	}
	return out.String()
}

func apart(a, b string) string {
	x, y := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := range min(len(x), len(y)) {
		if x[i] != y[i] {
			return fmt.Sprintf("%q\nfresh %q", x[i], y[i])
		}
	}
	return fmt.Sprintf("%d lines, fresh %d", len(x), len(y))
}
