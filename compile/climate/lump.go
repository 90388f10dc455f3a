package climate

import "math"

// Lump is an enclosure as a logger in its air sees it: what warms it by a kelvin, and how fast
// it cools with everything off.
type Lump struct {
	Loss Band[WattPerKelvin]
	// Tau is the time in which the air has fallen to 1/e of its distance from the room. Its
	// high end is that of one lump, in which the air is no faster than the soil.
	Tau Band[Minute]
}

// Lump returns it as far as is known without a measurement.
func (e Enclosure) Lump() Lump {
	p := e.parts()
	n := p.change
	loss := func(n PerHour, factor float64) float64 { return p.fabric()*factor + float64(p.vents(n)) }
	likely := loss(n.Likely, 1)
	var s spread
	s.add(FabricLoss, likely, loss(n.Likely, fabricLow), loss(n.Likely, fabricHigh))
	s.add(AirChange, likely, loss(n.Low, 1), loss(n.High, 1))
	out := Lump{Loss: bandOf[WattPerKelvin](likely, s)}

	m := e.twoNode(&p)
	const start, room = 10, 0
	tau := func(m TwoNode) Minute {
		f := m.Fall(start, m.SubstrateAtRest(start, room, 0), room, RoomCourse{})
		return f.AirReaches(Celsius(start / math.E)).Minute()
	}
	out.Tau.Likely = tau(m)
	fast := m
	fast.AirToRoom += p.vents(n.High) - p.vents(n.Likely)
	fast.AirToSubstrate *= contactLow
	fast.Air *= JoulePerKelvin(quicker)
	fast.Substrate *= JoulePerKelvin(quicker)
	out.Tau.Low = min(out.Tau.Likely, tau(fast))
	out.Tau.High = max(out.Tau.Likely, TimeConstant(e.heatStore(&p, m), out.Loss.Low).Minute()*Minute(storeHigh))
	return out
}
