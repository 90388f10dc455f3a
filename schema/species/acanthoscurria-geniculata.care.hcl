species "acanthoscurria-geniculata" {
  title    = "Brazilian whiteknee tarantula"
  latin    = "Acanthoscurria geniculata (C. L. Koch, 1841)"
  family   = "Theraphosidae"
  type     = "humid-terrestrial-tarantula"
  also     = ["giant whiteknee", "Brazilian giant whiteknee", "whiteknee", "Weissknie-Vogelspinne"]
  mistaken = ["Nhandu chromatus", "Acanthoscurria brocklehursti", "Acanthoscurria theraphosoides"]
  note     = "It sits in the open by day (T113) and takes whatever moves: its hunger is no sign of need, fasts are short, and overfeeding is the risk. Nhandu chromatus has a pale carapace (T120). A brood may be a thousand and more: plan for it before you pair."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  night                   = "20 to 23 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  separation              = "separate"
  speed                   = "quick"
  substrate_depth_min     = "12 cm"
  substrate_depth_advised = "15 cm"
  defence                 = "Goes for anything that moves: long tongs, never fingers."

  figure "temperature-hard" {
    value = "16 to 34 C"
    note  = "A precaution: no lethal figure of this species is known. Of tarantulas in general there is trouble under about 16 and over about 38 C (T145)."
  }

  figure "temperature-soft" {
    value = "20 to 30 C"
    note  = "Our margin, a precaution. It bears great heat worse than most (T110)."
  }

  figure "humidity-soft" {
    value = "50 to 85 %"
    note  = "Our margin, a precaution."
  }

  figure "humidity-hard" {
    value  = "40 to 100 %"
    source = ["T110"]
    note   = "Our estimate: it takes very moist to very dry (T110)."
  }

  figure "temperature-target" {
    value   = "24 to 28 C"
    source  = ["T110"]
    quality = "keeper"
  }

  figure "air" {
    value   = "24 to 28 C"
    source  = ["T110"]
    quality = "keeper"
  }

  figure "humidity-target" {
    value    = "65 to 80 %"
    source   = ["T111"]
    disputed = "takes very moist to very dry, and does best a little dry (T110)"
    note     = "Of wet forest (T111)."
  }

  figure "moisture" {
    value = "damp"
    note  = "Damp below; the top may dry."
  }

  figure "drinks" {
    value = "dish"
    note  = "A large one."
  }

  figure "floor-first" {
    value    = "1200 cm2"
    stages   = ["subadult", "adult"]
    source   = ["T143", "T144"]
    disputed = "30 x 40 cm (T143) or 40 x 40 cm (T144) for large ground kinds"
    note     = "1600 cm2 for the largest."
  }

  figure "fall-max" {
    value  = "26 cm"
    stages = ["subadult", "adult"]
    note   = "20 cm is better: one leg span."
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
    note   = "Slings are 5 to 6 mm long (T110, T112). Our estimate."
  }

  figure "length" {
    value   = "8 to 9 cm"
    stages  = ["adult"]
    source  = ["T113", "T111", "T115"]
    quality = "keeper"
    note    = "Body of females; males 4 to 6 cm (T115)."
  }

  figure "span" {
    value    = "17 to 20 cm"
    stages   = ["adult"]
    source   = ["T112", "T115"]
    quality  = "keeper"
    disputed = "21.5 cm (T111), claims of 25 cm (T110)"
  }

  figure "mass" {
    value  = "27 to 44 g"
    stages = ["adult"]
    note   = "Our estimate, no source: 0.0055 g times the cube of a leg span of 17 to 20 cm."
  }

  figure "lifespan" {
    value   = "20 years"
    source  = ["T110", "T112"]
    quality = "keeper"
    note    = "Females; males 4 years (T112)."
  }

  figure "age-at-maturity" {
    value    = "2 to 4 years"
    source   = ["T113", "T111"]
    disputed = "just under 2 years, well fed (T113); 3 to 4 years to the full span (T111)"
    note     = "It grows fast. Grown females moult about once a year (T112)."
  }

  figure "gestation" {
    value    = "2 to 4 months"
    source   = ["T113", "T114"]
    quality  = "keeper"
    disputed = "4 months (T113), 2 months (T114)"
    note     = "From mating to the sac. She is greedy after mating and then stops eating (T114); she seals the burrow first (T113)."
  }

  figure "gestation-longest" {
    value  = "6 months"
    source = ["N15"]
    note   = "3 to 6 months in general (N15). Her moult ends it."
  }

  figure "sac-time" {
    value = "5 to 10 weeks"
    note  = "No figure of this species was found. The window of ground tarantulas in general; never a date."
  }

  figure "brood-size" {
    value    = "600 to 2000"
    source   = ["T113", "T110", "T114"]
    quality  = "keeper"
    disputed = "1000 to 2000 (T113), 1000 to 1500 (T110), 600 to 700 (T114), 50 to 200, an outlier (T112)"
  }

  figure "items-a-week" {
    value  = "0.7 to 2"
    stages = ["adult"]
    source = ["T141"]
    note   = "One or two large items every 7 to 10 days; 7 to 14 days between meals in general (T141). The young take prey many times their size (T110). A fat abdomen bursts in a fall."
  }

  figure "keeping" {
    value   = "alone"
    source  = ["T114"]
    quality = "keeper"
    note    = "Slings attack each other at once."
  }

  figure "venom" {
    value  = "painful"
    source = ["T111", "T112"]
    note   = "Not medically important, but fangs of up to 2.5 cm tear (T111, T112): a doctor sees a deep bite."
  }

  figure "hairs" {
    value    = "thrown"
    source   = ["T115"]
    quality  = "keeper"
    disputed = "it rarely flicks them (T110)"
    note     = "A long itch (T115). Goggles for every job inside. A hair in the eye: do not rub, rinse for long, eye doctor, and say that it is a hair of a tarantula (T146)."
  }

  figure "cites" {
    value = "none"
    note  = "No listing found, 2026-11-28."
  }

  figure "climate-origin" {
    value   = "Brazil: wet forest with a short dry season or none (T111), under logs and between roots (T110, T113)."
    source  = ["T111", "T110", "T113"]
    quality = "keeper"
  }

  figure "sexing" {
    value  = "Grown males have bulbs on the palps; before that by the shed skin."
    source = ["K85"]
  }

  need "moisture" {
    longest = "4 days"
    note    = "Misted two or three times a week."
  }

  care "mist" {
    every = "3 days"
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
    prey       = "cricket adult"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    prey       = "roach medium"
  }
}
