//! The fields of `species/NAME.toml`.

use crate::model::word::{Active, Caution, Cites, Company, Diet, Habit, Kind, Measure, Urgency};

use super::field::{Field, Form, may, must, spellings};
use super::quantities as q;

pub(super) const FIELDS: &[Field] = &[
    must("name", "The trade's common name", Form::Text(&["Example gecko"])),
    must("scientific", "The scientific name", Form::Text(&["Exemplum quillmerense"])),
    may("also", "Other common names", Form::Texts(&["Quillmere gecko"])),
    must("kind", "What kind of animal it is", Form::Word(spellings::<Kind>)),
    must("habit", "Where in its enclosure it lives", Form::Word(spellings::<Habit>)),
    must("diet", "What it eats", Form::Word(spellings::<Diet>)),
    may("active", "When it is active; without it, day and night", Form::Word(spellings::<Active>)),
    may("company", "The company it keeps; without it, alone", Form::Word(spellings::<Company>)),
    may("cautions", "Dangers to people", Form::Words(spellings::<Caution>)),
    may("reviewed", "When its figures were last gone through", Form::Date),
    may("reviewer", "By whom they were gone through", Form::Texts(&["Example Reviewer"])),
    may("language", "The language of its texts; without it, that of the site", Form::Text(&["en"])),
    may(
        "summary",
        "One sentence for the index",
        Form::Text(&["An invented ground gecko of dry country."]),
    ),
    may("photo", "A file in photos/: JPEG, PNG or WebP", Form::Text(&["example-gecko.jpg"])),
    may(
        "photo_shows",
        "What the photo shows, for those who do not see it",
        Form::Text(&["A grown example gecko on sand, seen from the side"]),
    ),
    may("origin", "Where it comes from", Form::Table(ORIGIN)),
    must("size", "How large it is", Form::Table(SIZE)),
    may("growth", "How it grows", Form::Table(GROWTH)),
    may("life", "How long it lives", Form::Table(LIFE)),
    may("temperature", "Its temperatures", Form::Table(TEMPERATURE)),
    may("humidity", "Its humidity", Form::Table(HUMIDITY)),
    may("light", "Its light", Form::Table(LIGHT)),
    may(
        "enclosure",
        "The row of each published standard that holds for it",
        Form::Named(ENCLOSURE),
    ),
    may("fittings", "What the enclosure must hold", Form::Table(FITTINGS)),
    may(
        "feeding",
        "Its feeding by stage of life, in order; the last stage has no bound",
        Form::Tables(FEEDING),
    ),
    may("energy", "Food energy", Form::Table(ENERGY)),
    may("fasting", "Going without food", Form::Table(FASTING)),
    may("handling", "Handling", Form::Table(HANDLING)),
    may("sign", "Signs of illness, six at the least", Form::Tables(SIGN)),
    may("legal", "Its legal status", Form::Table(LEGAL)),
];

const ORIGIN: &[Field] = &[
    may("where", "Where it comes from", Form::Text(&["Dry scrub"])),
    may(
        "latitudes",
        "The latitudes it comes from; from these come the hours of daylight",
        Form::Figure(&q::LATITUDES),
    ),
];

const SIZE: &[Field] = &[
    may(
        "measure",
        "Which length all sizes mean; without it, total length",
        Form::Word(spellings::<Measure>),
    ),
    may("birth", "At birth or hatching", Form::Figure(&q::LENGTH)),
    may("adult", "Grown, both sexes", Form::Figure(&q::LENGTH)),
    may("male", "Grown, males", Form::Figure(&q::LENGTH)),
    may("female", "Grown, females", Form::Figure(&q::LENGTH)),
    may(
        "total_length",
        "With the tail, for kinds that are measured otherwise",
        Form::Figure(&q::LENGTH),
    ),
    may("birth_mass", "At birth or hatching", Form::Figure(&q::MASS)),
    may("mass", "Grown, both sexes", Form::Figure(&q::MASS)),
    may("mass_male", "Grown, males", Form::Figure(&q::MASS)),
    may("mass_female", "Grown, females", Form::Figure(&q::MASS)),
    may("forms", "Named forms whose size differs", Form::Named(FORM)),
];

const FORM: &[Field] = &[
    may("name", "What the form is called", Form::Text(&["Island form"])),
    may("adult", "Grown, both sexes", Form::Figure(&q::LENGTH)),
    may("male", "Grown, males", Form::Figure(&q::LENGTH)),
    may("female", "Grown, females", Form::Figure(&q::LENGTH)),
];

const GROWTH: &[Field] = &[
    may("k", "Published growth constant", Form::Figure(&q::RATE_PER_YEAR)),
    may("matures", "Age at maturity", Form::Figure(&q::SPAN)),
];

const LIFE: &[Field] = &[may("years", "Span of life", Form::Figure(&q::SPAN))];

const TEMPERATURE: &[Field] = &[
    may("basking", "The surface at the basking spot", Form::Figure(&q::TEMPERATURE)),
    may("warm", "The warm side", Form::Figure(&q::TEMPERATURE)),
    may("cool", "The cool side", Form::Figure(&q::TEMPERATURE)),
    may("night", "By night", Form::Figure(&q::TEMPERATURE)),
    may(
        "never_above",
        "No place that the animal cannot leave may pass it",
        Form::Figure(&q::TEMPERATURE),
    ),
    may("critical_low", "Below this it comes to harm", Form::Figure(&q::TEMPERATURE)),
    may("water", "The water, for kinds that live in it", Form::Figure(&q::TEMPERATURE)),
    may("brumation", "While brumating", Form::Figure(&q::TEMPERATURE)),
    may("brumation_weeks", "How long brumation lasts", Form::Figure(&q::SPAN)),
];

const HUMIDITY: &[Field] = &[
    may("range", "What it is kept at", Form::Figure(&q::HUMIDITY)),
    may("ceiling", "Never above this, at the cool side", Form::Figure(&q::HUMIDITY)),
    may(
        "ceiling_for",
        "How long the ceiling may be passed at a stretch; without it, 12 hours",
        Form::Figure(&q::SPAN),
    ),
    may("shed", "Raised while it sheds", Form::Figure(&q::HUMIDITY)),
];

const LIGHT: &[Field] = &[
    may("hours", "Hours of light a day", Form::Figure(&q::SPAN)),
    may("zone", "Ultraviolet zone, from 1 (shade) to 4 (full sun)", Form::Zone),
    may("uvi", "Ultraviolet index where it basks", Form::Figure(&q::UV)),
];

const ENCLOSURE: &[Field] =
    &[must("row", "The row of that standard", Form::Text(&["exemplum-quillmerense"]))];

const FITTINGS: &[Field] = &[
    may("water", "Water", Form::Text(&["A shallow dish, changed daily"])),
    may("substrate", "Substrate", Form::Text(&["Firm soil and clay"])),
    may("hides", "The least number of hides", Form::Whole),
    may("climbing", "What to climb on", Form::Text(&["Low stones that cannot shift"])),
    may("digging", "What to dig in", Form::Text(&["A box of damp soil"])),
    may("bathing", "What to bathe in", Form::Text(&["A shallow pool"])),
];

const FEEDING: &[Field] = &[
    must("stage", "The stage's name", Form::Text(&["young", "adult"])),
    may("until_age", "The age at which the stage ends", Form::One(&q::SPAN)),
    may("until_length", "The length at which it ends", Form::One(&q::LENGTH)),
    may("until_mass", "The mass at which it ends", Form::One(&q::MASS)),
    may("meal", "What a meal is", Form::Text(&["cricket, small"])),
    may("every", "From meal to meal", Form::Figure(&q::SPAN)),
    may("mass", "Mass of the whole meal", Form::Figure(&q::MASS)),
    may("share", "The meal as a share of the animal's own mass", Form::Figure(&q::SHARE)),
    may("count", "How many insects", Form::Figure(&q::COUNT)),
    may(
        "supplement",
        "The schedule of supplements, no dose",
        Form::Text(&["calcium at every feed"]),
    ),
    may(
        "note",
        "One sentence more",
        Form::Text(&["Nothing longer than the space between the eyes."]),
    ),
];

const ENERGY: &[Field] = &[may(
    "at_most",
    "Food energy over resting energy above which it is overfed",
    Form::Figure(&q::MULTIPLE),
)];

const FASTING: &[Field] = &[
    may("normal", "Longer than this without food is not normal", Form::Figure(&q::SPAN)),
    may("when", "When it normally fasts", Form::Text(&["in winter"])),
];

const HANDLING: &[Field] = &[may("after_meal", "No handling within", Form::Figure(&q::SPAN))];

const SIGN: &[Field] = &[
    must("sign", "What is seen", Form::Text(&["Open mouth, bubbles at the nose"])),
    may("means", "What it may mean", Form::Text(&["respiratory infection"])),
    must(
        "urgency",
        "now: ring and go; day: a vet within 24 hours; days: within days; watch: write it down",
        Form::Word(spellings::<Urgency>),
    ),
    may(
        "source",
        "Who says so: a key of a sources.toml, or a list of keys",
        Form::Texts(&["example-book"]),
    ),
];

const LEGAL: &[Field] = &[
    may("checked", "The day it was looked up", Form::Date),
    may("cites", "The CITES appendix", Form::Word(spellings::<Cites>)),
    may("rule", "What the law of a place says", Form::Tables(LAW)),
];

const LAW: &[Field] = &[
    must("where", "The place", Form::Text(&["Quillmere"])),
    must("says", "What its law says", Form::Text(&["Notice of keeping is given to the town."])),
    may(
        "paper",
        "The paper that a keeper must hold or hand over",
        Form::Text(&["The town's receipt"]),
    ),
    may(
        "source",
        "Who says so: a key of a sources.toml, or a list of keys",
        Form::Texts(&["example-book"]),
    ),
];
