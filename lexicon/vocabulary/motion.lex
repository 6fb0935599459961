# What a named part does; the part stands beside the word.

motion blow-up
  also    inflates, inflating, blow out, swell, swell out, puff with air, swell up, pump up with air
  also    blew out, swelled, swelled out, swelled up, blew up
  means   fills the part out with air

motion bob
  also    bobble, bounce, bob about, bob up, bob down, bounce up and down, move up and down
  also    go up and down
  means   moves the part quickly up and down

motion bow
  also    bow down, bow low, bow and raise, bow deeply
  means   bends the part forward and down

motion bush-out
  also    fluffs, fluffing, puffs out, puffing out, ruffles, ruffling, raise its feathers, bristle up
  also    plump up, loosen and shake
  means   makes the feathers of the part stand loose

motion clap-together
  also    clap, smack together, slap together, strike together, clap over, knock together
  also    struck together
  means   strikes the parts against each other

motion cock
  also    cock up, hold upright, hold up, stick up, stick straight up, hold straight up, perk, perk up
  also    cock over, cock upright, point up, point upwards, point straight up, hold erect, hold vertical
  also    hold vertically, held upright, held up, stuck up, stuck straight up, held straight up
  also    held erect, held vertical
  means   holds the part tilted up

motion depress
  also    push down, press down, hold down, let down, hold low, point down, point downwards, carry low
  also    pump down, hold pointing down, press into, jerk down, flick down, held down, held low
  also    held pointing down
  means   moves or holds the part downwards

motion dip
  also    dip down, dip up and down, dip slowly, dip gently, dip constantly
  means   lets the part down and brings it up again

motion drag
  also    drag along, trail along, drag behind, drag on the ground
  means   lets the part pull along below or behind

motion droop
  also    let droop, hang, hang down, hang low, hold drooped, hang loose, let hang, hold drooping
  also    dangle down, carry drooped, hung, hung down, hung low, held drooped, hung loose, held drooping
  means   lets the part hang

motion fan
  also    fan out, fan open, spread in a fan, open like a fan, spread like a fan, hold fanned, fan wide
  also    held fanned
  means   opens the part out like a fan

motion flap
  also    flap about, flap slowly, flap fast, flap wildly, flap up and down, flap quickly, flap hard
  also    flap rapidly, beat fast, beat slowly, beat up and down, beat rapidly, beat quickly
  also    beat fast and shallow
  means   beats the part up and down

motion flare-open
  also    flare wide open, flare wide
  means   opens the part suddenly outwards

motion flash-open
  also    flash in flight, flash when it flies, flash out, flash when it takes off, flash as it flies
  means   shows the part for a moment

motion flick
  also    flick up, flick open, flick upwards, flick nervously, flick constantly, flick sideways
  also    flick out, flick up and down, flick open and shut, flick from side to side, flick and spread
  also    flick quickly, flick sharply, flick repeatedly, snap open, flick half open
  means   moves the part with a quick light jerk

motion flirt
  also    flirt up, flirt about, flirt from side to side, flirt constantly, flirt open
  means   throws the part about with small quick jerks

motion fold
  also    fold over, fold back, fold up, fold in, fold away, hold folded, fold along, fold flat
  also    hold closed, keep closed, keep folded, held folded, held closed, kept closed, kept folded
  means   lays the part closed

motion hold-bent
  also    hold crooked, hold angled, hold at an angle, hold arched, hold bowed, hold curved
  also    held crooked, held angled, held at an angle, held arched, held bowed, held curved, held bent
  means   keeps the part bent

motion hold-in-v
  also    hold in a v, hold in a shallow v, hold up in a v, raise in a v, hold in a v shape
  also    hold raised in a v, hold in a slight v, raise in a shallow v, hold in a dihedral, held in a v
  also    held in a shallow v, held up in a v, held in a v shape, held raised in a v, held in a slight v
  also    held in a dihedral
  means   keeps the raised parts in the shape of a V

motion hold-level
  also    hold flat, hold horizontal, hold horizontally, hold straight, hold still, hold stiff
  also    hold stiffly, keep level, keep flat, hold out flat, hold straight out, hold in line
  also    carry level, carry flat, hold steady, keep straight, held flat, held horizontal
  also    held horizontally, held straight, held still, held stiff, held stiffly
  means   keeps the part flat or in one line

motion hold-out
  also    hold away, stick out sideways, hold out sideways, hold open, stretch out, hold outstretched
  also    keep open, hold away from, hold half open, hold outspread, hold stretched out, hold wide
  also    stretch forward, stick forward, thrust out, stick straight out, held away, stuck out sideways
  also    held out sideways, held open, held outstretched, kept open, held away from
  means   keeps the part extended

motion jerk
  also    jerk up, jerk about, jerk up and down, jerk upwards, jerk back and forth
  also    jerk backwards and forwards, jerk nervously, jerk forward, thrust, thrust forward
  also    jerk to and fro, jerk constantly
  means   moves the part by sudden pulls

motion nod
  also    nod up and down, nod back and forth, nod backwards and forwards, nod gently, nod quickly
  also    nod constantly, nod to and fro
  means   tips the part forward and back

motion open-and-shut
  also    open and close, snap open and shut, spread and close, spread and fold, open and fold
  also    flick open and closed, open and shut quickly, flash open and shut, open briefly, scissor
  also    opened and closed, opening and closing, opens and closes
  means   opens and closes the part over and over

motion pull-in
  also    tuck in, tuck away, draw in, draw back, tuck under, tuck up, tuck behind, hold tucked in
  also    tuck into, hold drawn in, retract, hold tucked, keep tucked, pull back, tuck close, tucked
  also    drew in, drew back, held tucked in, held drawn in, held tucked, kept tucked
  means   draws the part close to the body

motion pump
  also    pump up and down, pump slowly, pump constantly, pump hard, pump repeatedly, pump regularly
  also    pump gently, work up and down, move slowly up and down, pump steadily, pump vigorously
  also    pump rhythmically
  means   moves the part up and down over and over, as a pump handle

motion quiver
  also    quake, shiver, tremble, vibrate, shimmy, quiver rapidly, shiver constantly, vibrate rapidly
  also    flutter quickly, shiver and droop, shiver rapidly, quiver constantly, hold shivering
  also    held shivering
  means   moves the part with tiny fast shakes

motion raise
  also    lift, lift up, raise up, raise and lower, put up, lift and lower, raise slowly, raise quickly
  also    erect, lift over, lift high, raise when alarmed, raise when excited, raise high, raise over
  also    raise briefly
  also    raises and lowers, raising and lowering, raised and lowered, raises and spreads
  means   brings the part up

motion raise-and-dip-slowly
  also    raise and dip, lift then dip, jerk up and lower slowly, lower slowly, raise then lower slowly
  also    cock and lower slowly, flick up then lower slowly, let down slowly
  also    lift quickly and lower slowly
  means   brings the part up fast and lets it down slowly

motion rotate
  also    twirl, move in circles, pump in circles, go in circles, move in a circle, wag in circles
  also    go round and round, went in circles
  means   moves the part round in circles

motion shake
  also    shake out, waggle, wiggle, jiggle, shake about, shake from side to side, shake rapidly
  also    waggle about, wobble, shake quickly, shake loose, shake dry, shook out, shook about
  also    shook from side to side, shook rapidly, shook quickly, shook loose, shook dry
  means   moves the part fast to and fro

motion snap
  also    snap shut, snap together, clack together, clapper, snap loudly, snap up, click together
  means   closes the part with a sharp sound

motion spread
  also    spread out, spread wide, spread open, outspread, spread briefly, hold spread
  also    spread to the sides, open out, open wide, spread in display, hold wide open, spread flat
  also    keep spread, open up, unfold, hold fully spread, held spread, held wide open, kept spread
  also    held fully spread
  means   opens the part wide

motion swing
  also    swing about, swing from side to side, swing to and fro, sway, sway from side to side, swish
  also    swish from side to side, swing loosely, swing slowly, swing up and down, sway slowly
  also    move from side to side, move side to side, go from side to side, sway back and forth
  also    swing back and forth, swung about, swung from side to side, swung loosely, swung slowly
  also    went from side to side, swung
  means   moves the part in a wide slow sweep

motion swivel
  also    twists, twisting, turn round and round, turn from side to side, turn right round
  also    rotate from side to side, swivel round, twist about, twist from side to side, twist round
  also    twist constantly, twist in flight, turn side to side, swing round, swung round
  means   turns the part about its own axis

motion throw-back
  also    toss, toss back, throw up, toss up, flip back, bend backwards, flick back, tip back, tilt back
  also    tip backwards, hold thrown back, throw backwards, threw up, bent backwards, held thrown back
  also    threw backwards, threw back
  means   moves the part sharply backwards

motion tilt
  also    tip over, tip sideways, tilt sideways, tilt up, lean over, tilt to one side, hold to one side
  also    cock to one side, hold tilted, tip to one side, turn to one side, hold at a tilt, tilt down
  also    tip up and down, hold sideways, tilt from side to side, leant over, held to one side
  also    held tilted, held at a tilt, held sideways
  means   leans the part over

motion trail
  also    trail behind, trail out, stick out behind, hang behind, stream behind, poke out behind
  also    stretch out behind, trail down, hang out behind, hang down behind, stuck out behind
  also    hung behind, hung out behind, hung down behind
  means   lets the part follow behind

motion twitch
  also    twitch up, twitch about, twitch nervously, twitch up and down, twitch from side to side
  also    twitch quickly, twitch constantly, twitch sideways, twitch repeatedly, twitch open
  also    jiggle about, tweak
  means   moves the part with a tiny sudden pull

motion wag
  also    wag up and down, wag from side to side, wag constantly, wag about, wag side to side
  also    wag slowly, wag vigorously, wag gently, wag sideways, wag repeatedly, wag downwards
  also    wag all the time, wag continually, wag strongly, wag like a dog
  means   moves the part to and fro, as a dog's tail

motion wave
  also    wave about, wave in the air, wave from side to side, wave up and down, wave one at a time
  also    wave in display, wave loosely, wave slowly, wave around, wave high
  means   moves the part slowly through the air
