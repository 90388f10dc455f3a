package send

import (
	"errors"
	"fmt"
	"io"
	"net"
	"os"
	"strings"
	"syscall"

	"github.com/pkg/sftp"
)

// unreached says why a server could not be reached.
func unreached(address string, err error) error {
	var lookup *net.DNSError
	var wait net.Error
	switch {
	case errors.As(err, &lookup):
		return fmt.Errorf("no machine is called %q, as far as is known here: is it spelt right, and is this machine on the net?", lookup.Name)
	case errors.Is(err, syscall.ECONNREFUSED):
		return fmt.Errorf("nothing answers at %s: is that the right machine and port?", address)
	case errors.As(err, &wait) && wait.Timeout(), errors.Is(err, syscall.EHOSTUNREACH), errors.Is(err, syscall.ENETUNREACH):
		return fmt.Errorf("%s cannot be reached: is this machine on the net, and does a firewall let it through?", address)
	}
	if lost(err) {
		return fmt.Errorf("%s ended the connection. What had come to stand there stands; publish again for the rest", address)
	}
	return fmt.Errorf("%s cannot be reached: %w", address, err)
}

// Words is an error in a keeper's words, where only the words of a protocol are known of it.
func Words(err error) error {
	var status *sftp.StatusError
	switch {
	case err == nil:
		return nil
	case errors.As(err, &status):
		// Of a full disk, too, SFTP says no more than that it failed.
		return said{err, strings.Replace(err.Error(), status.Error(), "the server does not do it and does not say why; a full disk is one reason", 1)}
	case lost(err):
		return said{err, "the connection was lost. What had come to stand there stands; publish again for the rest"}
	case errors.Is(err, os.ErrDeadlineExceeded):
		return said{err, "the server says nothing any more. What had come to stand there stands; publish again for the rest"}
	}
	return err
}

// lost reports whether a connection ended in the midst of something.
func lost(err error) bool {
	for _, e := range []error{sftp.ErrSSHFxConnectionLost, net.ErrClosed, syscall.EPIPE, syscall.ECONNRESET, syscall.ECONNABORTED, io.EOF, io.ErrUnexpectedEOF} {
		if errors.Is(err, e) {
			return true
		}
	}
	return false
}

// said is an error in other words.
type said struct {
	error
	words string
}

func (s said) Error() string { return s.words }
func (s said) Unwrap() error { return s.error }
