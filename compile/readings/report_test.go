package readings

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/compile/logger"
	"vivary/compile/measure"
	"vivary/internal/planned"
)

const tub = `collection "c" {
  title     = "Moss House"
  time_zone = "Europe/London"
}
room "house" {
  temperature = "18 to 24 C"
  humidity    = "40 to 60 %"
}
enclosure "tub" {
  species = "pandinus-imperator"
  room    = "house"
  housing {
    kind      = "glass"
    inside    = "60 x 45 x 40 cm"
    lid       = "solid, latched"
    substrate = "coir and topsoil"
    depth     = "15 cm"
    hides     = 2
  }
  animals "fern" {
    count = "0.1.0"
    stage = "adult"
  }
  climate {
    warm_end = "28 to 30 C"
    cool_end = "22 to 26 C"
    humidity = "75 to 85 %"
    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "side"
      thermostat = "30 C"
    }
    #HERE
  }
}
`

func compiled(t testing.TB, text string) *compile.Result {
	t.Helper()
	c, _ := planned.Sound(t, planned.With(text, ""))
	return compile.From(compile.Input{Plan: c, Now: time.Date(2027, 6, 1, 12, 0, 0, 0, time.UTC)})
}

// file is what a logger wrote at each step.
func file(t testing.TB, place string, n int, step time.Duration, heat, damp func(k int) float64) *File {
	t.Helper()
	var b strings.Builder
	b.WriteString("time,temp,rh\n")
	london, _ := time.LoadLocation("Europe/London")
	start := time.Date(2027, 5, 20, 0, 0, 0, 0, london)
	for k := range n {
		d := ""
		if damp != nil {
			d = fmt.Sprintf("%.1f", damp(k))
		}
		fmt.Fprintf(&b, "%s,%.1f,%s\n", start.Add(time.Duration(k)*step).Format("2006-01-02 15:04"), heat(k), d)
	}
	s, err := logger.Read(strings.NewReader(b.String()), logger.Options{Zone: london})
	if err != nil {
		t.Fatal(err)
	}
	return &File{Name: place + ".csv", Place: place, Series: s, Off: measure.Sold}
}

// What is printed for the plan is understood by it, silences nothing and refuses nothing, moves
// what is reckoned to what was measured, and narrows it.
func TestMeasuredGoesIntoThePlan(t *testing.T) {
	for seed := range uint64(12) {
		r := rand.New(rand.NewPCG(seed, 2))
		res := compiled(t, tub)
		before, ok := balance.Of(res.Plan, res.Lives[0].Plan, res.Lives[0])
		if !ok {
			t.Fatal("nothing is known of it")
		}
		room := 19 + 4*r.Float64()
		rise := 1 + 2*r.Float64()
		wave := func(k int) float64 { return 0.4 * math.Sin(float64(k)/23) }
		files := []*File{
			file(t, measure.Air, 1000, 10*time.Minute, func(k int) float64 { return room + rise + wave(k) }, func(int) float64 { return 78 }),
			file(t, measure.Room, 1000, 10*time.Minute, func(k int) float64 { return room + wave(k) }, nil),
			file(t, measure.Spot, 1000, 10*time.Minute, func(k int) float64 { return 29.5 + wave(k) }, nil),
		}
		rep := Of(res, res.Lives[0], files, Options{})
		m := rep.Measured
		if m == nil {
			t.Fatal(rep.Unmeasured)
		}
		if math.Abs(m.Air-room-rise) > 0.1 || math.Abs(m.Room-room) > 0.1 || math.Abs(m.Spot-29.5) > 0.1 || math.Abs(m.Damp-78) > 1e-6 {
			t.Fatalf("%+v", m)
		}
		text := m.Text(res.Lives[0].Plan, res.Now.Location())
		again := compiled(t, strings.Replace(tub, "#HERE", text, 1))
		if again.Refused() {
			t.Fatalf("it refuses:\n%s", text)
		}
		written := again.Lives[0].Plan.Climate.Measured
		if written == nil || !written.Air.Set() || !written.Spot.Set() || !written.Room.Set() || !written.Humidity.Set() || !written.On.Set() {
			t.Fatalf("not all of it is understood:\n%s", text)
		}
		after, _ := balance.Of(again.Plan, again.Lives[0].Plan, again.Lives[0])
		if after.Readings != 1 || after.Odd {
			t.Fatalf("%d taken, odd %v:\n%s", after.Readings, after.Odd, text)
		}
		a, b, c := before.Stuck().Spot, after.Stuck().Spot, m.After.Stuck().Spot
		if b.High-b.Low >= a.High-a.Low {
			t.Errorf("a stuck thermostat: %v, with the measurement %v", a, b)
		}
		if b != c {
			t.Errorf("what is said (%v) is not what the plan then reckons (%v)", c, b)
		}
		was, is := before.Usual().Air.Likely, after.Usual().Air.Likely
		there := climate.Conditions{Room: climate.Celsius(m.Room)}
		if up := m.Air > float64(m.Before.At(there).Air.Likely); up != (is > was) && math.Abs(float64(is-was)) > 0.05 {
			t.Errorf("measured %v where %v was expected moves the usual air from %v to %v", m.Air, m.Before.At(there).Air.Likely, was, is)
		}
		// The line for the log is read as what it says.
		if len(rep.Lines) != 1 {
			t.Fatalf("%v", rep.Lines)
		}
		c2, found := planned.Files(t, planned.With(tub, rep.Lines[0].Text+"\n"))
		for _, f := range found {
			t.Errorf("%s: %s", rep.Lines[0].Text, f.Text)
		}
		logged := compile.From(compile.Input{Plan: c2, Now: res.Now})
		if n := len(logged.Lives[0].Measured); n != 1 || !logged.Lives[0].Measured[0].Spot.Set() {
			t.Errorf("%q: %d measurements", rep.Lines[0].Text, n)
		}
	}
}

// What harms surely is a line with its time, and an earlier one than what it was at the end.
func TestHarmIsLogged(t *testing.T) {
	res := compiled(t, tub)
	heat := func(k int) float64 {
		if k >= 300 && k < 330 {
			return 37.4
		}
		return 24 + 0.3*math.Sin(float64(k)/20)
	}
	rep := Of(res, res.Lives[0], []*File{file(t, measure.Air, 1000, 10*time.Minute, heat, nil), file(t, measure.Room, 1000, 10*time.Minute, func(int) float64 { return 21 }, nil)}, Options{})
	if len(rep.Lines) != 2 || !strings.Contains(rep.Lines[0].Text, "2027-05-22 02:00 tub measured air 37.4 C") || !strings.HasPrefix(rep.Lines[1].Text, "2027-05-26 22:30 tub measured air 24 C room 21 C") {
		t.Errorf("%v", rep.Lines)
	}
	c, found := planned.Files(t, planned.With(tub, rep.Lines[0].Text+"\n"+rep.Lines[1].Text+"\n"))
	for _, f := range found {
		t.Error(f.Text)
	}
	logged := compile.From(compile.Input{Plan: c, Now: res.Now})
	if n := logged.Urgent(); n != 0 {
		t.Errorf("%d urgent, after it was put right", n)
	}
	c, _ = planned.Files(t, planned.With(tub, rep.Lines[0].Text+"\n"))
	if compile.From(compile.Input{Plan: c, Now: res.Now}).Urgent() == 0 {
		t.Error("what harms and was not put right is not urgent")
	}
}

// One fit and one judgement, worked out again in Python from the same file by somebody who
// shares no code: the least squares of its library, and the sum of small pieces.
func TestAgainstPython(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 5))
	var b strings.Builder
	b.WriteString("time,temp\n")
	start := time.Date(2027, 5, 20, 12, 0, 0, 0, time.UTC)
	for k := range 100 {
		fmt.Fprintf(&b, "%s,%.1f\n", start.Add(time.Duration(k)*5*time.Minute).Format("2006-01-02 15:04"), 20+12*math.Exp(-float64(5*k)/110)+0.1*r.NormFloat64())
	}
	path := filepath.Join(t.TempDir(), "box.csv")
	if err := os.WriteFile(path, []byte(b.String()), 0o644); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command("/usr/bin/python3", "../../testdata/oracles/programs/readings.py", path, "20", "26").CombinedOutput()
	if err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	var tau, hours, degrees float64
	if _, err := fmt.Sscan(string(out), &tau, &hours, &degrees); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	s, err := logger.Read(strings.NewReader(b.String()), logger.Options{})
	if err != nil {
		t.Fatal(err)
	}
	x := valuesOf(s, false, nil)
	at, v := between(&x, x.at[0], x.at[len(x.at)-1]+1)
	d, ok := DecayOf(at, v, 20)
	j := judgedOf(s, -50, 26, 0)
	if !ok {
		t.Fatal("no decay")
	}
	near(t, "tau", d.Tau.Value, tau, 1e-6*tau)
	near(t, "hours", j.Verdicts[0].Above.Hours, hours, 0.005)
	near(t, "degree-hours", j.Verdicts[0].Above.Degrees, degrees, 0.005)
}

// A loss and an air change come out of what was put in.
func TestLossAndChange(t *testing.T) {
	for seed := range uint64(30) {
		r := rand.New(rand.NewPCG(seed, 6))
		// A spot that swings, on for a part of the time, in a box that loses 2 W for each kelvin.
		duty, ua, watt := 0.3+0.4*r.Float64(), 1.5+2*r.Float64(), 25.0
		above := watt * duty / ua
		n := 5 * 1440
		spot := file(t, measure.Spot, n, time.Minute, func(k int) float64 {
			x := math.Mod(float64(k), 30)
			if x < duty*30 {
				return 29 + 1.6*x/(duty*30)
			}
			return 30.6 - 1.6*(x-duty*30)/((1-duty)*30)
		}, nil)
		air := file(t, measure.Air, n, time.Minute, func(k int) float64 { return 20 + above + 0.05*r.NormFloat64() }, nil)
		room := file(t, measure.Room, n, time.Minute, func(int) float64 { return 20 + 0.05*r.NormFloat64() }, nil)
		res := compiled(t, tub)
		rep := Of(res, res.Lives[0], []*File{spot, air, room}, Options{Watt: watt})
		l := rep.Body.Loss
		if l == nil || l.Days != 5 || l.Low > ua || l.High < ua || math.Abs(l.Value-ua) > 0.1*ua {
			t.Errorf("seed %d: %+v for %.2f; %s", seed, l, ua, rep.Body.NoLoss)
		}

		// Misted once, with air that changes and surfaces that give some back.
		change, gives := 0.8+2*r.Float64(), 0.4*r.Float64()
		full, out := density(22, 100), density(21, 50)
		rests := (change*out + gives*full) / (change + gives)
		damp := func(k int) float64 {
			h := float64(k-60) / 60
			v := rests
			if h >= 0 {
				v += (0.95*full - rests) * math.Exp(-(change+gives)*h)
			}
			return 100*v/full + 0.1*r.NormFloat64()
		}
		air = file(t, measure.Air, 600, time.Minute, func(int) float64 { return 22 }, damp)
		alone := Of(res, res.Lives[0], []*File{air}, Options{}).Body
		if c := alone.Change; c == nil || !c.AtMost || c.Hour.High < change {
			t.Errorf("seed %d: %+v for %.2f; %s", seed, c, change, alone.NoChange)
		}
		beside := file(t, measure.Room, 600, time.Minute, func(int) float64 { return 21 }, func(int) float64 { return 50 })
		both := Of(res, res.Lives[0], []*File{air, beside}, Options{}).Body
		if c := both.Change; c == nil || c.AtMost || c.Hour.Low > change || c.Hour.High < change {
			t.Errorf("seed %d: %+v for %.2f with %.2f given back; %s", seed, c, change, gives, both.NoChange)
		}
	}
}
