source "P1" {
  cite = "Mahsberg D. 1990, Brood care and family cohesion in the tropical scorpion Pandinus imperator, Acta Zool. Fennica 190:267-272"
  at   = "docslib.org/doc/4763321"
  kind = "paper"
  part = "abstract or first page"
}

source "P2" {
  cite = "Withers P. C. & Smith G. T. 1993, Effect of temperature on the metabolic rate and evaporative water loss of Urodacus armatus, J. therm. Biol. 18:13-18"
  at   = "c.coek.info"
  kind = "paper"
  part = "abstract or first page"
}

source "P4" {
  cite = "Polis & Farley 1979, Natality, growth and maturity of Paruroctonus mesaensis, J. Zool."
  at   = "onlinelibrary.wiley.com/doi/10.1111/j.1469-7998.1979.tb03385.x"
  kind = "paper"
  part = "abstract or first page; the authors' names are from memory"
}

source "P6" {
  cite = "Francke O. F. & Sissom W. D. 1984, Methods to determine the number of molts to maturity in scorpions, J. Arachnol. 12:1-20"
  at   = "scribd.com/document/52701924"
  kind = "paper"
  part = "abstract or first page"
}

source "P7" {
  cite = "Lourenço W. R., Leguin E.-A. & Cloudsley-Thompson J. L. 2010, Life cycle of Opisthacanthus madagascariensis, Entomol. Mitt. Zool. Mus. Hamburg 15(183):173-182"
  at   = "scorpion-files.blogspot.com/2010/12"
  kind = "paper"
  part = "abstract or first page"
}

source "P8" {
  cite = "Lourenço W. R., Leguin E.-A. & Cloudsley-Thompson J. L. 2011, Chiromachus ochropus, Entomol. Mitt. Zool. Mus. Hamburg 15(184):213-222"
  at   = "scorpion-files.blogspot.com/2011/05"
  kind = "paper"
  part = "abstract or first page"
}

source "P9" {
  cite = "Lourenço & Ythier 2017, Palaeocheloctonus septentrionalis, Onychium"
  at   = "onychium.it/Lourenço_Ythier_2017"
  kind = "paper"
  part = "abstract or first page"
}

source "P10" {
  cite = "Quijano-Ravell A. F., Ponce-Saavedra J. & Francke O. F. 2011, Ciclo de vida de Hadrurus gertschi, Rev. Ibérica Aracnol. 19:133-145"
  at   = "scorpion-files.blogspot.com/2011/03"
  kind = "paper"
  part = "abstract or first page"
}

source "P11" {
  cite = "Sarmento S. M. N. et al. 2008, Rhopalurus rochai, J. Arachnol. 36:476-479"
  at   = "zlibrary.cc/dl/notes-on-the-life-history-traits-of-rhopalurus-rochai"
  kind = "paper"
  part = "abstract or first page"
}

source "P15" {
  cite = "Hadley N. F. 1974, Adaptational biology of desert scorpions, J. Arachnol. 2:11-23"
  at   = "docslib.org/doc/2438381"
  kind = "paper"
  part = "abstract or first page"
}

source "P16" {
  cite = "Gefen E., Ung C. & Gibbs A. G. 2009, Partitioning of transpiratory water loss of Hadrurus arizonensis, J. Insect Physiol. 55:544-548"
  at   = "docero.tips"
  kind = "paper"
  part = "abstract or first page"
}

source "P17" {
  cite = "King & Hadley 1979, Water flux and metabolic rates of free-roaming scorpions, Physiol. Zool."
  at   = "scilit.net/publications/99e87e6ab513d319d62305d4a4a942f6"
  kind = "paper"
  part = "abstract or first page; the authors' names are from memory"
}

source "P21" {
  cite = "Nespolo R. F. et al. 2011, Euathlus truculentus, Comp. Biochem. Physiol. A 159:379-382"
  at   = "doi 10.1016/j.cbpa.2011.04.003"
  kind = "paper"
  part = "abstract or first page"
}

source "P23" {
  cite = "Shillington C., meeting abstract on Theraphosa leblondi spiderlings"
  at   = "sicb.org/?p=26517"
  kind = "paper"
  part = "abstract or first page"
}

source "P24" {
  cite = "Philip B. N. & Shillington C. 2010, Phormictopus cancerides, Can. J. Zool. 88:90-98"
  at   = "doi 10.1139/Z09-122"
  kind = "paper"
  part = "abstract or first page"
}

source "P29" {
  cite = "Prendini L. & Loria S. F. 2020, Systematic revision of the Asian forest scorpions, Bull. Am. Mus. Nat. Hist. 442"
  at   = "doi 10.1206/0003-0090.442.1.1"
  kind = "paper"
  part = "an excerpt"
}

source "P30" {
  cite = "Barrales-Alcalá D., Francke O. F. & Prendini L. 2018, Giant vinegaroons, Bull. Am. Mus. Nat. Hist. 418"
  kind = "paper"
  part = "abstract or first page"
}

source "P31" {
  cite = "Weygoldt 1971, Life history of Mastigoproctus giganteus from Florida, J. Zool."
  at   = "doi 10.1111/j.1469-7998.1971.tb01301.x"
  kind = "paper"
  part = "abstract or first page; the authors' names are from memory"
}

source "P32" {
  cite = "Parthenogenesis and development of Charinus guto, with a review of 43 whip spiders"
  at   = "discovery.researcher.life"
  kind = "paper"
  part = "abstract or first page; the authors are not named there"
}

source "P34" {
  cite = "Yee L. P. et al. 2018, on the composition of Blaptica dubia, J. Trop. Resour. Sustain. Sci. 6:88-92"
  kind = "paper"
  part = "abstract or first page"
}

source "P35" {
  cite = "Finke M. D. 2002, on the nutrients of insects, Zoo Biol. 21:269-285"
  at   = "doi 10.1002/zoo.10031"
  kind = "paper"
  part = "abstract or first page"
}

source "P36" {
  cite = "Finke M. D., Table 41.1 in Hand-Rearing Birds, 2nd ed., p. 626"
  at   = "online.flipbuilder.com/ulbm/kgno"
  kind = "paper"
  part = "an excerpt"
}

source "P37" {
  cite = "Nakagaki B. J. & DeFoliart G. R. 1991, on house crickets on laboratory diets, J. Econ. Entomol. 84:891-896"
  at   = "studylib.net/doc/8800129"
  kind = "paper"
  part = "abstract or first page"
}

source "P38" {
  cite = "Clifford, Roe & Woodring 1977, Rearing methods for house crickets"
  at   = "scilit.net/publications/6f378f2ede34351932d38b9e30546f83"
  kind = "paper"
  part = "abstract or first page; the authors' names are from memory"
}

source "P39" {
  cite = "Schlegel M. L., Renjifo A. & Valdes E. V. 2005, on calcium in crickets, 6th Conf. Zoo Wildl. Nutr."
  at   = "nagonline.net/1944"
  kind = "paper"
  part = "abstract or first page"
}

source "P40" {
  cite = "Hunt A. S., Ward A. M. & Ferguson G. 2001, on calcium diets for crickets and mealworms, 4th Conf."
  at   = "nagonline.net/1401"
  kind = "paper"
  part = "abstract or first page"
}

source "P41" {
  cite = "Coslik A. H., Ward A. M. & McClements R. D. 2009, on a calcium diet for crickets, 8th Conf."
  at   = "nagonline.net/2220"
  kind = "paper"
  part = "abstract or first page"
}

source "P42" {
  cite = "Bah-Nelson I. et al. 2021, on gut-loading Gryllus bimaculatus, J. Zool. Bot. Gard. 2:382-387"
  at   = "doi 10.3390/jzbg2030027"
  kind = "paper"
  part = "abstract or first page"
}

source "P43" {
  cite = "Heidari Parsa S. et al. 2023, on Tenebrio molitor and temperature, Arthropods 12:16-26"
  at   = "doaj.org"
  kind = "paper"
  part = "abstract or first page"
}

source "P44" {
  cite = "Viets B. E. et al. 1993, on temperature and sex in Eublepharis macularius, J. Exp. Zool. 265"
  at   = "doi 10.1002/jez.1402650610"
  kind = "paper"
  part = "abstract or first page"
}

source "P45" {
  cite = "Horváthová T. et al., Porcellio scaber and oxygen, ZooKeys"
  at   = "zookeys.pensoft.net/article_preview.php?id=5768"
  kind = "paper"
  part = "abstract or first page"
}

source "P46" {
  cite = "Kloock C. et al. 2010, J. Arachnol. 38:441-445, as reported in Nature 468:734"
  kind = "paper"
  part = "an excerpt"
}

source "P51" {
  cite = "Datasheet on mealworms, citing Hardouin, Hill and Finke"
  kind = "guideline"
  part = "an excerpt"
}

source "P53" {
  cite = "Species conservation profiles of tarantulas listed on CITES"
  at   = "ecosur.mx"
  kind = "paper"
  part = "abstract or first page"
}

source "P74" {
  cite = "Barrales-Alcalá & Francke 2023, on vinegaroons of Mexico, J. Arachnol. 51"
  at   = "doi 10.1636/JoA-S-22-013"
  kind = "paper"
  part = "abstract or first page"
}

source "P75" {
  cite = "Huseynov 2005, natural prey of the jumping spider Menemerus taeniatus, Eur. J. Entomol. 102 (author and journal from memory): prey of 15.2 to 216.7 % of the spider's length, half of it of 50 to 100 %"
  at   = "lindat.mff.cuni.cz"
  kind = "paper"
  part = "abstract"
}

source "G2" {
  cite = "CITES, 9th Conference of the Parties, proposal 63 by Ghana"
  at   = "zlibrary.to/dl/cop9-prop-63"
  kind = "guideline"
  part = "an excerpt"
}

source "G3" {
  cite = "Cooper E. W. T., West R. & Mendoza J. 2019, Identification of CITES-listed tarantulas, Commission for Environmental Cooperation"
  at   = "readkong.com/page/identification-of-cites-listed-tarantulas-3343010"
  kind = "guideline"
  part = "an excerpt"
}

source "G4" {
  cite = "French ministry of the environment, listing of Caribena versicolor in CITES Appendix III, June 2022, as reported"
  at   = "actu-environnement.com, viaatv.tv"
  kind = "guideline"
  part = "an excerpt"
}

source "G5" {
  cite = "France, order of 3 August 2017, and prefect's order of 9 November 1995"
  at   = "la1ere.francetvinfo.fr, consultations-publiques.developpement-durable.gouv.fr"
  kind = "guideline"
  part = "an excerpt"
}

source "G6" {
  cite = "German federal ministry 1997, Minimum requirements for keeping reptiles, 10 January 1997, as quoted"
  at   = "my-gecko-hobbyzucht.jimdo.com"
  kind = "guideline"
  part = "an excerpt"
}

source "G8" {
  cite = "Tierpark Bochum, Kaiserskorpion"
  at   = "tierpark-bochum.de"
  kind = "society"
  part = "an excerpt"
}

source "G9" {
  cite = "Mooney C., San Diego Zoo, Basics of terrestrial invertebrate husbandry"
  at   = "docslib.org/doc/7392072"
  kind = "guideline"
  part = "an excerpt"
}

source "K1" {
  cite = "Care sheet of a scorpion forum"
  at   = "scorpionforum.darkbb.com/t38"
  kind = "keeper"
  part = "an excerpt"
}

source "K2" {
  cite = "Emperor scorpion care"
  at   = "reptiliansource.com/pages/emperor-scorpion-care"
  kind = "keeper"
  part = "an excerpt"
}

source "K3" {
  cite = "Asian forest scorpion care"
  at   = "reptiliansource.com/pages/asian-forest-scorpion-care"
  kind = "keeper"
  part = "an excerpt"
}

source "K4" {
  cite = "Care sheet on the emperor scorpion"
  at   = "scribd.com/document/253855207"
  kind = "keeper"
  part = "an excerpt"
}

source "K5" {
  cite = "Indiviglio F., former Bronx Zoo keeper, emperor scorpion"
  at   = "blogs.thatpetplace.com"
  kind = "society"
  part = "an excerpt"
}

source "K6" {
  cite = "Shop page on the emperor scorpion, German"
  at   = "tropic-shop.de"
  kind = "keeper"
  part = "an excerpt"
}

source "K7" {
  cite = "Kaiserskorpion, German pet encyclopedia"
  at   = "de.pet.wiki"
  kind = "keeper"
  part = "an excerpt"
}

source "K8" {
  cite = "Forum thread 10012 on the emperor scorpion, German"
  at   = "skorpionforum.com/thema/10012"
  kind = "keeper"
  part = "an excerpt"
}

source "K9" {
  cite = "Emperor scorpion care page"
  at   = "wirlys.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K10" {
  cite = "Emperor scorpion care page"
  at   = "petponder.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K11" {
  cite = "Emperor scorpion care page"
  at   = "dgr-cpaai.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K12" {
  cite = "Emperor scorpion page"
  at   = "interestinganimals.net"
  kind = "keeper"
  part = "an excerpt"
}

source "K13" {
  cite = "Nix J., veterinarian, scorpions"
  at   = "exoticpetvet.com"
  kind = "society"
  part = "an excerpt"
}

source "K14" {
  cite = "Asian forest scorpion page"
  at   = "grimoireexotics.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K15" {
  cite = "Asian forest scorpion care sheet"
  at   = "petproducts.org/?p=677"
  kind = "keeper"
  part = "an excerpt"
}

source "K16" {
  cite = "Asian forest scorpion diet"
  at   = "bloubergmedispa.co.za"
  kind = "keeper"
  part = "an excerpt"
}

source "K16b" {
  cite = "Archispirostreptus gigas diet"
  at   = "bloubergmedispa.co.za"
  kind = "keeper"
  part = "an excerpt"
}

source "K17" {
  cite = "Asian forest scorpion page"
  at   = "plesk.page"
  kind = "keeper"
  part = "an excerpt"
}

source "K18" {
  cite = "Hadrurus arizonensis page"
  at   = "lotsalegs.tenczar.net"
  kind = "keeper"
  part = "an excerpt"
}

source "K19" {
  cite = "Hadrurus spadix, encyclopedia article"
  kind = "keeper"
  part = "an excerpt"
}

source "K20" {
  cite = "Titan Scorpions, 17 March 2022"
  at   = "voofla.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K21" {
  cite = "Scorpion pages"
  at   = "reptileszilla.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K22" {
  cite = "Damon diadema page"
  at   = "everlongexotics.wordpress.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K23" {
  cite = "Damon diadema"
  at   = "panarthropoda.com"
  kind = "society"
  part = "an excerpt"
}

source "K24" {
  cite = "Bullington S. W., vinegaroons"
  at   = "users.usachoice.net/~swb"
  kind = "keeper"
  part = "an excerpt"
}

source "K25" {
  cite = "Theraphosa blondi care"
  at   = "minaxtarantulas.com"
  kind = "society"
  part = "an excerpt"
}

source "K26" {
  cite = "Theraphosa breeding notes"
  at   = "hardcorearachnids.com"
  kind = "society"
  part = "an excerpt"
}

source "K27" {
  cite = "Theraphosa care sheet"
  at   = "care-sheet.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K28" {
  cite = "On Theraphosa"
  at   = "blogs.thatpetplace.com"
  kind = "society"
  part = "an excerpt"
}

source "K29" {
  cite = "Caribena versicolor care, revised March 2025"
  at   = "thetarantulacollective.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K30" {
  cite = "Caribena versicolor"
  at   = "arachnohabitat.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K31" {
  cite = "Caribena versicolor"
  at   = "ned.apes.org.uk"
  kind = "keeper"
  part = "an excerpt"
}

source "K33" {
  cite = "Archispirostreptus gigas, German"
  at   = "insektennest.de"
  kind = "keeper"
  part = "an excerpt"
}

source "K34" {
  cite = "Vlora A., millipede care"
  at   = "caeb.eu"
  kind = "society"
  part = "an excerpt"
}

source "K35" {
  cite = "Hierodula membranacea"
  at   = "faunatropica.eu"
  kind = "keeper"
  part = "an excerpt"
}

source "K36" {
  cite = "News 105, p. 41, leopard gecko"
  at   = "aqualog.de"
  kind = "society"
  part = "an excerpt"
}

source "K37" {
  cite = "On moulting, a scorpion forum"
  at   = "scorpionforum.darkbb.com/t1846"
  kind = "keeper"
  part = "an excerpt"
}

source "K39" {
  cite = "Emperor scorpion page"
  at   = "qualitypets.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K40" {
  cite = "Pandinus, encyclopedia article"
  kind = "keeper"
  part = "an excerpt"
}

source "K41" {
  cite = "Kaiserskorpion, encyclopedia article, German"
  kind = "keeper"
  part = "an excerpt"
}

source "K42" {
  cite = "Aquarium docent notes 2013, emperor scorpion"
  kind = "society"
  part = "an excerpt"
}

source "K43" {
  cite = "Emperor scorpion, a broadcaster's animal lexicon, German"
  at   = "kindernetz.de"
  kind = "society"
  part = "an excerpt"
}

source "K44" {
  cite = "Emperor scorpion, German"
  at   = "corts-fanclub.de"
  kind = "keeper"
  part = "an excerpt"
}

source "K45" {
  cite = "Wiki of a scorpion forum, mirror"
  kind = "keeper"
  part = "an excerpt"
}

source "K46" {
  cite = "Emperor scorpion page"
  at   = "autolinq.de"
  kind = "keeper"
  part = "an excerpt"
}

source "K47" {
  cite = "Museum of Life and Science, 18 May 2011, emperor scorpion"
  at   = "lifeandscience.org"
  kind = "society"
  part = "an excerpt"
}

source "K48" {
  cite = "On moulting of emperor scorpions"
  at   = "sciences360.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K49" {
  cite = "On moulting of scorpions"
  at   = "scorpionpictureguide.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K50" {
  cite = "Scorpion moults"
  at   = "biologyinsights.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K51" {
  cite = "Emperor scorpion page"
  at   = "oocities.org/zooary"
  kind = "keeper"
  part = "an excerpt"
}

source "K52" {
  cite = "Scorpions"
  at   = "htfbw.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K55" {
  cite = "On scorpions"
  at   = "artroposfera.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K56" {
  cite = "Emperor scorpion"
  at   = "klimanaturali.org"
  kind = "keeper"
  part = "an excerpt"
}

source "K57" {
  cite = "Pandinoides cavimanus, comb teeth"
  at   = "chrisological.de"
  kind = "keeper"
  part = "an excerpt"
}

source "K58" {
  cite = "On Heterometrus, citing Polis 1990"
  at   = "wildherper.weebly.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K59" {
  cite = "Emperor scorpion"
  at   = "laboratorynotes.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K60" {
  cite = "Anderson D. 2010, emperor scorpion"
  at   = "docslib.org/download/4956893"
  kind = "society"
  part = "an excerpt"
}

source "K61" {
  cite = "Emperor scorpion"
  at   = "scorpionspecies.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K62" {
  cite = "Tarantula care"
  at   = "petmania.ie"
  kind = "keeper"
  part = "an excerpt"
}

source "K63" {
  cite = "Heterometrus, encyclopedia article"
  kind = "keeper"
  part = "an excerpt"
}

source "K64" {
  cite = "Asian forest scorpion pages"
  at   = "bytestreamhub.com, infhom.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K65" {
  cite = "Asian forest scorpion page"
  at   = "ceeuinfo.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K66" {
  cite = "Asian forest scorpion page"
  at   = "journalisticechonews.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K67" {
  cite = "Asian forest scorpion page"
  at   = "infompost.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K68" {
  cite = "Desert hairy scorpion, teaching sheet"
  at   = "schoolhouseteachers.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K69" {
  cite = "Whip spider, a broadcaster's animal lexicon, German"
  at   = "kindernetz.de"
  kind = "society"
  part = "an excerpt"
}

source "K70" {
  cite = "Whip spider story"
  at   = "artsandculture.google.com"
  kind = "society"
  part = "an excerpt"
}

source "K71" {
  cite = "Whip spiders"
  at   = "jonathansjungleroadshow.co.uk"
  kind = "keeper"
  part = "an excerpt"
}

source "K72" {
  cite = "Amblypygi, encyclopedia article"
  kind = "keeper"
  part = "an excerpt"
}

source "K75" {
  cite = "Mastigoproctus giganteus, encyclopedia article"
  kind = "keeper"
  part = "an excerpt"
}

source "K76" {
  cite = "Brachypelma hamorii, encyclopedia article citing Mendoza & Francke 2017"
  kind = "keeper"
  part = "an excerpt"
}

source "K77" {
  cite = "Mexican redknee page"
  at   = "purryvibe.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K78" {
  cite = "Mexican redknee page"
  at   = "animaldescriptions.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K79" {
  cite = "Brachypelma smithi, encyclopedia article, 2010 revision"
  kind = "keeper"
  part = "an excerpt"
}

source "K80" {
  cite = "Mexican redknee care"
  at   = "articleted.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K81" {
  cite = "Report on a zoo enclosure"
  at   = "reptileamphibiangear.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K82" {
  cite = "Tarantula care"
  at   = "xzhbc.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K83" {
  cite = "Moulting questions of a tarantula forum, mirror"
  kind = "keeper"
  part = "an excerpt"
}

source "K84" {
  cite = "Feeding tarantulas after a moult"
  at   = "zooawesome.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K85" {
  cite = "Sexing tarantulas"
  at   = "patchtheworld.co.uk"
  kind = "keeper"
  part = "an excerpt"
}

source "K87" {
  cite = "Brachypelma hamorii, encyclopedia mirror"
  at   = "eymaps.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K88" {
  cite = "Goliath birdeater page"
  at   = "fascinatesanimals.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K89" {
  cite = "Theraphosa page"
  at   = "visualfoodie.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K90" {
  cite = "Zoo de Martinique, Caribena versicolor"
  at   = "zoodemartinique.com"
  kind = "society"
  part = "an excerpt"
}

source "K91" {
  cite = "Antilles pinktoe page"
  at   = "davethebugguy.org"
  kind = "keeper"
  part = "an excerpt"
}

source "K92" {
  cite = "Pinktoe page"
  at   = "visualfoodie.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K93" {
  cite = "On pinktoe spiderlings, 2 August 2019"
  at   = "tomsbigspiders.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K94" {
  cite = "Archispirostreptus gigas, encyclopedia article, German"
  kind = "keeper"
  part = "an excerpt"
}

source "K95" {
  cite = "Beardsley Zoo, giant African millipede"
  at   = "beardsleyzoo.org"
  kind = "society"
  part = "an excerpt"
}

source "K96" {
  cite = "Lithuanian zoo, giant African millipede"
  at   = "zoopark.lt"
  kind = "society"
  part = "an excerpt"
}

source "K97" {
  cite = "Millipede care"
  at   = "redorbit.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K98" {
  cite = "Archispirostreptus gigas, encyclopedia article"
  kind = "keeper"
  part = "an excerpt"
}

source "K99" {
  cite = "Giant African millipede page"
  at   = "bantam.earth"
  kind = "keeper"
  part = "an excerpt"
}

source "K100" {
  cite = "Parco Natura Viva, giant African millipede"
  at   = "parconaturaviva.it"
  kind = "society"
  part = "an excerpt"
}

source "K101" {
  cite = "Giant African millipede, an animal-handling service"
  at   = "zoolabuk.com"
  kind = "society"
  part = "an excerpt"
}

source "K102" {
  cite = "Hierodula membranacea"
  at   = "mantistopia.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K103" {
  cite = "Hierodula membranacea, encyclopedia article, 2020"
  kind = "keeper"
  part = "an excerpt"
}

source "K104" {
  cite = "Hierodula membranacea, older encyclopedia mirror"
  kind = "keeper"
  part = "an excerpt"
}

source "K105" {
  cite = "Hierodula membranacea, older encyclopedia mirror"
  kind = "keeper"
  part = "an excerpt"
}

source "K106" {
  cite = "Hierodula membranacea, older encyclopedia mirror"
  kind = "keeper"
  part = "an excerpt"
}

source "K107" {
  cite = "Leopard gecko page"
  at   = "scalesandfins.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K108" {
  cite = "Leopard gecko page"
  at   = "petpetin.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K109" {
  cite = "Leopard gecko page"
  at   = "petcultivator256.blogspot.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K110" {
  cite = "Leopard gecko page"
  at   = "frenchfilms.org/pets"
  kind = "keeper"
  part = "an excerpt"
}

source "K111" {
  cite = "Leopard gecko care"
  at   = "leopardgeckos.co.za"
  kind = "keeper"
  part = "an excerpt"
}

source "K112" {
  cite = "Leopard gecko page"
  at   = "angelfire.com/dragon/gecko0"
  kind = "keeper"
  part = "an excerpt"
}

source "K113" {
  cite = "Leopard gecko, German breeder"
  at   = "my-gecko-hobbyzucht.jimdo.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K114" {
  cite = "Leopard gecko page"
  at   = "spiegato.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K115" {
  cite = "Leopard gecko, German"
  at   = "reptilien.hooxs.com, s-reptilien.de.tl"
  kind = "keeper"
  part = "an excerpt"
}

source "K116" {
  cite = "Leopard gecko, German"
  at   = "der-leopardgecko.de"
  kind = "keeper"
  part = "an excerpt"
}

source "K117" {
  cite = "Porcellio scaber, encyclopedia article"
  kind = "keeper"
  part = "an excerpt"
}

source "K118" {
  cite = "Woodlice"
  at   = "paulsbackgardensafari.blogspot.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K119" {
  cite = "Woodlice"
  at   = "studymode.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K120" {
  cite = "Woodlice"
  at   = "guwsmedical.info"
  kind = "keeper"
  part = "an excerpt"
}

source "K121" {
  cite = "House crickets"
  at   = "zegaenterprises.com.au"
  kind = "keeper"
  part = "an excerpt"
}

source "K122" {
  cite = "Crickets"
  at   = "biologyinsights.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K123" {
  cite = "Crickets"
  at   = "biologyinsights.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K124" {
  cite = "Mealworms"
  at   = "biologyinsights.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K125" {
  cite = "Dubia roaches"
  at   = "biologyinsights.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K127" {
  cite = "House cricket"
  at   = "bugswithmike.com"
  kind = "keeper"
  part = "an excerpt"
}

source "K128" {
  cite = "How big mealworms get"
  at   = "biologyinsights.com/how-big-do-mealworms-get-typical-size-growth-factors"
  kind = "keeper"
  part = "an excerpt"
}

source "K54" {
  cite = "L. Prendini, American Museum of Natural History, on why scorpions glow"
  at   = "tumblr.com"
  kind = "society"
  part = "an excerpt"
}

source "K129" {
  cite = "What dubia roaches turn into"
  at   = "biologyinsights.com/what-do-dubia-roaches-turn-into"
  kind = "keeper"
  part = "an excerpt"
}

source "K130" {
  cite = "a page on feeding invertebrates that hunt"
  at   = "arachnopets.com"
  kind = "keeper"
  part = "an excerpt"
}

source "P18" {
  cite = "Gefen & Ar 2005, The effect of desiccation on water management, J. Exp. Biol. 208:1887"
  kind = "paper"
  part = "abstract or first page; the authors' names are from memory"
}

source "P19" {
  cite = "Punzo F. 1991, Centruroides hentzi, Comp. Biochem. Physiol. 100A:833-837"
  at   = "c.coek.info"
  kind = "paper"
  part = "abstract or first page"
}

source "N1" {
  cite = "Meet the scorplings"
  at   = "liverpoolmuseums.org.uk"
  kind = "society"
  part = "the first 2,000 characters of the page"
}

source "N2" {
  cite = "Emperor scorpion reproduction page"
  at   = "oocities.org/gyprice2000"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N3" {
  cite = "A zoo keeper, My emperor scorpion has babies, 30 Apr 2013"
  at   = "blogs.thatpetplace.com"
  kind = "society"
  part = "the first 2,000 characters of the page"
}

source "N4" {
  cite = "Emperor scorpion"
  at   = "lowryparkzoo.com"
  kind = "society"
  part = "the first 2,000 characters of the page"
}

source "N5" {
  cite = "Nachwuchs"
  at   = "chrisological.de"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N6" {
  cite = "Scorplings"
  at   = "scorpions.isaac-online.com"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N7" {
  cite = "A brood of Uroctonus, July 2008"
  at   = "myscorpions.blogspot.com/2008/07"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N8" {
  cite = "An emperor brood, March 2007"
  at   = "petshoptails.blogspot.com/2007/03"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N9" {
  cite = "A school vivarium, 1223, 2019"
  at   = "apian.de"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N10" {
  cite = "Broods of Lychas and of Hierodula majuscula, Nov 2011 and Apr 2012"
  at   = "minibeastwildlife.blogspot.com"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N12" {
  cite = "Desert animals, a copy of a press piece"
  at   = "fayllar.org"
  kind = "keeper"
  part = "a copy"
}

source "N13" {
  cite = "Hadrurus, page 65"
  at   = "scorpiones.pl"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N14" {
  cite = "Entwicklung"
  at   = "brachypelma-smithi.de"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N15" {
  cite = "Eggs"
  at   = "tarantulaspider.net"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N16" {
  cite = "Kokon"
  at   = "spiderstars.de"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N17" {
  cite = "A zoo visit, July 2024"
  at   = "thezooreviewer.blogspot.com/2024/07"
  kind = "society"
  part = "the first 2,000 characters of the page"
}

source "N18" {
  cite = "Giant vinegaroon"
  at   = "oaklandzoo.org; the number of eggs also arizonahandbook.com and cachnao.com"
  kind = "society"
  part = "the first 2,000 characters of the page"
}

source "N19" {
  cite = "A study of wild Mastigoproctus, J. Arachnol. 52(3)"
  at   = "doi.org/10.1636/JoA-S-22-044"
  kind = "paper"
  part = "abstract"
}

source "N20" {
  cite = "Brumation of leopard geckos"
  at   = "reptifiles.com"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N21" {
  cite = "Quarantine of leopard geckos"
  at   = "leopardgeckoslondon.com, leopardgeckos.co.za, leopardgeckos101.net"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N22" {
  cite = "Hatchlings, Aug 2010"
  at   = "satriareptilesamphibians.blogspot.com/2010/08"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N23" {
  cite = "Growth and molting of mantises"
  at   = "usmantis.com; biologyinsights.com"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N24" {
  cite = "A keeper on mantises just hatched"
  at   = "blipfoto.com/entry/2645856734026925189"
  kind = "keeper"
  part = "one post"
}

source "N25a" {
  cite = "Molting"
  at   = "minaxtarantulas.com"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N25b" {
  cite = "Premolt"
  at   = "tomsbigspiders.com"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N25c" {
  cite = "Tarantula care"
  at   = "petcaretips.net"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N25d" {
  cite = "Die Haut"
  at   = "pbonline.at/vsp"
  kind = "keeper"
  part = "the first 2,000 characters of the page"
}

source "N26" {
  cite = "Brum & Araujo 2007, the first stages of Porcellio dilatatus, Rev. Bras. Zool."
  kind = "paper"
}

source "N28" {
  cite = "Two studies of where leopard geckos stay, Zoo Biol. 36:273 (2017) and Biol. Open 12(10) bio060114"
  kind = "paper"
  part = "abstracts"
}

source "N29" {
  cite = "Gefen & Ar 2004, J. Exp. Biol. 207:1017"
  kind = "paper"
  part = "abstract"
}

source "N30" {
  cite = "Emperor scorpions"
  at   = "ecotarium.org; thesprucepets.com; jjext.com"
  kind = "society"
  part = "the first 2,000 characters of the page"
}

source "S27b" {
  cite = "An unexpected birth, May 2009"
  at   = "pomoyemu.blogspot.com/2009/05"
  kind = "keeper"
}

source "S32b" {
  cite = "A former zoo keeper, Scorpion articles"
  at   = "blogs.thatpetplace.com"
  kind = "society"
  part = "the first 2,000 characters of the page"
}

source "S36b" {
  cite = "How to go on vacation with your pet tarantula"
  at   = "tarantulaheaven.com"
  kind = "keeper"
}

source "S37b" {
  cite = "How long can you leave a tarantula home alone, reviewed by a veterinarian"
  at   = "petkeen.com"
  kind = "society"
}

source "S58c" {
  cite = "How to tell if a scorpion is pregnant"
  at   = "biologyinsights.com"
  kind = "keeper"
  part = "an excerpt"
}

source "S59c" {
  cite = "How often do scorpions molt"
  at   = "biologyinsights.com"
  kind = "keeper"
  part = "an excerpt"
}

source "memory" {
  cite = "From memory, not seen in a source: verify before use"
  kind = "memory"
}

source "practice" {
  cite = "Common practice among keepers; no source"
  kind = "practice"
}

source "P14" {
  cite = "Ross L. K. 2009, Gestation and litter size in Leiurus quinquestriatus, J. Venom. Anim. Toxins incl. Trop. Dis. 15:347-352"
  at   = "jvat.org.br"
  kind = "paper"
  part = "abstract or first page"
}
