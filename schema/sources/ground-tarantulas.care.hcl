source "T1" {
  cite = "Schwerdt, de Villalobos, Perez-Miles & Ferretti 2020, Can. J. Zool. (cjz-2019-0180), thermal preferences of Grammostola vachoni"
  kind = "paper"
  part = "abstract or first page"
}

source "T2" {
  cite = "Development, growth and allometry in a cohort of Grammostola vachoni, Zool. Anz. 293:37-45, 2021, doi 10.1016/j.jcz.2021.05.005"
  kind = "paper"
  part = "abstract or first page"
}

source "T3" {
  cite = "Alfaro et al. 2013, Physiol. Entomol. 38:20-25, doi 10.1111/j.1365-3032.2012.00853.x"
  kind = "paper"
  part = "abstract or first page"
}

source "T4" {
  cite = "Canals et al. 2015, Front. Physiol. 6:220, review of Chilean spiders (a; says rosea and parvula prefer similar heat, only parvula is plastic: but: T3 on which prefers less)"
  kind = "paper"
  part = "abstract or first page"
}

source "T5" {
  cite = "Paraphysa parvula, lung water loss, J. Insect Physiol. 56:731-735, 2010"
  kind = "paper"
  part = "abstract or first page"
}

source "T7" {
  cite = "Dor & Henaut 2012, Acta Zool. Mex. 28(1), silk and spiderlings of B. vagans (a; its '23 mm' for hatchlings must be 2-3)"
  kind = "paper"
  part = "abstract or first page"
}

source "T8" {
  cite = "Shaw, Bennett & Wheater 2011, J. Arachnol. 39:515-518"
  kind = "paper"
  part = "abstract or first page"
}

source "T9" {
  cite = "M'rabet et al. 2007, J. Nat. Hist. 41:1025-1033 (title page)"
  kind = "paper"
  part = "abstract or first page"
}

source "T11" {
  cite = "Mendoza & Francke 2019, Zool. J. Linn. Soc., doi 10.1093/zoolinnean/zlz046"
  kind = "paper"
  part = "abstract or first page"
}

source "T12" {
  cite = "Hamilton, Hendrixson & Bond 2016, ZooKeys 560"
  kind = "paper"
  part = "abstract or first page"
}

source "T13" {
  cite = "Costa & Perez-Miles 2002, J. Arachnol. 30:571-587"
  kind = "paper"
  part = "abstract or first page"
}

source "T14" {
  cite = "Perez-Miles et al. 2005, J. Nat. Hist., Eupalaestrus weijenberghi and Acanthoscurria suina"
  kind = "paper"
  part = "abstract or first page"
}

source "T15" {
  cite = "Panzera, Perdomo & Perez-Miles 2009, J. Arachnol., emergence of G. mollicoma"
  kind = "paper"
  part = "abstract or first page"
}

source "T16" {
  cite = "Bertani & Guadanucci 2013, Zoologia 30:403-418"
  kind = "paper"
  part = "abstract or first page"
}

source "T17" {
  cite = "Kaderka et al. 2019, PLoS ONE 14(11) e0224384"
  kind = "paper"
  part = "abstract or first page"
}

source "T18" {
  cite = "Hauke & Herzig, muscle spasms after theraphosid bites, preprint 2020/21, doi 10.20944/preprints202012.0145.v2 (a, not peer reviewed there)"
  kind = "paper"
  part = "abstract or first page"
}

source "T19" {
  cite = "Carrim et al., Lancet 2 Jan 2010, as reported by cbc.ca, phys.org news181468765, thehealthcast.com"
  kind = "paper"
  part = "abstract or first page"
}

source "T20" {
  cite = "letter in Eye, feeds.nature.com/articles/6700335 (first page)"
  kind = "paper"
  part = "abstract or first page"
}

source "T21" {
  cite = "Ferretti & Perez-Miles 2011, Rev. Biol. Trop. 59(3)"
  kind = "paper"
  part = "abstract or first page"
}

source "T22" {
  cite = "a Galleti-Lima et al. 2023, Front. Ecol. Evol. 11:1177627 (first page); b Bertani 2023, Zootaxa 5390(1) (one treatment)"
  kind = "paper"
  part = "abstract or first page"
}

source "T23" {
  cite = "Grammostola quirogai, Zoologica Scripta, on tarantupedia.com"
  kind = "paper"
  part = "abstract or first page"
}

source "T24" {
  cite = "Locht, Yanez & Vazquez 1999, J. Arachnol. 27:196-200"
  kind = "paper"
  part = "abstract or first page"
}

source "T163" {
  cite = "Ferretti & Barneche, Iheringia, Eupalaestrus larae"
  kind = "paper"
  part = "abstract or first page"
}

source "T30" {
  cite = "CITES AC31 Doc. 41.4 (2021), A. pallidum, docslib.org/doc/7462023"
  kind = "guideline"
  part = "the first part of the page"
}

source "T31" {
  cite = "list of terrestrial invertebrates protected in Peru, D.S. 004-2014-MINAGRI, in a public repository text (find_string id 69381976296)"
  kind = "guideline"
  part = "the first part of the page"
}

source "T32" {
  cite = "unsere-haustiere.net B. smithi"
  kind = "keeper"
  part = "the first part of the page"
}

source "T33" {
  cite = "zootier-lexikon.org Grammostola rosea"
  kind = "society"
  part = "the first part of the page"
}

source "T40" {
  cite = "peoriazoo.org desert blond"
  kind = "society"
  part = "the first part of the page"
}

source "T41" {
  cite = "zootier-lexikon.org Grammostola rosea"
  kind = "society"
  part = "the first part of the page"
}

source "T42" {
  cite = "zootier-lexikon.org Lasiodora"
  kind = "society"
  part = "the first part of the page"
}

source "T43" {
  cite = "papiliorama.ch Brasilianische Riesenvogelspinne"
  kind = "society"
  part = "the first part of the page"
}

source "T44" {
  cite = "zoo page, app-czn-prod-uks-frontend.azurewebsites.net (zoo not named in the excerpt)"
  kind = "society"
  part = "the first part of the page"
}

source "T45" {
  cite = "brianeyes21comcast.net 7 Mar 2012, aquarium docent notes"
  kind = "society"
  part = "the first part of the page"
}

source "T47" {
  cite = "chihuahuandesert.org 29 Mar 2023"
  kind = "society"
  part = "the first part of the page"
}

source "T48" {
  cite = "edis.ifas.ufl.edu IN562, Edwards & Hibbard"
  kind = "society"
  part = "the first part of the page"
}

source "T49" {
  cite = "aquarium-berlin.de Vogelspinne"
  kind = "society"
  part = "the first part of the page"
}

source "T51" {
  cite = "reptilesalive.com Haitian brown (education organisation)"
  kind = "society"
  part = "the first part of the page"
}

source "T61" {
  cite = "vogelspinne-ev.de Brachypelma albopilosum, A. Mennigke"
  kind = "society"
  part = "the first part of the page"
}

source "T71" {
  cite = "tarantulasdemexico.com, R. West, The Brachypelma of Mexico"
  kind = "society"
  part = "the first part of the page"
}

source "T46" {
  cite = "arizona-leisure.com, B. Bessesen"
  kind = "keeper"
  part = "the first part of the page"
}

source "T60" {
  cite = "fsbio-hannover.de/oftheweek/261"
  kind = "keeper"
  part = "the first part of the page"
}

source "T62" {
  cite = "wikiclassic.com T. albopilosus (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T63" {
  cite = "reptilerange.com curly hair"
  kind = "keeper"
  part = "the first part of the page"
}

source "T64" {
  cite = "thetarantulacollective.com T. vagans"
  kind = "keeper"
  part = "the first part of the page"
}

source "T65" {
  cite = "es.frwiki.wiki T. vagans (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T66" {
  cite = "review.clateway.com T. vagans (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T67" {
  cite = "frogtownexoticsllc.com B. boehmei"
  kind = "keeper"
  part = "the first part of the page"
}

source "T68" {
  cite = "en.pet.wiki B. boehmei"
  kind = "keeper"
  part = "the first part of the page"
}

source "T69" {
  cite = "grimoireexotics.com B. boehmei"
  kind = "keeper"
  part = "the first part of the page"
}

source "T70" {
  cite = "it.226248.com B. boehmei"
  kind = "keeper"
  part = "the first part of the page"
}

source "T72" {
  cite = "thetarantulacollective.com B. emilia, Mar 2025"
  kind = "keeper"
  part = "the first part of the page"
}

source "T73" {
  cite = "tarantulasus.com B. emilia"
  kind = "keeper"
  part = "the first part of the page"
}

source "T74" {
  cite = "oocities.org Overton, B. emilia"
  kind = "keeper"
  part = "the first part of the page"
}

source "T75" {
  cite = "keepingexoticpets.com B. emilia"
  kind = "keeper"
  part = "the first part of the page"
}

source "T76" {
  cite = "sagapedia.com B. emilia (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T77" {
  cite = "buzzsharer.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "T78" {
  cite = "who-knows.imtqy.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "T79" {
  cite = "a giantspiders.com Brachypelma, b giantspiders.com Aphonopelma"
  kind = "keeper"
  part = "the first part of the page"
}

source "T80" {
  cite = "tomsbigspiders.com A. chalcodes"
  kind = "keeper"
  part = "the first part of the page"
}

source "T81" {
  cite = "goodnames.eth.link A. chalcodes (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T82" {
  cite = "de.zxc.wiki A. chalcodes (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T83" {
  cite = "tarantulascr.com A. seemanni, 2025"
  kind = "keeper"
  part = "the first part of the page"
}

source "T84" {
  cite = "fangzone.pages.dev (weak)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T85" {
  cite = "animalanswer.net (weak)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T86" {
  cite = "wreptilica.de.tl"
  kind = "keeper"
  part = "the first part of the page"
}

source "T87" {
  cite = "de.zxc.wiki Gestreifte Guatemala-Vogelspinne (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T88" {
  cite = "grimoireexotics.com G. pulchra"
  kind = "keeper"
  part = "the first part of the page"
}

source "T89" {
  cite = "tarantulapet.com G. pulchra"
  kind = "keeper"
  part = "the first part of the page"
}

source "T90" {
  cite = "de-academic.com G. pulchra (enc, after Stadler 2000)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T91" {
  cite = "kabelkunstkrabbeltiere.de G. pulchra"
  kind = "keeper"
  part = "the first part of the page"
}

source "T92" {
  cite = "de.wikiup.org and sagapedia.com Grammostola (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T93" {
  cite = "terrestrialtarantulas.blogspot.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "T94" {
  cite = "hmong.es G. pulchripes (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T95" {
  cite = "webdrifter.pages.dev (weak)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T96" {
  cite = "sydneysue.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "T97" {
  cite = "vogelspinnen-info.de Winterruhe"
  kind = "keeper"
  part = "the first part of the page"
}

source "T98" {
  cite = "terraristikfibel.de Winterruhe"
  kind = "keeper"
  part = "the first part of the page"
}

source "T99" {
  cite = "kampuspedia.com G. rosea (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T100" {
  cite = "angellpets.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "T101" {
  cite = "tarantulas.su node 578"
  kind = "keeper"
  part = "the first part of the page"
}

source "T102" {
  cite = "reptarach.de Vogelspinnen"
  kind = "keeper"
  part = "the first part of the page"
}

source "T103" {
  cite = "liquisearch.com, a Chilean rose pets, b tarantula life cycle (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T104" {
  cite = "a deszoo.news, b mommajorje.com 2010/11"
  kind = "keeper"
  part = "the first part of the page"
}

source "T105" {
  cite = "peskylittlecritters.com (weak)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T106" {
  cite = "luxetarantulas.com Grammostola"
  kind = "keeper"
  part = "the first part of the page"
}

source "T110" {
  cite = "arachnophiliacs.com/Ag"
  kind = "keeper"
  part = "the first part of the page"
}

source "T111" {
  cite = "es.stringtranslate.com (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T112" {
  cite = "es.frwiki.wiki A. geniculata (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T113" {
  cite = "de.wiki.li Weissknievogelspinne (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T114" {
  cite = "ecured.cu (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T115" {
  cite = "tierlexikon.fandom.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "T116" {
  cite = "a handwiki.org, b de.wiki.li, c older enc copy (no address on the excerpt), L. parahybana"
  kind = "keeper"
  part = "the first part of the page"
}

source "T117" {
  cite = "pwbelg.clara.net/adams, R. N. Adams"
  kind = "keeper"
  part = "the first part of the page"
}

source "T118" {
  cite = "grimoireexotics.com N. chromatus"
  kind = "keeper"
  part = "the first part of the page"
}

source "T119" {
  cite = "arachnidhub.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "T120" {
  cite = "thetarantulacollective.com N. chromatus"
  kind = "keeper"
  part = "the first part of the page"
}

source "T121" {
  cite = "thetarantulavault.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "T122" {
  cite = "tierdoku.com N. chromatus"
  kind = "keeper"
  part = "the first part of the page"
}

source "T123" {
  cite = "de.wikipedia.org N. chromatus (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T124" {
  cite = "terraristikfibel.de N. chromatus"
  kind = "keeper"
  part = "the first part of the page"
}

source "T125" {
  cite = "de.zxc.wiki Pamphobeteus, P. nigricolor, P. insignis (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T127" {
  cite = "tomsbigspiders.com Phormictopus"
  kind = "keeper"
  part = "the first part of the page"
}

source "T128" {
  cite = "absoluteastronomy.com P. cancerides (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T129" {
  cite = "rarecompanions.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "T131" {
  cite = "a lexikon-spinnen.de, b tierdoku.com / wikide.org P. cancerides"
  kind = "keeper"
  part = "the first part of the page"
}

source "T132" {
  cite = "C. cyaneopubescens: a de.zxc.wiki (enc), b plwiki.pl (enc), c issuu.com wallocm, d kelvinwiley.net, e petreader.net"
  kind = "keeper"
  part = "the first part of the page"
}

source "T133" {
  cite = "docslib.org/doc/9406544 arboreal guide"
  kind = "keeper"
  part = "the first part of the page"
}

source "T134" {
  cite = "danys-tierwelt.jimdo.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "T135" {
  cite = "tierdoku.com E. campestratus"
  kind = "keeper"
  part = "the first part of the page"
}

source "T136" {
  cite = "city.hokkai.or.jp/~pia E. weijenberghi"
  kind = "keeper"
  part = "the first part of the page"
}

source "T141" {
  cite = "brachypelma.de"
  kind = "keeper"
  part = "the first part of the page"
}

source "T142" {
  cite = "muchpet.com (weak)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T143" {
  cite = "a currently-jumping-around.de.tl, b arachnida-mv.jimdo.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "T144" {
  cite = "petandpeople.at"
  kind = "keeper"
  part = "the first part of the page"
}

source "T145" {
  cite = "werunique.us/schultz/Temperature, S. Schultz 2014"
  kind = "keeper"
  part = "the first part of the page"
}

source "T146" {
  cite = "arachnoboards.com thread 101487, quoting Schultz & Schultz"
  kind = "keeper"
  part = "the first part of the page"
}

source "T150" {
  cite = "vapaguide.info NORAM-SPI (poison catalogue, quoting Schmidt 1989)"
  kind = "society"
  part = "the first part of the page"
}

source "T151" {
  cite = "donateinformation.blogspot.com A. hentzi (enc copy)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T152" {
  cite = "thepetplace.lat (weak)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T153" {
  cite = "wikipedia-on-ipfs B. boehmei (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T154" {
  cite = "biotropics.com B. baumgarteni"
  kind = "keeper"
  part = "the first part of the page"
}

source "T155" {
  cite = "bugswithmike.com"
  kind = "keeper"
  part = "the first part of the page"
}

source "T156" {
  cite = "gvicanada.ca"
  kind = "keeper"
  part = "the first part of the page"
}

source "T157" {
  cite = "wikipedia G. grossa (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T158" {
  cite = "daehne.de terraristik 2/2013 p. 45"
  kind = "keeper"
  part = "the first part of the page"
}

source "T159" {
  cite = "theinfolist.com Brazilian red and white (enc)"
  kind = "keeper"
  part = "the first part of the page"
}

source "T160" {
  cite = "featuredcreature.com, flickr 21982489456"
  kind = "keeper"
  part = "the first part of the page"
}

source "T161" {
  cite = "worldspecies.org"
  kind = "keeper"
  part = "the first part of the page"
}

source "T162" {
  cite = "zanotowane.pl/1145/9468"
  kind = "keeper"
  part = "the first part of the page"
}
