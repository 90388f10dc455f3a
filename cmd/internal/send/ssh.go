package send

import (
	"crypto/rand"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"net"
	"net/url"
	"os"
	"path"
	"strings"
	"time"

	"github.com/pkg/sftp"
	"golang.org/x/crypto/ssh"
)

// forgotten is how old what was written and never took its name has to be to be taken
// away, by the clock of the server: another publish may still be at it.
const forgotten = time.Hour

// overSSH is a target on another machine that is reached over SFTP (version 3 of the
// draft, with the extensions of OpenSSH where there are any).
func overSSH(at *url.URL, a Access) (Target, error) {
	dir, err := folderOn(at)
	if err != nil {
		return nil, err
	}
	conn, err := dialSSH(at, a)
	if err != nil {
		return nil, err
	}
	client, err := sftp.NewClient(conn)
	if err != nil {
		conn.Close()
		return nil, fmt.Errorf("%s takes the key and offers no SFTP: %w", at.Host, err)
	}
	shut := func() error { return errors.Join(client.Close(), conn.Close()) }
	if strings.HasPrefix(dir, "~/") {
		home, err := client.Getwd()
		if err != nil {
			_ = shut()
			return nil, fmt.Errorf("%s does not say which folder is home: %w", at.Host, err)
		}
		dir = path.Join(home, dir[2:])
	}
	disk := remote{Client: client}
	_, disk.replaces = client.HasExtension("posix-rename@openssh.com")
	_, disk.syncs = client.HasExtension("fsync@openssh.com")
	t := &tree{disk: disk, dir: dir, shut: shut, token: rand.Text()}
	if !disk.replaces {
		t.remarks = append(t.remarks, at.Host+" cannot replace a file by another at once: each calendar is away for a moment while it is replaced")
	}
	t.hold = func() (func(), error) {
		if err := t.folder(dir); err != nil {
			return nil, err
		}
		// Nothing here can be locked: a lock that outlives its connection would keep
		// everybody away for ever. Each file is the last one's, whole.
		return t.sweepForgotten, nil
	}
	return t, nil
}

// folderOn is the folder that an address names: from the root, or from home where it
// begins with a tilde.
func folderOn(at *url.URL) (string, error) {
	dir := path.Clean("/" + at.Path)
	if rest, ok := strings.CutPrefix(dir, "/~/"); ok {
		return "~/" + rest, nil
	}
	if dir == "/" {
		return "", fmt.Errorf("%w; this one names no folder: write sftp://%s/srv/www/feeds, or sftp://%s/~/feeds for one in your home there", ErrAddress, at.Host, at.Host)
	}
	return dir, nil
}

// sweepForgotten takes away what publishes that were cut off left behind, as the clock of
// the server has it, which the manifest shows.
func (t *tree) sweepForgotten() {
	if info, err := t.disk.Lstat(t.path(manifestName)); err == nil {
		t.sweep(info.ModTime().Add(-forgotten))
	}
}

// remote is the disk of another machine.
type remote struct {
	*sftp.Client
	replaces, syncs bool
}

func (d remote) Open(path string) (io.ReadCloser, error) { return d.Client.Open(path) }
func (d remote) Mkdir(path string, _ os.FileMode) error  { return d.Client.Mkdir(path) } // the mode is given after
func (d remote) List(dir string) ([]os.FileInfo, error)  { return d.ReadDir(dir) }
func (d remote) Settle(string) error                     { return nil } // SFTP has no word for it

func (d remote) Make(path string, _ os.FileMode) (file, error) {
	f, err := d.Client.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL)
	if err != nil {
		return nil, err
	}
	return remoteFile{f, d.syncs}, nil
}

// Rename replaces what has the new name. Servers that have no word for that refuse it
// while something has the name.
func (d remote) Rename(from, to string) error {
	if d.replaces {
		return d.PosixRename(from, to)
	}
	err := d.Client.Rename(from, to)
	if err == nil {
		return nil
	}
	if _, e := d.Lstat(to); e != nil {
		return err
	}
	if err := d.Remove(to); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return d.Client.Rename(from, to)
}

// remoteFile is a file there that is being written.
type remoteFile struct {
	*sftp.File
	syncs bool
}

func (f remoteFile) Sync() error {
	if !f.syncs {
		return nil
	}
	return f.File.Sync()
}

// watched is a connection that ends when the server is silent for too long.
type watched struct {
	net.Conn
	patience time.Duration
}

func (c watched) Read(p []byte) (int, error) {
	_ = c.SetReadDeadline(time.Now().Add(c.patience))
	return c.Conn.Read(p)
}

func (c watched) Write(p []byte) (int, error) {
	_ = c.SetWriteDeadline(time.Now().Add(c.patience))
	return c.Conn.Write(p)
}

// dialSSH connects to a server whose key is known, and shows it ours.
func dialSSH(at *url.URL, a Access) (*ssh.Client, error) {
	user := at.User.Username()
	if user == "" {
		user = a.User
	}
	port := at.Port()
	if port == "" {
		port = "22"
	}
	address := net.JoinHostPort(at.Hostname(), port)
	keys, err := ourKeys(a)
	if err != nil {
		return nil, err
	}
	host, err := knownHost(address, a.KnownHosts)
	if err != nil {
		return nil, err
	}
	plain, err := net.DialTimeout("tcp", address, a.patience())
	if err != nil {
		return nil, unreached(address, err)
	}
	conn, channels, requests, err := ssh.NewClientConn(watched{plain, a.patience()}, address, &ssh.ClientConfig{
		User: user, Auth: []ssh.AuthMethod{keys},
		HostKeyCallback: host.check, HostKeyAlgorithms: host.algorithms,
	})
	if err != nil {
		plain.Close()
		return nil, host.refused(err, user)
	}
	return ssh.NewClient(conn, channels, requests), nil
}
