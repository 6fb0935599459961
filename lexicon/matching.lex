# The numbers of the matching model, each with its reason. Own estimates unless a source is named; "fitted"
# means tuned on the sentences named in fitted.lex, for all kinds together, and rounded.

weight colour-spread
  value 15
  means names reach over about this CIEDE2000 distance: rusty and orange are 20 to 25 apart

weight common-names
  value 0.7
  means "brown" is said of much that has a finer name

weight rare-name
  value 0.0001
  means a name such as tawny is one in ten thousand

weight colour-slip
  value 0.08
  means light, memory and wrong parts put any colour on any part now and then

weight unsaid
  value 0.016
  means accounts speak of nearly every part, so an average bird fills few gaps; fitted

weight denied-colour
  value 0.3
  means a colour the account denies is still seen now and then, in odd light

weight marking-colour
  value 0.45
  means streaks and edges are named less often than the ground they lie on

weight whole
  value 0.5
  means "underparts white" says most, not all, of the belly

weight step-down
  value 0.6
  means a statement about a greater whole says less of a part

weight whole-bird
  value 0.03
  means "overall brown and white" says little of the belly alone, and accounts state the parts; own estimate

weight beside
  value 0.04
  means people mistake a part for its neighbour now and then

weight elsewhere
  value 0.006
  means and seldom for one far off

weight striking-colour
  value 0.3
  means red and yellow are spoken of a third more often than grey; fitted

weight striking-white
  value 0.3
  means white patches catch the eye; fitted

weight striking-black
  value 0.2
  means so do black ones; fitted

weight unspoken
  value 1
  means what nobody speaks of is weak evidence that there is nothing to speak of; fitted

weight colours-said
  value 2.9
  means colours in a sentence; measured on the same sentences

weight marking-silent
  value 0.25
  means accounts do not speak of every bar and ring; fitted

weight marking-denied
  value 0.18
  means people see a bar where the account says there is none; fitted

weight tone-slip
  value 0.25
  means dark and pale are said against the background and the light

weight hit
  value 0.67
  means two of three watchers use the account's word, or one like it; fitted

weight miss
  value 0.31
  means watchers use other words than the account; fitted

weight contrary
  value 0.15
  means long is seldom said of what is short; fitted

weight silent
  value 0.2
  means an account does not say everything; fitted

weight gauge-slip
  value 0.02
  means a clearly short bill is hardly ever called long; fitted

weight size-spread
  value 0.55
  means alone in a tree, a bird is judged up to half again too big or too small

weight size-slip
  value 0.03
  means now and then a size is quite wrong; fitted

weight size-by-kind
  value 0.5
  means "a small gull" is small for a gull to one watcher and small for a bird to another; own estimate

weight sex-right
  value 0.9
  means a stated sex or age is nearly always right

weight sex-untold
  value 0.6
  means where the sexes look alike nobody can tell

weight sex-wrong
  value 0.15
  means dull males are taken for females

weight hedged
  value 0.6
  means what is doubted counts a little over half

weight absent
  value 0.8
  means what was looked for and not found may have been hidden

weight repeated
  value 0.3
  means several words for one property of one part repeat each other; fitted

weight kind-cousin
  value 0.2
  means a tern is called a gull about once for five gulls that are; own estimate, as the others of kinds

weight kind-taken-for
  value 0.1
  means what looks like the kind is called so by beginners: a grebe a duck, a bunting a sparrow

weight kind-stranger
  value 0.015
  means and now and then anything is

weight kind-likened
  value 0.4
  means what is like a wren is often none, yet small and brown as one

weight kind-denied
  value 0.6
  means "not a gull" is said because it looks like one, and now and then of one

weight temper
  value 1.82
  means a single trait, well said, counts for a little more than its likelihood alone; fitted

weight temper-fall
  value 0.37
  means traits of one bird go together: of many, each counts for less; fitted

weight most-for
  value 3.5
  means no single trait may settle it

weight most-against
  value 3
  means one mistake must not rule a bird out

weight none-of-these
  value 0.04
  means about one bird in 25 asked about is on no list

weight off-list
  value 0.5
  means of birds on no list every other one has an account all the same; own estimate

weight unlike
  value 0.2
  means a bird without an account differs from the one it is most like in every fifth mark; fitted by leaving out accounts

weight else-seen
  value 0.3
  means parts that no list of parts looked at has are small, hidden, or named by experts alone

weight other-region
  value 0.02
  means strays happen

weight told-region
  value 0.2
  means "of North America" says where the kind lives; some live in both worlds, and accounts tell of two lands only

weight other-month
  value 0.02
  means birds linger

# Aspects with so many words that an account can't hold all, and any one of them is seldom said of a bird
# whose account does not have it: the chance of that, where a word it has gets `hit`. Own estimates.

weight whole-reach
  value 1
  means "all black" is said of what is black all over: the share of it counts once more; own estimate

weight marking-ground
  value 0.5
  means "black stripes" are sought among markings, yet dark ground between pale marks is called so too; own estimate

# How much of a part is meant: `whole` is said of all of it, so that the colour is its ground.
reach whole
  words all, entirely, mostly, nearly-all, overall, uniformly, covered, extensive, unbroken, three-quarters
  means of the whole part

# What may tell how readily a part or property is spoken of; fitting weighs it in `mention` entries. Of shapes and
# builds a word is spoken where it fits, which accounts tell better.
mention-by looks
  aspects colour, pattern, size, length
  by like bird, like breast, like back, like head, belly like back, head like back
  by strong, lightest, darkest, strong bird, darkest bird, mixed bird
  by mass, far-mass, bill, bill-depth, tail, tarsus, wing
  means what stands out against the rest is named, and what is big for the bird

# The same for one colour of a part, beyond how readily the part is spoken of.
mention-by colours
  aspects colour
  by called bird, called belly, called breast, called wing, called back, called head, called crown
  by called tail, called throat
  means who calls a bird white looks at some parts more than at others

silence behaviour
  value 0.06
  means most birds do most things now and then, but few climb down head first

silence flight
  value 0.12
  means ways of flying are told by few words, and each is said of many birds

silence voice
  value 0.12
  means sounds are heard in many ways

silence habitat
  value 0.25
  means birds turn up everywhere

silence posture
  value 0.12
  means every bird stands upright at times

# Proportions: each measure over the cube root of the mass, in logarithms; the centre is where half of all
# watchers use the word. Measures are AVONET's, as in the accounts. Those of the length
# and size of bills are fitted; the others are own estimates.

gauge long-bill
  areas    bill
  aspect   length
  values   long
  measures bill 1
  centre   2.14
  slope    4
  means    a bill is long from about that of a kingbird on

gauge short-bill
  areas    bill
  aspect   length
  values   short
  measures bill 1
  centre   2
  slope    -8
  means    a bill is short below about that of a jay

gauge bill-over-head
  areas        bill
  aspect       length
  values       longer-than-head, much-longer-than-head
  measures     bill 1
  centre       2.1
  slope        5
  beside-words yes
  means        the length of the head is not published, so the account's word counts beside the measure

gauge bill-under-head
  areas        bill
  aspect       length
  values       shorter-than-head, much-shorter-than-head
  measures     bill 1
  centre       1.95
  slope        -5
  beside-words yes
  means        the same

gauge small-bill
  areas    bill
  aspect   size
  values   small, tiny, very-small, medium-small, undersized
  measures bill 1, bill-depth 0.87
  centre   2.77
  slope    -4
  means    length and depth together

gauge large-bill
  areas    bill
  aspect   size
  values   large, huge, very-large, outsized, medium-large, massive
  measures bill 1, bill-depth 0.87
  centre   3.25
  slope    4
  means    length and depth together

gauge thin-bill
  areas        bill
  aspect       shape
  values       thin, slender, narrow, fine, slim, needle-like, delicate
  measures     bill 1, bill-depth -1
  centre       1.3
  slope        3.5
  beside-words yes
  means        long for its depth

gauge thick-bill
  areas        bill
  aspect       shape
  values       thick, stout, heavy, stubby, chunky, deep, broad, conical, triangular, bulbous
  measures     bill 1, bill-depth -1
  centre       1
  slope        -3.5
  beside-words yes
  means        deep for its length

gauge long-tail
  areas    tail
  aspect   length
  values   long
  measures tail 1
  centre   3.4
  slope    5
  beside-words yes
  means    a tail is long from about that of a mockingbird on

gauge short-tail
  areas    tail
  aspect   length
  values   short
  measures tail 1
  centre   2.8
  slope    -4
  beside-words yes
  means    a tail is short below about that of a woodpecker

gauge long-legs
  areas    legs, feet
  aspect   length
  values   long
  measures tarsus 1
  centre   2.3
  slope    4
  beside-words yes
  means    legs are long from about those of a plover on

gauge short-legs
  areas    legs, feet
  aspect   length
  values   short
  measures tarsus 1
  centre   1.7
  slope    -4
  beside-words yes
  means    legs are short below about those of a woodpecker

gauge long-wings
  areas    wing
  aspect   length
  values   long
  measures wing 1
  centre   3.6
  slope    4
  beside-words yes
  means    wings are long from about those of a tern on

gauge short-wings
  areas    wing
  aspect   length
  values   short
  measures wing 1
  centre   3.3
  slope    -4
  beside-words yes
  means    wings are short below about those of a sparrow

# Words for size that compare with nothing: the mass in grams at which half would use it (for `about`: at
# which most do), and how gradually that changes, as a logarithm. Small and
# medium are fitted, the others own estimates.

size-word tiny
  grams  13
  spread 0.9
  side   below
  means  hummingbirds and the smallest songbirds

size-word small
  grams  30
  spread 1
  side   below
  means  most songbirds

size-word medium-small
  grams  37
  spread 0.9
  side   about
  means  sparrows to thrushes

size-word medium
  grams  245
  spread 1.6
  side   about
  means  jays to crows

size-word medium-large
  grams  400
  spread 1.3
  side   about
  means  pigeons to ducks

size-word large
  grams  500
  spread 1
  side   above
  means  crows and gulls upward

size-word huge
  grams  3000
  spread 1
  side   above
  means  geese and eagles upward

likeness lengthwise
  aspect  pattern
  values  streaked, striped, lined, flecked
  degree  0.6
  means   lines along the feathers

likeness crosswise
  aspect  pattern
  values  barred, banded, striped, vermiculated, wavy-barred, laddered
  degree  0.6
  means   lines across

likeness dotted
  aspect  pattern
  values  spotted, speckled, dotted, flecked, peppered, freckled, stippled, spangled, blotched
  degree  0.7
  means   small marks

likeness blotchy
  aspect  pattern
  values  mottled, speckled, flecked, patchy, marbled, dappled, blotched, spotted, streaked, scaly, camouflaged
  degree  0.5
  means   uneven marks

likeness scaled
  aspect  pattern
  values  scaly, scalloped, laced, barred, edged
  degree  0.6
  means   edges like scales

likeness even
  aspect  pattern
  values  plain, one-coloured, unstreaked, unbarred, unspotted
  degree  0.8
  means   no marks

likeness many-coloured
  aspect  pattern
  values  multicoloured, pied, two-toned, tricoloured, contrasting, patterned
  degree  0.4
  means   several colours

likeness sharp-ended
  aspect  shape
  values  pointed, dagger-like, needle-like, tapered, spiky, fine, slender, thin
  degree  0.55
  means   comes to a point

likeness pointed-bills
  aspect  shape
  values  pointed, straight, conical, triangular, needle-like, dagger-like, slender, thin, fine, chisel-like, tapered, narrow
  degree  0.8
  means   every bill but a hooked or flat one comes to a point, and "pointed" is the word most used of bills

likeness thin
  aspect  shape
  values  thin, slender, fine, narrow, needle-like, delicate, slim
  degree  0.75
  means   of little depth

likeness thick
  aspect  shape
  values  thick, stout, deep, heavy, robust, broad, chunky, bulbous, powerful, stubby
  degree  0.65
  means   of much depth

likeness wedge
  aspect  shape
  values  conical, triangular, thick, stout, stubby, chunky
  degree  0.55
  means   like a cone

likeness bent-down
  aspect  shape
  values  decurved, curved, hooked, drooping, bent
  degree  0.55
  means   bent down

likeness forked
  aspect  shape
  values  forked, deeply-forked, notched, cleft, emarginated, streaming
  degree  0.6
  means   longest at the sides

likeness round
  aspect  shape
  values  rounded, graduated, fan-shaped, domed, oval
  degree  0.5
  means   round ended

likeness plump
  aspect  shape
  values  plump, rounded, chunky, rotund, stocky, stout, dumpy, robust, bulky, portly, pot-bellied, full, tubby
  degree  0.7
  means   round in the body

likeness slim
  aspect  shape
  values  slender, slim, sleek, thin, elongated, lanky, streamlined, graceful, slender-bodied, long-bodied
  degree  0.7
  means   slim in the body

likeness crested
  aspect  shape
  values  tufted, spiky, shaggy, peaked, bushy, crested
  degree  0.5
  means   feathers that stand up

likeness big
  aspect  size
  values  large, huge, very-large, outsized, medium-large, massive
  degree  0.7
  means   big

likeness little
  aspect  size
  values  small, tiny, very-small, medium-small, undersized
  degree  0.7
  means   little

likeness tail-dipping
  aspect  behaviour
  values  dip, pump, bob, wag, raise-and-dip-slowly, depress
  degree  0.75
  means   the tail goes down and up again

likeness tail-flicking
  aspect  behaviour
  values  flick, jerk, twitch, flirt, snap
  degree  0.75
  means   the tail moves at once and fast

likeness tail-spreading
  aspect  behaviour
  values  fan, spread, flash-open, flare-open, open-and-shut
  degree  0.75
  means   the tail is opened out

contrary length
  aspect  length
  values  long, longer-than-head, much-longer-than-head
  against short, shorter-than-head, much-shorter-than-head
  means   long against short

contrary depth
  aspect  shape
  values  thick, stout, heavy, deep, conical, stubby, broad, bulky
  against thin, slender, fine, needle-like, narrow
  means   thick against thin

contrary course
  aspect  shape
  values  straight
  against decurved, curved, upturned, hooked
  means   straight against bent

contrary points
  aspect  shape
  values  pointed, needle-like, dagger-like
  against spatulate, blunt, flat
  means   a point against a flat or blunt end

contrary marks
  aspect  pattern
  values  plain, unstreaked, one-coloured
  against streaked, barred, spotted, striped, mottled, scaly, speckled
  means   plain against marked

contrary bulk
  aspect  size
  values  large, huge
  against small, tiny
  means   big against small

likeness lengths
  aspect  length
  values  long, longer-than-head, much-longer-than-head, as-long-as-head
  degree  0.8
  means   long by any measure

likeness shortness
  aspect  length
  values  short, shorter-than-head, much-shorter-than-head
  degree  0.8
  means   short by any measure

# How often a watcher who is asked to look at a part sees it well enough to answer. Own estimates.
looked-at parts
  seen  bill 1, crown 0.9, head 0.9, breast 1, belly 0.9, throat 0.9, wing-bar 1, supercilium 0.9, eye-ring 0.8
  seen  tail 0.8, legs 0.8, wing 0.8, back 0.8, face 0.8, crest 1, iris 0.7, eyestripe 0.8, flanks 0.7, collar 0.8
  seen  breast-band 1, breast-spot 0.9, neck 0.8, outer-tail 0.8, rump 0.6, forehead 0.6, cheek 0.7, nape 0.6
  seen  malar 0.5, moustachial 0.5, ear-coverts 0.5, lores 0.5, chin 0.5, mantle 0.5, wing-panel 0.6, speculum 0.7
  seen  tail-tip 0.6, tail-band 0.6, underwing 0.5, crown-stripe 0.8, feet 0.6, cere 0.4, facial-skin 0.6, wattle 0.8
  seen  upperparts 1, underparts 1, tail-streamer 0.9, plume 0.8, facial-disc 0.7, primary-tips 0.6, bill-ring 0.7
  means what is large, or catches the eye, or lies where people look: at the head and below

enquiry colour
  text    What colour {be} the {area}
  either  {Be} the {area} {a} or {b}
  means   asks for a colour

enquiry pattern
  else    plain
  text    How {be} the {area} marked
  either  {Be} the {area} {a} or {b}
  means   asks for a pattern

enquiry shape
  text    What shape {be} the {area}
  either  {Be} the {area} {a} or {b}
  means   asks for a shape

enquiry length
  text    How long {be} the {area} for the bird
  says    shorter-than-head shorter than the head, longer-than-head longer than the head
  says    much-longer-than-head much longer than the head, as-long-as-head as long as the head
  either  {Be} the {area} {a} or {b}
  means   asks for a length

enquiry mark
  text    Does it show {an area}
  either  Does it show {an area}
  means   asks for a marking

abundance abundant
  weight 4
  also   very common
  means  met on nearly every walk

abundance common
  weight 2
  means  met on most walks

abundance frequent
  weight 1
  also   fairly common
  means  met now and then

abundance scarce
  weight 0.4
  also   uncommon, local
  means  met a few times a year

abundance rare
  weight 0.1
  also   vagrant, accidental, very rare
  means  not met every year
