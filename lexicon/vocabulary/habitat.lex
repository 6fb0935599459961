# Where a bird was: landscape, cover, perch. Forms carry no article and no preposition.

habitat aerial-mast
  also    tv aerial, television aerial, rooftop aerial, tv antenna, radio mast, phone mast, satellite dish
  means   an aerial, dish or mast used as a perch

habitat airfield
  also    airport, runway, airstrip, aerodrome
  means   open ground for aircraft

habitat alder
  also    alder tree, alder wood, alders by the river
  means   alder trees, often by water

habitat allotment
  also    allotment garden, vegetable patch, vegetable garden, veg patch, kitchen garden, community garden
  means   ground dug for growing vegetables

habitat alpine-meadow
  also    mountain meadow, high pasture, subalpine meadow
  means   grass and flowers near or above the tree line

habitat apple-tree
  also    crab apple, apple orchard tree
  means   an apple tree, in fruit or not

habitat arable
  also    arable land, arable field, arable farmland, cultivated field, farmed field, tilled land
  means   land ploughed and sown with crops

habitat arroyo
  also    dry wash, desert wash, dry creek bed, dry riverbed, gully, wadi, dry gulch
  means   a stream bed dry for most of the year

habitat aspen
  also    aspen grove, aspen tree, aspen woods, quaking aspen, poplar, poplar tree
  means   aspen or other poplar trees

habitat badlands
  also    eroded hills, bare clay hills
  means   dry, bare, deeply worn ground

habitat bamboo
  also    bamboo thicket, bamboo clump, canebrake
  means   a dense stand of bamboo or cane

habitat bare-branch
  also    dead branch, bare twig, dead twig, exposed branch, bare limb, dead limb
  means   a leafless branch in the open

habitat bare-ground
  also    bare earth, bare soil, open ground, dusty ground, dirt patch
  also    gravel
  means   soil with little growing on it

habitat barn
  also    old barn, barn roof, hay barn, cattle shed, cow shed, stables, farm building, horse stable
  means   a farm building

habitat bayou
  also    bottomland swamp, swampy backwater
  means   a slow, swampy side water of the southern states

habitat beach
  also    sandy beach, sandy shore, beach sand, sandy strand, seashore
  means   sand at the edge of sea or lake

habitat beaver-pond
  also    beaver dam, beaver lodge, beaver meadow
  means   water held back by beavers

habitat beech-wood
  also    beech tree, beech, beech woodland, beech forest, beech mast
  means   beech trees, or ground under them

habitat berry-bush
  also    berry tree, mountain ash, rowan, rowan tree, cotoneaster, pyracantha, berries, fruiting bush
  also    fruiting tree
  means   a bush or small tree in fruit

habitat birch-wood
  also    birch, birch tree, birch woodland, birch forest, silver birch, birch scrub
  means   birch trees

habitat bird-bath
  also    drinking dish, water dish, stone bath, garden fountain
  means   a dish of water in a garden

habitat bird-table
  also    feeding table, feeding tray, tray feeder, platform feeder, hopper feeder, feeding station
  means   a raised board with food for birds

habitat boat
  also    moored boat, boat deck, ship, ship's rail, trawler, fishing boat, ferry deck, canoe
  means   a vessel used as a perch or followed by birds

habitat bog
  also    peat bog, blanket bog, bog pool, quaking bog, mire, sphagnum bog, raised bog
  means   wet, acid, peaty ground

habitat boreal-forest
  also    taiga, northern forest, north woods, muskeg, boreal woods, spruce bog
  means   the northern belt of conifers

habitat bracken
  also    fern, bracken slope, bracken bed, bracken frond
  means   ferns growing thickly

habitat bramble
  also    bramble patch, blackberry bush, blackberry patch, briar, brier, raspberry canes
  means   a tangle of thorny canes

habitat branch
  also    bough, tree branch, low branch, tree limb, limb, horizontal branch, overhanging branch
  also    end of a branch
  also    large branch
  means   a branch of a tree

habitat bridge
  also    road bridge, footbridge, under the bridge, culvert, viaduct, bridge girder
  means   a bridge or the space under it

habitat brush-pile
  also    woodpile, log pile, heap of sticks, pile of branches
  means   a heap of cut branches or logs

habitat buoy
  also    channel marker, marker buoy, navigation marker, fishing float
  means   a float or marker in the water

habitat burned-forest
  also    burned area, burnt area, burned wood, burnt forest, burnt woodland, recently burned area
  also    forest burn, fire-killed trees
  means   woodland lately burned

habitat bush
  also    shrub, low bush, dense bush, small bush, low shrub, evergreen shrub
  also    dense low bush, thick bush, low dense bush
  means   a woody plant lower than a tree

habitat bush-top
  also    top of a bush, top of the bush, top of bush, top of a hedge, top of the hedge, top of a shrub
  means   the highest sprays of a bush

habitat cactus
  also    cacti, cholla, prickly pear, opuntia, barrel cactus
  means   a spiny desert plant

habitat canal
  also    canal bank, canal side, towpath, canal lock
  means   a dug waterway

habitat canopy
  also    tree canopy, forest canopy, high canopy, leaf canopy, high in the trees, upper canopy
  means   the leafy top layer of a wood

habitat canyon
  also    gorge, ravine, canyon wall, rocky canyon, canyon floor, steep-sided valley
  means   a narrow, steep valley

habitat car-park
  also    parking lot, parking area, supermarket car park, paved lot, lay-by, multi-storey
  means   a place where cars are left

habitat cattail-marsh
  also    cattail, cattail stand, bulrush, reedmace, tule marsh, tules
  means   a marsh of cattails or bulrushes

habitat cave
  also    sea cave, cave mouth, mine shaft, old mine
  means   a hollow in rock

habitat cedar
  also    cedar tree, red cedar, cedar swamp, cedar grove
  means   cedar trees

habitat cemetery
  also    churchyard, graveyard, burial ground, gravestone, headstone
  means   a burial place

habitat chaparral
  also    coastal scrub, coastal sage scrub, manzanita, scrub oak thicket, maquis, garrigue, ceanothus
  means   dense evergreen scrub of dry coasts and hills

habitat chimney
  also    chimney pot, chimney stack, chimney top, smokestack
  means   a chimney

habitat church
  also    church tower, steeple, church spire, bell tower, belfry, church roof, cathedral, minster
  means   a church or its tower

habitat city
  also    city centre, city center, inner city, downtown, urban area, built-up area, high-rise, city street
  means   the middle of a large town

habitat clearing
  also    forest clearing, woodland clearing, glade, woodland ride, forest ride, forest opening
  also    power line cut
  means   an open place within a wood

habitat cliff
  also    sea cliff, cliff face, cliff ledge, cliff top, bluff, rock face, inland cliff
  means   a steep wall of rock or earth

habitat coast
  also    coastline, seaside, coastal strip, on the coast, sea front, coastal path
  means   land beside the sea

habitat compost-heap
  also    compost bin, compost pile, compost, leaf pile
  means   rotting garden waste

habitat conifer-wood
  also    conifer, coniferous forest, coniferous wood, conifer forest, evergreen forest, evergreens
  means   a wood of needle-leaved trees

habitat copse
  also    spinney, grove, small wood, coppice, clump of trees, stand of trees, wood lot
  means   a small wood

habitat cornfield
  also    corn stubble, field of corn, maize, maize field, sweetcorn, corn rows
  means   a field of maize

habitat cottonwood
  also    cottonwood grove, riverside cottonwoods
  means   cottonwood trees, mostly beside rivers

habitat crag
  also    rocky outcrop, outcrop, rock outcrop, tor, rocky knoll, pinnacle
  means   bare rock standing out of a slope

habitat creosote-flat
  also    creosote, creosote bush, creosote scrub, saltbush flat, saltbush, greasewood
  means   level desert with low, widely set shrubs

habitat crop-field
  also    standing crop, arable crop, cereal field, wheat field, barley field, grain field, rape field
  also    oilseed rape, bean field, soybean field
  means   a field with a crop in it

habitat cypress-swamp
  also    cypress, bald cypress, cypress trees, flooded forest, tupelo swamp, swamp forest
  means   trees standing in water

habitat dead-tree
  also    snag, dead snag, standing dead tree, dead pine, dead elm, dead oak, dead trunk
  means   a dead tree still upright

habitat deciduous-wood
  also    deciduous woodland, deciduous forest, broadleaf wood, broadleaved wood, broadleaf forest
  also    hardwood forest, hardwoods
  also    old deciduous wood
  also    mature deciduous wood, mature deciduous woodland, young deciduous wood
  means   a wood of broad-leaved trees that shed their leaves

habitat deck
  also    decking, patio, terrace, porch, veranda, balcony, deck rail, porch rail, back step
  means   a paved or boarded place beside a house

habitat desert
  also    desert floor, sand desert, desert flats, stony desert, dry desert, arid land
  means   land with little rain and little cover

habitat desert-scrub
  also    thorn scrub, semi-desert, palo verde, ironwood, desert thicket
  means   low thorny growth in dry country

habitat ditch
  also    drainage ditch, dyke, dike, roadside ditch, rhyne, wet ditch, field drain
  means   a narrow channel cut to drain land

habitat driveway
  also    gravel drive, pavement, sidewalk, tarmac, doorstep
  means   hard ground by a house or street

habitat dune
  also    sand dune, dune slack, sand hills, marram, beach grass
  means   wind-blown sand hills

habitat estuary
  also    river mouth, firth, tidal river, estuarine flats, tidal basin
  means   where a river meets the sea

habitat farmland
  also    farm, farm fields, agricultural land, farm country, open farmland, mixed farmland, countryside
  also    ranch
  means   fields, hedges and farm buildings

habitat farmyard
  also    barnyard, stable yard, stock yard, feedlot, cattle yard, pig pen
  means   the yard of a farm

habitat feeder
  also    bird feeder, seed feeder, garden feeder, backyard feeder, tube feeder, sunflower feeder
  also    sunflower hearts, seed tray, spilled seed, spilt seed, scattered seed
  means   a holder of seed hung out for birds

habitat felled-wood
  also    clear-fell, felled area, logged area, felled plantation, clear-cut area, clear-cut hillside
  also    clear-fell area, logged forest
  means   woodland lately felled

habitat fen
  also    fenland, fen meadow, fen edge, sedge fen, calcareous fen
  means   low, wet land fed by ground water

habitat fence
  also    wire fence, barbed wire fence, barbed wire, fence line, chain-link fence, garden fence, fence wire
  also    wooden fence, picket fence, fence rail
  means   a barrier of wire or boards

habitat fence-post
  also    post, wooden post, gate post, top of a post, fence stake
  means   an upright of a fence

habitat field
  also    open field, grassy field, rough field, old field, field edge, field margin, field corner
  means   an open piece of farm or grass land

habitat fir-forest
  also    fir, fir tree, douglas fir, hemlock, hemlock forest, spruce-fir forest, fir wood
  means   fir or hemlock trees

habitat fish-pond
  also    fishing lake, fish farm, fishery, trout farm, carp pond, hatchery
  means   water stocked with fish

habitat flat-roof
  also    gravel roof, factory roof, warehouse roof, green roof
  means   a flat roof of a large building

habitat flooded-field
  also    flood, flood water, flooded meadow, flooded pasture, floodplain, wet field
  means   land lately under water

habitat flower-bed
  also    flower border, flowers, flower head, blossom, planter, herbaceous border
  means   planted flowers

habitat foliage
  also    leafy cover, dense foliage, leafy tree, thick foliage, among the leaves, in the leaves
  also    leaf cluster
  also    dense leaves, thick leaves, among leaves
  means   leaves on a tree or bush

habitat forest
  also    deep forest, mature forest, dense forest, old growth, old-growth forest, wooded country
  also    forested hillside
  means   a large area of trees

habitat forest-floor
  also    woodland floor, leaf litter, fallen leaves, dead leaves, leaf mould, leaf mold
  means   the ground under trees

habitat freshwater-marsh
  also    marsh, marshland, marshy ground, freshwater wetland, grassy marsh, marsh edge
  means   open wet ground with standing water and plants

habitat garden
  also    back garden, front garden, suburban garden, town garden, garden centre, botanic garden
  also    rose garden, clothes line, washing line, hanging basket, garden bench
  also    large garden, small garden
  means   planted ground by a house

habitat gate
  also    farm gate, five-bar gate, field gate, gateway, stile, garden gate
  means   a gate or stile

habitat golf-course
  also    fairway, putting green, golf links, golf green
  means   ground laid out for golf

habitat gorse
  also    gorse bush, furze, gorse scrub, whin bush, broom bush
  means   spiny yellow-flowered scrub

habitat grain-store
  also    grain elevator, grain silo, silo, grain bin, spilled grain, spilt grain, grain spill
  means   where grain is kept or spilled

habitat grass
  also    grassy bank, grassy area, grassy slope, grassy patch, grass verge, grass tuft, tussock
  means   grass of any height

habitat grassland
  also    rough grassland, open grassland, chalk grassland, downland, grassy plain, dry grassland, savanna
  also    savannah, chalk down
  also    short dry grassland, short grassland, tall grassland, tall dense grassland, bushy grassland
  means   wide land of grass

habitat gravel-pit
  also    gravel workings, sand pit, flooded pit, clay pit, borrow pit, flooded quarry
  means   a pit dug for gravel, often flooded

habitat ground
  also    dirt, on ground, low to the ground, ground level
  means   the ground, of no stated kind

habitat groyne
  also    breakwater, sea defence, rock armour, riprap, rock jetty, boulder jetty
  means   a barrier built against the waves

habitat gutter
  also    roof gutter, guttering, eaves, under the eaves, drain pipe, downspout, soffit
  means   the edge of a roof

habitat harbour
  also    harbor, marina, dock, quay, quayside, fishing port, boatyard, wharf
  means   sheltered water for boats

habitat hawthorn
  also    hawthorn bush, hawthorn hedge, blackthorn, thorn bush, thorn tree, buckthorn, thorny bush
  also    sloe bush
  means   thorny shrubs

habitat hay-bale
  also    straw bale, bale, haystack, straw stack, bale stack
  means   cut hay or straw, stacked

habitat hayfield
  also    hay meadow, mown field, cut field, silage field, alfalfa field, clover field, lucerne
  also    hay field
  means   grass grown to be cut

habitat headland
  also    point of land, promontory, peninsula, sea-watching point, coastal headland
  means   land running out into the sea

habitat heath
  also    heathland, lowland heath, heathery ground, sandy heath, heathy ground
  also    heath edge, heath with trees
  means   open sandy land with heather

habitat heather
  also    heather moor, heather moorland, ling heather, bell heather, deep heather
  means   low purple-flowered shrubs

habitat hedge
  also    hedgerow, garden hedge, privet hedge, field hedge, hedge bottom, hedge line, fencerow
  means   a line of bushes along a boundary

habitat hill
  also    hillside, hill top, hill slope, foothills, hill country, fellside, slope, steep slope
  also    rolling hills
  also    brushy hillside, rocky slope, rocky hillside, wooded hillside, grassy hillside, dry hillside
  means   raised ground

habitat holly
  also    holly bush, holly tree, holly berries
  means   holly, in fruit or not

habitat house
  also    farmhouse, brick building, building, window ledge, windowsill, garage, garage roof
  also    old building
  means   a dwelling or other building

habitat ice
  also    ice edge, frozen lake, frozen pond, sea ice, pack ice, ice floe, icy pond
  means   frozen water

habitat industrial-site
  also    industrial estate, power station, power plant, trading estate, railway yard, rail yard
  also    factory building
  means   factories and stores

habitat inlet
  also    cove, fjord, sea loch, sheltered bay, open bay, sea bay, tidal bay
  also    bays
  means   an arm of the sea

habitat island
  also    islet, offshore island, rocky island, small island, gravel island, sea stack
  also    grassy island, grass-covered island
  means   land with water all round

habitat ivy
  also    ivy-covered wall, ivy clump, ivy covered tree, climbing ivy, honeysuckle, vine tangle, vines
  also    creepers on a wall
  means   climbing plants

habitat juniper
  also    juniper bush, juniper scrub, pinyon-juniper, pinyon juniper woodland, pinyon pine, pinyon, pinon
  means   juniper and small pines of dry hills

habitat kelp
  also    seaweed, kelp bed, wrack, rotting seaweed, weed-covered rocks, eelgrass, eelgrass bed
  means   sea plants, floating or cast ashore

habitat lagoon
  also    brackish lagoon, coastal lagoon, saline lagoon, brackish pool, coastal pool
  means   shallow water cut off from the sea

habitat lake
  also    mere
  also    loch, lough, large lake, lake edge, mid-lake, open lake, tarn, mountain lake, lake surface
  also    shallow lake
  means   a large body of still water

habitat lakeshore
  also    lakeside, edge of the lake, edge of a lake, lake margin, pond edge, edge of the pond
  also    edge of a pond, water's edge, waters edge, waterside, shoreline
  means   the edge of still water

habitat lamp-post
  also    street light, street lamp, light pole, light standard, floodlight
  means   a tall lamp beside a road

habitat landfill
  also    rubbish tip, rubbish dump, refuse tip, garbage dump, dump, landfill site, rubbish heap, dumpster
  means   a place where waste is tipped

habitat larch
  also    larch tree, larch plantation, tamarack, tamarack bog
  means   larch trees

habitat lawn
  also    mown grass, mowed grass, short grass, cut grass, front lawn, back lawn, turf, sod farm, turf farm
  also    lawn edge
  means   closely cut grass

habitat ledge
  also    building ledge, rock ledge
  means   a narrow shelf on a building or a rock

habitat lily-pads
  also    lily pad, water lily, floating leaves, floating plants, floating vegetation, duckweed
  also    water hyacinth
  means   plants floating on water

habitat log
  also    fallen log, fallen trunk, fallen tree, mossy log, floating log, half-sunk log, driftwood
  means   a lying tree trunk

habitat long-grass
  also    tall grass, rank grass, high grass, deep grass, tussocky grass, rough grass, ungrazed grass
  means   grass high enough to hide in

habitat mangrove
  also    mangrove swamp, mangrove forest, mangrove edge
  means   trees of warm muddy coasts

habitat manure-heap
  also    dung heap, manure pile, muck heap, midden, cow dung, cowpat, slurry pit
  means   a heap of dung

habitat maple
  also    maple tree, sugar maple, sycamore, sycamore tree, red maple
  means   maple or sycamore trees

habitat meadow
  also    flower meadow, wildflower meadow, damp meadow, wet meadow, water meadow, flowery meadow
  means   grass with flowers

habitat mesquite
  also    mesquite thicket, mesquite bosque, mesquite trees, acacia, acacia scrub, huisache
  means   thorny bean-trees of dry country

habitat mixed-wood
  also    mixed woodland, mixed forest, mixed trees
  means   broad-leaved and needle-leaved trees together

habitat moor
  also    moorland, upland moor, peat moor, grouse moor, open moor
  also    moorland edge, moor edge
  means   open, treeless high ground

habitat mountain
  also    mountainside, mountain slope, mountain top, high mountains, summit, high peaks, ridge top
  also    mountain ridge
  also    timberline
  means   very high ground

habitat mud
  also    soft mud, muddy edge, muddy margin, muddy bank, muddy shore, wet mud, muddy pool, muddy puddle
  means   wet soft earth

habitat mudflat
  also    tidal mud, tidal flat, tideflats, intertidal mud, exposed mud
  means   mud bared by the tide

habitat nectar-feeder
  also    hummingbird feeder, sugar-water feeder, sugar water, nectar bottle, hummer feeder
  means   a holder of sugar water for birds

habitat nest-box
  also    bird box, bird house, nesting box, martin house, owl box, swift box
  means   a box put up for nesting

habitat nest-hole
  also    nesting hole, tree hole, tree cavity, hole in a tree, hole in the wall, hole in a bank
  also    old woodpecker hole
  means   a hole used as a nest

habitat nesting-colony
  also    colony, breeding colony, seabird colony, rookery, heronry, ternery
  also    breeding ground
  means   where many birds nest close together

habitat nettle-bed
  also    nettles, nettle patch, stinging nettles, willowherb
  means   a dense bed of nettles

habitat oak-wood
  also    oak, oak tree, oak woodland, oak forest, live oak, oak savanna, acorn tree
  also    old oak wood
  means   oak trees

habitat offshore
  also    far out at sea, well offshore, just offshore, open ocean, open sea, out at sea, pelagic waters
  also    deep water
  means   at sea, away from land

habitat old-tower
  also    castle tower, clock tower, stone tower
  means   a tall narrow building

habitat open-country
  also    dry open country, open land, open landscape, open areas
  means   wide land without woods

habitat open-water
  also    water surface, surface of the water, middle of the lake, middle of the pond, out in the middle
  also    mid-water
  means   the middle of a stretch of water

habitat orchard
  also    fruit tree, apple orchard, cherry tree, cherry orchard, pear tree, plum tree, citrus grove
  also    mulberry tree, fig tree, olive grove
  means   fruit trees, planted

habitat overhead-wire
  also    wire, telephone wire, phone wire, power line, telegraph wire, telephone line, utility wire
  also    overhead cable, overhead line, electric wire
  means   a wire strung between poles

habitat palm-grove
  also    palm tree, date palm, fan palm, palmetto, coconut palm, oasis
  means   palm trees

habitat park
  also    city park, town park, public park, country park, wooded park, parkland, park lake, park pond
  also    village green
  means   public ground with grass and trees

habitat pasture
  also    grazing land, grazed grass, cattle pasture, sheep pasture, cow pasture, sheep field, paddock
  also    horse paddock, rangeland, ranch land, among cattle, among sheep
  also    bushy pasture
  means   grass eaten by stock

habitat path
  also    footpath, woodland path, muddy path, track, farm track, dirt track, bridleway, boardwalk
  also    woodland trail, forest trail, hiking trail, muddy trail
  means   a way for people on foot

habitat peanut-feeder
  also    peanuts, nut feeder, hanging peanuts, peanut holder, nut holder
  means   a mesh holder of nuts

habitat pier
  also    jetty, landing stage, pontoon, pier end, fishing pier, end of the pier, boat dock, mooring post
  also    piling, wooden piles
  means   a structure standing in water

habitat pine-wood
  also    pine, pine tree, pine woodland, pine forest, open pine woods, scots pine, ponderosa pine
  also    pine barrens, pine grove, pine plantation, pine cone
  means   pine trees

habitat plantation
  also    conifer plantation, forestry plantation, young plantation, planted trees, forestry block
  also    tree farm
  means   trees planted in rows

habitat playing-field
  also    sports field, football pitch, soccer field, ball field, baseball field, cricket pitch
  also    school field, recreation ground, playground, racecourse, athletic field
  means   grass kept for games

habitat ploughed-field
  also    plowed field, freshly ploughed field, freshly plowed field, furrow, tilled field, bare field
  also    harrowed field, behind the plough, behind the tractor
  means   earth turned for sowing

habitat pole
  also    telephone pole, telegraph pole, utility pole, power pole, roadside pole
  means   a tall post that carries wires or lights

habitat pond
  also    small pond, farm pond, village pond, duck pond, garden pond, stock pond, stock tank, dew pond
  also    pond side, pool, shallow pool, small pool
  also    wooded pond, woodland pond, forest pond
  means   a small still water

habitat prairie
  also    short-grass prairie, tallgrass prairie, great plains, open prairie, prairie grass
  means   wide natural grassland of North America

habitat prairie-pothole
  also    pothole, slough, prairie marsh, prairie slough, pothole marsh, alkali lake, playa lake
  means   a pond or marsh in prairie country

habitat puddle
  also    rain puddle, roadside puddle, puddle in the road, rain pool
  means   a small shallow water left by rain

habitat pylon
  also    electricity pylon, power pylon, transmission tower, water tower, radio tower, cell tower
  means   a tall metal tower

habitat quarry
  also    quarry face, old quarry, disused quarry, chalk pit, stone quarry, quarry ledge, mine workings
  means   a place where stone is dug

habitat raft
  also    tern raft, floating raft, nesting raft
  means   a floating platform

habitat railing
  also    handrail, iron railings, balustrade, guard rail, park railings
  means   a rail along a path or bridge

habitat railway
  also    railway line, railroad, railroad track, train tracks, railway embankment, railway cutting
  also    railway station, train station
  means   ground by train lines

habitat reedbed
  also    reeds, reed edge, reed fringe, reedy edge, reedy margin, phragmites, reed stem, top of a reed
  also    reed swamp, reedy ditch
  means   a stand of tall reeds

habitat reservoir
  also    concrete-sided reservoir, reservoir bank, drinking water reservoir, dam, dam wall
  means   a lake made to store water

habitat rice-field
  also    rice paddy, paddy field, rice stubble, rice farm
  means   flooded ground for rice

habitat river
  also    lowland river, slow river, wide river, river edge, river pool, main channel
  means   a large running water

habitat riverbank
  also    bank, banks, bank of the river, bank of a river, riverside, stream bank, streamside, waterside trees
  also    vertical bank
  means   the edge of running water

habitat riverside-wood
  also    riparian wood, riparian woodland, riparian forest, bottomland forest, bottomland, streamside trees
  also    streamside thicket, riverside trees, gallery forest
  means   trees along a river

habitat road-sign
  also    sign post, traffic sign, top of a sign, traffic light, billboard
  means   a board or post by a road

habitat roadside
  also    road, road verge, roadside verge, verge, highway, motorway, country lane, lane, dirt road
  also    gravel road, edge of the road, side of the road, median strip
  means   a road or its edge

habitat rock
  also    boulder, flat rock, rock in the river, rock in the stream, midstream rock, stones in the river
  also    wet rocks, stepping stone
  also    stones in streams, stones in a stream, stone in a stream, stones in the stream
  also    stones in the water
  means   a large stone used as a perch

habitat rocky-shore
  also    rocky coast, rocky beach, rocky coastline, shore rocks, seaweed-covered rocks, wave-washed rocks
  also    intertidal rocks, rock pool, tide pool
  means   a sea edge of rock

habitat roof
  also    rooftop, house roof, roof ridge, roof tiles, tin roof
  means   the top of a building

habitat roost-site
  also    communal roost, night roost, roost tree
  means   a place where birds gather to sleep

habitat rough-ground
  also    waste ground, wasteland, vacant lot, brownfield, brownfield site, building site, construction site
  also    weedy lot, derelict land
  means   untended land in or near a town

habitat rush-bed
  also    soft rush, rushy field, rushy pasture, rush clump, rushy ground, rushes and sedges
  means   a clump or field of rushes

habitat sagebrush
  also    sage flats, sagebrush flat, sagebrush steppe, sage scrub, sagebrush plain, rabbitbrush
  means   grey scrub of dry western plains

habitat saguaro
  also    saguaro cactus, giant cactus, saguaro desert
  means   the tall branched desert cactus

habitat salt-marsh
  also    saltings, tidal marsh, coastal marsh, brackish marsh, spartina, spartina marsh, cordgrass
  also    saltmarsh creek, glasswort
  also    saltmarsh
  means   marsh flooded by tides

habitat salt-pan
  also    salt pond, salt works, salina, salt lake, salt flat, evaporation pond
  means   shallow ponds of salty water

habitat sandbank
  also    sandbar, sand flat, sand spit, shingle spit
  means   sand bared at low water

habitat sandy-bank
  also    sand cliff, earth bank, earth cliff, vertical sand bank, sand face
  means   a steep face of sand or earth where holes can be dug

habitat scrape
  also    wader scrape, shallow scrape, muddy scrape, flooded scrape
  means   a shallow water dug for birds

habitat scree
  also    scree slope, talus, talus slope, boulder field, boulder slope, rock slide, stony slope
  means   loose stones on a slope

habitat scrub
  also    scrubland, scrubby ground, low scrub, dense scrub, scrubby edge, shrubland, brush, brushland
  also    brushy field, brushy edge, scrubby hillside
  means   low woody growth

habitat sea
  also    ocean, inshore waters, inshore, coastal waters, salt water, nearshore waters
  also    arctic sea, cold sea
  means   the sea, near land or not stated

habitat sea-wall
  also    sea bank, promenade, sea front wall, esplanade, flood bank, levee
  means   a bank or wall that holds back the sea

habitat second-growth
  also    secondary growth, secondary woodland, young regrowth, regrowth
  means   young trees and bushes where an older wood was cleared

habitat sedge-bed
  also    sedge, sedges, sedge meadow, sedge marsh, sedge tussock, sedgy marsh, wet sedges
  means   grass-like plants of wet ground

habitat sewage-works
  also    sewage farm, sewage pond, sewage lagoon, sewage plant, water treatment plant, settling pond
  also    treatment ponds, filter bed, settling beds
  means   where waste water is cleaned

habitat shed
  also    garden shed, shed roof, greenhouse, glasshouse, summerhouse, outbuilding, outhouse, tool shed
  also    lean-to
  means   a small garden or farm building

habitat shelter-belt
  also    windbreak, tree belt, line of trees, row of trees, tree line, avenue of trees
  means   a planted line of trees

habitat shingle-beach
  also    shingle, shingle bank, shingle ridge, pebble beach, pebbly beach, stony beach, stony shore
  also    gravel beach, gravel bar, pebbles
  means   a shore of small stones

habitat shore
  also    foreshore, seaward edge, edge of the sea, waterline
  means   the edge of sea or lake, of no stated kind

habitat shrubbery
  also    dense shrubs, ornamental shrubs, rhododendron, laurel hedge, laurels, park shrubs
  means   planted bushes

habitat sky
  also    high in the air, mid-air, in the air, open sky, air
  means   the open air

habitat snow
  also    snow patch, snowfield, deep snow, snowy field, snow-covered ground, snow covered field
  also    snowy ground
  means   lying snow

habitat spruce-forest
  also    spruce, spruce tree, spruce wood, norway spruce, spruce plantation, christmas tree
  also    young spruce
  means   spruce trees

habitat steppe
  also    dry steppe, grassy steppe, cold steppe, open steppe
  means   wide dry grass plain

habitat stone-wall
  also    wall, brick wall, dry stone wall, old wall, garden wall, top of the wall, top of a wall, rock wall
  also    castle wall, ruin
  means   a wall of stone or brick

habitat stream
  also    brook, creek, rivulet, small stream, woodland stream, rocky stream, fast stream
  also    fast-flowing stream, mountain stream, upland stream, clear stream, shallow stream, creek bed
  also    creekside
  also    stream edge
  means   a small running water

habitat street
  also    street tree, shopping street, high street, town square, village street, market square, plaza
  means   a road between houses

habitat stubble
  also    stubble field, winter stubble, weedy stubble, wheat stubble, barley stubble, cut corn
  means   stalks left after harvest

habitat stump
  also    tree stump, old stump, rotten stump, cut stump
  means   what is left of a felled tree

habitat suburb
  also    suburban area, suburbia, residential area, housing estate, housing development, subdivision
  also    neighborhood, neighbourhood
  means   houses with gardens round a town

habitat suet-feeder
  also    suet, suet cage, suet block, suet balls, fat ball, fat ball feeder, fat cake
  means   a holder of fat put out for birds

habitat sunflower-field
  also    sunflower, sunflower head, sunflower patch, game cover
  means   sunflowers or a seed crop left standing

habitat surf
  also    surf line, breaking waves, breakers, wave edge, tide edge, tide's edge, edge of the tide
  also    edge of the waves, along the surf
  means   where waves break on the shore

habitat swamp
  also    swampy wood, wooded swamp, swampland, swampy ground, swamp edge, alder swamp
  means   wet ground under trees or bushes

habitat swimming-pool
  also    paddling pool, ornamental pool, fountain basin, concrete pool
  means   a built pool

habitat thicket
  also    dense thicket, thick cover, dense cover, dense vegetation, thick vegetation, tangle
  also    tangled growth, dense brush, thick brush
  also    bayberry, bayberry thicket
  means   dense growth of bushes

habitat thistle-patch
  also    thistle, thistle head, teasel, seed heads, burdock, goldenrod patch
  means   tall plants in seed

habitat tideline
  also    strandline, tidewrack, high tide line, wrack line, tidemark
  means   the line of drift left by the tide

habitat town
  also    village, town centre, town center, towns and villages, human settlements
  means   houses and streets

habitat tree
  also    tall tree, big tree, large tree, small tree, lone tree, isolated tree, scattered trees
  also    leafless tree, bare tree, evergreen tree, conifer tree
  also    old tree, deciduous tree, tall deciduous tree
  means   a tree of no stated kind

habitat tree-roots
  also    tree root, upturned roots, exposed roots, among tree roots
  means   roots above the ground

habitat tree-trunk
  also    trunk, trunk of a tree, tree bark, bark of a tree, side of a tree, bole of a tree, up a trunk
  also    large trunk
  means   the main stem of a tree

habitat treetop
  also    top of a tree, top of the tree, top of tree, top of a tall tree, top of a pine, top of a conifer
  also    tip of a conifer, crown of a tree, tree crown
  means   the highest part of a tree

habitat tundra
  also    arctic tundra, alpine tundra, wet tundra, arctic coast, mossy tundra
  means   treeless cold ground

habitat twig
  also    thin twig, outer twigs, outermost twigs, ends of twigs, small branches, thin branch, sprig
  also    among twigs, among conifer twigs
  means   a thin branch

habitat undergrowth
  also    understory, understorey, underbrush, low cover, ground cover, low vegetation, shrub layer
  also    low growth, beneath the hedge, under bushes
  also    thick understorey, thick understory, dense understorey, dense understory
  means   low growth beneath trees

habitat upland
  also    high ground, high country, upland pasture, hill pasture, rough upland, plateau
  means   hilly country

habitat vegetation
  also    emergent vegetation, waterside vegetation, bankside vegetation, marsh plants, waterside plants
  also    plant stem, tall stem
  means   plants of no stated kind

habitat vineyard
  also    grape vines, row of vines
  means   rows of grape vines

habitat water
  also    body of water, a body of water, shallow water, shallows, calm water, still water, running water, fast water, fresh water
  means   water, of no stated kind

habitat water-weed
  also    pondweed, floating weed, mat of weed, weed raft, algae, watercress bed, watercress
  means   plants growing in the water

habitat waterfall
  also    cascade, behind the waterfall, plunge pool, rapids, riffle
  means   falling or broken water

habitat weedy-field
  also    weeds, weedy patch, weedy edge, weedy margin, fallow field, fallow land, set-aside field
  also    abandoned field, overgrown field, weed patch, overgrown lot
  means   ground left to wild plants

habitat weir
  also    spillway, mill race, mill pond, sluice, sluice gate, lock gate
  means   a low barrier across a river

habitat wet-scrub
  also    wet thicket, damp scrub, damp thicket, wet bushes
  means   bushes on wet ground

habitat wet-wood
  also    wet woodland, damp wood, damp woodland, moist woodland, wet forest, wet conifer forest
  also    damp conifer wood, moist deciduous woodland, flooded woodland, wet conifer wood
  means   woods on wet ground

habitat wetland
  also    wet area, wetland reserve, wet ground, wet grassland, boggy ground, boggy patch, swampy area
  means   wet land of no stated kind

habitat willow
  also    willow tree, willow scrub, willow thicket, willow carr, alder carr, carr, sallow bush, sallows
  also    weeping willow
  means   willow trees or bushes

habitat woodland
  also    wood, open woodland, open woods, mature woodland, wooded area, woodland trees, forest trees
  also    old wood, old woodland, young wood
  also    mature wood
  means   land with trees

habitat woodland-edge
  also    wood edge, edge of the wood, edge of woods, edge of a wood, edge of woodland, forest edge
  also    edge of the forest, edge of forest, woods edge, tree edge
  also    conifer wood edge
  means   where trees meet open ground

habitat yard
  also    backyard, front yard, side yard, house yard
  means   ground round a house, in American use

habitat yew
  also    yew tree, yew hedge
  means   yew trees

habitat yucca
  also    joshua tree, agave, ocotillo, century plant
  means   spiky plants of dry country
