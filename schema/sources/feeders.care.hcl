source "F1" {
  cite = "Finke M. D. 2013, Complete nutrient content of four species of feeder insects, Zoo Biol. 32(1)"
  at   = "eznc.org"
  kind = "paper"
  part = "abstract"
}

source "F2" {
  cite = "Oonincx D. G. A. B. & Dierenfeld E. S. 2012, An investigation into the chemical composition of alternative invertebrate prey, Zoo Biol."
  at   = "doi 10.1002/zoo.20382"
  kind = "paper"
  part = "abstract"
}

source "F3" {
  cite = "Effects of diet on the chemical composition of migratory locusts (Locusta migratoria), by Oonincx & van der Poel as remembered"
  at   = "discovery.researcher.life"
  kind = "paper"
  part = "abstract; the authors' names are from memory"
}

source "F4" {
  cite = "Tables 71-5 and 71-6 in Small Animal Clinical Nutrition, 5th ed., p. 1242"
  at   = "online.flipbuilder.com/ulbm/wiqr"
  kind = "paper"
  part = "an excerpt"
}

source "F5" {
  cite = "Soetemans L., Gianotten N. & Bastiaens L. 2020, Agri-food side-stream inclusion in the diet of Alphitobius diaperinus, part 2, Insects 11:190"
  at   = "mdpi.com/2075-4450/11/3/190"
  kind = "paper"
  part = "abstract"
}

source "F6" {
  cite = "Gryllodes sigillatus"
  at   = "insekten-sachsen.de"
  kind = "society"
  part = "an excerpt"
}

source "F7" {
  cite = "Steppengrille"
  at   = "biologie-seite.de/Biologie/Steppengrille"
  kind = "keeper"
  part = "an excerpt"
}

source "F8" {
  cite = "Goldfliege"
  at   = "biologie-seite.de/Biologie/Goldfliege"
  kind = "keeper"
  part = "an excerpt"
}

source "F9" {
  cite = "How many grams a cricket weighs"
  at   = "biologyinsights.com/how-many-grams-does-a-cricket-weigh"
  kind = "keeper"
  part = "an excerpt"
}

source "F10" {
  cite = "Standard protocols for breeding and measuring Gryllus bimaculatus in the laboratory"
  at   = "discovery.researcher.life"
  kind = "paper"
  part = "abstract; the authors were not seen"
}

source "F11" {
  cite = "Fombong F. T. et al. 2021, Affordable processing of edible orthopterans, Foods 10:144"
  at   = "doi 10.3390/foods10010144"
  kind = "paper"
  part = "abstract"
}

source "F12" {
  cite = "Mackean D. G., Locust life cycle"
  at   = "coursehero.com/file/6583397"
  kind = "keeper"
  part = "an excerpt"
}

source "F13" {
  cite = "Locust care sheet"
  at   = "petproducts.org/locust-care-sheet"
  kind = "keeper"
  part = "an excerpt"
}

source "F14" {
  cite = "Effect of temperature on development, food consumption and body weight of Schistocerca gregaria, Turk. J. Zool."
  at   = "journals.tubitak.gov.tr/zoology/abstract.htm?id=5383"
  kind = "paper"
  part = "abstract"
}

source "F15" {
  cite = "What dubia roaches turn into"
  at   = "enviroliteracy.org/animals/what-do-dubia-roaches-turn-into"
  kind = "keeper"
  part = "an excerpt"
}

source "F16" {
  cite = "Turkestan cockroaches"
  at   = "ipconetwork.org"
  kind = "keeper"
  part = "an excerpt"
}

source "F17" {
  cite = "Turkestan cockroach"
  at   = "alchetron.com/Turkestan-cockroach"
  kind = "keeper"
  part = "an excerpt"
}

source "F18" {
  cite = "Cinereous cockroach"
  at   = "veseris.com"
  kind = "keeper"
  part = "an excerpt"
}

source "F19" {
  cite = "Lincoln Park Zoo, Madagascar hissing cockroach"
  at   = "lpzoo.org/animal/madagascar-hissing-cockroach"
  kind = "society"
  part = "an excerpt"
}

source "F20" {
  cite = "Forest Park Zoo, Madagascar hissing cockroaches"
  at   = "forestparkzoo.org"
  kind = "society"
  part = "an excerpt"
}

source "F21" {
  cite = "What a superworm turns into"
  at   = "biologyinsights.com"
  kind = "keeper"
  part = "an excerpt"
}

source "F22" {
  cite = "Superworm fact sheet, 1.5 to 2.25 inches"
  at   = "docslib.org/doc/2749045"
  kind = "keeper"
  part = "an excerpt"
}

source "F23" {
  cite = "Lesser mealworm"
  at   = "bugswithmike.com"
  kind = "keeper"
  part = "an excerpt"
}

source "F24" {
  cite = "Callosobruchus maculatus, description"
  at   = "liquisearch.com"
  kind = "keeper"
  part = "an excerpt"
}

source "F25" {
  cite = "Beck C. W. & Blumer L. S., from A handbook on bean beetles"
  at   = "carolina.com"
  kind = "society"
  part = "an excerpt"
}

source "F26" {
  cite = "Greater wax moth, insect rearing, University of Illinois"
  at   = "life.illinois.edu/ib/109"
  kind = "guideline"
  part = "an excerpt"
}

source "F27" {
  cite = "Marwaha L., Morphometric characteristics of the wax moth, in The Wax Moth: A Problem or a Solution?"
  at   = "doi 10.2174/9789815123821123010004"
  kind = "paper"
  part = "abstract"
}

source "F28" {
  cite = "What a silkworm looks like at each stage"
  at   = "biologyinsights.com"
  kind = "keeper"
  part = "an excerpt"
}

source "F29" {
  cite = "Silkworms, citing Rennie and Westwood"
  at   = "wildfibres.co.uk"
  kind = "keeper"
  part = "an excerpt"
}

source "F30" {
  cite = "Life table of Bombyx mori, SOCOLEN 10067"
  kind = "paper"
  part = "abstract, as read for the facts on the house"
}

source "F31" {
  cite = "Caruthers B. J. 2005, Hornworms!, Chameleons! Online E-Zine"
  at   = "chameleonnews.com/05DecCaruthers.html"
  kind = "keeper"
  part = "an excerpt"
}

source "F32" {
  cite = "What butterworms turn into"
  at   = "biologyinsights.com"
  kind = "keeper"
  part = "an excerpt of two pages"
}

source "F33" {
  cite = "How much a fruit fly weighs"
  at   = "biologyinsights.com/how-much-does-a-fruit-fly-weigh"
  kind = "keeper"
  part = "an excerpt"
}

source "F34" {
  cite = "How big fruit flies get"
  at   = "biologyinsights.com/how-big-do-fruit-flies-get-and-how-to-spot-lookalikes"
  kind = "keeper"
  part = "an excerpt"
}

source "F35" {
  cite = "Musca domestica"
  at   = "present5.com"
  kind = "keeper"
  part = "an excerpt"
}

source "F36" {
  cite = "Stubenfliegen"
  at   = "zwerggeckos.com/futterzuchten"
  kind = "keeper"
  part = "an excerpt"
}

source "F37" {
  cite = "Calliphora vicina, bluebottle"
  at   = "terrain.net.nz"
  kind = "keeper"
  part = "an excerpt"
}

source "F38" {
  cite = "Calliphora latifrons"
  at   = "piglix.com"
  kind = "keeper"
  part = "an excerpt"
}

source "F39" {
  cite = "Chia S. Y. et al. 2018, PLoS ONE 0206097, and the datasheet on Hermetia illucens"
  at   = "feedipedia.org/node/16388"
  kind = "guideline"
  part = "as read for the facts on the house"
}

source "F40" {
  cite = "Hopkin S., Folsomia candida"
  at   = "collembole.free.fr"
  kind = "society"
  part = "an excerpt"
}

source "F41" {
  cite = "Hopkin S. 2005 on Folsomia candida, Annu. Rev. Entomol. 50:201-222, quoted"
  at   = "frogforum.net/showthread.php/22442"
  kind = "society"
  part = "a quotation"
}

source "F42" {
  cite = "Dendrobaena hortensis"
  at   = "en.wikipedia.org/wiki/Dendrobaena_hortensis"
  kind = "keeper"
  part = "an excerpt"
}

source "F43" {
  cite = "How big nightcrawlers get"
  at   = "biologyinsights.com"
  kind = "keeper"
  part = "an excerpt"
}

source "F44" {
  cite = "Madagascar hissing cockroaches, description and biology"
  at   = "mycockroaches.com"
  kind = "keeper"
  part = "an excerpt"
}

source "F45" {
  cite = "Development of Gryllus bimaculatus by temperature, PLoS ONE 2024, 0300438"
  at   = "doi 10.1371/journal.pone.0300438"
  kind = "paper"
  part = "abstract"
}

source "F46" {
  cite = "Development of Gryllus bimaculatus and Acheta domesticus by temperature, East African Journal of Agriculture and Biotechnology 834"
  kind = "paper"
  part = "abstract"
}

source "F47" {
  cite = "Mitchaothai J. 2024, on the hatching of two crickets"
  kind = "paper"
  part = "abstract"
}

source "F48" {
  cite = "Growth and feed of Acheta domesticus, Journal of Insects as Food and Feed 2017.0062"
  at   = "doi 10.3920/JIFF2017.0062"
  kind = "paper"
  part = "abstract"
}

source "F49" {
  cite = "Hunter-Jones P. 1970, on the eggs of the desert locust, Bulletin of Entomological Research"
  kind = "paper"
  part = "abstract"
}

source "F50" {
  cite = "Growth of the desert locust in two temperatures, Turkish Journal of Zoology 5383"
  kind = "paper"
  part = "abstract"
}

source "F51" {
  cite = "Development of Tenebrio molitor by temperature, Arthropods 12:16-26"
  kind = "paper"
  part = "abstract"
}

source "F52" {
  cite = "Tenebrio molitor and temperature, Journal of Economic Entomology toae298"
  at   = "doi 10.1093/jee/toae298"
  kind = "paper"
  part = "abstract"
}

source "F53" {
  cite = "Rearing of Zophobas"
  at   = "oak.go.kr 16119"
  kind = "guideline"
  part = "abstract"
}

source "F54" {
  cite = "Superworms"
  at   = "breedinginsects.com"
  kind = "keeper"
  part = "an excerpt"
}

source "F55" {
  cite = "Greater wax moth, ib109"
  at   = "life.illinois.edu"
  kind = "guideline"
  part = "an excerpt"
}

source "F56" {
  cite = "Galleria mellonella and temperature, abpv 47:215"
  kind = "paper"
  part = "abstract"
}

source "F57" {
  cite = "Text of a fly stock centre on keeping Drosophila"
  at   = "progen.ebiomall"
  kind = "guideline"
  part = "an excerpt"
}

source "F58" {
  cite = "Kim T. & Rust M. K. 2013, Life history of the Turkestan cockroach"
  kind = "paper"
  part = "abstract"
}

source "F59" {
  cite = "Porcellio scaber and temperature, ZooKeys 5768"
  kind = "paper"
  part = "abstract"
}

source "F60" {
  cite = "Viljoen S. A. 1991 and Fayolle L. 1997, on Dendrobaena veneta"
  kind = "paper"
  part = "abstract"
}
