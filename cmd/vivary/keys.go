package main

import (
	"crypto/rand"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"vivary/cmd/internal/keys"
	"vivary/compile"
	"vivary/plan"
	"vivary/schema/slip"
	"vivary/schema/wording"
)

// printKeys prints the private addresses of a collection, and makes those that are lacking; or
// gives some of them another key.
func printKeys(w *world, f *flags, args []string) int {
	fail := func(status int, err error) int {
		fmt.Fprintf(w.err, "vivary keys: %v\n", wording.Plain(err))
		return status
	}
	root, err := w.root(f, args)
	if err != nil {
		return fail(usage, err)
	}
	r, status := w.compiled(f, root)
	if status != fine {
		return status
	}
	if err := f.reached(); err != nil {
		return fail(usage, err)
	}
	path, err := w.keysOf(f, root, r.Plan)
	if err != nil {
		return fail(usage, err)
	}
	ring, added, err := w.filled(path, wanted(r))
	if err != nil {
		return fail(refused, err)
	}
	if f.renew != "" {
		return w.renew(f, path, ring)
	}
	for _, name := range added {
		fmt.Fprintf(w.err, "New: %s\n", name)
	}
	w.addresses(f, path, ring)
	return fine
}

// ring are the keys of a collection.
func (w *world) ring(f *flags, root string, r *compile.Result) (*keys.Ring, error) {
	path, err := w.keysOf(f, root, r.Plan)
	if err != nil {
		return nil, err
	}
	ring, _, err := w.filled(path, wanted(r))
	return ring, err
}

// wanted are the addresses that a collection has to have.
func wanted(r *compile.Result) keys.Wanted {
	var calendars []string
	if r.Roster != nil {
		for i := range r.Roster.Calendars {
			calendars = append(calendars, r.Roster.Calendars[i].Plan.Name.V)
		}
		for _, c := range r.Plan.Calendars {
			if c.OfHouse() {
				calendars = append(calendars, c.Name.V)
			}
		}
	}
	return keys.For(r.Plan, calendars)
}

// filled reads a file of keys, and makes those in it that are lacking.
func (w *world) filled(path string, want keys.Wanted) (*keys.Ring, []string, error) {
	if err := w.disk.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return nil, nil, err
	}
	if w.lock != nil {
		release, err := w.lock(filepath.Dir(path))
		if err != nil && !errors.Is(err, errors.ErrUnsupported) {
			return nil, nil, err
		}
		if err == nil {
			defer release()
		}
	}
	return keys.Fill(w.disk, path, want, rand.Reader)
}

// renew gives an address another key.
func (w *world) renew(f *flags, path string, ring *keys.Ring) int {
	renewed, err := keys.Renew(w.disk, path, f.renew, rand.Reader)
	switch {
	case errors.Is(err, keys.ErrNoName):
		ask := ""
		if near := slip.Of(f.renew, append(ring.Names(), bare(ring.Names())...)); near != "" {
			ask = fmt.Sprintf(": did you mean %q?", near)
		}
		fmt.Fprintf(w.err, "vivary keys: no address is called %q%s\nThere are: %s\n", f.renew, ask, strings.Join(ring.Names(), ", "))
		return usage
	case err != nil:
		fmt.Fprintf(w.err, "vivary keys: %v\n", wording.Plain(err))
		return refused
	}
	ring, err = keys.Read(w.disk, path)
	if err != nil {
		fmt.Fprintf(w.err, "vivary keys: %v\n", wording.Plain(err))
		return refused
	}
	for _, name := range renewed {
		fmt.Fprintf(w.out, "%s has another address from now on: who has the old one sees nothing any more%s.\n", name, then(name))
	}
	w.addresses(f, path, ring)
	return fine
}

// then says what is to be done once an address is another.
func then(name string) string {
	switch {
	case strings.HasPrefix(name, "calendar"):
		return ", and phones have to subscribe anew"
	case name == "labels":
		return ", and all labels have to be printed anew"
	}
	return ""
}

func bare(names []string) (out []string) {
	for _, name := range names {
		if _, own, ok := strings.Cut(name, " "); ok {
			out = append(out, own)
		}
	}
	return out
}

// addresses prints them.
func (w *world) addresses(f *flags, path string, ring *keys.Ring) {
	base := strings.TrimRight(orElse(f.address, "http://"+usualListen), "/")
	fmt.Fprintf(w.out, "Whoever has one of these sees what it leads to. They are kept in %s\n\n", filepath.ToSlash(path))
	for _, name := range ring.Names() {
		word, own, _ := strings.Cut(name, " ")
		address := ""
		switch word {
		case "calendar":
			address = ring.Feed(own)
		case "keeper":
			address = "/k/" + string(ring.Keepers[own].Key) + "/"
		case "page":
			address = "/k/" + string(ring.Page) + "/"
		case "labels":
			continue // each tank has its own, on its label
		}
		fmt.Fprintf(w.out, "%-20s %s%s\n", name, base, address)
	}
}

// keysOf is the file of keys of a collection: outside it, since a plan is shown to many.
func (w *world) keysOf(f *flags, root string, c *plan.Collection) (string, error) {
	path := f.keys
	if path == "" {
		if c.About == nil || c.About.Name.V == "" {
			return "", errors.New("the collection has no name yet: put its plan right first, or name a file for the keys with --keys")
		}
		config, err := os.UserConfigDir()
		if err != nil {
			return "", fmt.Errorf("there is no folder for settings on this machine (%w): name a file for the keys with --keys", err)
		}
		path = filepath.Join(config, "vivary", c.About.Name.V+".keys")
	}
	whole, err := filepath.Abs(path)
	if err != nil {
		return "", err
	}
	home, err := filepath.Abs(root)
	if err != nil {
		return "", err
	}
	if rel, err := filepath.Rel(home, whole); err == nil && rel != ".." && !strings.HasPrefix(rel, ".."+string(filepath.Separator)) {
		return "", fmt.Errorf("the keys would lie in the collection's folder, which others read: name another file with --keys")
	}
	return whole, nil
}
