# Words of when and how often. They say nothing of a bird's marks and are set aside on purpose.
# Every form is listed, as this kind is never inflected.

ordinary when
  hidden  yes
  also    in winter, in summer, in autumn, in spring, in the winter, in the summer, in the autumn
  also    in the spring, in fall, in the fall, in early spring, in late summer, in late autumn
  also    in late winter, in early winter, in hard weather, in cold weather, in the breeding season
  also    in winter and on passage, on passage, on migration, on spring passage, on autumn passage
  also    during migration, by day, by night, by night and day, by day and night, day and night
  also    night and day, in the daytime, during the day, all the year, in winter only, in summer only
  also    at times, at all times, at other times, at any time, rarely, seldom, only rarely, rarely drums
  also    seldom drums, early in the year, late in the year, late in the season, early in the season
  means   when and how often something is done
