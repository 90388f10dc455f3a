//go:build unix

// Package servers starts servers on this machine that others wrote, so that tests can send
// to them and be served by them as the program will be. It is for tests only.
package servers

import (
	"fmt"
	"net"
	"os"
	"os/exec"
	"os/user"
	"path/filepath"
	"strings"
	"testing"

	"vivary/internal/oracles"
)

// SSHD is a server of OpenSSH, with keys of its own.
type SSHD struct {
	Address string // host and port
	User    string // who may come in, with the key
	Key     string // the file of the private one
	Known   string // a file of known servers that has it
}

// SSH starts one, whose SFTP server gets further arguments. It ends with the test.
func SSH(t testing.TB, args ...string) *SSHD {
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
	s := &SSHD{Address: FreePort(t), User: me.Username, Key: filepath.Join(dir, "key"), Known: filepath.Join(dir, "known")}
	for _, name := range []string{"host", "key"} {
		if out, err := exec.Command("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-f", filepath.Join(dir, name)).CombinedOutput(); err != nil {
			t.Fatalf("%v: %s: run testdata/oracles/setup", err, out)
		}
	}
	_, port, _ := net.SplitHostPort(s.Address)
	conf := fmt.Sprintf("ListenAddress 127.0.0.1\nPort %s\nHostKey %s/host\nAuthorizedKeysFile %s/key.pub\nPidFile none\nUsePAM no\nStrictModes no\n"+
		"PermitRootLogin prohibit-password\nPasswordAuthentication no\nMaxStartups 100\nUseDNS no\nSubsystem sftp internal-sftp %s\n", port, dir, dir, strings.Join(args, " "))
	if err := os.WriteFile(filepath.Join(dir, "conf"), []byte(conf), 0o600); err != nil {
		t.Fatal(err)
	}
	host, err := os.ReadFile(filepath.Join(dir, "host.pub"))
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(s.Known, []byte("[127.0.0.1]:"+port+" "+string(host)), 0o600); err != nil {
		t.Fatal(err)
	}
	Started(t, s.Address, exec.Command(program, "-D", "-e", "-f", filepath.Join(dir, "conf")))
	return s
}

// Store is a server of object storage that speaks S3 and keeps each object in a file.
type Store struct {
	Address string // host and port
	Dir     string // in it the folders of its buckets
}

// The words by which it knows us are nobody's.
const (
	StoreKey    = "keeper"
	StoreSecret = "not-a-secret-of-anybody"
)

// Objects starts one with a bucket. It ends with the test.
func Objects(t testing.TB, bucket string) *Store {
	t.Helper()
	program := filepath.Join(oracles.Folder(t), "bin", "versitygw")
	if _, err := os.Stat(program); err != nil {
		t.Fatalf("%v: run testdata/oracles/setup", err)
	}
	s := &Store{FreePort(t), t.TempDir()}
	if err := os.Mkdir(filepath.Join(s.Dir, bucket), 0o755); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(program, "--quiet", "--port", s.Address, "posix", s.Dir)
	cmd.Env = []string{"ROOT_ACCESS_KEY=" + StoreKey, "ROOT_SECRET_KEY=" + StoreSecret, "HOME=" + s.Dir}
	Started(t, s.Address, cmd)
	return s
}
