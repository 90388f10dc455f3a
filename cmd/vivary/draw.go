package main

import (
	"bytes"
	"fmt"
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
	shown := filepath.ToSlash(f.svg)
	if !strings.EqualFold(filepath.Ext(shown), pictureSuffix) {
		fmt.Fprintf(w.err, "vivary why: the name of a picture ends in %[2]s: --svg %[1]s%[2]s\n", shown, pictureSuffix)
		return usage
	}
	var b bytes.Buffer
	drawn := picture.Year
	if f.narrow {
		drawn = picture.YearNarrow
	}
	err := drawn(&b, r, i)
	if err == nil {
		err = publish.Replace(w.disk, f.svg, b.Bytes(), picture.Ours)
	}
	if err != nil {
		fmt.Fprintf(w.err, "vivary why: %v. Nothing was written: give the picture another name.\n", wording.Plain(err))
		return refused
	}
	fmt.Fprintln(w.out, shown)
	return fine
}
