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
		var batch *publish.Batch
		if batch, err = publish.Begin(w.disk, filepath.Dir(f.svg)); err == nil {
			if err = batch.Stage(filepath.Base(f.svg), b.Bytes()); err == nil {
				err = batch.Commit()
			} else {
				batch.Abandon()
			}
		}
	}
	if err != nil {
		fmt.Fprintf(w.err, "vivary why: %v\n", err)
		return refused
	}
	fmt.Fprintln(w.out, filepath.ToSlash(f.svg))
	return fine
}
