type "colony" {
  title   = "colonies of animals that nobody counts"
  note    = "Old and young live together, and heads, weights, meals and moults are not followed."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  stage "newborn" {
    note = "With the mother; nobody counts them."
  }

  stage "young" {
    note = "Instars are not counted; a colony holds all sizes."
  }

  stage "juvenile" {
    note = "Instars are not counted; a colony holds all sizes."
  }

  stage "subadult" {
    note = "Instars are not counted; a colony holds all sizes."
  }

  stage "adult" {
    note = "Instars are not counted; a colony holds all sizes."
  }

  figure "lifestyle" {
    value = "ground"
  }

  figure "climbs" {
    value = "seams"
  }

  figure "lid" {
    value = "any"
  }

  figure "hangs-to-moult" {
    value = "false"
  }

  figure "separation" {
    value = "keep with mother"
  }

  figure "wait-after-moult" {
    value = "0 days"
  }

  figure "quarantine" {
    value = "30 days"
  }

  figure "mites-clear" {
    value = "30 days"
    note  = "Of clean looks each week."
  }

  figure "metabolic-kin" {
    value = "none"
  }

  state "gravid" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "Eggs or young are in her, and nothing is done about it."
  }

  state "gravid-late" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "sac" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "Eggs or young are in her, and nothing is done about it."
  }

  state "birth" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "young-round" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "young-loose" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "A colony has young in it all year."
  }

  state "newborn" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "after-brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "premoult" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "moulting" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "soft" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "hardening" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  need "look" {
    longest = "3 days"
    wrong   = "7 days"
    note    = "A colony is looked at with its watering."
  }

  need "cleaning" {
    longest  = "31 days"
    severity = "caution"
  }

  care "look" {
    every = "3 days"
  }

  care "spot-clean" {
    task  = "Take out mould"
    every = "2 weeks"
  }
}
