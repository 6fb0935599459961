# Words of when and how often. They say nothing of a bird's marks and are set aside on purpose.
# Every form is listed, as this kind is never inflected.

ordinary when
  hidden  yes
  also    in winter, in summer, in autumn, in spring, in the winter, in the summer, in the autumn, in the spring
  also    in fall, in the fall, in early spring, in late summer, in late autumn, in late winter, in early winter
  also    in hard weather, in cold weather, in the breeding season, in winter and on passage
  also    on passage, on migration, on spring passage, on autumn passage, during migration
  also    by day, by night, by night and day, by day and night, day and night, night and day, in the daytime
  also    during the day, all the year, in winter only, in summer only, at times, at all times, at other times
  also    at any time
  also    rarely, seldom, only rarely, rarely drums, seldom drums
  also    early in the year, late in the year, late in the season, early in the season
  means   when and how often something is done
