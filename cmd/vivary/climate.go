package main

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/plan"
	"vivary/schema/quantity"
)

// whyClimate prints the whole balance of an enclosure, in the keeper's words
// and units. Every figure that is not known exactly is printed with the ends
// between which it is to be expected.
func whyClimate(w *world, r *compile.Result, e *plan.Enclosure) {
	p, ok := balance.Of(r.Plan, e)
	if !ok {
		fmt.Fprintln(w.out, "\nClimate: the plan does not say enough (inside, room, species).")
		return
	}
	deg := degrees(e)
	t := func(x climate.Celsius) string { return quantity.Format(float64(x), deg) }
	rise := func(b climate.Band[climate.Kelvin]) string { return bandOf(b, "K") }
	b := &p.Gradient.Balance
	fmt.Fprintf(w.out, "\nClimate, aiming at %s warm and %s cool, %s on average; room %s to %s:\n", t(p.Warm), t(p.Cool), t(p.Gradient.Mean), t(p.Box.Room.Low), t(p.Box.Room.High))
	fmt.Fprintf(w.out, "  Loses, per degree above the room: walls %.2f W, lid %.2f W, floor %.2f W, air changes %.2f W\n", float64(b.Walls), float64(b.Lid), float64(b.Base), float64(b.Vents))
	if len(p.Heaters) == 0 {
		fmt.Fprintln(w.out, "  No heater: the inside follows the room.")
	} else {
		fmt.Fprintf(w.out, "  Needs %s inside in the coldest room; the heaters give %s inside: %s\n", bandOf(b.Needed, "W"), bandOf(b.Supply, "W"), b.Verdict)
		fmt.Fprintf(w.out, "  They reach %s above the room. Most would be learnt by measuring: %s\n", rise(b.RiseReachable), b.Matters)
		fmt.Fprintf(w.out, "  On for %s of the time; %s a month\n", bandOf(percent(b.Duty), "%"), bandOf(b.Month, "kWh"))
		hot := b.WarmestIfStuck
		fmt.Fprintf(w.out, "  If the thermostat sticks, in the warmest room: %s (%s to %s); the limit is %s\n", t(hot.Likely), t(hot.Low), t(hot.High), t(p.HardHigh))
		if p.Gradient.CoolEnd == climate.CannotHold {
			fmt.Fprintf(w.out, "  The cool end cannot be held: the room itself is warmer than %s.\n", t(p.Cool))
		}
		fmt.Fprintln(w.out, "  Whether a warm and a cool end part as planned is for two thermometers to show: no equation gives it.")
	}
	c, cold := p.Cooldown(), p.ColdHouse()
	fmt.Fprintf(w.out, "  After a power cut, in the coldest room: air falls to %s %s, substrate %s\n", t(c.Limit), within(c.Air), within(c.Substrate))
	fmt.Fprintf(w.out, "  If the house cools too, with %s outside: air %s, substrate %s\n", t(0), within(cold.Air), within(cold.Substrate))
	wt := &p.Water
	fmt.Fprintf(w.out, "  Humidity %s: the air carries out %s a day at %.0f %%; the dish gives some, misting has to bring about %s\n", p.RH, bandOf(wt.Needed, "ml"), float64(wt.Target), bandOf(wt.Misted, "ml"))
	fmt.Fprintf(w.out, "  Unmisted it settles at %s; spray alone is gone in %s; a damp substrate is what holds it: %s\n", bandOf(wt.Unmisted, "%"), bandOf(wt.MistFades, "min"), wt.Supply)
	if wt.FogsAt.Low >= 99 {
		fmt.Fprintf(w.out, "  Dew point %s; the walls do not fog\n", t(wt.DewPoint))
		return
	}
	fmt.Fprintf(w.out, "  Dew point %s; the coldest wall fogs at %s, corners at %.0f %%: %s\n", t(wt.DewPoint), bandOf(wt.FogsAt, "%"), float64(wt.FogsInCorner), wt.Ceiling)
}

func degrees(e *plan.Enclosure) quantity.Unit {
	if e.Climate != nil && e.Climate.WarmEnd.Set() {
		return e.Climate.WarmEnd.V.Unit
	}
	if e.Place != nil && e.Place.Temperature.Set() {
		return e.Place.Temperature.V.Unit
	}
	return quantity.Celsius
}

func percent(b climate.Band[climate.Share]) climate.Band[climate.Percent] {
	return climate.Band[climate.Percent]{Low: climate.Percent(100 * b.Low), Likely: climate.Percent(100 * b.Likely), High: climate.Percent(100 * b.High)}
}

func bandOf[T ~float64](b climate.Band[T], unit string) string {
	r := b.Round()
	f := func(x T) string {
		if math.IsInf(float64(x), 0) || math.IsNaN(float64(x)) {
			return "?"
		}
		return strconv.FormatFloat(float64(x), 'f', -1, 64)
	}
	return strings.TrimSpace(f(r.Likely)+" "+unit) + " (" + f(r.Low) + " to " + f(r.High) + ")"
}

// within says after how long something is reached.
func within(b climate.Band[climate.Minute]) string {
	if math.IsInf(float64(b.Likely), 1) {
		return "never"
	}
	f := func(x climate.Minute) string {
		switch {
		case math.IsInf(float64(x), 1):
			return "never"
		case x >= 120:
			return strconv.FormatFloat(math.Round(float64(x)/6)/10, 'f', -1, 64) + " h"
		}
		return strconv.Itoa(int(math.Round(float64(x)))) + " min"
	}
	return "in about " + f(b.Likely) + " (" + f(b.Low) + " to " + f(b.High) + ")"
}
