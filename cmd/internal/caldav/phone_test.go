//go:build unix

package caldav

import (
	"context"
	"regexp"
	"slices"
	"strings"
	"testing"

	"vivary/compile/ical"
)

// phone is an app that has a list: it reads and writes objects, and knows nothing of vivary.
type phone struct {
	*testing.T
	url string
}

// objects are those of the list, by path, as the server has them.
func (p *phone) objects() map[string]string {
	p.Helper()
	c, err := New(p.url, login, false)
	if err != nil {
		p.Fatal(err)
	}
	all, err := c.List(context.Background())
	if err != nil {
		p.Fatal(err)
	}
	out := map[string]string{}
	for _, k := range all {
		out[k.Path] = string(k.Text)
	}
	return out
}

// shown are the titles of the list with what is ticked, in order.
func (p *phone) shown() (all []string) {
	p.Helper()
	for _, text := range p.objects() {
		s, err := ical.ReadTodo([]byte(text))
		if err != nil {
			p.Fatalf("%v: %s", err, text)
		}
		state := " "
		if s.Done {
			state = "x"
		} else if s.Cancelled {
			state = "-"
		}
		all = append(all, "["+state+"] "+s.Start.Format("02 15:04 ")+s.Summary)
	}
	slices.Sort(all)
	return all
}

// at is the path of the task of a title, on a day.
func (p *phone) at(title string) (path, text string) {
	p.Helper()
	for path, text := range p.objects() {
		if s, err := ical.ReadTodo([]byte(text)); err == nil && strings.Contains(s.Start.Format("02 15:04 ")+s.Summary, title) {
			return path, text
		}
	}
	p.Fatalf("there is no task %q: %q", title, p.shown())
	return "", ""
}

// edit changes an object as it stands on the server.
func (p *phone) edit(title string, change func(string) string) {
	p.Helper()
	path, _ := p.at(title)
	address := p.url[:strings.Index(p.url[8:], "/")+8] + path
	_, etag, text, err := request("GET", address, nil, "")
	if err != nil {
		p.Fatal(err)
	}
	status, _, answer, err := request("PUT", address, map[string]string{"If-Match": etag, "Content-Type": "text/calendar; charset=utf-8"}, change(string(text)))
	if err != nil || status/100 != 2 {
		p.Fatalf("%d, %s, %v", status, answer, err)
	}
}

// put makes an object of somebody else.
func (p *phone) put(name, text string) {
	p.Helper()
	status, _, answer, err := request("PUT", p.url+name, map[string]string{"Content-Type": "text/calendar; charset=utf-8"}, text)
	if err != nil || status/100 != 2 {
		p.Fatalf("%d, %s, %v", status, answer, err)
	}
}

// with puts properties before the end of the todo, in place of those of the same names.
func with(lines ...string) func(string) string {
	return func(text string) string {
		for _, l := range lines {
			name, _, _ := strings.Cut(l, ":")
			text = regexp.MustCompile(`(?m)^`+name+`:.*\r?\n`).ReplaceAllString(text, "")
		}
		return strings.Replace(text, "END:VTODO", strings.Join(lines, "\r\n")+"\r\nEND:VTODO", 1)
	}
}

// The ways in which apps say that something was done at 19:42 in London.
var apps = map[string]func(string) string{
	"Tasks.org":       with("STATUS:COMPLETED", "COMPLETED:20261125T194200Z", "PERCENT-COMPLETE:100", "LAST-MODIFIED:20261125T194201Z"),
	"Reminders":       with("COMPLETED:20261125T194200Z", "PERCENT-COMPLETE:100", "STATUS:COMPLETED", "X-APPLE-SORT-ORDER:1", "SEQUENCE:2"),
	"a percentage":    with("PERCENT-COMPLETE:100", "LAST-MODIFIED:20261125T194200Z"),
	"a time alone":    with("COMPLETED:20261125T194200Z"),
	"a status alone":  with("STATUS:COMPLETED", "LAST-MODIFIED:20261125T194200Z"),
	"a time in Paris": with("STATUS:COMPLETED", "COMPLETED;TZID=Europe/Paris:20261125T204200"),
	"Thunderbird": func(text string) string {
		begin, end := strings.Index(text, "BEGIN:VTODO"), strings.Index(text, "END:VTODO")+len("END:VTODO")
		done := with("RECURRENCE-ID:20261125T193000Z", "STATUS:COMPLETED", "COMPLETED:20261125T194200Z", "PERCENT-COMPLETE:100")(text[begin:end])
		return text[:end] + "\r\n" + done + text[end:]
	},
}

// onServers runs a test on each server.
func onServers(t *testing.T, test func(t *testing.T, s *server)) {
	for _, s := range both {
		t.Run(s.name, func(t *testing.T) { test(t, s) })
	}
}
