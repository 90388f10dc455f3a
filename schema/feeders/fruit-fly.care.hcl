feeder "fruit-fly" {
  title   = "fruit fly"
  plural  = "fruit flies"
  latin   = "Drosophila melanogaster and Drosophila hydei"
  also    = ["flightless fruit fly", "wingless fruit fly", "vinegar fly", "Drosophila", "Fruchtfliege", "Obstfliege", "Taufliege"]
  hazards = [
    "walks up every wall and through gaps of half a millimetre",
    "flightless ones fly again when kept too warm or when a wild one gets in",
    "what is left over drowns in the dish, and mould in the culture brings mites",
  ]

  size "melanogaster" {
    also    = ["small", "klein"]
    alone   = ["melanogaster", "Drosophila melanogaster", "D. melanogaster"]
    mass    = "0.5 to 1.5 mg"
    length  = "2 to 3 mm"
    note    = "The weight is from F33: males 0.5 to 0.7, females 1 to 1.5 mg; 2 to 4 mm long (F34)."
    source  = ["F33", "F34"]
    quality = "keeper"
    seen    = "2026-11-29"
  }

  size "hydei" {
    also    = ["large", "groß", "gross"]
    alone   = ["hydei", "Drosophila hydei", "D. hydei"]
    mass    = "2 to 3 mg"
    length  = "2.5 to 3.5 mm"
    note    = "Remembered, not seen in a source; about 3 mm."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.37 kcal/g"
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
    value   = "21.0 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "5.9 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.1"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "usable" {
    value   = "3 to 4 weeks"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "A culture yields so long."
  }

  figure "temperature" {
    value   = "22 to 25 C"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "10 to 14 days a generation at 25 C."
  }

  figure "culture-age" {
    value   = "20 to 30 days"
    source  = ["F57"]
    quality = "guideline"
    seen    = "2026-11-30"
    note    = "The next jar by day 20 to 30; after 30 days mites and mould come. Two jars of a stock, staggered."
  }

  figure "culture-yield" {
    value   = "150 to 300"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
    note    = "Of a jar of one litre, for two to three weeks; hydei half of it. Common practice, no source."
  }

  figure "culture-lasts" {
    value   = "14 to 21 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
    note    = "A jar. Common practice, no source."
  }

  development "egg-to-adult" {
    size     = "melanogaster"
    observed = ["7 days at 29 C", "9 days at 25 C", "11 days at 22 C", "19 days at 18 C"]
    note     = "At 29 to 30 C they are sterile and die."
    source   = ["F57"]
    quality  = "guideline"
    seen     = "2026-11-30"
  }

  development "egg-to-adult" {
    size     = "hydei"
    observed = ["14 to 18 days at 25 C"]
    note     = "Common practice, no source."
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-30"
  }

  upkeep "look" {
    task    = "Look into each jar for mould, mites and medium that has dried out or run; one that has any goes out, sealed; all of them: log crashed"
    every   = "3 days"
    note    = "Mites or mould take a jar within days. How often is common practice, no source. They live on the medium of the jar, and are not fed."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
