species "pandinus-imperator" {
  title    = "emperor scorpion"
  latin    = "Pandinus imperator (C. L. Koch, 1841)"
  family   = "Scorpionidae"
  type     = "tropical-burrowing-scorpion"
  also     = ["emperor", "imperial scorpion", "Kaiserskorpion"]
  former   = ["Buthus imperator"]
  mistaken = ["Heterometrus", "Pandinoides cavimanus", "Pandinopsis dictator"]
  note     = "Of the old genus Pandinus only gambiensis, imperator, ugandaensis and ulderigoi still bear the name (K40); cavimanus is Pandinoides and dictator is Pandinopsis (from memory). In Togo the air is 24 to 29.5 C, with 96 % in the morning and 68 % in the evening (C142)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-25"

  stage "newborn" {
    instars = "1"
    note    = "On the mother, before the first moult."
    source  = ["P1", "K52"]
  }

  stage "young" {
    instars = "2 to 3"
    note    = "Our estimate for six moults from the family pattern; no instar table of Pandinus is published."
    source  = ["P6"]
  }

  stage "juvenile" {
    instars = "4 to 5"
    note    = "Our estimate for six moults from the family pattern; no instar table of Pandinus is published."
    source  = ["P6"]
  }

  stage "subadult" {
    instars = "6"
    note    = "Our estimate for six moults from the family pattern; no instar table of Pandinus is published."
    source  = ["P6"]
  }

  stage "adult" {
    instars = "7"
    note    = "Our estimate for six moults from the family pattern; no instar table of Pandinus is published."
    source  = ["P6"]
  }

  figure "temperature-hard" {
    value    = "15 to 35 C"
    source   = ["K20"]
    disputed = "27 to 37 C by day (K1)"
    note     = "A precaution: no lethal temperature of this species is known, and a second search found none. 35 C is what K20 gives for tropical scorpions; 15 C is common practice. Others died at 43.7 to 45.1 C (P19), 45 to 47 C (P15)."
  }

  figure "temperature-soft" {
    value   = "70 to 90 F"
    source  = ["K2"]
    quality = "keeper"
    seen    = "2026-11-28"
    note    = "21.1 to 32.2 C: a warm end and a cool end, both included."
  }

  figure "temperature-target" {
    value    = "25 to 30 C"
    source   = ["K7"]
    quality  = "keeper"
    disputed = "24 to 28 C (K4), 24 to 29.5 C (K11), 25.5 to 30 C (K5), 26 to 28 C (K41), 27 to 32 C warm and 21 to 26 C cool (K2), about 29.5 C (K39), 27 to 37 C (K1)"
  }

  figure "warm-spot" {
    value   = "80 to 90 F"
    source  = ["K2"]
    quality = "keeper"
    seen    = "2026-11-29"
    note    = "27 to 32 C, as K2 rounds it."
  }

  figure "air" {
    value  = "22 to 28 C"
    source = ["K2"]
    seen   = "2026-11-28"
    note   = "K2 has 70 to 78 F, 21 to 26 C, at the cool end."
  }

  figure "night" {
    value    = "20 to 25 C"
    source   = ["K41"]
    quality  = "keeper"
    disputed = "20 to 22 C (K7)"
  }

  figure "night-drop" {
    value  = "3 to 8 C"
    source = ["K2"]
    note   = "K2 calls a slight drop natural; the figure is common practice."
  }

  figure "rest" {
    value = "none"
    seen  = "2026-11-28"
  }

  figure "cooler" {
    value = "2 to 3 C"
    seen  = "2026-11-28"
  }

  figure "humidity-soft" {
    value  = "60 to 90 %"
    source = ["K7", "K1"]
  }

  figure "humidity-target" {
    value    = "70 to 85 %"
    source   = ["K5"]
    quality  = "society"
    disputed = "60 to 80 % (K7), 70 to 80 % (K41, K44), 75 to 80 % (K4), 80 to 90 % (K1)"
    note     = "A moist substrate, not wet air."
  }

  figure "humidity-premoult" {
    value  = "75 to 90 %"
    source = ["K39"]
    note   = "K39 names air too dry and air too wet as causes of a failed moult; the figures are common practice."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["K2", "K7", "K5"]
    quality = "keeper"
    note    = "Always slightly moist, never standing water."
  }

  figure "ventilation" {
    value  = "any"
    source = ["K5"]
    note   = "Humidity is held by the substrate, not by sealing the lid (K5)."
  }

  figure "substrate-depth-min" {
    value    = "10 cm"
    source   = ["K1", "K7", "K9"]
    disputed = "7.5 to 10 cm (K11), 5 to 10 cm and better 10 to 15 cm (K2), 7.5 to 15 cm (K10), to 20 cm (K6)"
  }

  figure "substrate-depth-advised" {
    value  = "15 cm"
    source = ["K1", "K7", "K9", "K10"]
  }

  figure "floor-first" {
    value  = "220 cm2"
    stages = ["young"]
    source = ["K45"]
    note   = "Three body lengths long (K45) and two wide, for the largest animal of the stage; our arithmetic."
  }

  figure "floor-first" {
    value  = "550 cm2"
    stages = ["juvenile"]
    source = ["K45"]
    note   = "Three body lengths long (K45) and two wide, for the largest animal of the stage; our arithmetic."
  }

  figure "floor-first" {
    value    = "1200 cm2"
    stages   = ["subadult", "adult"]
    source   = ["K6"]
    quality  = "keeper"
    disputed = "1290 cm2 (K2, K10, K11), 1500 cm2 (K7), 1800 cm2 (K9)"
    note     = "The 1290 cm2 (10 gal) of K2 are for one or two."
  }

  figure "floor-further" {
    value    = "600 cm2"
    stages   = ["subadult", "adult"]
    source   = ["K6"]
    disputed = "75 L for a pair (K9), 75 to 115 L for a group (K10)"
    note     = "K6 adds 20 cm of base for each, read here as 20 x 30 cm."
  }

  figure "volume-first" {
    value    = "30 L"
    stages   = ["subadult", "adult"]
    source   = ["K6"]
    disputed = "36 L (K6), 38 L (K2, K10, K11), 45 L (K7), 54 L by its own measures (K9)"
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["subadult", "adult"]
    source = ["K6", "K7", "K9"]
    note   = "All boxes that are named with measures are 30 cm high."
  }

  figure "keeping" {
    value    = "groups"
    source   = ["P1"]
    quality  = "paper"
    disputed = "better alone, because of fights over one prey item (K4, K46); cannibalism when food is short (K41, K47)"
    note     = "Of one species and similar size, with a hide for each and more prey items than animals."
  }

  figure "group-max" {
    value  = "15"
    source = ["P1"]
    note   = "The largest gathering seen in the field (P1); as a limit it is our reading."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["G8", "K8", "K41"]
    quality = "keeper"
    note    = "Burrows are 30 to 35 cm deep (G8)."
  }

  figure "climbs" {
    value   = "seams"
    source  = ["K2", "K3", "K5"]
    quality = "keeper"
    note    = "Not clean glass, but silicone seams, bark and decor."
  }

  figure "lid" {
    value   = "latched"
    source  = ["K2", "K3", "K5"]
    quality = "keeper"
  }

  figure "moults-as-adult" {
    value   = "false"
    source  = ["K37", "K48"]
    quality = "keeper"
  }

  figure "drinks" {
    value   = "dish"
    source  = ["K1", "K4"]
    quality = "keeper"
    note    = "A shallow dish with sides that can be climbed; it may soak."
  }

  figure "heater-not" {
    value    = "under"
    source   = ["K3"]
    quality  = "keeper"
    disputed = "a pad under one side of the tank (K2)"
    note     = "It digs down to get away from heat."
  }

  figure "uv-not" {
    value   = "true"
    source  = ["K4"]
    quality = "keeper"
    note    = "16 h a day of weak ultraviolet bleached the glow of Paruroctonus becki and changed how it reacts (P46)."
  }

  figure "looks" {
    value  = "White at birth; dark after the first moult."
    stages = ["newborn"]
  }

  figure "looks" {
    value  = "Dark brown to black; the telson, the bulb of the sting, is white."
    stages = ["young", "juvenile", "subadult"]
  }

  figure "looks" {
    value  = "Black with a sheen of green or blue, large grainy claws; the telson is dark red once it is mature."
    stages = ["adult"]
    note   = "Claws that are red-brown all over point to Pandinoides cavimanus, smooth ones to Heterometrus (from memory)."
  }

  figure "length" {
    value  = "4.7 to 6 cm"
    stages = ["young"]
    source = ["P6"]
    note   = "From 15 cm for an adult, by Dyar's rule with a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value  = "7.5 to 9.5 cm"
    stages = ["juvenile"]
    source = ["P6"]
    note   = "From 15 cm for an adult, by Dyar's rule with a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value  = "12 cm"
    stages = ["subadult"]
    source = ["P6"]
    note   = "From 15 cm for an adult, by Dyar's rule with a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value    = "12 to 20 cm"
    stages   = ["adult"]
    source   = ["K4", "K8", "K12"]
    disputed = "11 to 15 cm (K4), 15 to 18 cm and to 20 cm (K8), 20 cm (K12), 25 cm (G8)"
    note     = "With the tail, as the sources measure; 15 cm is typical."
  }

  figure "mass" {
    value  = "0.8 to 1.6 g"
    stages = ["young"]
    source = ["P6"]
    note   = "From 25 g for an adult, halved for each moult (Przibram's rule); our arithmetic."
  }

  figure "mass" {
    value  = "3 to 6 g"
    stages = ["juvenile"]
    source = ["P6"]
    note   = "From 25 g for an adult, halved for each moult (Przibram's rule); our arithmetic."
  }

  figure "mass" {
    value  = "12 g"
    stages = ["subadult"]
    source = ["P6"]
    note   = "From 25 g for an adult, halved for each moult (Przibram's rule); our arithmetic."
  }

  figure "mass" {
    value    = "20 to 30 g"
    stages   = ["adult"]
    source   = ["K42", "K43"]
    disputed = "to 30 g (K42), 30 to 50 g (G8, K41), males to 30 g and gravid females to 50 g (K43)"
    note     = "Not gravid; 50 g at the most. No measured sample was found."
  }

  figure "growth-factor" {
    value  = "1.26 to 1.3"
    source = ["P6", "P10"]
    note   = "1.26 is the theory, 1.27 was measured on Hadrurus gertschi (P10)."
  }

  figure "moults-to-adult" {
    value    = "5 to 7"
    source   = ["K48"]
    quality  = "keeper"
    disputed = "5 to 6 for scorpions in general (K37), 6 (K49), 4 to 9 (K50)"
  }

  figure "instar-length" {
    value  = "10 to 21 days"
    instar = 1
    source = ["P7", "P8", "P10"]
    note   = "Our estimate; K52 has 7 to 21 days for scorpions in general."
  }

  figure "instar-length" {
    value  = "45 to 120 days"
    instar = 2
    source = ["P7", "P8", "P10"]
    note   = "Our estimate at 27 C, well fed, from kin; not published."
  }

  figure "instar-length" {
    value  = "70 to 180 days"
    instar = 3
    source = ["P7", "P8", "P10"]
    note   = "Our estimate at 27 C, well fed, from kin; not published."
  }

  figure "instar-length" {
    value  = "90 to 240 days"
    instar = 4
    source = ["P7", "P8", "P10"]
    note   = "Our estimate at 27 C, well fed, from kin; not published."
  }

  figure "instar-length" {
    value  = "120 to 330 days"
    instar = 5
    source = ["P7", "P8", "P10"]
    note   = "Our estimate at 27 C, well fed, from kin; not published."
  }

  figure "instar-length" {
    value  = "180 to 500 days"
    instar = 6
    source = ["P7", "P8", "P10"]
    note   = "Our estimate at 27 C, well fed, from kin; not published."
  }

  figure "age-at-maturity" {
    value    = "2 to 7 years"
    source   = ["K49", "K52"]
    disputed = "6 to 7 months (K51, whose line contradicts itself), 1 to 6 years (K52), 6 months to 7 years (K49)"
    note     = "3 to 4 years is usual (from memory)."
  }

  figure "lifespan" {
    value    = "5 to 10 years"
    source   = ["K7"]
    quality  = "keeper"
    disputed = "5 to 8 (K56), 6 to 8 (K10), about 8 (K60), over 8 (G8)"
  }

  figure "gestation" {
    value    = "7 to 18 months"
    source   = ["K47", "N3", "N30"]
    seen     = "2026-11-28"
    disputed = "usually 7 to 10 months (N3, N30), 7 to 9 and sometimes longer (N2, K42, K56), 9 to 18 (N4), 12 to 24 (G8), to 24 (N5); kin 8 to 12 months (K58) and 17 to 25 months (P7, P8, P9)"
    note     = "A female that had been alone for 14 months gave birth (N3)."
  }

  figure "gestation-longest" {
    value  = "24 months"
    source = ["G8", "N5"]
    seen   = "2026-11-28"
  }

  figure "brood-size" {
    value    = "8 to 35"
    source   = ["N2", "N4", "K42", "K59", "G8"]
    seen     = "2026-11-28"
    disputed = "8 to 13 (N4), 9 to 20 usual in captivity and 32 the mean of Larrouy 1973 as N2 cites it, 21 (N1), 1 to 20 (K47), 9 to 32 (K42), 12 to 30 (K59), 15 to 25 and rarely 50 (G8)"
    note     = "Born one by one, over hours (common practice, no source) or over several days (G8)."
  }

  figure "on-mother" {
    value    = "14 to 21 days"
    source   = ["N1", "N30", "K43", "K52"]
    seen     = "2026-11-28"
    disputed = "about 20 days (K43), 2 weeks (N30), 3 weeks (N1, N30), 7 to 21 days for scorpions in general (K52)"
  }

  figure "separation" {
    value    = "keep with mother"
    source   = ["P1"]
    quality  = "paper"
    disputed = "keepers take the young out after the first or second moult, to avoid cannibalism (common practice); other adults and feeder insects eat newborns (K47); she drives them off and eats those that linger (N4, N8, K18)"
    note     = "Broods without the mother starved, ate each other and grew more slowly (P1). Give mother and brood a box of their own, and take no young out before instar 3. Reared to adults with her (N2): if she eats one or two, leave them; if she goes on, take all out together."
  }

  figure "first-killed" {
    value  = "3 days"
    source = ["P11"]
    seen   = "2026-11-28"
    note   = "Pieces at the burrow mouth. They cannot feed before their first moult (N1). The figure is common practice."
  }

  figure "first-meal" {
    value  = "10 days"
    source = ["P11"]
    note   = "In Rhopalurus rochai unfed young of instar 2 died on days 11 to 30."
  }

  figure "undisturbed" {
    value  = "30 days"
    source = ["P1"]
    note   = "The mother becomes very aggressive (P1); the figure is common practice."
  }

  figure "wait-after-moult" {
    value    = "7 days"
    stages   = ["juvenile"]
    source   = ["K55"]
    disputed = "5 days for instar 4 (common practice)"
  }

  figure "wait-after-moult" {
    value  = "10 days"
    stages = ["subadult", "adult"]
    source = ["K55"]
    note   = "K55 has 1 to 2 weeks."
  }

  figure "handling-wait" {
    value  = "14 days"
    source = ["K37", "K49"]
    note   = "Both say to leave it alone until hard; the figure is common practice."
  }

  figure "moult-takes" {
    value    = "10 to 12 h"
    source   = ["K48"]
    quality  = "keeper"
    disputed = "1 to 3 h in small species, 12 h in the largest (K37)"
  }

  figure "premoult-fast" {
    value  = "3 to 14 days"
    stages = ["young"]
    source = ["K49", "S59c"]
    seen   = "2026-11-28"
    note   = "At the longest about 30 days. K49 speaks of days, S59c of days to weeks; the numbers are common practice."
  }

  figure "premoult-fast" {
    value  = "1 to 4 weeks"
    stages = ["juvenile"]
    source = ["K49", "S59c"]
    seen   = "2026-11-28"
    note   = "At the longest about 10 weeks. K49 speaks of days, S59c of days to weeks; the numbers are common practice."
  }

  figure "premoult-fast" {
    value  = "2 to 8 weeks"
    stages = ["subadult"]
    source = ["K49", "S59c"]
    seen   = "2026-11-28"
    note   = "At the longest about 4 months. K49 speaks of days, S59c of days to weeks; the numbers are common practice."
  }

  figure "fast-alarm" {
    value  = "7 days"
    stages = ["young"]
    seen   = "2026-11-28"
    note   = "Young that starve die within weeks; smaller and killed food first, every third day, out again on the next."
  }

  figure "fast-alarm" {
    value  = "60 days"
    stages = ["adult"]
    seen   = "2026-11-28"
    note   = "Common practice is 60 to 90 days. K1 says months without harm, males longer than females."
  }

  figure "refusals-to-pause" {
    value  = "2"
    stages = ["young", "juvenile", "subadult"]
    note   = "Two refusals in an animal that still grows are often the first sign of a moult."
  }

  figure "refusal-pause" {
    value  = "3 days"
    stages = ["young"]
    source = ["P11"]
    seen   = "2026-11-28"
    note   = "Young that starve die (P11, of Rhopalurus rochai): the pause is short, and then a smaller item is offered, killed. The figure is common practice."
  }

  figure "prey-mass-share" {
    value  = "50 %"
    stages = ["young"]
    note   = "Killed or in pieces."
  }

  figure "items-a-week" {
    value  = "2 to 6"
    stages = ["young"]
    source = ["K4"]
    note   = "Small ones, at two or three meals a week; common practice."
  }

  figure "items-a-week" {
    value    = "1 to 6"
    stages   = ["adult"]
    source   = ["K12"]
    disputed = "3 to 6 (K12), about 8 (common practice, no source)"
    note     = "Adult crickets; about two cover a resting animal of 25 g at 27 C, three to five an active or gravid one (our arithmetic from P2 and P36)."
  }

  figure "unattended" {
    value    = "3 days"
    stages   = ["young", "juvenile"]
    disputed = "juveniles 5 days (common practice)"
  }

  figure "unattended" {
    value  = "7 days"
    stages = ["subadult", "adult"]
    seen   = "2026-11-28"
    note   = "10 days with a second dish."
  }

  figure "mites-clear" {
    value = "30 days"
    seen  = "2026-11-28"
    note  = "Of clean looks each week."
  }

  figure "substrate-change" {
    value  = "4 to 6 months"
    source = ["K62"]
    note   = "For a damp set-up without springtails; K62 says it of a tarantula tank."
  }

  figure "venom" {
    value   = "mild"
    source  = ["K12", "K40", "K61"]
    quality = "keeper"
    note    = "As a bee sting: swelling at half an hour, going down by an hour and a half (common practice, no source). Watch breathing and swelling, and call for help in an allergy."
  }

  figure "defence" {
    value   = "Pinches strongly and rarely stings; young ones and mothers sting sooner."
    source  = ["K61"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "II"
    source  = ["G2"]
    quality = "guideline"
    note    = "Since 1995, with P. dictator and P. gambiensis."
  }

  figure "law" {
    value   = "European Union Annex B; look up the duty to report (Germany). Keep the paper that proves the origin."
    source  = ["G2", "K7"]
    quality = "keeper"
  }

  figure "climate-origin" {
    value   = "West African forest and moist savanna: burrows, termite mounds, under logs and stones. Mixed groups of up to 15."
    source  = ["P1", "G8", "K8", "K41"]
    quality = "keeper"
  }

  figure "sexing" {
    value   = "Males have larger combs with longer teeth and a narrower, longer genital plate (from memory). The count of teeth alone does not tell."
    source  = ["K56", "K57", "memory"]
    quality = "memory"
  }

  figure "metabolic-kin" {
    value  = "scorpion"
    source = ["P2"]
    note   = "Measured on Urodacus armatus, from dry country. Scorpionidae use about as much oxygen as Buthidae and lose more water (N29)."
  }

  need "look" {
    longest = "1 day"
  }

  need "water" {
    longest = "2 days"
    note    = "A dish is never empty: it is refilled within two days."
  }

  need "moisture" {
    longest = "3 days"
    source  = ["K7", "K5"]
    note    = "K7 mists daily; by the hygrometer every one to three days."
  }

  need "food" {
    stages  = ["young"]
    longest = "7 days"
    source  = ["P11"]
    note    = "Young that starve die (P11, of Rhopalurus rochai); the figure is common practice."
  }

  need "food" {
    stages  = ["juvenile"]
    longest = "14 days"
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "14 days"
    shortest = "2 days"
    severity = "caution"
    source   = ["K12"]
    note     = "K12 feeds every other day. Adults may fast for months without harm (K1)."
  }

  need "leftovers" {
    longest = "1 day"
    source  = ["K82"]
  }

  need "heat" {
    longest = "1 day"
  }

  need "cleaning" {
    longest  = "14 days"
    severity = "caution"
    note     = "Once a week is usual; a missed week is made up in the next."
  }

  need "device-test" {
    longest  = "30 days"
    severity = "caution"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket small"
    killed     = true
    because    = "Second instars cannot kill large prey; with the mother they eat what she breaks up."
    source     = ["K4", "P1"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket medium"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket adult"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "4 days"
    per_animal = 1
    rotate     = ["cricket adult", "cricket adult", "roach medium"]
    source     = ["K12"]
    quality    = "practice"
    seen       = "2026-11-25"
  }
}
