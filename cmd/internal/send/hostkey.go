package send

import (
	"crypto/ed25519"
	"errors"
	"fmt"
	"io/fs"
	"net"
	"os"
	"strings"

	"github.com/spf13/afero"
	"golang.org/x/crypto/ssh"
	"golang.org/x/crypto/ssh/agent"
	"golang.org/x/crypto/ssh/knownhosts"
)

// ourKeys are the keys that are shown to a server: the one in the file that was named, or
// those of the agent.
func ourKeys(a Access) (ssh.AuthMethod, error) {
	if a.KeyFile != "" {
		text, err := afero.ReadFile(a.Disk, a.KeyFile)
		if err != nil {
			return nil, fmt.Errorf("the key %q cannot be read: %w", a.KeyFile, err)
		}
		key, err := ssh.ParsePrivateKey(text)
		switch {
		case errors.As(err, new(*ssh.PassphraseMissingError)):
			return nil, fmt.Errorf("the key %q has a passphrase: hand it to the agent (ssh-add %s), and leave out --ssh-key", a.KeyFile, a.KeyFile)
		case err != nil:
			return nil, fmt.Errorf("%q is no private key of SSH (%v): name the file without .pub", a.KeyFile, err)
		}
		return ssh.PublicKeys(key), nil
	}
	if a.Agent == "" {
		return nil, errors.New("there is no key to show to the server: start ssh-agent and hand it one with ssh-add, or name the file with --ssh-key")
	}
	conn, err := net.DialTimeout("unix", a.Agent, a.patience())
	if err != nil {
		return nil, fmt.Errorf("the agent of SSH does not answer: start it again, or name a key with --ssh-key: %w", err)
	}
	return ssh.PublicKeysCallback(agent.NewClient(watched{conn, a.patience()}).Signers), nil
}

// host is a server, and what is known of its keys.
type host struct {
	address, file string
	known         ssh.HostKeyCallback
	algorithms    []string // of the keys that are known of it

	wrong error // with the key that it showed
}

// knownHost reads what is known of a server. That none is known is said when its key has
// been seen, with the line to add.
func knownHost(address, file string) (*host, error) {
	h := &host{address: address, file: file}
	known, err := knownhosts.New(file)
	if errors.Is(err, fs.ErrNotExist) {
		known, err = func(string, net.Addr, ssh.PublicKey) error { return &knownhosts.KeyError{} }, nil
	}
	if err != nil {
		return nil, fmt.Errorf("the keys of servers in %q cannot be read: %w", file, err)
	}
	h.known = known
	// A key that no server has is not known, and the answer says which are. Asked for
	// another one, a server would show one that is not known, though it has one that is.
	public, _, _ := ed25519.GenerateKey(nil)
	if none, err := ssh.NewPublicKey(public); err == nil {
		var e *knownhosts.KeyError
		if errors.As(known(address, &net.TCPAddr{}, none), &e) {
			for _, k := range e.Want {
				h.algorithms = append(h.algorithms, algorithmsOf(k.Key.Type())...)
			}
		}
	}
	return h, nil
}

// algorithmsOf are those by which a key of a type signs.
func algorithmsOf(key string) []string {
	if key == ssh.KeyAlgoRSA {
		return []string{ssh.KeyAlgoRSASHA512, ssh.KeyAlgoRSASHA256} // SHA-1 is broken
	}
	return []string{key}
}

// check holds that a server is the one that is known, and says what to do where it is not.
func (h *host) check(address string, at net.Addr, key ssh.PublicKey) error {
	err := h.known(address, at, key)
	if err == nil {
		return nil
	}
	finger := strings.ToLower(strings.TrimPrefix(key.Type(), "ssh-")) + " " + ssh.FingerprintSHA256(key)
	var e *knownhosts.KeyError
	switch {
	case errors.As(err, &e) && len(e.Want) == 0:
		h.wrong = fmt.Errorf("the key of %s is not known: nothing was sent. It shows %s. Ask whoever runs it whether that is its key; if it is, add this line to %s:\n%s",
			h.address, finger, h.file, knownhosts.Line([]string{h.address}, key))
	case errors.As(err, &e):
		h.wrong = fmt.Errorf("%s shows another key (%s) than the one in line %d of %s: nothing was sent. Either it was set up anew, or somebody stands between; ask whoever runs it before you change that line",
			h.address, finger, e.Want[0].Line, e.Want[0].Filename)
	default:
		h.wrong = fmt.Errorf("the key of %s is not trusted: nothing was sent: %w", h.address, err)
	}
	return h.wrong
}

// refused says why no connection came about.
func (h *host) refused(err error, user string) error {
	switch text := err.Error(); {
	case h.wrong != nil:
		return h.wrong
	case strings.Contains(text, "unable to authenticate"):
		return fmt.Errorf("%s takes none of the keys that it was shown for the user %q: its owner has to add the public one to authorized_keys there, or another key has to be named with --ssh-key", h.address, user)
	case strings.Contains(text, "no common algorithm for host key") && h.algorithms != nil:
		return fmt.Errorf("%s has none of the keys that %s has of it any more: ask whoever runs it for the one that it has now", h.address, h.file)
	case errors.Is(err, os.ErrDeadlineExceeded):
		return fmt.Errorf("%s answers and then says nothing: is it a server of SSH?", h.address)
	case lost(err):
		return fmt.Errorf("%s ended the connection before it let anybody in: try again, and if it stays so, ask whoever runs it", h.address)
	}
	return fmt.Errorf("%s lets nobody in: %w", h.address, err)
}
