package climate

import "math"

// Balance is the steady heat of an enclosure at a target temperature.
type Balance struct {
	Target Celsius

	// Likely conductances of the parts, and the likely heat that leaves as water
	// vapour at the target in the coldest room.
	Walls, Lid, Base, Vents WattPerKelvin
	Latent                  Watt

	// Loss is all of them together, the vapour's heat spread over the rise.
	Loss Band[WattPerKelvin]

	Needed  Band[Watt]    // inside, at the target in the coldest room
	Supply  Band[Watt]    // inside, all heaters on together
	Margin  Band[float64] // Supply over Needed
	Verdict Verdict       // whether Margin reaches 1; none for an enclosure without volume
	Matters Input         // the input that widens Margin most

	// RiseReachable is how far above the room all heaters together get, evaporation
	// growing with the rise as it does up to the target.
	RiseReachable Band[Kelvin]

	// Duty is the share of time that heaters with a thermostat run in the mean
	// room, of their hours a day; without a thermostat, load over power, at most 1.
	Duty Band[Share]
	// Month is what all heaters draw in a mean month in the mean room.
	Month Band[KilowattHour]

	// WarmestIfStuck is the mean air in the warmest room with every heater stuck
	// on and the substrate dried out. Judge it by its High end.
	WarmestIfStuck Band[Celsius]
}

// Balance returns the steady heat of the enclosure at target, with the given
// heaters all switched on: for a night, pass those that run at night.
func (e Enclosure) Balance(target Celsius, heaters []Heater) Balance {
	p := e.parts()
	rise := float64(target - e.Room.Low)
	b := Balance{Target: target, Walls: p.walls, Lid: p.lid, Base: p.base, Vents: p.vents(p.change.Likely)}

	dry, drySpread := p.dryLoss()
	loss, lossSpread := dry, drySpread
	if rise > 0 {
		v := e.vapour(&p, target, SaturationPressure(target), SaturationPressure(e.Room.Low))
		b.Latent = v.latent(p.change.Likely, 1)
		loss, lossSpread = p.lossWith(v, rise)
	}
	supply, supplySpread := e.supply(heaters)

	b.Loss = bandOf[WattPerKelvin](loss, lossSpread)
	b.Needed = bandOf[Watt](loss*max(0, rise), lossSpread)
	b.Supply = bandOf[Watt](supply, supplySpread)
	ratio := supplySpread.over(lossSpread)
	b.RiseReachable = bandOf[Kelvin](supply/loss, ratio)
	b.WarmestIfStuck = above(e.Room.High, bandOf[Kelvin](supply/dry, supplySpread.over(drySpread)))
	switch {
	case !(p.volume > 0):
	case rise <= 0:
		b.Margin, b.Verdict = Exactly(math.Inf(1)), Holds
	default:
		b.Margin = bandOf[float64](supply/(loss*rise), ratio)
		b.Verdict, b.Matters = b.Margin.Reaches(1), ratio.matters
	}

	// Load over supply in the mean room, the room's own range being one more input.
	middle := loss * max(0, float64(target-e.Room.middle()))
	loadSpread := lossSpread.over(supplySpread)
	loadSpread.add(RoomTemperature, middle, loss*max(0, float64(target-e.Room.High)), loss*max(0, rise))
	load := bandOf[Watt](middle, loadSpread)
	use := e.use(heaters)
	b.Duty.Low, b.Month.Low = use.at(load.Low)
	b.Duty.Likely, b.Month.Likely = use.at(load.Likely)
	b.Duty.High, b.Month.High = use.at(load.High)
	return b
}

// parts are the conductances of an enclosure and what its air carries.
type parts struct {
	walls, lid, base  WattPerKelvin
	wallU, lidU       WattPerSquareMetreKelvin
	wallArea, topArea SquareMetre
	volume            CubicMetre
	change            Band[PerHour]
	pressure          Pascal
	density           KilogramPerCubicMetre
}

func (e *Enclosure) parts() parts {
	p := parts{
		wallArea: e.Inside.WallArea(),
		topArea:  e.Inside.FloorArea(),
		volume:   e.Inside.Volume(),
		change:   e.Ventilation.AirChange(),
		pressure: AltitudePressure(e.Room.Altitude),
		wallU:    UValue(FilmWall, FilmWall, e.Wall.layer(), e.wrap()),
		lidU:     e.Lid.uValue(),
	}
	baseU := UValue(FilmDown, FilmDown+e.Base.resistance(), e.Substrate.layer(), e.Wall.layer())
	p.density = AirDensity * KilogramPerCubicMetre(p.pressure/StandardPressure)
	p.walls, p.lid, p.base = p.wallU.Conductance(p.wallArea), p.lidU.Conductance(p.topArea), baseU.Conductance(p.topArea)
	return p
}

func (p *parts) fabric() float64 { return float64(p.walls + p.lid + p.base) }

func (p *parts) vents(n PerHour) WattPerKelvin {
	return VentilationConductance(n, p.volume, p.density, AirHeat)
}

// dryLoss is the loss in W/K without evaporation.
func (p *parts) dryLoss() (float64, spread) {
	var s spread
	fabric := p.fabric()
	h := fabric + float64(p.vents(p.change.Likely))
	s.add(FabricLoss, h, h-(1-fabricLow)*fabric, h+(fabricHigh-1)*fabric)
	s.add(AirChange, h, fabric+float64(p.vents(p.change.Low)), fabric+float64(p.vents(p.change.High)))
	return h, s
}

// lossWith is the loss in W/K with the heat of vapour spread over the rise.
func (p *parts) lossWith(v vapour, rise float64) (float64, spread) {
	at := func(n PerHour, wet float64) float64 {
		return p.fabric() + float64(p.vents(n)) + float64(v.latent(n, wet))/rise
	}
	var s spread
	n := p.change
	h := at(n.Likely, 1)
	s.add(FabricLoss, h, h-(1-fabricLow)*p.fabric(), h+(fabricHigh-1)*p.fabric())
	s.add(AirChange, h, at(n.Low, 1), at(n.High, 1))
	s.add(Evaporation, h, at(n.Likely, evapLow), at(n.Likely, evapHigh))
	return h, s
}

// supply is the heat in W that all heaters together bring inside.
func (e *Enclosure) supply(heaters []Heater) (float64, spread) {
	var sum float64
	for i := range heaters {
		sum += float64(heaters[i].Power) * float64(e.heatShare(&heaters[i]).Likely)
	}
	var s spread
	for i := range heaters {
		share, w := e.heatShare(&heaters[i]), float64(heaters[i].Power)
		s.add(HeaterShare, sum, sum-w*float64(share.Likely-share.Low), sum+w*float64(share.High-share.Likely))
	}
	s.add(HeaterRating, sum, sum*ratingLow, sum*ratingHigh)
	return sum, s
}

// use is how a set of heaters draws power over a day.
type use struct {
	timed       Watt  // mean draw of heaters without a thermostat
	timedInside Watt  // heat they bring inside while on
	timedHours  Share // part of the day they are on
	steered     Watt  // rated power of heaters with a thermostat, all on
	steeredMean Watt  // the same, weighted by the hours they may run
	inside      Watt  // heat those bring inside while on
}

func (e *Enclosure) use(heaters []Heater) use {
	var u use
	var daily float64 // heat of timed heaters over a day, in W
	for i := range heaters {
		h := &heaters[i]
		day := h.dayShare()
		share := float64(e.heatShare(h).Likely)
		if h.Thermostat {
			u.steered += h.Power
			u.steeredMean += h.Power * Watt(day)
			u.inside += h.Power * Watt(share)
		} else {
			u.timed += h.Power * Watt(day)
			daily += float64(h.Power) * share * float64(day)
			u.timedHours = max(u.timedHours, day)
		}
	}
	if u.timedHours > 0 {
		u.timedInside = Watt(daily / float64(u.timedHours))
	}
	return u
}

// at returns duty and monthly energy at a load. A lamp on a timer takes its heat
// off the thermostat's load while it burns, so lit and dark hours are apart.
func (u use) at(load Watt) (Share, KilowattHour) {
	if u.steered == 0 {
		return DutyCycle(load, u.timedInside), Energy(u.timed, DaysPerMonth)
	}
	duty := u.timedHours*DutyCycle(load-u.timedInside, u.inside) + (1-u.timedHours)*DutyCycle(load, u.inside)
	return duty, Energy(u.timed+u.steeredMean*Watt(duty), DaysPerMonth)
}

// Gradient is what can honestly be said of a warm and a cool end. One body of
// mixed air has no ends: how far they part depends on where the heat falls and on
// currents that no size or wattage gives, so this checks necessary conditions
// only. Holds here means "not ruled out": two thermometers decide.
type Gradient struct {
	Mean    Celsius // between both ends, a straight gradient assumed
	Balance Balance // at Mean

	// CoolEnd says whether the room lets the cool end be that cool, heaters being
	// unable to cool: Holds if even the warmest room is no warmer, MayNotHold if
	// only the coldest is not, CannotHold if not even that or if the cool end is
	// to be warmer than the warm end.
	CoolEnd Verdict
	Verdict Verdict // the worse of CoolEnd and Balance.Verdict
}

// Gradient checks a warm and a cool end against the room and the heaters.
func (e Enclosure) Gradient(warm, cool Celsius, heaters []Heater) Gradient {
	g := Gradient{Mean: (warm + cool) / 2, CoolEnd: MayNotHold}
	g.Balance = e.Balance(g.Mean, heaters)
	switch {
	case cool > warm || cool < e.Room.Low:
		g.CoolEnd = CannotHold
	case cool >= e.Room.High && warm >= cool:
		g.CoolEnd = Holds
	}
	g.Verdict = min(g.CoolEnd, g.Balance.Verdict)
	return g
}
