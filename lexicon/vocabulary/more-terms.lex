# Terms of field marks and kinds of bird that turn up in reference works.

group ostrich
  also    emu, rhea, cassowary, moa, ratite bird
  means   a very large bird that cannot fly

group fowl
  also    jungle fowl, red jungle fowl, domestic fowl, poultry fowl, megapode, mound bird, guinea fowl
  also    peafowl
  means   a heavy bird of the ground like a hen

group sandgrouse
  means   a pigeon-like bird of dry ground

group weaverbird
  also    weaver, weaver finch
  means   a finch-like bird that weaves its nest

group penguin
  means   an upright seabird that cannot fly

group nightingale
  means   a plain brown songster of thickets

group caracara
  means   a long-legged hawk that eats carrion

group tropical-songbird
  also    bowerbird, antbird, bird of paradise, lorikeet, coucal, honeycreeper, weaver bird
  means   a land bird of the tropics

group seriema
  also    cariama, screamer, trumpeter, courser, snakebird, dodo
  means   a large bird of the far south

group dipper-bird
  also    water ouzel, ouzel
  means   a stout bird of fast streams

group waterbird-by-name
  also    goldeneye, goosander, whooper, turnstone, tattler, button quail
  means   a bird of water, shore or plain, named without its kind

group landbird-by-name
  also    nutcracker, hoopoe, whippoorwill, whitethroat, scops owl, horned owl, audubon's warbler
  also    tree creeper
  also    wood warbler, woodland flycatcher
  means   a bird of wood or field, named without its kind

group game-bird
  also    cage bird, land bird
  means   a bird spoken of by its use

build flightless
  also    unable to fly, cannot fly, can't fly
  means   with wings too weak to fly

behaviour ground-living
  also    terrestrial, lives on the ground, live on the ground
  means   keeps to the ground

behaviour flock-in-numbers
  also    large flock, large flocks, large colony, large colonies
  means   many keep together

shape erectile
  also    disklike, disk like, disc like
  means   of feathers that can be spread or raised

shape overhanging
  means   hanging over the part below it

mark zebra-markings
  also    markings like a zebra's
  means   close stripes of dark and pale

voice bray
  also    braying call, braying
  means   harsh and drawn out, like a donkey

voice sonorous
  also    sonorous cry, sonorous call
  means   deep and ringing

voice soundless
  also    makes no sound, mute
  means   no sound is heard of it

voice imitates-songs
  also    imitating songs of other birds, imitating other birds, imitates songs of other birds
  means   takes up what other birds sing

habitat tall-reeds
  also    tall reed bed, tall reed beds
  means   a stand of tall reeds

area pectoral
  also    pectoral region
  within  breast
  resolves breast
  means   the breast, in the words of books

# from memory
colour raspberry
  also    raspberry red, raspberry pink, raspberry coloured, raspberry colored
  lab     49 75 16
  means   deep pinkish red, as the fruit

# from memory
colour dun
  also    dun coloured, dun colored, dun brown
  lab     58 6 20
  means   dull greyish brown

shape web-foot
  also    web footed
  area    feet
  value   webbed
  means   with skin between the toes

shape crossing-tips
  also    whose tips cross, tips cross, whose tips cross when closed, tips cross when closed
  also    tips that cross
  value   crossed
  means   the tips of the bill cross

shape dish-faced
  area    face
  value   rounded
  means   with a round, flat or hollow face, as some owls
