//! The distance at which a lamp gives a UV index.
//!
//! A lamp in a reflector follows no law of distance exactly, so the distance comes from readings of that
//! lamp, as a power of the distance fitted to them; never from another lamp, and never far beyond where it
//! was read. A point source would fall with the square of the distance, a long tube close by with the
//! distance itself; the one published pair of readings falls with the power 1.55.

use super::domain::{OutOfRange, within};

/// How far beyond the readings the fit is believed, as a factor of the distance.
const EXTRAPOLATION: f64 = 1.5;

/// One reading of a lamp.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UvReading {
    /// The distance from the lamp.
    pub distance_cm: f64,
    /// The UV index there, through the mesh or glass that stays in place.
    pub uvi: f64,
}

/// The UV index of one lamp as a power of the distance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LampFit {
    /// The natural logarithm of the index at 1 cm, were the fit to reach that far.
    ln_at_one_cm: f64,
    /// By which power of the distance the index falls: 2 for a point, 1 for a long tube close by.
    pub exponent: f64,
    /// The sum of squared residuals of the logarithm of the index.
    pub residual_sum_of_squares: f64,
    /// The readings.
    pub readings: usize,
    mean_ln_distance: f64,
    spread: f64,
    nearest_cm: f64,
    farthest_cm: f64,
}

/// A value and the ends of its 90 % interval; the ends are `None` when there is nothing to judge by.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Likely {
    /// The likeliest value.
    pub value: f64,
    /// Low and high end, from three readings on.
    pub interval: Option<(f64, f64)>,
}

/// Why a lamp's readings give no fit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoLampFit {
    /// A reading is not one.
    Reading(OutOfRange),
    /// Fewer than two distances differ.
    OneDistance,
    /// The index does not fall with the distance.
    NotFalling,
}

/// Returns the power of the distance that fits readings of one lamp best.
///
/// Ordinary least squares of ln UVI on ln distance. Two readings give a line and no idea of its error.
/// Valid for distances of 1 to 300 cm and an index of 0.05 to 60.
///
/// # Errors
///
/// [`NoLampFit`] when a reading is out of range, all are at one distance, or the index rises with distance.
///
/// # Example
///
/// ```
/// use wardsheet::figures::formula::uv_distance::{UvReading, fit_lamp};
///
/// let reading = |distance_cm, uvi| UvReading { distance_cm, uvi };
/// let lamp = fit_lamp(&[reading(20.0, 5.2), reading(30.0, 2.7), reading(40.0, 1.7)]).expect("a lamp");
/// let distance = lamp.distance_cm(2.0).expect("within reach");
/// assert!((35.0..37.0).contains(&distance.value));
/// ```
pub fn fit_lamp(readings: &[UvReading]) -> Result<LampFit, NoLampFit> {
    let mut points = Vec::with_capacity(readings.len());
    for reading in readings {
        let distance = within("distance_cm", reading.distance_cm, 1.0, 300.0);
        let uvi = within("uvi", reading.uvi, 0.05, 60.0);
        let distance = distance.map_err(NoLampFit::Reading)?;
        points.push((libm::log(distance), libm::log(uvi.map_err(NoLampFit::Reading)?)));
    }
    let count = points.len() as f64;
    let mean_x = points.iter().map(|point| point.0).sum::<f64>() / count;
    let mean_y = points.iter().map(|point| point.1).sum::<f64>() / count;
    let spread: f64 = points.iter().map(|point| (point.0 - mean_x) * (point.0 - mean_x)).sum();
    if points.len() < 2 || spread < 1e-6 {
        return Err(NoLampFit::OneDistance);
    }
    let together: f64 = points.iter().map(|point| (point.0 - mean_x) * (point.1 - mean_y)).sum();
    let exponent = -together / spread;
    if exponent <= 0.0 {
        return Err(NoLampFit::NotFalling);
    }
    let ln_at_one_cm = mean_y + exponent * mean_x;
    let missed = points.iter().map(|&(x, y)| y - ln_at_one_cm + exponent * x);
    let distances = || readings.iter().map(|reading| reading.distance_cm);
    Ok(LampFit {
        ln_at_one_cm,
        exponent,
        residual_sum_of_squares: missed.map(|residual| residual * residual).sum(),
        readings: readings.len(),
        mean_ln_distance: mean_x,
        spread,
        nearest_cm: distances().fold(f64::INFINITY, f64::min),
        farthest_cm: distances().fold(0.0, f64::max),
    })
}

/// Two distances between which a lamp gives a band of the UV index.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DistanceBand {
    /// Nearer than this the index is above the band.
    pub nearest_cm: f64,
    /// Farther than this it is below the band.
    pub farthest_cm: f64,
}

impl LampFit {
    /// The index at 1 cm that the fit runs from; a constant of the fit, not a reading to expect.
    #[must_use]
    pub fn constant(&self) -> f64 {
        libm::exp(self.ln_at_one_cm)
    }

    /// The distances between which the fit is believed, in cm.
    #[must_use]
    pub fn reach_cm(&self) -> (f64, f64) {
        (self.nearest_cm / EXTRAPOLATION, self.farthest_cm * EXTRAPOLATION)
    }

    /// The UV index at `distance_cm`, with the interval in which one more reading would lie.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] beyond [`LampFit::reach_cm`].
    pub fn uvi(&self, distance_cm: f64) -> Result<Likely, OutOfRange> {
        let (nearest_cm, farthest_cm) = self.reach_cm();
        let x = libm::log(within("distance_cm", distance_cm, nearest_cm, farthest_cm)?);
        let y = self.ln_at_one_cm - self.exponent * x;
        let interval =
            self.error_of_reading(x).map(|error| (libm::exp(y - error), libm::exp(y + error)));
        Ok(Likely { value: libm::exp(y), interval })
    }

    /// The distance in cm at which the lamp gives `uvi`.
    ///
    /// The interval is that of the index, carried over to the distance.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the distance would be beyond [`LampFit::reach_cm`]: read the lamp there first.
    pub fn distance_cm(&self, uvi: f64) -> Result<Likely, OutOfRange> {
        within("uvi", uvi, 0.05, 60.0)?;
        let x = (self.ln_at_one_cm - libm::log(uvi)) / self.exponent;
        let (nearest_cm, farthest_cm) = self.reach_cm();
        let value = within("distance_cm", libm::exp(x), nearest_cm, farthest_cm)?;
        let interval = self.error_of_reading(x).map(|error| {
            let error = error / self.exponent;
            (libm::exp(x - error), libm::exp(x + error))
        });
        Ok(Likely { value, interval })
    }

    /// The distances between which the lamp gives an index within `uvi`; an index of nought has no far end.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the band lies beyond [`LampFit::reach_cm`], or when its high end is not above
    /// its low end. A low end below the index at the farthest believed distance ends the band there.
    pub fn distances_cm(
        &self,
        (low_uvi, high_uvi): (f64, f64),
    ) -> Result<DistanceBand, OutOfRange> {
        within("low_uvi", low_uvi, 0.0, high_uvi)?;
        let nearest_cm = self.distance_cm(high_uvi)?.value;
        let (_, reach_cm) = self.reach_cm();
        let faintest = self.uvi(reach_cm)?.value;
        let farthest_cm =
            if low_uvi <= faintest { reach_cm } else { self.distance_cm(low_uvi)?.value };
        Ok(DistanceBand { nearest_cm, farthest_cm })
    }

    /// Half the 90 % interval of ln UVI for one more reading; `None` below three readings.
    fn error_of_reading(&self, ln_distance: f64) -> Option<f64> {
        let freedom = self.readings.checked_sub(2).filter(|&freedom| freedom > 0)?;
        let variance = self.residual_sum_of_squares / freedom as f64;
        let off = ln_distance - self.mean_ln_distance;
        let share = 1.0 + 1.0 / self.readings as f64 + off * off / self.spread;
        Some(student_t_95(freedom) * (variance * share).sqrt())
    }
}

/// The 95 % quantile of Student's t, to 0.5 % (a table for few degrees of freedom, then its expansion).
fn student_t_95(freedom: usize) -> f64 {
    const FEW: [f64; 10] = [6.314, 2.920, 2.353, 2.132, 2.015, 1.943, 1.895, 1.860, 1.833, 1.812];
    let many = freedom as f64;
    FEW.get(freedom - 1).copied().unwrap_or(1.645 + 1.524 / many + 1.42 / (many * many))
}

#[cfg(test)]
mod tests;
