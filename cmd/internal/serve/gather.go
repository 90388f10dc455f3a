package serve

import (
	"context"
	"net"
	"net/http"
	"sync"
)

// gathers is up to how many bytes are gathered: what is larger is sent in many packets anyhow.
const gathers = 64 << 10

// gathering wraps the connections of a listener, so that an answer can go out in one write.
// The standard library sends what fits into its 4 KiB and the rest in another: two calls of
// the system, and two times that whoever reads is woken, for a calendar of a few kilobytes.
type gathering struct{ net.Listener }

func (l gathering) Accept() (net.Conn, error) {
	c, err := l.Listener.Accept()
	if err != nil {
		return nil, err
	}
	return &gathered{Conn: c}, nil
}

// gathered is a connection that can keep back what is written until it is told to send it. Only
// whoever answers writes to it, and HTTP/1 has one answer at a time.
type gathered struct {
	net.Conn
	held *[]byte // what is kept back, nil where nothing is to be
}

// spare are buffers of answers that have gone: a connection that waits keeps none.
var spare = sync.Pool{New: func() any { return new([]byte) }}

func (c *gathered) Write(p []byte) (int, error) {
	if c.held == nil {
		return c.Conn.Write(p)
	}
	*c.held = append(*c.held, p...)
	return len(p), nil
}

type connection struct{}

// withConnection is a http.Server's ConnContext: answers find their connection in it. One that
// is encrypted is none of ours, and is written to as ever.
func withConnection(ctx context.Context, c net.Conn) context.Context {
	if g, ok := c.(*gathered); ok {
		return context.WithValue(ctx, connection{}, g)
	}
	return ctx
}

// writeWhole writes a body, its header before it, in one go where the connection can.
func writeWhole(w http.ResponseWriter, r *http.Request, body []byte) (int, error) {
	c, ok := r.Context().Value(connection{}).(*gathered)
	flusher, flushes := w.(http.Flusher)
	if !ok || !flushes || len(body) > gathers {
		return w.Write(body)
	}
	held := spare.Get().(*[]byte)
	c.held = held
	n, err := w.Write(body)
	flusher.Flush()
	c.held = nil
	if _, e := c.Conn.Write(*held); e != nil {
		n, err = 0, e
	}
	*held = (*held)[:0]
	spare.Put(held)
	return n, err
}
