# What people call colours, what they mean by parts, and how much they speak of each: written by
# `examples/evaluate --fit`, for all kinds together, from the sentences in which people described 2,930 birds
# (Reed et al. 2016 over CUB-200-2011) against what the accounts state. Not to be changed by hand; entries that are
# stand in naming.lex. `naming`: as there.

# Shares of colour names, in a hundred.
spoken colours
  shares black 25.641, white 21.905, brown 13.594, grey 10.453, yellow 9.675, orange 4.381
  shares red 3.892, blue 2.422, green 1.940, tan 1.029, dark 0.693, pink 0.449, pale 0.437
  shares cream 0.351, purple 0.187, gold 0.182, beige 0.179, bright 0.119, red-brown 0.119
  shares rusty 0.112, off-white 0.095, jet-black 0.091, grey-brown 0.087, green-yellow 0.078
  shares snow-white 0.078, glossy 0.077, brown-grey 0.074, silver 0.069, yellow-green 0.064
  shares red-orange 0.057, iridescent 0.055, dull 0.049, taupe 0.047, teal 0.047
  shares turquoise 0.041, peach 0.040, orange-brown 0.039, blue-grey 0.033, olive 0.033
  shares green-brown 0.032, lime-green 0.032
  means how common a colour name is in speech

# How many colours of a part a sentence speaks of, if the part looks as on an average bird.
spoken-of colours
  rates bird 0.749, belly 0.325, wing 0.319, bill 0.285, breast 0.212, crown 0.172
  rates head 0.138, throat 0.078, tail 0.072, back 0.060, eye-ring 0.058, iris 0.056, wing-
  rates bar 0.050, feet 0.048, secondaries 0.037, supercilium 0.037, legs 0.036, nape 0.034
  rates primaries 0.028, neck 0.026, flanks 0.025, wing-coverts 0.022, cheek 0.022
  rates face 0.016
  means how much people talk of each part

# What is meant by a part where the tree of parts suggests otherwise, against 1 for the part itself.
meant head
  weights face 0.17, bird 0.08, throat 0.06
  means the head is judged by its top

meant crown
  weights lateral-crown-stripe 0.68, crown-stripe 0.26, bird 0.03
  means the crown is the head to many

meant nape
  weights head 0.62
  means the nape is the back of the head

meant supercilium
  weights lores 0.53, face 0.21
  means eyebrow is said of any stripe by the eye

meant eye-ring
  weights eye-crescent 0.30, orbital-ring 0.27, face 0.07, head 0.05
  means ring is said of whatever surrounds the eye

meant ear-coverts
  weights face 0.39
  means what people call so

meant cheek
  weights face 0.14
  means cheek is said of all below and behind the eye

meant malar
  weights face 0.18
  means what people call so

meant throat
  weights head 0.16, bird 0.07
  means the throat runs into the breast

meant neck
  weights foreneck 1.00, neck-side 0.95, hindneck 0.21, bird 0.15
  means the neck is seen from the front and the side

meant back
  weights upperparts 0.44
  means back is said of all between the wings

meant underparts
  weights belly 0.55, breast 0.15
  means what people call so

meant breast
  weights breast-spot 0.16, breast-band 0.15
  means a band or spot is spoken of for itself

meant belly
  weights underparts 0.80
  means belly is said of all below

meant wing
  weights secondaries 0.27
  means the folded wing is what shows

meant wing-coverts
  weights greater-coverts 0.58
  means coverts is said of wing feathers at large

meant wing-bar
  weights wing 0.10
  means bar is said of any pale line in the wing

meant wing-panel
  weights wing 0.11
  means what people call so

meant secondaries
  weights wing 0.43
  means secondaries is said of wing feathers at large

meant primaries
  weights wing 1.00, bird 0.98
  means flight feathers are the wing

meant primary-tips
  weights wing 0.08
  means what people call so

meant tail
  weights tail-band 0.86, outer-tail 0.50, tail-tip 0.50, bird 0.38
  means tips and edges of a tail are the tail

meant outer-tail
  weights tail 0.55
  means what people call so

meant tail-tip
  weights tail 0.13
  means what people call so

meant plume
  weights bird 0.71
  means what people call so

meant bill
  weights upper-mandible 0.14, bill-base 0.04, bill-tip 0.04, bird 0.03
  means a bill is named by its main colour

meant lower-mandible
  weights bill 0.16
  means what people call so

meant bill-base
  weights bird 0.02, bill 0.01
  means what people call so

meant bill-tip
  weights bird 0.06, bill 0.05
  means what people call so

meant iris
  weights bird 0.02, head 0.01
  means bare skin around the eye is taken for the eye

meant legs
  weights bird 0.07
  means feet and legs are told apart by few

meant feet
  weights legs 0.47, bird 0.05
  means feet and legs are told apart by few

naming black
  dark black 87, brown 5, grey 3
  dull black 94, brown 2
  dull-on-head black 97
  dull-on-underparts black 94, brown 2
  dull-on-wing black 94, dark 2
  glossy black 72, blue 15, purple 4, grey 2, jet-black 2, dark 2
  glossy-on-head black 63, blue 21, purple 10, jet-black 2, grey 2
  glossy-on-underparts black 60, blue 24, purple 4, grey 4, jet-black 2
  glossy-on-upperparts black 76, blue 12, dark 3, jet-black 2, grey 2
  glossy-on-wing black 81, blue 7, purple 3, jet-black 2, dark 2, brown 2, grey 2
  untoned black 91, brown 4, grey 3
  untoned-on-bill black 95, grey 2
  untoned-on-feet black 90, grey 5, brown 3
  untoned-on-head black 98
  untoned-on-legs black 83, grey 13, brown 3
  untoned-on-neck black 95, brown 2
  untoned-on-tail black 87, brown 3, dark 3, grey 2
  untoned-on-underparts black 86, brown 12
  untoned-on-upperparts black 92, brown 4, dark 2
  untoned-on-wing black 86, brown 8, grey 4, dark 2
  means what it is called

naming black-brown
  untoned black 54, brown 29, grey 13
  untoned-on-head black 50, brown 33, grey 15
  untoned-on-wing black 43, brown 33, grey 19, dark 2
  means what it is called

naming blackish-grey
  untoned black 80, grey 9, brown 6, dark 2
  untoned-on-head black 85, grey 7, brown 3, blue 2
  untoned-on-upperparts black 82, grey 9, brown 4, dark 3
  means what it is called

naming blue
  bright blue 88, black 3, teal 3
  bright-on-head blue 92, teal 3, black 2
  bright-on-wing blue 91, teal 3, black 3
  dark blue 64, black 22, dark 4, purple 2, brown 2, grey 2
  dull blue 82, black 7, purple 3
  glossy blue 73, purple 6, glossy 5, iridescent 4, black 4
  untoned blue 89, purple 3, black 3
  untoned-on-head blue 91, purple 4, black 2
  untoned-on-tail blue 91, black 3
  untoned-on-upperparts blue 91, purple 2, black 2
  untoned-on-wing blue 90, purple 3, black 2
  means what it is called

naming blue-grey
  pale grey 41, white 39, black 7, blue 4, brown 2
  untoned grey 48, black 23, blue 13, white 6, brown 2
  untoned-on-bill grey 48, black 26, white 8, blue 7, silver 2, pale 2, brown 2, orange 2
  untoned-on-head grey 38, black 27, blue 25, white 5
  untoned-on-legs grey 51, black 25, blue 13, white 3, brown 2, orange 2
  untoned-on-tail grey 48, black 27, blue 13, white 4, brown 3
  untoned-on-upperparts grey 41, blue 24, black 22, white 4, blue-grey 3, brown 2
  untoned-on-wing grey 58, black 21, blue 10, white 3, brown 2
  means what it is called

naming brown
  clean brown 63, black 20, grey 7, red 4, orange 2
  dark black 58, brown 26, grey 9, dark 3
  dark-on-bill black 50, brown 38, grey 6, dark 2
  dark-on-head black 83, brown 8, dark 4, red 2
  dark-on-tail brown 49, black 30, grey 18, dark 3
  dark-on-underparts brown 41, black 30, grey 24
  dark-on-upperparts brown 44, black 31, grey 14, dark 3, red-brown 2
  dark-on-wing brown 43, black 31, grey 23, dark 2
  dull brown 63, black 20, grey 6, red 4, orange 2
  pale brown 48, white 22, grey 12, red 7, black 4, orange 3
  pale-on-underparts brown 44, white 32, grey 13, red 3, black 2
  untoned brown 80, black 9, grey 9
  untoned-on-head brown 84, grey 7, black 6
  untoned-on-tail brown 75, grey 12, black 9
  untoned-on-underparts brown 83, grey 12, black 3
  untoned-on-upperparts brown 88, grey 8, black 3
  untoned-on-wing brown 78, black 14, grey 7
  means what it is called

naming brown-grey
  dark grey 43, brown 24, black 17, white 4, green 2
  untoned grey 71, brown 10, white 7, black 4, tan 2
  untoned-on-head grey 80, brown 6, white 4, black 2
  untoned-on-underparts grey 72, brown 9, white 7, tan 3, black 2
  untoned-on-upperparts grey 77, brown 10, white 5, black 3, tan 2
  means what it is called

naming brownish-black
  dull black 90, brown 4, grey 3
  means what it is called

naming buff
  pale white 50, yellow 16, tan 11, pale 5, cream 4, grey 4, orange 3, brown 2
  pale-on-head white 57, tan 9, yellow 9, orange 5, grey 5, cream 4, pale 3
  pale-on-underparts white 48, yellow 20, tan 14, pale 5, cream 4, grey 2, orange 2
  untoned white 39, brown 15, tan 12, yellow 11, grey 7, cream 3, beige 3, orange 3, pale 3
  untoned-on-head white 28, yellow 27, brown 18, tan 10, grey 4, pale 3, gold 2, orange 2, cream 2
  untoned-on-underparts white 35, brown 18, tan 16, grey 11, cream 5, beige 4, yellow 4, orange 2, pale 2
  untoned-on-upperparts white 41, brown 15, tan 12, yellow 11, grey 7, beige 3, gold 2, cream 2, orange 2
  untoned-on-upperparts pale 2
  untoned-on-wing white 60, tan 11, brown 8, yellow 6, beige 5, cream 3, pale 3, grey 3
  warm white 30, yellow 25, brown 11, tan 8, orange 6, grey 6, beige 2, pale 2, cream 2
  means what it is called

naming buffish-white
  untoned white 76, grey 6, pale 5, yellow 3, cream 2, tan 2
  untoned-on-underparts white 75, pale 9, grey 4, tan 3, cream 3, beige 2, yellow 2
  means what it is called

naming chestnut
  untoned brown 46, red 19, orange 14, black 8, rusty 2, red-brown 2, grey 2
  untoned-on-head brown 39, red 26, orange 20, black 4, red-brown 3, rusty 2
  untoned-on-underparts brown 43, red 26, orange 14, rusty 4, black 3, red-brown 3
  untoned-on-upperparts brown 48, red 16, orange 15, black 8, burnt-orange 3, red-brown 2, grey 2
  untoned-on-wing brown 54, black 14, red 11, orange 8, grey 2, red-brown 2
  means what it is called

naming cinnamon
  untoned brown 49, grey 10, tan 10, orange 6, white 5, red 4, red-brown 2, black 2, brown-
  untoned grey 2
  untoned-on-underparts brown 45, tan 14, grey 10, white 7, orange 5, red-brown 3, brown-grey 2, red 2
  untoned-on-underparts grey-brown 2, black 2
  means what it is called

naming dark
  dark black 44, brown 42, grey 9, dark 3
  dark-on-bill black 52, brown 37, grey 7, dark 2
  dark-on-head black 59, brown 32, dark 4, grey 4
  dark-on-tail black 45, brown 43, grey 9
  dark-on-underparts brown 75, black 19, grey 4
  dark-on-upperparts brown 61, black 27, grey 5, dark 4, green 2
  dark-on-wing black 43, brown 27, grey 24, dark 2, green 2
  means what it is called

naming dusky
  untoned brown 34, black 29, grey 22, dark 3, red 2, green 2
  untoned-on-head brown 32, black 32, grey 22, dark 5, red 3
  means what it is called

naming gold
  untoned yellow 68, white 10, orange 7, gold 4, tan 3
  means what it is called

naming green
  glossy green 62, grey 6, iridescent 5, yellow 5, glossy 5, teal 3, black 2, white 2
  glossy-on-head green 76, grey 3, iridescent 3, glossy 3, yellow 2, emerald 2, teal 2, white 2
  glossy-on-head black 2
  glossy-on-upperparts green 59, iridescent 11, glossy 9, grey 4, teal 4, yellow 3, white 2, black 2
  pale green 44, yellow 21, grey 12, brown 3, white 3, black 2
  untoned green 63, yellow 10, grey 6, bright 3, black 2, white 2
  untoned-on-head green 59, yellow 12, grey 6, orange 5, white 3, black 2, dark 2
  untoned-on-tail green 68, yellow 9, grey 3, teal 2, bright 2, black 2
  untoned-on-upperparts green 61, yellow 12, bright 6, grey 3, iridescent 3, black 2
  untoned-on-wing green 75, yellow 7, grey 4, white 2, bright 2, black 2
  means what it is called

naming green-yellow
  dull yellow 75, white 8, orange 8
  untoned yellow 65, orange 18, white 7, green-yellow 2, pale 2
  means what it is called

naming grey
  dark black 40, grey 36, brown 15, white 2
  dark-on-bill black 54, grey 28, brown 9, orange 3
  dark-on-head black 49, grey 27, brown 10, white 7, red 3
  dark-on-legs black 47, grey 29, brown 17, blue 2
  dark-on-tail grey 36, black 28, brown 24, blue 5, white 2
  dark-on-underwing grey 48, black 36, brown 9, white 2
  dark-on-upperparts grey 53, black 31, brown 10, white 2
  dark-on-wing grey 40, black 32, brown 21, dark 2, blue 2
  pale white 49, grey 42, brown 2
  pale-on-head white 62, grey 31, brown 2
  pale-on-tail grey 59, white 36
  pale-on-underparts white 52, grey 36, tan 2, brown 2
  pale-on-upperparts white 54, grey 43
  pale-on-wing white 49, grey 48
  untoned grey 57, white 17, black 11, brown 8
  untoned-on-bill black 33, grey 29, brown 11, white 10, orange 3, yellow 3, pink 2, silver 2
  untoned-on-head grey 71, brown 11, white 9, black 4
  untoned-on-legs grey 44, black 26, white 14, brown 7, red 5
  untoned-on-tail grey 51, black 23, white 10, brown 6, red 3, orange 2
  untoned-on-underparts grey 49, white 38, brown 5, black 2
  untoned-on-upperparts grey 74, black 9, white 9, brown 5
  untoned-on-wing grey 73, black 11, white 7, brown 6
  means what it is called

naming grey-blue
  untoned grey 43, black 19, blue 11, white 11, sky-blue 4, brown 4
  means what it is called

naming grey-brown
  dark brown 51, grey 21, black 15, white 4, dark 3
  dark-on-wing brown 67, grey 13, black 13, dark 3
  pale grey 36, brown 19, white 19, orange 5, black 4, tan 3, yellow 3, pale 2, red 2
  untoned brown 46, grey 29, black 5, tan 5, white 5, orange 2
  untoned-on-head brown 48, grey 27, tan 6, orange 3, black 3, white 3, red 2
  untoned-on-underparts grey 44, brown 31, white 7, tan 6, black 4
  untoned-on-upperparts brown 51, grey 26, tan 5, black 5, white 4
  untoned-on-wing brown 53, grey 23, black 11, white 5, tan 2
  means what it is called

naming grey-buff
  untoned white 45, grey 12, brown 9, yellow 8, orange 6, tan 6, cream 3, gold 2, green 2
  untoned-on-underparts white 50, yellow 8, grey 8, orange 7, brown 6, tan 6, gold 4, cream 3, green 3
  means what it is called

naming grey-olive
  untoned grey 55, brown 20, green 5, black 4, white 4, dark 2, tan 2
  untoned-on-head grey 59, brown 18, green 5, dark 4, white 3, black 3, tan 2
  untoned-on-upperparts grey 63, brown 19, green 5, white 3, black 2, tan 2
  means what it is called

naming horn
  untoned white 28, grey 26, brown 12, yellow 8, tan 5, pale 4, orange 3, black 2, cream 2
  means what it is called

naming lime-green
  bright yellow 50, green 17, white 8, grey 6, pale 4, orange 3, green-yellow 2
  means what it is called

naming olive
  pale yellow 24, grey 14, brown 13, white 13, green 12, tan 5, orange 4, grey-green 3
  pale black 2, pale 2
  untoned grey 23, brown 22, green 19, yellow 16, black 5, tan 2, white 2
  untoned-on-head brown 34, yellow 21, green 13, grey 12, black 7, tan 3, white 2
  untoned-on-underparts green 30, grey 20, yellow 19, brown 10, white 4, tan 3, black 2
  untoned-on-upperparts grey 35, brown 26, green 15, yellow 9, tan 3, white 2, black 2
  untoned-on-wing grey 29, brown 20, yellow 15, green 15, black 7, white 2, tan 2
  means what it is called

naming olive-brown
  dark brown 48, black 21, grey 20, green 3, dark 2
  untoned brown 44, green 14, grey 12, black 10, yellow 6, dark 2
  untoned-on-head brown 53, black 12, green 12, grey 6, yellow 5, dark 3, orange-brown 2
  untoned-on-tail brown 44, green 14, black 12, grey 10, yellow 6, dark 2
  untoned-on-upperparts brown 48, green 18, black 9, grey 7, yellow 4, dark 2
  untoned-on-wing brown 38, green 19, grey 13, yellow 12, black 7, dark 2
  means what it is called

naming olive-green
  bright green 26, grey 24, yellow 17, brown 13, black 4, white 2
  untoned green 29, grey 25, yellow 19, brown 9, black 4, dark 2
  untoned-on-head grey 30, green 28, yellow 20, brown 8, black 2
  untoned-on-upperparts green 32, grey 21, yellow 21, brown 8, black 4, dark 3, olive 2
  untoned-on-wing green 29, grey 23, yellow 20, black 8, brown 7, dark 2, olive 2
  means what it is called

naming olive-grey
  dark grey 32, brown 23, black 23, green 7, white 3, yellow 3
  pale grey 39, white 29, brown 11, black 4, green 3, yellow 3, tan 3
  untoned grey 41, brown 25, green 9, black 6, yellow 6, white 4
  untoned-on-tail grey 43, brown 23, green 10, yellow 6, black 5, white 3, tan 2
  untoned-on-upperparts grey 36, brown 27, green 12, yellow 7, black 5, brown-grey 3, white 2, tan 2
  untoned-on-wing grey 42, brown 27, green 8, black 7, yellow 5, yellow-grey 4, white 2
  means what it is called

naming orange
  bright orange 59, yellow 19, white 5, red 4, brown 3, pink 2, tan 2
  bright-on-bill orange 72, yellow 11, pink 5, red 4, white 2
  bright-on-underparts orange 59, yellow 27, red 5, white 2
  pale orange 40, yellow 15, white 15, brown 10, tan 6, cream 2, grey 2, pale 2, red 2
  untoned orange 58, yellow 16, brown 6, white 6, tan 3, red 3
  untoned-on-bill orange 81, yellow 7, red 4, brown 2, white 2
  untoned-on-underparts orange 44, yellow 15, brown 14, tan 7, white 5, red 3, gold 2
  means what it is called

naming orange-red
  bright red 41, orange 40, brown 10, grey 2
  bright-on-bill orange 60, red 29, brown 5
  iridescent red 50, orange 20, brown 16, white 3, grey 2
  untoned red 55, orange 25, brown 11, grey 2
  untoned-on-bill red 59, orange 28, brown 6
  means what it is called

naming orange-yellow
  untoned yellow 32, orange 32, white 13, brown 5, tan 4, gold 3, grey 2
  means what it is called

naming pale
  pale white 46, grey 16, yellow 14, tan 6, orange 5, beige 2, cream 2, pale 2
  pale-on-bill white 26, yellow 21, orange 15, grey 11, beige 7, silver 6, tan 5, pale 4, pink 2
  pale-on-bill red 2
  pale-on-head white 42, yellow 20, grey 15, tan 12, orange 2
  pale-on-underparts white 62, grey 10, yellow 7, tan 7, cream 3, orange 3
  pale-on-wing white 52, grey 32, yellow 6, tan 2, orange 2
  means what it is called

naming pink
  bright orange 31, white 23, pink 17, brown 8, tan 4, yellow 4, grey 3, red 3, pale 2
  dull orange 30, white 27, pink 11, brown 11, tan 5, grey 5, red 3, pale 2
  untoned orange 33, white 17, pink 16, brown 14, tan 5, grey 3, pale 2, red 2
  untoned-on-bill orange 42, brown 19, pink 8, tan 8, white 7, peach 3, pale 2, grey 2, red 2
  untoned-on-legs orange 38, pink 28, brown 14, white 5, tan 5, red 2, pale 2
  untoned-on-underparts white 38, orange 22, brown 10, pink 8, grey 5, red 3, tan 3, pale 2
  means what it is called

naming pink-brown
  untoned brown 40, orange 20, grey 8, pink 7, red 3, black 3, tan 3, white 3
  untoned-on-bill brown 44, orange 13, pink 9, grey 6, tan 6, black 3, red 3, pale 2, white 2
  untoned-on-legs brown 39, orange 27, pink 9, red 3, grey 3, tan 2, black 2, pink-brown 2, white 2
  means what it is called

naming pink-grey
  pale white 73, grey 10, orange 2, pink 2, brown 2, pale 2, tan 2, yellow 2
  untoned grey 24, brown 22, white 22, orange 9, pink 4, tan 3, yellow 3, pale 3, black 2
  untoned-on-bill brown 32, grey 17, white 12, orange 11, yellow 5, tan 5, pale 5, pink 4, cream 2
  means what it is called

naming pink-orange
  untoned orange 35, brown 19, white 11, red 8, grey 6, yellow 6, tan 4, pink 3
  untoned-on-bill orange 45, brown 19, yellow 7, white 7, grey 5, red 5, tan 4, pink 3
  means what it is called

naming pinkish-white
  pale white 83, grey 4, pale 2, tan 2, yellow 2
  means what it is called

naming purple-blue
  glossy blue 49, black 19, grey 8, glossy 7, dark 4, purple 3, brown 3, iridescent 2
  means what it is called

naming red
  bright red 74, orange 11, brown 6
  bright-on-head red 86, orange 5, brown 2
  bright-on-underparts red 79, orange 10, brown 3, red-orange 2
  dark brown 36, orange 23, red 23, black 10, grey 4
  dark-on-bill orange 39, red 32, brown 18, black 5, grey 2
  dull red 60, orange 16, brown 12, black 5, grey 2
  dull-on-head red 67, orange 17, brown 6, black 4, pink 2
  untoned red 61, orange 27, brown 6
  untoned-on-bill orange 53, red 41
  untoned-on-head red 78, orange 15, brown 3
  untoned-on-legs red 54, orange 38, brown 3
  untoned-on-underparts red 69, orange 20, brown 5, grey 2, white 2
  untoned-on-wing red 71, orange 15, brown 4, dark 3, grey 2
  means what it is called

naming rose
  untoned red 25, brown 19, orange 13, grey 12, white 10, pink 8, tan 2, pale 2
  means what it is called

naming rufous
  bright brown 57, orange 14, red 9, black 6, grey 4
  pale brown 42, red 17, orange 16, grey 6, white 3, tan 2, black 2
  untoned brown 68, orange 13, red 6, grey 2, black 2
  untoned-on-head brown 71, orange 10, red 6, rusty 2, grey 2
  untoned-on-tail brown 70, red 9, orange 9, red-brown 2, rusty 2
  untoned-on-underparts brown 46, orange 31, red 9, rusty 2, tan 2, grey 2
  untoned-on-upperparts brown 76, orange 8, red 3, red-brown 2
  untoned-on-wing brown 86, orange 4, red 2, black 2
  means what it is called

naming rufous-brown
  pale brown 51, orange 11, grey 9, red 8, white 4, black 3, tan 3
  untoned brown 79, red 3, black 3, orange 3, grey 3, red-brown 2, tan 2
  untoned-on-head brown 83, red 2, orange 2, red-brown 2, grey 2, black 2
  untoned-on-upperparts brown 79, tan 3, grey 3, rusty 2, red 2, black 2, orange 2
  untoned-on-wing brown 88, black 3, red-brown 2, grey 2
  means what it is called

naming rusty
  untoned brown 64, red 9, orange 7, black 4, grey 4, red-brown 2, rusty 2
  means what it is called

naming salmon
  pale orange 33, white 27, brown 10, red 7, pink 6, grey 5, tan 3, pale 3
  untoned orange 26, red 22, brown 20, white 10, grey 7, pink 4, tan 2, pale 2
  means what it is called

naming slate-grey
  dark grey 50, black 30, brown 8, white 4, blue 3
  untoned grey 48, black 16, white 10, blue 7, brown 6, blue-grey 2
  means what it is called

naming white
  pale white 85, grey 8
  untoned white 88, grey 6
  untoned-on-head white 88, grey 4, yellow 2
  untoned-on-neck white 95, grey 2
  untoned-on-plume white 81, orange 10, grey 5, yellow 2
  untoned-on-tail white 82, grey 15
  untoned-on-underparts white 86, grey 6, yellow 2, tan 2
  untoned-on-underwing white 85, orange 5, grey 4, pink 2
  untoned-on-upperparts white 96, grey 3
  untoned-on-wing white 94, grey 4
  means what it is called

naming yellow
  bright yellow 96, white 2
  bright-on-head yellow 97
  bright-on-underparts yellow 98
  bright-on-upperparts yellow 97, white 2
  dull yellow 83, white 6, orange 3, green-yellow 3
  dull-on-underparts yellow 86, green-yellow 5, white 3, orange 2
  pale yellow 55, white 34, pale 2, orange 2
  pale-on-head yellow 62, white 29, pale 3
  pale-on-underparts yellow 44, white 42, pale 2, tan 2
  pale-on-wing yellow 58, white 34
  untoned yellow 84, orange 8, white 4
  untoned-on-bill yellow 72, orange 25, white 2
  untoned-on-head yellow 84, white 5, orange 4
  untoned-on-tail yellow 84, orange 9, white 4
  untoned-on-underparts yellow 91, orange 3, white 2
  untoned-on-upperparts yellow 86, white 6, orange 4, gold 2
  untoned-on-wing yellow 86, white 7, orange 5
  means what it is called

naming yellow-buff
  untoned white 39, yellow 20, tan 8, brown 7, orange 6, cream 6, grey 5, beige 2
  means what it is called

naming yellow-green
  pale yellow 67, white 15, green 6, orange 4, pale 2, green-yellow 2, tan 2
  untoned yellow 67, green 12, white 6, orange 3, tan 2, grey 2
  untoned-on-underparts yellow 68, green 16, white 4, lime-green 2, pale 2
  means what it is called

naming yellow-olive
  untoned grey 24, green 21, yellow 18, brown 13, white 7, black 3, tan 2, orange 2
  means what it is called

naming yellow-orange
  untoned orange 35, yellow 30, white 12, brown 6, tan 4, gold 3, grey 2
  means what it is called

naming yellowish-white
  untoned white 71, grey 12, yellow 9, tan 2
  means what it is called
