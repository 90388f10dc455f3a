//go:build unix

package send

import (
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/internal/servers"
)

var later = time.Date(2026, 12, 24, 18, 0, 0, 0, time.UTC)

// startSSH starts a server of SFTP.
func startSSH(t testing.TB, args ...string) *sshd { return &sshd{servers.SSH(t, args...)} }

type sshd struct{ *servers.SSHD }

func (s *sshd) access() Access {
	return Access{Disk: afero.NewOsFs(), User: s.User, KeyFile: s.Key, KnownHosts: s.Known}
}

// open reaches a folder there.
func (s *sshd) open(t testing.TB, dir string) Target {
	t.Helper()
	to, err := Open("sftp://"+s.Address+dir, s.access())
	if err != nil {
		t.Fatal(err)
	}
	return to
}

// startStore starts object storage with the bucket care, of which this process has the key.
func startStore(t testing.TB) *store {
	t.Setenv("AWS_ACCESS_KEY_ID", servers.StoreKey)
	t.Setenv("AWS_SECRET_ACCESS_KEY", servers.StoreSecret)
	return &store{servers.Objects(t, "care")}
}

type store struct{ *servers.Store }

func (s *store) open(t testing.TB, address string) Target {
	t.Helper()
	to, err := Open(address, Access{Disk: afero.NewOsFs(), Endpoint: "http://" + s.Address})
	if err != nil {
		t.Fatal(err)
	}
	return to
}
