package page

import (
	"errors"
	"fmt"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"strings"

	"vivary/cmd/internal/journal"
	"vivary/compile"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// wordGroup are words of the log that are looked for together.
type wordGroup struct {
	Title string
	Words []*schema.LogWord
}

// usual are the words that are written most often, which a page shows first.
var usual = []*schema.LogWord{schema.WordFed, schema.WordRefused, schema.WordMoult, schema.WordPremoult, schema.WordSeen, schema.WordDone, schema.WordMeasured, schema.WordRemark}

// wordGroups are all words that a form writes.
func wordGroups() []wordGroup {
	all := []wordGroup{
		{"Most often", usual},
		{"Moulting", []*schema.LogWord{schema.WordSealed, schema.WordHanging, schema.WordMatured}},
		{"Pairing and young", []*schema.LogWord{schema.WordPaired, schema.WordMated, schema.WordGravid, schema.WordNotGravid, schema.WordLate, schema.WordLaid, schema.WordSacTaken,
			schema.WordHatched, schema.WordBorn, schema.WordFirstMoult, schema.WordDispersed, schema.WordSeparated}},
		{"Health", []*schema.LogWord{schema.WordIll, schema.WordInjured, schema.WordTreated, schema.WordRecovered, schema.WordMites, schema.WordDied}},
		{"Coming, going, counting", []*schema.LogWord{schema.WordArrived, schema.WordQuarantined, schema.WordMoved, schema.WordEscaped, schema.WordFound, schema.WordCounted, schema.WordWeighed}},
		{"Care", []*schema.LogWord{schema.WordSkipped}},
	}
	listed := map[*schema.LogWord]bool{schema.WordWithdrawn: true}
	for _, g := range all {
		for _, w := range g.Words {
			listed[w] = true
		}
	}
	for _, w := range schema.LogWords { // one that is new in the language is not forgotten
		if !listed[w] {
			all[len(all)-1].Words = append(all[len(all)-1].Words, w)
		}
	}
	return all
}

// logPage is the form of one word of the log.
type logPage struct {
	frame
	Name, Shown string
	Word        *schema.LogWord
	Groups      []string
	Fields      fields
	Prey        []string
	Tanks       []choice
	Cares       []string
	Degree      string
	Today       string
	Wrong       []string
	Common      string
	MustGroup   bool
}

type choice struct{ Name, Shown string }

// fields are what a form sends.
type fields struct {
	Day, At, Group, N, Prey, To, Joins, Care, Weight string
	Spot, Air, Night, Room, Humidity, Test           string
	Note                                             string
}

func fieldsOf(v url.Values) fields {
	get := func(name string) string {
		s := strings.TrimSpace(strings.ToValidUTF8(v.Get(name), ""))
		if len(s) > 2000 {
			s = strings.ToValidUTF8(s[:2000], "")
		}
		return s
	}
	return fields{get("day"), get("at"), get("group"), get("n"), get("prey"), get("to"), get("joins"), get("care"), get("weight"),
		get("spot"), get("air"), get("night"), get("room"), get("humidity"), get("test"), get("note")}
}

func (q *request) logPage(r *compile.Result, i int, w *schema.LogWord, v url.Values, wrong []string) logPage {
	l := r.Lives[i]
	out := logPage{frame: q.frame(w.Name+", "+l.Plan.Shown(), "tanks"), Name: l.Plan.Name.V, Shown: l.Plan.Shown(), Word: w, Fields: fieldsOf(v), Wrong: wrong,
		Degree: l.Plan.Degrees().String(), Today: civil.FromTime(q.now()).String()}
	if day, at, ok := strings.Cut(q.stamp(), " "); ok && out.Fields.Day == "" {
		out.Fields.Day, out.Fields.At = day, at
	}
	if w.Subject == schema.OfAnimals || w == schema.WordRemark {
		for _, g := range l.Groups {
			out.Groups = append(out.Groups, g.Animals.Name.V)
		}
		out.MustGroup = w.Subject == schema.OfAnimals && !w.Feeds
	}
	if len(out.Groups) == 1 {
		out.Groups = nil
	}
	switch w.After {
	case schema.AfterPrey:
		out.Prey = preyOf(r, l)
	case schema.AfterEnclosure:
		for _, o := range r.Plan.Enclosures {
			if o != l.Plan {
				out.Tanks = append(out.Tanks, choice{o.Name.V, o.Shown()})
			}
		}
	case schema.AfterCare:
		out.Cares = caresOf(r, i)
	}
	return out
}

// preyOf are the feeder animals that the enclosure is given first, then all others.
func preyOf(r *compile.Result, l *life.Enclosure) (out []string) {
	add := func(name string) {
		if name != "" && !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	for i, x := range r.Lives {
		if x != l {
			continue
		}
		for k := range r.Roster.Of[i] {
			for _, p := range r.Roster.Of[i][k].Menu {
				add(p.Prey.Feeder)
			}
		}
	}
	for _, name := range r.Plan.Library.FeederNames() {
		add(name)
	}
	return out
}

// caresOf are the names by which care of an enclosure is noted, its own first.
func caresOf(r *compile.Result, i int) (out []string) {
	for k := range r.Roster.Of[i] {
		e := &r.Roster.Of[i][k]
		name, said, _ := strings.Cut(e.Said(), " ")
		if name == schema.WordDone.Name && !slices.Contains(out, said) {
			out = append(out, said)
		}
	}
	for _, k := range schema.CareKinds {
		if !slices.Contains(out, k.Name) {
			out = append(out, k.Name)
		}
	}
	return out
}

// note writes what a form says into the log.
func (q *request) note(rest string) {
	name, what, _ := strings.Cut(rest, "/")
	r := q.readable()
	word, form := strings.CutPrefix(what, "log/")
	w := logWord(word)
	i := -1
	if r != nil {
		i = slices.IndexFunc(r.Lives, func(l *life.Enclosure) bool { return l.Plan.Name.V == name })
	}
	if i < 0 || w == nil || !form {
		q.lost()
		return
	}
	l := r.Lives[i]
	f := fieldsOf(q.r.PostForm)
	line, err := q.line(l.Plan, w, &f)
	if err != nil {
		q.show(http.StatusUnprocessableEntity, "log", q.logPage(r, i, w, q.r.PostForm, []string{err.Error()}))
		return
	}
	out, err := q.Note(q.r.Context(), q.v, []string{line})
	if err != nil { // what was typed stays in the form, for when there is room again
		q.show(http.StatusServiceUnavailable, "log", q.logPage(r, i, w, q.r.PostForm, []string{wording.Plain(err).Error()}))
		return
	}
	if out.Slips {
		var wrong []string
		for k := range out.Findings {
			text := out.Findings[k].Said()
			if fix := out.Findings[k].Write; fix != "" {
				text += ". What to write: " + fix
			}
			wrong = append(wrong, text)
		}
		q.show(http.StatusUnprocessableEntity, "log", q.logPage(r, i, w, q.r.PostForm, wrong))
		return
	}
	q.came(out, nil, l.Plan.Shown()+": "+behind(line, name), "/tank/"+url.PathEscape(name)+"?", "")
}

// line is the line of the log that a form means.
func (q *request) line(e *plan.Enclosure, w *schema.LogWord, f *fields) (string, error) {
	day, err := civil.Parse(f.Day)
	if err != nil {
		return "", errors.New("the day is missing")
	}
	l := journal.Line{Day: day, By: q.v.Keeper, Enclosure: e.Name.V, Group: f.Group, Word: w, Note: f.Note}
	if f.At != "" {
		at, err := civil.ParseClock(f.At)
		if err != nil {
			return "", fmt.Errorf("the time: %w", err)
		}
		l.Clock = &at
	}
	if now := q.now(); day > civil.FromTime(now) {
		return "", errors.New("that day is still to come: a log holds what was seen")
	}
	if l.Args, err = f.args(w, e.Degrees()); err != nil {
		return "", err
	}
	return l.Text()
}

// args are the words behind a word of the log.
func (f *fields) args(w *schema.LogWord, deg quantity.Unit) ([]string, error) {
	number := func() ([]string, error) {
		if f.N == "" {
			return nil, nil
		}
		n, err := strconv.Atoi(f.N)
		if err != nil || n < 0 {
			return nil, fmt.Errorf("how many is a number, such as 3, and not %q", f.N)
		}
		return []string{strconv.Itoa(n)}, nil
	}
	switch w.After {
	case schema.AfterNumber:
		return number()
	case schema.AfterPrey:
		out, err := number()
		return append(out, strings.Fields(f.Prey)...), err
	case schema.AfterEnclosure:
		out, err := number()
		if f.To == "" {
			return nil, errors.New("where they went is missing")
		}
		if f.To != nowhere {
			out = append(out, "to", f.To)
			if f.Joins != "" {
				out = append(out, f.Joins)
			}
		}
		return out, err
	case schema.AfterWeight:
		if f.Weight == "" {
			return nil, errors.New("the weight is missing, such as 12.4 g")
		}
		return strings.Fields(f.Weight), nil
	case schema.AfterCare:
		if f.Care == "" {
			return nil, errors.New("which care is missing")
		}
		return []string{f.Care}, nil
	case schema.AfterDays:
		out, err := number()
		if len(out) > 0 {
			out = append(out, "days")
		}
		return out, err
	case schema.AfterMeasure:
		return f.measured(deg)
	case schema.AfterTest:
		if f.Test == "" {
			return nil, errors.New("which gauge was tested, and how, is missing, such as NaCl 22 C 71 %")
		}
		return strings.Fields(f.Test), nil
	case schema.AfterText:
		if f.Note == "" {
			return nil, errors.New("what was observed is missing: write it as the note")
		}
	}
	return nil, nil
}

// nowhere is what a form sends for animals that have left the collection.
const nowhere = "-"

// measured are the words of a measurement.
func (f *fields) measured(deg quantity.Unit) (out []string, err error) {
	add := func(where, value string, unit string) {
		if value == "" {
			return
		}
		value = strings.ReplaceAll(value, ",", ".")
		if _, e := strconv.ParseFloat(value, 64); e != nil {
			err = fmt.Errorf("%q is no number", value)
		}
		if where != "" {
			out = append(out, where)
		}
		out = append(out, value, unit)
	}
	add("", f.Humidity, "%")
	add("spot", f.Spot, deg.String())
	add("air", f.Air, deg.String())
	add("night", f.Night, deg.String())
	add("room", f.Room, deg.String())
	if err == nil && len(out) == 0 {
		err = errors.New("what was measured is missing")
	}
	return out, err
}
