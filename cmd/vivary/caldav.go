package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"runtime"
	"strings"

	"github.com/spf13/afero"

	"vivary/cmd/internal/caldav"
	"vivary/compile/tasks"
	"vivary/schema/wording"
)

// keepTasks brings a list of tasks on a server up to date, and what was ticked there into the
// log.
func keepTasks(w *world, f *flags, args []string) int {
	fail := func(status int, err error) int {
		fmt.Fprintf(w.err, "vivary caldav: %v\n", wording.Plain(err))
		return status
	}
	s, err := w.tasks(f, args)
	if err != nil {
		return fail(usage, err)
	}
	ctx := context.Background()
	if err := s.Client.Find(ctx); err != nil {
		return fail(refused, err)
	}
	out, err := s.Run(ctx)
	w.ticked(&out)
	switch {
	case errors.Is(err, caldav.ErrRefused):
		return w.refuse(out.After, "The list of tasks stays as it is")
	case err != nil:
		return fail(refused, err)
	}
	fmt.Fprintf(w.out, "%s: %s%s.\n", s.Client.Address(), wording.Count(out.Wanted, "task", "tasks"), changed(&out))
	if len(out.Wrong)+len(out.Untold)+len(out.Unread) > 0 {
		return refused
	}
	return fine
}

// tasks reads what the command is about.
func (w *world) tasks(f *flags, args []string) (*caldav.Sync, error) {
	if len(args) == 0 {
		return nil, errors.New("write the address of a list of tasks, for example https://host/path/of/the/list/")
	}
	address := args[len(args)-1]
	root, err := w.root(f, args[:len(args)-1])
	if err != nil {
		return nil, err
	}
	login, err := w.login(f)
	if err != nil {
		return nil, err
	}
	s := &caldav.Sync{Journal: w.journal(f, root), Days: f.daysShown(), Keeper: f.keeper, By: f.by}
	s.Journal.Stamped = true
	if s.Client, err = caldav.New(address, login, f.unencrypted); err != nil {
		return nil, err
	}
	if f.days != notGiven && (f.days < 1 || f.days > maxTaskDays) {
		return nil, fmt.Errorf("--days is from 1 to %d", maxTaskDays)
	}
	r, err := s.Journal.Compile(w.disk)
	if err != nil {
		return nil, err
	}
	if r.Plan.About == nil {
		return nil, fmt.Errorf("no plan in %s or above it has a collection block, so that it has no tasks", quoted(root))
	}
	for _, k := range []string{f.keeper, f.by} {
		if k != "" && r.Plan.Keeper(k) == nil {
			return nil, fmt.Errorf("there is no keeper %q", k)
		}
	}
	return s, nil
}

// maxTaskDays bounds how many days are put up: tasks of a month are no list that is ticked.
const maxTaskDays = 31

// login is who asks the server: from a file that nobody else can read, or from the environment.
func (w *world) login(f *flags) (caldav.Login, error) {
	if f.login == "" {
		return caldav.Login{User: os.Getenv("VIVARY_USER"), Password: os.Getenv("VIVARY_PASSWORD")}, nil
	}
	info, err := w.disk.Stat(f.login)
	if err != nil {
		return caldav.Login{}, err
	}
	if !info.Mode().IsRegular() || info.Size() > 10000 {
		return caldav.Login{}, fmt.Errorf("%q is no file with a user on its first line and a password on its second", f.login)
	}
	if info.Mode().Perm()&0o077 != 0 && runtime.GOOS != "windows" {
		return caldav.Login{}, fmt.Errorf("%q can be read by others, and a password stands in it: chmod 600 %s", f.login, quoted(f.login))
	}
	text, err := afero.ReadFile(w.disk, f.login)
	if err != nil {
		return caldav.Login{}, err
	}
	lines := strings.Split(strings.ReplaceAll(strings.TrimRight(string(text), "\r\n"), "\r\n", "\n"), "\n")
	if len(lines) != 2 || lines[0] == "" || lines[1] == "" {
		return caldav.Login{}, fmt.Errorf("%q is no file with a user on its first line and a password on its second", f.login)
	}
	return caldav.Login{User: lines[0], Password: lines[1]}, nil
}

// ticked says what was ticked, and what of it is not in the log.
func (w *world) ticked(out *caldav.Report) {
	for _, l := range out.Lines {
		fmt.Fprintf(w.out, "%s: %s\n", l.Path, l.Text)
	}
	if len(out.Lines) > 0 {
		w.follows(out.Before, out.After, nil, nil)
	}
	for _, x := range out.Wrong {
		_ = x.With.Printer().Print(w.err, x.Findings)
		fmt.Fprintf(w.err, "\nWas ticked, and not written: %s\n", x.Text)
	}
	for i := range out.Untold {
		fmt.Fprintf(w.err, "vivary caldav: %s\n", untold(&out.Untold[i]))
	}
	for _, path := range out.Unread {
		fmt.Fprintf(w.err, "vivary caldav: %s cannot be read any more and is left as it is: delete it, and it is put up anew.\n", path)
	}
}

// untold says what of a tick is not in the log, and what to do.
func untold(u *tasks.Untold) string {
	what := fmt.Sprintf("%q was ticked, ", u.Task.Summary)
	if u.Task.Cancelled {
		what = fmt.Sprintf("%q was called off, ", u.Task.Summary)
	}
	const write = ": write what was done with vivary note, then delete the task."
	switch u.Why {
	case tasks.NoCare:
		return what + "and the plan has no such care in that round any more" + write
	case tasks.NoPlaces:
		return what + "and its text, where the enclosures stood, is gone" + write
	case tasks.NoSuchPlace:
		return what + "and of " + strings.Join(u.Places, ", ") + " the plan has no such care any more" + write
	case tasks.OneOfSeveral:
		return what + "and " + strings.Join(u.Places, ", ") + " has it in several rounds of that day, of which the log cannot leave out one: it counts as not done."
	default:
		return what + "and is of a day too long ago" + write
	}
}

// changed says what was changed in the list.
func changed(out *caldav.Report) string {
	var all []string
	for _, x := range []struct {
		n    int
		what string
	}{{out.New, "new"}, {out.Changed, "changed"}, {out.Gone, "taken away"}} {
		if x.n > 0 {
			all = append(all, fmt.Sprint(x.n, " ", x.what))
		}
	}
	if all == nil {
		return ", nothing changed"
	}
	return ", " + wording.And(all)
}
