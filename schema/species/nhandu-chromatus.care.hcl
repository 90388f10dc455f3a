species "nhandu-chromatus" {
  title    = "Brazilian red and white tarantula"
  latin    = "Nhandu chromatus Schmidt, 2004"
  family   = "Theraphosidae"
  type     = "humid-terrestrial-tarantula"
  also     = ["Vitalius chromatus", "white striped birdeater"]
  former   = ["Lasiodora cristata", "Vitalius cristatus"]
  mistaken = ["Acanthoscurria geniculata"]
  note     = "Vitalius chromatus (Schmidt, 2004) since 2023 (T22, T159), where two revisions of that year treat the genera; the trade keeps the older name. Its hairs are the point: mask and goggles from the juvenile on. It spends most of the year down its tube (T124), and may fast there for weeks: that is no illness."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  night                   = "18 to 21 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  separation              = "separate"
  speed                   = "quick"
  substrate_depth_advised = "15 cm"
  keeping                 = "alone"

  figure "temperature-hard" {
    value = "12 to 35 C"
    note  = "A precaution: no lethal figure of this species is known. Days of up to 39 C and nights of about 12 C are told from the wild (T122)."
  }

  figure "temperature-soft" {
    value = "18 to 31 C"
    note  = "Our margin, a precaution."
  }

  figure "humidity-soft" {
    value = "45 to 80 %"
    note  = "Our margin, a precaution."
  }

  figure "humidity-hard" {
    value = "35 to 95 %"
    note  = "Our estimate."
  }

  figure "temperature-target" {
    value    = "22 to 27 C"
    source   = ["T119"]
    disputed = "21 to 27 C and not under 18 C (T119), a warm side of 24 to 29 C and a cool one of 21 C (T118)"
  }

  figure "air" {
    value    = "22 to 27 C"
    source   = ["T119"]
    disputed = "21 to 27 C and not under 18 C (T119), a cool side of 21 C (T118)"
  }

  figure "humidity-target" {
    value   = "60 to 70 %"
    source  = ["T118", "T119"]
    quality = "keeper"
  }

  figure "moisture" {
    value   = "damp"
    source  = ["T119"]
    quality = "keeper"
    note    = "Slightly moist; the top dries out in between."
  }

  figure "substrate-depth-min" {
    value    = "12 cm"
    source   = ["T121"]
    quality  = "keeper"
    disputed = "7.5 to 10 cm (T118, T119)"
    note     = "12 to 15 cm (T121): it digs, and lines its tube with silk (T123, T124)."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["T123", "T124"]
    quality = "keeper"
    note    = "It digs, lines its tube with silk (T123, T124), and spends most of the year in it (T124)."
  }

  figure "floor-first" {
    value    = "1350 cm2"
    stages   = ["subadult", "adult"]
    source   = ["T121"]
    quality  = "keeper"
    disputed = "three to four leg spans (T119)"
    note     = "45 x 30 cm, 30 high."
  }

  figure "fall-max" {
    value  = "22 cm"
    stages = ["subadult", "adult"]
    note   = "16 cm is better: one leg span."
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
    note   = "Slings are small (T123). Our estimate."
  }

  figure "length" {
    value   = "6 to 7 cm"
    stages  = ["adult"]
    source  = ["T122", "T123"]
    quality = "keeper"
    note    = "Body of females; males 4 to 5 cm (T123)."
  }

  figure "span" {
    value    = "13 to 18 cm"
    stages   = ["adult"]
    source   = ["T120", "T121", "T122"]
    quality  = "keeper"
    disputed = "13 cm (T122), 15 to 18 cm (T120, T121), 13 to 20 cm (T118)"
  }

  figure "mass" {
    value  = "12 to 32 g"
    stages = ["adult"]
    note   = "Our estimate, no source: 0.0055 g times the cube of a leg span of 13 to 18 cm."
  }

  figure "lifespan" {
    value   = "15 to 20 years"
    source  = ["T120", "T121"]
    quality = "keeper"
    note    = "Females; males 4 (T120) to 5 years (T121)."
  }

  figure "age-at-maturity" {
    value   = "2 to 4 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 2 to 3, females 4. It grows at a middling pace (T120), small and slow at first (T123)."
  }

  figure "sac-time" {
    value = "5 to 10 weeks"
    note  = "No figure of this species was found. The window of ground tarantulas in general; never a date. It breeds easily (T124)."
  }

  figure "brood-size" {
    value    = "100 to 1000"
    source   = ["T123", "T120"]
    disputed = "up to 700 (T123), hundreds and some over 1000 (T120)"
  }

  figure "items-a-week" {
    value  = "0.5 to 1"
    stages = ["adult"]
    source = ["T119"]
    note   = "Every 7 to 14 days (T119). Prey no longer than the abdomen."
  }

  figure "venom" {
    value  = "mild"
    source = ["T18"]
    note   = "Of 363 bites of tarantulas most were mild and stayed at the place (T18)."
  }

  figure "hairs" {
    value   = "thrown"
    source  = ["T120", "T124"]
    quality = "keeper"
    note    = "At once, and very irritating (T120, T124). Goggles and a mask for every job inside. A hair in the eye: do not rub, rinse for long, eye doctor, and say that it is a hair of a tarantula (T146)."
  }

  figure "defence" {
    value    = "Stands its ground."
    source   = ["T121", "T124"]
    quality  = "keeper"
    disputed = "docile, and for beginners (T118)"
  }

  figure "cites" {
    value   = "none"
    source  = ["T124"]
    quality = "keeper"
    note    = "No listing found, 2026-11-28. Not protected, by T124."
  }

  figure "climate-origin" {
    value   = "Brazil: days of up to 39 C and nights of about 12 C are told from the wild."
    source  = ["T122"]
    quality = "keeper"
  }

  figure "sexing" {
    value  = "Grown males have bulbs on the palps; before that by the shed skin."
    source = ["K85"]
  }

  need "moisture" {
    longest = "7 days"
    source  = ["T119"]
    note    = "Misted once or twice a week (T119)."
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

  feeding "adult" {
    stages     = ["adult"]
    every      = "10 days"
    per_animal = 1
    prey       = "cricket adult"
  }
}
