//go:build unix

package send

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/spf13/afero"

	"vivary/internal/oracles"
)

// store is an S3 server on this machine, which keeps each object in a file: another
// program than the library that speaks to it.
type store struct{ address, dir string }

// The words by which it knows us are nobody's.
const (
	testKey    = "keeper"
	testSecret = "not-a-secret-of-anybody"
)

// startStore starts one with the bucket care.
func startStore(t testing.TB) *store {
	t.Helper()
	program := filepath.Join(oracles.Folder(t), "bin", "versitygw")
	if _, err := os.Stat(program); err != nil {
		t.Fatalf("%v: run testdata/oracles/setup", err)
	}
	s := &store{freePort(t), t.TempDir()}
	if err := os.Mkdir(filepath.Join(s.dir, "care"), 0o755); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(program, "--quiet", "--port", s.address, "posix", s.dir)
	cmd.Env = []string{"ROOT_ACCESS_KEY=" + testKey, "ROOT_SECRET_KEY=" + testSecret, "HOME=" + s.dir}
	started(t, s.address, cmd)
	t.Setenv("AWS_ACCESS_KEY_ID", testKey)
	t.Setenv("AWS_SECRET_ACCESS_KEY", testSecret)
	return s
}

func (s *store) open(t testing.TB, address string) Target {
	t.Helper()
	to, err := Open(address, Access{Disk: afero.NewOsFs(), Endpoint: "http://" + s.address})
	if err != nil {
		t.Fatal(err)
	}
	return to
}
