//! What heaters and lamps use and cost.

use super::domain::{OutOfRange, at_least, within};

/// The days in a month, a year being twelve of them.
pub const DAYS_PER_MONTH: f64 = 365.0 / 12.0;

/// How hard a heater on a thermostat works.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Duty {
    /// The share of the time that it is on, at most 1.
    pub share: f64,
    /// Whether it cannot hold the set point even when it is on all the time.
    pub too_small: bool,
}

/// Returns how hard heaters of `heaters_w` in all work to make up a loss of `loss_w`.
///
/// # Errors
///
/// [`OutOfRange`] when the loss is negative or the heaters have no power.
///
/// # Example
///
/// ```
/// use wardsheet::figures::formula::electricity::heater_duty;
///
/// let duty = heater_duty(81.0, 100.0)?;
/// assert_eq!((duty.share, duty.too_small), (0.81, false));
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: conservation of energy.
pub fn heater_duty(loss_w: f64, heaters_w: f64) -> Result<Duty, OutOfRange> {
    at_least("loss_w", loss_w, 0.0)?;
    at_least("heaters_w", heaters_w, f64::MIN_POSITIVE)?;
    let share = loss_w / heaters_w;
    Ok(Duty { share: share.min(1.0), too_small: share > 1.0 })
}

/// Returns the energy in kWh that `power_w` uses over `hours_per_day` on each of `days`.
///
/// For a heater on a thermostat the power is its duty's share of its watts; for a lamp on a timer it is the
/// lamp's watts.
///
/// # Errors
///
/// [`OutOfRange`] when the power or the days are negative, or the hours not within 0 to 24.
///
/// Source: the definition of the kilowatt hour.
pub fn energy_kwh(power_w: f64, hours_per_day: f64, days: f64) -> Result<f64, OutOfRange> {
    at_least("power_w", power_w, 0.0)?;
    within("hours_per_day", hours_per_day, 0.0, 24.0)?;
    at_least("days", days, 0.0)?;
    Ok(power_w * hours_per_day * days / 1000.0)
}

/// Returns the mean power in W of a loss that is `day_w` for `day_hours` and `night_w` for the rest.
///
/// # Errors
///
/// [`OutOfRange`] when a loss is negative or the hours not within 0 to 24.
pub fn mean_power_w(day_w: f64, night_w: f64, day_hours: f64) -> Result<f64, OutOfRange> {
    at_least("day_w", day_w, 0.0)?;
    at_least("night_w", night_w, 0.0)?;
    within("day_hours", day_hours, 0.0, 24.0)?;
    Ok((day_w * day_hours + night_w * (24.0 - day_hours)) / 24.0)
}

/// Returns the cost of `energy_kwh` at `price_per_kwh`, in the currency of the price.
///
/// # Errors
///
/// [`OutOfRange`] when either is negative.
pub fn energy_cost(energy_kwh: f64, price_per_kwh: f64) -> Result<f64, OutOfRange> {
    at_least("energy_kwh", energy_kwh, 0.0)?;
    at_least("price_per_kwh", price_per_kwh, 0.0)?;
    Ok(energy_kwh * price_per_kwh)
}

/// What insulation saves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Saving {
    /// The energy saved in kWh a year.
    pub energy_kwh_per_year: f64,
    /// The money saved a year, in the currency of the price.
    pub cost_per_year: f64,
    /// The years after which the insulation has paid for itself; `None` when it saves nothing.
    pub paid_back_years: Option<f64>,
}

/// Returns what a lower loss saves: `before_w` and `after_w` are means over the year.
///
/// An after above the before saves nothing rather than less than nothing.
///
/// # Errors
///
/// [`OutOfRange`] when an argument is negative.
///
/// # Example
///
/// Eighteen watts less, at 0.30 a kilowatt hour, against insulation that costs 24:
///
/// ```
/// use wardsheet::figures::formula::electricity::saving;
///
/// let saved = saving(80.0, 62.0, 0.30, 24.0)?;
/// assert_eq!(saved.cost_per_year.round(), 47.0);
/// assert!(saved.paid_back_years.is_some_and(|years| years < 0.6));
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
pub fn saving(
    before_w: f64,
    after_w: f64,
    price_per_kwh: f64,
    insulation_cost: f64,
) -> Result<Saving, OutOfRange> {
    at_least("before_w", before_w, 0.0)?;
    at_least("after_w", after_w, 0.0)?;
    at_least("insulation_cost", insulation_cost, 0.0)?;
    let energy_kwh_per_year = energy_kwh((before_w - after_w).max(0.0), 24.0, 365.0)?;
    let cost_per_year = energy_cost(energy_kwh_per_year, price_per_kwh)?;
    let paid_back_years = (cost_per_year > 0.0).then(|| insulation_cost / cost_per_year);
    Ok(Saving { energy_kwh_per_year, cost_per_year, paid_back_years })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_heater_that_is_large_enough_uses_what_the_enclosure_loses(
            loss in 1.0..200.0_f64, spare in 1.0..3.0_f64,
        ) {
            let duty = heater_duty(loss, loss * spare).expect("a heater");
            let used = energy_kwh(duty.share * loss * spare, 24.0, 30.0).expect("energy");
            let lost = energy_kwh(loss, 24.0, 30.0).expect("energy");
            prop_assert!((used / lost - 1.0).abs() < 1e-12);
        }

        #[test]
        fn twelve_months_are_a_year(power in 0.0..500.0_f64) {
            let month = energy_kwh(power, 24.0, DAYS_PER_MONTH).expect("energy");
            let year = energy_kwh(power, 24.0, 365.0).expect("energy");
            prop_assert!((12.0 * month - year).abs() < 1e-9);
        }
    }

    #[test]
    fn day_and_night_are_weighed_by_their_hours() {
        assert_eq!(mean_power_w(100.0, 40.0, 6.0), Ok(55.0));
    }

    #[test]
    fn insulation_that_does_not_help_is_never_paid_back() {
        let saved = saving(50.0, 50.0, 0.3, 20.0).expect("a saving");
        assert_eq!((saved.energy_kwh_per_year, saved.paid_back_years), (0.0, None));
    }

    #[test]
    fn heaters_without_power_are_refused() {
        assert_eq!(heater_duty(50.0, 0.0).expect_err("no heater").argument, "heaters_w");
        assert_eq!(energy_kwh(50.0, 25.0, 1.0).expect_err("long day").argument, "hours_per_day");
    }
}
