package page

import (
	"net/http"
	"slices"

	"vivary/compile/daylist"
	"vivary/compile/life"
)

// publicPage is what the label at an enclosure shows to whoever scans it.
type publicPage struct {
	frame
	about
	Write bool
	Next  []next
}

// Public answers for the page that the label at an enclosure opens, for whoever scans it: what
// lives there, what to mind and whom to ring. Nothing of it can be changed, and it leads
// nowhere else.
func (p *Pages) Public(w http.ResponseWriter, r *http.Request, h *House, enclosure string) {
	q := &request{Pages: p, w: w, r: r, h: h}
	c := q.readable()
	i := -1
	if c != nil {
		i = slices.IndexFunc(c.Lives, func(l *life.Enclosure) bool { return l.Plan.Name.V == enclosure })
	}
	if r.Method != http.MethodGet && r.Method != http.MethodHead || i < 0 {
		q.fail(http.StatusNotFound, "There is no such page. Ask whoever keeps the animals.")
		return
	}
	out := publicPage{frame: q.frame(c.Lives[i].Plan.Shown(), ""), about: aboutOf(c, i)}
	out.Ring = daylist.Numbers(c.Plan, nil)
	out.Banner, out.Failed = nil, nil // it is no business of visitors, and what is said here is from what can be read
	q.show(http.StatusOK, "public", out)
}
