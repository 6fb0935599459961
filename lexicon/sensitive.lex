# Kinds whose exact places are left out of archives of records, because their nests or roosts are robbed,
# persecuted or disturbed. The list is our own choice, from common practice, and no law: where your country,
# county or reserve has a code of its own, that code goes before it. Make a file of your own with an entry
# `note sensitive-kinds` to replace the list, or one under another id with `role sensitive` to add to it.

note sensitive-kinds
  role        sensitive
  generalised Place left out: the kind is listed as sensitive. The wide place is given, if any.
  withheld    Exact place, and the note, which may name it. Ask the recorder.
  kinds       Golden Eagle, White-tailed Eagle, Bald Eagle, Osprey, Peregrine Falcon, Gyrfalcon, Prairie Falcon
  kinds       Merlin, Eurasian Hobby, Eurasian Goshawk, Northern Goshawk, American Goshawk, Red Kite, Montagu's Harrier
  kinds       Hen Harrier, Northern Harrier, Western Marsh Harrier, European Honey-buzzard, Long-eared Owl
  kinds       Short-eared Owl, Snowy Owl, Barn Owl, Western Barn Owl, Burrowing Owl, Spotted Owl, Great Grey Owl
  kinds       Great Gray Owl, Eurasian Bittern, Little Bittern, Spotted Crake, Corn Crake, Common Crane
  kinds       Eurasian Stone-curlew, Little Tern, Roseate Tern, Black-tailed Godwit, Common Quail
  kinds       Common Kingfisher, Bearded Reedling, Common Firecrest, Red-backed Shrike, Piping Plover, Whooping Crane

note any-kind
  role        any-kind
  scientific  Aves
  rank        class
