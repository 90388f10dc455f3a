species "chicobolus-spinigerus" {
  title    = "Florida ivory millipede"
  latin    = "Chicobolus spinigerus (Wood, 1864)"
  family   = "Spirobolidae"
  type     = "millipede"
  also     = ["ivory millipede"]
  mistaken = ["Narceus"]
  note     = "The only species of its genus, with local strains (Miami, Big Pine Key, ebony) that are not to be mixed (OK23). The one to begin with. It is on the surface for hours even in bright light (OK23): to be out is no alarm. Pale for its first centimetres."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard        = "14 to 31 C"
  night                   = "19 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "60 to 90 %"
  hairs                   = "none"
  speed                   = "slow"
  substrate_depth_advised = "15 cm"

  figure "temperature-soft" {
    value    = "20 to 28 C"
    source   = ["OK23", "OK26"]
    quality  = "practice"
    disputed = "some lots die fast below 21 C, and not all breeders say so (OK23); 15.5 to 32 C is borne (OK26)"
  }

  figure "temperature-target" {
    value    = "22 to 25.5 C"
    source   = ["OK98", "OK27"]
    quality  = "keeper"
    disputed = "20 to 27 C (OK28), 24 to 28 C (OK29b)"
  }

  figure "air" {
    value    = "22 to 25.5 C"
    source   = ["OK98", "OK27"]
    quality  = "keeper"
    disputed = "20 to 27 C (OK28), 24 to 28 C (OK29b)"
  }

  figure "humidity-target" {
    value    = "70 to 80 %"
    source   = ["OK28", "OK29b", "OK26"]
    quality  = "practice"
    disputed = "65 to 75 % (OK28), 75 to 85 % (OK29b), not picky (OK26)"
  }

  figure "moisture" {
    value   = "damp"
    source  = ["OK98"]
    quality = "keeper"
    note    = "Moist below; the top may dry a little."
  }

  figure "drinks" {
    value = "soil"
    note  = "And from a shallow dish."
  }

  figure "substrate-depth-min" {
    value    = "10 cm"
    source   = ["OK98", "OK29b"]
    quality  = "practice"
    disputed = "10 to 15 cm (OK98), 8 to 10 cm (OK29b)"
    note     = "Rotten wood first, on which the young grow fast, and leaves (OK23, OK26); cuttlefish."
  }

  figure "floor-first" {
    value    = "900 cm2"
    stages   = ["subadult", "adult"]
    disputed = "30 x 30 cm for a pair (OK29b), as wide as the animal is long and twice as long (OK98)"
    note     = "For four to six."
  }

  figure "floor-further" {
    value  = "100 cm2"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["newborn", "young"]
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "length" {
    value    = "8 to 12.5 cm"
    stages   = ["adult"]
    source   = ["OK23", "OK26", "OK27", "OK28"]
    quality  = "practice"
    disputed = "9 cm (OK26), 8 to 10 cm (OK28), 10 to 12.5 cm (OK27), to 12.7 cm and mature when much smaller (OK23)"
  }

  figure "mass" {
    value   = "3 to 6 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "5 to 10 years"
    source   = ["OK27"]
    quality  = "keeper"
    disputed = "up to 10 years (a keeper of Florida)"
  }

  figure "age-at-maturity" {
    value   = "12 to 18 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Fast and prolific; no figure was found."
  }

  figure "sac-time" {
    value   = "4 to 8 weeks"
    source  = ["memory"]
    quality = "memory"
    note    = "In pellets of soil: leave them."
  }

  figure "keeping" {
    value = "groups"
  }

  figure "venom" {
    value   = "none"
    source  = ["OK29b"]
    quality = "keeper"
  }

  figure "defence" {
    value   = "A mild brown fluid: wash the hands; rinse the eyes."
    source  = ["OK29b"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Native to the USA."
    source  = ["memory"]
    quality = "memory"
  }

  care "greens" {
    kind   = "other"
    task   = "Lay out courgette, aubergine or other greens, peeled, on a dish"
    on     = ["tue", "fri"]
    source = ["OK23", "OK26"]
  }
}
