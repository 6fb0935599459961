# How a bird holds itself.

posture across-branch
  also    perch across a branch, sit across the branch, sit across a branch, perch crosswise
  also    sit crosswise, perch crossways, sat across the branch, sat across a branch, sat crosswise
  means   body at right angles to the branch

posture alert-pose
  also    alert, sit alert, stand alert, alert posture, alert stance, on the alert, look alert
  also    wide awake, sat alert, stood alert
  means   neck up, feathers sleek, watching

posture along-branch
  also    perch along a branch, lie along a branch, sit along a branch, sit lengthwise, perch lengthwise
  also    lie along the branch, sit lengthways, perch lengthways, lie lengthwise on a branch
  also    perch lengthwise on a branch, sit lengthwise on a branch, rest along a branch
  also    perch along the branch, lay along a branch, lying along a branch, sat along a branch
  also    sat lengthwise, lay along the branch, lying along the branch, sat lengthways
  means   body in line with the branch and close to it

posture arched-back
  also    back arched, stand with arched back, arch the back, arch its back, round backed
  also    stand with its back arched, sit with arched back, stood with arched back
  also    stood with its back arched, sat with arched back
  means   the line of the back curves up

posture back-leaning
  also    lean backwards, lean back, leaning backwards, stand leaning back, sit leaning back, lean away
  also    tilt backwards, leant backwards, leant back, stood leaning back, sat leaning back, leant away
  means   body tipped to the rear

posture bolt-upright
  also    ramrod straight, stand bolt upright, sit bolt upright, very upright, stand very upright
  also    sit very upright, perch bolt upright, perch very upright, ramrod, bolt upright stance
  also    stand straight as a post, stiffly upright, straight as a post, extremely upright
  also    really upright, stood bolt upright, sat bolt upright, stood very upright, sat very upright
  also    stood straight as a post
  means   straight up and down

posture breast-low
  also    lean breast down, front end low, breast to the ground, tip the breast down, head down tail up
  also    head down and tail up, tail up head down, bend down to the ground, lean down, bent over
  also    bend over, bending over, leant breast down, bent down to the ground, leant down
  means   fore part held lower than the rear

posture clinging-sideways
  also    cling sideways, perch sideways, sideways on a stem, cling sideways to a stem
  also    perch sideways on a stem, perch sideways on reeds, cling sideways to reeds
  also    sit sideways on a stem, sideways on reeds, straddle two stems, cling to a vertical stem
  also    hold on sideways, feet on two stems, do the splits, doing the splits, clung sideways
  also    clung sideways to a stem, clung sideways to reeds, sat sideways on a stem
  also    clung to a vertical stem, held on sideways, did the splits
  means   grips an upright stem from the side

posture clinging-vertically
  also    cling upright, cling vertically, cling upright to a trunk, vertical on a trunk
  also    hang vertically, vertical on trunk, cling vertically to the trunk, pressed against the trunk
  also    flat against the trunk, flat against the bark, close to the trunk, hug the trunk
  also    press itself to the trunk, cling close to the trunk, clung upright, clung vertically
  also    clung upright to a trunk, hung vertically, clung vertically to the trunk
  also    clung close to the trunk
  means   flat to an upright surface with head up

posture compact-pose
  also    round as a ball, like a fluffy ball, like a ball of fluff, look like a ball, curl into a ball
  also    sit like a ball, shaped like a ball, like a cotton ball, like a little ball
  also    like a tennis ball, like a golf ball, round like a ball, sat like a ball
  means   feathers and limbs drawn into a ball

posture crouched
  also    crouch, crouch low, crouch down, crouching posture, crouching stance, crouch on the ground
  also    crouched posture, crouched stance, crouch close to the ground, crouched on the ground
  also    crouch low to the ground, crouched low, stoop down, hunker down, hunkered, hunkered down
  means   body low on bent legs

posture diagonal-pose
  also    perch diagonally, sit at an angle, stand at an angle, perch at an angle, half upright
  also    semi upright, fairly upright, diagonal posture, diagonal stance, slanting posture
  also    slanted posture, sloping posture, slanting stance, quite upright, rather upright
  also    angled posture, sat at an angle, stood at an angle
  means   body between level and upright

posture facing-wind
  also    face into the wind, face the wind, facing into the wind, all facing into the wind
  also    stand facing the wind, sit facing the wind, head to wind, stand head to wind
  also    stood facing the wind, sat facing the wind, stood head to wind
  means   body turned to meet the wind

posture feathers-sleeked
  also    sleek pose, sleek posture, hold feathers tight, tight feathered, feathers held tight
  also    feathers pressed flat, flatten its feathers, sleeked down, sleek down, plumage held tight
  also    make itself thin, make itself tall and thin, sit tall and thin, held feathers tight
  also    made itself thin
  means   plumage pressed close so the bird seems thin

posture fluffed-up
  also    puffs up, puffing up, puffed up against the cold, look fluffy, fluff up
  also    fluff out its feathers, puff up its feathers, feathers fluffed, feathers puffed
  also    feathers fluffed up, feathers fluffed out, feathers puffed out, feathers puffed up
  also    puff itself up, fluff itself up, floofed
  means   feathers held loose, so the bird seems larger

posture forward-leaning
  also    lean forward, leaning forward, leaning forwards, lean forwards, tilt forward, tilted forward
  also    tilted forwards, sit leaning forward, stand leaning forward, perch leaning forward
  also    forward leaning posture, lean into the wind, bend forward, bent forward, stoop forward
  also    forward tilt, leant forward, leant forwards, sat leaning forward, stood leaning forward
  also    leant into the wind
  means   body tipped to the front

posture half-crouched
  also    crouch slightly, half crouch, slightly crouched, stand with bent legs, on bent legs
  also    bent legged, walk with bent legs, creeping posture, with bent legs, semi crouched
  also    stood with bent legs
  means   legs a little bent, body low

posture head-sunk
  also    head sunk in shoulders, head sunk into shoulders, neck drawn in, head hunched into shoulders
  also    sink its head, neck pulled in, pull its head in, head pulled in, neck sunk
  also    head tucked into shoulders, no neck showing, neck retracted, draw in its neck
  also    pull in its neck, tuck in its neck, head between shoulders, sank its head, drew in its neck
  means   head down between the shoulders

posture head-tucked
  also    bill tucked in, bill under wing, head under wing, head tucked under wing
  also    tuck its head under its wing, tuck its bill in, head tucked back, bill tucked into feathers
  also    bill tucked under wing, head resting on back, rest its head on its back, bill tucked into back
  also    head turned back, bill tucked in its back, bill buried in feathers, head on its back
  means   bill pushed into the feathers of back or wing

posture high-on-water
  also    swim high in the water, sit high in the water, ride high in the water, float high
  also    high in the water, ride high on the water, sit high on the water, swim high on the water
  also    buoyant on the water, high in water, swims high, ride high, float buoyantly, swim buoyantly
  also    buoyant swimmer, buoyant in the water, swam high in the water, sat high in the water
  also    sat high on the water, swam high on the water, swam buoyantly
  means   much of the body above the waterline

posture horizontal
  also    level posture, horizontal posture, horizontal stance, hold its body level
  also    hold its body horizontal, horizontal pose, stand horizontally, perch horizontally
  also    sit horizontally, horizontal carriage, level stance, body held level, body held horizontally
  also    body held horizontal, body level, body horizontal, held its body level
  also    held its body horizontal, stood horizontally, sat horizontally
  means   body level with the ground

posture hunched
  also    hunch, hunched up, hunched over, hunched posture, hunched stance, hunched shoulders
  also    sit hunched, stand hunched, sit hunched up, stand hunched up, perch hunched
  also    hunch its shoulders, hunched pose, slouch, slouched, slump, slumped, sat hunched
  also    stood hunched, sat hunched up, stood hunched up
  means   head low between raised shoulders

posture long-legged-stance
  also    stand tall on long legs, high on its legs, stilted, walk on stilts, stand on stilts
  also    high stepping, leggy stance, high stepping gait, stand high on its legs, as if on stilts
  also    step high, like it was on stilts, walk with high steps, stand high, stilted gait
  also    stood tall on long legs, stood on stilts, stood high on its legs, stood high
  means   body carried well clear of the ground

posture low-in-water
  also    swim low in the water, sit low in the water, low in the water, ride low in the water, ride low
  also    float low, sit low on the water, body awash, body half submerged, half submerged
  also    partly submerged, only head and neck showing, only head and neck above water, swim low
  also    swim half submerged, half under the water, swam low in the water, sat low in the water
  also    sat low on the water, swam low, swam half submerged
  means   little of the body above the waterline

posture neck-kinked
  also    neck in an s, neck in an s shape, s curved neck, neck held in an s, kinked neck
  also    hold its neck in an s, hold its neck in an s shape, bend its neck, neck curved back
  also    neck bent back, neck coiled, coiled neck, neck curved in an s, neck folded in an s
  also    s bend in neck, held its neck in an s, held its neck in an s shape, bent its neck
  means   neck held in a curve

posture neck-stretched-up
  also    stretch its neck up, neck stretched, neck outstretched, neck extended, neck held straight
  also    stretch its neck, crane its neck, neck stretched upwards, neck held upright
  also    hold its neck straight, hold its neck upright, hold its neck erect, neck held erect
  also    neck held high, stand with neck stretched, periscope, held its neck straight
  also    held its neck upright, held its neck erect, stood with neck stretched
  means   neck straight and at full length

posture on-one-leg
  also    stand on one leg, stand on one foot, perch on one leg, rest on one leg, one leg tucked up
  also    one leg raised, one foot tucked up, standing on one leg, one leg tucked in, one leg up
  also    with one leg tucked up, balance on one leg, hop on one leg, sleep on one leg, with one foot up
  also    one legged stance, stood on one leg, stood on one foot, slept on one leg
  means   one leg drawn up in the feathers

posture pressed-flat
  also    flatten itself, press itself flat, lie flat on the ground, flatten itself on the ground
  also    flattened on the ground, flat on the ground, press flat to the ground, pressed to the ground
  also    pressed flat to the ground, flat to the ground, hug the ground, lie low, squash down
  also    flatten down, press itself to the ground, flattened posture, lay flat on the ground
  also    lying flat on the ground, lay low, lying low
  means   body hard down on the ground

posture proud-chested
  also    stick out its chest, with its chest out, chest puffed out, breast puffed out
  also    push out its chest, puff out its chest, puff out its breast, chest thrust out
  also    breast thrust out, proud posture, proud stance, puffed out chest, thrust out its breast
  also    stand proud, stand proudly, chest puffed up, stuck out its chest, stood proud, stood proudly
  means   breast pushed forward and out

posture relaxed-pose
  also    relaxed, look relaxed, relaxed posture, sit relaxed, at ease, at rest on its perch
  also    relaxed stance, resting posture, resting pose, sat relaxed
  means   at ease, feathers loose, neck down

posture rigid-pose
  also    like a statue, statue still, rigid posture, rigid stance, sit like a statue, stiff posture
  also    stiff stance, perch like a statue, rigid as a post, still as a statue, like a stick
  also    look like a stick, look like a broken branch, like a broken branch
  also    look like part of the branch, look like a stump, sat like a statue
  means   holds itself stiff and still

posture sitting-on-ground
  also    sit on the ground, sat down, sit in the grass, sitting on its belly, sit on its belly
  also    belly on the ground, sit on its feet, rest on its belly, sit on the sand, sit in the sand
  also    sit on the path, sit on the road, rest on its heels, sit back on its heels, sit on its heels
  also    sit on its haunches, sat on the ground, sat in the grass, sat on its belly, sat on its feet
  also    sat on the sand, sat in the sand, sat on the path
  means   body down on folded legs

posture sky-pointing
  also    point its bill at the sky, bill pointed skyward, bill pointing to the sky, bill to the sky
  also    bill pointed at the sky, bill pointing straight up, point the bill skyward
  also    bill pointed skywards, bill pointing skywards, bill pointing skyward, sky point
  also    point to the sky, bill held vertically, bill pointing at the sky
  also    stretch its neck up to the sky, head thrown back
  means   bill straight up, as a hiding heron or a showing gannet

posture sprawled
  also    spread out on the ground, sprawl, sprawled on the ground, sprawl on the ground, legs splayed
  also    spread eagled, sprawled out, sprawl out, spread eagle, splayed legs, sitting with legs splayed
  also    lie sprawled, lie spread out, wings and tail spread on the ground, wings spread on the ground
  also    lay sprawled, lying sprawled, lay spread out, lying spread out
  means   body down with limbs out

posture squat-pose
  also    squatting, squat down, squat on its haunches, squat posture, squat stance, squat on a branch
  also    squat low, dumpy pose, short legged stance, squatting on the ground, squat appearance
  also    sit low on the branch, sits low on its perch, belly touching the branch
  also    short legs hidden by feathers, sit low on its perch, sat low on the branch
  also    sat low on its perch
  also    stand low, stand low on rocks, stand low on its legs
  means   sits low with legs hidden

posture stretched-tall
  also    stand tall, stretched up, stretched up tall, stretch up tall, stretch up, sit tall
  also    stretch itself up, stretch tall, stand on tiptoe, on tiptoe, stand up tall, stand straight up
  also    tall posture, tall stance, on tiptoes, stretched up high, stood tall, sat tall
  also    stood on tiptoe, stood up tall, stood straight up
  means   drawn up to full height

posture tipped-tail-high
  also    rear end up, tail end high, rear held high, back end up, tail end up, back end high
  also    tail high body tipped forward, stern high, stern high on the water, tail end high on the water
  also    rear end high, tail end held high, bottom in the air, hindquarters raised
  also    body tipped up at the back
  means   rear of the body higher than the front

posture upright
  also    upright posture, upright stance, sit upright, stand upright, perch upright, upright pose
  also    upright carriage, hold itself upright, erect posture, erect stance, sit erect, stand erect
  also    stands up straight, perched upright, body held upright, vertical posture, sat upright
  also    stood upright, held itself upright, sat erect, stood erect
  means   body near the vertical

posture upside-down
  also    hang head down, upside down posture, hang with its head down, body upside down
  also    upside down pose, hung head down, hung with its head down
  means   body hanging with the back downwards

posture wide-legged-stance
  also    stand with legs apart, feet wide apart, legs wide apart, bow legged, straddle legged
  also    stand with its legs wide apart, bandy legged, legs akimbo, wide stance, wide legged
  also    stood with legs apart, stood with its legs wide apart
  also    with legs apart, legs apart, feet apart
  means   feet set well apart
