package silence

import (
	"context"
	"encoding/base64"
	"errors"
	"fmt"
	"net"
	netmail "net/mail"
	"strconv"
	"strings"
	"time"

	"github.com/wneessen/go-mail"

	"vivary/cmd/internal/keys"
	"vivary/schema/civil"
)

// patience is how long one letter may take, from the connection to the server's last word.
const patience = time.Minute

// usualUrgentAt is when it is told what is urgent, where the keys do not say.
const usualUrgentAt = civil.Clock(10 * 60)

// Post sends letters as the mail block of a file of keys says.
type Post struct {
	keys.Mail
	host string
	port int
	at   civil.Clock
}

// NewPost reads a mail block. The error says what is wrong in it, and never the password.
func NewPost(m keys.Mail) (*Post, error) {
	p := &Post{Mail: m, at: usualUrgentAt}
	host, port, err := net.SplitHostPort(m.Server)
	if err == nil {
		p.host = host
		p.port, err = strconv.Atoi(port)
	}
	switch {
	case err != nil || p.host == "" || p.port < 1 || p.port > 65535:
		return nil, fmt.Errorf("server is the name of a mail server and its port, such as smtp.quillmoor.example:587, and not %q", m.Server)
	case p.port == 465:
		return nil, errors.New("port 465 encrypts otherwise: say port 587 of the same server")
	case m.Plain && !loopback(p.host):
		return nil, fmt.Errorf("plain = true sends everything unencrypted, and is for a mail server on this machine only (127.0.0.1 or localhost), not for %s: leave it out", p.host)
	case m.Password != "" && m.User == "":
		return nil, errors.New("a password without a user: say user as well")
	}
	for _, address := range append([]string{m.From}, m.To...) {
		if _, err := netmail.ParseAddress(address); err != nil {
			return nil, fmt.Errorf("%q is no mail address", address)
		}
	}
	if m.UrgentAt != "" {
		if p.at, err = civil.ParseClock(m.UrgentAt); err != nil {
			return nil, fmt.Errorf("urgent_at: %w", err)
		}
	}
	return p, nil
}

// UrgentClock is the time of day from which on it is told what is urgent.
func (p *Post) UrgentClock() civil.Clock { return p.at }

// loopback reports whether a name is that of the same machine.
func loopback(host string) bool {
	ip := net.ParseIP(host)
	return strings.EqualFold(host, "localhost") || ip != nil && ip.IsLoopback()
}

// By names the server, and who sends by it.
func (p *Post) By() string { return strings.Join([]string{p.Server, p.User, p.From}, " ") }

// Send sends a letter.
func (p *Post) Send(ctx context.Context, l Letter) error {
	msg, err := p.message(l)
	if err != nil {
		return p.veiled(err)
	}
	ctx, cancel := context.WithTimeout(ctx, patience)
	defer cancel()
	client, err := mail.NewClient(p.host, p.options(ctx)...)
	if err != nil {
		return p.veiled(err)
	}
	conn, err := client.DialToSMTPClientWithContext(ctx)
	if err != nil {
		return fmt.Errorf("%w by %s: %w", ErrUnreachable, p.Server, p.veiled(err))
	}
	defer func() { _ = client.CloseWithSMTPClient(conn) }() // it is sent by then, or not
	err = client.SendWithSMTPClient(conn, msg)
	switch {
	case err == nil, msg.IsDelivered(): // what a server says once it has taken it does not matter
		return nil
	case forGood(err):
		return fmt.Errorf("%w: %w", ErrRefused, p.veiled(err, l.To))
	}
	return p.veiled(err, l.To)
}

// forGood reports whether a server refuses whom a letter is to, or the letter, for good (RFC
// 5321, 4.2.1). That it refuses who sends is about no letter, and may be put right any moment.
func forGood(err error) bool {
	var of *mail.SendError
	if !errors.As(err, &of) || of.ErrorCode()/100 != 5 {
		return false
	}
	return of.Reason == mail.ErrSMTPRcptTo || of.Reason == mail.ErrSMTPData || of.Reason == mail.ErrSMTPDataClose
}

func (p *Post) message(l Letter) (*mail.Msg, error) {
	msg := mail.NewMsg()
	if err := errors.Join(msg.From(p.From), msg.To(l.To)); err != nil {
		return nil, err
	}
	msg.Subject(l.Subject)
	msg.SetDate()
	msg.SetMessageID()
	msg.SetGenHeader("Auto-Submitted", "auto-generated") // no machine answers it (RFC 3834, 5)
	msg.SetBodyString(mail.TypeTextPlain, l.Text)
	return msg, nil
}

// options encrypt the connection, or keep one that is not on this machine.
func (p *Post) options(ctx context.Context) []mail.Option {
	out := []mail.Option{mail.WithPort(p.port), mail.WithTimeout(patience), mail.WithDialContextFunc(p.dialled(ctx)), mail.WithTLSPolicy(mail.TLSMandatory)}
	as := mail.SMTPAuthAutoDiscover
	if p.Plain {
		as = mail.SMTPAuthPlain
		out = append(out, mail.WithTLSPolicy(mail.NoTLS))
	}
	if p.User != "" {
		out = append(out, mail.WithSMTPAuth(as), mail.WithUsername(p.User), mail.WithPassword(p.Password))
	}
	return out
}

// dialled connects. The library bounds how long it takes to connect only: a server that then
// says nothing is left too, and any is when whole ends.
func (p *Post) dialled(whole context.Context) mail.DialContextFunc {
	return func(ctx context.Context, network, address string) (net.Conn, error) {
		conn, err := new(net.Dialer).DialContext(ctx, network, address)
		if err != nil {
			return nil, err
		}
		if at, ok := conn.RemoteAddr().(*net.TCPAddr); p.Plain && (!ok || !at.IP.IsLoopback()) {
			return nil, errors.Join(errors.New("plain = true is for a mail server on this machine only"), conn.Close())
		}
		context.AfterFunc(whole, func() { _ = conn.Close() })
		return conn, nil
	}
}

// veiled is an error without the password and without some addresses, whatever a server said,
// and not longer than a line.
func (p *Post) veiled(err error, addresses ...string) error {
	if err == nil {
		return nil
	}
	text := strings.Join(strings.Fields(err.Error()), " ")
	if p.Password != "" {
		coded := base64.StdEncoding.EncodeToString
		for _, secret := range []string{p.Password, coded([]byte(p.Password)), coded([]byte("\x00" + p.User + "\x00" + p.Password))} {
			text = strings.ReplaceAll(text, secret, "(password)")
		}
	}
	for _, address := range addresses {
		if a, err := netmail.ParseAddress(address); err == nil {
			text = strings.ReplaceAll(text, a.Address, "(address)")
		}
	}
	if r := []rune(text); len(r) > 300 {
		text = string(r[:300])
	}
	return errors.New(text)
}
