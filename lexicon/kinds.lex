# The kinds of words: what a term of each kind contributes to a trait, how its forms bend, and what
# becomes of a word of that kind that no rule has used (`aside`: set aside, with that reason; else it
# is reported as unplaced).

kind area
  slot    area
  heard-after colour, tone, pattern, length, shape
  inflect noun
  ed      area-ed
  mend    yes
  aside   part named, nothing said of it
  means   a part of the bird

kind area-ed
  slot    area
  aside   part named, nothing said of it
  means   a part as the end of a compound: crowned, bellied, billed

kind colour
  slot    value
  heard-before area, mark, suffix, colour
  aspect  colour
  inflect ish
  mend    yes
  means   a colour

kind tone
  heard-before area, colour
  slot    tone
  mend    yes
  means   how pale, dark or bright a colour is

kind pattern
  slot    value
  heard-before area
  aspect  pattern
  mend    yes
  means   a pattern, as an adjective: streaked

kind mark
  slot    value
  aspect  pattern
  inflect noun
  mend    yes
  means   a pattern, as a noun: streaks

kind extent
  slot    extent
  inflect noun
  aside   says how much, of nothing named
  means   how much of an area, and how clearly

kind position
  slot    position
  means   where within an area

kind side
  slot    position
  inflect noun
  means   a place within an area, as a noun: tip, edge, base

kind edged
  slot    position
  means   a place within an area, as the end of a compound: tipped, edged

kind shape
  heard-before area
  slot    value
  aspect  shape
  mend    yes
  means   a shape

kind length
  slot    value
  aspect  length
  inflect ish
  mend    yes
  means   long or short

kind size
  slot    value
  aspect  size
  inflect ish
  mend    yes
  means   a size in words

kind build
  slot    value
  aspect  build
  area    bird
  means   the build of the whole bird

kind posture
  mend    yes
  slot    value
  aspect  posture
  area    bird
  inflect verb
  means   how it holds itself

kind behaviour
  slot    value
  aspect  behaviour
  area    bird
  inflect verb
  means   what it does

kind motion
  slot    value
  aspect  behaviour
  inflect verb
  means   what it does with a part

kind flight
  mend    yes
  slot    value
  aspect  flight
  area    bird
  inflect verb
  means   how it flies

kind voice
  echoes  yes
  slot    value
  aspect  voice
  area    bird
  inflect verb
  means   what it sounds like

kind habitat
  free    yes
  slot    value
  aspect  habitat
  area    bird
  inflect noun
  means   where it was

kind sexage
  free    yes
  slot    value
  aspect  sex-age
  area    bird
  inflect noun
  means   sex, age, or state of plumage

kind viewing
  free    yes
  slot    value
  aspect  viewing
  area    bird
  means   how it was seen

kind yardstick
  slot    against
  inflect noun
  aside   bird named
  means   a bird that sizes are told by

kind species
  slot    against
  inflect noun
  aside   bird named
  means   a species by its name

kind group
  slot    against
  inflect noun
  aside   bird named
  means   a loose kind of bird

kind relation
  slot    relation
  means   how a size compares

kind number
  aside   number
  heard-before unit
  means   a number

kind unit
  slot    unit
  aside   ordinary word
  means   a unit of length or mass

kind negator
  polarity absent
  force   scope
  aside   denying word
  means   says that something is not there

kind unseen
  polarity unseen
  force   scope
  aside   says what could not be seen
  means   says that something could not be seen

kind hedge
  certainty hedged
  force   scope
  aside   doubting word
  means   says that the observer is not sure

kind det
  aside   joining word
  means   articles and the like

kind be
  aside   joining word
  means   forms of "be" and verbs like it

kind have
  aside   joining word
  means   forms of "have" and verbs like it

kind rel
  aside   joining word
  means   that, which

kind and
  aside   joining word
  means   and, &

kind or
  force   links
  aside   joining word
  means   or, nor

kind with
  aside   joining word
  means   with

kind on
  aside   joining word
  means   prepositions of place: on, at, in

kind of
  aside   joining word
  means   of

kind over
  slot    position
  aside   joining word
  means   above, over, under, behind, as places beside a part

kind to
  aside   joining word
  means   to, into, down to

kind from
  aside   joining word
  means   from

kind between
  aside   joining word
  means   between

kind than
  aside   joining word
  means   than

kind as
  aside   joining word
  means   as

kind like
  aside   joining word
  means   like, similar to

kind sized
  aside   joining word
  means   sized, the size of

kind but
  force   closes
  aside   joining word
  means   but, except

kind rest-of
  aside   joining word
  means   the rest, otherwise

kind hue
  aside   joining word
  means   words that add nothing to the colour before them: coloured, in colour

kind suffix
  aside   joining word
  means   words that add nothing to the part before them: feathers, area, in colour

kind aspect-word
  aside   joining word
  means   names what a property is of, and adds nothing to the part before it: tail shape, bill length

kind bird-word
  aside   joining word
  means   bird, as the one spoken of

kind degree
  skip    yes
  aside   ordinary word
  means   words of degree: very, quite, rather

kind filler
  skip    yes
  aside   filler
  means   sounds and words that fill a pause

kind ordinary
  ordinary yes
  aside   ordinary word
  means   words that say nothing of a bird's marks

kind manner
  slot    value
  aside   ordinary word
  means   how a sound or a movement is: soft, fast, low

kind topic
  slot    aspect
  aside   ordinary word
  means   words that say which aspect is spoken of: flight, call

kind part-relation
  slot    relation
  aspect  length
  means   how the length of a part compares with another part

kind compared
  aside   joining word
  means   compared with, for its size

kind washed
  slot    extent
  means   with a thin layer of colour: washed, tinged

kind where
  slot    area
  aside   part named, nothing said of it
  means   a side of the bird, as an adverb: above, below

kind runs
  aside   joining word
  means   verbs that say how far a colour goes: runs, extends

kind afterthought
  certainty hedged
  force   scope
  aside   doubting word
  means   a doubt said behind a mark: "?", not sure

kind rel-be
  aside   joining word
  means   that is, which are

kind correction
  force   retracts
  aside   taking back
  means   takes back what was said just before

kind same
  aside   joining word
  means   the same colour, ditto

kind ditto
  aside   joining word
  means   says that what was said last holds here as well

kind person
  ordinary yes
  aside   ordinary word
  means   people

kind person-det
  ordinary yes
  aside   ordinary word
  means   of people: my, our

kind wear
  aside   joining word
  means   wears: joins people and clothes

kind set
  aside   joining word
  means   a number of like parts: set of, pair of

kind including
  aside   joining word
  means   names parts of which the same holds

kind range
  skip    yes
  aside   where the kind is at home, or how common
  means   where a kind of bird is at home or how common it is, as an adjective
