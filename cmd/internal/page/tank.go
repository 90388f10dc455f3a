package page

import (
	"bytes"
	"io"
	"net/http"
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/explain"
	"vivary/compile/life"
	"vivary/compile/picture"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// tank answers for what is about one enclosure: its page, a form of its log, its picture.
func (q *request) tank(rest string) {
	name, what, _ := strings.Cut(rest, "/")
	r := q.readable()
	i := -1
	if r != nil {
		i = slices.IndexFunc(r.Lives, func(l *life.Enclosure) bool { return l.Plan.Name.V == name })
	}
	word, form := strings.CutPrefix(what, "log/")
	switch {
	case i < 0:
		q.lost()
	case what == "":
		q.show(http.StatusOK, "tank", q.tankPage(r, i))
	case what == "year.svg":
		q.year(r, i, picture.Year)
	case what == "year-narrow.svg":
		q.year(r, i, picture.YearNarrow)
	case form && q.v.Writes && logWord(word) != nil:
		q.show(http.StatusOK, "log", q.logPage(r, i, logWord(word), q.r.URL.Query(), nil))
	default:
		q.lost()
	}
}

// readable is the plan of which enclosures can be shown: as it stands where it can be read,
// else the last good one; nil for none.
func (q *request) readable() *compile.Result {
	switch h := q.h; {
	case h.Result.Roster != nil:
		return h.Result
	case h.Good != nil && h.Good.Roster != nil:
		return h.Good
	}
	return nil
}

// tankPage is the page of an enclosure.
type tankPage struct {
	frame
	about
	Name   string
	Write  bool
	Next   []next
	Log    []logged
	Words  []wordGroup
	Groups []string // to choose from in a form, where there are several
	Proof  []part
	Slip   *slip
	Before string
	At     string // of a line that takes back
	Label  string
	Behind string // of a plan that cannot be read: whose state this is
}

// about is what everybody at an enclosure may know.
type about struct {
	Shown    string
	Common   string
	Latin    string
	Place    string
	Animals  []animals
	May      []may
	Cautions []caution
	First    []string
	Ring     []string
}

// animals are a group, with the state that it is in.
type animals struct {
	Name   string
	Text   string // "1 animal, adult"
	States []string
	Coming []string
}

// may is how some care may be done now.
type may struct {
	Manner string // "not now"
	Mark   string // for the style sheet: "held", "hatch", "outside", "usual"
	Rows   []string
}

type caution struct{ Text, For, Why string }

// next is a care with its next day.
type next struct {
	Text, Day, At, Often string
	Today                bool
	on                   civil.Date
}

// logged is a line of the log.
type logged struct {
	Day, By, Text string
	Line          string // whole, where the visitor may take it back
}

type part struct {
	Head  string
	Lines []explain.Line
	Code  string
}

func (q *request) tankPage(r *compile.Result, i int) tankPage {
	l := r.Lives[i]
	name := l.Plan.Name.V
	out := tankPage{frame: q.frame(l.Plan.Shown(), "tanks"), about: aboutOf(r, i), Name: name, Write: q.v.Writes, At: q.stamp(),
		Next: nextOf(r, i), Log: q.logOf(r, name), Words: wordGroups(), Slip: q.said.of(q.v, q.r.URL.Query().Get("noted"))}
	out.Ring = daylist.Numbers(r.Plan, []string{q.v.Keeper})
	if len(l.Groups) > 1 {
		for _, g := range l.Groups {
			out.Groups = append(out.Groups, g.Animals.Name.V)
		}
	}
	for _, p := range explain.Enclosure(r, i).Parts {
		out.Proof = append(out.Proof, part(p))
	}
	if q.h.Label != nil {
		out.Label = q.h.Label(name)
	}
	if r != q.h.Result {
		out.Behind = "The plan cannot be read now: this is as it was on " + r.Today.Words() + "."
	}
	return out
}

// aboutOf is what everybody at an enclosure may know.
func aboutOf(r *compile.Result, i int) about {
	l := r.Lives[i]
	out := about{Shown: l.Plan.Shown(), Animals: animalsOf(r, l), May: mayOf(r, l), Cautions: cautionsOf(r, i)}
	if s := l.Plan.Sheet; s != nil {
		out.Common, out.Latin = s.Shown(), s.Latin.V
		if strings.EqualFold(out.Common, out.Latin) {
			out.Common = ""
		}
	}
	if l.Plan.Place != nil {
		out.Place = l.Plan.Place.Shown()
	}
	if l.Plan.Rack.Set() {
		out.Place = strings.TrimPrefix(out.Place+", rack "+l.Plan.Rack.V, ", ")
	}
	for _, f := range r.Roster.Pressing[l] {
		if f.On(r.Today) {
			out.First = append(out.First, f.Text)
		}
	}
	each(l, func(asks []life.Ask, who string) {
		for k := range asks {
			if a := &asks[k]; a.From <= r.Today && (a.Until == 0 || r.Today < a.Until) {
				text := a.Text
				if who != "" {
					text += " (" + who + ")"
				}
				out.First = append(out.First, text)
			}
		}
	})
	return out
}

// each calls use for the questions of an enclosure, and of each of its groups.
func each(l *life.Enclosure, use func(asks []life.Ask, who string)) {
	use(l.Asks, "")
	for _, g := range l.Groups {
		who := ""
		if len(l.Groups) > 1 {
			who = calledGroup(g)
		}
		use(g.Asks, who)
	}
}

func animalsOf(r *compile.Result, l *life.Enclosure) (out []animals) {
	for _, g := range l.Groups {
		n, stage := g.Count(r.Today), g.Stage(r.Today)
		a := animals{Name: g.Animals.Shown(), Text: wording.Animals(n)}
		switch {
		case n == 0:
			a.Text = "none here now"
		case g.Guessed:
			a.Text = "here, how many is not said"
		}
		if stage != "" && n > 0 {
			a.Text += ", " + stage
		}
		if k := g.Instar(r.Today); k > 0 && n > 0 {
			a.Text += ", instar " + strconv.Itoa(k)
		}
		a.States = statesOf(g.Holds, r.Today)
		for _, x := range g.Windows {
			if x.Until > r.Today {
				a.Coming = append(a.Coming, x.Title+": "+wording.Dates(x.From, x.Until-1))
			}
		}
		out = append(out, a)
	}
	if all := statesOf(l.Holds, r.Today); len(all) > 0 {
		out = append(out, animals{Name: "All of them", States: all})
	}
	return out
}

// statesOf words the states of a day, and those that are to come.
func statesOf(holds []life.Hold, today civil.Date) (out []string) {
	for i := range holds {
		h := &holds[i]
		if h.Until <= today {
			continue
		}
		text := h.State.Is
		if h.Part {
			text = "some: " + text
		}
		if h.From > today {
			text = "from " + h.From.Words() + ": " + text
		}
		why := h.Why
		if h.End != "" {
			why = strings.TrimPrefix(why+"; "+h.End, "; ")
		}
		if why != "" {
			text += " (" + why + ")"
		}
		if h.State.Rule != "" {
			text += ": " + h.State.Rule
		}
		out = append(out, text)
	}
	return out
}

// table is how the care of each row may be done.
type table [schema.Rows]schema.May

// heed makes a table as strict as the states of a day ask for.
func (x *table) heed(holds []life.Hold, today civil.Date) {
	for i := range holds {
		h := &holds[i]
		if h.From > today || today >= h.Until {
			continue
		}
		for row := range x {
			if m := cellOf(h, row, today); m.Manner > x[row].Manner || m.Manner == x[row].Manner && x[row].Words == "" {
				x[row] = m
			}
		}
	}
}

// cellOf is a cell of the table of a state on a day: what is only to be done later in it is held
// until then.
func cellOf(h *life.Hold, row int, today civil.Date) schema.May {
	m := h.State.May[row]
	if h.Part && schema.Row(row) == schema.RowKilled && m.Manner == schema.Held { // the others of the group eat, and it is left out for none
		return schema.May{Words: "killed prey for all of them"}
	}
	if from := h.From + civil.Date(m.From); m.From > 0 && today < from {
		return schema.May{Manner: schema.Held, Words: "not before " + from.Words()}
	}
	if m.Every > 0 {
		m.Words = strings.Trim("at most every "+wording.Days(m.Every)+", "+m.Words, ", ")
	}
	m.From, m.Every, m.Source = 0, 0, ""
	return m
}

// mayOf is what may be done today, where anything may not be done as usual. The strictest state
// decides for all that is about the box; a meal is each group's own.
func mayOf(r *compile.Result, l *life.Enclosure) []may {
	var all table
	var own []table
	var names []string
	all.heed(l.Holds, r.Today)
	for _, g := range l.Groups {
		if g.Count(r.Today) == 0 {
			continue
		}
		var t table
		t.heed(l.Holds, r.Today)
		t.heed(g.Holds, r.Today)
		all.heed(g.Holds, r.Today)
		own, names = append(own, t), append(names, calledGroup(g))
	}
	if all == (table{}) {
		return nil
	}
	marks := [...]string{"usual", "hatch", "outside", "held"}
	out := make([]may, len(schema.Manners))
	for k := range out {
		m := schema.Manner(len(out) - 1 - k) // the strictest first
		out[k] = may{Manner: m.String(), Mark: marks[m]}
		for row := schema.RowLook; row < schema.Rows; row++ {
			out[k].Rows = append(out[k].Rows, rowsOf(row, m, &all, own, names)...)
		}
	}
	return slices.DeleteFunc(out, func(m may) bool { return len(m.Rows) == 0 })
}

// rowsOf words a row of the table where it may be done in a manner; none where it may not.
func rowsOf(row schema.Row, m schema.Manner, all *table, own []table, names []string) (out []string) {
	say := func(cell schema.May, who string) {
		if cell.Manner != m {
			return
		}
		text := row.String()
		if notes := strings.Trim(who+", "+cell.Words, ", "); notes != "" {
			text += " (" + notes + ")"
		}
		out = append(out, text)
	}
	meal := row == schema.RowLive || row == schema.RowKilled
	if !meal || !slices.ContainsFunc(own, func(t table) bool { return t[row].Manner != own[0][row].Manner }) {
		say(all[row], "")
		return out
	}
	for i := range own {
		say(own[i][row], names[i])
	}
	return out
}

// cautionsOf is what to see to before any of the care of an enclosure.
func cautionsOf(r *compile.Result, i int) (out []caution) {
	var order []*schema.Caution
	kinds := map[*schema.Caution][]string{}
	for k := range r.Roster.Of[i] {
		e := &r.Roster.Of[i][k]
		for _, c := range roster.Cautions(e.Life, e.Kind, r.Today) {
			if kinds[c] == nil {
				order = append(order, c)
			}
			if !slices.Contains(kinds[c], e.Kind.Short()) {
				kinds[c] = append(kinds[c], e.Kind.Short())
			}
		}
	}
	for _, c := range order {
		out = append(out, caution{strings.ToUpper(c.Text[:1]) + c.Text[1:], wording.And(kinds[c]), c.Why})
	}
	return out
}

// nextOf is the care of an enclosure by its next day.
func nextOf(r *compile.Result, i int) (out []next) {
	ticks := r.Roster.Ticks()
	add := func(e *roster.Entry) {
		from := r.Horizon.Today
		if e.Days.Has(from) && ticks.Has(e, from) {
			from++
		}
		at := e.Days.Next(from)
		if at < 0 || e.Ask != nil {
			return
		}
		on := r.Horizon.Date(at)
		text := e.Task
		if e.Group != nil && len(e.Life.Groups) > 1 {
			text += ", " + calledGroup(e.Group)
		}
		n := next{Text: text, Day: on.Short(), At: wording.Clock(e.At(), r.Plan.Units), Often: e.Words(), Today: on == r.Today, on: on}
		if n.Today {
			n.Day = "today"
		}
		if !slices.Contains(out, n) {
			out = append(out, n)
		}
	}
	if k := r.Roster.RackOf(r.Lives[i].Plan); k != nil {
		for j := range k.Entries {
			add(&k.Entries[j])
		}
	}
	for k := range r.Roster.Of[i] {
		add(&r.Roster.Of[i][k])
	}
	slices.SortStableFunc(out, func(a, b next) int { return int(a.on - b.on) })
	return out
}

// shownLines is how many lines of a log a page shows.
const shownLines = 20

// logOf are the last lines of the log about an enclosure, the last first.
func (q *request) logOf(r *compile.Result, name string) (out []logged) {
	c := r.Plan
	for i := len(c.Log) - 1; i >= 0 && len(out) < shownLines; i-- {
		e := &c.Log[i]
		if e.Enclosure.V != name {
			continue
		}
		line := c.Files.Of(e.At)
		x := logged{Day: e.Date.Short(), By: signed(c, e, c.Units), Text: behind(line, name)}
		if e.Date < r.Today-300 {
			x.Day = e.Date.Words()
		}
		if q.v.Writes && q.own(e) {
			x.Line = line
		}
		out = append(out, x)
	}
	return out
}

// behind is what stands behind the enclosure in a line.
func behind(line, name string) string {
	if _, after, ok := strings.Cut(line, " "+name+" "); ok {
		return after
	}
	return line
}

// year answers with a picture of an enclosure's year.
func (q *request) year(r *compile.Result, i int, draw func(io.Writer, *compile.Result, int) error) {
	var b bytes.Buffer
	if err := draw(&b, r, i); err != nil {
		q.lost()
		return
	}
	q.picture(b.Bytes())
}

// picture answers with a drawing.
func (q *request) picture(svg []byte) {
	h := q.w.Header()
	h.Set("Content-Type", "image/svg+xml")
	h.Set("Cache-Control", "private, no-store")
	_, _ = q.w.Write(svg) // whoever asked has gone, if it fails
}

// tanksPage lists the enclosures by room.
type tanksPage struct {
	frame
	Asked string
	Rooms []roomOf
	Count int
}

type roomOf struct {
	Title string
	Tanks []tankLine
}

type tankLine struct {
	Name, Shown, Species, Animals string
	States                        []string
	First                         bool
}

// tanks lists the enclosures in walking order, those that have what is asked for.
func (q *request) tanks() {
	asked := strings.TrimSpace(q.r.URL.Query().Get("for"))
	if len(asked) > 200 {
		asked = asked[:200]
	}
	out := tanksPage{frame: q.frame("Tanks", "tanks"), Asked: strings.ToValidUTF8(asked, "")}
	if r := q.readable(); r != nil {
		for i, l := range r.Lives {
			x := tankLineOf(r, l)
			if !x.has(l.Plan, out.Asked) {
				continue
			}
			x.First = len(aboutFirst(r, i)) > 0
			title := "Elsewhere"
			if l.Plan.Place != nil {
				title = l.Plan.Place.Shown()
			}
			if n := len(out.Rooms); n == 0 || out.Rooms[n-1].Title != title {
				out.Rooms = append(out.Rooms, roomOf{Title: title})
			}
			last := &out.Rooms[len(out.Rooms)-1]
			last.Tanks = append(last.Tanks, x)
			out.Count++
		}
	}
	q.show(http.StatusOK, "tanks", out)
}

func tankLineOf(r *compile.Result, l *life.Enclosure) tankLine {
	x := tankLine{Name: l.Plan.Name.V, Shown: l.Plan.Shown()}
	if s := l.Plan.Sheet; s != nil {
		x.Species = s.Shown()
	}
	n := 0
	add := func(holds []life.Hold) {
		for k := range holds {
			if h := &holds[k]; h.From <= r.Today && r.Today < h.Until && h.State.Rule != "" && !slices.Contains(x.States, h.State.Is) {
				x.States = append(x.States, h.State.Is)
			}
		}
	}
	add(l.Holds)
	for _, g := range l.Groups {
		n += g.Count(r.Today)
		add(g.Holds)
	}
	x.Animals = wording.Animals(n)
	return x
}

// has reports whether an enclosure has what is asked for in what its line says.
func (x *tankLine) has(e *plan.Enclosure, asked string) bool {
	text := strings.ToLower(x.Name + " " + x.Shown + " " + x.Species + " " + strings.Join(x.States, " "))
	if e.Sheet != nil {
		text += " " + strings.ToLower(e.Sheet.Latin.V)
	}
	for word := range strings.FieldsSeq(strings.ToLower(asked)) {
		if !strings.Contains(text, word) {
			return false
		}
	}
	return true
}

func aboutFirst(r *compile.Result, i int) (out []string) {
	for _, f := range r.Roster.Pressing[r.Lives[i]] {
		if f.On(r.Today) {
			out = append(out, f.Text)
		}
	}
	each(r.Lives[i], func(asks []life.Ask, _ string) {
		for k := range asks {
			if a := &asks[k]; a.Urgent && a.From <= r.Today && (a.Until == 0 || r.Today < a.Until) {
				out = append(out, a.Text)
			}
		}
	})
	return out
}
