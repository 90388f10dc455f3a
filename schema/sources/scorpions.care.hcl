source "C1" {
  cite = "Polis & Farley 1979, natality, growth, maturity of Paruroctonus mesaensis, J. Zool., doi 10.1111/j.1469-7998.1979.tb03385.x"
  kind = "paper"
  part = "abstract or first page"
}

source "C2" {
  cite = "Francke & Jones 1982, Life history of Centruroides gracilis, J. Arachnol. 10:223, scribd 52701211"
  kind = "paper"
  part = "abstract or first page"
}

source "C3" {
  cite = "Francke & Sissom 1984, J. Arachnol. 12:1, scribd 52701924"
  kind = "paper"
  part = "abstract or first page"
}

source "C4" {
  cite = "Ross 2009, J. Venom. Anim. Toxins 15:347"
  kind = "paper"
  part = "abstract or first page"
}

source "C5" {
  cite = "Lowe, Yağmur & Kovařík 2014, Review of Leiurus, Euscorpius 191, doi 10.18590/euscorpius.2014.vol2014.iss191.1"
  kind = "paper"
  part = "abstract or first page"
}

source "C6" {
  cite = "Gefen & Ar 2004, J. Exp. Biol. 207:1017"
  kind = "paper"
  part = "abstract or first page"
}

source "C7" {
  cite = "Gefen & Ar (author names from memory) 2005, J. Exp. Biol. 208:1887"
  kind = "paper"
  part = "abstract or first page"
}

source "C8" {
  cite = "Reproductive potential and strategy of Scorpio maurus fuscus, J. Zool. 1998 (authors not on the excerpt; Warburg & Elias [mem]), cambridge.org D9EF25BD29E50673965DA80EECB5D1EC"
  kind = "paper"
  part = "abstract or first page"
}

source "C9" {
  cite = "Similar burrow architecture of three arid-zone scorpions, readbyqxmd 27312362 (2016, authors not on the excerpt)"
  kind = "paper"
  part = "abstract or first page"
}

source "C10" {
  cite = "Lourenço, Leguin & Cloudsley-Thompson 2010, Opisthacanthus madagascariensis, scorpion-files.blogspot.com/2010/12"
  kind = "paper"
  part = "abstract or first page"
}

source "C11" {
  cite = "Lourenço & Ythier 2017, onychium.it"
  kind = "paper"
  part = "abstract or first page"
}

source "C12" {
  cite = "Outeda-Jorge, Mello & Pinto-da-Rocha 2009, Litter size, Zoologia, doi 10.1590/S1984-46702009000100008"
  kind = "paper"
  part = "abstract or first page"
}

source "C13" {
  cite = "Seiter 2012, Tityus confluens, scorpion-files.blogspot.com/2013/01"
  kind = "paper"
  part = "abstract or first page"
}

source "C14" {
  cite = "Punzo 1991, Centruroides hentzi, CBP 100A:833"
  kind = "paper"
  part = "abstract or first page"
}

source "C15" {
  cite = "Hadley 1974, J. Arachnol. 2:11"
  kind = "paper"
  part = "abstract or first page"
}

source "C16" {
  cite = "Carlson & Rowe 2009, J. Arachnol. 37:321"
  kind = "paper"
  part = "abstract or first page"
}

source "C17" {
  cite = "Scorpion cold hardiness (C. vittatus), scilit.com 0f90b470ccc89460d45950d3cac77ea4 (authors not on the excerpt)"
  kind = "paper"
  part = "abstract or first page"
}

source "C18" {
  cite = "Brown 2004, J. Arachnol. 32:193, doi 10.1636/M02-56"
  kind = "paper"
  part = "abstract or first page"
}

source "C19" {
  cite = "Bergman 1997, Toxicon 35:759"
  kind = "paper"
  part = "abstract or first page"
}

source "C20" {
  cite = "Scorpion sting in Zimbabwe, S. Afr. Med. J., ajol.info 157139 (244 cases, 184 of this species, 17 severe)"
  kind = "paper"
  part = "abstract or first page"
}

source "C21" {
  cite = "Elston 2005, What's eating you? Parabuthus, docslib 10360915"
  kind = "paper"
  part = "abstract or first page"
}

source "C22" {
  cite = "What's eating you? South African fattail revisited, mdedge.com 209338"
  kind = "paper"
  part = "abstract or first page"
}

source "C23" {
  cite = "Müller 1993, 42 serious cases, ajol.info 157942"
  kind = "paper"
  part = "abstract or first page"
}

source "C24" {
  cite = "Müller et al. 2012, CME 30:357"
  kind = "paper"
  part = "abstract or first page"
}

source "C25" {
  cite = "Marks et al. 2019, 740 calls, 19.7 % serious, PMC6399994"
  kind = "paper"
  part = "abstract or first page"
}

source "C26" {
  cite = "Ward, Ellsworth & Nystrom 2018, Toxicon 151:137"
  kind = "paper"
  part = "abstract or first page"
}

source "C27" {
  cite = "Martín-Frías & de Armas 2001, C. gracilis and margaritatus groups, scielo jvat"
  kind = "paper"
  part = "abstract or first page"
}

source "C28" {
  cite = "Sofer, Shahak & Gueron 1994, J. Pediatr. 124:973, scribd 525570842"
  kind = "paper"
  part = "abstract or first page"
}

source "C29" {
  cite = "Lucas & Meier, chapter on scorpions of medical importance, doi 10.1201/9780203719442-17"
  kind = "paper"
  part = "abstract or first page"
}

source "C30" {
  cite = "Kawai et al. 2023, Heterometrus in Thailand, Euscorpius 373, plazi D23287FA"
  kind = "paper"
  part = "the first part of the page"
}

source "C31" {
  cite = "Prendini & Loria 2020, Bull. AMNH 442, plazi 5E6CB374"
  kind = "paper"
  part = "the first part of the page"
}

source "C32" {
  cite = "Rossi 2015, Arachnol. Mitt. 49:47"
  kind = "paper"
  part = "abstract or first page"
}

source "C33" {
  cite = "Quijano-Ravell et al. 2011 (Hadrurus gertschi), scorpion-files.blogspot.com/2011/03"
  kind = "paper"
  part = "abstract or first page"
}

source "C34" {
  cite = "Williams 1987, Scorpion bionomics, Annu. Rev. Entomol. 32:275"
  kind = "paper"
  part = "the first part of the page"
}

source "C35" {
  cite = "Mahsberg 1990, Acta Zool. Fenn. 190:267"
  kind = "paper"
  part = "abstract or first page"
}

source "C36" {
  cite = "Sissom 1980, thesis on C. vittatus, dokumen.tips"
  kind = "paper"
  part = "title page only"
}

source "C40" {
  cite = "UNEP-WCMC 2014, Review of Pandinus dictator from Cameroon, docslib 4792237"
  kind = "society"
  part = "title page only"
}

source "C41" {
  cite = "CITES CoP9 Prop. 63"
  kind = "society"
  part = "the first part of the page"
}

source "C42" {
  cite = "Clinical Toxinology Resources, Centruroides gracilis, toxinology.com SC0050"
  kind = "society"
  part = "the first part of the page"
}

source "C43" {
  cite = "VAPAguide Centruroides, EUROP-SCO-PIT-125"
  kind = "society"
  part = "the first part of the page"
}

source "C44" {
  cite = "VAPAguide Parabuthus, EUROP-SCO-PIT-128"
  kind = "society"
  part = "the first part of the page"
}

source "C45" {
  cite = "Scorpion Files (NTNU) medical list p (only the beginning, Androctonus, was visible)"
  kind = "society"
  part = "the first part of the page"
}

source "C46" {
  cite = "Field Guide to Venomous and Medically Important Invertebrates, yumpu 8195650 p. 27"
  kind = "society"
  part = "the first part of the page"
}

source "C47" {
  cite = "Biodiversity Explorer (Iziko), scorpions"
  kind = "society"
  part = "the first part of the page"
}

source "C48" {
  cite = "Queensland museum text, scribd 73240387"
  kind = "society"
  part = "the first part of the page"
}

source "C49" {
  cite = "Animal Diversity Web, Smeringurus mesaensis"
  kind = "society"
  part = "the first part of the page"
}

source "C50" {
  cite = "ARKive copy, sarkive.com Pandinus dictator"
  kind = "society"
  part = "the first part of the page"
}

source "C51" {
  cite = "Battersea Park Zoo, Vietnam giant forest scorpion"
  kind = "society"
  part = "the first part of the page"
}

source "C52" {
  cite = "F. Indiviglio (ex Bronx Zoo), blogs.thatpetplace.com scorpion articles p. 3"
  kind = "society"
  part = "the first part of the page"
}

source "C53" {
  cite = "South African protected list 2007 as quoted at reptilepets.co.za/rp072402"
  kind = "society"
  part = "the first part of the page"
}

source "C54" {
  cite = "Harrison's Manual, scorpion stings"
  kind = "society"
  part = "the first part of the page"
}

source "C55" {
  cite = "openspace.org scorpions"
  kind = "society"
  part = "the first part of the page"
}

source "C56" {
  cite = "vaejovidae.com Smeringurus mesaensis"
  kind = "society"
  part = "the first part of the page"
}

source "C60" {
  cite = "backwaterreptilesblog dictator"
  kind = "keeper"
  part = "the first part of the page"
}

source "C61" {
  cite = "thepetfaq.com dictator"
  kind = "keeper"
  part = "the first part of the page"
}

source "C62" {
  cite = "chrisological.de p-cavimanus"
  kind = "keeper"
  part = "the first part of the page"
}

source "C63" {
  cite = "aquariumbreeder.com red-clawed"
  kind = "keeper"
  part = "the first part of the page"
}

source "C64" {
  cite = "petmag.com.br ?p=7919"
  kind = "keeper"
  part = "the first part of the page"
}

source "C65" {
  cite = "terrawelten-vorhalle.blogspot 2017/02"
  kind = "keeper"
  part = "the first part of the page"
}

source "C66" {
  cite = "the same 2016/08"
  kind = "keeper"
  part = "the first part of the page"
}

source "C67" {
  cite = "desert-scorpions.com (weak)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C68" {
  cite = "wikizero Heterometrus (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C69" {
  cite = "grokipedia H. laoticus (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C70" {
  cite = "siam.wiki giant scorpion (enc, Thai)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C71" {
  cite = "koelneraquarienverein.de Hadogenes"
  kind = "keeper"
  part = "the first part of the page"
}

source "C72" {
  cite = "animali-velenosi.it Hadogenes"
  kind = "keeper"
  part = "the first part of the page"
}

source "C73" {
  cite = "the same, Opistophthalmus"
  kind = "keeper"
  part = "the first part of the page"
}

source "C74" {
  cite = "profilpelajar Hadogenes troglodytes (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C75" {
  cite = "de.zxc.wiki Hadogenes bicolor (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C76" {
  cite = "dewetswild.com tree creeper"
  kind = "keeper"
  part = "the first part of the page"
}

source "C77" {
  cite = "thegotoguy.co.za"
  kind = "keeper"
  part = "the first part of the page"
}

source "C78" {
  cite = "jospijkers.wixsite.com O. rugiceps"
  kind = "keeper"
  part = "the first part of the page"
}

source "C79" {
  cite = "Opistophthalmus (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C80" {
  cite = "skorpionforum.com 219 O. wahlbergii"
  kind = "keeper"
  part = "the first part of the page"
}

source "C81" {
  cite = "O. pugnax (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C82" {
  cite = "skorpionforum.com 625 Scorpio maurus"
  kind = "keeper"
  part = "the first part of the page"
}

source "C83" {
  cite = "vogelspinnenforum.nl 4372"
  kind = "keeper"
  part = "the first part of the page"
}

source "C84" {
  cite = "euscorpiuseco.altervista.org Scorpio"
  kind = "keeper"
  part = "the first part of the page"
}

source "C85" {
  cite = "Scorpio maurus (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C86" {
  cite = "Hadrurus spadix (enc; = K19)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C87" {
  cite = "lotsalegs.tenczar.net (= K18)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C88" {
  cite = "skorpionforum.com 203"
  kind = "keeper"
  part = "the first part of the page"
}

source "C89" {
  cite = "tropic-shop.de Hadrurus"
  kind = "keeper"
  part = "the first part of the page"
}

source "C90" {
  cite = "jeremyscholz1.wixsite.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "C91" {
  cite = "Titan Scorpions 2022 (= K20)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C92" {
  cite = "de.zxc.wiki Haariger Wüstenskorpion (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C93" {
  cite = "myco-emporium.com dune scorpion"
  kind = "keeper"
  part = "the first part of the page"
}

source "C94" {
  cite = "reptilienkosmos.de Dünen-Skorpion"
  kind = "keeper"
  part = "the first part of the page"
}

source "C95" {
  cite = "geoscorps.co.uk S. mesaensis"
  kind = "keeper"
  part = "the first part of the page"
}

source "C96" {
  cite = "striped bark scorpion (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C97" {
  cite = "biologyinsights.com babies at once"
  kind = "keeper"
  part = "the first part of the page"
}

source "C98" {
  cite = "enviroliteracy.org cold"
  kind = "keeper"
  part = "the first part of the page"
}

source "C99" {
  cite = "htfbw.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "C100" {
  cite = "Centruroides gracilis (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C101" {
  cite = "gnusocial.jp note"
  kind = "keeper"
  part = "the first part of the page"
}

source "C102" {
  cite = "lllreptile.com bark scorpions"
  kind = "keeper"
  part = "the first part of the page"
}

source "C103" {
  cite = "piglix Arizona bark (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C104" {
  cite = "kiddle Arizona bark (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C105" {
  cite = "petproducts.org sculpturatus"
  kind = "keeper"
  part = "the first part of the page"
}

source "C106" {
  cite = "panarthropoda.de Babycurus jacksoni"
  kind = "keeper"
  part = "the first part of the page"
}

source "C107" {
  cite = "Cozijn 2006, scribd 103323877"
  kind = "keeper"
  part = "the first part of the page"
}

source "C108" {
  cite = "nimo.fr Babycurus"
  kind = "keeper"
  part = "the first part of the page"
}

source "C109" {
  cite = "skorpiony.refy.pl"
  kind = "keeper"
  part = "the first part of the page"
}

source "C110" {
  cite = "thedailylink.com Spiral Burrow waigiensis (quotes Lourenço & Cuellar 1995)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C111" {
  cite = "animalscene.mb.com.ph Liocheles"
  kind = "keeper"
  part = "the first part of the page"
}

source "C112" {
  cite = "L. australasiae (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C113" {
  cite = "scorpionforum.darkbb.com t39 Uroctonus"
  kind = "keeper"
  part = "the first part of the page"
}

source "C114" {
  cite = "venomlist.com SOTM Uroctonus"
  kind = "keeper"
  part = "the first part of the page"
}

source "C115" {
  cite = "myscorpions.blogspot 2008/07 (= N7)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C116" {
  cite = "scorpionforum.darkbb.com t3618"
  kind = "keeper"
  part = "the first part of the page"
}

source "C117" {
  cite = "trantor.is, Bugs & Slugs guide, mordant scorpion"
  kind = "keeper"
  part = "the first part of the page"
}

source "C118" {
  cite = "wikimili Uroctonus (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C119" {
  cite = "frwiki Androctonus australis (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C120" {
  cite = "kurtorth.de androctonus_australis"
  kind = "keeper"
  part = "the first part of the page"
}

source "C121" {
  cite = "nimbin-reptiles.ag.vu"
  kind = "keeper"
  part = "the first part of the page"
}

source "C122" {
  cite = "herz-fuer-tiere.de"
  kind = "keeper"
  part = "the first part of the page"
}

source "C123" {
  cite = "scorpuspark.e-monsite.com A. mauritanicus"
  kind = "keeper"
  part = "the first part of the page"
}

source "C124" {
  cite = "lllreptile.com fat tail"
  kind = "keeper"
  part = "the first part of the page"
}

source "C125" {
  cite = "terrarium.com.pl Androctonus"
  kind = "keeper"
  part = "the first part of the page"
}

source "C126" {
  cite = "dinosoria.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "C127" {
  cite = "sapere.it"
  kind = "keeper"
  part = "the first part of the page"
}

source "C128" {
  cite = "adisterrarienwelt.simdif.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "C129" {
  cite = "skorpionforum.com 767"
  kind = "keeper"
  part = "the first part of the page"
}

source "C130" {
  cite = "reptarach.de choice_art id 10 (page headed with a wrong name, text is P. transvaalicus)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C131" {
  cite = "grimoireexotics.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "C132" {
  cite = "africawild-forum.com t 3944"
  kind = "keeper"
  part = "the first part of the page"
}

source "C133" {
  cite = "kurtorth.de Parabuthus_vilossus"
  kind = "keeper"
  part = "the first part of the page"
}

source "C134" {
  cite = "krabbelzimmer.de.tl"
  kind = "keeper"
  part = "the first part of the page"
}

source "C135" {
  cite = "facty.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "C136" {
  cite = "panarthropoda.de hottentottacaboverdensis"
  kind = "keeper"
  part = "the first part of the page"
}

source "C137" {
  cite = "reptilien-verkauf.xobor.de t95"
  kind = "keeper"
  part = "the first part of the page"
}

source "C138" {
  cite = "arachnoboards.com 351311 (quotes C26)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C138b" {
  cite = "ilovetranslation.com extract citing Chippaux & Goyffon 2008 (genera list)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C139" {
  cite = "scorpius.forum-actif.net t100"
  kind = "keeper"
  part = "the first part of the page"
}

source "C140" {
  cite = "team-tarantula.de/gesetze"
  kind = "keeper"
  part = "the first part of the page"
}

source "C141" {
  cite = "aqualog.de 'Wer hat Angst' (Hesse)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C142" {
  cite = "istorya.net 429946 (Ross)"
  kind = "keeper"
  part = "the first part of the page"
}

source "C143" {
  cite = "skorpionforum.com 2021 B. gigas"
  kind = "keeper"
  part = "the first part of the page"
}
