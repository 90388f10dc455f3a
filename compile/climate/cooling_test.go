package climate

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/mat"
)

// randomFall draws a two-body enclosure, from a shoebox to a walk-in, and a start.
func randomFall(r *rand.Rand) (m TwoNode, air, sub, room Celsius, cooling RoomCourse) {
	log := func(lo, hi float64) float64 { return lo * math.Pow(hi/lo, r.Float64()) }
	m = TwoNode{
		Air: JoulePerKelvin(log(300, 1e5)), Substrate: JoulePerKelvin(log(300, 5e5)),
		AirToRoom: WattPerKelvin(log(0.2, 40)), AirToSubstrate: WattPerKelvin(log(0.05, 10)),
		SubstrateToRoom: WattPerKelvin(log(0.02, 5)),
	}
	room = Celsius(15 + 10*r.Float64())
	air, sub = room+Celsius(1+14*r.Float64()), room+Celsius(20*r.Float64())
	if r.IntN(2) == 0 {
		cooling = RoomCourse{Outside: room - Celsius(1+30*r.Float64()), TimeConstant: Hour(log(0.2, 150))}
	}
	return
}

// TestFallAgainstMatrixExponential compares the closed form with gonum's mat.Exp,
// the falling room being a third body that drives the other two.
func TestFallAgainstMatrixExponential(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 300 {
		m, air, sub, room, cooling := randomFall(r)
		f := m.Fall(air, sub, room, cooling)
		after := 60 * math.Pow(1000, r.Float64()) // 1 minute to 17 hours
		rate, outside := 0.0, room
		if cooling.TimeConstant > 0 {
			rate, outside = 1/(3600*float64(cooling.TimeConstant)), cooling.Outside
		}
		c1, c2 := float64(m.Air), float64(m.Substrate)
		g1, g12, g2 := float64(m.AirToRoom), float64(m.AirToSubstrate), float64(m.SubstrateToRoom)
		a := mat.NewDense(3, 3, []float64{
			-(g1 + g12) / c1, g12 / c1, g1 / c1,
			g12 / c2, -(g12 + g2) / c2, g2 / c2,
			0, 0, -rate,
		})
		a.Scale(after, a)
		var e mat.Dense
		e.Exp(a)
		start := mat.NewVecDense(3, []float64{float64(air - outside), float64(sub - outside), float64(room - outside)})
		var end mat.VecDense
		end.MulVec(&e, start)
		gotAir, gotSub := f.At(Second(after))
		wantAir, wantSub := outside+Celsius(end.AtVec(0)), outside+Celsius(end.AtVec(1))
		if math.Abs(float64(gotAir-wantAir)) > 1e-6 || math.Abs(float64(gotSub-wantSub)) > 1e-6 {
			t.Fatalf("%+v %+v after %.0f s: air %.8f, substrate %.8f; mat.Exp %.8f, %.8f", m, cooling, after, gotAir, gotSub, wantAir, wantSub)
		}
	}
}

// TestTimesAgainstRungeKutta steps the differential equations with the classical
// Runge-Kutta method and sees where both bodies cross the limit.
func TestTimesAgainstRungeKutta(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	reached := 0
	for range 60 {
		m, air, sub, room, cooling := randomFall(r)
		limit := room + (air-room)*Celsius(0.2+0.7*r.Float64())
		slope := func(t, x, y float64) (float64, float64) {
			tr := float64(room)
			if cooling.TimeConstant > 0 {
				tr = float64(cooling.Outside) + float64(room-cooling.Outside)*math.Exp(-t/3600/float64(cooling.TimeConstant))
			}
			flow := float64(m.AirToSubstrate) * (y - x)
			return (float64(m.AirToRoom)*(tr-x) + flow) / float64(m.Air), (float64(m.SubstrateToRoom)*(tr-y) - flow) / float64(m.Substrate)
		}
		f := m.Fall(air, sub, room, cooling)
		airAt, subAt := f.AirReaches(limit), f.SubstrateReaches(limit)
		h := 0.02 * float64(m.Air) / float64(m.AirToRoom+m.AirToSubstrate)
		h = min(h, 0.02*float64(m.Substrate)/float64(m.AirToSubstrate+m.SubstrateToRoom))
		seen := [2]bool{}
		x, y, now := float64(air), float64(sub), 0.0
		if y <= float64(limit) {
			if seen[1] = true; subAt != 0 {
				t.Fatalf("the substrate starts below the limit, but reaches it after %g s", subAt)
			}
		}
		for range 400000 {
			if seen[0] && seen[1] {
				break
			}
			k1, l1 := slope(now, x, y)
			k2, l2 := slope(now+h/2, x+h/2*k1, y+h/2*l1)
			k3, l3 := slope(now+h/2, x+h/2*k2, y+h/2*l2)
			k4, l4 := slope(now+h, x+h*k3, y+h*l3)
			x, y, now = x+h/6*(k1+2*k2+2*k3+k4), y+h/6*(l1+2*l2+2*l3+l4), now+h
			for i, got := range []struct{ now, at float64 }{{x, float64(airAt)}, {y, float64(subAt)}} {
				if !seen[i] && got.now <= float64(limit) {
					seen[i] = true
					reached++
					if got.at < now-1.01*h || got.at > now+0.01*h {
						t.Fatalf("%+v %+v to %.3f °C: body %d crosses at %.1f s, found %.1f", m, cooling, limit, i, now, got.at)
					}
				}
			}
		}
	}
	if reached < 100 {
		t.Fatalf("only %d crossings compared", reached)
	}
}

// A room as slow as one of the modes makes the closed form 0/0; it must stay smooth.
func TestFallAtResonance(t *testing.T) {
	m := TwoNode{3546, 11620, 2.4117, 0.7038, 0.3252}
	own := Hour(m.SlowTimeConstant() / 3600)
	at := func(tau Hour) float64 {
		air, _ := m.Fall(30, 27, 20, RoomCourse{0, tau}).At(3600)
		return float64(air)
	}
	if low, mid, high := at(own*0.99), at(own), at(own*1.01); !(low < mid && mid < high) || high-low > 0.05 {
		t.Errorf("air after an hour jumps at resonance: %g, %g, %g", low, mid, high)
	}
	tau := Second(6829.8)
	same := TemperatureAfterCoolingRoom(tau, 30, 20, 0, tau, 3600)
	// The limit of the formula for equal time constants, (30 + 20·t/τ)·e^(-t/τ).
	if x := 3600 / 6829.8; math.Abs(float64(same)-(30+20*x)*math.Exp(-x)) > 0.01 {
		t.Errorf("one lump at resonance: %g", same)
	}
}
