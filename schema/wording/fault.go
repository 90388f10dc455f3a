package wording

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"syscall"
)

// Reason says in a keeper's words why a file or a folder could not be read or written:
// "you have no permission for it" for "open x: permission denied". An error that is not
// the system's says what it says. What the system calls its errors is in POSIX.1-2017,
// XBD <errno.h>.
func Reason(err error) string {
	for _, r := range reasons {
		if errors.Is(err, r.is) {
			return r.words
		}
	}
	of := systemOf(err)
	switch {
	case of.inner == nil:
		return err.Error()
	case errors.As(of.inner, new(syscall.Errno)):
		return "the system says " + strconv.Quote(of.inner.Error())
	}
	return of.inner.Error()
}

// reasons are looked through from the top: several errors of a system are one of Go's.
var reasons = []struct {
	is    error
	words string
}{
	{syscall.EISDIR, "it is a folder"},
	{syscall.ENOTDIR, "a part of its path is a file and no folder"},
	{syscall.EROFS, "the disk can only be read"},
	{syscall.ENOSPC, "the disk is full"},
	{syscall.EDQUOT, "your share of the disk is full"},
	{syscall.ELOOP, "its links lead round in a circle"},
	{syscall.ENAMETOOLONG, "its name or its path is too long"},
	{syscall.EMFILE, "too many files are open: close other programs"},
	{syscall.ENFILE, "too many files are open: close other programs"},
	{syscall.EIO, "the disk has a fault: copy what can still be read to another one"},
	{syscall.EBUSY, "another program has it open"},
	{syscall.ETXTBSY, "another program has it open"},
	{syscall.ESTALE, "the disk of the network does not answer"},
	{syscall.EXDEV, "it would have to move to another disk"},
	{syscall.ENOTEMPTY, "the folder is not empty"},
	{syscall.EINVAL, "the system takes no such name, or not there"},
	{syscall.ETIMEDOUT, "the disk of the network does not answer"},
	{fs.ErrPermission, "you have no permission for it"},
	{fs.ErrNotExist, "it is not there"},
	{fs.ErrExist, "something of that name is there already"},
	{fs.ErrClosed, "it was closed meanwhile"},
}

// FileKind says in a keeper's words what is there that is no file.
func FileKind(m fs.FileMode) string {
	switch {
	case m.IsDir():
		return "a folder"
	case m&fs.ModeNamedPipe != 0:
		return "a pipe"
	case m&fs.ModeSocket != 0:
		return "a socket"
	case m&fs.ModeSymlink != 0:
		return "a link"
	}
	return "a device"
}

// Plain is an error that says in a keeper's words what err says, wherever in its text the
// system's own words stand. What err is, it is too. A path is named where err has only the
// system's words; else whoever made err has named it.
func Plain(err error) error {
	of := systemOf(err)
	if of.inner == nil {
		return err
	}
	whole, words := err.Error(), Reason(of.inner)
	if of.path != "" && whole == of.text {
		words = strconv.Quote(filepath.ToSlash(of.path)) + ": " + words
	}
	return plain{err, strings.Replace(whole, of.text, words, 1)}
}

type plain struct {
	error
	words string
}

func (p plain) Error() string { return p.words }
func (p plain) Unwrap() error { return p.error }

// system is the system's own error within another.
type system struct {
	text  string // all that the system says
	inner error  // without what was done, and to which file; nil for none
	path  string // of the file, where that is known
}

func systemOf(err error) system {
	var p *fs.PathError
	var l *os.LinkError
	var s *os.SyscallError
	var n syscall.Errno
	switch {
	case errors.As(err, &p):
		return system{p.Error(), p.Err, p.Path}
	case errors.As(err, &l):
		return system{l.Error(), l.Err, l.New}
	case errors.As(err, &s):
		return system{s.Error(), s.Err, ""}
	case errors.As(err, &n):
		return system{n.Error(), n, ""}
	}
	for _, plain := range []error{fs.ErrPermission, fs.ErrNotExist, fs.ErrExist, fs.ErrClosed} {
		if errors.Is(err, plain) && strings.Contains(err.Error(), plain.Error()) {
			return system{plain.Error(), plain, ""}
		}
	}
	return system{}
}
