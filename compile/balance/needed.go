package balance

import (
	"slices"

	"vivary/compile/climate"
)

// strongest is how many times as strong as it is a heater is tried at the most.
const strongest = 16

// Needed returns the power that the heater takes to hold what its thermostat is set to, in the
// coldest room: what a weaker one of its size in its place falls short of. It is not known
// where there are several heaters, since they share the work as they like, where no thermostat
// holds anything, and where no power would do.
func (r *Report) Needed() (climate.Band[climate.Watt], bool) {
	if len(r.Heaters) != 1 || !r.Heaters[0].Thermostat {
		return climate.Band[climate.Watt]{}, false
	}
	if z := r.Coldest(); z.Duty.High < 1 {
		return z.Draw, z.Draw.Likely > 0
	}
	for times := climate.Watt(2); times <= strongest; times *= 2 {
		h := slices.Clone(r.Heaters)
		if h[0].Area == 0 {
			h[0].Area = r.Box.Covered(&h[0]) // of another power it would be of another size
		}
		h[0].Power *= times
		if z := r.Box.Zones(h, climate.Conditions{Room: r.Box.Room.Low}, r.Belief); z.Duty.High < 1 {
			return z.Draw, true
		}
	}
	return climate.Band[climate.Watt]{}, false
}
