//! The public page of a published animal.

use serde::Serialize;

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
    let say = |label| edition.say(label);
    let mut facts = vec![
        Fact::plain(
            say("animal-species"),
            format!("{} ({})", edition.name(species), species.scientific),
        ),
        Fact::plain(say("animal-sex"), sex(edition, public.sex)),
        Fact::plain(say("animal-age"), age(edition, public.hatched, figures.as_of)),
    ];
    if let Some(form) = &public.form {
        facts.insert(1, Fact::plain(say("animal-form"), form.clone()));
    }
    if let Some(cm) = of.body.length_cm {
        facts.push(Fact::plain(
            edition.word("measure-title", species.size.measure),
            print::length(cm, edition),
        ));
    }
    if let Some(grams) = of.body.mass_g {
        facts.push(Fact::plain(say("animal-weight"), print::mass(grams, edition)));
    }
    let mut needs = Vec::new();
    if let Some(adult) = of.growth.adult {
        let ends = Some((Some(adult.low_cm), Some(adult.high_cm)));
        let length = print::shown::<crate::quantity::Length>(
            ends,
            edition,
            crate::quantity::Rounding::Nearest,
        );
        needs.push(Fact::plain(say("animal-length-grown"), length));
    }
    let build = of.grown.as_ref().and_then(|space| space.build.as_ref());
    needs.push(Fact::plain(
        say("animal-enclosure-grown"),
        build.map_or_else(|| edition.missing(), |build| print::sides(build.inside_cm, edition)),
    ));
    if let Some(years) = species.stated().iter().find(|stated| stated.name == "life.years") {
        needs.push(Fact::plain(
            say("animal-span-of-life"),
            edition.shown(years.amount.print(edition.units(), years.rounding)),
        ));
    }
    if let Some(cost) = figures.species.get(&public.species).and_then(|of| of.cost.as_ref()) {
        let (low, high) = cost.per_year;
        let (low, high) = (edition.number(low, 0), edition.number(high, 0));
        let currency = cost.currency.as_str().into();
        let about = [("low", low.into()), ("high", high.into()), ("currency", currency)];
        needs.push(Fact::plain(say("animal-year-costs"), edition.tell("animal-cost", about)));
    }
    if let Some(meal) = &of.feeding.meal {
        needs.push(Fact::plain(say("animal-eats-now"), meal.clone()));
    }
    let known = public.sex != Sex::Unknown;
    let mut introduced = vec![edition.name(species).to_owned()];
    introduced.extend(known.then(|| sex(edition, public.sex)));
    introduced
        .extend(public.hatched.map(|(date, basis)| years_old(edition, date, basis, figures.as_of)));
    let seeking = public.status == Status::SeekingHome;
    let description =
        if seeking { "animal-description-seeking" } else { "animal-description-resident" };
    let teaser = public.story.as_deref().map(super::index::first_sentences).unwrap_or_default();
    let described = [
        ("name", public.name.as_str().into()),
        ("species", edition.name(species).into()),
        ("teaser", teaser.into()),
    ];
    let description = edition.tell(description, described);
    let care_sheet = [("species", edition.name(species).into())];
    let picture = picture::of_public(edition, key, &public, species);
    Some(AnimalSheet {
        frame: Frame::new(
            edition,
            &super::animal_path(key),
            false,
            &format!("{}, {}", public.name, edition.name(species)),
            &description,
            figures.as_of,
        ),
        name: public.name,
        introduced: introduced.join(", "),
        kind: species.kind.spelling().to_owned(),
        care: Link {
            text: edition.tell("animal-care-sheet", care_sheet),
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
pub fn sex(edition: &Edition<'_>, sex: Sex) -> String {
    edition.word("sex", sex)
}

/// An age in words, with how sure it is.
pub fn age(
    edition: &Edition<'_>,
    hatched: Option<(jiff::civil::Date, Basis)>,
    as_of: jiff::civil::Date,
) -> Shown {
    let Some((date, basis)) = hatched else { return edition.missing() };
    let told = if basis == Basis::Estimated { "animal-age-estimated" } else { "animal-age-known" };
    let old = days_old(edition, date, as_of).into();
    Shown::plain(edition.tell(told, [("age", old), ("date", edition.long_date(date).into())]))
}

fn years_old(
    edition: &Edition<'_>,
    hatched: jiff::civil::Date,
    basis: Basis,
    as_of: jiff::civil::Date,
) -> String {
    let old = days_old(edition, hatched, as_of);
    if basis == Basis::Estimated {
        return edition.tell("animal-age-about", [("age", old.into())]);
    }
    old
}

fn days_old(edition: &Edition<'_>, hatched: jiff::civil::Date, as_of: jiff::civil::Date) -> String {
    let days = f64::from(crate::figures::calendar::days_between(hatched, as_of).max(0));
    print::days(days, edition).first
}

/// The text with its first letter as a capital.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}
