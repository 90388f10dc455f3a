package readings

import (
	"vivary/compile/logger"
)

// settles is how long a warm spot may take after its heater was switched until a logger shows it
// (common practice, no source).
const settles = 3600 // s

// unswitched is the longest time, in seconds, that a heater with hours of its own can leave the
// warm spot alone: on all its hours, or off all the others. 0 where no heater has hours: whether
// a thermostat switched nobody wrote down.
func (r *Report) unswitched() (most int64) {
	if r.plan().Climate == nil {
		return 0
	}
	for _, h := range r.plan().Climate.Heaters {
		if on := int64(h.Hours.V.Value * 60); !h.Tube() && h.Hours.Set() && on > 0 && on < 86400 {
			if longest := max(on, 86400-on) + settles; most == 0 || longest < most {
				most = longest
			}
		}
	}
	return most
}

// throughSwitch tells a temperature of the warm spot that stood still for longer than its heater
// leaves it alone, so that it was switched meanwhile. What is known to be stuck already is not
// told again.
func throughSwitch(s *logger.Series, most int64, known []Fault) (all []Fault) {
	if heat, _ := s.Has(); !heat || most == 0 {
		return nil
	}
	end := func(from, i int) {
		a, b := s.Samples[from].At, s.Samples[i].At
		if logger.None(s.Samples[from].Heat) || b-a <= most || i-from < stuckLeast || len(all) >= mostSaid {
			return
		}
		for _, f := range known {
			if f.Kind == "stuck" && f.From < b && a < f.Until {
				return
			}
		}
		all = append(all, Fault{"stuck", a, b, "the temperature of the warm spot has not moved for " + lasting(b-a) + ", in which its heater was switched: the sensor is stuck or lies elsewhere, or the heater or its timer failed. Look now"})
	}
	from := 0
	for i := 1; i < len(s.Samples); i++ {
		if x, was := &s.Samples[i], &s.Samples[i-1]; x.At-was.At > s.MaxGap() || !unmoved(was.Heat, x.Heat) {
			end(from, i-1)
			from = i
		}
	}
	if n := len(s.Samples); n > 0 {
		end(from, n-1)
	}
	return all
}
