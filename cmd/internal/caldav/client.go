// Package caldav keeps a list of tasks on a CalDAV server (RFC 4791) as it is to be, and writes
// what was ticked there into the log. What stands in the list and what a tick means is for
// compile/tasks to say.
package caldav

import (
	"context"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/url"
	"strings"
	"time"

	"vivary/compile/tasks"
)

// Login is who asks a server. The zero Login is nobody.
type Login struct{ User, Password string }

// Client speaks with the server of one list.
type Client struct {
	base  *url.URL // of the list, with a slash at the end of its path
	login Login
	http  http.Client
}

const (
	patience = time.Minute // for one answer
	most     = 32 << 20    // bytes of one
)

// ErrConflict is the error of a change of something that is no more as it was read: somebody
// else changed it meanwhile.
var ErrConflict = errors.New("it was changed by somebody else meanwhile")

// errLate is the error of a server that is there and gives no whole answer. What was asked may
// have been done all the same.
var errLate = errors.New("gives no whole answer within a minute: try again later")

// New makes a client of the list at an address, or of the server that has it. Where the way
// there is not encrypted, and leaves this machine, bare has to say that this is meant.
func New(address string, login Login, bare bool) (*Client, error) {
	u, err := url.Parse(address)
	switch {
	case err != nil:
		return nil, errors.New("the address cannot be read: write it as https://host/path/of/the/list/") // the error would show all of it
	case u.User != nil:
		return nil, errors.New("a user and a password have no place in the address, where others see them: put them into a file, and name it with --login")
	case u.Scheme != "https" && u.Scheme != "http" || u.Host == "":
		return nil, fmt.Errorf("%q is no address of a list of tasks: write it as https://host/path/of/the/list/", u.Redacted())
	case u.RawQuery != "" || u.Fragment != "":
		return nil, errors.New("the address of a list of tasks has no ? and no #")
	case u.Scheme == "http" && !bare && !here(u.Hostname()):
		return nil, fmt.Errorf("%s would be asked without encryption, and everybody on the way could read the password: write https://, or say --unencrypted where the network is yours alone", u.Redacted())
	}
	u.Path = strings.TrimSuffix(u.Path, "/") + "/"
	u.RawPath = ""
	c := &Client{base: u, login: login}
	c.http = http.Client{Timeout: patience, CheckRedirect: func(to *http.Request, _ []*http.Request) error {
		return fmt.Errorf("the server says that it is elsewhere: if that is right, name %s://%s%s", to.URL.Scheme, to.URL.Host, to.URL.Path)
	}}
	return c, nil
}

// here reports whether a host is this machine.
func here(host string) bool {
	ip := net.ParseIP(host)
	return host == "localhost" || ip != nil && ip.IsLoopback()
}

// Address is that of the list, as it may be printed.
func (c *Client) Address() string { return c.base.Redacted() }

// Do asks the server, and nobody else: the password goes nowhere but there. What it answers is
// bounded.
func (c *Client) Do(req *http.Request) (*http.Response, error) {
	if req.URL.Scheme != c.base.Scheme || req.URL.Host != c.base.Host {
		return nil, fmt.Errorf("the server names %s, which is another: nothing is asked there", req.URL.Host)
	}
	if c.login.User != "" {
		req.SetBasicAuth(c.login.User, c.login.Password)
	}
	req.Header.Set("User-Agent", "vivary")
	answer, err := c.http.Do(req)
	if err != nil {
		if late(err) {
			return nil, c.late()
		}
		var sent *url.Error
		if errors.As(err, &sent) {
			err = sent.Err // without the address: it is said by whoever knows what was asked
		}
		var way *net.OpError
		if errors.As(err, &way) {
			return nil, fmt.Errorf("%s cannot be reached: %w", c.base.Host, way.Err)
		}
		return nil, fmt.Errorf("%s: %w", c.base.Host, err)
	}
	answer.Body = &bounded{answer.Body, c, most}
	return answer, nil
}

// late reports whether it is an error of having waited for too long.
func late(err error) bool {
	var of net.Error
	return errors.As(err, &of) && of.Timeout()
}

func (c *Client) late() error { return fmt.Errorf("%s %w", c.base.Host, errLate) }

// bounded is an answer of which only so much is read.
type bounded struct {
	io.ReadCloser
	of   *Client
	left int
}

func (b *bounded) Read(p []byte) (int, error) {
	if b.left <= 0 {
		return 0, fmt.Errorf("the server's answer is longer than %d MiB", most>>20)
	}
	n, err := b.ReadCloser.Read(p[:min(len(p), b.left)])
	b.left -= n
	if late(err) {
		err = b.of.late()
	}
	return n, err
}

// ask sends a request about a path and returns the answer's status and body.
func (c *Client) ask(ctx context.Context, method, path string, head map[string]string, body string) (int, []byte, error) {
	u := *c.base
	u.Path = path
	req, err := http.NewRequestWithContext(ctx, method, u.String(), strings.NewReader(body))
	if err != nil {
		return 0, nil, err
	}
	for name, value := range head {
		req.Header.Set(name, value)
	}
	answer, err := c.Do(req)
	if err != nil {
		return 0, nil, err
	}
	defer answer.Body.Close()
	text, err := io.ReadAll(answer.Body)
	switch {
	case errors.Is(err, errLate):
		return 0, nil, err
	case err != nil:
		return 0, nil, fmt.Errorf("%s: the answer breaks off: %w", c.base.Host, err)
	}
	return answer.StatusCode, text, nil
}

// refusal says what a status means that is no success.
func (c *Client) refusal(status int) error {
	switch status {
	case http.StatusUnauthorized:
		if c.login.User == "" {
			return errors.New("the server asks who it is: put user and password into a file, and name it with --login")
		}
		return errors.New("the server does not know this user with this password")
	case http.StatusForbidden:
		return errors.New("the server does not let this user do that")
	case http.StatusNotFound:
		return fmt.Errorf("there is nothing at %s", c.Address())
	case http.StatusPreconditionFailed, http.StatusConflict:
		return ErrConflict
	case http.StatusInsufficientStorage:
		return errors.New("the server has no room left")
	}
	return fmt.Errorf("the server answers %d %s", status, http.StatusText(status))
}

// Put writes an object. It is new where no state is given; else it is in that state still, or
// nothing is written: ErrConflict.
func (c *Client) Put(ctx context.Context, path, etag string, object []byte) error {
	head := map[string]string{"Content-Type": "text/calendar; charset=utf-8"}
	if etag == "" {
		head["If-None-Match"] = "*"
	} else {
		head["If-Match"] = etag
	}
	status, _, err := c.ask(ctx, http.MethodPut, path, head, string(object))
	switch {
	case err != nil:
		return err
	case status == http.StatusNotFound && etag != "":
		return ErrConflict // it was deleted
	case status/100 != 2:
		return c.refusal(status)
	}
	return nil
}

// Delete takes away an object that is in a state still. One that is gone already is gone.
func (c *Client) Delete(ctx context.Context, path, etag string) error {
	status, _, err := c.ask(ctx, http.MethodDelete, path, map[string]string{"If-Match": etag}, "")
	if err == nil && status/100 != 2 && status != http.StatusNotFound && status != http.StatusGone {
		err = c.refusal(status)
	}
	return err
}

// path is that at which an object of that UID is made.
func (c *Client) path(uid string) string { return c.base.Path + uid + ".ics" }

// ours are the paths among some that bear a name as objects have that we made.
func (c *Client) ours(paths []string) (all []string) {
	for _, p := range paths {
		if strings.HasPrefix(p, c.base.Path+tasks.Mark) {
			all = append(all, p)
		}
	}
	return all
}
