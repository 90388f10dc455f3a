package schema

// This is the table of what is done first where a gauge shows something else than it should.
// It holds for whatever lives there: what the species bears stands in its sheet.

// Amiss is what whoever reads a gauge does first. Each text stands behind others, without a
// capital and without a full stop; an empty one is nothing but to log it.
type Amiss struct {
	// More and Less are for what it should show, Either for both where boxes of another kind
	// go before; Over and Under are for what harms.
	More, Less, Either, Over, Under string
}

// The table. Whoever stands in opens nothing for it and sets no thermostat: a heater that
// was switched off for one degree too many is off all night. Common practice, no source.
var (
	AmissHeated = &Amiss{
		More: "probe in its place?", Less: "heater plugged in and warm?",
		Over: "heater off at the plug", Under: "warm the room"}
	AmissUnheated = &Amiss{
		More: "cool the room", Less: "warm the room", Either: "cool or warm the room"}
	AmissDamp = &Amiss{More: "no misting today"}
)
