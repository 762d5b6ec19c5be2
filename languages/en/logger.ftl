# What data loggers have recorded, on the record of an animal: a table with a column for each probe, and curves.

logger-title = Recorded by data loggers
logger-table = What each probe recorded
logger-what = What
logger-from = From
logger-until = Until
logger-readings = Readings
logger-readings-step = { $readings }, one every { $minutes } minutes as a rule
logger-by-day = By day, of the time
logger-by-night = By night, of the time
logger-humidity = Humidity, of the time
logger-above-ceiling = Longest above the ceiling
logger-above-never = Longest above what is never passed
logger-coldest-night = Coldest night
# The date is the evening.
logger-coldest-night-from = { $temperature }, the night from { $date }
logger-swing = Swing of a day
logger-swing-usual-widest = { $usual }; { $widest } at most, on { $date }
logger-gaps = Gaps
logger-no-gaps = none
# `together` and `longest` are hours, the date a moment.
logger-gaps-told = { $count }, { $together } together; the longest { $longest }, from { $date }

# Shares of the time. The second and third follow the first, behind commas.
logger-within = { $share } % in { $range }
logger-below = { $share } % below
logger-above = { $share } % above
logger-no-range = no range is given
logger-no-reading = no reading

# The longest spell above a limit.
logger-no-limit = no reading, or no limit
logger-never-above = never above { $limit }
logger-spell = { $hours } above { $limit }, up to { $highest }, from { $date }

# `hours` is the number as it is written, `count` the same for the form of the word.
logger-hours = { $count ->
    [one] { $hours } hour
   *[other] { $hours } hours
}
logger-moment = { $date }, { $time }

# Under the table.
logger-note = Day is from { $on } to { $off } o'clock, { $lights ->
    [own] as its lights
   *[taken] as is taken for granted
}. Above its ceiling for more than { $hours } on end is a finding ({ $limit ->
    [stated] as its species states
   *[practice] common practice, no source
}). A pause counts for nothing.

# Curves of the lowest and highest of each day.
logger-temperature-at = Temperature at the probe { $probe }
logger-humidity-at = Humidity at the probe { $probe }
logger-curve = { $days } days, from { $from } to { $until }: between { $low } and { $high } { $unit }.
logger-key = whole line: the highest of each day; broken line: the lowest
logger-key-level = whole line: the highest of each day; broken line: the lowest; level line: { $limit }, not to be passed
logger-by-month = By month
logger-month = Month
logger-days = Days
logger-lowest = Lowest
logger-highest = Highest
