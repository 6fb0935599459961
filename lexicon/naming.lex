# What people call a colour. `naming`: of a hundred watchers of a part of that colour, how many use each
# name; `untoned` where no tone is stated, else by its tone. Names left out share the rest by nearness.
# Fitted, for all kinds together, on the sentences in which people described 2,930 birds (Reed et al. 2016
# over CUB-200-2011) against what the accounts state; rounded. Those marked "own estimate" are not.

# Shares of colour names in those sentences, in a hundred.
spoken colours
  shares  black 25.43, white 21.82, brown 13.51, grey 10.44, yellow 9.65, orange 4.41, red 3.88
  shares  blue 2.42, green 1.93, tan 1.02, dark 0.72, pale 0.46, pink 0.45, cream 0.35, purple 0.19
  shares  beige 0.18, gold 0.18, red-brown 0.12, rusty 0.11, off-white 0.10, grey-brown 0.09
  shares  jet-black 0.09, brown-grey 0.08, green-yellow 0.08, snow-white 0.08, silver 0.07
  shares  yellow-green 0.07, red-orange 0.06, taupe 0.05, teal 0.05, turquoise 0.05, peach 0.04
  shares  orange-brown 0.04
  means   how common a colour name is in speech

# How many colours of a part a sentence speaks of, if the part looks as on an average bird.
spoken-of colours
  rates   bird 0.613, head 0.111, crown 0.139, crest 0.012, nape 0.027, face 0.012, supercilium 0.062
  rates   eye-ring 0.128, cheek 0.018, throat 0.058, neck 0.019, back 0.049, breast 0.160, belly 0.240
  rates   flanks 0.019, wing 0.263, wing-coverts 0.017, wing-bar 0.098, secondaries 0.030
  rates   primaries 0.023, tail 0.054, bill 0.235, iris 0.042, legs 0.031, feet 0.040
  means   how much people talk of each part

naming black
  untoned black 94, grey 2, brown 2
  means   what it is called

naming black-brown
  untoned black 42, brown 32, grey 20, dark 2
  means   what it is called

naming blackish-grey
  untoned black 77, grey 11, brown 4, dark 3
  means   what it is called

naming blue
  untoned blue 85, purple 6, black 2
  dark    blue 55, black 26, dark 8, grey 3, purple 2
  bright  blue 85, teal 3, turquoise 3, dark 2
  means   what it is called

naming blue-black
  untoned black 62, blue 20, dark 4, grey 3, purple 3, blue-black 2
  means   own estimate

naming blue-green
  untoned blue 35, green 35, teal 8, turquoise 5, grey 4
  means   own estimate

naming blue-grey
  untoned grey 47, black 26, blue 14, white 4
  means   what it is called

naming bronze
  untoned brown 35, green 18, black 10, gold 6, grey 5, bronze 4
  means   own estimate

naming bronze-green
  untoned green 45, brown 12, black 10, grey 6, yellow 3
  means   own estimate

naming brown
  untoned brown 81, grey 8, black 7
  dark    black 56, brown 29, grey 9, dark 3
  pale    brown 47, grey 17, white 15, red 6, rusty 2
  means   what it is called

naming brown-grey
  untoned grey 70, brown 8, white 5, tan 3
  dark    grey 51, black 13, brown 12, grey-brown 3, red 2, dark 2, green 2
  means   what it is called

naming brownish-black
  untoned black 77, brown 6, dark 5, jet-black 4, grey 3
  means   what it is called

naming buff
  untoned white 34, brown 18, yellow 14, tan 12, grey 8, pale 3, beige 3, cream 2
  pale    white 42, yellow 22, tan 11, pale 5, cream 4, orange 3, grey 2
  means   what it is called

naming buffish-white
  untoned white 59, grey 6, pale 6, cream 5, yellow 5, tan 5, beige 2, orange 2
  means   what it is called

naming chestnut
  untoned brown 46, red 23, orange 15, black 3, rusty 3, red-brown 2
  means   what it is called

naming chocolate
  untoned brown 76, black 12, dark 4
  means   own estimate

naming cinnamon
  untoned brown 30, grey 14, tan 14, red 6, orange 5, white 4, beige 4, brown-grey 2, red-brown 2
  means   what it is called

naming cream
  untoned white 42, cream 18, yellow 12, tan 8, beige 4, pale 3
  means   own estimate

naming crimson
  untoned red 80, pink 4, purple 3
  means   own estimate

naming dark
  dark    black 40, brown 35, grey 20, dark 2
  means   what it is called

naming dusky
  untoned black 29, brown 26, grey 22, dark 5, green 4, yellow-green 2
  means   what it is called

naming gold
  untoned yellow 54, orange 12, white 9, gold 5, tan 4, pale 3, amber 2
  means   what it is called

naming golden-brown
  untoned brown 50, yellow 12, gold 10, orange 8, tan 6
  means   own estimate

naming green
  untoned green 79, yellow 3, grey 3, blue 3
  means   what it is called

naming green-blue
  untoned blue 45, green 25, teal 8, turquoise 6, grey 3
  means   own estimate

naming green-yellow
  untoned yellow 58, orange 22, white 6, pale 3
  means   what it is called

naming grey
  untoned grey 66, white 17, brown 6, black 6
  dark    black 41, grey 37, brown 13, dark 2
  pale    white 49, grey 45
  means   what it is called

naming grey-brown
  untoned brown 48, grey 28, tan 5, white 5, black 3, orange 2
  dark    brown 48, grey 21, black 13, white 7, dark 3
  means   what it is called

naming grey-buff
  untoned white 45, grey 11, orange 11, tan 8, brown 4, cream 4, yellow 3, red 2
  means   what it is called

naming grey-olive
  untoned grey 55, brown 20, green 4, dark 3, tan 2, black 2
  means   what it is called

naming greyish-white
  untoned white 62, grey 20, pale 3, off-white 2
  means   own estimate

naming ochre
  untoned yellow 30, brown 28, orange 15, tan 8
  means   own estimate

naming olive
  untoned grey 23, brown 19, yellow 18, green 15, black 5, tan 3, white 2
  means   what it is called

naming olive-brown
  untoned brown 41, green 16, yellow 11, grey 10, black 6, dark 2
  dark    brown 47, grey 24, black 18, dark 4
  means   what it is called

naming olive-green
  untoned yellow 27, green 25, grey 25, brown 8, black 4, green-yellow 2
  means   what it is called

naming olive-grey
  untoned grey 40, brown 20, green 9, yellow 9, black 4, tan 2, white 2
  means   what it is called

naming olive-yellow
  untoned yellow 52, green 20, grey 5, green-yellow 4, brown 4
  means   own estimate

naming orange
  untoned orange 73, yellow 13, red 4, brown 2
  pale    orange 31, brown 20, tan 10, white 9, yellow 9, pale 4, amber 2, grey 2
  bright  orange 66, yellow 19, red 5, pink 3
  means   what it is called

naming orange-buff
  untoned orange 30, brown 20, yellow 12, tan 12, white 8, pale 3, peach 3
  means   own estimate

naming orange-pink
  untoned orange 50, pink 20, white 5, red 6, tan 4, peach 3
  means   own estimate

naming orange-red
  untoned red 54, orange 23, brown 8, grey 3
  bright  orange 62, red 21, brown 6, grey 2, red-orange 2
  means   what it is called

naming orange-yellow
  untoned yellow 37, orange 36, white 5, gold 3, tan 3, pale 2, grey 2
  means   what it is called

naming pale
  pale    white 54, yellow 12, grey 11, tan 5, orange 4, cream 3, brown 2, beige 2, pale 2
  means   what it is called

naming pink
  untoned orange 37, pink 15, brown 14, white 9, yellow 5, tan 5, red 3, pale 2, grey 2
  bright  pink 55, red 14, orange 8, white 4, purple 3
  means   what it is called

naming pink-brown
  untoned brown 36, orange 20, pink 9, grey 7, red 5, tan 4, yellow 3, black 2, white 2
  means   what it is called

naming pink-grey
  untoned brown 25, grey 16, white 13, orange 12, pink 7, tan 5, yellow 4, pale 3, cream 2
  means   what it is called

naming pinkish-red
  untoned red 45, pink 25, orange 10, brown 6
  means   own estimate

naming pinkish-white
  pale    white 66, pale 5, tan 5, yellow 4, pink 3, orange 3, grey 2, silver 2, beige 2
  means   what it is called

naming purple
  untoned purple 40, blue 22, black 15, brown 5, grey 4, dark 4
  means   own estimate

naming purple-brown
  untoned brown 60, purple 9, black 9, grey 4, dark 4, red-brown 3
  means   own estimate

naming red
  untoned red 63, orange 31, brown 2
  dark    red 60, brown 15, orange 10, red-orange 2, black 2
  bright  red 82, orange 7, brown 3
  means   what it is called

naming red-brown
  untoned brown 55, red 16, orange 6, red-brown 6, rusty 4, black 3
  means   own estimate

naming rose-red
  untoned red 62, pink 22, purple 4, brown 3
  means   own estimate

naming rufous
  untoned brown 71, orange 11, red 6, rusty 2, tan 2, red-brown 2
  bright  orange 36, brown 29, red 12, grey 4, orange-brown 3
  means   what it is called

naming rufous-brown
  untoned brown 82, red 3, grey 2, red-brown 2, tan 2
  means   what it is called

naming rusty
  untoned brown 54, red 9, grey 7, orange 5, red-brown 3, dark 3, rusty 2
  means   what it is called

naming sandy
  untoned brown 30, tan 28, white 10, yellow 8, grey 6, beige 5
  means   own estimate

naming scarlet
  untoned red 78, orange 8
  means   own estimate

naming silver-grey
  untoned grey 60, white 18, silver 6
  means   own estimate

naming slate-blue
  untoned blue 40, grey 35, blue-grey 6, black 5
  means   own estimate

naming slate-grey
  untoned grey 49, blue 10, white 5, blue-grey 5, dark 4, black 4, purple 2, brown 2, grey-blue 2
  dark    grey 62, black 21, blue 4, brown 3, dark 2
  means   what it is called

naming sooty
  untoned black 55, grey 16, brown 16, dark 5
  means   own estimate

naming tan
  untoned brown 34, tan 34, white 6, grey 6, yellow 5, beige 4
  means   own estimate

naming tawny
  untoned brown 52, orange 14, tan 10, red 4, yellow 4, rusty 3
  means   own estimate

naming violet
  untoned purple 60, blue 20, black 5
  means   own estimate

naming white
  untoned white 92, grey 4
  pale    white 71, grey 6, pale 5, tan 3, yellow 2, cream 2
  means   what it is called

naming yellow
  untoned yellow 88, orange 8
  pale    yellow 47, white 37, green 4, pale 3, grey 2, tan 2
  bright  yellow 97
  means   what it is called

naming yellow-brown
  untoned brown 45, yellow 20, tan 10, orange 6, gold 3
  means   own estimate

naming yellow-buff
  untoned white 36, yellow 25, orange 8, tan 8, cream 6, grey 4, beige 2, pale 2
  means   what it is called

naming yellow-green
  untoned yellow 63, green 12, white 5, pale 3, grey 2, lime-green 2, tan 2
  pale    yellow 42, white 25, green 12, pale 5, tan 4, grey 2, orange 2
  means   what it is called

naming yellow-orange
  untoned yellow 38, orange 27, white 6, tan 4, gold 4, grey 3, pale 3
  means   what it is called

naming yellowish-white
  untoned white 48, grey 15, yellow 13, beige 3, tan 3, pale 2, cream 2, orange 2
  means   what it is called
