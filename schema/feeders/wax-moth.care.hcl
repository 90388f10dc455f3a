feeder "wax-moth" {
  title   = "wax moth"
  plural  = "wax moths"
  latin   = "Galleria mellonella, moth"
  also    = ["greater wax moth", "Wachsmotte"]
  hazards = [
    "scales and dust irritate eyes and lungs, worst of all feeder animals: do not open a full jar over your face",
    "a pest of bee hives: let none go",
    "flutters and runs along the rim: put it in cold, and close the lid",
  ]
  note    = "Let waxworms pupate in a warm room to get them. For animals that take what flutters: mantises, geckos, tree spiders."

  size "adult" {
    also    = ["grown", "moth"]
    mass    = "80 to 180 mg"
    length  = "15 to 20 mm"
    note    = "15 mm (F27) and 20 mm (F26) long; the weight is remembered, females are the heavier ones."
    source  = ["F26", "F27", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.8 to 2.5 kcal/g"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Our estimate, below the larva of 2.75: a moth does not eat and lives on the fat of the larva."
  }

  figure "usable" {
    value   = "1 to 2 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "At 15 to 20 C; three weeks and more of staggered hatching from one tub of larvae."
  }

  figure "temperature" {
    value   = "15 to 25 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "share-max" {
    value   = "20 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Fat: one meal in five at most, our estimate."
  }

  upkeep "look" {
    task    = "Take out dead moths (mask on, no dry sweeping: their scales are the worst dust of all feeders); no water"
    every   = "7 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
