package check

import (
	"strconv"

	"vivary/compile/stock"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/wording"
)

// Rules about feeder animals as living stock: whether they are enough, in time, and come alive.
// A plan without a culture, a tub or a supply is told nothing.
var stocks = []*Rule{
	{Collection: stockShort, Rule: finding.Rule{ID: "stock-short", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The meals of the plan take more feeder animals than there are.",
		Why:     "What lacks is noticed at the tank, and it is the young that cannot wait.",
		Source:  "freethoughtblogs.com/pharyngula, a university spider lab's diary of food that ran out",
		Instead: "Buy more, of another seller too, set up another culture, or plan other prey."}},
	{Collection: stockOut, Rule: finding.Rule{ID: "stock-out", Severity: finding.Urgent, Silence: finding.Never,
		Title:   "By the log there will not be enough feeder animals until more come.",
		Why:     "Second-instar young that got nothing were all dead between day 11 and day 30; the grown can wait.",
		Source:  "Rhopalurus rochai life history, J. Arachnol. 36:476-479, 2008; the order of who eats first is common practice, no source",
		Instead: "Buy some nearby for the days until then; feed the young first, and let the grown fast as long as their sheet allows.",
		Now:     "feeders will run out: vivary stock says for whom, and who can wait"}},
	{Collection: weekendDelivery, Rule: finding.Rule{ID: "delivery-weekend", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A delivery of feeder animals may come from Saturday to Monday.",
		Why:     "What is sent then waits in a depot over the weekend, and dies there.",
		Source:  "premiumcrickets, insectbrothers and americancricketranch, sellers who send from Monday to Thursday",
		Instead: "Days from Tuesday to Friday."}},
	{Collection: coldDelivery, Rule: finding.Rule{ID: "delivery-weather", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Feeder animals are ordered in frost or heat, and no depot holds them.",
		Why:     "Sellers hold a parcel back for up to a week when frost or heat is forecast, and then cancel it; what travels all the same comes dead.",
		Source:  "jrsinverts.com/weekly-shipping-status; flukerfarms and americancricketranch on their holds",
		Instead: "A depot where they are fetched, food in the house for a week more, or a culture of your own."}},
	{Collection: longClosed, Rule: finding.Rule{ID: "delivery-gap", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A seller brings nothing for longer than the feeders keep.",
		Why:     "What is bought before has to last until the next delivery; it ages, grows out of its size and dies.",
		Source:  "the feeder's sheet",
		Instead: "Another seller for that time, a shop where they are fetched, or a culture of your own."}},
	{Collection: noReserve, Rule: finding.Rule{ID: "stock-reserve", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The food of young would not last, were the next parcel held back.",
		Why:     "Weather holds a parcel for up to a week, after which it is cancelled. The grown fast; second-instar young that got nothing were all dead between day 11 and day 30.",
		Source:  "flukerfarms on its holds; Rhopalurus rochai life history, J. Arachnol. 36:476-479, 2008",
		Instead: "Keep the food of young for the days until the next delivery and a week more."}},
	{Collection: lateDelivery, Rule: finding.Rule{ID: "delivery-late", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "What is ordered now comes after young may eat for the first time.",
		Why:     "The seller takes longer to deliver than there is time.",
		Source:  "common practice, no source",
		Instead: "Buy some nearby, or from a seller who is quicker."}},
	{Collection: idleSupply, Rule: finding.Rule{ID: "stock-idle", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "What is bought is in no meal.",
		Why:     "Orders follow from the meals: of what none takes nothing is ever ordered, and that would be noticed at the tank.",
		Source:  "common practice, no source",
		Instead: "The prey and size that the meals take."}},
	{Collection: oneCulture, Rule: finding.Rule{ID: "culture-single", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Young are expected, and their food comes from one culture alone.",
		Why:     "Mites or mould take a culture within days, and the next yields weeks later.",
		Source:  "saurian.net on mites in fruit fly cultures",
		Instead: "Two cultures set up apart in time, or a supply besides."}},
	{Collection: lateCulture, Rule: finding.Rule{ID: "culture-late", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A culture yields only after its food is needed.",
		Why:     "From setting one up until it yields nothing can be hurried.",
		Source:  "hylid.clara.co.uk: about 19 days until the first flies",
		Instead: "Set one up now, and buy what is needed until it yields."}},
	{Collection: cultureGap, Rule: finding.Rule{ID: "culture-gap", Severity: finding.Urgent, Silence: finding.Never,
		Title:   "By the log no culture will yield on a day with a meal.",
		Why:     "It crashed, or none was set up in time.",
		Source:  "common practice, no source: after a crash clean, leave it empty for a week, buy in; densovirus of crickets is not got rid of, and tubs are never mixed",
		Instead: "Buy in until the next yields, feed the young first, set up another in a clean box.",
		Now:     "a culture of feeders does not yield in time: buy in; young first"}},
	{Collection: leadUnknown, Rule: finding.Rule{ID: "culture-lead", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "When a culture yields is not known.",
		Why:     "Of many feeders it was never published below which temperature nothing develops, and nothing is made up. Setting one up early enough is then yours to reckon.",
		Source:  "the feeder's sheet",
		Instead: "Write how long it took when you set one up."}},
	{Collection: feederWarmth, Rule: finding.Rule{ID: "feeder-warmth", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "Feeder animals stand colder or warmer than their sheet has them.",
		Why:     "Too cold they do not eat and do not breed, too warm they die.",
		Source:  "the feeder's sheet",
		Instead: "Another place for them."}},
	{Collection: overdrawn, Rule: finding.Rule{ID: "culture-overdrawn", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "By the log more was taken from a culture than it yields.",
		Why:     "Either the number is a slip, or those are gone that were to breed.",
		Source:  "the feeder's sheet",
		Instead: "Take as many as come; set up another; or say how many one yields with you."}},
	{Collection: gutLong, Rule: finding.Rule{ID: "gut-long", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "Feeders are gut-loaded for longer than anything is gained.",
		Why:     "Orders come earlier for it, and more die and grow until they are fed out.",
		Source:  "the feeder's sheet; measured on crickets, no more is gained after 48 hours",
		Instead: "24 to 48 hours."}},
	{Collection: deliveredTwice, Rule: finding.Rule{ID: "delivered-twice", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The log has the same delivery twice.",
		Why:     "Two people log one parcel, both count, and too few are ordered next.",
		Source:  "common practice, no source",
		Instead: "Take one of the lines back, or count what is there."}},
	{Collection: cultureWarmth, Rule: finding.Rule{ID: "culture-warmth", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A culture stands too cold or too warm to breed.",
		Why:     "Nothing develops then, and the days of the plan on which it is to yield come and go.",
		Source:  "the feeder's sheet",
		Instead: "A warmer or cooler place; or how long it takes with you, as lead, where you saw it yield so."}},
	{Collection: feederLaw, Rule: finding.Rule{ID: "feeder-law", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "There is law about a feeder to be looked up.",
		Why:     "Some feeder animals may not be kept everywhere, since they would stay once they are out. No conclusion is drawn here.",
		Source:  "the feeder's sheet",
		Instead: "Look it up, and say so with allowed_here."}},
}

// lots are the lots of the plan's stores.
func (c *Collection) lots() []*stock.Lot {
	if c.Stock == nil {
		return nil
	}
	return c.Stock.Lots
}

// line is where a lot stands in the plan: its first supply, else a tub, else a culture.
func lineOf(l *stock.Lot) *plan.Store {
	switch {
	case len(l.Supplies) > 0:
		return l.Supplies[0].Plan
	case len(l.Tubs) > 0:
		return l.Tubs[0]
	case len(l.Cultures) > 0:
		return l.Cultures[0].Plan
	}
	return nil
}

func stockShort(r *Rule, c *Collection) {
	for _, l := range c.lots() {
		for _, x := range l.Supplies {
			if at := x.Plan.From.Delivers; len(x.Orders) == 0 && !x.Spare && l.Fed(c.Horizon) && !l.Known && len(at) > 0 {
				c.Add(finding.Finding{Rule: &r.Rule, At: at[0].At, Source: r.Source, Text: "no delivery of " + l.Many() + " by " + x.Plan.From.Shown() + " comes in time for a meal of the coming year",
					Write: "the days on which deliveries come, such as from tue to fri"})
			}
			worst, asked := 0, 0
			for i := range x.Orders {
				if o := &x.Orders[i]; o.Short > worst {
					worst, asked = o.Short, o.Number+o.Short
				}
			}
			if worst > 0 && x == l.Supplies[len(l.Supplies)-1] {
				w := x.Plan.Supply.Weekly
				c.Add(finding.Finding{Rule: &r.Rule, At: w.At, Source: r.Source, Limit: strconv.Itoa(w.V) + " a week, as the plan says",
					Text:  "the meals of the plan take up to " + strconv.Itoa(asked) + " " + l.Many() + " a week: short by " + strconv.Itoa(worst) + shortDays(l) + forWhom(l),
					Write: "more here, if the seller gives more; or another supply of the same prey"})
			}
		}
		for _, x := range l.Cultures {
			need := 0
			for _, n := range l.Weekly(c.Horizon, 52) {
				need = max(need, n)
			}
			for i := range l.Broods {
				need = max(need, l.Broods[i].Weekly)
			}
			gives := 0
			for _, o := range l.Cultures {
				gives += int(o.Yield.High) * o.AtOnce
			}
			if len(l.Supplies) == 0 && x == l.Cultures[0] && gives > 0 && need > gives {
				c.Add(finding.Finding{Rule: &r.Rule, At: x.Plan.At, Source: r.Source, Limit: "up to " + strconv.Itoa(gives) + " a week of all that yield at once",
					Text:  "meals and young that are expected take up to " + strconv.Itoa(need) + " " + l.Many() + " a week: short by " + strconv.Itoa(need-gives),
					Write: "more cultures at once (at_once), or a supply of the same prey"})
			}
		}
	}
}

// shortDays says that there are days without. On which weekdays they fall differs with the day on
// which it is looked; the first of them stands in what stock prints.
func shortDays(l *stock.Lot) string {
	if len(l.Short.Days) == 0 {
		return ""
	}
	return ", and there are none left on some days (vivary stock says when first)"
}

// forWhom names who is without on the first such day.
func forWhom(l *stock.Lot) string {
	var names []string
	for _, e := range l.Short.Who {
		if len(names) == 3 {
			names = append(names, wording.Count(len(l.Short.Who)-3, "other", "others"))
			break
		}
		names = append(names, e.Entry.Plan().Name.V)
	}
	if len(names) == 0 {
		return ""
	}
	return ", for " + wording.And(names)
}

func stockOut(r *Rule, c *Collection) {
	for _, l := range c.lots() {
		s := lineOf(l)
		if !l.Known || l.Short.First < 0 || s == nil || l.Short.First-c.Horizon.Today > outSoon {
			continue
		}
		when := ahead(l.Short.First - c.Horizon.Today)
		c.Add(finding.Finding{Rule: &r.Rule, At: s.At, Source: r.Source,
			Text:  "by what was counted and what the meals took, " + l.Many() + " run out " + when + ": " + strconv.Itoa(l.Short.Lacks) + " lack then" + forWhom(l),
			Write: "what was counted or delivered since, in the log, as " + s.Name.V + " " + schema.WordCounted.Name + " and how many; else buy some until the next delivery"})
	}
}

// ahead is a day by how far off it is.
func ahead(n int) string {
	if n <= 0 {
		return "today"
	}
	return "in " + wording.Days(n)
}

// outSoon is within how many days a lack is urgent: two deliveries. Our own choice.
const outSoon = 14

func feederLaw(r *Rule, c *Collection) {
	for _, s := range c.Plan.Stores {
		switch {
		case s.AllowedHere.Set() && !s.AllowedHere.V:
			c.Add(finding.Finding{Rule: &r.Rule, At: s.AllowedHere.At, Source: r.Source, Text: "you say that " + s.Of.String() + " may not be kept where you are", Write: "another feeder as prey; or true, once you have looked it up"})
		case !s.AllowedHere.Set() && s.Sheet != nil:
			if f := s.Sheet.Figure(schema.FeederLaw); f != nil {
				c.Add(finding.Finding{Rule: &r.Rule, At: s.Prey.At, Source: c.Cite(f), Text: "the sheet of the " + s.Of.Feeder + " has law to be looked up: " + f.Value.V, Write: "allowed_here, true once you have looked it up"})
			}
		}
	}
}
