feeder "blow-fly-larva" {
  title   = "blow fly larva"
  plural  = "blow fly larvae"
  latin   = "Lucilia sericata and Calliphora vicina, larva"
  also    = ["maggot", "gentle", "spike", "pinky", "pinkie", "Pinky-Made", "Fliegenmade"]
  hazards = [
    "burrows and hatches in the enclosure",
    "smells; what is dead draws it and is eaten by it",
    "tough, and goes through some animals whole: squeeze the head",
    "can live in wounds: never on a hurt animal",
  ]

  size "small" {
    also    = ["klein", "greenbottle"]
    mass    = "25 to 45 mg"
    length  = "9 to 12 mm"
    note    = "Lucilia, called pinkies. To 11 mm; the weight is remembered."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "bluebottle"]
    mass    = "60 to 110 mg"
    length  = "13 to 19 mm"
    note    = "Calliphora. 13 to 19 mm in a kin (F38); the weight is remembered."
    source  = ["F38", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.5 kcal/g"
    source  = ["F4"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the larva of the house fly."
  }

  figure "water" {
    value   = "70 %"
    source  = ["F4"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the larva of the house fly."
  }

  figure "protein" {
    value   = "18 %"
    source  = ["F4"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the larva of the house fly."
  }

  figure "fat" {
    value   = "7 %"
    source  = ["F4"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the larva of the house fly."
  }

  figure "usable" {
    value   = "2 to 3 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "In the fridge; warm, they pupate in days."
  }

  figure "temperature" {
    value   = "2 to 8 C"
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
