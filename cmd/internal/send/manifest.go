package send

import (
	"bytes"
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"slices"
)

// manifestName is the file in a target that says what was put there. No web server shows
// what begins with a dot.
const manifestName = ".vivary-sent.json"

// most is how much of a thing in a target is read. No calendar of ours comes near.
const most = 64 << 20

// manifest is what was put into a target; schema/json/sent.schema.json describes it. It
// names no path, only its sum: a path may be what keeps a calendar private, and the
// manifest may be read by whoever reads the target.
type manifest struct {
	Format     string  `json:"format"`
	Version    int     `json:"version"`
	Collection string  `json:"collection,omitempty"` // of which the calendars are, as they say it
	Files      []entry `json:"files"`
}

const (
	manifestFormat  = "vivary/sent"
	manifestVersion = 1
)

// entry is one file in a target.
type entry struct {
	Path     string `json:"path"` // the SHA-256 of it
	Name     string `json:"name"` // of the file, without its folders
	Type     string `json:"type"`
	Cache    string `json:"cache"`
	Encoding string `json:"encoding,omitempty"` // gzip
	Bytes    int    `json:"bytes"`
	Sum      string `json:"sum,omitempty"`  // the SHA-256 of its bytes; "" until it stands there
	Mark     string `json:"mark,omitempty"` // what the target said of it once it stood there
}

// sameAs reports whether an entry is of what another is: the mark is the target's.
func (e entry) sameAs(o entry) bool {
	e.Mark, o.Mark = "", ""
	return e == o && e.Sum != ""
}

func sum(text []byte) string {
	s := sha256.Sum256(text)
	return hex.EncodeToString(s[:])
}

// readManifest reads what was put into a target. One that is not there, or cannot be
// read, has nothing, and all is sent again.
func readManifest(text []byte) (m manifest, damaged bool) {
	if len(text) == 0 {
		return manifest{}, text != nil
	}
	d := json.NewDecoder(bytes.NewReader(text))
	if d.Decode(&m) != nil || m.Format != manifestFormat || m.Version != manifestVersion {
		return manifest{}, true
	}
	return m, false
}

// of returns what is known of a path.
func (m *manifest) of(path string) (entry, bool) {
	id := sum([]byte(path))
	for _, e := range m.Files {
		if e.Path == id {
			return e, true
		}
	}
	return entry{}, false
}

// set puts an entry in the place of the one of its path.
func (m *manifest) set(e entry) {
	m.drop(e.Path)
	m.Files = append(m.Files, e)
}

func (m *manifest) drop(id string) {
	m.Files = slices.DeleteFunc(slices.Clone(m.Files), func(o entry) bool { return o.Path == id })
}

// text is the manifest as it is stored: in one order, so that equal ones are equal.
func (m *manifest) text() []byte {
	m.Format, m.Version = manifestFormat, manifestVersion
	slices.SortFunc(m.Files, func(a, b entry) int {
		return cmp.Or(cmp.Compare(a.Name, b.Name), cmp.Compare(a.Path, b.Path))
	})
	out, _ := json.MarshalIndent(m, "", "  ") // it has nothing that cannot be written
	return append(out, '\n')
}
