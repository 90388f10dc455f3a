package page

import (
	"html/template"
	"net/http"
	"slices"
	"strings"

	"vivary/compile/qrcode"
)

// calendarsPage lists the feeds with how to subscribe to each.
type calendarsPage struct {
	frame
	All []calendarView
}

type calendarView struct {
	Calendar
	Address   string       // https, to be copied
	Subscribe template.URL // webcal, which opens whatever subscribes on this phone
}

// calendars lists the feeds, or answers with the code of one.
func (q *request) calendars(name string) {
	if name == "" {
		out := calendarsPage{frame: q.frame("Calendars", "calendars")}
		for _, c := range q.h.Calendars {
			if c.hidden(q.v.Keeper) {
				continue
			}
			address := q.base() + c.Path
			out.All = append(out.All, calendarView{c, address, subscribe(address)})
		}
		q.show(http.StatusOK, "calendars", out)
		return
	}
	file, ok := strings.CutSuffix(name, ".svg")
	i := slices.IndexFunc(q.h.Calendars, func(c Calendar) bool { return c.Name == file && !c.hidden(q.v.Keeper) })
	if !ok || i < 0 {
		q.lost()
		return
	}
	code, err := qrcode.Of(string(subscribe(q.base()+q.h.Calendars[i].Path)), qrcode.Clean)
	if err != nil {
		q.fail(http.StatusNotFound, "There is no code of this calendar: "+err.Error()+".")
		return
	}
	q.picture([]byte(code.Screen(300, "Subscribe to "+q.h.Calendars[i].Title)))
}

func (c *Calendar) hidden(keeper string) bool { return c.Hidden != nil && c.Hidden(keeper) }

// subscribe is an address as calendar programs take it. html/template lets only a few schemes
// through; this one is made here, of an address that is the server's own.
func subscribe(address string) template.URL {
	_, rest, _ := strings.Cut(address, "://")
	return template.URL("webcal://" + rest)
}
