package stock_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/stock"
	"vivary/internal/generated"
	"vivary/internal/planned"
	"vivary/schema/civil"
)

// BenchmarkStock is demand, orders and starts of a house of 1,000 enclosures that buys all of
// its prey, once its roster is there.
func BenchmarkStock(b *testing.B) {
	files := generated.Collection(1000, "Europe/London")
	now := civil.Must(2027, 1, 4).At(12*60, time.UTC)
	c, found := planned.Files(b, files)
	var text strings.Builder
	text.WriteString("seller \"fen\" {\n  delivers = [\"tue to fri\"]\n}\n")
	for i, l := range stock.Look(compile.Compile(c, found, now).Roster).Lots {
		fmt.Fprintf(&text, "supply \"supply-of-%d\" {\n  prey     = %q\n  seller   = \"fen\"\n  packs    = [50, 250]\n  gut_load = \"24 h\"\n}\n", i, l.Prey.String())
	}
	files["stores.care.hcl"] = text.String()
	c, found = planned.Files(b, files)
	r := compile.Compile(c, found, now)
	b.ResetTimer()
	for range b.N {
		if stock.Of(r.Roster) == nil {
			b.Fatal("nothing is known")
		}
	}
}
