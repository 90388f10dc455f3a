package main

import (
	"crypto/tls"
	"fmt"
	"log/slog"
	"net"
	"net/http"
	"net/url"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"time"

	"vivary/cmd/internal/serve"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// usualListen is where the server listens if nobody says: on this machine only.
const usualListen = "127.0.0.1:8424"

// servePages serves a collection until it is told to end.
func servePages(w *world, f *flags, args []string) int {
	fail := func(status int, err error) int {
		fmt.Fprintf(w.err, "vivary serve: %v\n", wording.Plain(err))
		return status
	}
	root, err := w.root(f, args)
	if err != nil {
		return fail(usage, err)
	}
	after, err := f.noticeTime()
	if err != nil {
		return fail(usage, err)
	}
	r, status := w.compiled(f, root)
	if status != fine {
		return status
	}
	path, err := w.keysOf(f, root, r.Plan)
	if err != nil {
		return fail(usage, err)
	}
	secure, err := f.secure()
	if err == nil {
		err = f.reached()
	}
	if err != nil {
		return fail(usage, err)
	}
	if f.unit {
		return w.unit(f, root, path)
	}
	l, err := net.Listen("tcp", orElse(f.listen, usualListen))
	if err != nil {
		return fail(refused, fmt.Errorf("nothing can be served on %s: %w", orElse(f.listen, usualListen), err))
	}
	base := f.base(l.Addr(), secure != nil)
	logged := serve.NewBuffered(w.err)
	defer logged.Close()
	log := slog.New(slog.NewJSONHandler(logged, nil))
	s := serve.New(serve.Options{Disk: w.disk, Builder: w.builder(f, root), Lock: w.lock, Keys: path, Base: base,
		Clock: func() time.Time { t, _ := w.moment(f, nil); return t }, Log: log, NoticeAfter: after, Secure: secure != nil || strings.HasPrefix(base, "https:")})
	ctx, cancel := signal.NotifyContext(w.context(), os.Interrupt, syscall.SIGTERM)
	defer cancel()
	if f.measures != "" {
		m, err := net.Listen("tcp", f.measures)
		if err != nil {
			return fail(refused, fmt.Errorf("nothing can be measured on %s: %w", f.measures, err))
		}
		mux := http.NewServeMux()
		mux.Handle("/metrics", s.Measures.Handler())
		go func() { _ = serve.Serve(ctx, m, mux, nil, log) }()
	}
	w.served(f, l.Addr(), base, root)
	ended := make(chan error, 1)
	go func() { ended <- serve.Serve(ctx, l, s, secure, log) }()
	s.Rebuild(ctx)
	building := make(chan struct{})
	go func() { s.Run(ctx, s.Watch(ctx)); close(building) }()
	err = <-ended
	cancel()
	<-building // what is being written is written whole
	if err != nil {
		return fail(refused, err)
	}
	return fine
}

// served says where the pages are, and what it means that they are there.
func (w *world) served(f *flags, at net.Addr, base, root string) {
	if base == "" {
		fmt.Fprintf(w.out, "Serving %s on %s. By which address phones reach it was not said: pages go by the one that they are asked by, mails have no link, and calendars do not say where they are. --address says it.\n", filepath.ToSlash(root), at)
	} else {
		fmt.Fprintf(w.out, "Serving %s on %s, as %s\n", filepath.ToSlash(root), at, base)
	}
	fmt.Fprintf(w.out, "The private addresses are printed by: vivary keys %s\n", quoted(root))
	if tcp, ok := at.(*net.TCPAddr); ok && tcp.IP.IsLoopback() {
		if f.address == "" {
			fmt.Fprintln(w.out, "Only this machine can reach that. For phones say --listen with the machine's own address, better still put a server with a certificate in front, and say --address, how it is reached from outside.")
		}
	} else if f.certificate == "" && !strings.HasPrefix(base, "https:") {
		fmt.Fprintln(w.out, "Everybody in that network can reach it, and nothing is encrypted: whoever reads along learns the private addresses. Say --certificate and --private-key, or put a server that has them in front.")
	}
	w.flush()
}

// base is how the server is reached from outside, "" where it listens on all addresses of its
// machine and is not told by which one phones come.
func (f *flags) base(at net.Addr, secure bool) string {
	if f.address != "" {
		return strings.TrimRight(f.address, "/")
	}
	if tcp, ok := at.(*net.TCPAddr); ok && tcp.IP.IsUnspecified() {
		return ""
	}
	if secure {
		return "https://" + at.String()
	}
	return "http://" + at.String()
}

// reached reports what is wrong with how the server is said to be reached from outside.
func (f *flags) reached() error {
	if f.address == "" {
		return nil
	}
	u, err := url.Parse(f.address)
	if err != nil || u.Scheme != "https" && u.Scheme != "http" || u.Host == "" || u.RawQuery != "" || u.Fragment != "" || u.User != nil || strings.Trim(u.Path, "/") != "" {
		return fmt.Errorf("--address is how the server is reached from outside, such as https://care.example, and not %q", f.address)
	}
	return nil
}

// secure is how connections are encrypted; nil for not at all.
func (f *flags) secure() (*tls.Config, error) {
	if (f.certificate == "") != (f.privateKey == "") {
		return nil, fmt.Errorf("--certificate and --private-key go together: the files of a certificate and of its key")
	}
	if f.certificate == "" {
		return nil, nil
	}
	c, err := serve.Certificate(f.certificate, f.privateKey)
	if err != nil {
		return nil, fmt.Errorf("the certificate cannot be used: %w", err)
	}
	return c, nil
}

// noticeTime is how long a plan is refused until calendars say so.
func (f *flags) noticeTime() (time.Duration, error) {
	if f.noticeAfter == "" {
		return 24 * time.Hour, nil
	}
	q, err := quantity.Parse(f.noticeAfter, quantity.Duration)
	if err != nil {
		return 0, fmt.Errorf("--notice-after: %w", err)
	}
	return time.Duration(q.In(quantity.Minutes) * float64(time.Minute)), nil
}

func orElse(s, other string) string {
	if s == "" {
		return other
	}
	return s
}
