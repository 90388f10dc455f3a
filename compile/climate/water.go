package climate

// VaporisationHeat is the latent heat of water at 25 °C. IAPWS-95.
const VaporisationHeat JoulePerGram = 2441.7

func waterPerDay(n PerHour, v CubicMetre, density KilogramPerCubicMetre, w KilogramPerKilogram) GramPerDay {
	return GramPerDay(float64(density) * float64(n) * float64(v) * float64(w) * 24 * 1000)
}

// stillAir is the mass transfer coefficient over a wet surface in an enclosure:
// the geometric mean of what hc 2 and 5 W/m²K give, which lies between
// free convection by Shah 2014, ASHRAE Transactions 120(2), and the Lewis analogy
// at hc 4, Incropera, sec. 6.7. Judgement; the factors evapLow and evapHigh span the methods.
const stillAir MetrePerSecond = 2.9e-3

// vapour is the exchange of water between wet surfaces, inside air and room air,
// which is mixing by volume: n·V·(ρ - ρroom) = hm·A·(ρsat - ρ).
type vapour struct {
	volume float64 // m³
	wet    float64 // m³/s drawn from wet surfaces at their likely rate
	sat    float64 // g/m³ at the inside temperature
	room   float64 // g/m³
}

// vapour takes the saturation pressures inside and in the room.
func (e *Enclosure) vapour(p *parts, in Celsius, satIn, satRoom Pascal) vapour {
	return vapour{
		volume: float64(p.volume),
		wet:    float64(stillAir) * e.wetArea(),
		sat:    float64(vapourDensity(satIn, in)),
		room:   float64(vapourDensity(satRoom*Pascal(e.Room.middleRH()/100), in)),
	}
}

func (e *Enclosure) wetArea() float64 {
	return float64(e.Inside.FloorArea())*e.Substrate.wetness() + float64(e.Dish.Surface)
}

// latent returns the heat that vapour carries out with the air, factor being on
// the evaporation of each wet surface.
func (v vapour) latent(n PerHour, factor float64) Watt {
	out, wet := float64(n)*v.volume/3600, v.wet*factor
	if wet <= 0 || out <= 0 || v.sat <= v.room {
		return 0
	}
	return Watt(out * wet / (out + wet) * (v.sat - v.room) * float64(VaporisationHeat))
}

// unaided returns the steady relative humidity with no misting at all.
func (v vapour) unaided(n PerHour, factor float64) float64 {
	out, wet := float64(n)*v.volume/3600, v.wet*factor
	return min(100, 100*(out*v.room+wet*v.sat)/((out+wet)*v.sat))
}

// Water is what it takes to hold a humidity, and whether it can be done.
type Water struct {
	Inside Celsius
	Target Percent // the middle of the range asked for

	Needed Band[GramPerDay] // carried out by the air at Target, in mL as well
	Misted Band[GramPerDay] // Needed less what the dish gives off by itself

	// Sustained is what dish and substrate, as damp as it is said to be, give off
	// at Target all day. Spray that runs dry between two mistings holds nothing.
	Sustained Band[GramPerDay]
	Supply    Verdict // whether Sustained covers what the low end of the range loses

	DewPoint Celsius // at Target
	// FogsAt is the humidity at which the coldest wall fogs in the coldest room; a
	// range above it cannot be held, as the glass takes out what is put in.
	FogsAt       Band[Percent]
	FogsInCorner Percent // the same behind décor and in corners
	Ceiling      Verdict // whether FogsAt leaves room for the low end of the range

	Verdict Verdict // the worse of Supply and Ceiling
	Matters Input   // what widens Needed most

	Unmisted  Band[Percent] // steady humidity with nobody misting
	DriestRH  Percent       // no drier than this: the dampest, coldest room air, warmed
	MistFades Band[Minute]  // how soon spray is gone unless wet surfaces keep it up: 1/n
}

// WaterNeed returns the water that holds the inside, at temperature in, between
// the humidities low and high, in the middle of the room's range.
func (e Enclosure) WaterNeed(in Celsius, low, high Percent) Water {
	p := e.parts()
	room := e.Room.Middle()
	n := p.change
	w := Water{Inside: in, Target: (low + high) / 2}

	satIn, satRoom := SaturationPressure(in), SaturationPressure(room)
	vin := Pascal(w.Target/100) * satIn
	need := func(n PerHour, inside Pascal, rh Percent) float64 {
		out := humidityRatioOf(Pascal(rh/100)*satRoom, p.pressure)
		return max(0, float64(waterPerDay(n, p.volume, DryAirDensity(in, inside, p.pressure), humidityRatioOf(inside, p.pressure)-out)))
	}
	var sA spread // water is in proportion to the air changed
	sA.add(AirChange, float64(n.Likely), float64(n.Low), float64(n.High))
	spreadOf := func(likely float64, inside Pascal) spread {
		s := sA
		s.add(RoomHumidity, likely, need(n.Likely, inside, e.Room.RHHigh), need(n.Likely, inside, e.Room.RHLow))
		return s
	}
	mid := e.Room.middleRH()
	likely := need(n.Likely, vin, mid)
	s := spreadOf(likely, vin)
	w.Needed, w.Matters = bandOf[GramPerDay](likely, s), s.matters

	// Evaporation at a given inside humidity, in g/day.
	v := e.vapour(&p, in, satIn, satRoom)
	gives := func(area float64, rh Percent) float64 {
		return max(0, float64(stillAir)*area*v.sat*(1-float64(rh)/100)*secondsPerDay)
	}
	var sE spread
	sE.add(Evaporation, 1, evapLow, evapHigh)
	w.Sustained = bandOf[GramPerDay](gives(e.wetArea(), w.Target), sE)
	dish := GramPerDay(gives(float64(e.Dish.Surface), w.Target))
	w.Misted = Band[GramPerDay]{max(0, w.Needed.Low-dish), max(0, w.Needed.Likely-dish), max(0, w.Needed.High-dish)}

	// Verdict at the low end of the range, where surfaces give most and air takes least.
	least := Pascal(low/100) * satIn
	loses := need(n.Likely, least, mid)
	losesSpread := spreadOf(loses, least)
	switch {
	case !(p.volume > 0):
	case loses == 0 && losesSpread.most == 0:
		w.Supply = Holds
	case loses == 0: // only a room drier than its middle takes anything
		w.Supply = max(MayNotHold, Exactly(gives(e.wetArea(), low)).Reaches(losesSpread.most))
	default:
		w.Supply = bandOf[float64](gives(e.wetArea(), low)/loses, sE.over(losesSpread)).Reaches(1)
	}

	w.DewPoint = dewPointOf(vin)
	e.fogging(&w, &p, satIn)
	if p.volume > 0 {
		w.Ceiling = w.FogsAt.Reaches(low)
	}
	w.Verdict = min(w.Supply, w.Ceiling)

	unaided := v.unaided(n.Likely, 1)
	var sU spread
	sU.add(AirChange, unaided, v.unaided(n.Low, 1), v.unaided(n.High, 1))
	sU.add(Evaporation, unaided, v.unaided(n.Likely, evapLow), v.unaided(n.Likely, evapHigh))
	w.Unmisted = bandOf[Percent](unaided, sU)
	w.Unmisted.High = min(100, w.Unmisted.High)
	w.DriestRH = min(100, e.Room.RHHigh*Percent(SaturationPressure(e.Room.Low)/satIn))
	w.MistFades = Band[Minute]{60 / Minute(n.High), 60 / Minute(n.Likely), 60 / Minute(n.Low)}
	return w
}

// fogging fills in where the coldest of walls and lid fogs.
func (e *Enclosure) fogging(w *Water, p *parts, satIn Pascal) {
	cold := float64(p.wallU) * float64(FilmWall)
	if e.Lid.Kind != MeshLid {
		cold = max(cold, float64(p.lidU)*float64(FilmUp))
	}
	at := func(part float64) Percent {
		surface := w.Inside - Celsius(min(1, part))*max(0, w.Inside-e.Room.Low)
		return min(100, 100*Percent(SaturationPressure(surface)/satIn))
	}
	w.FogsAt = Band[Percent]{at(cold * fabricHigh), at(cold), at(cold * fabricLow)}
	corner := UValue(FilmCorner, FilmWall+e.leastCover(), e.Wall.layer())
	w.FogsInCorner = at(float64(corner) * float64(FilmCorner))
}
