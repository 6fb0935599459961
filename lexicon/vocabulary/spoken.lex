# Words that fill a spoken note while the speaker thinks. They carry nothing and are set aside on purpose.
# A bare "well" is not among them: "as well as", "well marked" and the like must stay whole.

filler anyhow-so
  also    anyway so, anyways so, so anyway, so anyways, so anyhow, anyway yeah, anyway where was i
  also    where was i, where were we
  means   taking up the thread again

filler as-i-said
  also    as i say, like i said, like i say, as i was saying, like i was saying, as i mentioned
  also    as mentioned, as i noted, as we said, as we say, as they say, as you do, as you can imagine
  means   pointing back at one's own words

filler basically
  also    basically speaking, generally speaking, strictly speaking, so basically, well basically
  means   summing up, and adding nothing

filler er
  also    err, erm, ermm, errm, errr, er um, um er, er well, erm well, erm so, er so, erm yeah, er yeah
  means   a sound of hesitation

filler hm
  also    hmm, hmmm, hmmmm, mmm, mmmm, mhm, mm hm, mm hmm, uh huh, hmm so, hmm well, hmm okay, hmm ok
  means   a sound of thinking or of listening

filler how-shall-i-put-it
  also    how do you say, how do i say, how do you say it, how do i put it, how can i put it, how to put it
  also    how shall i say, how should i say, how can i say, how can i describe it, how do i describe it
  also    how would you describe it, how would i describe it, what would you say, what shall i say
  means   a wait for the right word

filler i-mean
  also    what i mean is, you know what i mean, if you know what i mean, if you see what i mean
  also    see what i mean, know what i mean, by that i mean, i mean to say, so i mean, well i mean
  means   leading into the same thing said again

filler if-you-will
  also    if you like, so to speak, as it were, so to say, in a manner of speaking
  also    for want of a better word, for lack of a better word, for want of a better term
  also    for lack of a better term, shall we say, let's say, lets say, shall i say
  means   begging leave for a word

filler let-me-see
  also    let's see, lets see, let me think, let me remember, let me look, let me get this right
  also    let me start, let me describe it, let me tell you, let me put it this way, give me a second
  also    give me a minute, give me a moment, one moment, one second please, just a moment, just a minute
  also    where do i start, where to start, where shall i start, here we go, here goes
  means   playing for time

filler literally
  also    quite literally, i swear, i tell you, i'm telling you, believe me, believe you me
  means   words of stress that carry nothing

filler oh
  also    ah, aah, ahh, ooh, oooh, ohh, oh well, ah well, ah yes, oh yeah, ah yeah, oh so, ah so
  also    oh okay, oh ok, ah okay, ah ok, oh and by the way
  means   a cry on the way to the next thought

filler okay-so
  also    ok so, okay then, ok then, okay well, ok well, okay now, ok now, okay um
  also    ok um, okay uh, ok uh, okay let's see, ok let's see, alright so, alright then, all right then
  also    all right so, okay here we go, ok here we go, so okay, so ok
  means   the start of a spoken note

filler so-yeah
  also    so yes, yeah so, yes so, yeah well, yeah yeah, yes yes, so there you go, there you go
  also    there you have it, so there you have it, so that's that, that's that, that's it, and that's it
  also    that's about it, that is it, so that's it, end of message, end of note
  means   the end of a spoken note

filler uh
  also    uhh, uhm, uhhh, uh um, um uh, uh well, uh so, uh yeah, uh okay, uh ok
  means   a sound of hesitation

filler um
  also    umm, ummm, ummmm, um well, um so, um yeah, um okay, um ok, um let me see
  means   a sound of hesitation

filler well-now
  also    well so, well then, well um, well uh, well er, well erm, well anyway, well anyways, well okay
  also    well ok, well yes, well yeah, well let me see, well let's see, well let me think, well you know
  also    well you see, well honestly, well to be honest, now then, well hello, well hi
  means   well, where it opens a spoken note

filler what-was-it
  also    what do you call it, what do they call it, what do you call them, what do they call them
  also    what's it called, what are they called, what is it called, what's the word, what is the word
  also    what do i call it, what's that word, what's that called, i forget the word
  also    i forget what it's called, i forget the name, whatsit, whatchamacallit, whatchamacallits
  also    thingummy, thingamajig, doodah
  means   a word that will not come

filler you-know
  also    y'know, ya know, you know what, you see, you understand, you get me, you get the idea
  also    you get the picture, do you know, so you know, you know how it is, you know the sort
  also    you know the kind, you know the type
  means   a nudge to the listener

# Signs said aloud. Where the word can mean something else it counts only beside words that leave it
# no other sense.

comma spoken-comma
  hidden  yes
  also    comma
  means   a comma, said aloud

stop spoken-stop
  hidden  yes
  also    full stop, fullstop
  means   a full stop, said aloud

stop spoken-period
  hidden  yes
  also    period
  unless-after a, the, this, that, of, long, short, breeding, moult, whole, same, cold, one, each, every, :number
  unless-before of
  means   a full stop, said aloud

semicolon spoken-semicolon
  hidden  yes
  also    semicolon, semi colon
  means   a semicolon, said aloud

colon spoken-colon
  hidden  yes
  also    colon
  means   a colon, said aloud

question spoken-question-mark
  hidden  yes
  also    question mark
  means   a question mark, said aloud

exclamation spoken-exclamation-mark
  hidden  yes
  also    exclamation mark, exclamation point
  means   an exclamation mark, said aloud

newline spoken-line-end
  hidden  yes
  also    new line, newline, next line, new paragraph, new note
  means   a new line, said aloud

open spoken-open-bracket
  hidden  yes
  also    open bracket, open brackets, open parenthesis
  means   a bracket, said aloud

close spoken-close-bracket
  hidden  yes
  also    close bracket, close brackets, close parenthesis, closed bracket
  means   a bracket, said aloud

hyphen spoken-hyphen
  hidden  yes
  also    hyphen
  means   a hyphen, said aloud
