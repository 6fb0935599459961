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

ordinary season-words
  hidden  yes
  also    flew, till, after, right, dropped, noise, main, lamp, lost, leaking, counted, cutting, cattle, dead, count
  also    mum, parent, box, slip, proper, next, drowned, bullocks, comparison, thousand, away, frames, can't, stops
  also    otter, pairs, loads, dinosaur, smart, outside, café, book, diet, riding, altogether, frog, crew, wouldn't, hot
  also    paint, poked, broke, torpedoes, zip, bilge, seized, bucket, rags, touch, rabbit, harried, towed, anchored
  also    chain, coiled, punt, creche, oar, hatched, shut, plucking, guano, view, self, septic, tank, believe, lads, mean
  also    thrown, picked, settled, sure, claimed, machine, mad, alarm, whip, bet, pint, fox, crop, pouring, knife, died
  also    minute, sign, doesn't, joins, babys, win, hole, miss, fell, don't, screamed, perishing, pencil, party
  also    lollipops, pony, powder, mill, sunny, bursts, properly, pan, keen, bubbles, continental, ride, leaflets, follow
  also    key, coal, acorn, stoat, stock, silence, mince, peu, horns, lead, slippers, webbing, cleaner, tripped, reset
  also    eel, board, bandage, mate, smoke, drain, glimpse, territory, mouse, signed, padlocks, keys, order, squall, passed
  also    turning, mayfly, contractor, goat, visible, breath, pitch, apron, bean, won, bite, sold, lollies, net, fair
  also    bream, carried, brick, wound, toy, cub, abandoned, think, heading, tight, nerve, held, daylight, hungry, heart
  also    seventeenth, fifteenth, twentieth, first of, seventh, tenth, ninth, sixth, fifth, eighth, didn't, far, turn
  also    anchors, sheeted, handle, hidden away, winter, family, times, rehanging, fluff, platform, opera, cotton, jack
  means   words of the day in notebooks: gear, weather, people and other animals
