//! The fields of `species/law/NAME.toml`.

use crate::model::law::Sale;
use crate::model::word::Kind;

use super::field::{Field, Form, may, must, spellings};
use super::quantities as q;

const ARTICLE: Field = may(
    "article",
    "The article, or a sentence saying that it is not known; without it, that of the file",
    Form::Text(&["§ 2"]),
);
const SOURCE: Field = may(
    "source",
    "Its key in a sources.toml; without it, that of the file",
    Form::Text(&["example-book"]),
);
const FROM_MEMORY: Field =
    may("from_memory", "Told from memory and not read; without it, as the file says", Form::Flag);
const NOTE: Field = may("note", "One sentence more", Form::Text(&["Where it is known."]));
const SAYS: Field = may(
    "says",
    "What it says, in words of your own",
    Form::Text(&["An animal under treatment may not be sold."]),
);

pub(super) const FIELDS: &[Field] = &[
    must("name", "The place, as people say it", Form::Text(&["Quillmere"])),
    must("title", "The act or order", Form::Text(&["An act that does not exist"])),
    must("issuer", "Who issued it", Form::Text(&["The town of Quillmere"])),
    may("year", "The year; without it, n.d. for no date", Form::Year),
    ARTICLE,
    SOURCE,
    FROM_MEMORY,
    NOTE,
    may("read", "The day by which the text, or what tells of it, had been read", Form::Date),
    may("state", "Of which day or version that text was", Form::Text(&["As at 26 March 2022."])),
    may("applies_to", "Whom it binds", Form::Text(&["Shops."])),
    may("within", "The larger jurisdictions that it lies within", Form::Texts(&["us-federal"])),
    may(
        "places",
        "What species files call it under legal.rule.where, beside its name",
        Form::Texts(&["European Union"]),
    ),
    may("item", "What a sheet must say, by the names of the items", Form::Table(ITEMS)),
    may("notice", "The public-health notice", Form::Table(NOTICE)),
    may("buyer", "The least age of a buyer", Form::Table(BUYER)),
    may("treatment", "An animal under treatment", Form::Table(TREATMENT)),
    may("size", "Sizes below which an animal may not be sold", Form::Tables(SIZE)),
    may("paper", "Papers that go with an animal", Form::Tables(PAPER)),
    may("mark", "Marks that an animal carries", Form::Tables(MARK)),
    may("records", "How long records are kept", Form::Table(RECORDS)),
    may("delivery", "The form in which a sheet is handed over", Form::Table(DELIVERY)),
    may("further", "What else it asks, which no sheet can answer", Form::Tables(FURTHER)),
];

const ASK: &[Field] = &[
    may("wider", "Only a wider word of the text covers it", Form::Flag),
    may("wording_set", "The law sets the very words", Form::Flag),
    may(
        "wording",
        "Those words, once you have taken them from the law",
        Form::Text(&["The words of the order"]),
    ),
    ARTICLE,
    SOURCE,
    FROM_MEMORY,
    NOTE,
];

const fn item(key: &'static str, what: &'static str) -> Field {
    may(key, what, Form::Table(ASK))
}

const ITEMS: &[Field] = &[
    item("names", "Scientific and common name"),
    item("life-expectancy", "Life expectancy"),
    item("adult-size", "Adult size"),
    item("housing", "Housing: size and fittings"),
    item("environment", "Environment: heat, humidity, light"),
    item("feeding", "Feeding"),
    item("daily-ration", "Daily ration"),
    item("watering", "Watering"),
    item("general-care", "General care"),
    item("handling", "Handling"),
    item("cleaning", "Cleaning"),
    item("equipment", "Equipment and accessories"),
    item("movement", "Movement"),
    item("enrichment", "Enrichment"),
    item("social-life", "Social life: alone or in company"),
    item("behaviour", "Behaviour"),
    item("danger", "Danger to people"),
    item("reproduction", "Reproduction and rearing"),
    item("signs-of-illness", "Signs of illness"),
    item("veterinary-care", "Veterinary care"),
    item("yearly-cost", "Yearly cost of keeping"),
    item("protection-status", "Protection status"),
    item("legal-basis", "Legal basis of keeping"),
    item("no-release", "Warning against release"),
    item("health-on-the-day", "Health of this animal on the day"),
    item("particulars", "Origin, age, sex and vet's record"),
];

const NOTICE: &[Field] = &[
    must("says", "What it says, in words of your own", Form::Text(&["Reptiles carry Salmonella."])),
    may("binding", "The law asks for it; false for advice; without it, true", Form::Flag),
    may("title", "What it is told from, where that is not the act", Form::Text(&["A leaflet"])),
    may("kinds", "The kinds of animal it is for; without it, all", Form::Words(spellings::<Kind>)),
    may("age", "The ages that it names", Form::Tables(AGE)),
    may("given_to", "To whom it is given, and how", Form::Text(&["In writing, to every buyer."])),
    may("wall", "What hangs on the wall", Form::Text(&["A poster."])),
    may("wording_set", "The law sets the very words, or may set them", Form::Flag),
    may(
        "wording",
        "Those words, once you have taken them from the law",
        Form::Text(&["The words of the notice"]),
    ),
    ARTICLE,
    SOURCE,
    FROM_MEMORY,
    NOTE,
];

const AGE: &[Field] =
    &[must("under", "The age", Form::One(&q::SPAN)), SAYS, ARTICLE, SOURCE, FROM_MEMORY, NOTE];

const BUYER: &[Field] =
    &[must("at_least", "The age", Form::One(&q::SPAN)), SAYS, ARTICLE, SOURCE, FROM_MEMORY, NOTE];

const TREATMENT: &[Field] = &[
    must("sale", "Whether it may be sold", Form::Word(spellings::<Sale>)),
    SAYS,
    ARTICLE,
    SOURCE,
    FROM_MEMORY,
    NOTE,
];

const KINDS: Field =
    may("kinds", "The kinds of animal; without it, all", Form::Words(spellings::<Kind>));
const PROTECTED: Field =
    may("protected", "true: only species in an appendix of CITES; false: only others", Form::Flag);
const WITH_PAPER: Field = may(
    "with_paper",
    "Only species whose own file names this paper for the place",
    Form::Text(&["Article 10 certificate"]),
);
const SHELL_BELOW: Field =
    may("shell_below", "Only animals whose shell is shorter", Form::One(&q::LENGTH));
const SHELL_FROM: Field =
    may("shell_from", "Only animals whose shell is at least so long", Form::One(&q::LENGTH));
const MASS_FROM: Field =
    may("mass_from", "Only animals of at least this mass", Form::One(&q::MASS));

const SIZE: &[Field] = &[
    KINDS,
    PROTECTED,
    WITH_PAPER,
    must("shell_below", "No animal with a shorter shell may be sold", Form::One(&q::LENGTH)),
    SHELL_FROM,
    MASS_FROM,
    SAYS,
    ARTICLE,
    SOURCE,
    FROM_MEMORY,
    NOTE,
];

const PAPER: &[Field] = &[
    must("paper", "The paper, as it is called", Form::Text(&["transfer statement"])),
    KINDS,
    PROTECTED,
    WITH_PAPER,
    SHELL_BELOW,
    SHELL_FROM,
    MASS_FROM,
    SAYS,
    ARTICLE,
    SOURCE,
    FROM_MEMORY,
    NOTE,
];

const MARK: &[Field] = &[
    must("mark", "The mark", Form::Text(&["microchip"])),
    KINDS,
    PROTECTED,
    WITH_PAPER,
    SHELL_BELOW,
    SHELL_FROM,
    MASS_FROM,
    SAYS,
    ARTICLE,
    SOURCE,
    FROM_MEMORY,
    NOTE,
];

const RECORDS: &[Field] =
    &[must("keep", "How long", Form::One(&q::SPAN)), SAYS, ARTICLE, SOURCE, FROM_MEMORY, NOTE];

const DELIVERY: &[Field] = &[
    may("paper", "It must be on paper", Form::Flag),
    may("language", "The language it must be in", Form::Text(&["fr"])),
    SAYS,
    ARTICLE,
    SOURCE,
    FROM_MEMORY,
    NOTE,
];

const FURTHER: &[Field] = &[SAYS, ARTICLE, SOURCE, FROM_MEMORY, NOTE];
