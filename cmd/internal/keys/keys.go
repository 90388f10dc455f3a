// Package keys holds the private addresses of a collection: for each calendar, each keeper
// and the labels at the tanks a part of an address that nobody can guess. They stand in a file
// outside the plan, which only its owner can read: a plan is shown to many, and lies in git.
//
// The file is written in the syntax of plans, by a program and by hand. Whoever changes a key
// in it, or takes a block out, takes the address away from whoever has it.
package keys

import (
	"crypto/hmac"
	"crypto/rand"
	"crypto/sha256"
	"crypto/subtle"
	"encoding/base64"
	"errors"
	"fmt"
	"io"
	"maps"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/gohcl"
	"github.com/hashicorp/hcl/v2/hclparse"
	"github.com/hashicorp/hcl/v2/hclwrite"
	"github.com/spf13/afero"

	"vivary/compile/identity"
	"vivary/plan"
)

// Bytes is how many random bytes a key has: 128 bits.
const Bytes = 16

// Key is a part of an address that nobody can guess: 16 random bytes as 22 letters, digits,
// hyphens and underscores (RFC 4648, 5, without padding).
type Key string

var keyForm = regexp.MustCompile(`^[A-Za-z0-9_-]{22}$`)

// Make makes a new key from a source of random bytes.
func Make(random io.Reader) (Key, error) {
	var b [Bytes]byte
	if _, err := io.ReadFull(random, b[:]); err != nil {
		return "", fmt.Errorf("no random numbers are to be had: %w", err)
	}
	return Key(base64.RawURLEncoding.EncodeToString(b[:])), nil
}

// Of is the key of one name among those that share this one: of the labels in a house, each
// has its own, and none has to be written down.
func (k Key) Of(name string) Key {
	m := hmac.New(sha256.New, []byte(k))
	m.Write([]byte(name))
	return Key(base64.RawURLEncoding.EncodeToString(m.Sum(nil)[:Bytes]))
}

// Is reports whether a text is the key. How long it takes does not tell how much of it was
// right.
func (k Key) Is(text string) bool {
	a, b := sha256.Sum256([]byte(k)), sha256.Sum256([]byte(text))
	return k != "" && subtle.ConstantTimeCompare(a[:], b[:]) == 1
}

// Ring is what a file of keys says.
type Ring struct {
	Calendars map[string]Key
	Keepers   map[string]Keeper
	// Former is what calendars and keepers were called before, by what they are: "calendar late".
	Former map[string]Former
	// Page opens the pages to whoever only reads. Where a plan has no keepers whoever has it
	// writes too.
	Page Key
	// Labels are the key from which that of each label follows.
	Labels Key
	Mail   *Mail // nil where nobody is written to
}

// Keeper is a keeper's address, and where mail to them goes; "" for no mail.
type Keeper struct {
	Key  Key
	Mail string
}

// Mail is how mail is sent and to whom. It is off where there is none.
type Mail struct {
	Server   string   `hcl:"server"`            // "smtp.quillmoor.example:587"
	User     string   `hcl:"user,optional"`     // "" to send without signing in
	Password string   `hcl:"password,optional"` //
	From     string   `hcl:"from"`
	To       []string `hcl:"to,optional"` // besides the keepers that have an address
	// UrgentAt is the time of day at which whoever is written to is told of what is urgent.
	UrgentAt string `hcl:"urgent_at,optional"`
	// Plain says that the connection is not encrypted: on the same machine only.
	Plain bool `hcl:"plain,optional"`
}

// form is the file.
type form struct {
	Calendars []named `hcl:"calendar,block"`
	Keepers   []named `hcl:"keeper,block"`
	Page      *only   `hcl:"page,block"`
	Labels    *only   `hcl:"labels,block"`
	Mail      *Mail   `hcl:"mail,block"`
}

type named struct {
	Name string `hcl:"name,label"`
	Key  string `hcl:"key"`
	Mail string `hcl:"mail,optional"`

	Formerly []string `hcl:"formerly,optional"` // what it was called before, the first name first
	Also     []string `hcl:"also,optional"`     // keys that lead there as well
}

type only struct {
	Key string `hcl:"key"`
}

// most is how much of a file is read: 10,000 calendars need 1 MB.
const most = 8 << 20

// Read reads a file of keys. The error is os.ErrNotExist for none, and in words for one that
// others can read or that is not understood; no key stands in it.
func Read(disk afero.Fs, path string) (*Ring, error) {
	_, ring, err := read(disk, path)
	return ring, err
}

func read(disk afero.Fs, path string) ([]byte, *Ring, error) {
	info, err := disk.Stat(path)
	if err != nil {
		return nil, nil, err
	}
	switch {
	case !info.Mode().IsRegular():
		return nil, nil, fmt.Errorf("%s is no file of keys", path)
	case open(info.Mode()):
		return nil, nil, fmt.Errorf("%s can be read by others on this machine: chmod 600 %s, and then vivary keys --renew for each address that they may have seen", path, path)
	case info.Size() > most:
		return nil, nil, fmt.Errorf("%s is larger than a file of keys can be", path)
	}
	text, err := afero.ReadFile(disk, path)
	if err != nil {
		return nil, nil, err
	}
	ring, err := understood(text, path)
	return text, ring, err
}

// understood reads the text of a file. Errors of the language quote what stands there, so
// that only their places are told.
func understood(text []byte, path string) (*Ring, error) {
	file, wrong := hclparse.NewParser().ParseHCL(text, path)
	var f form
	if !wrong.HasErrors() {
		wrong = gohcl.DecodeBody(file.Body, nil, &f)
	}
	if wrong.HasErrors() {
		return nil, unread(path, wrong)
	}
	r := &Ring{Calendars: map[string]Key{}, Keepers: map[string]Keeper{}, Former: map[string]Former{}, Mail: f.Mail}
	seen := map[string]string{}
	take := func(what, key string) (Key, error) {
		switch {
		case !keyForm.MatchString(key):
			return "", fmt.Errorf("%s: the key of %s is not 22 letters, digits, - and _: take it out, and vivary keys makes another", path, what)
		case seen[key] != "":
			return "", fmt.Errorf("%s: %s and %s have the same key: take one out, and vivary keys makes another", path, seen[key], what)
		}
		seen[key] = what
		return Key(key), nil
	}
	var err, first error
	keep := func(e error) {
		if first == nil {
			first = e
		}
	}
	before := func(what string, n named) {
		was := Former{Names: n.Formerly}
		for _, k := range n.Also {
			key, err := take(what, k)
			keep(err)
			was.Keys = append(was.Keys, key)
		}
		if len(was.Names)+len(was.Keys) > 0 {
			r.Former[what] = was
		}
	}
	for _, c := range f.Calendars {
		r.Calendars[c.Name], err = take("calendar "+c.Name, c.Key)
		keep(err)
		before("calendar "+c.Name, c)
	}
	for _, k := range f.Keepers {
		key, err := take("keeper "+k.Name, k.Key)
		keep(err)
		r.Keepers[k.Name] = Keeper{key, k.Mail}
		before("keeper "+k.Name, k)
	}
	if f.Page != nil {
		r.Page, err = take("page", f.Page.Key)
		keep(err)
	}
	if f.Labels != nil {
		r.Labels, err = take("labels", f.Labels.Key)
		keep(err)
	}
	if len(r.Calendars) < len(f.Calendars) || len(r.Keepers) < len(f.Keepers) {
		keep(fmt.Errorf("%s: a calendar or a keeper stands there twice: take one out", path))
	}
	if first != nil {
		return nil, first
	}
	return r, nil
}

// unread says where a file of keys is not understood, and nothing of what stands there.
func unread(path string, wrong hcl.Diagnostics) error {
	for _, d := range wrong {
		if d.Severity == hcl.DiagError && d.Subject != nil {
			return fmt.Errorf("%s:%d: this is not understood in a file of keys (calendar, keeper, page, labels, mail)", path, d.Subject.Start.Line)
		}
	}
	return fmt.Errorf("%s is not understood", path)
}

// Wanted are the names for which a collection needs keys.
type Wanted struct {
	Title     string // of the collection, for whoever reads the file
	Calendars []Named
	Keepers   []Named
	Standing  []string // calendars of which the plan says nothing now
}

// Fill makes a key for each name that has none, and the file where there is none. It takes
// none away: a calendar that comes back has the address that it had, and what is called
// otherwise keeps its own. added names what is new.
func Fill(disk afero.Fs, path string, want Wanted, random io.Reader) (r *Ring, added []string, err error) {
	text, r, err := read(disk, path)
	switch {
	case errors.Is(err, os.ErrNotExist):
		r = &Ring{Calendars: map[string]Key{}, Keepers: map[string]Keeper{}, Former: map[string]Former{}}
		text = []byte("# The private addresses of " + strings.Map(shown, want.Title) + ". Whoever has one sees what it leads to.\n# Keep this file to yourself. To take an address away: vivary keys --renew NAME\n# Who is told by mail when nobody came, from where: mail { server from to user password urgent_at plain }, an attribute a line,\n# and mail = \"...\" in the block of a keeper.\n")
	case err != nil:
		return nil, nil, err
	}
	file, wrong := hclwrite.ParseConfig(text, path, hcl.InitialPos)
	if wrong.HasErrors() {
		return nil, nil, unread(path, wrong)
	}
	moved := r.rename(file.Body(), "calendar", want.Calendars)
	moved = r.rename(file.Body(), "keeper", want.Keepers) || moved
	if moved {
		if r, err = understood(file.Bytes(), path); err != nil {
			return nil, nil, err
		}
	}
	if added, err = r.fill(file.Body(), want, random); err != nil || len(added) == 0 && !moved {
		return r, nil, err
	}
	return r, added, Write(disk, path, file.Bytes())
}

func (r *Ring) fill(body *hclwrite.Body, want Wanted, random io.Reader) (added []string, err error) {
	put := func(word string, labels ...string) Key {
		if err != nil {
			return ""
		}
		var k Key
		if k, err = Make(random); err != nil {
			return ""
		}
		body.AppendNewline()
		body.AppendNewBlock(word, labels).Body().SetAttributeValue("key", literal(k))
		added = append(added, strings.Join(append([]string{word}, labels...), " "))
		return k
	}
	for _, n := range want.Calendars {
		if r.Calendars[n.Name] == "" {
			r.Calendars[n.Name] = put("calendar", n.Name)
		}
	}
	for _, name := range want.Standing {
		if r.Calendars[name] == "" && !r.was("calendar", name) {
			r.Calendars[name] = put("calendar", name)
		}
	}
	for _, n := range want.Keepers {
		if r.Keepers[n.Name].Key == "" {
			r.Keepers[n.Name] = Keeper{put("keeper", n.Name), r.Keepers[n.Name].Mail}
		}
	}
	if r.Page == "" {
		r.Page = put("page")
	}
	if r.Labels == "" {
		r.Labels = put("labels")
	}
	return added, err
}

// ErrNoName says that no address bears a name.
var ErrNoName = errors.New("no address of that name")

// Renew gives the addresses of a name another key: of the calendar and the keeper that are
// called so, of the page or of the labels. Whoever had the old one sees nothing any more.
func Renew(disk afero.Fs, path, name string, random io.Reader) (renewed []string, err error) {
	text, _, err := read(disk, path)
	if err != nil {
		return nil, err
	}
	file, wrong := hclwrite.ParseConfig(text, path, hcl.InitialPos)
	if wrong.HasErrors() {
		return nil, unread(path, wrong)
	}
	word, of, two := strings.Cut(name, " ")
	for _, b := range file.Body().Blocks() {
		whole := strings.Join(append([]string{b.Type()}, b.Labels()...), " ")
		fits := whole == name || !two && len(b.Labels()) == 1 && b.Labels()[0] == word || two && b.Type() == word && len(b.Labels()) == 1 && b.Labels()[0] == of
		if !fits || b.Body().GetAttribute("key") == nil {
			continue
		}
		k, err := Make(random)
		if err != nil {
			return nil, err
		}
		b.Body().SetAttributeValue("key", literal(k))
		b.Body().RemoveAttribute("also")
		renewed = append(renewed, whole)
	}
	if len(renewed) == 0 {
		return nil, ErrNoName
	}
	return renewed, Write(disk, path, file.Bytes())
}

// Feed is the path of a calendar below the address of whoever serves it, "" for one without a key.
func (r *Ring) Feed(name string) string {
	if r.Calendars[name] == "" {
		return ""
	}
	return "/c/" + string(r.Calendars[name]) + "/" + name + ".ics"
}

// Label is the path of the page that the label at an enclosure opens, below the address of
// whoever serves it. It is made of the name that the enclosure had first: a label stays at a
// tank for years.
func (r *Ring) Label(c *plan.Collection, enclosure string) string {
	if e := c.Enclosure(enclosure); e != nil {
		enclosure = identity.Enclosure(e)
	}
	return "/t/" + string(r.Labels.Of(enclosure)) + "/" + url.PathEscape(enclosure)
}

// Names are all that have an address, in words: "calendar evening".
func (r *Ring) Names() (out []string) {
	for _, name := range slices.Sorted(maps.Keys(r.Calendars)) {
		out = append(out, "calendar "+name)
	}
	for _, name := range slices.Sorted(maps.Keys(r.Keepers)) {
		out = append(out, "keeper "+name)
	}
	return append(out, "page", "labels")
}

// Write replaces a file that only its owner can read, at once. It is never there half, and never
// to be read by others.
func Write(disk afero.Fs, path string, text []byte) error {
	if err := disk.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return err
	}
	k, err := Make(rand.Reader)
	if err != nil {
		return err
	}
	from := path + "." + string(k[:8]) + ".new"
	f, err := disk.OpenFile(from, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o600)
	if err != nil {
		return err
	}
	_, err = f.Write(text)
	if err == nil {
		err = f.Sync()
	}
	if e := f.Close(); err == nil {
		err = e
	}
	if err == nil {
		err = disk.Rename(from, path)
	}
	if err != nil {
		_ = disk.Remove(from)
	}
	return err
}
