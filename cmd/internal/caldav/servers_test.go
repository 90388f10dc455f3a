//go:build unix

package caldav

import (
	"bytes"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/journal"
	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/plan"
)

// server is a CalDAV server that runs on this machine.
type server struct {
	name, url string // of the folder in which lists are made
	lists     int
	mu        sync.Mutex
}

var login = Login{"lead", "secret"}

// servers are two that share no code; both must be there.
var servers []*server

func TestMain(m *testing.M) {
	dir, err := os.MkdirTemp("", "caldav")
	if err != nil {
		panic(err)
	}
	os.Exit(func() int {
		defer os.RemoveAll(dir)
		radicale, stopRadicale, err := startRadicale(dir)
		if err == nil {
			defer stopRadicale()
			var xandikos *server
			var stopXandikos func()
			if xandikos, stopXandikos, err = startXandikos(dir); err == nil {
				defer stopXandikos()
				servers = []*server{radicale, xandikos}
			}
		}
		if err != nil {
			fmt.Println("the CalDAV servers to compare with do not run: testdata/oracles/setup installs them:", err)
			return 1
		}
		return m.Run()
	}())
}

func startRadicale(dir string) (*server, func(), error) {
	port, err := freePort()
	if err != nil {
		return nil, nil, err
	}
	config := filepath.Join(dir, "radicale.conf")
	text := fmt.Sprintf("[server]\nhosts = 127.0.0.1:%s\n[auth]\ntype = htpasswd\nhtpasswd_filename = %s/users\nhtpasswd_encryption = plain\n[storage]\nfilesystem_folder = %[2]s/radicale\n", port, dir)
	err = os.WriteFile(filepath.Join(dir, "users"), []byte(login.User+":"+login.Password+"\nonly:secret\n"), 0o600)
	if err == nil {
		err = os.WriteFile(config, []byte(text), 0o600)
	}
	if err != nil {
		return nil, nil, err
	}
	return started("Radicale", "http://127.0.0.1:"+port+"/lead/", "radicale", "--config", config)
}

func startXandikos(dir string) (*server, func(), error) {
	port, err := freePort()
	if err != nil {
		return nil, nil, err
	}
	return started("Xandikos", "http://127.0.0.1:"+port+"/user/calendars/", "xandikos", "-d", filepath.Join(dir, "xandikos"), "--defaults", "-l", "127.0.0.1", "-p", port, "--current-user-principal", "/user/")
}

// started starts a server and waits until it answers.
func started(name, url, program string, args ...string) (*server, func(), error) {
	cmd := exec.Command(program, args...)
	var said bytes.Buffer
	cmd.Stdout, cmd.Stderr = &said, &said
	if err := cmd.Start(); err != nil {
		return nil, nil, err
	}
	ended := make(chan error, 1)
	go func() { ended <- cmd.Wait() }()
	stop := func() { _ = cmd.Process.Kill(); <-ended }
	for range 300 {
		select {
		case err := <-ended:
			return nil, nil, fmt.Errorf("%s ended: %v\n%s", program, err, said.String())
		case <-time.After(100 * time.Millisecond):
		}
		if status, _, _, err := request("OPTIONS", url, nil, ""); err == nil && status < 500 {
			return &server{name: name, url: url}, stop, nil
		}
	}
	stop()
	return nil, nil, fmt.Errorf("%s does not answer:\n%s", program, said.String())
}

func freePort() (string, error) {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return "", err
	}
	defer l.Close()
	_, port, err := net.SplitHostPort(l.Addr().String())
	return port, err
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
