package serve

import (
	"bufio"
	"bytes"
	"context"
	"fmt"
	"io"
	"log/slog"
	"math/rand/v2"
	"net"
	"net/http"
	"slices"
	"sync"
	"testing"
	"time"

	"golang.org/x/net/netutil"
)

// counting counts what is written to the connections of a listener, answer by answer.
type counting struct {
	net.Listener
	mu     sync.Mutex
	writes []int
}

func (l *counting) Accept() (net.Conn, error) {
	c, err := l.Listener.Accept()
	return &countingConn{c, l}, err
}

type countingConn struct {
	net.Conn
	all *counting
}

func (c *countingConn) Write(p []byte) (int, error) {
	c.all.mu.Lock()
	c.all.writes = append(c.all.writes, len(p))
	c.all.mu.Unlock()
	return c.Conn.Write(p)
}

// A calendar goes out in one write, header and all, whatever its size within bounds; one answer
// after the other on a connection, and also where the request before was of another kind.
func TestOneWrite(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for _, size := range []int{0, 100, 2000, 3000, 4000, 4096, 5000, 8192, 20_000, 60_000, 80_000, 300_000} {
		text := make([]byte, size)
		for i := range text {
			text[i] = byte(random.IntN(256)) // so that it stays as large
		}
		f := newFeed("a.ics", text, time.Now())
		plain, err := net.Listen("tcp", "127.0.0.1:0")
		if err != nil {
			t.Fatal(err)
		}
		l := &counting{Listener: plain}
		ctx, end := context.WithCancel(t.Context())
		ended := make(chan error, 1)
		go func() {
			ended <- Serve(ctx, netutil.LimitListener(l, 3), http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) { f.serve(w, r) }), nil, slog.New(slog.DiscardHandler))
		}()
		c, err := net.Dial("tcp", plain.Addr().String())
		if err != nil {
			t.Fatal(err)
		}
		in := bufio.NewReader(c)
		for _, method := range []string{"GET", "HEAD", "GET", "GET"} {
			l.mu.Lock()
			l.writes = nil
			l.mu.Unlock()
			fmt.Fprintf(c, "%s / HTTP/1.1\r\nHost: here\r\nAccept-Encoding: gzip\r\n\r\n", method)
			a, err := http.ReadResponse(in, &http.Request{Method: method})
			if err != nil {
				t.Fatal(size, method, err)
			}
			body, err := io.ReadAll(a.Body)
			if err != nil || a.ContentLength != int64(len(f.packed)) || method == "GET" && !bytes.Equal(body, f.packed) {
				t.Errorf("%d bytes, %s: %d of %d came, %v", size, method, len(body), len(f.packed), err)
			}
			l.mu.Lock()
			if whole := len(f.packed) <= gathers; whole != (len(l.writes) == 1) && method == "GET" {
				t.Errorf("%d bytes: writes of %v", size, slices.Clone(l.writes))
			}
			l.mu.Unlock()
		}
		_ = c.Close()
		end()
		if err := <-ended; err != nil {
			t.Error(err)
		}
	}
}
