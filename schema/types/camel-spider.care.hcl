type "camel-spider" {
  title   = "camel spiders"
  of      = "hunter"
  genera  = ["Galeodes", "Eremobates"]
  grown   = "4 to 7 cm"
  note    = "A list of questions rather than a type: all but two or three families are unstudied. Floor, height, heat, damp of the air, moults and how long it lives are not known of all of them, so that only a species sheet says them. Galeodes granti lived for 24 hours at 49 C (OS1)."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "uv-not" {
    value = "true"
    note  = "Of the night: a lamp drives it in. Common practice: nothing was measured."
  }

  figure "climbs" {
    value  = "glass"
    source = ["OK95", "OK96"]
    note   = "Some climb glass, others do not: a wall is no lid."
  }

  figure "humidity-hard" {
    value = "0 to 75 %"
    note  = "More with no dry part is wrong for every member."
  }

  figure "moisture" {
    value = "arid"
    note  = "Dry; wet soil is wrong for every member."
  }

  figure "substrate-depth-min" {
    value = "15 cm"
    wrong = "5 cm"
    harm  = "harms"
    note  = "In soil that holds a burrow."
  }

  figure "refusal-pause" {
    value  = "3 days"
    stages = ["juvenile"]
    note   = "A growing one goes no longer than four days without an offer."
  }

  figure "fast-try" {
    value  = "4 days"
    stages = ["juvenile"]
    note   = "Before the alarm; our estimate."
  }

  figure "fast-alarm" {
    value  = "7 days"
    stages = ["young"]
  }

  figure "fast-alarm" {
    value  = "7 days"
    stages = ["juvenile"]
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["subadult", "adult"]
  }

  figure "fast-help" {
    value  = "30 days"
    stages = ["juvenile"]
    note   = "Our estimate, as for a mantis."
  }

  figure "unattended" {
    value  = "2 days"
    wrong  = "4 days"
    stages = ["young"]
  }

  figure "unattended" {
    value  = "2 days"
    wrong  = "4 days"
    stages = ["juvenile"]
  }

  figure "unattended" {
    value  = "3 days"
    wrong  = "6 days"
    stages = ["subadult", "adult"]
  }

  state "gravid" {
    care   = "dish, clean"
    manner = "usual"
    words  = "look first"
    rule   = "look first: dug in? do nothing, log laid"
  }

  state "sac" {
    care   = "substrate, count"
    manner = "held"
    is     = "eggs in the burrow"
    rule   = "water through the hatch, no food, no digging"
    source = ["OS2"]
    note   = "Eggs lie in a burrow (OS2)."
  }

  state "brood" {
    care   = "killed"
    manner = "held"
    is     = "young in the burrow"
    rule   = "water through the hatch, no food, no digging"
    source = ["OS3"]
    note   = "The first instar does not feed (OS3)."
  }

  state "sealed" {
    care   = "substrate, count"
    manner = "held"
    rule   = "dug in: water, no food, no digging"
    source = ["OS2"]
    note   = "The burrow is where it hides, moults, digests and lays (OS2)."
  }

  need "water" {
    longest = "3 days"
    wrong   = "14 days"
  }

  need "food" {
    longest = "3 days"
    wrong   = "10 days"
    stages  = ["young"]
  }

  need "food" {
    longest = "4 days"
    wrong   = "8 days"
    stages  = ["juvenile"]
  }

  need "food" {
    longest = "7 days"
    wrong   = "21 days"
    stages  = ["subadult", "adult"]
  }

  feeding "young" {
    stages     = ["young"]
    every      = "2 days"
    per_animal = 1
    prey       = "fruit-fly hydei"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  except "Metasolpuga" {
    because = "it hunts by day"
  }
}
