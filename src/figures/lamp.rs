//! A lamp's distance: where it gives the species' ultraviolet band, from a keeper's own meter readings.

use crate::model::housing::Lamp;

use super::absence::Absence;
use super::formula::uv_distance::{LampFit, NoLampFit, UvReading, fit_lamp};
use super::working::{Ends, Working, number};

/// Where one lamp gives the species' band.
#[derive(Debug, Clone, PartialEq)]
pub struct LampDistance {
    /// The kind of lamp.
    pub lamp: String,
    /// Nearer than this the index is above the band, cm.
    pub nearest_cm: f64,
    /// Farther than this it is below the band, or was not measured, cm.
    pub farthest_cm: f64,
    /// The 90 % interval of the nearest distance, from three readings on, cm.
    pub nearest_interval_cm: Option<(f64, f64)>,
    /// The species' band of the ultraviolet index.
    pub band_uvi: (f64, f64),
    /// The keeper's readings: distance in cm and index.
    pub readings: Vec<(f64, f64)>,
    /// The index against the distance in cm, as far as the readings speak for.
    pub curve: Vec<(f64, f64)>,
    /// How they were worked out.
    pub working: Working,
}

/// Works out at which distances a lamp gives a band of the ultraviolet index.
///
/// Distances in cm, from at least two readings of this very lamp at different distances; never more than 1.5 times beyond them.
/// Source: ordinary least squares on the logarithms; see [`super::formula::uv_distance`].
///
/// # Errors
/// Why there is no such distance: too few readings, or the band lies beyond them.
pub fn distance(lamp: &Lamp, band: Option<Ends>) -> Result<LampDistance, Absence> {
    let band = band.ok_or(Absence::NoBand)?;
    let (low, high) = (band.0.unwrap_or(0.0), band.1.ok_or(Absence::OpenBand)?);
    let readings: Vec<UvReading> = lamp
        .readings
        .iter()
        .map(|reading| UvReading { distance_cm: reading.distance.cm(), uvi: reading.uvi.uvi() })
        .collect();
    let fit = fit_lamp(&readings).map_err(|reason| match reason {
        NoLampFit::Reading(reason) => Absence::Formula(reason.to_string()),
        NoLampFit::OneDistance => Absence::OneDistance,
        NoLampFit::NotFalling => Absence::NotFalling,
    })?;
    let reach = fit.reach_cm();
    let beyond = || Absence::BeyondReadings(reach.0, reach.1);
    let distances = fit.distances_cm((low, high)).map_err(|_| beyond())?;
    let nearest = fit.distance_cm(high).map_err(|_| beyond())?;
    Ok(LampDistance {
        lamp: lamp.kind.clone(),
        nearest_cm: distances.nearest_cm,
        farthest_cm: distances.farthest_cm,
        nearest_interval_cm: nearest.interval,
        band_uvi: (low, high),
        readings: readings.iter().map(|reading| (reading.distance_cm, reading.uvi)).collect(),
        curve: curve(&fit, reach),
        working: working(lamp, &fit, (low, high), (distances.nearest_cm, distances.farthest_cm)),
    })
}

/// How many parts a curve has.
const PARTS: u32 = 24;

fn curve(fit: &LampFit, (near, far): (f64, f64)) -> Vec<(f64, f64)> {
    let shares = (0..=PARTS).map(|part| f64::from(part) / f64::from(PARTS));
    let places = shares.map(|share| near + (far - near) * share);
    places.filter_map(|cm| Some((cm, fit.uvi(cm.clamp(near, far)).ok()?.value))).collect()
}

fn working(
    lamp: &Lamp,
    fit: &LampFit,
    (low, high): (f64, f64),
    (nearest, farthest): (f64, f64),
) -> Working {
    let mut working = Working::new(
        format!("Distance of the {}", lamp.kind),
        "UVI = A / r^n, fitted to the keeper's readings; r = (A / UVI)^(1/n)",
        "least squares on the logarithms; the power lies between 1 (a long tube close by) and 2 (a point)",
    );
    for reading in &lamp.readings {
        working.step(format!(
            "read {} UVI at {} cm",
            number(reading.uvi.uvi(), 2),
            number(reading.distance.cm(), 1)
        ));
    }
    working.step(format!("A = {}, n = {}", number(fit.constant(), 1), number(fit.exponent, 3)));
    working.step(format!(
        "{}–{} UVI at {}–{} cm",
        number(low, 2),
        number(high, 2),
        number(nearest, 1),
        number(farthest, 1)
    ));
    working.assume(
        "Read through the mesh or glass that stays in place, at the animal's back, the lamp warm.",
    );
    working
}
