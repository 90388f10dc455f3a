package main

import (
	"errors"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/afero"

	"vivary/cmd/internal/keys"
	"vivary/cmd/internal/send"
	"vivary/compile/ical"
	"vivary/plan"
	"vivary/schema/wording"
)

// publishTo puts the calendars that were built where they are served from.
func publishTo(w *world, f *flags, args []string) int {
	if len(args) == 0 {
		return w.unclear(findCommand("publish"), errors.New("say where to: a folder, sftp://USER@HOST/FOLDER or s3://BUCKET/PREFIX"))
	}
	if f.address != "" && !f.private {
		return w.unclear(findCommand("publish"), errors.New("--address goes with --private: how calendars without a key are reached says web in the collection block"))
	}
	if err := f.reached(); err != nil {
		return w.unclear(findCommand("publish"), err)
	}
	address := args[len(args)-1]
	root, err := w.root(f, args[:len(args)-1])
	if err != nil {
		fmt.Fprintf(w.err, "vivary publish: %v\n", wording.Plain(err))
		return usage
	}
	dir := f.calendars(root)
	all, err := w.built(root, dir)
	if err != nil {
		fmt.Fprintf(w.err, "vivary publish: %v\n", wording.Plain(err))
		return refused
	}
	if err := w.elsewhere(address, dir); err != nil {
		fmt.Fprintf(w.err, "vivary publish: %v\n", wording.Plain(err))
		return usage
	}
	all, paths, err := w.placed(f, root, all)
	if err != nil {
		fmt.Fprintf(w.err, "vivary publish: %v\n", wording.Plain(err))
		return refused
	}
	report, remarks, err := w.send(f, address, all, send.Order{Paths: paths, Remove: f.remove, Try: f.try})
	switch {
	case errors.Is(err, send.ErrAddress):
		return w.unclear(findCommand("publish"), err)
	case err != nil:
		fmt.Fprintf(w.err, "vivary publish: %v\n%s\n", wording.Plain(err), whatStands(report))
		return refused
	}
	for _, r := range remarks {
		fmt.Fprintf(w.err, "vivary publish: %s\n", r)
	}
	if f.format == "json" {
		printJSON(w, sentFormOf(f, report))
		return fine
	}
	printSent(w, f, address, report)
	return fine
}

// built reads the calendars that stand in a folder.
func (w *world) built(root, dir string) ([]send.Calendar, error) {
	if there, err := afero.DirExists(w.disk, root); err != nil || !there {
		return nil, fmt.Errorf("there is no folder %q", root)
	}
	all, err := send.Read(w.disk, dir)
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		return nil, err
	}
	if len(all) == 0 {
		return nil, fmt.Errorf("there are no calendars in %q: build them first, with vivary build", filepath.ToSlash(dir))
	}
	return all, nil
}

// placed returns what is put below the target and where: calendars by their names, or with
// --private by their keys, of which those that are lacking are made. Of the latter each names
// that address as its own, or none where it is not said how the place is reached: the public
// one is another. One that is called otherwise now stands under its old name too.
func (w *world) placed(f *flags, root string, all []send.Calendar) ([]send.Calendar, map[string][]string, error) {
	var names []string
	for _, x := range all {
		names = append(names, x.Name)
	}
	c, _, err := plan.Load(w.disk, root)
	switch {
	case err != nil && f.private:
		return nil, nil, err
	case err != nil: // then nothing is known of names
		paths, err := send.Paths(names, nil)
		return all, paths, err
	}
	want, ring := keys.For(c, names), (*keys.Ring)(nil)
	if f.private {
		if ring, err = w.ringOf(f, root, c, want); err != nil {
			return nil, nil, err
		}
		for i, x := range all {
			own := ""
			if f.address != "" {
				own = strings.TrimRight(f.address, "/") + ring.Feed(x.Name)
			}
			all[i].Text = ical.Sourced(x.Text, own)
		}
	}
	led := want.Led(ring)
	all = underOldNames(all, led)
	names = names[:0]
	for _, x := range all {
		names = append(names, x.Name)
	}
	var by func(string) []string
	if f.private {
		by = func(name string) (all []string) {
			for _, key := range ring.Leads(orElse(led[name], name)) {
				all = append(all, string(key))
			}
			return all
		}
	}
	paths, err := send.Paths(names, by)
	return all, paths, err
}

// underOldNames puts calendars under the names as well that led there once, in the place of
// what was built last under these.
func underOldNames(all []send.Calendar, led map[string]string) []send.Calendar {
	texts := map[string][]byte{}
	for _, x := range all {
		texts[x.Name] = x.Text
	}
	for old, now := range led {
		texts[old] = texts[now]
	}
	out := make([]send.Calendar, 0, len(texts))
	for _, name := range slices.Sorted(maps.Keys(texts)) {
		out = append(out, send.Calendar{Name: name, Text: texts[name]})
	}
	return out
}

// ringOf are the keys of calendars that are published; none are made where it is only tried.
func (w *world) ringOf(f *flags, root string, c *plan.Collection, want keys.Wanted) (*keys.Ring, error) {
	path, err := w.keysOf(f, root, c)
	if err != nil {
		return nil, err
	}
	if !f.try {
		ring, _, err := w.filled(path, want)
		return ring, err
	}
	ring, err := keys.Read(w.disk, path)
	if errors.Is(err, os.ErrNotExist) {
		return nil, errors.New("the calendars have no private addresses yet: vivary keys makes them, and so does vivary publish --private without --try")
	}
	return ring, err
}

// elsewhere refuses a target that is a folder of plans, or the one in which the calendars
// are: they would lie among what is no web server's business.
func (w *world) elsewhere(address, dir string) error {
	if strings.Contains(address, "://") {
		return nil
	}
	to, err := w.disk.Stat(address)
	if err != nil {
		return nil // there is none yet
	}
	if from, err := w.disk.Stat(dir); err == nil && os.SameFile(from, to) {
		return fmt.Errorf("%q is the folder in which the calendars are built: name another one, from which they are served", address)
	}
	if hasCollection(w.disk, address) {
		return fmt.Errorf("%q is the folder of a collection: name one from which calendars are served", address)
	}
	return nil
}

// send reaches the target and does it.
func (w *world) send(f *flags, address string, all []send.Calendar, order send.Order) (*send.Report, []string, error) {
	done := w.progress("reaching " + address)
	defer func() { done() }()
	to, err := send.Open(address, w.access(f))
	if err != nil {
		return nil, nil, err
	}
	defer to.Close()
	order.Sending = func(n, of int, path string) {
		done()
		done = w.progress(fmt.Sprintf("sending %s, %d of %d", send.Shown(path), n+1, of))
	}
	report, err := send.Publish(to, all, order)
	return report, to.Remarks(), send.Words(err)
}

// access is what this machine and the flags give to reach a target.
func (w *world) access(f *flags) send.Access {
	env := func(names ...string) string {
		for _, name := range names {
			if w.env != nil && w.env(name) != "" {
				return w.env(name)
			}
		}
		return ""
	}
	a := send.Access{
		Disk: w.disk, Lock: w.lock, Gzip: f.gzip,
		User: env("USER", "LOGNAME", "USERNAME"), Agent: env("SSH_AUTH_SOCK"), KeyFile: f.sshKey,
		KnownHosts: f.knownHosts, Endpoint: f.endpoint, Region: env("AWS_REGION", "AWS_DEFAULT_REGION"),
	}
	if a.KnownHosts == "" {
		a.KnownHosts = filepath.Join(env("HOME", "USERPROFILE"), ".ssh", "known_hosts")
	}
	if a.Endpoint == "" {
		a.Endpoint = env("AWS_ENDPOINT_URL_S3", "AWS_ENDPOINT_URL")
	}
	if a.KeyFile != "" {
		a.Agent = ""
	}
	return a
}

// whatStands says what became of the target when something went wrong.
func whatStands(r *send.Report) string {
	if r == nil || r.Files == 0 {
		return "Nothing was replaced there: what stood there stands."
	}
	return fmt.Sprintf("%s had come to stand there by then, whole; the others are as they were. Publish again when it is put right.", wording.Count(r.Files, "file", "files"))
}

// printSent says what was done, or would be.
func printSent(w *world, f *flags, address string, r *send.Report) {
	if r.Damaged {
		fmt.Fprintln(w.out, "  What was sent before could not be read there: all is sent anew")
	}
	sent := 0
	for _, c := range r.Calendars {
		fmt.Fprintf(w.out, "  %s  %s, %s\n", send.Shown(c.Path), c.State, wording.Bytes(c.Bytes))
		if c.State != "unchanged" {
			sent++
		}
	}
	removed := "removed"
	if f.try {
		removed = "would be removed"
	}
	for _, p := range r.Removed {
		fmt.Fprintf(w.out, "  %s  %s\n", send.Shown(p), removed)
	}
	for _, p := range r.Standing {
		fmt.Fprintf(w.out, "  %s  stands still: no calendar has this path any more. Phones go on showing it; --remove takes it away\n", send.Shown(p))
	}
	for _, p := range r.Others {
		fmt.Fprintf(w.out, "  %s  stands still: somebody else has changed it since it was put there, so it is not removed\n", send.Shown(p))
	}
	verb := "Sent"
	switch {
	case sent == 0:
		fmt.Fprintf(w.out, "Nothing to send: what is served from %s is up to date\n", address)
		return
	case f.try:
		verb = "Would send"
	}
	fmt.Fprintf(w.out, "%s %d of %s to %s: %s, %s\n", verb, sent, wording.Count(len(r.Calendars), "calendar", "calendars"), address, wording.Count(r.Files, "file", "files"), wording.Bytes(r.Bytes))
}

// sentForm is what publish prints as JSON.
type sentForm struct {
	envelope
	Tried     bool      `json:"tried"`
	Calendars []sentOne `json:"calendars"`
	Removed   []string  `json:"removed,omitempty"`
	Standing  []string  `json:"standing,omitempty"`
	Others    []string  `json:"others,omitempty"`
	Files     int       `json:"files"`
	Bytes     int       `json:"bytes"`
}

type sentOne struct {
	Name  string `json:"name"`
	Path  string `json:"path"`
	State string `json:"state"`
	Bytes int    `json:"bytes"`
}

func sentFormOf(f *flags, r *send.Report) sentForm {
	out := sentForm{begin("publish"), f.try, []sentOne{}, shownAll(r.Removed), shownAll(r.Standing), shownAll(r.Others), r.Files, r.Bytes}
	for _, c := range r.Calendars {
		out.Calendars = append(out.Calendars, sentOne{c.Name, send.Shown(c.Path), c.State, c.Bytes})
	}
	return out
}

func shownAll(paths []string) (out []string) {
	for _, p := range paths {
		out = append(out, send.Shown(p))
	}
	return out
}
