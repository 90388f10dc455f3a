package life

import (
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// OfStores are the kinds of care of cultures, tubs and supplies of feeder animals.
var OfStores = []*schema.CareKind{schema.KindOrder, schema.KindDelivery, schema.KindStart, schema.KindTend, schema.KindClear, schema.KindGutLoad}

// WetFood is the name of the care by which wet food is taken out again.
const WetFood = "wet-food"

// Stores reads what the log says of the care of cultures, tubs and supplies. No animals of the
// collection live in them. The lives are in the order of the stores.
func Stores(c *plan.Collection, today civil.Date) (lives []*Enclosure, found []finding.Finding) {
	of := make(map[string]*reader, len(c.Stores))
	for _, s := range c.Stores {
		r := &reader{c: c, today: today, out: &Enclosure{Plan: s.Stop}, cares: map[string]bool{WetFood: true}}
		for _, kind := range OfStores {
			r.cares[kind.Name] = true
		}
		of[s.Name.V] = r
		lives = append(lives, r.out)
	}
	for i := range c.Log {
		e := &c.Log[i]
		if r := of[e.Enclosure.V]; r != nil && e.Date <= today && (e.Word == schema.WordDone || e.Word == schema.WordSkipped) {
			r.care(e)
			found, r.found.All = append(found, r.found.All...), nil
		}
	}
	return lives, found
}
