# Loose kinds of bird that name no one species.

group accipiter
  also    accipiter hawk, bird hawk
  means   a short-winged, long-tailed hawk of woods

group acrocephalus
  also    acro
  means   a plain or streaked warbler of reeds

group albatross
  also    mollymawk, gooney bird
  means   a very large seabird with long narrow wings

group auk
  also    alcid, guillemot, murre, auklet, murrelet, puffin
  means   a short-winged diving seabird

group bee-eater
  means   a slim, bright, curved-billed bird that hawks insects

group bird-of-prey
  also    birds of prey, raptor, day raptor, diurnal raptor
  means   a hunting bird with hooked bill and claws

group bittern
  means   a streaked brown heron of reeds

group blackbird
  also    icterid, new world blackbird
  means   in America a dark songbird of marsh and field, in Europe a black thrush

group bluebird
  means   a small blue thrush of open country

group booby
  also    gannet, sulid
  means   a large plunge-diving seabird

group bunting
  means   a seed-eating songbird with a small conical bill

group bustard
  means   a large walking bird of open plains

group buteo
  also    buteo hawk
  means   a broad-winged, short-tailed soaring hawk

group buzzard
  means   a soaring hawk, or in America a vulture

group catbird
  also    mimid, mimic thrush
  means   a grey or dark songbird that mimics

group chat
  also    chat species
  means   a small upright songbird of open perches

group chickadee
  means   a small capped and bibbed bird of North American woods

group cockatoo
  also    cockatiel
  means   a crested parrot

group coot
  also    waterhen, mud hen
  means   a dark water bird of the rail family

group cormorant
  also    shag
  means   a dark, long-necked, hook-billed fish-eater

group cowbird
  means   a small dark blackbird that lays in other nests

group crane
  means   a very tall grey or white bird of open ground

group crossbill
  means   a finch whose bill tips cross

group crow
  also    corvid, crow family
  means   a large black or dark all-eater

group cuckoo
  means   a slim, long-tailed bird of trees

group curlew
  also    numenius
  means   a large wader with a long downcurved bill

group dabbling-duck
  also    dabbler, puddle duck, surface-feeding duck, surface feeder
  means   a duck that tips up or sifts at the surface

group dipper
  means   a plump bird that walks under fast streams

group diving-duck
  also    bay duck, aythya
  means   a duck that feeds under water

group dove
  means   a small pigeon with a slim neck

group dowitcher
  means   a long-billed wader that probes like a sewing machine

group duck
  means   a web-footed, flat-billed water bird

group eagle
  means   a very large bird of prey

group egret
  means   a white heron

group empid
  also    empidonax, empidonax flycatcher
  means   a small greenish tyrant flycatcher

group falcon
  means   a fast bird of prey with pointed wings

group finch
  also    fringillid
  means   a seed-eating songbird with a stout bill

group flycatcher
  also    tyrant flycatcher
  means   a songbird that sits and darts after insects

group frigatebird
  means   a fork-tailed, long-winged seabird of warm seas

group gamebird
  also    upland game bird, game fowl, gallinaceous bird, landfowl
  means   a stout ground bird such as a grouse

group gnatcatcher
  means   a tiny, slim, long-tailed insect eater

group godwit
  means   a large wader with a long, straight or upturned bill

group goldfinch
  means   a small finch with yellow in its plumage

group goose
  also    geese, wild goose, wild geese
  means   a large grazing water bird

group grackle
  means   a large glossy blackbird with a long tail

group grebe
  means   a diving bird with lobed toes and no tail to speak of

group grosbeak
  means   a songbird with a very thick bill

group grouse
  also    prairie chicken, ptarmigan
  means   a stout ground bird of north and hill

group gull
  also    seagull, larid
  means   a web-footed, mostly grey and white water bird

group harrier
  means   a slim hawk that hunts low over open ground

group hawk
  means   a bird of prey with rounded wings

group heron
  means   a tall wading bird with a dagger bill

group hummingbird
  also    hummer
  means   a tiny hovering bird that feeds at flowers

group ibis
  means   a wading bird with a long downcurved bill

group jaeger
  also    skua
  means   a dark hook-billed seabird that robs others

group jay
  means   a bright, noisy bird of the crow family

group junco
  means   a small grey ground sparrow with white outer tail feathers

group kingbird
  means   a large bold tyrant flycatcher

group kingfisher
  means   a big-headed, dagger-billed bird that dives for fish

group kinglet
  also    regulus
  means   a tiny restless songbird

group kite
  means   a long-winged, easy-flying bird of prey

group lark
  means   a streaked brown bird of open ground

group leaf-warbler
  also    phyllosc, phylloscopus
  means   a small plain greenish warbler of the Old World

group little-brown-job
  also    lbj, lbb, sbj
  means   a small brown bird hard to name

group longspur
  means   a streaked ground bird of open plains

group loon
  also    diver
  means   a heavy, low-swimming, dagger-billed water bird

group magpie
  means   a long-tailed black and white bird of the crow family

group meadowlark
  means   a chunky, short-tailed, long-billed bird of grassland

group merganser
  also    sawbill, fish duck
  means   a slim-billed diving duck that eats fish

group mockingbird
  also    mocker
  means   a slim, long-tailed songbird that copies others

group munia
  also    mannikin, waxbill, estrildid
  means   a very small seed-eater, often kept in cages

group myna
  also    mynah
  means   a bold starling of the tropics

group nightjar
  also    goatsucker, nighthawk
  means   a long-winged, wide-mouthed bird of dusk

group nuthatch
  means   a short-tailed bird that climbs down trunks head first

group oriole
  means   a slim, sharp-billed songbird, often orange or yellow

group owl
  means   a night hunter with a flat face and large eyes

group oystercatcher
  means   a stout wader with a long red bill

group parrot
  also    parakeet, macaw, budgie, budgerigar
  means   a hook-billed, often green bird

group partridge
  means   a plump ground bird of farmland

group pelican
  means   a huge water bird with a pouch under its bill

group petrel
  also    storm petrel, stormie
  means   an ocean bird, mostly small, that flutters over waves

group pewee
  also    peewee
  means   a plain grey flycatcher of woods

group phalarope
  means   a small wader that swims and spins

group pheasant
  means   a large, long-tailed ground bird

group phoebe
  means   a flycatcher that dips its tail

group pigeon
  also    columbid
  means   a plump, small-headed bird

group pipit
  means   a slim, streaked, ground-walking bird

group plover
  means   a wader with a short bill that runs and stops

group quail
  means   a small, round ground bird

group rail
  also    crake, gallinule, rallid
  means   a shy bird of marsh cover

group redpoll
  means   a small streaked finch with a red cap

group redstart
  means   a small songbird with colour in the tail

group roller
  means   a stout blue bird that drops on prey from a perch

group rosy-finch
  means   a pink and brown finch of high mountains

group sandpiper
  also    calidrid, calidris
  means   a small or middling wader of mud and shore

group sapsucker
  means   a woodpecker that drills rows of wells

group scaup
  also    bluebill
  means   a diving duck with pale sides and dark ends

group scoter
  means   a dark sea duck

group sea-duck
  also    eider
  means   a duck of salt water

group seabird
  also    marine bird, ocean bird
  means   a bird that feeds at sea

group shearwater
  means   a stiff-winged bird that skims the waves

group shelduck
  also    sheldrake
  means   a large goose-like duck

group shrike
  also    butcher bird
  means   a hook-billed songbird that hunts like a small hawk

group snipe
  means   a long-billed, striped wader of wet ground

group songbird
  also    passerine, perching bird, passeriform
  means   any of the small perching birds

group sparrow
  also    emberizid
  means   a small, mostly brown, streaked seed-eater

group spoonbill
  means   a wading bird with a spoon-tipped bill

group starling
  means   a chunky, short-tailed, sharp-billed dark bird

group stilt
  also    avocet
  means   a very long-legged slim wader

group stint
  also    peeps, peep species
  means   a very small sandpiper

group stork
  means   a very tall bird with a heavy straight bill

group swallow
  also    hirundine, martin
  means   a slim-winged bird that feeds on the wing

group swan
  means   a very large, long-necked, mostly white water bird

group swift
  means   a dark bird with scythe-shaped wings, always in the air

group tanager
  means   a bright songbird of treetops with a stout bill

group teal
  means   a small dabbling duck

group tern
  also    sea swallow, marsh tern
  means   a slim, pointed-winged water bird that plunges or dips

group thrasher
  means   a long-tailed, curved-billed bird of thickets

group thrush
  also    turdid, catharus thrush
  means   a plump, upright, often spotted songbird

group tit
  also    titmouse, titmice, parid
  means   a small acrobatic bird of trees

group towhee
  means   a large, long-tailed sparrow that scratches in leaf litter

group treecreeper
  also    creeper
  means   a small brown bird that spirals up trunks

group tringa-wader
  also    tringa, yellowlegs
  means   a slim, long-legged, tail-bobbing wader

group tubenose
  also    procellarid
  means   an ocean bird with tube-like nostrils

group turkey
  means   a huge ground bird with a bare head

group vireo
  means   a small, slow-moving songbird with a hooked bill tip

group vulture
  also    condor, carrion eater
  means   a large bare-headed soarer that eats the dead

group wader
  also    shorebird, wading bird, limicoline
  means   a long-legged bird of mud and shore

group wagtail
  means   a slim walking bird that pumps its long tail

group warbler
  also    parulid, old world warbler, new world warbler, sylviid
  means   a small, slim-billed, insect-eating songbird

group waterbird
  also    aquatic bird, waterfowl bird, water bird, shore bird
  means   any bird of lakes, rivers and marsh

group waterfowl
  also    wildfowl, anatid
  means   ducks, geese and swans

group waterthrush
  means   a streaked brown warbler that bobs at the water's edge

group waxwing
  means   a sleek crested bird that eats berries

group wheatear
  means   a ground chat with a white rump

group whistling-duck
  also    tree duck
  means   a long-legged, upright duck

group wigeon
  also    widgeon
  means   a round-headed dabbling duck that grazes

group woodcock
  also    timberdoodle
  means   a plump, long-billed wader of woods

group woodpecker
  also    flicker
  means   a bird that clings to trunks and hammers

group wren
  means   a tiny or small brown bird with a cocked tail

short-names first-words
  drop    Common, Eurasian, European, Northern, Western
  means   the first words of names that people leave out: pochard for Common Pochard
