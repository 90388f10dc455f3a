// Package page makes the pages that a keeper opens on a phone or a larger screen: what is due,
// each enclosure, what was found. It has no script and asks nothing of anybody else: HTML, one
// style sheet, pictures of its own. Who may see them, and how they come over the wire, is for
// others.
package page

import (
	"context"
	"net/http"
	"strings"
	"sync"
	"time"

	"vivary/cmd/internal/journal"
	"vivary/compile"
	"vivary/compile/identity"
)

// House is what pages are made from. It is not changed once it is shown.
type House struct {
	Result *compile.Result // of the plan as it stands, refused or not
	// Good is of the last plan that was not refused: Result itself where it is not, nil for none.
	Good      *compile.Result
	Refused   time.Time // since when the plan is refused; zero where it is not
	Built     time.Time // when calendars were last written; zero for never
	Failed    string    // why calendars cannot be written, "" where they can
	Since     time.Time // since when they cannot
	Behind    bool      // the plan cannot be read either: Result is of before
	Base      string    // how the server is reached, without a slash at its end: "https://care.example"; "" where that is not known
	Calendars []Calendar
	// Label returns the path of the page that the label at an enclosure opens, "" for none. It
	// may be nil.
	Label func(enclosure string) string

	cache cache
}

// Called returns what the enclosure is called now that had a name first: labels and what was
// kept of a page live longer than names. It is the name itself where none had it.
func (h *House) Called(name string) string {
	if r := h.readable(); r != nil {
		for _, l := range r.Lives {
			if identity.Enclosure(l.Plan) == name {
				return l.Plan.Name.V
			}
		}
	}
	return name
}

// Calendar is a feed to which a phone subscribes.
type Calendar struct {
	Name, Title string
	Path        string // "/c/KEY/evening.ics"
	Entries     int    // 0 where that is not known
	// Hidden reports whether whoever comes as a keeper does not see it listed: the dates of the
	// house are not for somebody who only stands in. Nil for nobody.
	Hidden func(keeper string) bool
}

// Visitor is whose private address was used.
type Visitor struct {
	Keeper string // "" for a reader's address, and in a plan without keepers
	Writes bool   // whether lines of the log are taken from it
	Home   string // the path below which the pages are: "/k/KEY"
}

// Note writes lines of the log for a visitor. When it returns, what it wrote is in the House
// that the next page is made from.
type Note func(ctx context.Context, v Visitor, lines []string) (journal.Outcome, error)

// Pages answers for all that lies below a private address.
type Pages struct {
	Now  func() time.Time
	Note Note // nil where nobody writes

	said said
	kept kept
}

// maxBody is how many bytes of a form are read.
const maxBody = 64 << 10

// Serve answers a request for what lies below the visitor's home: rest is "/" or longer.
func (p *Pages) Serve(w http.ResponseWriter, r *http.Request, h *House, v Visitor, rest string) {
	q := &request{Pages: p, w: w, r: r, h: h, v: v}
	part, name, _ := strings.Cut(strings.Trim(rest, "/"), "/")
	if r.Method == http.MethodPost {
		q.post(part, name)
		return
	}
	if r.Method != http.MethodGet && r.Method != http.MethodHead {
		w.Header().Set("Allow", "GET, HEAD, POST")
		q.fail(http.StatusMethodNotAllowed, "A page is read, or a form of it is sent.")
		return
	}
	q.get(part, name)
}

func (q *request) get(part, name string) {
	switch {
	case part == "" && name == "":
		q.day()
	case part == "round" && strings.HasSuffix(name, "/all"):
		q.wholeRound(strings.TrimSuffix(name, "/all"))
	case part == "week" && name == "":
		q.week()
	case part == "calendars":
		q.calendars(name)
	case part == "paper":
		q.print(name)
	case part == "tanks" && name == "":
		q.tanks()
	case part == "tank":
		q.tank(name)
	case part == "findings" && name == "":
		q.findings()
	default:
		q.lost()
	}
}

func (q *request) post(part, name string) {
	switch {
	case !q.mayWrite():
	case part == "tick" && name == "":
		q.tick()
	case part == "undo" && name == "":
		q.undo()
	case part == "tank":
		q.note(name)
	default:
		q.lost()
	}
}

// request is one question, with all that it takes to answer it.
type request struct {
	*Pages
	w http.ResponseWriter
	r *http.Request
	h *House
	v Visitor
}

// base is how the server is reached: as this page was asked for, where nobody said.
func (q *request) base() string {
	switch {
	case q.h.Base != "":
		return q.h.Base
	case q.r.TLS != nil:
		return "https://" + q.r.Host
	}
	return "http://" + q.r.Host
}

// mayWrite reports whether a form is taken: from a page of ours, in a browser that says so,
// and from a visitor who may write. It has answered where it is not.
func (q *request) mayWrite() bool {
	switch err := sameSite.Check(q.r); {
	case err != nil:
		q.fail(http.StatusForbidden, "This form came from another place than these pages. Nothing was written.")
	case !q.v.Writes || q.Note == nil:
		q.fail(http.StatusForbidden, "With this address one reads, and writes nothing.")
	default:
		q.r.Body = http.MaxBytesReader(q.w, q.r.Body, maxBody)
		if err := q.r.ParseForm(); err != nil {
			q.fail(http.StatusRequestEntityTooLarge, "That is more than a form of these pages sends. Nothing was written.")
			return false
		}
		return true
	}
	return false
}

// sameSite refuses what a page of somebody else makes a browser send. The address is a secret,
// and this is the second bolt.
var sameSite = http.NewCrossOriginProtection()

// now is the time at which a request is answered, in the collection's zone.
func (q *request) now() time.Time {
	t := q.Now()
	if loc := q.h.Result.Plan.Location; loc != nil {
		t = t.In(loc)
	}
	return t
}

// cache keeps what takes long to make, for as long as a House is shown.
type cache struct {
	mu   sync.Mutex
	days map[string]*list     // what is due today, by keeper
	week map[string][]weekDay // the coming days, by keeper
	shut shut
}
