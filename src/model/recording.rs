//! What data loggers have recorded of an enclosure.

use std::sync::Arc;

use crate::finding::{FileId, Place};

use super::cited::Named;

/// A data logger of an animal: a table and the map that tells how it is read.
#[derive(Debug, Clone, PartialEq)]
pub struct Logger {
    /// Where it is written.
    pub place: Place,
    /// The name of the table in `readings/`.
    pub readings: Named,
    /// The name of the map in `maps/`.
    pub map: Named,
    /// The file of the readings, where it is there.
    pub file: Option<FileId>,
    /// What each probe recorded, in the order of the map. All the animals of a room share what its logger has recorded.
    pub recordings: Arc<[Recording]>,
}

/// What one probe recorded, in order of time.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Recording {
    /// The probe's name.
    pub probe: String,
    /// Its samples.
    pub samples: Vec<Sample>,
}

/// One reading of a probe. A year at one a minute is half a million of them, so that each is kept small.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// Seconds since the first moment of 1970 by the clock on the wall.
    pub at: i64,
    /// Degrees Celsius.
    pub celsius: Option<f32>,
    /// Per cent of relative humidity.
    pub percent: Option<f32>,
}
