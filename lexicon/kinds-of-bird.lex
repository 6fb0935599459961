# Which species a loose kind of bird (`group` entries of the vocabulary) is said of. A species is of a kind if
# its English name ends in a word for it, or for a kind `within` it; further if it is of one of the `families`
# (all of whose species are called so, but for those of a kind under `except`), or if its name ends in one of
# the `members`. Other species of the families of these are cousins. `taken-for` are families whose species
# are given the name by mistake. What each of these weighs stands in matching.lex. Own estimates from common
# practice; families are named as in the accounts. A kind without an entry goes by names alone.

covers accipiter
  members   sparrowhawk, goshawk, cooper's hawk, sharp-shinned hawk
  taken-for Falconidae
  means     short-winged hawks; small falcons are taken for them

covers acrocephalus
  families  Acrocephalidae
  taken-for Scotocercidae, Phylloscopidae, Sylviidae
  means     warblers of reeds

covers albatross
  taken-for Procellariidae, Sulidae
  means     other large seabirds look like one far out

covers auk
  families  Alcidae
  taken-for Podicipedidae, Gaviidae, Anatidae
  means     small divers on the sea look alike

covers bird-of-prey
  families  Accipitridae, Cathartidae, Falconidae, Pandionidae, Strigidae, Tytonidae
  taken-for Corvidae, Laniidae, Cuculidae, Stercorariidae
  means     hunters, and what looks like one overhead

covers bittern
  taken-for Rallidae
  means     herons of reeds

covers blackbird
  within    songbird
  families  Icteridae
  except    oriole, meadowlark, chat
  taken-for Sturnidae, Corvidae, Turdidae
  means     in America all black ones of that family; starlings and small crows are taken for them

covers bluebird
  within    thrush
  taken-for Cardinalidae, Corvidae, Hirundinidae
  means     any blue bird is called so

covers booby
  families  Sulidae
  taken-for Laridae, Pelecanidae
  means     large plunge-divers

covers bunting
  within    songbird
  families  Emberizidae, Calcariidae
  taken-for Fringillidae, Passerellidae, Passeridae, Alaudidae
  means     seed-eaters look alike

covers buteo
  within    hawk
  members   red-tailed hawk, red-shouldered hawk, broad-winged hawk, swainson's hawk
  members   buzzard
  taken-for Cathartidae, Pandionidae
  means     broad-winged soaring hawks

covers buzzard
  within    hawk
  members   vulture, hawk
  taken-for Pandionidae
  means     in Europe a soaring hawk, in America a vulture

covers catbird
  within    songbird
  families  Mimidae, Ptilonorhynchidae
  taken-for Turdidae
  means     mimics of thickets

covers chat
  within    songbird
  members   stonechat, whinchat
  taken-for Turdidae, Parulidae
  means     upright perchers of open ground

covers chickadee
  within    tit
  taken-for Sittidae, Parulidae, Regulidae
  means     small birds of woods that go about together

covers coot
  within    rail
  taken-for Anatidae, Podicipedidae
  means     swimming birds that are no ducks

covers cormorant
  families  Phalacrocoracidae
  taken-for Anhingidae, Gaviidae, Anatidae
  means     dark long-necked swimmers

covers cowbird
  within    blackbird
  taken-for Sturnidae, Passerellidae
  means     small dark blackbirds

covers crane
  taken-for Ardeidae, Ciconiidae
  means     herons are called cranes by many

covers crossbill
  within    finch
  means     finches with crossed tips

covers crow
  within    songbird
  members   raven, rook, jackdaw, nutcracker, crow
  families  Corvidae
  except    jay, magpie
  taken-for Icteridae
  means     black ones of the family; grackles are taken for them

covers cuckoo
  families  Cuculidae
  taken-for Columbidae, Falconidae, Accipitridae, Mimidae
  means     slim long-tailed birds

covers curlew
  within    wader
  members   whimbrel
  taken-for Threskiornithidae
  means     bills bent down are rare

covers dabbling-duck
  within    duck
  members   mallard, gadwall, pintail, shoveler, teal, wigeon, american black duck, mottled duck
  taken-for Rallidae
  means     ducks that feed at the surface

covers dipper-bird
  families  Cinclidae
  means     stout birds of fast streams

covers diving-duck
  within    duck
  members   pochard, canvasback, redhead, scaup, goldeneye, bufflehead, merganser, smew, tufted duck
  members   ring-necked duck
  taken-for Podicipedidae, Rallidae, Gaviidae
  means     ducks that dive; grebes and coots do too

covers dove
  families  Columbidae
  taken-for Falconidae, Cuculidae
  means     pigeons and doves are one family

covers dowitcher
  within    wader
  taken-for Scolopacidae
  means     long-billed waders

covers duck
  within    waterfowl
  families  Anatidae
  except    goose, swan
  members   duck
  taken-for Podicipedidae, Rallidae, Gaviidae, Phalacrocoracidae, Alcidae
  means     anything that swims is called a duck by beginners: grebes, coots, divers

covers eagle
  within    bird-of-prey
  taken-for Cathartidae, Pandionidae
  means     very large soarers

covers egret
  within    heron
  taken-for Ciconiidae, Threskiornithidae
  means     white herons

covers empid
  within    flycatcher
  members   least flycatcher, acadian flycatcher
  members   yellow-bellied flycatcher
  taken-for Vireonidae, Parulidae, Regulidae
  means     small greenish flycatchers

covers falcon
  within    bird-of-prey
  families  Falconidae
  taken-for Accipitridae, Apodidae, Cuculidae
  means     long-winged hunters; short-winged hawks are taken for them

covers finch
  within    songbird
  families  Fringillidae
  taken-for Passerellidae, Passeridae, Emberizidae, Cardinalidae, Calcariidae, Prunellidae
  means     seed-eaters look alike

covers flycatcher
  within    songbird
  families  Tyrannidae
  taken-for Vireonidae, Ptiliogonatidae, Parulidae, Bombycillidae
  means     what catches insects from a perch is called so

covers frigatebird
  taken-for Laridae
  means     long-winged birds of warm seas

covers gamebird
  families  Odontophoridae, Phasianidae
  taken-for Scolopacidae, Cuculidae
  means     stout ground birds

covers game-bird
  families  Odontophoridae, Phasianidae
  taken-for Scolopacidae, Anatidae, Columbidae
  means     birds that are hunted; above all stout ground birds

covers fowl
  families  Odontophoridae, Phasianidae, Anatidae
  taken-for Rallidae
  means     ground birds and water birds that are eaten

covers gnatcatcher
  within    songbird
  taken-for Parulidae, Aegithalidae, Regulidae
  means     tiny long-tailed birds

covers godwit
  within    wader
  taken-for Scolopacidae, Recurvirostridae
  means     large long-billed waders

covers goldfinch
  within    finch
  taken-for Parulidae
  means     any small yellow bird is called so

covers goose
  within    waterfowl
  members   brant
  taken-for Sulidae, Phalacrocoracidae
  means     large grazing water birds

covers grackle
  within    blackbird
  taken-for Corvidae, Sturnidae
  means     large glossy blackbirds

covers grebe
  families  Podicipedidae
  taken-for Gaviidae, Anatidae, Rallidae, Alcidae
  means     small divers look alike

covers grosbeak
  within    songbird
  members   cardinal, pyrrhuloxia, hawfinch
  means     songbirds with very thick bills

covers grouse
  within    gamebird
  taken-for Odontophoridae
  means     stout ground birds

covers gull
  within    seabird
  members   kittiwake
  taken-for Stercorariidae, Procellariidae, Sulidae
  means     terns, jaegers and fulmars are taken for gulls

covers harrier
  within    hawk
  taken-for Strigidae
  means     low-flying hawks; owls hunt so too

covers hawk
  within    bird-of-prey
  families  Accipitridae
  except    eagle
  taken-for Falconidae, Pandionidae, Cathartidae, Cuculidae
  means     falcons and ospreys are called hawks by many

covers heron
  families  Ardeidae
  taken-for Gruidae, Ciconiidae, Threskiornithidae
  means     tall waders look alike

covers hummingbird
  families  Trochilidae
  means     nothing else hovers like one, but for moths

covers ibis
  taken-for Scolopacidae, Ardeidae
  means     bills bent down are rare

covers jaeger
  within    seabird
  families  Stercorariidae
  taken-for Laridae
  means     young gulls are taken for them

covers jay
  means     bright ones of the crow family

covers junco
  within    songbird
  means     grey ground sparrows

covers kingbird
  within    flycatcher
  means     large bold flycatchers

covers kingfisher
  families  Alcedinidae
  means     nothing else looks like one

covers kinglet
  within    songbird
  families  Regulidae
  taken-for Parulidae, Vireonidae, Aegithalidae
  means     tiny restless birds

covers kite
  within    hawk
  taken-for Falconidae
  means     long-winged hunters

covers lark
  within    songbird
  families  Alaudidae
  members   skylark
  taken-for Motacillidae, Calcariidae, Emberizidae, Icteridae
  means     streaked brown birds of open ground

covers leaf-warbler
  within    warbler
  families  Phylloscopidae
  taken-for Acrocephalidae, Sylviidae, Regulidae
  means     small plain warblers

covers little-brown-job
  families  Passerellidae, Troglodytidae, Passeridae, Prunellidae, Certhiidae, Alaudidae, Motacillidae
  families  Emberizidae, Acrocephalidae, Scotocercidae
  taken-for Fringillidae, Phylloscopidae, Sylviidae, Tyrannidae, Parulidae, Calcariidae, Icteridae
  taken-for Cardinalidae
  means     small brown songbirds of many families

covers longspur
  within    bunting
  families  Calcariidae
  taken-for Alaudidae
  means     streaked ground birds

covers loon
  families  Gaviidae
  taken-for Podicipedidae, Phalacrocoracidae, Anatidae
  means     low-swimming divers

covers magpie
  means     long-tailed ones of the crow family

covers meadowlark
  within    blackbird
  taken-for Alaudidae
  means     yellow-breasted birds of grassland

covers merganser
  within    diving-duck
  members   smew
  taken-for Podicipedidae, Gaviidae
  means     slim-billed divers

covers mockingbird
  within    songbird
  taken-for Laniidae
  means     grey, white and black birds; shrikes are too

covers myna
  taken-for Sturnidae
  means     starlings are of the same family

covers nightjar
  families  Caprimulgidae
  taken-for Apodidae, Strigidae
  means     birds on the wing at dusk

covers nuthatch
  within    songbird
  families  Sittidae
  taken-for Certhiidae
  means     small birds on trunks

covers oriole
  within    songbird
  taken-for Cardinalidae
  means     orange or yellow songbirds

covers owl
  within    bird-of-prey
  families  Strigidae, Tytonidae
  means     nothing else looks like one

covers oystercatcher
  within    wader
  means     stout red-billed waders

covers parrot
  families  Psittacidae
  means     nothing else looks like one

covers partridge
  within    gamebird
  taken-for Odontophoridae
  means     plump ground birds

covers petrel
  within    tubenose
  taken-for Procellariidae
  means     small ocean birds

covers pewee
  within    flycatcher
  means     plain flycatchers of woods

covers phalarope
  within    wader
  means     waders that swim

covers phoebe
  within    flycatcher
  means     flycatchers that dip the tail

covers pigeon
  families  Columbidae
  means     pigeons and doves are one family

covers pipit
  within    songbird
  taken-for Alaudidae, Passerellidae
  means     streaked ground birds

covers plover
  within    wader
  families  Charadriidae
  taken-for Scolopacidae
  means     short-billed waders; sandpipers are taken for them

covers quail
  within    gamebird
  families  Odontophoridae
  taken-for Rallidae
  means     small round ground birds

covers rail
  families  Rallidae
  taken-for Scolopacidae, Ardeidae
  means     shy birds of marshes

covers redpoll
  within    finch
  means     small red-capped finches

covers redstart
  within    songbird
  means     songbirds with colour in the tail

covers rosy-finch
  within    finch
  means     finches of high mountains

covers sandpiper
  within    wader
  families  Scolopacidae
  except    woodcock, snipe, curlew, godwit
  taken-for Charadriidae
  means     waders of mud and shore

covers sapsucker
  within    woodpecker
  means     woodpeckers that drill rows

covers scaup
  within    diving-duck
  means     diving ducks with dark ends

covers scoter
  within    sea-duck
  means     dark sea ducks

covers sea-duck
  within    duck
  members   eider, scoter, long-tailed duck, harlequin duck, goldeneye
  taken-for Alcidae, Gaviidae
  means     ducks of salt water

covers seabird
  families  Alcidae, Diomedeidae, Fregatidae, Laridae, Procellariidae, Stercorariidae, Sulidae
  taken-for Phalacrocoracidae, Pelecanidae, Anatidae, Gaviidae
  means     birds that feed at sea

covers shearwater
  within    tubenose
  taken-for Stercorariidae, Laridae
  means     stiff-winged ocean birds

covers shelduck
  within    waterfowl
  means     goose-like ducks

covers shrike
  within    songbird
  families  Laniidae
  taken-for Mimidae
  means     mockingbirds are taken for them

covers snipe
  within    wader
  taken-for Rallidae
  means     long-billed waders of wet ground

covers songbird
  families  Acrocephalidae, Aegithalidae, Alaudidae, Bombycillidae, Calcariidae, Cardinalidae
  families  Certhiidae, Cinclidae, Emberizidae, Fringillidae, Hirundinidae, Icteridae, Laniidae, Mimidae
  families  Motacillidae, Muscicapidae, Oriolidae, Panuridae, Paridae, Parulidae, Passerellidae
  families  Passeridae, Phylloscopidae, Polioptilidae, Prunellidae, Ptiliogonatidae, Ptilonorhynchidae
  families  Regulidae, Remizidae, Scotocercidae, Sittidae, Sturnidae, Sylviidae, Troglodytidae, Turdidae
  families  Tyrannidae, Vireonidae
  taken-for Corvidae, Apodidae, Picidae
  means     small perching birds; crows are ones that few would call so

covers sparrow
  within    songbird
  families  Passerellidae, Passeridae
  except    towhee, junco
  taken-for Fringillidae, Emberizidae, Calcariidae, Prunellidae, Cardinalidae, Icteridae, Alaudidae
  taken-for Motacillidae, Troglodytidae
  means     beginners call every small brown bird so: finches, buntings, pipits, female blackbirds

covers spoonbill
  taken-for Ardeidae
  means     large waders

covers starling
  within    songbird
  families  Sturnidae
  taken-for Icteridae, Turdidae
  means     short-tailed dark birds

covers stilt
  within    wader
  families  Recurvirostridae
  means     very long-legged waders

covers stint
  within    sandpiper
  members   least sandpiper, semipalmated sandpiper, western sandpiper, sanderling
  means     very small sandpipers

covers stork
  taken-for Ardeidae, Gruidae, Threskiornithidae
  means     tall waders look alike

covers swallow
  within    songbird
  families  Hirundinidae
  taken-for Apodidae
  means     swifts are taken for swallows by many

covers swan
  within    waterfowl
  taken-for Pelecanidae
  means     very large white swimmers

covers swift
  families  Apodidae
  taken-for Hirundinidae
  means     swallows are taken for swifts

covers tanager
  within    songbird
  taken-for Icteridae
  means     bright songbirds; orioles are taken for them

covers teal
  within    dabbling-duck
  means     small ducks

covers tern
  within    seabird
  taken-for Laridae
  means     slim gulls are taken for them

covers thrasher
  within    catbird
  taken-for Turdidae
  means     long-tailed birds of thickets

covers thrush
  within    songbird
  families  Turdidae
  taken-for Mimidae, Parulidae, Sturnidae
  members   robin, bluebird
  means     spotted breasts are called so; thrashers, ovenbirds and starlings are taken for them

covers tit
  within    songbird
  families  Paridae
  members   bushtit, reedling, verdin
  taken-for Sittidae, Regulidae, Parulidae, Phylloscopidae
  means     small acrobats of trees

covers towhee
  within    songbird
  taken-for Turdidae
  means     long-tailed large sparrows

covers treecreeper
  within    songbird
  families  Certhiidae
  taken-for Sittidae, Troglodytidae
  means     small birds on trunks

covers tringa-wader
  within    wader
  members   greenshank, redshank, willet, solitary sandpiper
  means     slim long-legged waders

covers tubenose
  within    seabird
  families  Diomedeidae, Procellariidae
  taken-for Laridae
  means     ocean birds

covers turkey
  within    gamebird
  means     huge ground birds

covers vireo
  within    songbird
  families  Vireonidae
  taken-for Parulidae, Regulidae, Tyrannidae
  means     slow warblers and small flycatchers are taken for them

covers vulture
  families  Cathartidae
  taken-for Accipitridae, Corvidae, Falconidae
  means     large dark soarers

covers wader
  families  Charadriidae, Haematopodidae, Recurvirostridae, Scolopacidae
  taken-for Ardeidae, Threskiornithidae, Rallidae
  means     in America herons are waders too

covers wagtail
  within    songbird
  means     slim birds that pump the tail

covers warbler
  within    songbird
  families  Acrocephalidae, Parulidae, Phylloscopidae, Scotocercidae, Sylviidae
  taken-for Vireonidae, Regulidae, Polioptilidae, Fringillidae, Tyrannidae, Aegithalidae
  means     small slim-billed birds; vireos and kinglets are taken for them

covers waterbird
  families  Alcidae, Anatidae, Anhingidae, Ardeidae, Charadriidae, Ciconiidae, Gaviidae, Gruidae
  families  Haematopodidae, Laridae, Pelecanidae, Phalacrocoracidae, Podicipedidae, Rallidae
  families  Recurvirostridae, Scolopacidae, Threskiornithidae
  taken-for Alcedinidae, Cinclidae, Stercorariidae, Sulidae, Procellariidae, Diomedeidae, Pandionidae
  means     birds of lakes, rivers and marsh

covers waterfowl
  families  Anatidae
  taken-for Podicipedidae, Rallidae, Gaviidae, Phalacrocoracidae
  means     ducks, geese and swans

covers waterthrush
  within    warbler
  taken-for Turdidae
  means     streaked warblers at the water

covers waxwing
  within    songbird
  means     sleek crested birds

covers whistling-duck
  within    duck
  means     upright ducks

covers wheatear
  within    songbird
  means     ground chats

covers wigeon
  within    dabbling-duck
  means     round-headed ducks

covers woodcock
  within    wader
  taken-for Rallidae
  means     plump waders of woods

covers woodpecker
  families  Picidae
  taken-for Sittidae, Certhiidae
  means     birds on trunks

covers wren
  within    songbird
  families  Troglodytidae
  members   wrentit
  taken-for Passerellidae, Prunellidae, Parulidae, Certhiidae, Regulidae
  means     tiny brown birds
