# The sheet for somebody who looks after the animals for a while.

sitter-title = Sitter's sheet, { $from } to { $until }
sitter-heading = Sitter’s sheet
sitter-span = { $days ->
    [one] { $from } to { $until }, { $days } day
   *[other] { $from } to { $until }, { $days } days
}

# Whom to phone, in order.
sitter-contacts = Whom to phone
sitter-keeper = 1. The keeper
sitter-second = 2. Nobody answers for 15 minutes
sitter-vet = An animal is ill: the vet
sitter-vet-out-of-hours = The vet out of hours

sitter-house = The house
# Where nothing is written down about the house.
sitter-where-things-are = Where things are

# What is never done. These are safety texts.
sitter-never = Never
sitter-never-alone = Never open the enclosure of a large snake alone: two adults, every time.
sitter-never-take-out = Never take an animal out, and never open two enclosures at once.
sitter-never-set-points = Never change a set point, and never switch a heater on that was off.
sitter-never-more-food = Never give more food than the day says, and never leave live rodents in.
sitter-never-medicine = Never give a medicine that a vet has not ordered for this animal.
sitter-never-leave-open = Never go away before doors, locks and lids are shut and the animals are counted.

# When something happens, a line each. Where people are in danger they come first.
sitter-events = When something happens
sitter-power-cut = Power cut
sitter-power-cut-text = Lids stay shut, blankets over the glass, ring the keeper; then the card at the end of this sheet.
sitter-escape = Escape
sitter-escape-text = Shut the room's door, look along the floor, ring. Do not grab a snake that you do not know.
sitter-bite = Bite
sitter-bite-text = Wash it with soap and water. Deep, in the face, or swelling: a doctor. A large snake that holds on: the second adult unwinds it from the tail; ring the emergency number.
sitter-fire = Fire
sitter-fire-text = People out, door shut, ring the emergency number. Nobody goes back for an animal.
sitter-hands = Hands
sitter-hands-text = Soap and water after every enclosure. Children under five, pregnant women, people over 65 and anyone whose defences are weak stay away: reptiles and amphibians can carry Salmonella.

# What the keeper sees to before leaving, and what the sitter is told of what falls into the stay. `task` is a label of `due-…`.
sitter-before = Before the keeper leaves
sitter-before-lamp = { $name }: { $task }, due { $date }, before you leave
sitter-before-vet = { $name }: { $task }, due { $date }: go before, or book a day after
sitter-before-weigh = { $name }: weigh it, due { $date }, or on the day you are back; the sitter does not weigh
sitter-quarantine = Quarantine
sitter-quarantine-text = would end on { $date }; it goes on until the keeper is back. Last in the round, tools of its own, to the last day
sitter-enclosure = Enclosure
sitter-enclosure-text = expected to be outgrown about { $date }; the keeper sees to it
sitter-care-sheet = Care sheet
sitter-care-sheet-text = is to be gone through by { $date }; that is the keeper's work and waits

# The page of one animal.
sitter-food = Food
sitter-as-a-rule = As a rule
sitter-in-a-power-cut = In a power cut
sitter-shed = Shed
sitter-shed-on = the next may come { $date }, by its own last ones. Dull skin, cloudy eyes and hiding are normal then, and it may refuse food: leave it alone, keep its damp hide damp
sitter-shed-between = the next may come between { $from } and { $until }, by its own last ones. Dull skin, cloudy eyes and hiding are normal then, and it may refuse food: leave it alone, keep its damp hide damp
sitter-may = You may
sitter-may-text = change its water, spray as the day says, offer the meal of the day and take back what it leaves, fit a spare lamp with the power off, take it to the vet in its locked box
# Of a large constrictor.
sitter-may-text-large = look through the glass. With a second adult beside you: change its water, spray as the day says, offer the meal of the day and take back what it leaves, fit a spare lamp with the power off, take it to the vet in its locked box

# Signs of illness, and what the sitter does: "me" is the keeper.
sitter-signs = When you see this
sitter-sign = Sign
sitter-act = What to do
sitter-act-now = phone the vet now
sitter-act-day = phone the vet today, then me
sitter-act-days = phone me
sitter-act-watch = carry on, write it down

# How it is fed over the stay. `meal` says what and how much. The first follows any of the others, behind a semicolon.
sitter-last-meal = last meal { $date }
sitter-skipped = no feeding while the keeper is away: on the last day it will have gone { $days } days without food, and up to { $limit } is normal for its species
sitter-none-due = no meal is due in these days
sitter-not-known = the log does not tell when a meal is due: ask the keeper before they leave
sitter-as-due = { $meal } on the days that say so. Take back what it leaves
# Of prey that is bought frozen.
sitter-as-due-thawed = { $meal } on the days that say so. Thaw it overnight in the refrigerator, in its bag; warm the bag in hand-warm water, never in a microwave; offer it with tongs. Take back what it leaves
# In place of a meal that is not known.
sitter-meal-as-shown = as the keeper has shown

# Day by day, a table with boxes to tick: its heads, and what stands in the boxes.
sitter-days = Day by day
sitter-days-order = In this order, and those in quarantine last, with tools of their own
sitter-day = Day
sitter-animal = Animal
sitter-remarks = Remarks
sitter-quarantined = { $name } (quarantine)
# The name of an empty box, for those who hear the page.
sitter-to-tick = to tick
sitter-job-water = Water
sitter-job-spray = Spray
sitter-job-readings = Readings
sitter-job-food = Food
sitter-job-seen = Seen, shut, counted
sitter-fresh = fresh
sitter-right = right
sitter-ask = ask the keeper
sitter-digests = nothing: it digests, leave it alone
sitter-no-feeding = no feeding
sitter-nothing = nothing
# Behind one of the four above, on the day before a meal of frozen prey.
sitter-and-thaw = { $food }; this evening: thaw tomorrow's
sitter-shed-may-come = a shed may come
# How often a day it is sprayed, and with how much.
sitter-spray = { $times } ×
sitter-spray-each = { $times } × of { $each } ml

# An entry of the sitter's calendar: its title, and a line for each animal. `what` is one or several of the labels of `sitter-line-…`.
sitter-entry = Animals: { $what }
sitter-entry-feed = feed { $name }
sitter-entry-no-meal = water, readings, a look at each
sitter-line = { $name }: { $what }
sitter-line-apart = { $name } (quarantine, last): { $what }
sitter-line-water = water { $text }
sitter-line-spray = spray { $text }
sitter-line-readings = readings { $text }
sitter-line-food = food { $text }
sitter-line-seen = seen, shut, counted { $text }

# What is done step by step when something goes wrong. These are safety texts.
sitter-cards = When something goes wrong
sitter-card-power = The power is off
sitter-card-power-1 = Look whether the street is dark. A tripped switch is reset once; if it trips again, leave it and ring the keeper. Wiring is an electrician's work.
sitter-card-power-2 = Keep every lid and door shut. Free the vents, lay a blanket over the glass, give no food.
sitter-card-power-3 = Ring the keeper, and say which of the hours below comes first.
sitter-card-power-4 = When the power is back: look whether every heater works and every reading is right within two hours.
sitter-card-hot = It is too hot
sitter-card-hot-1 = A reading above the upper bound of its table: switch the heaters of that enclosure off at the wall, open the room's door and windows, leave the enclosure shut against escape.
sitter-card-hot-2 = Fresh, cool water in the bowl. No ice, no cold bath.
sitter-card-hot-3 = Look again after half an hour. Still too hot, or it gapes or lies limp: phone the vet now, then the keeper.
sitter-card-gone = One is not there
sitter-card-gone-1 = Count again: hides, under the substrate, behind the back wall.
sitter-card-gone-2 = Shut the door of the room, put a towel along its foot, switch nothing off, keep cats and dogs out.
sitter-card-gone-3 = Look along the walls, under and behind warm things, in shoes and folds. Ring the keeper.
sitter-card-gone-4 = Seen: a bucket or a box over it, then ring. A large snake is never caught by one person alone.
sitter-card-reading = A reading is out of bounds
sitter-card-reading-1 = Between “right” and “act now”: is the probe in its place, the door shut, the lamp on? Look again after half an hour.
sitter-card-reading-2 = Past “act now”: phone the keeper at once, and read them the probe, the number and the hour. Change no set point unless they say so.
sitter-card-reading-3 = Nobody answers within 15 minutes: the second number, then the vet.

# How long each enclosure bears a power cut.
sitter-bears = How long each bears it
sitter-without-power = Without power
sitter-what-then = What then
sitter-hours-not-known = not worked out: ask the keeper
