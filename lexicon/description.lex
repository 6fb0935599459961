# The marks of a full description, in the order in which they are reported: the
# bill first, since notes leave it out most often. `areas` and `aspects` say
# which traits record the mark (`any` for all); `why` is one line on what it is good for; `look` what to
# look for next time. Common practice in the field.

description bill-shape
  title   bill shape
  areas   bill
  aspects shape, length, size
  why     tells what it eats, and so its family: most notes leave it out
  look    is the bill thick or thin, long or short, straight, hooked or curved

description bill-colour
  title   bill colour
  areas   bill
  aspects colour, pattern
  why     often parts look-alikes, and ages within a species
  look    what colour is the bill, and is it the same above, below and at the base

description size
  title   size
  areas   bird
  aspects size
  why     narrows the field more than any colour; judge it against a bird you know
  look    compare it with a sparrow, a thrush or a crow nearby

description build
  title   build
  areas   bird
  aspects build, shape, posture
  why     slim or stocky, upright or level: it stays the same in any light
  look    is it slim or stocky, big-headed or small-headed, upright or level

description head
  title   head pattern
  areas   head, crown, nape, face, throat
  aspects colour, pattern, mark, shape
  why     stripes, rings and caps are where most species differ
  look    go over crown, the stripe above the eye, cheek and throat in turn

description upperparts
  title   upperparts
  areas   upperparts, hindneck
  aspects colour, pattern
  why     plain or streaked, and is the rump different
  look    is the back plain or streaked, and does the rump stand out

description underparts
  title   underparts
  areas   underparts, foreneck, collar
  aspects colour, pattern, mark
  why     where a colour stops matters as much as the colour
  look    where do breast, belly, flanks and undertail differ

description wings
  title   wings
  areas   wing, underwing
  aspects colour, pattern, mark, length, shape, count
  why     bars, panels and tips part many small birds
  look    are there bars across the wing, and how many

description tail
  title   tail
  areas   tail
  aspects colour, pattern, mark, length, shape, count
  why     length, fork and white edges show in flight
  look    is the tail long or short, notched or square, with white at the edges

description legs
  title   legs and feet
  areas   legs, feet
  aspects colour, pattern, length, shape, size
  why     length and colour part waders, gulls and many small birds
  look    what colour are the legs, and are they long for the bird

description eye
  title   eye
  areas   iris, eye-ring, eye-crescent, orbital-ring
  aspects colour, mark, size, shape
  why     a pale eye or a ring round it can settle it
  look    is the eye dark or pale, is there a ring round it

description movement
  title   movement
  areas   bird, tail, wing, head, crest
  aspects behaviour, flight
  why     how it moves and feeds often names the family
  look    does it walk or hop, bob its tail, creep, hover or dive

description voice
  title   voice
  areas   bird
  aspects voice
  why     for some look-alikes it is the only safe mark
  look    write the call down as you hear it

description habitat
  title   place
  areas   bird
  aspects habitat
  why     narrows what to expect, and is part of any record
  look    note what it was in or on, and what was around
