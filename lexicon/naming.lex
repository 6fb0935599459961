# What watchers call colours: of a hundred watchers of a part of that colour, how many use each name, by own estimate;
# `untoned` where no tone is stated, else by its tone, and `untoned-on-bill` for one main part alone. Names left out
# share the rest by nearness. These hold where fitted.lex, which starts from them, has no list.

called amber
  untoned orange 50, yellow 30, brown 10, gold 4
  means what it is called, own estimate

called beige
  untoned tan 35, brown 18, white 18, beige 12, cream 6, yellow 4
  means what it is called, own estimate

called black
  untoned black 92, grey 3, brown 3
  dull black 90, grey 4, brown 4
  glossy black 80, blue 8, grey 2, purple 2, dark 2
  untoned-on-bill black 94, grey 3
  untoned-on-legs black 84, grey 10, brown 4
  means what it is called, own estimate

called black-brown
  untoned black 55, brown 32, dark 5, grey 5
  dull black 50, brown 36, dark 5, grey 5
  means what it is called, own estimate

called blackish-green
  untoned black 65, green 18, dark 4, blue 4, grey 4
  means what it is called, own estimate

called blackish-grey
  untoned black 66, grey 26, dark 3, brown 2
  means what it is called, own estimate

called blue
  untoned blue 92, purple 2, black 2, grey 2
  dark blue 74, black 16, purple 3, dark 2
  pale blue 72, grey 10, white 8
  glossy blue 72, black 10, purple 4, green 3, iridescent 2
  bright blue 94, teal 1
  untoned-on-legs blue 55, grey 25, black 8
  untoned-on-bill blue 50, grey 25, black 12
  means what it is called, own estimate

called blue-black
  untoned black 62, blue 24, dark 4, purple 3, grey 2
  glossy black 60, blue 26, purple 4, dark 2, iridescent 2
  means what it is called, own estimate

called blue-green
  untoned blue 35, green 35, teal 8, turquoise 5, grey 4
  glossy green 40, blue 36, teal 4, iridescent 3, black 5
  means what it is called, own estimate

called blue-grey
  untoned grey 50, blue 28, black 6, white 4, blue-grey 2
  pale grey 50, white 22, blue 16
  dark grey 44, black 24, blue 20
  untoned-on-bill grey 48, black 20, blue 12, white 6, silver 2
  untoned-on-legs grey 50, black 24, blue 14
  untoned-on-wing grey 50, blue 28, black 10
  untoned-on-head grey 50, blue 30, black 8
  means what it is called, own estimate

called brick-red
  untoned red 62, brown 16, orange 14, rusty 2
  means what it is called, own estimate

called bronze
  untoned brown 40, green 18, black 10, gold 6, orange 5, grey 5, bronze 4
  means what it is called, own estimate

called bronze-green
  untoned green 48, brown 14, black 10, gold 4, yellow 3, grey 4
  means what it is called, own estimate

called brown
  untoned brown 82, grey 6, black 5, tan 2
  dark brown 44, black 40, dark 4, grey 6
  pale brown 48, tan 14, grey 12, white 10, beige 3
  dull brown 68, grey 16, black 6
  warm brown 82, orange 5, red 3, tan 2
  untoned-on-bill brown 42, black 20, grey 16, orange 6, tan 4, yellow 3
  untoned-on-legs brown 44, black 16, grey 14, orange 12, tan 4
  dark-on-bill black 40, brown 34, grey 12
  dark-on-legs black 38, brown 36, grey 12
  means what it is called, own estimate

called brown-green
  untoned brown 34, green 34, grey 8, yellow 6, olive 3
  means what it is called, own estimate

called brown-grey
  untoned grey 56, brown 28, white 3, black 4, tan 3
  dark grey 38, brown 30, black 20, dark 3
  pale grey 50, brown 14, white 18, tan 5
  means what it is called, own estimate

called brown-orange
  untoned orange 42, brown 40, red 6, tan 3
  means what it is called, own estimate

called brownish-black
  untoned black 74, brown 18, dark 3
  dull black 72, brown 18, dark 3, grey 3
  means what it is called, own estimate

called brownish-red
  untoned red 50, brown 34, orange 6
  dull red 44, brown 38, orange 5
  means what it is called, own estimate

called brownish-white
  untoned white 58, tan 12, brown 10, grey 8, cream 3, beige 3
  means what it is called, own estimate

called brownish-yellow
  untoned yellow 44, brown 26, orange 8, tan 8, gold 3
  means what it is called, own estimate

called buff
  untoned tan 22, white 24, brown 20, yellow 12, cream 4, beige 4, orange 4, grey 3
  pale white 44, tan 14, yellow 10, cream 6, beige 4, brown 5, pale 3
  warm brown 26, orange 18, yellow 16, tan 16, white 10
  rich orange 26, brown 24, yellow 16, tan 14
  means what it is called, own estimate

called buffish-white
  untoned white 72, cream 5, tan 5, yellow 4, grey 5, pale 3, beige 2
  means what it is called, own estimate

called burgundy
  untoned red 62, brown 12, purple 10, maroon 3
  means what it is called, own estimate

called chestnut
  untoned brown 58, red 18, orange 9, rusty 3, red-brown 3, black 2
  dark brown 66, red 12, black 12
  bright brown 44, red 24, orange 16, rusty 3
  rich brown 52, red 22, orange 10
  means what it is called, own estimate

called chocolate
  untoned brown 82, black 10, dark 3
  dark brown 60, black 30, dark 4
  means what it is called, own estimate

called cinnamon
  untoned brown 52, orange 20, tan 9, red 5, rusty 2
  pale tan 22, brown 30, orange 18, white 6
  means what it is called, own estimate

called copper
  untoned orange 34, brown 34, red 10, gold 6, copper 3
  means what it is called, own estimate

called cream
  untoned white 50, cream 14, yellow 12, tan 8, beige 4, pale 3
  means what it is called, own estimate

called crimson
  untoned red 84, pink 4, orange 4
  means what it is called, own estimate

called dark
  untoned black 52, brown 20, grey 16, dark 6
  untoned-on-bill black 66, grey 14, brown 8, dark 4
  untoned-on-legs black 60, grey 16, brown 14
  means what it is called, own estimate

called dingy
  untoned grey 40, brown 24, white 18
  means what it is called, own estimate

called dirty-white
  untoned white 74, grey 14, cream 2, tan 2
  means what it is called, own estimate

called dull
  untoned grey 44, brown 28, black 6
  means what it is called, own estimate

called dusky
  untoned grey 36, black 28, brown 22, dark 5
  untoned-on-bill black 46, grey 26, brown 16, dark 3
  means what it is called, own estimate

called flame-orange
  untoned orange 76, red 14, yellow 6
  means what it is called, own estimate

called ginger
  untoned orange 44, brown 40, rusty 3, red 4
  means what it is called, own estimate

called glossy
  untoned black 50, blue 14, green 10, glossy 8
  means what it is called, own estimate

called gold
  untoned yellow 68, gold 14, orange 10, brown 3
  means what it is called, own estimate

called golden-brown
  untoned brown 56, yellow 12, gold 8, orange 8, tan 6
  means what it is called, own estimate

called green
  untoned green 84, yellow 4, blue 3, grey 2, black 1
  dark green 68, black 18, grey 4
  pale green 58, yellow 16, grey 6, white 5
  glossy green 78, blue 6, black 5, teal 2, iridescent 2
  dull green 62, grey 10, yellow 10, brown 6
  bright green 90, yellow 3
  iridescent green 80, blue 5, black 3, iridescent 3
  untoned-on-legs green 38, yellow 22, grey 16, brown 6, black 6
  untoned-on-bill green 40, yellow 22, grey 14, black 8
  means what it is called, own estimate

called green-blue
  untoned blue 48, green 28, teal 7, turquoise 5
  glossy green 42, blue 36, teal 4, black 5
  means what it is called, own estimate

called green-brown
  untoned brown 44, green 32, grey 8, yellow 4
  means what it is called, own estimate

called green-grey
  untoned grey 54, green 24, brown 5, yellow 4
  untoned-on-legs grey 46, green 20, black 12, yellow 6
  means what it is called, own estimate

called green-yellow
  untoned yellow 74, green 12, white 2, green-yellow 2
  dull yellow 66, green 14, grey 5, brown 3
  untoned-on-legs yellow 54, green 12, orange 12
  means what it is called, own estimate

called greenish-black
  untoned black 72, green 14, dark 3, blue 3
  means what it is called, own estimate

called greenish-white
  untoned white 70, green 8, yellow 7, grey 6
  means what it is called, own estimate

called grey
  untoned grey 78, white 5, black 6, brown 4
  dark grey 54, black 28, brown 6, dark 3
  pale grey 54, white 34
  dull grey 72, brown 10, black 4
  untoned-on-bill grey 50, black 28, brown 5, white 4, silver 2
  untoned-on-legs grey 54, black 24, brown 6
  dark-on-bill black 52, grey 34, brown 4, dark 2
  dark-on-legs black 50, grey 36, brown 5
  means what it is called, own estimate

called grey-blue
  untoned grey 46, blue 36, black 4
  dark blue 30, grey 36, black 20
  pale grey 44, blue 24, white 18
  means what it is called, own estimate

called grey-brown
  untoned brown 50, grey 32, tan 3, black 4, white 2
  dark brown 46, black 22, grey 20, dark 3
  pale brown 30, grey 30, tan 10, white 14
  untoned-on-legs brown 30, grey 28, black 20, orange 6
  untoned-on-bill brown 26, grey 28, black 22, orange 4
  means what it is called, own estimate

called grey-buff
  untoned white 26, grey 22, tan 16, brown 16, yellow 4, cream 3, beige 3
  pale white 46, grey 18, tan 12, cream 4
  means what it is called, own estimate

called grey-green
  untoned grey 38, green 36, brown 4, yellow 5
  untoned-on-legs grey 40, green 26, black 10, yellow 8
  means what it is called, own estimate

called grey-olive
  untoned grey 46, brown 18, green 16, yellow 6
  means what it is called, own estimate

called greyish-black
  untoned black 64, grey 28, dark 3
  means what it is called, own estimate

called greyish-pink
  untoned pink 30, grey 22, white 12, brown 10, orange 6
  untoned-on-legs pink 24, orange 20, grey 18, brown 10
  means what it is called, own estimate

called greyish-white
  untoned white 66, grey 24
  pale white 80, grey 12
  means what it is called, own estimate

called horn
  untoned grey 30, white 14, brown 16, yellow 10, black 8, tan 6, orange 3
  pale white 24, yellow 18, grey 18, tan 10, orange 6
  untoned-on-bill grey 28, white 14, yellow 12, brown 14, black 8, orange 5, tan 5
  means what it is called, own estimate

called iridescent
  untoned green 26, blue 22, black 14, purple 12, iridescent 10
  means what it is called, own estimate

called lead-grey
  untoned grey 66, black 18, blue 6
  means what it is called, own estimate

called lemon
  untoned yellow 94
  means what it is called, own estimate

called lime-green
  untoned green 52, yellow 34
  bright yellow 46, green 40
  means what it is called, own estimate

called magenta
  untoned pink 36, purple 24, red 30
  means what it is called, own estimate

called maroon
  untoned red 44, brown 32, purple 6, maroon 5
  means what it is called, own estimate

called moss-green
  untoned green 74, brown 4, yellow 8, olive 3
  means what it is called, own estimate

called mustard
  untoned yellow 76, orange 8, brown 6, gold 3
  means what it is called, own estimate

called ochre
  untoned yellow 30, brown 28, orange 18, tan 8
  means what it is called, own estimate

called off-white
  untoned white 82, grey 6, cream 3
  means what it is called, own estimate

called olive
  untoned green 30, brown 22, grey 20, yellow 12, olive 2
  pale yellow 24, green 20, grey 18, brown 10, tan 4
  dark brown 30, green 24, black 18, grey 14
  means what it is called, own estimate

called olive-brown
  untoned brown 52, green 16, grey 14, yellow 4
  dark brown 52, black 18, grey 10, green 8
  warm brown 66, green 8, tan 4
  means what it is called, own estimate

called olive-green
  untoned green 44, yellow 18, grey 14, brown 9
  bright green 50, yellow 26, grey 6
  means what it is called, own estimate

called olive-grey
  untoned grey 48, brown 18, green 16, yellow 4
  pale grey 44, white 18, green 9, brown 10
  dark grey 40, brown 22, black 18, green 8
  means what it is called, own estimate

called olive-yellow
  untoned yellow 56, green 20, brown 5, grey 5
  pale yellow 62, green 12, white 6
  means what it is called, own estimate

called orange
  untoned orange 72, yellow 10, brown 5, red 5
  bright orange 80, yellow 7, red 6
  pale orange 46, yellow 16, tan 10, white 8, brown 6, peach 3
  dull orange 52, brown 20, yellow 6, red 5
  untoned-on-bill orange 80, yellow 9, red 5
  dull-on-bill orange 60, yellow 14, brown 8
  untoned-on-legs orange 78, yellow 6, red 5
  bright-on-bill orange 82, yellow 6, red 7
  means what it is called, own estimate

called orange-brown
  untoned brown 52, orange 30, red 5, rusty 2, tan 2
  dull brown 58, orange 24, red 4
  means what it is called, own estimate

called orange-buff
  untoned orange 30, brown 20, yellow 16, tan 12, white 6, peach 3
  pale orange 22, yellow 18, tan 18, white 14, brown 10
  means what it is called, own estimate

called orange-pink
  untoned orange 50, pink 26, red 6, peach 3
  untoned-on-legs orange 60, pink 22, red 5
  means what it is called, own estimate

called orange-red
  untoned orange 48, red 42, brown 3
  bright red 46, orange 44
  dull orange 40, red 34, brown 12
  untoned-on-bill orange 58, red 36
  bright-on-bill orange 58, red 38
  untoned-on-legs orange 56, red 36
  means what it is called, own estimate

called orange-yellow
  untoned orange 44, yellow 42, gold 2
  untoned-on-bill orange 48, yellow 42
  untoned-on-legs orange 48, yellow 42
  means what it is called, own estimate

called pale
  untoned white 46, grey 18, tan 10, yellow 8, cream 2, pale 4
  untoned-on-bill yellow 20, white 20, orange 14, tan 10, grey 10, brown 5, pale 4
  means what it is called, own estimate

called pink
  untoned pink 46, orange 20, red 6, white 6, tan 4, brown 4
  pale pink 34, orange 16, white 20, tan 6
  bright pink 62, red 16, orange 10
  dull orange 26, pink 30, brown 12, tan 5, white 6
  dark pink 44, red 22, purple 8
  untoned-on-bill orange 34, pink 24, brown 10, tan 6, yellow 5, white 5
  untoned-on-legs orange 38, pink 30, brown 8, tan 6, white 4
  dull-on-legs orange 36, pink 22, brown 14, tan 6, grey 4
  dull-on-bill orange 30, pink 18, brown 14, tan 6, grey 6
  means what it is called, own estimate

called pink-brown
  untoned brown 50, pink 12, orange 12, tan 6, red 4, grey 4
  dull brown 54, orange 10, pink 8, grey 8
  untoned-on-legs brown 32, orange 24, pink 14, tan 6, grey 5
  untoned-on-bill brown 36, orange 16, pink 10, tan 6, grey 8
  means what it is called, own estimate

called pink-buff
  untoned tan 22, orange 20, brown 20, pink 14, white 12
  means what it is called, own estimate

called pink-grey
  untoned grey 42, pink 18, white 10, brown 12, orange 4
  pale white 40, grey 24, pink 10
  untoned-on-legs grey 26, pink 20, orange 16, brown 12
  untoned-on-bill grey 28, orange 14, brown 14, pink 12, white 8
  means what it is called, own estimate

called pink-orange
  untoned orange 60, pink 14, red 5, brown 4, yellow 4
  means what it is called, own estimate

called pinkish-red
  untoned red 66, pink 16, orange 6
  dull red 58, pink 14, brown 8, orange 8
  untoned-on-legs red 48, orange 26, pink 16
  untoned-on-bill orange 40, red 42, pink 8
  means what it is called, own estimate

called pinkish-white
  untoned white 70, pink 10, grey 5, tan 3
  means what it is called, own estimate

called purple
  untoned purple 62, blue 16, black 8, red 3
  glossy purple 36, black 28, blue 22, iridescent 4
  iridescent purple 56, blue 12, black 10, red 6, pink 4
  dark purple 44, black 32, blue 10
  means what it is called, own estimate

called purple-blue
  untoned blue 64, purple 20, black 6
  glossy blue 46, black 24, purple 14, iridescent 3
  means what it is called, own estimate

called purple-brown
  untoned brown 60, purple 12, black 8, red 6
  means what it is called, own estimate

called purple-grey
  untoned grey 56, purple 12, blue 8, brown 8
  means what it is called, own estimate

called red
  untoned red 84, orange 9, brown 2
  bright red 90, orange 6
  dull red 58, orange 14, brown 16
  dark red 58, brown 20, black 8, orange 4
  untoned-on-bill red 56, orange 38
  untoned-on-legs red 52, orange 38, pink 3
  dark-on-bill red 54, orange 28, brown 6, black 5
  bright-on-bill red 60, orange 36
  dark-on-legs red 50, orange 24, brown 10, black 5
  means what it is called, own estimate

called red-brown
  untoned brown 62, red 18, orange 6, rusty 3, red-brown 3
  dark brown 66, black 12, red 10
  dull brown 64, red 14
  means what it is called, own estimate

called red-orange
  untoned orange 52, red 40
  untoned-on-bill orange 62, red 32
  means what it is called, own estimate

called red-purple
  untoned purple 40, red 36, pink 8
  means what it is called, own estimate

called reddish-pink
  untoned pink 42, red 40, orange 6
  dull pink 34, red 32, orange 8, brown 8
  means what it is called, own estimate

called rose
  untoned pink 50, red 28, orange 5, purple 2
  means what it is called, own estimate

called rose-red
  untoned red 70, pink 18, orange 4
  iridescent red 58, pink 22, purple 8
  means what it is called, own estimate

called ruby
  untoned red 84, pink 4, purple 3
  means what it is called, own estimate

called rufous
  untoned brown 54, orange 24, red 8, rusty 4, tan 2
  bright orange 40, brown 38, red 10, rusty 3
  pale brown 36, orange 28, tan 10
  dull brown 58, orange 14, red 6
  means what it is called, own estimate

called rufous-brown
  untoned brown 74, orange 8, red 6, rusty 3, tan 2
  dark brown 70, black 14, red 4
  pale brown 54, orange 12, tan 12
  means what it is called, own estimate

called russet
  untoned brown 56, red 18, orange 14, rusty 4
  means what it is called, own estimate

called rusty
  untoned brown 50, orange 22, red 10, rusty 6
  means what it is called, own estimate

called salmon
  untoned orange 42, pink 30, red 8
  means what it is called, own estimate

called sandy
  untoned tan 34, brown 34, white 8, yellow 8, beige 4
  pale tan 34, white 20, brown 18
  means what it is called, own estimate

called scarlet
  untoned red 84, orange 10
  means what it is called, own estimate

called silver
  untoned grey 60, white 20, silver 10
  means what it is called, own estimate

called silver-grey
  untoned grey 72, white 14, silver 5
  means what it is called, own estimate

called silver-white
  untoned white 78, grey 14, silver 2
  means what it is called, own estimate

called sky-blue
  untoned blue 92, teal 1
  means what it is called, own estimate

called slate
  untoned grey 62, black 18, blue 8
  means what it is called, own estimate

called slate-blue
  untoned blue 44, grey 40, black 6
  means what it is called, own estimate

called slate-grey
  untoned grey 66, black 16, blue 7
  dark grey 52, black 34, blue 4
  untoned-on-bill grey 46, black 34, blue 5
  means what it is called, own estimate

called snow-white
  untoned white 96
  means what it is called, own estimate

called sooty
  untoned black 52, grey 22, brown 18, dark 3
  dull black 44, brown 26, grey 20
  means what it is called, own estimate

called tan
  untoned tan 38, brown 32, white 6, yellow 5, beige 4
  means what it is called, own estimate

called taupe
  untoned brown 40, grey 32, tan 10
  means what it is called, own estimate

called tawny
  untoned brown 54, orange 16, tan 12, yellow 4
  means what it is called, own estimate

called turquoise
  untoned blue 58, green 18, teal 8, turquoise 6
  means what it is called, own estimate

called violet
  untoned purple 58, blue 24, black 5
  means what it is called, own estimate

called violet-blue
  untoned blue 64, purple 22
  dark blue 54, black 18, purple 16
  means what it is called, own estimate

called white
  untoned white 94, grey 3
  dull white 82, grey 10
  pale white 92, grey 4
  untoned-on-bill white 70, grey 10, yellow 6, tan 3, silver 2
  untoned-on-legs white 62, grey 14, orange 4, pink 4
  means what it is called, own estimate

called yellow
  untoned yellow 90, orange 4, white 2
  bright yellow 95, orange 2
  pale yellow 66, white 22
  dull yellow 78, white 4, green 3, orange 3, brown 2
  untoned-on-bill yellow 72, orange 22
  untoned-on-legs yellow 62, orange 26
  dull-on-bill yellow 62, orange 16, grey 4, brown 4
  dull-on-legs yellow 56, orange 18, brown 8
  bright-on-bill yellow 76, orange 20
  means what it is called, own estimate

called yellow-brown
  untoned brown 56, yellow 16, tan 8, orange 6
  dull brown 58, yellow 12, tan 8
  means what it is called, own estimate

called yellow-buff
  untoned yellow 34, white 18, tan 14, brown 12, cream 4, orange 4, beige 3
  means what it is called, own estimate

called yellow-green
  untoned green 38, yellow 44, green-yellow 2
  bright yellow 50, green 38
  pale yellow 56, green 16, white 10
  untoned-on-legs yellow 40, green 26, orange 6, grey 6
  means what it is called, own estimate

called yellow-grey
  untoned grey 46, yellow 20, white 10, tan 5
  pale white 34, grey 28, yellow 14
  means what it is called, own estimate

called yellow-olive
  untoned yellow 34, green 26, brown 10, grey 12
  means what it is called, own estimate

called yellow-orange
  untoned orange 46, yellow 42, gold 3
  means what it is called, own estimate

called yellowish-white
  untoned white 72, yellow 14, cream 3
  means what it is called, own estimate
