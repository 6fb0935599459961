# Regions: where yardsticks and accounts belong.

region north-america
  title   North America
  default yes
  also    na, america, usa, us, canada
  told-by american, lands-of-the-americas
  means   North America north of Mexico

region europe
  title   Europe
  also    eu, uk, britain, ireland
  told-by european, lands-of-the-old-world
  means   Britain, Ireland and north-west Europe

region beyond
  title   elsewhere
  means   species of other parts of the world
