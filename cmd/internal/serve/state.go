package serve

import (
	"crypto/sha256"
	"crypto/subtle"
	"errors"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/keys"
	"vivary/cmd/internal/page"
	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/compile/ical"
	"vivary/schema/civil"
)

// state is what is served. It is not changed once it is: a change is another state.
type state struct {
	house *page.House
	feeds map[string]*stored // by the name of the file
	ring  *keys.Ring
	doors map[[sha256.Size]byte]door
}

// stored is a feed with the file from which it was made.
type stored struct {
	*feed
	written time.Time
	size    int64
	noticed civil.Date // the day of the entry that says that the plan is refused, 0 for none
	source  string     // the address that it names as its own, "" for none
}

// door is what an address leads to.
type door struct {
	sum     [sha256.Size]byte
	feed    *feed
	named   []string // the names under which the calendar is fetched, that of now first
	visitor *page.Visitor
}

// open returns what a key leads to. Where it is looked for depends on a sum over it, so that
// how long that takes tells nothing of how much of it is right.
func (s *state) open(key string) (door, bool) {
	sum := sha256.Sum256([]byte(key))
	d, ok := s.doors[sum]
	return d, ok && subtle.ConstantTimeCompare(sum[:], d.sum[:]) == 1
}

// leads reports whether a door leads to a calendar under the name of a file: the one that it
// has, or had once.
func (d *door) leads(file string) bool {
	name, ok := strings.CutSuffix(file, ".ics")
	return ok && d.feed != nil && slices.Contains(d.named, name)
}

// fed returns the calendar to which those who subscribed to a name are led, with all names
// under which they did; nil for none. One that the plan calls otherwise already and that was
// not built since stands under a name of before.
func (s *state) fed(name string) (*stored, []string) {
	names := append([]string{name}, s.ring.Former["calendar "+name].Names...)
	if f := s.feeds[name+".ics"]; f != nil {
		return f, names
	}
	for _, was := range slices.Backward(names[1:]) {
		if f := s.feeds[was+".ics"]; f != nil && s.ring.Calendars[was] == "" {
			return f, names
		}
	}
	return nil, nil
}

// hang makes the doors.
func (s *state) hang() {
	s.doors = make(map[[sha256.Size]byte]door, len(s.feeds)+len(s.ring.Keepers)+1)
	put := func(k keys.Key, d door) {
		if k != "" {
			d.sum = sha256.Sum256([]byte(k))
			s.doors[d.sum] = d
		}
	}
	for name := range s.ring.Calendars {
		if f, names := s.fed(name); f != nil {
			for _, k := range s.ring.Leads(name) {
				put(k, door{feed: f.feed, named: names})
			}
		}
	}
	c := s.house.Result.Plan
	for name, k := range s.ring.Keepers {
		// A keeper whom the plan no longer knows has no address: nobody else is meant by it. A
		// plan that cannot be read takes nobody's.
		if c.Keeper(name) != nil || !understood(s.house.Result) {
			for _, k := range append([]keys.Key{k.Key}, s.ring.Former["keeper "+name].Keys...) {
				put(k, door{visitor: &page.Visitor{Keeper: name, Writes: true, Home: "/k/" + string(k)}})
			}
		}
	}
	put(s.ring.Page, door{visitor: &page.Visitor{Writes: understood(s.house.Result) && len(c.Keepers) == 0, Home: "/k/" + string(s.ring.Page)}})
}

func understood(r *compile.Result) bool { return r.Roster != nil }

// files are the names of the calendars that stand in a folder.
func files(disk afero.Fs, dir string) (out []string, err error) {
	all, err := afero.ReadDir(disk, dir)
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		return nil, err
	}
	for _, x := range all {
		if filepath.Ext(x.Name()) == ".ics" && !strings.HasPrefix(x.Name(), ".") {
			out = append(out, x.Name())
		}
	}
	return out, nil
}

// notice is what each calendar says while the plan is refused: on which day, since when, and
// what to do; nil for nothing.
type notice struct {
	day   civil.Date
	since time.Time
	after time.Duration
	where string // of the collection
}

// entry is the all-day entry of a calendar. It stands on today, or nobody would see it.
func (n *notice) entry(name string) *ical.Entry {
	return &ical.Entry{UID: ical.UID("refused", name), Date: n.day, AllDay: true, Days: 1,
		Summary:     "Care plan refused since " + civil.FromTime(n.since).Short() + ": this calendar is old",
		Description: "The plan of " + n.where + " has had a mistake since " + civil.FromTime(n.since).Words() + ". Until it is put right this calendar stays as it was, and knows nothing of what was planned or logged since. What is wrong stands on the page of the keepers, and is printed by: vivary check. The animals need their care all the same."}
}

// load reads the calendars of some names anew that are not as they were read last. One that
// cannot be read now is as it was. source is the address at which each is served.
func load(disk afero.Fs, dir string, names []string, was map[string]*stored, n *notice, source func(file string) string) map[string]*stored {
	out := map[string]*stored{}
	for _, name := range names {
		f, err := read(disk, dir, name, was[name], n, source(name))
		if err != nil {
			f = was[name]
		}
		if f != nil {
			out[name] = f
		}
	}
	return out
}

// read reads a calendar; nil for what is none of ours.
func read(disk afero.Fs, dir, name string, was *stored, n *notice, source string) (*stored, error) {
	info, err := disk.Stat(filepath.Join(dir, name))
	if err != nil {
		return nil, err
	}
	noticed := civil.Date(0)
	if n != nil {
		noticed = n.day
	}
	if was != nil && was.size == info.Size() && was.written.Equal(info.ModTime()) && was.noticed == noticed && was.source == source {
		return was, nil
	}
	text, err := publish.Last(disk, dir, name)
	if err != nil {
		return nil, err
	}
	if !ical.Ours(text) {
		return was, nil // a good one is better than none
	}
	text = ical.Sourced(text, source)
	modified := info.ModTime()
	if n != nil {
		text, modified = n.put(text, name)
	}
	return &stored{newFeed(name, text, modified), info.ModTime(), info.Size(), noticed, source}, nil
}

// put puts the entry into a calendar, and returns since when it is there.
func (n *notice) put(text []byte, name string) ([]byte, time.Time) {
	at := n.since.Add(n.after)
	if day := n.day.At(0, at.Location()); day.After(at) {
		at = day
	}
	return ical.With(text, n.entry(name), int(n.day-civil.FromTime(n.since)), at), at
}

// calendars are the feeds as the page lists them.
func (s *state) calendars(r *compile.Result) (out []page.Calendar) {
	titles, hidden := map[string]string{}, map[string]func(string) bool{}
	for _, c := range r.Plan.Calendars {
		titles[c.Name.V] = c.Shown()
		if c.OfHouse() {
			hidden[c.Name.V] = func(keeper string) bool { return !r.SeesHouse(c, keeper) }
		}
	}
	for _, file := range slices.Sorted(maps.Keys(s.feeds)) {
		name := strings.TrimSuffix(file, ".ics")
		path := s.ring.Feed(name)
		if path == "" {
			continue
		}
		title := titles[name]
		if title == "" {
			title = name
		}
		out = append(out, page.Calendar{Name: name, Title: title, Path: path, Hidden: hidden[name]})
	}
	return out
}
