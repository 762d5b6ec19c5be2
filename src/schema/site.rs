//! The fields of `wardsheet.toml`, `private.toml` and `sources.toml`.

use crate::finding::Severity;
use crate::model::site::Paper;
use crate::model::source::Followed;
use crate::model::word::Word;
use crate::quantity::System;

use super::field::{Field, Form, may, must, spellings};
use super::quantities as q;

pub(super) const FIELDS: &[Field] = &[
    must("title", "The site's name", Form::Text(&["Example society"])),
    may(
        "footer",
        "Printed at the foot of every page",
        Form::Text(&["Everything here is invented."]),
    ),
    may("language", "The language of the pages; without it, en", Form::Text(&["en"])),
    may(
        "languages",
        "Further languages of the public pages, each in a folder of its own",
        Form::Texts(&["de"]),
    ),
    may(
        "units",
        "Printed first, the other system beside it; without it, metric",
        Form::Word(spellings::<System>),
    ),
    may(
        "paper",
        "The paper that pages are made for; without it, A4",
        Form::Word(spellings::<Paper>),
    ),
    may("address", "Where the public pages will stand", Form::Text(&["https://example.org/"])),
    may(
        "standards",
        "The standards in force; without it, every one that a species names",
        Form::Texts(&["de-1997"]),
    ),
    may(
        "jurisdictions",
        "The places whose law the sheets are held against: names in species/law/",
        Form::Texts(&["england"]),
    ),
    may("wording", "Words that the law of a jurisdiction sets", Form::Named(WORDING)),
    may(
        "libraries",
        "Species folders, nearest first; `builtin` is the library in the program",
        Form::Texts(&["builtin"]),
    ),
    may("review_every", "How long a review holds; without it, two years", Form::One(&q::SPAN)),
    may(
        "vet",
        "Public sentence about the vet",
        Form::Text(&["Every animal here is seen by a vet."]),
    ),
    may(
        "take_back",
        "The promise to take an animal back, printed on its handover sheet; private",
        Form::Text(&["We take every animal of ours back, at any time, no question asked."]),
    ),
    may("prices", "What things cost", Form::Table(PRICES)),
    may("lights", "When the lights go on, or the middle of the lighted day", Form::Table(LIGHTS)),
    may(
        "prey",
        "Your own ladder of prey sizes: a name and the mass of one",
        Form::Entries(&ONE_MASS),
    ),
    may("disinfectant", "Disinfectants as you mix them", Form::Tables(DISINFECTANT)),
    may("strip", "Socket strips and what each may carry", Form::Tables(STRIP)),
    may("room", "Rooms in which enclosures stand", Form::Tables(ROOM)),
    may(
        "figures_need_source",
        "Figures that must have a source here: `all`, a table or a figure",
        Form::Texts(&["all", "temperature", "humidity.ceiling"]),
    ),
    may(
        "findings",
        "A finding's code and the weight you give it",
        Form::Entries(&Form::Word(weights)),
    ),
];

const WORDING: &[Field] = &[
    may("notice", "Of its public-health notice", Form::Text(&["The words of the notice"])),
    may("release", "Of its warning against release", Form::Text(&["The words of the order"])),
];

const PRICES: &[Field] = &[
    may("electricity", "Price of electricity", Form::One(&q::PRICE)),
    may("food", "The name of a food and its price", Form::Entries(&ONE_PRICE)),
    may("lamps", "A lamp's kind and its price", Form::Entries(&ONE_PRICE)),
];

const LIGHTS: &[Field] = &[
    may("on", "When the lights go on", Form::Text(&["08:30"])),
    may("centre", "The middle of the lighted day; without either, 13:00", Form::Text(&["13:00"])),
];

const DISINFECTANT: &[Field] = &[
    must("name", "What it is", Form::Text(&["household bleach"])),
    may("one_part_in", "Its strength: one part in so many", Form::Whole),
    may("of_bottle", "Its strength: per cent of the bottle", Form::One(&q::SHARE)),
    may("active", "Its strength: per cent of the active substance wanted", Form::One(&q::SHARE)),
    may("bottle_active", "Per cent of the active substance in the bottle", Form::One(&q::SHARE)),
    must("bucket", "How much is mixed", Form::One(&q::VOLUME)),
    may("keeps", "How long it keeps", Form::One(&q::SPAN)),
    may("against", "The organisms it is for", Form::Texts(&["bacteria"])),
];

const STRIP: &[Field] = &[
    must("name", "What it is called", Form::Text(&["shelf, left"])),
    must("rating", "What it may carry", Form::One(&q::RATING)),
];

const ROOM: &[Field] = &[
    must("name", "What it is called", Form::Text(&["back room"])),
    may("smoke_alarm", "A smoke alarm hangs in it", Form::Flag),
];

pub(super) const PRIVATE: &[Field] = &[
    may("keeper", "The keeper", Form::Table(CONTACT)),
    may("second", "Somebody near who can help", Form::Table(CONTACT)),
    may("vet", "The vet", Form::Table(CONTACT)),
    may("vet_out_of_hours", "The vet out of hours", Form::Table(CONTACT)),
    may(
        "house",
        "Headings of your own",
        Form::Entries(&Form::Text(&["Hall cupboard, left wall."])),
    ),
];

const CONTACT: &[Field] = &[
    may("name", "Name", Form::Text(&["Example Keeper"])),
    may("phone", "Telephone", Form::Text(&["01632 960100"])),
    may("address", "Address", Form::Text(&["1 Example Street, Exampletown"])),
    may("email", "Address for electronic mail", Form::Text(&["keeper@example.org"])),
];

pub(super) const SOURCE: &[Field] = &[
    must("title", "Its title", Form::Text(&["A book that does not exist"])),
    must("issuer", "Author or issuer", Form::Text(&["Example Author"])),
    may("year", "The year; without it, n.d. for no date", Form::Year),
    may("address", "Where it can be read", Form::Text(&["https://example.org/book"])),
    may("read", "How far it was followed; without it, read", Form::Word(spellings::<Followed>)),
    may("note", "One sentence more", Form::Text(&["Invented for this page."])),
];

static ONE_MASS: Form = Form::Range(&q::MASS);
static ONE_PRICE: Form = Form::One(&q::PRICE);

/// A severity, or `off`.
fn weights() -> Vec<&'static str> {
    Severity::ALL.iter().map(|(_, spelling)| *spelling).chain(["off"]).collect()
}
