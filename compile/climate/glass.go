package climate

// InnerSurfaceTemperature returns the temperature of the inside face of a wall
// with U-value u and inside film: Ti - U·Rsi·(Ti - Tr). ISO 13788.
func InnerSurfaceTemperature(in, room Celsius, u WattPerSquareMetreKelvin, film SquareMetreKelvinPerWatt) Celsius {
	return in - Celsius(float64(u)*float64(film))*(in-room)
}

// FoggingThreshold returns the relative humidity above which a surface of the
// given temperature gets wet; 100 if the surface is not colder than the air. For
// single glass it is about 100 - 2.6 % for each kelvin above the room. ISO 13788.
func FoggingThreshold(in, surface Celsius) Percent {
	if surface >= in {
		return 100
	}
	return 100 * Percent(SaturationPressure(surface)/SaturationPressure(in))
}
