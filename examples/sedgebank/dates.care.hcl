# What the house has to see to. What the law asks for is looked up elsewhere.
deadline "licence" {
  title  = "Licence of the house"
  kind   = "licence"
  by     = "2028-02-28"
  keeper = "lead"
}

deadline "insurance" {
  kind   = "insurance"
  by     = "2027-03-31"
  keeper = "lead"
}

deadline "vet" {
  title  = "Contract with the practice on the green"
  kind   = "vet-contract"
  by     = "2027-06-30"
  keeper = "lead"
}

deadline "inventory" {
  kind = "inventory"
  by   = "2027-04-01"
}

deadline "rcd" {
  title  = "RCD of the main room"
  kind   = "rcd-test"
  last   = "2026-09-05"
  keeper = "lead"
}

deadline "thermostats" {
  kind   = "thermostat-test"
  last   = "2026-10-24"
  keeper = "second"
}

deadline "smoke-alarms" {
  kind   = "smoke-alarm-test"
  last   = "2026-11-07"
  keeper = "second"
}

deadline "extinguisher" {
  title = "Extinguisher by the door"
  kind  = "extinguisher-service"
  last  = "2026-05-18"
}

deadline "drill" {
  title = "Power cut, tried out"
  kind  = "drill"
  by    = "2027-04-01"
}
