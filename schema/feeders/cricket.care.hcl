feeder "cricket" {
  title   = "house cricket"
  plural  = "crickets"
  latin   = "Acheta domesticus"
  also    = ["brown cricket", "Heimchen", "Hausgrille"]
  hazards = [
    "gnaws a moulting animal: the chief reason to take leftovers out within a day",
    "hides under bark and cork and comes out at night, when the animal rests or moults",
    "jumps out of an open box, and loose ones breed in warm rooms and chirp",
    "a tub with dead ones smells and breeds flies: clear it at least once a week",
    "a densovirus can kill a whole stock (from memory)",
  ]

  size "hatchling" {
    also    = ["micro"]
    mass    = "0.8 to 2.6 mg"
    length  = "2 to 3 mm"
    energy  = "0.95 kcal/g"
    note    = "Fresh from the egg. The length is from K121. The weight follows from the length as in the last nymph of the house cricket, 430 mg at about 16.5 mm: 0.096 mg times the cube of the length in mm."
    source  = ["K121", "P36", "practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "pinhead" {
    alone   = ["pinhead"]
    mass    = "14 mg"
    length  = "5 mm"
    energy  = "0.95 kcal/g"
    note    = "13.7 mg as measured (P39), which is more than the freshly hatched weigh that are also sold by this name. The length follows from the weight as in the last nymph: 0.096 mg times the cube of the length in mm."
    source  = ["P39", "P36", "practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "small" {
    also    = ["klein"]
    mass    = "96 mg"
    length  = "10 mm"
    energy  = "0.95 kcal/g"
    note    = "The weight is of the small nymph of P35, remembered; to be checked against the paper. The length follows from the weight as in the last nymph: 0.096 mg times the cube of the length in mm."
    source  = ["P35", "P36", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel"]
    mass    = "321 mg"
    length  = "15 mm"
    energy  = "0.95 kcal/g"
    note    = "The juvenile of P39, 320.9 mg as measured. The length follows from the weight as in the last nymph: 0.096 mg times the cube of the length in mm."
    source  = ["P39", "P36", "practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "subadult"]
    mass    = "418 to 443 mg"
    length  = "16 to 17 mm"
    energy  = "0.95 kcal/g"
    note    = "The last nymph on laboratory diets (P37). It is a moult shorter than the grown cricket of 18.5 mm; our estimate."
    source  = ["P37", "P36", "practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "adult" {
    also    = ["grown"]
    mass    = "465 mg"
    length  = "16 to 21 mm"
    note    = "The mass of P35 is remembered and to be checked against the paper; the length is from K127. About 400 mg elsewhere (F9)."
    source  = ["P35", "K127", "F9", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.4 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Adults; the sizes of nymphs have their own, 0.95 kcal/g (P36). Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "69.2 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Adults. Nymphs 77.1 % (P36)."
  }

  figure "protein" {
    value   = "20.5 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Adults. Nymphs 15.4 % (P36)."
  }

  figure "fat" {
    value   = "6.8 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Adults. Nymphs 3.3 % (P36)."
  }

  figure "calcium-to-phosphorus" {
    value   = "0.14"
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "407 to 2,950 mg/kg as remembered; nymphs 0.11. To be checked against the paper."
  }

  figure "usable" {
    value    = "14 to 21 days"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "from egg to death 2 to 3 months (K121); adults 8 to 10 weeks (K122)"
    note     = "Subadults as bought."
  }

  figure "weekly-loss" {
    value   = "10 to 25 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Common practice, no source: no published loss was found."
  }

  figure "temperature" {
    value    = "26 to 32 C"
    source   = ["K122"]
    quality  = "keeper"
    seen     = "2026-11-25"
    disputed = "30.5 C in the laboratory (P38)"
  }

  figure "humidity" {
    value   = "40 to 60 %"
    source  = ["K123"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "They die when kept wet (common practice)."
  }

  figure "gut-load-before" {
    value    = "24 to 48 h"
    source   = ["P42"]
    quality  = "paper"
    seen     = "2026-11-25"
    disputed = "past 1 : 1 of calcium to phosphorus by day 2 on 9 % calcium (P41); not in 7 to 8 days (P40)"
    note     = "Measured on Gryllus bimaculatus: the gain is there after 24 h, and no larger after 48 h."
  }

  figure "gut-load-lost" {
    value   = "24 h"
    source  = ["P42"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Measured on Gryllus bimaculatus: all of the gain is lost 24 h after the diet is taken away. Common practice is to use them within 6 h."
  }

  development "egg" {
    observed = ["12 to 14 days at 30 C"]
    note     = "The first hatch on day 12, the mean is 13.7."
    source   = ["F47"]
    quality  = "paper"
    seen     = "2026-11-30"
  }

  development "egg-to-adult" {
    observed = ["200.5 days at 18 C", "66.3 days at 30 C"]
    note     = "The line through two points is ours. Grown they live 20 to 27 days at 38 C. Taken at 8 weeks at 27 C, at 6 weeks at 29 C (F48)."
    source   = ["F46", "F48"]
    quality  = "paper"
    seen     = "2026-11-30"
  }
}
