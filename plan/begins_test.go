package plan

import (
	"io/fs"
	"math/rand/v2"
	"os"
	"reflect"
	"strings"
	"testing"
)

// TestBeginsAsFresh: a file of which the beginning was read before is what it is for whoever
// reads all of it, whatever was typed: also where what was typed breaks the blocks around it, and
// where something was found before.
func TestBeginsAsFresh(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 5))
	typed := []string{"", "}", "{", "\"", "\n", "}\n}\n", "x", "= ", "/*", "# ", "keeper \"more\" {\n}\n", "round {", "<<E\n", "\ufeff", "\r"}
	kept, found, tried := 0, 0, 0
	err := fs.WalkDir(os.DirFS("../examples"), ".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, PlanSuffix) {
			return err
		}
		text, err := os.ReadFile("../examples/" + path)
		if err != nil {
			return err
		}
		was := fileOf("a"+PlanSuffix, 1, nil, text, nil)
		for range 60 {
			from := rng.IntN(len(text) + 1)
			to := min(len(text), from+rng.IntN(4)*rng.IntN(40))
			now := string(text[:from]) + typed[rng.IntN(len(typed))] + string(text[to:])
			again, fresh := fileOf("a"+PlanSuffix, 1, was, []byte(now), nil), fileOf("a"+PlanSuffix, 1, nil, []byte(now), nil)
			if !reflect.DeepEqual(again.blocks, fresh.blocks) || !reflect.DeepEqual(again.found, fresh.found) || !reflect.DeepEqual(again.unread, fresh.unread) || again.broken != fresh.broken {
				t.Fatalf("%s: from byte %d to %d, %q\nagain %v\nfresh %v", path, from, to, now[max(0, from-60):min(len(now), from+60)], again.found, fresh.found)
			}
			if begins, _ := again.begins(was); len(begins.blocks) > 0 {
				kept++
				if len(begins.found) > 0 {
					found++
				}
			}
			tried++
			if !again.torn {
				was, text = again, []byte(now)
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if kept < tried/20 || found < kept/5 {
		t.Errorf("of %d files the beginning of %d was kept, of %d with what was found in it", tried, kept, found)
	}
}
