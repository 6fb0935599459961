# The small words of grammar: articles, forms of be and have, joining words, denials, doubts, and
# what could not be seen.

and and
  also    mixed with, mixed in with, intermixed with, interspersed with, mingled with, blended with, mixed together with
  also    combined with, mixed in, interlaced with, alternating with
  also    &, then, +, plus, adn, abd, nd, ad, ans, as well as, along with, together with, and then, and also, but also, also
  unless-before well
  means   joins like with like

as as
  means   as

be appears-to-be
  also    appear to be, looks to be, look to be, seems to be, seem to be, appeared to be, looked to be, seemed to be
  certainty hedged
  means   is, as far as could be seen

be is
  also    are, was, were, be, being, been, it's, its, they're, he's, she's, they are, has been, had been, would be
  also    is also, are also, is mostly a, remains, turns, shading, comprised of, composed of, made up of, is comprised of, is made up of, fades to, fade to, fading to, fades into, fade into, fading into, ranges from, range from, ranging from, varies from, vary from, varying from, transitions to, 're, 's, colored in
  also    i's, iss
  means   forms of "be"

be looks
  also    look, looked, appear, appears, appeared, looking, comes across as
  means   how it looked

be seems
  also    seem, seemed, might be, may be, could be, possibly is, could have been, might have been, may have been
  certainty hedged
  means   is, in doubt

bird-word it
  also    he, she, they, this, this one, that one, him, them, this bird, the bird, that bird
  also    avian, everything, these, this particular bird, bird's, bird
  means   the bird spoken of

bird-word fellow
  also    gird, bind, bid, brid, bord, job, jobbie, fella, chap, critter, creature, guy, beauty, specimen
  also    birdie
  means   the bird, fondly or misspelt

bird-word one-of-them
  hidden  yes
  points  one
  also    one, one of them, one bird, one of the birds, one of the two
  means   one bird of several

bird-word first-one
  hidden  yes
  points  first
  also    the first bird, first bird, bird one, bird 1, first one, the first one, the left hand bird, left hand bird
  also    the left bird, the near bird, the nearer bird, the nearest bird, the near one, the nearer one, the left one
  also    the closer bird, the closer one, the first of them
  means   the first bird of several

bird-word the-first
  hidden  yes
  points  first
  also    the first
  only-before :be, :have, :with, :pattern, :colour, :where, :sexage, :behaviour
  means   the first bird of several

bird-word second-one
  hidden  yes
  points  second
  also    the second bird, second bird, a second bird, bird two, bird 2, second one, a second one, the second one
  also    the right hand bird, right hand bird, the right bird, the far bird, the farther bird, the further bird
  also    the right one, the far one, the farther one, a second
  unless-before :habitat, time, later
  means   the second bird of several

bird-word the-second
  hidden  yes
  points  second
  also    the second
  only-before :be, :have, :with, :pattern, :colour, :where, :sexage, :behaviour
  means   the second bird of several

bird-word third-one
  hidden  yes
  points  third
  also    the third bird, third bird, a third bird, bird three, bird 3, third one, a third one, the third one
  means   the third bird of several

bird-word the-other
  hidden  yes
  points  other
  also    the other, the other bird, other bird, the other one, other one, the others, the other two
  unless-before side, day, way, wing, hand, end, eye, leg, half, half, night, morning, week, than, feathers, parts, part, :area, colour, color, colours, colors
  means   the other bird of two

bird-word another-one
  hidden  yes
  points  another
  also    another bird, another one, yet another
  means   one more bird

bird-word another-came
  hidden  yes
  points  another
  also    another
  only-before :be, :have, :with, :behaviour, :flight, appeared, came, joined, landed, arrived, nearby
  means   one more bird

bird-word both-birds
  hidden  yes
  points  both
  also    both birds, both of them, they both, all of them, the pair of them, both of these
  means   every bird of the note

bird-word both-of-them
  hidden  yes
  points  both
  also    both
  only-before :where, :with, :colour, :pattern, :be, :have
  means   every bird of the note

and n
  only-after  :colour, :area, :pattern, :shape
  only-before :colour, :area, :pattern, :shape, :tone, :det
  means       and, as it is typed in haste

but but
  also    although, though, however, yet, while, whereas, except for, except, apart from, other than, aside from
  also    besides, save for, with the exception of, whilst, excepting, in contrast to, but for, excluding
  means   sets one thing against another

but more
  hidden      yes
  also        more, rather
  only-after  :colour, :tone
  only-before :colour, :tone
  means       sets one colour against another: not dark more grey

but more-of-a
  hidden      yes
  also        more of a, more like
  only-before :colour, :tone
  means       the same

between between
  also    in between, somewhere between, intermediate between, midway between
  means   between

det a
  also    some of the, some of its, many of the, many of its, all of the, all of its, a row of, rows of, row of, an, the, its, his, her, their, it's, some, these, those, our, another, what looks like a, each, every, any
  also    both its, all its, such a, several, many, few, a few, multiple, various, other, own, one of its, hte, numerous
  also    alternating, a set of, a pair of, a number of, both the
  means   articles and the like

from from
  also    from the, from its, from it's, from his, from her
  also    all the way from, the whole way from, right from, all the way down from, all the way up from, starts at, start at
  also    begins at, starts from, begins from, starting in
  also    starting at, starting from, beginning at, running from, extending from
  means   from

have has
  also    have, had, having, has got, have got, hasa, has a, shows, show, showed, showing, sports, sporting, sported
  also    features, featuring, featured, displays, displaying, displayed, possesses, possessing, exhibits, exhibiting
  also    is crossed by, are crossed by, crossed by, is marked with, are marked with, is marked by, are marked by
  also    display, exhibit, possess, boast, boasts, boasting, carries, wears, wearing, contains, containing, contain, includes, including, has also, gives, bears
  also    having a, ha, hsa, hgas, consists of, consisting of, comprising, accompanied by, adorned with, reveals
  means   forms of "have"

hedge sort-of
  also    kind of, type of
  means   nearly; before a kind of bird it says that the species is open

hedge maybe
  also    perhaps, mebbe, prolly, possibly, probably, presumably, apparently, likely, i think, i believe, i guess, i suppose, i thought
  also    seemingly, might have, may have, could have, not sure if, not sure whether, unsure if, sorta
  also    kinda, more or less, think it had, think it was, looked like it had, as far as i could tell, if anything
  also    seemed to have, appeared to have, looked as if it had, suspect, suspected, suspicion of, impression of
  also    i'd say, i would say, from what i could see, arguably, as far as i could see, not certain but
  also    not sure but, thought i saw, think i saw, i think it had, guessing, presumed, unsure about, not certain about
  also    not sure about, not 100% sure, or so i thought, could swear
  means   in doubt

hedge ish
  hidden  yes
  also    ish
  reach   backwards
  means   rather so

afterthought question-mark
  hidden  yes
  also    ?, ??, ???
  reach   backwards
  means   a question mark behind a mark

afterthought not-sure
  hidden  yes
  also    not sure, not certain, unsure, i'm not sure, im not sure, not positive, couldn't be sure, can't be sure
  reach   backwards
  means   in doubt, said afterwards

like like
  also    similar to, resembles, resembling, resembled, reminiscent of, much like, just like, a lot like, rather like
  means   comparison by likeness

negator no
  also    anything but
  also    not a single, not one, not, no not, without, lacked, lacks, lacking, lack of, minus, w/ o, devoid of, free of, without any, no sign of, no trace of
  also    no hint of, no obvious, nor any, never, isn't, aren't, wasn't, weren't, hasn't, haven't, hadn't, doesn't have
  also    did not have, didn't have, does not have, do not have, don't have, no visible, no real, no evidence of, absence of
  also    nothing, none of the, neither, not any, not a, isnt, wasnt, didnt have, doesnt have, didn't show, without a
  also    no discernible, not at all, ain't, never had
  also    did not show, does not show, not seen to have, there was no, there were no, there is no, zero, nowhere
  means   not there

negator instead
  also    rather than, instead of, as opposed to
  means   not what is named behind it, but what was said before

negator absent
  also    lacking completely, missing, wasn't there, not present, weren't there, not there, isn't there, aren't there
  also    was absent, were absent, were missing, was missing, not showing, nowhere to be seen, non existent, nonexistent
  reach   backwards
  means   not there, said afterwards

negator no-doubt
  hidden  yes
  also    couldn't help but notice, could not help but notice, couldn't help but, couldn't help noticing, couldn't miss
  also    could not miss, can't miss, nothing could be, never seen a, never seen such a, without a doubt, without doubt
  also    no mistake, no mistaking, no more than, hardly a day goes by without, did not take long, didn't take long
  also    nothing but, not long, no question about it, no arguing with, not to forget, no less than, not least
  also    no doubt, not only, no wonder, no problem, no worries, not just, not to mention, no matter, no longer sure
  also    nothing else, no idea, no clue, not merely, no question, none other, not bad, not far, not long after, not yet
  also    no idea what, no one, nobody, no way, not in my book, no camera, no sooner, not that i know, no binoculars
  polarity present
  means   words that look like a denial and deny nothing

or or
  also    nor, and or, or maybe, or perhaps, or possibly, or even, or any
  means   or

of of
  also    of a, off, of the, of its, of his, of her, of their, of this, of that, of an
  means   of

on on
  also    found on, found on the, found at, found at the, located on, placed on, seen on
  also    blended into, blended in, blending into, blending in at, mixed into, peeking out on, peeking out of, peeking through, poking through, showing through, scattered on, scattered across, scattered over, sprinkled on, sprinkled across
  also    running thru, running through the, covering most of its, covering most of the, covers most of its, covers most of the, shown on, shown at, shown at the, visible on, visible at, visible at the
  also    confined to, restricted to, limited to, confined mainly to, mainly on, only on, mostly on
  also    at, in, upon, across, along, onto, throughout, at the, in the, over, down, through, thru, to, on the, all along
  also    covered the, covered its, covers the, covers its, cover the, cover its, crossing, crossed the, crossed its
  also    on top of a, on top of an, all across, near, near the, for its, for his, for it's, all over the, all over its, all over his, all over it's, all across its, throughout its, throughout the, accentuating, accenting, adorning, decorating, gracing, highlighting, dotting, covering, running down, running along, running across, running through
  also    going down, going across, going through, inside, within, up, toward, towards, into, at the bottom of
  means   where, before a part

over around
  also    that circles, which circles, that encircles, which encircles
  also    outlining, ringing, rimming, around the outside of, circling, bordering, round, surrounding, surrounds, encircling, encircles, circling
  means   on all sides of a part

over above
  also    over, just above, right above, just over, atop
  means   on the upper side of a part

over before
  also    by, in front of, next to, beside, near, adjacent to, just in front of, close to
  means   beside or before a part

over behind
  also    just behind, right behind, back of
  means   behind a part

over below
  also    under, beneath, underneath, just below, right below, just under
  means   on the under side of a part

rel that
  also    which, who, whose, where
  means   that, which

rest-of rest
  also    most of the rest, most of the rest of, most of the rest of its, most of the rest of the, much of the rest, much of the rest of, much of the rest of its
  also    the rest, rest of, the rest of, rest of the, otherwise, the remainder, remainder of, the remaining, remaining
  also    everything else, elsewhere, the rest of its, rest of its, all the rest, other parts, else, the rest of the, the others
  unless-before a, on, of the day, area, stop
  means   all that was not named

sized sized
  also    size, the size of, size of, about the size of, around the size of, similar in size to, same size as, the same size as
  also    similar size to, as big as, as large as, about as big as, about as large as, close in size to, equal in size to
  also    roughly the size of, about the same size as, approximately the size of, a similar size to, nearly the size of
  also    in size to, as small as, about as small as, size similar to, near the size of, almost the size of
  means   of the size of

hue coloured
  also    coller, collor
  also    in color, in colour, colored, color, colour, colors, colours, tone, tones, toned, hue, hues, hued, shade, shades, shadings
  also    in shade, tint, tints, tinted, in tone, undertone, undertones, in hue, of color, of colour, shades of color, hues of, shades of, tones of, shade of, hue of, tone of, mix of, mixture of, a mix of, a mixture of
  also    combination of, blend of, assortment of, varying shades of, different shades of, multiple shades of, many shades of
  also    in coloring, in coloration, coloured body, mixture, mixed, mix, blend, combination, combo, in complexion, shading, in colouring, in colors, in colours
  also    shaded, in coloring overall, color scheme, colour scheme
  means   words that add nothing to the colour before them

suffix all-over
  also    tip to tail, from tip to tail, from head to toe, from top to toe, from tip to toe, all over it, all over its body, all over the body, all over body
  also    everywhere, overall, all round, throughout
  means   words that say that the whole is meant

suffix feathers
  also    feather, feathered, feathering, area, areas, region, part, plumage, section, in appearance
  also    in shape, shaped, look, appearance, design, designs, coverings, shadow, shadows, portion, type, surface, itself, as well, in general
  also    hair, hairs, fur, background, backdrop, effect, finish, in pattern, plumage overall, variations, coloring, colouring, coloration
  means   words that add nothing to the part before them

than than
  means   than

to to
  also    all the way to, all the way down to, right down to, all the way up to, right up to, and down to, down as far as, to just above
  also    fading to, fading into, fades to, fades into, shading to, shading into, shades into, grading to, grading into, turning to, turning into, merging into
  also    into, to the, down to, through to, over to, towards, onto, as far as, up to
  means   to

unseen couldnt-see
  also    couldn't see, could not see, couldnt see, can't see, cannot see, didn't see, did not see, didnt see
  also    couldn't make out, could not make out, didn't notice, did not notice, didn't get to see, never saw, unable to see
  also    couldn't tell, could not tell, missed, failed to see, failed to note, didn't get a look at, no view of
  also    didn't get a good look at, did not get a look at, no look at, couldn't get a look at, not able to see, forgot to look at
  also    didn't look at, did not look at, didn't catch, forgot to check, forgot to note, couldnt make out, not looked at
  also    didn't check, did not check, couldn't really see, couldn't quite see, couldn't properly see, can't say about
  also    couldn't judge, could not judge, couldn't tell about, hard to see, didn't note, did not note, can't tell
  also    haven't seen, hadn't seen, wasn't able to see, never got to see, never got a look at, couldn't see any of
  also    never managed to see, no clear view of, didn't manage to see, i couldn't see, didn't get to look at, never noticed
  also    i never noticed, never clocked, i never clocked, didn't clock, never caught, i never caught, i didn't notice
  means   could not be seen

unseen hidden-from-view
  also    hidden, not visible, wasn't visible, weren't visible, unseen, wasn't seen, weren't seen, out of sight
  also    not seen, obscured, couldn't be seen, could not be seen, concealed, not noted, unnoticed, covered by grass, in the grass hidden
  also    was hidden, were hidden, hidden in the grass, hidden by leaves, hidden from view, not noticed, wasn't noted
  also    out of view, invisible, underwater, under water, behind leaves, in shadow, was obscured, were obscured, not checked
  also    was not visible, were not visible, is hidden, are hidden, wasn't clear, weren't clear, unclear, was not seen
  also    were not seen, behind a branch, behind the grass, covered up, not clearly seen, not made out, not observed
  reach   backwards
  means   could not be seen, said afterwards

with with
  also    w, wth, wih, wit, iwth, wiht, witha, with a, complete with, wtih, withe, w/, crossed by, marked by, covered by, featuring a, mixed with, accented with
  also    accented by, marked with, tinged with, edged by, accentuated by, highlighted by, highlighted with, followed by
  also    contrasted with, contrasted by, with some, combined with, paired with, topped with, interspersed with
  also    covered with, covered in, intermixed with, mixed in with, dotted with, contrasting with, ending in, decorated with
  means   with

degree very
  also    anywhere, strongly, either, both, quite, really, rather, fairly, pretty, extremely, so, too, super, just, also, even, only, particularly, especially
  also    relatively, comparatively, proportionally, proportionately, incredibly, exceptionally, remarkably, unusually
  also    mighty, ever so, much, more, most, less, definitely, certainly, clearly, obviously, really quite, actually
  also    that's very, surprisingly, noticeably quite, absolutely, perfectly, overly, moderately, decidedly, equally
  also    distinctively, highly, slightly too, still, always, often, usually, generally, again, well, too very, enough
  also    almost, nearly, more of a, kind, sort, bit, nice, beautiful, lovely, pretty little, somewhat, truly, purely, looking
  also    distinctly, simply, visibly, typically, now, there, barely, that, similarly, contrasting, matching
  means   words of degree that rules look past

relation about
  hidden  yes
  value   about
  also    about, roughly, around, approximately, similar to, same as, equal to, comparable to, about like, on a par with
  factors 0.7 1.45
  means   of about that size

relation bigger-than
  also    larger than, bigger, larger, taller than, heavier than, greater than, bulkier than, bigger then, larger then
  also    a fair bit bigger than, noticeably bigger than, noticeably larger than
  factors 1.15 3
  means   bigger

relation slightly-bigger-than
  also    slightly larger than, a bit bigger than, a little bigger than, a bit larger than, a little larger than
  also    a touch bigger than, just bigger than, just larger than, slightly bigger, slightly larger, marginally bigger than
  also    a shade bigger than, somewhat bigger than, somewhat larger than, bit bigger than, bit larger than
  also    marginally larger than, a tad bigger than, a tad larger than, fractionally larger than
  factors 1.05 1.9
  means   a little bigger

relation much-bigger-than
  also    much larger than, way bigger than, a lot bigger than, far bigger than, far larger than, a lot larger than
  also    considerably larger than, considerably bigger than, way larger than, much bigger, much larger
  factors 1.9 8
  means   much bigger

relation smaller-than
  also    smaller, littler than, less than, lighter in build than, smaller then, noticeably smaller than
  also    a fair bit smaller than
  factors 0.33 0.87
  means   smaller

relation slightly-smaller-than
  also    a bit smaller than, a little smaller than, just smaller than, slightly smaller, marginally smaller than
  also    a touch smaller than, not quite as big as, not quite as large as, somewhat smaller than, bit smaller than
  also    a shade smaller than, a tad smaller than, almost as big as, nearly as big as, almost as large as, nearly as large as
  also    fractionally smaller than, not quite the size of
  factors 0.53 0.95
  means   a little smaller

relation much-smaller-than
  also    far smaller than, a lot smaller than, way smaller than, considerably smaller than, much smaller
  also    nowhere near as big as
  factors 0.12 0.53
  means   much smaller

relation half-the-size-of
  also    half the size, half as big as, about half the size of, half size of, half as large as, half a
  factors 0.3 0.7
  means   about half as big

relation twice-the-size-of
  also    twice as big as, double the size of, twice the size, about twice the size of, twice as large as, two times the size of
  factors 1.5 3.2
  means   about twice as big

relation not-bigger-than
  also    no bigger than, no larger than, not much bigger than, hardly bigger than, barely bigger than, not any bigger than
  also    scarcely bigger than, hardly larger than, barely larger than, not much larger than
  factors 0.6 1.3
  means   no bigger, so about as big or smaller

relation not-smaller-than
  also    no smaller than, not much smaller than, hardly smaller than, barely smaller than, at least as big as
  factors 0.8 1.8
  means   no smaller, so about as big or bigger

# Mass from total length: a songbird of 15 cm weighs about 25 g, and mass grows with about the 2.6th
# power of length over the range from wrens to geese. From memory; the spread covers long tails and necks.
curve mass
  from-length 15 25 2.6 1.9
  means   at 15 cm, 25 g, to the power 2.6, within a factor of 1.9

position upper
  also    uppermost, up, higher, the upper half of, upper part of, upper half of, top half of, upper portion of
  means   the upper part of an area

position lower
  also    lowermost, bottom half of, lower half of, lower part of, lower portion of, bottom part of, bottom, bottom of
  means   the lower part of an area

position top
  also    top of, the top of, on top of, tops of, top part of
  means   the top of an area

position front
  also    front of, the front of, forward part of, fore, front part of, front half of
  unless-after in, out
  means   the front of an area

position rear
  also    back of, rear, hind, back part of, rear of, hind part of, hinder, rear part of, the back of
  unless-after came
  means   the rear of an area

position side
  also    side of, sides of, the side of, the sides of, either side of, both sides of, each side of, lateral, edges of the side of
  means   the side of an area

position middle
  also    middle of, the middle of, center of, centre of, central, centre, center, mid, down the middle of, down the center of
  also    middle, midline of, the center of, the centre of
  means   the middle of an area

position inner
  also    inside of, innermost, inner part of, inner edge of, inner half of
  means   the inner part of an area

position outer
  also    outside of, outermost, outer part of, outer edge of, outer half of, exterior, outter
  means   the outer part of an area

position tip
  also    tip of, tips of, end of, ends of, the tip of, the tips of, the end of, the ends of, very tip of, tips of the
  means   the tip of an area

position base
  also    base of, the base of, root of, bottom end of
  means   the base of an area

position edge
  also    edge of, edges of, the edge of, the edges of, border of, borders of, rim of, margin of, fringe of, margins of
  also    outline of, edging of, along the edge of
  means   the edge of an area

side tip-noun
  hidden  yes
  value   tip
  position tip
  also    tip, tipping, end
  means   the tip, as a noun

side edge-noun
  hidden  yes
  position edge
  also    edge, edging, border, margin, fringe, outline, fringing, rim, trim, lining, trimming, outlining, edges
  means   the edge, as a noun

side base-noun
  hidden  yes
  position base
  also    base, root
  means   the base, as a noun

side side-noun
  hidden  yes
  position side
  also    side
  means   the side, as a noun

side center-noun
  hidden  yes
  position middle
  also    center, centre, middle
  means   the middle, as a noun

side top-noun
  hidden  yes
  position top
  also    top
  means   the top, as a noun

side underside-noun
  hidden  yes
  position under
  also    underside, bottom
  means   the underside, as a noun

edged tipped
  hidden  yes
  position tip
  also    tipped, tipping, ended
  means   with tips of that colour

edged edged
  hidden  yes
  position edge
  also    edged, fringed, bordered, rimmed, trimmed, lined, outlined, margined, edging
  means   with edges of that colour

edged ringed-around
  also    framed with, framed by, framed in
  hidden  yes
  position around
  also    surrounded by, surrounded with, surrounded in, encircled by, encircled with, ringed by, ringed with, ringed in
  also    circled by, circled with, outlined in, outlined with, outlined by, rimmed with, rimmed in, rimmed by
  means   with that colour all round

edged based
  hidden  yes
  position base
  also    based
  means   with a base of that colour

edged sided
  hidden  yes
  position side
  also    sided
  means   with sides of that colour

edged centred
  hidden  yes
  position middle
  also    centred, centered
  means   with a middle of that colour

side corner-noun
  hidden  yes
  position corner
  also    corner
  means   the corner, as a noun

part-relation longer-than
  also    reach past, reaches past, reaching past, reach beyond, reaches beyond, extend past, extends past, extend beyond
  also    extends beyond, extending beyond, extending past, project beyond, projects beyond, projecting beyond, sticks out past, stick out past
  also    reach well past, reaches well past, extend well beyond, extends well beyond, go past, goes past, reach past the end of
  also    about one and a half times the length of, about one and a half times as long as
  also    one and a half times the length of, one and a half times as long as, half again as long as, half as long again as
  also    longer than, a bit longer than, a little longer than, slightly longer than, longer then
  means   longer than another part

part-relation much-longer-than
  also    a lot longer than, far longer than, way longer than
  also    twice the length of, twice as long as, double the length of, twice longer than, times the length of, times as long as
  also    times longer than, about twice the length of, about twice as long as, nearly twice the length of, nearly twice as long as
  also    almost twice the length of, almost twice as long as, more than twice the length of, more than twice as long as
  means   much longer than another part

part-relation shorter-than
  also    fall short of, falls short of, falling short of, fall well short of, falls well short of, stop short of, stops short of
  also    don't reach, do not reach, does not reach, doesn't reach, not reaching, reach nowhere near
  also    shorter than, a bit shorter than, a little shorter than, slightly shorter than, shorter then
  also    about half the length of, about half as long as
  also    not as long as, half the length of, half as long as, two thirds the length of, three quarters the length of, two-thirds the length of
  means   shorter than another part

part-relation much-shorter-than
  also    a lot shorter than, far shorter than, way shorter than, a quarter the length of, a third the length of, a third as long as
  means   much shorter than another part

part-relation as-long-as
  also    just reach, just reaches, reach to, reaches to, reach the end of, reach the tip of, reaches the tip of, reaching the tip of
  also    about as long as, about the same length as, nearly as long as, almost as long as, the same length as, same length as, equal in length to, as long as, the length of
  means   as long as another part

compared compared
  also    compared to, compared with, in comparison to, in comparison with, relative to, in relation to, in proportion to
  also    in proportion with, proportional to, proportionate to, for its size, for it's size, for his size, for their size
  also    as compared to, in comparison, for a bird of its size, for a bird this size, than the rest of, for the size of
  also    for it's body, for his body, for the body, for the bird's size, for its body, for its body size, compared to the size of, in contrast with
  means   what a size is measured against

washed wash-word
  hidden  yes
  extent  wash
  also    washed, tinged, suffused, flushed, infused, dusted, smudged
  means   with a thin layer of colour

where above
  also    everything above, all above
  heard   a bove
  heard-after :colour
  hidden  yes
  area    upperparts
  also    above, up top, dorsally, from above
  means   on the upper side of the bird

where below
  also    everything below, all below
  heard   be low, bello, billow
  heard-after :colour, :pattern
  hidden  yes
  area    underparts
  also    below, underneath, beneath, down below, ventrally, from below
  means   on the under side of the bird

runs runs
  also    ran, run, running, extends, extending, extended, extend, goes, going, reaches, reaching, reached, continues
  also    going horizontally, going vertically, running horizontally, running vertically, running lengthwise
  also    continuing, leading, leads, stretching, stretches, coming, sat, sits, trailing, that runs, that extends, spreading
  means   goes on over a part

rel-be that-is
  hidden  yes
  also    that is, that are, that was, that were, who is, thats, that's, that looks, that appears, that look, that looked
  also    who are, who was, that is also, that are also, that looks like, that look like
  means   that, with a form of "be"

rel-be which-is
  hidden  yes
  also    which is also, which are also, which looks like, which look like, which is, which are, which was, which were, which looks, which appears, which looked, which look, which has been
  means   which, with a form of "be"

correction no-wait
  hidden  yes
  also    no wait, scratch that, strike that, i mean, sorry i mean, correction, make that, or rather, no sorry, sorry no
  also    sorry, no hang on, no hold on, hang on, wait no, actually no, no actually, no i mean, on second thoughts
  also    no scratch that, let me correct that, i tell a lie, not that
  means   takes back what was said just before

same same-colour
  hidden  yes
  also    the same colour, same colour, the same color, same color, the same shade, same shade, a matching colour, the same tone
  means   the colour that was named last

ditto ditto
  also    likewise, same again, the same again, similarly, the same there, same, the same, same here
  means   what was said last holds here as well

ditto too
  hidden  yes
  also    too
  unless-before :size, :length, :build, :colour, :shape, :pattern, :manner, :tone, :ordinary, :unknown, :behaviour, :det, :degree, :posture
  means   what was said last holds here as well

person i
  hidden  yes
  also    i, we, man, woman, warden, ranger, lady, boy, girl, guide, walker, leader, friend, wife, husband, neighbour, neighbor
  also    a man, a woman, the warden, the ranger, a boy, a girl, a lady, somebody, someone, birder, photographer
  means   the observer or other people, of whom colours and clothes may be told

person-det my
  hidden  yes
  also    my, our, your, my own
  means   of the observer

wear wear
  also    wore, wears, wearing, in, had on, dressed in, with
  means   how people and their clothes are joined

set set-of
  hidden  yes
  also    set of, pair of, sets of, pairs of
  means   a number of like parts

including including
  also    as is, as are, and so is, and so are, especially, especially on, most notably, most notably on, particularly, particularly on
  also    even to, even to its, even its, even the, and even its, especially on, particularly on, especially, particularly, most notably, notably, mainly on, most of all on
  means   names parts of which the same holds

aspect-word aspect-word
  hidden  yes
  also    shape, length, structure, pattern, patterning, size, proportions, profile, outline
  only-after :area
  means   names what a property is of: tail shape, bill length
