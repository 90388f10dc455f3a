feeder "cricket" {
  title   = "house cricket"
  plural  = "crickets"
  latin   = "Acheta domesticus"
  also    = ["brown cricket"]
  hazards = ["gnaws a moulting animal: the chief reason to take leftovers out within a day", "a densovirus can kill a whole stock (from memory)"]

  size "pinhead" {
    mass    = "14 mg"
    note    = "13.7 mg as measured."
    source  = ["P39"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  size "small" {
    mass    = "96 mg"
    note    = "The small nymph of P35, remembered; to be checked against the paper."
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  size "medium" {
    mass    = "321 mg"
    note    = "The juvenile of P39, 320.9 mg as measured."
    source  = ["P39"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  size "large" {
    mass    = "418 to 443 mg"
    note    = "The last nymph on laboratory diets."
    source  = ["P37"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  size "adult" {
    mass    = "465 mg"
    length  = "16 to 21 mm"
    note    = "The mass of P35 is remembered and to be checked against the paper; the length is from K127."
    source  = ["P35", "K127", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "energy" {
    value   = "1.4 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Adults. Nymphs have 0.95 kcal/g (P36). Calculated from the composition, not burned in a bomb."
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
}
