# The labels of account lines. `role heading`: facts told apart by the program; `shared`: marks of every
# form; `part`: marks of every form, said of the part that `subject` names; `look-alike`: another species
# and its marks. Any other label is a form of its own. `weight` of a word in the label of a form: how
# often such birds are met and described, against an adult male in breeding dress (own estimate: most notes
# are of birds in full colour).

label family
  role heading
  means the family, in Latin

label region
  role heading
  means where it lives: ids of regions, comma-separated

label season
  role heading
  means when it is there: all year, summer, winter, passage

label mass
  role heading
  means mass in grams, and the source

label measures
  role heading
  means measures in millimetres, and the source

label all
  role shared
  means marks of the plumage that every form shows

label bill
  role part
  subject bill
  means the bill

label legs
  role part
  subject legs
  means the legs

label feet
  role part
  subject feet
  means the feet

label eye
  role part
  subject eye
  means the eye

label build
  role shared
  means build and structure

label habits
  role shared
  means what it does

label flight
  role part
  subject flight
  means how it flies

label voice
  role part
  subject voice
  means its sounds

label habitat
  role shared
  means where it is found

label lookalike
  role look-alike
  means a species taken for it, and what that one shows

form-word juvenile
  weight 0.2
  means in its first plumage

form-word immature
  weight 0.22
  means not yet adult

form-word first-winter
  weight 0.22
  means in its first winter

form-word eclipse
  weight 0.2
  means in the dull plumage of late summer

form-word non-breeding
  weight 0.4
  means outside the breeding season

form-word female
  weight 0.55
  means female

form-word form
  weight 0.6
  means one of several colour forms
