package randomplan

import (
	"fmt"
	"slices"
)

// recipe is an enclosure that a species can live in, and who may live in it.
type recipe struct {
	species string
	groups  []resident
	second  bool // the animals may be written as two blocks
	housing []attr
	climate []attr
	heater  []attr // nothing where the room is warm enough
	prey    []string
	damp    string // the kind of care that keeps it damp, or ""
	dish    bool
	rest    bool // takes a cool rest
	mates   bool // a log may tell of young
}

type resident struct {
	stage string
	count string
	total int
}

var (
	scorpionGlass = []attr{{"kind", `"glass"`}, {"inside", `"90 x 45 x 45 cm"`}, {"lid", `"solid, latched"`}, {"vents", `"some"`}, {"vents_at", `"top"`},
		{"substrate", `"coir and topsoil"`}, {"moisture", `"damp"`}, {"depth", `"16 cm"`}, {"hides", "5"}}
	scorpionTub = []attr{{"kind", `"tub"`}, {"inside", `"40 x 30 x 32 cm"`}, {"lid", `"solid, latched"`}, {"vents", `"some"`}, {"vents_at", `"top"`},
		{"substrate", `"coir and topsoil"`}, {"moisture", `"damp"`}, {"depth", `"16 cm"`}, {"hides", "1"}}
	spiderGlass = []attr{{"kind", `"glass"`}, {"inside", `"45 x 40 x 30 cm"`}, {"lid", `"part mesh, latched"`}, {"gap", `"2 mm"`}, {"vents", `"some"`}, {"vents_at", `"top"`},
		{"substrate", `"coir and topsoil"`}, {"moisture", `"damp below"`}, {"depth", `"12 cm"`}, {"hides", "1"}}
	spiderTub = []attr{{"kind", `"tub"`}, {"inside", `"15 x 12 x 14 cm"`}, {"lid", `"solid, latched"`}, {"vents", `"few"`}, {"vents_at", `"top"`},
		{"substrate", `"coir and topsoil"`}, {"moisture", `"damp below"`}, {"depth", `"10 cm"`}, {"hides", "1"}}
	desertTub = []attr{{"kind", `"tub"`}, {"inside", `"45 x 30 x 30 cm"`}, {"lid", `"solid, latched"`}, {"vents", `"some"`}, {"vents_at", `"top"`},
		{"substrate", `"sand and clay, packed"`}, {"moisture", `"damp below"`}, {"depth", `"20 cm"`}, {"hides", "1"}}
	crawlerTub = []attr{{"kind", `"tub"`}, {"inside", `"80 x 50 x 45 cm"`}, {"lid", `"solid, latched"`}, {"vents", `"some"`}, {"vents_at", `"top"`},
		{"substrate", `"leaf litter and topsoil"`}, {"moisture", `"damp"`}, {"depth", `"30 cm"`}, {"hides", "4"}}
)

// recipes pass the checks as far as the boxes go, in a room of 22 to 25 C.
var recipes = []recipe{
	{species: "pandinus-imperator", groups: []resident{{"adult", `"1.2.0"`, 3}, {"adult", "3", 3}}, second: true, housing: scorpionGlass, dish: true, damp: "mist",
		climate: []attr{{"warm_end", `"28 to 30 C"`}, {"cool_end", `"24 to 26 C"`}, {"night", `"22 to 25 C"`}, {"humidity", `"70 to 80 %"`}, {"thermometer", "true"}},
		heater:  []attr{{"power", `"25 W"`}, {"size", `"28 x 43 cm"`}, {"place", `"side"`}, {"thermostat", `"30 C"`}},
		prey:    []string{"cricket adult", "roach medium"}},
	{species: "pandinus-imperator", groups: []resident{{"adult", `"0.1.0"`, 1}}, housing: scorpionGlass, dish: true, damp: "mist", mates: true,
		climate: []attr{{"warm_end", `"28 to 30 C"`}, {"cool_end", `"24 to 26 C"`}, {"night", `"22 to 25 C"`}, {"humidity", `"70 to 80 %"`}, {"thermometer", "true"}},
		heater:  []attr{{"power", `"25 W"`}, {"size", `"28 x 43 cm"`}, {"place", `"side"`}, {"thermostat", `"30 C"`}},
		prey:    []string{"cricket adult", "roach medium"}},
	{species: "pandinus-imperator", groups: []resident{{"juvenile", "1", 1}}, housing: scorpionTub, dish: true, damp: "mist",
		climate: []attr{{"warm_end", `"27 to 28 C"`}, {"cool_end", `"24 to 25 C"`}, {"night", `"22 to 24 C"`}, {"humidity", `"70 to 80 %"`}, {"thermometer", "true"}},
		heater:  []attr{{"power", `"8 W"`}, {"size", `"20 x 20 cm"`}, {"place", `"back"`}, {"thermostat", `"28 C"`}},
		prey:    []string{"cricket medium", "cricket small"}},
	{species: "heterometrus", groups: []resident{{"adult", "1", 1}, {"juvenile", "1", 1}}, housing: scorpionTub, dish: true, damp: "mist",
		climate: []attr{{"warm_end", `"27 to 28 C"`}, {"cool_end", `"24 to 25 C"`}, {"night", `"22 to 24 C"`}, {"humidity", `"70 to 80 %"`}, {"thermometer", "true"}},
		heater:  []attr{{"power", `"8 W"`}, {"size", `"20 x 20 cm"`}, {"place", `"back"`}, {"thermostat", `"28 C"`}},
		prey:    []string{"cricket medium", "cricket small"}},
	{species: "hadrurus-arizonensis", groups: []resident{{"juvenile", "1", 1}, {"adult", "1", 1}}, housing: desertTub, dish: true, rest: true,
		climate: []attr{{"warm_end", `"27 to 28 C"`}, {"cool_end", `"23 to 25 C"`}, {"night", `"20 to 22 C"`}, {"humidity", `"30 to 45 %"`}, {"thermometer", "true"}},
		heater:  []attr{{"power", `"40 W"`}, {"place", `"side"`}, {"thermostat", `"28 C"`}, {"covers", `"30 %"`}},
		prey:    []string{"cricket medium", "roach medium"}},
	{species: "brachypelma-hamorii", groups: []resident{{"adult", `"0.1.0"`, 1}, {"subadult", "1", 1}}, housing: spiderGlass, dish: true,
		climate: []attr{{"humidity", `"50 to 62 %"`}, {"thermometer", "true"}}, prey: []string{"cricket adult", "roach medium"}},
	{species: "brachypelma-hamorii", groups: []resident{{"juvenile", "1", 1}}, housing: spiderTub, dish: true,
		climate: []attr{{"humidity", `"50 to 65 %"`}, {"thermometer", "true"}}, prey: []string{"cricket small"}},
	{species: "archispirostreptus-gigas", groups: []resident{{"adult", "4", 4}}, housing: crawlerTub, damp: "moisten",
		climate: []attr{{"humidity", `"72 to 88 %"`}, {"thermometer", "true"}}},
	{species: "porcellio-scaber", groups: []resident{{"adult", "40", 40}}, housing: crawlerTub, damp: "moisten",
		climate: []attr{{"humidity", `"72 to 88 %"`}, {"thermometer", "true"}}},
	{species: "mastigoproctus-giganteus", groups: []resident{{"adult", "1", 1}, {"juvenile", "1", 1}}, housing: scorpionTub, dish: true, damp: "moisten", rest: true,
		climate: []attr{{"humidity", `"62 to 78 %"`}, {"thermometer", "true"}}, prey: []string{"cricket medium", "cricket small"}},
}

// enclosures adds one to six of them, some from a template.
func (p *Plan) enclosures() {
	for i := range min(p.between(1, 6), p.between(1, 6)) {
		r := &recipes[p.rng.IntN(len(recipes))]
		b := &Box{Block: block("enclosure", fmt.Sprintf("box-%d", i+1)), Species: r.species, Heated: r.heater != nil}
		b.text("title", fmt.Sprintf("Box %d", i+1))
		if p.chance(8) {
			b.text("formerly", fmt.Sprintf("old-%d", i+1))
		}
		p.fill(b, r)
		p.Boxes = append(p.Boxes, b)
	}
}

// fill writes an enclosure, or the part of it that its template leaves to it.
func (p *Plan) fill(b *Box, r *recipe) {
	common := b.Block
	if name := fmt.Sprintf("%s-%s", r.species, r.groups[0].stage); p.chance(25) {
		b.text("template", name)
		common = nil
		if !p.hasTemplate(name) {
			common = block("template", name)
			p.templates = append(p.templates, common)
		}
	}
	if common != nil {
		common.text("species", r.species)
		common.add(&Block{Word: "housing", attrs: slices.Clone(r.housing)})
		c := &Block{Word: "climate", attrs: slices.Clone(r.climate)}
		if r.heater != nil {
			c.add(&Block{Word: "heater", Name: "mat", attrs: slices.Clone(r.heater)})
		}
		common.add(c)
	}
	b.text("room", pick(p, p.rooms).Name)
	p.residents(b, r)
	p.cares(b, r)
	p.seasons(b, r)
}

func (p *Plan) hasTemplate(name string) bool {
	for _, t := range p.templates {
		if t.Name == name {
			return true
		}
	}
	return false
}

// residents adds the animals, a group of them as two blocks where that can be.
func (p *Plan) residents(b *Box, r *recipe) {
	who := pick(p, r.groups)
	add := func(name, count string, total int) {
		a := block("animals", name).set("count", count).text("stage", who.stage).text("origin", "captive bred").text("paper", "invoice 118")
		b.add(a)
		b.Groups = append(b.Groups, &Group{Name: name, Stage: who.stage, Count: total, left: total})
	}
	if r.second && p.chance(60) {
		add("females", `"0.2.0"`, 2)
		add("males", `"1.0.0"`, 1)
		return
	}
	add(pick(p, []string{"all", "only", who.stage}), who.count, who.total)
}

// seasons adds a cool rest where the species takes one, and seldom half rations.
func (p *Plan) seasons(b *Box, r *recipe) {
	switch {
	case r.rest && p.chance(40) && b.Groups[0].Stage == "adult":
		b.add(block("season", "cool rest").text("from", "15 nov").text("to", "20 feb").text("ramp", "4 C").text("feeding", "none").text("heating", "off").
			add(block("climate", "").text("warm_end", "19 to 20 C").text("cool_end", "19 to 20 C")))
	case p.chance(8):
		b.add(block("season", "quiet").text("from", "1 dec").text("to", "20 jan").text("feeding", "half"))
	case p.chance(4) && r.damp != "":
		b.add(block("season", "dry").text("from", "1 jul").text("to", "20 jul").text("misting", pick(p, []string{"half", "none"})))
	}
}
