feeder "hissing-roach" {
  title   = "hissing roach"
  plural  = "hissing roaches"
  latin   = "Gromphadorhina portentosa"
  also    = ["hisser", "Madagascar hissing roach", "Madagascar hissing cockroach", "Fauchschabe", "Madagaskar-Fauchschabe"]
  hazards = [
    "hard-shelled when grown: nymphs, or freshly moulted ones, for all but the largest animals",
    "thorny hind legs and, in males, horns: can wound a soft animal",
    "climbs glass, and nymphs fit through gaps of a few mm",
    "carries mites that live on it, and mould that people are allergic to (from memory)",
  ]

  size "small" {
    also    = ["klein", "nymph"]
    mass    = "65 to 520 mg"
    length  = "10 to 20 mm"
    note    = "The weight follows from the length: 0.065 mg times the cube of the length in mm, our estimate for flat roach nymphs."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel"]
    mass    = "1 to 2.8 g"
    length  = "25 to 35 mm"
    note    = "The weight follows from the length: 0.065 mg times the cube of the length in mm, our estimate for flat roach nymphs."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "subadult"]
    mass    = "4.2 to 8.1 g"
    length  = "40 to 50 mm"
    note    = "The weight follows from the length: 0.065 mg times the cube of the length in mm, our estimate for flat roach nymphs."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "adult" {
    also    = ["grown"]
    mass    = "7 to 24 g"
    length  = "50 to 75 mm"
    note    = "5 to 7.6 cm (F19), 7 to 25 g (F44); to 10 cm and 24 g (F20)."
    source  = ["F19", "F20", "F44"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.6 kcal/g"
    source  = ["P36", "memory"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the Turkestan roach. It was measured (F2), but the figures were not seen."
  }

  figure "water" {
    value   = "60 to 65 %"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.08 to 0.3"
    source  = ["F2"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "The range of most of the eight invertebrates measured there, of which this was one."
  }

  figure "usable" {
    value   = "5 to 12 months"
    source  = ["F20"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Nymphs are grown in 7 months and live 2 to 3 years (F20)."
  }

  figure "weekly-loss" {
    value   = "0 to 2 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Common practice, no source."
  }

  figure "temperature" {
    value   = "24 to 30 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "humidity" {
    value   = "50 to 70 %"
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
}
