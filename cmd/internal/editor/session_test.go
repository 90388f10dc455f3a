package editor

import (
	"context"
	"encoding/json"
	"math/rand/v2"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/creachadair/jrpc2"

	"vivary/cmd/internal/protocol"
)

// TestSession: somebody types, in plans and in a log, and the editor asks all that it can at
// places of the text, also beyond its ends, several at once, and takes requests back. Each is
// answered in time, and what is shown in the end is what is found by whoever begins with it.
func TestSession(t *testing.T) {
	log := "records/2026.care.log"
	c := quillmoor(t, burrow, "rooms.care.hcl", "collection.care.hcl")
	c.openAs(log, "2026-11-24 burrow-a fed\n")
	rng := rand.New(rand.NewPCG(14, 3))
	var asking sync.WaitGroup
	names := []string{burrow, "rooms.care.hcl", "collection.care.hcl", log}
	methods := []string{}
	for method := range c.server.methods() {
		if strings.HasPrefix(method, "textDocument/") && !strings.HasPrefix(method, "textDocument/did") || method == "workspace/symbol" {
			methods = append(methods, method)
		}
	}
	slices.Sort(methods)
	for range 250 {
		name := names[rng.IntN(len(names))]
		c.slip(rng, name)
		if rng.IntN(3) > 0 {
			continue
		}
		l := protocol.NewLines([]byte(c.texts[name]), protocol.UTF16)
		at := l.Position(rng.IntN(len(c.texts[name]) + 1))
		if rng.IntN(6) == 0 {
			at = protocol.Position{Line: at.Line + rng.IntN(40), Character: rng.IntN(500)}
		}
		params := map[string]any{"textDocument": map[string]any{"uri": uri(name)}, "position": at, "newName": "other-name", "query": "bur", "range": protocol.Range{Start: at, End: protocol.Position{Line: at.Line + rng.IntN(9)}},
			"context": map[string]any{"diagnostics": []any{}, "includeDeclaration": true}, "options": map[string]any{"tabSize": 2, "insertSpaces": true}}
		method, takeBack := methods[rng.IntN(len(methods))], rng.IntN(5) == 0
		asking.Go(func() {
			ctx, done := context.WithTimeout(context.Background(), 30*time.Second)
			defer done()
			if takeBack {
				ctx, done = context.WithTimeout(context.Background(), 2*time.Millisecond)
				defer done()
			}
			var out json.RawMessage
			err := c.rpc.CallResult(ctx, method, params, &out)
			if code := jrpc2.ErrorCode(err); err != nil && !takeBack && code != jrpc2.InvalidParams {
				t.Errorf("%s: %v", method, err)
			}
		})
	}
	asking.Wait()
	c.settled()
	diff := c.differs(wednesday)
	for wait := 0; diff != "" && wait < 50; wait++ {
		time.Sleep(20 * time.Millisecond)
		diff = c.differs(wednesday)
	}
	if diff != "" {
		t.Error(diff)
	}
}
