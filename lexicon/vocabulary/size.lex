# Words for size that compare with nothing. None is a step on a ladder.

size big
  value   large
  also    bigger, larger, big sized, big size, big in size, biggish
  means   of more than usual size
  pato    PATO:0000586

size diminutive
  value   tiny
  means   very small and neat

size dwarf
  value   tiny
  also    dwarfed, dwarfish, dwarf like
  means   small for its kind
  pato    PATO:0000969

size enormous
  value   huge
  also    enormous sized, enormous size, enormous in size, colossal, gargantuan
  means   large beyond the usual

size fairly-large
  value   large
  extent  slightly
  also    rather large, quite large, pretty large, moderately large, relatively large, fairly big, quite big
  also    rather big, pretty big, fair sized
  means   somewhat larger than middling

size fairly-small
  value   small
  extent  slightly
  also    rather small, quite small, pretty small, moderately small, relatively small
  means   somewhat smaller than middling

size giant
  value   huge
  also    giant sized, giant size, giant in size, gigantic
  means   very large indeed
  pato    PATO:0001940

size good-sized
  value   large
  extent  slightly
  also    decent sized, good size, decent size, a fair size
  means   of fully usual size

size huge
  typical 1500 15000
  also    huge sized, huge size, huge in size, massively big, whopping, really huge
  means   very large indeed

size immense
  value   huge
  means   large beyond measure

size large
  also    expansive
  typical 350 6000
  also    large sized, large size, large in size, larger sized, large looking
  means   of more than usual size
  pato    PATO:0000586

size largish
  value   large
  extent  slightly
  also    largish sized, largish size, largish in size, large ish, on the large side, on the big side
  means   rather large

size little
  value   small
  also    a little, little sized, little size, little in size, teensy
  means   of less than usual size

size massive
  value   huge
  also    massive sized, massive size, massive in size, hulking, mammoth
  means   very large and heavy

size medium
  typical 40 400
  also    medium sized, medium size, medium in size, average sized, average size, mid sized, mid size
  also    middle sized, middling, middling in size, middling size, moderate sized, moderate size
  also    moderately sized, normal sized, normal size, regular sized, regular size, regularly sized
  also    intermediate in size, intermediate size, standard sized, mediumish, average in size
  means   neither large nor small
  pato    PATO:0045050

size medium-large
  typical 150 1200
  also    medium large sized, medium large size, medium large in size, larger than average, mid to large
  also    bigger than average, above average size
  means   a little above middling

size medium-small
  typical 18 80
  also    medium small sized, medium small size, medium small in size, smaller than average
  also    below average size
  means   a little below middling

size medium-to-large
  value   medium-large
  also    medium to large sized, medium to large size, medium to large in size, large to medium
  also    medium or large
  means   from middling to large

size miniature
  value   tiny
  also    miniature sized, miniature size, miniature in size, mini, mini sized
  means   small as a model

size minuscule
  value   tiny
  also    miniscule, microscopic
  means   so small as to be hard to see

size outsized
  typical 350 6000
  also    over sized, oversize, outsize, disproportionately large, unusually large
  means   too large for the rest

size palm-sized
  value   small
  also    palm size, hand sized, fist sized, fist size
  means   as large as a palm or fist

size petite
  value   small
  also    petite sized, petite size, petite in size
  means   small and neat

size pint-sized
  value   small
  also    pint size, half pint
  means   small, said with fondness

size pocket-sized
  value   small
  also    pocket size
  means   small enough for a pocket

size sizeable
  value   large
  also    sizable, substantial
  means   fairly large

size small
  typical 7 45
  also    smaller, small sized, small size, small in size, smaller sized, small looking
  means   of less than usual size
  pato    PATO:0000587

size small-to-medium
  value   medium-small
  also    small to medium sized, small to medium size, small to medium in size, medium to small
  also    small or medium, small to mid sized
  means   from small to middling

size smallish
  value   small
  extent  slightly
  also    smallish sized, smallish size, smallish in size, small ish, on the small side
  means   rather small

size teeny
  value   tiny
  also    teeny tiny, teeny weeny, itty bitty, itsy bitsy, eensy
  means   very small, said with fondness

size thumb-sized
  value   tiny
  also    thumb size
  means   as large as a thumb

size tiny
  typical 3 13
  also    tiny sized, tiny size, tiny in size, tiniest, really tiny, very tiny
  means   very small

size undersized
  typical 5 25
  also    undersize, unusually small
  means   too small for its kind

size very-large
  value   large
  extent  very
  also    very large sized, very large size, very large in size, very big, extremely large, extra large
  also    super large, exceptionally large, incredibly large, extremely big, enormously large, really big
  also    really large
  means   far above middling

size very-small
  value   small
  extent  very
  also    very small sized, very small size, very small in size, extremely small, really small, super small
  also    extra small, exceptionally small, incredibly small
  means   far below middling

size wee
  value   tiny
  also    weeny
  means   small
