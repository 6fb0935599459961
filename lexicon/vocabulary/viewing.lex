# How the bird was seen: distance, light, weather, optics, duration, side.
# Mostly phrases, so that plain words stay plain.

viewing against-sky
  also    against the sky, against a bright sky, against a white sky, against a grey sky, against a gray sky
  also    skylined, on the skyline, against the clouds
  means   with bright sky behind it

viewing backlit
  also    against the light, against the sun, into the sun, looking into the sun, into the light
  also    with the sun behind it, sun behind it, light behind it, backlight
  means   with the light coming from behind it

viewing beside-another-bird
  also    next to other birds for scale, next to another bird, beside other birds, direct comparison
  also    direct size comparison, seen side by side, compared directly, in direct comparison
  means   another bird stood near to judge size by

viewing binoculars
  also    through binoculars, with binoculars, in binoculars, through bins, with bins, in the bins
  also    through my bins, through the bins, with my bins, with the bins, using binoculars, using bins
  also    with binos, through binos, through my binoculars, in my binoculars, binocular view
  also    binocular views, had binoculars on it, got my bins on it, through field glasses
  also    with field glasses
  means   seen with binoculars

viewing brief-view
  also    briefly, brief views, brief glimpse, brief look, brief sighting, only briefly, very briefly
  also    glimpsed, a glimpse, just a glimpse, only a glimpse, quick glimpse, quick look, quick view
  also    fleeting, fleeting view, fleeting views, fleeting glimpse, for a second, for a second or two
  also    for a few seconds, only a few seconds, a couple of seconds, couple of seconds, few seconds
  also    split second, for a moment, momentarily, seconds only
  means   seen for seconds only

viewing by-ear
  also    heard only, only heard, heard but not seen, heard not seen, sound only, voice only, call only
  also    song only, by call alone, by song alone, by voice alone, never saw it, heard it only
  means   noticed by voice, not seen

viewing camera-trap
  also    trail camera, trail cam, on the trail cam, nest cam, nest camera, nest-box camera, garden camera
  also    doorbell camera, on camera, feeder cam, webcam
  means   caught by an unattended camera

viewing close-range
  also    at close range, close up, up close, close by, from close by, close view, close views
  also    very close views, close to me, close to us, a few feet away, few feet away, a few yards away
  also    a few metres away, a few meters away, few metres away, few meters away, point-blank range
  also    at point-blank range, very near to me, within arm's reach, right in front of me
  also    right in front of us, down to a few feet, down to a few metres
  means   seen from near

viewing colours-hard-to-judge
  also    colors hard to judge, could not judge colours, couldn't judge colours, could not judge colors
  also    couldn't judge colors, colours difficult to judge, colors difficult to judge
  also    could not tell colours, couldn't tell colours
  means   colours could not be made out

viewing dappled-light
  also    dappled sun, dappled shade, dappled sunlight, light through leaves, sun through the leaves
  also    in patchy light
  means   with light broken up by leaves

viewing dawn
  also    at dawn, first light, at first light, before sunrise, at sunrise, at daybreak, just after dawn
  means   about sunrise

viewing deep-in-cover
  also    through leaves, through the leaves, behind leaves, behind the leaves, behind a branch
  also    behind branches, through branches, through the branches, through foliage, obscured by leaves
  also    obscured by branches, hidden by leaves, half hidden in leaves, half hidden in the leaves
  also    half hidden by leaves, kept to cover, view blocked, view was blocked, skulking in cover
  also    never in the open
  means   partly covered by plants when seen

viewing described-by-others
  also    second hand, second-hand report, reported to me, described to me, as told to me
  also    a friend's description, described by a friend, someone else saw it
  means   told by someone else

viewing dusk
  also    at dusk, last light, at last light, in the half light, at twilight, twilight, nightfall
  also    at nightfall, after sunset, at sunset, getting dark, in half light, it was nearly dark
  also    when it was nearly dark
  means   about sunset

viewing eye-level
  also    at eye level, at eye height, level with my eyes, level with my eye, eye-level view
  means   seen at the height of the watcher's eyes

viewing first-encounter
  also    never seen one before, new to me, first for me, lifer, new bird for me, first time i have seen one
  also    first one i have seen, never saw one before
  means   a kind of bird new to the watcher

viewing flight-only
  also    only in flight, in flight only, seen in flight only, seen only in flight, only seen in flight
  also    never landed, didn't land, did not land
  means   seen on the wing and not perched

viewing from-a-boat
  also    from the boat, from our boat, from a ferry, from the ferry, from a ship, from the ship
  also    from a kayak, from a canoe, from my kayak, pelagic trip, on a pelagic, on a boat trip
  means   watched from the water

viewing from-a-hide
  also    from the hide, from hide, from a blind, from the blind, from the tower hide, from the tower
  also    from an observation tower, from the viewing screen, from the screen, from the lookout
  also    from the viewing platform, from a platform
  means   watched from a shelter or platform

viewing from-a-vehicle
  also    from the car, from a car, from my car, from the car window, from a moving car, while driving
  also    driving past, drove past, from the road, from a train, from the train, from a bus, from the bus
  also    from my bike, while cycling
  means   watched from something that moves

viewing from-a-window
  also    from the window, through the window, through a window, from my window, from the kitchen window
  also    through the kitchen window, from indoors, from inside, through glass, through the glass
  also    through double glazing, out of the window, from the bedroom window, from the office window
  means   watched from inside a building

viewing from-above
  also    seen from above, viewed from above, watched from above, when seen from above, looking down on it
  also    looked down on it, looking down at it, view from above, views from above
  means   with the watcher higher than the bird

viewing from-behind
  also    seen from behind, viewed from behind, watched from behind, only from behind, back view, rear view
  also    view from behind, seen from the back, back to me, with its back to me, back to us, facing away
  also    facing away from me, flying away from me, flying away from us, going away from me, back-on view
  also    seen from the rear
  means   with its back to the watcher

viewing from-below
  also    seen from below, viewed from below, watched from below, when seen from below, only from below
  also    view from below, views from below, seen from underneath, seen from beneath, from underneath
  also    looking up at it, looked up at it, seen only from below, overhead, directly overhead
  also    straight overhead, above my head, right above me, right over me, over my head
  means   with the watcher under the bird

viewing from-memory
  also    written from memory, from memory only, notes written later, wrote this later, written later
  also    wrote it up later, written up at home, notes made at home, written down afterwards, hours later
  also    some days later, the next day from memory
  means   put down some time after the sighting

viewing from-the-front
  also    seen from the front, viewed from the front, view from the front, front view, front-on view
  also    head-on view, seen head on, came head on, seen front on, facing me, facing us, facing towards me
  also    facing toward me, facing the camera, looking straight at me, looking at me
  means   facing the watcher

viewing from-the-side
  also    seen from the side, viewed from the side, view from the side, side view, side-on view, side views
  also    in side view, in profile, profile view, seen side on, sat side on, perched side on, side on to me
  also    sideways on, in side profile, broadside on
  means   with its side to the watcher

viewing full-sun
  also    in full sun, in bright sun, bright sunshine, in sunshine, in bright sunshine, in direct sun
  also    in direct sunlight, in sunlight, in bright sunlight, in strong sunlight, in strong sun, sunlit
  also    sun on it, sun behind me, with the sun behind me, sun behind us, with the sun behind us, front-lit
  also    in the sunshine
  means   with the sun falling on it

viewing good-light
  also    in good light, in excellent light, in perfect light, excellent light, perfect light, great light
  also    in great light, lovely light, light was good, good light conditions, well lit, nicely lit
  also    in decent light, in clear light, light good
  means   light that shows true colours

viewing good-views
  also    good view, great view, great views, excellent view, excellent views, clear view, clear views
  also    superb view, superb views, stunning views, cracking views, lovely views, fantastic views
  also    brilliant views, amazing views, decent views, decent view, seen well, seen very well, saw it well
  also    well seen, good look, good looks, great look, great looks, really good look, good look at it
  also    clear look, excellent look, unobstructed view, unobstructed views, in full view, out in the open
  also    in the open
  means   seen clearly

viewing harsh-light
  also    in harsh light, glare, in the glare, sun glare, strong glare, harsh sun, harsh sunlight
  also    blinding sun, midday sun, in strong light, reflected light, dazzling light, glare off the water
  means   light so strong that it hides detail

viewing heard-and-seen
  also    seen and heard, heard then seen, heard first then seen, heard first
  means   both seen and heard

viewing heat-haze
  also    through heat haze, in heat haze, heat shimmer, in heat shimmer, shimmering heat, hot air shimmer
  means   the picture blurred by warm air

viewing high-overhead
  also    high up, very high up, way up high, high in the sky, very high overhead, a speck in the sky
  also    at a great height, at great height
  means   far up in the air

viewing in-hand
  also    in the hand, held in the hand, bird in the hand, mist-netted, in a mist net, caught in a net
  also    trapped for ringing, trapped and ringed, caught and ringed, caught and banded, trapped and banded
  also    at a ringing session, at the banding station
  means   held by a ringer or bander

viewing in-shade
  also    in the shade, in deep shade, in shadow, in the shadows, in deep shadow, in heavy shade
  also    shaded spot, in a shady spot
  means   out of the sun

viewing left-side-only
  also    only the left side, only saw the left side, saw the left side only, seen from the left
  also    seen from the left only, left profile, left-hand side only
  means   only its left side was seen

viewing long-range
  also    at long range, from long range, at extreme range, from far away, far off, far away, a long way off
  also    a long way away, long way off, long way away, way off, at a distance, in the distance
  also    from a distance, some distance away, at some distance, at great distance, at a great distance
  also    great distance, distant, distant view, distant views, very distant, too far away, quite far away
  also    far bank, far shore
  means   seen from far

viewing low-sun
  also    in low sun, low evening sun, low winter sun, evening light, in evening light, evening sun
  also    early morning light, in early light, morning light, morning sun, warm evening light, in warm light
  also    low-angled light, in golden light
  means   warm light from a sun near the horizon

viewing middle-distance
  also    in the middle distance, at medium range, at mid range, medium distance, moderate distance
  also    at a moderate distance, at moderate range, at middle distance, not far away, not too far away
  also    not far off, reasonable distance
  means   seen from neither near nor far

viewing minutes
  also    for a few minutes, few minutes, for several minutes, several minutes, for some minutes
  also    for a couple of minutes, couple of minutes, for a minute, for a minute or two, about a minute
  also    for five minutes, for ten minutes, five minutes, ten minutes, good few minutes, for two minutes
  also    for three minutes
  means   watched for some minutes

viewing mist
  also    in mist, in the mist, in fog, in the fog, in thick fog, through mist, through fog, misty, foggy
  also    hazy light, in haze, in a sea fret, poor visibility, bad visibility, hazy conditions
  means   the air thick with fog or haze

viewing moved-fast
  also    moving too fast to see, too quick to see well, moving too quickly, would not keep still
  also    wouldn't keep still, never kept still, never still for long, kept moving, too fast to see
  also    would not sit still, wouldn't sit still
  means   too lively to be seen well

viewing naked-eye
  also    with the naked eye, by naked eye, no optics, without optics, no binoculars, without binoculars
  also    without bins, no bins, had no bins, had no binoculars, didn't have my binoculars
  also    didn't have binoculars, did not have binoculars, didn't have my bins, bins at home, by eye alone
  also    by eye only, unaided eye
  means   seen without optics

viewing night
  also    at night, after dark, in the dark, by moonlight, in moonlight, by torchlight, in torchlight
  also    by flashlight, in headlights, in the headlights, in the car headlights, spotlit
  means   in the dark hours

viewing no-glasses
  also    without my glasses, without glasses, no glasses on, forgot my glasses, didn't have my glasses
  also    did not have my glasses on
  means   the watcher lacked spectacles

viewing no-photo
  also    no photos, no photograph, no picture, no pictures, didn't get a photo, did not get a photo
  also    couldn't get a photo, could not get a photo, no camera, didn't have a camera
  also    flew before i got a photo
  means   not photographed

viewing notes-at-the-time
  also    notes made at the time, notes made on the spot, notes taken at the time, written on the spot
  also    written in the field, notes taken in the field, field notes made at the time, sketched at the time
  also    sketched in the field, sketch made at the time, described into my phone at the time
  means   put down while the bird was in view

viewing nothing-for-scale
  also    nothing to compare it with, nothing to compare with, no other bird for scale, no size comparison
  also    size judged alone, size hard to judge, hard to judge size, could not judge size
  also    couldn't judge size, size difficult to judge
  means   no other bird near to judge size by

viewing observer-doubt
  also    may have imagined it, might have imagined it, trick of the light, could be a trick of the light
  also    my eyes are not good, my eyesight is not good, my eyes aren't good, my eyesight isn't great
  also    not sure what i saw
  means   the watcher doubts what was seen

viewing on-the-wing
  hidden  yes
  also    in flight, flight view, flight views, seen in flight, seen flying, flyby, flypast, flyover
  also    when it flew, as it flew, when flying, seen on the wing, while on the wing, only on the wing
  means   seen while it flew

viewing overcast
  also    under overcast skies, overcast sky, overcast skies, overcast light, cloudy, cloudy day, cloudy sky
  also    dull day, dull weather, in dull light, in flat light, in grey light, in gray light, grey day
  also    gray day, heavy cloud
  means   under cloud

viewing perched-only
  also    only perched, seen perched only, only seen perched, never saw it fly, never flew, didn't fly
  also    did not fly, not seen in flight, didn't see it fly, did not see it fly, wings never opened
  also    never opened its wings, wings closed throughout
  means   not seen on the wing

viewing photo
  also    from a photo, from a photograph, from photos, from my photo, from my photos, from the photo
  also    in a photo, in the photo, in photos, in my photo, in my photos, in the photograph, in the picture
  also    got a photo, got photos, got a picture, took a photo, took photos, took a picture, photographed
  also    photo attached, photos taken, photo taken, phone photo, blurry photo, blurred photo, bad photo
  also    poor photo, record shot, record shots, on the back of the camera, through the camera
  also    through a long lens, with a long lens
  means   photographed, or told from a photograph

viewing poor-light
  also    in poor light, in bad light, bad light, poor light conditions, failing light, in failing light
  also    fading light, in fading light, low light, in low light, dim light, in dim light, in the gloom
  also    gloomy, gloomy light, terrible light, in terrible light, awful light, in awful light
  also    dreadful light, light was poor, light was bad, light was awful, light was terrible
  also    light was going, light was fading, light poor, not enough light, not much light
  means   light too weak for colours

viewing poor-views
  also    poor view, bad view, bad views, poor look, bad look, not a good view, not good views
  also    not a great view, didn't see it well, did not see it well, couldn't see it well
  also    could not see it well, couldn't see it properly, didn't get a good look, did not get a good look
  also    never got a good look, didn't get a good view, not seen well, not well seen, not very good views
  also    unsatisfactory view, unsatisfactory views, partial view, partial views, obscured view
  also    obscured views, only partial views, tantalising views, rubbish views
  means   seen badly

viewing prolonged-view
  also    prolonged views, long look, long view, extended view, extended views, for half an hour
  also    half an hour, for an hour, over an hour, at length, for ages, for a long time, for a good while
  also    for quite a while, for a while, good long look, nice long look, for twenty minutes, twenty minutes
  also    quarter of an hour, for a quarter of an hour, all morning, all afternoon, for hours
  means   watched for a long time

viewing rain
  also    in rain, in the rain, in heavy rain, heavy rain, in light rain, light rain, in drizzle, drizzle
  also    pouring rain, in pouring rain, raining, in sleet, in the wet, in a downpour, in a shower, in hail
  also    soaked through
  means   in wet weather

viewing repeat-views
  also    seen several times, seen again, seen twice, saw it twice, saw it again, saw it several times
  also    several sightings, two sightings, on several occasions, on two occasions, on and off, off and on
  also    came back several times, comes back every day, seen daily, seen every day, seen most days
  also    two days running, has been around for days, multiple sightings, multiple views
  means   seen more than once

viewing right-side-only
  also    only the right side, only saw the right side, saw the right side only, seen from the right
  also    seen from the right only, right profile, right-hand side only
  means   only its right side was seen

viewing several-observers
  also    seen by others, others saw it too, seen by two of us, two observers, seen by several people
  also    seen by the group, seen by everyone, all of us saw it, we all saw it, both of us saw it
  means   more than one person saw it

viewing silhouette
  also    in silhouette, silhouetted, as a silhouette, only a silhouette, just a silhouette
  also    only in silhouette, silhouette only, in silhouette only, dark outline only, just an outline
  also    only an outline
  means   seen as a dark outline

viewing single-observer
  also    on my own, nobody else saw it, no one else saw it, was alone, sole observer, only i saw it
  means   one person saw it

viewing snowfall
  also    snowing, falling snow, in falling snow, in a snowstorm, snowstorm, in a blizzard, blizzard
  also    snow flurries, in a snow shower
  means   while snow fell

viewing sound-recording
  also    on a recording, got a recording, recorded the call, recorded the song, recorded its call
  also    recorded its song, sound file, sonogram, voice recorded, recording attached
  means   its voice was recorded

viewing telescope
  also    through a telescope, through the telescope, through my telescope, with a telescope, by telescope
  also    through a scope, through the scope, through my scope, scope view, scope views, scoped
  also    in the scope, with the scope, with a scope, with my scope, using a scope, using a telescope
  also    spotting scope, through a spotting scope
  means   seen with a telescope

viewing through-a-fence
  also    through the fence, through railings, through the railings, through a gap
  means   seen past something in the way

viewing video
  also    on video, from a video, from the video, in the video, video taken, videoed, filmed, took a video
  also    took video, got video, got a video, phone video, got it on video
  means   filmed

viewing wind
  also    in the wind, in wind, in strong wind, in strong winds, strong wind, strong winds, windy
  also    very windy, in a gale, gale, in gusty wind, gusty, gusting wind, buffeted by the wind, blustery
  means   in strong wind
