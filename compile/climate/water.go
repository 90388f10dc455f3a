package climate

import "math"

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
	s := e.surface()
	return vapour{
		volume: float64(p.volume),
		wet:    s.draws(likeliest, 1),
		sat:    float64(vapourDensity(satIn, in)),
		room:   float64(vapourDensity(satRoom*Pascal(e.Room.middleRH()/100), in)),
	}
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

// settles is the steady relative humidity with wet surfaces that draw so many m³/s, and
// with so many g of water that evaporate each second besides.
func (v vapour) settles(n PerHour, room, draws, more float64) float64 {
	out := float64(n) * v.volume / 3600
	if out+draws <= 0 {
		return 100
	}
	return min(100, 100*(out*room+draws*v.sat+more)/((out+draws)*v.sat))
}

// Water is what it takes to hold a humidity, and whether it can be done.
type Water struct {
	Inside Celsius
	Target Percent // the middle of the range asked for

	Needed Band[GramPerDay] // carried out by the air at Target, in mL as well
	Misted Band[GramPerDay] // Needed less what the dish gives off by itself
	// Least and Most are Misted at the low and the high end of the range.
	Least, Most Band[GramPerDay]
	// Saturated is what the air carries out at 100 %: what is brought in beyond it
	// stays as water.
	Saturated Band[GramPerDay]

	// Sustained is what dish and substrate, as damp as it is said to be, give off
	// at Target all day. Spray that runs dry between two mistings holds nothing.
	Sustained Band[GramPerDay]
	Supply    Verdict // whether Sustained covers what the low end of the range loses

	DewPoint Celsius // at Target
	// FogsAt is the humidity at which the coldest wall fogs; a range above it cannot be
	// held, as the glass takes out what is put in.
	FogsAt       Band[Percent]
	FogsInCorner Percent // the same behind décor and in corners
	Ceiling      Verdict // whether FogsAt leaves room for the low end of the range

	// Upper says whether it stays below the high end of the range with nobody misting:
	// CannotHold if even the driest end of Unmisted is too wet.
	Upper Verdict

	// Verdict is the worst of Supply, Ceiling and Upper, and Holds only where Unmisted
	// likely lies within the range.
	Verdict Verdict
	Matters Input // what widens Needed most

	Unmisted  Band[Percent] // steady humidity with nobody misting
	DriestRH  Percent       // no drier than this: the dampest, coldest room air, warmed
	MistFades Band[Minute]  // how soon spray is gone unless wet surfaces keep it up: 1/n
}

// loss is what air changes carry out of an enclosure.
type loss struct {
	p              *parts
	in             Celsius
	satIn, satRoom Pascal
	air            Band[PerHour]
	room           *Room
}

// at is what they carry out at an inside humidity.
func (l *loss) at(n PerHour, inside, room Percent) float64 {
	vin := Pascal(inside/100) * l.satIn
	out := humidityRatioOf(Pascal(room/100)*l.satRoom, l.p.pressure)
	return max(0, float64(waterPerDay(n, l.p.volume, DryAirDensity(l.in, vin, l.p.pressure), humidityRatioOf(vin, l.p.pressure)-out)))
}

func (l *loss) spread(inside Percent) (likely float64, s spread) {
	likely = l.at(l.air.Likely, inside, l.room.middleRH())
	s.add(AirChange, float64(l.air.Likely), float64(l.air.Low), float64(l.air.High)) // water is in proportion to the air changed
	s.add(RoomHumidity, likely, l.at(l.air.Likely, inside, l.room.RHHigh), l.at(l.air.Likely, inside, l.room.RHLow))
	return likely, s
}

func (l *loss) band(inside Percent) Band[GramPerDay] { return bandOf[GramPerDay](l.spread(inside)) }

// roomAir is the temperature of the room for an inside at a temperature. A room that is
// warmer on the mean is as cold as an inside that is reckoned at its coldest.
func (e *Enclosure) roomAir(in Celsius) Celsius { return min(e.Room.Middle(), in) }

// smallBox is the volume below which the classes of air change are too low: a few small
// holes are as many in a cup as in a tank, so that it is n·V that they have in common.
// Judgement; half of that is likely.
const smallBox CubicMetre = 0.010

// air is how often the air changes, for water.
func (p *parts) air() Band[PerHour] {
	b := p.change
	if p.volume > 0 && p.volume < smallBox {
		more := PerHour(smallBox / p.volume)
		b.Likely *= PerHour(math.Sqrt(float64(more)))
		b.High *= more
	}
	return b
}

// WaterNeed returns the water that holds the inside, at temperature in, between
// the humidities low and high, in the middle of the room's range.
func (e Enclosure) WaterNeed(in Celsius, low, high Percent) Water {
	p := e.parts()
	w := Water{Inside: in, Target: (low + high) / 2}
	satIn, satRoom := SaturationPressure(in), SaturationPressure(e.roomAir(in))
	l := loss{&p, in, satIn, satRoom, p.air(), &e.Room}
	likely, s := l.spread(w.Target)
	w.Needed, w.Matters = bandOf[GramPerDay](likely, s), s.matters
	w.Saturated = l.band(100)

	// Evaporation at a given inside humidity, in g/day.
	v := e.vapour(&p, in, satIn, satRoom)
	gives := func(draws float64, rh Percent) float64 {
		return max(0, draws*v.sat*(1-float64(rh)/100)*secondsPerDay)
	}
	wet := e.surface()
	draws, sE := wet.spread()
	w.Sustained = bandOf[GramPerDay](gives(draws, w.Target), sE)
	misted := func(needed Band[GramPerDay], rh Percent) Band[GramPerDay] {
		dish := GramPerDay(gives(float64(stillAir)*wet.dish, rh))
		return Band[GramPerDay]{max(0, needed.Low-dish), max(0, needed.Likely-dish), max(0, needed.High-dish)}
	}
	w.Misted = misted(w.Needed, w.Target)
	w.Least, w.Most = misted(l.band(low), low), misted(l.band(high), high)

	// Supply at the low end of the range, where surfaces give most and air takes least.
	loses, losesSpread := l.spread(low)
	switch {
	case !(p.volume > 0):
	case loses == 0 && losesSpread.most == 0:
		w.Supply = Holds
	case loses == 0: // only a room drier than its middle takes anything
		w.Supply = max(MayNotHold, Exactly(gives(draws, low)).Reaches(losesSpread.most))
	default:
		w.Supply = bandOf[float64](gives(draws, low)/loses, sE.over(losesSpread)).Reaches(1)
	}

	w.DewPoint = dewPointOf(Pascal(w.Target/100) * satIn)
	e.fogging(&w, &p, satIn)
	w.Unmisted = e.settles(&v, &l, 0)
	if p.volume > 0 {
		w.Ceiling = w.FogsAt.Reaches(low)
		w.Upper = w.Unmisted.within(high)
	}
	w.Verdict = min(w.Supply, w.Ceiling, w.Upper)
	w.DriestRH = min(100, e.Room.RHHigh*Percent(SaturationPressure(e.Room.Low)/satIn))
	n := p.change
	w.MistFades = Band[Minute]{60 / Minute(n.High), 60 / Minute(n.Likely), 60 / Minute(n.Low)}
	return w
}

// settles is the band of the humidity that is reached with so many g of water a day
// brought in. The substrate, as damp as it is said to be, is a store and no source: what
// is brought in replaces what it gave off, so that the damper of both counts, not their sum.
func (e *Enclosure) settles(v *vapour, l *loss, add GramPerDay) Band[Percent] {
	wet := e.surface()
	more := float64(add) / secondsPerDay
	roomAt := func(rh Percent) float64 { return float64(vapourDensity(l.satRoom*Pascal(rh/100), l.in)) }
	at := func(n PerHour, room float64, floor end, times float64) float64 {
		rh := v.settles(n, room, wet.draws(floor, times), 0)
		if more > 0 {
			rh = max(rh, v.settles(n, room, float64(stillAir)*times*wet.dish*dishFilled[floor], more))
		}
		return rh
	}
	n := l.air
	likely := at(n.Likely, v.room, likeliest, 1)
	var s spread
	s.add(AirChange, likely, at(n.Low, v.room, likeliest, 1), at(n.High, v.room, likeliest, 1))
	s.add(RoomHumidity, likely, at(n.Likely, roomAt(e.Room.RHLow), likeliest, 1), at(n.Likely, roomAt(e.Room.RHHigh), likeliest, 1))
	s.add(Evaporation, likely, at(n.Likely, v.room, likeliest, evapLow), at(n.Likely, v.room, likeliest, evapHigh))
	s.add(SubstrateState, likely, at(n.Likely, v.room, driest, 1), at(n.Likely, v.room, wettest, 1))
	b := bandOf[Percent](likely, s)
	b.High = min(100, b.High)
	return b
}

// within returns whether a band stays at or below most.
func (b Band[T]) within(most T) Verdict {
	switch {
	case b.Low > most:
		return CannotHold
	case b.Likely > most:
		return MayNotHold
	}
	return Holds
}

// Watered is what becomes of water that is brought in each day.
type Watered struct {
	Added     GramPerDay
	Settles   Band[Percent]    // the humidity that is reached
	Saturated Band[GramPerDay] // the most that the air carries out
	// Spare is what the substrate takes up until it is wet: nothing where it is already,
	// or where the floor is bare.
	Spare Band[Litre]
	// Stands says after how many days water stands: Low the soonest, High with the most
	// air and the most room in the substrate; infinite where the air takes all of it.
	Stands Band[Day]
}

// InMinutes returns a band of days in minutes.
func InMinutes(b Band[Day]) Band[Minute] {
	const day = 24 * 60
	return Band[Minute]{Minute(b.Low * day), Minute(b.Likely * day), Minute(b.High * day)}
}

// What of the pores really takes up water, as a factor: judgement.
const spareLow, spareHigh = 0.6, 1.4

// Watered returns what becomes of so much water a day, at temperature in.
func (e Enclosure) Watered(in Celsius, add GramPerDay) Watered {
	p := e.parts()
	satIn, satRoom := SaturationPressure(in), SaturationPressure(e.roomAir(in))
	l := loss{&p, in, satIn, satRoom, p.air(), &e.Room}
	v := e.vapour(&p, in, satIn, satRoom)
	w := Watered{Added: add, Settles: e.settles(&v, &l, add), Saturated: l.band(100)}
	s := &e.Substrate
	pores := max(0, s.as(Wet).water-s.state().water)
	litres := float64(e.Inside.FloorArea()) * float64(max(0, s.Depth)) * 1000 * float64(pores)
	w.Spare = Band[Litre]{Litre(litres * spareLow), Litre(litres), Litre(litres * spareHigh)}
	until := func(spare Litre, leaves GramPerDay) Day {
		if add <= leaves {
			return Day(math.Inf(1))
		}
		return Day(float64(spare) * 1000 / float64(add-leaves))
	}
	w.Stands = Band[Day]{until(w.Spare.Low, w.Saturated.Low), until(w.Spare.Likely, w.Saturated.Likely), until(w.Spare.High, w.Saturated.High)}
	return w
}

// fogging fills in where the coldest of walls and lid fogs.
func (e *Enclosure) fogging(w *Water, p *parts, satIn Pascal) {
	cold := float64(p.wallU) * float64(FilmWall)
	if e.Lid.Kind != MeshLid {
		cold = max(cold, float64(p.lidU)*float64(FilmUp))
	}
	at := func(part float64) Percent {
		surface := w.Inside - Celsius(min(1, part))*max(0, w.Inside-e.Room.Middle())
		return min(100, 100*Percent(SaturationPressure(surface)/satIn))
	}
	w.FogsAt = Band[Percent]{at(cold * fabricHigh), at(cold), at(cold * fabricLow)}
	corner := UValue(FilmCorner, FilmWall+e.leastCover(), e.Wall.layer())
	w.FogsInCorner = at(float64(corner) * float64(FilmCorner))
}
