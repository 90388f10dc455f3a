package paper

import (
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/register"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// CareSheets are the sheets of some enclosures: how the animals are kept here, for somebody who
// is new to them or takes them over, and a page to go with them. Nothing stands there that plan,
// log, sheet and register do not have: what is not known is a line to write on. There is no
// number of a telephone.
func CareSheets(r *compile.Result, lives []*life.Enclosure) *Document {
	d := document(r, "Care sheet, "+r.Plan.Title())
	book := register.Of(r, r.Today)
	of := map[*plan.Enclosure][]*register.Row{}
	for _, x := range book.Rows {
		if x.Here() {
			of[x.Place] = append(of[x.Place], x)
		}
	}
	said := map[string][]*plan.Event{}
	for i := range r.Plan.Log {
		if e := &r.Plan.Log[i]; e.Enclosure.Set() && e.Date <= r.Today {
			said[e.Enclosure.V] = append(said[e.Enclosure.V], e)
		}
	}
	for _, l := range lives {
		s := &careSheet{r, l, said[l.Plan.Name.V]}
		head := "Care sheet · " + l.Plan.Shown() + " · " + r.Plan.Title()
		d.add(head, s.kept()...)
		for _, x := range of[l.Plan] {
			d.add(head, s.goes(x)...)
		}
	}
	return d
}

type careSheet struct {
	r *compile.Result
	l *life.Enclosure

	said []*plan.Event // what the log says of it
}

// blank is room to write what is not known.
const blank = "______________________________"

// fields are names and values, with room for those that are not known.
type fields struct{ Facts }

func (f *fields) add(name, value string) {
	if value == "" {
		value = blank
	}
	f.Of = append(f.Of, Fact{name, value})
}

// known adds a value where there is one.
func (f *fields) known(name, value string) {
	if value != "" {
		f.add(name, value)
	}
}

// kept is how the animals of an enclosure are kept here.
func (s *careSheet) kept() []Part {
	l := s.l
	under := []string{s.r.Plan.Title() + " · " + s.r.Today.Words()}
	if l.Plan.Sheet != nil {
		under = append([]string{roster.NamedTwice(l.Plan.Sheet)}, under...)
	}
	out := []Part{Title{Text: l.Plan.Shown(), Under: under}}
	danger, says := cautions(l, s.r.Today)
	if danger != "" {
		out = append(out, List{Look: Alarm, Items: items(danger + ". Nobody opens this box who is not trained for it")})
	}
	if mind := append(says, s.held()...); len(mind) > 0 {
		out = append(out, Head{Text: "Mind"}, List{Look: Points, Items: items(mind...)})
	}
	var who fields
	animals := inhabitants(l, s.r.Today)
	if l.Plan.Sheet != nil {
		animals = animals[1:] // the species stands above
	}
	who.add("Who lives there", strings.Join(animals, "; "))
	s.housing(&who)
	s.gauge(&who)
	out = append(out, Head{Text: "How they live"}, who.Facts)
	if care := s.care(); len(care) > 0 {
		out = append(out, Head{Text: "What is done, and when"})
		if len(s.held()) > 0 {
			out = append(out, Para{Text: "As long as what stands under Mind is so, it comes first."})
		}
		out = append(out, List{Look: Points, Items: items(care...)})
	}
	normal := slices.Clone(schema.NormalSigns)
	if slices.ContainsFunc(roster.SheetsOf([]*life.Enclosure{l}), hardens) {
		normal = append(normal, schema.MoultSigns...)
	}
	out = append(out, Head{Text: "It looks bad, and is normal"}, signs(normal))
	return append(out, Head{Text: "Not normal: ask whoever keeps them"}, List{Look: Points, Items: items(schema.WrongSigns...)})
}

// held are the states for which little may be done today.
func (s *careSheet) held() (out []string) {
	for _, g := range s.l.Groups {
		for i := range g.Holds {
			if h := &g.Holds[i]; h.From <= s.r.Today && s.r.Today < h.Until {
				out = append(out, whose(s.l, g)+h.State.Is+": "+h.State.Rule)
			}
		}
	}
	return slices.Compact(out)
}

// text is a value as it stands in the plan.
func (s *careSheet) text(at source.Place) string {
	if !at.Written() {
		return ""
	}
	return strings.Trim(s.r.Plan.Files.Of(at), `"`)
}

func (s *careSheet) housing(f *fields) {
	if room := s.l.Plan.Place; room != nil {
		f.add("Room", lines(room.Shown(), s.text(room.Temperature.At)))
	}
	h := s.l.Plan.Housing
	if h == nil {
		return
	}
	f.add("Box, inside", lines(h.Kind.V, s.text(h.Inside.At)))
	f.known("Lid", strings.Join(h.Lid.V, ", "))
	f.add("Substrate", lines(h.Substrate.V, s.text(h.Depth.At)))
	f.known("Damp", h.Moisture.V)
	f.known("Hides", s.text(h.Hides.At))
	f.known("Water", h.Water.V)
	c := s.l.Plan.Climate
	if c == nil {
		return
	}
	f.known("Warm end", s.text(c.WarmEnd.At))
	f.known("Cool end", s.text(c.CoolEnd.At))
	f.known("By night", s.text(c.Night.At))
	f.known("Air", s.text(c.Humidity.At))
	for _, x := range c.Heaters {
		f.add("Heater "+x.Name.V, lines(s.text(x.Power.At), x.Place.V, with("thermostat ", s.text(s.r.Plan.Setting(x).At))))
	}
}

func with(what, text string) string {
	if text == "" {
		return ""
	}
	return what + text
}

// gauge is what the thermometer should show today, and what harms.
func (s *careSheet) gauge(f *fields) {
	today := s.r.Horizon.Today
	for _, x := range rounds.Shows(s.r.Roster, s.l) {
		if x.From <= today && today < x.Until {
			f.known("The gauge should show", x.Text)
			f.known("Harms outside", x.Harm)
		}
	}
}

// care is what is done again and again, in the words of a round.
func (s *careSheet) care() (out []string) {
	i := slices.Index(s.r.Lives, s.l)
	if i < 0 || i >= len(s.r.Roster.Of) {
		return nil
	}
	of := s.r.Roster.Of[i]
	for k := range of {
		e := &of[k]
		if e.Once != nil {
			continue
		}
		task := rounds.TaskOf(e)
		line := task.Sentence() + fed(e) + ": " + e.Words()
		if e.Group != nil && len(s.l.Groups) > 1 {
			line = e.Group.Animals.Shown() + ": " + line
		}
		if !slices.Contains(out, line) {
			out = append(out, line)
		}
	}
	return out
}

// fed is what a meal is, for each animal: what is given in turn.
func fed(e *roster.Entry) string {
	if !e.Kind.Meal {
		return ""
	}
	var out []string
	for _, p := range e.Menu {
		text := wording.Items(p.Items) + " " + p.Prey.String()
		if !slices.Contains(out, text) {
			out = append(out, text)
		}
	}
	if len(out) == 0 {
		return ""
	}
	return " " + wording.Or(out) + " each"
}

// fewMeals is how many of the last meals are told.
const fewMeals = 5

// goes is the page that goes with animals: who they are, where they are from and what happened,
// and room for whoever hands them over and takes them.
func (s *careSheet) goes(x *register.Row) []Part {
	var f fields
	f.add("Animals", called(x))
	f.add("How many (males.females.of unknown sex)", register.Sexes(x.Count))
	f.add("Species", x.Species())
	f.known("Species as written here", x.Written())
	stage := x.Stage
	if n := x.Group.Instar(s.r.Today); n > 0 {
		stage = lines(stage, "instar "+strconv.Itoa(n))
	}
	f.add("Stage", stage)
	f.add("Born", dated(x.Born, ""))
	f.add("Arrived here", dated(x.Came, ""))
	f.add("Origin", x.Origin)
	f.add("From whom", x.From)
	if x.Listing != "" {
		f.add("Listed: CITES", x.Listing)
		f.add("Number of its paper", x.Paper)
		f.add("Name on the paper", x.OnPaper)
		f.add("List looked up on", dated(x.Checked, ""))
	} else {
		f.known("Number of its paper", x.Paper)
	}
	f.add("Mother", x.Dam)
	f.known("Brood", x.Brood)
	f.known("Parted from", x.Parted)
	moults := s.logged(x, schema.WordMoult, schema.WordMatured)
	f.add("Last moult logged here", strings.Join(moults[max(0, len(moults)-1):], ""))
	meals := s.logged(x, schema.WordFed, schema.WordRefused)
	f.add("Last meals logged here", strings.Join(meals[max(0, len(meals)-fewMeals):], "; "))
	f.known("Treated, ill, mated", strings.Join(s.logged(x, schema.WordTreated, schema.WordIll, schema.WordInjured, schema.WordRecovered, schema.WordMated, schema.WordGravid), "; "))
	f.known("Note", x.Note)
	return []Part{Title{Text: "To go with " + called(x), Under: []string{s.r.Plan.Title() + " · " + s.r.Today.Words()}}, f.Facts,
		Blank{Head: "What else whoever takes them should know", Lines: 3},
		Para{Text: "What has to go with them where you live, and who has to be told, is for both sides to look up.", Small: true},
		Facts{Of: []Fact{{"Handed over by (name, address)", blank}, {"To (name, address)", blank}, {"How many, for what", blank}}},
		Sign{Fields: []string{"Day", "Signed, from", "Signed, to"}}}
}

// logged is what the log says of some words about a row where it is, each with its day.
func (s *careSheet) logged(x *register.Row, words ...*schema.LogWord) (out []string) {
	for _, e := range s.said {
		if slices.Contains(words, e.Word) && (e.Group.V == x.Group.Animals.Name.V || e.Group.V == "" && len(s.l.Groups) == 1) {
			said := source.Place{File: e.At.File, Start: e.WordAt.Start, End: e.At.End}
			out = append(out, day(e.Date)+strings.TrimSpace(s.r.Plan.Files.Of(said)))
		}
	}
	return out
}

func day(on civil.Date) string { return on.String() + " " }
