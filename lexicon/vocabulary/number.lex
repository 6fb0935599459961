# Words for numbers. Figures are read by the program itself; "a" is no number.

number both
  also    both of, the two of, both of the
  value   2
  means   the two of them

number couple
  also    couple of, a couple, a couple of
  value   2
  means   two, said loosely

number double
  also    a double, twofold
  value   2
  means   twice over, as a doubled bar

number dozen
  also    a dozen, one dozen
  value   12
  means   twelve

number eight
  heard   ate
  value   8
  means   the number 8

number eighteen
  value   18
  means   the number 18

number eighty
  value   80
  means   the number 80

number eleven
  value   11
  means   the number 11

number fifteen
  value   15
  means   the number 15

number fifty
  value   50
  means   the number 50

number five
  value   5
  means   the number 5

number forty
  also    fourty
  value   40
  means   the number 40

number four
  heard   fore
  value   4
  means   the number 4

number fourteen
  value   14
  means   the number 14

number half-dozen
  also    half a dozen, a half-dozen
  value   6
  means   six, counted as half of twelve

number hundred
  also    a hundred, one hundred
  value   100
  means   ten tens

number nine
  value   9
  means   the number 9

number nineteen
  value   19
  means   the number 19

number ninety
  value   90
  means   the number 90

number one
  heard   won
  value   1
  means   the number 1

number pair
  also    pair of, a pair, a pair of, pairs of
  value   2
  means   two of a kind together

number quadruple
  also    fourfold
  value   4
  means   four times over

number quartet
  also    quartet of, a quartet of, foursome
  value   4
  means   four together

number seven
  value   7
  means   the number 7

number seventeen
  value   17
  means   the number 17

number seventy
  value   70
  means   the number 70

number single
  also    a single, just one, only one, one single, singleton
  value   1
  means   one and no more

number six
  value   6
  means   the number 6

number sixteen
  value   16
  means   the number 16

number sixty
  value   60
  means   the number 60

number ten
  value   10
  means   the number 10

number thirteen
  value   13
  means   the number 13

number thirty
  value   30
  means   the number 30

number three
  value   3
  means   the number 3

number trio
  also    a trio, a trio of, trio of, threesome
  value   3
  means   three together

number triple
  also    treble, a triple, threefold
  value   3
  means   three times over

number twelve
  value   12
  means   the number 12

number twenty
  value   20
  means   the number 20

number twin
  also    twinned, twinned pair
  value   2
  means   two alike, side by side

number two
  heard   too
  value   2
  means   the number 2

number two-dozen
  also    couple of dozen, a couple of dozen
  value   24
  means   twice twelve
