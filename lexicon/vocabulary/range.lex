# Where a kind of bird is at home and how common it is, as an adjective. Reference works put such words
# between the words that describe a bird and the bird: "small brown European songbird". They are passed
# over, so that what stands before them still belongs to the bird.

range old-and-new-world
  also    old world, new world, new and old worlds, worldwide, western hemisphere, eastern hemisphere
  means   of one half of the world

range european
  also    eurasian, british, mediterranean, eurasiatic, palearctic, nearctic, holarctic
  means   of Europe and the lands about it

range american
  also    north american, south american, central american, brazilian, argentinian, mexican, west indian
  also    canadian, hawaiian, californian, united states, northern european, northern american
  means   of the Americas

range african
  also    african and asian, asian and african, madagascan, south african, west african, east african
  means   of Africa

range asian
  also    asiatic, indian, indonesian, east indian, southeast asian, southern asian, southeastern asian
  also    chinese
  also    japanese, siberian, himalayan
  means   of Asia

range australian
  also    australasian, new zealand, polynesian, oceanian
  means   of Australia and the islands about it

range arctic
  also    atlantic, northern atlantic, north atlantic, pacific, north pacific, northern pacific, antarctic
  also    subarctic, tropical, subtropical, circumpolar, temperate, equatorial, polar
  means   of a belt of the world

range quarter
  also    northern, eastern, southern, western, central, northeastern, southeastern, northwestern
  also    southwestern, midwestern
  means   of one quarter of a land

range how-common
  also    common, widespread, widely distributed, abundant, commonest, naturalized, naturalised
  means   how often such birds are met

range how-kept
  also    wild, domestic, domesticated, commonly domesticated, caged, hardy, migratory, typical, oscine
  also    widely domesticated
  also    harmless, showy, diurnal, voracious, horned
  means   how such birds live and are kept
