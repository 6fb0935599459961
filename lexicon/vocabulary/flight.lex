# How a bird flies.

flight acrobatic-flight
  also    aerobatic, aerobatics, aerial acrobatics, acrobatic in the air, tumble in the air
  also    aerobatic flight, fly acrobatically, do aerobatics, flew acrobatically, did aerobatics
  also    tumble in display, tumbling display, tumble and roll, tumble and roll in the air, tumble and glide
  also    tumble about, tumble around cliffs, roll in the air, roll in flight, roll onto its back
  also    roll on to its back, roll over in the air, flip over in flight
  means   turns, rolls and tumbles with skill

flight agile-flight
  also    agile in the air, fly with great agility, nimble flight, twist through the trees
  also    fly through the trees, weave through trees, fly fast between trees, manoeuvrable, maneuverable
  also    dodge between trees, weave between trees, agile flier, agile flyer, weave through the trees
  also    thread through the trees, flew with great agility, flew through the trees, wove through trees
  also    flew fast between trees, wove between trees, wove through the trees
  means   turns fast and neatly in tight places

flight angled-wings-flight
  also    wings angled back, fly with bent wings, glide with bent wings, wings bent at the wrist
  also    wings held crooked, wings crooked in flight, fly with wings angled, m shape in flight
  also    wings in an m shape, fly with crooked wings, flew with bent wings, flew with wings angled
  also    flew with crooked wings
  means   wings bent at the wrist as it flies

flight arrowing-flight
  also    like an arrow, arrow through the air, shoot past, shoot by, fly like a bullet, fly like a dart
  also    shoot through, bullet past, bullet like flight, rocket past, whizz past, whiz past, zoom past
  also    streak past, flash past, hurtle, shot past, shot by, flew like a bullet, flew like a dart
  also    shot through
  means   passes at high speed in one line

flight backwards-flight
  also    fly backwards, fly backward, backward flight, reverse in the air, back away in flight
  also    fly in reverse, fly sideways, flew backwards, flew backward, flew in reverse, flew sideways
  means   moves backwards in the air

flight bat-like-flight
  also    bat like, like a bat, fly like a bat, batlike wingbeats, bat like flutter, flutter like a bat
  also    flew like a bat
  means   fluttering and turning as a bat

flight bounding
  also    bounding flight, fly in bounds, bound along, deeply bounding flight, deeply bounding
  also    bound through the air, bound in flight, bouncing flight, bouncy flight, bounce in flight
  also    bouncy in flight, bounding flier, fly with bounds, flap bounding, flap bound, flew in bounds
  also    flew with bounds
  also    slightly bounding, gently bounding
  means   bursts of flaps with wings shut between, rising and falling steeply

flight bowed-wings-flight
  also    bowed wings, glide on bowed wings, glide with bowed wings, wings bowed, wings bowed down
  also    wings arched down, fly on bowed wings, glide on down curved wings, wings held bowed
  also    wings arched in flight, sail on bowed wings, wings drooped in flight, wings drooped in a glide
  also    flew on bowed wings
  means   wings arched down as it glides

flight buoyant
  also    buoyant flight, fly buoyantly, light flight, airy flight, light and airy flight, fly lightly
  also    tern like flight, floating flight, fly like a tern, floaty, floaty flight, buoyant in flight
  also    light buoyant flight, buoyant in the air, light on the wing, buoyant wingbeats, flew buoyantly
  also    flew lightly, flew like a tern
  means   light in the air, lifting with each beat

flight butterfly-like-flight
  also    like a butterfly, fly like a butterfly, butterfly like, butterfly flight
  also    butterfly display flight, moth like flight, like a moth, fly like a moth, moth like
  also    flutter like a moth, flutter like a butterfly, butterfly like wingbeats
  also    slow butterfly wingbeats, flew like a butterfly, flew like a moth
  means   loose soft uneven beats

flight circling
  also    circle overhead, circle around, fly in circles, circle high up, circle round
  also    go round in circles, circle high overhead, fly round and round, circle up, fly in wide circles
  also    fly around in circles, circling flight, circle over the field, circle slowly, circle low
  also    circle over the wood, flew in circles, went round in circles, flew in wide circles
  also    flew around in circles
  also    flocks in circles, flocks circle, fly in circles in a flock, circle in flocks
  means   goes round and round in the air

flight clumsy-flight
  also    clumsy in the air, ungainly flight, fly awkwardly, awkward flight, clumsy flier, gangly flight
  also    fly clumsily, look awkward in flight, awkward in flight, ungainly in flight, clumsy in flight
  also    flew awkwardly, flew clumsily
  means   awkward in the air

flight constant-flapping
  also    fly with constant wingbeats, flap constantly, flap steadily, flap continuously
  also    flap all the time, steady wingbeats, steady flapping, steady flapping flight
  also    constant wingbeats, continuous wingbeats, flapping flight, continuous flapping
  also    fly with steady wingbeats, even wingbeats, regular wingbeats, fly without gliding
  also    flew with constant wingbeats, flew with steady wingbeats, flew without gliding
  also    seldom soar, rarely soar, seldom glide, rarely glide
  also    seldom soars, rarely soars, seldom glides, rarely glides
  means   flaps on without gliding

flight deep-wingbeats
  also    fly with deep wingbeats, deep strong wingbeats, big wingbeats, full wingbeats
  also    deep powerful wingbeats, wings raised high on each beat, fly with deep strokes
  also    deep slow wingbeats, deep flaps, flew with deep wingbeats, flew with deep strokes
  means   wings go far up and down

flight direct
  also    direct flight, fly direct, fly straight, fly in a straight line, straight flight
  also    fly straight and level, direct and level, level flight, straight and direct
  also    fly in a direct line, fly directly, direct flier, go straight over, straight line flight
  also    fly level, straight level flight, flew direct, flew straight, flew in a straight line
  also    flew in a direct line, flew directly, went straight over, flew level
  means   keeps one line without wavering

flight dive-in-air
  also    dive down, dive steeply, dive through the air, dive downwards, dive in display, steep dives
  also    steep dive, dive and climb, dive from high up, aerial dive, aerial dives, dive and swoop
  also    steep diving display, display dive, dove down, dove steeply, dove through the air
  also    dove downwards, dove in display, dove and climb, dove from high up
  means   drops steeply through the air

flight drop-into-cover
  also    drop back into cover, drop back into the grass, drop into the grass, drop down into the grass
  also    drop into the reeds, drop back into the reeds, drop back down
  also    fly a short way and drop into cover, pitch into cover, drop suddenly into cover, drop suddenly
  also    drop down into cover, tumble into cover, drop out of sight, dive back into the reeds
  also    pitch into the grass, dove back into the reeds
  also    drop into grass, drop into long grass, drop into reeds
  means   ends a flight by a sudden drop

flight erratic
  also    erratic flight, fly erratically, jink, jinking flight, jink about, fly in zigzags
  also    zigzag flight, zigzagging, twisting flight, twist and turn, fly with twists and turns, jinky
  also    swerve, swerve about, swerving flight, dodging flight, flew erratically, flew in zigzags
  also    zigzag when flushed, zigzag away, zigzag off, flush in zigzags, fly off in zigzags
  also    flew off in zigzags
  means   keeps changing course

flight ever-airborne
  also    spend its time in the air, stay in the air, fly constantly, keep on the wing
  also    always in the air, always on the wing, constantly in the air, never seen to land
  also    fly without landing, flew constantly, kept on the wing, flew without landing
  means   is nearly always on the wing

flight falcon-like-flight
  also    fly like a falcon, dashing flight, fly with dash, dashing in flight, falcon like wingbeats
  also    dash through the air, dashing low flight, falcon like in flight, dash past, flew like a falcon
  also    flew with dash
  means   fast and dashing on pointed wings

flight fast-flight
  also    fly fast, fly quickly, fly rapidly, rapid flight, swift flight, fast flier, fast flyer
  also    speedy flight, quick flight, fly at speed, fast flying, fast in flight, fly very fast
  also    fast on the wing, very fast flight, fast powerful flight, flew fast, flew quickly
  also    flew rapidly, flew at speed, flew very fast
  means   moves fast through the air

flight fast-wingbeats
  also    rapid wingbeats, quick wingbeats, fly with fast wingbeats, fly with rapid wingbeats
  also    wings beating fast, fast flapping, rapid flapping, quick flapping, fast flaps, quick flaps
  also    very fast wingbeats, fly with quick wingbeats, hurried wingbeats, fast stiff wingbeats
  also    fast shallow wingbeats, rapid shallow wingbeats, flew with fast wingbeats
  also    flew with rapid wingbeats, flew with quick wingbeats
  also    fast shallow wing beats
  means   beats the wings at a high rate

flight flap-and-glide
  also    flap and then glide, flaps and glides, flap flap glide, flap then glide
  also    few flaps then a glide, few flaps and a glide, alternate flaps and glides, flap glide
  also    flaps and a glide, flap flap flap glide, flap between glides, series of flaps and a glide
  also    wingbeats and glides, alternate flapping and gliding, flapping and gliding, flaps then glides
  means   some beats and then a glide

flight flicking-wingbeats
  also    flick its wings in flight, flicking flight, fly with flicking wingbeats, flicky wingbeats
  also    snappy wingbeats, crisp wingbeats, clipped wingbeats, whippy wingbeats, flicky flight
  also    jerky wingbeats, fly with snappy wingbeats, flickering wingbeats, flickering flight
  also    flicker in flight, flew with flicking wingbeats, flew with snappy wingbeats
  also    shallow flickering wingbeats, shallow flicking wingbeats
  means   short sharp beats

flight floppy-flight
  also    flop along, floppy wingbeats, loose wingbeats, fly floppily, loose floppy flight
  also    lazy flapping, lazy flaps, lazy wingbeats, loose flapping, fly lazily, flap lazily
  also    lazy flight, flap loosely, loose flight, flapping loosely, flop over, flew floppily
  also    flew lazily
  means   loose slow beats

flight flush-and-land-soon
  also    fly short distances, fly a short way, short flights, make short flights
  also    fly only a short distance, fly a short distance, short flight, fly off a short way
  also    fly a little way and land, fly a few yards, fly just a few feet, flush and land again
  also    fly short distance, fly from perch to perch, short low flights, fly off a short distance
  also    flew short distances, flew a short way, made short flights, flew only a short distance
  also    flew a short distance, flew off a short way, flew a few yards
  means   goes only a short way on the wing

flight fluttering
  also    fluttery, fluttering flight, flutter, flutter about, flutter around, fluttery flight
  also    fluttering wingbeats, fluttery wingbeats, flutter along, flutter overhead, flutter its way
  also    flutter up, flutter down, fly with fluttering wings, flutter weakly, flutter in the air
  also    flew with fluttering wings
  means   light quick shallow beats

flight formation-flight
  also    fly in formation, fly in a v, v formation, fly in v formation, fly in skeins, v shaped flock
  also    fly in a wedge, fly in a v formation, skein, skeins, v shape flock, flock in a v
  also    v shaped formation, flying v, fly in an arrow shape, in v formation, flew in formation
  also    flew in a v, flew in v formation, flew in skeins, flew in a wedge, flew in a v formation
  also    flew in an arrow shape
  also    v shaped flocks, in v shaped flocks, in a v shaped flock, in skeins
  means   a flock on the wing in the shape of a V

flight gallop-flight
  also    beat its wings in bursts, bursts of wingbeats, burst of wingbeats, fly in bursts
  also    fly with bursts of wingbeats, bursts of flapping, quick bursts of wingbeats
  also    bursts of fast wingbeats, burst of flaps, wingbeats in bursts, flap in bursts
  also    bursts of rapid wingbeats, short bursts of wingbeats, flew in bursts
  also    flew with bursts of wingbeats
  also    bursts of shallow wingbeats, short bursts of shallow wingbeats, bursts of flaps
  means   beats come in groups with gaps

flight glide
  also    glide down, gliding, glide on, glide past, gliding flight, glide on flat wings, glide overhead
  also    glide low, glide between wingbeats, glide on set wings, set its wings and glide, glide over
  also    sail, sail along, sail overhead, planing
  means   flies with wings held out and still

flight graceful-flight
  also    fly gracefully, graceful in flight, elegant flight, graceful on the wing, easy flight
  also    effortless flight, graceful flier, smooth flight, graceful flyer, fly with ease
  also    effortless in the air, fly smoothly, elegant in flight, graceful wingbeats
  also    graceful in the air, fly effortlessly, flew gracefully, flew with ease, flew smoothly
  also    flew effortlessly
  means   easy and smooth on the wing

flight half-closed-wings-flight
  also    wings half closed, glide with wings half closed, wings partly closed in flight
  also    half closed wings, wings swept back, wings swept back in flight, glide on swept wings
  also    swept back wings in flight, wings pulled back in flight, teardrop shape in a dive
  also    wings half folded in flight, glide on half closed wings, wings drawn back in a glide
  means   wings partly shut in a fast glide or dive

flight head-forward-flight
  also    soar with the head far forward, head far forward in flight, head held far forward in flight
  also    head sticks out in flight, head well forward in flight, head projects in flight
  means   head stands well out in front of the wings in the air

flight heavy-flight
  also    fly heavily, heavy wingbeats, ponderous flight, lumbering flight, heavy in flight
  also    labored flight, laboured flight, laboured, labored, laboured wingbeats, labored wingbeats
  also    fly with effort, ponderous wingbeats, heavy flapping, flap heavily, heavy flier, flew heavily
  also    flew with effort
  means   seems to work hard to stay up

flight hesitant-flight
  also    jerky flight, hesitant in flight, jerky in flight, halting flight, hesitating flight
  also    uneven flight, fly jerkily, fitful flight, faltering flight, stop start flight, fly hesitantly
  also    fly in jerks, irregular flight, flight jerky, flight hesitant, stalling, flew jerkily
  also    flew hesitantly, flew in jerks
  also    uneven wingbeats, irregular wingbeats
  means   uneven, with checks and stalls

flight high-flight
  also    fly high, fly high up, fly high overhead, fly high in the sky, high up in the sky
  also    fly high in the air, fly at a great height, fly very high, fly way up high, fly high over
  also    flying high over, pass high overhead, fly at height, tiny dot high up, speck in the sky
  also    fly high above, flew high, flew high up, flew high overhead, flew high in the sky
  also    flew high in the air, flew at a great height, flew very high
  means   well above the ground

flight jet-like-turns
  also    bank steeply, bank and turn, bank sharply, banking, tight turns, turn sharply, turn tightly
  also    sharp turns, wheel and turn, wheel about, wheel round, wheel around, turn on a wing
  also    turn in the air, quick turns, wheeling
  means   leans over into turns

flight kettle
  also    rise in a thermal, spiral up, rise on a thermal, ride a thermal, use thermals, spiral upwards
  also    spiral up in a thermal, rise in circles, circle upwards, circle up on a thermal, ride thermals
  also    circle in a thermal, climb on a thermal, circle higher and higher, spiral higher, kettling
  also    rose in a thermal, rose on a thermal, rose in circles
  means   rises in circles on warm air

flight legs-trailing-flight
  also    fly with legs dangling, fly with legs trailing, legs dangling in flight
  also    legs trailing in flight, legs hanging down in flight, fly with its legs trailing
  also    legs hanging in flight, legs trail in flight, fly with dangling legs
  also    fly with its legs dangling, feet beyond the tail in flight, feet past the tail in flight
  also    legs stick out behind in flight, fly with legs stretched out behind, legs hang down in flight
  also    with dangling legs, flew with legs dangling, flew with legs trailing
  also    flew with its legs trailing, flew with dangling legs, flew with its legs dangling
  also    flew with legs stretched out behind
  also    legs dangling, with legs dangling
  means   legs show behind or below in flight

flight line-flight
  also    fly in a line, fly in line, fly in lines, fly in single file, in single file, single file
  also    in long lines, fly in long lines, string of birds, fly in strings, fly in a row
  also    fly one behind the other, fly in a string, lines of birds, fly one behind another
  also    follow in a line, flew in a line, flew in line, flew in lines, flew in single file
  also    flew in long lines, flew in strings, flew in a row
  means   a flock on the wing one after another

flight loose-flock-flight
  also    fly in a loose flock, fly in loose flocks, fly in a straggling flock, loose flock in flight
  also    straggling flock, straggling flight, in a loose flock, fly in straggling flocks
  also    fly in scattered flocks, straggle over, fly in ones and twos, fly in dribs and drabs
  also    trickle over, fly in a straggling line, fly in a loose party, fly in straggling parties
  also    flew in a loose flock, flew in loose flocks, flew in a straggling flock
  also    flew in straggling flocks, flew in scattered flocks, flew in a straggling line
  also    flew in a loose party
  means   flock well spread out on the wing

flight low-flight
  also    fly low, fly low down, fly low to the ground, fly low over the ground
  also    low to the ground in flight, keep low in flight, fly just above the ground, skim the ground
  also    fly close to the ground, hug the ground in flight, fly low over fields, fly low over a field
  also    low over the ground, fly near the ground, fly low across the road, skim low, flew low
  also    flew low down, flew low to the ground, flew low over the ground, kept low in flight
  also    flew just above the ground, flew close to the ground
  means   not far above the ground

flight low-over-water
  also    fly low over water, low over the water, low over the sea, low over the waves
  also    skim low over water in flight, fly just above the water, fly close to the water
  also    skim over the waves in flight, fly just above the waves, fly close to the surface
  also    low above the water, fly low along a river, fly low along a stream, fly along the river
  also    fly up the river, fly low over the surface, flew low over water, flew just above the water
  also    flew close to the water, flew just above the waves, flew close to the surface
  also    flew low along a river, flew low along a stream
  also    low over waves, glide low over waves, glide low over the waves, gliding low over waves
  means   close above the surface in flight

flight murmuration
  also    swirling flock, swirl in a flock, swirl in the sky, fly in swirling flocks, wheel in a flock
  also    whirl in a flock, swirling clouds, fly in a cloud, fly in clouds, great swirling flock
  also    fly like smoke, swirl before roosting, swirling mass, huge swirling flock, murmurations
  also    murmurate, flew in swirling flocks, flew in a cloud, flew in clouds, flew like smoke
  means   a great flock turning in the air before roost

flight neck-drawn-in-flight
  also    neck drawn in in flight, fly with neck drawn in, fly with neck tucked in
  also    neck tucked in in flight, fly with head drawn back, neck folded in flight
  also    fly with neck folded, fly with its neck tucked in, neck pulled in in flight
  also    fly with its neck folded, head drawn back in flight, neck drawn back in flight
  also    neck kinked in flight, fly with neck pulled in, fly with its head drawn back
  also    fly with neck kinked, flew with neck drawn in, flew with neck tucked in
  also    flew with head drawn back, flew with neck folded, flew with its neck tucked in
  also    flew with its neck folded, flew with neck pulled in
  means   neck folded in the air, as a heron

flight neck-outstretched-flight
  also    neck outstretched in flight, fly with neck outstretched, fly with neck stretched out
  also    neck stretched out in flight, neck straight in flight, fly with neck extended
  also    neck extended in flight, fly with a straight neck, fly with its neck stretched out
  also    fly with its neck straight out, fly with outstretched neck, fly with its neck extended
  also    neck stuck out in flight, neck straight out in flight, neck held out straight in flight
  also    fly with neck straight out, flew with neck outstretched, flew with neck stretched out
  also    flew with neck extended, flew with a straight neck, flew with its neck stretched out
  also    flew with its neck straight out, flew with outstretched neck
  means   neck straight ahead in the air, as a goose or crane

flight parachuting
  also    parachute, parachute down, parachute to the ground, parachuting display, parachute like a leaf
  also    float down, float down with wings raised, float down with wings spread, parachute display
  also    parachuting display flight, fall like a shuttlecock, glide down with raised tail
  also    glide down on spread wings, float down like a parachute, drift down, parachute down singing
  also    fell like a shuttlecock
  means   comes down on stiff spread wings

flight pigeon-like-flight
  also    fly like a pigeon, fly like a dove, pigeon like in flight, dove like flight
  also    pigeon like wingbeats, fast pigeon like flight, flew like a pigeon, flew like a dove
  means   fast and steady, as a pigeon

flight powerful-flight
  also    strong flight, fly strongly, powerful in flight, powerful wingbeats, strong wingbeats
  also    strong flier, strong flyer, fly powerfully, strong fast flight, strong in flight, power past
  also    powerful flier, strong and direct, powerful fast flight, fly with powerful wingbeats
  also    strong flying, flew strongly, flew powerfully, flew with powerful wingbeats
  means   flies with force and purpose

flight rise-and-fall-display
  also    rise and fall in display, roller coaster flight, roller coaster display, sky dance
  also    switchback flight, fly up and down in display, climb and dive in display, sky dancing
  also    roller coaster display flight, display flight, aerial display, display flights
  also    aerial displays, u shaped display dives, display in the air, display in flight
  also    rose and fall in display
  also    swing in a wide arc, swing in an arc, swing to and fro in display, dive in a wide arc
  also    tumbling display flight
  means   climbs and dives to show off

flight rise-steeply
  also    rise straight up, rise vertically, fly straight up, climb steeply, tower up, towering
  also    take off vertically, spring straight up, shoot straight up, spring straight into the air
  also    leap straight up from the water, take off straight up, jump straight up from the water
  also    rise straight from the water, take off straight from the water, spring from the water
  also    rose straight up, rose vertically, flew straight up, took off vertically, sprang straight up
  also    shot straight up, sprang straight into the air
  also    tower high, tower high up, towers up
  means   goes up at a steep angle

flight rocking-flight
  also    rock from side to side, teeter from side to side, tilt from side to side in flight
  also    wobble in flight, wobbly flight, sway in flight, rock in flight, rock side to side
  also    teetering flight, rocking from side to side, tip from side to side in flight
  also    unsteady in flight, wobble from side to side, roll from side to side in flight
  also    teeter in flight, unsteady flight
  means   tips from side to side as it glides

flight shallow-wingbeats
  also    fly with shallow wingbeats, shallow flaps, wings hardly moving, fly with wings below the body
  also    wings held below the body, shallow fast wingbeats, shallow flapping, shallow stiff wingbeats
  also    shallow quick wingbeats, fly on shallow wingbeats, shallow rapid wingbeats, wingbeats shallow
  also    weak shallow wingbeats, beat its wings below the body, shallow flapping flight
  also    fly with shallow beats, flew with shallow wingbeats, flew with wings below the body
  also    flew on shallow wingbeats, flew with shallow beats
  means   wings go only a little up and down

flight shearing
  also    shear, shear over the waves, shearwater like, fly like a shearwater, tilt over the waves
  also    wing over wing, glide over the waves, skim the waves in flight, arc over the waves
  also    arcing flight, bank from side to side over the waves, arc above the waves, shearing flight
  also    shear low over the waves, dynamic soaring, bank over the waves, flew like a shearwater
  also    bank over waves, bank on the wind
  means   tips and glides over waves on stiff wings

flight silent-flight
  also    fly silently, silent in flight, noiseless flight, fly without a sound, soundless flight
  also    quiet flight, fly without sound, silent wings, fly on silent wings, noiseless in flight
  also    silent on the wing, flight silent, fly quietly, make no sound in flight, ghost past
  also    soundless wings, flew silently, flew without a sound, flew without sound, flew on silent wings
  also    flew quietly, made no sound in flight
  means   no noise from the wings

flight slow-flight
  also    fly slowly, slow flying, slow flier, slow in flight, slow steady flight, leisurely flight
  also    unhurried flight, slow flyer, leisurely in flight, fly at a slow speed, fly over slowly
  also    unhurried, leisurely, slow lazy flight, slow low flight, fly past slowly, flew slowly
  also    flew at a slow speed, flew over slowly, flew past slowly
  means   moves slowly through the air

flight slow-wingbeats
  also    fly with slow wingbeats, slow flaps, slow deep wingbeats, flap slowly along
  also    slow steady wingbeats, leisurely wingbeats, slow lazy wingbeats, slow heavy flaps
  also    unhurried wingbeats, measured wingbeats, wings beating slowly, slow regular wingbeats
  also    slow strong wingbeats, slow powerful wingbeats, slow floppy wingbeats, slow loose wingbeats
  also    flew with slow wingbeats
  means   beats the wings at a low rate

flight soar
  also    soaring, soar high, soar overhead, soar in circles, soar in the sky, soaring flight, soar up
  also    soar on the wind, soar over the hill, soar around, soar high up, soar high overhead
  also    soar high in the sky, soar above, soar over the trees, soar without flapping
  means   stays up or rises on spread wings without beats

flight soar-on-flat-wings
  also    wings flat in flight, soar with flat wings, glide with flat wings, wings held flat
  also    wings held flat in flight, soar on level wings, wings held level, wings level in flight
  also    fly on flat wings, wings held level in flight, wings held straight out, glide on level wings
  also    wings held out flat, wings flat when soaring, soar with level wings, soar with wings flat
  also    flew on flat wings
  means   wings level as it soars

flight soar-on-raised-wings
  also    wings raised in a v, wings in a v, wings held in a v, wings up in a v, soar with wings in a v
  also    glide with wings in a v, glide with wings raised, dihedral, wings in a shallow v
  also    wings held in a shallow v, soar with wings raised, wings held up in a v, wings in a slight v
  also    soar in a v, wings slightly raised in flight, glide with wings in a shallow v
  also    soar with wings raised in a v, soar with wings raised in a shallow v, soar with its wings in a v
  also    glide with wings raised in a v, glide with wings raised in a shallow v
  also    soar with wings slightly raised, glide with wings slightly raised, wings slightly raised
  also    wings raised in a shallow v, soar with its wings raised
  means   wings above level as it soars

flight song-flight
  also    fly up singing, sing in a display flight, rise singing, display flight with song
  also    sing in a song flight, sing as it rises, sing in display flight, singing display flight
  also    climb singing, climb while singing, do a song flight, rise up singing, sing as it climbs
  also    perform a song flight, circling song flight, soar up singing, flew up singing
  also    sang in a display flight, rose singing, sang in a song flight, sang as it rises
  also    sang in display flight, did a song flight
  means   goes up to sing on the wing

flight stand-on-air
  also    hang on the wind, hang in the wind, hang in the breeze, hold still in the wind
  also    stay still in the wind, hang motionless in the wind, hang motionless, hang into the wind
  also    stand still in the air, kiting, hover on the wind, float on the wind, hang in the updraught
  also    stand still on the wind, hang in the updraft, hold its place in the wind, hung on the wind
  also    hung in the wind, hung in the breeze, held still in the wind, hung motionless in the wind
  also    hung motionless, hung into the wind
  means   keeps one spot in a wind with wings nearly still

flight stiff-wingbeats
  also    stiff winged, stiff winged flight, fly on stiff wings, fly with stiff wings
  also    stiff wings in flight, stiff flight, glide stiff winged, stiff wings, stiff rapid wingbeats
  also    straight wings in flight, wings held stiffly, wings stiff in flight, stiff flapping
  also    stiffly held wings, fly stiffly, stiff fluttering flight, flew on stiff wings
  also    flew with stiff wings, flew stiffly
  means   wings hardly bend as they beat

flight swallow-like-flight
  also    fly like a swallow, fly like a swift, swift like flight, swallow like in flight
  also    swift like in flight, martin like flight, sweeping flight, sweep back and forth
  also    sweep to and fro, sweep over the water, sweeping graceful flight, flew like a swallow
  also    flew like a swift, swept over the water
  means   sweeps and turns easily, as a swallow

flight swoop
  also    swoop down, swoop up, swoop low, swooping, swooping flight, swoop about, swoop past
  also    swoop through the air, swoop over the water, swoop overhead, swoop around, swoop along
  also    swoop across the garden, swoop from tree to tree, swoop across, swoop and dive
  means   comes down and up again in a curve

flight swoop-up-to-perch
  also    sweep up to a perch, swoop up to a perch, swing up to a perch, swoop up to land
  also    sweep up to land, glide up to a perch, fly low then swoop up to a perch, swoop up into a tree
  also    sweep up into a tree, fly low and sweep up to a perch, swoop up to its perch
  also    sweep up to perch, swoop up on to a perch, fly low and swoop up to a perch
  also    swing up into a tree, swept up to a perch, swung up to a perch, swept up to land
  also    swept up into a tree, swept up to perch, swung up into a tree
  means   flies low and rises to its perch at the end

flight tight-flock-flight
  also    fly in tight flocks, fly in a tight flock, tight flock, fly in dense flocks
  also    fly in a dense flock, tight flocks, fly in bunches, fly in a tight bunch
  also    fly in close formation, fly in tight formation, fly as one, fly in compact flocks
  also    tightly packed flock, dense flock, dense flocks, fly in a compact flock, flew in tight flocks
  also    flew in a tight flock, flew in dense flocks, flew in a dense flock, flew in bunches
  also    flew in a tight bunch, flew in close formation
  also    tight twisting flocks, in tight twisting flocks, tight fast flocks, twisting flocks
  also    fly in large dense flocks, fly in screaming parties, flew in large dense flocks
  means   flock keeps close and turns together

flight treetop-height-flight
  also    fly at treetop height, fly just above the trees, fly above the treetops, fly over the treetops
  also    at treetop height, treetop height, fly low over the trees, fly at rooftop height
  also    fly just over the roofs, fly at roof height, skim the treetops, skim the rooftops
  also    fly at tree height, fly at head height, fly at mid height, flew at treetop height
  also    flew just above the trees, flew above the treetops, flew over the treetops
  also    flew low over the trees, flew at rooftop height, flew just over the roofs
  means   near the height of the trees or roofs

flight undulating
  also    undulating flight, fly in undulations, undulate, fly up and down, up and down flight
  also    wavy flight, rise and fall in flight, looping flight, deep undulating flight
  also    deeply undulating, roller coaster, dipping flight, undulating wingbeats, dip in flight
  also    dip up and down in flight, undulation, flew in undulations, rose and fall in flight
  also    slightly undulating, gently undulating, undulating over long distances, undulating on long flights
  also    shallow undulations
  means   rises and falls in a wavy line

flight weak-flight
  also    fly weakly, feeble flight, weak flier, weak flyer, weak flying, feeble wingbeats
  also    weak wingbeats, weak in flight, look weak in flight, weak fluttering flight
  also    weak fluttery flight, fly feebly, feeble flier, poor flier, fly poorly, poor flyer
  also    flew weakly, flew feebly, flew poorly
  means   seems hardly able to fly

flight whirring
  also    whirring flight, whirring wings, whirring wingbeats, fly with whirring wings
  also    fly like a wind up toy, fly like a bee, bee like flight, buzzy flight, buzzing flight
  also    bumblebee like flight, wings a blur, blurred wings, wings whirring, blur of wings
  also    wings beat so fast they blur, on whirring wings, flew with whirring wings
  also    flew like a wind up toy, flew like a bee
  means   beats so fast that the wings blur

flight wing-lift-pause
  also    shut its wings between flaps, wings closed between flaps, close its wings between beats
  also    fold its wings between flaps, fold its wings between beats, close its wings between flaps
  also    wings folded between beats, wings closed between beats, fly with closed wing pauses
  also    short closed wing glides, wings shut between flaps, wings folded between flaps
  also    close its wings in flight, fold its wings in flight, wings folded between bursts
  also    wings shut between beats, flew with closed wing pauses
  means   shuts the wings for a moment between beats
