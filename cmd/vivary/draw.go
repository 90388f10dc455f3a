package main

import (
	"bytes"
	"fmt"
	"path/filepath"

	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/compile/picture"
)

// draw writes the picture of an enclosure's year, whole or not at all.
func draw(w *world, f *flags, r *compile.Result, i int) int {
	var b bytes.Buffer
	err := picture.Year(&b, r, i)
	if err == nil {
		err = publish.Replace(w.disk, f.svg, b.Bytes())
	}
	if err != nil {
		fmt.Fprintf(w.err, "vivary why: %v\n", err)
		return refused
	}
	fmt.Fprintln(w.out, filepath.ToSlash(f.svg))
	return fine
}
