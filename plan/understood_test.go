package plan

import (
	"strings"
	"testing"

	"vivary/schema"
)

// What keepers write, in which place of a plan or a log, and what is done with it:
//
//	= x     it is understood as x, without a word
//	~ x     it is understood as x, and said
//	? x     it means several things: it is asked back, and the answer to write has x
//	> x     it is a slip, answered with an edit that makes it x
//	>> x    it may be a slip of x, which is said in words; nothing is put in its place
//	: x     it is not known, nothing is guessed, and what is listed has x
//
// What the trade means by a word is from glossaries of keepers and from shops' lists, and
// otherwise from memory: common practice, no source. The judgement of each row is ours.
const understood = `
log | shed | = moult
log | Shed | = moult
log | has shed | = moult
log | molted | = moult
log | moulted | = moult
log | exo | = moult
log | shedding | = hanging
log | molting | = hanging
log | on her back | = hanging
log | in premolt | = premoult
log | MM | = matured
log | ate | = fed
log | ate 2 crickets | = fed
log | took prey | = fed
log | fed | = fed
log | fasting | = refused
log | didn't eat | = refused
log | refuses | = refused
log | offered | ? fed, refused
log | feeding | ? fed, refused
log | watered | ? done water, done moisten
log | water | ? done water, done moisten
log | fresh water | = done water
log | filled the dish | = done water
log | misted | = done mist
log | sprayed | = done mist
log | cleaned | ? done spot-clean, done dish, done deep-clean
log | spot cleaned | = done spot-clean
log | spot-clean | = done spot-clean
log | changed the substrate | = done deep-clean
log | handled | = done handle
log | escaped | = escaped
log | got out | = escaped
log | missing | ? died, escaped
log | found dead | = died
log | dead | = died
log | died | = died
log | passed away | = died
log | RIP | = died
log | laid | = laid
log | dropped a sac | = laid
log | egg sac | = laid
log | hatched | = hatched
log | eggs hatched | = hatched
log | dropped slings | ? born, hatched
log | dropped scorplings | = born
log | gave birth | = born
log | dropped | ? born, laid
log | dropped a leg | = injured
log | pregnant | = gravid
log | bred | ? paired, mated
log | mating | ? paired, mated
log | sick | = ill
log | DKS | = ill
log | weight 12 g | = weighed
log | sold | = moved
log | given away | = moved
log | bought | = arrived
log | checked | ? done look, seen, counted
log | heat | ? done heat, done device-test
log | mites? | ? mites
log | rehoused | ? moved, done
log | L4 | : moult
log | i2 | ? first_moult
log | mollted | >> moult
log | hangign | >> hanging
log | escpaed | >> escaped
log | refsued | >> refused
log | watred | : done
log | mited | : mites
log | fas | : moult
log | grumpy | : remark
log | birth | : born

stage | sling | = young
stage | slings | = young
stage | spiderling | = young
stage | juvie | = juvenile
stage | sub-adult | = subadult
stage | penultimate | = subadult
stage | mature | = adult
stage | Mature male | = adult
stage | MM | = adult
stage | mature female | = adult
stage | full grown | = adult
stage | Adult | = adult
stage | hatchling | ? newborn while
stage | scorpling | ? newborn while
stage | baby | ? newborn while
stage | nymph | ? juvenile when half grown
stage | L4 | ? its number as instar
stage | i4 | ? its number as instar
stage | instar 3 | ? its number as instar
stage | 5th instar | ? its number as instar
stage | male | ? as count 1.0
stage | gravid | ? gravid as state
stage | adlut | > adult
stage | egg | : newborn, young, juvenile

heater | heat-mat | = mat
heater | heating-pad | = mat
heater | UTH | = mat
heater | heat-cable | = cable
heater | heat-tape | = cable
heater | CHE | = ceramic
heater | ceramic-heat-emitter | = ceramic
heater | basking-lamp | = lamp
heater | RHP | = panel
heater | hot-rock | = rock
heater | DHP | ? lamp as kind
heater | heater | ? one of: mat
heater | uvb | ? true as uv
heater | cabel | > cable
heater | stove | : mat, cable

place | under tank | = under
place | underneath | = under
place | bottom | = under
place | side wall | = side
place | left | = side
place | rear | = back
place | overhead | = above
place | on top | = above

box | terrarium | ? glass, acrylic
box | glass terrarium | = glass
box | aquarium | = glass
box | plastic tub | = tub
box | deli cup | = tub
box | wooden | = wood
box | vivarium | ? wood
box | screen cage | = mesh

lid | screen, clips | = mesh, latched
lid | solid, locked | = solid, locked
lid | closed, padlock | = solid, locked
lid | solid, lached | > latched

damp | moist | = damp
damp | bone dry | = dry
damp | soaked | = wet

origin | CBB | = captive bred
origin | WC | = wild caught
origin | LTC | = long-term captive

care | misting | = mist
care | spray | = mist
care | water-change | = water
care | spot-clean | = spot-clean
care | poop | = spot-clean
care | cleaning | ? spot-clean
care | clean | ? deep-clean
care | head-count | = count
care | substrate-change | = deep-clean
care | mst | > mist
care | wash | : other

prey | pinhead | = cricket pinhead
prey | small dubia | = roach small
prey | medium hoppers | = locust medium
prey | morio large | = superworm large
prey | hydei | = fruit-fly hydei
prey | melanogaster | = fruit-fly melanogaster
prey | fruit flies | ? melanogaster, hydei
prey | 1/2 inch crickets | ~ cricket medium
prey | dubai small | : roach
prey | pinky newborn | : blow-fly-larva
prey | field cricket adult | : black-cricket

zone | GMT+1 | : Europe/Berlin
zone | UTC+2 | : Europe/Athens
zone | Etc/GMT+1 | : Atlantic/Azores
zone | EST | : America/New_York
zone | CET | : Europe/Paris
zone | BST | : Europe/London
zone | Europe/Londn | >> Europe/London
zone | Europe/Munich | : Europe/Berlin
zone | New York | > America/New_York

sort | emperor | ~ pandinus-imperator
sort | P. imperator | ~ pandinus-imperator
sort | pandinus-imperater | : pandinus-imperator
sort | emporer scorpion | : pandinus-imperator
sort | brachypelma-smithy | : brachypelma
sort | Brachypelma smithi | ? vivary start --sheet
sort | bearded dragon | : vivary start --sheet
`

// typedAt is a plan, and a log, in which something is written in one place.
func typedAt(where, what string) (text, log string) {
	at := map[string]string{"stage": "adult", "heater": "mat", "place": "side", "box": "glass", "lid": "solid, latched", "damp": "damp", "origin": "captive bred", "care": "mist", "prey": "cricket adult",
		"zone": "Europe/London", "sort": "pandinus-imperator"}
	if where == "log" {
		log = "2026-11-02 it " + what + "\n"
	} else {
		at[where] = what
	}
	text = "collection \"c\" {\n  time_zone = \"zone\"\n}\nroom \"a\" {\n  temperature = \"18 to 22 C\"\n}\nenclosure \"it\" {\n  species = \"sort\"\n" +
		"  housing {\n    kind = \"box\"\n    inside = \"60 x 45 x 40 cm\"\n    lid = \"lid\"\n    moisture = \"damp\"\n  }\n  animals \"one\" {\n    count = 1\n    stage = \"stage\"\n    origin = \"origin\"\n  }\n" +
		"  climate {\n    heater \"heater\" {\n      power = \"20 W\"\n      place = \"place\"\n    }\n  }\n  care \"care\" {\n    every = \"day\"\n  }\n  feeding \"one\" {\n    every = \"4 days\"\n    prey = \"prey\"\n  }\n}\n"
	for key, value := range at {
		text = strings.ReplaceAll(text, "\""+key+"\"", "\""+value+"\"")
	}
	return text, log
}

// meansAt is what the program takes it for.
func meansAt(c *Collection, where string) string {
	e := c.Enclosure("it")
	switch where {
	case "log":
		if len(c.Log) != 1 {
			return ""
		}
		out := c.Log[0].Word.Name
		if c.Log[0].Word == schema.WordDone && len(c.Log[0].Args) > 0 {
			out += " " + c.Log[0].Args[0].V
		}
		return out
	case "stage":
		return e.Animals[0].Stage.V
	case "origin":
		return e.Animals[0].Origin.V
	case "heater":
		return e.Climate.Heaters[0].What()
	case "place":
		return e.Climate.Heaters[0].Place.V
	case "box":
		return e.Housing.Kind.V
	case "lid":
		return strings.Join(e.Housing.Lid.V, ", ")
	case "damp":
		return e.Housing.Moisture.V
	case "care":
		if k := e.Care[0].What(); k != nil {
			return k.Name
		}
	case "prey":
		return e.Feeding[0].Menu()[0].V.String()
	case "zone":
		if c.Location != nil {
			return c.Location.String()
		}
	case "sort":
		if e.Sheet != nil {
			return e.Sheet.Name.V
		}
	}
	return ""
}

func TestUnderstood(t *testing.T) {
	rows := 0
	for row := range strings.Lines(strings.TrimSpace(understood)) {
		part := strings.SplitN(strings.TrimSpace(row), " | ", 3)
		if len(part) != 3 {
			continue
		}
		rows++
		where, what := part[0], part[1]
		sign, want, _ := strings.Cut(part[2], " ")
		text, log := typedAt(where, what)
		c, found := load(t, map[string]string{"a.care.hcl": text, "a.care.log": log})
		got := meansAt(c, where)
		if sign == "=" {
			if got != want || len(found) > 0 {
				t.Errorf("%s: %q is %q, want %q; %v", where, what, got, want, texts(found))
			}
			continue
		}
		if len(found) != 1 {
			t.Errorf("%s: %q: %v", where, what, texts(found))
			continue
		}
		f := found[0]
		switch edits := len(f.Edits) > 0; sign {
		case "~":
			if got != want || !strings.Contains(f.Text, want) {
				t.Errorf("%s: %q is %q, want %q; %s", where, what, got, want, f.Text)
			}
		case ">":
			if !edits || !strings.Contains(f.Edits[0].Text, want) {
				t.Errorf("%s: %q has no edit to %q: %s", where, what, want, f.Text)
			}
		case ">>":
			if edits || !strings.Contains(f.Text+" "+f.Write, want) || where == "log" && !strings.Contains(f.Text, "did you mean") {
				t.Errorf("%s: %q: want %q in words: %s; %s", where, what, want, f.Text, f.Write)
			}
		case "?", ":":
			if edits || strings.Contains(f.Text, "did you mean") || !strings.Contains(f.Write, want) {
				t.Errorf("%s: %q: want %q listed: %s; write %s", where, what, want, f.Text, f.Write)
			}
			if where == "log" && c.Log[0].Word != schema.WordRemark {
				t.Errorf("log: %q counts as %s", what, c.Log[0].Word.Name)
			}
			if where == "log" && (sign == "?") != (f.Rule == ruleLogAsked) {
				t.Errorf("log: %q is found by %s", what, f.Rule.ID)
			}
		}
	}
	if rows < 150 {
		t.Errorf("%d rows", rows)
	}
}
