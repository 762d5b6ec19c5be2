# Drawings, and charts over time: their names, and the words that stand for them where they are not seen.
drawing-year = The day through the year
drawing-year-text = A column for each month, January first, as high as its day is long: from { $shortest } hours in the shortest month to { $longest } in the longest.

drawing-meals = Eight weeks of meals at each stage of life
# A strip of the drawing: a stage, and how often a meal comes, as in "adult, every 14 days".
drawing-meals-stage = { $stage }, every { $interval }
drawing-meals-text = A strip for each stage with a mark for each meal: { $stages }.

# An animal's own enclosure from the front.
drawing-front = The enclosure from the front
drawing-front-text = The warm end is on the left. Heaters, lamps and probes: { $parts }. On the floor: { $hides ->
    [one] 1 hide
   *[other] { $hides } hides
}.
drawing-front-note = Below the box: the temperature by day and what the hygrometer may read. The warm end is on the left. Length, height and places along the length are to scale; heaters and lamps stand on a line of their own. Outlined blocks on the floor are hides; one whose height is not known is drawn half its length high.
# A probe, by the name that its keeper gave it.
drawing-probe = probe, { $name }
drawing-by-day = { $reading } by day
drawing-by-night = { $reading } by night
drawing-hygrometer = hygrometer { $reading }

# The least enclosure of a grown animal from the front.
drawing-grown = The least enclosure for a grown animal from the front, { $sides }
drawing-grown-text = From the warm end on the left: { $places }.
# A place of the list above: "warm side 28–30 °C", and what a hygrometer may read there.
drawing-grown-place = { $zone } { $reading }
drawing-grown-place-damp = { $zone } { $reading }, hygrometer { $damp }
drawing-grown-animal = The bar on the floor is an animal of { $length }.
drawing-grown-scale = Length and height are to scale.

# Under a chart: what its lines and points are, and what its rings are.
chart-key = { $key }.
chart-key-rings = { $key }; rings: earliest, expected and latest day on which its enclosure is outgrown.
chart-meals = The meals of a year.
chart-meals-key = Long line: taken; short line: in part; ring above the line: refused. Each stands in the feeding record.
