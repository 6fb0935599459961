# What a bird sounds like.

voice accelerating
  also    get faster, gets faster and faster, accelerating song, accelerating series, accelerating trill
  also    faster and faster, accelerating notes, bouncing ball, like a bouncing ball, bouncing ball song
  also    speed up at the end, quicken, faster at the end, like a ping pong ball, got faster
  also    speed up, song that speeds up, speed up towards the end
  means   notes come closer together as it goes on

voice alarm-call
  also    alarm calls, alarm note, alarm notes, call in alarm, alarm calling, warning call
  also    give an alarm call, give the alarm, alarmed, call when alarmed, warning calls, panic call
  also    alarm rattle, agitated call, sound the alarm, alarm when disturbed, gave an alarm call
  also    gave the alarm
  means   a call at danger

voice ank
  also    yank, nyak, ank ank, yank yank, ank ank ank, enk, nank, tin trumpet call, like a tin trumpet
  also    toy trumpet call, toy horn, like a toy horn, tin horn, like a tin horn
  also    wha wha, wha wha wha
  means   a short note through the nose, as a toy trumpet

voice ascending
  also    rise in pitch, ascending call, ascending song, ascending trill, go up in pitch, rising trill
  also    rising whistle, rising note, rising notes, ascending notes, rising song, rising call
  also    ends on a rising note, ascending whistle, upslurred, querulous, went up in pitch
  means   goes up in pitch

voice barking-call
  also    barking, bark like a dog, like a barking dog, like a small dog, woof, yap, yapping call
  also    dog like bark, yap like a puppy, like a puppy, deep bark, sharp bark, short bark, barking note
  also    gruff bark, barking calls
  means   a short rough shout like a dog's

voice begging-call
  also    begging calls, begging chicks calling, noisy chicks, noisy young, young calling
  also    chicks calling, fledgling calls, fledgling call, begging noises, juvenile call, juvenile calls
  also    young begging, cheep for food, calls of young, call for food, squeak for food
  means   a call of young that want food

voice bell-like
  also    bell like call, bell like notes, like a bell, like bells, like little bells, bell like note
  also    chime, chiming call, chime like a bell, like a ringing bell, tinkling bells, chiming notes
  also    bell like song, like tiny bells, bell like ring, tolling
  means   clear with a ring to it

voice bill-clapper
  also    bill clap, bill clapping, bill snap, bill snapping, bill clattering, clapper its bill
  also    clatter its bill, snap its bill, beak snapping, bill clicking, clack its bill
  also    snap its bill loudly, beak clapping, bill clatter, click its bill, beak clicking
  means   the two halves of the bill strike

voice boom
  also    booming call, deep boom, boom like a foghorn, like blowing over a bottle
  also    like blowing across a bottle, foghorn, like a foghorn, far carrying boom, hollow boom
  also    booming note, distant boom, low boom, like a distant foghorn, booming song, booming sound
  means   a deep hollow far-carrying note

voice bubbling
  also    bubble up, bubbly, bubbling trill, bubbling song, bubbling call, bubbling chuckle, bubbly song
  also    bubbling notes, bubbling whistle, bubbling cry, bubbling rattle, bubbling sound, burble
  also    bubbling series, bubbly call, babble
  means   rolling notes like water coming to the boil

voice buzz
  also    buzzy, bzzz, bzz, zzzz, buzzing call, buzzing song, buzzy song, buzzy call, insect like buzz
  also    dry buzz, buzzy trill, buzzing trill, high buzz, buzzing note, buzzy notes, like an insect
  also    insecty
  also    buzzy trill at the end, buzz at the end, insect like trill, insect like song, insect like call
  means   a rough steady insect-like sound

voice cackle
  also    cackling call, cackling laugh, cackle like a hen, cackling calls, loud cackle, harsh cackle
  also    cackling cry, mad cackle, cackle loudly, wild cackle, deep cackle, cackling notes
  also    cackling chatter, cackling series
  means   broken loud notes, as a hen after laying

voice call
  also    call note, call notes, give a call, make a call, utter a call, contact call, contact note
  also    contact calls, calls frequently, call often, call repeatedly, call constantly
  also    call all the time, contact notes, kept calling, keep calling, gave a call, made a call
  means   short sound, not a song

voice caw
  also    kaw, caw caw, caw like a crow, raucous caw, kaah, cawing call, caaw, harsh caw, hoarse caw
  also    crow like caw, nasal caw, caw caw caw, crow like call, craw, kaaa, crow like cawing, flat caw
  means   a flat harsh shout, as a crow

voice chack
  also    tchack, chak, tchak, chack chack, chack chack chack, tchak tchak, chack like stones, tack, tak
  also    tak tak, tack tack, harsh chack, jack jack, kyack, kyak, loud chack, chack call, hard chack
  also    hard tack, tac
  also    jack call
  also    check call, check note, sharp check, sharp check call, flat check, flat check call
  also    loud flat check call
  means   a hard note as of two pebbles

voice changeable-pitch
  also    rise and fall in pitch, warbling up and down, wavering, wavering call, wavering whistle
  also    rising and falling song, wavering cry, rising and falling call, wavering note, quavering
  also    quavering whistle, tremolo, quavering call, tremulous, tremulous call, tremulous whistle
  also    quavery, lilting
  means   pitch wavers or goes up and down

voice chatter
  also    chattering call, harsh chatter, chatter loudly, chattering song, machine gun chatter
  also    like a machine gun, dry chatter, chattery, excited chatter, chatter like a magpie
  also    chattering notes, scolding chatter, chattering rattle, noisy chatter, sharp chatter
  also    constant chatter
  means   fast unmusical notes

voice cheep
  also    cheep cheep, chirrupy cheep, cheep like a sparrow, cheep like a chick, like a baby chick
  also    cheep constantly, peepy, cheeping call, like a chick cheeping, cheep loudly
  means   small flat note, as a house sparrow's

voice cheerful-voice
  also    cheerful, cheery, cheerful song, cheery song, lively song, happy song, excited calls
  also    excitable, excited calling, energetic song, vigorous song, jaunty, jaunty song, exuberant
  also    exuberant song, spirited song, jolly song, ebullient, emphatic
  means   sounds lively to human ears

voice chick-a-dee-call
  also    chickadee dee, chickadee dee dee, dee dee dee, dee dee, day day day, dee notes, dee note
  also    chick a dee calls
  also    chick a dee dee, chick a dee dee dee, chick a dee dee dee call
  means   short notes ending in flat harsh ones

voice chip
  also    chip note, chip notes, chip call, sharp chip, chip chip, hard chip, tchip, high chip
  also    thin chip, loud chip, chip chip chip, soft chip, flat chip, dry chip, single chip, sweet chip
  also    chip per song, chip per chip per
  means   one very short sharp note

voice chirp
  also    chirpy, chirp chirp, chirrup, chirping song, sparrow like chirp, chirp loudly, chirrupy
  also    liquid chirrup, cheery chirp, monotonous chirp, cheerful chirp, chirrup chirrup
  also    rolling chirrup, sharp chirp, chirp constantly, chirrupping, churp, chilp
  also    plain chirp
  means   short bright note with a little roll

voice chuck
  also    chuck call, chuck note, chuck chuck, chup, low chuck, soft chuck, chuck chuck chuck, chook
  also    tchuck, tchuk, tchook, chuk, chuk chuk, chup chup, deep chuck, chuck notes, tuk, tuk tuk
  also    chuck alarm, tchup, chuff
  also    tuck call, tuck tuck, hard tuck
  means   a low short blunt note

voice chuckle
  also    giggle, chuckling call, chuckling laugh, low chuckle, chuckle like a laugh, giggling call
  also    deep chuckle, chuckling notes, chuckling rattle, chuckling song, titter, tittering call
  means   low broken notes like quiet laughter

voice chur
  also    churr, churr loudly, dry churr, harsh churr, churring song, churring trill, long churr
  also    churring rattle, purring churr, churr at night, scolding churr, low churr, trrrr, chrrr
  also    churr call, churrr, chirr, chrrrr, trrr, tchurr
  means   a long low rolling rattle

voice clack
  also    clacking call, clack like castanets, clackety, castanet like, like castanets, clack clack
  also    clacking notes, like wooden sticks, knock, knocking sound, knocking call, wooden knock, clop
  also    wooden knocking, hollow knock, clunk, tok, tock, tonk, cluk, klok
  means   dry wooden-sounding note

voice click
  also    clicking call, click click, clicking notes, metallic click, clicking sound, dry click
  also    sharp click, series of clicks, clicking noise, clicky, hard click, click note, clicking calls
  also    like two pebbles, like two pebbles knocked together, like stones knocked together
  means   a short dry note like a switch or pebbles

voice cluck
  also    clucking call, clucking notes, cluck like a hen, hen like clucks, low cluck, hen like cluck
  also    clucking sound, deep cluck, clucking noise, chicken like clucks, soft cluck, sharp cluck
  also    clucking chatter, chicken sounds, kuk, cuk
  means   short low notes, as a hen

voice coo
  also    cooing call, coo coo, soft coo, cooing song, purring coo, deep coo, mournful coo, coo coo coo
  also    low coo, cooing notes, croo, hollow coo, coo like a dove, croon, croodle, cooo
  means   soft round notes, as a dove

voice cough
  also    coughing call, cough like, like a cough, coughing bark, hacking cough, coughing note
  also    coughing sound, hack like a cough, like someone coughing, coughing croak, kerr chow
  also    coughing notes, hiccup, hiccupping, tslick, choking, gagging, retch, belch, burping
  means   like a person's cough or hiccup

voice crescendo
  also    get louder, louder at the end, grow louder, louder and louder, build to a crescendo
  also    increase in volume, swell in volume, swelling song, gets louder and louder
  also    louder towards the end, rise to a crescendo, rising crescendo, crescendo at the end
  also    swelling notes, with a crescendo, got louder, grew louder
  means   grows louder as it goes on

voice croak
  also    croaking call, deep croak, hoarse croak, frog like, froggy, frog like croak, croaky
  also    guttural croak, kronk, pruk, deep kronk, prruk, loud croak, harsh croak, frog like call
  also    low croak, prukk, croaking note, gronk, quork, qurk, krok, kwok
  means   a deep rough note

voice crow-like-a-cock
  also    crow like a rooster, cock crow, crowing, crowing call, kok kok, korr kok, double crow
  also    kork kok, kok, loud crow, like a cock crowing, crowing cry, crow loudly, cock a doodle doo
  also    loud crowing, hoarse crow call
  means   a loud broken shout, as a farm cock

voice cry
  also    wailing cry, cry out, loud cry, harsh cry, plaintive cry, shrill cry, far carrying cry
  also    sharp cry, mournful cry, like a baby crying, baby crying, piercing cry, wild cry, sad cry
  also    high cry, haunting cry
  means   a loud drawn note

voice cuckooing
  also    cuckoo call, two note cuckoo, coo coo like a cuckoo, like a cuckoo clock, goes cuckoo
  also    calls cuckoo, calling cuckoo, cuckoo calling, cuckoo clock, cuckoo like call, cuc coo, kuk oo
  also    cuckoo cuckoo, say cuckoo
  means   two falling notes as the clock

voice dawn-song
  also    dawn chorus, sing at dawn, sing before dawn, dawn singing, sing before sunrise, first to sing
  also    sing at first light, sing early in the morning, sing first thing, dawn singer
  also    sing in the early morning, early morning song, sing before first light, sing at daybreak
  also    start of the dawn chorus, sang at dawn, sang before dawn, sang before sunrise
  also    sang at first light, sang early in the morning, sang first thing, sang in the early morning
  means   song at daybreak

voice deep-voice
  also    deep call, low call, deep note, low pitched, low note, low pitched call, deep notes
  also    deep voiced, gruff, low notes, deep pitched, gruff call, throaty, throaty call
  also    low pitched notes, guttural
  means   low in pitch

voice descending
  also    descending song, descending trill, descending whistle, fall in pitch, descending notes
  also    descending series, downslurred, downslurred whistle, drop in pitch, go down the scale
  also    descending call, go down in pitch, down the scale, descending warble, descending cadence
  also    cascading, fell in pitch, went down the scale, went down in pitch
  also    drop at the end, fall at the end, falling song, falling trill, falling series
  means   goes down in pitch

voice die-away
  also    die out, get quieter, trail off, quieter at the end, peter out, grow fainter
  also    fainter and fainter, fading at the end, fading series, quieter and quieter, softer at the end
  also    tailing off, got quieter, grew fainter
  means   grows softer as it goes on

voice drum
  also    drum on wood, drum roll, drum loudly, drum on dead wood, fast drum, loud drumming, short drum
  also    long drum, fast drumming, drum rapidly, drumming sound, slow drumming, rapid drumming
  also    drum roll on wood, short bursts of drumming, burst of drumming
  means   fast blows of the bill on wood as a signal

voice duet
  also    sing together, duetting, call and answer, call back and forth, call to one another
  also    pairs calling together, answer each other, sing a duet, both birds calling, call in duet
  also    duet with its mate, answer one another, pair duetting, reply to each other, answering call
  also    call in turn, sang together, sang a duet
  means   two birds sing or call in turn or at once

voice end-flourish
  also    flourish at the end, with a flourish, with a flourish at the end, ends in a flourish
  also    final flourish, terminal flourish
  means   the song closes with quick showy notes

voice explosive
  also    explosive song, explosive call, burst into song, sudden burst of song, loud burst
  also    explosive burst, burst out, sudden loud song, explosive burst of notes, explosive note
  also    explosive rattle, explosive outburst, burst of song, burst of notes, explosive phrase
  also    explosive chip
  means   starts all at once and loud

voice far-carrying
  also    far reaching call, far carrying call, carries far, heard from far away, far carrying whistle
  also    far carrying song, far carrying voice, heard at long range, carry over water
  also    carry a great distance, can be heard for miles, heard a mile away, far carrying notes
  also    audible at a distance, penetrating call, penetrating song
  means   can be heard from a long way off

voice feest
  means   a thin, sharp feest

voice flat-sound
  also    flat call, flat note, unmusical, tuneless, toneless, dull note, unmusical call, unmusical song
  also    tuneless song, dull call, flat notes, unmelodious, tuneless call, unmusical notes
  also    unmusical rattle, flat toneless call
  also    colourless trill, colourless song, colorless trill, colorless song, colourless voice
  means   without tune

voice flight-call
  also    call in flight, fly over call, flight calls, flight note, flight notes, call on the wing
  also    call as it flies, call when flushed, call when it flies, call on taking off
  also    call when taking off, call flying over, calls as it flew, call as it takes off
  also    call while flying, give a flight call, gave a flight call
  means   a call given on the wing

voice fluty
  also    flute like, fluting, flutey, fluty song, flute like song, flute like notes, like a flute
  also    flutelike whistle, fluting song, fluting whistle, fluty notes, fluty whistle, flutey song
  also    fluty call, fluting notes, ethereal
  means   clear round tone as a flute

voice gabble
  also    gaggle sounds, gabbling calls, clamour, clamor, clamorous, gabbling noise, noise of a flock
  also    gabbling flock, clamouring flock, goose music, babble of calls, clamorous calls, make a racket
  also    make a din, cacophony, hubbub, medley of calls, chorus, made a racket, made a din
  means   many birds calling over each other

voice gobble
  also    gobbling call, gobble gobble, gobble like a turkey, turkey like gobble, turkey call
  also    gobbling sound, loud gobble, gobbling cry
  means   fast throaty broken notes, as a turkey

voice grating
  also    raspy, rasp, grating call, rasping call, raspy call, scraping, scraping sound, grating note
  also    scrapy, scratchy, scratchy song, raspy note, scratchy call, rasping note, scratchy warble
  also    raspy song, like a comb, creaky, creak
  also    scaap, harsh scaap, skaap
  also    scaap when flushed
  means   rough, as of scraping

voice growl
  also    growling call, growl like a dog, low growl, snarl, snarling call, snarling note, deep growl
  also    snarly, growling note, growly, arrr, growling sound, throaty growl, growling notes, aarr
  also    growling moan, growl low
  means   a low rolling rough sound

voice grunt
  also    grunting call, pig like, pig like grunt, pig like squeal, like a pig squealing, oink
  also    low grunt, grunt like a pig, deep grunt, squeal like a pig, squealing pig, pig like grunts
  also    grunting noises, grunting notes, snort, sharming
  means   a low short throat noise, as a pig

voice gurgle
  also    gurgling song, gurgling call, gurgly, like water down a drain, gurgling notes
  also    gurgle like water, like running water, gurgling trill, gurgling whistle, konk la ree
  also    conk la ree, oak a lee, o ka lee, conk a ree, konkaree, glug
  means   sound as of water in a drain

voice harsh
  also    harsh call, harsh note, harsh voice, harsh notes, raucous, strident, raucous call
  also    grating voice, discordant, rough call, jarring, jarring call, harsh calls, harsh scold
  also    raucous voice, harsh alarm, cacophonous, kraah, krah
  also    cheh, cheh cheh, cheh notes
  means   rough and unpleasant to the ear

voice high-pitched
  also    high call, high pitched call, high pitch, high note, high notes, high song, high pitched song
  also    very high pitched, high thin call, high pitched whistle, high in pitch, thin high call
  also    high pitched note, high thin song, high whistle, falsetto
  means   high in pitch

voice hiss
  also    hissing call, hiss like a snake, hissing noise, hissing sound, snake like hiss, hiss at people
  also    hiss loudly, shush, hissing screech, psssh, psst, hiss when approached, hissing cry
  also    spitting call, hiss and puff, shhh
  means   a sound of air let out, as a snake

voice hoarse
  also    husky, croaky voice, hoarse call, hoarse voice, husky call, husky note, hoarse note
  also    like a robin with a cold, like a robin with a sore throat, husky voice, hoarse song
  also    husky song, hoarse notes, burry, wheezy, wheeze, asthmatic, dweeee, burred, dzweee
  means   breathy and rough

voice hollow-voice
  also    hollow call, hollow note, hollow notes, hollow sound, hollow coo note, hollow song
  also    hollow knocking, hollow hoots, hollow hooting call, sepulchral, hollow calls, hollow drumming
  also    wooden sounding, wooden, cowp, kowp
  means   empty and woody in tone

voice honk
  also    honking call, goose like honk, honk loudly, car horn, like a car horn, ah honk, honk honk
  also    deep honk, loud honk, nasal honk, honk like a goose, honking calls, ring of honks
  also    honking flock, aang, hronk
  means   a loud nasal horn note, as a goose

voice hoot
  also    hoo, hoo hoo, hoot like an owl, owl like hoot, hooting call, tu whit tu whoo, to whit to whoo
  also    twit twoo, deep hoot, hoo hoo hoo, who cooks for you, deep hoots, hooting song, whoo, hooo
  also    huhuhu, hoooo, toot
  means   a round hollow note, as an owl

voice hum
  also    humming sound, hum of wings, humming wings, humming wingbeats, wing hum, humming noise
  also    wing humming, buzzing wings, wings buzzing, wing buzz, loud hum, humming flight, low hum
  also    wings hum loudly, wings make a humming sound, low humming
  means   a low steady sound, often from wings

voice hweet
  also    huit, hooeet, weet, hueet, hooweet, hweet call, hoeet, whit whit, wheet, soft hweet, sweeet
  also    wheet wheet, swee, dry whit, huweet, hweet hweet, soft whit, pu ee, rising hweet, whit note
  also    who eet, quit quit, twhit, thwit, huwit
  also    hoo eet, swee wee wee
  means   a soft rising whistle of one or two parts

voice jangle
  also    jingle, jangling song, jangly, jangling keys, like jangling keys, jingling song
  also    rattle of keys, like a bunch of keys, bunch of keys, like a bunch of keys being shaken
  also    like jingling keys, like shaken keys, like keys jangling, fat bird of the barley, jangly song
  also    jingly
  means   a run of rough metal notes like shaken keys

voice jeet
  means   a thin jeet

voice kee
  also    keee, kee kee, kee kee kee, kee yar, kee arr, kee ar, pee yoo, keeyah, kee yoo, kree, kreee
  also    keer, keerr, key key key, kya, kyar, kek, kek kek, kek kek kek, kak, kak kak, kak kak kak
  also    kyow, keow, killy, kyew, kyee, kyik, kierr, cac, kwit, kirrick, kirri, kewick
  also    kill dee, kree ar, kee yarr, keer ik, ki deek
  means   a sharp carrying note, as a hawk, tern or gull

voice kik
  also    kik kik, kick kick, kik call, sharp kik, keek, pik, pik pik, peek note, pick note, sharp pik
  also    pik call, hard pik, tchik, tchick, sharp tchick, kik kik kik, kix, piik, spick, plick, pwik
  also    kiik, klip
  also    kip kip, kip call, kip note, kip notes, sharp kip, rasping kip
  also    short kip
  means   a hard short note, as a woodpecker

voice laugh
  also    laughing call, yaffle, laugh loudly, mad laugh, maniacal laugh, laughing cry, human laugh
  also    loud laugh, like someone laughing, manic laugh, laughing notes, ringing laugh, crazy laugh
  also    laughter, laughing song, maniacal laughter
  means   a run of notes like a person's laugh

voice liquid
  also    liquid call, liquid song, liquid notes, liquid note, liquid trill, liquid whistle, watery song
  also    rippling song, rippling, liquid twitter, liquid warble, liquid bubbling call, water like song
  also    purl, quip, prip, kwip
  means   smooth and flowing in tone

voice lisp
  also    lispy, lisping call, lispy call, lisping note, lisping song, lispy note, thin lisping call
  also    lisping notes, lispy song, high lisp, thin lisp, slurred, slurred note, slurred notes
  also    slurred whistle, sibilant
  means   soft with an s sound

voice long-series
  also    long song, long run of notes, continuous song, long continuous song, nonstop song
  also    sing nonstop, sing without stopping, sing continuously, go on and on, non stop
  also    long series of notes, endless song, unbroken song, incessant, rambling, ceaseless
  also    sang nonstop, sang without stopping, sang continuously
  means   goes on without a break

voice loud
  also    loudly, loud call, loud song, noisy, noisily, vocal, very loud, strong voice, powerful song
  also    very vocal, loud voice, loud note, loud notes, surprisingly loud, loud for its size, big voice
  also    deafening, vociferous, noisier, talkative
  means   of great volume

voice mechanical
  also    mechanical sound, like a machine, machine like, mechanical rattle, mechanical trill
  also    like a sewing machine, sewing machine like, robotic, like an electric shock, electric sounding
  also    electronic, electronic sound, mechanical song, like a ray gun, fizz, sizzle, fizzy, crackle
  also    zapping, sputter, splutter, tinny
  means   seems made by a machine or wires

voice melancholy
  also    sad, plaintive, mournful, plaintive call, plaintive whistle, mournful call, sad whistle
  also    melancholy song, mournful whistle, sad call, sad song, sorrowful, sad sounding, wistful
  also    wistful song, plaintive note, mournful note, desolate, melancholic, haunting, lonesome
  also    doleful, eerie
  means   sounds sad to human ears

voice mellow
  also    mellow song, mellow call, mellow whistle, mellow notes, soft mellow call, smooth song
  also    mellow note, mellow trill, smooth whistle, mellow voice, smooth call, rounded notes
  also    mellow whistles, mellow hoot, mellow warble, mellow phrases
  means   round and full without edge

voice metallic-call
  also    metallic note, metallic song, metallic voice, metallic notes, metallic rattle, metallic sound
  also    steely call, metallic clink, clink, clinking call, clank, metallic tink, clinking note
  also    metallic ring, ping, chink, ching, pching, plink, clang, twang, twangy, spink
  means   with the ring of metal

voice mew
  also    mewing call, meow, miaow, cat like mew, mewl, mew like a cat, mewing cry, catlike call
  also    plaintive mewing, meow like a cat, pee oo, pee yow, mewing note, cat like mewing, mewing calls
  also    piiyay
  means   a drawn note like a cat's

voice mimicry
  also    mimetic, song full of mimicry, song with mimicry, includes mimicry, imitation of other birds
  also    mimics in its song, full of mimicry, with imitations, mimicry in song, imitate other songs
  also    mimicry of other birds, song includes other birds, good mimic, excellent mimic, expert mimic
  also    imitation
  also    mimic other birds, imitate other birds, copy other birds, mimic other calls, mimic
  means   copies of other sounds in the song

voice monotonous
  also    monotonous song, monotonous call, repetitive, repetitive song, repeated endlessly
  also    on one pitch, all on one note, same note over and over, one note song, all on one pitch
  also    same note again and again, repetitive call, same phrase over and over
  also    same notes over and over, all on the same pitch, repeated note
  means   the same sound again and again

voice musical
  also    tuneful, melodious, melodic, musical song, musical call, melodious song, tuneful song
  also    musical trill, melodious call, musical notes, lovely song, beautiful song, pretty song
  also    pleasing song, melodic song, melody, lyrical
  means   pleasing to the ear, with a tune

voice nasal
  also    nasal call, nasal note, nasal voice, through the nose, nasal calls, nasal notes, nasal whine
  also    adenoidal, nasal twang, nasal sound, nasal buzzing, nasal squeak, nasal song, nasal mewing
  also    nasal scold, nasal tone
  means   sounds as if through the nose

voice paired-notes
  also    paired phrases, notes in pairs, phrases in pairs, each note twice, sings each note twice
  also    double phrases, paired notes in song
  means   each note or phrase is given two times over

voice peent
  also    bzeent, nasal peent note, peent call, beent, beeent, pzeent, buzzing peent
  also    peent on the ground, peent at dusk, pee ent, peerp
  means   a short nasal buzz

voice peep
  also    peep peep, piip, thin peep, peep call, high peep, peep note, soft peep, peeping notes
  also    squeaky peep, sharp peep, pip, pip pip, pip call, pip pip pip, peeep, peet, kleep, eep, eeep
  means   one small clear high note

voice peewit-call
  also    pee weet, pe wit, pee a wee, peeoo wit, pee weep, pee a wit, peerwit, peeyou, pee ah wee
  also    pee ah weee, pewit call, weep weep, weep, wheep, wheep wheep, wheeep, wheep call, wheeeep
  also    weeep, breep, greep, preep, prreep, grreep, breet, vreep, quee, queep, kweep, qweep, queeah
  also    pweep, freeep, pree, ptreep
  also    pee wit
  means   a rising two-part or whistled note, as a lapwing or crested flycatcher

voice peter-peter
  also    peter peter peter, peter peter peter peter
  means   a clear double whistle said over and over

voice phrases
  also    in phrases, short phrases, phrased, repeat each phrase, each phrase repeated, repeat phrases
  also    repeat phrases two or three times, each phrase repeated twice, phrases with pauses
  also    song in phrases, sing in phrases, phrase repeated, each phrase repeated two or three times
  also    short phrases with pauses, say everything twice, pauses between phrases, sang in phrases
  also    with long pauses, short phrases with long pauses, phrases with long pauses
  also    long pauses between phrases
  means   song in short groups of notes, often given again

voice piping
  also    pipe like call, piping call, piping whistle, piping song, piping note, pipe loudly
  also    shrill piping, piped, piping notes, piping calls, loud piping, loud piping call, piping trill
  also    piping display, thin piping, kubik
  means   clear reedy whistled notes, often in a row

voice purr
  also    purring call, purring song, like a cat purring, turr turr, turr, purr like a cat, soft purr
  also    purring trill, purring coo song, purring sound, deep purr, purring note, tur tur, turrr, prrr
  also    rrrr
  means   a low soft roll

voice quack
  also    quack like a duck, quack quack, duck like quack, nasal quack, hoarse quack, quacking call
  also    quack loudly, low quack, loud quack, quacking sound, reedy quack, quack quack quack, quacky
  also    kwak, quark, kwek, raab, kwark, quock, quok, quawk, gek
  means   a flat rough note, as a farm duck

voice quiet-voice
  also    quiet call, quiet song, soft call, soft song, soft note, low volume, faint call, faint song
  also    barely audible, soft voice, soft notes, quietly singing, murmur, whisper, whispery, hushed
  means   of small volume

voice rattle
  also    dry rattle, rattling trill, harsh rattle, rattling alarm, rattling song, rattly
  also    football rattle, like a football rattle, machine gun like rattle, rattle loudly, hard rattle
  also    rattling notes, loud rattle, ratchet, ratchety, trrt, trrrt, prrrt, prrt, drrrt, drrt, tirrick
  also    prrp, trrrp, trrp
  means   a fast run of dry hard notes

voice reel
  also    reeling song, reeling trill, fishing reel, reel continuously, reeling at night
  also    reeling at dusk, mechanical reeling, insect like reeling, reeling like a grasshopper
  also    long reel, like a freewheeling bicycle, reel for minutes on end, freewheeling bicycle
  also    high reeling, reeling from a bush, reeling sound
  means   a very long even insect-like trill

voice rhythmic
  also    rhythmic song, rhythmic call, regular rhythm, steady rhythm, jerky song, swinging rhythm
  also    even rhythm, jerky rhythm, chug along, rhythmical, rhythmical song, see saw song, see sawing
  also    sawing, chug, jazzy, dactylic, metronomic, metronome, syncopated, witchity, witchety
  means   with a clear beat

voice rich-voice
  also    rich song, rich call, full song, rich warble, rich notes, full throated, deep rich song
  also    powerful rich song, rich whistle, rich whistles, rich warbling, full bodied song, rich phrases
  also    carolling, carol, carolled
  means   full and deep in tone

voice ringing
  also    ringing call, ringing song, ringing note, ringing notes, ringing whistle, resonant
  also    resonant call, clear ringing call, ringing whistles, ringing laugh call, ringing trill
  also    resounding, resounding call, ringing calls, clarion, echoing
  means   sounds on, as a struck glass

voice scold-call
  also    scolding note, scolding notes, scolding rattle, scolding calls, scolds, scolding churring
  also    angry call, angry chatter, scolding alarm call, scolding sound, scold loudly, angry sounding
  also    harsh scolding notes, tut, tsk, tisk
  also    scolding
  means   an angry repeated call

voice scream
  also    shriek, screaming call, piercing scream, blood curdling scream, banshee, screaming parties
  also    screaming party, hoarse scream call, scream like a hawk, hawk like scream, descending scream
  also    screaming in flight, harsh scream, high scream, yelling, yells, sreee, srii, sriii
  means   a long high harsh shout

voice screech
  also    screeching call, harsh screech, screech loudly, screeching noise, screechy, raucous screech
  also    rasping screech, screech like a barn owl, grating screech call, screeching cry
  also    blood curdling screech, loud screech, long screech, skaak, skraak, skaaak, schaak, kschaach
  also    kraak, kraaak, jaay, skraa, krark, skeow, jeer
  means   a long rough high note

voice seep
  also    seeep, sseep, thin seep, tseep, tseee, tsee, tsee tsee, tsee tsee tsee, see see see, see see
  also    high seep, tsip, tsip tsip, tsit, sst, tsit tsit, tseet, tseet tseet, zeet, seet
  also    high see see see, seep seep, seep call, ssee, sree, srree, tzee, seee, tss, tssp, tsii, tsiii
  also    tsiip, siip, tzeet, sisisi, sriih, zeep, dzeep, tsweep, tzip
  also    see titi, high see titi
  means   a thin high drawn note

voice series-of-notes
  also    string of notes, run of notes, in a series, series of calls, series of short notes
  also    rapid run of notes, series of clear notes, sequence of notes, repeated in series, even series
  also    descending run of notes, series of loud notes, series of high notes, series of sharp notes
  also    series of repeated notes, series of nasal notes
  means   many notes in a row

voice sharp-call
  also    sharp note, sharp notes, sharp calls, sharp sound, sharp alarm, sharp alarm call
  also    piercing call, piercing note, piercing whistle, sharp hard note, sharp loud call
  also    sharp whistle, sharp loud note, piercing song, piercing voice, ear piercing
  means   hard-edged and sudden

voice short-song
  also    brief song, short burst, short simple song, short call, short calls, brief call
  also    short and simple, clipped call, simple song, simple call, brief phrase, short sharp call
  also    terse, monosyllabic, quickfire, staccato
  means   lasts only a moment

voice shrill
  also    shrill call, shrill notes, shrill song, shrill whistle, shrilly, shrill voice, shrill note
  also    shrill trill, shrill calls, shrill alarm, ear splitting, shrill laughing call, shrill twitter
  also    shrill whistles, shrill chatter, high and shrill
  means   high and hard on the ear

voice silent
  also    silently, no sound, made no sound, make no sound, make no noise, not calling, not singing
  also    no call, no song, didn't call, did not call, not heard calling, said nothing, never called
  also    kept quiet, keep quiet, made no noise
  also    mostly silent, usually silent, generally silent, often silent, silent at sea, silent in winter
  also    mostly silent at sea, usually silent at sea
  means   no sound was made while it was watched

voice sing
  also    sang, song, in song, in full song, burst of singing, sung, sing a song, singer, sing away
  also    break into song, was in song, sing loud, sing well, sing lustily, sing his heart out
  also    sing its heart out, sang a song, sang away, sang loud, sang well, sang lustily
  also    sang his heart out, sang its heart out
  means   gives its song

voice sing-at-night
  also    sing in the dark, sing after dark, nocturnal song, call at night, call after dark
  also    nocturnal calls, call through the night, sing through the night, night singer
  also    sing by moonlight, sing by street lights, sing all night, call in the dark
  also    sing by street light, heard at night, sing under street lights, sang in the dark
  also    sang after dark, sang through the night, sang by moonlight, sang by street lights
  also    sang all night, sang by street light
  means   song or calls in the dark

voice slow-song
  also    slow trill, slow notes, slow call, slow delivery, slow phrases, slow series, slow rhythm
  also    leisurely song, unhurried song, deliberate song, slow series of notes, slow warble
  also    slowly delivered, slow rattle, slow whistle, drawl
  means   notes are long or far apart

voice slowing
  also    slow down at the end, slows down, slow at the end, decelerate, get slower, slower at the end
  also    slowing down, slower and slower, wind down, run down like a toy, wind down at the end
  also    running down at the end, decelerating series, got slower, wound down, wound down at the end
  means   notes come farther apart as it goes on

voice smack
  also    smacking call, lip smack, tongue smack, smack note, kissing sound, kissing noise, kissing call
  also    kissy, smooching sound, smack smack, loud smack, sucking sound, smacking alarm, smacking sound
  also    wet smack, kiss like call
  means   sounds like smacked lips

voice sneezy-call
  also    sneeze, like a sneeze, sneezing call, sneezy, tchew, sneeze like call, sneezy note, pitchoo
  also    pitchou, stifu, sneezing note, sneeze like note, sneezy song, tissick, tchissik, tissik
  also    chissick, chizzick, tsissik, chissik, chizzik, tschizzik, chiswick, tizzick
  means   a quick note with an s or z in it, as a sneeze or a wagtail

voice spoken-like
  also    sounds like a person, human like whistle, human sounding, like someone whistling
  also    like a person whistling, like a man whistling, like a person talking, sounds human
  also    whip poor will, go back go back, quick three beers, quick free beer, whip poor will call
  also    chuck wills widow
  means   seems to say words

voice squawk
  also    squawking call, raucous squawk, squawk loudly, harsh squawk, squawky, kwok squawk, loud squawk
  also    squark, squawk in flight, parrot like squawk, squawking noise, fraank, fraaank, kraank
  also    squawking cry, short squawk, squawk when flushed, gwark, gwok
  also    kowk, kowk kowk
  means   a loud rough strangled shout

voice squeak
  also    squeaky, squeaky call, squeaky song, squeaky voice, like a squeaky toy, squeaky toy
  also    squeaky wheel, squeaky note, mouse like squeak, squeaky notes, like a squeaky wheel
  also    high squeaky call, rubber duck, like a rubber duck, dog toy, like a dog toy
  means   a thin high rubbed sound

voice squeal
  also    squealing call, shrill squeal, pig squeal, squeal loudly, high squeal, squealing cry
  also    hoarse squeal, squealing whistle, loud squeal, squealing note, wee oo squeal, nasal squeal
  also    squealing notes, whining squeal, rising squeal, hooeek
  means   a long high shrill sound

voice subsong
  also    quiet subsong, whispered song, practice song, sing under its breath, half song
  also    quiet rambling song, autumn song, winter song, sing in subsong, plastic song, muttering song
  also    mutter, mutter to itself, rehearsing its song, practise song, low rambling song
  also    sang under its breath, sang in subsong
  means   a low half-formed song

voice sweet
  also    sweet song, sweet call, sweet notes, sweetly, sweet whistle, sweet trill, sweet note
  also    sweet warble, sweet voice, sing sweetly, sweet sweet sweet, sweet whistled notes
  also    sweet whistled song, sweet sweet, sweet high notes, sweet whistles, sang sweetly
  means   pure and pleasing in tone

voice teacher-teacher
  also    teacher teacher teacher, teacher teacher teacher teacher
  means   a double note said over and over, the stress the same each time

voice teu
  also    tew, tew tew, tew tew tew, teu teu, teu teu teu, tyu, tyu tyu, tue tue tue, tu tu tu, tyew
  also    tu tu, tyu tyu tyu, tlu, tlu tlu, dyu, chew chew chew, chew chew, tyoo, tewp, tewk, tooee, klu
  also    tleu, chewit, tlui, peeooee, chooit, tuli, tlooi, pyu, piu, pew, tyeu, deu, djeu, tyup, tewwy
  also    cheu
  also    teu hu hu, chew call, soft chew
  means   a clear note falling or of two parts, as a wader

voice thin-voice
  also    thin call, thin note, thin song, thin whistle, thin notes, thin trill, thin high whistle
  also    wispy song, thin reedy call, thin piercing call, thin weak call, thin high voice, tenuous
  also    thin piercing whistle, thin weak song, thin twitter
  means   narrow in tone, with little body

voice three-note
  also    three notes, three note call, three syllables, three syllable call, triple note
  also    three note whistle, triple call, trisyllabic, three note phrase, three part call
  also    three clear notes, three note song, three syllable song, three whistles, trisyllabic call
  also    triplets
  also    in three parts, three part song, song in three parts
  means   made of three notes

voice throb
  also    throbbing call, pulsing, pulsating call, pulsating, pulsed, pulsing trill, throbbing sound
  also    thump, thumping sound, thump like a heartbeat, like a motor starting, like an engine starting
  also    like a distant engine, engine like, thumping like an engine, like a lawnmower starting, bleat
  also    winnow
  means   a deep beating or bleating sound, often from wings or tail

voice tick
  also    tick tick, dry tick, tick call, tick note, sharp tick, tick tick tick, tik, tik tik
  also    tik tik tik, tic tic, hard tick, ticking notes, metallic tick, teck, tek, tixixix, tck, zick
  also    tikitik, ticky, pitik, tzik, tzick
  means   a small dry sharp note

voice tink
  also    tinkle, tinkling song, tinkling notes, tinkly, tink tink, tinkling trill, tinkling call
  also    tinkling bell song, like breaking glass, like tinkling glass, like icicles, glassy notes
  also    tinkly song, like tinkling bells, icicles, crystalline
  also    silvery song, silvery trill, silvery notes, silvery warble
  means   small clear notes like glass

voice trill
  also    trilling song, trilling call, dry trill, fast dry trill, trilly, long trill
  also    short musical trill, even trill, flat trill, loose trill, weak trill, high thin trilling
  also    trill at the end, trr, sirrr, sirrrr, srrr, tirrr, tsirrr, prrree, drrree, zirrr, srrree
  also    tsrrr
  also    treep, treeep
  means   a fast even run of one note

voice trumpet
  also    trumpet like, like a trumpet, bugle, bugle like, bugle call, bugle calls, trumpet loudly
  also    trumpet call, rattling bugle, trumpet calls, deep trumpeting, horn like, nasal trumpet
  also    horn like call, like a toy bugle, kroo
  means   a brassy horn sound, as a swan or crane

voice tweet
  also    tweet tweet, tweety, tweet loudly, tweeting call, high tweet, tsweet, tsweet tsweet, tsoeet
  also    tsooeet, tsuee, tsoo ee, sooeet, suee, swit, swit swit, tswit, tswit tswit, twit, twit twit
  also    twee, tswee, dwee, tweee, twee twee, swit call, tlit, vit vit, tvit, swiit, tissip, pitchiwoo
  also    tsuwee, chewee, tchwee, chuwee
  means   a bright rising note

voice twitter
  also    twittery, twittering song, twittering call, twittering chatter, twittery song, high twitter
  also    twittering flock, high twittering, constant twittering, twitter in flight, twitter constantly
  also    excited twittering, dry twitter, twittering trill, chitter, chittery
  means   light fast small notes

voice two-note
  also    two notes, two note song, two note call, double note, disyllabic, two syllables
  also    two syllable call, double call, two note whistle, disyllabic call, two part call
  also    two part song, bisyllabic, two clear notes, two note phrase, fee bee
  also    two syllable, two note chiff chaff song
  means   made of two notes

voice varied-song
  also    variety of calls, variety of notes, wide range of calls, variable song, different phrases
  also    lots of different sounds, complex song, varied phrases, varied calls, elaborate song
  also    variety of sounds, wide repertoire, large repertoire, jumble, garbled, gibberish
  means   made of many kinds of note

voice wail
  also    wailing call, mournful wail, wail like a loon, wail like a wolf, howl, like a wolf howling
  also    wail at night, wailing note, wailing notes, eerie wail, wailing scream, loud wail, weird wail
  also    lamenting, moan, groan, moo, courli, coorli
  means   a long sad rising and falling cry

voice warble
  also    warbling song, warbling call, warbly, rich clear warble, fast warbling, soft warbling
  also    jumbled warbling, warbling notes, warbled song, husky warble, low warble, warbling phrases
  also    fast rich warble, cheerful warble, cheery warble, warbling trill
  means   smooth run of changing notes

voice whine
  also    whiny, whining call, whiney, whining note, nasal whining, whining cry, whining calls
  also    high whine, whine like a puppy, whimper, whimpering call, whining whistle, whimpery
  also    whining notes, whiny call, whine like a dog, wheedling
  means   a long thin complaining sound

voice whinny
  also    horse like whinny, neigh, like a horse whinnying, whinny like a horse, trilling whinny
  also    whinnying trill, quavering whinny, high whinny, soft whinny, ringing whinny, whinnying laugh
  also    rapid whinny, whinny call, whinnying notes, long bubbling whinny, neigh like a horse
  means   a quick falling shaken run, like a small horse

voice whistle
  also    whistling call, whistled call, clear whistle, whistled note, whistled notes, whistled song
  also    clear whistles, whistling song, soft clear whistle, whistly, whistled phrases, pure whistle
  also    whistle loudly, whistling notes, wheeo, hweeoo
  means   a clear pure sound with no burr

voice whoop
  also    whooping call, whoop loudly, whoop whoop, whup, whup whup, whooping cry, whooping notes
  also    whooping calls, deep whoop, hup, whooping sound, wup, monkey like calls, jungle sounds
  also    jungle like calls, oop
  means   a deep rising shout

voice wing-clap
  also    wing claps, clap its wings, wing clapping, wing slap, wings clap together, clap of wings
  also    clap wings in flight, clap its wings together, clap its wings in flight, crack its wings
  also    wing crack, wing snap, slap its wings, clap its wings in display, loud wing claps, clap wings
  means   the wings strike each other with a sound

voice wing-noise
  also    noisy wings, wings make a noise, sound of wings, wings make a whirring sound, wing whirr
  also    whirr of wings, wing sound, whir of wings, wing rustle, whoosh of wings, swish of wings
  also    noise of its wings, noise from wings, noisy in flight, whirr from wings, wings swish
  means   wings can be heard in flight

voice wing-whistle
  also    whistling wings, whistle of wings, wing whistling, whistling wingbeats, whistle from wings
  also    whistle of its wings, whistling wing noise, wings make a whistling sound, singing wings
  also    wings sing, wings whistle in flight, wings making a whistling noise, musical wingbeats
  also    musical throb of wings, wing trill, trilling wings
  means   wings whistle or trill in flight

voice woodpecker-like
  also    woodpecker like call, like a woodpecker call, woodpecker like calls, call like a woodpecker
  also    sounds like a woodpecker
  means   has the sharp or laughing quality of woodpecker calls

voice yelp
  also    yelping call, puppy like yelp, like a puppy yelping, yelp like a puppy, yelping cries
  also    yelping dog, yelp like a dog, yelping calls, dog like yelp, yip, yip yip, yipping call
  also    high yelp, like yelping dogs, like a pack of dogs, kyap
  means   a short high shout, as a hurt pup

voice yodel
  also    yodelling, yodelled, yodelling call, yodeling call, yodelled call, yodelling song
  also    musical yodel, yodelling whistle, yodelling notes, yodeling song, yodeling notes, ow ow owlee
  also    ow owlee, ow ow ow owlee, calloo, caloo
  means   breaks from low to high and again

voice zee
  also    zeee, zee zee, zee zee zee, zee zee zoo zee, zoo zee, zree, zrree, zray, dzee, dzee dzee
  also    zeeup, zoo zoo zee, zur zur, zhree, zweee, zwee, dzwee, zzz zree, bee buzz zee
  also    zee zee zee zoo, zoo zee zoo zoo zee, zur zee, dzree, zizizi, zizi, zweep, dzweep, zhee, zheee
  also    djeee, zreee, dzhee, breeeze, dzeee, greeeze
  means   a thin buzzed note

voice zit
  also    zik, zik zik, zitt, zit zit, dzik, zit call, tzit, tzit tzit, zit note, tsik, tsik tsik, tsick
  also    tsick tsick, tsick note, tzick tzick, dzit, ptik, ptick, thin zit, ptk, dry zit, tsk like note
  also    tsek, tsak, tzuck, tzek, tzuk, tswik
  means   a very short dry buzzed tick
