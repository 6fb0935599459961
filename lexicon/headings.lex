# What stands at the head of a note: the names of its fields, months and days, and the words by which
# weather, observers and places are told apart where a heading gives them without a name.
#
# `role label` is the name of the field it `gives`, in a heading ("Place: Boathouse hide"), as a column
# of a table or as a member of an object.

note date
  role    label
  gives   date
  also    day, event date, observation date, obs date, date seen, date of sighting, when, dated
note time
  role    label
  gives   time
  also    times, start time, time seen, event time, observation time, obs time, time of day, hours, at
note place
  role    label
  gives   place
  also    site, location, locality, spot, where, place name, location name, site name, hide, station
note observer
  role    label
  gives   observer
  also    observers, observed by, obs, seen by, recorder, recorded by, by, who, watcher, name of observer
  also    author, signed, crew, noted by, dictated by, speaker
note count
  role    label
  gives   count
  also    number, number seen, no, how many, individual count, quantity, total, birds seen
note weather
  role    label
  gives   weather
  also    conditions, weather conditions, wx, sky, wind, light
note habitat
  role    label
  gives   habitat
  also    habitat type, cover
note identification
  role    label
  gives   identification
  also    identity, species, species guess, guess, taken for, common name, vernacular name, scientific name
  also    bird, what was it, verbatim identification
note title
  role    label
  gives   title
  also    notebook, project, subject
note year
  role    label
  gives   year
  also    season
note note
  role    label
  gives   note
  also    notes, description, text, remarks, comment, comments, field notes, field note, details
  also    observation, what was seen, entry, body, message, memo, log, transcript, species comments
  also    observation details, occurrence remarks

note january
  role    month
  number  1
  also    jan
note february
  role    month
  number  2
  also    feb
note march
  role    month
  number  3
  also    mar
note april
  role    month
  number  4
  also    apr
note may
  role    month
  number  5
note june
  role    month
  number  6
  also    jun
note july
  role    month
  number  7
  also    jul
note august
  role    month
  number  8
  also    aug
note september
  role    month
  number  9
  also    sep, sept
note october
  role    month
  number  10
  also    oct
note november
  role    month
  number  11
  also    nov
note december
  role    month
  number  12
  also    dec

note weekdays
  role    weekday
  also    monday, tuesday, wednesday, thursday, friday, saturday, sunday
  also    mon, tue, tues, wed, weds, thu, thur, thurs, fri, sat, sun

note ordinals
  role    ordinal
  also    st, nd, rd, th

note of
  role    of

# Days as they are said, from the first on: the order counts.
note days-said
  role    day
  also    first, second, third, fourth, fifth, sixth, seventh, eighth, ninth, tenth
  also    eleventh, twelfth, thirteenth, fourteenth, fifteenth, sixteenth, seventeenth, eighteenth
  also    nineteenth, twentieth, twentyfirst, twentysecond, twentythird, twentyfourth, twentyfifth
  also    twentysixth, twentyseventh, twentyeighth, twentyninth, thirtieth, thirtyfirst
note thousand
  role    thousand
note and
  role    and
note before-a-day
  role    leads-to-day
  also    on, the, today, is, it's, it, this

# Times that are said: "half past seven", "oh six thirty", "about seven a.m.". What the words do is named by
# `gives`. Words for the half of the day also stand behind figures.
note before-a-time
  role    clock
  gives   lead
  also    at, about, around, roughly, circa, approximately, nearly, almost, just, just after, just before, just past, shortly after, shortly before, a
  also    it's, it was
note half-an-hour
  role    clock
  gives   half
  also    half
note quarter-of-an-hour
  role    clock
  gives   quarter
  also    quarter
note after-the-hour
  role    clock
  gives   past
  also    past, after, gone
note before-the-hour
  role    clock
  gives   to
  also    to, before, til, till
note minutes
  role    clock
  gives   minutes
  also    minutes, minute, mins, min
note full-hour
  role    clock
  gives   hour
  also    o'clock, oclock, o clock
note nought-of-a-time
  role    clock
  gives   nought
  also    oh, o, zero, nought
note full-hundred
  role    clock
  gives   hundred
  also    hundred
note hours-of-a-clock
  role    clock
  gives   hours
  also    hours, hrs
note before-noon
  role    clock
  gives   morning
  also    am, a.m., a m, in the morning, this morning
note after-noon
  role    clock
  gives   afternoon
  also    pm, p.m., p m, in the afternoon, this afternoon, in the evening, this evening
note at-night
  role    clock
  gives   night
  also    at night, tonight
note until
  role    clock
  gives   until
  also    until

note small-words
  role    small
  also    of, the, by, at, in, on, near, to, and, end, side, hide, path, off, from, below, above, behind
  means   words of a name that are written without a capital

note times-of-day
  role    time
  also    dawn, dusk, noon, midday, midnight, morning, early morning, evening, afternoon, night, sunrise
  also    sunset, before dawn, after dark, early, late, first light, last light

note weather-words
  role    weather
  also    sunny, sun, bright, overcast, cloud, clouds, cloudy, rain, rainy, drizzle, drizzly, showers, shower
  also    wind, windy, breeze, breezy, calm, still, fog, foggy, mist, misty, frost, frosty, snow, sleet, hail
  also    clear, dull, hot, warm, cool, cold, mild, humid, dry, wet, gale, gusty, haze, hazy, thunder, storm
  also    visibility, celsius, fahrenheit, degrees
  also    n, ne, nne, nnw, nw, s, se, sse, ssw, sw, e, ene, ese, w, wnw, wsw
  also    northerly, southerly, easterly, westerly, light, strong, moderate, fresh

note observers
  role    observer
  also    warden, wardens, group, shift, ranger, volunteer, volunteers, leader, team, recorder, walk, watch
  also    watcher, counter, ringer, ringers, club, beginner, beginners, guide, child, pupil, class

note same
  role    same
  also    same day, same morning, same afternoon, same evening, same date, same walk, later, later on, ditto

# A description is good enough for a record when it tells at least so many marks (seen, or looked for and
# not there), these among them. Our own choice, from common practice: a records committee has its own rules.
note good-record
  role    record
  least   6
  needs   size
  means   tells the size and at least six marks of a full description

note month-first
  role    month-first
  regions north-america
  means   where 5/6/2026 is 6 May
