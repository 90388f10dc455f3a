package main

import (
	"bytes"
	"errors"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"vivary/cmd/internal/lastlist"
	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/paper"
	"vivary/compile/roster"
	"vivary/schema"
	"vivary/schema/wording"
)

// coverSheet makes the sheet of somebody who stands in.
func coverSheet(w *world, f *flags, args []string) int {
	r, root, status := w.toPrint("cover", f, args)
	if status != fine {
		return status
	}
	stint, err := stintOf(r, f.keeper)
	var own string
	if err == nil {
		own, err = w.ownPage(f, root, r, stint.Keeper)
	}
	if err != nil {
		fmt.Fprintf(w.err, "vivary cover: %v\n", wording.Plain(err))
		return usage
	}
	if r.Refused() {
		return w.coverRefused(r, f, f.calendars(root), stint, own)
	}
	doc, err := paper.Cover(r, stint, own)
	if err != nil {
		fmt.Fprintf(w.err, "vivary cover: %v\n", wording.Plain(err))
		return usage
	}
	return w.print(f, "cover", doc)
}

// coverRefused makes that sheet while the plan is refused, with the lists of the calendars last
// built: whoever stands in comes all the same. What is wrong goes to standard error.
func (w *world) coverRefused(r *compile.Result, f *flags, dir string, stint *roster.Stint, own string) int {
	h := r.Horizon
	first := h.Date(stint.Next(h.Today))
	last := lastlist.Read(w.disk, dir, first, first+mostDays)
	if last.Found == 0 {
		return w.refuse(r, "Nobody is handed the lists of a plan that is refused, and no calendars were built before: put this right")
	}
	last.Items = slices.DeleteFunc(last.Items, func(x lastlist.Item) bool {
		i, ok := h.Index(x.Day)
		return !ok || !stint.Days.Has(i)
	})
	doc, err := paper.OldCover(r, stint, own, oldOf(r, f, &last, dir))
	if err != nil {
		fmt.Fprintf(w.err, "vivary cover: %v\n", wording.Plain(err))
		return usage
	}
	if status := w.print(f, "cover", doc); status != fine {
		return status
	}
	return w.refuse(r, "The plan is refused; put this right, and print the sheet again before it is handed over")
}

// mostDays is for how many days calendars are read for somebody who stands in: more paper is
// not carried along.
const mostDays = 60

// stintOf is the next time in which a keeper stands in, "" for whoever does.
func stintOf(r *compile.Result, keeper string) (*roster.Stint, error) {
	if keeper != "" && r.Plan.Keeper(keeper) == nil {
		return nil, fmt.Errorf("there is no keeper %q", keeper)
	}
	all := r.Roster.Stints()
	k := slices.IndexFunc(all, func(x roster.Stint) bool { return keeper == "" || x.Keeper == keeper })
	switch {
	case k >= 0:
		return &all[k], nil
	case keeper != "":
		return nil, fmt.Errorf("%s stands in for nobody: write an away block with cover = %q, or while somebody is ill vivary note keeper NAME away", keeper, keeper)
	}
	return nil, errors.New("nobody stands in for anybody: write an away block with a cover, or while somebody is ill vivary note keeper NAME away")
}

// emergencyCards makes the cards for emergencies.
func emergencyCards(w *world, f *flags, args []string) int {
	r, _, status := w.toPrint("emergency", f, args)
	if status != fine {
		return status
	}
	doc, lacking := paper.Cards(r)
	if len(lacking) > 0 {
		fmt.Fprintf(w.err, "The plan has no number for: %s. Write it into its frame by hand, or into the plan: contact \"name\" { phone = \"…\" role = \"%s\" }\n", strings.Join(lacking, ", "), schema.RoleEmergency)
	}
	return w.print(f, "emergency", doc)
}

// tankLabels makes labels for tanks.
func tankLabels(w *world, f *flags, args []string) int {
	r, root, status := w.toPrint("labels", f, nil)
	if status != fine {
		return status
	}
	lives, err := livesOf(r, args)
	var doc *paper.Document
	if err == nil {
		var pageOf func(string) string
		if pageOf, err = w.pagesOf(f, root, r); err == nil {
			doc, err = paper.Labels(r, lives, pageOf)
		}
	}
	if err != nil {
		fmt.Fprintf(w.err, "vivary labels: %v\n", wording.Plain(err))
		return usage
	}
	return w.print(f, "labels", doc)
}

// careSheets makes the sheets of how animals are kept.
func careSheets(w *world, f *flags, args []string) int {
	r, _, status := w.toPrint("caresheet", f, nil)
	if status != fine {
		return status
	}
	lives, err := keptAs(r, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary caresheet: %v\n", wording.Plain(err))
		return usage
	}
	return w.print(f, "caresheet", paper.CareSheets(r, lives))
}

// keptAs are the enclosures that are named, or in which a species lives.
func keptAs(r *compile.Result, args []string) ([]*life.Enclosure, error) {
	if len(args) == 1 && r.Plan.Enclosure(args[0]) == nil {
		var of []*life.Enclosure
		for _, l := range r.Lives {
			if s := l.Plan.Sheet; s != nil && (s.Name.V == args[0] || strings.EqualFold(s.Shown(), args[0])) {
				of = append(of, l)
			}
		}
		if of != nil {
			return of, nil
		}
	}
	return livesOf(r, args)
}

// pagesOf returns the address of the page that the label of an enclosure opens; "" where
// nobody said where the pages are.
func (w *world) pagesOf(f *flags, root string, r *compile.Result) (func(enclosure string) string, error) {
	if f.address == "" {
		return func(string) string { return "" }, nil
	}
	ring, err := w.ring(f, root, r)
	if err != nil {
		return nil, err
	}
	base := strings.TrimRight(f.address, "/")
	return func(name string) string { return base + ring.Label(r.Plan, name) }, nil
}

// ownPage is the address of a keeper's pages; "" where nobody said where the pages are.
func (w *world) ownPage(f *flags, root string, r *compile.Result, keeper string) (string, error) {
	if f.address == "" {
		return "", nil
	}
	ring, err := w.ring(f, root, r)
	if err != nil {
		return "", err
	}
	return strings.TrimRight(f.address, "/") + "/k/" + string(ring.Keepers[keeper].Key) + "/", nil
}

// livesOf are the enclosures that are named, all where none is.
func livesOf(r *compile.Result, args []string) ([]*life.Enclosure, error) {
	if len(args) == 0 {
		return r.Lives, nil
	}
	of, rest, err := takeWho(r.Plan, args)
	if err != nil {
		return nil, err
	}
	for _, word := range append(slices.Clone(of.names), rest...) {
		if r.Plan.Enclosure(word) == nil {
			return nil, fmt.Errorf("there is no enclosure %q", word)
		}
	}
	return slices.DeleteFunc(slices.Clone(r.Lives), func(l *life.Enclosure) bool { return !slices.Contains(of.names, l.Plan.Name.V) }), nil
}

// toPrint reads the collection of which something is printed, which has to be understood.
func (w *world) toPrint(name string, f *flags, args []string) (*compile.Result, string, int) {
	root, err := w.root(f, args)
	if err == nil {
		err = f.reached()
	}
	if err != nil {
		fmt.Fprintf(w.err, "vivary %s: %v\n", name, wording.Plain(err))
		return nil, root, usage
	}
	r, status := w.compiled(f, root)
	if status == fine && r.Roster == nil {
		return nil, root, w.refuse(r, "Nothing can be printed until this is put right")
	}
	return r, root, status
}

// print prints a document as text, or writes it into a file to be printed: whole or not at
// all, and never over what it did not write.
func (w *world) print(f *flags, name string, doc *paper.Document) int {
	if f.paper == "" {
		_ = doc.Text(w.out) // run sees a failure when it flushes
		return fine
	}
	shown := filepath.ToSlash(f.paper)
	if !strings.EqualFold(filepath.Ext(shown), ".html") {
		fmt.Fprintf(w.err, "vivary %[1]s: the name of pages to be printed ends in .html: --paper %[2]s.html\n", name, shown)
		return usage
	}
	var b bytes.Buffer
	err := doc.HTML(&b, paper.Options{})
	if err == nil {
		err = publish.Replace(w.disk, f.paper, b.Bytes(), paper.Ours)
	}
	if err != nil {
		fmt.Fprintf(w.err, "vivary %s: %v. Nothing was written: give the pages another name.\n", name, wording.Plain(err))
		return refused
	}
	fmt.Fprintln(w.out, shown)
	return fine
}
