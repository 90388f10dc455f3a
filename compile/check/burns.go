package check

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Skin of people is harmed by burns in 8 hours and by scalds in minutes (ISO 13732-1, from
// memory). Nothing lower was published for animals.
const (
	burns  = 43.0
	scalds = 50.0
)

// doubt is how far past what may be touched a surface must likely get to be more than
// advice, in K: what is known of it goes two either way.
const doubt = 2

// touch is how hot a surface may get that the animals can touch.
func (e *Enclosure) touch() float64 { return plan.SurfaceMax(e.Sheet) }

func (e *Enclosure) touchingLimit() string {
	if f := e.figure(schema.FigureSurfaceMax); f != nil && f.Range.High <= e.touch() {
		return e.atMost(f.Range.High, e.Plan.Degrees(), f)
	}
	return e.temperature(climate.Celsius(e.touch())) + " at the most, a precaution: no lethal temperature of most species is published"
}

// radiates reports whether the spot is made by what is not flat on a face: how hot it is
// there is known within a dozen degrees only, and nothing is refused for it.
func radiates(p *balance.Report, z climate.Zones) bool {
	return z.Warmest >= 0 && radiant(p.Written[z.Warmest])
}

// beneath returns the first mat or cable under the floor, or nil.
func (e *Enclosure) beneath() *plan.Heater {
	for _, h := range e.heaters() {
		if h.Place.V == "under" && !radiant(h) {
			return h
		}
	}
	return nil
}

// stuck returns what a failed thermostat comes to in the warmest room, and whether that is
// for these rules to say: of a heater without a thermostat, a room that is too hot by
// itself and a floor that burns as planned others speak.
func (e *Enclosure) stuck() (p *balance.Report, z climate.Zones, ok bool) {
	p, ok = e.report()
	if !ok || len(p.Heaters) == 0 || e.bare() || p.Box.Room.High > p.HardHigh || e.scorched() || e.far() {
		return p, z, false
	}
	return p, p.Stuck(), true
}

// surface is the hottest that animals can touch: the spot, or for what digs the floor over
// a mat beneath. Others never get down to it.
func (e *Enclosure) surface(z climate.Zones) (b climate.Band[climate.Celsius], floor bool) {
	if z.Floor.Likely > z.Spot.Likely && e.digs() {
		return z.Floor, true
	}
	return z.Spot, false
}

// scalded reports whether even the favourable end of it burns in minutes.
func (e *Enclosure) scalded(p *balance.Report, z climate.Zones) bool {
	b, floor := e.surface(z)
	return z.Warmest >= 0 && b.Low > scalds && (floor || !radiates(p, z))
}

// gets words what a failed thermostat comes to.
func (e *Enclosure) gets(p *balance.Report, z climate.Zones) string {
	b, floor := e.surface(z)
	what := "the surface at the " + p.Written[z.Warmest].Name.V
	if floor {
		what = "the floor beneath the substrate"
	}
	return e.always(p) + what + " gets to about " + e.spread(b)
}

func (e *Enclosure) always(p *balance.Report) string {
	return "if its thermostat sticks, in a room at " + e.temperature(p.Box.Room.High) + ", "
}

// milder says what would keep a surface cool enough: nothing behind it, or so many watts.
func (e *Enclosure) milder(p *balance.Report, z climate.Zones) string {
	h, w := &p.Heaters[z.Warmest], p.Written[z.Warmest]
	b, _ := e.surface(z)
	what := w.What()
	switch {
	case radiates(p, z):
		return "fewer watts, or farther away"
	case balance.Backing(e.Plan.Housing, p.Box.Face(h)) != "" && p.Box.Covers[p.Box.Face(h)].Resistance >= climate.Foil.Resistance:
		return "nothing behind the " + what + ", or fewer watts"
	case what == "mat" && p.Box.Flux(h) > fluxAsked:
		return "a larger mat of the same power: 150 to 250 W for a square metre are sold"
	}
	if e.Plan.Rack.Set() || what == "cable" {
		return "fewer watts for its length or size"
	}
	n := math.Floor(w.Power.V.Value * float64((p.Touch-z.Air.Likely)/(b.Likely-z.Air.Likely)))
	return quantity.Format(max(1, n), quantity.Watt) + " or less, on the same size"
}

func stuckScalds(r *Rule, e *Enclosure) {
	p, z, ok := e.stuck()
	if !ok || !e.scalded(p, z) {
		return
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: p.Written[z.Warmest].At, Text: e.gets(p, z), Limit: e.touchingLimit(), Source: r.Source, Write: e.milder(p, z)})
}

func stuckHot(r *Rule, e *Enclosure) {
	p, z, ok := e.stuck()
	if !ok || e.scalded(p, z) {
		return
	}
	how, bad := e.hotSpot(p, z)
	air := finding.Caution
	if z.Air.Low > p.HardHigh {
		air = finding.Error
	}
	if z.Air.Likely > p.HardHigh && (!bad || air > how) {
		hard := e.figure(schema.FigureTemperatureHard)
		e.add(finding.Finding{Rule: &r.Rule, At: p.Written[max(0, z.Warmest)].At, Text: e.always(p) + "the air gets to about " + e.spread(z.Air),
			Limit: e.atMost(float64(p.HardHigh), e.Plan.Degrees(), hard), Source: e.Cite(hard), Write: "fewer watts, or a second thermostat in line and an accept block that says so"}, air)
		return
	}
	if !bad {
		return
	}
	x := finding.Finding{Rule: &r.Rule, At: p.Written[z.Warmest].At, Source: r.Source, Text: e.gets(p, z), Limit: e.touchingLimit(),
		Write: e.milder(p, z) + "; with a second thermostat in line, an accept block that says so"}
	if w := p.Written[z.Warmest]; how == finding.Advice && !sized(w) {
		x.Text += ", if it is of the usual size"
		x.Write = "size, with length and width of the " + w.Name.V
	}
	e.add(x, how)
}

func sized(h *plan.Heater) bool { return h.Size.Set() || h.Covers.Set() || h.Length.Set() }

// hotSpot judges the surface that a failed thermostat makes.
func (e *Enclosure) hotSpot(p *balance.Report, z climate.Zones) (how finding.Severity, bad bool) {
	if z.Warmest < 0 {
		return 0, false
	}
	w := p.Written[z.Warmest]
	b, floor := e.surface(z)
	switch {
	case w.Place.V == "inside":
		return 0, false // a guard keeps them off it, or another rule speaks
	case radiates(p, z) && !floor:
		return finding.Caution, b.Low > burns
	case b.Low > burns:
		return finding.Error, true
	case b.Likely <= p.Touch || e.wrongSize(p):
		return 0, false
	case b.Likely <= p.Touch+doubt || !sized(w): // a size that is not said is a guess, and with it how hot it gets
		return finding.Advice, true
	}
	return finding.Caution, true
}

// Flux beyond which a mat is asked about, is cautioned where something lies behind it, and
// is none that is sold, in W for a square metre.
const (
	fluxAsked  = 250
	fluxBacked = 150
	fluxNone   = 400
)

// flux returns the power of a square metre of a mat of which the plan says how large it is,
// and whether something lies behind it that sends its heat in.
func flux(p *balance.Report, i int) (q float64, backed, ok bool) {
	h, w := &p.Heaters[i], p.Written[i]
	if w.What() != "mat" || !(w.Size.Set() || w.Covers.Set()) {
		return 0, false, false
	}
	return float64(p.Box.Flux(h)), p.Box.Covers[p.Box.Face(h)].Resistance >= climate.Foil.Resistance, true
}

func unsold(q float64, backed bool) bool { return q > fluxNone || q > fluxAsked && backed }

// wrongSize reports whether a mat has a power for its size that none has which is sold.
func (e *Enclosure) wrongSize(p *balance.Report) bool {
	for i := range p.Heaters {
		if q, backed, ok := flux(p, i); ok && unsold(q, backed) {
			return true
		}
	}
	return false
}

func heaterFlux(r *Rule, e *Enclosure) {
	p, ok := e.report()
	if !ok {
		return
	}
	_, stuck, judged := e.stuck()
	burning := judged && stuck.Warmest >= 0 && !radiates(p, stuck)
	if burning && stuck.Spot.Low > burns {
		return // said by how hot it gets
	}
	for i := range p.Heaters {
		w := p.Written[i]
		q, backed, ok := flux(p, i)
		if !ok || q <= fluxBacked || q <= fluxAsked && !backed {
			continue
		}
		x := finding.Finding{Rule: &r.Rule, At: w.Power.At, Source: r.Source, Limit: "137 to 230 W for a square metre are sold",
			Text: "the " + w.Name.V + " has " + strconv.Itoa(int(q+0.5)) + " W for a square metre"}
		side := math.Sqrt(w.Power.V.Value/float64(climate.UsualFlux)) * 1000
		x.Write = "the size of the mat that you have: one of " + w.Power.V.String() + " is about " + quantity.Format(side, e.Plan.Housing.Inside.V.Unit) + " square"
		switch {
		case unsold(q, backed):
			e.Add(x)
		case burning && stuck.Spot.Likely > p.Touch:
		case q > fluxBacked && backed:
			x.Text += ", and " + balance.Backing(e.Plan.Housing, p.Box.Face(&p.Heaters[i])) + " behind it sends most of that in"
			x.Write = "nothing behind it, or a weaker mat"
			e.Soft(x, finding.Caution)
		case q > fluxAsked:
			e.Soft(x, finding.Advice)
		}
	}
}

// digs reports whether the animals dig down to get away from heat, or live in what lies on
// the floor.
func (e *Enclosure) digs() bool {
	return e.word(schema.FigureLifestyle) == "burrower" || e.against() != nil || e.true(schema.FigureLivesInFood)
}

// against returns the figure by which heat from beneath is advised against, or nil.
func (e *Enclosure) against() *plan.Figure {
	if not := e.figure(schema.FigureHeaterNot); not != nil && slices.Contains(not.Words, "under") {
		return not
	}
	return nil
}

// floorDry is the floor over a mat beneath once its substrate is dry: as planned, or with
// the heater always on where it has no thermostat.
func (e *Enclosure) floorDry(p *balance.Report) climate.Band[climate.Celsius] {
	if e.bare() {
		return p.DriedStuck().Floor
	}
	return p.Dried().Floor
}

// scorched reports whether a floor burns as planned: for what digs the likely value
// decides, for others the favourable end.
func (e *Enclosure) scorched() bool {
	p, ok := e.report()
	if !ok || e.beneath() == nil {
		return false
	}
	f := e.floorDry(p)
	return e.digs() && f.Likely > p.Touch || f.Low > p.Touch
}

// heatBeneath judges a mat beneath the floor by what it does once its substrate is dry.
func heatBeneath(r *Rule, e *Enclosure) {
	h := e.beneath()
	p, ok := e.report()
	if h == nil || !ok {
		return
	}
	f := e.floorDry(p)
	x := finding.Finding{Rule: &r.Rule, At: h.Place.At, Source: r.Source, Limit: e.touchingLimit(), Write: "the " + h.What() + " on a side wall"}
	if e.figure(schema.FigureSpotNeeded) != nil { // it lies on the warm ground
		x.Write = "2 to 3 cm of substrate over it, and the box on feet; or a lamp above"
	}
	dried := "once the substrate over the " + h.Name.V + " has dried, the floor beneath it gets to about " + e.spread(f)
	if e.scorched() {
		x.Text = dried
		e.Add(x)
		return
	}
	not, life := e.against(), e.figure(schema.FigureLifestyle)
	switch {
	case f.Likely > p.Touch:
		x.Text = dried
		e.Soft(x, finding.Caution)
		return
	case not != nil:
		x.Limit, x.Source = e.limit("not "+not.Value.V, not), e.Cite(not)
	case e.word(schema.FigureLifestyle) == "burrower":
		x.Limit, x.Source = e.limit("a burrower", life), e.Cite(life)
	default:
		return
	}
	x.Source += "; for it, with thin substrate: dubiaroaches.com, southernxreptiles.com"
	x.Text = fmt.Sprintf("the %s is beneath the floor, which gets to about %s; keepers do it, and others advise against it for animals that dig down to get away from heat", h.Name.V, e.spread(f))
	e.Soft(x, finding.Caution)
}

// far reports whether a surface is too hot as planned, since a probe hangs where it does not see
// its heater.
func (e *Enclosure) far() bool {
	p, ok := e.report()
	if !ok {
		return false
	}
	z := p.Coldest()
	return z.Warmest >= 0 && p.Heaters[z.Warmest].Probe == climate.InAir && z.Spot.Likely > p.Touch && !radiates(p, z)
}

// probeFar says that a probe hangs where it does not see how hot its heater gets: it is so
// without any failure. With one it gets hotter still, and that decides how bad it is.
func probeFar(r *Rule, e *Enclosure) {
	p, ok := e.report()
	if !ok || e.bare() {
		return
	}
	z := p.Coldest()
	if z.Warmest < 0 || p.Heaters[z.Warmest].Probe != climate.InAir {
		return
	}
	h := p.Written[z.Warmest]
	lamp := radiates(p, z)
	if !lamp && z.Spot.Likely <= p.Touch && p.Warmest().Duty.Likely > 0.99 {
		e.Soft(finding.Finding{Rule: &r.Rule, At: h.Probe.At, Text: "with its probe " + probed(h) + " the " + h.Name.V + " never switches off: even in the warmest room the air stays below its setting", Source: r.Source,
			Limit: "the air gets to about " + e.spread(p.Warmest().Air) + " in the warmest room", Write: "the probe on the warmest surface, and the thermostat at what the warm end is to be"}, finding.Caution)
		return
	}
	if h.Place.V == "inside" || z.Spot.Likely <= p.Touch || lamp && z.Spot.Likely <= scalds {
		return
	}
	x := finding.Finding{Rule: &r.Rule, At: h.Probe.At, Limit: e.touchingLimit(), Source: r.Source, Write: "the probe on the warmest surface, and the thermostat at what the warm end is to be",
		Text: "with its probe " + probed(h) + " the " + h.Name.V + " gets to about " + e.spread(z.Spot) + " at the surface in a room at " + e.temperature(p.Box.Room.Low)}
	if lamp {
		x.Text += ": measure it"
	}
	if !lamp && p.Stuck().Spot.Low > burns {
		e.Add(x)
		return
	}
	e.Soft(x, finding.Caution)
}

func probed(h *plan.Heater) string {
	if h.Probe.V == "cool end" {
		return "at the cool end"
	}
	return "in the air"
}

// rock returns the heater that the animals lie on, or nil.
func (e *Enclosure) rock() *plan.Heater {
	for _, h := range e.heaters() {
		if h.What() == "rock" {
			return h
		}
	}
	return nil
}

func heaterRock(r *Rule, e *Enclosure) {
	if h := e.rock(); h != nil {
		write := "a mat on a side wall, with a thermostat"
		if e.figure(schema.FigureSpotNeeded) != nil {
			write = "a lamp above, with a thermostat"
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: h.At, Text: "the animals lie on the heater itself", Source: r.Source, Write: write})
	}
}

// strong is the part of the time, in the coldest room, below which a heater is called too
// strong.
const strong = 0.3

func heaterStrong(r *Rule, e *Enclosure) {
	p, ok := e.report()
	if !ok || len(p.Heaters) != 1 || e.bare() || !p.Heaters[0].Thermostat {
		return
	}
	z := p.Coldest()
	if s := p.Stuck(); s.Warmest >= 0 && s.Spot.Likely > p.Touch && !radiates(p, s) {
		return // said by how hot it gets
	}
	if z.Warmest < 0 || radiates(p, z) || !(z.Duty.High < strong) || z.Spot.Likely < p.Heaters[0].Setting-1 {
		return
	}
	h := p.Written[0]
	e.Add(finding.Finding{Rule: &r.Rule, At: h.Power.At, Source: r.Source, Limit: "a third of the time in the coldest room",
		Text:  "the " + h.Name.V + " is on for " + wording.Band(share(z.Duty), "%") + " of the time even in the coldest room",
		Write: "one of about " + quantity.Format(math.Ceil(h.Power.V.Value*float64(z.Duty.Likely)*2), quantity.Watt)})
}
