# The record of an animal, for its keeper and for a vet, and what a handover sheet tells of it too: who it is, where it came
# from, what it weighed, ate and shed, how it has been, its papers.

record-title = Record of { $name }
record-head = Record
record-contacts = Whom to ring
record-meal-year = Meals of the year
record-findings = Open findings
# A doubt about the animal's files: how grave it is, and the code by which it is looked up.
record-finding = { $severity ->
    [error] error
    [warning] warning
   *[note] note
}, { $code }
record-no-findings = Nothing in this animal's files is doubtful.
record-condition = Condition

# Table heads of several tables.
record-day = Day
record-what = What
record-measured = Measured

# Readings of probes.
record-readings = Readings
record-readings-all = All readings, the latest first
record-probe = Probe
record-temperature = Temperature
record-humidity = Humidity

# Who it is.
record-identity = Identity
record-name = Name
record-species = Species
record-form = Form or locality
record-sex = Sex
# A sex, and how it was told: "female (probed by the breeder)".
record-sex-told = { $sex } ({ $basis })
record-sex-not-told = { $sex } (how it was told is not known)
record-age = Age
record-chip = Chip or marks
record-temperament = Temperament

# Where it came from.
record-origin = Origin
record-came-from = Came from
record-arrived = Arrived
record-status = Status
# How an animal stands with its keeper.
status-resident = resident
status-quarantine = quarantine
status-seeking-a-home = seeking a home
status-rehomed = rehomed
status-died = died

# Lengths and weights.
record-measurements = Measurements
record-measurements-all = All measurements, the latest first
record-measurements-last = The last measurements
record-weight = Weight
record-lengths-weights = Lengths and weights

# Meals.
record-feeding = Feeding record
record-meals = Meals
record-meals-all = All meals offered, the latest first
record-meals-last = The last meals offered
record-last-meal = Last meal eaten
# How many of so many meals were eaten.
record-of-last = Of the last { $count }
record-outcomes = { $taken } taken, { $part } in part, { $refused } refused
record-food = Food
record-mass = Mass
record-not-weighed = not weighed
record-outcome = Outcome
record-taken = taken
record-part = in part
record-refused = refused

# Sheds. A shed is complete or came off in pieces.
record-sheds = Sheds
record-sheds-all = All sheds, the latest first
record-sheds-last = The last sheds
record-shed-how = How
record-shed-remark = Remark
record-shed-complete = complete
record-shed-pieces = in pieces
record-shed-not-noted = not noted
record-last-shed = Last shed

# Illness and treatment.
record-health = Health and treatment
record-illness = Illness: { $what }
record-treatment = Treatment: { $what }
record-health-table = Illness, tests and treatment
# Who treated or tested it.
record-by = By
record-illness-treatment = Illness and treatment
record-none = none on record
record-treated-now = Under treatment now
record-treated-yes = yes
record-treated-no = no
record-treated-logged = not known: the log has illness or treatment on { $date }
record-treated-nothing = nothing on record
record-for-vet = For a vet

# Papers.
record-papers = Papers
record-proof = Proof of origin
record-proof-paper = the paper that shows where it came from goes with it
record-handed-over = Handed over
record-law = Law
record-law-decides = check locally before it moves; local law decides
