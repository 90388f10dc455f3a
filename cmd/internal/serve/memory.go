package serve

import (
	"runtime"
	"runtime/debug"
)

// room is how much memory may be filled before what is no longer needed is collected. A house
// of a few tanks needs ten megabytes: collected each time that half as much is new, a server
// that is asked often would do little else.
const room = 64 << 20

// collect sets how often memory is collected: each time that half as much is new as there is,
// and never before that is worth it. A house of ten thousand calendars stays below half more
// than it needs.
func collect() {
	runtime.GC() // what the build before needed
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	debug.SetGCPercent(max(50, min(2000, int(100*room/max(m.HeapAlloc, 1)))))
}
