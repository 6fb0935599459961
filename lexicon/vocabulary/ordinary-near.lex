# English words that lie within a slip of the pen of a field word, or fall apart into two, and mean
# something of their own: they are not mended. Picked by the program itself from the small American and
# British word lists of SCOWL (Kevin Atkinson's word lists, free to use); those that people do write
# for a field word (`stripped`, `wigs`, `converts`) are left out, so that they are mended.

ordinary near-words-a
  hidden  yes
  also    aback, abacuses, abetted, abetting, abiding, aborted, aborting, abounding, abreast, absents
  also    accedes, accept, accepts, accosts, accounts, aced, aces, ached, aching, acing, adulthood, advent
  also    afoot, ahead, ailed, ailing, airplane, airplanes, alarming, aline, alined, alines, alongside
  also    altered, altering, ameer, ameers, amperes, ancients, angles, annotated, annulled, anybodies, apples
  also    apply, arced, archer, arches, arcked, arcking, arising, arks, aromatic, aromatics, arose, ascends
  also    ascent, ascents, ashed, ashes, ashtray, ashtrays, asides, assail, assailing, assents, asserted
  also    asserting, attest, attired, autumns, auxiliaries, auxiliary, avert, averted, averting, averts
  also    awing
  means   words of their own that look like field words

ordinary near-words-b
  hidden  yes
  also    backer, backers, backfire, backfires, backgrounds, backhand, backhanding, backhands, backing
  also    backings, backlog, backlogging, backlogs, backtrack, backtracks, backwoods, bags, bails, baker
  also    baking, balded, balder, balding, balds, baled, balk, balking, balks, ballooning, ballroom
  also    ballrooms, balls, balm, balmier, bandaging, bandana, bandanas, bandied, bandier, bandies, bandits
  also    bandying, bang, banged, bangs, bani, banish, banked, banned, bans, barb, barbering, barbing, barbs
  also    bareback, bares, barged, barging, baring, barked, barks, barraging, barreling, barren, barrens
  also    barrier, barriers, bartering, baseline, bass, batched, batches, batching, bats, batters, bauds
  also    baulk, baulking, beached, beadier, beadiest, beading, beads, beagles, beaker, beakers, beam, beams
  also    beans, bearer, bearing, bearings, beasts, beater, beckon, bedding, beds, bedside, bedsides, beefier
  also    beet, behead, beheads, belabored, belaboured, beliefs, belies, believes, belittle, bellhop
  also    bellhops, belling, bellowing, bellying, beloved, belt, belting, belying, benched, bends, bents
  also    berrying, bests, betters, bettors, bickered, bidding, bids, biggest, bigoted, bile, billfold
  also    billiards, billing, billion, billions, billowed, billowing, billows, binding, bindings, binds
  also    bitched, bitches, bitching, bitterer, bitterly, blackberries, blacked, blacken, blackens, blackest
  also    blackhead, blackheads, blacking, blacklist, blackmail, blackmailer, blackmailers, blackmails
  also    blacktop, blacktops, bladder, blanched, blanches, blanching, blander, blandest, blank, blanked
  also    blanker, blanketed, blanking, blanks, blaring, blasted, blaster, bleaches, bleaching, bleak
  also    bleaker, blemish, blemishes, blending, blent, blight, blighted, blind, blinded, blinder, blindest
  also    blindly, blinds, blinked, blinking, blister, blobbed, blocked, blockhead, blockheads, blocking
  also    blondest, blooded, bloodied, bloodier, bloodies, bloods, bloodshed, bloomed, blotted, blotter
  also    blotting, blouses, blown, blows, blueberries, blued, bluegrass, blueing, bluest, bluffed, bluffer
  also    bluntest, blunting, blunts, blurring, blurs, blurt, blurted, bluster, blusters, boarder, boarding
  also    boards, boars, boated, boded, bodes, bodices, bogging, boils, boldest, bolted, bolting, bond
  also    bonded, bonding, bonds, boned, boneyer, bonier, booed, booked, bookends, booking, bookings, boosted
  also    bootee, bootlegged, borderline, borderlines, bores, born, bossier, botch, botched, botches
  also    botching, bottles, bottomless, bounded, bowel, bowled, bowling, boxed, braced, bracelet, bracelets
  also    bracing, bracket, bracketed, bragged, braid, braiding, braids, brainier, braises, brakes, braking
  also    brand, branded, brandied, brandies, branding, brandish, brands, brandying, brasses, braves, bravest
  also    braving, brawling, brawn, brawnier, brawniest, braying, brazier, breached, breaches, breaded
  also    breadth, breadths, breakdown, breakneck, breakthrough, breasting, breathed, breather, breathes
  also    breathless, breeder, breezed, brew, brews, bricked, bride, brides, bridged, bridle, bridles
  also    brighten, brightens, brightness, brilliance, brilliants, brim, brims, brisked, briskly, britches
  also    brittle, brittlest, broaches, broaching, broadcast, broadcasted, broadcasts, broaden, broadened
  also    broadens, broads, broadsided, broadsides, brocade, brocaded, brocades, broiled, broiling, broncos
  also    bronzing, brooches, brooded, brooked, browbeat, browbeats, browned, brownest, brownie, browning
  also    browse, browsed, browses, browsing, brunt, brutish, buck, bucking, buckles, budding, budged
  also    budging, buds, buffed, buffers, buffet, buffets, buffing, bugged, bugger, buggies, bugging, buggy
  also    builder, bulges, bulked, bulkiest, bulking, bulldoze, bulled, bullfight, bullied, bulling, bullying
  also    bumming, bumping, bundled, bundling, bungling, bunk, bunking, bunnies, buns, buoyancy, buoying
  also    burlier, burn, burner, burning, burnish, burns, burp, burps, burr, burring, burrs, burying
  also    bushiest, bushing, busier, busting, bustled, bustles, busying, butcheries, butchery, butlers, buts
  also    butte, buttered, butterflying, buttering, buttes, butting, buttonholed, buttons
  means   words of their own that look like field words

ordinary near-words-c
  hidden  yes
  also    cabarets, cabling, cabs, calculation, calculations, calibration, calibrations, calicos, callers
  also    calming, camouflages, camouflaging, camps, cane, canines, cannery, cannier, canonical, cans
  also    capering, capes, capping, capsize, capsized, captors, carcass, carding, caressed, carnal, caroused
  also    carpets, carping, carps, carrier, cartels, carting, carved, carves, carving, castled, casuals
  also    catering, caveats, caverns, cavorts, cede, cedes, ceiling, cellar, cellars, celli, cereals, chains
  also    chalets, chalkier, champ, champs, chaos, chapping, chapt, char, chars, charter, chastises, cheap
  also    cheat, checked, checkers, checking, cheer, cheered, cheering, cheeses, chequed, chequers, chequing
  also    chess, chic, chickened, chickening, chid, chilled, china, chippers, chiselling, chisels, chlorine
  also    chop, chopper, choppered, choppers, chops, choral, chorals, chubbiest, chunkiest, cigarets
  also    cinching, ciphers, circulars, circulate, clad, clam, clams, clan, clans, clarinets, clarity
  also    clashes, class, classed, classes, clatters, cleaned, cleaners, cleanest, cleanlier, cleanly, cleans
  also    cleanse, cleansed, cleanser, cleansers, cleanses, cleansing, cleared, clearest, cleat, cleaved
  also    cleaver, cleavers, cleaves, clef, clefs, clefts, clime, climes, clinical, cloaked, clocked, clod
  also    clogged, clone, closeting, closets, closing, clothed, clotted, cloudier, clouding, clouted
  also    clouting, clove, clovers, cloves, clowned, clumped, clutter, clutters, coached, coaches, coaching
  also    coagulation, coaling, coals, coaster, coax, cobbler, cobs, cockier, cocktail, cocktails, code
  also    coercing, coffers, coil, coiling, coils, coin, coins, coke, colds, colic, collaborations, collage
  also    collages, collapse, collaring, collate, collated, collates, collation, collections, colonial
  also    colonisation, colonization, colt, colts, coma, comas, combat, combats, comic, compels, computation
  also    computations, conceal, concede, conceive, concise, condoned, cones, conferred, confers, confronting
  also    congeal, conjugation, conjugations, conjuring, connotations, conquered, conquering, cons
  also    consolations, constraining, constricting, constructing, contested, contesting, contortions
  also    contouring, contracted, contracting, contraction, contradicting, contraption, contraptions
  also    contrary, controlling, convening, convents, converging, converses, conversing, converting, convey
  also    conveying, cook, cooker, cooled, coolers, cooling, cools, coop, cooped, cooper, cooping, copier
  also    copiers, copped, copperhead, copperheads, cops, cord, cordoned, core, cores, cornered, cornering
  also    cornier, coronation, coronations, coroner, corporation, corporations, corral, corralled, corrals
  also    cottoned, couched, couching, cougars, counteracting, countersigned, coupling, courier, covertly
  also    coveting, cowering, crabbed, crabbier, cracked, cram, crams, cranked, crankier, crap, crashed
  also    crasser, craters, crazier, crazies, creakier, creakiest, creamed, creamiest, creaming, creased
  also    creases, created, creates, creative, creatives, creator, creators, creepier, cremates, crescendi
  also    cribbed, crimsoned, crimsoning, cringed, crippled, crisped, crisper, crispy, crisscrosses
  also    crisscrossing, crochet, crocheted, crochets, crocuses, crookeder, crossbow, crossbows, crosser
  also    crosses, crossest, crotch, crotches, crowbar, crowbars, crowded, crowning, cruised, crumbed
  also    crummier, crunched, crunches, crunching, crushed, crushes, crushing, crust, crusted, crustier
  also    crusts, crusty, crutches, cuddling, culled, culling, culturing, cups, curbed, curbing, curdled
  also    curdling, cure, cures, curses, curvature, curvatures, cutters, cynic, cynical, cyphers
  means   words of their own that look like field words

ordinary near-words-d
  hidden  yes
  also    daggers, dally, dampest, damping, dandier, dank, danker, dankest, dare, darken, darkened, darkens
  also    darkness, darlings, darn, dashed, dawdled, dawdles, dazzled, dazzles, deadest, deadlocking, deafest
  also    dealing, dealings, dearest, dears, debased, deceived, decentralized, decimate, decreed, decried
  also    dedicate, dedicated, dedicates, deed, deem, deepen, deepens, deeps, deer, defecate, defected
  also    defecting, defects, defiling, deftest, dehydrating, dejected, dejecting, dejects, delegate
  also    delicacy, densest, departmental, derailing, deserved, designate, detaching, detaining, deviate
  also    deviling, dialects, dieting, digested, digesting, digests, dill, diminutives, dimpled, dimples
  also    dimpling, dinghies, dinghy, dingiest, directer, directest, direction, directions, directive
  also    directories, direst, dirtied, dirties, dirtiest, disco, discoloured, discos, discus, dish, dishes
  also    dissected, dissecting, dissects, ditties, ditty, diverted, diverting, diverts, divested, divesting
  also    divests, dizzier, dizzying, doled, doll, dolly, domes, dons, doomed, doped, dosed, dote, doted
  also    dotes, downgraded, drabbest, drabs, drollest, duel, dulled, dullness, dulness, duly, dumber
  also    dumbest, dummies, dumpling, dumplings, duplicate, duskiest, dustier, dustiest, duty, dwarfing
  also    dwarfs, dwarves
  means   words of their own that look like field words

ordinary near-words-e
  hidden  yes
  also    earaches, eardrum, earl, earls, earmarked, earmarking, earnest, earring, earrings, earthed
  also    earthiest, earthing, earthlier, earthliest, earthly, ebbed, ebbing, eddies, eddy, ekes, elliptic
  also    elongates, emancipated, embodies, emerged, emerging, encircle, encoring, endears, endings, endowed
  also    entering, erring, errs, eves, ewes, exerting, expansion, eyelash, eying
  means   words of their own that look like field words

ordinary near-words-f
  hidden  yes
  also    faceless, facet, facets, faeces, fairest, faked, fakes, falsely, falsest, falter, faltered, fame
  also    famed, farce, farces, fare, fared, fares, faring, farming, farther, farthest, fastened, fastest
  also    fasting, fate, fated, fates, fathering, fatherly, fathers, fatten, fattened, fattens, fattier
  also    fatties, fattiest, fawned, fawning, faze, fazed, fazes, feared, fearing, fears, feasted, feasting
  also    featherier, featheriest, feces, feedback, feel, feels, fees, fellowship, fellowships, felt, felts
  also    fenders, festering, festers, fetter, fettered, fettering, fetters, fibbers, fiber, filled, filly
  also    filtered, filters, fined, fines, fingerprinted, fingertips, fins, fireside, firesides, fishier
  also    fitter, fittest, fiver, fizzled, fizzles, flag, flagging, flailing, flak, flakier, flakiest
  also    flaking, flamboyance, flamboyantly, flames, flaming, flamingo, flanking, flashback, flashbacks
  also    flashed, flasher, flashest, flashier, flashiest, flashing, flashy, flask, flasks, flatness, flats
  also    flatted, flattening, flattens, flattered, flatterer, flattering, flatters, flattery, flatting
  also    flautist, flavored, flavoring, flaw, flawing, fleeced, fleeces, fleecier, fleecing, fleeing, fleet
  also    fleeted, fleeter, fleetest, fleets, fleshed, fleshiest, fleshing, flexing, flipping, flogged
  also    flogging, flooder, flooding, floored, flooring, flopped, floppies, floral, flossed, flosses
  also    flossing, floured, flouring, flouted, flouting, flowered, flowing, fluffiest, flunk, flunked
  also    flunkies, flunking, flunks, flurry, flusher, flushes, flushest, fluster, flustered, flustering
  also    flusters, fluxing, foaling, foamed, foaming, fogies, fogy, foisted, foisting, follows, font, fonts
  also    fool, fools, foothill, footing, footings, footwear, foray, forayed, foraying, forced, forcing
  also    forded, fording, forefathers, forefingers, forefront, forefronts, foregoes, foregoing, foreground
  also    foregrounds, foreign, foreleg, forelegs, foremost, foreskin, foreskins, forestalling, foresting
  also    forewent, forged, forgers, forging, forgoing, forking, forming, fort, forties, forts, fours, foxes
  also    foxiest, framed, framing, frank, fraying, freaked, freaking, freeing, freshen, freshens, fresher
  also    freshest, fret, frets, fretted, fretting, frigid, frillier, frisked, frisking, frittered
  also    frittering, fritters, frizzier, frond, fronds, frontage, frontages, frontier, frontiers, fronting
  also    frostier, frothed, frothing, frowned, frowning, fruited, fuelled, furious, furl, furling, furlong
  also    furlough, furloughs, furls, furnish, furrier, furring, further, furthering, furthers, fury, fussier
  also    fuzziest, fuzzing
  means   words of their own that look like field words

ordinary near-words-g
  hidden  yes
  also    gage, gages, gaining, games, ganders, gargles, garnets, garnish, garrets, gases, gasoline, gayer
  also    gays, gaze, gazes, gears, geld, gelding, geldings, gelds, genders, ghosted, giants, gibbers, gild
  also    gilded, gilding, gilds, gingerbread, gingerly, girders, glaring, glass, glassed, glasses, glassier
  also    glazing, glider, gliders, glinting, gloated, globule, globules, gloomier, gloried, glosses
  also    glossies, glossiest, glossing, gloving, glowing, glows, glueing, gluts, goad, goaded, goading
  also    goads, goblets, goddess, godless, gods, goldenest, goldfish, golfer, golfers, golfs, goner, goods
  also    gorged, goriest, gourmets, grabs, graced, grader, grades, gradients, grading, graduates, grant
  also    grapes, grapevine, grassed, grassier, grated, grater, graved, graver, gravy, grayed, grayest
  also    graying, greasier, greedier, greediest, greedy, greenback, greenbacks, greened, greenery, greenest
  also    greenhorn, greenhorns, greening, greet, greeted, greets, greyed, greyest, greying, grieved, grieves
  also    grilled, griming, grinders, grinding, grins, griping, grizzlier, grizzlies, groovier, grooviest
  also    groovy, gross, grossed, grosser, grosses, grounded, grouped, groused, grovels, gruffly, gunners
  also    gust, gusts, guzzled
  means   words of their own that look like field words

ordinary near-words-h
  hidden  yes
  also    hackers, hackney, hackneys, haggles, hairline, hairlines, hallmarking, haloing, halving, handler
  also    handles, hankered, hardback, hardline, haring, harking, harp, hatches, hauling, haze, hazed, hazes
  also    header, headier, headiest, headlined, headlining, headlong, headrest, headrests, headstrong, heady
  also    heal, heals, heaps, hearings, heartier, heats, heavenlier, heavies, heaviest, heaving, heavyweight
  also    heavyweights, heckle, heckled, heckler, hecklers, heckles, heed, heeds, heeling, heftier, helmets
  also    herd, herds, heroes, herrings, hewing, hick, highbrow, highbrows, highs, hindered, hinders, hits
  also    hock, hocked, hocking, hoed, holding, holds, honeycombing, honeycombs, honeymooned, hoodwink
  also    hoodwinking, hoodwinks, hoof, hoofed, hoofs, hooking, hooks, hooped, hooping, hoops, hornet
  also    hornier, horniest, horny, horseradish, huffing, huger, hugging, hugs, hulling, humbled, humbles
  also    humbling, humping, hunchback, hunchbacks, hundreds, hungered, hurdle, hurdled, hurdles, hurdling
  also    hurled, hurling, hurries, hurrying, hurting, hushing, husking, hustle, hustled, hustler, hustlers
  also    hustles, hustling, hutch, hutches, hyphenate
  means   words of their own that look like field words

ordinary near-words-i
  hidden  yes
  also    ills, immerse, immersed, immerses, immunise, incense, incensed, incenses, indebted, indelicate
  also    indents, indexed, indices, indicted, indicts, indirect, individualism, individualist
  also    individualists, individuality, individually, inducted, infected, infested, inflame, inflamed
  also    inflames, inflicted, infrared, ingested, injected, inked, inkier, inking, inserted, insides
  also    insteps, insubstantial, insulated, intenser, intensest, intensify, intensity, intensive, intents
  also    intermediates, interne, internes, interns, invent, invented, invents, inverse, inversely, invest
  also    invested, invests, irks, ironies
  means   words of their own that look like field words

ordinary near-words-j
  hidden  yes
  also    jabs, jacking, jaded, jaggeder, jams, jars, jaunting, jest, jester, jesting, jests, jetted, jetting
  also    jettison, jiffies, jigged, jigging, jilting, jinx, jinxed, jinxing, joining, jointing, jolting
  also    judging, jugged, jugging, juicing, junk, junked, junkies, junking, junks, junky, juts
  means   words of their own that look like field words

ordinary near-words-k
  hidden  yes
  also    keeling, keened, kicked, killings, kindred, king, kinkier, kinks, kinky, kitties, kneeled, knobs
  also    knot, knotted
  means   words of their own that look like field words

ordinary near-words-l
  hidden  yes
  also    laborer, laborers, laboring, labourer, labourers, labouring, labours, laces, ladders, laded, laden
  also    lading, ladylike, lagging, lags, lain, lamb, lambs, lame, lamed, lamer, lames, laming, lanced
  also    lancing, languish, larges, largest, lathered, latter, launder, laundered, launders, layered, laying
  also    leaded, leases, legends, legging, leggins, leisure, length, lengthens, lens, lenses, lessens
  also    licked, lied, lighted, lighten, lightened, lightens, lighters, lighthouse, lighthouses, lighting
  also    lightness, lightweights, liked, liker, limber, limbo, limed, limelight, limestone, limper, linefeed
  also    liner, liners, linked, lint, liquidate, liter, lithest, lived, livings, lobbed, lobes, locate
  also    lodger, lodgings, logger, longed, longing, longings, longs, loonier, loonies, looniest, loosest
  also    lope, loped, lopes, loping, lopping, lord, lords, loses, loss, lotuses, loudest, lounges, lowed
  also    loyal, lugging, lugs, lumber, lumbers, lumped, lumping, lumps, lung, luscious, lyres
  means   words of their own that look like field words

ordinary near-words-m
  hidden  yes
  also    macroscopic, magnets, mailed, mailing, maiming, malt, malting, mammoths, manacles, maneuvering
  also    mangier, mangle, mangled, mangles, mangling, mangoes, manholes, manlier, manning, mannish
  also    manoeuvring, mantlepieces, mantling, manures, mappings, marbles, marched, marching, mare, mares
  also    mariner, marines, markers, marketing, marooned, marooning, marring, marrows, mars, mart, marts
  also    marveled, marveling, mash, mashing, masking, massage, massing, mast, masts, mated, matrons, mats
  also    matted, mattered, mattering, mattes, matting, matts, mauled, mauling, maximal, meddling, mediums
  also    messier, metabolic, meted, mettle, microscope, microscopes, midwife, midwifed, midwived, mightier
  also    milker, milkiest, milking, milkmen, milliner, milling, mind, minding, mingles, mingling, miniatures
  also    minimised, minimize, minimized, minimizes, minion, miniscules, mink, minting, minuscules, minuses
  also    minuter, miring, missile, missive, missives, mistier, mistiest, mistrust, mistrusts, mitt, mocking
  also    modeling, modelings, modules, moister, moldier, monkeys, monopolised, monopolized, monotony
  also    monster, moodier, moorings, mooting, morsels, mossier, mossiest, moths, motives, motleys, motlier
  also    motored, motoring, mottoes, mouldier, mourner, mouses, mousiest, mousing, moussed, mousses
  also    mouthing, mucking, muddling, muddying, mumbled, mumbling, murkier, mused, mushier, musk, mustang
  also    mustangs, mustered, musters, mustier, muter, mutes, mutt
  means   words of their own that look like field words

ordinary near-words-n
  hidden  yes
  also    nabs, nags, naiver, nappies, napping, narrated, narrowness, narrows, nays, nearing, nears, necking
  also    neckline, necklines, necktie, neckties, needled, needles, nettled, neutralised, neutralized
  also    nicking, nightclubbed, nips, nits, nobodies, node, nodes, noes, noises, noose, nooses, notches
  also    number, numbers, nutted
  means   words of their own that look like field words

ordinary near-words-o
  hidden  yes
  also    oared, oaring, oars, oblongs, oculars, offbeat, offbeats, olden, opal, openings, oracles, oral
  also    ordered, ores, oscillate, oscillated, outgrowing, outlawing, outlive, outlived, outshine, outshined
  also    outsider, outsides, ovals, ovaries, overate, overbear, overcoat, overcoats, overcrowd, overcrowds
  also    overdoing, overdone, overhang, overheads, overhung, overland, overlie, overload, overlook
  also    overlooking, overlying, override, oversee, overseer, overseers, overstepped, overt, overthrow
  also    overthrows, owed
  means   words of their own that look like field words

ordinary near-words-p
  hidden  yes
  also    paddies, pager, pain, paining, painter, palates, paled, pales, pall, palled, palling, palming, pals
  also    pampered, pampering, pane, panning, pansies, panties, panting, paper, papered, papering
  also    parallelled, parched, parches, parching, pare, paroles, parsley, parties, paste, pasted, pastels
  also    pastes, patchworks, pate, pattered, pattering, patters, paunches, pave, pawning, payer, peace
  also    peaces, peaking, pealed, pealing, pearled, pears, peddle, peddled, peddler, peddlers, peddles
  also    peeked, peering, pencils, pennies, penning, peoples, peppermint, peppermints, peppers, pepping
  also    periled, periling, perilled, perilling, perished, perkier, perky, peskier, pesky, pestered
  also    pestering, petered, petering, petites, phasing, pickier, pickiest, pickles, picks, picky, piddle
  also    piddled, piddles, pies, piggish, piked, piled, pimples, pimplier, pinches, pined, pinions, pinked
  also    pinkest, pinking, pinning, pins, pints, pitched, pitchfork, pithier, placated, placed, placing
  also    plaguing, plaid, plainest, plainly, plains, planking, planners, planting, plating, platter
  also    platters, played, pleading, pleasings, pleated, pleating, pled, plied, plight, plowing, plucked
  also    plumbed, plumber, plumbers, plumbs, pluming, plumped, plumpest, plumping, plumps, plums, plunder
  also    plunger, pluses, plusher, poach, poached, poacher, poachers, poaches, pointedly, pointer, pointers
  also    pointless, policed, polish, polishes, ponchos, poodles, pore, portended, portlier, posterity
  also    postmark, postmarked, postmarking, postmarks, potted, pottered, pottering, potters, pottery
  also    potting, pounded, powdered, prancing, prawning, praying, preach, preached, preacher, preachers
  also    preaches, prettying, pried, primate, primates, primers, printed, privacy, projectile, projection
  also    projections, prose, prosecuting, prospecting, protesting, puddled, pudgier, puffer, puffiest, puke
  also    pulleys, pulsated, punched, punches, pundits, punished, punker, punks, punning, puny, puree, purer
  also    purge, purifies, purplest, pushier, pussier, puttered, puttering, putters, pyre
  means   words of their own that look like field words

ordinary near-words-q
  hidden  yes
  also    quashed, queered, queerest, queering
  means   words of their own that look like field words

ordinary near-words-r
  hidden  yes
  also    rabies, races, raciest, racking, raffled, raffles, raged, raggeder, raincoat, raincoats, ramrodded
  also    ramrodding, ranching, rang, ranged, rashest, raster, rays, readied, readier, readies, readiest
  also    readjust, reads, reals, ream, reams, reap, reaps, rearing, rearrange, rebated, rebounded, recedes
  also    recites, rectangles, recurred, redden, reddens, reddest, redesigning, redraft, reduces, refines
  also    reflexes, refuges, refunded, refused, refuses, refutes, regaled, regimes, regulations, reis
  also    rejoices, relapsed, related, relates, relaxes, relaxing, relayed, released, relived, relives
  also    reloaded, remakes, remedies, reminds, remotes, removes, render, rends, reneges, rereads, reserved
  also    resigns, resounded, restored, restrain, restraining, restrict, restricts, retires, retrace
  also    retraced, retraces, retries, retrieves, revered, reveres, reviles, revises, revives, revs, ribbing
  also    riches, richness, ridded, riddled, riddles, rides, ridges, rids, righter, rightest, rightly, rigs
  also    rind, rinds, rink, rinks, rinsed, ripened, ripped, ripples, riser, riskier, rivaled, roadblock
  also    roar, roars, robe, robes, robuster, rode, rods, roguish, role, roles, rooked, rope, ropes, rosiest
  also    roster, rosters, rote, roughed, rougher, roundest, rounding, rounds, rouse, rouses, rowdier
  also    rowdies, rubiest, ruckuses, rudder, ruddier, ruddiest, rugby, rugged, ruing, rumbled, rumpled, rums
  also    rung, rungs, runnier, runt, runts, ruptured, ruse, ruses, rusted, rustics, rustiest, rusting
  also    rustled, rustler, rustlers, rustles, ruts
  means   words of their own that look like field words

ordinary near-words-s
  hidden  yes
  also    sacking, saddened, saddens, saddest, saddling, sades, sailboat, sailboats, sailor, saintlier
  also    saintly, salable, salaries, saleable, sallower, salon, salons, saloon, saloons, salter, saltier
  also    saltiest, salting, salty, saluted, saluting, salving, sampler, samples, sampling, sandals, sandiest
  also    sanding, sandmen, sapling, saplings, sardines, sassier, satires, satirises, saturates, saucier
  also    saunaed, saunter, savaging, savvier, savvies, scabbing, scalars, scald, scalded, scalding, scalds
  also    scales, scalier, scaliest, scalping, scanning, scanted, scanter, scanting, scar, scarcer, scarcest
  also    scarfed, scarfing, scarier, scariest, scarred, scarring, scars, scarves, scathing, scatter
  also    scenting, schooled, scoffed, scolded, scollop, scolloped, scolloping, scollops, scooping, scoops
  also    scooted, scoping, scorched, scorches, scorching, scoring, scorned, scotches, scoured, scourged
  also    scouring, scouted, scouting, scouts, scowled, scowling, scraped, scrawl, scrawled, scrawling
  also    scrawls, scrawnier, screwier, scribes, scripted, scripting, scripts, scruffiest, scuffed, scummed
  also    scumming, sealed, sealing, seaming, searing, seating, secondarily, secrete, secreted, secured
  also    sedated, seedier, seizing, sensing, separate, separated, serenest, sermons, serve, served, serves
  also    serving, setback, setting, settings, severer, shabbier, shack, shackle, shackled, shackles
  also    shackling, shacks, shadier, shadiest, shafted, shafting, shaggiest, shakier, shakiest, shaky
  also    shamed, shaming, shammed, shaping, shark, sharked, sharking, sharks, sharped, sharpen, sharpened
  also    sharpener, sharpens, sharping, sharpness, sharps, shatter, shattered, shaved, shavers, shaving
  also    sheaf, sheathed, sheathing, sheaves, shedding, sheer, sheered, sheerer, sheering, sheers, sheet
  also    shelled, sheller, shelling, shelved, shelves, shelving, shifted, shiftier, shimmered, shines
  also    shingled, shiniest, shining, shinned, shipped, shipping, shirted, shoaled, shoaling, shoeing
  also    shooing, shoring, shorn, shortcoming, shorted, shorten, shortens, shorting, shortlist, shortly
  also    shortness, shorts, shots, shouldering, shout, shouted, shouting, shouts, shovelling, shoving
  also    showier, showiest, shrank, shrimped, shrimping, shrines, shudder, shudders, shunned, shunted
  also    shunting, shutdown, shutter, shuttered, shutting, sick, sicked, sicken, sickles, sideline
  also    sidelined, sidelines, sidelining, sidelong, sideshow, sideshows, sidestepped, sidetrack, sidetracks
  also    sidles, sidling, siestas, sieving, sighing, signing, silenter, silliness, silted, silting, silvered
  also    silvering, silversmith, simmering, sincerer, sine, singled, singles, sinners, sipping, sire, sires
  also    sitters, situated, sixes, sizes, skate, skater, skaters, skates, skating, skewing, skilled, skillet
  also    skimped, skimpier, skimping, skinned, skinniest, skinning, skins, skipped, skipping, skirmish
  also    skunked, skylight, skyline, skylines, slabbed, slabbing, slack, slacked, slacken, slacker, slacking
  also    slake, slakes, slaking, slam, slammed, slamming, slander, slandered, slanders, slapped, slapping
  also    slashed, slashes, slashing, slat, slated, slating, slats, slave, slavery, slaves, slaving, slavish
  also    slay, slaying, sleazier, sledded, sleeper, sleepers, sleepier, sleepless, sleeves, slenderest
  also    slewing, slice, sliced, slicing, slicker, slickest, slicks, slides, sliding, slighter, slightest
  also    slime, slimier, slimiest, slimmed, slimming, slims, slimy, slinging, slipped, slipper, slipping
  also    slit, slither, slitter, slitting, sliver, slivered, slivers, slogged, slogging, slopped, slopping
  also    sloshed, sloshes, sloshing, slot, slots, slotting, slowed, sludge, slugged, slugging, sluiced
  also    sluicing, slum, slumber, slumbered, slumbering, slumbers, slummed, slummer, slumming, slums
  also    slurring, smallest, smalls, smarted, smarter, smartest, smarting, smashed, smearing, smell, smelled
  also    smellier, smelling, smelted, smidge, smidgens, smidges, smidgin, smidgins, smiled, smiling, smiting
  also    smoker, smokers, smokes, smokiest, smoking, smolder, smolders, smoothed, smoothes, smoothest
  also    smooths, smother, smothers, smoulder, smoulders, smuggest, smuggled, smuggles, smuggling, snagging
  also    snail, snailed, snailing, snails, snared, snaring, sneaked, sneaking, sneaky, sneering, snicker
  also    snide, sniff, sniffed, sniping, snipped, snipping, snob, snoop, snooping, snoops, snootier
  also    snootiest, snooty, snoring, snot, snots, snowplow, snubs, snuffed, snuffer, snug, snugged, snugging
  also    soak, soaking, soaks, soap, soaped, soapier, soaping, soaps, sobbing, sober, sobering, socking
  also    sodding, softened, softest, soggier, soil, soiled, soiling, soils, solaced, solacing, solar
  also    solders, soldier, soldiers, soloing, somebodies, soothed, soothes, soothing, sootiest, sopping
  also    sorest, sorrier, sorting, sounder, soundly, souping, sour, sourced, sourcing, soured, sourest
  also    souring, sours, sowing, spacing, spaded, spading, spank, spanked, spanking, spanks, spanned
  also    spanning, spared, sparest, sparing, sparked, sparking, sparkle, sparkled, sparkles, sparkling
  also    sparser, sparsest, spat, spate, spatted, spatters, spatting, spatulas, spawned, spawning, spayed
  also    spaying, spearheaded, spearing, spears, specify, specking, specter, spectre, spectres, spectrum
  also    spectrums, speculate, speeded, speedier, spelled, speller, spelling, spellings, spice, spiced
  also    spices, spicier, spicing, spicy, spied, spies, spikes, spiking, spilling, spinals, spindliest
  also    spineless, spins, spiraled, spiraling, spiralled, spiralling, spirals, spire, spires, spite, spited
  also    spites, spiting, spitted, splashed, splashing, splat, splatters, splendor, spliced, splicing
  also    splint, splinted, splintered, splinting, splits, splitting, splurge, splurged, splurges, sponged
  also    sponging, spoofed, spoofing, spooked, spooking, spooled, spooling, spooned, spooning, sport
  also    spotless, spotlight, spottier, spouted, spouting, spouts, sprained, spraining, sprains, sprayed
  also    spraying, springing, springs, sprouted, sprouting, spurned, spurted, spurting, squalid, squalled
  also    squalling, squalor, squarely, squarer, squares, squaring, squashes, squashing, squatted, squeamish
  also    squinted, squinting, squire, squired, squires, squirmed, squirted, squirting, stabbed, stabbing
  also    stabled, stabler, stabling, stacked, stacking, staffed, staffing, stagger, staging, staider
  also    staining, staking, staled, stalest, staling, stalked, stall, stalled, stallion, stallions
  also    stammering, stamped, stampeded, stampeding, stamping, standardise, standardised, standardises
  also    standardize, standardized, standardizes, stank, stapled, stapler, staples, stapling, stared
  also    staring, starker, starkest, starlight, starred, starrier, starring, stars, started, starter
  also    starvation, starved, starves, starving, state, statelier, stater, states, stating, station
  also    stationed, stations, statues, staunched, staving, steadies, steak, steaks, stealing, steals
  also    steamier, steaming, steeled, steeling, steeped, steepest, steeping, steeps, steer, steered
  also    steering, stemmed, sterling, sterner, sticker, stickier, stickies, stiffed, stiffen, stiffens
  also    stiffest, stiffing, stiffs, stifled, stifles, stifling, stilled, stiller, stilling, stinger
  also    stingier, stinted, stinting, stirred, stirring, stoking, stomachs, stonier, stoniest, stoning
  also    stopper, stopping, storeys, storing, stormier, stowing, straddled, straddles, straggled, straggler
  also    straggles, straighten, straightened, straightening, straightens, straightest, straights, strained
  also    strainer, straining, strains, straits, strangle, strangled, strangles, strap, strapped, strapping
  also    straps, strawed, strawing, stray, strayed, straying, streaming, streamline, streamlines, stressed
  also    stressing, stretcher, strewed, strewing, stricter, stride, strides, striding, strife, strikers
  also    strikes, stringing, strings, stringy, stripping, strive, strived, strives, striving, stroked
  also    strokes, stroking, stub, stubbiest, stubbing, studded, studding, stuffed, stuffier, stuffings
  also    stumped, stumping, stunned, stunting, stupider, sturdiest, stutter, stuttered, styling, subdues
  also    substantially, substantiate, substantiated, substantiates, suckled, suckles, suckling, sufferer
  also    suffers, sugared, sugaring, suiting, sulkier, sulkies, sulky, sultrier, summering, summing, summons
  also    sundaes, sundown, sundries, sunnier, superficial, surging, surlier, sustained, swallowed
  also    swallowing, swamped, swampier, swamping, swapped, swapping, swarm, swarming, swathes, swatting
  also    swear, swearing, swears, sweating, sweeper, sweepers, sweepings, sweeten, sweeter, sweller
  also    swellings, swifter, swigged, swigging, swill, swilled, swilling, swills, swindle, swindled
  also    swindler, swine, swines, swiping, swoon, swooned, swooning, swoons, syringed, syringing
  means   words of their own that look like field words

ordinary near-words-t
  hidden  yes
  also    tabbies, tabs, tackier, tags, tailgate, tailgates, taillight, tailor, tailored, tailors, tailspin
  also    tailspins, tainted, tallies, tamer, tamper, tampered, tampering, tampers, tang, tangoing, tangs
  also    tanker, tanks, tanned, tannest, tanning, tape, taped, tapes, tapping, taps, tardier, tarnish
  also    tarrier, tarries, tarring, tars, tartans, tartars, tassels, tattled, tattooed, tauter, tawdrier
  also    tawniest, teak, teaks, tears, teat, teats, tees, teethed, teller, tempered, tempering, tens
  also    tensest, tensing, terminals, tethered, textual, theses, thicken, thickens, thickness, thinker
  also    thinkers, thinking, thinning, thins, thirsted, thorns, threads, threat, threatened, threats
  also    thrifts, thrones, throngs, throwbacks, ticklish, tidiest, ties, tiff, timidest, tinnier, tinniest
  also    tipsiest, tiptoes, toasted, toddled, toil, toiling, toils, tomes, tons, tonsils, tooling, topping
  also    toppled, toppling, torched, torsi, totaled, totes, tots, touring, tousles, tout, toweled, toweling
  also    towelling, towellings, towered, towing, tows, toys, transparent, transverses, triangles, tricked
  also    trickery, tripe, troopers, troupes, trouser, troweling, trump, trumps, truncates, trustier
  also    trusties, trusty, tumbles, twigged, twinged, twister, twisters, typeface
  means   words of their own that look like field words

ordinary near-words-u
  hidden  yes
  also    unarmed, uncertain, underfoot, undergoing, underlain, underlies, underline, underlined, underlines
  also    underlying, undermined, undermines, underneaths, underpants, underpass, underpasses, understudies
  also    undertake, undertakes, underwent, uneducated, unerring, unmanned, unmarried, unmasked, unnerving
  also    unpacked, unrelated, upbeat, upbeats, upgraded, uptight, upturns
  means   words of their own that look like field words

ordinary near-words-v
  hidden  yes
  also    vagrant, validly, vast, vasts, vend, vends, vets, violate, violated, violates, violent, violins
  also    viruses, vivacious, vivider, void, vouched
  means   words of their own that look like field words

ordinary near-words-w
  hidden  yes
  also    waffles, wagered, waist, waists, waiter, waltzes, wandered, wantoned, ward, warier, warlike, warmed
  also    warms, warn, warp, warring, wars, wart, washout, watered, waterfront, waterfronts, watermark
  also    watermarked, watermarking, watermarks, wavered, waxy, weakens, weakling, weaning, weaving, wedged
  also    wedges, wedging, welding, welling, welting, wets, wetting, whaling, whats, whet, whets, whetted
  also    whetting, whiffing, whiles, whiling, whim, whims, whipping, whips, whirling, whirs, whisked
  also    whiskey, whiskeys, whiskies, whisking, whiskys, whiten, whiteness, whitens, whitewash, whitewashed
  also    whitewashes, whittle, whittled, whittles, whizzing, whys, wickers, widen, widened, widespread
  also    wilder, wildest, winched, winging, wintered, wiper, wise, wisely, wiser, wisest, wispiest, wist
  also    withered, withering, wits, wittier, wive, wizened, wrapping, wrest, wrests, wriest, wringer, writ
  also    writes, writs
  means   words of their own that look like field words

ordinary near-words-y
  hidden  yes
  also    yell, yelled, yellowed, yellowest, yellowing, yens
  means   words of their own that look like field words

ordinary near-words-z
  hidden  yes
  also    zigzags
  means   words of their own that look like field words

ordinary near-more
  hidden  yes
  also    overbite, underbite, bilious, detailed, detailing, snakes, billy, reticule, reticules
  also    stouts, whit, eyeing
  means   words near field words that are none
