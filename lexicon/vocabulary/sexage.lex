# Sex, age, plumage state, moult and colour form.

sexage adult
  apart   age adult
  also    adult bird, full adult, full-grown, fully grown, mature, mature bird, ad, adult plumage
  also    adult-type, in adult plumage
  means   a bird in its final plumage

sexage after-hatch-year
  also    ahy, after-hatching-year, after first year, at least second year, past its first year
  means   hatched before this calendar year

sexage albino
  also    albinism, pure albino
  means   without any pigment, eyes pink

sexage blue-form
  also    blue morph, blue phase, blue-morph bird, dusky blue form
  means   the dark blue-grey form of a species with two colour forms

sexage breeding
  also    breeding plumage, in breeding plumage, summer plumage, in summer plumage, full breeding plumage
  also    breeding dress, breeding colours, breeding colors, alternate plumage, nuptial plumage
  also    full summer plumage, summer dress, breeding condition, courtship plumage, breeding bird
  means   in the plumage worn for nesting

sexage bridled-form
  also    bridled morph, bridled bird, bridled phase
  means   the form with a pale ring and line at the eye

sexage brown-form
  also    brown morph, brown phase, brown-morph bird
  means   the brown form of a species with two colour forms

sexage chick
  apart   age young
  also    downy chick, downy young, duckling, gosling, cygnet, still in down, fluffy chick, in down
  means   a young bird in down

sexage dark-form
  also    dark morph, dark phase, dark-morph bird, dark colour form, melanic form
  means   the dark form of a species that has two

sexage eclipse
  also    eclipse plumage, in eclipse, coming out of eclipse, going into eclipse, part eclipse
  means   the dull late-summer plumage of a male duck

sexage family-party
  also    family group, family flock, family of young, family brood
  means   old and young birds together

sexage fawn-form
  also    fawn morph, buff form, buff morph, cream form, cream morph
  means   the buff form of a species with several colour forms

sexage female
  apart   sex female
  also    hen, hen bird, mother bird, fem, female bird
  means   a bird of the egg-laying sex

sexage female-type
  apart   sex female
  also    female-like, female-coloured, female-colored, female or immature, female or juvenile
  also    female plumage, in female plumage, female or first winter, fem type
  means   in the plumage shared by females and young birds

sexage first-summer
  apart   age young
  also    1st summer, first-summer plumage, first summer bird, in its first summer, one-year-old, 1 year old
  means   about a year old, in spring or summer

sexage first-winter
  apart   age young
  also    1st winter, first-winter plumage, 1w, first winter bird, in its first winter, first basic
  also    first-cycle, 1st cycle, formative plumage
  means   in the plumage of the first autumn and winter

sexage first-year
  apart   age young
  also    1st year, first year bird, first-year plumage, 1cy, first calendar year, bird of the year
  also    this year's bird, young of the year
  means   in its first year of life

sexage fledgling
  apart   age young
  also    fledgeling, newly fledged, just fledged, recently fledged, fledged young, just out of the nest
  also    begging young, recent fledgling
  means   out of the nest but still fed by its parents

sexage fourth-year
  also    4th year, fourth winter, 4th winter, 4w, 4cy, fourth calendar year, fourth-cycle, 4th cycle
  means   in its fourth year

sexage fresh-plumage
  also    freshly moulted, freshly molted, in fresh plumage, newly moulted, newly molted, fresh feathers
  also    fresh-plumaged, autumn-fresh
  means   with new, unworn feathers

sexage grey-form
  also    gray form, grey morph, gray morph, grey phase, gray phase, grey-morph bird, gray-morph bird
  means   the grey form of a species with two colour forms

sexage hatch-year
  apart   age young
  also    hy, hatching-year, hatch year bird, hatched this year, hatched this summer
  means   hatched in this calendar year

sexage hybrid
  also    cross-bred, hybrid bird, crossbreed, mixed parentage, intergrade, hybrid cross
  means   of parents of two species or forms

sexage immature
  apart   age young
  also    imm, immature bird, immature plumage, not yet adult, not full adult, teenager, in immature plumage
  also    non-adult
  means   past the first feathers, not yet adult

sexage intermediate-form
  also    intermediate morph, intermediate phase, intermediate-morph bird
  means   between the dark and the pale form

sexage juvenile
  apart   age young
  also    juv, juvenal, juvenile plumage, juvenal plumage, in juvenile plumage, juvie, fresh juvenile
  also    juvenile bird, youngster
  means   in its first set of true feathers

sexage leucistic
  also    leucism, partly leucistic, partial albino, part albino, partly white bird, piebald bird
  also    pied mutant, dilute plumage
  means   lacking colour in some or all feathers

sexage male
  apart   sex male
  heard   mail, mails
  heard-after adult, young, immature
  heard-before :comma, :stop, :with, :sexage
  also    male bird, cock bird, drake, tom turkey, gobbler, father bird
  means   a bird of the sex that sires

sexage melanistic
  also    melanism, melanic, melanistic bird, abnormally black, melanic bird
  means   with more black pigment than usual

sexage moulting
  also    molting, in moult, in molt, moult, molt, in active moult, in active molt, body moult, body molt
  also    in heavy moult, in heavy molt, mid-moult, mid-molt, moulting bird, molting bird, moulted, molted
  means   changing its feathers

sexage nestling
  apart   age young
  also    naked young, nest young, still in the nest
  means   a young bird not yet out of the nest

sexage non-breeding
  also    nonbreeding plumage, in non-breeding plumage, winter plumage, in winter plumage, basic plumage
  also    winter dress, full winter plumage, winter-plumaged, off-season plumage, post-breeding
  also    post-breeding plumage
  means   in the plumage worn outside the nesting season

sexage pale-form
  also    pale morph, pale phase, light morph, light phase, light form, pale-morph bird, light-morph bird
  also    white-bellied form, pale colour form
  means   the pale form of a species that has two

sexage red-form
  also    red morph, rufous form, rufous morph, rufous phase, red phase, red-morph bird, rufous-morph bird
  also    hepatic
  means   the red-brown form of a species with two colour forms

sexage second-summer
  also    2nd summer, second-summer plumage, second summer bird
  means   in the plumage of its second full summer

sexage second-winter
  apart   age young
  also    2nd winter, second-winter plumage, 2w, second winter bird, second-cycle, 2nd cycle, second basic
  means   in the plumage of its second winter

sexage second-year
  also    2nd year, sy, 2cy, second calendar year, second year bird, two-year-old, 2 year old
  means   in its second calendar year

sexage subadult
  apart   age young
  also    near-adult, nearly adult, almost adult, sub adult bird, nearly mature, almost full adult
  means   nearly in its final plumage

sexage tailless
  also    tail-moult, tail molt, growing a new tail, lost its tail, missing its tail, missing tail
  also    tail missing, tail feathers missing, regrowing its tail
  means   without a tail, or with tail feathers lost or growing

sexage tan-striped-form
  also    tan-striped morph, tan morph, tan-striped bird
  means   the buff-striped form of a species with two head patterns

sexage third-summer
  also    3rd summer, third-summer plumage, third summer bird
  means   in the plumage of its third full summer

sexage third-winter
  also    3rd winter, 3w, third-winter plumage, third winter bird, third-cycle, 3rd cycle
  means   in the plumage of its third winter

sexage third-year
  also    3rd year, 3cy, third calendar year, third year bird, three-year-old, 3 year old
  means   in its third calendar year

sexage transitional-plumage
  also    in transition, moulting into breeding plumage, molting into breeding plumage
  also    coming into breeding plumage, moulting into summer plumage, coming into summer plumage
  also    moulting out of summer plumage, losing its breeding plumage, half-moulted, mid-transition
  also    between plumages
  means   part way between two plumages

sexage unaged
  also    age not known, age unknown, unknown age, could not age it, any age
  means   age not told

sexage unsexed
  also    sex not known, sex unknown, sexes alike, unknown sex, age and sex unknown, could not sex it
  also    either sex
  means   sex not told

sexage white-form
  also    white morph, white phase, white-morph bird
  means   the white form of a species with two colour forms

sexage white-striped-form
  also    white-striped morph, white-striped phase
  means   the white-striped form of a species with two head patterns

sexage wing-moult
  also    wing molt, in wing moult, in wing molt, missing flight feathers, gaps in the wing, gap in the wing
  also    growing primaries, growing flight feathers
  means   with flight feathers lost or growing

sexage worn-plumage
  also    worn, in worn plumage, abraded, abraded plumage, tatty plumage, heavily worn, faded plumage
  also    bleached plumage, scruffy plumage, tatty, worn feathers, sun-bleached plumage
  means   with old, frayed or faded feathers

sexage young
  apart   age young
  also    young bird, young one, youngish bird, baby bird, baby, offspring
  means   not grown up, stage not told
