package plan

import "testing"

// TestLogByFormerNames: what was logged under the name that an enclosure, animals or a
// keeper had first is of those that have it formerly, unless something else is called so now.
func TestLogByFormerNames(t *testing.T) {
	const house = "  species = \"pandinus-imperator\"\n  housing {\n    inside = \"60 x 45 x 40 cm\"\n    lid    = \"solid, latched\"\n  }\n"
	const plan = sound + "keeper \"ada\" {\n  formerly = \"lead\"\n}\n" +
		"enclosure \"jar\" {\n  formerly = \"tub\"\n" + house + "  animals \"big\" {\n    formerly = \"old\"\n    count    = 1\n  }\n  animals \"small\" {\n    count = 2\n  }\n}\n" +
		"enclosure \"pit\" {\n  formerly = \"bog\"\n" + house + "  animals \"one\" {\n    count = 1\n  }\n}\n" +
		"enclosure \"bog\" {\n" + house + "  animals \"one\" {\n    count = 1\n  }\n}\n"
	c, found := load(t, map[string]string{"a.care.hcl": plan, "records/2026.care.log": `2026-11-01 tub old moult
2026-11-02 tub old fed "quiet"
2026-11-03 by lead jar small moult
2026-11-04 bog moved to tub old
2026-11-05 bog refused
2026-11-06 keeper lead away
2026-11-07 tub big refused
2026-11-08 jar big withdrawn moult 2026-11-01
`})
	if len(found) > 0 {
		t.Fatal(texts(found))
	}
	if len(c.Log) != 6 {
		t.Fatalf("%d lines", len(c.Log))
	}
	if e := c.Log[0]; e.Enclosure.V != "jar" || e.Group.V != "big" || e.Note != "quiet" {
		t.Errorf("of the enclosure and the animals: %+v", e)
	}
	if e := c.Log[1]; e.Enclosure.V != "jar" || e.By.V != "ada" {
		t.Errorf("by the keeper: %+v", e)
	}
	if e := c.Log[2]; e.Enclosure.V != "bog" || e.Args[0].V != "jar" || e.Args[1].V != "big" {
		t.Errorf("where they went: %+v", e)
	}
	if e := c.Log[3]; e.Enclosure.V != "bog" || e.Group.V != "one" {
		t.Errorf("what is called so now comes first: %+v", e)
	}
	if len(c.Sudden) != 1 || c.Sudden[0].Keeper != "ada" {
		t.Errorf("of the keeper: %+v", c.Sudden)
	}
	if e := c.Log[5]; e.Enclosure.V != "jar" || e.Group.V != "big" {
		t.Errorf("the old enclosure and the new animals: %+v", e)
	}
}
