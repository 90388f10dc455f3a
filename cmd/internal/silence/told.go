package silence

import (
	"encoding/json"
	"errors"
	"maps"
	"os"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/keys"
	"vivary/schema/civil"
)

// remembered is for how many days it is known what was told.
const remembered = 10

// memory is who was told of which cause, in a file beside the keys: a program that begins
// again tells nobody twice. It has addresses of people in it, and only its owner can read it.
type memory struct {
	disk afero.Fs
	path string
	told map[string]told // by cause and address; nil until it was read
	bad  time.Time       // since when nothing is built, zero where something is
}

// told is the day of which somebody was told last, and since when they were each day.
type told struct {
	Day, Since civil.Date
	// RefusedBy is the mail server that refused it for good that day; "" where it was sent.
	RefusedBy string
}

// written is it in the file.
type written struct {
	Day       string `json:"day,omitempty"`
	Since     string `json:"since"`
	RefusedBy string `json:"refused_by,omitempty"`
}

// unbuilt is the key of since when nothing is built, as an instant (RFC 3339). The others have
// a space in them.
const unbuilt = "unbuilt"

// read reads what was told, once. What is no memory of ours counts as none: somebody is told
// once more.
func (m *memory) read() error {
	if m.told != nil {
		return nil
	}
	text, err := afero.ReadFile(m.disk, m.path)
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		return err
	}
	m.told = map[string]told{}
	all := map[string]written{}
	if json.Unmarshal(text, &all) != nil {
		return nil
	}
	if at, err := time.Parse(time.RFC3339, all[unbuilt].Since); err == nil {
		m.bad = at
	}
	for key, w := range all {
		day, e1 := civil.Parse(w.Day)
		since, e2 := civil.Parse(w.Since)
		if e1 == nil && e2 == nil {
			m.told[key] = told{day, since, w.RefusedBy}
		}
	}
	return nil
}

func keyOf(c Cause, p Person) string { return c.Name + " " + p.Address }

// since is since when somebody is told of a cause day after day, with the day of the cause.
func (m *memory) since(c Cause, p Person) civil.Date {
	if was, ok := m.told[keyOf(c, p)]; ok && was.RefusedBy == "" && was.Day >= c.Day-1 && was.Day <= c.Day+1 {
		return was.Since
	}
	return c.Day
}

// knows reports whether somebody was told of a cause, or cannot be told by a server. A day far
// ahead is that of a clock that was wrong, or nobody would be told until then.
func (m *memory) knows(c Cause, p Person, server string) bool {
	was, ok := m.told[keyOf(c, p)]
	return ok && was.Day >= c.Day && was.Day <= c.Day+1 && (was.RefusedBy == "" || was.RefusedBy == server)
}

// put remembers that somebody is told of a cause, and returns what takes that back. Where it
// cannot be written nothing is remembered.
func (m *memory) put(c Cause, p Person) (undo func() error, err error) {
	was := maps.Clone(m.told)
	m.hold(c, p)
	maps.DeleteFunc(m.told, func(_ string, t told) bool { return t.Day < c.Day-remembered })
	if err := m.write(); err != nil {
		m.told = was
		return nil, err
	}
	return func() error { m.told = was; return m.write() }, nil
}

// hold remembers it for as long as this process goes on, and returns what takes that back.
func (m *memory) hold(c Cause, p Person) (undo func() error) {
	key := keyOf(c, p)
	was, known := m.told[key]
	m.told[key] = told{c.Day, m.since(c, p), ""}
	return func() error {
		if delete(m.told, key); known {
			m.told[key] = was
		}
		return nil
	}
}

// refused remembers that a server refused for good what was to be told.
func (m *memory) refused(c Cause, p Person, server string) error {
	m.told[keyOf(c, p)] = told{c.Day, c.Day, server}
	return m.write()
}

func (m *memory) write() error {
	all := map[string]written{}
	for key, t := range m.told {
		all[key] = written{t.Day.String(), t.Since.String(), t.RefusedBy}
	}
	if !m.bad.IsZero() {
		all[unbuilt] = written{Since: m.bad.UTC().Format(time.RFC3339)}
	}
	text, err := json.MarshalIndent(all, "", "  ")
	if err != nil {
		return err
	}
	return keys.Write(m.disk, m.path, append(text, '\n'))
}
