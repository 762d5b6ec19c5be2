//! Why a figure is absent, in the language of a sheet.

use crate::figures::Absence;

use super::edition::Edition;

/// A reason in words: a part of a sentence.
pub(super) fn told(edition: &Edition<'_>, reason: &Absence) -> String {
    edition.say(match reason {
        Absence::NoEnclosure => "absent-enclosure",
        Absence::NoInside => "absent-inside",
        Absence::NoWarmAndCool => "absent-warm-and-cool",
        Absence::NoRoomByDay => "absent-room-by-day",
        Absence::NoColdestNight => "absent-coldest-night",
        Absence::NoAirExchange => "absent-air-exchange",
        Absence::NoWalls => "absent-walls",
        Absence::Material(name) => {
            return edition.tell("absent-material", [("material", name.as_str().into())]);
        }
        Absence::NoCriticalLow => "absent-critical-low",
        Absence::RoomStaysAbove(celsius) => {
            let celsius = edition.number(*celsius, 1);
            return edition.tell("absent-room-stays-above", [("celsius", celsius.into())]);
        }
        Absence::ColderAlready => "absent-colder-already",
        Absence::NoBand => "absent-band",
        Absence::OpenBand => "absent-band-end",
        Absence::OneDistance => "absent-second-distance",
        Absence::NotFalling => "absent-not-falling",
        Absence::BeyondReadings(near, far) => {
            let (near, far) = (edition.number(*near, 0), edition.number(*far, 0));
            let cm = [("near", near.into()), ("far", far.into())];
            return edition.tell("absent-beyond-readings", cm);
        }
        Absence::NoAdultLength => "absent-adult-length",
        Absence::TooSmall => "absent-too-small",
        Absence::DoesForLongest => "absent-does-for-longest",
        Absence::NotKnown => "absent-not-known",
        Absence::Formula(reason) => return reason.clone(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::Model;

    #[test]
    fn a_reason_reads_as_it_is_told_in_the_figures() {
        let model = Model::default();
        let edition = Edition::further(&model, "en");
        let reasons = [
            Absence::NoEnclosure,
            Absence::NoInside,
            Absence::NoWarmAndCool,
            Absence::NoRoomByDay,
            Absence::NoColdestNight,
            Absence::NoAirExchange,
            Absence::NoWalls,
            Absence::Material("cork".to_owned()),
            Absence::NoCriticalLow,
            Absence::RoomStaysAbove(12.25),
            Absence::ColderAlready,
            Absence::NoBand,
            Absence::OpenBand,
            Absence::OneDistance,
            Absence::NotFalling,
            Absence::BeyondReadings(20.0, 61.5),
            Absence::NoAdultLength,
            Absence::TooSmall,
            Absence::DoesForLongest,
            Absence::NotKnown,
            Absence::Formula("length_m is 9, outside 0.1 to 5".to_owned()),
        ];
        for reason in reasons {
            // A page keeps a number and its unit together.
            assert_eq!(told(&edition, &reason).replace('\u{a0}', " "), reason.to_string());
        }
    }
}
