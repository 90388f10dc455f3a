package climate

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
)

// inputs are the inputs of one row; a quantity must read each of them.
type inputs struct {
	t    *testing.T
	vals map[string]string
}

func (in inputs) text(name string) string {
	s, ok := in.vals[name]
	if !ok {
		in.t.Errorf("the row has no input %q", name)
	}
	delete(in.vals, name)
	return s
}

func (in inputs) get(name string) float64 {
	s := in.text(name)
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		in.t.Errorf("input %s: %v", name, err)
	}
	return x
}

func (in inputs) celsius(name string) Celsius { return Celsius(in.get(name)) }

func (in inputs) box() Box {
	return Box{Metre(in.get("l_m")), Metre(in.get("w_m")), Metre(in.get("h_m"))}
}

func (in inputs) layer() Layer {
	return Layer{Metre(in.get("t_mm") / 1000), WattPerMetreKelvin(in.get("k_WmK"))}
}

func (in inputs) film(name string) SquareMetreKelvinPerWatt {
	return SquareMetreKelvinPerWatt(in.get(name))
}

func (in inputs) conductance(part string) WattPerKelvin {
	return WattPerSquareMetreKelvin(in.get("u_" + part)).Conductance(SquareMetre(in.get(part + "_m2")))
}

func (in inputs) vents() WattPerKelvin {
	return VentilationConductance(PerHour(in.get("ach_per_h")), CubicMetre(in.get("v_m3")),
		KilogramPerCubicMetre(in.get("rho_kgm3")), JoulePerKilogramKelvin(in.get("cp_JkgK")))
}

func (in inputs) tau() Second { return Second(in.get("tau_s")) }

func (in inputs) nodes() (TwoNode, Course) {
	m := TwoNode{
		Air: JoulePerKelvin(in.get("c1_JK")), Substrate: JoulePerKelvin(in.get("c2_JK")),
		AirToRoom: WattPerKelvin(in.get("g1_WK")), AirToSubstrate: WattPerKelvin(in.get("g12_WK")),
		SubstrateToRoom: WattPerKelvin(in.get("g2_WK")),
	}
	return m, m.Fall(in.celsius("t0_air_C"), in.celsius("t0_sub_C"), in.celsius("t_room_C"), RoomCourse{})
}

// quantities maps each quantity of the file to the function that answers for it.
var quantities = map[string]func(in inputs) float64{
	"sat_vapour_pressure":               func(in inputs) float64 { return float64(SaturationPressure(in.celsius("t_C"))) },
	"sat_vapour_pressure_hyland_wexler": func(in inputs) float64 { return float64(SaturationPressure(in.celsius("t_C"))) },
	"dew_point":                         func(in inputs) float64 { return float64(DewPoint(in.celsius("t_C"), Percent(in.get("rh_pct")))) },
	"absolute_humidity": func(in inputs) float64 {
		return float64(AbsoluteHumidity(in.celsius("t_C"), Percent(in.get("rh_pct"))))
	},
	"humidity_ratio": func(in inputs) float64 {
		return float64(HumidityRatio(in.celsius("t_C"), Percent(in.get("rh_pct")), Pascal(in.get("p_Pa"))))
	},
	"altitude_pressure": func(in inputs) float64 { return float64(AltitudePressure(Metre(in.get("z_m")))) },
	"u_value": func(in inputs) float64 {
		return float64(UValue(in.film("rsi_m2KW"), in.film("rse_m2KW"), in.layer()))
	},
	"u_value_layers": func(in inputs) float64 {
		var layers []Layer
		for l := range strings.SplitSeq(in.text("layers_mm_WmK"), "+") {
			mm, k, _ := strings.Cut(l, "/")
			one := inputs{in.t, map[string]string{"t_mm": mm, "k_WmK": k}}
			layers = append(layers, one.layer())
		}
		return float64(UValue(in.film("rsi_m2KW"), in.film("rse_m2KW"), layers...))
	},
	"volume":    func(in inputs) float64 { return float64(in.box().Volume()) * 1000 },
	"wall_area": func(in inputs) float64 { return float64(in.box().WallArea()) },
	"conductance": func(in inputs) float64 {
		return float64(in.conductance("walls") + in.conductance("lid") + in.conductance("base"))
	},
	"ventilation_conductance": func(in inputs) float64 { return float64(in.vents()) },
	"steady_heat_loss": func(in inputs) float64 {
		return float64(SteadyHeatLoss(WattPerKelvin(in.get("ua_WK")), in.celsius("t_in_C"), in.celsius("t_room_C")))
	},
	"steady_heat_loss_vent": func(in inputs) float64 {
		return float64(SteadyHeatLoss(WattPerKelvin(in.get("ua_WK"))+in.vents(), in.celsius("t_in_C"), in.celsius("t_room_C")))
	},
	"heat_capacity_glass": func(in inputs) float64 {
		return float64(SheetHeatCapacity(SquareMetre(in.get("area_m2")), Metre(in.get("t_mm")/1000),
			KilogramPerCubicMetre(in.get("rho_kgm3")), JoulePerKilogramKelvin(in.get("cp_JkgK")))) / 1000
	},
	"substrate_volumetric_heat_capacity": func(in inputs) float64 {
		return float64(SubstrateVolumeHeat(Share(in.get("x_mineral")), Share(in.get("x_organic")), Share(in.get("theta_water")))) / 1e6
	},
	"substrate_heat_capacity": func(in inputs) float64 {
		return float64(LayerHeatCapacity(JoulePerCubicMetreKelvin(in.get("cv_MJm3K")*1e6),
			SquareMetre(in.get("area_m2")), Metre(in.get("depth_mm")/1000))) / 1000
	},
	// The parts of example A are the row's; the sum is that of the enclosure's own bodies.
	"heat_capacity_total": func(in inputs) float64 {
		for _, part := range []string{"glass", "lid", "substrate", "air", "water"} {
			in.get(part + "_kJK")
		}
		e := exampleA()
		p := e.parts()
		return float64(e.heatStore(&p, e.twoNode(&p))) / 1000
	},
	"time_constant": func(in inputs) float64 {
		return float64(TimeConstant(JoulePerKelvin(in.get("c_kJK")*1000), WattPerKelvin(in.get("ua_WK"))))
	},
	"time_to_temperature": func(in inputs) float64 {
		return float64(TimeToTemperature(in.tau(), in.celsius("t0_C"), in.celsius("t_room_C"), in.celsius("t_limit_C")).Minute())
	},
	"temperature_after_cooling_room": func(in inputs) float64 {
		return float64(TemperatureAfterCoolingRoom(in.tau(), in.celsius("t0_C"), in.celsius("t_room0_C"),
			in.celsius("t_out_C"), Second(in.get("tau_room_s")), Second(in.get("elapsed_s"))))
	},
	"two_node_air": func(in inputs) float64 {
		_, f := in.nodes()
		air, _ := f.At(Second(in.get("elapsed_s")))
		return float64(air)
	},
	"two_node_substrate": func(in inputs) float64 {
		_, f := in.nodes()
		_, sub := f.At(Second(in.get("elapsed_s")))
		return float64(sub)
	},
	"two_node_time_to_air": func(in inputs) float64 {
		_, f := in.nodes()
		return float64(f.AirReaches(in.celsius("t_limit_C")).Minute())
	},
	"two_node_slow_time_constant": func(in inputs) float64 {
		m, _ := in.nodes()
		return float64(m.SlowTimeConstant().Minute())
	},
	"water_per_day": func(in inputs) float64 {
		return float64(WaterPerDay(PerHour(in.get("ach_per_h")), CubicMetre(in.get("v_m3")), in.celsius("t_in_C"),
			Percent(in.get("rh_in_pct")), in.celsius("t_room_C"), Percent(in.get("rh_room_pct")), Pascal(in.get("p_Pa"))))
	},
	"duty_cycle":   func(in inputs) float64 { return float64(DutyCycle(Watt(in.get("load_W")), Watt(in.get("heater_W")))) },
	"energy_month": func(in inputs) float64 { return float64(Energy(Watt(in.get("mean_W")), Day(in.get("days")))) },
	"surface_rise": func(in inputs) float64 {
		return float64(SurfaceRise(WattPerSquareMetre(in.get("flux_Wm2")), in.film("r_up_m2KW"), in.film("r_down_m2KW")))
	},
	"fraction_into_enclosure": func(in inputs) float64 {
		return float64(ShareInwards(in.film("r_up_m2KW"), in.film("r_down_m2KW")))
	},
}

// TestPublishedValues runs climate-checks.csv: values of handbooks, standards,
// papers and other programs, each with its source in the last column, and hand
// calculations that fix the arithmetic (marked hand).
func TestPublishedValues(t *testing.T) {
	f, err := os.Open("testdata/climate-checks.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	ran := map[string]bool{}
	for _, row := range rows[1:] {
		id, quantity, want, source := row[0], row[1], row[3], row[6]
		ran[id] = t.Run(id, func(t *testing.T) {
			ask, ok := quantities[quantity]
			if !ok {
				t.Fatalf("no function answers for %q", quantity)
			}
			in := inputs{t, map[string]string{}}
			for pair := range strings.SplitSeq(row[2], ";") {
				name, value, _ := strings.Cut(pair, "=")
				in.vals[strings.TrimSpace(name)] = strings.TrimSpace(value)
			}
			got := ask(in)
			if len(in.vals) > 0 {
				t.Errorf("inputs not used: %v", in.vals)
			}
			expected, err := strconv.ParseFloat(want, 64)
			if err != nil {
				t.Fatal(err)
			}
			kind, amount, _ := strings.Cut(row[5], " ")
			tolerance, err := strconv.ParseFloat(amount, 64)
			if err != nil {
				t.Fatal(err)
			}
			switch kind {
			case "abs":
			case "rel":
				tolerance *= math.Abs(expected)
			default:
				t.Fatalf("no such tolerance: %q", row[5])
			}
			if !(math.Abs(got-expected) <= tolerance) {
				t.Errorf("%s: %.8g, want %s %s within %s, from %s", quantity, got, want, row[4], row[5], source)
			}
		})
	}
	if len(ran) != 75 {
		t.Errorf("%d rows ran, want 75", len(ran))
	}
}
