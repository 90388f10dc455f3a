species "chromatopelma-cyaneopubescens" {
  title   = "green bottle blue tarantula"
  latin   = "Chromatopelma cyaneopubescens (Strand, 1907)"
  family  = "Theraphosidae"
  type    = "dry-terrestrial-tarantula"
  also    = ["green bottle blue", "GBB", "cyan", "Cyanblaue Venezuela-Vogelspinne"]
  former  = ["Eurypelma cyaneopubescens", "Delopelma cyaneopubescens", "Aphonopelma cyaneopubescens"]
  note    = "The only species of its genus, and often kept as a tree spider (T133): it lives on dry ground and webs up to 20 cm above it. Wet air that stands still is the usual killer, as remembered. Never tear out the web, where it eats, drinks and moults: take remains with tongs. One that has no web yet after a move is under stress: feed it later."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  temperature_target      = "24 to 29 C"
  night                   = "20 to 23 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_target         = "40 to 55 %"
  heater_not              = "under"
  separation              = "separate"
  speed                   = "very quick"
  substrate_depth_advised = "8 cm"
  substrate_depth_min     = "6 cm"
  keeping                 = "alone"
  defence                 = "Guards its web, and is very fast."

  figure "temperature-hard" {
    value = "16 to 36 C"
    note  = "A precaution: no lethal figure of this species is known."
  }

  figure "temperature-soft" {
    value = "20 to 33 C"
    note  = "Our margin, a precaution."
  }

  figure "humidity-soft" {
    value = "30 to 65 %"
    note  = "Our margin, a precaution."
  }

  figure "air" {
    value = "24 to 29 C"
    note  = "A hot and dry peninsula. No spot over 32 C; none is needed."
  }

  figure "moisture" {
    value = "arid"
    note  = "The soil is dry, with a dish. Slings get a few drops on the web."
  }

  figure "ventilation" {
    value = "cross"
    note  = "Wet air that stands still is the usual killer, as remembered."
  }

  figure "floor-first" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
  }

  figure "fall-max" {
    value  = "24 cm"
    stages = ["subadult", "adult"]
    note   = "Its own web is a scaffold: a box 25 to 30 cm high is allowed. Without twigs, cork or plants to fix a web to, 15 to 20 cm."
  }

  figure "wait-after-moult" {
    value  = "7 days"
    stages = ["juvenile"]
    source = ["K84"]
  }

  figure "wait-after-moult" {
    value  = "14 days"
    stages = ["subadult", "adult"]
    source = ["K84"]
  }

  figure "length" {
    value    = "6.5 to 7.2 cm"
    stages   = ["adult"]
    source   = ["T132"]
    quality  = "keeper"
    disputed = "females 7 cm and males 6 cm (T132, another text)"
    note     = "Body of females; males 3.5 to 4.3 cm."
  }

  figure "span" {
    value   = "15 to 16 cm"
    stages  = ["adult"]
    source  = ["T132", "T133"]
    quality = "keeper"
  }

  figure "mass" {
    value  = "19 to 23 g"
    stages = ["adult"]
    note   = "Our estimate, no source: 0.0055 g times the cube of a leg span of 15 to 16 cm."
  }

  figure "lifespan" {
    value    = "10 to 14 years"
    source   = ["T132"]
    quality  = "keeper"
    disputed = "10 years, 12 to 14 years (T132, two texts)"
    note     = "Females; males 4 years."
  }

  figure "age-at-maturity" {
    value   = "2 to 3 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 2, females 3. It grows fast, and has the colours of the grown between moults 5 and 7 (T132)."
  }

  figure "sac-time" {
    value   = "6 to 8 weeks"
    source  = ["memory"]
    quality = "memory"
    note    = "A detailed report is in T162, of which only the title page could be read."
  }

  figure "brood-size" {
    value   = "80 to 150"
    source  = ["memory"]
    quality = "memory"
    note    = "Large slings; the big ones take small crickets (T132)."
  }

  figure "items-a-week" {
    value  = "0.7 to 1"
    stages = ["adult"]
    note   = "One every 7 to 10 days. Fasts are short."
  }

  figure "venom" {
    value  = "mild"
    source = ["T18"]
    note   = "Of 363 bites of tarantulas most were mild and stayed at the place (T18)."
  }

  figure "hairs" {
    value   = "thrown"
    source  = ["T132"]
    quality = "keeper"
    note    = "Type IV. Goggles for every job inside. A hair in the eye: do not rub, rinse for long, eye doctor, and say that it is a hair of a tarantula (T146)."
  }

  figure "cites" {
    value = "none"
    note  = "No listing found, 2026-11-28."
  }

  figure "climate-origin" {
    value   = "A hot and dry peninsula, of Venezuela as remembered. In the wild it nests in hollow cacti, roots and holes of trees (T134)."
    source  = ["T134", "memory"]
    quality = "memory"
  }

  figure "sexing" {
    value  = "Grown males have bulbs on the palps; before that by the shed skin."
    source = ["K85"]
  }

  need "water" {
    longest = "2 days"
    note    = "A dish is never empty."
  }

  care "mist" {
    task   = "A few drops on the web"
    stages = ["young"]
    every  = "3 days"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    prey       = "cricket large"
  }
}
