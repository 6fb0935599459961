# How much of an area a quality takes up, and how clearly.

extent a-bit-of
  also    bit of, bits of, a little bit of, just a little, little bit of, a small amount of, some bits of
  means   a small share of it

extent a-quarter
  also    one quarter, quarter of, a quarter of
  means   one part in four

extent a-third
  also    one third, third of, a third of
  means   one part in three

extent accent
  also    accented, accenting, highlight, highlighted, accents of, highlights of
  means   small touches that stand out

extent all
  also    all over, everywhere
  means   every part of it

extent area-of
  also    areas of, an area of, sections of
  means   a part of it, of no set shape

extent band
  means   a strip across

extent blaze
  means   a bold area, mostly on the face or forehead

extent blob
  also    blobby
  means   a small rounded area

extent block-of
  also    a block of, blocks of
  means   a large area of clear edge

extent blush
  also    blushed, pink flush, rosy flush, flush of
  means   a faint pink or red cast

extent bold
  also    boldly, bolder, conspicuous, conspicuously, striking, strikingly, obvious, prominent, prominently
  also    pronounced, distinct, distinctly, distinctive, well marked, strongly marked, clearly marked
  also    noticeable, noticeably, starkly, stark, eye catching, standing out, stands out
  means   easy to see from afar

extent border
  also    bordered, bordering
  means   a line round it

extent broken
  also    incomplete, interrupted, discontinuous
  means   not joined all the way

extent cast
  also    colour cast, color cast
  means   a faint colour over the whole

extent coarse
  also    coarsely, coarser
  means   of large rough marks

extent a-little
  hidden  yes
  value   slight
  also    little
  only-before :colour
  means   a small amount of a colour

extent covered
  also    covered in, covered with, covering most of, covers most of
  means   most of it taken up

extent cut-off
  also    sharply cut off, ending abruptly, ends abruptly, abrupt, abruptly
  means   stopping at a clear line

extent dab
  also    dab of, daub, dab mark
  means   a small touch of colour

extent dash-of
  also    a dash of, dashes of, pinch of, a pinch of
  means   a very small amount of it

extent diffuse
  also    diffusely, blurred, blurry, ill defined, soft edged, poorly defined, hazy
  means   with no clear edge

extent dusting
  also    dusting of, dusted
  means   a thin sprinkled layer

extent edging
  also    trim, trimming, trimmed, edged all round
  means   a narrow line along the edges

extent entirely
  also    entire, completely, totally, wholly, fully, whole, throughout, in its entirety, from head to tail
  also    top to bottom, from top to bottom
  means   with nothing left out

extent extensive
  also    extensively, lots of, a lot of, plenty of, wide area of, large amount of, large amounts of
  also    expanse of, expansive
  means   over a large share of it

extent faint
  also    fainter, faintly, faintest, indistinct, indistinctly, obscure, obscurely, subtle, subtly
  also    almost absent, all but absent, nearly absent, hardly there, barely there, inconspicuous, vague, vaguely, weakly marked, barely visible, hardly visible, poorly marked
  means   hard to see

extent finely
  also    delicately, fine lined
  means   of small close marks

extent flash
  also    flash of, flashes of
  means   an area that shows for a moment, mostly as the bird moves

extent fringe
  also    fringed, fringing
  means   a soft line along the edge

extent front-half
  also    front half of, the front half, fore half
  means   the half nearer the bill

extent ghost-of
  also    a ghost of, shadow like, suggestion of, a suggestion of
  means   a thing only just to be made out

extent half-of
  also    half and half, one half
  means   one of two equal parts

extent hardly-any
  also    barely any, next to no, almost no, very little, scarcely any
  means   nearly none

extent heavily
  also    densely, thickly, profusely, heavily marked
  means   of many or thick marks

extent hint
  also    hint of, hints of, inkling of
  means   a very weak trace

extent lightly
  also    sparsely, sparingly, thinly, weakly
  means   of few or weak marks

extent mostly
  also    mainly, largely, chiefly, primarily, predominantly, predominately, predominant, principally
  also    for the most part, majority, the majority of, most of, the bulk of, main colour, main color
  also    generally
  means   more than half of it

extent nearly-all
  also    almost all, almost entirely, almost completely, nearly entirely, nearly completely, almost wholly
  also    virtually all, almost totally, practically all
  means   with very little left out

extent outline
  also    outlined, outlining
  means   a thin line round it

extent overall
  also    on the whole, in general, overall colour, overall color
  means   taking the whole together

extent panel
  also    panelled, paneled
  means   a clear long area, mostly on a closed or open wing

extent partly
  also    partially, partial, in part, in places, part of, semi
  means   some of it, not all

extent patch
  also    patch of
  means   an area of its own colour

extent rear-half
  also    rear half of, the rear half, back half, hind half
  means   the half nearer the tail

extent restricted
  also    confined, localised, localized
  means   found in one small place only

extent rim
  also    rimmed, rimming
  means   a raised or coloured line round an opening

extent scattered
  also    here and there, dotted about, random, randomly, spread about, interspersed, sporadic
  means   far apart, in no order

extent sharply-defined
  also    clear cut, clean cut, sharply demarcated, sharply outlined, well defined, crisply defined
  also    neatly defined, sharp edged, clear edged, clearly defined, neat, neatly
  means   with a clear edge

extent slight
  also    slightly, somewhat, ever so slightly, faint touch
  means   to a small degree

extent smear
  also    smear of
  means   a soft area as if rubbed on

extent splash
  also    pop, pop of, pops of
  also    splash of, splashes of
  means   a bright uneven area

extent sprinkle
  also    sprinkle of, sprinkled, sprinkling, sprinkling of
  means   small marks lightly spread

extent suffusion
  also    suffused
  means   a colour spread softly through another

extent three-quarters
  also    three quarters of
  means   three parts in four

extent tinge
  also    tinge of, tinges of
  means   a weak colour over another

extent tint
  also    tinted, tint of, tints of
  means   a weak colour mixed in

extent touch-of
  also    a touch of, touches of
  means   a very small area of it

extent trace
  also    trace of, traces of, vestige, vestigial, the remains of
  means   what little is left or shown

extent two-thirds
  also    two thirds of
  means   two parts in three

extent unbroken
  also    complete, continuous, uninterrupted, all the way round, all the way around
  means   joined all the way

extent undertone
  also    undertones of, overtone, overtones of
  means   a weak second colour beneath the first

extent uniformly
  also    uniform, evenly, solid, solidly, consistently, consistent, evenly coloured, evenly colored
  also    uniformly coloured, uniformly colored
  means   the same all over

extent variable
  also    variably, varying, varied, variously, to varying degrees
  means   more in some birds than in others

extent wash
  also    wash of, washed with
  means   a thin even colour over another
