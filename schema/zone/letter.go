package zone

import "strings"

// letter are the zones of other places in which sheets of paper are of US letter size, by the
// codes BZ, CA, CL, CO, CR, GT, MX, NI, PA, PH, SV and VE in zone.tab of the tz database: the
// territories to which the Unicode CLDR gives that size, but for those of the United States.
const letter = `
America/Belize America/St_Johns America/Halifax America/Glace_Bay America/Moncton America/Goose_Bay America/Blanc-Sablon America/Toronto
America/Iqaluit America/Atikokan America/Winnipeg America/Resolute America/Rankin_Inlet America/Regina America/Swift_Current America/Edmonton
America/Cambridge_Bay America/Inuvik America/Creston America/Dawson_Creek America/Fort_Nelson America/Whitehorse America/Dawson America/Vancouver
America/Santiago America/Coyhaique America/Punta_Arenas Pacific/Easter America/Bogota America/Costa_Rica America/Guatemala America/Mexico_City
America/Cancun America/Merida America/Monterrey America/Matamoros America/Chihuahua America/Ciudad_Juarez America/Ojinaga America/Mazatlan
America/Bahia_Banderas America/Hermosillo America/Tijuana America/Managua America/Panama Asia/Manila America/El_Salvador America/Caracas
`

var isLetter = func() map[string]bool {
	all := map[string]bool{}
	for name := range strings.FieldsSeq(letter) {
		all[name] = true
	}
	return all
}()

// Letter reports whether people in a zone print on sheets of US letter size, and not A4.
func Letter(name string) bool { return isLetter[name] || Customary(name) }
