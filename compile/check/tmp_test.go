package check_test

import (
	"fmt"
	"testing"

	"vivary/compile/balance"
)

func TestTmp(t *testing.T) {
	for _, room := range []string{"23 to 26 C", "24 to 26 C"} {
		for _, hum := range []string{"70 to 80 %", "75 to 85 %"} {
			for _, h := range []string{"mat side 60", "mat side 90", "lamp above 60", "lamp above 75", "cable back 60", "panel side 60"} {
				var kind, place, w string
				fmt.Sscan(h, &kind, &place, &w)
				r := compiled(t, "room \"east\" {\n temperature = \""+room+"\"\n humidity = \"50 to 60 %\"\n}\nenclosure \"box\" {\n  species = \"pandinus-imperator\"\nhousing {\n  kind      = \"glass\"\n  inside    = \"76 x 46 x 41 cm\"\n  lid       = \"solid, latched\"\n  vents     = \"some\"\n  substrate = \"coir and topsoil\"\n  moisture  = \"damp\"\n  depth     = \"16 cm\"\n  hides     = 4\n}\nanimals \"adults\" {\n count = 3\n stage = \"adult\"\n}\nclimate {\n warm_end = \"29 C\"\n cool_end = \"26 C\"\n night = \"24 C\"\n humidity = \""+hum+"\"\n thermometer = true\n heater \""+kind+"\" {\n power = \""+w+" W\"\n place = \""+place+"\"\n thermostat = \"29 C\"\n}\n}\n}\n")
				p, ok := balance.Of(r.Plan, r.Plan.Enclosures[0])
				fmt.Println(room, hum, h, ok, "grad", p.Gradient.Verdict, p.Gradient.Balance.Verdict, "need", p.Gradient.Balance.Needed, "sup", p.Gradient.Balance.Supply, "stuck", p.Gradient.Balance.WarmestIfStuck, "water", fmt.Sprintf("%+v", p.Water))
			}
		}
	}
}
