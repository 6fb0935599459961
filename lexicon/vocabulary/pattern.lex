# Patterns, and the nouns for one mark of a pattern; value names the pattern.
# Streaked is narrow and lengthwise, striped is broad and lengthwise, barred is crosswise.

mark arrowhead
  also    arrow mark, arrow head mark
  value   chevroned
  means   mark like the head of an arrow

mark band
  heard   banned
  heard-after :colour, :tone
  position band
  value   banded
  means   broad bar across

mark banding
  also    banding pattern
  value   banded
  means   bands in general

mark bar
  position bar
  also    cross bar, transverse bar, horizontal stripe, horizontal bar, crosswise bar
  value   barred
  means   mark running crosswise

mark barring
  also    barring pattern, cross barring
  value   barred
  means   bars in general

mark blotch
  also    splotch, splodge
  value   blotched
  means   large uneven spot

mark blotching
  also    splotching
  value   blotched
  means   large uneven spots in general

mark checkering
  also    chequering, checker pattern, chequer pattern, checkerboard pattern, chequerboard pattern
  value   checkered
  means   squares of two shades in general

mark chevron
  also    v mark, v shaped mark, inverted v
  value   chevroned
  means   mark like a V

mark crescent
  also    half moon, crescent mark, crescent shaped mark
  value   crescentic
  means   mark curved like a new moon

mark cross-hatching
  also    hatching pattern, criss cross pattern, criss cross lines
  value   crosshatched
  means   fine lines that cross

mark dapple
  value   dappled
  means   soft round paler spot

mark dappling
  value   dappled
  means   soft paler spots in general

mark dash
  also    dash mark, short dash
  value   streaked
  means   very short streak

mark diamond
  also    diamond mark, diamond shaped mark
  value   diamond-patterned
  means   mark like a diamond

mark dot
  also    dot mark, pin dot
  value   dotted
  means   small clear round spot

mark eye-like-spot
  also    ocellus, ocelli, false eye, peacock eye
  value   ocellated
  means   round spot ringed by another colour

mark fleck
  heard   flex
  heard-after :colour, :tone
  value   flecked
  means   very small short mark

mark flecking
  value   flecked
  means   very small marks in general

mark freckle
  value   freckled
  means   small brownish spot

mark freckling
  value   freckled
  means   small brownish spots in general

mark frosting
  also    frosty edging, frosted edging
  value   frosted
  means   pale tips laid over a darker ground

mark lacing
  also    feather lacing
  value   laced
  means   narrow clear feather edges in general

mark ladder-marking
  also    ladder pattern, ladder bars
  value   laddered
  means   evenly spaced bars like rungs

mark line
  also    pencil line, thin line
  value   lined
  means   thin mark, longer than wide

mark marbling
  also    swirl, swirling pattern
  value   marbled
  means   winding light and dark veins

mark mark
  heard   marque
  value   marked
  means   any mark

mark marking
  also    patterning, accent, highlight, detailing
  value   marked
  means   marks in general

mark mottle
  value   mottled
  means   one soft uneven patch

mark mottling
  also    mottled pattern, mottled look
  value   mottled
  means   soft uneven patches in general

mark patchwork-pattern
  value   patchy
  means   uneven patches in general

mark pencilling
  also    penciling
  value   pencilled
  means   very fine lines in general

mark peppering
  value   peppered
  means   tiny dark specks in general

mark pinstripe
  also    pin stripe, fine stripe
  value   pinstriped
  means   very thin lengthwise line

mark polka-dot
  value   dotted
  means   round spot, evenly set

mark reticulation
  also    net pattern, netting pattern, network of lines
  value   reticulated
  means   net of fine lines

mark ring
  heard   wring
  heard-after :colour, :tone
  also    ring mark
  value   ringed
  means   line that closes on itself

mark scale-mark
  also    scale pattern
  value   scaly
  means   one feather edge that looks like a fish scale

mark scaling
  also    scaly pattern, scaliness
  value   scaly
  means   marks like fish scales in general

mark scallop
  also    scallop mark
  value   scalloped
  means   rounded feather edge of another shade

mark scalloping
  also    scallop pattern
  value   scalloped
  means   rounded feather edges in general

mark shaft-streak
  also    shaft line, shaft stripe
  value   streaked
  means   streak along the shaft of a feather

mark smudge
  also    smudge mark, thumb print
  value   smudged
  means   soft unclear mark

mark smudging
  value   smudged
  means   soft unclear marks in general

mark spangle
  value   spangled
  means   bright small spot

mark speck
  also    tiny spot
  value   speckled
  means   very small spot

mark speckle
  value   speckled
  means   small spot, one of many

mark speckling
  also    speckled pattern
  value   speckled
  means   small spots in general

mark spot
  value   spotted
  means   rounded mark

mark spotting
  also    spotted pattern
  value   spotted
  means   spots in general

mark stipple
  value   stippled
  means   very fine dot

mark stippling
  value   stippled
  means   very fine dots in general

mark streak
  also    streak mark, lengthwise streak
  value   streaked
  means   narrow mark running lengthwise

mark streaking
  also    streaked pattern, striation
  value   streaked
  means   narrow lengthwise marks in general

mark stripe
  position bar
  also    strip, vertical stripe, lengthwise stripe
  value   striped
  means   long band of clear edge

mark striping
  also    striped pattern
  value   striped
  means   long bands in general

mark teardrop
  also    tear drop, tear drop mark, drop shaped spot
  value   spotted
  means   spot like a falling drop

mark tiger-stripe
  value   tiger-striped
  means   dark uneven stripe on a warm ground

mark vermiculation
  also    vermiculated pattern, worm like line
  value   vermiculated
  means   very fine wavy line

mark wavy-bar
  also    wavy line
  value   wavy-barred
  means   bar that waves

mark zebra-stripe
  also    zebra stripe pattern
  value   zebra-striped
  means   bold black or white stripe

mark zigzag-line
  also    zig zag line
  value   zigzag
  means   line that turns sharply to and fro

pattern banded
  also    cross banded, double banded
  means   with a few broad bars across
  pato    PATO:0001946

pattern barred
  heard   bard, bared
  also    cross barred, barred across, crosswise striped, transversely striped, transversely barred
  also    horizontally striped
  means   with bars running crosswise
  pato    PATO:0002276

pattern blotched
  also    blotchy, splotched, splotchy, splodged, splodgy, blotched looking
  means   with large uneven spots
  pato    PATO:0000329

pattern brindled
  also    brindle
  means   dark streaks and flecks mixed through a brown ground

pattern camouflaged
  also    cryptic, cryptically patterned, cryptically coloured, cryptically colored, bark like pattern
  also    bark patterned, dead leaf pattern, leaf litter pattern
  means   in mixed marks that hide the bird on its ground

pattern checkered
  also    chequered, checkerboard, chequerboard, checker patterned, checkerboard patterned, check patterned
  also    draughtboard
  means   in squares of two shades in turn

pattern chevroned
  also    chevron patterned, arrowhead marked, v marked
  means   with marks like arrowheads

pattern clouded
  also    cloudy patterned, cloudily marked, smoky patterned
  means   with soft shapeless darker areas

pattern contrasting
  also    contrasty, sharply contrasting, high contrast, contrasted, strongly contrasting
  means   pale and dark areas that stand out from each other
  pato    PATO:0002275

pattern countershaded
  also    counter shaded
  means   dark on the upper side, pale on the lower

pattern crescentic
  also    crescent marked, crescent patterned, half moon marked
  means   with marks curved like a new moon

pattern crosshatched
  also    cross hatched, criss crossed
  means   with fine lines that cross

pattern dappled
  also    dapply
  means   with soft round paler spots
  pato    PATO:0001535

pattern diamond-patterned
  also    diamond marked
  means   with marks like diamonds

pattern dotted
  also    polka dot
  also    polka dotted
  means   with small clear round spots
  pato    PATO:0001512

pattern flamed
  also    flame streaked, flammulated
  means   with broad streaks like tongues of flame

pattern flecked
  also    flecky
  means   with very small short marks

pattern freckled
  also    freckly
  means   with small scattered brownish spots

pattern frosted
  means   with pale feather tips laid over a darker ground

pattern graded
  also    gradient, graduated shading, ombre, shading gradually, shading into, fading into, fades to
  also    fades into, merging into
  means   one colour passing slowly into another

pattern grizzled
  also    grizzly patterned
  means   grey and dark finely mixed

pattern harlequin-patterned
  also    clown like pattern, clown patterned
  means   in bold clear blocks of several colours

pattern laced
  also    lacy, lace like, lacy looking
  means   each feather with a narrow clear edge all round

pattern laddered
  also    ladder backed, ladder patterned, ladder like, zebra backed
  means   with evenly spaced bars like rungs

pattern lined
  also    finely lined, thin lined
  means   with thin lines

pattern marbled
  also    marbly, marble patterned, swirled, swirly
  means   with winding light and dark veins
  pato    PATO:0002273

pattern marked
  also    well patterned
  means   with marks of some kind

pattern mixed-coloured
  also    mixed colored, mixture of colours, mixture of colors, mix of colours, mix of colors, intermixed
  also    motley
  means   several colours together in no set order
  pato    PATO:0001534

pattern mottled
  heard   modeled, modelled, bottled, muddled
  also    mottly, patchily mottled, mottled looking, marled
  means   with uneven soft spots and patches run together
  pato    PATO:0002274

pattern multicoloured
  also    multi coloured, multi colored, multi colour, multi color, many coloured, many colored, colourful
  also    colorful, variegated, rainbow coloured, rainbow colored, multi toned, variously coloured
  also    variously colored, calico
  means   of several colours
  pato    PATO:0001533

pattern ocellated
  also    ocellate, peacock eyed, eyespotted
  means   with round spots ringed by another colour

pattern one-coloured
  also    one colored, mono coloured, mono colored, monochrome, monotone, uni coloured, uni colored
  also    single coloured, single colored, all one colour, all one color, all the same colour
  also    all the same color, self coloured, self colored, concolorous
  means   of a single colour all over
  pato    PATO:0001532

pattern patchy
  also    patched, patchwork, patchily coloured, patchily colored
  means   in uneven patches
  pato    PATO:0001608

pattern patterned
  also    intricately patterned, ornately patterned, complex pattern, finely patterned
  means   with a pattern of any kind

pattern pencilled
  also    penciled, finely pencilled, finely penciled
  means   with very fine lines as if drawn by pencil

pattern peppered
  also    pepper marked
  means   thickly sown with tiny dark specks

pattern pied
  also    piebald, magpie patterned, panda like, penguin like pattern, skewbald
  means   in clear areas of black and white

pattern pinstriped
  also    pin striped
  means   with very thin lengthwise lines

pattern plain
  heard   plane, planes
  heard-before :area
  heard-after :be, :area
  also    plainer, plain looking, unpatterned, featureless, nondescript, plain coloured, plain colored
  also    unadorned, markless, unmarked
  means   with no marks
  pato    PATO:0002442

pattern reticulated
  also    net like pattern, netted, reticulate, honeycombed
  means   with a net of fine lines
  pato    PATO:0001947

pattern ringed
  also    ring marked, ring patterned, annulated
  means   with one or more rings

pattern saddled
  also    saddle marked
  means   a darker area over the back like a saddle

pattern salt-and-pepper
  also    pepper and salt, salt and peppered
  means   tiny light and dark specks mixed evenly

pattern scalloped
  also    scallop edged, scallop patterned, scallopy, scalloped looking
  means   feathers with rounded pale or dark edges like overlapped shells

pattern scaly
  also    scaled, scaley, scale like, scaly looking, fish scaled, fish scale like, squamate
  means   feather edges that look like fish scales

pattern shaded
  also    shadowy patterned
  means   with soft areas somewhat darker

pattern smudged
  also    smudgy, smeared, smeary
  means   with soft unclear marks

pattern spangled
  also    star spangled
  means   with bright small spots, spread about

pattern spattered
  also    splattered, paint splashed
  means   with uneven drops as if thrown on

pattern speckled
  also    speckly, specked, speckledy, egg shell speckled
  means   with many small spots

pattern spotted
  also    spotty, leopard spotted, leopard like
  means   with spots
  pato    PATO:0000333

pattern stippled
  also    stipply
  means   with many very fine dots

pattern streaked
  also    streaky, striated, lengthwise streaked
  means   with narrow marks running lengthwise, as on a sparrow

pattern striped
  also    stripy, stripey, pinstripey, banded lengthwise, vertically striped, lengthwise striped
  also    multi striped, badger striped
  means   with broad lengthwise bands of clear edge

pattern tiger-striped
  also    tiger like, tigerish
  means   with dark uneven stripes on a warm ground

pattern tortoiseshell-patterned
  also    tortoise shell patterned
  means   mixed blotches of black, orange and brown

pattern tricoloured
  also    tri coloured, tri colored, tricolour, tricolor, three coloured, three colored, three toned
  means   of three colours

pattern two-toned
  also    two tone, two tones, bi coloured, bi colored, two coloured, two colored, bicolour, bicolor
  also    dual coloured, dual colored, duotone
  means   of two colours

pattern unbarred
  means   with no bars

pattern unspotted
  means   with no spots

pattern unstreaked
  also    streakless
  means   with no streaks

pattern unstriped
  means   with no stripes

pattern vermiculated
  also    vermiculate, finely wavy lined, worm lined
  means   with very fine, close, wavy lines

pattern wavy-barred
  also    wavy, wavy lined, wavily barred, rippled, undulating bars
  means   with bars that wave

pattern zebra-striped
  also    zebra like, zebra coloured, zebra colored, zebra patterned
  means   in bold black and white stripes

pattern zigzag
  also    zig zag, zigzagged, zigzag patterned
  means   with lines that turn sharply to and fro

mark pattern
  value   patterned
  means   a pattern of some kind
