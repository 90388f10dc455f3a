feeder "roach" {
  title   = "dubia roach"
  plural  = "roaches"
  latin   = "Blaptica dubia"
  also    = ["dubia", "orange-spotted roach"]
  hazards = ["burrows and hides: give with tongs or with the head crushed", "keepers become allergic to it"]

  size "hatchling" {
    mass    = "20 to 30 mg"
    length  = "2 mm"
    note    = "The mass is remembered; the length is from K129."
    source  = ["K129", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  size "medium" {
    mass    = "500 to 800 mg"
    note    = "Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  size "adult" {
    mass    = "2 to 3 g"
    length  = "50 mm"
    note    = "The mass is remembered; the length is from K129 (nearly two inches)."
    source  = ["K129", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "energy" {
    value    = "2.2 kcal/g"
    source   = ["P34"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "others report far leaner and wetter ones (from memory)"
    note     = "Our arithmetic from the composition of P34: 4 kcal a gram of protein and 9 of fat."
  }

  figure "water" {
    value   = "59.1 to 62.7 %"
    source  = ["P34"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "18 to 22 %"
    source  = ["P34"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "47.5 to 54.3 % of the dry mass."
  }

  figure "fat" {
    value   = "13 to 18 %"
    source  = ["P34"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "35.5 to 44.2 % of the dry mass."
  }

  figure "calcium-to-phosphorus" {
    value   = "0.3"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "usable" {
    value   = "4 to 6 months"
    source  = ["K125"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "Nymphs. Adult males live 9 to 10 months, adult females 18 to 24 (K125)."
  }

  figure "temperature" {
    value   = "27 to 32 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "To breed; 20 C and more to keep."
  }

  figure "law" {
    value   = "Look up Florida and Canada before ordering (as remembered)."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }
}
