package schema

import "embed"

// Library is the built-in library in the language of plans: a sheet for each
// species, care type and feeder animal, and the sources that their figures are from.
//
//go:embed sources/*.care.hcl species/*.care.hcl types/*.care.hcl feeders/*.care.hcl
var Library embed.FS
