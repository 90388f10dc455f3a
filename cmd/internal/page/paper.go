package page

import (
	"bytes"
	"html"
	"net/http"
	"slices"

	"vivary/compile/daylist"
	"vivary/compile/paper"
	"vivary/schema/civil"
)

// paperStyle is where sheets to be printed ask for their style, below a visitor's home: pages
// may hold none of their own.
var paperStyle = "/paper/style.css?" + sum(string(paper.CSS))

// print answers with a sheet that is to be printed: a round of a day, that of a stand-in, or
// the labels of tanks.
func (q *request) print(what string) {
	if what == "style.css" {
		h := q.w.Header()
		h.Set("Content-Type", "text/css; charset=utf-8")
		h.Set("Cache-Control", "private, max-age=31536000, immutable")
		_, _ = q.w.Write(paper.CSS) // whoever asked has gone, if it fails
		return
	}
	doc, back, err := q.sheet(what)
	switch {
	case err != nil:
		q.fail(http.StatusNotFound, "That cannot be printed: "+err.Error()+".")
		return
	case doc == nil:
		q.lost()
		return
	}
	if _, shut := q.listed(); shut != nil {
		more := slices.Clone(shut.Urgent)
		for _, line := range shut.Logged {
			more = append(more, "Logged since, and not in the lists: "+line)
		}
		doc.Warn("The plan is refused. "+shut.Text, more...)
	}
	var b bytes.Buffer
	err = doc.HTML(&b, paper.Options{Style: q.v.Home + paperStyle, Before: `<p><a href="` + html.EscapeString(q.v.Home+back) + `">Back</a></p>`})
	if err != nil {
		q.fail(http.StatusInternalServerError, "That cannot be printed: "+err.Error()+".")
		return
	}
	q.send(http.StatusOK, b.Bytes())
}

// sheet makes what is to be printed, and says whence somebody came; nil where there is no such
// sheet.
func (q *request) sheet(what string) (doc *paper.Document, back string, err error) {
	r, _ := q.listed()
	if r == nil {
		return nil, "", nil
	}
	query := q.r.URL.Query()
	switch what {
	case "round":
		day, err := civil.Parse(query.Get("day"))
		if err != nil || day < r.Today || day >= r.Today+weekDays {
			return nil, "", nil
		}
		lists := daylist.Of(r, daylist.Asked{Days: int(day-r.Today) + 1, Round: query.Get("round")})
		lists = slices.DeleteFunc(lists, func(l *daylist.List) bool { return l.Date != day })
		return paper.Round(r, lists), "/", nil
	case "cover":
		stints := r.Roster.Stints()
		for i := range stints {
			if s := &stints[i]; s.For == query.Get("for") && s.Keeper == query.Get("by") && s.Back.String() == query.Get("back") {
				doc, err = paper.Cover(r, s, "")
				return doc, "/week", err
			}
		}
	case "labels":
		lives := slices.Clone(r.Lives)
		if name := query.Get("tank"); name != "" {
			for i, l := range r.Lives {
				if l.Plan.Name.V == name {
					lives = r.Lives[i : i+1]
				}
			}
		}
		doc, err = paper.Labels(r, lives, func(enclosure string) string {
			if q.h.Label == nil {
				return ""
			}
			return q.base() + q.h.Label(enclosure)
		})
		return doc, "/tanks", err
	}
	return nil, "", nil
}
