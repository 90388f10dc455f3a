feeder "house-fly-larva" {
  title   = "house fly larva"
  plural  = "house fly larvae"
  latin   = "Musca domestica, larva"
  also    = ["house fly maggot", "maggot", "Stubenfliegenmade", "Fliegenmade"]
  hazards = [
    "burrows, pupates in the soil, and hatches in the enclosure a week later",
    "smells of what it was reared on",
    "tough skin: bitten open by few small animals",
  ]

  size "large" {
    also    = ["groß", "gross", "grown"]
    mass    = "15 to 25 mg"
    length  = "8 to 12 mm"
    note    = "To 9 mm (F35), 7 to 12 mm when mature elsewhere; the weight is remembered."
    source  = ["F35", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.5 kcal/g"
    source  = ["F4"]
    quality = "paper"
    seen    = "2026-11-29"
  }

  figure "water" {
    value   = "70 %"
    source  = ["F4"]
    quality = "paper"
    seen    = "2026-11-29"
  }

  figure "protein" {
    value   = "18 %"
    source  = ["F4"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Our arithmetic: 48 % of the energy (F4) at 4 kcal a gram."
  }

  figure "fat" {
    value   = "7 %"
    source  = ["F4"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Our arithmetic: 44 % of the energy (F4) at 9 kcal a gram."
  }

  figure "usable" {
    value   = "1 to 2 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "In the fridge; warm, they pupate in days."
  }

  figure "temperature" {
    value   = "4 to 10 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "To hold back."
  }

  upkeep "look" {
    task    = "Cold, no food, no water; take out dead and pupae"
    every   = "3 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
