package readings

import (
	"math"
	"sort"
	"time"

	"vivary/compile/logger"
	"vivary/compile/measure"
	"vivary/schema/civil"
)

// Outside is the time on one side of a limit. Between two samples there is a straight line;
// a gap of more than three steps is not known, and ends what was going on.
type Outside struct {
	Hours   float64
	Degrees float64 // degree-hours, K·h: the integral of how far outside; of a humidity %·h
	Longest float64 // h, of one stretch
	From    int64   // when the longest began
	Peak    float64 // the furthest value; not a number where it was never outside
	PeakAt  int64
	Sure    float64 // h beyond the limit by more than the gauge may be off
	Perhaps float64 // h beyond the limit if the gauge is off as far as it may be
	Days    int     // civil days with any of it
	Nights  int     // of them with any of it by night
}

// Any reports whether it was outside at all.
func (o *Outside) Any() bool { return o.Hours > 0 }

// Verdict is what the readings were against one limit.
type Verdict struct {
	*measure.Limit
	Above, Below Outside
}

// Hours is the time outside on both sides.
func (v *Verdict) Hours() float64 { return v.Above.Hours + v.Below.Hours }

// Judged is one value of a series, judged.
type Judged struct {
	Damp              bool
	Covered, Whole    float64 // h
	Gaps              int
	Low, Mean, High   float64
	LowAt, HighAt     int64
	DayMean, NightMid float64 // means by day and by night; not a number where there are none
	Verdicts          []*Verdict
}

// Coverage is the part of the time of which something is known.
func (j *Judged) Coverage() float64 {
	if j.Whole <= 0 {
		return 0
	}
	return min(1, j.Covered/j.Whole)
}

// enough is the coverage below which it is said that much is not known.
const enough = 0.9

// Enough reports whether most of the time is known.
func (j *Judged) Enough() bool { return j.Coverage() >= enough }

// Daylight is when the day begins and ends, for what is aimed for by day and by night.
type Daylight struct{ From, Until civil.Clock }

// UsualDay is the day where nobody says: heaters and lamps on a timer mostly run so (common
// practice, no source).
var UsualDay = Daylight{8 * 60, 20 * 60}

// stretch is a day or a night, as instants.
type stretch struct {
	from, until int64
	on          civil.Date
	night       bool
}

// stretches are the days and nights between two instants. A night belongs to the day on which
// it begins.
func stretches(first, last int64, loc *time.Location, d Daylight) (all []stretch) {
	if d.From >= d.Until {
		d = UsualDay
	}
	on := civil.FromTime(time.Unix(first, 0).In(loc)) - 1
	at := func(day civil.Date, c civil.Clock) int64 { return day.At(c, loc).Unix() }
	for ; ; on++ {
		dawn, dusk, next := at(on, d.From), at(on, d.Until), at(on+1, d.From)
		if dawn > last {
			return all
		}
		if dusk > first && dusk > dawn {
			all = append(all, stretch{dawn, dusk, on, false})
		}
		if next > first && next > dusk {
			all = append(all, stretch{dusk, next, on, true})
		}
	}
}

// side is one side of a limit while the readings go by.
type side struct {
	sign  float64 // 1 above, -1 below
	out   Outside
	off   float64
	run   float64 // h of the stretch that goes on
	since int64
	day   civil.Date
	dark  civil.Date
}

// piece is a straight line between two instants, against one limit: its ends are how far they
// are outside, x0 and x1.
func (s *side) piece(t0, t1 int64, x0, x1 float64, on civil.Date, night bool, value func(float64) float64) {
	hours := float64(t1-t0) / 3600
	time, area, begins, ends := over(x0, x1)
	if time > 0 {
		o := &s.out
		o.Hours += time * hours
		o.Degrees += area * hours
		switch {
		case !begins:
			s.close()
			s.since = t1 - int64(math.Round(time*float64(t1-t0)))
		case s.run == 0:
			s.since = t0
		}
		s.run += time * hours
		if on != s.day {
			s.day = on
			o.Days++
		}
		if night && on != s.dark {
			s.dark = on
			o.Nights++
		}
		far, at := x0, t0
		if x1 > x0 {
			far, at = x1, t1
		}
		if v := value(far); math.IsNaN(o.Peak) || s.sign*v > s.sign*o.Peak {
			o.Peak, o.PeakAt = v, at
		}
		if !ends {
			s.close()
		}
	} else {
		s.close()
	}
	sure, _, _, _ := over(x0-s.off, x1-s.off)
	perhaps, _, _, _ := over(x0+s.off, x1+s.off)
	s.out.Sure += sure * hours
	s.out.Perhaps += perhaps * hours
}

func (s *side) close() {
	if s.run > s.out.Longest {
		s.out.Longest, s.out.From = s.run, s.since
	}
	s.run = 0
}

// over returns the part of a straight line from x0 to x1 that lies above nothing, the area
// under that part, and whether its beginning and its end do.
func over(x0, x1 float64) (part, area float64, begins, ends bool) {
	begins, ends = x0 > 0, x1 > 0
	switch {
	case begins && ends:
		return 1, (x0 + x1) / 2, true, true
	case begins:
		part = x0 / (x0 - x1)
		return part, part * x0 / 2, true, false
	case ends:
		part = x1 / (x1 - x0)
		return part, part * x1 / 2, false, true
	}
	return 0, 0, false, false
}

// values are a series of one value, corrected, without what is no reading.
type values struct {
	at  []int64
	v   []float64
	gap int64 // the longest time that is drawn across
	loc *time.Location
}

func valuesOf(s *logger.Series, damp bool, correct func(float64) float64) values {
	out := values{gap: s.MaxGap(), loc: s.Zone, at: make([]int64, 0, len(s.Samples)), v: make([]float64, 0, len(s.Samples))}
	for _, x := range s.Samples {
		v := x.Heat
		if damp {
			v = x.Damp
		}
		if logger.None(v) {
			continue
		}
		if correct != nil {
			v = correct(v)
		}
		out.at, out.v = append(out.at, x.At), append(out.v, v)
	}
	return out
}

// known reports whether there is a straight line from a value to the next.
func (x *values) known(i int) bool { return x.at[i+1]-x.at[i] <= x.gap }

// at returns the value at an instant, not a number where it is not known.
func (x *values) when(t int64) float64 {
	i := sort.Search(len(x.at), func(i int) bool { return x.at[i] >= t })
	switch {
	case i < len(x.at) && x.at[i] == t:
		return x.v[i]
	case i == 0 || i == len(x.at) || !x.known(i-1):
		return math.NaN()
	}
	part := float64(t-x.at[i-1]) / float64(x.at[i]-x.at[i-1])
	return x.v[i-1] + part*(x.v[i]-x.v[i-1])
}

// noDay is before all days.
const noDay civil.Date = math.MinInt32

// judge holds values against limits. first and last are the ends of the time that is judged;
// off is how far the gauge may be off.
func judge(x *values, damp bool, first, last int64, limits []*measure.Limit, off float64, d Daylight) *Judged {
	j := &Judged{Damp: damp, Whole: float64(last-first) / 3600, Low: math.NaN(), High: math.NaN(), Mean: math.NaN(), DayMean: math.NaN(), NightMid: math.NaN()}
	var sides []*side
	for _, l := range limits {
		if l.Damp != damp {
			continue
		}
		j.Verdicts = append(j.Verdicts, &Verdict{Limit: l})
		for _, sign := range []float64{1, -1} {
			sides = append(sides, &side{sign: sign, off: off, out: Outside{Peak: math.NaN()}, day: noDay, dark: noDay})
		}
	}
	parts := stretches(first, last, x.loc, d)
	k := 0
	var sum, daySum, nightSum, dayHours, nightHours float64
	edges := make([]float64, len(sides))
	at := -1
	for i := range x.v {
		if v := x.v[i]; math.IsNaN(j.Low) || v < j.Low {
			j.Low, j.LowAt = v, x.at[i]
		}
		if v := x.v[i]; math.IsNaN(j.High) || v > j.High {
			j.High, j.HighAt = v, x.at[i]
		}
		if i+1 == len(x.v) {
			break
		}
		if !x.known(i) {
			j.Gaps++
			for _, s := range sides {
				s.close()
			}
			continue
		}
		t0, v0 := x.at[i], x.v[i]
		slope := (x.v[i+1] - v0) / float64(x.at[i+1]-t0)
		for t0 < x.at[i+1] { // cut where day and night meet
			for k < len(parts) && parts[k].until <= t0 {
				k++
			}
			t1, v1 := x.at[i+1], x.v[i+1]
			part := stretch{}
			if k < len(parts) {
				part = parts[k]
				if part.until < t1 {
					t1 = part.until
					v1 = v0 + slope*float64(t1-t0)
				}
			}
			if at != k {
				at = k
				for n := range sides {
					r := j.Verdicts[n/2].At(part.on, part.night)
					if edges[n] = r.High; n%2 == 1 {
						edges[n] = r.Low
					}
				}
			}
			hours := float64(t1-t0) / 3600
			j.Covered += hours
			sum += hours * (v0 + v1) / 2
			if part.night {
				nightHours, nightSum = nightHours+hours, nightSum+hours*(v0+v1)/2
			} else {
				dayHours, daySum = dayHours+hours, daySum+hours*(v0+v1)/2
			}
			for n, s := range sides {
				edge := edges[n]
				s.piece(t0, t1, s.sign*(v0-edge), s.sign*(v1-edge), part.on, part.night, func(x float64) float64 { return edge + s.sign*x })
			}
			t0, v0 = t1, v1
		}
	}
	for n, s := range sides {
		s.close()
		if n%2 == 0 {
			j.Verdicts[n/2].Above = s.out
		} else {
			j.Verdicts[n/2].Below = s.out
		}
	}
	if j.Covered > 0 {
		j.Mean = sum / j.Covered
	}
	if dayHours > 0 {
		j.DayMean = daySum / dayHours
	}
	if nightHours > 0 {
		j.NightMid = nightSum / nightHours
	}
	return j
}
