package silence

import (
	"context"
	"errors"
	"net"
	"strings"
	"testing"
	"time"

	"vivary/cmd/internal/keys"
	"vivary/internal/postbox"
)

// TestPost: a letter goes out encrypted and signed in, and comes as it was written. A server
// that does not encrypt, does not let in or says nothing gets none, and no error has the
// password in it.
func TestPost(t *testing.T) {
	const secret = "hunter2-secret"
	box := postbox.Open(t, "", secret, certified)
	m := keys.Mail{Server: box.Addr, User: "vivary", Password: secret, From: "Vivary <vivary@quillmoor.example>"}
	letter := Letter{"lead@quillmoor.example", "Größe: nothing was ticked", "Zeile eins – ä\n\n.\nthe end\n"}
	send := func(m keys.Mail) error {
		p, err := NewPost(m)
		if err != nil {
			t.Fatal(err)
		}
		err = p.Send(t.Context(), letter)
		if err != nil && strings.Contains(err.Error(), secret) {
			t.Error("the password stands in: " + err.Error())
		}
		return err
	}
	if err := send(m); err != nil {
		t.Fatal(err)
	}
	got := box.Take()
	if len(got) != 1 || !got[0].TLS || got[0].User != "vivary" || got[0].To != letter.To || got[0].From != "vivary@quillmoor.example" || got[0].Header.Get("Auto-Submitted") != "auto-generated" {
		t.Fatalf("%+v", got)
	}
	wrong := m
	wrong.Password = "another-" + secret
	if err := send(wrong); !errors.Is(err, ErrUnreachable) || strings.Contains(err.Error(), "another") {
		t.Error("let in with another password:", err)
	}
	bare := postbox.Open(t, "", secret, nil)
	m.Server = bare.Addr
	if err := send(m); err == nil || !strings.Contains(err.Error(), "STARTTLS") || len(bare.Take()) > 0 {
		t.Error("sent without encryption:", err)
	}
	m.Plain = true
	if err := send(m); err != nil {
		t.Error(err)
	}
	if got := bare.Take(); len(got) != 1 || got[0].TLS || got[0].User != "vivary" {
		t.Errorf("%+v", got)
	}
	bare.Close()
	if err := send(m); !errors.Is(err, ErrUnreachable) {
		t.Error(err)
	}
	mute, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer mute.Close()
	m.Server = mute.Addr().String()
	p, err := NewPost(m)
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithTimeout(t.Context(), 300*time.Millisecond)
	defer cancel()
	begun := time.Now()
	if err := p.Send(ctx, letter); err == nil || time.Since(begun) > 10*time.Second {
		t.Error("a server that says nothing is waited for", time.Since(begun), err)
	}
}

// TestMailBlock: a mail block that cannot be used is said in words.
func TestMailBlock(t *testing.T) {
	for _, c := range []struct {
		m    keys.Mail
		want string
	}{
		{keys.Mail{Server: "smtp.quillmoor.example:25", From: "a@b.example", Plain: true}, "on this machine only"},
		{keys.Mail{Server: "192.0.2.7:25", From: "a@b.example", Plain: true}, "on this machine only"},
		{keys.Mail{Server: "smtp.quillmoor.example", From: "a@b.example"}, "and its port"},
		{keys.Mail{Server: "smtp.quillmoor.example:0", From: "a@b.example"}, "and its port"},
		{keys.Mail{Server: "smtp.quillmoor.example:465", From: "a@b.example"}, "587"},
		{keys.Mail{Server: "smtp.quillmoor.example:587", From: "nobody"}, "no mail address"},
		{keys.Mail{Server: "smtp.quillmoor.example:587", From: "a@b.example", To: []string{"a@b.example\r\nBcc: c@d.example"}}, "no mail address"},
		{keys.Mail{Server: "smtp.quillmoor.example:587", From: "a@b.example", UrgentAt: "ten"}, "urgent_at"},
		{keys.Mail{Server: "smtp.quillmoor.example:587", From: "a@b.example", Password: "hunter2"}, "without a user"},
	} {
		if _, err := NewPost(c.m); err == nil || !strings.Contains(err.Error(), c.want) || strings.Contains(err.Error(), "hunter2") {
			t.Errorf("%+v: %v", c.m, err)
		}
	}
	if p, err := NewPost(keys.Mail{Server: "localhost:25", From: "a@b.example", Plain: true, UrgentAt: "7:30"}); err != nil || p.UrgentClock() != 7*60+30 {
		t.Error(err)
	}
}
