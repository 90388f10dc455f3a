// Package postbox is a mail server for tests, on this machine: it speaks SMTP by a library
// that shares no code with what sends mail, and keeps what it is given.
package postbox

import (
	"bytes"
	"crypto/ecdsa"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/tls"
	"crypto/x509"
	"encoding/pem"
	"errors"
	"io"
	"math/big"
	"net"
	"net/mail"
	"os"
	"path/filepath"
	"sync"
	"testing"
	"time"

	"github.com/emersion/go-sasl"
	"github.com/emersion/go-smtp"
)

// Letter is a mail as it came.
type Letter struct {
	From, To string
	Subject  string
	Header   mail.Header
	Raw      string
	User     string // who signed in, "" for nobody
	TLS      bool
}

// Box is a server and what it was given.
type Box struct {
	Addr string
	// Password is that of the user "vivary"; "" where nobody signs in.
	Password string

	srv *smtp.Server
	l   net.Listener
	mu  sync.Mutex
	got []Letter
	no  map[string]int
}

// Open starts a server at an address, "" for a free one. With a certificate it offers to
// encrypt.
func Open(t *testing.T, addr, password string, c *tls.Config) *Box {
	t.Helper()
	if addr == "" {
		addr = "127.0.0.1:0"
	}
	l, err := net.Listen("tcp", addr)
	if err != nil {
		t.Fatal(err)
	}
	b := &Box{Addr: l.Addr().String(), l: l, Password: password, no: map[string]int{}}
	b.srv = smtp.NewServer(b)
	b.srv.Domain, b.srv.TLSConfig, b.srv.AllowInsecureAuth = "localhost", c, true
	go func() { _ = b.srv.Serve(l) }() // it ends with Close
	t.Cleanup(b.Close)
	return b
}

// Close ends it.
func (b *Box) Close() {
	_ = b.srv.Close()
	_ = b.l.Close() // the server may not have begun with it
}

// Refuse refuses mail to an address from now on, with a code: 550 for good, 450 for a while
// (RFC 5321, 4.2.1). 0 takes it again.
func (b *Box) Refuse(address string, code int) {
	b.mu.Lock()
	defer b.mu.Unlock()
	b.no[address] = code
}

// Take returns what came since it was asked last.
func (b *Box) Take() []Letter {
	b.mu.Lock()
	defer b.mu.Unlock()
	out := b.got
	b.got = nil
	return out
}

// NewSession is what the library asks for with each connection.
func (b *Box) NewSession(c *smtp.Conn) (smtp.Session, error) { return &session{box: b, conn: c}, nil }

type session struct {
	box      *Box
	conn     *smtp.Conn
	user     string
	from, to string
}

func (s *session) AuthMechanisms() []string {
	if s.box.Password == "" {
		return nil
	}
	return []string{sasl.Plain}
}

func (s *session) Auth(string) (sasl.Server, error) {
	return sasl.NewPlainServer(func(_, user, password string) error {
		if user != "vivary" || password != s.box.Password {
			return errors.New("not let in: " + user + " with " + password) // some servers say too much
		}
		s.user = user
		return nil
	}), nil
}

func (s *session) Mail(from string, _ *smtp.MailOptions) error {
	if s.box.Password != "" && s.user == "" {
		return smtp.ErrAuthRequired
	}
	s.from = from
	return nil
}

func (s *session) Rcpt(to string, _ *smtp.RcptOptions) error {
	s.box.mu.Lock()
	defer s.box.mu.Unlock()
	if code := s.box.no[to]; code > 0 {
		return &smtp.SMTPError{Code: code, EnhancedCode: smtp.EnhancedCode{code / 100, 1, 1}, Message: "<" + to + "> is nobody here"}
	}
	s.to = to
	return nil
}

func (s *session) Data(r io.Reader) error {
	raw, err := io.ReadAll(r)
	if err != nil {
		return err
	}
	m, err := mail.ReadMessage(bytes.NewReader(raw))
	if err != nil {
		return err
	}
	_, encrypted := s.conn.TLSConnectionState()
	s.box.mu.Lock()
	defer s.box.mu.Unlock()
	s.box.got = append(s.box.got, Letter{s.from, s.to, m.Header.Get("Subject"), m.Header, string(raw), s.user, encrypted})
	return nil
}

func (s *session) Reset()        {}
func (s *session) Logout() error { return nil }

// Certificate makes a certificate for 127.0.0.1 that this process trusts from now on: it has
// to be made before anything else asks whom the system trusts, in TestMain.
func Certificate(dir string) (*tls.Config, error) {
	key, err := ecdsa.GenerateKey(elliptic.P256(), rand.Reader)
	if err != nil {
		return nil, err
	}
	form := &x509.Certificate{SerialNumber: big.NewInt(1), NotBefore: time.Now().Add(-time.Hour), NotAfter: time.Now().Add(24 * time.Hour),
		IPAddresses: []net.IP{net.IPv4(127, 0, 0, 1)}, IsCA: true, BasicConstraintsValid: true, KeyUsage: x509.KeyUsageDigitalSignature | x509.KeyUsageCertSign}
	der, err := x509.CreateCertificate(rand.Reader, form, form, key.Public(), key)
	if err != nil {
		return nil, err
	}
	file := filepath.Join(dir, "authority.pem")
	if err := os.WriteFile(file, pem.EncodeToMemory(&pem.Block{Type: "CERTIFICATE", Bytes: der}), 0o600); err != nil {
		return nil, err
	}
	if err := os.Setenv("SSL_CERT_FILE", file); err != nil {
		return nil, err
	}
	return &tls.Config{Certificates: []tls.Certificate{{Certificate: [][]byte{der}, PrivateKey: key}}}, nil
}
