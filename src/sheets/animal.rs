//! The public page of a published animal.

use serde::Serialize;

use crate::figures::{AnimalFigures, Figures};
use crate::model::Model;
use crate::model::word::{Basis, Sex, Status, Word};

use super::blocks::{Caution, Fact, Link, Shown};
use super::frame::{Frame, long_date};
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
    model: &Model,
    figures: &Figures,
    key: &str,
    of: &AnimalFigures,
) -> Option<AnimalSheet> {
    let public = PublicAnimal::of(model, model.animals.get(key)?)?;
    let species = model.species.get(&public.species)?;
    let units = model.site.units;
    let mut facts = vec![
        Fact::plain("Species", format!("{} ({})", species.name, species.scientific)),
        Fact::plain("Sex", sex(public.sex)),
        Fact::plain("Age", age(public.hatched, figures.as_of)),
    ];
    if let Some(form) = &public.form {
        facts.insert(1, Fact::plain("Form", form.clone()));
    }
    if let Some(cm) = of.body.length_cm {
        facts.push(Fact::plain(capital(species.size.measure.spelling()), print::length(cm, units)));
    }
    if let Some(grams) = of.body.mass_g {
        facts.push(Fact::plain("Weight", print::mass(grams, units)));
    }
    let mut needs = Vec::new();
    if let Some(adult) = of.growth.adult {
        let ends = Some((Some(adult.low_cm), Some(adult.high_cm)));
        let length = print::shown::<crate::quantity::Length>(
            ends,
            units,
            crate::quantity::Rounding::Nearest,
        );
        needs.push(Fact::plain("Length when grown", length));
    }
    let build = of.grown.as_ref().and_then(|space| space.build.as_ref());
    needs.push(Fact::plain(
        "Enclosure when grown, at least",
        build.map_or_else(Shown::missing, |build| print::sides(build.inside_cm, units)),
    ));
    if let Some(years) = species.stated().iter().find(|stated| stated.name == "life.years") {
        needs.push(Fact::plain("Span of life", years.amount.print(units, years.rounding)));
    }
    if let Some(meal) = &of.feeding.meal {
        needs.push(Fact::plain("Eats now", meal.clone()));
    }
    let description = format!("{}, {}.", public.name, species.name);
    let picture = picture::of_public(key, &public, species);
    Some(AnimalSheet {
        frame: Frame::new(
            model,
            &super::animal_path(key),
            false,
            &format!("{}, {}", public.name, species.name),
            &description,
            figures.as_of,
        ),
        name: public.name,
        kind: species.kind.spelling().to_owned(),
        care: Link {
            text: format!("{} care sheet", species.name),
            href: super::care_path(&public.species),
        },
        picture,
        seeking: public.status == Status::SeekingHome,
        story: public.story,
        facts,
        needs,
        cautions: cautions::of_species(species),
    })
}

/// A sex in words.
pub fn sex(sex: Sex) -> String {
    if sex == Sex::Unknown { "not known".to_owned() } else { sex.spelling().to_owned() }
}

/// An age in words, with how sure it is.
pub fn age(hatched: Option<(jiff::civil::Date, Basis)>, as_of: jiff::civil::Date) -> Shown {
    let Some((date, basis)) = hatched else { return Shown::missing() };
    let days = f64::from(crate::figures::calendar::days_between(date, as_of).max(0));
    let about = if basis == Basis::Estimated { "about " } else { "" };
    let sure = if basis == Basis::Estimated { "estimated" } else { "known" };
    Shown::plain(format!(
        "{about}{} (hatched {}, {sure})",
        print::days(days).first,
        long_date(date)
    ))
}

/// The text with its first letter as a capital.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}
