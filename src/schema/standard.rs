//! The fields of `species/standards/NAME.toml`.

use crate::model::standard::{Edges, Measure};

use super::field::{Field, Form, may, must, spellings};
use super::quantities as q;

pub(super) const FIELDS: &[Field] = &[
    must("title", "As published", Form::Text(&["Rules that do not exist"])),
    must("issuer", "Who issued it", Form::Text(&["Example Society"])),
    may("year", "The year; without it, n.d. for no date", Form::Year),
    may("where", "Where it holds", Form::Text(&["Quillmere"])),
    may("status", "With what strength it holds", Form::Text(&["invented"])),
    may("source", "Its key in a sources.toml", Form::Text(&["example-book"])),
    may(
        "note",
        "What the text leaves undefined, and how it is decided here",
        Form::Text(&["The species' adult range decides."]),
    ),
    may("animals", "How many animals a figure serves; without it, 1", Form::Whole),
    may(
        "measure",
        "Which length is meant; without it, total length",
        Form::Word(spellings::<Measure>),
    ),
    may("measure_assumed", "The text does not say which length", Form::Flag),
    may(
        "edges",
        "shared: the edge belongs to both neighbours; up to: it belongs to the lower class",
        Form::Word(spellings::<Edges>),
    ),
    may("height_cap", "The height need not exceed it", Form::One(&q::LENGTH)),
    may("floor_grows", "Under a height cap the floor grows, so that the volume stays", Form::Flag),
    may("singly", "The text says to keep one", Form::Flag),
    may("tolerance", "A shortfall that the text tolerates; said, never used", Form::One(&q::SHARE)),
    must("row", "Its rows, each an animal or a group of animals", Form::Named(ROW)),
];

const ROW: &[Field] = &[
    may("taxon", "The modern name", Form::Text(&["Exemplum quillmerense"])),
    may("printed", "The name as printed", Form::Text(&["Exemplum"])),
    may("note", "One sentence more", Form::Text(&["Adults only."])),
    may("animals", "How many animals a figure serves; without it, 1", Form::Whole),
    may(
        "measure",
        "Which length is meant; without it, total length",
        Form::Word(spellings::<Measure>),
    ),
    may("measure_assumed", "The text does not say which length", Form::Flag),
    may(
        "edges",
        "shared: the edge belongs to both neighbours; up to: it belongs to the lower class",
        Form::Word(spellings::<Edges>),
    ),
    may("height_cap", "The height need not exceed it", Form::One(&q::LENGTH)),
    may("floor_grows", "Under a height cap the floor grows, so that the volume stays", Form::Flag),
    may("singly", "The text says to keep one", Form::Flag),
    may("tolerance", "A shortfall that the text tolerates; said, never used", Form::One(&q::SHARE)),
    must("class", "What is asked for up to a size, in rising order", Form::Tables(CLASS)),
];

const CLASS: &[Field] = &[
    may("from", "The size from which it holds", Form::One(&q::LENGTH)),
    may("up_to", "The size up to which it holds", Form::One(&q::LENGTH)),
    may("up_to_age", "The age up to which it holds", Form::One(&q::SPAN)),
    may("adult", "It also holds for any grown animal", Form::Flag),
    may("over", "Printed as over: the edge belongs to the class below", Form::Flag),
    may("length", "Length", Form::One(&q::EXTENT)),
    may("width", "Width", Form::One(&q::EXTENT)),
    may("height", "Height", Form::One(&q::EXTENT)),
    may("floor", "Floor", Form::One(&q::ANY_AREA)),
    may("or", "Further layouts; any one is enough", Form::Tables(LAYOUT)),
    may("least_side", "Shortest side of the floor", Form::One(&q::EXTENT)),
    may("water", "Water", Form::One(&q::VOLUME)),
    may("water_floor", "Surface of the water", Form::One(&q::ANY_AREA)),
    may("land", "Land beside the water", Form::One(&q::ANY_AREA)),
    may("water_depth", "Least depth of the water", Form::One(&q::EXTENT)),
    may("water_depth_at_most", "Most depth of the water", Form::One(&q::EXTENT)),
    may(
        "water_depth_of",
        "The measure that the depth means, where it is another",
        Form::Word(spellings::<Measure>),
    ),
    may("group_floor", "Floor for each animal where two or more are kept", Form::One(&q::AREA)),
    may("further", "What each further animal adds", Form::Tables(FURTHER)),
];

const LAYOUT: &[Field] = &[
    may("length", "Length", Form::One(&q::EXTENT)),
    may("width", "Width", Form::One(&q::EXTENT)),
    may("height", "Height", Form::One(&q::EXTENT)),
    may("floor", "Floor", Form::One(&q::ANY_AREA)),
];

const FURTHER: &[Field] = &[
    may("from", "The first animal that it holds for, counted in the whole group", Form::Whole),
    may("to", "The last animal that it holds for", Form::Whole),
    may("floor", "What is added to the floor", Form::One(&q::INCREMENT)),
    may("volume", "Share of the base volume", Form::One(&q::SHARE)),
    may("height", "Height that is added", Form::One(&q::LENGTH)),
    may("water", "Water that is added", Form::One(&q::VOLUME)),
    may("land", "Land that is added", Form::One(&q::ANY_AREA)),
    may("water_floor", "Surface of the water that is added", Form::One(&q::ANY_AREA)),
    may("compounding", "A share of the floor grows on itself", Form::Flag),
];
