# The numbers of the matching model, each with its reason. Own estimates unless a source is named.

weight colour-spread
  value 15
  means names reach over about this CIEDE2000 distance: rusty and orange are 20 to 25 apart; fitted as temper-fall was

weight colour-slip
  value 0.06
  means light, memory and wrong parts put any colour on any part now and then

weight salience
  value 0.05
  means a small bright patch is named a little more readily than its size; fitted as temper-fall was

weight marking-colour
  value 0.45
  means streaks and edges are named less often than the ground they lie on

weight step-down
  value 0.6
  means "underparts white" says most, not all, of the belly

weight hit
  value 0.6
  means three of five watchers use the account's word, or one like it

weight miss
  value 0.2
  means watchers use other words than the account now and then

weight contrary
  value 0.1
  means long is seldom said of what is short

weight silent
  value 0.25
  means an account does not say everything

weight size-spread
  value 0.55
  means alone in a tree, a bird is judged up to half again too big or too small

weight size-slip
  value 0.06
  means now and then a size is quite wrong

weight hedged
  value 0.5
  means what is doubted counts half

weight absent
  value 0.8
  means what was looked for and not found may have been hidden

weight temper
  value 2
  means a single trait, well said, counts for a little more than its likelihood alone

weight temper-fall
  value 0.3
  means traits of one note go together: of many, each counts for less. Fitted on labelled descriptions of 100 kinds

weight most-for
  value 3
  means no single trait may settle it

weight most-against
  value 2.5
  means one mistake must not rule a bird out

weight none-of-these
  value 0.04
  means about one bird in 25 asked about is on no list

weight other-region
  value 0.02
  means strays happen

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

contrary length
  aspect  length
  values  long, longer-than-head, much-longer-than-head
  against short, shorter-than-head
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
  values  short, shorter-than-head
  degree  0.8
  means   short by any measure

enquiry colour
  text    What colour {be} the {area}
  either  {Be} the {area} {a} or {b}
  means   asks for a colour

enquiry pattern
  text    How {be} the {area} marked
  either  {Be} the {area} {a} or {b}
  means   asks for a pattern

enquiry shape
  text    What shape {be} the {area}
  either  {Be} the {area} {a} or {b}
  means   asks for a shape

enquiry length
  text    How long {be} the {area} for the bird
  either  {Be} the {area} {a} or {b}
  means   asks for a length

enquiry mark
  text    Does it show the {area}
  either  Does it show the {area}
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
