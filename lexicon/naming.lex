# What people call colours of which too little is said in the sentences behind fitted.lex: of a hundred watchers
# of a part of that colour, how many use each name; `untoned` where no tone is stated, else by its tone, and
# `untoned-on-bill` for one main part alone. Names left out share the rest by nearness.

naming blue-black
  untoned black 62, blue 20, dark 4, grey 3, purple 3, blue-black 2
  means   own estimate

naming blue-green
  untoned blue 35, green 35, teal 8, turquoise 5, grey 4
  means   own estimate

naming bronze
  untoned brown 35, green 18, black 10, gold 6, grey 5, bronze 4
  means   own estimate

naming bronze-green
  untoned green 45, brown 12, black 10, grey 6, yellow 3
  means   own estimate

naming chocolate
  untoned brown 76, black 12, dark 4
  means   own estimate

naming cream
  untoned white 42, cream 18, yellow 12, tan 8, beige 4, pale 3
  means   own estimate

naming crimson
  untoned red 80, pink 4, purple 3
  means   own estimate

naming golden-brown
  untoned brown 50, yellow 12, gold 10, orange 8, tan 6
  means   own estimate

naming green-blue
  untoned blue 45, green 25, teal 8, turquoise 6, grey 3
  means   own estimate

naming greyish-white
  untoned white 62, grey 20, pale 3, off-white 2
  means   own estimate

naming ochre
  untoned yellow 30, brown 28, orange 15, tan 8
  means   own estimate

naming olive-yellow
  untoned yellow 52, green 20, grey 5, green-yellow 4, brown 4
  means   own estimate

naming orange-buff
  untoned orange 30, brown 20, yellow 12, tan 12, white 8, pale 3, peach 3
  means   own estimate

naming orange-pink
  untoned orange 50, pink 20, white 5, red 6, tan 4, peach 3
  means   own estimate

naming pinkish-red
  untoned red 45, pink 25, orange 10, brown 6
  means   own estimate

naming purple
  untoned purple 40, blue 22, black 15, brown 5, grey 4, dark 4
  means   own estimate

naming purple-brown
  untoned brown 60, purple 9, black 9, grey 4, dark 4, red-brown 3
  means   own estimate

naming red-brown
  untoned brown 55, red 16, orange 6, red-brown 6, rusty 4, black 3
  means   own estimate

naming rose-red
  untoned red 62, pink 22, purple 4, brown 3
  means   own estimate

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

naming yellow-brown
  untoned brown 45, yellow 20, tan 10, orange 6, gold 3
  means   own estimate
