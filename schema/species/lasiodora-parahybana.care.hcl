species "lasiodora-parahybana" {
  title    = "salmon pink birdeater"
  latin    = "Lasiodora parahybana Mello-Leitão, 1917"
  family   = "Theraphosidae"
  type     = "humid-terrestrial-tarantula"
  also     = ["salmon pink", "LP", "Brasilianische Riesenvogelspinne"]
  mistaken = ["Lasiodora klugi", "Lasiodora difficilis"]
  note     = "The heaviest of the ground tarantulas here: a low box, nothing to climb, never in the hand. L. klugi has long reddish hairs on the abdomen (T42); hybrids are in the trade. Change the soil in goggles and gloves: hairs lie on web and burrow (T44)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  night                   = "19 to 22 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  separation              = "separate"
  speed                   = "quick"
  substrate_depth_advised = "15 cm"
  keeping                 = "alone"

  figure "temperature-hard" {
    value = "14 to 35 C"
    note  = "A precaution: no lethal figure of this species is known."
  }

  figure "temperature-soft" {
    value = "18 to 31 C"
    note  = "Our margin, a precaution."
  }

  figure "humidity-soft" {
    value = "45 to 85 %"
    note  = "Our margin, a precaution."
  }

  figure "humidity-hard" {
    value = "35 to 95 %"
    note  = "Our estimate: texts differ between dry forest and wet."
  }

  figure "temperature-target" {
    value    = "23 to 27 C"
    source   = ["T117"]
    disputed = "about 23 C (T117)"
    note     = "In winter it seeks the part that is not heated (T117). A cool spell may help breeding (T117)."
  }

  figure "air" {
    value    = "23 to 27 C"
    source   = ["T117"]
    disputed = "about 23 C (T117)"
  }

  figure "humidity-target" {
    value    = "60 to 75 %"
    source   = ["T116"]
    disputed = "65 to 80 % (T116)"
    note     = "Mould is the danger: let air through (T116)."
  }

  figure "moisture" {
    value    = "either"
    disputed = "dry forest and thorn scrub or Atlantic forest (T116), tropical forest floor (T45)"
    note     = "Damp below, dry on top."
  }

  figure "ventilation" {
    value   = "cross"
    source  = ["T116"]
    quality = "keeper"
  }

  figure "substrate-depth-min" {
    value  = "12 cm"
    source = ["T43"]
    note   = "It digs and heaps (T43)."
  }

  figure "lid" {
    value = "latched"
    note  = "And heavy."
  }

  figure "drinks" {
    value = "dish"
    note  = "A large one."
  }

  figure "floor-first" {
    value    = "1600 cm2"
    stages   = ["subadult", "adult"]
    source   = ["T116"]
    disputed = "20 x 25 cm in an old text (T117): far too small"
    note     = "1600 to 2000 cm2; three leg spans long (T116)."
  }

  figure "fall-max" {
    value    = "25 cm"
    stages   = ["subadult", "adult"]
    disputed = "25 to 30 cm (common practice)"
    note     = "The lower figure, since its weight makes a fall worse."
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
    note   = "Slings are very small (T116). Our estimate."
  }

  figure "length" {
    value    = "8 to 10 cm"
    stages   = ["adult"]
    source   = ["T43", "T45"]
    quality  = "society"
    disputed = "9 to 10 cm (T45, T116)"
    note     = "Body."
  }

  figure "span" {
    value    = "20 to 28 cm"
    stages   = ["adult"]
    source   = ["T45", "T44"]
    quality  = "society"
    disputed = "20 to 25 cm (T45), 28 cm (T44), 30 cm (T43, T116)"
  }

  figure "mass" {
    value  = "50 to 110 g"
    stages = ["adult"]
    source = ["T43", "T116"]
    note   = "Large females weigh over 100 g (T43, T116); the other figures are our estimate."
  }

  figure "lifespan" {
    value    = "15 to 20 years"
    source   = ["T45"]
    disputed = "over 20 years (T45), 15 years (from memory)"
    note     = "Females. Males 4 to 5 years, from memory."
  }

  figure "age-at-maturity" {
    value   = "2 to 4 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 2 to 3, females 3 to 4. A span of 10 cm in the first year (T117)."
  }

  figure "sac-time" {
    value    = "6 to 9 weeks"
    source   = ["memory"]
    quality  = "memory"
    disputed = "young after about 3 weeks (T45), which fits the prelarva and not the free sling"
  }

  figure "brood-size" {
    value   = "2000"
    source  = ["T44", "T45", "T116"]
    quality = "society"
    note    = "At most."
  }

  figure "items-a-week" {
    value    = "0.7 to 2"
    stages   = ["adult"]
    source   = ["T117"]
    disputed = "one or two a week (T117), one or two large items every 7 to 10 days (common practice)"
    note     = "It takes prey of half its body, and slings a meal each day or two (T117). It may fast for weeks."
  }

  figure "venom" {
    value   = "painful"
    source  = ["T44"]
    quality = "society"
    note    = "Not fatal (T44). Fangs of about 2.5 cm make real wounds (T116): a doctor sees a deep bite."
  }

  figure "hairs" {
    value   = "thrown"
    source  = ["T44"]
    quality = "society"
    note    = "They also lie on web and burrow (T44). The longest sit on the middle and rear of the abdomen (T16), and the types of hairs are not clean cut (T17). Goggles for every job inside. A hair in the eye: do not rub, rinse for long, eye doctor, and say that it is a hair of a tarantula (T146)."
  }

  figure "defence" {
    value   = "Slaps with the front legs before it bites."
    source  = ["T43", "T116"]
    quality = "society"
  }

  figure "cites" {
    value = "none"
    note  = "No listing found, 2026-11-28."
  }

  figure "law" {
    value   = "Look up what Brazil says of export; it is said to allow none."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value    = "Brazil; texts differ on the habitat. It seldom hides (T43)."
    source   = ["T43", "T116", "T45"]
    disputed = "dry forest and thorn scrub or Atlantic forest (T116), tropical forest floor (T45)"
  }

  figure "sexing" {
    value  = "Grown males have bulbs on the palps; before that by the shed skin."
    source = ["K85"]
  }

  need "moisture" {
    longest = "7 days"
    note    = "Misted once or twice a week."
  }

  need "moisture" {
    stages  = ["young"]
    longest = "4 days"
    note    = "Slings dry out sooner; our estimate."
  }

  care "mist" {
    every = "4 days"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 1
    prey       = "roach medium"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 2
    prey       = "roach medium"
  }
}
