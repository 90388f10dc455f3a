package zone

import "strings"

// customary are the zones of the United States and their territories, by ISO 3166 code US,
// PR, VI, GU, MP and AS in zone.tab of the tz database, release 2025b, with the older names
// that the database keeps for them.
const customary = `
America/Adak America/Anchorage America/Boise America/Chicago America/Denver America/Detroit America/Indiana/Indianapolis America/Indiana/Knox
America/Indiana/Marengo America/Indiana/Petersburg America/Indiana/Tell_City America/Indiana/Vevay America/Indiana/Vincennes America/Indiana/Winamac
America/Juneau America/Kentucky/Louisville America/Kentucky/Monticello America/Los_Angeles America/Menominee America/Metlakatla America/New_York America/Nome
America/North_Dakota/Beulah America/North_Dakota/Center America/North_Dakota/New_Salem America/Phoenix America/Sitka America/Yakutat Pacific/Honolulu
America/Puerto_Rico America/St_Thomas Pacific/Guam Pacific/Saipan Pacific/Pago_Pago
America/Atka America/Fort_Wayne America/Indianapolis America/Knox_IN America/Louisville America/Shiprock Navajo EST EST5EDT CST6CDT MST MST7MDT PST8PDT HST
US/Alaska US/Aleutian US/Arizona US/Central US/East-Indiana US/Eastern US/Hawaii US/Indiana-Starke US/Michigan US/Mountain US/Pacific US/Samoa
`

var isCustomary = func() map[string]bool {
	all := map[string]bool{}
	for name := range strings.FieldsSeq(customary) {
		all[name] = true
	}
	return all
}()

// Customary reports whether people in a zone mostly use US customary units and a clock of
// twelve hours: those of the United States.
func Customary(name string) bool { return isCustomary[name] }
