// Package builder compiles a collection and makes its calendars, once for a command or again
// and again for a server: what has not changed since the last time is not worked out anew.
// What it concludes is the same either way.
package builder

import (
	"bytes"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"sync"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// Feeds is the folder of a collection's calendars, where no other was named.
func Feeds(root string) string { return filepath.Join(root, "feeds") }

// Moment returns the present where the animals are; loc is nil where the plan does not say
// where that is.
type Moment func(loc *time.Location) (time.Time, error)

// Builder builds one collection. Its methods may be called by several goroutines; they wait
// for each other.
type Builder struct {
	Root string // the folder of the collection
	Out  string // the folder of its calendars
	Now  Moment

	mu     sync.Mutex
	reader plan.Reader
	last   *compile.Result
	heads  map[string]head
	told   struct {
		name  string
		heads []*feeds.Head
		by    roster.Told
	}

	// Calendars are written by one at a time, while others compile: who ticks something off
	// does not wait for the calendars of the tick before.
	writing sync.Mutex
	made    map[string]calendar
}

// head is the beginning of a feed as it was read last.
type head struct {
	text []byte
	read *feeds.Head
	size int64
	time time.Time // when the file was written
}

// compiled reports whether the last compilation was of this very collection on the day of a
// moment.
func (b *Builder) compiled(c *plan.Collection, now time.Time) bool {
	return b.last != nil && b.last.Plan == c && b.last.Roster != nil && b.last.Today == civil.FromTime(now.In(c.Location))
}

func sameHead(a, b head) bool { return a.read == b.read }

// Compile compiles the collection as it stands on a disk. The error is for a root that is no
// folder, and for a moment that is none; all else is in the findings.
func (b *Builder) Compile(disk afero.Fs) (*compile.Result, error) {
	b.mu.Lock()
	defer b.mu.Unlock()
	c, found, err := b.reader.Load(disk, b.Root)
	if err != nil {
		return nil, err
	}
	now, err := b.Now(c.Location)
	if err != nil {
		return nil, err
	}
	same := true
	if c.About != nil {
		was := b.heads
		b.readHeads(disk)
		same = maps.EqualFunc(was, b.heads, sameHead)
	}
	return b.from(c, found, now, same), nil
}

// Open says which files somebody is editing: their texts are compiled in place of what the
// disk has, from the next Compile on.
func (b *Builder) Open(texts map[string][]byte) {
	b.mu.Lock()
	defer b.mu.Unlock()
	b.reader.Open = texts
}

// Typed compiles the collection as it was when Compile read it last, with other texts of the
// files that were open then. It does not look at the disk.
func (b *Builder) Typed(texts map[string][]byte) (*compile.Result, error) {
	b.mu.Lock()
	defer b.mu.Unlock()
	b.reader.Open = texts
	c, found := b.reader.Again()
	now, err := b.Now(c.Location)
	if err != nil {
		return nil, err
	}
	return b.from(c, found, now, true), nil
}

// from compiles a collection as of a moment. same says that the last feeds are those of the
// compilation before.
func (b *Builder) from(c *plan.Collection, found []finding.Finding, now time.Time, same bool) *compile.Result {
	in := compile.Input{Plan: c, Loaded: found, Now: now, Last: b.last}
	switch {
	case c.About == nil:
	case same && b.compiled(c, now):
		b.last = b.last.At(now)
		return b.last
	default:
		in.Told, in.Known = b.toldBy(c), feeds.KnownOf(c, b.allHeads(), filepath.Clean(b.Out) == filepath.Clean(Feeds(b.Root)))
	}
	b.last = compile.From(in)
	return b.last
}

// toldBy is what the last feeds of a collection told, the same value as long as they are the
// same.
func (b *Builder) toldBy(c *plan.Collection) roster.Told {
	name, heads := c.About.Name.V, b.headsOf(c)
	if b.told.by == nil || b.told.name != name || !slices.Equal(b.told.heads, heads) {
		b.told.name, b.told.heads, b.told.by = name, heads, feeds.ToldBy(name, heads)
	}
	return b.told.by
}

// readHeads reads the beginnings of the feeds that were built last: what they showed people
// is evidence of the days before today, and what they told of the animals too.
func (b *Builder) readHeads(disk afero.Fs) {
	was := b.heads
	b.heads = map[string]head{}
	files, err := afero.ReadDir(disk, b.Out)
	if err != nil {
		return // there are none
	}
	// While feeds are being replaced others may count than those that stand there.
	switching := slices.ContainsFunc(files, func(f os.FileInfo) bool { return f.Name() == publish.SwitchName })
	for _, f := range files {
		name := f.Name()
		if filepath.Ext(name) != ".ics" {
			continue
		}
		old, there := was[name]
		if there && !switching && f.Mode().IsRegular() && old.size == f.Size() && old.time.Equal(f.ModTime()) {
			b.heads[name] = old // as it was: nobody writes two feeds in one instant
			continue
		}
		text, err := publish.Head(disk, b.Out, name)
		if err != nil || text == nil {
			continue
		}
		now := head{text, old.read, f.Size(), f.ModTime()}
		if !there || !bytes.Equal(old.text, text) {
			now.read = feeds.ReadHead(text)
		}
		b.heads[name] = now
	}
}

// headsOf returns those of the calendars that a plan has, under their names before too.
func (b *Builder) headsOf(c *plan.Collection) (out []*feeds.Head) {
	names := []string{c.About.Name.V}
	for _, x := range c.Calendars {
		names = append(names, x.Name.V, x.Formerly.V)
	}
	for _, name := range names {
		if h, there := b.heads[name+".ics"]; there && name != "" {
			out = append(out, h.read)
		}
	}
	return out
}

// allHeads returns all of them, whichever calendars the plan has now.
func (b *Builder) allHeads() []*feeds.Head {
	var names []string
	for name := range b.heads {
		names = append(names, name)
	}
	slices.Sort(names)
	out := make([]*feeds.Head, len(names))
	for i, name := range names {
		out[i] = b.heads[name].read
	}
	return out
}
