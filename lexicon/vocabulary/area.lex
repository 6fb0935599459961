# The parts of a bird, in topographical order. `within` gives the tree; `resolves` the standard parts
# that an everyday word stands for; `at` the place of another area that has this name of its own;
# `optional yes` marks parts and markings that only some birds show; `share` weighs a part against its
# siblings by the surface a watcher sees (own estimate).

area bird
  also    brid, brd, bord, burd
  also    guy, fellow, creature, individual, specimen, birdie, critter, chap, body, whole bird, plumage, overall bird, entire bird, feathering, coat, bodies, torso, feather
  also    colouring, coloring, coloration, colouration, fur, whole body, entire body, all over body
  also    body feather, body plumage, contour feather, general plumage, overall plumage
  reads   shape as build
  means   the whole bird

area head
  also    head feather, skull, head area, whole head, entire head, head region, head plumage
  within  bird
  share   0.9
  means   the head

area forehead
  also    between its eyes, between his eyes, between the eyes
  also    frontal area, forecrown, front of the crown, forehead area, brow area, front of crown
  at      head front
  at      crown front
  at      bill above
  within  head
  share   0.6
  means   from the bill up to the crown

area frontal-shield
  also    shield, facial shield, forehead shield, frontal plate
  within  forehead
  optional yes
  share   0.2
  means   a bare plate on the forehead, as in coots and rails

area crown
  heard-after yellow, red, orange, green, blue, white, grey, gray, brown, rufous, chestnut, black-capped
  heard   clown, crowd, crow, crows
  also    top of the head, top of head, top of its head, head top, pileum, crown area, crown feather
  also    top of his head, top of her head, upper head, scalp, top of the crown, atop its head, atop the head
  also    atop his head, atop head, crown patch, crown of the head, crown of head
  at      head top
  at      head upper
  at      head crown
  within  head
  share   1
  means   the top of the head

area crown-stripe
  also    median crown stripe, central crown stripe, coronal stripe, crown line, stripe down the crown
  also    stripe through the crown, stripe on the crown, central stripe on the crown, mid crown stripe
  within  crown
  optional yes
  share   0.2
  means   a stripe along the middle of the crown

area lateral-crown-stripe
  also    side crown stripe, lateral crown line, crown side stripe
  within  crown
  optional yes
  share   0.2
  means   a stripe along each side of the crown

area crest
  also    tuft on the head, tuft on its head, topknot, mohawk, mohock, head tuft, head crest, crown tuft, crown crest
  also    head plume, crest feather, crown plume, crest on its head, crest on the head, tuft of feathers on its head
  also    quiff, coif, pompadour, head plumage crest, tufted crown, tuft
  within  crown
  optional yes
  share   0.2
  means   long feathers of the crown that can stand up

area ear-tuft
  also    ear horn, feather horn, feathered ear, head horn
  within  head
  optional yes
  share   0.1
  means   a tuft at each side of the crown, as in some owls

area nape
  heard   knave
  also    back of the head, back of head, back of its head, back of his head, rear of the head, hind crown, hindcrown
  also    occiput, nap area, nape area, nape of the neck, nape of its neck, rear crown, back of the crown, nape patch
  at      head back
  at      head rear
  at      crown back
  at      crown rear
  within  head
  share   0.7
  means   the back of the head and uppermost hindneck

area face
  also    facial
  also    facial area, face area, facial region, face side, facial feather, face feather, side of the face
  also    face pattern, facial pattern, side of face
  at      face side
  at      head side
  within  head
  share   1.6
  means   the front and sides of the head

area facial-disc
  also    facial disk, face disc, face disk, disc, disk, facial ruff, ruff of the face
  within  face
  optional yes
  share   0.3
  means   the flat ring of feathers of an owl's face

area lores
  heard   laws, lures
  also    lore, loral area, loral region, area between eye and bill, area between the eye and the bill, loral
  also    between the eye and the bill, between eye and bill
  also    between bill and eye, between the bill and the eye, between the eyes and the bill, area before the eye
  also    between the eye and the beak, between beak and eye, between the beak and the eye
  also    between the eyes and beak, between eye and beak, loral patch, loral spot, loral stripe
  also    supraloral, supraloral area, supraloral spot
  at      iris before
  within  face
  share   0.5
  means   between the eye and the base of the upper mandible

area supercilium
  also    eye brow, stripe on top of the eye, stripe on top of its eye, line on top of its eye, streak on top of its eye, streak on top of the eye
  heard   browse
  heard-after :colour, :tone, :pattern, :length, :shape
  heard   super silly um, supercilious, super sillium
  also    superciliary, superciliary stripe, superciliary line, eyebrow, eyebrow stripe, brow, brow stripe
  also    supercilia, eyebrow line, stripe above the eye, line above the eye, stripe over the eye, line over the eye
  also    stripe above its eye, eyebrow streak, brow line, superciliaries, superciliary patch, super cilium
  also    stripe above eye, line above eye, stripe over eye, line over eye, supercillary, supercilliary, superciliary eyebrow
  also    stripe above the eyes, stripe over the eyes, line above the eyes, line over the eyes, stripes above the eyes
  also    stripe above its eyes, stripe over its eye, line over its eye, line above its eye, superciliary brow
  at      iris above
  within  face
  optional yes
  share   0.4
  means   the stripe above the eye

area eyestripe
  at      iris through
  at      supercilium through
  at      eye-ring through
  heard   i stripe, i line
  also    eye stripe, eye line, eyeline, stripe through the eye, line through the eye, stripe through its eye
  also    line through its eye, transocular stripe, eye streak, band through the eye, stripe across the eye, eye band
  also    stripe through eye, line through eye, streak through the eye, line across the eye, stripe behind the eye
  also    line behind the eye, postocular stripe, post ocular stripe, stripe at the eye, stripe through the eyes
  also    stripe across its eyes, stripe across the eyes, stripe on its eyes, stripes at the eyes, eye stripping
  also    stripe across its eye, stripe on its eye, line through the eyes, band across the eyes, line across the eyes
  within  face
  optional yes
  share   0.4
  means   a stripe through the eye, from the lores backwards

area eye-ring
  at      iris edge
  heard   i ring, ire ring
  also    eye patch, eyering, ring around the eye, ring round the eye, ring around its eye, ring around eye, ring about the eye
  also    circle around the eye, ring around the eyes, ring around its eyes, rings around the eyes, rings around its eyes
  also    spectacle, goggle, eye circle, eye surround, eye rim, ringed eye, circle around its eye, circles around its eyes
  also    eye wring, orbital feather ring, area around the eye, area around the eyes
  also    eye area, eye region, circles around the eyes
  also    circle around the eyes, rings around the eye, rings around it's eyes, eyeing
  at      iris around
  at      iris ringed
  within  face
  optional yes
  share   0.3
  means   a ring of feathers round the eye

area eye-crescent
  also    eye arc, crescent above the eye, crescent below the eye, broken eye ring, broken eyering, split eye ring
  also    arc above the eye, arc below the eye, white eyelid, crescents around the eye
  within  face
  optional yes
  share   0.1
  means   part of a ring, above or below the eye

area ear-coverts
  also    ear covert, auricular, auriculars, ear patch, ear feather, ear area, ear, ear spot
  also    auricular patch, ear mark
  at      iris behind
  within  face
  share   0.9
  means   the feathers over the ear, behind and below the eye

area cheek
  also    cheek patch, cheekpatch, cheek area, cheek feather, check patch, cheek spot
  also    cheek stripe
  also    cheek mark, cheek marking, subocular area
  at      iris below
  within  face
  share   0.9
  means   the side of the face below the eye

area malar
  heard   molar, mailer, miller
  title   malar stripe
  also    malar stripe, malar streak, malar region, malar area, malar line, molar stripe, malar patch, malar mark, mustache malar
  within  face
  optional yes
  share   0.3
  means   a stripe from the bill down the side of the throat

area moustachial
  title   moustachial stripe
  also    moustachial stripe, moustache, mustache, moustachial streak, moustache stripe, mustache stripe
  also    moustachial line, mustachial stripe, whisker mark, whisker stripe, moustachial mark
  within  face
  optional yes
  share   0.2
  means   a stripe from the gape along the lower edge of the cheek

area submoustachial
  title   submoustachial stripe
  also    submoustachial stripe, sub moustachial stripe, sub moustachial, submoustachial area, submoustachial streak
  within  face
  optional yes
  share   0.2
  means   the stripe between moustachial and malar stripes

area lateral-throat
  in-field no
  also    lateral throat stripe, side of the throat, throat side, side of throat, lateral throat streak
  at      throat side
  within  face
  optional yes
  share   0.2
  means   the side of the throat below the malar

area chin
  heard   gin, shin
  also    chin area, chin patch, chin spot
  at      bill below
  within  face
  share   0.3
  means   right below the base of the bill

area throat
  heard   throw
  heard-after :colour, :tone, :pattern
  also    chin strap, chinstrap, throat area, throat patch, throat feather, gorget, gular area, throat spot, gular region, throat region, jaw
  within  head
  share   0.8
  means   from the chin to the breast

area beard
  in-field no
  also    whisker, bristle, rictal bristle, throat hackle, beard feather
  within  face
  optional yes
  share   0.1
  means   bristles or loose feathers at the bill or throat

area hood
  also    hooded head, hood marking
  resolves crown, nape, face, throat
  optional yes
  means   crown, nape, face and throat of one colour

area cap
  also    skull cap, skullcap, beanie, cap on its head, cap on the head
  resolves crown
  optional yes
  means   a crown of its own colour

area mask
  also    face mask, eye mask, bandit mask, facial mask, mask around the eyes, mask over the eyes
  resolves lores, ear-coverts
  optional yes
  means   lores and ear-coverts of one dark colour

area bib
  heard   babe
  heard-after :colour
  also    napkin, throat bib
  resolves chin, throat
  optional yes
  means   chin and throat of one colour

area neck
  heard   nick
  heard-after :colour, :length
  also    neck area, neck feather, entire neck, whole neck, neck region
  within  bird
  share   0.6
  means   between head and body

area hindneck
  also    back of the neck, back of neck, back of its neck, rear of the neck, hind neck, neck back
  at      neck back
  at      neck rear
  at      neck hind
  within  neck
  share   1
  means   the back of the neck, below the nape

area neck-side
  also    side of the neck, side of neck, sides of its neck, neck patch
  at      neck side
  within  neck
  share   1
  means   the side of the neck

area foreneck
  also    front of the neck, front of neck, front of its neck, fore neck, neck front
  at      neck front
  within  neck
  share   1
  means   the front of the neck, below the throat

area collar
  at      neck ringed
  at      neck band
  at      throat around
  at      nape around
  at      neck around
  also    neck ring, neck band, half collar, neck collar, ring around the neck, ring around its neck, necklace
  also    band around the neck, ruff, collar around its neck, band around its neck, collar around the neck, hind collar
  within  neck
  optional yes
  share   0.4
  means   a band round the neck, whole or in part

area upperparts
  also    topline
  also    upper parts, upperpart, upper part, topside, top side, upperside, upper side, dorsal side, dorsal area
  also    dorsal surface, upper body, upper half, top half, upper surface, top of the body, top of its body
  also    upper area, dorsal region, dorsal feathers, top of body, dorsal plumage, top feather
  also    topsides, its top, the top, upper portion, top portion, top part
  at      bird upper
  at      bird top
  within  bird
  share   2
  means   everything seen from above: mantle, scapulars, back and rump

area mantle
  heard   mantel, mantels, mental
  also    upper back, saddle, mantle feather, top of the back, upper mantle
  at      back upper
  at      back top
  within  upperparts
  share   1
  means   the uppermost back, between the shoulders

area back
  also    back feather, spine, backside, back area, backs, lower back, whole back, middle of the back, back side
  at      back lower
  unless-after came, come, comes, coming, went, go, goes, going, get, got, went, flew, flies, fly, flying, turned
  unless-after looked, looking, looks, way, just, be, am, i'm, was, were, head, heading, headed, set, brought, years
  unless-after days, weeks, month, months, minutes, hours, called, welcome, reported, step, stepped, laid, held, flight
  unless-before in, again, home, yard, garden, and, then, soon, door, porch, to, at, later, when, into, fence, lawn
  within  upperparts
  share   1.2
  means   the middle of the upperparts

area back-joined
  hidden  yes
  also    back
  area    back
  only-after :colour, :pattern, :shape, :det, :tone, :and, :comma, :size, :length, :mark, :with, start, :on
  only-before :and, :comma
  within  upperparts
  means   the back, named in a list

area scapulars
  heard   scapula's, spectaculars
  also    scapular, scapular feather, shoulder feather, scapular area, braces, mantle lines
  within  upperparts
  share   0.7
  means   the feathers over the joint of wing and back

area rump
  heard   romp, ramp
  also    rump area, rump patch, rump feather, romp patch, butt, rear end, rear, hind end, backend, posterior
  within  upperparts
  share   0.7
  means   between back and uppertail-coverts

area uppertail-coverts
  also    uppertail covert, upper tail covert, uppertail, upper tail, upper tail feather
  at      tail above
  within  upperparts
  share   0.3
  means   the feathers over the base of the tail

area underparts
  heard   under part, under parks
  also    under parts, underpart, under part, underside, under side, undersides, ventral side
  also    ventral area, ventral surface, lower body, lower half, bottom half, lower parts, lower part, underbody
  also    under body, undercarriage, lower surface, underfeathers, under feather, underbird
  also    ventral region, bottom of the body, bottom, bottom half, under surface, bottom side, underplumage, lower portion
  at      bird lower
  at      bird under
  at      bird bottom
  within  bird
  share   3
  means   everything seen from below, wings and tail left out

area front
  also    front side, frontside, front of the body, front of its body, shirt front, chest and belly, fronts
  unless-before of, garden, yard, door, lawn, window, porch
  unless-after in, out
  resolves breast, belly
  means   breast and belly

area breast
  heard   rest, breath
  also    chest, breast area, chest area, breast feather, chest feather, bosom, upper chest, breast region, breasts
  also    breastplate, chests, bust, mid breast, vest
  within  underparts
  share   1.2
  means   between throat and belly

area breast-side
  also    side of the breast, side of breast, sides of its breast, breast side, sides of the breast, chest side
  also    side of the chest, sides of the chest
  at      breast side
  within  underparts
  share   0.4
  means   the side of the breast, before the wing

area breast-band
  also    breast belt, chest band, pectoral band, band across the breast, band across the chest, breast line
  also    band on the breast, bar across the breast, stripe across the breast, stripe across the chest, bands across the breast
  at      breast band
  within  breast
  optional yes
  share   0.3
  means   a band across the breast

area breast-spot
  also    central breast spot, spot on the breast, breast dot, spot in the middle of the breast, stickpin
  within  breast
  optional yes
  share   0.1
  means   a single spot in the middle of the breast

area belly
  heard   bully, bellow
  also    abdomen, stomach, tummy, underbelly, under belly, belly area, midsection, bellies, abdominal area, lower belly
  also    gut, belly feather, abdominal region, lower underparts, mid belly, belly patch, abdomens
  also    lower abdomen, lower stomach
  within  underparts
  share   1.2
  means   between breast and vent

area flanks
  heard   franks, flans, planks
  also    flank, side, side feather, flank feather, body side, side of the body, side of its body, side of body
  also    side of the belly, sides of its belly, side of belly, sides of the bird, side of the bird, sides of the body
  also    flank stripe
  at      belly side
  at      bird side
  at      underparts side
  unless-after other, far, my, our, either, road, each
  unless-before of
  within  underparts
  share   0.9
  means   the side of the body below the folded wing

area thighs
  in-field no
  also    thigh, trousers, leg feather, feathered leg, tibial feather, leggings, thigh feather
  within  underparts
  share   0.2
  means   the feathered upper leg

area vent
  in-field no
  also    vent area, crissum, vent region, cloacal area, vent feather
  within  underparts
  share   0.3
  means   between belly and undertail-coverts

area undertail-coverts
  also    undertail covert, under tail covert, undertail, under tail, undertail area
  at      tail under
  at      tail below
  at      tail rear
  within  underparts
  share   0.4
  means   the feathers below the base of the tail

area wing
  heard   wink, winks
  also    wing feather, folded wing, closed wing, upperwing, upper wing, winglets, whole wing, wing area, wing covering
  also    open wing, spread wing, wingspan, wing span, outstretched wing, top of the wing, top of wing, wingfeather, wing plumage
  unless-before over
  within  bird
  share   2
  means   the wing, as seen folded or from above

area shoulder
  also    shoulder patch, epaulet, epaulette, shoulder area, wing shoulder, shoulder bar, shoulder spot
  within  wing
  share   0.4
  means   the forepart of the folded wing, the smaller coverts

area wing-coverts
  also    covert, wing covert, coverts, covert feather, upperwing covert, upper wing covert, wing coverlet, forewing, fore wing, inner forewing
  within  wing
  share   1.4
  means   the feathers over the base of the flight feathers

area lesser-coverts
  in-field no
  also    lesser covert, lesser wing covert
  within  wing-coverts
  share   0.7
  means   the small coverts, nearest the wing's front edge

area median-coverts
  in-field no
  also    median covert, middle covert, median wing covert
  within  wing-coverts
  share   0.7
  means   the middle row of coverts

area greater-coverts
  in-field no
  also    greater covert, greater wing covert, outer covert, primary covert
  within  wing-coverts
  share   1
  means   the largest coverts, over the secondaries

area lesser-and-median-coverts
  also    median and lesser coverts, lesser and median wing coverts
  resolves lesser-coverts, median-coverts
  means   the smaller coverts together

area median-and-greater-coverts
  also    greater and median coverts, median and greater wing coverts
  resolves median-coverts, greater-coverts
  means   the larger coverts together

area wing-bar
  at      wing bar
  heard   wing bore, wing barre, wing boar, wind bar, wing bare, wingbore
  also    wingbar, bar on the wing, bar on its wing, bars on the wings, bars on its wings, wing band, wing stripe
  also    stripe on the wing, stripe on its wing, bars across the wings, bar across the wing, wing striping
  also    stripes on its wings, stripes on the wings, bands on the wings, wing line, bars on wings, bar on wing
  also    stripes on wings, stripe on wings, stripes along the wings, bands on its wings, bar in the wing, wing barring
  at      wing band
  within  wing
  optional yes
  share   0.4
  means   a pale bar across the coverts

area wing-panel
  at      wing patch
  also    panel in the wing, wing patch, patch on the wing, patch in the wing, patch on its wing, wing flash, flash in the wing
  also    patches on the wings, patches on its wings, wing spot, patches in the wings, wing mirror, wing window
  within  wing
  optional yes
  share   0.3
  means   a patch of its own colour on the folded or open wing

area alula
  heard   a lula
  in-field no
  also    bastard wing
  within  wing
  share   0.1
  means   the small feathers on the wing's thumb

area tertials
  heard   turtles
  also    tertial, tertiary, tertial feather, tertiaries
  within  wing
  share   0.5
  means   the innermost flight feathers, that cover the folded wing

area secondaries
  also    secondary, secondary feather, secondary flight feather, inner flight feather, secondary wing feather
  within  wing
  share   0.9
  means   the inner flight feathers

area primaries
  heard   primary's
  also    primary, primary feather, flight feather, primary flight feather, remiges, remex, outer flight feather
  also    outer wing feather, outer wing, primary wing feather, wing primary, main flight feather
  at      wing outer
  within  wing
  share   0.9
  means   the outer flight feathers

area primary-tips
  also    wing tip, wingtip, tip of the wing, tip of its wing, tips of the wings, tips of its wings, tips of wings
  also    primary tip, tip of wing, end of the wing, ends of the wings, ends of its wings, end of its wings, wing end
  also    tips of the primaries, tip of the primaries, end of wings, tip of wings, tips of its feathers on the wing
  at      wing tip
  at      primaries tip
  within  wing
  share   0.3
  means   the tips of the outer flight feathers

area speculum
  also    wing speculum, mirror on the wing
  within  wing
  optional yes
  share   0.2
  means   a glossy patch on the secondaries, as in ducks

area carpal
  in-field no
  also    bend of the wing, wrist, carpal patch, carpal joint, carpal area, bend of its wing, wing bend, bend in the wing
  within  wing
  share   0.2
  means   the bend of the wing

area leading-edge
  also    front edge
  in-field no
  also    leading edge of the wing, front edge of the wing, wing leading edge, fore edge of the wing
  at      wing front
  within  wing
  share   0.2
  means   the front edge of the open wing

area trailing-edge
  also    rear edge, back edge, hind edge
  also    trailing edge of the wing, rear edge of the wing, hind edge of the wing, wing trailing edge
  at      wing rear
  at      wing hind
  within  wing
  share   0.2
  means   the rear edge of the open wing

area underwing
  at      wing lower-half
  in-field no
  also    under wing, underside of the wing, underside of wing, wing lining, underwing covert
  also    underside of its wings, underside of the wings, undersides of the wings
  also    bottom of the wings, underwings, under wings
  at      wing under
  at      wing lower
  at      wing below
  within  bird
  share   0.4
  means   the wing seen from below

area axillaries
  in-field no
  also    axillary, armpit, wing pit, wingpit, axillar
  within  underwing
  share   0.3
  means   the feathers where the underwing joins the body

area tail
  at      outer-tail middle
  also    inner and outer rectrices, outer and inner rectrices, inner and outer retrices, inner and outer tail feathers
  heard   tale, tales
  heard-after :colour, :tone, :pattern, :length, :shape, its
  also    tail feather, rectrices, rectrix, tail plumage, tail area, whole tail, entire tail, folded tail, tail section
  also    tailfeather, rectrice, retrices, uppertail surface, inner rectrices, inner tail feather, central tail feather
  also    inner retrices, middle tail feather
  within  bird
  share   1
  means   the tail

area outer-tail
  also    outer feather, outer tail feather, outer rectrices, tail edge, tail side, edge of the tail, edges of the tail, sides of the tail
  also    side of the tail, outer retrices, outer tail, outermost tail feather, edges of its tail, tail edging
  also    outer feathers of the tail, outer rectrix, sides of its tail
  at      tail outer
  at      tail edge
  at      tail side
  within  tail
  share   0.6
  means   the outer feathers of the tail

area tail-base
  also    base of the tail, tail root, base of its tail
  at      tail base
  within  tail
  share   0.4
  means   the base of the tail

area tail-band
  also    band on the tail, tail bar, band across the tail, terminal band, subterminal band, subterminal tail band, tail stripe
  also    terminal tail band, bar across the tail, bands on the tail, band near the tail tip
  at      tail band
  within  tail
  optional yes
  share   0.3
  means   a band across the tail

area tail-tip
  also    tip of the tail, tip of its tail, end of the tail, tail end, end of its tail, tips of the tail feathers, tail feather tip
  also    tips of its tail, tips of the tail, bottom of the tail, tip of tail, end of tail, tips of its tail feathers
  at      tail tip
  at      tail bottom
  within  tail
  share   0.4
  means   the tip of the tail

area tail-corners
  also    tail corner, corner of the tail, corners of the tail, corners of its tail, tail spot
  at      tail corner
  within  tail
  share   0.2
  means   the corners of the tail

area tail-streamer
  also    streamer, tail plume, long outer tail feather, tail wire, tail point
  within  tail
  optional yes
  share   0.2
  means   very long feathers of the tail

area plume
  also    ornamental plume, breeding plume, aigrette, back plume, hackle, nuptial plume
  within  bird
  optional yes
  share   0.1
  means   long loose feathers grown for display

area bill
  heard   build, peak, peaks, bull, break, pill, beat, bead
  heard-after :colour, :length, :shape, :tone, thick, thin, huge, hooked, slender, stout
  also    beak, beack, mandible, bil, mouth, nib, snout, nose, beck, bill and gape, whole bill, entire bill, billed beak, mandibles
  within  bird
  share   0.3
  unless-after my, dollar, phone, the electricity, grocery, named, mr
  unless-before said, says, and i, told, came, thinks
  means   the bill

area upper-mandible
  at      lower-mandible upper
  at      bill upper-half
  also    upper bill, upper beak, maxilla, top of the bill, top of the beak, upper part of the bill, culmen, upper half of the bill
  also    top mandible, top bill, top beak, bill top, top of its bill, top of its beak, upper part of the beak
  at      bill upper
  at      bill top
  within  bill
  share   1
  means   the upper half of the bill

area lower-mandible
  at      upper-mandible lower
  at      bill lower-half
  also    underbill
  also    lower bill, lower beak, bottom of the bill, bottom of the beak, lower part of the bill, lower half of the bill
  also    bottom mandible, bottom bill, bottom beak, underside of the bill, underside of the beak, lower half of the beak
  at      bill lower
  at      bill bottom
  at      bill under
  within  bill
  share   1
  means   the lower half of the bill

area bill-base
  at      bill around
  also    base of the bill, base of the beak, base of its bill, base of its beak
  also    beak base, bill root, bridge of the bill
  at      bill base
  at      bill around
  within  bill
  share   0.6
  means   the base of the bill and the feathers that meet it

area bill-tip
  also    tip of the bill, tip of the beak, tip of its bill, tip of its beak, end of the bill, end of the beak, beak tip
  also    end of its beak, end of its bill, nail of the bill, tip of bill, tip of beak, beak end
  at      bill tip
  at      bill end
  within  bill
  share   0.4
  means   the tip of the bill

area bill-ring
  at      bill-tip ringed
  also    bill band, ring on the bill, ring around the bill, band on the bill, ring round the bill
  at      bill band
  at      bill ringed
  within  bill
  optional yes
  share   0.2
  means   a band round the bill

area bill-knob
  also    knob on the bill, caruncle, bill horn, bill plate, horn on the bill, bill shield, knob at the base of the bill
  within  bill
  optional yes
  share   0.2
  means   an outgrowth of the bill

area cere
  heard   sear, seer, sere
  within  bill
  optional yes
  share   0.2
  means   bare skin at the base of the upper mandible, as in hawks and pigeons

area gape
  in-field no
  also    mouth lining, inside of the mouth, inside of mouth, mouth corner, gape line, corner of the mouth, gape flange
  within  bill
  share   0.2
  means   the mouth and its corner

area pouch
  also    throat pouch, gular pouch, bill pouch, throat skin, gular skin
  within  face
  optional yes
  share   0.3
  means   bare stretching skin below the bill

area iris
  title   eye
  plural  no
  also    eye, irises, eyeball, eye colour, eye color, pupil, irides, eyes color
  unless-after my, naked, an
  unless-before level, witness
  within  head
  share   0.2
  means   the eye, its coloured part

area orbital-ring
  in-field no
  also    orbital skin, bare ring around the eye, eye skin, bare skin around the eye, orbital area, eye wattle, fleshy eye ring
  also    skin around the eye
  within  face
  optional yes
  share   0.1
  means   bare skin round the eye

area facial-skin
  also    skin on its face, skin on the face, face skin, skin of the face
  also    bare face, bare facial skin, face skin, bare skin, naked face, bare head, skin of the face, naked head
  within  face
  optional yes
  share   0.2
  means   bare skin on the face

area wattle
  also    comb, dewlap, fleshy comb, red comb
  within  face
  optional yes
  share   0.1
  means   a hanging or standing fold of skin

area legs
  also    leg, appendages, tarsus, tarsi, tarsuses, tarsal, limb, shank, leg colour, leg color, tarsus's, tarsals, larsus, tarsus area
  unless-before it
  within  bird
  share   0.3
  means   the legs

area feet
  heard   feat, feats
  heard-after :colour, :tone, :unseen, :det, :size, :shape, :pattern, :length
  also    both feet, foot, webbed foot, feet colour, feet color, foot colour, paddle
  unless-after :number, few, several, about
  unless-before away, off, up, tall, high, above, from, long, below
  within  bird
  share   0.2
  means   the feet

area toes
  heard   tows
  heard-after :colour, :tone
  in-field no
  also    toe, hind toe, toed foot, toe lobe
  within  feet
  share   1
  means   the toes

area claws
  heard   clause, clauses
  in-field no
  also    claw, talon, toenail, nail, hind claw, foot claw
  within  feet
  share   0.6
  means   the claws

path top-of-the-bird
  areas   forehead, crown, nape, mantle, back, rump, uppertail-coverts, tail
  means   along the upper side, from the bill to the tail

path underside-of-the-bird
  areas   chin, throat, breast, belly, vent, undertail-coverts
  means   along the under side, from the bill to the tail

path side-of-the-head
  areas   lores, iris, ear-coverts, neck-side
  means   along the side of the head, from the bill backwards

path side-of-the-body
  areas   breast-side, flanks, vent
  means   along the side of the body

area nap-for-nape
  hidden  yes
  area    nape
  also    nap
  unless-after a, the, short, quick, little, afternoon
  means   nape, misspelt
