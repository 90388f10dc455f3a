package page

import (
	"net/http"
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/schema"
)

// dayPage is the page of what is due today.
type dayPage struct {
	frame
	Date   string
	Day    string // as forms send it
	Write  bool
	Mine   string // "mine" and "all" where the list may be either, "" where it is one
	List   *list
	Shut   *shutDay // of a refused plan
	Slip   *slip
	Before string // the id of the line before which the slip stands; "" for the head of the page
	Mains  string
	Print  bool
}

// day shows what is due today.
func (q *request) day() {
	query := q.r.URL.Query()
	q.show(http.StatusOK, "day", q.dayPage(query.Get("who") == "all", q.said.of(q.v, query.Get("noted"))))
}

func (q *request) dayPage(everybody bool, s *slip) dayPage {
	r, shut := q.listed()
	out := dayPage{frame: q.frame("Today", "day"), Write: q.v.Writes, Shut: shut, Slip: s, List: &list{}}
	out.Date, out.Day = q.h.Result.Today.Words(), q.h.Result.Today.String()
	if r == nil {
		return out
	}
	keeper := q.v.Keeper
	if everybody {
		keeper = ""
	}
	out.List = q.list(r, keeper)
	if s != nil {
		out.Before = out.List.at(s.Before)
	}
	if q.v.Keeper != "" && (everybody || out.List.Others) {
		if out.Mine = "mine"; everybody {
			out.Mine = "all"
		}
	}
	if len(out.List.Rounds) > 0 && heated(r) {
		out.Mains = schema.MainsBrief
	}
	return out
}

// at is the id on the page that stands for one of before: itself, else that of its round, else
// "", the head of the page. Lines that were two are one once the same is left at both.
func (l *list) at(id string) string {
	out := ""
	for i := range l.Rounds {
		x := &l.Rounds[i]
		if id == x.ID || slices.ContainsFunc(x.lines(), func(n *line) bool { return n.ID == id }) {
			return id
		}
		if strings.HasPrefix(id, x.ID+"-") && len(x.ID) > len(out) {
			out = x.ID
		}
	}
	return out
}

func heated(r *compile.Result) bool {
	for _, e := range r.Plan.Enclosures {
		if e.Climate != nil && len(e.Climate.Heaters) > 0 {
			return true
		}
	}
	return false
}

// list is what is due of a keeper, or of all for "", made once for each House.
func (q *request) list(r *compile.Result, keeper string) *list {
	c := &q.h.cache
	c.mu.Lock()
	defer c.mu.Unlock()
	if c.days == nil {
		c.days = map[string]*list{}
	}
	l := c.days[keeper]
	if l == nil {
		l = q.kept.list(r, keeper)
		c.days[keeper] = l
	}
	return l
}

// wholePage asks whether all of a round was done.
type wholePage struct {
	frame
	Round round
	Lines []*line
	Day   string
	Sum   string
	Count int
	Shut  *shutDay
}

// wholeRound asks before all of a round is ticked off.
func (q *request) wholeRound(name string) {
	r, shut := q.listed()
	if r == nil || !q.v.Writes {
		q.lost()
		return
	}
	x := q.round(r, name)
	if x == nil {
		q.lost()
		return
	}
	all := x.all()
	if len(all) == 0 {
		q.fail(http.StatusOK, x.Title+": nothing is left to be ticked off.")
		return
	}
	q.show(http.StatusOK, "whole", wholePage{q.frame("All of "+x.Title, "day"), *x, x.lines(), q.h.Result.Today.String(), sumOf(all), len(all), shut})
}

// round is the round of that name in the visitor's list, else in that of all; nil for none.
func (q *request) round(r *compile.Result, name string) *round {
	for _, keeper := range []string{q.v.Keeper, ""} {
		l := q.list(r, keeper)
		for i := range l.Rounds {
			if l.Rounds[i].Name == name {
				return &l.Rounds[i]
			}
		}
	}
	return nil
}

// all are the ticks of all jobs of a round, questions left out.
func (x *round) all() (out []string) {
	add := func(jobs []job) {
		for _, j := range jobs {
			if j.Tick != "" {
				out = append(out, strings.Split(j.Tick, "!")...)
			}
		}
	}
	for _, l := range x.lines() {
		if len(l.Stops) == 0 {
			add(l.Jobs)
		}
		for _, s := range l.Stops {
			add(s.Jobs)
		}
	}
	return out
}

// sumOf is a short name for some ticks, by which a page that is out of date is known.
func sumOf(ticks []string) string {
	text := strconv.Itoa(len(ticks))
	for _, t := range ticks {
		text += "\n" + t
	}
	return sum(text)
}
