package caldav

import (
	"context"
	"encoding/xml"
	"errors"
	"fmt"
	"net/http"
	"net/url"
	"path"
	"slices"
	"strings"

	"github.com/emersion/go-webdav/caldav"
)

// Find looks for the list at the address of the client: there, or, where that is the address
// of a server, among the lists of its user.
func (c *Client) Find(ctx context.Context) error {
	dav, err := caldav.NewClient(c, c.base.String())
	if err != nil {
		return err
	}
	all, err := dav.FindCalendars(ctx, c.base.Path)
	if err == nil && len(all) == 0 {
		all, err = ofUser(ctx, dav)
	}
	if err != nil {
		return c.notFound(ctx, err)
	}
	var lists []caldav.Calendar
	for _, x := range all {
		if len(x.SupportedComponentSet) == 0 || slices.Contains(x.SupportedComponentSet, "VTODO") {
			lists = append(lists, x)
		}
	}
	switch {
	case len(all) == 0:
		return fmt.Errorf("there is no list of tasks at %s, and the server names none: make one in your app, and give its address", c.Address())
	case len(lists) == 0:
		return fmt.Errorf("%s holds appointments and no tasks: make a list of tasks in your app, and give its address", c.named(all[0].Path))
	case len(lists) > 1:
		var names []string
		for _, x := range lists {
			names = append(names, "\n  "+c.named(x.Path)+"  "+x.Name)
		}
		return errors.New("there are several lists of tasks: give the address of one:" + strings.Join(names, ""))
	}
	c.base.Path = strings.TrimSuffix(lists[0].Path, "/") + "/"
	return nil
}

// ofUser are the lists of whoever asks.
func ofUser(ctx context.Context, dav *caldav.Client) ([]caldav.Calendar, error) {
	who, err := dav.FindCurrentUserPrincipal(ctx)
	if err != nil {
		return nil, err
	}
	home, err := dav.FindCalendarHomeSet(ctx, who)
	if err != nil {
		return nil, err
	}
	return dav.FindCalendars(ctx, home)
}

func (c *Client) named(path string) string {
	u := *c.base
	u.Path = path
	return u.Redacted()
}

// notFound says why there is no list, in words where the server gave a status.
func (c *Client) notFound(ctx context.Context, err error) error {
	if errors.Is(err, errLate) {
		return c.late() // it would be waited for once more
	}
	status, _, e := c.ask(ctx, "PROPFIND", c.base.Path, map[string]string{"Depth": "0", "Content-Type": "application/xml; charset=utf-8"}, `<propfind xmlns="DAV:"><prop><resourcetype/></prop></propfind>`)
	switch {
	case e != nil:
		return e
	case status/100 != 2:
		return c.refusal(status)
	}
	return fmt.Errorf("no list of tasks was found at %s (%w): give the address of the list itself", c.Address(), err)
}

// answer is what a server says of the objects of a list (RFC 4918, 13).
type answer struct {
	Responses []struct {
		Href  string `xml:"DAV: href"`
		Props []struct {
			Status string `xml:"DAV: status"`
			Prop   struct {
				ETag string `xml:"DAV: getetag"`
				Text string `xml:"urn:ietf:params:xml:ns:caldav calendar-data"`
			} `xml:"DAV: prop"`
		} `xml:"DAV: propstat"`
	} `xml:"DAV: response"`
}

// query asks for all tasks, whole (RFC 4791, 7.8).
const query = `<?xml version="1.0" encoding="utf-8"?>
<C:calendar-query xmlns="DAV:" xmlns:C="urn:ietf:params:xml:ns:caldav"><prop><getetag/><C:calendar-data/></prop><C:filter><C:comp-filter name="VCALENDAR"><C:comp-filter name="VTODO"/></C:comp-filter></C:filter></C:calendar-query>`

// Kept is an object of a list.
type Kept struct {
	Path, ETag string
	Text       []byte
}

// List returns the tasks of the list.
func (c *Client) List(ctx context.Context) ([]Kept, error) {
	status, text, err := c.ask(ctx, "REPORT", c.base.Path, map[string]string{"Depth": "1", "Content-Type": "application/xml; charset=utf-8"}, query)
	switch {
	case err != nil:
		return nil, err
	case status != http.StatusMultiStatus:
		return nil, c.refusal(status)
	}
	var a answer
	if err := xml.Unmarshal(text, &a); err != nil {
		return nil, fmt.Errorf("the server's answer cannot be read: %w", err)
	}
	var all []Kept
	for _, r := range a.Responses {
		at, ok := c.within(r.Href)
		for _, p := range r.Props {
			if ok && strings.Contains(p.Status, " 200") && p.Prop.Text != "" {
				all = append(all, Kept{at, p.Prop.ETag, []byte(p.Prop.Text)})
			}
		}
	}
	return all, nil
}

// within returns the path of an object of the list; false for what is no object of it.
func (c *Client) within(href string) (string, bool) {
	u, err := url.Parse(strings.TrimSpace(href))
	if err != nil || u.Host != "" && u.Host != c.base.Host || path.Clean(u.Path) != u.Path {
		return "", false
	}
	name, below := strings.CutPrefix(u.Path, c.base.Path)
	return u.Path, below && name != ""
}
