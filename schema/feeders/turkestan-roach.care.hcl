feeder "turkestan-roach" {
  title   = "Turkestan roach"
  plural  = "Turkestan roaches"
  latin   = "Shelfordella lateralis, nymph"
  also    = ["red runner", "Blatta lateralis", "Periplaneta lateralis", "rusty red roach", "lat", "Schokoschabe", "Schokoladenschabe"]
  hazards = [
    "fast: escapes while you feed",
    "lays egg cases: loose ones breed in a warm house, and are a pest in dry warm countries",
    "grown males fly a little towards light",
    "keepers become allergic to roaches",
  ]

  size "hatchling" {
    also    = ["micro"]
    mass    = "0.5 to 1.8 mg"
    length  = "2 to 3 mm"
    note    = "The weight follows from the length: 0.065 mg times the cube of the length in mm, our estimate for flat roach nymphs."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "small" {
    also    = ["klein"]
    mass    = "8 to 65 mg"
    length  = "5 to 10 mm"
    note    = "The weight follows from the length: 0.065 mg times the cube of the length in mm, our estimate for flat roach nymphs."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel"]
    mass    = "200 to 400 mg"
    length  = "15 to 19 mm"
    note    = "The weight is remembered, not seen in a source; the length follows from it: 0.065 mg times the cube of the length in mm."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "subadult"]
    mass    = "450 to 690 mg"
    length  = "19 to 22 mm"
    note    = "The weight follows from the length: 0.065 mg times the cube of the length in mm, our estimate for flat roach nymphs."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "adult" {
    also    = ["grown"]
    mass    = "500 to 900 mg"
    length  = "22 to 28 mm"
    note    = "The weight is remembered. Females 19 to 25 mm, males from 13 mm (F16); about 30 mm elsewhere (F17)."
    source  = ["F16", "F17", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.6 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "69.1 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "19.0 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "10.0 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.2"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "usable" {
    value   = "6 to 12 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "weekly-loss" {
    value   = "0 to 2 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Common practice, no source."
  }

  figure "temperature" {
    value   = "25 to 30 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "humidity" {
    value   = "40 to 60 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "culture-lasts" {
    value   = "3 to 5 years"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
    note    = "A colony goes on by itself, with all sizes in it; at most a quarter of the nymphs a month is taken. Common practice, no source."
  }

  development "young" {
    observed = ["222 to 224 days at 26.7 C", "118 to 137 days at 30 to 35 C"]
    note     = "Five instars; up to 25 cases with 16.8 eggs, of which 13.9 hatch."
    source   = ["F58"]
    quality  = "paper"
    seen     = "2026-11-30"
  }
}
