# Shapes of bill, head, crest, wing, tail, legs and the rest.
# Said of the whole bird, a shape word counts as build; words for the whole bird only are in build.lex.

shape almond-shaped
  also    almond shape
  means   long oval, pointed at both ends

shape angled
  also    angled down, at an angle, angled back
  means   set with a clear corner

shape angular
  also    angular looking, sharp cornered, jagged outline
  means   with corners, not curves
  pato    PATO:0001977

shape arched
  also    arching, arch shaped, bowed upward
  means   bent like a bow, highest in the middle
  pato    PATO:0001594

shape arrow-shaped
  also    arrow like, arrowhead shaped
  means   narrow, with a head like an arrow
  pato    PATO:0001881

shape awl-like
  also    awl shaped
  means   straight, stiff, running to a fine point

shape bald
  heard   balled, bawled
  heard   bear
  heard-before :area
  also    bald looking, featherless, unfeathered, bare skinned
  means   with no feathers

shape ball-shaped
  also    ball like, globular, spherical, like a ball
  means   round from every side
  pato    PATO:0001499

shape beady
  also    bead like
  means   small, round and shining; of eyes

shape bent
  also    bent in the middle, elbowed
  means   with a turn part of the way along
  pato    PATO:0000617

shape blade-like
  also    blade shaped, sword like, sword shaped, knife like, knife shaped
  means   flat, narrow and sharp
  pato    PATO:0002235

shape blob-tipped
  also    ball tipped, knob tipped
  means   ending in a small round swelling

shape blunt
  also    blunted, blunter, bluntly pointed, blunt tipped, blunt ended, round tipped, snub, snubbed
  means   ending without a point
  pato    PATO:0001950

shape boat-shaped
  also    boat like
  means   folded like the hull of a boat

shape booted
  also    trousered, shaggy trousers, feathery trousers
  means   with feathers down the legs

shape bowed
  also    bow shaped, bow like, bowed downward
  means   bent in an even curve, mostly of wings

shape bristly
  also    bristle like, bristled, whiskery
  means   with stiff hair-like feathers

shape broad
  also    broader, broadest, wide, wider, widest, broadly, widely, broadish, widish
  means   large from side to side
  pato    PATO:0002359

shape broad-based
  also    broad at the base, wide at the base, wide based, thick at the base, deep based, thick based
  means   widest where it begins

shape broad-ended
  also    wide at the end, broad tipped, wide tipped
  means   widest where it ends

shape bulbous
  also    bulb like, swollen, bulb shaped, bulging, bulged, bulging out
  means   swelled out and rounded
  pato    PATO:0002210

shape bulky
  value   thick
  also    bulkier, bulk, bulky looking
  means   thick and taking much room

shape bullet-shaped
  also    bullet like
  means   rounded in front, straight behind
  pato    PATO:0002087

shape bump-topped
  also    bumpy, bump on top
  means   with a rounded rise

shape bushy
  also    bushier, brush like, bushy looking
  means   thick and spreading

shape chisel-like
  also    chisel shaped, chisel tipped, chiseled, chiselled, wedge tipped
  means   straight, strong, with a square cutting tip

shape chunky
  also    chunkier, chunky looking, blocky
  means   thick and short

shape clawed
  means   with strong claws

shape cleft
  also    cloven, shallowly forked, shallow fork
  means   split a little way
  pato    PATO:0000403

shape club-shaped
  also    club like, clubbed
  means   thicker toward the end
  pato    PATO:0001883

shape concave
  also    dished, scooped
  means   curved inward
  pato    PATO:0001857

shape conical
  also    cone shaped, cone like, cone, conic, like a cone
  means   thick at the base and running evenly to a point
  pato    PATO:0002021

shape convex
  also    curved outward
  means   curved outward
  pato    PATO:0001355

shape crossed
  also    cross tipped, crossed tips, crossed at the tip, overlapping tips
  means   with tips that pass each other

shape curled
  also    curly, curling, curled up, curled tip
  means   turned round on itself
  pato    PATO:0000405

shape curved
  also    curving, curvy, curves, curved shaped, crooked
  means   not straight
  pato    PATO:0000406

shape dagger-like
  also    dagger shaped, dagger, spear like, spear shaped, lance like
  means   long, straight, strong and sharp

shape decurved
  also    hooks downward, hooks downwards, hook down, hooks down, hooks slightly downward, droops down, droops at the tip, droops down at the tip, hooking down
  also    curves slightly downward, curves slightly downwards, curves gently downward, points downward, points down, pointing down
  also    downward shaped, downward angled, curves slightly down, slightly curves downward, curve slightly downward
  also    downward curve, curve downward, curve downwards, downward curved, downward pointing, pointing downward, pointed downward
  also    pointing downwards, downward facing, facing downward, downward slanting, downward sloping, downturn, slight downward curve
  also    down curved, curved down, curved downward, curved downwards, downward curved, downwards curved
  also    down curving, curves down, curves downward, curves downwards, curving down, curving downward
  also    curving downwards, down turned, bent downward, downward curving, turned down at the tip
  also    turned down at the end
  means   curved toward the ground

shape deep
  also    deep looking
  means   large from top to bottom

shape deeply-forked
  also    deep forked, deep fork, strongly forked, long forked
  means   split far up, with long outer points

shape delicate
  also    delicate looking, fragile looking, weak looking, dainty looking
  means   thin and slight

shape diamond-shaped
  also    diamond shape, diamond like, lozenge shaped, rhomboid
  means   four-sided, pointed at both ends
  pato    PATO:0002320

shape domed
  also    dome shaped, dome like, high domed, rounded dome
  means   rounded and high
  pato    PATO:0001789

shape double-pointed
  also    twin pointed, two pointed, two pronged
  means   with two points

shape double-rounded
  also    bilobed
  means   with two rounded lobes side by side
  pato    PATO:0002214

shape downy
  also    downy looking
  means   covered in soft down

shape droopy
  also    droop tipped, drooping tip, drooping at the tip, droop ended, sagging
  means   hanging lower toward the end
  pato    PATO:0002165

shape egg-shaped
  also    egg like, ovoid
  means   rounded and broader at one end
  pato    PATO:0001891

shape emarginated
  also    emarginate
  means   narrowed suddenly part of the way along
  pato    PATO:0002234

shape fan-shaped
  also    fan like, fan shape
  means   spreading from a narrow base
  pato    PATO:0002219

shape feathery
  also    feather like
  means   soft and loose like plumes

shape fine
  also    finer, finest, fine pointed, finely pointed, fine tipped
  means   thin and slight

shape fingered
  also    finger like, splayed fingers, fingered tips, slotted, fingers
  means   with spread tips like the fingers of a hand

shape flared
  also    flaring, flares out
  means   widening toward the end
  pato    PATO:0040022

shape flat
  also    flatter, flattest, flattish, flat shaped, flat looking, flattened, squashed, squished
  means   not raised, without curve
  pato    PATO:0000407

shape flat-topped
  also    flat on top, flattened on top
  means   level on top

shape floppy
  also    flopping
  means   soft, unable to stand up

shape fluffy
  also    fluffier, fluffed, fluffy looking, fluffed out, soft looking
  means   with soft loose feathers

shape forked
  also    forky, forked at the end, split, bifurcated, v cut, cut in a v, fork shaped
  means   split at the end into two points
  pato    PATO:0001784

shape frizzled
  also    frizzy, frilly, frilled
  means   with small curls

shape furry
  also    fur like, furry looking
  means   looking like fur

shape fuzzy
  also    fuzzier, fuzzy looking
  means   with soft unclear outline

shape graduated
  also    stepped, longest in the middle, tiered
  means   longest in the middle, each pair shorter outward

shape grooved
  also    groove, grooves
  means   with a long narrow hollow

shape hair-like
  also    hairy looking
  means   of thin loose strands

shape half-webbed
  also    semipalmated, partly webbed, partially webbed, webbed at the base
  means   with short webs between the toes

shape hammer-shaped
  also    hammer like
  means   long before and behind

shape heart-shaped
  also    heart shape, heart like
  means   like a heart on a card
  pato    PATO:0000948

shape heavy
  also    heavier, heavy looking, hefty, ponderous
  means   large and thick

shape helmeted
  also    helmet like, helmet shaped, casqued
  means   with a hard or full cover on top

shape hooked
  also    hook, hook like, hook shaped, hook tipped, hooked tip, hooked at the tip, hooked at the end
  also    hooked downward, downward hooked
  means   with the tip bent sharply down
  pato    PATO:0002215

shape humped
  also    hump like
  means   with a rounded rise

shape keeled
  also    keel shaped, keel like
  means   with a ridge along the middle
  pato    PATO:0002522

shape kinked
  also    kink
  means   with a sudden small turn
  pato    PATO:0001798

shape knobbed
  also    knob, knobbly, knobby, knobbled, knob like
  means   with a rounded lump
  pato    PATO:0002427

shape lance-shaped
  also    lanceolate, lancet shaped
  means   narrow and pointed like a spear head
  pato    PATO:0001877

shape laterally-flattened
  also    flattened from side to side, flattened sideways, laterally compressed, thin from side to side
  also    compressed sideways
  means   thin from side to side, deep from top to bottom
  pato    PATO:0002054

shape lobed
  also    lobate
  means   with rounded flaps; of toes
  pato    PATO:0001979

shape loose-feathered
  also    loosely held, lax
  means   not held tight

shape lyre-shaped
  also    lyre like, lyrate
  means   with outer feathers curved outward at the end

shape mohawk-like
  also    mohawk, mohican, mohawk shaped, mohawk style, punk hairdo, punky, punk like
  means   standing in a ridge along the middle of the head

shape narrow
  also    narrower, narrowest, narrowly, narrowed, narrowish
  means   small from side to side
  pato    PATO:0000599

shape narrow-based
  also    narrow at the base
  means   thin where it begins

shape needle-like
  also    needle, needle shaped, needle thin, needle sharp, pin like, needle fine
  means   very thin, straight and sharp
  pato    PATO:0001954

shape notched
  also    notch, v notched, notch at the end, indented, shallow notch
  means   with a small cut in the middle of the end
  pato    PATO:0001495

shape nub-like
  also    nub, nubby, nubbin, button like, button shaped
  means   a mere stump

shape oval
  also    oval shaped, oblong, oblong shaped, elliptical
  means   rounded, longer than wide
  pato    PATO:0000947

shape paddle-shaped
  also    paddle like, oar shaped
  means   flat and broad toward the end
  pato    PATO:0005003

shape parallel-sided
  also    straight sided, even in width, same width throughout
  means   with sides that keep the same distance
  pato    PATO:0002485

shape parrot-like
  also    parrot shaped
  means   deep, short and strongly curved

shape peaked
  also    peaky, high peaked
  means   rising to a highest point

shape pear-shaped
  also    pear like
  means   rounded and narrower at one end
  pato    PATO:0005002

shape pencil-like
  also    pencil thin, pencil shaped
  means   long, thin and even

shape pin-shaped
  also    spine like, wire like
  means   very thin and stiff at the end
  pato    PATO:0002458

shape plank-like
  also    plank shaped, board like
  means   flat, straight and even in width

shape plume-shaped
  also    plumed, plumy, plume like
  means   long, loose and soft
  pato    PATO:0015030

shape plump
  also    plumper, plumpish, plump looking, fat, fatter, fattest, fattish, fat looking, chubby, chubbier
  also    chubby looking, pudgy, podgy, well padded
  means   well rounded, with much flesh

shape pointed
  also    pointy, pointier, pointiest, pointed shaped, pointy shaped, comes to a point, ends in a point
  also    ending in a point, coming to a point, pointed tip, pointed at the end, point ended
  also    sharply pointed, spiked tip
  means   ending in a point
  pato    PATO:0002258

shape pouched
  also    pouch like, baggy
  means   with a loose bag of skin

shape powerful
  also    powerful looking, strong looking
  means   large and strong

shape protruding
  also    jutting, jutting out, sticking out, sticks out, projecting
  means   standing out from the rest

shape puffy
  also    puffier, puffy looking, puffed, puffed out, puffed up, poofy, poufy, inflated
  means   swelled out with air or loose feathers

shape racket-tipped
  also    racquet tipped, racket like, racquet like, racket shaped, racquet shaped, spoon tipped
  means   a bare shaft with a wide flat end

shape ragged
  also    raggedy, ragged looking, tattered, frayed, uneven edged, jagged
  means   with an uneven edge

shape rectangular
  also    rectangle shaped, rectangle, box like, boxy, box shaped
  means   with four straight sides
  pato    PATO:0001867

shape ribbon-like
  also    streamer like, ribbony
  means   long, thin and free

shape ridged
  also    ridge like
  means   with a raised line
  pato    PATO:0002358

shape robust
  also    robust looking, strongly built, sturdy, sturdier, sturdy looking
  means   strong and thick
  pato    PATO:0002310

shape roman-nosed
  also    roman nose
  means   with forehead and bill in one long curve

shape rounded
  also    round, rounder, roundish, rounded off, circular, rounded looking, round looking, round shaped
  also    rounded shape, round ended, rounded at the end, rounded tip
  means   with no corners
  pato    PATO:0000411

shape ruffled
  also    ruffly, ruffled looking, ruffled up
  means   with feathers out of place
  pato    PATO:0001799

shape s-shaped
  also    s curved, s shape, s bend, double curved
  means   curved one way and then the other
  pato    PATO:0001878

shape saw-toothed
  also    saw edged, saw like, toothed, serrated, serrate, toothy
  means   with small teeth along the edge
  pato    PATO:0001206

shape scissor-like
  also    scissor shaped
  means   of two long blades, one past the other

shape scruffy
  also    scruffier, scruffy looking, unkempt, messy looking, disheveled, dishevelled, tousled, untidy
  also    bedhead
  means   untidy

shape shaggy
  also    shaggier, shaggy looking, bedraggled
  means   long, loose and uneven

shape sharp
  value   pointed
  also    sharper, sharpest, sharp looking, sharp tipped, razor like, sharp ended
  means   with a fine point or edge
  pato    PATO:0001419

shape shovel-like
  also    shovel shaped, scoop like, scoop shaped
  means   long, flat and much wider at the end

shape sickle-shaped
  also    sickle like, scythe like, scythe shaped, scimitar like, scimitar shaped, falcate
  means   narrow and evenly curved back
  pato    PATO:0002215

shape silky
  also    silken
  means   smooth, fine and soft

shape skinny
  value   thin
  also    skinnier, skinny looking, scrawny
  means   very thin

shape slender
  also    slenderer, slender looking
  means   thin and graceful in line
  pato    PATO:0002212

shape slim
  also    slimmer, slimmest, slimmish, slim looking, svelte
  means   thin in a pleasing way

shape sloping
  also    sloped, slanted, slanting
  means   running down at an even slant
  pato    PATO:0001481

shape smooth
  also    smoother, smoothly rounded, smooth looking, slick, slicked, slicked back, slick looking
  also    sleeked back
  means   with an even surface or outline

shape snake-like
  also    snaky, snakey, serpentine
  means   long, thin and bending

shape spatulate
  also    spoon shaped, spoon like, spatula like, spatula shaped
  means   narrow, then wide and flat at the end
  pato    PATO:0001937

shape spiky
  also    spikey, spikier, spiked, spike like, spiky looking, spiny, stiff pointed
  means   with stiff points standing out

shape spindle-shaped
  also    cigar shaped, cigar like
  means   thick in the middle, thin at both ends
  pato    PATO:0001409

shape spindly
  also    spindly looking, spindlier, twiggy, twig like, stick like, stick thin, toothpick like
  means   very long and thin

shape splayed
  also    splaying
  means   spread apart
  pato    PATO:0001785

shape square
  also    squared, squarish, squareish, square shaped
  means   with four even corners
  pato    PATO:0000413

shape square-ended
  value   square
  also    square tipped, square cut, squared off, square cornered, straight ended, truncate, truncated
  also    square at the end, straight across the end
  means   with an end cut straight across
  pato    PATO:0000936

shape steep
  also    steeper, steeply rising, abruptly rising
  means   rising sharply

shape stiff
  also    stiffer, stiff looking, rigid
  means   not bending

shape stilt-like
  also    like stilts
  means   very long, thin and straight; of legs

shape stout
  also    stouter, stoutest, stoutish, stout looking
  means   thick and strong

shape straight
  heard   strait
  also    straighter, straightish, dead straight, straight edged, ruler straight
  means   without curve
  pato    PATO:0002180

shape straw-like
  also    straw shaped, like a drinking straw
  means   a long even thin tube

shape stubby
  also    stubbier, stubby looking, stubbed, stumpy, stumpier, stump like, stunted
  means   short and thick
  pato    PATO:0001643

shape swept-back
  also    swept back looking, raked back, swept backwards
  means   set slanting to the rear

shape swollen-based
  also    swollen at the base, bulbous based, bulging at the base
  means   thickened where it begins

shape tapered
  also    taper, tapering, tapers, tapers to a point, tapering to a point
  means   growing thinner toward the end
  pato    PATO:0001500

shape teardrop-shaped
  also    teardrop shape, drop shaped
  means   round at one end, pointed at the other
  pato    PATO:0002240

shape thick
  heard   think
  heard-after :size, :length, :shape
  also    thicker, thickest, thickish, thick looking
  means   large through
  pato    PATO:0000591

shape thin
  also    thinner, thinnest, thinnish, thin looking, wafer thin
  means   small through
  pato    PATO:0000592

shape triangular
  also    triangle shaped, triangular shaped, three cornered, triangle
  means   with three corners
  pato    PATO:0001875

shape tubular
  also    tube like, tube shaped
  means   like a tube
  pato    PATO:0002299

shape tufted
  also    tufty, tuft like, tufted looking
  means   with a bunch of longer feathers

shape tweezer-like
  also    tweezers, pincer like, forceps like
  means   of two thin points that pick

shape twisted
  also    twisty
  means   turned round its own length
  pato    PATO:0002445

shape unwebbed
  also    free toed
  means   with no skin between the toes

shape upturned
  also    recurved, up curved, curved up, curved upward, curved upwards, upward curved, curves up
  also    curves upward, curves upwards, curving up, curving upward, turned upward, turned upwards, upswept
  also    bent upward, tip tilted, turned up at the tip, turned up at the end
  means   curved toward the sky
  pato    PATO:0002031

shape v-shaped
  also    v shape, vee shaped, like a v
  means   like the letter V
  pato    PATO:0002224

shape webbed
  also    web like, palmated, fully webbed, webbing
  means   with skin between the toes

shape wedge-shaped
  also    wedge, wedge like, wedge ended, cuneate
  means   wide, then narrowing in straight lines to a point
  pato    PATO:0001955

shape wispy
  also    wisp like, wispier, straggly
  means   of a few thin loose feathers

shape zygodactyl
  also    yoke toed, two toes forward two toes back, two toes forward and two back
  means   with two toes before and two behind

shape point-like
  also    point
  value   pointed
  only-before :area
  means   point, said for pointed
