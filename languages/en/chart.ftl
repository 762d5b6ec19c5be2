# The words of charts over time, and of the strip of meals. All figures are put in with their units.

# A mark along the foot of a chart: a month, shortened, and its year.
chart-month = { $month } { $year }

# What the strip of a year's meals shows, for those who do not see it, and under it.
chart-meals-says = { $count ->
    [one] 1 meal
   *[other] { $count } meals
} offered from { $first } to { $last }: { $taken } taken, { $part } in part, { $refused } refused.

# Growth. `measure` is one of the lengths of `measure-…`: "total length".
chart-growth = Growth: { $measure }
chart-growth-says = { $count ->
    [one] 1 length
   *[other] { $count } lengths
}, from { $from } on { $first } to { $to } on { $last }.
chart-growth-adult = Grown, { $low } to { $high } is expected, { $middle } at the middle.
chart-growth-outgrown = Its enclosure is outgrown at { $length }: earliest { $earliest }, expected { $expected }, latest { $latest }.
# In place of one of the dates above.
chart-not-expected = not expected
# At the level line of the chart.
chart-level = its enclosure is outgrown
# What dots and lines are. The first letter becomes a capital, and what else is drawn may follow behind a semicolon.
chart-growth-key = dots: measured
chart-growth-key-curves = dots: measured; whole line: expected; broken lines: the ends that hold { $level } of 100 such animals
chart-growth-table = Every length
chart-day = Day
chart-measured = Measured

chart-weight = Weight
chart-weight-says = { $count ->
    [one] 1 weight
   *[other] { $count } weights
}, from { $from } on { $first } to { $to } on { $last }.
chart-weight-key = dots: weighed
chart-weight-table = Every weight
chart-weighed = Weighed

# The ultraviolet of a lamp against the distance from it. UVI is the ultraviolet index; `near` and `far` are lengths.
chart-ultraviolet = Ultraviolet of the { $lamp }
chart-ultraviolet-says = Ultraviolet index against the distance from the lamp, through what stays in place. The species' band, { $low } to { $high } UVI, lies between { $near } and { $far }.
chart-ultraviolet-key = dots: read; whole line: fitted to them; broken lines: the ends of the band
chart-ultraviolet-table = Every reading of the lamp
chart-distance = Distance
chart-uvi = UVI
