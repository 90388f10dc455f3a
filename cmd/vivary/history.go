package main

import (
	"errors"
	"fmt"
	"strings"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/history"
	"vivary/cmd/internal/revision"
	"vivary/compile/past"
	"vivary/plan"
	"vivary/schema/wording"
)

// So much of a history is told, and looked through, unless the whole is asked for.
const (
	mostSteps     = 20
	mostRevisions = 400
	allRevisions  = 1 << 20
)

// pastOf says what the plan and the log said of an enclosure.
func pastOf(w *world, f *flags, args []string) int {
	fail := func(err error) int {
		fmt.Fprintf(w.err, "vivary history: %v\n", wording.Plain(err))
		return usage
	}
	switch {
	case len(args) == 0:
		return fail(errors.New("whose history? Name an enclosure, now or as it was called once: vivary history burrow-a"))
	case len(args) > 1:
		return fail(fmt.Errorf("name one enclosure, and here stand %d: %s", len(args), strings.Join(args, ", ")))
	case f.format == "markdown":
		return fail(errors.New("--format is text or json here"))
	}
	c := &comparing{w: w, f: f}
	s, err := c.history(args[0])
	if err != nil {
		return fail(err)
	}
	if f.format == "json" {
		printJSON(w, historyForms(s))
		return fine
	}
	_ = s.Print(w.out, f.whole)
	return fine
}

// history is the story of an enclosure.
func (c *comparing) history(name string) (*past.Story, error) {
	c.find()
	if err := c.open(); err != nil {
		return nil, err
	}
	head, err := c.repo.Find("HEAD")
	if err != nil {
		return nil, err
	}
	asked := history.Asked{Name: name, Most: mostSteps, Now: func(loc *time.Location) (time.Time, error) { return c.w.moment(c.f, loc) }}
	most := mostRevisions
	if c.f.whole {
		asked.Most, most = 0, allRevisions
	}
	commits, cut, err := c.repo.Log(head, most)
	if err != nil {
		return nil, err
	}
	asked.Begins = !cut && len(commits) < most
	var all []history.Revision
	if plan.Standing(c.w.disk, c.root) != "" {
		disk := within(c.w.disk, c.root)
		all = append(all, history.Revision{Disk: func() (afero.Fs, error) { return disk, nil }})
	}
	for _, commit := range commits {
		all = append(all, c.at(commit))
	}
	if len(all) == 0 {
		return nil, fmt.Errorf("no revision has a plan below %s: name the folder of a collection", quoted(c.root))
	}
	s, err := history.Of(all, asked)
	if err != nil {
		return nil, err
	}
	if cut {
		s.Cut = commits[len(commits)-1].Short
	}
	if len(commits) == most {
		s.Looked = most
	}
	return s, nil
}

// at is the collection at a commit.
func (c *comparing) at(commit revision.Commit) history.Revision {
	return history.Revision{
		Revision: past.Revision{ID: commit.ID, Short: commit.Short, Author: commit.Author, Subject: commit.Subject, When: commit.When},
		Disk: func() (afero.Fs, error) {
			files, err := c.repo.Files(commit)
			if err != nil {
				return nil, err
			}
			return within(files, c.root), nil
		}}
}
