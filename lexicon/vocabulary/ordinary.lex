# Ordinary words that turn up in notes and say nothing of a bird's marks: they are set aside on purpose.
# Every form is listed, as this kind is never inflected. A word that can be a mark, a part, a colour, a
# sound, a place or a doubt has no business here.

ordinary arrivals
  also    return, returns, returned, returning, disappear, disappears, disappeared, disappearing, vanish
  also    vanishes, vanished, vanishing, reappear, reappears, reappeared, reappearing, arrival, departure
  also    departures, disappearance, disappearances, reappearance, reappearances
  also    newly arrived, went away, go away, come again, came again, comes again
  means   words of coming, landing and going off

ordinary asking
  also    ask, asks, asked, answer, answers, answered, answering, reply, replies, replied, replying, respond
  also    responds, responded, responding, enquire, enquires, enquired, enquiring, inquire, inquires, inquired
  also    inquiring, request, requests, requested, requesting, consult, consults, consulted, consulting
  also    queries, queried, querying, question, questions, response, responses, enquiry, enquiries, inquiry
  also    inquiries, consultation, consultations, quiz, quizzes, clue, clues, unanswered, questioning
  also    questioned, questionnaire, questionnaires, asker, askers
  also    ask about, asked about, asking about, asking for, asked for, any ideas, any idea, any clues
  also    any suggestions, any thoughts, any advice, any help, bright idea, bright ideas, rough idea
  also    good question, quick question
  means   words of asking and answering

ordinary awful
  also    awfully, terrible, terribly, horrible, horribly, dreadful, disgusting, disgustingly, ugly, uglier
  also    ugliest, bad, badly, worst, pathetic, pathetically, lousy, rubbish, mediocre, unremarkable
  also    unexceptional, uninteresting, ordinary, unattractive, hideous, hideously, ghastly, grotesque
  also    unpleasant, unpleasantly, appalling, abysmal, annoyingly, stupid, stupidly, idiot, idiotic, daft
  also    foolish, foolishly, embarrassing
  means   words of blame, and of the everyday, that say nothing of a mark

ordinary no-contrast
  also    no contrast between, little contrast between, no contrast with, no difference between, little difference between
  means   parts that look alike, of which none is denied

ordinary because
  also    when, why, how, what, whether, if, unless, since, therefore, hence, thus, consequently, accordingly
  also    nevertheless, nonetheless, regardless, moreover, furthermore, additionally, meanwhile, whereby
  also    wherein, whereupon, whenever, wherever, whatever, whoever, whichever, despite, during, according
  also    concerning, regarding, notwithstanding, anyhow, anyway, anyways, anywhere, incidentally, such
  also    albeit, lest, hereby, thereby, therein
  also    such as, so that, so as to, in order to, in order that, in that case, in spite of, due to
  also    because of, owing to, thanks to, according to, as a result, as for, as to, as soon as, by means of
  also    in addition, in addition to, on account of, on behalf of, with regard to, with respect to
  also    in terms of, what if, now that, that being said, having said that, that said, other than that
  also    apart from that, aside from that
  means   linking words that carry no comparison and no negation

ordinary birdwatchers
  also    birder, birders, twitcher, watcher, watchers, observer, observers, naturalist, naturalists
  also    ornithologist, ornithologists, ecologist, ecologists, biologist, biologists, botanist, botanists
  also    zoologist, zoologists, conservationist, conservationists, warden, wardens, ranger, rangers
  also    photographer, photographers, beginner, beginners, expert, experts, novice, novices, amateur
  also    amateurs, enthusiast, enthusiasts, walker, walkers, hiker, hikers, rambler, ramblers, cyclist
  also    cyclists, jogger, joggers, driver, drivers, passenger, passengers, farmer, farmers, gardener
  also    gardeners, angler, anglers, camper, campers, tourist, tourists, holidaymaker, holidaymakers
  also    sightseer, sightseers, backpacker, backpackers, motorist, motorists, boater, boaters, scientist
  also    scientists, researcher, researchers, entomologist, entomologists, cameraman, cameramen, birdwatcher
  also    birdwatching, birding, ornithology, ornithological, biology, biological, ecology, ecological, botany
  also    zoology, zoological, conservation, science, scientific, scientifically, expertise, tourism
  also    cameraperson, newbie, newbies, nature
  also    bird watch, natural history, bird walk, bird walks, bird club, bird group, bird race, bird count
  also    bird counts, bird lover, bird lovers, bird person, bird people, bird nerd, big day, big year
  also    fellow birders, fellow birder, new to birding, new to this, young birder, young birders
  also    nature lover, nature lovers
  means   those who watch birds, and those met while doing so

ordinary buying
  also    buy, buys, bought, sell, sells, selling, pay, pays, paid, paying, spend, spends, spent, spending
  also    purchase, purchases, purchased, purchasing, afford, afforded, affording, budget, budgets, budgeted
  also    budgeting, price, prices, payment, payments, seller, sellers, buyer, buyers, cost, costs, bargain
  also    bargains, receipt, receipts, discount, discounts, euro, euros, wallet, wallets, purse, purses
  also    savings, shopper, shoppers, expense, expenses, refund, refunds, voucher, vouchers, ticket, tickets
  also    market, markets, shop, shops, supermarket, supermarkets, shopkeeper, shopkeepers, bakery, bakeries
  also    pharmacy, pharmacies, bookshops, bookstore, bookstores, cashier, cashiers, checkout, checkouts
  also    money, cash, shopping, shopped, unpaid, cheaper, cheapest, cheaply, expensive, inexpensive, costly
  also    priceless, affordable, wealthy, financial, financially
  also    garden center, pet shop, pet store, credit card, shopping centre, shopping list
  means   words of money and shopping

ordinary came-back
  also    come back, coming back, comes back, go back, going back, goes back, went back, gone back, get back
  also    gets back, got back, getting back, gotten back, look back, looked back, bring back, brought back
  also    bringing back, drove back, drive back, driving back, travelled back, report back, reported back
  also    write back, wrote back, back again, back home, back then, back now, back in the day, back to work
  also    back to bed, back to normal, back at home, back door, back doors, back window, back porch
  also    back bedroom, back seat, back road, back roads, back of my mind, back of the car, back of the van
  also    back of the house, back up plan, back in time, back in january, back in february, back in march
  also    back in april, back in june, back in july, back in august, back in september, back in october
  also    back in november, back in december, welcome back, a while back, a few years back, years back
  also    weeks back, days back, months back, put it back, take it back, took it back, give it back
  also    keep coming back, kept coming back
  means   coming back and going back, where back is no part of a bird

ordinary computers
  also    computer, laptop, laptops, smartphone, smartphones, phone, phones, mobile, mobiles, app, apps
  also    websites, internet, webpages, forum, forums, blog, blogs, link, links, file, files, folder, folders
  also    download, downloads, password, passwords, username, usernames, browser, browsers, software, keyboard
  also    keyboards, podcast, podcasts, youtube, facebook, google, instagram, hashtag, hashtags, emoji, emojis
  also    webcams, network, networks, server, servers, database, databases, upload, uploads, login, logins
  also    online, offline, wifi, broadband, googled, googling, digital, digitally, cellphone, cellphones
  also    iphone, android, usb, screenshot, screenshots, multimedia, technology, technologies, technical
  also    technically, emoticon
  also    web page, web site, facebook group, google search, search engine, phone camera, on my phone
  also    on the phone, dash cam, bird cam, live stream, video clip
  means   telephones, computers and what is on them

ordinary contractions
  also    i'm, i've, i'd, i'll, we're, we've, we'd, we'll, you're, you've, you'd, you'll, he'd, he'll, she'd
  also    she'll, they've, they'd, they'll, it'll, it'd, there's, there'll, there'd, here's, what's, how's
  also    when's, why's, let's, y'all
  means   words run together with an apostrophe, where they say nothing of a bird

ordinary disliking
  also    hate, hates, hated, hating, dislike, dislikes, disliked, worry, worries, worried, worrying, bother
  also    bothers, bothered, bothering, annoy, annoys, annoyed, annoying, disappoint, disappoints
  also    disappointed, disappointing, disturb, disturbs, disturbed, disturbing, scare, scares, scared
  also    scaring, frighten, frightens, frightened, frightening, embarrass, embarrasses, embarrassed
  also    frustrate, frustrates, frustrated, frustrating, irritate, irritates, irritated, irritating, regret
  also    regrets, regretted, regretting, complain, complains, complained, complaining, disappointment
  also    disappointments, annoyance, annoyances, disturbance, disturbances, frustration, frustrations
  also    complaint, complaints, nuisance, nuisances, sadness, worryingly, worrisome, disappointingly
  also    frustratingly, embarrassingly, sadly, sadder, unhappy, unhappily, miserable, miserably, upsetting
  also    disturbingly, scary, scarily, frighteningly, afraid, creepy, unlucky, unfortunate, regrettably
  also    regrettable, lonely, gloomily, dreadfully, troublesome, bothersome
  also    fed up
  means   words of dislike, worry and disappointment

ordinary doing
  also    make, makes, made, making, use, uses, used, using, produce, produces, produced, producing, perform
  also    performs, performed, performing, repair, repairs, repaired, repairing, fix, fixes, fixed, fixing
  also    install, installs, installed, installing, organise, organises, organised, organising, organize
  also    organizes, organized, organizing, arrange, arranges, arranged, arranging, prepare, prepares
  also    prepared, preparing, improve, improves, improved, improving, replace, replaces, replaced, replacing
  also    develop, develops, developed, developing, prevent, prevents, prevented, preventing, protect
  also    protects, protected, protecting, spoil, spoils, spoiled, spoiling, destroy, destroys, destroyed
  also    destroying, waste, wastes, wasted, wasting, solve, solves, solved, solving, react, reacts, reacted
  also    reacting, operate, operates, operated, operating, ignore, ignores, ignored, ignoring, organisation
  also    organisations, organization, organizations, arrangement, arrangements, preparation, preparations
  also    improvement, improvements, replacement, replacements, development, developments, invention
  also    inventions, prevention, protection, solution, solutions, action, actions, activity, activities
  also    reaction, reactions, operation, operations, user, users, task, tasks, chore, chores, project
  also    projects, process, processes, method, methods, procedure, procedures, technique, techniques, usage
  also    done, undone, redo, redoing, redone, makeshift, homemade, useful, usefully, usefulness, useless
  also    usable, reusable, unused, reused, finished, unfinished, unprepared, productive
  also    make sure, made sure, making sure, makes sure, make sense, makes sense, made sense, making sense
  also    make do, made it, make it, made up, used to
  means   words of doing and making

ordinary feelings
  also    feeling, emotion, emotions, mood, moods, stress, anxiety, anxieties, boredom, patience, impatience
  also    pride, curiosity, tiredness, nerves, relief, sympathy, loneliness, enthusiasm, eagerness, motivation
  also    inspiration, satisfaction, happiness, emotional, emotionally, excited, bored, boring, boringly
  also    tired, tiring, exhausted, exhausting, exhaustion, busy, busily, eager, eagerly, enthusiastic
  also    enthusiastically, patient, patiently, impatient, impatiently, relieved, satisfied, satisfying
  also    satisfactory, unsatisfied, lucky, luckily, luckier, luckiest, fortunate, fortunately, unfortunately
  also    thirsty, motivated, inspired, inspiring, inspirational, fulfilled, fulfilling, awestruck, pleasantly
  also    keenly, homesick
  means   how the watcher felt

ordinary finding
  also    find, finds, found, discover, discovers, discovered, discovering, encounter, encounters, encountered
  also    encountering, detect, detects, detected, detecting, explore, explores, explored, exploring, examine
  also    examines, examined, examining, inspect, inspects, inspected, inspecting, rediscover, rediscovers
  also    rediscovered, rediscovering, discovery, discoveries, finder, finders, exploration, explorations
  also    investigation, investigations, inspection, inspections, searchers, met
  also    came across, bumped into, stumbled upon, stumbled across
  means   words of finding and meeting with

ordinary furniture
  also    armchair, armchairs, sofa, sofas, couch, couches, chair, chairs, desk, desks, cupboard, cupboards
  also    wardrobe, wardrobes, bookcase, bookcases, bookshelf, bookshelves, cushion, cushions, mattress
  also    mattresses, television, televisions, radio, radios, clock, clocks, charger, chargers, battery
  also    batteries, freezer, freezers, refrigerator, refrigerators, microwave, microwaves, toaster, toasters
  also    dishwasher, dishwashers, saucepan, saucepans, mug, mugs, teacup, teacups, teapot, teapots, thermos
  also    lunchbox, lunchboxes, candle, candles, calendar, calendars, telephone, telephones, printer, printers
  also    suitcase, suitcases, rucksack, rucksacks, backpack, backpacks, handbag, handbags, pocket, pockets
  also    newspaper, newspapers, magazine, magazines, heater, heaters, laundry, toilet, toilets, bathtub
  also    bathtubs, doorbell, doorbells, stopwatch, stopwatches, wristwatch, wristwatches, tv, furnished
  also    rechargeable
  also    alarm clocks, kitchen sink, kitchen table, kitchen door, coffee table, coffee cup, coffee mug
  also    cup of coffee, cup of tea, mug of coffee, mug of tea, front seat, alarm went off, key ring
  also    vacuum cleaner, washing machine, washing up, washing the car, wash the car, washing the dishes
  also    alarm clock
  means   furniture and things about the house

ordinary general
  also    ability, abilities, reality, realities, purpose, purposes, priority, priorities, responsibility
  also    responsibilities, advantage, advantages, disadvantage, disadvantages, benefits, imagination
  also    intelligence, progress, requirement, requirements, skill, skills, talent, talents, value, values
  also    actual, real, realistic, realistically, able, capable, available, unavailable, availability
  also    unavoidable, new, newest, worth, worthy, worthwhile, ready, readily, personal, private, privately
  also    publicly, suitable, suited, unsuitable, appropriate, appropriately, inappropriate, formal, formally
  also    informal, informally, latest, final, modern, outdated, automatic, automatically, responsible
  also    effective, effectively, efficient, efficiently, essential, eventual, fundamental, genuine, imaginary
  also    impractical, practical, practicality, intelligent, invaluable, perfect, sincere, spontaneous
  also    spontaneously, sustainable, tremendous, urgent, urgently, valuable, worthless
  also    old fashioned
  means   words of the general run, of no kind of their own

ordinary getting
  also    get, gets, got, gotten, take, takes, took, taken, taking, keep, keeps, kept, keeping, obtain
  also    obtains, obtained, obtaining, acquire, acquires, acquired, acquiring, owns, owned, owning, borrow
  also    borrows, borrowed, borrowing, regain, regains, regained, regaining, achieve, achieves, achieved
  also    achieving, earn, earns, earned, earning, owner, owners, ownership, rental, rentals, acquisition
  also    acquisitions, achievement, achievements, taker, takers, keeper, keepers, belongings
  also    getting ready, got ready, get ready, got up, get up, getting up, gets up, got home, get home
  also    getting home, lost sight, losing sight, lose sight, lost track, got to see, get to see, takes up
  also    take up, taking up, took up
  means   words of getting, taking and keeping

ordinary giving
  also    give, gave, given, put, puts, putting, let, letting, bring, brings, brought, bringing, lend, lends
  also    lending, offer, offers, offered, offering, provide, provides, provided, providing, supply, supplies
  also    supplied, supplying, contribute, contributes, contributed, contributing, donate, donates, donated
  also    donating, distribute, distributes, distributed, distributing, gift, gifts, donation, donations
  also    contribution, contributions, contributor, contributors, supplier, suppliers, provider, providers
  also    donor, donors, giver, givers, generous, generously, generosity, provision, provisional
  also    gave me, gives me, give me, giving me, brought home, bring home
  means   words of giving, letting and putting

ordinary going
  also    go, goes, went, gone, come, comes, came, coming, travel, travels, travelled, traveled, travelling
  also    traveling, journey, journeys, journeyed, journeying, visit, visits, visited, visiting, commute
  also    commutes, commuted, commuting, proceed, proceeds, proceeded, proceeding, venture, ventures, ventured
  also    venturing, traveller, travellers, traveler, travelers, voyage, voyages, expedition, expeditions
  also    pilgrimage, pilgrimages, visitor, visitors, commuter, commuters, destination, destinations
  also    en route, on the way, on my way, on our way, by the way, along the way, head home, headed home
  also    heading home, headed out, heading out, headed back, heading back
  means   words of going about, of anybody

ordinary happening
  also    happen, happens, happened, occur, occurs, occurred, occurring, exist, exists, existed, existing
  also    involve, involves, involved, involving, require, requires, required, requiring, depend, depends
  also    depended, depending, belong, belongs, belonged, belonging, cause, causes, caused, causing, allow
  also    allows, allowed, allowing, affect, affects, affected, affecting, event, events, occurrence
  also    occurrences, incident, incidents, accident, accidents, occasion, occasions, happenings, existence
  also    situation, situations, circumstance, circumstances, occasioned, eventful, uneventful
  also    took place, taking place, all of a sudden
  means   words of things happening and being so

ordinary health
  also    doctor, doctors, nurse, nurses, dentist, dentists, hospital, hospitals, medicine, medicines, illness
  also    illnesses, disease, diseases, headache, headaches, appointment, appointments, allergy, allergies
  also    symptom, symptoms, patients, treatment, treatments, pharmacist, pharmacists, infection, infections
  also    vaccine, vaccines, painkiller, painkillers, toothache, toothaches, backache, backaches, healthy
  also    healthier, healthily, unhealthy, medical, medically, unwell, sickness, influenza, covid, pandemic
  also    lockdown, lockdowns, allergic, asthma, surgery, recovery, dizzy, vaccinated
  also    hay fever, good health
  means   health of the watcher

ordinary hearing
  also    hear, hears, heard, listen, listens, listened, listening, overhear, overhears, overheard
  also    overhearing, listener, listeners, earshot
  also    out of earshot, within earshot
  means   words of hearing, and nothing of what the bird said

ordinary hello
  also    greeting, greetings, farewell, farewells, welcome, welcomes, hi, hey, hiya, howdy, goodbye, bye
  also    welcomed, welcoming, regards, sincerely, congratulations, congrats, congratulate, congratulated
  also    g'day
  also    hi all, hi there, hi everyone, hello all, hello there, hello everyone, hey there, hey all
  also    hey everyone, dear all, good morning, good afternoon, good evening, good night, good day
  also    best wishes, best regards, kind regards, many thanks, warm regards, warm wishes, all the best
  also    see you, see you soon, take care, nice to meet you, long time lurker, first time poster
  means   words of greeting and of farewell

ordinary helping
  also    help, helps, helped, assist, assists, assisted, assisting, guide, guides, guided, guiding, encourage
  also    encourages, encouraged, encouraging, teach, teaches, taught, teaching, care, cares, cared, caring
  also    cooperate, cooperates, cooperated, cooperating, rely, relies, relied, relying, trust, trusts
  also    trusted, accompany, accompanies, accompanied, accompanying, helper, helpers, assistance, assistant
  also    assistants, guidance, guidebook, guidebooks, encouragement, tutor, tutors, mentor, mentors, advice
  also    adviser, advisers, advisor, advisors, carer, carers, cooperation, helpful, helpfully, unhelpful
  also    helpless, helpline, advised, advisable, inadvisable, careful, carefully, careless, carelessly
  also    supportive, reliable, reliably, unreliable, trustworthy
  also    help me, helped me, please help, thanks for your help, any help appreciated
  means   words of helping

ordinary here
  also    place, places, location, locations, address, addresses, postcode, postcodes, zipcode, zipcodes
  also    district, districts, county, counties, country, countries, parish, parishes, province, provinces
  also    nation, nations, continent, continents, locality, localities, whereabouts, site, sites, landmark
  also    landmarks, roundabout, roundabouts, avenue, avenues, intersection, intersections, crossroad
  also    crossroads, roadwork, roadworks, countryman, somewhere, someplace, nearby, abroad, overseas, local
  also    locally, locals, worldwide, world, earthbound, international, internationally, national, nationally
  also    nationwide, countrywide, map, maps, mapped, mapping, north, south, east, west, northwards
  also    southwards, eastwards, westwards, northeast, northwest, southeast, southwest, uk, usa, britain
  also    british, england, english, scotland, scottish, wales, welsh, ireland, irish, europe, geographically
  also    geographical, geography
  also    right here, right there, over here, over there, in here, in there, up here, up there, down here
  also    down there, out there, out here, down the road, up the road, along the road, down the street
  also    up the street, main road, main street, middle of nowhere, in the middle of nowhere, side street
  also    new to the area, in my area, in our area, my area, our area, local area, around here, near here
  also    near my house, near my home, near our house, near me, near us, where i live, where we live, i live
  also    we live, close to home, close to my house, near the house, near home, by the house, by the road
  also    part of the country, part of the world, part of town, top of the road, bottom of the road
  also    end of the road, end of my road, end of the street, end of our road, north end, south end, east end
  also    west end, north side, south side, east side, west side, other side of the road, across the road
  also    across the street
  means   where, in general, with no habitat

ordinary holidays
  also    birthday, birthdays, anniversary, anniversaries, wedding, weddings, funeral, funerals, christmas
  also    xmas, easter, halloween, thanksgiving, hanukkah, diwali, ramadan, valentine's, hogmanay, festive
  also    midweek, solstice, equinox
  also    new year's, mothers' day, christmas day, christmas eve, christmas tree lights, boxing day
  also    bank holiday, bank holidays, black friday, good friday, new year, new years, new year's day
  also    new year's eve, new years day, new years eve, public holiday, labor day, memorial day
  also    independence day, mother's day, father's day, half term, summer holiday, summer holidays
  also    winter holiday, spring break, school holidays
  means   feasts and holidays of the year

ordinary home
  also    bungalow, bungalows, apartment, apartments, kitchen, kitchens, bedroom, bedrooms, bathroom
  also    bathrooms, hallway, hallways, doorway, doorways, stairway, stairways, staircase, staircases, attic
  also    attics, household, households, fireplace, fireplaces, window, windows, windowpane, windowpanes, door
  also    doors, curtain, curtains, room, rooms, hotel, hotels, motel, motels, hostel, hostels, guesthouse
  also    guesthouses, homes, indoors, upstairs, downstairs, outdoors, outdoor, indoor, homeowner, homeowners
  also    houseplant, stairs, residential
  also    living room, dining room, sitting room, at home, my home, our home, outside my window
  also    outside our window, outside the window, outside my house, outside our house, outside the house
  also    outside my door, outside the door, outside my kitchen window, outside the kitchen window, front door
  also    front doors, front window, front room, front porch, front of the house, front of my house
  also    front of our house, side of the house, side of my house, top floor, bottom floor, upper floor
  also    lower floor, ground floor, head of the stairs, light bulb, light switch, house sitting, home town
  also    home time, next door
  means   the home and its rooms

ordinary hoping
  also    hope, hopes, hoped, wish, wishes, wished, wishing, want, wants, wanted, wanting, need, needs, needed
  also    needing, expect, expects, expected, expecting, intend, intends, intended, intending, plan, plans
  also    planned, planning, await, awaits, awaited, awaiting, desire, desires, desired, desiring, prefer
  also    prefers, preferred, preferring, crave, craves, craved, craving, yearn, yearns, yearned, yearning
  also    anticipate, anticipates, anticipated, anticipating, expectation, expectations, intention, intentions
  also    preference, preferences, anticipation, anticipations, hopeful, hopefully, unexpected, unexpectedly
  also    expectant, planner, preferable, preferably, necessary, necessarily, unnecessary, necessity, wishful
  also    intent, intentional, intentionally, unintentionally
  means   words of hoping, wanting and needing

ordinary hours
  also    hour, day, days, week, weeks, weekend, weekends, month, year, years, decade, decades, fortnight
  also    fortnights, morning, mornings, afternoon, afternoons, evening, evenings, nights, lunchtime
  also    lunchtimes, teatime, teatimes, bedtime, bedtimes, dinnertime, mealtime, mealtimes, weeknight
  also    weeknights, timestamp, timestamps, date, dates, lifetime, lifetimes, semester, semesters, seconds
  also    time, timed, timing, timings, o'clock, pm, noon, midday, daybreak, sunrise, sunset, centuries
  also    century, dated, dating, undated, gmt, bst, utc, hrs, mins, yr, yrs, today's, yesterday's, tomorrow's
  also    day's, week's, year's, month's, season, seasons, seasonal, seasonally
  also    mid morning, mid afternoon
  means   the clock and its parts

ordinary i-walked
  also    i was walking, we were walking, we walked, went walking, go walking, going walking, out walking
  also    went for a walk, going for a walk, go for a walk, on a walk, on my walk, on our walk, my walk
  also    our walk, morning walk, evening walk, afternoon walk, daily walk, long walk, short walk, sunday walk
  also    walk home, walked home, walking home, walk to work, walked to work, walking to work, walking the dog
  also    walked the dog, walk the dog, walking my dog, walked my dog, walking our dog, walking dogs, dog walk
  also    dog walks, dog walker, i was running, i was out running, went running, out running, went for a run
  also    on my run, on a run, i ran, we ran, i was sitting, we were sitting, i sat, we sat, i stood, we stood
  also    i was standing, we were standing, i was resting, i moved, we moved, i turned, we turned, i jumped
  also    i dropped, i called, we called, i followed, we followed, i climbed, we climbed, i was climbing
  also    i was eating, we were eating, i ate, we ate, while eating, i was feeding, i feed, we feed
  also    i was fishing, went fishing, gone fishing, out fishing, i was swimming, went swimming, i was playing
  also    kids playing, children playing, i left, we left, i leave, we leave, i was leaving, as i left
  also    left home, left the house, leave the house, leaving the house, leaving home, leave home
  also    leaving work, left work, i started, we started, i began, we began, i ended up, we ended up, ended up
  also    i searched, we searched, searched for it, searched for, i searched online, searched online
  also    searching online, i tried to follow, i lay, lay in bed, lying in bed, i slept, we slept
  also    while i slept, i was sleeping, i was flying, i was hanging, hanging out the washing
  also    hang out the washing, hanging the washing, i held, i was holding, i stopped, we stopped
  also    stopped to look, stopped to watch, i stop, we stop, i caught sight, caught sight, catch sight
  means   what the watcher did, in words that birds have too

ordinary ideas
  also    idea, opinion, opinions, fact, facts, reason, reasons, result, results, conclusion, conclusions
  also    theory, theories, concept, concepts, topic, topics, information, viewpoint, viewpoints, attention
  also    interest, interests, importance, difference, differences, evidence, proof, proofs, explanation
  also    explanations, experience, experiences, lesson, lessons, principle, principles, logic, consequence
  also    consequences, outcome, outcomes, implication, implications, perspective, perspectives, info
  also    interested, conclude, concluded, concludes, concluding, logical, logically, illogical, important
  also    importantly, unimportant, relevant, irrelevant, purposely, purposeful, deliberately, deliberate
  also    factually, experienced, inexperienced, opinionated, educational, informative, informational, sense
  also    sensible, sensibly, nonsense, truth, true, truthful, truthfully
  also    point of view, in my opinion, in my experience, in fact, as a matter of fact, in particular
  also    in theory, in other words, for example, for instance, for some reason, the reason, in case
  also    in any case, just in case, rule of thumb, worth noting, worth mentioning, side note, side issue
  also    top of my list, top of the list, high on my list, high hopes, high time, low expectations
  means   words of thought and information

ordinary identifying
  also    identify, identifies, identified, recognise, recognises, recognised, recognising, recognize
  also    recognizes, recognized, recognizing, distinguish, distinguishes, distinguished, distinguishing
  also    classify, classifies, classified, classifying, confirm, confirms, confirmed, confirming, verify
  also    verifies, verified, verifying, diagnose, diagnoses, diagnosed, diagnosing, clarify, clarifies
  also    clarified, clarifying, misidentify, misidentifies, misidentified, misidentifying, identification
  also    identifications, id, ids, identifier, identifiers, classification, classifications, confirmation
  also    confirmations, verification, verifications, misidentification, misidentifications, identifiable
  also    unidentifiable, unidentified, recognisable, recognizable, unrecognisable, unrecognizable
  also    recognition, distinguishable, unnamed, confirmable
  also    id please, id help, narrow it down, narrowed it down, narrowing it down, work out, worked out
  also    working out, figure out, figured out, figuring out
  means   words of naming the bird, which say nothing of it

ordinary immensely
  also    exceedingly, tremendously, enormously, utterly, greatly, downright, indeed, unduly, excessively
  also    insanely, seriously, genuinely, terrifically, jolly
  also    so much, so many, very much, too much, too many, quite a few, at least, at most, by far
  also    by all means, as much as i could, at all, after all, all in all, even though, even when, even if
  also    even after, even now, even then, if only, only just
  means   words of degree

ordinary knowing
  also    know, knows, knew, known, understand, understands, understood, understanding, learn, learns, learned
  also    learnt, learning, realise, realises, realised, realising, realize, realizes, realized, realizing
  also    comprehend, comprehends, comprehended, comprehending, knowledge, learner, learners, realisation
  also    realisations, realization, realizations, comprehension, knowingly, knowledgeable, aware, awareness
  also    unaware, familiar, unfamiliar, unfamiliarity, familiarity, informed, misunderstood, misunderstanding
  also    misunderstand, familiarise, familiarised
  also    well known, know of, knew of, as you know, let me know, let us know, lets me know, let you know
  also    love to know, like to know, want to know, good to know, got to know, get to know
  means   words of knowing, learning and understanding

ordinary liking
  also    love, loves, loved, loving, enjoy, enjoys, enjoyed, enjoying, adore, adores, adored, adoring, admire
  also    admires, admired, admiring, appreciate, appreciates, appreciated, appreciating, cherish, cherishes
  also    cherished, cherishing, treasure, treasures, treasured, treasuring, delight, delights, delighted
  also    delighting, please, pleases, pleased, pleasing, thrill, thrills, thrilled, thrilling, excite
  also    excites, exciting, amuse, amuses, amused, amusing, entertain, entertains, entertained, entertaining
  also    fascinate, fascinates, fascinated, fascinating, captivate, captivates, captivated, captivating
  also    charming, impress, impresses, impressed, impressing, amaze, amazes, amazed, amazing, astonish
  also    astonishes, astonished, astonishing, astound, astounds, astounded, astounding, surprise, surprises
  also    surprised, surprising, enjoyment, admiration, admirer, admirers, appreciation, pleasure, pleasures
  also    excitement, excitements, amusement, entertainment, entertainments, fascination, amazement
  also    astonishment, joy, joys, fun, favourite, favourites, favorite, favorites, excitedly, pleasurable
  also    enjoyable, enjoyably, thankful, grateful, gratitude, gratefully, happily, happy, happier, happiest
  also    glad, gladly, fond, fondly, fondness, enthralled, overjoyed, elated, ecstatic, smitten, unimpressed
  also    starstruck, gobsmacked
  also    made my day, makes my day, make my day, what a treat, such a treat, what a joy, over the moon
  means   words of liking and pleasure

ordinary luck
  also    chance, chances, opportunity, opportunities, coincidence, coincidences, fortune, fortunes, miracle
  also    miracles, bonus, bonuses, prize, prizes, winner, winners, award, awards, lottery, lotteries
  also    luckless, coincidentally, accidental, accidentally, unplanned, fluke, flukes, serendipity
  also    serendipitous, miraculous, miraculously, chanced, awarded
  also    by chance, by luck, by accident, lucky enough
  means   chance and fortune

ordinary meals
  also    meal, breakfast, breakfasts, lunch, lunches, dinner, dinners, supper, suppers, picnic, picnics
  also    brunch, brunches, dessert, desserts, recipe, recipes, restaurant, takeaway, takeaways, burger
  also    burgers, pizza, pizzas, curry, curries, vegetable, vegetables, teabag, teabags, beer, beers, lager
  also    lagers, pudding, puddings, cupcake, cupcakes, menu, menus, ingredient, ingredients, cookery, snack
  also    snacks, yoghurt, yoghurts, yogurt, yogurts, food, foods, tea, teas, pasta, soup, soups, bacon
  also    cheese, juice, tasty, tastier, delicious, yummy, cooking, cooked, alcohol, vegetarian, vegan
  also    foodstuff, groceries, grocery, cakes, cake, dining, salad, salads, barbecues, leftovers, appetite
  also    gourmet, crisps, popcorn
  also    morning coffee, my coffee, coffee break, having coffee, had coffee, over coffee, tea break
  also    black coffee, white coffee, black tea, green tea, white wine, red wine, blue cheese, orange juice
  also    olive oil, brown sauce, brown rice, white rice, fish and chips, ice cream, light lunch, light meal
  also    bite to eat, lunch break, eat breakfast, eating breakfast, ate breakfast, eat lunch, eating lunch
  also    ate lunch, eat dinner, eating dinner, ate dinner, having breakfast, having lunch, having dinner
  also    had breakfast, had lunch, had dinner
  means   food and drink of people

ordinary months
  also    january, february, march, april, june, july, august, september, october, november, december, jan
  also    feb, apr, jun, jul, aug, sep, sept, oct, nov, dec, january's, april's, june's, july's
  also    in may, early may, late may, mid may, last may, of may, this may, since may, next may, may day
  means   the months of the year, but for the one that is also a word of doubt

ordinary my-eyes
  also    beforehand
  also    my eye, our eyes, your eyes, your eye, my own eyes, own eyes, believe my eyes, rubbed my eyes
  also    eye contact, my head, our heads, my heads, over our heads, off the top of my head, in my head
  also    my hand, my hands, our hands, by hand, other hand, on the other hand, on the one hand, first hand
  also    my back, my neck, my face, my feet, my foot, on foot, my leg, my legs, my arm, my arms, my shoulder
  also    my shoulders, my chest, my mouth, my nose, my ear, my ears, our ears, my hair, my toes, my knee
  also    my knees, my side, my left, my right, our left, our right, my hat, my cap, my coat, my boots
  also    my shirt, my gloves, my scarf, my hood, my glasses, my throat, my heart, heart attack, sore throat
  also    stiff neck, face to face, my fingers, my skin, my stomach, my tummy
  means   the watcher's own body, not the bird's

ordinary myself
  also    i, me, my, we, us, ours, ourselves, you, your, yours, yourself, yourselves, oneself
  means   the watcher and the one addressed

ordinary outings
  also    trip, trips, outing, excursion, excursions, tour, tours, holiday, vacation, vacations, barbecue
  also    hike, hikes, adventure, adventures, pastime, pastimes, tournament, tournaments, concert, concerts
  also    festival, festivals, museum, museums, cinema, cinemas, movie, movies, hobbyist, hobbyists
  also    celebration, celebrations, camping, gaming, gamer, tennis, badminton, volleyball, basketball, yoga
  also    jogging, jogged, pilates, knitting, sewing, crocheting, bbq, barbecued, picnicking, hiked, hiking
  also    crossword, crosswords, sudoku, theatrical, sightseeing, backpacking, bingo, karaoke
  also    football match, football game, cricket match, round of golf, playing golf, playing football
  also    playing tennis, playing cricket, watching football, camp site, camp fire, school trip, field trip
  also    field trips, day trip, day trips, day out, days out, day off, days off, morning off, afternoon off
  also    week off, time off
  means   trips, holidays and pastimes

ordinary people
  also    person, persons, neighbour, neighbours, neighbor, neighbors, friend, friends, wife, wives, husband
  also    husbands, group, groups, stranger, strangers, guest, guests, chap, chaps, bloke, blokes, companion
  also    companions, partner, partners, girlfriend, girlfriends, boyfriend, boyfriends, colleague, colleagues
  also    team, teams, committee, committees, community, communities, member, members, club, clubs, leader
  also    leaders, audience, audiences, landlord, landlords, civilian, civilians, citizen, citizens, human
  also    humans, villager, villagers, townsfolk, passerby, roommate, roommates, housemate, housemates
  also    flatmate, flatmates, acquaintance, acquaintances, teammate, teammates, buddy, buddies, pensioner
  also    pensioners, resident, residents, newcomer, newcomers, everyone, everybody, someone, somebody, anyone
  also    anybody, folk, folks, men, man, woman, women, man's, woman's, people's, friend's, neighbour's
  also    neighbor's, wife's, husband's, person's, everyone's, someone's, somebody's, anyone's, passersby
  also    children, children's, kid, kids, kid's, public, mankind, humanity, humankind, neighbourly
  also    friendship, friendlier, unfriendly, membership, gentleman, gentlemen, townspeople, newlyweds
  also    group of us, two of us, three of us, four of us, five of us, both of us, all of us, some of us
  also    one of us, few of us, most of us, friend of mine, all the family, whole family, my family
  also    our family, old friend, old friends, old man, old lady, young man, young men, young woman
  also    young people, young boy, young girl, young lady, little boy, little girl, my little one, my boys
  also    my girls, my boy, my girl, the lady, the ladies
  means   people and who saw it

ordinary personally
  also    honestly, frankly, naturally, thankfully, ironically, funnily, amusingly, alas, understandably
  also    admittedly
  also    of course, to be honest, to be fair, to be precise, to tell the truth, truth be told
  also    believe it or not, for what it is worth, for what it's worth, for your information
  also    for the life of me, come to think of it, sad to say, happy to say, sorry to say, glad to say
  also    pleased to say, last but not least, long story short, to cut a long story short, in a nutshell
  also    in brief, at any rate
  means   words in which a speaker comments on the telling

ordinary pets
  also    dog, dogs, cat, cats, puppy, puppies, kitten, kittens, hamster, hamsters, gerbil, gerbils, labrador
  also    labradors, spaniel, spaniels, terrier, terriers, collie, collies, dachshund, dachshunds, pet, animal
  also    animals, doggy, doggie, dog's, dogs', cat's, cats', kitty, animal's, wildlife, mammal, mammals
  also    squirrel, squirrels, veterinary
  also    black dog, white dog, brown dog, black cat, white cat, grey cat, ginger cat, my dog, our dog, my cat
  also    our cat, pet dog, pet cat, guinea pig, guinea pigs, horse riding
  means   beasts about the house

ordinary pictures
  also    photos, photograph, photographs, picture, image, images, videos, pic, pics, camera, cameras, sketch
  also    sketches, drawing, drawings, illustration, illustrations, artwork, artworks, artist, artists
  also    gallery, galleries, exhibition, exhibitions, snapshot, snapshots, album, albums, slideshow
  also    slideshows, selfie, selfies, thumbnail, thumbnails, caption, captions, megapixel, megapixels
  also    photography, photographing, photographic, pictured, drew, draw, draws, illustrated, artistic
  also    videoing, autofocus, uncropped, photogenic
  also    take a photo, take a picture, taking a photo, taking a picture, taking photos, taking pictures
  also    took pictures, took some photos, took some pictures, snapped a photo, snapped a picture
  also    snapped a shot, managed a shot, photos attached, picture attached, pictures attached, see photo
  also    see photos, see attached, see picture, see pictures, blurry photos, blurred photos, blurry picture
  also    blurry pictures, blurry pic, poor photos, poor picture, poor quality, bad picture, dark photo
  also    dark photos, dark picture, good photo, good photos, good picture, black and white photo
  also    black and white photos, black and white picture, colour photo, color photo, colour photos
  also    color photos, black and white film, camera shot
  means   pictures taken, and what is said of them

ordinary problems
  also    problem, trouble, troubles, issue, issues, mistake, mistakes, error, errors, difficulty
  also    difficulties, challenge, challenges, danger, dangers, risk, risks, crisis, crises, emergency
  also    emergencies, obstacle, obstacles, dilemma, dilemmas, blunder, blunders, hassle, hassles, mishap
  also    mishaps, disaster, disasters, difficult, tricky, trickier, trickiest, easy, easily, easier, easiest
  also    challenging, challenged, dangerous, dangerously, risky, erroneous, erroneously, wrong, wrongly
  also    problematic, complicated, complication, complications, troubling, troubled, disastrous, hopeless
  also    hopelessly
  also    good luck, bad luck, hard work, hard luck, hard time, hard day, hard to believe, hard to describe
  also    tough time
  means   trouble and its like

ordinary recording
  also    record, records, recorded, report, reports, reported, reporting, document, documents, documented
  also    documenting, logging, register, registers, registered, registering, submit, submits, submitted
  also    submitting, archive, archives, archived, archiving, catalogue, catalogues, catalogued, cataloguing
  also    catalog, catalogs, cataloged, summarise, summarises, summarised, summarising, summarize, summarizes
  also    summarized, summarizing, recorder, recorders, summary, summaries, checklist, checklists, logbook
  also    logbooks, survey, surveys, spreadsheet, spreadsheets, census, censuses, transect, transects
  also    registration, registrations, submission, submissions, noted, documentation, surveying, surveyed
  also    surveyor, surveyors, recordable
  also    for the record, on record, made a note, make a note, making a note, took notes, taking notes
  also    take notes, my notes, field notes, life list, year list, county list, patch list, garden list
  means   words of setting a sighting down

ordinary relatives
  also    grandmother, grandmothers, grandfather, grandfathers, grandma, grandmas, grandpa, grandpas, grandad
  also    grandads, granddad, granddads, granny, grannies, uncle, uncles, aunt, aunts, auntie, aunties, sister
  also    sisters, brother, brothers, daughter, daughters, cousin, cousins, nephew, nephews, niece, nieces
  also    spouse, spouses, sibling, siblings, grandson, grandsons, granddaughter, granddaughters, stepmothers
  also    stepfather, stepfathers, ancestor, ancestors, grandparent, grandparents, grandchildren, grandchild
  also    sister's, brother's, daughter's, grandma's, grandad's, uncle's, aunt's, cousin's, ancestry
  also    stepchildren, married, marry, marrying, marriage, marriages, divorced
  also    my mum, my mom, my dad, my mother, my father, my parents, my son, my sons, our son, our sons
  also    my mum and dad, my mother and father, mother in law, father in law, sister in law, brother in law
  also    son in law, daughter in law, my baby, our baby, my partner, my family's, my mum's, my mom's
  also    my dad's, my mother's, my father's, my parents', my son's, step mother
  means   kin of the watcher

ordinary remembering
  also    remember, remembers, remembered, forget, forgets, forgot, forgotten, forgetting, memorise, memorises
  also    memorised, memorising, memorize, memorizes, memorized, memorizing, memory, memories, reminder
  also    reminders, reminiscence, reminiscences, forgetful, forgettable, unforgettable, memorable, memorably
  also    remembrance
  also    in memory
  means   words of memory

ordinary restaurants
  also    school, schools, college, colleges, university, universities, library, libraries, clinic, clinics
  also    cafe, cafes, pub, pubs, office, offices, theatre, theatres, theater, theaters, gym, gyms
  also    kindergarten, kindergartens, classroom, classrooms, courthouse, courthouses, workplace
  also    town hall, bus stop, bus station, post box, petrol station, gas station, coffee shop, shop window
  also    book shop, head office, head teacher, head gardener, head ranger, head warden, head keeper
  means   buildings of everyday life that are no habitat of note

ordinary saying
  also    say, says, said, tell, tells, told, telling, talk, talks, talked, talking, speak, speaks, spoke
  also    spoken, speaking, mention, mentions, mentioned, mentioning, explain, explains, explained, explaining
  also    discuss, discusses, discussed, discussing, argue, argues, argued, arguing, announce, announces
  also    announced, announcing, describe, describes, described, describing, declare, declares, declared
  also    declaring, insist, insists, insisted, insisting, admit, admits, admitted, admitting, agree, agrees
  also    agreed, agreeing, disagree, disagrees, disagreed, disagreeing, promise, promises, promised
  also    promising, assure, assures, assured, assuring, joke, jokes, joked, joking, remark, remarks, remarked
  also    remarking, gossip, gossips, gossiped, gossiping, inform, informs, informing, advise, advises
  also    advising, recommend, recommends, recommended, recommending, express, expresses, expressed
  also    expressing, conversation, conversations, discussion, discussions, argument, arguments, announcement
  also    announcements, statement, statements, speech, speeches, speaker, speakers, agreement, agreements
  also    disagreement, disagreements, comment, comments, recommendation, recommendations, interview
  also    interviews, debate, debates, rumour, rumours, rumor, rumors, dialogue, dialogues, description
  also    descriptions, aforementioned, unmentioned, indescribable, jokingly, spokesperson, storyteller
  also    storytelling
  also    speaking of, needless to say, to say the least, that is to say, told me, tells me, tell me
  also    telling me, said it, said that, says that, saying that, talking about, talked about, phone call
  also    phone calls, video call, called my wife, called my husband, called my friend, called my neighbour
  also    called my neighbor, called me over, call me, called me, gave me a call, give me a call
  means   words of saying and telling

ordinary schooling
  also    exam, exams, student, students, professor, professors, lecture, lectures, lecturer, lecturers
  also    classmate, classmates, essay, essays, textbook, textbooks, assignment, assignments, education
  also    worksheet, worksheets, certificate, certificates, examination, examinations, tutorial, tutorials
  also    homework, studying, studied, studies, study, educated, educate, educating, academic, researching
  also    researched, researches, research, mathematics, maths, math, physics, chemistry, history, historical
  also    historically, historic, graduation
  also    high school, middle school, primary school, secondary school
  means   school and study

ordinary seeing
  also    see, sees, saw, seen, watch, watches, watched, watching, observe, observes, observed, observing
  also    notice, notices, noticed, noticing, witness, witnesses, witnessed, witnessing, film, films, filming
  also    observation, observations, sighting, sightings, onlooker, onlookers, viewer, viewers, observant
  also    eyewitness, eyewitnesses
  also    looked up, look up, looking up, looked out, looking out, looked over, looked at, looking at, look at
  also    look out, first saw, first seen, last seen, first noticed, caught my eye, caught our eye
  also    catch the eye, catches the eye, caught the eye, keep an eye, keeping an eye, kept an eye
  also    have a look, had a look, having a look, took a look, take a look, taking a look, laid eyes on
  also    set eyes on, looking for it, look for it
  means   words of seeing and watching

ordinary sending
  also    send, sends, sent, receive, receives, received, receiving, share, shares, shared, sharing, deliver
  also    delivers, delivered, delivering, uploaded, uploading, downloaded, downloading, text, texts, texted
  also    texting, phoned, phoning, message, messages, messaged, messaging, contact, contacts, contacted
  also    contacting, telephoned, telephoning, resend, resends, resent, resending, notify, notifies, notified
  also    notifying, attachment, attachments, delivery, deliveries, parcel, parcels, letterbox, letterboxes
  also    mailbox, mailboxes, envelope, envelopes, sender, senders, recipient, recipients, notification
  also    notifications, posting, postings, emailing, emailed, contactable, postal, postman, postwoman
  also    post office, sent in, sent to, sent me, send me, sends me, in touch, get in touch, got in touch
  also    keep in touch
  means   words of sending and sharing

ordinary society
  also    government, governments, council, councils, election, elections, politician, politicians, president
  also    presidents, minister, ministers, lawyer, lawyers, policeman, policemen, charity, charities
  also    societies, culture, cultures, religion, religions, economy, economies, policy, policies, campaign
  also    campaigns, petition, petitions, newsreader, newsreaders, actor, actors, actress, actresses
  also    journalist, journalists, tradition, traditions, custom, customs, histories, generation, generations
  also    politics, political, religious, cultural, economic, socially, police, military, legal, legally
  also    illegal, illegally, official, officially, officials, unofficial, unofficially, charitable
  also    traditional, traditionally, news, newsworthy, famous, popularity, popular, unpopular, civil
  also    breaking news, news of the day
  means   matters of the world at large

ordinary sometimes
  also    occasionally, frequently, frequent, constantly, constant, continually, repeatedly, habitually
  also    routinely, routine, routines, ordinarily, normally, customarily, customary, invariably, sporadically
  also    periodically, secondly, thirdly, firstly, lastly, ensuing, subsequently, subsequent, successively
  also    persistently, persistent, consecutive, consecutively
  also    now and then, now and again, every now and then, every now and again, every so often
  also    every once in a while, once in a while, once in a blue moon, once or twice, once upon a time
  also    again and again, time and again, time after time, over and over, over and over again, day after day
  also    year after year, most of the time, much of the time, half the time, as usual, as always, as ever
  means   how often, and in what order

ordinary staying
  also    stay, stays, stayed, stopped, reside, resides, resided, residing, waited, waits, waiting, remained
  also    lingered, linger, lingers, lingering, loitered, loitering
  also    hung around, hanging around, hang around, hangs around, hung about, hanging about, stuck around
  also    stayed around, stay around, stays around
  means   words of stopping and staying, of anybody

ordinary strange
  also    strangely, strangest, strangeness, weird, weirdly, weirder, weirdest, weirdness, odd, oddly, oddest
  also    oddity, oddities, oddball, peculiar, peculiarly, bizarre, bizarrely, unusual, interesting
  also    interestingly, intriguing, intriguingly, exotic, eccentric, quirky, mysterious, unique, uniquely
  also    uniqueness, distinctiveness, notable, notably, noteworthy, startling, startlingly, unbelievable
  also    unbelievably, rare, rarer, rarest, rarity, rarities, extinct, endangered, extraordinary, funny
  also    funnier, funniest, comical, comically, hilarious, hilariously, silly, goofy, crazy, wacky
  also    ridiculous, ridiculously, absurd, absurdly, ludicrous, ludicrously, insane, standout, prehistoric
  also    otherworldly, uncanny, eerily, spooky, magical, magically
  also    attention grabbing, strange looking, odd looking, weird looking, funny looking, unusual looking
  also    interesting looking, exotic looking, silly looking, goofy looking, crazy looking, out of place
  also    out of the ordinary, out of the blue
  means   words of oddity and note that say nothing of a mark

ordinary thanks
  also    thank, thanked, thanking, apologise, apologises, apologised, apologising, apologize, apologizes
  also    apologized, apologizing, forgive, forgives, forgave, forgiven, forgiving, apology, apologies, pardon
  also    pardons, courtesy, courtesies, cheers, sorry, apologetic, polite, politely, impolite, excuse
  also    thank you, thank you so much, thank you very much, thanks again, thanks a lot, thanks a million
  also    thanks so much, thanks in advance, thanks all, excuse me, pardon me, my apologies, much appreciated
  also    greatly appreciated, highly appreciated
  means   words of thanks, asking pardon and politeness

ordinary things
  also    thing, kinds, sorts, types, name, names, species, subspecies, characteristic, characteristics
  also    attribute, attributes, character, characters, trait, traits, aspect, aspects, item, items, object
  also    objects, example, examples, instance, instances, version, versions, category, categories, factor
  also    factors, subject, subjects, list, lists, title, titles, label, labels, nickname, nicknames
  also    definition, definitions, meaning, meanings, specialty, specialties, matter, matters, anatomy
  also    feature, stuff, something, anything, appearances, thingy, criteria, named, naming, renamed, titled
  also    labelled, labeled, labelling, labeling, topical, special, specially, specific, specifically
  also    particular, generic, listed, listing, listings, miscellaneous, factual, etcetera, etc, eg, ie
  also    namely
  also    what kind, what sort, what type, what species, which species, looking thing, distinguishing feature
  also    distinguishing features, most notable feature, best feature, main feature, main features
  also    key feature, key features, field marks, field mark, id features, notable features, physical features
  also    other features, its features
  means   general words for what is described

ordinary today
  also    moment, moments, instant, instants, era, eras, yesterday, tomorrow, tonight, nowadays, soon, sooner
  also    later, earlier, earliest, early, late, lately, recent, recently, previous, previously, already, ago
  also    ever, forever, once, anymore, anytime, weekly, monthly, yearly, annual, annually, daily, nightly
  also    hourly, fortnightly, future, current, currently, presently, temporarily, temporary, suddenly, sudden
  also    immediately, immediate, instantly, instantaneously, eventually, finally, last, afterwards, afterward
  also    thereafter, formerly, overnight, timely, overdue, belated, belatedly, initially, originally
  also    last week, last month, last year, last night, last evening, last time, last day, last weekend
  also    last winter, last summer, last autumn, last fall, last spring, this week, this month, this year
  also    this morning, this afternoon, this evening, this time, this weekend, this winter, this summer
  also    this autumn, this fall, this spring, next week, next month, next year, next time, next day
  also    next morning, next weekend, next summer, next winter, next spring, every winter, every summer
  also    every spring, every autumn, every day, every year, every week, every morning, every evening
  also    every night, every time, every month, each day, each morning, each evening, each year, each time
  also    each week, each night, one day, one time, one morning, one evening, one afternoon, one night
  also    two days, three days, few days, few weeks, few months, few years, few hours, two weeks, three weeks
  also    two years, all day, all evening, all night, all week, all weekend, all winter, all summer, all year
  also    all year round, year round, all the time, all the while, whole time, whole day, whole morning
  also    whole week, the whole time, most days, most mornings, some days, some time, some time ago
  also    some years ago, other day, the other day, long ago, long time, long time ago, a long time, for long
  also    before long, all day long, at long last, at last, at the time, at that time, at this time
  also    at one time, at the same time, same time, same day, same morning, at first, at once, for once
  also    first time, second time, third time, first thing, first of all, last thing, right now, right away
  also    right then, straight away, just now, until now, up until now, so far, from time to time, in time
  also    on time, over time, time being, for now, a while, a while ago, in a while, little while, short time
  also    short while, a short while ago, short notice, once again, once more, in the meantime, in the end
  also    at the end of the day, end of the day, end of day, end of the week, end of the month
  also    end of the year, middle of the night, middle of the day, middle of the week, middle of the month
  also    middle of the year, years ago, days ago, weeks ago, months ago, hours ago, minutes ago, a minute ago
  also    old days, good old days, early hours, early morning, early evening, early afternoon, late morning
  also    late afternoon, late evening, late night, high summer, half hour, half past, half day, half time
  also    quarter past, a quarter of an hour, time of day, time of year, time of the year, day time
  also    night time, day to day, up to date
  means   words of time without a clock

ordinary tools
  also    lawnmower, lawnmowers, mower, mowers, hosepipe, wheelbarrow, wheelbarrows, spanner, spanners, wrench
  also    wrenches, screwdriver, screwdrivers, toolboxes, torch, torches, flashlight, flashlights, umbrella
  also    umbrellas, tripod, tripods, headphone, headphones, earphone, earphones, microphone, microphones
  also    gadget, gadgets, equipment, device, devices, engine, engines, motor, motors, compass, compasses
  also    toolkit, toolkits, stepladder, stepladders, gear, mowing, mowed, hoovering, vacuuming, vacuumed
  also    weeding, gardening, pruning, ironing, equipped, portable, electrical, electricity, handy
  also    watering can, garden hose, garden tools, mow the lawn, mowing the lawn, mowed the lawn
  also    cut the grass, cutting the grass, cutting the hedge, cut the hedge, raking leaves
  also    digging the garden, washing windows, watering the garden, watering plants, watering the plants
  also    walking boots, walking stick, walking poles, tool box
  means   tools, gear and chores

ordinary trying
  also    try, tries, tried, attempt, attempts, attempted, attempting, manage, manages, managed, managing
  also    decide, decides, decided, deciding, choose, chooses, chose, chosen, choosing, select, selects
  also    selected, selecting, succeed, succeeds, succeeded, succeeding, struggle, struggles, struggled
  also    struggling, endeavour, endeavours, endeavoured, endeavouring, endeavor, endeavors, endeavored
  also    endeavoring, cope, copes, coped, coping, practise, practises, practised, practising, practice
  also    practices, practiced, practicing, decision, decisions, choice, choices, selection, selections
  also    effort, efforts, success, successes, failure, failures, decisive, indecisive, successful
  also    successfully, unsuccessful, unsuccessfully, failed, failing, optional, option, options, effortless
  also    effortlessly, willing, unwilling, willingly, willingness, reluctant, reluctantly, reluctance
  also    made up my mind, make up my mind, do my best, did my best, tried my best
  means   words of trying, managing and choosing

ordinary vehicles
  also    car, cars, van, vans, lorry, lorries, truck, trucks, bus, buses, minibus, minibuses, taxi, taxis
  also    bicycle, bicycles, bike, bikes, motorbike, motorbikes, motorcycle, motorcycles, scooter, scooters
  also    ambulance, ambulances, campervan, campervans, caravan, caravans, motorhome, motorhomes, tram, trams
  also    helicopter, helicopters, subway, subways, vehicle, windscreen, windscreens, windshield, windshields
  also    dashboard, dashboards, headlight, seatbelt, seatbelts, luggage, airline, airlines, timetable
  also    timetables, minivan, minivans, tyre, tyres, traffic, driving, drove, drives, driven, drive
  also    driveable, cycling, cycled, parking, petrol, diesel, fuel, mileage, speeding, overtaking, overtook
  also    baggage, transport, transportation, biking, biked
  also    side mirror, head lights, red car, white car, black car, blue car, green car, silver car, grey car
  also    gray car, yellow car, brown car, white van, red van, black van, blue van, red bus, yellow bus
  also    school bus, red truck, white truck, black truck, blue truck, pickup truck, red light, flat tire
  also    bike ride, boat trip, boat trips, boat ride, train journey, road trip, test drive, drive home
  also    drove home, driving home
  means   vehicles and driving

ordinary weather
  also    storm, storms, thunderstorm, thunderstorms, gales, breeze, breezes, raindrop, raindrops, forecast
  also    forecasts, temperature, temperatures, climate, climates, blizzards, heatwave, heatwaves, downpour
  also    downpours, rainstorm, rainstorms, snowstorms, barometer, barometers, thermometer, thermometers
  also    forecaster, forecasters, cloudburst, cloudbursts, rainfall, rained, rainy, rains, rainier, drizzled
  also    drizzling, drizzly, thunder, thundery, hailstones, sleet, sleeting, breezy, breezier, windier
  also    windiest, windless, humid, humidity, chilly, chillier, freezing, celsius, fahrenheit, degrees, muggy
  also    sultry, wintertime, summertime, weatherproof, climatic
  also    light drizzle, light wind, light winds, light breeze, light snow, light shower, light showers
  also    heavy shower, heavy showers, heavy snow, cold wind, cold winds, warm wind, high wind, high winds
  also    north wind, south wind, east wind, west wind, wind speed, wind chill, cold day, cold morning
  also    cold night, cold weather, cold spell, warm day, warm morning, warm weather, hot day, hot weather
  also    wet day, wet morning, wet weather, clear day, clear night, clear morning, clear sky, clear skies
  also    blue sky, blue skies, grey sky, grey skies, gray sky, gray skies, grey morning, dull morning
  also    bright day, bright morning, bright spell, fair weather, mild day, mild weather, mild winter
  also    sunny day, sunny morning, sunny spell, sunny spells, white clouds, black clouds, dark clouds
  also    black ice, white frost, light frost, hard frost
  means   the weather, where it says nothing of the light

ordinary weekdays
  also    monday, mondays, tuesday, tuesdays, wednesday, wednesdays, thursday, thursdays, friday, fridays
  also    saturday, saturdays, sunday, sundays, weekday, mon, tue, tues, wed, weds, thu, thur, thurs, fri
  also    monday's, tuesday's, wednesday's, thursday's, friday's, saturday's, sunday's
  also    on sat, on sun, sat morning, sun morning, sat afternoon, sun afternoon, sat and sun
  means   the days of the week

ordinary wonderful
  also    beautifully, beauty, beauties, lovelier, loveliest, gorgeous, gorgeously, stunning, stunningly
  also    wonderfully, marvellous, marvelous, marvellously, marvelously, magnificent, magnificently, superb
  also    superbly, fabulous, fabulously, fantastic, fantastically, amazingly, awesome, incredible
  also    spectacular, spectacularly, majestic, majestically, regal, exquisite, exquisitely, delightful
  also    delightfully, adorable, adorably, cute, cuter, cutest, cutie, cuties, cuteness, charmingly
  also    enchanting, enchantingly, attractive, attractively, attractiveness, prettier, prettiest, prettily
  also    handsome, handsomely, nicer, nicest, nicely, good, goodness, best, excellent, excellently
  also    perfection, impressive, impressively, glorious, gloriously, breathtaking, breathtakingly
  also    mesmerizing, mesmerising, fascinatingly, remarkable, extraordinarily, exceptional, phenomenal
  also    likeable, likable, lovable, loveable, endearing, heartwarming, pleasant, excitingly, dreamy
  also    legendary, fancy, fancier, attract, attracted, attracts, attracting, attraction, attractions
  also    appealing, appealingly
  also    good looking, nice looking, great looking, handsome looking, what a beauty
  means   words of praise that say nothing of a mark

ordinary wondering
  also    wonder, wonders, wondered, puzzle, puzzles, puzzled, puzzling, imagine, imagines, imagined
  also    imagining, consider, considers, considered, considering, ponder, ponders, pondered, pondering
  also    confuse, confuses, confused, confusing, baffle, baffles, baffled, baffling, perplex, perplexes
  also    perplexed, perplexing, mystify, mystifies, mystified, mystifying, bewilder, bewilders, bewildered
  also    bewildering, intrigue, intrigues, intrigued, puzzlement, confusion, mystery, mysteries, bewilderment
  also    thought, thoughts, rethought, wonderment, flummoxed, clueless, mysteriously
  also    second thoughts, food for thought
  means   words of wondering and puzzling

ordinary working
  also    work, works, worked, employ, employs, employed, employing, volunteer, volunteers, volunteered
  also    volunteering, job, jobs, worker, workers, career, careers, employee, employees, employer, employers
  also    employment, boss, bosses, manager, managers, coworker, coworkers, workshop, workshops, workplaces
  also    business, businesses, company, companies, meeting, meetings, deadline, deadlines, contract
  also    contracts, profession, professions, professional, professionals, workload, workloads, customer
  also    customers, industry, industries, warehouses, department, departments, agency, agencies, director
  also    directors, secretary, secretaries, supervisor, supervisors, staff, workday, workdays, professionally
  also    voluntary, voluntarily, unemployed, workmate, workmates
  also    self employed, work related, part time, full time, at work, to work, from work, off work, after work
  also    before work
  means   words of work and trade

ordinary writing
  also    wrote, written, email, emails, publish, publishes, published, publishing, edit, edits, edited
  also    editing, translate, translates, translated, translating, quote, quotes, quoted, quoting, copy
  also    copies, copied, copying, delete, deletes, deleted, deleting, rewrite, rewrites, rewrote, rewritten
  also    rewriting, jot, jots, jotted, jotting, transcribe, transcribes, transcribed, transcribing, writer
  also    writers, author, authors, reader, readers, editor, editors, publication, publications, translation
  also    translations, quotation, quotations, letter, letters, article, articles, paragraph, paragraphs
  also    sentence, sentences, word, words, headline, headlines, chapter, chapters, page, pages, poem, poems
  also    story, stories, novel, novels, blogger, bloggers, vocabulary, vocabularies, grammar, alphabet
  also    alphabets, language, languages, keyword, keywords, footnote, footnotes, glossary, glossaries
  also    transcript, transcripts, typo, typos, memo, memos, diary, diaries, journal, journals, postcard
  also    postcards, newsletter, newsletters, notebook, notebooks, reading, readable, unreadable, worded
  also    wording, handwritten, handwriting, typed, typing, unwritten, untitled, copyright, wordy, bilingual
  also    proofread, literary, literature
  also    wrote down, written down, writing down, write down, jotted down, i read, i have read, i was reading
  also    been reading, read about, read up, read on, read that, read through, in my book, in the book
  also    in my field guide, in the field guide, field guide, field guides, bird book, bird books, bird guide
  means   words of writing and reading

ordinary yes
  also    yeah, yep, yup, aye, ok, okay, alright, wow, whoa, aha, haha, hahaha, hehe, lol, omg, gosh, crikey
  also    blimey, hooray, hurray, hurrah, yay, phew, yikes, ouch, bravo, woohoo, yippee, golly, btw, fyi, asap
  also    ps, tbh
  also    all right, oh my, oh my god, oh my goodness, my goodness, oh wow, oh yes, oh dear, fair enough
  also    well done, you bet, good for you, good on you
  means   words of assent, of laughter and of wonder
