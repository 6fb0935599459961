# Build of the whole bird.

build athletic
  also    athletic looking, fit looking
  means   fit and strong of body

build barrel-chested
  also    barrel shaped, barrel bodied, barrel like
  means   round and deep through the chest

build big-bodied
  also    large bodied, big body, large body
  means   with a large body for its head and limbs

build broad-chested
  also    wide chested, broad in the chest, broad shouldered, wide breasted, broad breasted
  means   wide across the front

build bull-necked
  also    bull neck
  means   with a neck as thick as the head

build cobby
  also    cobby looking
  means   short, thick and strong

build compact
  also    compact looking, compact body, compactly built, tightly built, neat and compact
  means   short and close-knit

build dainty
  also    daintier, daintily built
  means   small, light and neat

build deep-bellied
  also    deep in the belly, low slung belly
  means   with the body deepest at the belly

build deep-chested
  also    deep breasted, deep in the chest
  means   with the body deepest at the chest

build dumpy
  also    dumpier, dumpy looking, frumpy
  means   short and thick with a rounded outline

build elegant
  also    elegant looking, elegantly built, refined looking
  means   fine and graceful in outline

build flat-backed
  also    level backed
  means   with a level back

build front-heavy
  also    heavy in front, front loaded
  means   with most of the weight before the wings

build full-breasted
  also    full chested, full bodied, ample breasted, large chested, big chested
  means   with a large rounded breast

build gangly
  also    gangling, ungainly, ungainly looking, awkward looking, gawky
  means   tall, thin and loosely put together

build graceful
  also    graceful looking, gracefully built
  means   of smooth light lines

build heavy-bodied
  also    heavy body, heavily bodied, heavily built, heavy built, heavy build, beefy, burly
  means   with a large weighty body

build heavy-set
  also    heavy set body
  means   broad and weighty

build hump-backed
  also    hunch backed, hump back
  means   with a raised rounded back

build lanky
  also    lankier, lanky looking
  means   tall and thin

build lean
  also    leaner, lean looking, lean bodied
  means   with no spare flesh

build leggy
  also    leggier, leggy looking, all legs
  means   with long legs for its body

build lightly-built
  also    light bodied, slightly built, slight build, slight in build, light build, fine boned, lightweight
  also    slight bodied
  means   of small light frame

build lithe
  also    lithe looking, lissom, supple
  means   slim and easily bending

build long-bodied
  also    long body, elongated body, elongated build, elongated shape, longish body, elongated bodied
  also    long in the body
  means   with a body long for its depth

build muscular
  also    muscly, muscular looking, brawny
  means   with much muscle

build neckless
  also    no neck, no visible neck
  means   with the head set straight on the body

build pigeon-chested
  also    pouter like, pouter breasted, pigeon breasted
  means   with the breast pushed forward

build portly
  also    portly looking
  means   stout in a stately way

build pot-bellied
  also    pot belly, paunchy, fat bellied, big bellied, round bellied, plump bellied
  means   with a rounded belly that stands out

build rangy
  also    rangy looking
  means   long of limb and loosely built

build rear-heavy
  also    heavy behind, heavy at the rear, bottom heavy
  means   with most of the weight behind the wings

build roly-poly
  also    roly poly looking, butter ball, like a ball of feathers
  means   very round

build rotund
  also    rotund looking, rotund body
  means   very round of body
  pato    PATO:0001499

build round-bodied
  also    round body, rounded body, rounded bodied, rounded build
  means   with a rounded body

build short-bodied
  also    short body, stubby body, stubby bodied
  means   with a body short for its depth

build sleek
  also    sleeker, sleek looking, sleek bodied, slinky
  means   smooth and slim

build slender-bodied
  also    slim bodied, slender body, slim body, slim build, slender build, slimly built, slenderly built
  also    thin bodied, narrow bodied, skinny bodied, thin body
  means   with a thin body

build small-bodied
  also    small body, little body, tiny body, tiny bodied
  means   with a small body for its head and limbs

build solidly-built
  also    solid looking, solid build, well built
  means   firm and strong

build squat
  also    squatter, squat looking, squatty
  means   short, thick and low

build stocky
  also    stockier, stocky looking, stocky build, stocky bodied, stocky body, stockily built, sturdily built
  also    sturdy build, tank like
  means   short, broad and strong

build streamlined
  also    stream lined, aerodynamic
  means   shaped to slip through air or water

build tall
  also    taller, tallest, tallish, tall looking
  means   high for its width
  pato    PATO:0000570

build thickset
  also    thick set, thick bodied, stout bodied, thick body, stout body, chunky bodied, chunky body
  also    plump bodied, plump body, fat body, fat bodied
  means   short and very solid

build top-heavy
  also    top heavy looking
  means   with a head large for the body

build torpedo-shaped
  also    torpedo like, torpedo bodied
  means   round, long and narrowed at both ends

build tubby
  also    tubbier, tubby looking
  means   short and fat

build well-proportioned
  also    well balanced, evenly proportioned, proportionate, proportional, in proportion
  means   with no part too large or small

build willowy
  also    reedy looking
  means   tall, thin and graceful

build wiry
  also    wiry looking, sinewy
  means   thin but strong
