feeder "hornworm" {
  title   = "hornworm"
  plural  = "hornworms"
  latin   = "Manduca sexta, larva"
  also    = ["tobacco hornworm", "tomato hornworm", "Tabakschwärmer", "Tabakschwärmerraupe"]
  hazards = [
    "never from the garden: larvae from tomato or tobacco are poisonous",
    "grows out of its size in days when warm: order small, keep cool",
    "holds on with its feet and can knock a small animal about",
    "mostly water: no food for an animal that is to gain weight",
    "a plant pest, not allowed everywhere",
  ]

  size "small" {
    also    = ["klein"]
    mass    = "50 to 500 mg"
    length  = "10 to 25 mm"
    note    = "Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel"]
    mass    = "0.7 to 3 g"
    length  = "30 to 50 mm"
    note    = "Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "grown"]
    mass    = "5 to 10 g"
    length  = "60 to 100 mm"
    note    = "To 10 cm (F31); the weight is remembered."
    source  = ["F31", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "0.6 to 0.7 kcal/g"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
    note    = "Our arithmetic from the composition as remembered: 4 kcal a gram of protein and 9 of fat."
  }

  figure "water" {
    value   = "85 %"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "protein" {
    value   = "9 %"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "fat" {
    value   = "3 %"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.3"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "usable" {
    value   = "1 to 2 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "At 13 to 16 C they hardly grow."
  }

  figure "temperature" {
    value   = "13 to 28 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "13 to 16 C to hold, 25 to 28 C to grow."
  }

  figure "law" {
    value   = "Look up whether this plant pest may be imported and kept where you live."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  upkeep "food" {
    task    = "Look that they have chow, no water; cool holds them back"
    every   = "2 days"
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }

  upkeep "clean" {
    task    = "Take out frass and dead"
    every   = "3 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
