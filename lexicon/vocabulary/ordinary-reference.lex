# Ordinary words of reference works, checklists and field guides: lands, kinship, use, breeding. They
# say where a kind of bird lives and what people do with it, nothing of what a watcher sees.

ordinary lands-of-the-americas
  also    america, americas, united states of america, u.s, canada, mexico, brazil, peru, patagonia
  also    argentina, guatemala, guiana, cuba, jamaica, california, oregon, montana, arizona, texas, florida
  also    florida keys, mississippi, columbia, greenland, british columbia, new brunswick, brunswick
  also    mississippi valley, rocky mountains, andes, gulf coast, gulf coasts
  also    strait of magellan, magellan, falkland islands, falkland, north america, south america
  also    central america
  also    tropical america, andes mountains, eastern and gulf coasts
  means   lands and places of the Americas

ordinary lands-of-the-old-world
  also    eurasia, europe, africa, asia, australia, india, china, ceylon, russia, siberia, polynesia
  also    mauritius
  also    celebes, azores, canary islands, new guinea, new zealand, great britain, britain, england, guinea
  also    australasia, white nile, nile, egyptians, antarctica, adelie coast, adelie, antarctic circle
  also    east indies
  means   lands and places of the Old World

ordinary seas
  also    pacific, atlantic, mediterranean sea, indian ocean, pacific ocean, atlantic ocean
  means   the seas by name

ordinary parts-of-the-world
  also    hemisphere, hemispheres, region, regions, tropics, worlds, old and new worlds
  also    both old and new worlds
  also    northern hemisphere, southern hemisphere, circle, strait, latitudes, range, ranges, southward
  also    northward, eastward, westward, as far north as, as far south as, far north, new world tropics
  also    in most of the world, native to, far into, mountainous, mountainous areas, valley
  means   parts of the world

ordinary kinship-of-kinds
  also    genus, genera, subspecies, related, related to, related by, ancestral, ancestral to, descended
  also    descended from, sole representative, representative, color phase, colour phase, color phases
  also    colour phases, phase, phases, considered, classified, classified as, distinguished from, believed
  also    intermediate, sexes, both sexes, interbreeds, interbreed, freely, primitive, jurassic
  also    jurassic period
  also    period, living, largest living, ratite, ratites, egretta, casmerodius albus, casmerodius, albus
  also    rupicola, rupicola rupicola, resemble, resembles, resembling
  means   words of kinship among kinds of bird

ordinary birds-and-people
  also    game, delicacy, eaten, falconry, trained, flown, cage, sport, valued, prized, poultry, beneficial
  also    control, raised, bred, breed, breeds, roasters, edible, fatty, yielding, oil, butter, garments
  also    venerated
  also    ancient, harmless, paradise, mistaken, often mistaken, crossbreed, showy, complex, instead
  also    rodent control, policeman, used in falconry
  means   what people do with birds and think of them

ordinary living-of-kinds
  also    inhabits, inhabit, inhabiting, frequents, frequent, frequenting, winters, wintering, migrates
  also    migrate
  also    lives, live, living in, bordering, occupied, thievery, boldness, among, thievish, courting
  also    structures, dwellings, old structures, other structures, coastal, inland, freshwater, marshy
  also    brushy
  also    grassy, swampy, rocky, wooded, sandy, sedgy, mesa, mesa country, oceanic, pasturelands, plains
  also    mounds
  also    mound, tunnels, holes, dug, clay, sand, wedges, stitches, leaves, conceal, lays, eggs, bottle
  also    naturally
  also    builds, warm, wet, open, land, against, e.g, bulky nest, dome shaped nest, etc, ill
  also    carrion, against a wind
  means   how and where kinds of bird live

ordinary food-of-kinds
  also    rodent, rodents, reptile, reptiles, larvae, bee, insect, parasites, crocodiles, mistletoe, needles
  also    buds, evergreen, fruit, fish, small rodents, bee larvae, holding
  means   what kinds of bird eat

ordinary likening
  also    zebra's, shoe, suggesting, wooden shoe, bones, digits, joint, knee, knee joint, wartlike
  also    protuberances, process
  means   words of likeness, order and build with no fixed mark
