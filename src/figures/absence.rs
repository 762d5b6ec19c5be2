//! Why a figure of an animal's upkeep is absent, as sheets tell it in their language.

/// A reason. Its text is for the document of figures and for workings.
#[derive(Debug, Clone, PartialEq)]
pub enum Absence {
    /// The animal has no enclosure.
    NoEnclosure,
    /// The enclosure has no inside measures.
    NoInside,
    /// The species has no warm and cool side.
    NoWarmAndCool,
    /// The room has no temperature by day.
    NoRoomByDay,
    /// The room has no coldest night.
    NoColdestNight,
    /// The enclosure has no air exchange.
    NoAirExchange,
    /// The enclosure has no walls.
    NoWalls,
    /// A material that no table has.
    Material(String),
    /// The species has no temperature that harms it.
    NoCriticalLow,
    /// The room stays above that temperature, °C.
    RoomStaysAbove(f64),
    /// It is colder than that with the power on.
    ColderAlready,
    /// The species has no ultraviolet band.
    NoBand,
    /// The band has no upper end.
    OpenBand,
    /// A lamp was read at one distance.
    OneDistance,
    /// A lamp's readings do not fall with the distance.
    NotFalling,
    /// A lamp gives the band at no distance between these, cm.
    BeyondReadings(f64, f64),
    /// No adult length.
    NoAdultLength,
    /// The enclosure is too small already.
    TooSmall,
    /// The enclosure does for good.
    DoesForLongest,
    /// A length, a measure or a rule is missing.
    NotKnown,
    /// A formula does not hold for what was put in.
    Formula(String),
}

impl std::fmt::Display for Absence {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        use super::working::number;
        out.write_str(match self {
            Absence::NoEnclosure => "no enclosure is given",
            Absence::NoInside => "the enclosure's inside measures are not given",
            Absence::NoWarmAndCool => "the species gives no warm and cool side of the air",
            Absence::NoRoomByDay => "the room's temperature by day is not given",
            Absence::NoColdestNight => "the room's coldest night is not given",
            Absence::NoAirExchange => "no air exchange is given for the enclosure",
            Absence::NoWalls => "what the walls are made of is not given",
            Absence::Material(name) => {
                return write!(out, "`{name}` is not in the table of materials");
            }
            Absence::NoCriticalLow => {
                "the species gives no temperature below which it comes to harm"
            }
            Absence::RoomStaysAbove(celsius) => {
                return write!(out, "the room does not fall below {} °C", number(*celsius, 1));
            }
            Absence::ColderAlready => "it is colder than that with the power on",
            Absence::NoBand => "the species gives no ultraviolet band",
            Absence::OpenBand => "the species' ultraviolet band has no upper end",
            Absence::OneDistance => "readings at two distances or more are needed",
            Absence::NotFalling => "the index does not fall with the distance: read the lamp again",
            Absence::BeyondReadings(near, far) => {
                let (near, far) = (number(*near, 0), number(*far, 0));
                return write!(
                    out,
                    "the band lies beyond the {near}–{far} cm that the readings speak for"
                );
            }
            Absence::NoAdultLength => "no adult length is known",
            Absence::TooSmall => "it is too small already",
            Absence::DoesForLongest => "it does for the longest adult that is expected",
            Absence::NotKnown => {
                "its length, its enclosure's measures or a standard's rule is not known"
            }
            Absence::Formula(reason) => reason,
        })
    }
}

impl From<Absence> for String {
    fn from(reason: Absence) -> String {
        reason.to_string()
    }
}
