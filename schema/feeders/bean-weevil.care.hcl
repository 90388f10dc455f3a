feeder "bean-weevil" {
  title   = "bean weevil"
  plural  = "bean weevils"
  latin   = "Callosobruchus maculatus"
  also    = ["bean beetle", "cowpea weevil", "cowpea beetle", "Bohnenkäfer", "Augenbohnenkäfer"]
  hazards = [
    "breeds in every dry bean and pea of the house: keep the jar closed with fine cloth, and freeze it when it is done",
    "flies a little when warm and crowded",
    "hard for its size: many young mantids and slings leave it",
  ]

  size "adult" {
    also    = ["grown"]
    mass    = "4 to 6 mg"
    length  = "4 to 6 mm"
    note    = "Average of beetles (F24); crowded ones stay smaller."
    source  = ["F24"]
    quality = "keeper"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.4 kcal/g"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Our estimate; none was found. They neither eat nor drink as beetles."
  }

  figure "usable" {
    value   = "1 to 2 weeks"
    source  = ["F25"]
    quality = "society"
    seen    = "2026-11-29"
    note    = "The life of a beetle; a jar of beans yields for two to three months (common practice)."
  }

  figure "temperature" {
    value   = "24 to 30 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "humidity" {
    value   = "40 to 70 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "culture-lasts" {
    value   = "2 to 3 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
    note    = "A jar of beans. Common practice, no source."
  }

  upkeep "look" {
    task    = "Look for mites and mould; dry beans, no water"
    every   = "7 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
