package plan

// Bounds on what is read. They are far above what people write, and low enough
// that no text makes the program run away.
const (
	MaxFile       = 4 << 20   // bytes in one file
	MaxFiles      = 20_000    // files in a collection
	MaxEntries    = 200_000   // files and folders below that of a collection
	MaxEnclosures = 20_000    // enclosures in a collection
	MaxLogLines   = 2_000_000 // lines in all logs together
	MaxText       = 2_000     // characters in one text
	MaxList       = 60        // things in one list that names no blocks
	MaxAways      = 500       // absences in a collection
)
