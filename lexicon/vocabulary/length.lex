# Lengths, for the size of the bird.

length long
  also    longer, longest, long ish, lengthy, elongated, elongate, lengthened, quite long, fairly long
  also    rather long, pretty long, moderately long, relatively long, on the long side, long in length
  also    long looking, proportionately long, noticeably long, distinctly long
  means   of more than usual length for its kind
  pato    PATO:0000573

length medium-length
  also    med length, med lengthed
  also    medium long, mid length, moderate length, middling length, average length, normal length
  also    intermediate length, medium in length, of medium length, of average length, of moderate length
  also    average in length, neither long nor short, medium to long, short to medium, medium short
  also    medium to short, medium lengthed, regular length, standard length
  means   of middling length
  pato    PATO:0045054

length short
  also    shorter, shortest, short ish, shortened, quite short, fairly short, rather short, pretty short
  also    moderately short, relatively short, on the short side, short in length, short looking
  also    proportionately short, noticeably short, distinctly short
  means   of less than usual length for its kind
  pato    PATO:0000574

length very-long
  value   long
  extent  very
  also    extremely long, really long, super long, extra long, exceptionally long, incredibly long
  also    extraordinarily long, enormously long, remarkably long, strikingly long, unusually long, long long
  also    very very long, ultra long, immensely long, amazingly long, ridiculously long
  also    disproportionately long, greatly elongated, extremely elongated, very elongated, overlong
  means   of far more than usual length for its kind

length very-short
  value   short
  extent  very
  also    extremely short, really short, super short, extra short, exceptionally short, incredibly short
  also    remarkably short, strikingly short, unusually short, very very short, ultra short
  also    ridiculously short, disproportionately short, almost nonexistent
  means   of far less than usual length for its kind

length tall
  value   long
  only-before leg, legs, feather, feathers, crest, neck
  means   long, of what stands upright
