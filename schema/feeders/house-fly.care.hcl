feeder "house-fly" {
  title   = "house fly"
  plural  = "house flies"
  latin   = "Musca domestica, fly"
  also    = ["Stubenfliege", "curly-wing fly", "curly wing fly"]
  hazards = [
    "flies out as soon as the box is open: cool them first, or let pupae hatch in the enclosure",
    "sits where a ground dweller never comes",
    "carries germs from what it was reared on: only bred ones",
  ]

  size "adult" {
    also    = ["grown", "fly"]
    mass    = "10 to 18 mg"
    length  = "6 to 8 mm"
    note    = "6 to 7 mm (F35), 6 to 9 mm (F36) long; the weight is remembered."
    source  = ["F35", "F36", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "pupa" {
    also    = ["caster", "Puppe"]
    mass    = "15 to 22 mg"
    length  = "7 to 8 mm"
    note    = "Bought to hatch, in a cup with a small hole. About 8 mm (F35); the weight is remembered."
    source  = ["F35", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "0.92 kcal/g"
    source  = ["F1"]
    quality = "paper"
    seen    = "2026-11-29"
    note    = "918 kcal/kg of grown flies."
  }

  figure "water" {
    value   = "74.8 %"
    source  = ["F1"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "The greatest of four feeders in F1; of the three others P36 has less, so that we take it for the fly."
  }

  figure "protein" {
    value   = "19.7 %"
    source  = ["F1"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "The greatest of four feeders in F1; of the three others P36 has less, so that we take it for the fly."
  }

  figure "fat" {
    value   = "1.9 %"
    source  = ["F1"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "The least of four feeders in F1; of the three others P36 has more, so that we take it for the fly."
  }

  figure "usable" {
    value   = "1 to 3 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "With sugar and water; pupae in the fridge one to two weeks."
  }

  figure "temperature" {
    value   = "20 to 28 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Pupae 4 to 8 C to hold back."
  }

  upkeep "food" {
    task    = "Sugar and milk powder, water on a sponge, no dish"
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
