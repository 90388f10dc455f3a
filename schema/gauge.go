package schema

import "vivary/schema/quantity"

// GaugePlaces are where in an enclosure a gauge lies.
var GaugePlaces = choices("spot", "the warm end: the surface at the heater", "air", "the air away from the heater")

// Salts are those of which a slurry holds a humidity over it by which a gauge is tested.
var Salts = choices("NaCl | sodium chloride | table salt", "sodium chloride, table salt: 75 %", "MgCl2 | magnesium chloride", "magnesium chloride: 33 %")

// Gauge is a thermometer or a hygrometer that writes down what it shows.
var Gauge = &Block{
	Name: "gauge", Label: "name", Once: true,
	Doc:     "A data logger, and how it was tested. `vivary readings` knows by it what a file is about, corrects what it showed by the tests, and says how much of that is sure.",
	Example: "gauge \"logger-3\" {\n  place    = \"air\"\n  files    = [\"burrow-a*.csv\"]\n  accuracy = \"0.5 C\"\n\n  test \"table-salt\" {\n    on       = \"2026-11-01\"\n    at       = \"22 C\"\n    salt     = \"NaCl\"\n    humidity = \"71 %\"\n  }\n}",
	Attrs: []Attr{
		{Name: "place", Kind: Word, Choices: GaugePlaces, Default: "air", Doc: "Where in the enclosure it lies. In a room it is of the room, in a rack of all who stand there.", Example: `"air"`},
		{Name: "files", Kind: Texts, Doc: "How its files are called, a `*` for whatever stands there.", Example: `["burrow-a*.csv"]`},
		{Name: "accuracy", Kind: Quantity, Dimension: quantity.TemperatureStep, Default: "1 C", Doc: "How far its temperatures may be off, as it is sold.", Example: `"0.5 C"`},
		{Name: "humidity_accuracy", Kind: Quantity, Dimension: quantity.Humidity, Default: "3 %", Doc: "How far its humidities may be off, as it is sold.", Example: `"3 %"`},
		noteAttr,
	},
	Blocks: []*Block{GaugeTest},
}

// ShowsWord parts, in a line about a test of a gauge, the temperature there from the one that the
// gauge showed.
const ShowsWord = "shows"

// GaugeTest is one test of a gauge.
var GaugeTest = &Block{
	Name: "test", Label: "name", Once: true,
	Doc:     "A test of the gauge: beside a thermometer that can be trusted, or sealed in over a slurry of salt for half a day to a day, within a degree all the time. One salt gives what is added to a humidity, two give a line. Of several tests of one kind the newest counts. A later one may stand in the log, as `tested`.",
	Example: "test \"table-salt\" {\n  on       = \"2026-11-01\"\n  at       = \"22 C\"\n  salt     = \"NaCl\"\n  humidity = \"71 %\"\n}",
	Attrs: []Attr{
		{Name: "on", Kind: Date, Required: true, Doc: "The day of it.", Example: `"2026-11-01"`},
		{Name: "at", Kind: Quantity, Dimension: quantity.Temperature, Required: true, Doc: "The temperature there, by the other thermometer.", Example: `"22 C"`},
		{Name: "temperature", Kind: Quantity, Dimension: quantity.Temperature, Doc: "What the gauge showed.", Example: `"22.4 C"`},
		{Name: "salt", Kind: Word, Choices: Salts, Doc: "The salt over which it lay.", Example: `"NaCl"`},
		{Name: "humidity", Kind: Quantity, Dimension: quantity.Humidity, Doc: "What the gauge showed over it.", Example: `"71 %"`},
	},
}
