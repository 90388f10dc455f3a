//go:build unix

package send

import (
	"fmt"
	"net"
	"os"
	"os/exec"
	"os/user"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"
)

var later = time.Date(2026, 12, 24, 18, 0, 0, 0, time.UTC)

// sshd is a server of OpenSSH on this machine, with keys of its own.
type sshd struct {
	address          string // host and port
	user, key, known string
}

// startSSH starts one, whose SFTP server gets further arguments.
func startSSH(t testing.TB, args ...string) *sshd {
	t.Helper()
	program, err := exec.LookPath("/usr/sbin/sshd")
	if err != nil {
		t.Fatalf("%v: run testdata/oracles/setup", err)
	}
	if os.Getuid() == 0 {
		_ = os.MkdirAll("/run/sshd", 0o755) // it wants it, where no service made it
	}
	me, err := user.Current()
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	s := &sshd{address: freePort(t), user: me.Username, key: filepath.Join(dir, "key"), known: filepath.Join(dir, "known")}
	for _, name := range []string{"host", "key"} {
		if out, err := exec.Command("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-f", filepath.Join(dir, name)).CombinedOutput(); err != nil {
			t.Fatalf("%v: %s: run testdata/oracles/setup", err, out)
		}
	}
	_, port, _ := net.SplitHostPort(s.address)
	conf := fmt.Sprintf("ListenAddress 127.0.0.1\nPort %s\nHostKey %s/host\nAuthorizedKeysFile %s/key.pub\nPidFile none\nUsePAM no\nStrictModes no\n"+
		"PermitRootLogin prohibit-password\nPasswordAuthentication no\nMaxStartups 100\nUseDNS no\nSubsystem sftp internal-sftp %s\n", port, dir, dir, strings.Join(args, " "))
	if err := os.WriteFile(filepath.Join(dir, "conf"), []byte(conf), 0o600); err != nil {
		t.Fatal(err)
	}
	host, err := os.ReadFile(filepath.Join(dir, "host.pub"))
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(s.known, []byte("[127.0.0.1]:"+port+" "+string(host)), 0o600); err != nil {
		t.Fatal(err)
	}
	started(t, s.address, exec.Command(program, "-D", "-e", "-f", filepath.Join(dir, "conf")))
	return s
}

func (s *sshd) access() Access {
	return Access{Disk: afero.NewOsFs(), User: s.user, KeyFile: s.key, KnownHosts: s.known}
}

// open reaches a folder there.
func (s *sshd) open(t testing.TB, dir string) Target {
	t.Helper()
	to, err := Open("sftp://"+s.address+dir, s.access())
	if err != nil {
		t.Fatal(err)
	}
	return to
}

// freePort is an address on this machine at which nobody listens.
func freePort(t testing.TB) string {
	t.Helper()
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer l.Close()
	return l.Addr().String()
}

// started starts a server and waits until it answers; it ends with the test.
func started(t testing.TB, address string, cmd *exec.Cmd) {
	t.Helper()
	var said strings.Builder
	cmd.Stdout, cmd.Stderr = &said, &said
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	done := make(chan error, 1)
	go func() { done <- cmd.Wait() }()
	t.Cleanup(func() {
		_ = cmd.Process.Kill()
		<-done
	})
	for range 500 {
		if conn, err := net.Dial("tcp", address); err == nil {
			conn.Close()
			return
		}
		select {
		case err := <-done:
			done <- err
			t.Fatalf("%s: %v: %s", cmd.Path, err, said.String())
		case <-time.After(20 * time.Millisecond):
		}
	}
	t.Fatalf("%s does not answer", cmd.Path)
}
