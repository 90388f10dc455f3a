package climate

// The units of this package. Each is the plain SI or customary unit of its name.
type (
	Celsius                  float64 // a temperature on the Celsius scale
	Kelvin                   float64 // a difference of two temperatures
	Percent                  float64 // relative humidity over water, 0 to 100
	Pascal                   float64
	Metre                    float64
	SquareMetre              float64
	CubicMetre               float64
	Litre                    float64
	Second                   float64
	Minute                   float64
	Hour                     float64
	Day                      float64
	PerHour                  float64 // air changes per hour
	Watt                     float64
	WattPerKelvin            float64 // thermal conductance of a whole part
	WattPerSquareMetre       float64
	WattPerMetreKelvin       float64 // conductivity of a material
	WattPerSquareMetreKelvin float64 // U-value or film coefficient
	SquareMetreKelvinPerWatt float64 // thermal resistance of one square metre
	JoulePerKelvin           float64
	JoulePerKilogramKelvin   float64
	JoulePerCubicMetreKelvin float64
	JoulePerGram             float64
	KilogramPerCubicMetre    float64
	GramPerCubicMetre        float64 // absolute humidity
	KilogramPerKilogram      float64 // water per dry air
	MetrePerSecond           float64
	GramPerDay               float64 // of water, and so also mL per day
	KilowattHour             float64
	Share                    float64 // a part of a whole, 0 to 1
)

const (
	zeroCelsius   = 273.15 // K
	secondsPerDay = 86400.0
)

func (t Celsius) kelvin() float64 { return float64(t) + zeroCelsius }

// CubicMetre converts to cubic metres.
func (v Litre) CubicMetre() CubicMetre { return CubicMetre(v / 1000) }

// Minute converts to minutes.
func (t Second) Minute() Minute { return Minute(t / 60) }
