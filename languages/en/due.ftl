# What falls due for an animal: in its calendar, on the sitter's sheet and in the week's round.

# What is to be done, for a line behind the animal's name. `lamp` is a kind of lamp as its keeper writes it.
due-lamp = replace the { $lamp }
# `fitted` is the name of a field in a file and stays as it is.
due-lamp-text = With the power off and the lamp cold. Note the day in `fitted`.
due-quarantine = quarantine ends
due-quarantine-text = It restarts with every illness and every newcomer. A vet's tests decide whether it may end.
due-review = go through the care sheet of the { $species }
due-review-text = Are its figures still what is held today?
# Whether the name of a species is written in small letters within that sentence: "yes" or "no".
due-review-small-letters = yes
due-vet = see a vet, with a sample of droppings
due-vet-text = At least once a year; young, old or ill more often. Take the record along.
due-outgrown = its enclosure is expected to be outgrown
due-outgrown-text = The larger one is ready before that day.

# Entries of a calendar: the name of the calendar, titles, and the text of what is overdue.
due-calendar = Care of { $name }
due-feed = Feed { $name }
due-weigh = Weigh { $name }
due-weigh-text = Every { $days } days, before a meal (common practice).
# `task` is one of the labels above.
due-task = { $name }: { $task }
due-since = Due since { $date }. { $text }

# A note in the folder of private sheets. `public` is the name of a folder.
private-note =
    These sheets hold addresses, telephone numbers and the histories of animals.
    Do not publish this folder. The folder to publish is `public`, beside it.
