feeder "blow-fly" {
  title   = "blow fly"
  plural  = "blow flies"
  latin   = "Lucilia sericata and Calliphora vicina, fly"
  also    = ["blowfly", "bottle fly", "Schmeißfliege", "Schmeissfliege", "Goldfliege"]
  hazards = [
    "flies out as soon as the box is open: cool them first, or let pupae hatch in the enclosure",
    "strong: a large one worries a mantis or a gecko that has just moulted",
    "lays eggs on anything dead, within hours: take killed prey out",
    "reared on meat: only bred ones, and not from rotten bait",
  ]

  size "greenbottle" {
    also    = ["green bottle", "small", "klein"]
    mass    = "20 to 40 mg"
    length  = "7 to 11 mm"
    note    = "Lucilia. 7 to 11 mm (F8), 10 to 14 mm elsewhere; the weight is remembered."
    source  = ["F8", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "pupa" {
    also    = ["caster", "Puppe"]
    mass    = "30 to 70 mg"
    length  = "8 to 12 mm"
    note    = "Of either; bought to hatch. Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "bluebottle" {
    also    = ["blue bottle", "large", "groß", "gross"]
    mass    = "50 to 90 mg"
    length  = "10 to 12 mm"
    note    = "Calliphora. 10 to 11 mm (F37); the weight is remembered."
    source  = ["F37", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "0.92 kcal/g"
    source  = ["F1"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the house fly; none was found for blow flies."
  }

  figure "water" {
    value   = "74.8 %"
    source  = ["F1"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the house fly."
  }

  figure "protein" {
    value   = "19.7 %"
    source  = ["F1"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the house fly."
  }

  figure "fat" {
    value   = "1.9 %"
    source  = ["F1"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the house fly."
  }

  figure "usable" {
    value   = "2 to 4 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "With sugar and water; pupae in the fridge two to three weeks."
  }

  figure "temperature" {
    value   = "18 to 26 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Pupae 4 to 8 C to hold back."
  }

  upkeep "food" {
    task    = "Sugar and water on a sponge, no dish"
    every   = "2 days"
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }

  upkeep "clean" {
    task    = "Take out dead flies and empty pupae"
    every   = "7 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
