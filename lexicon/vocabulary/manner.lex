# How sounds and movements are, and the words that say which of them is spoken of.

manner abrupt
  also    abruptly, sudden, suddenly
  means   sudden

manner agile
  also    nimble, nimbly, agilely, acrobatic
  means   quick and light

manner buoyant
  also    buoyantly, floating, floaty, light and buoyant
  means   light, as if floating

manner clear
  also    clearly heard, pure toned
  means   clear

manner deep
  means   low in pitch, or with a wide sweep

manner drawn-out
  also    long drawn, long drawn out
  means   made long

manner dry
  also    drily
  means   dry

manner emphatic
  also    forceful, explosive, emphatically
  means   with force

manner erratic
  also    erratically, irregular, twisting
  means   without a steady line

manner falling
  also    descending, dropping, downslurred, slurred down, falls, fall in pitch
  means   falling in pitch or height

manner fast
  also    quick, quickly, rapid, rapidly, swift, swiftly, speedy, hurried
  means   fast

manner faint-sounding
  hidden  yes
  value   faint
  also    faint
  means   hardly heard

manner fluid
  also    fluidly, liquid, smooth flowing
  means   flowing

manner graceful
  also    gracefully, elegant
  means   graceful

manner hard
  means   hard

manner harsh
  also    harshly, rough, grating, rasping
  means   harsh

manner heavy
  also    heavily flapping, laboured, labored, cumbersome
  means   heavy

manner high
  also    high pitched, high up, very high
  means   high in pitch or above the ground

manner hoarse
  also    husky
  means   hoarse

manner hollow
  means   as from an empty vessel

manner jerky
  also    jerkily
  means   in jerks

manner level
  also    level line, on a level
  means   at one height

manner light
  also    lightly built flight
  means   light

manner loose
  also    loosely, floppy, lazy, lazily
  means   loose

manner loud
  also    loudly, noisy, noisily
  means   loud

manner low
  also    low down, low pitched, near the ground, close to the ground, low over the water, low over the ground
  means   low in pitch or near the ground

manner metallic
  means   metallic

manner mournful
  also    sad, plaintive, melancholy
  means   sad

manner mostly-paired
  hidden  yes
  value   paired
  also    paired, doubled
  means   each note two times

manner musical
  also    sweet, melodious, melodic, tuneful
  means   pleasant to hear

manner nasal
  means   through the nose

manner powerful-moving
  hidden  yes
  value   strong
  also    powerful, powerfully, strong
  means   strong

manner repeated
  also    repeatedly, repeating, over and over, again and again, in series, repetitive, series of, a series of
  means   again and again

manner rich-sounding
  hidden  yes
  value   rich
  also    rich, varied, full, fluty
  means   rich

manner rising
  also    ascending, upslurred, slurred up, rises, rise in pitch, rising at the end
  means   rising in pitch

manner rolling
  also    rolled
  means   with a run of quick beats

manner scratchy
  also    squeaky, creaky
  means   scratchy

manner sharp
  means   sharp

manner short-lasting
  hidden  yes
  value   short
  also    brief, briefly
  means   short

manner shrill
  also    piercing
  means   shrill

manner simple
  means   simple

manner slow
  also    slowly, leisurely, unhurried, measured
  means   slow

manner soft
  also    softly, quiet, quietly, gentle, gently, subdued
  means   soft

manner steady
  also    steadily, regular, regularly, even, constant, constantly
  means   steady

manner stiff
  also    stiffly
  means   stiff

manner straight
  also    straight line, in a straight line
  means   in a straight line

manner tearing
  also    ripping
  means   as cloth torn

manner thin-sounding
  hidden  yes
  value   thin
  also    thin
  means   thin, of a sound

manner weak
  also    weakly, feeble, feebly
  means   with little strength

manner wheezy
  means   wheezy

topic flight-topic
  hidden  yes
  aspect  flight
  also    flight, wingbeat, wingbeats, wing beat, wing beats, flying
  means   how it flies

topic voice-topic
  hidden  yes
  aspect  voice
  also    voice, call, calls, song, songs, note, notes, sound, sounds, phrase, phrases, calling, singing, ending, syllables
  means   what it sounds like

topic habits-topic
  hidden  yes
  aspect  behaviour
  also    habits, habit, behaviour, behavior, manner
  means   what it does

topic habitat-topic
  hidden  yes
  aspect  habitat
  also    habitat, habitats
  means   where it lives
