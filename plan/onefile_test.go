package plan

import (
	"strings"
	"testing"
)

// Names that another system cannot have, or takes for one, are found on every system alike;
// ordinary names pass. Of files they are paths, of which each holds one of the blocks.
func TestNamesElsewhere(t *testing.T) {
	const none, caution, refused = "", "caution", "error"
	for _, c := range []struct {
		kind, names string // with a bar between them
		want        string
	}{
		{"calendar", "evening", none},
		{"calendar", "evening|morning", none},
		{"calendar", "Evening|evening", refused},
		{"calendar", "ÉTÉ|été", refused},
		{"calendar", "caf\u00e9|cafe\u0301", none}, // one name in a plan: it is there twice
		{"calendar", "STRASSE|straße", refused},
		{"calendar", "con", refused},
		{"calendar", "NUL", refused},
		{"calendar", "aux", refused},
		{"calendar", "com1", refused},
		{"calendar", "LPT9", refused},
		{"calendar", "com10", none},
		{"calendar", "console", none},
		{"calendar", "null", none},
		{"calendar", "con-1", none},
		{"calendar", "lead_keeper", none},
		{"calendar", "Привет", none},
		{"calendar", "蠍", none},
		{"room", "east|East", caution},
		{"room", "east|west", none},
		{"room", "prn", caution},
		{"keeper", "Ann|ann", caution},
		{"keeper", "ann|anne", none},
		{"collection", "con", caution},
		{"collection", "house", none},
		{"file", "a.care.hcl|b.care.hcl", none},
		{"file", "Burrow.care.hcl|burrow.care.hcl", caution},
		{"file", "x/a.care.hcl|X/a.care.hcl", caution},
		{"file", "x/a.care.hcl|X/b.care.hcl", none},
		{"file", "b\u00fcro.care.hcl|bu\u0308ro.care.hcl", caution},
		{"file", "con.care.hcl", caution},
		{"file", "aux/a.care.hcl", caution},
		{"file", "con1.care.hcl", none},
		{"file", "a:b.care.hcl", caution},
		{"file", "why?.care.hcl", caution},
		{"file", "room./a.care.hcl", caution},
		{"file", "room /a.care.hcl", caution},
		{"file", "two words.care.hcl", none},
		{"file", "v1.2.care.hcl", none},
	} {
		files := map[string]string{"all.care.hcl": "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\n"}
		for i, name := range strings.Split(c.names, "|") {
			block := c.kind + " \"" + name + "\" {\n}\n"
			switch c.kind {
			case "collection":
				files = map[string]string{"all.care.hcl": "collection \"" + name + "\" {\n  time_zone = \"Europe/London\"\n}\n"}
				continue
			case "file":
				files[name] = "keeper \"k" + strings.Repeat("x", i) + "\" {\n}\n"
				continue
			case "room":
				block = "room \"" + name + "\" {\n  temperature = \"20 to 22 C\"\n}\n"
			}
			files["all.care.hcl"] += block
		}
		col, found := load(t, files)
		got := ""
		for _, f := range found {
			if f.Rule != ruleElsewhere {
				continue
			}
			if got != "" || !f.At.Written() && c.kind != "file" {
				t.Errorf("%s %s: %s at %v", c.kind, c.names, f.Text, col.Files.Start(f.At))
			}
			got = f.Severity.String()
		}
		if got != c.want {
			t.Errorf("%s %s: %q, want %q: %v", c.kind, c.names, got, c.want, texts(found))
		}
	}
}
