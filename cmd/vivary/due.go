package main

import (
	"fmt"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/deadline"
	"vivary/compile/paper"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

func dueRounds(w *world, f *flags, args []string) int {
	root, err := w.root(f, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary due: %v\n", wording.Plain(err))
		return usage
	}
	r, status := w.compiled(f, root)
	if status != fine {
		return status
	}
	if r.Refused() {
		return w.dueRefused(r, f, f.calendars(root))
	}
	if f.round != "" && !hasRound(r, f.round) {
		fmt.Fprintf(w.err, "vivary due: there is no round %q\n", f.round)
		return usage
	}
	if f.keeper != "" && r.Plan.Keeper(f.keeper) == nil {
		fmt.Fprintf(w.err, "vivary due: there is no keeper %q\n", f.keeper)
		return usage
	}
	if f.days != notGiven && (f.days < 1 || f.days > r.Horizon.Ahead()) {
		fmt.Fprintf(w.err, "vivary due: --days is from 1 to %d\n", r.Horizon.Ahead())
		return usage
	}
	if f.paper != "" {
		return w.print(f, "due", paper.Round(r, daylist.Of(r, f.asked())))
	}
	sheets := daylist.Of(r, f.asked())
	if f.format == "json" {
		return dueJSON(w, r, f, sheets)
	}
	printDays(w, r, f, sheets)
	printDates(w, r, f)
	if len(sheets) > 0 {
		mains(w, r)
	}
	if sum := finding.Summary(r.Findings); sum != "" {
		fmt.Fprintf(w.out, "\n%s: see vivary check.\n", sum)
	}
	return fine
}

// mains prints, once, the usual care where mains and water are close together, if anything
// is heated.
func mains(w *world, r *compile.Result) {
	if r.Plan != nil && slices.ContainsFunc(r.Plan.Enclosures, func(e *plan.Enclosure) bool { return e.Climate != nil && len(e.Climate.Heaters) > 0 }) {
		fmt.Fprintf(w.out, "\nMains and water: %s.\n", schema.MainsBrief)
	}
}

// ahead is how many days are shown where nobody says how many.
const ahead = 3

func (f *flags) daysShown() int {
	if f.days == notGiven {
		return ahead
	}
	return max(1, f.days)
}

// printDays prints each day that asks something of anybody: a round, or an absence. Today is
// printed in full, and so are the others where so many days are asked for.
func printDays(w *world, r *compile.Result, f *flags, sheets []*daylist.List) {
	any := pressingUnpassed(w, r, f, sheets)
	for on := r.Today; on < r.Today+civil.Date(f.daysShown()); on++ {
		leaves := daylist.Leaves(r, on, f.keeper)
		due := slices.DeleteFunc(slices.Clone(sheets), func(s *daylist.List) bool { return s.Date != on })
		if len(leaves)+len(due) == 0 {
			continue
		}
		brief := on > r.Today && f.days == notGiven
		if any && (!brief || on == r.Today+1) {
			fmt.Fprintln(w.out)
		}
		any = true
		if brief {
			printBrief(w, r.Plan, on, leaves, due)
		} else {
			printDay(w, r, on, leaves, due)
		}
	}
	if !any {
		fmt.Fprintln(w.out, "Nothing is due.")
	}
}

// datesDue are the dates of the house that are told in the days that are asked for: all of them,
// or those of a keeper. Whoever stands in sees none that does not name them.
func (f *flags) datesDue(r *compile.Result) []deadline.Due {
	if f.round != "" {
		return nil
	}
	return slices.DeleteFunc(deadline.Told(r.Deadlines, r.Today+civil.Date(f.daysShown()-1)), func(d deadline.Due) bool { return f.keeper != "" && d.Keeper != f.keeper })
}

// printDates prints the dates of the house that are to be seen to.
func printDates(w *world, r *compile.Result, f *flags) {
	all := f.datesDue(r)
	if len(all) == 0 {
		return
	}
	fmt.Fprintln(w.out, "\nDates of the house")
	for _, d := range all {
		text := "  " + d.Line(d.Time, r.Today)
		if d.Name != "" {
			text += "; once done: vivary note deadline " + d.Name + " done"
		}
		fmt.Fprintln(w.out, text)
	}
}

func printDay(w *world, r *compile.Result, on civil.Date, leaves []roster.Leave, due []*daylist.List) {
	fmt.Fprintln(w.out, dayTitle(r, on))
	for _, l := range leaves {
		fmt.Fprintf(w.out, "  %s: %s\n", l.Title, strings.Join(l.Lines, "; "))
		if on == max(l.From, r.Today) && l.For != "" { // of who is away, whoever stands in has it already
			for _, line := range r.Roster.Aid(&l) {
				fmt.Fprintln(w.out, "    "+line)
			}
		}
	}
	for i := range due {
		printSheet(w, r.Plan, due[i])
	}
}

// printBrief prints a coming day, a line for each round or absence.
func printBrief(w *world, c *plan.Collection, on civil.Date, leaves []roster.Leave, due []*daylist.List) {
	for _, l := range leaves {
		fmt.Fprintf(w.out, "%s  %s\n", on.Short(), l.Title)
	}
	for i := range due {
		s := due[i]
		fmt.Fprintf(w.out, "%s  %s %s, about %d min\n", on.Short(), wording.Clock(s.Round.Clock.V, c.Units), s.Summary, max(1, s.Minutes))
	}
}

// pressingUnpassed prints what is urgent today in enclosures that no round passes today,
// and reports whether there is any: nobody would be told of it.
func pressingUnpassed(w *world, r *compile.Result, f *flags, sheets []*daylist.List) bool {
	if f.round != "" || f.keeper != "" {
		return false
	}
	all := daylist.Unpassed(r, sheets)
	for _, first := range all {
		fmt.Fprintf(w.out, "FIRST: %s: %s (no round passes it today)\n", first.Text, first.Enclosure.Shown())
	}
	return len(all) > 0
}

func hasRound(r *compile.Result, name string) bool {
	return slices.ContainsFunc(r.Roster.Rounds, func(x *plan.Round) bool { return x.Name.V == name })
}

// asked are the lists that the flags ask for.
func (f *flags) asked() daylist.Asked {
	if f.paper != "" && f.days == notGiven {
		return daylist.Asked{Days: 1, Round: f.round, Keeper: f.keeper}
	}
	return daylist.Asked{Days: f.daysShown(), Round: f.round, Keeper: f.keeper}
}

func printSheet(w *world, c *plan.Collection, s *daylist.List) {
	fmt.Fprintf(w.out, "  %s %s", wording.Clock(s.Round.Clock.V, c.Units), s.Round.Shown())
	if !s.Open {
		fmt.Fprintln(w.out, ": done")
		return
	}
	for _, k := range s.Keepers {
		fmt.Fprintf(w.out, ", %s", daylist.Shown(c, k))
	}
	fmt.Fprintf(w.out, ", about %d min\n", max(1, s.Minutes))
	for _, l := range s.Lines {
		fmt.Fprintln(w.out, strings.TrimRight("    "+l, " "))
	}
	if len(s.Ticked) > 0 {
		fmt.Fprintf(w.out, "    Done: %s\n", strings.Join(s.Ticked, "; "))
	}
	if len(s.Ring) > 0 {
		fmt.Fprintf(w.out, "    Ring: %s\n", strings.Join(s.Ring, "; "))
	}
}
