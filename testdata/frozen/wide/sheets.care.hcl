# Two species that are not: nothing here is known of any animal. The care that they
# bring is what the enclosures leave to them.
species "reed-prowler" {
  figure "venom" {
    value  = "none"
    source = ["fixture"]
  }

  title = "reed prowler"

  stage "young" {
    instars = "2 to 3"
  }
  stage "juvenile" {
    instars = "4 to 5"
  }
  stage "adult" {
    instars = "6"
  }

  figure "moults-as-adult" {
    value   = "false"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }
  figure "gestation" {
    value   = "200 to 260 days"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }
  figure "on-mother" {
    value   = "10 to 20 days"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }
  figure "dispersal" {
    value   = "10 to 20 days"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }
  figure "separation" {
    value   = "separate"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }
  figure "undisturbed" {
    value   = "30 days"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }
  figure "wait-after-moult" {
    value   = "7 to 10 days"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }
  figure "refusals-to-pause" {
    value   = "2"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }
  figure "refusal-pause" {
    value   = "10 days"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }
  figure "unattended" {
    value   = "9 days"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }

  need "water" {
    longest = "8 days"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }
  need "look" {
    longest = "9 days"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }
  need "food" {
    longest = "40 days"
    source  = ["fixture"]
    because = "invented"
    review  = "2040-01-01"
  }

  care "look" {
    every   = "2 days"
    source  = ["fixture"]
    because = "invented"
  }
  care "water" {
    every   = "4 days"
    source  = ["fixture"]
    because = "invented"
  }
  care "spot-clean" {
    every   = "2 weeks"
    source  = ["fixture"]
    because = "invented"
  }
  feeding "any" {
    every      = "9 days"
    per_animal = 2
    prey       = "cricket small"
    source     = ["fixture"]
    because    = "invented"
  }
}
