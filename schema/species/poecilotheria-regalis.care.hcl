species "poecilotheria-regalis" {
  title    = "Indian ornamental tarantula"
  latin    = "Poecilotheria regalis Pocock, 1899"
  family   = "Theraphosidae"
  type     = "arboreal-tarantula"
  also     = ["Indian ornamental", "regal parachute spider", "royal parachute spider", "pokie", "Tigervogelspinne"]
  mistaken = ["Poecilotheria fasciata", "Poecilotheria ornata", "Poecilotheria striata"]
  note     = "The banded belly marks it (A57); hybrids and wrong labels matter, since P. fasciata and P. ornata look alike and are under other law. Paper, aid card and long tongs come before the animal. It closes itself in with bark: to look, shine through, do not lift. It dislikes bright light (A62)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "20 to 30 C"
  air                     = "22 to 27 C"
  night                   = "19 to 23 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "45 to 80 %"
  substrate_depth_min     = "5 cm"
  substrate_depth_advised = "8 cm"
  first_meal              = "7 days"
  old_age_male            = "6 months"
  hairs                   = "none"
  defence                 = "Flees first, then strikes."

  figure "temperature-hard" {
    value = "15 to 33 C"
    note  = "A precaution: no lethal temperature of it is known."
  }

  figure "temperature-target" {
    value    = "22 to 27 C"
    disputed = "22 to 26.5 C for the genus (A62), 24 to 26.5 C (A58)"
  }

  figure "humidity-target" {
    value    = "60 to 75 %"
    disputed = "75 to 80 % (A58)"
    note     = "Soil damp below, dry on top."
  }

  figure "floor-first" {
    value    = "600 cm2"
    stages   = ["subadult", "adult"]
    disputed = "20 x 20 cm at the least (A58)"
  }

  figure "floor-further" {
    value  = "300 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value    = "40 cm"
    stages   = ["subadult", "adult"]
    disputed = "50 cm (A58)"
    note     = "40 to 45 cm, with an upright cork tube that it can close itself in, and front doors that latch."
  }

  figure "gap-max" {
    value  = "3 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
    note   = "Our estimate: what leaves the sac is far smaller than a young one of its type."
  }

  figure "length" {
    value   = "6.5 to 7.5 cm"
    stages  = ["adult"]
    source  = ["A58"]
    quality = "keeper"
  }

  figure "span" {
    value    = "18 to 19 cm"
    stages   = ["adult"]
    source   = ["A58"]
    quality  = "keeper"
    disputed = "over 18 cm (A59), females to 23 and males 18 cm (A60), 12.5 cm for the genus (A61)"
  }

  figure "mass" {
    value   = "18 to 30 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value   = "11 to 15 years"
    source  = ["A58"]
    quality = "keeper"
    note    = "Females; males 3 (A58) or 3 to 4 years (A60). Males live 6 to 18 months after their last moult."
  }

  figure "growth-factor" {
    value    = "1.25 to 1.4"
    source   = ["A53"]
    quality  = "practice"
    disputed = "1.38 (A53, of Grammostola vachoni, a slow kind of temperate places)"
  }

  figure "age-at-maturity" {
    value   = "1 to 3 years"
    source  = ["A60"]
    quality = "keeper"
    note    = "Males about 1 year, females 2 to 3; it grows very fast."
  }

  figure "sac-time" {
    value    = "6 to 9 weeks"
    source   = ["memory"]
    quality  = "memory"
    disputed = "of tarantulas in general 6 to 12 weeks, with eggs that hatch in 25 to 42 days and moult again 17 to 40 days later (A50), 4 to 6 weeks and up to 6 more (A51)"
    note     = "Leave her undisturbed; she needs no food with the sac (A52)."
  }

  figure "brood-size" {
    value    = "80 to 180"
    source   = ["memory"]
    quality  = "memory"
    disputed = "about 100 eggs a year in the genus, of which many die young (A10)"
  }

  figure "separation" {
    value    = "separate"
    source   = ["A36"]
    quality  = "practice"
    disputed = "young may stay with their mother for some weeks (A36)"
    note     = "By moult 3 to 4."
  }

  figure "wait-after-moult" {
    value  = "10 days"
    stages = ["adult"]
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["juvenile"]
  }

  figure "keeping" {
    value    = "alone"
    source   = ["A36", "A37", "A58", "A59"]
    quality  = "practice"
    disputed = "groups of one sac grew faster, shared prey, no attack was seen, and young left with their mother were unharmed (A36, two breeders); five species reared in groups by one breeder, P. ornata reported cannibal (A37); they live together where tree holes are few (A59); typically solitary (A58)"
    note     = "No pairs. Who keeps a group states so with a reason: one sac, one size, a hide for each and one more, more prey than animals, split when one is a third larger; never mixed sacs."
  }

  figure "venom" {
    value   = "medically significant"
    source  = ["A1", "A2", "A3"]
    quality = "paper"
    note    = "A verified bite of this species: severe cramps hours later, long-lasting (A1); another: lasting cramps of the hand (A2). Of kin: burning pain, numbness, cramps, full recovery (A4, A5). No death is known (A59). Of 363 published bites of tarantulas 12.7 % had marked cramps, most often of this subfamily and two others (A3). After a bite: wash, rings off, keep the limb still; no cutting, sucking or binding. Somebody stays for 24 hours; spreading pain, cramps, chest or breath mean hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days."
  }

  figure "speed" {
    value = "very quick"
    note  = "Catch cup in reach, and the box opened inside a larger tub."
  }

  figure "cites" {
    value   = "II"
    source  = ["A6", "A7", "A8"]
    quality = "guideline"
    note    = "A first proposal, of April 2000 (A9), failed: 49 for, 30 against, 27 abstained (A10)."
  }

  figure "law" {
    value   = "Listed as a whole genus since 26 November 2019, in the European Union from 14 December 2019, Annex B: keep the paper of origin for each animal and each sac, and look up what else is asked. In Germany invertebrates need proof of origin and no report (A13, A14). Rules on dangerous animals name the genus in some places, Saarland since 19 January 2024 (A15): look it up. United States: not among the five Sri Lankan species of the Endangered Species Act (A11)."
    source  = ["A6", "A7", "A8", "A11", "A13", "A14", "A15"]
    quality = "keeper"
    note    = "The five are fasciata, ornata, smithi, subfusca and vittata: proposed on 14 December 2016, rule of 31 July 2018, effective 30 August 2018 (A11)."
  }

  figure "climate-origin" {
    value   = "India: forests and teak plantations, in tree holes."
    source  = ["A63"]
    quality = "keeper"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 2
    prey       = "cricket adult"
  }
}
