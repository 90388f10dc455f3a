species "scolopendra-dehaani" {
  title    = "Vietnamese giant centipede"
  latin    = "Scolopendra dehaani Brandt, 1840"
  family   = "Scolopendridae"
  type     = "centipede"
  also     = ["Malaysian giant centipede", "cherry red centipede", "jungle centipede", "Vietnamese centipede"]
  former   = ["Scolopendra subspinipes dehaani"]
  mistaken = ["Scolopendra subspinipes"]
  note     = "A species again since 2012 (OK6). S. subspinipes, the sister species, is kept in the same way, and any big import is sold by that name (OK5). Long tongs of 30 cm and more, a catch cup at hand, a second person to rehouse it, and no hand in the box, ever. One that is out is looked for along skirting boards, in damp rooms, shoes and beds."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard        = "14 to 35 C"
  temperature_soft        = "20 to 31 C"
  warm_spot               = "28 to 30 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "60 to 90 %"
  substrate_depth_min     = "10 cm"
  substrate_depth_advised = "15 cm"
  hairs                   = "none"
  speed                   = "very quick"

  figure "temperature-target" {
    value   = "25.5 to 29.5 C"
    source  = ["OK5"]
    quality = "keeper"
  }

  figure "air" {
    value   = "25.5 to 29.5 C"
    source  = ["OK5"]
    quality = "keeper"
  }

  figure "night" {
    value   = "21 to 25.5 C"
    source  = ["OK5"]
    quality = "keeper"
  }

  figure "heater-not" {
    value    = "under"
    source   = ["OK5"]
    quality  = "practice"
    disputed = "a mat under the tank or a dim bulb, with a thermostat (OK5)"
    note     = "It digs."
  }

  figure "humidity-target" {
    value   = "70 to 80 %"
    source  = ["OK5"]
    quality = "keeper"
  }

  figure "moisture" {
    value   = "damp"
    source  = ["OK8"]
    quality = "keeper"
    note    = "Never wet, and one side drier: wet and still air gives black spots of fungus, which kill."
  }

  figure "ventilation" {
    value   = "cross"
    source  = ["OK8"]
    quality = "keeper"
  }

  figure "drinks" {
    value   = "dish"
    source  = ["OK8", "OK10"]
    quality = "keeper"
    note    = "Always, of a size in which it cannot drown (OK8). It dries out fast through its breathing holes (OK10)."
  }

  figure "floor-first" {
    value    = "1500 cm2"
    stages   = ["subadult", "adult"]
    source   = ["OK6"]
    quality  = "keeper"
    disputed = "19 to 38 L (OK5), as wide as the animal is long and one and a half times as long (OK11)"
    note     = "50 x 30 cm."
  }

  figure "height-min" {
    value    = "30 cm"
    stages   = ["subadult", "adult"]
    source   = ["OK6"]
    quality  = "keeper"
    disputed = "walls higher than it is long (OK12)"
  }

  figure "climbs" {
    value    = "seams"
    source   = ["OK11"]
    quality  = "keeper"
    disputed = "it climbs gladly (OK9)"
    note     = "Corners of silicone, plants and cables are its ladders; clean glass is none."
  }

  figure "lid" {
    value   = "latched"
    source  = ["OK7", "OK6", "OK12"]
    quality = "keeper"
    note    = "It lifts lids, and chews gauze of plastic and thin boxes: metal gauze, perforated sheet or stiff round vents; coarse gauze breaks its claws. It must not reach the rim, where it wedges itself in (OK7). Doors in front are unfit (OK6), else a top slide with a pin (OK12)."
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["newborn", "young", "juvenile"]
    note   = "No figure is published."
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["subadult", "adult"]
    note   = "No figure is published; never more than a third of the height of its body, which goes flat through any gap."
  }

  figure "moults-as-adult" {
    value   = "true"
    source  = ["memory"]
    quality = "memory"
    note    = "About once a year. It may fast for weeks before."
  }

  figure "length" {
    value    = "18 to 23 cm"
    stages   = ["adult"]
    source   = ["OK5", "OK6"]
    quality  = "practice"
    disputed = "over 20 cm (OK6), imports 12.5 to 18 cm and to 23 cm (OK5), 30 cm (OK12), subspinipes to 20 cm (an encyclopedia)"
  }

  figure "mass" {
    value   = "8 to 20 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "5 to 10 years"
    source   = ["memory"]
    quality  = "memory"
    disputed = "of the genus: morsitans 5 to 6, gigantea over 10 years (OK14)"
  }

  figure "moults-to-adult" {
    value   = "7 to 10"
    source  = ["OK99"]
    quality = "keeper"
    note    = "A weak page. All its legs are there from birth; no growth factor was found."
  }

  figure "age-at-maturity" {
    value    = "1 to 3 years"
    source   = ["OK11"]
    quality  = "practice"
    disputed = "to 3 years (OK11), 1 to 2 years (a weak page)"
  }

  figure "brood-size" {
    value    = "20 to 60"
    source   = ["OK11"]
    quality  = "keeper"
    disputed = "3 to 86 eggs in the order (OK30)"
    note     = "Sperm keeps for more than six months."
  }

  figure "sac-time" {
    value    = "28 to 42 days"
    source   = ["OK11"]
    quality  = "practice"
    disputed = "about a month (OK11), five weeks (an encyclopedia)"
    note     = "She wraps herself round the eggs and does not feed (OK30)."
  }

  figure "on-mother" {
    value    = "28 to 42 days"
    source   = ["OK11"]
    quality  = "practice"
    disputed = "another month (OK11)"
    note     = "The first stages cannot hunt (OK30); disturbed she eats eggs or young (OK19, of S. cingulata)."
  }

  figure "undisturbed" {
    value = "42 days"
    note  = "From hatching, and from the laying on before: no meal for her until they leave."
  }

  figure "separation" {
    value = "separate"
    note  = "As soon as they scatter."
  }

  figure "keeping" {
    value   = "alone"
    source  = ["OK9"]
    quality = "keeper"
    note    = "Pairings often end in a meal; mothers eat young, and in kinds of South America young eat their mother. Groups are told of Rhysida longipes, Scolopendra multidens and canidens only."
  }

  figure "venom" {
    value    = "painful"
    source   = ["OP7", "OP8", "OP9", "OP10"]
    quality  = "paper"
    disputed = "deaths: none convincing (OP9), uncommon and from infection or shock of allergy (OP8), one, of a child of 7 (OK20), two in Asia (OK13); venom enough for 25 mice is claimed (OK13)"
    note     = "Extreme pain, redness, hardening, swollen lymph vessels, and tissue may die (OP8, of S. subspinipes). Of 46 patients all had pain, one had dead tissue, five came back for late itching or swelling (OP7). Dizziness, near faint and nausea pass (OP10). Where a small child or somebody with an allergy lives, treat it as medically significant."
  }

  figure "defence" {
    value  = "Bites again and again while it is held, tries with its jaws whatever it walks on, and runs up the tongs (OK12). It does not spray. A bite: soap and water, a cool pack, a pain drug, rings off, the state of tetanus; watch for two weeks for blackening or a relapse (OP7, OP9, OP10); warm water is also used (from memory). A small child, or somebody with an allergy: the poison centre at once."
    source = ["OK12", "OP7", "OP9", "OP10"]
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Some states and cities name large Scolopendra as dangerous: look up yours."
    source  = ["memory"]
    quality = "memory"
  }

  figure "prey-length-share" {
    value   = "50 %"
    source  = ["OK10"]
    quality = "keeper"
    note    = "It takes killed prey as well."
  }

  need "leftovers" {
    longest  = "1 day"
    source   = ["OK6", "OK10"]
    disputed = "1 to 2 days (OK6), 48 h (OK10)"
    note     = "It may be moulting."
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    rotate     = ["cricket adult", "roach medium"]
  }
}
