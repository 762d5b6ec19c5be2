//! The words of files and figures as they stand in a sentence.

use crate::figures::enclosure::Reason;
use crate::figures::space::Need;
use crate::model::standard::Measure;
use crate::model::stated::Stated;

use super::edition::Edition;

/// What a stated figure is: `figure-` and its name with strokes for dots. What names a form or a stage is one label for all.
pub(super) fn figure(edition: &Edition<'_>, stated: &Stated<'_>) -> String {
    let Some(of) = stated.of else {
        return edition.say(&format!("figure-{}", stated.name.replace('.', "-")));
    };
    let last = stated.name.rsplit('.').next().unwrap_or_default();
    let group = if stated.name.starts_with("size.") { "size-form" } else { "feeding-stage" };
    edition.tell(&format!("figure-{group}-{last}"), [("of", of.into())])
}

/// For whom a need is.
pub(super) fn for_whom(edition: &Edition<'_>, whom: &str) -> String {
    let word = |sex: &str| {
        edition.catalogue().find(&format!("whom-{sex}")).unwrap_or_else(|| sex.to_owned())
    };
    match whom.split_once(", ") {
        Some((sex, form)) => {
            edition.tell("whom-form", [("whom", word(sex).into()), ("form", form.into())])
        }
        None => word(whom),
    }
}

/// That a standard's figure could not be worked out, and why.
pub(super) fn unmet(edition: &Edition<'_>, need: &Need) -> String {
    let told = need.reason.as_ref().map(|reason| reason_told(edition, reason));
    let told = told.or_else(|| need.least.as_ref().err().cloned()).unwrap_or_default();
    edition.tell("unmet", [("reason", told.into())])
}

fn reason_told(edition: &Edition<'_>, reason: &Reason) -> String {
    let named = |measure: &Measure| {
        edition.say(match measure {
            Measure::TotalLength => "measure-total-length",
            Measure::SnoutVentLength => "measure-snout-vent-length",
            Measure::CarapaceLength => "measure-carapace-length",
            Measure::CarapaceWidth => "measure-carapace-width",
        })
    };
    match reason {
        Reason::NoAnimals => edition.say("unmet-no-animals"),
        Reason::NotALength => edition.say("unmet-not-a-length"),
        Reason::LengthNotGiven(measure) => {
            edition.tell("unmet-length-not-given", [("measure", named(measure).into())])
        }
        Reason::NoClass { measure, length_cm, up_to_cm } => edition.tell(
            "unmet-no-class",
            [
                ("measure", named(measure).into()),
                ("length", edition.number(*length_cm, 1).into()),
                ("last", edition.number(*up_to_cm, 1).into()),
            ],
        ),
        Reason::NoFurther { singly: true, .. } => edition.say("unmet-singly"),
        Reason::NoFurther { animals, .. } => {
            edition.tell("unmet-no-further", [("animals", i64::from(*animals).into())])
        }
        Reason::NoClasses => edition.say("unmet-no-classes"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::Model;

    #[test]
    fn a_reason_reads_as_it_is_told_in_the_figures() {
        let model = Model::default();
        let edition = Edition::further(&model, "en");
        let measure = Measure::SnoutVentLength;
        let reasons = [
            Reason::NoAnimals,
            Reason::NotALength,
            Reason::LengthNotGiven(measure),
            Reason::NoClass { measure, length_cm: 12.5, up_to_cm: 10.0 },
            Reason::NoFurther { animals: 1, singly: true },
            Reason::NoFurther { animals: 1, singly: false },
            Reason::NoFurther { animals: 4, singly: false },
            Reason::NoClasses,
        ];
        for reason in reasons {
            let told = format!("{}.", reason_told(&edition, &reason));
            // A page keeps a number and its unit together.
            let told = told.replace('\u{a0}', " ");
            assert_eq!(crate::sheets::animal::capital(&told), reason.to_string());
        }
    }

    #[test]
    fn a_form_is_named_behind_the_sex() {
        let model = Model::default();
        let edition = Edition::further(&model, "en");
        for whom in ["adult", "female, Dwarf", "male"] {
            assert_eq!(for_whom(&edition, whom), whom);
        }
    }
}
