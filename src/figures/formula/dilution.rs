//! How much of a cleaner or disinfectant goes into a bucket.
//!
//! "One to ten" and "five per cent" are each written for two different mixtures, so the strength says
//! which it means. Follow the label where it disagrees. Never mix bleach with ammonia or with an acid: the gas
//! is poisonous, and many cleaners hold one or the other.

use super::domain::{OutOfRange, within};

/// The days that mixed bleach keeps where air or light reach it.
///
/// Source: Northeast Partners in Amphibian and Reptile Conservation, Disinfection of field equipment.
pub const MIXED_BLEACH_KEEPS_DAYS: f64 = 5.0;

/// How strong a mixture is to be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Strength {
    /// One part in so many parts of the whole: 1 in 32 is 1 part and 31 of water.
    OnePartIn(f64),
    /// One part to so many parts of water: 1 to 20 is 21 parts in all.
    OnePartTo(f64),
    /// So many per cent of the bucket come from the bottle, whatever is in the bottle.
    PercentOfBottle(f64),
    /// So many per cent of active substance in the bucket, from a bottle that holds so many.
    PercentActive {
        /// Per cent wanted in the bucket.
        wanted: f64,
        /// Per cent in the bottle, as its label says.
        bottle: f64,
    },
}

/// What goes into a bucket.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mixture {
    /// From the bottle.
    pub bottle_ml: f64,
    /// Water, first in.
    pub water_ml: f64,
}

impl Strength {
    /// The share of the bucket that comes from the bottle.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the parts are not within 1 to 10 000 of the whole, a percentage is not within 0 to
    /// 100, or the bucket is to be stronger than the bottle.
    pub fn share(self) -> Result<f64, OutOfRange> {
        match self {
            Self::OnePartIn(parts) => Ok(1.0 / within("parts", parts, 1.0, 10_000.0)?),
            Self::OnePartTo(parts) => Ok(1.0 / (1.0 + within("parts", parts, 0.0, 10_000.0)?)),
            Self::PercentOfBottle(percent) => Ok(within("percent", percent, 0.0, 100.0)? / 100.0),
            Self::PercentActive { wanted, bottle } => {
                within("bottle_percent", bottle, 0.01, 100.0)?;
                Ok(within("wanted_percent", wanted, 0.0, bottle)? / bottle)
            }
        }
    }

    /// What goes into a bucket of `bucket_ml` in all.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] as for [`Strength::share`], or when the bucket is not within 1 ml to 1000 l.
    ///
    /// # Example
    ///
    /// A five-litre bucket at 3 % from a bottle of 5 %:
    ///
    /// ```
    /// use wardsheet::figures::formula::dilution::{Mixture, Strength};
    ///
    /// let strength = Strength::PercentActive { wanted: 3.0, bottle: 5.0 };
    /// assert_eq!(strength.mixture(5000.0)?, Mixture { bottle_ml: 3000.0, water_ml: 2000.0 });
    /// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
    /// ```
    pub fn mixture(self, bucket_ml: f64) -> Result<Mixture, OutOfRange> {
        within("bucket_ml", bucket_ml, 1.0, 1_000_000.0)?;
        let bottle_ml = self.share()? * bucket_ml;
        Ok(Mixture { bottle_ml, water_ml: bucket_ml - bottle_ml })
    }
}

/// Returns the last day on which a mixture of `mixed_day` may be used, days counted from any day.
///
/// # Errors
///
/// [`OutOfRange`] when it keeps for less than no time or more than ten years.
pub fn keeps_until_day(mixed_day: f64, keeps_days: f64) -> Result<f64, OutOfRange> {
    within("mixed_day", mixed_day, -1e7, 1e7)?;
    Ok(mixed_day + within("keeps_days", keeps_days, 0.0, 3653.0)?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn bottle_and_water_fill_the_bucket(parts in 1.0..500.0_f64, bucket in 100.0..20_000.0_f64) {
            for strength in [Strength::OnePartIn(parts), Strength::OnePartTo(parts)] {
                let mixture = strength.mixture(bucket).expect("a mixture");
                prop_assert!((mixture.bottle_ml + mixture.water_ml - bucket).abs() < 1e-9);
            }
            let mixture = Strength::OnePartTo(parts).mixture(bucket).expect("a mixture");
            prop_assert!((mixture.water_ml / mixture.bottle_ml / parts - 1.0).abs() < 1e-9);
        }

        #[test]
        fn the_active_substance_poured_in_is_what_the_bucket_holds(
            wanted in 0.1..5.0_f64, bottle in 5.0..40.0_f64, bucket in 500.0..10_000.0_f64,
        ) {
            let mixture = Strength::PercentActive { wanted, bottle }.mixture(bucket).expect("a mixture");
            let (poured, held) = (mixture.bottle_ml * bottle, bucket * wanted);
            prop_assert!((poured / held - 1.0).abs() < 1e-9);
        }
    }

    #[test]
    fn half_a_cup_to_the_gallon_is_one_part_in_thirty_two() {
        // A gallon of the United States is 16 cups.
        let mixture = Strength::OnePartIn(32.0).mixture(3785.4).expect("a mixture");
        assert!((mixture.bottle_ml - 3785.4 / 16.0 / 2.0).abs() < 1e-9);
    }

    #[test]
    fn one_in_ten_and_one_to_ten_are_not_the_same() {
        assert_eq!(Strength::OnePartIn(10.0).mixture(1100.0).expect("one").bottle_ml, 110.0);
        assert_eq!(Strength::OnePartTo(10.0).mixture(1100.0).expect("one").bottle_ml, 100.0);
    }

    #[test]
    fn a_bucket_is_not_stronger_than_the_bottle() {
        let strength = Strength::PercentActive { wanted: 6.0, bottle: 5.0 };
        assert_eq!(strength.mixture(1000.0).expect_err("too strong").argument, "wanted_percent");
    }

    #[test]
    fn mixed_bleach_is_thrown_away_after_five_days() {
        assert_eq!(keeps_until_day(100.0, MIXED_BLEACH_KEEPS_DAYS), Ok(105.0));
    }
}
