//go:build unix

package servers

import (
	"fmt"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"syscall"
	"testing"
	"time"
)

// FreePort is an address on this machine at which nobody listens.
func FreePort(t testing.TB) string {
	t.Helper()
	address, err := freePort()
	if err != nil {
		t.Fatal(err)
	}
	return address
}

func freePort() (string, error) {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return "", err
	}
	defer l.Close()
	return l.Addr().String(), nil
}

// Started starts a server and waits until it answers; it ends with the test.
func Started(t testing.TB, address string, cmd *exec.Cmd) {
	t.Helper()
	end, err := start(t.TempDir(), address, cmd)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(end)
}

// start starts a server, keeps what it says in a folder, and waits until it answers. What is
// returned ends it.
func start(dir, address string, cmd *exec.Cmd) (end func(), err error) {
	// A file and no pipe: what a server leaves running would hold a pipe open.
	said, err := os.Create(filepath.Join(dir, filepath.Base(cmd.Path)+".said"))
	if err != nil {
		return nil, err
	}
	defer said.Close()
	cmd.Stdout, cmd.Stderr = said, said
	if err := cmd.Start(); err != nil {
		return nil, err
	}
	done := make(chan struct{})
	go func() { _ = cmd.Wait(); close(done) }()
	for range 1500 {
		if conn, err := net.Dial("tcp", address); err == nil {
			conn.Close()
			return func() { ended(cmd.Process, done) }, nil
		}
		select {
		case <-done:
			text, _ := os.ReadFile(said.Name())
			return nil, fmt.Errorf("%s has ended: %s", cmd.Path, text)
		case <-time.After(20 * time.Millisecond):
		}
	}
	ended(cmd.Process, done)
	return nil, fmt.Errorf("%s does not answer", cmd.Path)
}

// ended asks a server to end, with what it started itself, and makes it end where it does not.
func ended(p *os.Process, done <-chan struct{}) {
	_ = p.Signal(syscall.SIGTERM)
	select {
	case <-done:
	case <-time.After(3 * time.Second):
		_ = p.Kill()
		<-done
	}
}
