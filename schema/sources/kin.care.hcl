source "OP1" {
  cite = "Rayor & Taylor 2006, Social behavior in amblypygids, J. Arachnol. 34:399-421 (zlibrary.cc)"
  kind = "paper"
  part = "abstract or first page"
}

source "OP2" {
  cite = "Shear 1970, Stridulation in Acanthophrynus coronatus, Psyche 77:181-183 (psyche.entclub.org/77/77-181.html)"
  kind = "paper"
  part = "abstract or first page"
}

source "OP4" {
  cite = "thesis on Typopeltis crucifer, Nat. Chung Hsing Univ., ir.lib.nchu.edu.tw/handle/11455/20248 (author not on the excerpt; Chinese abstract)"
  kind = "paper"
  part = "abstract or first page"
}

source "OP5" {
  cite = "Hruskova-Martisova, Pekar & Gromov 2008, Biology of Galeodes caspius subfuscus, J. Arachnol. 35:546-550"
  kind = "paper"
  part = "abstract or first page"
}

source "OP6" {
  cite = "Belozerov 2013, Seasonal aspects of the life cycle of solifuges, Entomol. Rev. 93:1050-1072"
  kind = "paper"
  part = "abstract or first page"
}

source "OP7" {
  cite = "Fung, Lam & Wong, Centipede bite victims, two Hong Kong emergency departments, 2006-2010 (docslib 5390006; journal not on the excerpt)"
  kind = "paper"
  part = "abstract or first page"
}

source "OP8" {
  cite = "Fenderson 2014, Centipede envenomation: Hawai'i, Hawai'i J. Med. Public Health 73(11 S2):41-43, PMC4244901"
  kind = "paper"
  part = "abstract or first page"
}

source "OP9" {
  cite = "Haddad et al. 2022, Centipede envenomation: case report (scielo, rsbmt)"
  kind = "paper"
  part = "abstract or first page"
}

source "OP10" {
  cite = "Centipede envenomation, five episodes, Wilderness Environ. Med., S1080-6032(01)70700-4 (authors not on the excerpt)"
  kind = "paper"
  part = "abstract or first page"
}

source "OP11" {
  cite = "Greyvenstein, du Plessis & Van den Berg 2022, Sphodromantis gastrica, Afr. Entomol. 30, doi 10.17159/2254-8854/2022/a13967 (+ researcher.life version with instars)"
  kind = "paper"
  part = "abstract or first page"
}

source "OP12" {
  cite = "Schneider & Elgar 2010, Facultative sex ... Extatosoma tiaratum, Aust. J. Zool. 58:228-233"
  kind = "paper"
  part = "abstract or first page"
}

source "OP13" {
  cite = "Castaneda, Lardies & Bozinovic 2005, chill coma Porcellio laevis, J. Insect Physiol. 51:1346-1351"
  kind = "paper"
  part = "abstract or first page"
}

source "OP14" {
  cite = "Female terrestrial isopods, Porcellio laevis ..., J. Kansas Entomol. Soc. 77:285-287, 2004"
  kind = "paper"
  part = "abstract or first page"
}

source "OP15" {
  cite = "Waller & Verdi 2016, Int. J. Biol. 8(4)"
  kind = "paper"
  part = "abstract or first page"
}

source "OP16" {
  cite = "Smigel & Gibbs 2008, Conglobation, J. Insect Sci. 8:44"
  kind = "paper"
  part = "abstract or first page"
}

source "OP17" {
  cite = "Population study of Coleonyx variegatus 1965-66 (researcher.life; = Parker 1972 by the text of OS25; title mem: Am. Midl. Nat. 88)"
  kind = "paper"
  part = "abstract or first page"
}

source "OP18" {
  cite = "Oonincx et al. 2020, leopard gecko UVb, Comp. Biochem. Physiol. B 250:110506"
  kind = "paper"
  part = "abstract or first page"
}

source "OP20" {
  cite = "Angilletta, Montgomery & Werner 1999, Temperature preference in geckos, Herpetologica 55:212-222"
  kind = "paper"
  part = "abstract or first page"
}

source "OP21" {
  cite = "Vitt & Caffrey, Diel activity in Coleonyx variegatus (sciencebase)"
  kind = "paper"
  part = "abstract or first page"
}

source "OP23" {
  cite = "Zecchini & Montesanto 2019, A. granulatum mancas, Invertebr. Reprod. Dev. 63:30-39"
  kind = "paper"
  part = "abstract or first page"
}

source "OP24" {
  cite = "Cold adaptation of Porcellio scaber to subnivean environments (researcher.life)"
  kind = "paper"
  part = "abstract or first page"
}

source "OP25" {
  cite = "moulds on hissing roaches, Mycoses 57(3) 2014, told at blogs.thatpetplace.com 2014/04/04"
  kind = "paper"
  part = "abstract or first page"
}

source "OP26" {
  cite = "Gard 1973, P. scaber, Hopkins student paper"
  kind = "paper"
  part = "abstract or first page"
}

source "OP27" {
  cite = "Antol & Czarnoleski, Size dependence of offspring in isopods, id 23677 at zookeys.pensoft.net"
  kind = "paper"
  part = "abstract or first page"
}

source "OP28" {
  cite = "Broly, Deneubourg & Devigne 2013, Benefits of aggregation in woodlice, Insectes Soc. 60:419-435 [P]. (Seen, not used for a figure: Baines et al. 2016 UV-Tool, J. Zoo Aquar. Res.; P32, P45, N26 are older codes.)"
  kind = "paper"
  part = "abstract or first page"
}

source "OS1" {
  cite = "solifugae.org/physiology (Klann)"
  kind = "society"
  part = "the first part of the page"
}

source "OS2" {
  cite = "solifugae.org/life_history (Wharton & Reddick)"
  kind = "society"
  part = "the first part of the page"
}

source "OS3" {
  cite = "solifugae.org/growth (Brookhart)"
  kind = "society"
  part = "the first part of the page"
}

source "OS4" {
  cite = "Koelner Aquarienverein, Haelterungsversuch Geisselskorpion"
  kind = "society"
  part = "the first part of the page"
}

source "OS5" {
  cite = "Steinhart Aquarium animal notes p. 81 (yumpu 7509800)"
  kind = "society"
  part = "the first part of the page"
}

source "OS6" {
  cite = "El Paso Zoo desert centipede (studylib 8877614)"
  kind = "society"
  part = "the first part of the page"
}

source "OS7" {
  cite = "Victoria Bug Zoo centipede eggs"
  kind = "society"
  part = "the first part of the page"
}

source "OS8" {
  cite = "papiliorama.ch kongo-rosenkaefer"
  kind = "society"
  part = "the first part of the page"
}

source "OS9" {
  cite = "brandywinezoo.org hissing cockroach"
  kind = "society"
  part = "the first part of the page"
}

source "OS10" {
  cite = "forestparkzoo.org"
  kind = "society"
  part = "the first part of the page"
}

source "OS11" {
  cite = "Mulder & Shufran, Oklahoma extension L-278 (copies vdocuments.us, brummettbutheen)"
  kind = "society"
  part = "the first part of the page"
}

source "OS12" {
  cite = "zoodeguadeloupe.com"
  kind = "society"
  part = "the first part of the page"
}

source "OS13" {
  cite = "inpn.mnhn.fr 440144"
  kind = "society"
  part = "the first part of the page"
}

source "OS14" {
  cite = "la1ere.francetvinfo.fr 770741"
  kind = "society"
  part = "the first part of the page"
}

source "OS15" {
  cite = "ville-gourbeyre.fr"
  kind = "society"
  part = "the first part of the page"
}

source "OS16" {
  cite = "CITES CoP15 Prop. 20 and traffic.org 23 Mar 2010"
  kind = "society"
  part = "the first part of the page"
}

source "OS17" {
  cite = "Tomasinelli, Mantis Study Group Newsletter 23, 2002 (docslib 7369687)"
  kind = "society"
  part = "the first part of the page"
}

source "OS18" {
  cite = "aaric.org African giant millipedes (Brandywine, Philadelphia Zoo)"
  kind = "society"
  part = "the first part of the page"
}

source "OS19" {
  cite = "Companion Animal Hospital, Crested gecko care (docslib 5719220), vet"
  kind = "society"
  part = "the first part of the page"
}

source "OS20" {
  cite = "thezooreviewer 2019/03 Extatosoma"
  kind = "society"
  part = "the first part of the page"
}

source "OS21" {
  cite = "davehubbleecology 2012/01 parts I, III (ecologist)"
  kind = "society"
  part = "the first part of the page"
}

source "OS22" {
  cite = "bunyipco.blogspot 2015/07 (entomologist)"
  kind = "society"
  part = "the first part of the page"
}

source "OS23" {
  cite = "kindernetz.de Rosenkaefer"
  kind = "society"
  part = "the first part of the page"
}

source "OS25" {
  cite = "California wildlife account of the banded gecko (digital-desert.com, socalcamping.com)"
  kind = "society"
  part = "the first part of the page"
}

source "OS26" {
  cite = "lifeofearth.org index-730 (whip scorpions) [S all; OS14, OS15 press/town; OS21, OS22, OS26 expert pages]"
  kind = "society"
  part = "the first part of the page"
}

source "OK1" {
  cite = "panarthropoda.de Euphrynichus"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK2" {
  cite = "shny.fr/amblypygi fiche (en, fr)"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK3" {
  cite = "beetlesinthebush 2012/11/27"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK5" {
  cite = "nwzoo tropical giant centipede (paperzz 9350954)"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK6" {
  cite = "insektennest.de skolopender"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK7" {
  cite = "shfs.cgx13.de terrarien-belueftung"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK8" {
  cite = "shfs.cgx13.de/klima"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK9" {
  cite = "scolohub.com lebensweise"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK10" {
  cite = "arachnopets.com ccs"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK11" {
  cite = "drharikumar 2007/05 housing, breeding centipedes"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK12" {
  cite = "thereptiletimes Jan 2014"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK13" {
  cite = "scolopendra-haltung.blogspot 2018"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK14" {
  cite = "thepetfactory.de care sheet centipedes"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK15" {
  cite = "soil.evs.buffalo.edu Tiger Centipede (student wiki)"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK16" {
  cite = "barefootswan 2016/09"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK17" {
  cite = "arachnoboards 300501"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK18" {
  cite = "stemgeeks Ethmostigmus"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK19" {
  cite = "redorbit S. cingulata"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK20" {
  cite = "desertsun.com, Cornett 11 Aug 2015"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK21" {
  cite = "mossgoblin.co.uk"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK22" {
  cite = "sites.google.com millipedeenthusiastdatabase Telodeinopus"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK24" {
  cite = "theinfolist T. aoutii [enc]"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK25" {
  cite = "echinops.de.tl"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK26" {
  cite = "roachcrossing.com ivory"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK27" {
  cite = "furrycritter ivory"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK27b" {
  cite = "bioweb.uwlax.edu A. vulgare (students)"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK28" {
  cite = "postpods.co.uk ivory"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK28c" {
  cite = "wildwatch-japan.com Taiwan whip scorpion"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK29" {
  cite = "S. morsitans [enc: insectsid, wikimili]"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK29b" {
  cite = "agripetgarden.it"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK30" {
  cite = "ormedmedical.us copy on centipedes [enc]"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK31" {
  cite = "diplopoda.de Haltung"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK31b" {
  cite = "herdurbia lineola"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK32" {
  cite = "evolutionreptiles.co.uk millipede"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK32b" {
  cite = "cuidandobichos lineola"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK33" {
  cite = "zooundco24"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK33b" {
  cite = "en.pet.wiki lineola"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK34" {
  cite = "alismenagerie"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK35" {
  cite = "furrycritter African mantis"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK36" {
  cite = "Adams, pwbelg.clara.net"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK37" {
  cite = "mantistopia ghost"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK38" {
  cite = "lafermetropicale n178"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK39" {
  cite = "mantisonline.info Phyllocrania"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK40" {
  cite = "ratfrett Geistermantis"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK41" {
  cite = "P. paradoxa [enc]"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK42" {
  cite = "jaxmantis"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK43" {
  cite = "biologyinsights orchid (two) [weak]"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK44" {
  cite = "panarthropoda Hymenopus"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK45" {
  cite = "mantisonline growth, molting, reproduction"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK46" {
  cite = "xoticbugs"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK46b" {
  cite = "mantismasters.co.uk"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK47" {
  cite = "whisperofwolf"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK50" {
  cite = "madagascarmama"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK50b" {
  cite = "phasmatodea.com Innisfail"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK51" {
  cite = "keepingbugs"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK52" {
  cite = "P. philippinicum [enc]"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK53" {
  cite = "insektitaet.de"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK54" {
  cite = "ameisenforum t61650"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK55" {
  cite = "ratfrett Wandelndes Blatt"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK56" {
  cite = "chakde.de"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK58" {
  cite = "rosen-kaefer.de"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK60" {
  cite = "zoomoments"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK61" {
  cite = "naturalworlds Scarabaeidae_breeding_4"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK62" {
  cite = "Kasahara, naturalworlds hercules 3, 4"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK63" {
  cite = "geocities kaytheguru 3"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK64" {
  cite = "Wikipedia draft of Hercules beetle 2020 [enc]"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK66b" {
  cite = "madagascarcharm"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK67" {
  cite = "flaskatdelval 2017"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK68" {
  cite = "mycockroaches (copy of OS11, changed)"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK69b" {
  cite = "ecologycenter.us, cockroach book, fig. 8.3"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK70" {
  cite = "furrycritter dairy cow"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK71" {
  cite = "thegreatinvertebrate"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK72" {
  cite = "allanglescreatures"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK73" {
  cite = "wildlifenatural"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK75" {
  cite = "oocities geckohaven"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK76" {
  cite = "dialavet"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK77" {
  cite = "rilwater"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK78" {
  cite = "acreptiles"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK79" {
  cite = "dreptiles"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK80" {
  cite = "jekoexotics"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK81" {
  cite = "grogginblogginfroggin"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK82" {
  cite = "fabsreptiles"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK83" {
  cite = "Courteney-Smith, Practical Reptile Keeping (lamp maker)"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK84" {
  cite = "enviroliteracy (three) [weak]"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK85b" {
  cite = "discoveranimals.org"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK86" {
  cite = "liquisearch [enc]"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK87" {
  cite = "dubiaroaches.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK88" {
  cite = "reptilescove"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK89" {
  cite = "reptilefact"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK90" {
  cite = "coldbloodedcrew [weak]"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK92" {
  cite = "houseofmelvin Ferguson zones"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK93b" {
  cite = "geckosunlimited 15505"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK94" {
  cite = "exoticskeeper.com sun spider"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK95" {
  cite = "albertareptilesociety bulletin"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK96" {
  cite = "ccsbio.blogspot 2013/05"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK97" {
  cite = "talisusshop crested gecko"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK98" {
  cite = "shop text on the ivory millipede, no address given"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK99" {
  cite = "worldnatureandart 2012/10 [weak]"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK14b" {
  cite = "thepetfactory.de care sheet millipedes"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK23" {
  cite = "sites.google.com millipedeenthusiastdatabase Chicobolus"
  kind = "keeper"
  part = "the first part of the page"
}

source "OK37b" {
  cite = "mantistopia orchid"
  kind = "keeper"
  part = "the first part of the page"
}
