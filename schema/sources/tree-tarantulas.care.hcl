source "A1" {
  cite = "Fuchs et al. 2014, Toxicon 77:73-77, doi 10.1016/j.toxicon.2013.10.032, boris.unibe.ch/47917"
  kind = "paper"
  part = "abstract or first page"
}

source "A2" {
  cite = "Ahmed, Pinkham & Warrell 2009 (QJM [mem]), expmedndm.ox.ac.uk/publications/61060"
  kind = "paper"
  part = "abstract or first page"
}

source "A3" {
  cite = "Hauke & Herzig 2021, Toxicon 192:74-77, doi 10.1016/j.toxicon.2021.01.001 (a; preprint 202012.0145)"
  kind = "paper"
  part = "abstract or first page"
}

source "A4" {
  cite = "Witharana et al. 2018, Sri Lanka J. Med. 27(1), doi 10.4038/sljm.v27i1.82"
  kind = "paper"
  part = "abstract or first page"
}

source "A5" {
  cite = "Dinamithra et al. 2013, Anuradhapura Med. J. 7(1)"
  kind = "paper"
  part = "abstract or first page"
}

source "A17" {
  cite = "Fukushima & Bertani 2017, ZooKeys 659:1-185"
  kind = "paper"
  part = "abstract or first page"
}

source "A18" {
  cite = "Stradling 1994, Biotropica 26:84-97"
  kind = "paper"
  part = "abstract or first page"
}

source "A32" {
  cite = "Fukushima & Bertani 2017, ZooKeys 659:1-185, treatment of Avicularia juruensis, plazi"
  kind = "paper"
  part = "the first part of the page"
}

source "A35" {
  cite = "Bertani 2012, ZooKeys 230:1-94, PMC3494022 treatment and species-id.net"
  kind = "paper"
  part = "the first part of the page"
}

source "A53" {
  cite = "Development and growth of Grammostola vachoni, Zool. Anz. 293:37-45, doi 10.1016/j.jcz.2021.05.005"
  kind = "paper"
  part = "abstract or first page"
}

source "A72" {
  cite = "UniProt P60992 TX1A_HETMC"
  kind = "paper"
  part = "the first part of the page"
}

source "A85" {
  cite = "Hauke & Herzig, 'Love bites', supplement, docslib 7503247"
  kind = "paper"
  part = "the first part of the page"
}

source "A6" {
  cite = "bfn.de, decisions of the 18th CITES conference, butterflies and spiders, 12 Dec 2019"
  kind = "guideline"
  part = "the first part of the page"
}

source "A7" {
  cite = "Reg. (EU) 2019/2117, docslib 5884250 (first recitals)"
  kind = "guideline"
  part = "the first part of the page"
}

source "A9" {
  cite = "CITES Prop. 11.52, p.pdfkul.com"
  kind = "guideline"
  part = "the first part of the page"
}

source "A10" {
  cite = "dcsp.org Asiatische Vogelspinnen"
  kind = "society"
  part = "the first part of the page"
}

source "A11" {
  cite = "fws.gov 2018-16359 and justia 2016-30059"
  kind = "guideline"
  part = "the first part of the page"
}

source "A12" {
  cite = "petition 29 Oct 2010, docslib 3109896"
  kind = "society"
  part = "the first part of the page"
}

source "A19" {
  cite = "UWI Online Guide, A. avicularia, docslib 869336"
  kind = "society"
  part = "the first part of the page"
}

source "A45" {
  cite = "UWI Online Guide, P. cambridgei, docslib 268963"
  kind = "society"
  part = "the first part of the page"
}

source "A31" {
  cite = "thebts.co.uk old articles, A. minatrix (Gabriel)"
  kind = "society"
  part = "the first part of the page"
}

source "A31c" {
  cite = "thebts.co.uk Experiment (Portman 1997)"
  kind = "society"
  part = "the first part of the page"
}

source "A36" {
  cite = "Bustard & Deaville, BTS Journal, arachnophiliac.com/burrow/social"
  kind = "society"
  part = "the first part of the page"
}

source "A48" {
  cite = "vapaguide.info NORAM-SPI-121-165"
  kind = "society"
  part = "the first part of the page"
}

source "A68" {
  cite = "Dye, BTS Journal 27(4) 2012, Polish translation ptaszniki.pl"
  kind = "society"
  part = "the first part of the page"
}

source "A93" {
  cite = "Arachne 10(2) 2005, contents, vdokument.com"
  kind = "society"
  part = "the first part of the page"
}

source "A96" {
  cite = "baboonspiders.de behaviour"
  kind = "society"
  part = "the first part of the page"
}

source "A114" {
  cite = "Ezendam, arachnophiliac.com/burrow/breedingct"
  kind = "society"
  part = "the first part of the page"
}

source "A8" {
  cite = "tarantula.hu Poecilotheria es a CITES II"
  kind = "keeper"
  part = "the first part of the page"
}

source "A13" {
  cite = "reptilia.de 546, Hauke 2023"
  kind = "keeper"
  part = "the first part of the page"
}

source "A14" {
  cite = "ralf-grunewaldt.de meldepflicht"
  kind = "keeper"
  part = "the first part of the page"
}

source "A15" {
  cite = "sites.google.com th-sciencephotography"
  kind = "keeper"
  part = "the first part of the page"
}

source "A16" {
  cite = "haarigeachtbeiner.de"
  kind = "keeper"
  part = "the first part of the page"
}

source "A20" {
  cite = "A. avicularia enc (en, copies)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A21" {
  cite = "domestigoth.wordpress.com 2010"
  kind = "keeper"
  part = "the first part of the page"
}

source "A22" {
  cite = "Rotfussvogelspinne enc, de-academic"
  kind = "keeper"
  part = "the first part of the page"
}

source "A23" {
  cite = "docslib 9406544 arboreal care guide"
  kind = "keeper"
  part = "the first part of the page"
}

source "A24" {
  cite = "aziendaslavazza.it Avicularia"
  kind = "keeper"
  part = "the first part of the page"
}

source "A25" {
  cite = "cjpeter.com bits 7"
  kind = "keeper"
  part = "the first part of the page"
}

source "A26" {
  cite = "hsnime.org humidity pinktoe (weak)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A27" {
  cite = "birdspider.de haltung"
  kind = "keeper"
  part = "the first part of the page"
}

source "A28" {
  cite = "g-spiders.cz P. irminia"
  kind = "keeper"
  part = "the first part of the page"
}

source "A29" {
  cite = "thetarantulavault.com (three pages)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A30" {
  cite = "Overton, oocities pcambridgei"
  kind = "keeper"
  part = "the first part of the page"
}

source "A33" {
  cite = "A. juruensis enc"
  kind = "keeper"
  part = "the first part of the page"
}

source "A34" {
  cite = "Y. diversipes enc (pl)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A37" {
  cite = "Patterson, hardcorearachnids.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "A38" {
  cite = "I. hirsutum enc (pt, EOL)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A39" {
  cite = "thetarantulacollective.com P. irminia"
  kind = "keeper"
  part = "the first part of the page"
}

source "A40" {
  cite = "spiderfarm.co.uk"
  kind = "keeper"
  part = "the first part of the page"
}

source "A41" {
  cite = "thespiderdiaries.co.uk"
  kind = "keeper"
  part = "the first part of the page"
}

source "A42" {
  cite = "keepingexoticpets.com P. irminia"
  kind = "keeper"
  part = "the first part of the page"
}

source "A43" {
  cite = "H. maculata enc"
  kind = "keeper"
  part = "the first part of the page"
}

source "A44" {
  cite = "P. pulcher enc (pl)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A46" {
  cite = "keepingexoticpets.com P. cambridgei"
  kind = "keeper"
  part = "the first part of the page"
}

source "A47" {
  cite = "L. violaceopes enc (de)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A49" {
  cite = "angelfire caribbeancarousel"
  kind = "keeper"
  part = "the first part of the page"
}

source "A50" {
  cite = "arachnoworld.de zyklus"
  kind = "keeper"
  part = "the first part of the page"
}

source "A51" {
  cite = "reptarach.de lebenszyklus"
  kind = "keeper"
  part = "the first part of the page"
}

source "A52" {
  cite = "spiderstars.de kokon"
  kind = "keeper"
  part = "the first part of the page"
}

source "A54" {
  cite = "Tapinauchenius enc"
  kind = "keeper"
  part = "the first part of the page"
}

source "A55" {
  cite = "mygale.arachnide.free.fr"
  kind = "keeper"
  part = "the first part of the page"
}

source "A56" {
  cite = "birdspiders.ch"
  kind = "keeper"
  part = "the first part of the page"
}

source "A57" {
  cite = "keepingexoticpets.com P. regalis"
  kind = "keeper"
  part = "the first part of the page"
}

source "A58" {
  cite = "thepetfaq.com P. regalis"
  kind = "keeper"
  part = "the first part of the page"
}

source "A59" {
  cite = "P. regalis enc (handwiki)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A60" {
  cite = "wzrost.net"
  kind = "keeper"
  part = "the first part of the page"
}

source "A61" {
  cite = "tierdoku Poecilotheria"
  kind = "keeper"
  part = "the first part of the page"
}

source "A62" {
  cite = "herpcenter.com Poecilotheria"
  kind = "keeper"
  part = "the first part of the page"
}

source "A63" {
  cite = "Tigervogelspinne enc"
  kind = "keeper"
  part = "the first part of the page"
}

source "A64" {
  cite = "buzzsharer.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "A65" {
  cite = "theraphosidae.be P. metallica"
  kind = "keeper"
  part = "the first part of the page"
}

source "A66" {
  cite = "P. metallica enc"
  kind = "keeper"
  part = "the first part of the page"
}

source "A67" {
  cite = "info-cafe-wuppertal copy of a care sheet"
  kind = "keeper"
  part = "the first part of the page"
}

source "A69" {
  cite = "Rafn, fugleedderkopper.blogspot 2008"
  kind = "keeper"
  part = "the first part of the page"
}

source "A70" {
  cite = "arent.pl H. maculata"
  kind = "keeper"
  part = "the first part of the page"
}

source "A71" {
  cite = "spideridentifications.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "A73" {
  cite = "petworlds.net (climate only)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A74" {
  cite = "theraphosidae.be S. calceatum"
  kind = "keeper"
  part = "the first part of the page"
}

source "A75" {
  cite = "thepetfaq.com feather leg"
  kind = "keeper"
  part = "the first part of the page"
}

source "A76" {
  cite = "thetarantulacollective.com S. calceatum"
  kind = "keeper"
  part = "the first part of the page"
}

source "A77" {
  cite = "arachnoboards 5832, reprint of Exothermae 1"
  kind = "keeper"
  part = "the first part of the page"
}

source "A78" {
  cite = "grimoireexotics.com S. calceatum"
  kind = "keeper"
  part = "the first part of the page"
}

source "A79" {
  cite = "evolutionreptiles.co.uk"
  kind = "keeper"
  part = "the first part of the page"
}

source "A80" {
  cite = "spidernet.bay.to O. violaceopes"
  kind = "keeper"
  part = "the first part of the page"
}

source "A81" {
  cite = "atshq.org Singapore blue"
  kind = "keeper"
  part = "the first part of the page"
}

source "A82" {
  cite = "O. violaceopes enc (fr)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A83" {
  cite = "ideasand.life"
  kind = "keeper"
  part = "the first part of the page"
}

source "A84" {
  cite = "thetarantulacollective.com C. lividus"
  kind = "keeper"
  part = "the first part of the page"
}

source "A86" {
  cite = "businessonside.com (weak)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A87" {
  cite = "reptileapartment 2010"
  kind = "keeper"
  part = "the first part of the page"
}

source "A88" {
  cite = "bloubergmedispa.co.za cobalt (weak)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A89" {
  cite = "thetechvengeance.com (weak)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A90" {
  cite = "H. lividum enc"
  kind = "keeper"
  part = "the first part of the page"
}

source "A91" {
  cite = "tierdoku C. fimbriatus"
  kind = "keeper"
  part = "the first part of the page"
}

source "A92" {
  cite = "C. fimbriatus enc (de) and a shop copy"
  kind = "keeper"
  part = "the first part of the page"
}

source "A94" {
  cite = "P. murinus enc"
  kind = "keeper"
  part = "the first part of the page"
}

source "A95" {
  cite = "aqualog.de"
  kind = "keeper"
  part = "the first part of the page"
}

source "A97" {
  cite = "arachnohabitat.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "A98" {
  cite = "ncgovote copy of a care sheet"
  kind = "keeper"
  part = "the first part of the page"
}

source "A99" {
  cite = "de.pet.wiki"
  kind = "keeper"
  part = "the first part of the page"
}

source "A100" {
  cite = "iwofr copy of a keeper blog"
  kind = "keeper"
  part = "the first part of the page"
}

source "A101" {
  cite = "theraphosidae.be M. balfouri (and copies)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A102" {
  cite = "Blaue Jemen-Vogelspinne enc"
  kind = "keeper"
  part = "the first part of the page"
}

source "A103" {
  cite = "M. balfouri enc (fr)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A104" {
  cite = "tomsbigspiders.com 31 Oct 2015"
  kind = "keeper"
  part = "the first part of the page"
}

source "A105" {
  cite = "Monocentropus enc"
  kind = "keeper"
  part = "the first part of the page"
}

source "A106" {
  cite = "tomsbigspiders.com communal tag"
  kind = "keeper"
  part = "the first part of the page"
}

source "A107" {
  cite = "spiderfriends.home.blog"
  kind = "keeper"
  part = "the first part of the page"
}

source "A108" {
  cite = "arachnoboards 328144"
  kind = "keeper"
  part = "the first part of the page"
}

source "A109" {
  cite = "spidershop.pl"
  kind = "keeper"
  part = "the first part of the page"
}

source "A110" {
  cite = "excurcoesaereas copy of a care sheet (weak)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A111" {
  cite = "thetarantulacollective.com C. darlingi"
  kind = "keeper"
  part = "the first part of the page"
}

source "A112" {
  cite = "eightleggedbeauties.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "A113" {
  cite = "tomsbigspiders.com 23 Feb 2020"
  kind = "keeper"
  part = "the first part of the page"
}

source "A115" {
  cite = "vogelspinnen-seite.de life_f"
  kind = "keeper"
  part = "the first part of the page"
}

source "A116" {
  cite = "H. gigas enc"
  kind = "keeper"
  part = "the first part of the page"
}

source "A117" {
  cite = "thetarantulacollective.com H. gigas"
  kind = "keeper"
  part = "the first part of the page"
}

source "A118" {
  cite = "Otworth, arachnophiliac hysterocrates_gigas"
  kind = "keeper"
  part = "the first part of the page"
}

source "A119" {
  cite = "nwzoo baboon sheet, docslib 6094485"
  kind = "keeper"
  part = "the first part of the page"
}

source "A120" {
  cite = "a Spanish copy of a keeper's blog (address of no meaning)"
  kind = "keeper"
  part = "the first part of the page"
}

source "A29v" {
  cite = "petandpeople.at, vet magazine"
  kind = "society"
  part = "the first part of the page"
}

source "A39c" {
  cite = "thetarantulacollective.com P. cambridgei"
  kind = "keeper"
  part = "the first part of the page"
}

source "A86b" {
  cite = "mullpet.com"
  kind = "keeper"
  part = "the first part of the page"
}
