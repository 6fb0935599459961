# What a whole bird does: feeding, moving, company, nest and display, and how it takes people.

behaviour aggressive
  also    pugnacious, quarrelsome, feisty, bully other birds, bully smaller birds, bully the others
  means   picks fights with other birds

behaviour ambush-prey
  also    ambush, ambush birds, ambush small birds, ambush birds at feeders, ambush birds at a feeder
  also    hunt by ambush, raid feeders, raid a feeder, raid garden feeders, raid the feeder
  also    raid the feeders, attack birds at the feeder, attack birds at feeders
  means   comes at its prey suddenly from cover

behaviour approach-people
  also    come up to people, come right up to us, come close to people, follow walkers
  also    follow the gardener, come right up to me, came up to people, came right up to us
  also    came close to people, came right up to me
  means   comes towards people of its own accord

behaviour arrive-together
  also    arrive in a gang, come in a group, descend on the feeders, descend on the feeder
  also    arrive in a flock, come in a flock, come in numbers, arrive in a group, visit in groups
  also    turn up in a gang, descend in flocks, came in a group, came in a flock, came in numbers
  means   many come at once

behaviour associate-with-others
  also    join other birds, feed with other birds, mix with other species, feed among sparrows
  also    join tits, tag along with other birds, travel with chickadees, flock with finches
  also    feed with other waders, fed with other birds, fed among sparrows, fed with other waders
  also    follow other tits, follow tits, follow chickadees, join chickadees, join other tits
  also    flock with tits
  means   keeps company with birds of other kinds

behaviour attack-reflection
  also    fight its reflection, peck at the window, attack the window, attack its own reflection
  also    attack the wing mirror, tap on the window, tap at the window, attack a window
  also    attack a wing mirror, fought its reflection
  means   flies at its own image in glass

behaviour bathe
  also    take a bath, have a bath, splash about, splash in a puddle, splash in a bird bath
  also    splash around in the water, splash in the puddle, splash in the bird bath, took a bath
  also    had a bath
  means   wets and shakes its plumage in water

behaviour beat-prey
  also    bash prey, beat prey against a branch, bash a fish on a perch, whack prey, beat a fish
  also    bash a fish, beat prey against the branch, bash a fish on its perch, bash a fish on the perch
  means   strikes what it caught against something hard

behaviour beg
  also    beg for food, plead for food, gape for food, chase a parent for food
  means   a young bird or a mate asking to be fed

behaviour bob-body
  also    bob up and down, bob on a rock, bob on the rocks, bob constantly, bob its body, teeter
  also    curtsey, curtsy, do squats, bob its whole body, bob its rear end, bob its back end
  also    bob on the rock, did squats
  means   moves the whole body up and down while standing

behaviour brace-tail
  also    prop itself on its tail, lean on its tail, use its tail as a prop, use its tail for support
  also    prop up on its tail, brace its tail against the trunk, leant on its tail
  also    press its tail on the trunk, press its tail against the trunk, tail pressed on the trunk
  also    tail pressed to the trunk, tail pressed against the trunk, tail braced against the trunk
  means   rests its weight on stiff tail feathers against a stem

behaviour build-nest
  also    nest building, building a nest, nest build, carry nest material, carry nesting material
  also    carry twigs, carry moss, collect moss, collect mud, gather nest material, carry feathers
  also    pull at nest lining, make a nest, made a nest, built nest
  also    build a domed nest, build domed nest, build a mud nest, build a nest of mud
  means   brings or places material for a nest

behaviour cache-food
  also    cache, hide food, store food, store acorns, bury acorns, stash seeds, stash food, hoard
  also    hide seeds in bark, bury nuts, hid food, hid seeds in bark
  also    store seeds, store nuts, store nuts in bark, store seeds in bark
  means   puts food by for later

behaviour carry-chicks
  also    carry chicks on its back, carry young on its back, give chicks a ride
  also    carry chicks on the back, carry young on the back, gave chicks a ride
  means   bears its young on its back as it swims

behaviour carry-food
  also    have food in its bill, carry insects, carry caterpillars, carry a worm, carry fish
  also    carry a fish, carry prey, hold food in its bill, carry food in its bill, have food in its beak
  also    hold food in its beak, carry food in its beak, had food in its bill, held food in its bill
  also    had food in its beak, held food in its beak
  also    carry acorns, carry nuts, carry seeds, carry seeds away, carry berries
  means   holds food it does not swallow, often for young

behaviour catch-fish
  also    take fish, take a fish, grab a fish, spear fish, spear a fish, stab at fish, snatch a fish
  also    snatch fish, fishing, fish for food, hunt fish, come up with a fish, took fish, took a fish
  also    came up with a fish, caught fish
  means   takes fish

behaviour catch-prey
  also    grab prey, take prey, kill prey, seize prey, take small birds, take a bird, catch a bird
  also    catch a vole, catch a mouse, snatch prey, make a kill, took prey, took small birds
  also    took a bird, caught a bird, caught a vole, caught a mouse, made a kill
  also    catch lemmings, catch voles, catch mice, catch rodents, catch rats, caught voles, caught mice
  means   takes an animal larger than an insect

behaviour chase-insects
  also    run after insects, run after bugs, chase bugs, chase flies, chase moths, dash after insects
  also    ran after insects, ran after bugs
  means   pursues insects on foot or with short dashes

behaviour chase-others
  also    chase, pursue, chase other birds, chase small birds, chase smaller birds, chase rivals
  also    chase off rivals, drive off other birds, see off other birds, chase another bird
  also    chase each other, pursue another bird, drove off other birds
  also    chase off others, chase off other birds, chase other birds at feeders
  also    chase off other hummingbirds
  also    chase larger birds, chase bigger birds
  means   flies or runs at other birds to drive them off

behaviour chase-waves
  also    run after waves, run from the waves, run back and forth with the waves, follow the waves
  also    run along the tide edge, run along the edge of the waves, run in and out with the waves
  also    ran after waves, ran from the waves, ran along the tide edge, ran along the edge of the waves
  means   runs up and down a beach with each wave

behaviour chased-by-birds
  also    mobbed by crows, mobbed by gulls, mobbed by small birds, mobbed by other birds, mobbed by jays
  also    mobbed by blackbirds, chased by crows, chased by gulls, chased by small birds, harassed by crows
  also    harassed by gulls, being mobbed
  means   other birds chase or scold it as an enemy

behaviour clamber-in-foliage
  also    clamber, clamber about, clamber around, scramble through branches, scramble about in foliage
  also    climb about in foliage, climb through foliage, clamber like a parrot
  means   pulls itself about among leaves and twigs

behaviour clamber-in-reeds
  also    climb reeds, climb up reeds, climb a reed, climb up a reed, shuffle up reed stems
  also    straddle reeds, straddle stems, cling to a reed, cling to reeds, cling to reed stems
  also    climb up reed stems, climb cattails, climb the reed, climb up the reed, cling to the reed
  also    clung to a reed, clung to reeds, clung to reed stems, clung to the reed
  also    climb stems, climb reed stems, hop from stem to stem, move from stem to stem, clamber up stems
  means   moves up or sits across upright stems

behaviour climb
  also    climb about, climb around, climb branches, climb a tree, climb trees
  means   moves up or about in a tree by its feet

behaviour climb-along-branch
  also    creep along a branch, walk along a branch, climb along a branch, creep along branches
  also    hitch along a branch, sidle along a branch, shuffle along a branch, crawl along branches
  also    creep along the branch, walk along the branch, climb along the branch, hitch along the branch
  also    sidle along the branch, shuffle along the branch, crept along a branch, crept along branches
  also    crept along the branch
  means   moves by foot along a limb

behaviour climb-down-head-first
  also    walk head first down a trunk, go down a trunk head first, climb head first, creep down a trunk
  also    climb down a trunk, climb down a tree, come down a trunk head first
  also    go head first down a trunk, walk down a trunk, creep down head first, walk down trees
  also    climb down trunks, hop down a trunk, move head first down a trunk
  also    walk head first down the trunk, go down the trunk head first, went down a trunk head first
  also    crept down a trunk, came down a trunk head first, went head first down a trunk
  also    crept down head first, went down the trunk head first
  also    climb up and down trunks head first, climb head first down trunks
  also    move up and down trunks head first, climb down trunks head first, creep down trunks head first
  means   goes down a trunk with the head below the feet

behaviour climb-up-trunk
  also    climb a trunk, climb up a trunk, creep up a trunk, creep up trunks, creep up tree trunks
  also    climb trunks, climb tree trunks, shuffle up a trunk, hitch up a trunk, hop up a trunk
  also    go up a trunk, move up a trunk, work up a trunk, run up a trunk, crawl up a trunk
  also    climb head up, crept up a trunk, crept up trunks, crept up tree trunks, went up a trunk
  also    ran up a trunk
  also    creep on trunks, climb on trunks
  means   goes up a trunk with the head uppermost

behaviour cling-to-trunk
  also    cling to a tree, cling to a trunk, cling to bark, cling to the side of a tree
  also    hang on to the trunk, hold on to the trunk, cling to trunks, cling, cling upright to bark
  also    cling to the tree, cling to the trunk, cling to the side of the tree, clung to a tree
  also    clung to a trunk, clung to bark, clung to the side of a tree, hung on to the trunk
  also    held on to the trunk, clung to trunks
  means   grips the bark of an upright trunk

behaviour cling-to-wall
  also    cling to a wall, cling to brickwork, cling to a cliff, cling to rock faces
  also    cling under the eaves, cling to the wall, cling to the cliff, clung to a wall
  also    clung to brickwork, clung to a cliff, clung to rock faces, clung under the eaves
  also    clung to the wall, clung to the cliff
  means   grips an upright wall or rock face

behaviour come-in-to-land
  also    landed, landing, land on a branch, touch down, settle on a branch, alight, alight on a branch
  also    land on a post, settle on a post, alight on a post, land on a wire, settle on a wire
  also    alight on a wire, alight on the branch, land on a fence, settle on the branch, came in to land
  means   comes down from flight on to something

behaviour come-out-at-dusk
  also    crepuscular, hunt at dusk, fly at dusk, feed at dusk, emerge at dusk, flew at dusk
  also    fed at dusk, came out at dusk
  means   busiest in the half light of evening or dawn

behaviour come-out-at-night
  also    nocturnal, hunt at night, fly at night, feed at night, hunt after dark, flew at night
  also    fed at night, came out at night
  means   up and about in the dark

behaviour come-to-ground
  also    drop to the ground, come down to the ground, fly down to the ground, drop down to feed
  also    drop down from its perch, land on the ground, drop on to the grass, drop to the floor
  also    came down to the ground, flew down to the ground, came to ground
  also    drop from a low perch, drop from its perch, drop from a perch, drop to the ground from a perch
  means   leaves a perch for the ground

behaviour come-to-pishing
  also    respond to pishing, answer pishing, come in to pishing, respond to playback
  also    come to a recording, came in to pishing, came to a recording, came to pishing
  means   draws near at a squeaking or hissing noise made by a person

behaviour crack-seeds
  also    husk seeds, husk seed, crush seeds, crush seed, shell seeds, split seeds, open seeds
  also    roll seeds in its bill, crack nuts, crack open seeds, crack sunflower seeds, break open seeds
  also    roll seeds in its beak, roll seeds in the bill, roll seeds in the beak, broke open seeds
  means   opens seeds in its bill

behaviour creep
  also    creep about, creep around, creep along, creep through the grass, creep on the ground, scurry
  also    scuttle, move like a mouse, creep like a mouse, run like a mouse, scuttle like a mouse
  also    sneak about, crept about, crept around, crept along, crept through the grass
  also    crept on the ground, crept like a mouse, ran like a mouse
  also    creep low in cover, creep in cover, creep through cover, creep low, crept low
  means   moves low and close to the surface, like a mouse

behaviour dabble
  also    sift the water, sieve the water, filter the water, feed at the surface, feed on the surface
  also    feed on the surface of the water, dip its head under, put its head under, filter mud, sift mud
  also    sieve mud, fed at the surface, fed on the surface, fed on the surface of the water
  means   feeds at the surface with a working bill

behaviour dart-about
  also    dart, dart around, dart from bush to bush, dash about, dash around, zip about, zip around
  also    zoom about, dart in and out, dart back and forth
  also    dash along hedges, dash along a hedge, dash along the hedge
  means   makes sudden quick moves

behaviour dart-into-cover
  also    dive into cover, dive into a bush, dash for cover, dash into a bush, dive into a hedge
  also    disappear into a bush, vanish into cover, slip into cover, fly into cover, bolt for cover
  also    dive into the bush, dash into the bush, dive into the hedge, disappear into the bush
  also    dove into cover, dove into a bush, dove into a hedge, flew into cover, dove into the bush
  also    dove into the hedge
  means   gets out of sight quickly among plants

behaviour defend-territory
  also    territorial, hold territory, guard its territory, patrol its territory, guard a feeder
  also    defend a feeder, guard a berry bush, defend its patch, held territory
  also    guard berry trees, guard a berry tree, guard berry bushes, guard berries
  means   keeps others out of its own ground

behaviour dip-to-surface
  also    pick food from the surface, pick food off the surface, pick insects from the water
  also    dip down to the water, dip to the water, pick insects off the water, pick at the surface
  also    snatch food from the water, swoop down to the water, pluck insects from the surface
  means   takes food off the water in flight or while afloat, hardly getting wet

behaviour dive
  also    dive under, dive under water, go underwater, disappear under the water, dive for food
  also    dive repeatedly, dive from the surface, dive below the surface, go down under the water
  also    dove under, dove under water, went underwater, dove for food, dove repeatedly
  also    dove from the surface, dove below the surface
  also    dive for plants, dive for weed
  means   goes under from the surface

behaviour dive-at-people
  also    dive bombs, dive bombing, dive bombed, dive bomb, dive at me, swoop at people, swoop at me
  also    strike at people, swoop at heads, dive at us, swoop at us, dove at me, struck at people
  also    dove at us, dove at people
  means   flies straight at an intruder

behaviour dive-with-leap
  also    leap into a dive, jump and dive, dive with a jump, spring into a dive, dive with a small jump
  also    dive with a leap forward, leapt into a dive, dove with a jump, sprang into a dive
  also    dove with a small jump, dove with a leap forward
  means   starts a dive with a hop clear of the water

behaviour dodge-round-trunk
  also    hide behind the trunk, keep behind the trunk, slip round the trunk, slip around the trunk
  also    dodge round the trunk, move to the far side of the trunk, hid behind the trunk
  also    kept behind the trunk
  means   keeps a trunk between itself and the watcher

behaviour dominate-feeder
  also    hog the feeder, take over the feeder, guard the feeder, chase others off the feeder
  also    chase others from the feeder, chase birds from the feeder, scare off the others
  also    took over the feeder
  means   keeps other birds off a feeder

behaviour drift
  also    drift on the water, drift on the tide, drift with the current, drift along, drift downstream
  means   is carried by water or wind

behaviour drill-sap-wells
  also    drill sap holes, drill rows of holes, drill holes, drill neat rows of holes, sip sap
  also    drink sap, lick sap, take sap, make rows of holes, drank sap, took sap, made rows of holes
  means   makes lines of small holes in bark for sap

behaviour drink
  also    drink from a puddle, drink at a pool, drink from a pond, drink from a bird bath, take a drink
  also    have a drink, sip water, scoop up water, come to drink, suck up water, drink from the puddle
  also    drink at the pool, drink from the pond, drink from the bird bath, drank from a puddle
  also    drank at a pool, drank from a pond, drank from a bird bath, took a drink, had a drink
  also    came to drink
  means   takes water

behaviour drop-shells
  also    drop mussels, drop shellfish, drop clams, drop snails on rocks, drop nuts on the road
  means   lets hard food fall from the air to break it

behaviour dry-wings
  also    dry its wings, hang its wings out to dry, hold its wings out to dry, hold wings out to dry
  also    spread its wings to dry, stand with wings spread, stand with wings open
  also    stand with its wings out, sit with wings spread, perch with wings spread
  also    perch with wings open, hung its wings out to dry, held its wings out to dry
  also    held wings out to dry, stood with wings spread, stood with wings open
  also    stood with its wings out, sat with wings spread
  means   holds the wings wide open while perched

behaviour dust-bathe
  also    dust bathes, dust bathing, dust bathed, take a dust bath, have a dust bath, roll in dust
  also    roll in the dust, bathe in dust, wallow in dust, scrape in dust, took a dust bath
  also    had a dust bath
  means   works dry dust through its plumage

behaviour eat-berries
  also    feed on berries, strip berries, pluck berries, gulp berries, swallow berries, take berries
  also    pick berries, eat holly berries, feed on fruit, eat fruit, eat apples, feed on fallen apples
  also    feed on windfalls, eat hawthorn berries, eat rowan berries, gobble berries, fed on berries
  also    took berries, ate holly berries, fed on fruit, ate fruit, ate apples, fed on fallen apples
  also    eat fruit and berries
  means   eats soft fruit

behaviour eat-buds
  also    nip buds, nip off buds, feed on buds, eat blossom, feed on catkins, feed on blossom
  also    pull at catkins, pull off buds, fed on buds, ate blossom, fed on catkins, fed on blossom
  also    ate buds
  means   eats buds or blossom

behaviour eat-carrion
  also    feed on carrion, feed on roadkill, eat roadkill, feed on a carcass, feed at a carcass
  also    scavenge, pick at a carcass, eat a dead rabbit, eat dead animals, pick over rubbish
  also    feed on rubbish, feed on garbage, scavenge on a tip, fed on carrion, fed on roadkill
  also    ate roadkill, fed on a carcass, fed at a carcass, ate a dead rabbit, ate dead animals
  also    feed on carcasses, eat carcasses
  means   eats dead animals or waste

behaviour eat-insects
  also    feed on insects, eat bugs, pick insects, pick off insects, eat caterpillars, take insects
  also    feed on ants, eat ants, eat aphids, eat flies, eat spiders, pick bugs, find insects
  also    fed on insects, ate bugs, ate caterpillars, took insects, fed on ants, ate ants, ate aphids
  also    catch insects, caught insects, pick insects from stones, pick insects from mud
  also    pick insects from rocks, pick insects from the mud, pick insects from the ground
  also    pick insects from the grass
  means   eats insects and other small creatures

behaviour eat-nectar
  also    sip nectar, drink nectar, take nectar, visit flowers, feed at flowers, feed on nectar
  also    hover at flowers, hover by flowers, feed from flowers, probe flowers, drink from a feeder
  also    drink from flowers, drink sugar water, hover at a feeder, drink from the feeder
  also    hover at the feeder, drank nectar, took nectar, fed at flowers, fed on nectar
  also    fed from flowers, drank from a feeder, drank from flowers
  also    visit flowers for nectar, feed on flower nectar
  means   takes sugary juice from flowers or a feeder

behaviour eat-scraps
  also    eat bread, take bread, feed on bread, take scraps, feed on scraps, pick up scraps
  also    take fish scraps, eat fish scraps, feed on fish scraps, take food scraps, ate bread, took bread
  also    fed on bread, took scraps, ate scraps, fed on scraps
  means   eats what people throw away or throw to it

behaviour eat-seeds
  also    feed on seeds, feed on seed, take seeds, pick up seeds, pick up seed, eat grain
  also    eat sunflower seeds, feed on sunflower seeds, eat millet, eat nyjer, pick at seed heads
  also    feed on spilt grain, fed on seeds, fed on seed, took seeds, ate grain, ate sunflower seeds
  also    fed on sunflower seeds, ate millet
  also    eat thistle seeds, feed on thistle seeds, eat maple seeds, eat weed seeds, eat grass seeds
  also    feed on grain, fed on grain, ate thistle seeds
  means   eats seeds

behaviour excavate
  also    excavate a hole, excavate a nest, dig a nest hole, peck out a hole, make a hole
  also    dig out a hole, hollow out a nest, dig a burrow, tunnel into the bank, dig out a nest
  also    carve a hole, dug a nest hole, made a hole, dug out a hole, dug a burrow, dug out a nest
  means   makes a hole in wood or a bank

behaviour extract-cone-seeds
  also    prise open cones, pry open cones, open cones, take seeds from cones, pull cones apart
  also    feed on cones, feed on pine cones, pick at cones, work at cones, eat pine seeds, hang on cones
  also    cling to cones, took seeds from cones, fed on cones, fed on pine cones, ate pine seeds
  also    hung on cones, clung to cones
  also    hammer cones, hammer pine cones, wedge cones in bark, wedge pine cones in bark
  means   gets seeds out of cones

behaviour feed
  also    forage, look for food, search for food, find food, hunt for food, seek food, eat
  also    feed actively, feed busily, forage actively, feed quietly, found food, sought food, ate
  also    fed actively, fed busily, fed quietly, fed
  means   seeks or takes food

behaviour feed-among-cattle
  also    follow cattle, follow cows, feed around cattle, feed with cattle, feed around cows
  also    feed among cows, feed among sheep, feed around livestock, follow livestock, ride on cattle
  also    sit on cattle, perch on sheep, feed at the feet of cattle, fed around cattle, fed with cattle
  also    fed around cows, fed among cows, fed among sheep, fed around livestock, sat on cattle
  also    feed near cattle, feed in flocks near cattle, walk among cattle, walk with cattle, fed near cattle
  means   keeps near grazing beasts for what they stir up

behaviour feed-at-feeder
  also    feed at a feeder, feed on a feeder, feed at feeders, feed on feeders, come to a feeder
  also    come to feeders, visit a feeder, visit feeders, eat from a feeder, eat at a feeder
  also    use feeders, take seed from a feeder, feed at a bird table, come to the bird table
  also    feed from the feeder, feed at the nyjer feeder, fed at a feeder, fed on a feeder
  also    fed at feeders, fed on feeders, came to a feeder, came to feeders, ate from a feeder
  means   takes food put out for birds

behaviour feed-at-sap-wells
  also    visit sap wells, drink from sap wells, take sap from wells, visit woodpecker sap holes
  means   takes sap at holes that another bird drilled

behaviour feed-at-waters-edge
  also    feed on the edge, feed at the edge of the water, feed along the edge of the water
  also    feed along the shore, feed on the shoreline, feed along the tideline, feed on the mud
  also    feed on mud, feed on mudflats, walk along the edge of the water
  also    feed along the edge of the pond, pick along the shore, fed on the edge
  also    fed at the edge of the water, fed along the edge of the water, fed along the shore
  also    fed on the shoreline, fed along the tideline, fed on the mud
  also    walk along the water edge, walk along the shore, walk along the shoreline
  also    walk at the edge of the water
  means   looks for food where land meets water

behaviour feed-from-hand
  also    eat from the hand, take food from the hand, feed out of the hand, come to hand
  also    take seed from the hand, eat out of the hand, perch on a hand, land on my hand
  also    take a nut from my hand, perch on my hand, perch on the hand, ate from the hand
  also    took food from the hand, fed out of the hand, came to hand, took seed from the hand
  also    ate out of the hand, took a nut from my hand
  means   takes food from a person's hand

behaviour feed-in-flock
  also    feed in flocks, feed in a flock, forage in flocks, feed in groups, feed in small groups
  also    feed in small flocks, feed in loose flocks, feed in a group, feed in large flocks
  also    forage in small flocks, feed in flocks on the ground, forage in flocks on the ground
  also    feed in tight flocks, fed in flocks, fed in a flock, fed in groups, fed in small groups
  also    fed in small flocks, fed in loose flocks, fed in a group
  also    feed in large noisy flocks, feed in noisy flocks, fed in noisy flocks, fed in large flocks
  means   feeds in company with its own kind

behaviour feed-in-shallows
  also    feed in shallow water, feed in the shallows, feed in the shallow water, walk in the shallows
  also    pick at the water, forage in shallow water, forage in the shallows
  also    pick food from shallow water, fed in shallow water, fed in the shallows
  also    fed in the shallow water, fed in shallows
  means   looks for food in shallow water on foot

behaviour feed-in-treetops
  also    feed in canopy, feed in the canopy, feed high in trees, feed high in the trees
  also    feed in the treetops, forage in the canopy, forage high in trees, forage in treetops
  also    feed in the tops of trees, keep to the treetops, stay high in the trees, keep to the canopy
  also    fed in canopy, fed in the canopy, fed high in trees, fed high in the trees
  also    fed in the treetops, fed in the tops of trees, kept to the treetops
  means   looks for food near the tops of trees

behaviour feed-in-undergrowth
  also    feed in the undergrowth, forage in undergrowth, forage in the understory
  also    forage in dense cover, feed in thick cover, feed low in bushes, feed low down, forage low
  also    feed close to the ground, feed in the bushes, forage in brush, feed under bushes
  also    forage in bushes, forage in thickets, fed in the undergrowth, fed in thick cover
  also    fed low in bushes, fed low down, fed close to the ground, fed in the bushes, fed under bushes
  means   looks for food low in thick plants

behaviour feed-under-feeder
  also    feed under a feeder, feed under feeders, feed below the feeder, feed beneath feeders
  also    pick up spilt seed, pick up spilled seed, forage under feeders, clean up under the feeder
  also    eat fallen seed, feed on fallen seed, feed on the ground below the feeder
  also    feed on the ground under the feeder, feed under the feeder, fed under a feeder
  also    fed under feeders, fed below the feeder, fed beneath feeders, ate fallen seed
  also    fed on fallen seed, fed on the ground below the feeder
  means   feeds on what falls from a feeder

behaviour feed-young
  also    feed its young, feed chicks, feed a chick, feed a fledgling, feed fledglings, feed the babies
  also    feed a juvenile, feed the chicks, feed a baby, feed nestlings, feed the young, fed its young
  also    fed chicks, fed a chick, fed a fledgling, fed fledglings, fed the babies, fed a juvenile
  means   gives food to its young

behaviour feign-injury
  also    feign a broken wing, fake a broken wing, pretend to be injured, drag a wing
  also    do a broken wing act, perform a distraction display, lure people away, drag one wing
  also    did a broken wing act
  means   acts hurt to draw an intruder off the nest

behaviour fight
  also    fight each other, fight with another, fight over food, fight with another bird, spar, grapple
  also    lock claws, lock talons, tussle, fight in the air, fought each other, fought with another
  also    fought over food, fought with another bird, fought in the air, fought
  means   struggles bodily with another bird

behaviour flip-stones
  also    turn over stones, flip over stones, turn stones, flip pebbles, turn over weed
  also    flip over seaweed, turn over seaweed, push over stones, root about in seaweed, flick over weed
  means   lifts stones or weed to feed beneath

behaviour flit
  also    flit about, flit around, flit through leaves, flit among leaves, flit from branch to branch
  also    flit between bushes, flit from tree to tree, flit about in the foliage
  also    flutter about in leaves, flitter
  means   makes short light moves among twigs

behaviour float
  also    float on the water, float like a cork, ride the waves, sit on the water, rest on the water
  also    bob on the water, float high in the water, bob like a cork, raft up, sat on the water
  means   rides on the surface without swimming

behaviour flock
  also    flock together, gather in flocks, go about in flocks, gather in a flock, form flocks
  also    form large flocks, move in flocks, travel in flocks, keep in flocks, live in flocks
  also    live in groups, move in a flock, move about in flocks, gather in large numbers
  also    travel in groups, keep in groups, went about in flocks, kept in flocks, kept in groups
  also    in flocks, in a flock, in large flocks, in a large flock, in small flocks, in a small flock
  also    in noisy flocks, in a noisy flock, in huge flocks, in loose flocks, in groups, in small groups
  also    in a small group, in noisy groups, in large groups, gather in large flocks, gather in noisy flocks
  also    gather in loose flocks, gather in small flocks, gather in huge flocks, gather in groups
  also    gather in flocks on fields
  means   keeps with others of its kind

behaviour flush-from-cover
  also    flush from the grass, flush from long grass, flush underfoot, flush from underfoot
  also    get up from underfoot, get up from the grass, burst from cover, explode from cover
  also    explode from underfoot, flush at close range, burst up from the ground
  also    spring up from the grass, flush from a ditch, flush from a path, flush from reeds
  also    flush from the reeds, got up from underfoot, got up from the grass, sprang up from the grass
  also    flush from grass
  means   flies up suddenly when someone comes near

behaviour fly
  also    fly about, fly around, take wing, take to the air, fly in the air, fly from tree to tree
  also    fly from branch to branch, fly between trees, fly to and fro, flew about, flew around
  also    took wing, took to the air, flew in the air, flew from tree to tree
  also    flew from branch to branch
  means   moves through the air

behaviour fly-away
  also    as it flew off, as it flew away, as it went off, as it left
  also    fly off, take off, fly away quickly, depart, fly off quickly, fly off into the trees, make off
  also    flew off, took off, flew away quickly, flew off quickly, flew off into the trees, made off
  also    flew away
  means   leaves by air

behaviour fly-in
  also    arrive, fly in to feed, come in to feed, fly down, fly into a tree, fly into the yard, drop in
  also    fly up into a tree, fly into a bush, fly up into the tree, fly into a garden
  also    fly into the tree, fly into the bush, fly into the garden, flew in to feed, came in to feed
  also    flew down, flew into a tree, flew into the yard, flew up into a tree, flew into a bush
  means   comes to the place by air

behaviour fly-off-when-approached
  also    fly off when disturbed, fly away when approached, fly up when disturbed, scare easily
  also    spook easily, take flight easily, flee from people, fly off when i got close, take fright
  also    flew off when disturbed, flew away when approached, flew up when disturbed, took flight easily
  also    fled from people, flew off when i got close, took fright
  means   leaves when a person comes near

behaviour flycatch
  also    sally, sally out, sally for insects, sally from a perch, fly out and back
  also    fly out to catch insects, fly out after insects, catch flies, catch flies from a perch
  also    fly out and return, dart out after insects, sally out for insects
  also    make short flights after insects, loop out and back, make sallies, dash out to catch flies
  also    flew out to catch insects, flew out after insects, caught flies, caught flies from a perch
  also    made short flights after insects, made sallies
  also    fly up for insects, fly up after insects, short sallies, short sally, aerial sallies
  also    flew up after insects
  means   flies out from a perch after an insect and returns

behaviour follow-boats
  also    follow ships, follow a boat, follow trawlers, follow fishing boats
  also    follow the ferry for scraps, trail behind boats, follow a ship, follow a ferry
  also    follow the boat, follow the ship, follow the ferry
  means   keeps behind a vessel

behaviour follow-each-other
  also    follow one another, fly one after another, cross one by one, move one after another
  also    move one by one, follow one after the other, trail after each other, flew one after another
  also    one after another across gaps, cross gaps one after another, cross gaps one by one
  also    follow one after another
  means   members of a party move in turn

behaviour follow-plough
  also    follow a plough, follow ploughs, follow plows, follow tractors, feed behind the plough
  also    feed behind a tractor, follow a plow, follow a tractor, follow the plough, follow the plow
  also    follow the tractor, fed behind the plough, fed behind a tractor
  means   feeds behind a machine turning the soil

behaviour follow-tree-line
  also    work along a hedge, move along a hedge, move from tree to tree, work through the trees
  also    move through the trees, move through the canopy, move through the bushes
  also    pass through the trees, work along the hedgerow, work along the hedge, move along the hedge
  means   makes its way through trees or a hedge

behaviour forage-on-ground
  also    feed on the ground, forage on the ground, feed on ground, peck at the ground
  also    pick at the ground, feed in the grass, feed on the lawn, pick about on the ground
  also    feed on the floor, search the ground, pick food off the ground, pick food from the ground
  also    feed in leaf litter, forage in leaf litter, feed on the forest floor, feed in open ground
  also    fed on the ground, fed on ground, fed in the grass, fed on the lawn, fed on the floor
  also    fed in leaf litter, fed on the forest floor
  means   looks for food on the ground

behaviour freeze-when-alarmed
  also    freeze on the spot, freeze in place, keep dead still, go still when disturbed, go rigid
  also    sit motionless when alarmed, rely on camouflage, trust its camouflage, froze on the spot
  also    froze in place, kept dead still, went still when disturbed, went rigid
  also    sat motionless when alarmed, froze when alarmed
  means   stops all movement at danger

behaviour gather-on-wires
  also    gather on a wire, line up on wires, line up on a wire, line up on the wires
  also    mass before migration, gather on the wire, line up on the wire
  means   collects in numbers on a perch

behaviour glean
  also    glean insects, glean from leaves, glean leaves, pick insects from leaves
  also    pick insects off leaves, pick at leaves, pick at twigs, search leaves
  also    pick insects from foliage, glean from foliage, pick among the leaves
  also    check the undersides of leaves, glean insects from leaves, search foliage
  also    pick insects from twigs, feed among leaves, fed among leaves
  also    pick insects from stems, pick insects from branches, pick insects from grass
  also    pick insects off twigs
  means   picks small creatures from leaves and twigs

behaviour graze
  also    graze on grass, eat grass, crop grass, graze on the grass, nibble grass, feed on grass
  also    graze in fields, graze on short grass, feed in stubble, graze on lawns, pull at grass
  also    ate grass, fed on grass, fed in stubble
  also    feed on crops, eat crops, eat shoots, feed on clover, fed on crops, ate crops
  means   eats growing grass

behaviour hammer-food
  also    hammer nuts, hammer a nut, hammer seeds open, wedge nuts in bark, wedge seeds in bark
  also    jam nuts in bark, hammer at a nut, hold a nut under its foot, hold food under its foot
  also    hold food with its foot, hold seeds with its feet, hold a seed between its feet, pound nuts
  also    hack at a nut, hold a nut under a foot, hold food under a foot, held a nut under its foot
  also    held food under its foot, held food with its foot, held seeds with its feet
  also    held a seed between its feet, held a nut under a foot, held food under a foot
  also    hammer seeds, hammer at seeds, wedge nuts, wedge seeds
  means   breaks hard food with blows of the bill

behaviour hammer-wood
  also    hammer on the trunk, hammer
  also    hammer on wood, hammer on a trunk, peck wood, peck at wood, peck at a trunk, peck at bark
  also    peck trees, chisel wood, chisel bark, drill into wood, drill into a tree, hammer at bark
  also    bore into wood, tap on a trunk, tap at bark, tap on wood
  also    peck bark, peck dead wood, peck at dead wood
  means   strikes wood with the bill to feed

behaviour hang-upside-down
  also    cling upside down, feed upside down, hang from twigs, hang upside down from twigs
  also    hang from a twig, feed upside down on twigs, hang beneath twigs, dangle, dangle from twigs
  also    hang from catkins, cling under branches, hang by its feet, dangle upside down
  also    feed hanging upside down, hang from the tips of twigs, acrobatic, clung upside down
  also    fed upside down, hung from twigs, hung upside down from twigs, hung from a twig
  also    fed upside down on twigs, hung beneath twigs
  also    hang from seed heads, hang from leaf clusters, hang from leaves, hung from seed heads
  means   feeds or clings with the back downwards

behaviour hawk-insects
  also    hawking, hawk them
  also    hawk for insects, hawk flies, hawk for flies, catch insects in flight
  also    catch insects in the air, catch insects on the wing, catch bugs in midair
  also    catch bugs in the air, feed on the wing, feed in flight, feed in the air, feed over the water
  also    hunt insects in the air, chase insects in the air, catch dragonflies, hawk moths
  also    caught insects in flight, caught insects in the air, caught insects on the wing
  also    caught bugs in midair, caught bugs in the air, fed on the wing, fed in flight
  also    catch insects in air, catch moths in air, catch moths in the air, catch flies in the air
  also    catch flying insects, caught insects in air, caught moths in the air, caught flying insects
  means   takes insects in the air while flying on

behaviour hide-from-view
  also    hiding, hid, hidden in cover, hide in the leaves, hide in a bush, hide in the bushes
  also    hide in foliage, keep hidden, keep out of sight, stay hidden, stay out of sight, stay in cover
  also    keep in cover, keep to thick cover, hide among the leaves, hide in dense cover
  also    hid in the leaves, hid in a bush, hid in the bushes, hid in foliage, kept hidden
  also    kept out of sight, kept in cover
  also    hide in treetops, hide in the treetops, hide in trees, hide in a tree, hid in the treetops
  means   keeps out of sight

behaviour hitch
  also    hitch along, hitch up, move in jerks up the trunk, go up in jerks, climb in jerks
  also    climb in short hops, jerk up the trunk, hop up tree trunks, move up in short hops
  also    climb in hops, went up in jerks
  means   climbs by short two-footed jerks

behaviour hop
  also    hop about, hop around, hop along, hop on the ground, hop on the lawn, hop on the grass
  also    hop across the lawn, bounce along, bounce along the ground, move in hops, hop with both feet
  also    hop with both feet together, make long hops, hop in the grass, bounce about, hop quickly
  also    made long hops
  also    hop on logs
  means   moves with both feet together

behaviour hop-and-stop
  also    hop and pause, hop a few steps and stop, hop and look, hop then stop, hop then pause
  means   a few hops, then a halt

behaviour hop-through-branches
  also    hop through the bush, hop from branch to branch, hop from twig to twig, hop in the branches
  also    hop among the branches, hop through foliage, hop about in bushes, hop about in the branches
  also    bounce through branches, jump from branch to branch, hop between branches
  also    hop through the branches, hop through the tree, hop through the hedge, hop through a bush
  also    hop through a tree
  also    hop among twigs, hop among the twigs, hop among branches, hop through bushes
  means   goes through twigs by hops

behaviour hover
  also    hover in flight, hover in place, hover in the air, hover in midair, hover over the field
  also    hover over the ground, hover above the water, hover over grass, hover over fields
  also    hover over water, stay in one spot in the air, hover like a hummingbird, hover like a kestrel
  also    hover above the ground, hover briefly, hover with fast wingbeats
  means   stays in one spot in the air on beating wings

behaviour hover-glean
  also    hover gleans, hover gleaning, hover gleaned, hover to pick insects, hover at leaves
  also    hover under leaves, hover at the tips of branches, hover by leaves, flutter at leaves
  also    hover to feed, hover to take insects, hover beside leaves, hover at twigs
  also    hover to snatch insects, hover in front of leaves
  also    hover at leaf tips, hover at the tips of leaves, hover at the ends of twigs
  means   hovers for a moment to pick food from leaves

behaviour huddle
  also    huddle together, huddle up, sit close together, sit side by side, sit in a row, perch in a row
  also    perch side by side, perch close together, cuddle up, squeeze together, roost in a huddle
  also    sat close together, sat side by side, sat in a row
  means   sits pressed up against others

behaviour hunt
  also    hunt for prey, look for prey, search for prey, hunt from a perch, scan for prey
  also    watch for prey, hunt from a post, hunt small birds, hunt by surprise, hunt from a branch
  also    hunt from wires, hunt from the perch, hunt from the branch
  also    chase prey, chase prey through trees, chase prey through the trees, hunt birds, hunt voles
  also    hunt mice, hunt insects
  means   looks for living prey

behaviour ignore-people
  also    take no notice of people, take no notice of us, take no notice of me
  also    carry on feeding close by, pay no attention to people, take no notice of dogs
  also    took no notice of people, took no notice of us, took no notice of me, took no notice of dogs
  means   shows no response to people

behaviour impale-prey
  also    spike prey on thorns, hang prey on thorns, keep a larder, stick prey on thorns, impale insects
  also    wedge prey in a fork, spike prey on barbed wire, hung prey on thorns, kept a larder
  also    stuck prey on thorns
  also    impale prey on thorns, impale insects on thorns
  means   fixes prey on thorns or wire

behaviour inquisitive
  also    curious, nosy, nosey, investigate, come to investigate, come to look, have a look at us
  also    check us out, came to investigate, came to look, had a look at us
  means   comes to look at new things

behaviour join-mixed-flock
  also    join a mixed flock, join mixed flocks, feed in mixed flocks, feed in a mixed flock
  also    roam in mixed flocks, move in mixed flocks, join winter flocks, join roving flocks
  also    move with a mixed flock, travel in mixed flocks, forage in mixed flocks, fed in mixed flocks
  also    fed in a mixed flock
  also    in mixed flocks, in a mixed flock, with mixed flocks
  means   goes about with several kinds of bird together

behaviour jump
  also    leap, leap up, spring up, jump up, jump into the air, leap into the air, jump up and down
  also    jump from the ground, leap after insects, jump up after insects, leapt, leapt up, sprang up
  also    leapt into the air, leapt after insects
  means   springs up off its feet

behaviour keep-in-family
  also    keep in family parties, move in family groups, go about in family parties
  also    travel in family groups, stay in family groups, live in family groups, feed in family groups
  also    move in a family party, keep in a family party, live in family parties, stay with its family
  also    live in coveys, keep in coveys, form coveys, kept in family parties
  also    went about in family parties, fed in family groups, kept in a family party, kept in coveys
  also    kept in family
  also    roam in family flocks, roam in family parties, roam in family groups, in family flocks
  also    in family groups
  also    in noisy family groups, in noisy family parties
  means   keeps with parents and brood

behaviour keep-in-pairs
  also    go in pairs, live in pairs, feed in pairs, move in pairs, travel in pairs, forage in pairs
  also    swim in pairs, fly in pairs, go about in pairs, stay in pairs, pair up, pair for life
  also    stay as a pair, stay with its mate, keep as a pair, forage as a pair, went in pairs
  also    fed in pairs, swam in pairs, flew in pairs, went about in pairs, kept as a pair, kept in pairs
  also    in pairs, in a pair, in pairs and small groups, in pairs and small flocks
  also    in pairs or small groups, in pairs or small flocks, alone or in pairs, in pairs or alone
  means   two mates stay together

behaviour keep-watch
  also    stand guard, act as lookout, keep a lookout, look out for danger, post a lookout
  also    scan for danger, stay vigilant, stood guard, kept a lookout, kept watch
  means   stays on watch for danger

behaviour lay-in-other-nests
  also    lay eggs in other nests, lay its eggs in other nests, lay eggs in the nests of other birds
  also    lay in the nests of other birds, lay an egg in another nest, brood parasite, nest parasite
  also    parasitise nests, parasitize nests, laid eggs in other nests
  means   leaves its eggs to other birds

behaviour lead-chicks
  also    lead its chicks, lead young, lead ducklings, walk with chicks, swim with ducklings
  also    swim with young, have chicks in tow, tend chicks, brood young, brood chicks, care for young
  also    look after chicks, have young, lead the chicks, lead her chicks, led its chicks, led young
  also    led ducklings, swam with ducklings, swam with young, had chicks in tow, had young
  means   accompanies its young

behaviour lek
  also    gather at a lek, display at a lek, display in groups, dance in a group, dance on a lek
  means   males meet on one spot to show off

behaviour lie-down
  also    lie flat, lie on the ground, lie in the grass, lie in a hollow, sit down on the ground
  also    lie on the path, squat on the ground, lie in the road, lie on the sand, lie on a path
  also    lay flat, lying flat, lay on the ground, lying on the ground, lay in the grass
  also    lying in the grass, lay in a hollow
  means   rests with its body on the ground

behaviour lift-arched-wings
  also    arch its wings over its back, arch wings over back, arch the wings over the back
  also    arch its wings over the back, raise its wings over its back like sails
  means   lifts bowed wings over the back in threat or display

behaviour loaf
  also    rest on the shore, rest on a sandbank, rest on the mud, rest on rocks, laze about, sit about
  also    rest with gulls, rest at high tide, loaf on the water, sit around, take it easy
  also    rest on the ice, rest on a mudbank, loaf on the roof, rest on a rock, loaf on the beach
  also    sat about, sat around, took it easy
  also    rest on sandbars, rest on a sandbar, rest in flocks, rest in flocks on beaches, rest on beaches
  also    rest on the beach, rest on sand, rest on the sand, rest on ice, rest on mudflats, rest on shores
  also    rest on beaches in flocks
  means   stands or sits idle, neither feeding nor asleep

behaviour lunge
  also    lunge at another bird, lunge at others, threaten others, gape at others, make threats
  also    peck at other birds, jab at other birds, lunge at rivals, snap at other birds, peck at rivals
  also    charge at others, run at other birds, made threats, ran at other birds
  means   threatens with a sudden move

behaviour mate-with-partner
  also    copulate, mating, mate with a female, mount a female, attempt to mate, mount the female
  means   joins with a mate to breed

behaviour mob
  also    mob a hawk, mob an owl, mob a crow, mob a buzzard, mob hawks, mob crows, mob owls
  also    mob predators, harass a hawk, harass an owl, chase off crows, harass a buzzard, chase a hawk
  also    chase hawks, get mobbed, mob birds of prey, got mobbed
  means   several birds harry an enemy

behaviour nest
  also    breeds, bred, have a nest, nest in a tree, nest in trees, nest in bushes, nest nearby
  also    attend a nest, visit a nest, nest in shrubs, nest in hedges, nest in reeds, breed here
  also    nest in a bush, attend the nest, visit the nest, had a nest
  means   raises young at a nest

behaviour nest-in-colony
  also    nest in colonies, nest in a colony, breed in colonies, breed in a colony, nest colonially
  also    nest in groups, nest close together, nest in rookeries
  also    nest in treetop colonies, nest in large colonies, nest in small colonies, nest in noisy colonies
  means   many pairs nest close together

behaviour nest-in-hole
  also    nest in a hole, nest in holes, nest in a nestbox, nest in cavities, nest in tree holes
  also    use a nest box, use nest boxes, nest in boxes, nest in nestboxes, nest in old woodpecker holes
  also    go into a hole, enter a hole, visit a nest box, inspect a nest box, look into holes
  also    nest in burrows, went into a hole
  also    nest in a tree hole, nest in holes and nest boxes, nest in holes in banks
  also    nest in holes in sandy banks, nest in nest boxes, nest in a bank, nest in sandy banks
  means   its nest is inside a hole or box

behaviour nest-on-buildings
  also    nest on a building, nest under eaves, nest under the eaves, nest in roofs, nest in the roof
  also    nest in a barn, nest in barns, nest on houses, nest under bridges, nest under a bridge
  also    nest in chimneys, nest on roofs, nest on rooftops, nest in buildings, nest on a house
  also    nest in the barn
  also    nest in sheds, nest in pots, nest in flower pots, nest in hanging baskets
  also    mud nests under bridges, mud nests under eaves, mud nest under the eaves
  means   its nest is on or in something built

behaviour nest-on-cliff
  also    nest on cliffs, nest on a cliff, nest on ledges, nest on cliff ledges, breed on cliffs
  also    breed on sea cliffs, nest on rock faces, nest on a cliff ledge, nest on the cliff
  means   its nest is on a cliff

behaviour nest-on-ground
  also    nest on the ground, nest on the beach, nest on shingle, nest in grass, nest in the grass
  also    nest in a scrape, nest on bare ground, nest in fields, nest in a hollow on the ground
  also    nest on gravel
  also    nest on beaches
  means   its nest is on the ground

behaviour open-shellfish
  also    open mussels, prise open mussels, pry open mussels, open cockles, hammer mussels, hammer shellfish
  also    eat mussels, eat shellfish, prise limpets off rocks, ate mussels
  means   breaks or prises open hard shells with the bill

behaviour pass-overhead
  also    as it flew over, as it went over, as it passed over
  also    flew over, flies over, flying over, flew past, flies past, flying past, flew by, flies by
  also    flying by, fly overhead, fly over calling, fly across, move overhead, cross overhead
  also    flew overhead, flew over calling, flew across
  means   passes through without stopping

behaviour patrol-over-water
  also    patrol over the water, patrol over a lake, patrol above the water, hunt over water
  also    hunt over the water, fly over water with bill pointed down
  means   flies to and fro over water and looks down

behaviour patter-over-water
  also    patter across the water, patter along the surface, run across the water, run along the water
  also    run on the water, run over the water to take off, patter to take off, run along the surface
  also    run across the surface, walk on the water, patter on the surface
  also    run along the water to take off, patter over the surface, scutter across the water
  also    ran across the water, ran along the water, ran on the water, ran over the water to take off
  also    ran along the surface, ran across the surface, ran along the water to take off
  also    rush across the water, rush over the water, rush across the water in pairs, patter on the water
  also    run along water to take off
  also    patter over the water
  means   its feet run on the surface

behaviour peck
  also    peck about, peck around, peck at food, peck at seeds, peck on the lawn, peck in the grass
  also    peck at the grass, pick and peck, peck at fruit, peck at leaves
  means   makes small strikes with the bill tip

behaviour peer-about
  also    peer around, peer down, peer into crevices, peer under leaves, look under leaves
  also    look up under leaves, peer into holes, look down at the ground, peer at the ground
  also    peer into the water, look into the water, look underwater, peer under the water
  means   looks this way and that as it searches

behaviour perch
  also    sit, perch on a branch, sit on a branch, perch on branches, sit in a tree, perch in a tree
  also    perch in trees, perch up, perch on a twig, sit on a twig, sit in a bush, perch in a bush
  also    perch on a post, sit on a fence, sit in a hedge, perch in a hedge, sat, sat on a branch
  also    sat in a tree, sat on a twig, sat in a bush, sat on a fence, sat in a hedge
  means   sits on something raised

behaviour perch-in-open
  also    perch in the open, sit in the open, sit out in the open, sit out, perch in full view
  also    perch openly, perch conspicuously, sit conspicuously, perch on an exposed branch
  also    perch on exposed twigs, perch on bare branches, perch on a bare branch, perch on dead branches
  also    perch on a dead branch, sit on a dead branch, perch prominently, sat in the open
  also    sat out in the open, sat out, sat conspicuously, sat on a dead branch
  means   sits where all can see it

behaviour perch-in-treetop
  also    perch in a treetop, sit in a treetop, perch at the top of a tree, sit at the top of a tree
  also    sit on top of a tree, perch on top of a tree, perch high, perch high up, sit high up
  also    sit high in a tree, perch high in a tree, perch on treetops, perch on the tops of trees
  also    perch on the topmost branch, perch on the topmost twig, sit atop a tree, sat in a treetop
  also    sat at the top of a tree, sat on top of a tree, sat high up, sat high in a tree
  also    sat atop a tree
  means   sits at the very top of a tree or bush

behaviour perch-low
  also    perch low down, perch near the ground, sit low down, sit low in a bush, perch low in a bush
  also    perch on low branches, perch on a low branch, sit on a low branch, perch close to the ground
  also    keep low, stay low, keep low down, stay near the ground, keep close to the ground
  also    sit low in a tree, perch low in a tree, sat low down, sat low in a bush, sat on a low branch
  also    kept low, kept low down, kept close to the ground, sat low in a tree
  means   sits within a few feet of the ground

behaviour perch-on-post
  also    sit on a post, perch on posts, sit on posts, perch on a fence post, sit on a fence post
  also    perch on fence posts, sit on fence posts, perch on a pole, perch on fences, perch on poles
  also    sit on a pole, perch on telephone poles, perch on telegraph poles, perch on utility poles
  also    perch on lamp posts, perch on a lamp post, sat on a post, sat on posts, sat on a fence post
  also    sat on fence posts, sat on a pole
  means   sits on a post, pole or fence

behaviour perch-on-stem
  also    perch on a reed, sit on a reed, perch on stems, perch on weeds, perch on tall weeds
  also    perch on thistles, perch on reeds, perch on tall stems, perch on grass stems, sway on a stem
  also    sit on tall weeds, perch on reed tops, sing from a reed, perch on cattails, perch on a thistle
  also    sit on a thistle, sat on a reed, sat on tall weeds, sang from a reed, sat on a thistle
  also    sing from grass stems, sing from a grass stem, sing from weeds, perch on tall plants
  also    perch on plants, hang on stems, hang on weed stems, cling to stems, cling to weed stems
  also    hung on stems, clung to stems
  means   sits on the stem of a plant

behaviour perch-on-wire
  also    sit on a wire, perch on wires, sit on wires, perch on a power line, sit on a power line
  also    perch on power lines, sit on power lines, perch on telephone wires, sit on telephone wires
  also    perch on telephone lines, perch on utility wires, perch on cables, perch on overhead wires
  also    perch on barbed wire, sit on barbed wire, perch on the wires, sat on a wire, sat on wires
  also    sat on a power line, sat on power lines, sat on telephone wires, sat on barbed wire
  means   sits on a wire

behaviour perform-display
  also    perform a display, display to a female, display to females, display to his mate
  also    do a courtship display, perform a courtship display, display to each other, give a display
  also    show off to a female, do a display, show off to females, dance, display on the water
  also    do a dance, court a female, puff up and strut, did a courtship display, gave a display
  also    did a display, did a dance
  also    in display, in courtship display
  means   shows off to a mate or rival

behaviour plaster-nest-hole
  also    plaster nest hole with mud, plaster the nest hole with mud, plaster mud round the nest hole
  also    smear sap around nest hole, smear sap around the nest hole, smear resin around the nest hole
  means   lines the rim of its nest hole with mud or sap

behaviour plunge-dive
  also    plunge dives, plunge diving, plunge dived, plunge, plunge into the water, dive into the water
  also    dive from the air, dive from a perch, dive head first into the water, plunge for fish
  also    dive for fish, plunge after fish, splash down, plunge down, dive from a height
  also    dive in head first, dove into the water, dove from the air, dove from a perch
  also    dove head first into the water, dove for fish, dove from a height, dove in head first
  also    plunge dives for fish, plunge dive for fish, plunge dives for fish from a height
  also    plunge dives from a height
  means   drops into the water from the air or a perch

behaviour pounce
  also    pounce on prey, pounce on insects, drop on prey, drop on to prey, swoop to the ground
  also    drop down on prey, drop on insects, drop to the ground for insects, fly down to catch insects
  also    swoop down on prey, drop from a perch on to insects, drop down to catch insects
  also    pounce on mice, pounce on something, swoop on prey, flew down to catch insects
  also    drop to the ground on prey, drop to the ground for prey, drop to the ground after prey
  also    drop onto prey, drop onto prey on the ground, drop on to prey on the ground, drop onto insects
  also    drop to the ground to catch insects
  means   drops suddenly on prey on the ground

behaviour preen
  also    preen its feathers, groom, groom itself, groom its feathers, tidy its feathers
  also    clean its feathers, oil its feathers, preen itself, clean itself, arrange its feathers
  also    fix its feathers, nibble its feathers
  means   puts its plumage in order with the bill

behaviour preen-each-other
  also    allopreen, preen its mate, preen one another, groom each other, nuzzle, preen a mate
  also    bill each other, rub bills, touch bills, preen his mate, preen her mate
  means   one bird cares for another's plumage

behaviour probe
  also    probe mud, probe in mud, probe the mud, probe in the mud, probe into the mud
  also    probe into the ground, probe deep, probe deeply, poke in the mud, poke at the mud
  also    poke its bill in the mud, stick its bill in the mud, push its bill into the mud
  also    jab at the mud, dig in the mud, probe like a sewing machine, stuck its bill in the mud
  also    dug in the mud
  means   pushes the bill into soft ground

behaviour probe-bark
  also    search bark, pick insects from bark, pick insects off bark, probe bark crevices
  also    probe crevices, probe in bark, probe cracks in the bark, pry off bark, prise off bark
  also    peel bark, flake off bark, search trunks, search tree trunks, feed on trunks
  also    feed on tree trunks, forage on trunks, fed on trunks, fed on tree trunks
  also    flake bark, flake bark from dead trees, flake bark off dead trees, flake bark off trees
  also    flake off scales of bark
  means   looks for food in the cracks of bark

behaviour pull-worms
  also    pull up worms, pull up a worm, pull out worms, tug at a worm, eat worms, eat a worm
  also    catch worms, take worms, pull a worm from the lawn, pull a worm, listen for worms
  also    pull worms from the lawn, find worms, eat earthworms, pull earthworms, look for worms
  also    ate worms, ate a worm, caught worms, took worms, found worms, ate earthworms
  means   draws worms from the ground

behaviour quarter-ground
  also    quarter fields, quarter a field, quarter low, quarter low over fields, hunt low over fields
  also    hunt low over a field, hunt along a hedge, patrol fields, fly low back and forth, quartering
  also    hunt low, hunt low over the reeds, fly low over fields hunting, patrol a field
  also    work over a field, hunt over fields, flew low over fields hunting
  means   flies to and fro low over open land, searching

behaviour regurgitate-pellet
  also    bring up a pellet, cough up a pellet, cast a pellet, spit out a pellet, cough up pellets
  also    spit out seeds, cast pellets, brought up a pellet
  means   throws up what it cannot digest

behaviour remain-underwater
  also    stay under, stay underwater, stay down for ages, surface far away, come up far away
  also    pop up somewhere else, pop up like a cork, come up again, resurface, surface some way off
  also    came up far away, came up again
  means   is a long time below before it comes up

behaviour restless
  also    active, stay on the move, fidgety, hyperactive, nervous, jumpy, fidget, move constantly
  also    move nervously, lively, energetic, stay busy, agitated, flighty, keep on the move
  also    kept on the move
  also    move quickly, move restlessly, move quickly among leaves, move quickly among the leaves
  also    move restlessly among twigs, move quickly through the leaves, always on the move
  means   keeps moving all the time

behaviour return-to-perch
  also    return to its perch, return to the same perch, come back to the same perch
  also    go back to its perch, return to the same branch, return to a perch, fly back to the same perch
  also    come back to the same branch, use the same perch, go back to the same spot
  also    return to the same spot, come back to its perch, return to the perch
  also    came back to the same perch, went back to its perch, flew back to the same perch
  also    came back to the same branch, went back to the same spot, came back to its perch
  means   goes back to the place it left

behaviour rise-noisily
  also    flush with a whirr of wings, burst up noisily, take off noisily, take off with noisy wings
  also    take off with a clatter, clatter out of the trees, clatter out of the tree, explode noisily
  also    rise with a whirr, get up with a clatter, take off with a whirr, flush noisily, fly up noisily
  also    took off noisily, took off with noisy wings, took off with a clatter, rose with a whirr
  also    got up with a clatter, took off with a whirr, flew up noisily
  also    clatter out of trees, clatter out of a tree
  means   leaves with loud wings

behaviour rob-nests
  also    rob a nest, raid nests, raid a nest, take eggs, steal eggs, eat eggs, take nestlings, take chicks
  also    eat nestlings, took eggs, took chicks, stole eggs
  means   takes eggs or young from nests

behaviour roost
  also    roost in a tree, roost in trees, roost in reeds, go to roost, come in to roost, fly to roost
  also    gather to roost, roost communally, roost together, roost in flocks, roost on the ground
  also    roost in large numbers, roost in ivy, roost by day, roost in thick cover, come to roost
  also    went to roost, came in to roost, flew to roost, came to roost
  also    roost in large flocks, roost in huge flocks, roost in noisy flocks, roost against a trunk
  also    roost close to a trunk, roost by a trunk, roost on ledges, roost on a ledge, roost on buildings
  means   settles to sleep or rest for the night or over the tide

behaviour rub-bill
  also    wipe its bill, clean its bill, wipe its bill on a branch, rub its bill on a branch
  also    clean its bill on a branch, wipe its beak clean, rub its beak clean, wipe its beak
  also    clean its beak, wipe its bill on the branch, rub its bill on the branch
  also    clean its bill on the branch, wipe the bill, clean the bill, wipe its beak on a branch
  also    rub its beak on a branch
  means   strokes the bill on a perch

behaviour run-and-stop
  also    run and stop, run again and stop
  also    run and pause, run then stop, run then pause, run stop peck, run a few steps and stop
  also    run and peck, make short runs, run in short bursts, run in bursts, run pause peck
  also    run stop run, dash and stop, run a few steps then stop, run and freeze, walk and stop
  also    run a little then stop, ran a few steps then stopped, ran and stopped, ran a little and stopped, ran and pause, ran then stop, ran then pause, ran stop peck
  also    ran and peck, made short runs, ran in short bursts
  also    runs and stops, running and stopping, ran and stopped, runs and stops on the ground
  also    runs and stops on lawns, runs and pauses, ran and paused, running and pausing
  means   short runs, each ending in a halt

behaviour run-on-ground
  also    run about, run around, run on the ground, run along the ground, run across the lawn
  also    run quickly, run fast, run swiftly, walk and run, run on foot, run along branches, run rapidly
  also    walk or run, trot, scamper, sprint, ran about, ran around, ran on the ground
  also    ran along the ground, ran across the lawn, ran quickly, ran fast
  also    run on bare ground, run on open ground, run over the ground, run on lawns, run on the lawn
  also    run in shallow water, run along the shore, run along the edge of the water, run and hop
  also    run and hop on lawns, run and hop on the ground, walk and run on the ground
  also    walk and run on bare ground, walks and runs, walking and running, walked and ran, runs and hops
  also    running and hopping, ran and hopped, run with quick steps, run with short quick steps
  also    ran on lawns, ran on the lawn, ran on bare ground
  also    walk and run along the edge of the water, walks and runs along the edge of the water
  means   moves fast on its feet

behaviour scold-intruders
  also    scold people, scold us, scold me, scold a cat, tell us off, fuss at people, scold from cover
  also    complain at us, told us off
  means   calls angrily at an intruder

behaviour scratch-ground
  also    scratching, scratch in the leaves, scratch in leaf litter, scratch in the leaf litter
  also    scratch at the ground, scratch the ground, scratch about, scratch around
  also    kick back with both feet, scratch with both feet, kick up leaves, kick leaves about
  also    kick at the leaves, rake the leaves, rake through leaves, rake leaf litter
  also    scratch in leaf litter with both feet, scratch in the leaves with both feet
  means   rakes the ground with its feet

behaviour scratch-itself
  also    scratch its chest, scratch its head, scratch with a foot, scratch its face, scratch its ear
  also    scratch its chin, scratch its head with a foot, have a scratch, scratch over the wing
  also    had a scratch
  means   uses a claw on its own plumage

behaviour search-dead-leaves
  also    probe dead leaves, probe clusters of dead leaves, probe clusters of leaves
  also    probe dead leaf clusters, probe leaf clusters, probe curled leaves, search leaf clusters
  also    search clusters of dead leaves, look into curled dead leaves
  means   looks for insects in dead or bunched leaves that hang in a bush or tree

behaviour secretive
  also    skulky, elusive, retiring, skulk, skulk about, skulk in the bush, stay low in cover
  also    creep through undergrowth, skulk in undergrowth, skulk in thick cover
  also    creep about in undergrowth, slink through cover, slink, lurk, lurk in cover, furtive
  also    unobtrusive, skulk in the bushes, skulk in the undergrowth, skulk in the reeds
  also    crept through undergrowth, crept about in undergrowth, slunk through cover, slunk
  means   keeps low and out of sight

behaviour shuffle
  also    shuffle along, shuffle along the ground, shuffle about, creep with bent legs
  also    shuffle on bent legs, move with a shuffle, shuffle on the ground, shuffle forward
  also    crept with bent legs
  means   moves with small dragging steps

behaviour shy
  also    wary, timid, cautious, skittish, keep its distance, stay well away from people, jittery
  also    avoid people, keep away from people, keep well away, avoid us, kept its distance
  also    kept away from people, kept well away
  means   will not let people come near

behaviour sing-from-cover
  also    sing from inside a bush, sing from a hedge, sing from deep cover, sing hidden
  also    sing from a hidden perch, sing unseen, sing from a bush, sing from dense cover
  also    sing from the reeds, sing from within a bush, sing out of sight, sing from inside the bush
  also    sing from a thicket, sing from a reedbed, sing from a bramble, sing from the hedge
  also    sang from inside a bush, sang from a hedge, sang from deep cover, sang hidden
  also    sang from a hidden perch, sang unseen, sang from a bush
  also    sing from thick cover, sing from a thick bush
  means   sings where it cannot be seen

behaviour sing-from-perch
  also    sing from a treetop, sing from wires, sing from posts, sing from treetops
  also    sing from a song post, sing from an exposed perch, sing from a high perch
  also    sing from the top of a tree, sing from a prominent perch, sing from the treetops
  also    sing from the rooftops, sing from rooftops, sing from a dead branch, sing from an open perch
  also    sing from the top, sing from chimneys, sang from a treetop, sang from wires, sang from posts
  also    sang from treetops, sang from a song post, sang from an exposed perch, sang from a high perch
  also    sing from tree tops, sing from a tree top, sing from a bush top, sing from bush tops
  also    sing from the top of a bush, sing from the tops of bushes, sing from tops of bushes
  also    sing from fences, sing from a fence, sing from a tree, sing from rocks
  also    sing from trees, sing from bushes, sing from low bushes, sing from a low branch
  also    sing from low branches, sing from sagebrush
  means   sings from a perch in view

behaviour sing-in-flight
  also    sing in the air, sing on the wing, sing while flying, sing high in the air, sing as it flies
  also    sing high up, sing high overhead, sing while hovering, sang in the air, sang on the wing
  also    sang while flying, sang high in the air, sang as it flies, sang high up, sang high overhead
  means   sings while flying

behaviour sink-under
  also    sink out of sight, sink below the surface, slip under the water, slip under, slide under
  also    submerge, submerge quietly, slip under without a splash, sink like a submarine, sink slowly
  also    sank out of sight, sank below the surface, slid under, sank like a submarine, sank slowly
  also    sank under
  means   goes below with no dive or splash

behaviour sit-on-eggs
  also    incubate, sit on a nest, brooding, sit on its eggs, sit tight on the nest, sit on a clutch
  also    incubate eggs, sit on the nest, sit on its nest, sit on her nest, sat on a nest
  also    sat on its eggs, sat tight on the nest, sat on a clutch, sat on the nest, sat on its nest
  also    sat on her nest
  means   warms its eggs

behaviour sit-still
  also    sit motionless, sit quietly, perch motionless, perch quietly, stay still, keep still
  also    sit for long periods, perch for long periods, sit for ages, stay motionless, remain motionless
  also    remain still, sluggish, lethargic, inactive, lazy, sat motionless, sat quietly, kept still
  also    sat for long periods, sat for ages, sat still
  means   keeps to one place without moving

behaviour sit-tight
  also    sit tight until approached, let people come close before flying, sat tight until approached
  also    sat tight
  means   stays put until a person is almost on it

behaviour skim-water
  also    skim the water, skim over the water, skim across the water, skim low over water
  also    scoop up water in flight, drink in flight, drink on the wing, skim with its bill in the water
  also    cut the water with its bill, skim low over the water, fish by skimming
  also    plough the water with its bill, skim the surface, skim over the surface, skim the waves
  also    skim over the waves, drank in flight, drank on the wing
  means   flies so low that bill or belly touches water

behaviour sleep
  also    doze, snooze, asleep, doze on a branch, sleep by day, take a nap, sleep on the water
  also    sleep in a tree, sleep during the day, close its eyes, slept by day, took a nap
  also    slept on the water, slept in a tree, slept during the day, slept
  means   is asleep or half asleep

behaviour slow-moving
  also    move slowly, move slowly about, move slowly through the leaves, move slowly among leaves
  also    move slowly among the leaves, move slowly through bushes, move slowly through shrubs
  also    move slowly through the branches, slow in its movements
  means   does not hurry as it feeds or climbs

behaviour smash-snails
  also    smash a snail, smash snails on a stone, break snails, break snails on a stone, break snail shells
  also    bash snails, bash a snail on a stone, hit snails on a rock, broke snails on a stone
  means   strikes snails on a stone to break the shell

behaviour sociable
  also    gregarious, social, communal, live communally
  means   likes company of its own kind

behaviour solitary
  also    alone, keep alone, forage alone, feed alone, keep to itself, stay alone, feed on its own
  also    live alone, keep on its own, hunt alone, fly alone, stay on its own, swim alone, move alone
  also    keep apart, loner, kept alone, fed alone, kept to itself, fed on its own, kept on its own
  also    flew alone, swam alone
  also    mostly alone, usually alone, often alone
  means   is seen singly

behaviour spin-on-water
  also    spin in circles, spin on the water, spin round on the water, swim in circles
  also    swim in tight circles, spin while swimming, twirl on the water, whirl on the water
  also    spin round and round, spin like a top, turn in circles on the water, swim round and round
  also    spun in circles, spun on the water, spun round on the water, swam in circles
  also    swam in tight circles, spun while swimming, spun like a top
  means   turns round and round as it swims to feed

behaviour spiral-up-trunk
  also    spiral up a trunk, climb in a spiral, climb in spirals, spiral round a trunk
  also    spiral around a trunk, spiral up trunks, climb round a trunk, climb around a trunk
  also    creep round a trunk, creep around a trunk, spiral upwards round the trunk
  also    corkscrew up the trunk, wind its way up the trunk, spiral around tree trunks
  also    climb trunks in a spiral, spiral up a tree, crept round a trunk, crept around a trunk
  also    wound its way up the trunk
  also    creep up a trunk in spirals, creep up trunks in spirals, creep up a trunk in a spiral
  also    creep in spirals up a trunk
  means   climbs round and up a trunk

behaviour stab-at-water
  also    stab at the water, jab at the water, stab at the surface, strike at fish, snap at fish
  also    lunge at fish, grab at fish, stab in the water, thrust its bill into the water
  also    stab into the water, strike into the water, thrust its beak into the water, struck at fish
  also    struck into the water
  means   thrusts the bill fast at something in water

behaviour stalk-prey
  also    stalking, stalk slowly, stalk fish, walk slowly through the water, wade slowly, step slowly
  also    walk stealthily, creep up on prey, stalk through the water, stalk through grass
  also    stalk along the bank, stalk the shallows, stalk in the shallows, walk slowly in the shallows
  also    walk slowly in shallow water, creep along the bank, crept up on prey, crept along the bank
  means   moves up on prey with slow steps

behaviour stand-about
  also    standing, stand on a rock, stand around, stand on rocks, stand on mud, stand in the grass
  also    stand in a field, stand on the edge, stand at the edge of the water, stand on ice
  also    stand on a post, stand on a roof, stand on a log, stand on a bank, stand on a lawn
  also    stand on a wall, stood on a rock, stood around, stood on rocks, stood on mud
  also    stood in the grass, stood in a field, stood on the edge
  means   is on its feet in one place

behaviour stand-and-wait
  also    stand still, stand motionless, stand like a statue, stand still in the water, wait for fish
  also    wait for prey, stand motionless in the water, stand motionless at the edge of the water
  also    stand very still, stand frozen, stand patiently, stand without moving, wait motionless
  also    stand quite still, stand and stare, stood still, stood motionless, stood like a statue
  also    stood still in the water, stood motionless in the water
  also    stood motionless at the edge of the water, stood very still
  means   stays on its feet without moving until prey comes

behaviour stand-in-water
  also    stand in the water, stand in shallow water, stand in a river, stand up to its belly in water
  also    stand in shallows, stand in mud, stand belly deep, stand in the shallows, stand in a stream
  also    stand in the river, stand in a pond, stand in the stream, stand in a lake, stand in the pond
  also    stand in a puddle, stand in the lake, stood in the water, stood in shallow water
  also    stood in a river, stood up to its belly in water, stood in shallows, stood in mud
  also    stood belly deep
  means   is on its feet in water

behaviour start-low-on-next-tree
  also    fly to the base of the next tree, fly down to the base of the next tree
  also    fly to the foot of the next tree, drop to the base of the next tree
  also    fly to the bottom of the next tree, flew to the base of the next tree
  also    flew down to the base of the next tree
  means   leaves one tree high up and begins low on another

behaviour steal-food
  also    kleptoparasitise, kleptoparasitize, rob other birds, steal from other birds
  also    steal food from other birds, chase gulls for food, chase terns for food
  also    snatch food from others, steal chips, steal fish, rob gulls, force other birds to drop food
  also    harass gulls, harass terns, pirate food, stole from other birds, stole food from other birds
  also    stole chips, stole fish, stole food
  also    rob terns, rob terns and gulls, rob puffins
  means   takes food from other birds

behaviour stoop
  also    stoop at prey, stoop on prey, stoop at birds, plummet, dive on prey, dive at birds
  also    plunge at birds, stoop on a pigeon, fold its wings and dive, dive at a pigeon
  also    dive with folded wings, dive with closed wings, stoop on birds, dive out of the sky
  also    dove on prey, dove at birds, dove at a pigeon, dove with folded wings, dove with closed wings
  also    dove out of the sky
  means   drops on prey from high up with closed wings

behaviour strut
  also    strut about, strut around, swagger, parade, parade about, march about, walk with a strut
  also    walk with a swagger, strut along, strut across the lawn, strut on the lawn, walk proudly
  also    swagger about, strut around the lawn
  means   walks with proud high steps

behaviour sunbathe
  also    sun itself, bask, bask in the sun, sunning, sun its wings, lie in the sun, sit in the sun
  also    lie with its wings spread, sun itself on the ground, spread its wings in the sun
  also    lie spread out in the sun, lay in the sun, lying in the sun, sat in the sun
  also    lay with its wings spread, lying with its wings spread, lay spread out in the sun
  also    lying spread out in the sun
  means   lies or sits in the sun with feathers loose

behaviour swallow-whole
  also    gulp down food, swallow prey whole, swallow fish whole, gulp, swallow a fish
  also    swallow food whole, gulp down a fish
  means   swallows fast or whole

behaviour sweep-bill
  also    sweep its bill from side to side, sweep the bill, swing its bill from side to side
  also    sweep side to side, swish its bill, swish its bill through the water
  also    sweep its bill through the water, scythe the water, scythe, move its bill from side to side
  also    sweep the water, sweep from side to side, swing its head from side to side
  also    sweep its bill in the water, scythe from side to side in the water
  also    feed with a side to side motion, swept its bill from side to side, swept the bill
  also    swung its bill from side to side, swept side to side, swept its bill through the water
  also    swept the water, swept from side to side
  means   moves the bill sideways through water to feed

behaviour swim
  also    swam, swim about, swim around, swim on the water, swim in the water, paddle about
  also    paddle around, paddle on the pond, swim along, swim on open water, swim near the edge
  also    swim in open water, swim on a pond, swim in a pond, paddle along, swim in flocks, swam about
  also    swam around, swam on the water, swam in the water, swam along, swam on open water
  also    swam near the edge
  also    swim near cover, swim close to cover
  means   moves over the water by its feet

behaviour swim-jerking-head
  also    swim with a jerking head, swim jerking its head, swim nodding its head, nod as it swims
  also    jerk its head as it swims, swim with a nodding head, pump its head as it swims
  also    nod its head while swimming, bob its head while swimming, jerk its head while swimming
  also    swim with head nodding, nod when swimming, bob its head as it swims, swam with a jerking head
  also    swam jerking its head, swam nodding its head, swam with a nodding head, swam with head nodding
  means   its head goes to and fro as it swims

behaviour swim-underwater
  also    swim under the water, swim beneath the surface, chase fish underwater, fly underwater
  also    swim under the surface, swim below the surface, hunt underwater, pursue fish underwater
  also    feed under water, swam under the water, swam beneath the surface, flew underwater
  also    swam under the surface, swam below the surface, fed under water, swam underwater
  means   moves along below the surface

behaviour take-grit
  also    eat grit, pick up grit, swallow grit, take salt, eat grit from the road, feed on road salt
  also    pick grit off the road, lick salt, take grit from the road, take road salt, ate grit
  also    took salt, ate grit from the road, fed on road salt, took grit from the road, took road salt
  also    took grit
  means   swallows grit or salt

behaviour tame
  also    confiding, approachable, fearless, unafraid, trusting, let people come close
  also    allow close approach, let us get close, friendly, get used to people
  also    allow people to get close, unwary, let us get very close, let me get within a few feet
  also    let me get close, got used to people
  means   lets people come near

behaviour tear-food
  also    tear at prey, tear up prey, rip prey apart, pluck prey, pluck a bird, pull prey apart
  also    pluck a pigeon, pluck feathers, strip flesh, tear meat, tear flesh, eat prey on a post
  also    dismember prey, pluck its prey, pull the feathers off its prey, tear apart prey, tore at prey
  also    tore up prey, tore meat, tore flesh, ate prey on a post, tore apart prey, tore food
  means   pulls prey to bits to eat it

behaviour toss-leaves
  also    toss leaves aside, flick leaves, flick leaves aside, throw leaves about, turn over leaves
  also    turn over dead leaves, turn leaves, flip leaves, flip over leaves, throw leaves aside
  also    sweep leaves aside, search through leaves, rummage in leaves, rummage in leaf litter
  also    rustle in the leaves, rustle about in the leaves, threw leaves about, threw leaves aside
  also    swept leaves aside
  also    turn over wet leaves, turn over fallen leaves
  means   throws dead leaves aside with the bill

behaviour toss-prey
  also    toss fish, flip a fish, juggle food, toss food into the air, flip prey in the air
  also    toss back food, toss food, throw prey in the air, flip food into the air, turn a fish round
  also    toss berries, toss a berry, juggle a fish, flip a fish head first, threw prey in the air
  means   throws food up to catch it

behaviour tremble-foot
  also    tremble a foot, shake a foot in the mud, patter its feet, paddle its feet, stamp its feet
  also    tap its feet, stamp on the grass, drum its feet, stir the mud with a foot, dance for worms
  also    tremble one foot, shake one foot in the mud, shook a foot in the mud
  also    shook one foot in the mud
  also    stir mud with feet, stir mud with its feet, stir the mud with its feet
  also    stir up the mud with its feet
  means   works the ground with quick feet to bring up food

behaviour up-end
  also    up ends, up ending, up ended, tip up, tip up in the water, put its bottom up
  also    stick its tail up in the water, stick its bottom up, tip forward in the water, tip forward
  also    put its tail in the air, feed upside down in the water, go bottom up, go bottoms up
  also    put its rump in the air, tip up to feed, stuck its tail up in the water, stuck its bottom up
  also    fed upside down in the water, went bottom up, went bottoms up
  also    upends, upending, upended, up-ends in shallow water
  means   swims with the fore part under water and tail up

behaviour visit-garden
  also    come to the garden, come to gardens, visit gardens, visit the garden, come into gardens
  also    come into the garden, visit the yard, come to the yard, visit yards, come to yards
  also    visit backyards, come into the yard, come to my garden, visit my garden, come in the garden
  also    visit my yard, came to the garden, came to gardens, came into gardens, came into the garden
  also    came to the yard, came to yards, came into the yard
  means   is seen about a garden or yard

behaviour waddle
  also    walk with a waddle, roll from side to side, walk with a rolling gait, waddle on land
  also    walk clumsily, move awkwardly on land, shuffle on land, walk awkwardly, totter, waddle about
  means   walks with the body rolling from side to side

behaviour wade
  also    wade about, wade in, wade in the water, wade in shallow water, walk in the water
  also    walk in shallow water, wade up to its belly, wade deep, wade in deep water, wade through water
  also    walk through the water, wade through the water, wade in shallows, wade along the edge
  also    wade belly deep, wade around
  means   walks in water

behaviour walk
  unless-after the, our, my, this, a, long, short, morning, evening, daily, of
  also    walk about, walk around, walk along, walk on the ground, walk along the ground
  also    walk across the lawn, walk slowly, walk in the grass, step along, walk rather than hop
  also    walk on mud, stroll, stroll about, pace about, amble, plod
  means   moves one foot before the other

behaviour walk-nodding-head
  also    walk with a nodding head, nod as it walks, nod its head as it walks, bob its head as it walks
  also    jerk its head as it walks, walk with head bobbing, walk with head nodding
  also    jerk its head when walking, walk bobbing its head, walk nodding its head
  also    walk jerking its head, pump its head as it walks, walk like a pigeon
  also    bob its head while walking, nod while walking, walk with a bobbing head
  means   its head goes to and fro at each step

behaviour walk-on-floating-plants
  also    walk on lily pads, walk on floating vegetation, walk over lily pads, walk on water plants
  also    walk over floating plants, walk on floating weed, walk across lily pads
  also    walk over floating leaves, step on lily pads, walk on water weed
  means   treads on leaves that float

behaviour walk-under-water
  also    walk along the bottom, walk on the bottom, walk under the water, walk on the stream bed
  also    walk into the water, walk on the river bed, walk along the stream bed, walk below the surface
  also    walk along the bottom of the stream, wade under
  means   feeds on foot below the surface of a stream
