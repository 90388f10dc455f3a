package climate

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
		lidU:     e.uValue(LidFace),
	}
	for f := BackFace; f <= RightFace; f++ {
		p.wallU = max(p.wallU, e.uValue(f))
		p.walls += e.loses(f)
	}
	p.density = AirDensity * KilogramPerCubicMetre(p.pressure/StandardPressure)
	p.lid, p.base = e.loses(LidFace), e.loses(BaseFace)
	return p
}

func (p *parts) fabric() float64 { return float64(p.walls + p.lid + p.base) }

func (p *parts) vents(n PerHour) WattPerKelvin {
	return VentilationConductance(n, p.volume, p.density, AirHeat)
}
