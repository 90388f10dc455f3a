//go:build unix

package caldav

import (
	"fmt"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/journal"
	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/internal/servers"
	"vivary/plan"
)

// server is a CalDAV server that runs on this machine.
type server struct {
	name, url string // of the folder in which lists are made
	lists     int
	mu        sync.Mutex
}

var login = Login{"lead", "secret"}

// both are two that share no code; both must be there.
var both []*server

func TestMain(m *testing.M) {
	dir, err := os.MkdirTemp("", "caldav")
	if err != nil {
		panic(err)
	}
	os.Exit(func() int {
		defer os.RemoveAll(dir)
		for _, start := range []func() (*servers.Lists, func(), error){
			func() (*servers.Lists, func(), error) {
				return servers.Radicale(dir, [2]string{login.User, login.Password}, [2]string{"only", "secret"})
			},
			func() (*servers.Lists, func(), error) { return servers.Xandikos(dir) },
		} {
			s, end, err := start()
			if err != nil {
				fmt.Println("the CalDAV servers to compare with do not run: testdata/oracles/setup installs them:", err)
				return 1
			}
			defer end()
			both = append(both, &server{name: s.Name, url: s.URL})
		}
		return m.Run()
	}())
}

// request asks a server as an app does.
func request(method, url string, head map[string]string, body string) (status int, etag string, text []byte, err error) {
	return requestBy(login, method, url, head, body)
}

func requestBy(who Login, method, url string, head map[string]string, body string) (status int, etag string, text []byte, err error) {
	req, err := http.NewRequest(method, url, strings.NewReader(body))
	if err != nil {
		return 0, "", nil, err
	}
	req.SetBasicAuth(who.User, who.Password)
	for name, value := range head {
		req.Header.Set(name, value)
	}
	answer, err := http.DefaultClient.Do(req)
	if err != nil {
		return 0, "", nil, err
	}
	defer answer.Body.Close()
	text, err = io.ReadAll(answer.Body)
	return answer.StatusCode, answer.Header.Get("ETag"), text, err
}

const makeList = `<?xml version="1.0" encoding="utf-8"?>
<C:mkcalendar xmlns="DAV:" xmlns:C="urn:ietf:params:xml:ns:caldav"><set><prop><displayname>Care</displayname><C:supported-calendar-component-set><C:comp name="VTODO"/><C:comp name="VEVENT"/></C:supported-calendar-component-set></prop></set></C:mkcalendar>`

// list makes an empty list on the server.
func (s *server) list(t *testing.T) *phone {
	t.Helper()
	s.mu.Lock()
	s.lists++
	url := fmt.Sprintf("%slist-%d/", s.url, s.lists)
	s.mu.Unlock()
	status, _, text, err := request("MKCALENDAR", url, map[string]string{"Content-Type": "application/xml; charset=utf-8"}, makeList)
	if err != nil || status != http.StatusCreated {
		t.Fatalf("%s makes no list: %d, %s, %v", s.name, status, text, err)
	}
	return &phone{t, url}
}

const house = `collection "c" {
  time_zone = "Europe/London"
}

keeper "lead" {
}

keeper "relief" {
}

round "morning" {
  at = "08:00"
}

round "evening" {
  at     = "19:30"
  keeper = "lead"
}

room "east" {
  temperature = "22 to 25 C"
}

enclosure "tub" {
  title   = "Tub"
  numbers = "1 to 3"
  species = "pandinus-imperator"
  room    = "east"

  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
    vents  = "some"
    depth  = "16 cm"
    hides  = 1
  }

  care "water" {
    every = "1 day"
    round = ["morning", "evening"]
  }

  animals "adult" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 118"
  }
}
`

// home is a collection on the disk of this machine.
type home struct {
	*testing.T
	dir string
	now time.Time
}

var (
	noon    = time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)
	evening = noon.Add(8 * time.Hour)
)

func newHome(t *testing.T) *home {
	t.Helper()
	h := &home{t, t.TempDir(), noon}
	h.write("plan.care.hcl", house)
	return h
}

func (h *home) write(name, text string) {
	h.Helper()
	path := filepath.Join(h.dir, name)
	err := os.MkdirAll(filepath.Dir(path), 0o755)
	if err == nil {
		err = os.WriteFile(path, []byte(text), 0o644)
	}
	if err != nil {
		h.Fatal(err)
	}
}

// log is what stands in all logs, a line each.
func (h *home) log() string {
	h.Helper()
	var all strings.Builder
	files, _ := filepath.Glob(filepath.Join(h.dir, "records", "*.care.log"))
	for _, f := range files {
		text, err := os.ReadFile(f)
		if err != nil {
			h.Fatal(err)
		}
		all.Write(text)
	}
	return all.String()
}

// sync is a run that asks at an address.
func (h *home) sync(address string) *Sync {
	h.Helper()
	c, err := New(address, login, false)
	if err != nil {
		h.Fatal(err)
	}
	j := &journal.Journal{Disk: afero.NewOsFs(), Root: h.dir, Stamped: true, Lock: publish.Waiting(time.Minute, time.Now, func(string) {}),
		Compile: func(disk afero.Fs) (*compile.Result, error) {
			c, found, err := plan.Load(disk, h.dir)
			if err != nil {
				return nil, err
			}
			return compile.Compile(c, found, h.now), nil
		}}
	return &Sync{Client: c, Journal: j, Days: 1}
}
