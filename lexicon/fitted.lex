# What people call colours, what they mean by parts, and how much they speak of each: written by
# `examples/evaluate --fit`, for all kinds together, from the sentences in which people described 2,930 birds
# (Reed et al. 2016 over CUB-200-2011) against what the accounts state. Not to be changed by hand; entries that are
# stand in naming.lex. `naming`: as there.

# Shares of colour names, in a hundred.
spoken colours
  shares black 25.646, white 21.908, brown 13.599, grey 10.447, yellow 9.672, orange 4.379
  shares red 3.889, blue 2.422, green 1.941, tan 1.027, dark 0.694, pink 0.449, pale 0.436
  shares cream 0.350, purple 0.188, gold 0.182, beige 0.179, bright 0.119, red-brown 0.119
  shares rusty 0.112, off-white 0.095, jet-black 0.090, grey-brown 0.087, green-yellow 0.078
  shares snow-white 0.078, glossy 0.076, brown-grey 0.074, silver 0.069, yellow-green 0.066
  shares red-orange 0.057, iridescent 0.055, dull 0.049, taupe 0.047, teal 0.047
  shares turquoise 0.041, peach 0.040, orange-brown 0.039, blue-grey 0.033, olive 0.033
  shares green-brown 0.032, lime-green 0.032
  means how common a colour name is in speech

# How many colours of a part a sentence speaks of, if the part looks as on an average bird.
spoken-of colours
  rates bird 0.748, belly 0.325, wing 0.320, bill 0.285, breast 0.212, crown 0.172
  rates head 0.138, throat 0.078, tail 0.072, back 0.060, eye-ring 0.058, iris 0.056
  rates wing-bar 0.050, feet 0.048, secondaries 0.037, supercilium 0.037, legs 0.036
  rates nape 0.034, primaries 0.028, neck 0.026, flanks 0.025, wing-coverts 0.022
  rates cheek 0.022, face 0.016
  means how much people talk of each part

# What is meant by a part where the tree of parts suggests otherwise, against 1 for the part itself.
meant bird
  weights underparts 0.18
  means nothing yet

meant head
  weights crest 0.40, face 0.17, throat 0.06
  means nothing yet

meant crown
  weights lateral-crown-stripe 0.69, crown-stripe 0.21
  means nothing yet

meant nape
  weights head 0.60
  means nothing yet

meant supercilium
  weights lores 0.62, face 0.16
  means nothing yet

meant eye-ring
  weights eye-crescent 0.55, facial-skin 0.44, orbital-ring 0.32, face 0.08, head 0.06
  means nothing yet

meant ear-coverts
  weights face 0.48
  means nothing yet

meant cheek
  weights face 0.16, lores 0.07
  means nothing yet

meant malar
  weights face 0.18
  means nothing yet

meant throat
  weights head 0.18
  means nothing yet

meant neck
  weights foreneck 1.00, neck-side 0.96, hindneck 0.21
  means nothing yet

meant underparts
  weights belly 0.55, breast 0.14
  means nothing yet

meant breast
  weights breast-band 0.17, breast-spot 0.16
  means nothing yet

meant belly
  weights underparts 0.86
  means nothing yet

meant wing
  weights wing-panel 0.24, secondaries 0.21, wing-bar 0.15, tertials 0.15
  means nothing yet

meant wing-coverts
  weights greater-coverts 0.58
  means nothing yet

meant wing-bar
  weights wing 0.09
  means nothing yet

meant wing-panel
  weights wing 0.10
  means nothing yet

meant secondaries
  weights wing 0.45
  means nothing yet

meant primaries
  weights wing 1.00
  means nothing yet

meant primary-tips
  weights wing 0.08
  means nothing yet

meant tail
  weights tail-band 0.83, outer-tail 0.52, tail-tip 0.47
  means nothing yet

meant outer-tail
  weights tail 0.58
  means nothing yet

meant tail-tip
  weights tail 0.12
  means nothing yet

meant bill
  weights upper-mandible 0.10, bill-base 0.06, bill-tip 0.04
  means nothing yet

meant lower-mandible
  weights bill 0.17
  means nothing yet

meant bill-base
  weights bill 0.01
  means nothing yet

meant bill-tip
  weights bill 0.05
  means nothing yet

meant iris
  weights head 0.01
  means nothing yet

meant feet
  weights legs 0.48
  means nothing yet

naming black
  dark black 87, brown 4, grey 4
  dull black 92, brown 3, grey 2
  dull-on-head black 96, brown 2
  dull-on-underparts black 92, brown 4, grey 2
  glossy black 69, blue 13, purple 4, glossy 4, grey 3, jet-black 2
  glossy-on-head black 58, blue 21, purple 10, glossy 3, jet-black 2, grey 2
  glossy-on-underparts black 53, blue 23, purple 5, glossy 5, grey 4, blue-black 4, jet-black 3
  glossy-on-upperparts black 69, blue 11, glossy 9, jet-black 3, purple 3, grey 2
  glossy-on-wing black 81, blue 5, glossy 4, purple 3, jet-black 2, grey 2, brown 2
  untoned black 90, grey 4, brown 3
  untoned-on-bill black 94, grey 3
  untoned-on-feet black 90, grey 6, brown 2
  untoned-on-head black 98
  untoned-on-legs black 81, grey 15, brown 3
  untoned-on-neck black 94, brown 3, grey 2
  untoned-on-tail black 87, grey 3, brown 3, dark 3
  untoned-on-underparts black 89, brown 9, grey 2
  untoned-on-upperparts black 92, brown 3, grey 2, dark 2
  untoned-on-wing black 84, brown 8, grey 5, dark 2
  means what it is called

naming black-brown
  untoned black 55, brown 29, grey 12, dark 2
  untoned-on-head black 48, brown 35, grey 14
  untoned-on-wing black 43, brown 34, grey 18, dark 2
  means what it is called

naming blackish-grey
  untoned black 73, grey 16, brown 5, dark 2
  untoned-on-head black 81, grey 11, brown 3, blue 3
  untoned-on-upperparts black 77, grey 14, brown 3, dark 3
  means what it is called

naming blue
  bright blue 91, teal 2, black 2, purple 2
  bright-on-head blue 94, teal 3
  bright-on-wing blue 92, teal 3
  dark blue 69, black 19, purple 2, brown 2, dark 2, grey 2
  dull blue 89, black 3, purple 3
  glossy blue 81, purple 5, black 4, iridescent 3, green 2
  untoned blue 91, purple 3, black 2
  untoned-on-head blue 92, purple 4
  untoned-on-tail blue 92, black 2
  untoned-on-upperparts blue 92, purple 2, black 2
  untoned-on-wing blue 91, purple 3
  means what it is called

naming blue-black
  glossy black 80, blue 8, grey 4, brown 2
  means what it is called

naming blue-green
  untoned blue 38, green 30, teal 6, turquoise 5, grey 3, white 2, dark 2, black 2
  means what it is called

naming blue-grey
  pale grey 48, white 22, black 10, blue 10
  untoned grey 45, black 29, blue 14, white 6
  untoned-on-bill black 49, grey 36, white 6, blue 3, silver 2, pale 2
  untoned-on-head grey 35, black 33, blue 23, white 6
  untoned-on-legs black 49, grey 37, blue 10, white 3
  untoned-on-tail grey 49, black 29, blue 13, white 4
  untoned-on-upperparts grey 39, black 26, blue 23, white 4, blue-grey 3
  untoned-on-wing grey 54, black 28, blue 10, white 4
  means what it is called

naming brown
  clean brown 72, black 14, grey 8
  dark black 58, brown 26, grey 9, dark 3
  dark-on-bill black 49, brown 33, grey 11, dark 2
  dark-on-head black 84, brown 7, dark 4, red 2
  dark-on-tail brown 47, black 32, grey 18, dark 3
  dark-on-underparts brown 37, black 33, grey 25, dark 2
  dark-on-upperparts brown 45, black 31, grey 12, dark 3, red-brown 2
  dark-on-wing brown 44, black 32, grey 22, dark 2
  dull brown 71, black 14, grey 8, red 2
  pale brown 49, white 18, grey 11, red 8, tan 3, orange 3, black 2
  pale-on-underparts brown 44, white 31, grey 12, red 3, tan 3
  untoned brown 77, black 9, grey 9
  untoned-on-head brown 83, grey 6, black 5
  untoned-on-tail brown 71, grey 14, black 9, tan 2
  untoned-on-underparts brown 82, grey 12, black 3, tan 2
  untoned-on-upperparts brown 83, grey 10, black 3, tan 2
  untoned-on-wing brown 77, black 14, grey 7
  means what it is called

naming brown-grey
  dark grey 38, brown 27, black 23
  untoned grey 57, brown 16, white 6, black 5, orange 3, tan 3
  untoned-on-head grey 61, brown 11, orange 8, red 3, white 3, black 3, tan 2
  untoned-on-underparts grey 60, brown 15, white 6, tan 5, black 2
  untoned-on-upperparts grey 62, brown 17, black 5, white 4, tan 4, orange 2
  means what it is called

naming brownish-black
  dull black 85, brown 7, grey 4
  means what it is called

naming buff
  pale white 46, yellow 12, brown 12, tan 11, cream 4, pale 4, grey 3, orange 2, beige 2
  pale-on-head white 53, brown 13, tan 9, yellow 7, cream 4, orange 3, grey 3, pale 3
  pale-on-underparts white 47, yellow 17, tan 12, brown 8, cream 5, pale 4, grey 2
  untoned white 33, brown 28, tan 13, yellow 10, grey 4, cream 3, beige 3, pale 2
  untoned-on-head brown 28, white 24, yellow 22, tan 9, pale 3, grey 3, gold 2, beige 2, cream 2
  untoned-on-underparts brown 33, white 28, tan 18, grey 7, cream 5, beige 4, yellow 3, pale 2
  untoned-on-upperparts white 35, brown 30, tan 11, yellow 10, grey 4, beige 3, cream 2
  untoned-on-wing white 51, brown 23, tan 9, yellow 5, beige 4, pale 3, cream 3, grey 2
  warm white 27, brown 24, yellow 21, tan 10, grey 4, orange 3, cream 2, beige 2, pale 2
  warm-on-underparts yellow 38, white 20, brown 18, tan 7, grey 3, orange 2, pale 2
  means what it is called

naming buffish-white
  untoned white 76, grey 6, pale 4, yellow 3, tan 3, cream 3, beige 2
  untoned-on-underparts white 74, pale 8, grey 4, beige 3, tan 3, cream 3, yellow 2
  means what it is called

naming chestnut
  untoned brown 49, red 19, orange 13, black 7, rusty 2, red-brown 2, grey 2
  untoned-on-head brown 40, red 26, orange 20, black 3, red-brown 3, rusty 3
  untoned-on-underparts brown 43, red 26, orange 14, rusty 4, red-brown 3, black 3
  untoned-on-upperparts brown 49, red 16, orange 14, black 7, burnt-orange 3, red-brown 2
  untoned-on-wing brown 55, black 15, red 11, orange 8, red-brown 2, dark 2, grey 2
  means what it is called

naming cinnamon
  untoned brown 56, tan 11, orange 10, grey 5, red 3, red-brown 2, white 2
  untoned-on-underparts brown 49, tan 18, orange 7, grey 6, white 3, red-brown 2, grey-brown 2, red 2
  means what it is called

naming cream
  untoned white 77, grey 5, yellow 4, cream 3, tan 2, pale 2
  means what it is called

naming dark
  dark black 41, brown 39, grey 14, dark 4
  dark-on-bill black 52, brown 33, grey 12, dark 3
  dark-on-head black 51, brown 33, grey 9, dark 6
  dark-on-tail brown 44, black 39, grey 15, dark 2
  dark-on-underparts brown 70, black 20, grey 7, dark 2
  dark-on-upperparts brown 58, black 25, grey 9, dark 6
  dark-on-wing black 40, brown 28, grey 26, dark 3
  means what it is called

naming dusky
  untoned black 32, brown 30, grey 28, dark 3
  untoned-on-head black 32, brown 30, grey 28, dark 4
  means what it is called

naming gold
  untoned yellow 74, gold 7, orange 7, white 5, brown 2
  means what it is called

naming green
  glossy green 71, blue 6, yellow 4, iridescent 4, teal 3, grey 2, black 2
  glossy-on-head green 79, blue 5, iridescent 2, emerald 2, yellow 2, teal 2, black 2
  glossy-on-upperparts green 69, iridescent 9, blue 6, teal 5, yellow 2, grey 2, black 2
  pale green 54, yellow 18, grey 5, white 4, pale 2
  untoned green 69, yellow 8, blue 5, grey 3, bright 2, iridescent 2
  untoned-on-head green 63, yellow 12, grey 3, blue 3, white 2, dark 2
  untoned-on-tail green 68, blue 10, yellow 7, teal 2, grey 2
  untoned-on-upperparts green 62, yellow 12, bright 8, blue 4, grey 3
  untoned-on-wing green 74, yellow 7, blue 5, grey 2, black 2
  means what it is called

naming green-yellow
  dull yellow 65, orange 11, green 7, white 6, grey 2, pale 2
  untoned yellow 65, orange 13, green 6, white 4, pale 2, green-yellow 2
  means what it is called

naming grey
  dark black 42, grey 37, brown 15
  dark-on-bill black 62, grey 26, brown 7
  dark-on-head black 53, grey 30, brown 10, red 3
  dark-on-legs black 57, grey 23, brown 15
  dark-on-tail grey 38, black 32, brown 23
  dark-on-underwing grey 48, black 39, brown 9
  dark-on-upperparts grey 54, black 32, brown 10
  dark-on-wing grey 42, black 31, brown 22, dark 3
  pale white 45, grey 45, black 2
  pale-on-head white 57, grey 38
  pale-on-tail grey 63, white 32
  pale-on-underparts white 51, grey 37, pale 2, tan 2
  pale-on-upperparts grey 48, white 48
  pale-on-wing grey 49, white 48
  untoned grey 58, white 15, black 14, brown 7
  untoned-on-bill black 47, grey 23, brown 9, white 6, orange 3, silver 2
  untoned-on-head grey 74, brown 8, white 7, black 6
  untoned-on-legs black 52, grey 29, brown 7, white 6, red 2
  untoned-on-tail grey 52, black 25, white 9, brown 6, red 2
  untoned-on-underparts grey 53, white 37, brown 4, black 3
  untoned-on-upperparts grey 74, black 12, white 6, brown 4
  untoned-on-wing grey 73, black 13, white 6, brown 5
  means what it is called

naming grey-blue
  untoned grey 40, black 23, blue 21, white 4, sky-blue 2
  means what it is called

naming grey-brown
  dark brown 50, grey 21, black 18, dark 3
  dark-on-wing brown 65, black 15, grey 13, dark 4
  pale grey 37, brown 22, white 16, tan 5, orange 4, black 3, yellow 2, pale 2
  untoned brown 47, grey 29, tan 5, black 5, white 3, orange 2
  untoned-on-head brown 51, grey 27, tan 6, black 3, red 2, white 2, orange 2
  untoned-on-underparts grey 43, brown 34, white 6, tan 6, black 3
  untoned-on-upperparts brown 55, grey 23, tan 6, black 4, white 2
  untoned-on-wing brown 55, grey 24, black 10, white 3, tan 2
  means what it is called

naming grey-buff
  untoned white 38, brown 19, tan 10, grey 9, yellow 7, orange 4, cream 3, beige 2, gold 2
  untoned pale 2
  untoned-on-underparts white 49, brown 13, tan 8, grey 7, orange 6, yellow 5, gold 4, cream 4
  means what it is called

naming grey-olive
  untoned grey 50, brown 23, green 8, black 4, yellow 3, white 2, tan 2, dark 2
  untoned-on-head grey 55, brown 21, green 7, dark 3, black 2, tan 2, white 2
  untoned-on-upperparts grey 57, brown 22, green 6, tan 2, black 2
  means what it is called

naming greyish-white
  untoned white 86, grey 8
  means what it is called

naming horn
  untoned white 27, grey 24, brown 15, yellow 8, tan 6, black 3, orange 3, pale 3, cream 2
  means what it is called

naming lime-green
  bright yellow 49, green 37, white 3, grey 3, pale 2
  means what it is called

naming ochre
  untoned brown 33, yellow 20, orange 16, tan 8, white 6, grey 5
  means what it is called

naming olive
  pale yellow 25, green 18, grey 14, brown 13, orange 5, white 4, tan 3, pale 2
  untoned brown 27, grey 21, green 20, yellow 16, tan 2
  untoned-on-head brown 43, yellow 20, green 12, grey 11, tan 2
  untoned-on-underparts green 30, grey 21, yellow 18, brown 13, white 3, tan 2
  untoned-on-upperparts grey 33, brown 30, green 15, yellow 8, tan 2
  untoned-on-wing grey 30, brown 25, yellow 15, green 15
  means what it is called

naming olive-brown
  dark brown 55, grey 14, black 13, green 5, dark 4, yellow 2
  untoned brown 43, green 14, grey 12, yellow 11, black 8, dark 2
  untoned-on-head brown 49, yellow 14, green 11, black 10, grey 5, dark 2
  untoned-on-tail brown 41, yellow 15, green 14, black 10, grey 9, dark 2
  untoned-on-upperparts brown 45, green 17, yellow 11, black 7, grey 7, dark 2
  untoned-on-wing brown 38, green 19, yellow 13, grey 13, black 5
  means what it is called

naming olive-green
  bright green 31, yellow 23, grey 20, brown 10, black 2
  untoned green 29, grey 23, yellow 22, brown 11, black 2, dark 2
  untoned-on-head grey 30, green 26, yellow 21, brown 10, black 2
  untoned-on-upperparts green 30, yellow 24, grey 19, brown 11, dark 2, black 2, olive 2
  untoned-on-wing green 29, grey 22, yellow 22, brown 8, black 6, dark 2, olive 2
  means what it is called

naming olive-grey
  dark grey 31, brown 25, black 23, green 7, yellow 3, dark 2
  pale grey 42, white 27, brown 9, green 4, tan 2, black 2, yellow 2, orange 2
  untoned grey 47, brown 22, green 8, black 6, white 3, yellow 3, tan 2
  untoned-on-tail grey 49, brown 20, green 9, black 4, yellow 4, white 2, tan 2
  untoned-on-wing grey 47, brown 24, green 9, black 6, yellow-grey 4, yellow 3, white 2
  means what it is called

naming olive-yellow
  untoned yellow 40, green 18, brown 11, grey 7, white 4, orange 4, tan 2
  means what it is called

naming orange
  bright orange 67, yellow 18, red 4, pink 2, brown 2
  bright-on-bill orange 75, yellow 10, pink 5, red 5
  bright-on-underparts orange 65, yellow 24, red 5
  pale orange 50, yellow 16, brown 10, tan 7, white 5, red 2, pale 2
  untoned orange 63, yellow 19, brown 5, red 3, white 2, tan 2
  untoned-on-bill orange 83, yellow 10, red 3
  untoned-on-tail orange 61, yellow 27, gold 3, brown 2, red 2
  untoned-on-underparts orange 48, yellow 18, brown 11, tan 4, white 3, red 3, gold 2, pale 2
  untoned-on-wing orange 65, yellow 25, brown 2, red 2
  means what it is called

naming orange-buff
  pale white 26, brown 20, yellow 12, orange 12, tan 11, grey 4, cream 3, pale 2, beige 2
  means what it is called

naming orange-pink
  untoned orange 59, pink 16, red 5, white 5, brown 4, grey 2, peach 2, tan 2
  means what it is called

naming orange-red
  bright red 52, orange 41, brown 2
  bright-on-bill orange 67, red 30
  iridescent red 58, orange 31, brown 3
  untoned red 59, orange 33, brown 2
  untoned-on-bill red 57, orange 36
  means what it is called

naming orange-yellow
  untoned orange 43, yellow 33, white 5, brown 4, gold 3, tan 2
  means what it is called

naming pale
  pale white 46, grey 21, tan 9, yellow 8, orange 4, cream 2, pale 2
  pale-on-bill white 28, yellow 18, grey 15, orange 11, tan 7, silver 6, beige 5, pale 5
  pale-on-head white 39, grey 21, tan 15, yellow 11, cream 3, pale 2, orange 2
  pale-on-underparts white 61, grey 13, tan 8, yellow 5, cream 4, orange 2
  pale-on-wing white 50, grey 36, yellow 4, tan 3, orange 2
  means what it is called

naming pink
  bright orange 34, pink 27, brown 13, white 6, red 5, tan 4, yellow 4, grey 2, pale 2
  dull orange 35, pink 19, brown 17, white 6, tan 5, yellow 4, grey 3, pale 3, red 2
  untoned orange 33, pink 22, brown 16, white 6, tan 5, yellow 4, red 2, grey 2, pale 2
  untoned-on-bill orange 37, brown 23, yellow 15, tan 7, pink 6, peach 2, pale 2, white 2
  untoned-on-legs orange 41, pink 26, brown 19, tan 5, pale 2
  untoned-on-underparts white 24, orange 23, pink 14, brown 13, grey 6, red 4, yellow 3, tan 3, pale 2
  means what it is called

naming pink-brown
  untoned brown 41, orange 21, pink 9, grey 5, tan 4, red 3, white 2
  untoned-on-bill brown 36, orange 17, pink 9, grey 7, tan 6, red 4, black 2, pale 2, white 2
  untoned-on-legs brown 35, orange 32, pink 10, red 3, grey 3, tan 2, pink-brown 2, white 2
  means what it is called

naming pink-grey
  pale white 61, grey 15, pink 5, pale 3, orange 3, tan 2, brown 2, yellow 2
  untoned grey 31, white 24, brown 15, orange 7, pink 6, tan 3, pale 3, yellow 2
  untoned-on-bill brown 27, orange 17, grey 15, white 11, yellow 5, tan 5, pale 5, pink 4, cream 2
  means what it is called

naming pink-orange
  untoned orange 62, pink 9, brown 6, red 4, yellow 4, white 4, grey 3, tan 2
  means what it is called

naming pinkish-red
  bright red 52, brown 17, pink 12, white 5, grey 4, orange 3
  means what it is called

naming pinkish-white
  pale white 86, grey 4, pale 2
  means what it is called

naming purple
  glossy black 41, purple 22, blue 21, iridescent 5, brown 3, dark 2, grey 2
  glossy-on-head black 49, blue 24, purple 12, iridescent 7, brown 2, grey 2
  means what it is called

naming purple-blue
  glossy blue 42, black 27, purple 11, dark 4, grey 4, iridescent 3, brown 2
  means what it is called

naming purple-brown
  untoned brown 59, black 11, purple 8, grey 6, red 5, dark 3
  means what it is called

naming red
  bright red 75, orange 19
  bright-on-bill orange 72, red 25
  bright-on-head red 87, orange 8
  bright-on-underparts red 80, orange 13, red-orange 2
  dark brown 34, red 32, orange 18, black 6, grey 4
  dark-on-bill orange 65, red 26, brown 4
  dull red 70, orange 20, brown 3, pink 2
  dull-on-head red 71, orange 21, pink 3, brown 2
  untoned red 69, orange 25, brown 2
  untoned-on-bill orange 62, red 36
  untoned-on-head red 81, orange 15, brown 2
  untoned-on-legs orange 56, red 33, pink 7, brown 2
  untoned-on-underparts red 74, orange 19, brown 2
  untoned-on-wing red 79, orange 14
  means what it is called

naming red-brown
  dark brown 37, black 33, red 10, grey 5, orange 4, dark 4
  untoned brown 64, red 11, orange 8, black 5, grey 3, rusty 2
  means what it is called

naming rose
  untoned pink 43, red 34, orange 5, brown 4, grey 4, white 2, purple 2
  means what it is called

naming rose-red
  iridescent red 45, pink 19, brown 19, purple 5, grey 3, white 2, magenta 2
  iridescent-on-head red 35, pink 30, brown 15, purple 8, magenta 4
  untoned red 62, brown 15, pink 11, grey 2
  untoned-on-head red 71, brown 10, pink 9, grey 2
  untoned-on-underparts red 82, pink 6, brown 6
  means what it is called

naming rufous
  bright brown 62, orange 17, red 7, black 2, grey 2
  pale brown 42, orange 22, red 10, tan 6, grey 4, white 2
  untoned brown 69, orange 13, red 5, tan 2, rusty 2
  untoned-on-head brown 72, orange 10, red 5, rusty 2, tan 2
  untoned-on-tail brown 70, red 9, orange 9, red-brown 2, rusty 2
  untoned-on-underparts brown 45, orange 31, red 8, rusty 3, tan 2
  untoned-on-upperparts brown 76, orange 9, red 3, red-brown 2
  untoned-on-wing brown 85, orange 5, red 2, tan 2
  means what it is called

naming rufous-brown
  pale brown 54, orange 14, tan 7, grey 5, red 4, pink 2, white 2
  untoned brown 80, orange 5, red 3, tan 2, grey 2, rusty 2
  untoned-on-head brown 83, orange 3, red 2, rusty 2, red-brown 2
  untoned-on-upperparts brown 80, grey 3, orange 3, tan 2, red 2, rusty 2
  untoned-on-wing brown 88, tan 2, orange 2, red 2
  means what it is called

naming rusty
  untoned brown 68, orange 10, red 7, rusty 2, red-brown 2, grey 2, tan 2
  means what it is called

naming salmon
  pale orange 44, pink 23, white 12, red 7, grey 3, brown 3, pale 2
  untoned orange 45, pink 21, red 8, white 7, brown 6, grey 4, pale 2
  means what it is called

naming sandy
  pale white 36, brown 20, tan 14, yellow 12, cream 4, grey 4, pale 3, beige 2, orange 2
  untoned white 30, brown 29, tan 14, yellow 9, grey 4, beige 4, cream 4, pale 2
  means what it is called

naming slate-grey
  dark grey 48, black 37, brown 7
  untoned grey 51, black 20, blue 8, white 7, brown 3
  means what it is called

naming tawny
  untoned brown 53, tan 13, orange 12, grey 5, yellow 3, white 2, red 2
  means what it is called

naming white
  pale white 88, grey 6
  untoned white 90, grey 5
  untoned-on-head white 90, grey 3
  untoned-on-neck white 96, grey 2
  untoned-on-plume white 90, grey 5
  untoned-on-tail white 84, grey 14
  untoned-on-underparts white 87, grey 6
  untoned-on-underwing white 93, grey 3
  untoned-on-upperparts white 96, grey 3
  untoned-on-wing white 95, grey 3
  means what it is called

naming yellow
  bright yellow 95, white 2
  bright-on-head yellow 97
  bright-on-underparts yellow 98
  bright-on-upperparts yellow 97
  dull yellow 80, white 6, orange 4, green-yellow 2
  dull-on-underparts yellow 80, green-yellow 4, white 4, gold 2, tan 2, orange 2, green 2
  pale yellow 56, white 32, pale 2, orange 2, tan 2
  pale-on-head yellow 61, white 30, pale 3, orange 2
  pale-on-underparts yellow 43, white 42, pale 3, tan 2
  pale-on-wing yellow 58, white 34
  untoned yellow 84, orange 8, white 3
  untoned-on-bill yellow 67, orange 30, white 2
  untoned-on-head yellow 86, orange 4, white 3
  untoned-on-tail yellow 83, orange 10, white 3
  untoned-on-underparts yellow 91, orange 3, white 2
  untoned-on-upperparts yellow 88, orange 4, white 3, gold 2
  untoned-on-wing yellow 90, orange 4, white 3
  means what it is called

naming yellow-brown
  untoned brown 52, yellow 11, tan 9, orange 7, grey 7, white 3
  means what it is called

naming yellow-buff
  untoned white 35, brown 18, yellow 16, tan 10, cream 5, grey 4, beige 3, orange 2, pale 2
  means what it is called

naming yellow-green
  pale yellow 61, green 11, white 10, orange 6, pale 3, green-yellow 2, tan 2
  untoned yellow 52, green 30, white 4, orange 2, green-yellow 2, pale 2, grey 2
  untoned-on-underparts yellow 59, green 27, white 3, pale 2
  means what it is called

naming yellow-olive
  untoned yellow 24, green 23, grey 18, brown 16, white 2, tan 2, orange 2
  means what it is called

naming yellow-orange
  untoned orange 49, yellow 33, brown 4, white 3, gold 2, red 2, tan 2
  means what it is called

naming yellowish-white
  untoned white 76, grey 8, yellow 7, cream 2
  means what it is called

# How readily a part or property is spoken of, by what the bird looks like.
mention bird-colour
  area bird
  aspect colour
  by belly like back 0.18, lightest -0.15, like breast 0.14, like back 0.11, bill -0.09
  by like head 0.07, strong -0.07, strong bird -0.07, tail -0.05, head like back 0.05
  by far-mass -0.03, wing -0.03, mixed bird 0.02, mass -0.01, darkest -0.01
  by darkest bird -0.01, bill-depth -0.01
  means how readily it is spoken of

mention bird-size
  area bird
  aspect size
  by bill 0.16, far-mass -0.11, wing -0.09, strong -0.06, strong bird -0.06
  by mass 0.05, bill-depth 0.05, lightest -0.05, like breast 0.03, like back 0.03
  by belly like back 0.03, tarsus -0.03, darkest -0.02, darkest bird -0.02, tail 0.02
  by head like back 0.02, like head 0.02
  means how readily it is spoken of

mention head-colour
  area head
  aspect colour
  by mixed bird 0.61, belly like back -0.53, like bird -0.47, like breast -0.29
  by wing 0.21, head like back -0.17, like back -0.17, tarsus -0.14, bill -0.14
  by darkest 0.13, strong -0.11, bill-depth 0.10, lightest 0.10, strong bird -0.10
  by darkest bird -0.08, mass 0.07, tail 0.06, far-mass -0.05
  means how readily it is spoken of

mention crown-colour
  area crown
  aspect colour
  by like breast -0.36, darkest bird -0.29, like bird -0.29, like head -0.27, strong -0.24
  by wing 0.23, like back -0.22, head like back -0.22, belly like back -0.21
  by strong bird -0.18, mixed bird 0.16, lightest 0.15, darkest 0.14, bill-depth 0.09
  by far-mass -0.08, tarsus 0.05, mass -0.03, bill 0.03, tail 0.02
  means how readily it is spoken of

mention nape-colour
  area nape
  aspect colour
  by belly like back -0.34, like breast -0.33, mixed bird 0.29, like head -0.24
  by like bird -0.19, like back -0.16, darkest 0.14, head like back -0.14
  by bill-depth -0.12, strong bird -0.12, lightest -0.11, far-mass -0.09, strong 0.05
  by tarsus -0.04, tail -0.03, mass 0.03
  means how readily it is spoken of

mention face-colour
  area face
  aspect colour
  by like back -0.35, bill -0.34, like head -0.30, mixed bird 0.28, like bird -0.27
  by darkest bird -0.21, darkest 0.18, strong bird 0.17, belly like back 0.14, lightest 0.12
  by like breast -0.10, bill-depth -0.07, head like back -0.07, strong -0.07, mass 0.03
  by tarsus -0.03, far-mass -0.03
  means how readily it is spoken of

mention supercilium-colour
  area supercilium
  aspect colour
  by like breast -0.47, like head -0.42, like back -0.38, wing -0.33, tail -0.29
  by like bird -0.29, darkest 0.25, bill-depth -0.22, strong -0.21, darkest bird -0.15
  by bill -0.14, far-mass -0.13, belly like back 0.11, lightest 0.09, head like back -0.08
  by mass -0.06, strong bird 0.05, tarsus -0.02, mixed bird -0.02
  means how readily it is spoken of

mention throat-colour
  area throat
  aspect colour
  by like back -0.42, like breast -0.40, like bird -0.36, belly like back -0.35
  by like head -0.31, tarsus -0.25, darkest 0.17, wing -0.15, mixed bird 0.13
  by head like back -0.13, tail -0.11, bill-depth -0.06, strong bird 0.05, strong -0.05
  by lightest -0.04, far-mass -0.02, mass -0.02, darkest bird 0.02, bill -0.01
  means how readily it is spoken of

mention neck-colour
  area neck
  aspect colour
  by mixed bird 0.45, bill-depth -0.35, belly like back -0.29, like back -0.28
  by darkest 0.27, wing -0.26, darkest bird 0.26, strong bird 0.23, like bird -0.23
  by tail -0.22, like head -0.21, mass 0.17, tarsus -0.13, head like back -0.07
  by bill -0.06, strong 0.02, lightest 0.02
  means how readily it is spoken of

mention neck-length
  area neck
  aspect length
  by wing -0.43, bill-depth -0.37, tail -0.34, like back -0.25, mass 0.21
  by darkest bird 0.19, far-mass 0.15, like breast 0.15, bill -0.14, darkest 0.13
  by belly like back -0.10, mixed bird 0.07, head like back -0.07, strong bird 0.06
  by tarsus 0.05, like head -0.05, lightest 0.04, like bird 0.02, strong -0.02
  means how readily it is spoken of

mention back-colour
  area back
  aspect colour
  by belly like back -0.41, like breast -0.28, wing -0.24, darkest 0.20, mixed bird 0.19
  by tail -0.12, bill-depth -0.10, lightest 0.09, like bird -0.08, bill -0.07
  by darkest bird 0.06, strong 0.06, far-mass -0.06, tarsus 0.05, mass -0.03
  by strong bird 0.03, head like back 0.02, like head 0.02
  means how readily it is spoken of

mention breast-colour
  area breast
  aspect colour
  by belly like back -0.53, like back -0.23, like head -0.21, tail 0.21, mixed bird 0.20
  by like bird -0.16, bill -0.14, strong -0.13, lightest -0.13, bill-depth 0.10
  by far-mass -0.07, head like back 0.05, darkest -0.04, tarsus 0.04, darkest bird -0.03
  by mass -0.03, strong bird -0.02, wing 0.02
  means how readily it is spoken of

mention breast-pattern
  area breast
  aspect pattern
  by head like back 0.36, strong -0.34, belly like back -0.32, wing -0.27, darkest 0.22
  by mass -0.16, strong bird -0.12, tail -0.10, like head -0.08, tarsus 0.08
  by darkest bird -0.07, bill -0.07, far-mass 0.06, like bird 0.04, bill-depth -0.04
  by lightest 0.02
  means how readily it is spoken of

mention belly-colour
  area belly
  aspect colour
  by belly like back -0.28, like back -0.28, like head -0.24, tail 0.24, strong -0.17
  by darkest -0.17, like bird -0.15, mixed bird 0.14, tarsus 0.12, bill-depth 0.11
  by wing 0.07, head like back 0.06, mass -0.05, darkest bird -0.05, bill -0.04
  by strong bird -0.04, far-mass -0.03, like breast -0.03, lightest -0.02
  means how readily it is spoken of

mention belly-pattern
  area belly
  aspect pattern
  by strong -0.27, wing -0.26, head like back 0.26, tarsus 0.23, bill-depth -0.17
  by mass -0.14, like bird -0.12, tail 0.09, belly like back -0.08, like back -0.08
  by like head -0.07, lightest 0.07, like breast 0.07, far-mass 0.06, bill 0.06
  by darkest bird -0.04, mixed bird -0.04, strong bird -0.04, darkest -0.01
  means how readily it is spoken of

mention flanks-colour
  area flanks
  aspect colour
  by strong bird -0.35, belly like back -0.34, like breast -0.32, like head -0.29
  by head like back 0.20, darkest bird 0.19, strong -0.19, like back -0.17, lightest -0.14
  by bill-depth -0.13, wing -0.11, tarsus -0.09, tail 0.08, darkest -0.07, bill 0.06
  by far-mass 0.06, like bird -0.03, mixed bird -0.03
  means how readily it is spoken of

mention wing-colour
  area wing
  aspect colour
  by strong -0.24, like head -0.21, wing 0.20, like breast -0.19, darkest bird -0.19
  by like back -0.19, mixed bird 0.18, lightest 0.18, head like back -0.16
  by belly like back -0.13, tail 0.12, like bird -0.11, bill-depth 0.10
  by strong bird 0.07, bill -0.06, darkest -0.04, far-mass -0.03
  means how readily it is spoken of

mention wing-pattern
  area wing
  aspect pattern
  by lightest 0.37, bill-depth 0.34, wing -0.20, strong bird -0.20, like breast 0.18
  by strong -0.15, mass -0.15, bill -0.12, darkest bird -0.11, head like back -0.09
  by like head -0.07, tarsus 0.07, tail -0.06, belly like back -0.05, like back -0.03
  by far-mass 0.02, mixed bird 0.02, darkest 0.01, like bird -0.01
  means how readily it is spoken of

mention wing-coverts-colour
  area wing-coverts
  aspect colour
  by tarsus 0.29, mixed bird 0.25, head like back -0.23, darkest bird -0.19, strong -0.19
  by like back -0.18, like head -0.18, belly like back -0.16, bill-depth 0.13
  by wing 0.10, lightest 0.10, darkest 0.09, like breast -0.08, bill -0.04, like bird 0.04
  by far-mass -0.03, strong bird -0.02, mass -0.02, tail 0.01
  means how readily it is spoken of

mention secondaries-colour
  area secondaries
  aspect colour
  by like head -0.27, head like back -0.20, bill-depth 0.16, tarsus 0.14, lightest 0.14
  by like back -0.11, darkest -0.11, mixed bird 0.11, strong -0.10, like breast -0.09
  by wing 0.08, like bird -0.08, mass -0.07, tail 0.07, belly like back 0.05
  by strong bird -0.04, far-mass -0.02, darkest bird -0.01, bill 0.01
  means how readily it is spoken of

mention tail-colour
  area tail
  aspect colour
  by tail 0.60, like back -0.27, darkest bird -0.26, like breast -0.25, tarsus 0.25
  by like head -0.24, strong bird 0.24, wing 0.21, belly like back 0.20, like bird -0.18
  by far-mass -0.17, strong -0.15, lightest 0.13, darkest -0.10, bill-depth -0.08
  by mixed bird 0.05, mass 0.05, bill 0.04
  means how readily it is spoken of

mention bill-colour
  area bill
  aspect colour
  by bill-depth 0.26, mixed bird -0.25, belly like back 0.19, tarsus -0.12
  by like breast -0.12, bill 0.11, like back -0.10, head like back 0.07, lightest -0.07
  by strong bird -0.07, mass 0.07, tail -0.07, strong -0.07, like bird -0.05
  by like head -0.05, darkest bird 0.03, wing -0.01, darkest 0.01
  means how readily it is spoken of

mention bill-length
  area bill
  aspect length
  by tarsus -0.28, darkest -0.14, tail -0.14, wing -0.13, mixed bird -0.12
  by like breast 0.08, strong bird -0.08, belly like back 0.07, strong -0.07
  by lightest -0.05, bill 0.05, bill-depth -0.05, head like back 0.05, like bird 0.04
  by far-mass 0.03, darkest bird 0.03, like head 0.02
  means how readily it is spoken of

mention bill-size
  area bill
  aspect size
  by bill-depth 0.39, bill -0.24, tarsus 0.24, like breast 0.19, head like back 0.16
  by like bird 0.15, like head 0.15, wing 0.14, far-mass 0.13, lightest -0.10, strong 0.08
  by darkest bird -0.07, mass -0.07, tail 0.06, mixed bird -0.06, strong bird 0.05
  by darkest -0.05, belly like back 0.05, like back -0.02
  means how readily it is spoken of

mention iris-colour
  area iris
  aspect colour
  by head like back 0.45, bill -0.35, like back -0.29, mixed bird -0.25
  by bill-depth -0.23, wing -0.21, like head -0.21, darkest bird 0.18, tail -0.18
  by lightest 0.18, tarsus 0.16, strong -0.15, belly like back 0.13, like bird -0.12
  by strong bird -0.11, like breast 0.08, darkest 0.07, mass -0.04, far-mass 0.01
  means how readily it is spoken of

mention legs-colour
  area legs
  aspect colour
  by belly like back 0.43, tarsus 0.32, mixed bird -0.28, wing 0.21, bill-depth 0.20
  by bill -0.16, darkest 0.16, strong bird -0.13, like bird -0.08, like head -0.07
  by mass -0.06, far-mass -0.06, like back -0.05, tail 0.05, strong 0.04, lightest 0.04
  by head like back -0.04, darkest bird -0.03
  means how readily it is spoken of

mention feet-colour
  area feet
  aspect colour
  by belly like back 0.49, mixed bird -0.34, wing 0.31, bill-depth 0.29
  by strong bird -0.25, bill -0.23, like back -0.14, tarsus 0.14, darkest bird -0.11
  by like head -0.11, darkest 0.10, strong 0.09, lightest 0.08, like bird -0.07
  by far-mass 0.04, like breast 0.03, tail 0.01
  means how readily it is spoken of

mention bird-colour-black
  area bird
  aspect colour
  value black
  by called back 0.24, called tail -0.22, called crown 0.21, called throat 0.16
  by called wing -0.11, called breast 0.08, called bird -0.04, called head 0.02
  means how readily it is spoken of

mention bird-colour-blue
  area bird
  aspect colour
  value blue
  by called head 0.43, called wing -0.37, called breast 0.35, called crown 0.31
  by called throat 0.21, called belly 0.20, called tail -0.09, called back -0.07
  by called bird -0.03
  means how readily it is spoken of

mention bird-colour-grey
  area bird
  aspect colour
  value grey
  by called breast 0.48, called back 0.33, called belly 0.28, called bird 0.22
  by called crown 0.18, called head 0.17, called wing 0.12, called throat 0.11
  by called tail 0.06
  means how readily it is spoken of

mention bird-colour-white
  area bird
  aspect colour
  value white
  by called throat 0.45, called belly 0.28, called tail -0.27, called back 0.18
  by called wing -0.17, called bird -0.13, called crown 0.11, called head 0.09
  by called breast -0.07
  means how readily it is spoken of

mention bird-colour-yellow
  area bird
  aspect colour
  value yellow
  by called breast 0.47, called throat 0.29, called crown 0.24, called back 0.22
  by called head 0.16, called bird 0.15, called wing 0.13, called belly -0.12
  by called tail 0.11
  means how readily it is spoken of

mention head-colour-black
  area head
  aspect colour
  value black
  by called belly -0.56, called crown 0.47, called throat 0.33, called head 0.32
  by called tail -0.20, called back 0.18, called breast -0.15, called bird -0.03
  by called wing -0.02
  means how readily it is spoken of

mention head-colour-white
  area head
  aspect colour
  value white
  by called crown 0.53, called head 0.29, called wing -0.27, called belly -0.23
  by called bird -0.22, called throat -0.16, called breast -0.16, called tail -0.12
  by called back -0.04
  means how readily it is spoken of

mention crown-colour-white
  area crown
  aspect colour
  value white
  by called crown 0.42, called head 0.32, called tail -0.27, called breast -0.26
  by called back 0.20, called belly -0.13, called bird -0.11, called wing -0.09
  by called throat -0.03
  means how readily it is spoken of

mention eye-ring-colour-black
  area eye-ring
  aspect colour
  value black
  by called crown -0.33, called back -0.31, called head -0.20, called belly -0.16
  by called bird -0.10, called breast -0.08, called wing -0.06, called throat -0.05
  by called tail 0.03
  means how readily it is spoken of

mention back-colour-black
  area back
  aspect colour
  value black
  by called belly -0.31, called throat 0.25, called tail 0.22, called wing 0.20
  by called crown -0.17, called back 0.16, called breast -0.14, called head -0.09
  means how readily it is spoken of

mention belly-colour-brown
  area belly
  aspect colour
  value brown
  by called belly -0.32, called crown 0.27, called breast -0.20, called head 0.18
  by called tail 0.17, called wing 0.14, called back 0.11, called throat -0.08
  by called bird 0.08
  means how readily it is spoken of

mention wing-colour-white
  area wing
  aspect colour
  value white
  by called throat -0.43, called back 0.40, called tail 0.33, called breast -0.30
  by called bird 0.13, called wing -0.12, called crown 0.02, called belly 0.01
  means how readily it is spoken of

mention wing-bar-colour-white
  area wing-bar
  aspect colour
  value white
  by called throat -0.28, called breast -0.27, called belly -0.20, called head -0.18
  by called tail 0.09, called bird -0.05, called crown -0.04
  means how readily it is spoken of

mention bill-colour-brown
  area bill
  aspect colour
  value brown
  by called tail 0.41, called belly -0.33, called wing 0.28, called breast -0.18
  by called throat -0.10, called crown 0.06, called back -0.05, called head 0.04
  by called bird 0.03
  means how readily it is spoken of

mention bill-colour-white
  area bill
  aspect colour
  value white
  by called tail -0.41, called throat -0.33, called back -0.24, called breast -0.23
  by called bird -0.18, called crown 0.14, called wing -0.07, called belly -0.04
  means how readily it is spoken of
