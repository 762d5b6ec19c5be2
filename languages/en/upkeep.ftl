# What keeping one animal takes, on its record, on the sheets of a handover and on a sitter's sheet.

upkeep-title = Heat, power and water

# Facts: what they are, and what they say.
upkeep-heat = Heat
upkeep-not-worked-out = not worked out: { $reason }
upkeep-water = Water to hold the humidity
upkeep-water-in-a-day = about { $water } ml evaporates in a day from bowl, substrate and spray
upkeep-water-and-spray = about { $water } ml evaporates in a day from bowl, substrate and spray, { $each } ml at each spraying
upkeep-dew = Water settles on anything colder than
upkeep-lights = Lights
upkeep-lights-on-off = on at { $on }, off at { $off }
# `lamp` is a kind of lamp as its keeper writes it.
upkeep-lamp = { $lamp }, for the species' ultraviolet band
upkeep-lamp-distance = Distance of a lamp
upkeep-lamp-above = { $near } to { $far } above its back
upkeep-lamp-above-sure = { $near } to { $far } above its back; the nearer end may lie between { $low } and { $high } cm
upkeep-costs = Costs in a year, without vets
upkeep-cost = about { $low }–{ $high } { $currency }
upkeep-heat-lost = Heat lost in the usual room, and in the coldest night
upkeep-heat-lost-watts = { $usual } W and { $coldest } W
upkeep-heaters = Heaters installed
upkeep-heaters-enough = { $watts } W: enough for the coldest night
upkeep-heaters-enough-by-night = { $watts } W: enough for the night's own temperatures, not to hold the day's gradient through the coldest night
upkeep-heaters-too-small = { $watts } W: too small for the coldest night
upkeep-duty = They run
upkeep-duty-share = about { $share } % of the time
upkeep-electricity = Electricity for heat in a month
upkeep-electricity-kwh = about { $kwh } kWh
upkeep-electricity-kwh-cost = about { $kwh } kWh, { $amount } { $currency }
upkeep-savings = Would save of that
upkeep-savings-foam = 2 cm of foam on every wall but the front about { $share } %
upkeep-savings-air = half the air exchange about { $share } %, if the humidity allows it
upkeep-without-power = Without power
upkeep-hours-without-power = harm may begin after { $early } hours in the coldest night, { $expected } hours expected
upkeep-heat-wave = In a heat wave
upkeep-heat-wave-above = above { $room } in the room, a heater that sticks on would overheat it: switch them off at the wall
upkeep-sure = How sure
upkeep-sure-share = a steady estimate that may be off by { $share } % either way; wiring is an electrician's work

# The table of instruments: in what range each may be, and where it is time to act.
upkeep-instruments = What the instruments should show by day
upkeep-instrument = Instrument
upkeep-right = Right
upkeep-act-now = Act now
upkeep-instruments-note = Between the two, look again after half an hour: is the probe in its place, is the door shut? Each instrument's own accuracy and tests are in these numbers.
upkeep-temperature-at = { $probe }, temperature
upkeep-humidity-at = { $probe }, humidity
upkeep-too-rough = too rough an instrument to be sure
upkeep-below-or-above = below { $below } or above { $above }

# Growth and life still to come.
upkeep-own-growth = Its own growth
upkeep-own-growth-open = not enough to tell yet: the lengths leave the adult length as open as the species does
upkeep-growth-to-come = Growth still to come
upkeep-outgrown-at = Its enclosure is outgrown at { $length }
upkeep-outgrown-dates = earliest { $earliest }, expected { $expected }, latest { $latest }
# In place of one of those days.
upkeep-outgrown-not-expected = not expected
upkeep-outgrown-when = When its enclosure is outgrown
upkeep-life-lasts = A life like this lasts
# Years of the calendar.
upkeep-life-between = between { $first } and { $last }
upkeep-life-at-latest = until { $last } at the latest
upkeep-life-at-least = until { $first } at least

# How an animal does.
upkeep-weight-over = Weight over { $days } days
upkeep-days-since-it-ate = Days since it ate
upkeep-days-fasted = { $days }; up to { $limit } is normal for its species

# Why a figure could not be worked out: parts of a sentence, after "not worked out:" or alone.
absent-enclosure = no enclosure is given
absent-inside = the enclosure's inside measures are not given
absent-warm-and-cool = the species gives no warm and cool side of the air
absent-room-by-day = the room's temperature by day is not given
absent-coldest-night = the room's coldest night is not given
absent-air-exchange = no air exchange is given for the enclosure
absent-walls = what the walls are made of is not given
absent-material = `{ $material }` is not in the table of materials
absent-critical-low = the species gives no temperature below which it comes to harm
absent-room-stays-above = the room does not fall below { $celsius } °C
absent-colder-already = it is colder than that with the power on
absent-band = the species gives no ultraviolet band
absent-band-end = the species' ultraviolet band has no upper end
absent-second-distance = readings at two distances or more are needed
absent-not-falling = the index does not fall with the distance: read the lamp again
absent-beyond-readings = the band lies beyond the { $near }–{ $far } cm that the readings speak for
absent-adult-length = no adult length is known
absent-too-small = it is too small already
absent-does-for-longest = it does for the longest adult that is expected
absent-not-known = its length, its enclosure's measures or a standard's rule is not known
