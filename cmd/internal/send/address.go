package send

import (
	"errors"
	"fmt"
	"net/url"
	"regexp"
	"strings"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
)

// Access is what the machine and the command line give to reach a target.
type Access struct {
	Disk afero.Fs
	Lock publish.Lock // of folders of this machine; nil for none

	User       string // of SFTP, where the address names none
	KeyFile    string // the private key of SSH; "" for those of the agent
	Agent      string // its socket; "" for none
	KnownHosts string // the file of keys of servers

	Patience time.Duration // how long a server that is silent is waited for; 0 for a minute

	Endpoint string // of object storage, such as https://objects.example
	Region   string
	Gzip     bool // objects are stored compressed
}

// schemes are the beginnings of addresses that are understood.
const schemes = "a folder, sftp://USER@HOST/FOLDER or s3://BUCKET/PREFIX"

// copied is how programs that copy files are told of another machine: HOST:/FOLDER.
var copied = regexp.MustCompile(`^(?:[^/\\:]+@[^/\\:]+|[^/\\:]{2,}):(?:[^/]|/[^/])`)

// ErrAddress says that an address cannot be understood.
var ErrAddress = errors.New("a target is " + schemes)

func (a Access) patience() time.Duration {
	if a.Patience > 0 {
		return a.Patience
	}
	return time.Minute
}

// Open reaches the target of an address. An error that wraps ErrAddress is about the
// address.
func Open(address string, a Access) (Target, error) {
	if copied.MatchString(address) {
		return nil, fmt.Errorf("%w; for a folder on another machine write sftp://USER@HOST/FOLDER", ErrAddress)
	}
	if !strings.Contains(address, "://") {
		if a.Gzip {
			return nil, fmt.Errorf("%w; in a folder each calendar has a compressed one beside it, and --gzip is for s3:// only", ErrAddress)
		}
		return folder(a.Disk, address, a.Lock)
	}
	at, err := url.Parse(address)
	if err != nil {
		// The error of the library has the address, and that may have a password.
		return nil, fmt.Errorf("%w; this one cannot be read", ErrAddress)
	}
	if _, has := at.User.Password(); has {
		return nil, fmt.Errorf("%w, and no password stands in it: addresses are shown and kept in logs; use a key", ErrAddress)
	}
	switch {
	case at.RawQuery != "" || at.Fragment != "":
		return nil, fmt.Errorf("%w, without ? and #", ErrAddress)
	case at.Host == "":
		return nil, fmt.Errorf("%w; this one has nothing after ://", ErrAddress)
	case at.Scheme == "sftp" && a.Gzip:
		return nil, fmt.Errorf("%w; over SFTP each calendar has a compressed one beside it, and --gzip is for s3:// only", ErrAddress)
	case at.Scheme == "sftp":
		return overSSH(at, a)
	case at.Scheme == "s3" && at.User != nil:
		return nil, fmt.Errorf("%w, and no key stands in it: it is taken from AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY, or from ~/.aws/credentials", ErrAddress)
	case at.Scheme == "s3":
		return bucketAt(at, a)
	}
	return nil, fmt.Errorf("%w; %q is none of them", ErrAddress, at.Scheme+"://")
}
