# Colours of feathers and bare parts.
# lab is CIE Lab under D65, worked out from the sRGB value CSS gives that name, or else from memory as marked.

# from memory
colour amber
  also    amber yellow, amber orange, amber coloured, amber colored
  lab     69 18 68
  means   deep orange-yellow, as resin; often of eyes

# from memory
colour apple-green
  lab     69 -34 70
  mixes   no
  means   fresh, slightly yellowish green

# from memory
colour apricot
  also    apricot orange, apricot coloured, apricot colored
  lab     77 17 38
  means   soft pale orange-pink

# CSS aquamarine
colour aquamarine
  also    aquamarine coloured, aquamarine colored
  lab     92 -46 10
  means   pale greenish blue, as shallow sea

# from memory
colour ash-grey
  also    ash gray, ashy, ashen, ashy grey, ashy gray, cinereous
  lab     73 -1 1
  means   pale to middling grey, as wood ash

# from memory
colour auburn
  also    auburn coloured, auburn colored
  lab     33 27 27
  means   dark reddish brown, said of hair

# from memory
colour azure-blue
  also    azure
  lab     57 -4 -41
  mixes   no
  means   clear bright sky blue

# CSS beige; paint and feathers called beige lie near 80 3 18, from memory
colour beige
  also    beige coloured, beige colored
  lab     96 -4 12
  means   pale greyish yellow-brown, near to cream
  pato    PATO:0002410

# CSS black
colour black
  heard   block
  also    blk, blackened, black coloured, black colored
  lab     0 0 0
  mixes   no
  means   the darkest of all, with no hue
  pato    PATO:0000317

# from memory
colour black-brown
  also    blackish brown
  lab     16 5 9
  mixes   no
  means   brown so dark as to be near black

# from memory
colour blackish-green
  lab     19 -11 4
  mixes   no
  means   green so dark as to be near black

# from memory
colour blackish-grey
  also    blackish gray
  lab     25 0 -1
  mixes   no
  means   grey so dark as to be near black

# from memory
colour blond
  also    blonde, blond coloured, blond colored
  lab     84 -1 29
  means   pale yellowish, as fair hair

# from memory
colour blood-red
  lab     29 47 33
  mixes   no
  means   deep dark red

# CSS blue
colour blue
  heard   blew
  heard-before :area, :colour, :mark
  also    bluey, blueish, blue coloured, blue colored
  lab     32 79 -108
  means   as a clear deep sky
  pato    PATO:0000318

# from memory
colour blue-black
  also    bluish black, blueish black
  lab     13 2 -12
  mixes   no
  means   black with a blue cast

# from memory
colour blue-green
  also    bluish green, blueish green, bluey green
  lab     52 -29 -7
  mixes   no
  means   green leaning to blue

# from memory
colour blue-grey
  also    blue gray, bluish grey, bluish gray, blueish grey, blueish gray
  lab     61 -3 -11
  mixes   no
  means   grey leaning to blue

# CSS blueviolet
colour blue-violet
  also    bluish violet
  lab     42 70 -75
  mixes   no
  means   violet leaning to blue

# from memory
colour bluish-white
  also    blueish white
  lab     93 -1 -3
  mixes   no
  means   white with a cold blue cast

# from memory
colour bottle-green
  lab     31 -25 7
  mixes   no
  means   very dark green, as old glass

# from memory
colour brick-red
  also    brick coloured, brick colored
  lab     44 42 35
  mixes   no
  means   dull orange-red, as fired brick

# from memory
colour bronze
  also    bronzy, bronzed, bronze brown, bronzy brown, bronze coloured, bronze colored
  lab     47 7 32
  means   dark yellowish brown with a metal sheen
  pato    PATO:0002363

# from memory
colour bronze-green
  also    bronzy green, bronzed green
  lab     43 -14 26
  mixes   no
  means   dark green with a bronze sheen

# CSS brown; redder than most feathers called brown, which lie near 41 13 24, from memory
colour brown
  also    brn, browny, brown coloured, brown colored
  lab     38 50 31
  means   dark and of an orange to yellow hue, as bark or earth
  pato    PATO:0000952

# from memory
colour brown-green
  also    brownish green
  lab     43 -7 30
  mixes   no
  means   green leaning to brown
  pato    PATO:0001942

# from memory
colour brown-grey
  also    brown gray, brownish grey, brownish gray
  lab     55 2 7
  mixes   no
  means   grey leaning to brown

# from memory
colour brown-orange
  also    brownish orange
  lab     55 26 49
  mixes   no
  means   orange leaning to brown

# from memory
colour brownish-black
  lab     11 3 6
  mixes   no
  means   black with a brown cast

# from memory
colour brownish-red
  lab     37 37 28
  mixes   no
  means   dark red leaning to brown

# from memory
colour brownish-white
  lab     85 1 9
  mixes   no
  means   white dulled with brown

# from memory
colour brownish-yellow
  lab     65 4 46
  mixes   no
  means   yellow dulled with brown

# from memory
colour buff
  heard   bluff
  also    manila, manilla, buffy, buff coloured, buff colored
  lab     76 5 34
  means   pale yellowish brown, as undyed leather

# from memory
colour buffish-white
  also    buffy white
  lab     90 0 14
  mixes   no
  means   white with a buff cast

# from memory
colour burgundy
  also    claret, wine red, wine coloured, wine colored, burgundy coloured, burgundy colored
  lab     24 38 10
  means   very dark purplish red

# from memory
colour burnt-orange
  lab     50 41 52
  mixes   no
  means   dark strong orange leaning to brown

# from memory
colour butter-yellow
  also    buttery, buttery yellow, butter coloured, butter colored
  lab     91 -6 45
  mixes   no
  means   soft pale yellow

# from memory
colour canary-yellow
  lab     91 -11 80
  mixes   no
  means   clear bright yellow

# from memory
colour caramel
  also    caramel brown, toffee coloured, toffee colored, caramel coloured, caramel colored
  lab     56 20 44
  means   warm middling yellowish brown

# from memory
colour carmine
  also    carmine red, carmine coloured, carmine colored
  lab     38 60 27
  means   deep cold red

# from memory
colour cerulean
  also    cerulean blue, cerulean coloured, cerulean colored
  lab     51 -5 -37
  means   strong clear blue

# from memory
colour charcoal
  also    charcoal grey, charcoal gray, charcoal black, charcoal coloured, charcoal colored
  lab     25 0 -1
  means   very dark grey, near to black

# CSS chartreuse
colour chartreuse
  also    chartreuse coloured, chartreuse colored
  lab     90 -68 86
  means   very bright yellow-green

# from memory
colour cherry-red
  also    cherry coloured, cherry colored
  lab     41 62 35
  mixes   no
  means   clear deep red

# from memory
colour chestnut
  heard   chest knot
  also    chestnut brown, chestnut red, bay coloured, bay colored, bay brown, chestnut coloured
  also    chestnut colored
  lab     35 26 26
  means   deep reddish brown

# CSS chocolate; feathers called chocolate lie near 28 14 17, from memory
colour chocolate
  also    chocolaty, chocolate brown, choc brown, cocoa, cocoa brown, chocolate coloured, chocolate colored
  lab     56 37 57
  means   rich brown

# from memory
colour cinnamon
  heard   sin a man
  also    cinnamon brown, cinnamon coloured, cinnamon colored
  lab     53 20 38
  means   warm light reddish brown, as the spice

# from memory
colour clay-coloured
  also    clay colored, clay colour, clay color, clay brown
  lab     65 6 20
  mixes   no
  means   dull pale brown, as clay

# from memory
colour cobalt
  also    cobalt blue, cobalt coloured, cobalt colored
  lab     34 21 -54
  means   strong deep blue

# from memory
colour coffee-brown
  also    coffee coloured, coffee colored
  lab     31 10 16
  mixes   no
  means   dark brown

# from memory
colour copper
  also    coppery, copper coloured, copper colored, copper red
  lab     52 27 37
  means   shining orange-brown, as the metal

# CSS coral
colour coral
  heard   choral
  also    coral pink, coral orange, coral coloured, coral colored
  lab     67 45 47
  means   pinkish orange

# from memory
colour coral-red
  lab     53 59 40
  mixes   no
  means   bright red leaning to pink-orange

# CSS cornflowerblue
colour cornflower-blue
  lab     62 9 -49
  mixes   no
  means   clear middling blue

# from memory
colour cream
  also    creamy, cream white, creamy white, creamish white, cream coloured, cream colored
  lab     93 0 14
  means   white with a soft yellow cast

# CSS crimson
colour crimson
  also    crimson red, crimson coloured, crimson colored
  lab     47 71 34
  means   deep red leaning to purple

# CSS cyan
colour cyan
  also    aqua, aqua blue, cyan coloured, cyan colored
  lab     91 -48 -14
  means   bright, halfway from green to blue
  pato    PATO:0000319

# from memory
colour dirty-white
  also    dingy white, grubby white
  lab     86 -1 7
  mixes   no
  means   white that looks soiled

# from memory
colour dove-grey
  also    dove gray
  lab     69 1 0
  mixes   no
  means   soft grey, faintly pink

# from memory
colour dusky
  also    duskier, fuscous, dusky coloured, dusky colored
  lab     35 2 5
  means   dark grey-brown, of no clear hue

# from memory
colour earth-brown
  also    earthy, earthy brown, earth coloured, earth colored
  lab     39 6 19
  mixes   no
  means   middling dull brown

# from memory
colour ebony
  lab     13 1 2
  means   black, very faintly brown

# from memory
colour emerald
  also    emerald green, emerald coloured, emerald colored
  lab     58 -50 26
  means   clear rich green, as the gem

# from memory
colour fawn
  also    fawn brown, fawn coloured, fawn colored
  lab     70 7 29
  means   pale soft yellowish brown

# from memory
colour ferruginous
  also    iron rust coloured, iron rust colored
  lab     42 28 35
  means   reddish brown, as iron rust

# from memory
colour flame-orange
  also    flame red, flame coloured, flame colored, fiery orange, fiery red
  lab     58 55 61
  mixes   no
  means   very bright orange-red

# from memory
colour flesh-coloured
  also    flesh colored, flesh, fleshy, flesh colour, flesh color, flesh pink, skin coloured, skin colored
  also    fleshy pink
  lab     77 14 19
  means   dull pink, as pale bare skin; often of legs and bills

# CSS forestgreen
colour forest-green
  lab     51 -50 45
  mixes   no
  means   deep leaf green

# from memory
colour ginger
  also    gingery, ginger brown, ginger coloured, ginger colored
  lab     52 26 45
  means   light orange-brown

# CSS gold
colour gold
  also    golden, golden yellow, gold yellow, gold coloured, gold colored
  lab     87 -2 87
  means   rich strong yellow, as the metal

# from memory
colour golden-brown
  also    gold brown
  lab     53 14 45
  mixes   no
  means   brown with a strong yellow glow

# from memory
colour golden-green
  also    gold green
  lab     61 -20 52
  mixes   no
  means   green with a gold sheen

# from memory
colour grass-green
  lab     58 -37 47
  mixes   no
  means   clear green, as a meadow

# CSS green
colour green
  heard   grin
  also    greeny, grn, green coloured, green colored
  lab     46 -52 50
  means   as fresh leaves
  pato    PATO:0000320

# from memory
colour green-blue
  also    greenish blue, bluish turquoise, greeny blue
  lab     49 -18 -22
  mixes   no
  means   blue leaning to green

# from memory
colour green-brown
  also    greenish brown
  lab     41 -3 25
  mixes   no
  means   brown leaning to green

# from memory
colour green-grey
  also    green gray, greenish grey, greenish gray
  lab     60 -7 6
  mixes   no
  means   grey leaning to green

# CSS greenyellow
colour green-yellow
  also    greenish yellow
  lab     92 -52 82
  mixes   no
  means   yellow leaning to green

# from memory
colour greenish-black
  lab     13 -8 3
  mixes   no
  means   black with a green cast

# from memory
colour greenish-white
  lab     92 -5 6
  mixes   no
  means   white with a green cast

# CSS gray
colour grey
  also    coal gray, coal grey
  also    gray, grey coloured, grey colored, gray coloured, gray colored
  lab     54 0 0
  means   between black and white, with no hue
  pato    PATO:0000950

# from memory
colour grey-blue
  also    gray blue, greyish blue, grayish blue
  lab     57 -3 -21
  mixes   no
  means   blue dulled with grey

# from memory
colour grey-brown
  also    gray brown, greyish brown, grayish brown
  lab     50 4 12
  mixes   no
  means   brown dulled with grey

# from memory
colour grey-buff
  also    gray buff, greyish buff, grayish buff
  lab     72 2 18
  mixes   no
  means   buff dulled with grey

# from memory
colour grey-green
  also    gray green, greyish green, grayish green
  lab     58 -12 10
  mixes   no
  means   green dulled with grey

# from memory
colour grey-olive
  also    gray olive, greyish olive, grayish olive
  lab     49 -4 15
  mixes   no
  means   olive dulled with grey

# from memory
colour greyish-black
  also    grayish black
  lab     18 0 -1
  mixes   no
  means   black paled with grey

# from memory
colour greyish-pink
  also    grayish pink
  lab     70 10 5
  mixes   no
  means   pink dulled with grey

# from memory
colour greyish-white
  also    grayish white
  lab     89 -1 0
  mixes   no
  means   white dulled with grey

# from memory
colour gunmetal
  also    gunmetal grey, gunmetal gray, iron grey, iron gray, gunmetal coloured, gunmetal colored
  lab     38 -1 -5
  means   dark cold grey

# from memory
colour hazel
  also    hazel brown, hazel coloured, hazel colored
  lab     47 7 30
  means   yellowish brown; often of eyes

# from memory
colour honey-brown
  also    honey coloured, honey colored, honey yellow
  lab     67 11 52
  mixes   no
  means   warm brownish yellow

# from memory
colour horn
  also    horn grey, horn gray, horn brown, horn colour, horn color, horn coloured, horn colored
  lab     68 1 14
  means   dull greyish yellow-brown; of bills

# CSS hotpink
colour hot-pink
  also    shocking pink, neon pink
  lab     65 64 -11
  mixes   no
  means   very strong pink

# from memory
colour ice-blue
  also    icy blue
  lab     89 -4 -8
  mixes   no
  means   very pale cold blue

# CSS indigo
colour indigo
  also    indigo blue, indigo coloured, indigo colored
  lab     20 52 -53
  means   very dark blue leaning to violet

# from memory
colour isabelline
  lab     75 5 21
  means   pale greyish sandy buff

# CSS ivory
colour ivory
  also    ivory white, ivory coloured, ivory colored
  lab     100 -3 7
  means   white with a faint yellow cast

# from memory
colour jade
  also    jade green, jade coloured, jade colored
  lab     58 -41 14
  means   middling slightly bluish green

# from memory
colour jet-black
  also    jet, pitch black, coal black, inky black, ink black, raven black, midnight black
  lab     3 0 0
  mixes   no
  means   black of the deepest kind

# CSS khaki; cloth and feathers called khaki lie near 62 3 31, from memory
colour khaki
  also    khaki coloured, khaki colored
  lab     90 -9 45
  means   dull brownish yellow

# CSS lavender; the flower lies near 65 20 -30, from memory
colour lavender
  also    lavender coloured, lavender colored
  lab     92 4 -10
  means   very pale bluish purple

# from memory
colour lead-grey
  also    lead gray, lead coloured, lead colored, leaden, plumbeous, leaden grey, leaden gray
  lab     47 0 -5
  mixes   no
  means   dark dull grey, faintly blue

# from memory
colour leaf-green
  lab     58 -37 42
  mixes   no
  means   green as a young leaf

# from memory
colour lemon
  also    lemon yellow, lemony, lemon coloured, lemon colored
  lab     91 -13 75
  means   clear light yellow

# from memory
colour lilac
  also    lilac coloured, lilac colored
  lab     68 19 -20
  means   pale pinkish purple
  pato    PATO:0001943

# CSS lime; the fruit lies near 78 -32 72, from memory
colour lime
  also    limey, lime coloured, lime colored
  lab     88 -86 83
  means   very bright green

# CSS limegreen
colour lime-green
  lab     73 -67 61
  mixes   no
  means   bright, slightly yellowish green

# from memory
colour liver-coloured
  also    liver colored, liver brown
  lab     26 19 15
  mixes   no
  means   dark reddish brown

# CSS magenta
colour magenta
  also    fuchsia, fuschia, fuscia, magenta coloured, magenta colored
  lab     60 98 -61
  means   strong pinkish purple
  pato    PATO:0000321

# from memory
colour mahogany
  also    mahogany brown, mahogany red, mahogany coloured, mahogany colored
  lab     25 22 20
  means   dark reddish brown, as the polished wood

# CSS maroon
colour maroon
  also    maroon coloured, maroon colored
  lab     26 48 38
  means   very dark brownish red
  pato    PATO:0001426

# from memory
colour mauve
  also    mauve coloured, mauve colored
  lab     61 19 -16
  means   pale greyish purple

# CSS midnightblue
colour midnight-blue
  lab     16 32 -50
  mixes   no
  means   very dark blue

# from memory
colour milky-white
  also    milk white, milky
  lab     95 -1 5
  mixes   no
  means   soft clouded white

# from memory
colour mint-green
  also    mint coloured, mint colored, minty
  lab     83 -27 13
  mixes   no
  means   pale fresh green

# from memory
colour moss-green
  also    mossy green
  lab     49 -16 36
  mixes   no
  means   dull yellowish green

# from memory
colour mouse-brown
  also    mousy brown, mousey brown
  lab     47 4 11
  mixes   no
  means   dull greyish brown

# from memory
colour mouse-grey
  also    mouse gray, mousy, mousey, mouse coloured, mouse colored
  lab     54 1 4
  mixes   no
  means   dull grey, faintly brown

# from memory
colour mustard
  heard   mustered
  also    mustard yellow, mustardy, mustard coloured, mustard colored
  lab     69 6 63
  means   dark brownish yellow

# CSS navy
colour navy
  also    navy blue, navy coloured, navy colored
  lab     13 48 -65
  means   very dark blue

# from memory
colour ochre
  heard   oak her, okra, joker
  also    ocher, ochreous, ochraceous, ochry, ochre yellow, ochre coloured, ochre colored
  lab     61 13 51
  means   brownish yellow, as raw earth
  pato    PATO:0001945

# from memory
colour off-white
  also    whitish cream
  lab     94 -1 5
  mixes   no
  means   white, but not clean white

# CSS olive
colour olive
  also    olivaceous, olive coloured, olive colored
  lab     52 -13 57
  means   dark dull yellowish green

# from memory
colour olive-brown
  also    olivaceous brown, olivey brown
  lab     41 0 23
  mixes   no
  means   brown leaning to olive

# from memory
colour olive-green
  also    olivaceous green, olivey green
  lab     48 -16 35
  mixes   no
  means   dull green, as the unripe fruit
  pato    PATO:0001942

# from memory
colour olive-grey
  also    olive gray, olivaceous grey, olivaceous gray
  lab     52 -3 12
  mixes   no
  means   grey leaning to olive

# from memory
colour olive-yellow
  also    olivaceous yellow
  lab     64 -9 50
  mixes   no
  means   yellow dulled with olive

# CSS orange
colour orange
  also    orangey, orangy, orange coloured, orange colored
  lab     75 24 79
  means   between red and yellow
  pato    PATO:0000953

# from memory
colour orange-brown
  also    orangish brown, orangey brown
  lab     52 26 44
  mixes   no
  means   brown leaning to orange

# from memory
colour orange-buff
  also    orangish buff, orangey buff
  lab     70 15 41
  mixes   no
  means   buff leaning to orange

# from memory
colour orange-pink
  also    orangish pink, orangey pink
  lab     73 27 27
  mixes   no
  means   pink leaning to orange

# CSS orangered
colour orange-red
  also    orangish red, orangey red
  lab     58 68 69
  mixes   no
  means   red leaning to orange

# from memory
colour orange-yellow
  also    orangish yellow, orangey yellow
  lab     78 12 76
  mixes   no
  means   yellow leaning to orange

# CSS peachpuff
colour peach
  also    peachy, peachy pink, peach coloured, peach colored
  lab     89 8 21
  means   pale soft orange-pink

# from memory
colour pearl-grey
  also    pearl gray, pearly, pearly grey, pearly gray
  lab     84 0 -1
  mixes   no
  means   very pale clean grey

# CSS pink
colour pink
  also    pinky, pink coloured, pink colored
  lab     84 24 3
  means   pale red
  pato    PATO:0000954

# from memory
colour pink-brown
  also    pinkish brown, pinky brown
  lab     56 16 15
  mixes   no
  means   brown leaning to pink

# from memory
colour pink-buff
  also    pinkish buff, pinky buff
  lab     76 10 21
  mixes   no
  means   buff leaning to pink

# from memory
colour pink-grey
  also    pink gray, pinkish grey, pinkish gray, pinky grey, pinky gray
  lab     69 5 3
  mixes   no
  means   grey leaning to pink

# from memory
colour pink-orange
  also    pinkish orange, pinky orange
  lab     70 32 34
  mixes   no
  means   orange leaning to pink

# from memory
colour pinkish-red
  also    pinky red
  lab     52 57 21
  mixes   no
  means   red leaning to pink

# from memory
colour pinkish-white
  also    pinky white
  lab     91 4 4
  mixes   no
  means   white with a pink cast

# from memory
colour plum-purple
  also    plum coloured, plum colored
  lab     26 30 -14
  mixes   no
  means   dark reddish purple, as the ripe fruit

# CSS powderblue
colour powder-blue
  also    baby blue, pastel blue
  lab     86 -14 -8
  mixes   no
  means   pale soft blue

# from memory
colour primrose
  also    primrose yellow, primrose coloured, primrose colored
  lab     90 -8 46
  means   pale, slightly greenish yellow

# from memory
colour pumpkin-orange
  also    pumpkin coloured, pumpkin colored
  lab     62 38 63
  mixes   no
  means   strong deep orange

# CSS purple
colour purple
  also    purply, purpley, purple coloured, purple colored
  lab     30 59 -36
  means   between red and blue, strong
  pato    PATO:0000951

# from memory
colour purple-blue
  also    purplish blue
  lab     32 31 -48
  mixes   no
  means   blue leaning to purple

# from memory
colour purple-brown
  also    purplish brown
  lab     28 14 5
  mixes   no
  means   brown leaning to purple

# from memory
colour purple-grey
  also    purple gray, purplish grey, purplish gray
  lab     55 7 -7
  mixes   no
  means   grey leaning to purple

# from memory
colour purplish-black
  lab     9 10 -9
  mixes   no
  means   black with a purple cast

# from memory
colour purplish-red
  lab     34 47 1
  mixes   no
  means   red leaning to purple

# CSS red
colour red
  heard   read
  heard-before :area, :mark, :suffix, :colour
  heard-after is, are, it's, :colour, :tone
  also    reddy, red coloured, red colored
  lab     53 80 67
  means   as fresh blood or a ripe berry
  pato    PATO:0000322

# from memory
colour red-brown
  also    reddish brown
  lab     39 27 29
  mixes   no
  means   brown leaning to red
  pato    PATO:0001287

# from memory
colour red-orange
  also    reddish orange
  lab     57 58 55
  mixes   no
  means   orange leaning to red

# from memory
colour red-purple
  also    reddish purple
  lab     34 47 -14
  mixes   no
  means   purple leaning to red

# from memory
colour reddish-pink
  lab     59 46 14
  mixes   no
  means   pink leaning to red

# from memory
colour rose
  heard   roes
  also    rosy, roseate, rose pink, rosy pink, rose coloured, rose colored
  lab     63 42 5
  means   soft pure pink
  pato    PATO:0001425

# from memory
colour rose-red
  also    rosy red
  lab     48 61 17
  mixes   no
  means   pinkish red

# CSS royalblue
colour royal-blue
  lab     48 26 -65
  mixes   no
  means   strong bright blue

# from memory
colour ruby
  also    ruby red, ruby coloured, ruby colored
  lab     38 59 22
  means   deep clear red, as the gem

# from memory
colour rufous
  heard   rufus, roof us
  also    foxy, fox red, rufus, foxy red, rufescent, rufous coloured, rufous colored
  lab     44 32 36
  means   red-brown, as the coat of a fox

# from memory
colour rufous-brown
  also    rufescent brown
  lab     44 24 32
  mixes   no
  means   brown leaning to rufous

# from memory
colour russet
  also    russet brown, russet coloured, russet colored
  lab     39 25 33
  means   reddish brown, as some apples

# from memory
colour rusty
  also    rusty brown
  also    rust, rustier, rust coloured, rust colored, rust red, rusty red, rusty coloured, rusty colored
  lab     48 33 42
  means   orange-brown, as old iron

# from memory
colour saffron
  also    saffron yellow, saffron coloured, saffron colored
  lab     77 10 71
  means   deep orange-yellow

# from memory
colour sage-green
  also    sage coloured, sage colored
  lab     66 -10 14
  mixes   no
  means   soft greyish green

# CSS salmon
colour salmon
  also    salmon pink, salmony, salmon coloured, salmon colored
  lab     67 45 29
  means   orange-pink, as the flesh of the fish

# from memory
colour sandy
  also    sandier, sand coloured, sand colored, sandy brown, sandy buff, sandy coloured, sandy colored
  lab     74 3 27
  means   pale yellowish brown, as dry sand

# from memory
colour scarlet
  also    scarlet red, scarlet coloured, scarlet colored
  lab     49 67 54
  means   very bright, faintly orange red

# CSS seagreen
colour sea-green
  lab     52 -40 20
  mixes   no
  means   middling bluish green

# from memory
colour sepia
  also    sepia brown, sepia coloured, sepia colored
  lab     32 9 18
  means   dark greyish brown

# from memory
colour shell-pink
  lab     85 12 9
  mixes   no
  means   very pale warm pink

# CSS sienna
colour sienna
  also    burnt sienna, sienna coloured, sienna colored
  lab     44 29 36
  means   warm orange-brown

# CSS silver
colour silver
  also    silvery, silver coloured, silver colored
  lab     78 0 0
  means   pale shining grey

# from memory
colour silver-grey
  also    silver gray, silvery grey, silvery gray
  lab     75 -1 -2
  mixes   no
  means   pale grey with a silver sheen

# from memory
colour silver-white
  also    silvery white
  lab     92 0 -1
  mixes   no
  means   white with a silver sheen

# CSS skyblue
colour sky-blue
  lab     79 -15 -21
  mixes   no
  means   clear light blue

# from memory
colour slate
  also    slaty, slatey, slate coloured, slate colored
  lab     43 -2 -7
  means   dark grey, faintly blue

# CSS slateblue; feathers called slate blue lie near 47 -3 -20, from memory
colour slate-blue
  also    slaty blue, slatey blue
  lab     45 36 -58
  mixes   no
  means   dull blue, as some roof slate

# CSS slategray
colour slate-grey
  also    slate gray, slaty grey, slaty gray, slatey grey, slatey gray
  lab     53 -2 -11
  mixes   no
  means   grey leaning to blue, as roof slate

# from memory
colour smoky
  also    smokey, smoky grey, smoky gray, smoke grey, smoke gray, smokey grey, smokey gray, smoky coloured
  also    smoky colored
  lab     50 1 -2
  means   middling clouded grey

# CSS snow
colour snow-white
  also    snowy white, pure white, brilliant white, chalk white, chalky white
  lab     99 2 1
  mixes   no
  means   clean bright white

# from memory
colour sooty
  also    sooty black, sooty brown, soot coloured, soot colored, sooty coloured, sooty colored
  lab     18 2 1
  means   dull brownish black, as soot

# CSS steelblue
colour steel-blue
  also    steely blue
  lab     52 -4 -32
  mixes   no
  means   greyish blue, as tempered steel

# from memory
colour steel-grey
  also    steel gray, steely grey, steely gray, steely
  lab     50 -2 -4
  mixes   no
  means   cold middling grey

# from memory
colour stone-grey
  also    stone gray, stone coloured, stone colored
  lab     65 -1 8
  mixes   no
  means   dull grey, faintly yellow

# from memory
colour straw-yellow
  also    straw coloured, straw colored, strawy
  lab     80 -3 40
  mixes   no
  means   pale dull yellow, as dry straw

# from memory
colour sulphur
  also    sulfur, sulphur yellow, sulfur yellow, sulphury, sulfury, sulphur coloured, sulphur colored
  lab     89 -13 66
  means   pale, slightly greenish yellow

# CSS tan
colour tan
  also    tannish brown, tan brown, tan coloured, tan colored
  lab     75 5 24
  means   light yellowish brown

# from memory
colour tangerine
  also    tangerine orange, tangerine coloured, tangerine colored
  lab     67 32 66
  means   bright strong orange

# from memory
colour taupe
  also    taupe coloured, taupe colored
  lab     51 2 11
  means   greyish brown

# from memory
colour tawny
  heard   tony
  also    tawny brown, tawny coloured, tawny colored
  lab     56 15 41
  means   warm yellowish brown, as a lion

# CSS teal
colour teal
  also    teal green, teal blue, teal coloured, teal colored
  lab     48 -29 -8
  means   dark greenish blue

# from memory
colour terracotta
  also    terra cotta, terracotta coloured, terracotta colored
  lab     54 31 34
  means   orange-brown, as unglazed pots

# CSS turquoise
colour turquoise
  also    turquoise blue, turquoise green, turquoise coloured, turquoise colored
  lab     81 -44 -4
  means   bright, between blue and green

# from memory
colour ultramarine
  also    ultramarine blue, ultramarine coloured, ultramarine colored
  lab     29 36 -63
  means   very strong deep blue

# from memory
colour umber
  also    umber brown, umber coloured, umber colored
  lab     36 9 18
  means   dark dull brown

# from memory
colour vermilion
  also    vermillion, vermilion red, vermilion coloured, vermilion colored
  lab     52 61 49
  means   bright orange-red
  pato    PATO:0001302

# from memory
colour vinaceous
  also    vinous, wine pink, vinaceous pink, vinous pink, vinaceous coloured, vinaceous colored
  lab     62 16 11
  means   soft greyish pink, as watered wine

# CSS violet; the flower lies near 35 40 -48, from memory
colour violet
  also    violet coloured, violet colored
  lab     70 56 -37
  means   bluish purple
  pato    PATO:0001424

# from memory
colour violet-blue
  lab     34 37 -58
  mixes   no
  means   blue leaning to violet

# from memory
colour walnut-brown
  also    walnut coloured, walnut colored
  lab     34 10 21
  mixes   no
  means   dark brown, as the wood

# CSS wheat
colour wheaten
  also    wheat coloured, wheat colored, wheaten coloured, wheaten colored
  lab     89 2 24
  means   pale soft yellow-brown

# CSS white
colour white
  also    whit
  heard   wight
  heard-before :area, :mark, :suffix
  also    wht, white coloured, white colored
  lab     100 0 0
  mixes   no
  means   the lightest of all, with no hue
  pato    PATO:0000323

# from memory
colour wood-brown
  also    bark coloured, bark colored, bark brown, wood coloured, wood colored
  lab     48 7 23
  mixes   no
  means   middling dull brown

# CSS yellow
colour yellow
  also    yellowy, yel, yellow coloured, yellow colored
  lab     97 -22 94
  means   as a buttercup or ripe lemon
  pato    PATO:0000324

# from memory
colour yellow-brown
  also    yellowish brown, yellowy brown
  lab     56 8 43
  mixes   no
  means   brown leaning to yellow
  pato    PATO:0002411

# from memory
colour yellow-buff
  also    yellowish buff, yellowy buff
  lab     79 2 41
  mixes   no
  means   buff leaning to yellow

# CSS yellowgreen
colour yellow-green
  also    yellowish green, yellowy green
  lab     77 -38 67
  mixes   no
  means   green leaning to yellow
  pato    PATO:0001941

# from memory
colour yellow-grey
  also    yellow gray, yellowish grey, yellowish gray
  lab     70 -3 17
  mixes   no
  means   grey leaning to yellow

# from memory
colour yellow-olive
  also    yellowish olive
  lab     56 -10 43
  mixes   no
  means   olive leaning to yellow

# from memory
colour yellow-orange
  also    yellowish orange, yellowy orange
  lab     74 20 71
  mixes   no
  means   orange leaning to yellow
  pato    PATO:0001944

# from memory
colour yellowish-white
  also    yellowy white
  lab     94 -3 14
  mixes   no
  means   white with a yellow cast
