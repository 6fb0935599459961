# Units, to centimetres or grams. A unit counts only after a number; the grammar sees to that.

unit centimetre
  also      centimetres, centimeter, centimeters, cm, cms
  dimension length
  factor    1
  means     a hundredth of a metre

unit decimetre
  also      decimetres, decimeter, decimeters, dm
  dimension length
  factor    10
  means     ten centimetres

unit foot
  also      feet, ft
  dimension length
  factor    30.48
  means     twelve inches

unit gram
  also      grams, gramme, grammes, g, gm, gms
  dimension mass
  factor    1
  means     a thousandth of a kilogram

unit inch
  also      inches, in, ins, inchs
  dimension length
  factor    2.54
  means     an inch, 2.54 cm

unit kilogram
  also      kilograms, kilogramme, kilogrammes, kilo, kilos, kg, kgs
  dimension mass
  factor    1000
  means     a thousand grams

unit kilometre
  also      kilometres, kilometer, kilometers, km, kms
  dimension length
  factor    100000
  means     a thousand metres; for distance

unit metre
  also      metres, meter, meters, m
  dimension length
  factor    100
  means     a hundred centimetres

unit mile
  also      miles, mi
  dimension length
  factor    160934.4
  means     1,760 yards; for distance

unit millimetre
  also      millimetres, millimeter, millimeters, mm, mms
  dimension length
  factor    0.1
  means     a tenth of a centimetre

unit ounce
  also      ounces, oz, ozs
  dimension mass
  factor    28.35
  means     a sixteenth of a pound

unit pound
  also      pounds, lb, lbs
  dimension mass
  factor    453.6
  means     sixteen ounces

unit yard
  also      yards, yd, yds
  dimension length
  factor    91.44
  means     three feet
