feeder "springtail" {
  title   = "springtail"
  plural  = "springtails"
  latin   = "Folsomia candida and other Collembola"
  also    = ["Collembola", "white springtail", "tropical springtail", "Springschwanz"]
  hazards = [
    "harmless, and useful in damp soil",
    "drowns an open dish in numbers, and dies within hours where it is dry",
    "too small for all but newly hatched slings, mantids and amblypygids",
  ]

  size "adult" {
    also    = ["any", "grown"]
    mass    = "0.1 to 0.3 mg"
    length  = "1.5 to 2.6 mm"
    note    = "1.8 to 2 mm, at most 2.6 (F40); the weight is remembered."
    source  = ["F40", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "0.9 to 1.4 kcal/g"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Our estimate, about the fruit fly; none was found."
  }

  figure "usable" {
    value   = "2 to 6 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "A culture on charcoal or soil, fed a little yeast or rice."
  }

  figure "temperature" {
    value   = "15 to 24 C"
    source  = ["F41"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Most eggs hatch at 21 C, none above 28 C; a female lives 240 days at 15 C and 111 at 24 C (F41)."
  }

  figure "humidity" {
    value   = "90 to 100 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "On a wet ground."
  }

  figure "culture-lasts" {
    value   = "3 to 6 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
    note    = "A box on charcoal or soil; it is divided before it tires. Common practice, no source."
  }

  development "egg" {
    observed = ["7 to 10 days at 20 C"]
    note     = "None hatch over 28 C."
    source   = ["F41"]
    quality  = "society"
    seen     = "2026-11-30"
  }

  development "egg-to-adult" {
    observed = ["21 to 24 days at 20 C"]
    note     = "A life has 1,100 eggs at 15 C, 900 at 21 C and 100 at 27 C."
    source   = ["F41"]
    quality  = "society"
    seen     = "2026-11-30"
  }

  upkeep "food" {
    task    = "A pinch of yeast or a few grains of rice; mist until the ground is wet and no water stands"
    every   = "7 days"
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }

  upkeep "look" {
    task    = "Look for mites and mould: take out food that is furred"
    every   = "7 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
