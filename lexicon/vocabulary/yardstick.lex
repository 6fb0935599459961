# Birds that people measure size by. Mass in grams, from AVONET (Tobias et al. 2022).
# A loose word has the species taken for it in its meaning.

yardstick american-coot
  also    coot
  region  north-america
  mass    636.7
  means   the American Coot; mass: AVONET (Tobias et al. 2022)

yardstick american-crow
  also    crow
  region  north-america
  mass    448.8
  means   the American Crow; mass: AVONET (Tobias et al. 2022)

yardstick american-goldfinch
  also    goldfinch
  region  north-america
  mass    12.8
  means   the American Goldfinch; mass: AVONET (Tobias et al. 2022)

yardstick american-kestrel
  also    kestrel
  region  north-america
  mass    114.6
  means   the American Kestrel; mass: AVONET (Tobias et al. 2022)

yardstick american-robin
  also    robin
  region  north-america
  mass    78.5
  means   the American Robin; mass: AVONET (Tobias et al. 2022)

yardstick american-woodcock
  also    woodcock
  region  north-america
  mass    196.3
  means   the American Woodcock; mass: AVONET (Tobias et al. 2022)

yardstick bald-eagle
  region  north-america
  mass    4700.6
  means   the Bald Eagle; mass: AVONET (Tobias et al. 2022)

yardstick baltimore-oriole
  also    oriole, northern oriole
  region  north-america
  mass    32.8
  means   the Baltimore Oriole; mass: AVONET (Tobias et al. 2022)

yardstick barn-owl
  region  both
  mass    403.3
  means   the Barn Owl; mass: AVONET (Tobias et al. 2022)

yardstick barn-swallow
  region  both
  mass    17.9
  means   the Barn Swallow; mass: AVONET (Tobias et al. 2022)

yardstick barred-owl
  region  north-america
  mass    711.5
  means   the Barred Owl; mass: AVONET (Tobias et al. 2022)

yardstick belted-kingfisher
  also    kingfisher
  region  north-america
  mass    148.0
  means   the Belted Kingfisher; mass: AVONET (Tobias et al. 2022)

yardstick black-billed-magpie
  also    magpie
  region  north-america
  mass    177.1
  means   the Black-billed Magpie; mass: AVONET (Tobias et al. 2022)

yardstick black-capped-chickadee
  region  north-america
  mass    10.8
  means   the Black-capped Chickadee; mass: AVONET (Tobias et al. 2022)

yardstick black-headed-gull
  region  europe
  mass    284.0
  means   the Black-headed Gull; mass: AVONET (Tobias et al. 2022)

yardstick blackbird-of-north-america
  hidden  yes
  also    blackbird
  region  north-america
  mass    50.8
  means   loose word; the Red-winged Blackbird is taken; mass: AVONET (Tobias et al. 2022)

yardstick blue-jay
  also    jay
  region  north-america
  mass    88.0
  means   the Blue Jay; mass: AVONET (Tobias et al. 2022)

yardstick brown-headed-cowbird
  also    cowbird
  region  north-america
  mass    40.3
  means   the Brown-headed Cowbird; mass: AVONET (Tobias et al. 2022)

yardstick bunting-of-europe
  hidden  yes
  also    bunting
  region  europe
  mass    18.4
  means   loose word; the Common Reed Bunting is taken; mass: AVONET (Tobias et al. 2022)

yardstick bunting-of-north-america
  hidden  yes
  also    bunting
  region  north-america
  mass    14.7
  means   loose word; the Indigo Bunting is taken; mass: AVONET (Tobias et al. 2022)

yardstick bushtit
  also    common bushtit, american bushtit
  region  north-america
  mass    5.3
  means   the Bushtit; mass: AVONET (Tobias et al. 2022)

yardstick canada-goose
  also    canadian goose, canada geese, canadian geese
  region  both
  mass    2811.7
  means   the Canada Goose; mass: AVONET (Tobias et al. 2022)

yardstick carolina-wren
  region  north-america
  mass    19.0
  means   the Carolina Wren; mass: AVONET (Tobias et al. 2022)

yardstick carrion-crow
  also    crow
  region  europe
  mass    570.0
  means   the Carrion Crow; mass: AVONET (Tobias et al. 2022)

yardstick cedar-waxwing
  also    waxwing
  region  north-america
  mass    31.6
  means   the Cedar Waxwing; mass: AVONET (Tobias et al. 2022)

yardstick chickadee
  region  north-america
  mass    10.8
  means   loose word; the Black-capped Chickadee is taken; mass: AVONET (Tobias et al. 2022)

yardstick chimney-swift
  also    swift
  region  north-america
  mass    23.6
  means   the Chimney Swift; mass: AVONET (Tobias et al. 2022)

yardstick chipping-sparrow
  also    chippy, chippie
  region  north-america
  mass    12.2
  means   the Chipping Sparrow; mass: AVONET (Tobias et al. 2022)

yardstick coal-tit
  region  europe
  mass    9.2
  means   the Coal Tit; mass: AVONET (Tobias et al. 2022)

yardstick common-blackbird
  also    blackbird, eurasian blackbird, european blackbird
  region  europe
  mass    102.7
  means   the Common Blackbird; mass: AVONET (Tobias et al. 2022)

yardstick common-buzzard
  also    buzzard
  region  europe
  mass    759.1
  means   the Common Buzzard; mass: AVONET (Tobias et al. 2022)

yardstick common-chaffinch
  also    chaffinch
  region  europe
  mass    23.8
  means   the Common Chaffinch; mass: AVONET (Tobias et al. 2022)

yardstick common-chiffchaff
  also    chiffchaff
  region  europe
  mass    8.3
  means   the Common Chiffchaff; mass: AVONET (Tobias et al. 2022)

yardstick common-grackle
  also    grackle
  region  north-america
  mass    105.2
  means   the Common Grackle; mass: AVONET (Tobias et al. 2022)

yardstick common-gull
  also    mew gull
  region  both
  mass    412.5
  means   the Common Gull; mass: AVONET (Tobias et al. 2022)

yardstick common-house-martin
  also    house martin
  region  europe
  mass    14.5
  means   the Common House Martin; mass: AVONET (Tobias et al. 2022)

yardstick common-kestrel
  also    kestrel, eurasian kestrel
  region  europe
  mass    183.2
  means   the Common Kestrel; mass: AVONET (Tobias et al. 2022)

yardstick common-kingfisher
  also    kingfisher
  region  europe
  mass    31.1
  means   the Common Kingfisher; mass: AVONET (Tobias et al. 2022)

yardstick common-loon
  also    loon, great northern diver
  region  both
  mass    4956.8
  means   the Common Loon; mass: AVONET (Tobias et al. 2022)

yardstick common-moorhen
  also    moorhen, water hen
  region  europe
  mass    339.6
  means   the Common Moorhen; mass: AVONET (Tobias et al. 2022)

yardstick common-raven
  also    raven, northern raven
  region  both
  mass    928.0
  means   the Common Raven; mass: AVONET (Tobias et al. 2022)

yardstick common-redshank
  also    redshank
  region  europe
  mass    129.0
  means   the Common Redshank; mass: AVONET (Tobias et al. 2022)

yardstick common-sandpiper
  region  europe
  mass    48.0
  means   the Common Sandpiper; mass: AVONET (Tobias et al. 2022)

yardstick common-snipe
  also    snipe
  region  europe
  mass    112.9
  means   the Common Snipe; mass: AVONET (Tobias et al. 2022)

yardstick common-swift
  also    swift
  region  europe
  mass    37.6
  means   the Common Swift; mass: AVONET (Tobias et al. 2022)

yardstick common-teal
  also    teal, green-winged teal, eurasian teal
  region  both
  mass    341.9
  means   the Common Teal; mass: AVONET (Tobias et al. 2022)

yardstick common-tern
  region  both
  mass    129.2
  means   the Common Tern; mass: AVONET (Tobias et al. 2022)

yardstick common-wood-pigeon
  also    wood pigeon, cushat
  region  europe
  mass    490.0
  means   the Common Wood Pigeon; mass: AVONET (Tobias et al. 2022)

yardstick coopers-hawk
  also    cooper's hawk
  region  north-america
  mass    429.7
  means   the Cooper's Hawk; mass: AVONET (Tobias et al. 2022)

yardstick dark-eyed-junco
  also    junco, slate-colored junco, snowbird
  region  north-america
  mass    19.5
  means   the Dark-eyed Junco; mass: AVONET (Tobias et al. 2022)

yardstick double-crested-cormorant
  also    cormorant
  region  north-america
  mass    1806.5
  means   the Double-crested Cormorant; mass: AVONET (Tobias et al. 2022)

yardstick dove-of-europe
  hidden  yes
  also    dove
  region  europe
  mass    149.0
  means   loose word; the Eurasian Collared-Dove is taken; mass: AVONET (Tobias et al. 2022)

yardstick downy-woodpecker
  region  north-america
  mass    25.6
  means   the Downy Woodpecker; mass: AVONET (Tobias et al. 2022)

yardstick duck
  region  both
  mass    843.4
  means   loose word; the Mallard is taken; mass: AVONET (Tobias et al. 2022)

yardstick dunlin
  region  both
  mass    51.9
  means   the Dunlin; mass: AVONET (Tobias et al. 2022)

yardstick dunnock
  also    hedge sparrow, hedge accentor
  region  europe
  mass    20.2
  means   the Dunnock; mass: AVONET (Tobias et al. 2022)

yardstick eagle-of-europe
  hidden  yes
  also    eagle
  region  europe
  mass    4248.0
  means   loose word; the Golden Eagle is taken; mass: AVONET (Tobias et al. 2022)

yardstick eagle-of-north-america
  hidden  yes
  also    eagle
  region  north-america
  mass    4700.6
  means   loose word; the Bald Eagle is taken; mass: AVONET (Tobias et al. 2022)

yardstick eastern-bluebird
  also    bluebird
  region  north-america
  mass    27.5
  means   the Eastern Bluebird; mass: AVONET (Tobias et al. 2022)

yardstick eastern-meadowlark
  also    meadowlark
  region  north-america
  mass    91.8
  means   the Eastern Meadowlark; mass: AVONET (Tobias et al. 2022)

yardstick eastern-towhee
  also    towhee, rufous-sided towhee
  region  north-america
  mass    40.0
  means   the Eastern Towhee; mass: AVONET (Tobias et al. 2022)

yardstick egret-of-europe
  hidden  yes
  also    egret
  region  europe
  mass    312.0
  means   loose word; the Little Egret is taken; mass: AVONET (Tobias et al. 2022)

yardstick egret-of-north-america
  hidden  yes
  also    egret
  region  north-america
  mass    871.3
  means   loose word; the Great Egret is taken; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-blackcap
  also    blackcap
  region  europe
  mass    16.7
  means   the Eurasian Blackcap; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-blue-tit
  also    blue tit
  region  europe
  mass    11.1
  means   the Eurasian Blue Tit; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-bullfinch
  also    bullfinch
  region  europe
  mass    24.3
  means   the Eurasian Bullfinch; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-collared-dove
  also    collared dove
  region  both
  mass    149.0
  means   the Eurasian Collared-Dove; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-coot
  also    coot
  region  europe
  mass    717.1
  means   the Eurasian Coot; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-curlew
  also    curlew
  region  europe
  mass    803.0
  means   the Eurasian Curlew; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-jay
  also    jay
  region  europe
  mass    159.5
  means   the Eurasian Jay; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-magpie
  also    magpie, common magpie
  region  europe
  mass    217.5
  means   the Eurasian Magpie; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-nuthatch
  also    nuthatch
  region  europe
  mass    20.4
  means   the Eurasian Nuthatch; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-oystercatcher
  also    oystercatcher
  region  europe
  mass    526.0
  means   the Eurasian Oystercatcher; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-siskin
  also    siskin
  region  europe
  mass    13.2
  means   the Eurasian Siskin; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-skylark
  also    skylark, lark
  region  europe
  mass    37.3
  means   the Eurasian Skylark; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-sparrowhawk
  also    sparrowhawk
  region  europe
  mass    220.8
  means   the Eurasian Sparrowhawk; mass: AVONET (Tobias et al. 2022)

yardstick eurasian-wren
  also    wren, jenny wren
  region  europe
  mass    9.7
  means   the Eurasian Wren; mass: AVONET (Tobias et al. 2022)

yardstick european-goldfinch
  also    goldfinch
  region  europe
  mass    16.0
  means   the European Goldfinch; mass: AVONET (Tobias et al. 2022)

yardstick european-green-woodpecker
  also    green woodpecker
  region  europe
  mass    176.0
  means   the European Green Woodpecker; mass: AVONET (Tobias et al. 2022)

yardstick european-greenfinch
  also    greenfinch
  region  europe
  mass    26.0
  means   the European Greenfinch; mass: AVONET (Tobias et al. 2022)

yardstick european-robin
  also    robin, robin redbreast, redbreast
  region  europe
  mass    17.7
  means   the European Robin; mass: AVONET (Tobias et al. 2022)

yardstick european-starling
  also    starling, common starling
  region  both
  mass    77.1
  means   the European Starling; mass: AVONET (Tobias et al. 2022)

yardstick european-turtle-dove
  also    turtle dove
  region  europe
  mass    132.0
  means   the European Turtle Dove; mass: AVONET (Tobias et al. 2022)

yardstick falcon
  region  both
  mass    760.0
  means   loose word; the Peregrine Falcon is taken; mass: AVONET (Tobias et al. 2022)

yardstick fieldfare
  region  europe
  mass    106.0
  means   the Fieldfare; mass: AVONET (Tobias et al. 2022)

yardstick finch-of-europe
  hidden  yes
  also    finch
  region  europe
  mass    23.8
  means   loose word; the Common Chaffinch is taken; mass: AVONET (Tobias et al. 2022)

yardstick finch-of-north-america
  hidden  yes
  also    finch
  region  north-america
  mass    21.4
  means   loose word; the House Finch is taken; mass: AVONET (Tobias et al. 2022)

yardstick goldcrest
  region  europe
  mass    5.5
  means   the Goldcrest; mass: AVONET (Tobias et al. 2022)

yardstick golden-crowned-kinglet
  also    kinglet
  region  north-america
  mass    6.2
  means   the Golden-crowned Kinglet; mass: AVONET (Tobias et al. 2022)

yardstick golden-eagle
  region  both
  mass    4248.0
  means   the Golden Eagle; mass: AVONET (Tobias et al. 2022)

yardstick goose-of-europe
  hidden  yes
  also    goose, geese
  region  europe
  mass    3302.4
  means   loose word; the Greylag Goose is taken; mass: AVONET (Tobias et al. 2022)

yardstick goose-of-north-america
  hidden  yes
  also    goose, geese
  region  north-america
  mass    2811.7
  means   loose word; the Canada Goose is taken; mass: AVONET (Tobias et al. 2022)

yardstick gray-catbird
  also    catbird, grey catbird
  region  north-america
  mass    35.3
  means   the Gray Catbird; mass: AVONET (Tobias et al. 2022)

yardstick great-black-backed-gull
  also    greater black-backed gull, gbbg
  region  both
  mass    1649.7
  means   the Great Black-backed Gull; mass: AVONET (Tobias et al. 2022)

yardstick great-blue-heron
  also    heron, gbh
  region  north-america
  mass    2523.4
  means   the Great Blue Heron; mass: AVONET (Tobias et al. 2022)

yardstick great-cormorant
  also    cormorant
  region  europe
  mass    2529.0
  means   the Great Cormorant; mass: AVONET (Tobias et al. 2022)

yardstick great-egret
  also    great white egret
  region  both
  mass    871.3
  means   the Great Egret; mass: AVONET (Tobias et al. 2022)

yardstick great-horned-owl
  region  north-america
  mass    1354.5
  means   the Great Horned Owl; mass: AVONET (Tobias et al. 2022)

yardstick great-spotted-woodpecker
  also    greater spotted woodpecker
  region  europe
  mass    74.9
  means   the Great Spotted Woodpecker; mass: AVONET (Tobias et al. 2022)

yardstick great-tit
  region  europe
  mass    16.3
  means   the Great Tit; mass: AVONET (Tobias et al. 2022)

yardstick grey-heron
  also    heron, gray heron
  region  europe
  mass    1443.0
  means   the Grey Heron; mass: AVONET (Tobias et al. 2022)

yardstick grey-partridge
  also    partridge, gray partridge
  region  europe
  mass    405.3
  means   the Grey Partridge; mass: AVONET (Tobias et al. 2022)

yardstick greylag-goose
  also    greylag, graylag, graylag goose
  region  europe
  mass    3302.4
  means   the Greylag Goose; mass: AVONET (Tobias et al. 2022)

yardstick gull-of-europe
  hidden  yes
  also    gull, seagull
  region  europe
  mass    1091.0
  means   loose word; the Herring Gull is taken; mass: AVONET (Tobias et al. 2022)

yardstick gull-of-north-america
  hidden  yes
  also    gull, seagull
  region  north-america
  mass    516.3
  means   loose word; the Ring-billed Gull is taken; mass: AVONET (Tobias et al. 2022)

yardstick hairy-woodpecker
  region  north-america
  mass    62.7
  means   the Hairy Woodpecker; mass: AVONET (Tobias et al. 2022)

yardstick hawk-of-europe
  hidden  yes
  also    hawk
  region  europe
  mass    220.8
  means   loose word; the Eurasian Sparrowhawk is taken; mass: AVONET (Tobias et al. 2022)

yardstick hawk-of-north-america
  hidden  yes
  also    hawk
  region  north-america
  mass    1101.2
  means   loose word; the Red-tailed Hawk is taken; mass: AVONET (Tobias et al. 2022)

yardstick hermit-thrush
  region  north-america
  mass    30.1
  means   the Hermit Thrush; mass: AVONET (Tobias et al. 2022)

yardstick herring-gull
  region  both
  mass    1091.0
  means   the Herring Gull; mass: AVONET (Tobias et al. 2022)

yardstick house-finch
  region  north-america
  mass    21.4
  means   the House Finch; mass: AVONET (Tobias et al. 2022)

yardstick house-sparrow
  also    english sparrow
  region  both
  mass    26.5
  means   the House Sparrow; mass: AVONET (Tobias et al. 2022)

yardstick house-wren
  region  north-america
  mass    10.9
  means   the House Wren; mass: AVONET (Tobias et al. 2022)

yardstick hummingbird
  also    hummer
  region  north-america
  mass    3.1
  means   loose word; the Ruby-throated Hummingbird is taken; mass: AVONET (Tobias et al. 2022)

yardstick killdeer
  also    kildeer
  region  north-america
  mass    96.4
  means   the Killdeer; mass: AVONET (Tobias et al. 2022)

yardstick little-egret
  region  europe
  mass    312.0
  means   the Little Egret; mass: AVONET (Tobias et al. 2022)

yardstick little-grebe
  also    dabchick
  region  europe
  mass    169.4
  means   the Little Grebe; mass: AVONET (Tobias et al. 2022)

yardstick little-owl
  region  europe
  mass    168.9
  means   the Little Owl; mass: AVONET (Tobias et al. 2022)

yardstick long-tailed-tit
  region  europe
  mass    8.6
  means   the Long-tailed Tit; mass: AVONET (Tobias et al. 2022)

yardstick mallard
  also    mallard duck, wild duck
  region  both
  mass    843.4
  means   the Mallard; mass: AVONET (Tobias et al. 2022)

yardstick meadow-pipit
  also    pipit
  region  europe
  mass    18.4
  means   the Meadow Pipit; mass: AVONET (Tobias et al. 2022)

yardstick merlin
  region  both
  mass    188.5
  means   the Merlin; mass: AVONET (Tobias et al. 2022)

yardstick mistle-thrush
  region  europe
  mass    117.4
  means   the Mistle Thrush; mass: AVONET (Tobias et al. 2022)

yardstick mourning-dove
  heard   morning dove
  heard-before :sized, :stop, :comma, :with
  also    dove, turtledove
  region  north-america
  mass    118.9
  means   the Mourning Dove; mass: AVONET (Tobias et al. 2022)

yardstick mute-swan
  region  both
  mass    10682.0
  means   the Mute Swan; mass: AVONET (Tobias et al. 2022)

yardstick northern-bobwhite
  also    bobwhite, bobwhite quail
  region  north-america
  mass    171.9
  means   the Northern Bobwhite; mass: AVONET (Tobias et al. 2022)

yardstick northern-cardinal
  also    cardinal, redbird
  region  north-america
  mass    42.6
  means   the Northern Cardinal; mass: AVONET (Tobias et al. 2022)

yardstick northern-flicker
  also    flicker, yellow-shafted flicker
  region  north-america
  mass    131.5
  means   the Northern Flicker; mass: AVONET (Tobias et al. 2022)

yardstick northern-gannet
  also    gannet
  region  both
  mass    2998.7
  means   the Northern Gannet; mass: AVONET (Tobias et al. 2022)

yardstick northern-lapwing
  also    lapwing, peewit, green plover
  region  europe
  mass    218.4
  means   the Northern Lapwing; mass: AVONET (Tobias et al. 2022)

yardstick northern-mockingbird
  also    mockingbird, mocker
  region  north-america
  mass    48.5
  means   the Northern Mockingbird; mass: AVONET (Tobias et al. 2022)

yardstick osprey
  also    fish hawk
  region  both
  mass    1483.2
  means   the Osprey; mass: AVONET (Tobias et al. 2022)

yardstick owl-of-europe
  hidden  yes
  also    owl
  region  europe
  mass    472.5
  means   loose word; the Tawny Owl is taken; mass: AVONET (Tobias et al. 2022)

yardstick owl-of-north-america
  hidden  yes
  also    owl
  region  north-america
  mass    1354.5
  means   loose word; the Great Horned Owl is taken; mass: AVONET (Tobias et al. 2022)

yardstick peregrine-falcon
  also    peregrine
  region  both
  mass    760.0
  means   the Peregrine Falcon; mass: AVONET (Tobias et al. 2022)

yardstick pigeon
  region  both
  mass    354.2
  means   loose word; the Rock Pigeon is taken; mass: AVONET (Tobias et al. 2022)

yardstick pileated-woodpecker
  region  north-america
  mass    286.6
  means   the Pileated Woodpecker; mass: AVONET (Tobias et al. 2022)

yardstick quail
  region  north-america
  mass    171.9
  means   loose word; the Northern Bobwhite is taken; mass: AVONET (Tobias et al. 2022)

yardstick red-eyed-vireo
  region  north-america
  mass    16.1
  means   the Red-eyed Vireo; mass: AVONET (Tobias et al. 2022)

yardstick red-kite
  region  europe
  mass    1071.8
  means   the Red Kite; mass: AVONET (Tobias et al. 2022)

yardstick red-tailed-hawk
  also    redtail, red-tail hawk
  region  north-america
  mass    1101.2
  means   the Red-tailed Hawk; mass: AVONET (Tobias et al. 2022)

yardstick red-winged-blackbird
  also    redwing blackbird
  region  north-america
  mass    50.8
  means   the Red-winged Blackbird; mass: AVONET (Tobias et al. 2022)

yardstick redwing
  region  europe
  mass    61.2
  means   the Redwing; mass: AVONET (Tobias et al. 2022)

yardstick ring-billed-gull
  also    ringbill, ring-bill gull
  region  north-america
  mass    516.3
  means   the Ring-billed Gull; mass: AVONET (Tobias et al. 2022)

yardstick ring-necked-pheasant
  also    pheasant, common pheasant
  region  both
  mass    1120.3
  means   the Ring-necked Pheasant; mass: AVONET (Tobias et al. 2022)

yardstick rock-pigeon
  also    rock dove, feral pigeon, town pigeon, city pigeon, street pigeon, racing pigeon, domestic pigeon
  region  both
  mass    354.2
  means   the Rock Pigeon; mass: AVONET (Tobias et al. 2022)

yardstick rook
  region  europe
  mass    452.1
  means   the Rook; mass: AVONET (Tobias et al. 2022)

yardstick ruffed-grouse
  also    grouse
  region  north-america
  mass    530.9
  means   the Ruffed Grouse; mass: AVONET (Tobias et al. 2022)

yardstick sandhill-crane
  also    crane
  region  north-america
  mass    4296.2
  means   the Sandhill Crane; mass: AVONET (Tobias et al. 2022)

yardstick sandpiper-of-europe
  hidden  yes
  also    sandpiper
  region  europe
  mass    48.0
  means   loose word; the Common Sandpiper is taken; mass: AVONET (Tobias et al. 2022)

yardstick sandpiper-of-north-america
  hidden  yes
  also    sandpiper
  region  north-america
  mass    40.4
  means   loose word; the Spotted Sandpiper is taken; mass: AVONET (Tobias et al. 2022)

yardstick screech-owl
  also    eastern screech-owl
  region  north-america
  mass    180.0
  means   loose word; the Eastern Screech-Owl is taken; mass: AVONET (Tobias et al. 2022)

yardstick scrub-jay
  also    california scrub-jay, western scrub-jay
  region  north-america
  mass    85.7
  means   loose word; the California Scrub-Jay is taken; mass: AVONET (Tobias et al. 2022)

yardstick sharp-shinned-hawk
  also    sharpie, sharpy, sharpshin
  region  north-america
  mass    130.6
  means   the Sharp-shinned Hawk; mass: AVONET (Tobias et al. 2022)

yardstick snow-goose
  also    snow geese
  region  north-america
  mass    2636.2
  means   the Snow Goose; mass: AVONET (Tobias et al. 2022)

yardstick song-sparrow
  region  north-america
  mass    21.9
  means   the Song Sparrow; mass: AVONET (Tobias et al. 2022)

yardstick song-thrush
  also    mavis, throstle
  region  europe
  mass    67.7
  means   the Song Thrush; mass: AVONET (Tobias et al. 2022)

yardstick sparrow-of-europe
  hidden  yes
  also    sparrow
  region  europe
  mass    26.5
  means   loose word; the House Sparrow is taken; mass: AVONET (Tobias et al. 2022)

yardstick sparrow-of-north-america
  hidden  yes
  also    sparrow
  region  north-america
  mass    21.9
  means   loose word; the Song Sparrow is taken; mass: AVONET (Tobias et al. 2022)

yardstick stellers-jay
  also    steller's jay
  region  north-america
  mass    128.0
  means   the Steller's Jay; mass: AVONET (Tobias et al. 2022)

yardstick stock-dove
  region  europe
  mass    290.8
  means   the Stock Dove; mass: AVONET (Tobias et al. 2022)

yardstick swallow
  region  both
  mass    17.9
  means   loose word; the Barn Swallow is taken; mass: AVONET (Tobias et al. 2022)

yardstick swan
  region  both
  mass    10682.0
  means   loose word; the Mute Swan is taken; mass: AVONET (Tobias et al. 2022)

yardstick tawny-owl
  region  europe
  mass    472.5
  means   the Tawny Owl; mass: AVONET (Tobias et al. 2022)

yardstick tern
  region  both
  mass    129.2
  means   loose word; the Common Tern is taken; mass: AVONET (Tobias et al. 2022)

yardstick thrush-of-europe
  hidden  yes
  also    thrush
  region  europe
  mass    67.7
  means   loose word; the Song Thrush is taken; mass: AVONET (Tobias et al. 2022)

yardstick thrush-of-north-america
  hidden  yes
  also    thrush
  region  north-america
  mass    30.1
  means   loose word; the Hermit Thrush is taken; mass: AVONET (Tobias et al. 2022)

yardstick tit-of-europe
  hidden  yes
  also    tit
  region  europe
  mass    11.1
  means   loose word; the Eurasian Blue Tit is taken; mass: AVONET (Tobias et al. 2022)

yardstick tufted-duck
  region  europe
  mass    701.2
  means   the Tufted Duck; mass: AVONET (Tobias et al. 2022)

yardstick tufted-titmouse
  also    titmouse, titmice
  region  north-america
  mass    21.6
  means   the Tufted Titmouse; mass: AVONET (Tobias et al. 2022)

yardstick turkey-vulture
  also    vulture, buzzard, turkey buzzard
  region  north-america
  mass    1518.2
  means   the Turkey Vulture; mass: AVONET (Tobias et al. 2022)

yardstick vireo
  region  north-america
  mass    16.1
  means   loose word; the Red-eyed Vireo is taken; mass: AVONET (Tobias et al. 2022)

yardstick warbler-of-europe
  hidden  yes
  also    warbler
  region  europe
  mass    8.7
  means   loose word; the Willow Warbler is taken; mass: AVONET (Tobias et al. 2022)

yardstick warbler-of-north-america
  hidden  yes
  also    warbler
  region  north-america
  mass    10.2
  means   loose word; the Yellow Warbler is taken; mass: AVONET (Tobias et al. 2022)

yardstick western-jackdaw
  also    jackdaw, eurasian jackdaw
  region  europe
  mass    246.0
  means   the Western Jackdaw; mass: AVONET (Tobias et al. 2022)

yardstick white-breasted-nuthatch
  also    nuthatch
  region  north-america
  mass    21.0
  means   the White-breasted Nuthatch; mass: AVONET (Tobias et al. 2022)

yardstick white-wagtail
  also    wagtail, pied wagtail
  region  europe
  mass    23.9
  means   the White Wagtail; mass: AVONET (Tobias et al. 2022)

yardstick wild-turkey
  also    turkey
  region  north-america
  mass    5791.4
  means   the Wild Turkey; mass: AVONET (Tobias et al. 2022)

yardstick willow-warbler
  region  europe
  mass    8.7
  means   the Willow Warbler; mass: AVONET (Tobias et al. 2022)

yardstick wilsons-snipe
  also    wilson's snipe, snipe
  region  north-america
  mass    112.9
  means   the Wilson's Snipe; mass: AVONET (Tobias et al. 2022)

yardstick wood-duck
  region  north-america
  mass    657.6
  means   the Wood Duck; mass: AVONET (Tobias et al. 2022)

yardstick woodpecker-of-europe
  hidden  yes
  also    woodpecker
  region  europe
  mass    74.9
  means   loose word; the Great Spotted Woodpecker is taken; mass: AVONET (Tobias et al. 2022)

yardstick woodpecker-of-north-america
  hidden  yes
  also    woodpecker
  region  north-america
  mass    62.7
  means   loose word; the Hairy Woodpecker is taken; mass: AVONET (Tobias et al. 2022)

yardstick wren-of-north-america
  hidden  yes
  also    wren
  region  north-america
  mass    10.9
  means   loose word; the House Wren is taken; mass: AVONET (Tobias et al. 2022)

yardstick yellow-warbler
  region  north-america
  mass    10.2
  means   the Yellow Warbler; mass: AVONET (Tobias et al. 2022)

yardstick yellowhammer
  region  europe
  mass    29.7
  means   the Yellowhammer; mass: AVONET (Tobias et al. 2022)
