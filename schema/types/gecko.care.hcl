type "gecko" {
  title   = "geckos"
  note    = "Length is from snout to vent, without the tail. Company: never two grown males; the rest only a species can state."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  stage "young" {
    note = "Hatchling, and the months after."
  }

  stage "juvenile" {
    note = "Half grown."
  }

  stage "subadult" {
    note = "Nearly full size, sex plain."
  }

  stage "adult" {
    note = "Full size."
  }

  figure "touch" {
    value = "germs"
  }

  figure "surface-max" {
    value = "43 C"
    note  = "Skin of people is harmed by 43 C in 8 hours (ISO 13732-1, from memory); a desert scorpion bears air of 45 to 47 C, and no figure of a gecko was found. Common practice, no source."
  }

  figure "hangs-to-moult" {
    value = "false"
  }

  figure "moults-as-adult" {
    value = "true"
    note  = "It sheds its skin every few weeks. Look at toes and tail tip."
  }

  figure "length" {
    value  = "0.3 to 0.45 length"
    stages = ["young"]
    note   = "Of the grown; hatchlings of two kinds in this library have a third of it. Our estimate."
  }

  figure "length" {
    value  = "0.5 to 0.7 length"
    stages = ["juvenile"]
    note   = "Of the grown; our estimate."
  }

  figure "length" {
    value  = "0.8 to 0.9 length"
    stages = ["subadult"]
    note   = "Of the grown; our estimate."
  }

  figure "prey-length-share" {
    value = "50 %"
    note  = "No longer than the head is wide is what keepers say (K108). No number was found for that; half of the length from snout to vent is far beyond it, and our estimate of what is plainly too long."
  }

  figure "gap-max" {
    value = "0.06 length"
    wrong = "0.12 length"
    note  = "Half the width of its head; the whole is our estimate of what lets it out."
  }

  figure "separation" {
    value = "separate"
    note  = "The eggs go to an incubator, and hatchlings to boxes of their own."
  }

  figure "separate-within" {
    value = "1 day"
  }

  figure "first-killed" {
    value  = "3 days"
    source = ["N22"]
    note   = "After the first shed, about the third day."
  }

  figure "first-meal" {
    value  = "7 days"
    source = ["N22"]
    note   = "From hatching; the limit is common practice."
  }

  figure "wait-after-moult" {
    value = "0 days"
    note  = "It eats its skin and goes on eating."
  }

  figure "premoult-fast" {
    value = "1 to 3 days"
    note  = "Pale for so long; it goes on eating, or misses a meal or two."
  }

  figure "premoult-look" {
    value = "5 days"
    note  = "Skin that sticks: more damp, then help."
  }

  figure "premoult-help" {
    value = "10 days"
  }

  figure "fast-look" {
    value  = "3 days"
    stages = ["young"]
  }

  figure "fast-look" {
    value  = "4 days"
    stages = ["juvenile"]
  }

  figure "fast-look" {
    value  = "7 days"
    stages = ["subadult", "adult"]
  }

  figure "fast-alarm" {
    value  = "4 days"
    stages = ["young"]
  }

  figure "fast-alarm" {
    value  = "7 days"
    stages = ["juvenile"]
  }

  figure "fast-help" {
    value  = "7 days"
    stages = ["young"]
  }

  figure "fast-help" {
    value  = "10 days"
    stages = ["juvenile"]
  }

  figure "fast-help" {
    value  = "14 days"
    stages = ["subadult", "adult"]
  }

  figure "weight-loss" {
    value   = "10 %"
    source  = ["N20"]
    quality = "keeper"
  }

  figure "unattended" {
    value  = "1 day"
    stages = ["young", "juvenile"]
  }

  figure "unattended" {
    value  = "2 days"
    stages = ["subadult", "adult"]
  }

  figure "settling" {
    value  = "1 to 2 days"
    stages = ["young"]
  }

  figure "settling" {
    value  = "3 to 4 days"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "quarantine" {
    value    = "6 weeks"
    source   = ["N21"]
    quality  = "keeper"
    disputed = "3 to 6 months (N21)"
    note     = "And a clear test of its droppings."
  }

  figure "quarantine-wild" {
    value = "60 to 90 days"
  }

  figure "mites-clear" {
    value   = "6 weeks"
    source  = ["N21"]
    quality = "keeper"
    note    = "Of clean looks each week."
  }

  figure "substrate-change" {
    value = "12 months"
  }

  figure "metabolic-kin" {
    value = "none"
  }

  state "gravid" {
    care   = "all"
    manner = "usual"
    rule   = "as ever, with calcium; eggs? do not turn them, log laid"
  }

  state "gravid" {
    care   = "count, substrate"
    manner = "held"
  }

  state "gravid-late" {
    care   = "all"
    manner = "usual"
    rule   = "as ever, with calcium; eggs? do not turn them, log laid"
    note   = "Straining, or visibly gravid for more than six weeks, is for a veterinarian."
  }

  state "sac" {
    care   = "all"
    manner = "usual"
    is     = "after laying"
    rule   = "as ever, with calcium; eggs to the incubator, never turned"
  }

  state "birth" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "The eggs are in an incubator: there is no brood care."
  }

  state "brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "The eggs are in an incubator: there is no brood care."
  }

  state "young-round" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "The eggs are in an incubator: there is no brood care."
  }

  state "after-brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "The eggs are in an incubator: there is no brood care."
  }

  state "newborn" {
    care   = "all"
    manner = "usual"
    note   = "They are on no mother, and nobody disturbs her."
  }

  state "newborn" {
    care   = "live, killed"
    manner = "usual"
    from   = "3 days"
    is     = "before the first shed"
    rule   = "no food until the first shed, about the third day"
    source = ["N22"]
  }

  state "premoult" {
    care   = "all"
    manner = "usual"
    is     = "pale, before a shed"
    rule   = "keep it damp, do not handle"
    note   = "It goes on eating."
  }

  state "premoult" {
    care   = "substrate, count, handle, rehouse"
    manner = "held"
  }

  state "ill" {
    care   = "live"
    manner = "usual"
    words  = "one at a time, from tongs"
    rule   = "as the veterinarian says"
  }

  state "rest" {
    care   = "handle"
    manner = "usual"
    words  = "weigh; a tenth lost ends the rest"
    every  = "7 days"
    rule   = "dish full, a look, weigh each week; no food"
    source = ["N20"]
  }

  need "look" {
    longest = "1 day"
    wrong   = "3 days"
  }

  need "leftovers" {
    longest = "1 day"
    wrong   = "2 days"
  }

  need "heat" {
    longest = "1 day"
    wrong   = "3 days"
  }

  need "cleaning" {
    longest  = "14 days"
    severity = "caution"
  }

  need "device-test" {
    longest  = "30 days"
    wrong    = "90 days"
    severity = "caution"
  }

  care "look" {
    every = "day"
  }

  care "heat" {
    every = "day"
  }

  care "water" {
    every = "day"
  }

  care "spot-clean" {
    every = "7 days"
  }

  care "dish" {
    every = "7 days"
  }

  care "deep-clean" {
    every = "12 months"
  }

  care "device-test" {
    every = "30 days"
  }

  care "toes" {
    kind  = "other"
    task  = "Look at toes and tail tip for skin that sticks"
    every = "7 days"
  }
}
