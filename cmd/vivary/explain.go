package main

import (
	"fmt"
	"strings"

	"vivary/compile"
	"vivary/compile/food"
	"vivary/compile/growth"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// explain finds out what is meant by its word: a rule, a species, a need, a figure,
// an enclosure, or a care of an enclosure.
func explain(w *world, f *flags, args []string) int {
	if len(args) != 1 {
		fmt.Fprintln(w.err, "vivary explain: name one thing: a rule, a species, a figure, a need, an enclosure, or ENCLOSURE/CARE")
		return usage
	}
	what := args[0]
	if f.on != "" {
		if _, err := civil.Parse(f.on); err != nil {
			fmt.Fprintf(w.err, "vivary explain: --on: %v\n", err)
			return usage
		}
		if !strings.Contains(what, "/") {
			fmt.Fprintln(w.err, "vivary explain: --on goes with a care: ENCLOSURE/CARE")
			return usage
		}
	}
	root, _ := folder(f, nil)
	if r := compile.FindRule(strings.Trim(what, "[]")); r != nil && f.svg == "" {
		explainRule(w, r)
		return fine
	}
	r, status := w.compiled(f, root)
	if status != fine {
		return status
	}
	name, care, _ := strings.Cut(what, "/")
	if e := r.Plan.Enclosure(name); e != nil {
		if r.Schedule == nil {
			return w.refuse(r, "Nothing can be explained until this is put right")
		}
		for i, l := range r.Lives {
			if l.Plan != e {
				continue
			}
			switch {
			case f.svg != "":
				return draw(w, f, r, i)
			case care == "":
				explainEnclosure(w, r, i)
				return fine
			}
			return explainCare(w, f, r, i, care)
		}
	}
	if f.svg != "" {
		fmt.Fprintf(w.err, "vivary explain: --svg draws an enclosure, and there is none named %q\n", what)
		return usage
	}
	s := r.Plan.Library.Species(what)
	if s == nil {
		s, _ = r.Plan.Library.ByOtherName(what)
	}
	if s != nil {
		explainSpecies(w, r.Plan.Library, s)
		return fine
	}
	if n := schema.FindNeed(what); n != nil {
		explainNeed(w, r, n)
		return fine
	}
	if x := schema.FindFigure(schema.Figures, what); x != nil {
		explainFigure(w, r.Plan, x)
		return fine
	}
	var known []string
	for _, x := range compile.Rules() {
		known = append(known, x.ID)
	}
	for _, e := range r.Plan.Enclosures {
		known = append(known, e.Name.V)
	}
	known = append(known, r.Plan.Library.SpeciesNames()...)
	for _, n := range schema.Needs {
		known = append(known, n.Name)
	}
	for _, x := range schema.Figures {
		known = append(known, x.Name)
	}
	fmt.Fprintf(w.err, "vivary explain: there is no rule, species, figure, need or enclosure %q", what)
	if s := finding.Suggest(what, known); s != "" {
		fmt.Fprintf(w.err, ": did you mean %s?", s)
	}
	fmt.Fprintln(w.err)
	return usage
}

func explainRule(w *world, r *finding.Rule) {
	fmt.Fprintf(w.out, "%s (%s)\n\n%s\n%s\n\n", r.ID, r.Severity, r.Title, r.Why)
	fmt.Fprintf(w.out, "What to do: %s\nSource: %s\n", r.Instead, r.Source)
	if r.Kills {
		fmt.Fprintln(w.out, "It can kill an animal or hurt a person: no accept block silences it.")
	}
	if r.Bad != "" {
		fmt.Fprintf(w.out, "\nThis is found:\n%s", indent(r.Bad))
	}
	if r.Good != "" {
		fmt.Fprintf(w.out, "\nThis is not:\n%s", indent(r.Good))
	}
}

func indent(s string) string {
	return "    " + strings.ReplaceAll(strings.TrimRight(s, "\n"), "\n", "\n    ") + "\n"
}

func explainSpecies(w *world, l *plan.Library, s *plan.SpeciesSheet) {
	fmt.Fprintf(w.out, "%s: %s, %s\n", s.Name.V, s.Shown(), s.Latin.V)
	if s.Note.Set() {
		fmt.Fprintln(w.out, s.Note.V)
	}
	fmt.Fprintln(w.out)
	for _, f := range s.Figures {
		figure(w, l, f.Name.V, f)
	}
	fmt.Fprintln(w.out, "\nNeeds:")
	for _, n := range s.Needs {
		fmt.Fprintf(w.out, "  %-36s every %s at the longest\n", n.Name.V+of(n.Stages), n.Longest.V)
		cited(w, l, n.Cited, n.Disputed.V)
	}
}

// explainFigure prints what each sheet in use states for a figure.
func explainFigure(w *world, c *plan.Collection, x *schema.Figure) {
	fmt.Fprintf(w.out, "%s\n\n%s\n\n", x.Name, x.Doc)
	shown := map[*plan.SpeciesSheet]bool{}
	for _, e := range c.Enclosures {
		if s := e.Sheet; s != nil && !shown[s] {
			shown[s] = true
			s.Each(x, func(f *plan.Figure) { figure(w, c.Library, s.Name.V, f) })
		}
	}
}

// figure prints a figure with its source, under its own or its species' name.
func figure(w *world, l *plan.Library, name string, f *plan.Figure) {
	name += of(f.Stages)
	if f.Instar.Set() {
		name += fmt.Sprintf(" (instar %d)", f.Instar.V)
	}
	fmt.Fprintf(w.out, "  %-36s %s\n", name, f.Value.V)
	cited(w, l, f.Cited, f.Disputed.V)
}

func cited(w *world, l *plan.Library, c plan.Cited, disputed string) {
	fmt.Fprintf(w.out, "      %s\n", l.Cite(c))
	if disputed != "" {
		fmt.Fprintf(w.out, "      others: %s\n", disputed)
	}
}

// of says after a name for which stages it holds.
func of(stages []plan.Written[string]) string {
	if len(stages) == 0 {
		return ""
	}
	var s []string
	for _, x := range stages {
		s = append(s, x.V)
	}
	return " (" + strings.Join(s, ", ") + ")"
}

func explainNeed(w *world, r *compile.Result, n *schema.NeedName) {
	fmt.Fprintf(w.out, "%s\n\n%s Satisfied by:", n.Name, n.Doc)
	for _, k := range schema.CareKinds {
		if k.Needs == n {
			fmt.Fprintf(w.out, " %s", k.Name)
		}
	}
	fmt.Fprintln(w.out)
	for _, proofs := range r.Proofs {
		for i := range proofs {
			if p := &proofs[i]; p.Name == n {
				proofLine(w, r, p)
			}
		}
	}
}

func explainEnclosure(w *world, r *compile.Result, i int) {
	l := r.Lives[i]
	e := l.Plan
	fmt.Fprintf(w.out, "%s: %s", e.Name.V, e.Shown())
	if e.Sheet != nil {
		fmt.Fprintf(w.out, ", %s", e.Sheet.Shown())
	}
	if e.Place != nil {
		fmt.Fprintf(w.out, ", in %s", e.Place.Shown())
	}
	fmt.Fprintln(w.out)
	for _, g := range l.Groups {
		stage := g.Stage(r.Today)
		if stage == "" {
			stage = "stage unknown"
		}
		fmt.Fprintf(w.out, "  %s: %d, %s\n", g.Animals.Name.V, g.Count(r.Today), stage)
		for _, h := range g.Holds {
			fmt.Fprintf(w.out, "    held: %s; %s\n", h.Why, h.End)
		}
		for _, x := range g.Windows {
			fmt.Fprintf(w.out, "    %s: %s to %s\n", x.Title, x.From.Words(), (x.Until - 1).Words())
		}
	}
	fmt.Fprintln(w.out, "\nCare:")
	for k := range r.Schedule.Of[i] {
		s := &r.Schedule.Of[i][k]
		next := "never on the horizon"
		if d := s.Days.Next(0); d >= 0 {
			next = "next " + r.Horizon.Date(d).Short()
		}
		fmt.Fprintf(w.out, "  %-22s %s at %s; %s\n", s.Name, s.Words(), s.At(), next)
		fmt.Fprintf(w.out, "      %s\n", origin(r, i, k))
	}
	explainLeaving(w, r, i)
	explainClimate(w, r, e)
	if g, ok := growth.Of(r.Lives[i], r.Plan, r.Today); ok {
		printLines(w, "Growth and room", g.Lines())
	}
	for _, g := range r.Lives[i].Groups {
		if f, ok := food.Of(r.Schedule, r.Schedule.Of[i], g, r.Today); ok {
			printLines(w, "Food", f.Lines(e))
		}
	}
	fmt.Fprintf(w.out, "\nProof, %s to %s:\n", r.Horizon.From.Words(), r.Horizon.Last().Words())
	for k := range r.Proofs[i] {
		proofLine(w, r, &r.Proofs[i][k])
	}
}

func printLines(w *world, head string, lines []string) {
	if len(lines) == 0 {
		return
	}
	fmt.Fprintf(w.out, "\n%s:\n", head)
	for _, l := range lines {
		fmt.Fprintf(w.out, "  %s\n", l)
	}
}

// explainLeaving says how long the enclosure can be left, and what fails first.
func explainLeaving(w *world, r *compile.Result, i int) {
	sheet := r.Lives[i].Plan.Sheet
	if sheet == nil {
		return
	}
	fmt.Fprintln(w.out, "\nIf nobody comes:")
	for _, g := range r.Lives[i].Groups {
		stage := g.Stage(r.Today)
		var parts []string
		if f := sheet.Figure(schema.FigureUnattended, stage); f != nil {
			parts = append(parts, f.Range.LowQ().String()+" with a full dish")
		}
		for _, n := range sheet.NeedsOf(stage) {
			if n.What == schema.NeedFood || n.What == schema.NeedWater && len(parts) == 0 {
				parts = append(parts, n.Longest.V.String()+" without "+n.Name.V)
			}
		}
		if len(parts) == 0 {
			parts = append(parts, "the sheet has no figure: do not leave it alone")
		}
		fmt.Fprintf(w.out, "  %s: %s\n", g.Animals.Name.V, strings.Join(parts, ", "))
	}
}

// origin says where a series is from: a line of the plan, or the species sheet
// and its source.
func origin(r *compile.Result, i, k int) string {
	s := &r.Schedule.Of[i][k]
	at := r.Plan.Files.Start(s.Origin)
	where := fmt.Sprintf("%s:%d", at.File, at.Line)
	if s.FromSheet {
		return "from the species sheet, " + where + ": " + r.Plan.Library.Cite(s.Cited)
	}
	if s.Once != nil {
		return "from the log, " + where
	}
	return "from the plan, " + where
}

func explainCare(w *world, f *flags, r *compile.Result, i int, care string) int {
	var known []string
	found := false
	for k := range r.Schedule.Of[i] {
		s := &r.Schedule.Of[i][k]
		known = append(known, s.Name)
		if s.Name != care && strings.ReplaceAll(s.Name, " ", "-") != care && s.Kind.Name != care {
			continue
		}
		found = true
		fmt.Fprintf(w.out, "%s/%s: %s\n  %s at %s, %s\n  %s\n", s.Plan().Name.V, s.Name, s.Task, s.Words(), s.At(), s.Round.Shown(), origin(r, i, k))
		if s.Kind.Needs != nil {
			fmt.Fprintf(w.out, "  It meets the need %q.\n", s.Kind.Needs.Name)
		}
		if d, err := civil.Parse(f.on); err == nil {
			fmt.Fprintf(w.out, "  %s: %s\n", d.Words(), why(r, s, d))
			continue
		}
		fmt.Fprint(w.out, "  Next:")
		d := -1
		for range 5 {
			if d = s.Days.Next(d + 1); d < 0 {
				break
			}
			fmt.Fprintf(w.out, " %s;", r.Horizon.Date(d).Short())
		}
		fmt.Fprintln(w.out)
	}
	if !found {
		fmt.Fprintf(w.err, "vivary explain: %s has no care %q", r.Lives[i].Plan.Name.V, care)
		if s := finding.Suggest(care, known); s != "" {
			fmt.Fprintf(w.err, ": did you mean %s?", s)
		}
		fmt.Fprintln(w.err)
		return usage
	}
	return fine
}
