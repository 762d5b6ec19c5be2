//! The public page of a published animal.

use serde::Serialize;

use crate::figures::working::number;
use crate::figures::{AnimalFigures, Figures};

use crate::model::word::{Basis, Sex, Status, Word};

use super::blocks::{Caution, Fact, Link, Shown};
use super::edition::Edition;
use super::frame::Frame;
use super::picture::{self, Picture};
use super::public::PublicAnimal;
use super::{cautions, print};

/// The page of a published animal.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct AnimalSheet {
    /// The frame.
    pub frame: Frame,
    /// Its name.
    pub name: String,
    /// Its species, sex and age in a line.
    pub introduced: String,
    /// What kind of animal it is.
    pub kind: String,
    /// Its care sheet.
    pub care: Link,
    /// Whether it is looking for a home.
    pub seeking: bool,
    /// Its picture.
    pub picture: Picture,
    /// Its story.
    pub story: Option<String>,
    /// What is known of it.
    pub facts: Vec<Fact>,
    /// What it will need.
    pub needs: Vec<Fact>,
    /// What can hurt.
    pub cautions: Vec<Caution>,
}

/// Builds the page of a published animal; none for one that is not.
pub fn animal(
    edition: &Edition<'_>,
    figures: &Figures,
    key: &str,
    of: &AnimalFigures,
) -> Option<AnimalSheet> {
    let public = PublicAnimal::of(edition, edition.animals.get(key)?)?;
    let species = edition.species.get(&public.species)?;
    let mut facts = vec![
        Fact::plain("Species", format!("{} ({})", species.name, species.scientific)),
        Fact::plain("Sex", sex(public.sex)),
        Fact::plain("Age", age(edition, public.hatched, figures.as_of)),
    ];
    if let Some(form) = &public.form {
        facts.insert(1, Fact::plain("Form", form.clone()));
    }
    if let Some(cm) = of.body.length_cm {
        facts.push(Fact::plain(
            capital(species.size.measure.spelling()),
            print::length(cm, edition),
        ));
    }
    if let Some(grams) = of.body.mass_g {
        facts.push(Fact::plain("Weight", print::mass(grams, edition)));
    }
    let mut needs = Vec::new();
    if let Some(adult) = of.growth.adult {
        let ends = Some((Some(adult.low_cm), Some(adult.high_cm)));
        let length = print::shown::<crate::quantity::Length>(
            ends,
            edition,
            crate::quantity::Rounding::Nearest,
        );
        needs.push(Fact::plain("Length when grown", length));
    }
    let build = of.grown.as_ref().and_then(|space| space.build.as_ref());
    needs.push(Fact::plain(
        "Enclosure when grown, at least",
        build.map_or_else(|| edition.missing(), |build| print::sides(build.inside_cm, edition)),
    ));
    if let Some(years) = species.stated().iter().find(|stated| stated.name == "life.years") {
        needs.push(Fact::plain(
            "Span of life",
            edition.shown(years.amount.print(edition.units(), years.rounding)),
        ));
    }
    if let Some(cost) = figures.species.get(&public.species).and_then(|of| of.cost.as_ref()) {
        let (low, high) = cost.per_year;
        let about = format!("about {}–{} {}", number(low, 0), number(high, 0), cost.currency);
        needs.push(Fact::plain("A year of its kind costs, without vets", about));
    }
    if let Some(meal) = &of.feeding.meal {
        needs.push(Fact::plain("Eats now", meal.clone()));
    }
    let known = public.sex != Sex::Unknown;
    let mut introduced = vec![species.name.clone()];
    introduced.extend(known.then(|| public.sex.spelling().to_owned()));
    introduced
        .extend(public.hatched.map(|(date, basis)| years_old(edition, date, basis, figures.as_of)));
    let seeking = public.status == Status::SeekingHome;
    let stands = if seeking { "is looking for a home" } else { "lives with us" };
    let teaser = public.story.as_deref().map(super::index::first_sentences).unwrap_or_default();
    let description = format!("{}, {}, {stands}. {teaser}", public.name, species.name);
    let picture = picture::of_public(key, &public, species);
    Some(AnimalSheet {
        frame: Frame::new(
            edition,
            &super::animal_path(key),
            false,
            &format!("{}, {}", public.name, species.name),
            &description,
            figures.as_of,
        ),
        name: public.name,
        introduced: introduced.join(", "),
        kind: species.kind.spelling().to_owned(),
        care: Link {
            text: format!("{} care sheet", species.name),
            href: super::care_path(&public.species),
        },
        picture,
        seeking,
        story: public.story,
        facts,
        needs,
        cautions: cautions::of_species(edition, species),
    })
}

/// A sex in words.
pub fn sex(sex: Sex) -> String {
    if sex == Sex::Unknown { "not known".to_owned() } else { sex.spelling().to_owned() }
}

/// An age in words, with how sure it is.
pub fn age(
    edition: &Edition<'_>,
    hatched: Option<(jiff::civil::Date, Basis)>,
    as_of: jiff::civil::Date,
) -> Shown {
    let Some((date, basis)) = hatched else { return edition.missing() };
    let sure = if basis == Basis::Estimated { "estimated" } else { "known" };
    let old = years_old(edition, date, basis, as_of);
    Shown::plain(format!("{old} (hatched {}, {sure})", edition.long_date(date)))
}

fn years_old(
    edition: &Edition<'_>,
    hatched: jiff::civil::Date,
    basis: Basis,
    as_of: jiff::civil::Date,
) -> String {
    let days = f64::from(crate::figures::calendar::days_between(hatched, as_of).max(0));
    let about = if basis == Basis::Estimated { "about " } else { "" };
    format!("{about}{}", print::days(days, edition).first)
}

/// The text with its first letter as a capital.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}
