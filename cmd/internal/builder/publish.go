package builder

import (
	"bytes"
	"path/filepath"
	"runtime"
	"slices"
	"sync"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/plan/finding"
)

// Calendar is what became of one calendar.
type Calendar struct {
	File  string // its name
	Bytes int
	State State
	Wrong string            // with what stood there before, and where it is kept
	Noisy []finding.Finding // that it is too large
}

// State says what a build did with a calendar.
type State string

// The states of a calendar.
const (
	New       State = "new"
	Changed   State = "changed"
	Unchanged State = "unchanged"
)

// Built is what a build came to.
type Built struct {
	Result    *compile.Result
	Calendars []Calendar // none where the plan is refused
	// Forgotten are the files of calendars that were published once and are no longer in the
	// plan. They are not deleted: somebody may still live by them.
	Forgotten []string
	// Unlocked says why other builds cannot be kept away; "" where they are.
	Unlocked string
}

// Findings returns those of the plan and of its calendars, sorted.
func (b *Built) Findings() []finding.Finding {
	found := slices.Clone(b.Result.Findings)
	for i := range b.Calendars {
		found = append(found, b.Calendars[i].Noisy...)
	}
	return finding.Sort(b.Result.Plan.Files, found)
}

// Build compiles the collection and, unless the plan is refused, replaces its calendars, all
// or none. It holds the folder of the calendars before anything is read, so that who waited
// for another build reads the plan as it is then. ask says whether a clock that does not go
// with the last calendars is asked about, in an error. Where the error is of publishing, what
// is built is returned with it.
func (b *Builder) Build(disk afero.Fs, lock publish.Lock, ask bool) (*Built, error) {
	folder, err := publish.Open(disk, b.Out, lock)
	if err != nil {
		return nil, err
	}
	defer folder.Close()
	out := &Built{Unlocked: folder.Unlocked}
	if out.Result, err = b.Compile(disk); err != nil || out.Result.Refused() {
		return out, err
	}
	b.writing.Lock()
	defer b.writing.Unlock()
	if out.Calendars, err = b.publish(disk, out.Result, folder, ask); err != nil {
		return out, err
	}
	b.sweep(disk, out.Calendars)
	out.Forgotten = b.forgotten(disk, out.Calendars)
	return out, nil
}

// calendar is one as it was made last, by this builder, with the file as it stood then.
type calendar struct {
	feed    feeds.Feed
	made    Calendar
	size    int64
	written time.Time
}

// stands reports whether a calendar has what it had when it was made last, and its file is
// as it was written then: then neither is read or made anew.
func (b *Builder) stands(disk afero.Fs, f *feeds.Feed, name string) (Calendar, bool) {
	was, there := b.made[name]
	if !there || !f.Same(&was.feed) {
		return Calendar{}, false
	}
	info, err := disk.Stat(filepath.Join(b.Out, name))
	if err != nil || info.Size() != was.size || !info.ModTime().Equal(was.written) {
		return Calendar{}, false
	}
	made := was.made
	made.State, made.Wrong = Unchanged, ""
	return made, true
}

// writers is how many feeds are worked on for each processor: while the disk takes
// one, another is made.
const writers = 4

// making is one build of all calendars.
type making struct {
	b      *Builder
	disk   afero.Fs
	r      *compile.Result
	folder *publish.Folder
	batch  *publish.Batch
	all    []feeds.Feed
	made   []Calendar
	was    []lastFeed
}

// publish makes every calendar, several at a time, and replaces all together.
func (b *Builder) publish(disk afero.Fs, r *compile.Result, folder *publish.Folder, ask bool) ([]Calendar, error) {
	m := &making{b: b, disk: disk, r: r, folder: folder, batch: folder.Begin(), all: feeds.Of(r)}
	m.made, m.was = make([]Calendar, len(m.all)), make([]lastFeed, len(m.all))
	err := m.each()
	if err == nil && ask {
		err = clockAsked(r, m.was)
	}
	if err != nil {
		m.batch.Abandon()
		return nil, err
	}
	if err := m.batch.Commit(); err != nil {
		b.made = nil
		return m.made, err
	}
	b.remember(m)
	return m.made, nil
}

// each makes the calendars, and returns the first error.
func (m *making) each() error {
	var (
		mu    sync.Mutex
		wg    sync.WaitGroup
		first error
		next  int
	)
	for range min(writers*runtime.GOMAXPROCS(0), len(m.all)) {
		wg.Go(func() {
			var buf []byte
			for {
				mu.Lock()
				i := next
				next++
				stop := first != nil || i >= len(m.all)
				mu.Unlock()
				if stop {
					return
				}
				if err := m.one(i, &buf); err != nil {
					mu.Lock()
					if first == nil {
						first = err
					}
					mu.Unlock()
				}
			}
		})
	}
	wg.Wait()
	return first
}

// one makes one calendar and stages it, where it is not what stands there already.
func (m *making) one(i int, buf *[]byte) error {
	feed, name := &m.all[i], m.all[i].Name+".ics"
	if made, ok := m.b.stands(m.disk, feed, name); ok {
		m.made[i] = made
		return nil
	}
	last, err := readLast(m.folder, name, m.r.Now)
	if before := feed.Plan.Formerly; err == nil && last.memory == nil && before.Set() {
		// A calendar that was renamed goes on from what its old name told.
		last, err = readLast(m.folder, before.V+".ics", m.r.Now)
	}
	if err != nil {
		return err
	}
	m.was[i] = last
	memory := last.memory
	if memory == nil {
		// There may have been a feed of that name before, which somebody deleted.
		memory = ical.Salvage(nil, m.r.Now)
	}
	text, size, err := feed.Sized((*buf)[:0], memory)
	*buf = text
	if err != nil {
		return err
	}
	made := &m.made[i]
	*made = Calendar{File: name, Bytes: len(text), State: New, Noisy: feed.Noisy(size)}
	switch {
	case last.wrong != nil:
		made.State = Changed
		if made.Wrong, err = last.keep(m.batch, name); err != nil {
			return err
		}
	case last.memory != nil && last.name == name && bytes.Equal(text, last.text):
		made.State = Unchanged
		return nil
	case last.memory != nil:
		made.State = Changed
	}
	return m.batch.Stage(name, text)
}

// remember keeps what was made, with the files as they stand now.
func (b *Builder) remember(m *making) {
	b.made = make(map[string]calendar, len(m.all))
	for i := range m.all {
		info, err := m.disk.Stat(filepath.Join(b.Out, m.made[i].File))
		if err == nil && info.Mode().IsRegular() {
			b.made[m.made[i].File] = calendar{m.all[i], m.made[i], info.Size(), info.ModTime()}
		}
	}
}

func (b *Builder) forgotten(disk afero.Fs, made []Calendar) (names []string) {
	files, err := afero.ReadDir(disk, b.Out)
	if err != nil {
		return nil // it was just written to
	}
	for _, f := range files {
		name := f.Name()
		if filepath.Ext(name) != ".ics" || slices.ContainsFunc(made, func(m Calendar) bool { return m.File == name }) {
			continue
		}
		if text, err := publish.Head(disk, b.Out, name); err == nil && ical.Ours(text) {
			names = append(names, name)
		}
	}
	return names
}

// sweep takes away what builds of before left beside the calendars when they were cut
// off: they had one name for it.
func (b *Builder) sweep(disk afero.Fs, made []Calendar) {
	for _, m := range made {
		name := m.File + ".new"
		if text, err := publish.Head(disk, b.Out, name); err == nil && text != nil && (len(text) == 0 || ical.Ours(text)) {
			_ = disk.Remove(filepath.Join(b.Out, name))
		}
	}
}
