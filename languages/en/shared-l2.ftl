kind-snake = snake
kind-lizard = lizard
kind-tortoise = tortoise
kind-turtle = turtle
kind-frog = frog
kind-salamander = salamander
kind-invertebrate = invertebrate

sex-female = female
sex-male = male
sex-unknown = not known

active-day = by day
active-dusk-and-night = at dusk and by night
active-night = by night
active-day-and-night = by day and by night

danger-large-constrictor = large constrictor
danger-venom = venom
danger-strong-bite = strong bite
danger-skin-secretion = skin secretion
danger-strong-tail = strong tail

measure-title-total-length = Total length
measure-title-snout-vent-length = Snout-vent length
measure-title-carapace-length = Carapace length

cites-none = not listed in the CITES appendices
cites-I = CITES Appendix I
cites-II = CITES Appendix II
cites-III = CITES Appendix III

chapter-suits = Is this animal for you
chapter-enclosure = Enclosure
chapter-heat = Heat and light
chapter-humidity = Humidity and water
chapter-feeding = Feeding
chapter-company = Handling and company
chapter-cleaning = Cleaning
chapter-health = Health
chapter-growth = Breeding and growth
chapter-law = Law and where it comes from
