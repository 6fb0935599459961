# How a colour is held: light or dark, strong or weak, shining or not.

tone bright
  also    brightly, brighter, brightest, brilliant, brilliantly, vivid, vividly, vibrant, vibrantly
  also    fluorescent, neon, luminous, dazzling, bright coloured, bright colored, brightly coloured
  also    brightly colored, vividly coloured, vividly colored, brilliantly coloured, brilliantly colored
  also    vibrantly colored, vibrantly coloured, intense, intensely, garish
  means   strong and full of light

tone clean
  also    cleaner, unsullied, crisp, pure
  means   clear and unsoiled, with no other colour mixed in

tone cold
  also    colder, cool, cooler, cold toned, cool toned
  means   leaning to grey or blue

tone dark
  shift   -12
  below   42
  also    darker, darkest, deep, deeper, deepest, darkish, dark coloured, dark colored, darker coloured
  also    darker colored, dark toned, deep coloured, deep colored, deeply coloured, deeply colored
  means   with little light in it

tone dingy
  also    dingier, dirty, dirtier, dirty looking, grubby, murky, stained
  means   looking soiled

tone dull
  also    duller, dullest, dully, drab, drabber, drably, muted, subdued, dull coloured, dull colored
  also    dully coloured, dully colored, drab coloured, drab colored, bland, bland coloured, bland colored
  also    dowdy, lacklustre, lackluster, sombre, somber, neutral toned
  means   with little strength of colour

tone dusty
  also    dusty looking, powdery, dusty toned
  means   softened as if with fine dust

tone faded
  also    washed out, bleached, sun bleached, worn looking
  means   weakened by wear or sun

tone frosty
  also    frosted looking, frosty looking, hoary
  means   whitened as if by frost

tone glossy
  also    glossier, shiny, shinier, gloss, sheen, glossed, polished, lustrous, satiny, oily looking
  also    oil sheen, oily sheen
  means   throwing back light evenly

tone iridescent
  also    iridescence, metallic, shimmering, shimmery, shimmer, opalescent, oil slick colours
  also    oil slick colors, changing colour with the light, changing color with the light, rainbow sheen
  means   changing colour as the light moves

tone matt
  heard   mat
  also    matte, unglossed, velvety, sheenless, lustreless, lusterless
  means   with no shine

tone medium-toned
  also    mid toned, medium shade, mid shade, middling in tone, medium coloured, medium colored
  means   neither pale nor dark

tone pale
  heard   lite
  heard   pail, pails
  shift   12
  above   62
  also    paler, palest, pallid, palish, light, lighter, lightest, lightish, light coloured, light colored
  also    lighter coloured, lighter colored, pale coloured, pale colored, lightly coloured, lightly colored
  also    light toned, pale toned, fair coloured, fair colored, whitened
  means   with much light in it

tone pastel
  also    softer toned, soft toned, softly coloured, softly colored, pastel coloured, pastel colored
  also    gentle toned
  means   mild and light, with no harsh contrast

tone rich
  also    richer, richly, richest, richly coloured, richly colored, saturated, deep rich, full toned
  also    strongly coloured, strongly colored
  means   strong and deep

tone translucent
  also    see through, semi transparent, lets the light through
  means   letting some light through

tone warm
  also    warmer, warmly, warm toned, warmly coloured, warmly colored, warm coloured, warm colored
  means   leaning to red, orange or yellow

tone medium-word
  hidden  yes
  tone    medium-toned
  also    medium, mid
  only-before :colour
  means   neither pale nor dark
