package editor

import (
	"os"
	"regexp"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/protocol"
	"vivary/internal/generated"
)

// large is a session in a house of 1,000 enclosures, each with a line of the log, of which one
// file is open, with a mistake in it so that each keystroke is told of anew.
func large(b *testing.B) (c *client, name string) {
	disk := afero.NewMemMapFs()
	files, log := generated.Collection(1000, "Europe/London"), ""
	for _, text := range files {
		for _, box := range boxIn.FindAllStringSubmatch(text, -1) {
			log += "2026-11-20 " + box[1] + " done water\n"
		}
	}
	if files["records/2026.care.log"] = log; strings.Count(log, "\n") != 1000 {
		b.Fatalf("the log has %d lines", strings.Count(log, "\n"))
	}
	for name, text := range files {
		if err := afero.WriteFile(disk, "/c/"+name, []byte(text), 0o644); err != nil {
			b.Fatal(err)
		}
	}
	c = meet(b, disk, capable, time.Date(2026, 11, 25, 18, 0, 0, 0, time.UTC))
	name = "rooms/room-7.care.hcl"
	text, err := afero.ReadFile(disk, "/c/"+name)
	if err != nil {
		b.Fatal(err)
	}
	at := strings.LastIndex(string(text), "title")
	c.openAs(name, string(text[:at])+"titel"+string(text[at+5:]))
	c.settled()
	return c, name
}

var boxIn = regexp.MustCompile(`(?m)^enclosure "(.*)" \{`)

// shownAt waits until what was found in a version of a file is shown.
func (c *client) shownAt(name string, version int) {
	for begun := time.Now(); ; time.Sleep(50 * time.Microsecond) {
		c.mu.Lock()
		p := c.shown[uri(name)]
		c.mu.Unlock()
		if p.Version != nil && *p.Version >= version {
			return
		}
		if time.Since(begun) > time.Minute {
			c.t.Fatalf("version %d of %s is not shown", version, name)
		}
	}
}

// BenchmarkKeystroke: somebody types into a figure, a title, a word and a name of an enclosure
// of 1,000, one key after another: until what was found is shown; and, after other keys, until
// what may stand there, or what it means, is answered, asked for at once.
func BenchmarkKeystroke(b *testing.B) {
	c, name := large(b)
	var findings, completion, hover []time.Duration
	keys := []struct{ at, write string }{
		{`title   = "Tub `, "7"}, {`title   = "Tub 7`, "\b"}, {"every", "\b"}, {"ever", "y"}, {`"coir`, "s"}, {`"coirs`, "\b"}, {`"coir`, "\b"}, {`"coi`, "r"},
	}
	n := 0
	for b.Loop() {
		k := keys[n%len(keys)]
		n++
		text := c.texts[name]
		at := strings.Index(text[len(text)/2:], k.at)
		if at < 0 {
			b.Fatalf("nowhere is %q", k.at)
		}
		at += len(text)/2 + len(k.at)
		begun := time.Now()
		if k.write == "\b" {
			c.edit(name, at-1, at, "")
			at--
		} else {
			c.edit(name, at, at, k.write)
			at++
		}
		place := protocol.TextDocumentPositionParams{TextDocument: protocol.TextDocumentIdentifier{URI: uri(name)}, Position: protocol.NewLines([]byte(c.texts[name]), protocol.UTF16).Position(at)}
		switch n % 3 {
		case 0:
			var list protocol.CompletionList
			c.call("textDocument/completion", place, &list)
			completion = append(completion, time.Since(begun))
		case 1:
			var h *protocol.Hover
			c.call("textDocument/hover", place, &h)
			hover = append(hover, time.Since(begun))
		}
		c.shownAt(name, c.versions[name])
		if n%3 == 2 {
			findings = append(findings, time.Since(begun))
		}
		time.Sleep(20 * time.Millisecond) // nobody types faster than fifty keys a second
	}
	for what, all := range map[string][]time.Duration{"findings": findings, "completion": completion, "hover": hover} {
		if len(all) > 0 {
			slices.Sort(all)
			b.ReportMetric(all[len(all)/2].Seconds()*1000, what+"-ms")
			b.ReportMetric(all[len(all)*99/100].Seconds()*1000, what+"-p99-ms")
		}
	}
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	b.ReportMetric(float64(m.HeapAlloc)/(1<<20), "heap-MiB")
	b.ReportMetric(resident(), "resident-MiB")
}

// resident is the memory of this process, in MiB.
func resident() float64 {
	text, _ := os.ReadFile("/proc/self/statm")
	var pages [2]float64
	for i, f := range strings.Fields(string(text))[:min(2, len(strings.Fields(string(text))))] {
		for _, d := range f {
			pages[i] = pages[i]*10 + float64(d-'0')
		}
	}
	return pages[1] * float64(os.Getpagesize()) / (1 << 20)
}
