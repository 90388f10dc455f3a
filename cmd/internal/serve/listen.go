package serve

import (
	"bufio"
	"context"
	"crypto/tls"
	"errors"
	"io"
	"log/slog"
	"net"
	"net/http"
	"os"
	"sync"
	"time"

	"golang.org/x/net/netutil"
)

// The bounds of what one visitor may take from the others.
const (
	headerTime  = 5 * time.Second
	requestTime = 20 * time.Second
	answerTime  = time.Minute
	idleTime    = 2 * time.Minute
	maxHeader   = 16 << 10
	connections = 2000
	// parting is how long answers that are under way may take when the server ends.
	parting = 10 * time.Second
)

// Serve answers on a listener until the context ends, then lets answers that are under way
// come to their end.
func Serve(ctx context.Context, l net.Listener, h http.Handler, secure *tls.Config, log *slog.Logger) error {
	srv := &http.Server{Handler: h, ReadHeaderTimeout: headerTime, ReadTimeout: requestTime, WriteTimeout: answerTime, IdleTimeout: idleTime, MaxHeaderBytes: maxHeader,
		ErrorLog: slog.NewLogLogger(log.Handler(), slog.LevelWarn), TLSConfig: secure,
		BaseContext: func(net.Listener) context.Context { return context.WithoutCancel(ctx) }, ConnContext: withConnection}
	l = gathering{netutil.LimitListener(l, connections)}
	ended := make(chan error, 1)
	go func() {
		if secure != nil {
			ended <- srv.ServeTLS(l, "", "")
			return
		}
		ended <- srv.Serve(l)
	}()
	select {
	case err := <-ended:
		return err
	case <-ctx.Done():
	}
	end, cancel := context.WithTimeout(context.WithoutCancel(ctx), parting)
	defer cancel()
	err := srv.Shutdown(end)
	if e := <-ended; !errors.Is(e, http.ErrServerClosed) {
		err = errors.Join(err, e)
	}
	return err
}

// Certificate reads a certificate and its key from files, and reads them again when they have
// changed: certificates of today are renewed every few weeks.
func Certificate(certificate, key string) (*tls.Config, error) {
	c := &certified{certificate: certificate, key: key}
	if _, err := c.get(nil); err != nil {
		return nil, err
	}
	return &tls.Config{GetCertificate: c.get, MinVersion: tls.VersionTLS12}, nil
}

type certified struct {
	certificate, key string

	mu     sync.Mutex
	looked time.Time
	read   time.Time
	now    *tls.Certificate
}

// again is how often the files are looked at.
const again = time.Minute

func (c *certified) get(*tls.ClientHelloInfo) (*tls.Certificate, error) {
	c.mu.Lock()
	defer c.mu.Unlock()
	if c.now != nil && time.Since(c.looked) < again {
		return c.now, nil
	}
	c.looked = time.Now()
	info, err := os.Stat(c.certificate)
	if err == nil && c.now != nil && info.ModTime().Equal(c.read) {
		return c.now, nil
	}
	pair, e := tls.LoadX509KeyPair(c.certificate, c.key)
	switch {
	case e == nil:
		c.now = &pair
		if err == nil {
			c.read = info.ModTime()
		}
		return c.now, nil
	case c.now != nil:
		return c.now, nil // one that is being replaced: the old one is good until it ends
	}
	return nil, e
}

// Buffered is a writer for many short lines: they are written together, once a second, and
// when it is closed.
type Buffered struct {
	mu   sync.Mutex
	w    *bufio.Writer
	stop chan struct{}
	done sync.WaitGroup
}

// NewBuffered returns one that writes to w.
func NewBuffered(w io.Writer) *Buffered {
	b := &Buffered{w: bufio.NewWriterSize(w, 64<<10), stop: make(chan struct{})}
	b.done.Go(func() {
		tick := time.NewTicker(time.Second)
		defer tick.Stop()
		for {
			select {
			case <-tick.C:
				b.flush()
			case <-b.stop:
				b.flush()
				return
			}
		}
	})
	return b
}

func (b *Buffered) Write(p []byte) (int, error) {
	b.mu.Lock()
	defer b.mu.Unlock()
	return b.w.Write(p)
}

func (b *Buffered) flush() {
	b.mu.Lock()
	defer b.mu.Unlock()
	_ = b.w.Flush() // a log that cannot be written stops no calendar
}

// Close writes what is left.
func (b *Buffered) Close() {
	close(b.stop)
	b.done.Wait()
}
