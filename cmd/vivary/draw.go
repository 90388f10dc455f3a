package main

import (
	"bytes"
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/compile/picture"
	"vivary/schema/wording"
)

// pictureSuffix ends the name of a picture: never that of a plan, a log or a calendar.
const pictureSuffix = ".svg"

// draw writes the picture of an enclosure's year, whole or not at all, and never over
// what it did not draw.
func draw(w *world, f *flags, r *compile.Result, i int) int {
	return w.draw(f, "why", func(to io.Writer) error {
		if f.narrow {
			return picture.YearNarrow(to, r, i)
		}
		return picture.Year(to, r, i)
	})
}

// draw writes a picture into the file that is named.
func (w *world) draw(f *flags, name string, drawn func(io.Writer) error) int {
	shown := filepath.ToSlash(f.svg)
	if !strings.EqualFold(filepath.Ext(shown), pictureSuffix) {
		fmt.Fprintf(w.err, "vivary %[3]s: the name of a picture ends in %[2]s: --svg %[1]s%[2]s\n", shown, pictureSuffix, name)
		return usage
	}
	var b bytes.Buffer
	err := drawn(&b)
	if err == nil {
		err = publish.Replace(w.disk, f.svg, b.Bytes(), picture.Ours)
	}
	if err != nil {
		fmt.Fprintf(w.err, "vivary %s: %v. Nothing was written: give the picture another name.\n", name, wording.Plain(err))
		return refused
	}
	fmt.Fprintln(w.out, shown)
	return fine
}
