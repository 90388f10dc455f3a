package main

import (
	"fmt"
	"io"
	"os"
	"runtime/debug"
	"strings"
	"time"

	"vivary/cmd/internal/editor"
	"vivary/schema/wording"
)

// serveEditor speaks with a text editor until that ends.
func serveEditor(w *world, f *flags, args []string) int {
	if len(args) > 0 {
		fmt.Fprintf(w.err, "vivary editor: %q is not understood: an editor says which files are open\n", args[0])
		return usage
	}
	if w.in == nil {
		w.in = strings.NewReader("")
	}
	o := editor.Options{
		Disk: w.disk, In: w.in, Out: unclosed{w.raw}, Version: number(),
		Root: func(folder string) string { return rootOf(w.disk, folder) },
		Now:  func(loc *time.Location) (time.Time, error) { return w.moment(f, loc) },
	}
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(400) // somebody waits after each key, and a plan takes little
	}
	if err := editor.Run(w.context(), o); err != nil {
		fmt.Fprintf(w.err, "vivary editor: %v\n", wording.Plain(err))
		return refused
	}
	return fine
}

// unclosed is a writer that others do not close.
type unclosed struct{ io.Writer }

func (unclosed) Close() error { return nil }
