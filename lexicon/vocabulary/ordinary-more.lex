# Further ordinary words.

ordinary doing-words
  also    can, could, did, do, does, done, would, should, must, may, might, will, shall, let, lets, ran, run, turned
  also    crossed, covered, weighed, estimated, guessed, guess, wait, waited, form, forms, formed, meet, meets, met
  also    touched, touches, touching, come, comes, coming, go, goes, going, gone, make, makes, made, use, used, attach
  also    blend, blends, fades, fade, extends, extending, extended, transitions, contrasts, contrast, starts, start
  also    begins, begin, leads, run, running, gets, become, becomes, becoming, took, take, takes, put, puts
  means   verbs of no mark

ordinary amounts
  also    all, twice, once, second, third, lot, lots, enough, other, others, same, different, way, out, point, points
  also    plain to see, in plain view, in plain sight, neck of the woods, when folded, open, surroundings, stands, stand, ones, none, present, apparent, combine, combines, through, half, part, parts, thing, things, place, set, mix, kinds, sorts, way, ways, combination, mixture, variety
  also    proportion, size, shape, pattern, details, detail, area, design, designs, features, feature, mostly, again
  means   words of amount and order

ordinary talk
  also    night shift, day shift, posture, gait, together, sounded, sounds, sight, steps, idk, tbh, omg, lol, btw, imo, fyi, hinge, shift, visit, for, by, if, so, as, than, because, when, where, what
  also    until, unless, since, whether, how, why, there, here, then, now, else, every, each, such, per, via, ok, okay
  means   words of talk and joining

ordinary around-the-watcher
  also    boots, soaked, opened, hut, child, table, tall table, hat, wore, wears, wear, bins, bin, cow, cows, dog, dogs, cat
  also    cats, car, cars, van, bike, coat, berry, caterpillar, butterflies, butterfly, brass, playing, flooded, stood, past
  also    first, left, led, moved, leaving, am, sore, hide, hides, stretched, history, tail end, spot of lunch, streak of luck
  also    map, road, roads, helped, help, doubt, wiped, clearer, thinned, curl, photo, photos, picture, pictures
  means   people, animals and things that are no birds
