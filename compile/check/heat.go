package check

import (
	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/plan/finding"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Heat rules judge an enclosure by what it will be: with its heaters, in the coldest and
// in the warmest that its room gets, once a heater sticks. What the plan aims at counts
// beside that. A keeper's warm end is a spot at the heater, the cool end is the air, and
// the two are asked apart.
//
// An error takes even the favourable end of what is known to fail, all the year. What is
// short for a part of the year is a caution, and what harms nobody is advice.
var heat = []*Rule{
	{Enclosure: shortOf, Rule: finding.Rule{ID: "heat-lost", Severity: finding.Danger, Silence: finding.Never,
		Title:   "The heaters cannot keep the animals above what harms them in the coldest room.",
		Why:     "At the lowest temperature of the room even the warmest place inside is colder than the species bears, even if everything is better than likely.",
		Source:  "heat balance after ISO 6946; the limit is the species sheet's",
		Instead: "A warmer room, or a larger heater of the usual power for its size."}},
	{Enclosure: shortOf, Rule: finding.Rule{ID: "unheated", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "Nothing heats or cools the enclosure, and its room is not what the species needs.",
		Why:     "Without a heater it is inside as it is in the room. An animal that is too cold all year does not feed, moult or breed, and does not show why.",
		Source:  "the species sheet",
		Instead: "A heater with a thermostat, another room, or a reason."}},
	{Enclosure: shortOf, Rule: finding.Rule{ID: "heat-short", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The warmest place, or the air, is colder than the species needs or than is aimed for.",
		Why:     "A heater makes a warm spot beside it, and warms the rest of the air by a few degrees only. An animal that is never warm enough does not feed or digest.",
		Source:  "heat balance after ISO 6946, the film after McAdams",
		Instead: "Where the spot is too cool: a mat of 150 to 250 W for a square metre, stuck flat on the wall, with foam behind it only if it is weak. Where the air is too cool: a warmer room, or a larger mat."}},
	{Enclosure: shortOf, Rule: finding.Rule{ID: "night-cold", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "In the coldest nights the air is colder than the species is kept at.",
		Why:     "Lamps are off by night; mats go on. Tropical animals are not used to cold nights, and a long row of them stops feeding and moults.",
		Source:  "the species sheet",
		Instead: "A mat or a ceramic heater for the night, or a warmer room."}},
	{Enclosure: shortOf, Rule: finding.Rule{ID: "too-warm", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The air gets too warm with the heaters working as they should.",
		Why:     "There is no cooler place to go to than the air at the far end.",
		Source:  "the species sheet; heat balance after ISO 6946",
		Instead: "Fewer watts, a timer, a cooler room, or the thermostat's probe where it is warmest."}},
	{Enclosure: stuckScalds, Rule: finding.Rule{ID: "stuck-scalds", Severity: finding.Danger, Silence: finding.Never,
		Title:   "If the thermostat sticks, the heater burns within minutes.",
		Why:     "Thermostats fail. With this heater always on, in the warmest room, even the favourable end of what is known lies above what burns skin in minutes. Animals do not draw back from heat that burns them.",
		Source:  "ISO 13732-1 on contact with hot surfaces (48 C for 10 minutes; from memory); Mader 2008, dvm360, on burns of reptiles",
		Instead: "A mat of 150 to 250 W for a square metre. A second thermostat does not make this one safe."}},
	{Enclosure: stuckHot, Rule: finding.Rule{ID: "stuck-hot", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "If the thermostat sticks, the heater burns or overheats the animals.",
		Why:     "Thermostats fail. With this heater always on, in the warmest room, a surface that animals can lie on, or the air, gets past what they bear. They do not draw back from heat that burns them.",
		Source:  "ISO 13732-1 on contact with hot surfaces (43 C for 8 hours; from memory); Mader 2008, dvm360, on burns of reptiles; Punzo 1991, Bull. Br. arachnol. Soc. 8:277: half of the tarantulas died at 39.8 to 44.3 C",
		Instead: "A mat of 150 to 250 W for a square metre, without foam behind it; or a second thermostat in line with the first, set a little higher."}},
	{Enclosure: heaterFlux, Rule: finding.Rule{ID: "heater-flux", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "A mat has more power for its size than mats have.",
		Why:     "Power for each square metre decides how hot a mat gets. Makers sell 137 to 230 W; foam or foil behind it sends twice as much in.",
		Source:  "maker pages and keepers' measurements of eight mats; chelonium.de: never above 42 C at 137 to 171 W",
		Instead: "Measure the mat and write its size; a larger mat of the same power gets less hot."}},
	{Enclosure: heatBeneath, Rule: finding.Rule{ID: "heat-beneath", Severity: finding.Error, Silence: finding.OnlyCaution,
		Title:   "The floor above a mat gets hotter than an animal can touch.",
		Why:     "Substrate over a mat dries, and dry substrate insulates: the floor beneath it goes on warming, and a burrower digs towards it. A logger on such a floor showed above 60 C in a room of 20 C.",
		Source:  "Tortoise Trust forum, t=10207, 17 February 2014 (logged); reptiliansource.com and Bustard, British Tarantula Society, advise against; dubiaroaches.com and southernxreptiles.com use it with 2.5 to 5 cm of substrate at most",
		Instead: "Put it on a side or the back, above the substrate; or 2 cm of substrate over it, with the thermostat's probe on the floor itself."}},
	{Enclosure: probeFar, Rule: finding.Rule{ID: "probe-far", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The thermostat's probe is where it does not see how hot the heater gets.",
		Why:     "A thermostat holds the temperature of its probe. With the probe in the air or at the far end the heater goes on until that is warm, however hot it is itself.",
		Source:  "deadpanexotics.com, on temperature gradients; blackboxcages.com",
		Instead: "Put the probe on the warmest surface that the animals can reach, and set it to the warm end."}},
	{Collection: figureImpossible, Rule: finding.Rule{ID: "figure-impossible", Severity: finding.Error, Silence: finding.Never,
		Title:   "A figure of a room or of a heater cannot be so.",
		Why:     "It is mostly a slip of the unit or of a zero, and all that is reckoned with it is wrong.",
		Source:  "physics",
		Instead: "The figure as it is."}},
	{Enclosure: heaterRock, Rule: finding.Rule{ID: "heater-rock", Severity: finding.Error, Silence: finding.Never,
		Title:   "A heated stone or pad that the animals lie on.",
		Why:     "It has hot places, and they do not draw back from heat that burns them.",
		Source:  "Mader 2008, dvm360; veterinary-practice.com; wikivet, on burns of reptiles",
		Instead: "A mat outside on a wall, or a lamp over the lid."}},
	{Enclosure: heaterStrong, Rule: finding.Rule{ID: "heater-strong", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "A heater is much stronger than it needs to be.",
		Why:     "It is on for a small part of the time, so the spot swings, and if its thermostat fails it gets hotter.",
		Source:  "jbl.de, blog 271: a mat so weak that a failed controller cooks nobody",
		Instead: "The next smaller one."}},
	{Enclosure: measuredHarms, Rule: finding.Rule{ID: "measured-harmful", Severity: finding.Urgent, Silence: finding.Never,
		Title:   "What the plan says was measured is past what the species bears.",
		Why:     "It is so now, whatever is reckoned.",
		Source:  "the species sheet",
		Instead: "Put it right, and measure again.",
		Now:     "put heat and damp right now: see what was measured, in the plan"}},
	{Enclosure: measuredOdd, Rule: finding.Rule{ID: "measured-odd", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "What was measured lies far from what is to be expected of the plan, or says nothing.",
		Why:     "One of the two is wrong: the thermometer, where it lay, or what the plan says of heater, box and room.",
		Source:  "the plan itself; heat balance after ISO 6946",
		Instead: "Measure once more, some hours after the lid was last opened; look at power, size and place of the heater."}},
}

// report returns the physics of the enclosure, worked out once for all its rules.
func (e *Enclosure) report() (*balance.Report, bool) {
	if !e.reported {
		e.reported = true
		e.known = e.balance.Read(e.Collection.Plan, e.Plan, e.Life)
	}
	return &e.balance, e.known
}

func (e *Enclosure) temperature(t climate.Celsius) string {
	return quantity.Format(float64(t), e.Plan.Degrees())
}

func (e *Enclosure) spread(b climate.Band[climate.Celsius]) string {
	return wording.Degrees(b, e.Plan.Degrees())
}

// add adds a finding at a severity of its rule or below.
func (e *Enclosure) add(f finding.Finding, how finding.Severity) {
	if how >= f.Rule.Severity {
		e.Add(f)
		return
	}
	e.Soft(f, how)
}

// bare reports whether a heater of the enclosure has no thermostat: another rule says it.
func (e *Enclosure) bare() bool {
	for _, h := range e.heaters() {
		if !e.Collection.Plan.Setting(h).Set() && !h.Tube() {
			return true
		}
	}
	return false
}

func share(b climate.Band[climate.Share]) climate.Band[climate.Percent] {
	return climate.Band[climate.Percent]{Low: climate.Percent(100 * b.Low), Likely: climate.Percent(100 * b.Likely), High: climate.Percent(100 * b.High)}
}
