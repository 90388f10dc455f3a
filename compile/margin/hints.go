package margin

import (
	"vivary/compile"
	"vivary/plan/source"
)

// Hints is not written yet.
func Hints(r *compile.Result, id source.ID, in source.Place) []Note { return nil }
