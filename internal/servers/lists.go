//go:build unix

package servers

import (
	"fmt"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// Lists is a server of CalDAV, in which lists of tasks can be made.
type Lists struct {
	Name string
	URL  string // of the folder in which they are made, with a slash at its end
}

// Radicale starts one that keeps what it has in a folder and knows some users, of whom each has
// a password; lists are those of the user who is named first. What is returned ends it.
func Radicale(dir string, users ...[2]string) (*Lists, func(), error) {
	address, err := freePort()
	if err != nil {
		return nil, nil, err
	}
	var known strings.Builder
	for _, u := range users {
		known.WriteString(u[0] + ":" + u[1] + "\n")
	}
	config := filepath.Join(dir, "radicale.conf")
	text := fmt.Sprintf("[server]\nhosts = %s\n[auth]\ntype = htpasswd\nhtpasswd_filename = %s/users\nhtpasswd_encryption = plain\n[storage]\nfilesystem_folder = %[2]s/radicale\n", address, dir)
	err = os.WriteFile(filepath.Join(dir, "users"), []byte(known.String()), 0o600)
	if err == nil {
		err = os.WriteFile(config, []byte(text), 0o600)
	}
	if err != nil {
		return nil, nil, err
	}
	end, err := start(dir, address, exec.Command("radicale", "--config", config))
	return &Lists{"Radicale", "http://" + address + "/" + users[0][0] + "/"}, end, err
}

// Xandikos starts one that shares no code with it, and knows nobody: it lets everybody in. What
// is returned ends it.
func Xandikos(dir string) (*Lists, func(), error) {
	address, err := freePort()
	if err != nil {
		return nil, nil, err
	}
	_, port, _ := net.SplitHostPort(address)
	end, err := start(dir, address, exec.Command("xandikos", "-d", filepath.Join(dir, "xandikos"), "--defaults", "-l", "127.0.0.1", "-p", port, "--current-user-principal", "/user/"))
	return &Lists{"Xandikos", "http://" + address + "/user/calendars/"}, end, err
}
