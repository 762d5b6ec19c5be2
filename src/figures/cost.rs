//! What keeping costs in a year: electricity, food and lamps, at the site's prices.

use crate::model::housing::{Housing, Lamp};
use crate::model::{Site, Species};
use crate::quantity::{Price, PriceUnit};

use super::feeding::StageFeeding;
use super::formula::electricity::{DAYS_PER_MONTH, energy_kwh};
use super::formula::heat::{Face, HeatedBox, UNCERTAINTY};
use super::heat::{asked_c, sheet};
use super::working::{Working, ends, middle, number};

/// The names of what is absent where a cost cannot be worked out.
pub const FIGURES: [&str; 2] = ["commitment.running_cost_per_year", "commitment.currency"];

/// The running cost of a year.
#[derive(Debug, Clone, PartialEq)]
pub struct RunningCost {
    /// Lowest and highest.
    pub per_year: (f64, f64),
    /// The part of it that is electricity, lowest and highest.
    pub electricity: (f64, f64),
    /// The currency, three letters.
    pub currency: String,
    /// How it was worked out.
    pub working: Working,
}

/// The room that a species' cost is worked out in, °C; common practice, no source.
const ROOM_C: f64 = 20.0;
const YEAR_DAYS: f64 = 365.25;

/// What a meal costs. None where the price is for another unit than the meal is known in.
pub fn meal_price(price: &Price, mass_g: Option<f64>, count: f64) -> Option<f64> {
    match price.per {
        PriceUnit::Each => Some(price.amount * count),
        PriceUnit::Gram => Some(price.amount * mass_g?),
        PriceUnit::Kilogram => Some(price.amount * mass_g? / 1000.0),
        PriceUnit::KilowattHour => None,
    }
}

fn start() -> Working {
    Working::new(
        "Running cost of a year",
        "electricity (kWh × price) + food (meals × price) + lamps (price / years that they serve)",
        "the heat loss and the feeding table of this sheet, at the site's prices",
    )
}

/// Works out the running cost of a grown animal of a species in the enclosure that is to be built for it.
///
/// The box is taken as 18 mm plywood with a 4 mm glass front, one air change an hour, in a room at 20 °C; electricity may be off
/// by a quarter either way. Vets, the animal and its set-up are left out.
///
/// # Errors
/// Which of the things that must be known is not.
pub fn of_species(
    site: &Site,
    species: &Species,
    build_cm: Option<[f64; 3]>,
    grown: Option<&StageFeeding>,
) -> Result<RunningCost, String> {
    let (price, _) = site.electricity.as_ref().ok_or("the site gives no price of a kWh")?;
    let build_cm = build_cm.ok_or("no enclosure could be worked out")?;
    let inside_c = asked_c(species).ok_or("the species gives no warm and cool side of the air")?;
    let (plywood, glass) = ([sheet("plywood", 0.018)?], [sheet("glass", 0.004)?]);
    let wall = Face::ToRoom(&plywood);
    let [length_m, width_m, height_m] = build_cm.map(|cm| cm / 100.0);
    let enclosure = HeatedBox {
        length_m,
        width_m,
        height_m,
        front: Face::ToRoom(&glass),
        back: wall,
        sides: [wall; 2],
        top: wall,
        floor: wall,
        air_changes_per_h: 1.0,
    };
    let loss_w =
        enclosure.heat_loss().map_err(|reason| reason.to_string())?.power_w(inside_c, ROOM_C);
    let kwh = energy_kwh(loss_w, 24.0, YEAR_DAYS).map_err(|reason| reason.to_string())?;
    let electricity = kwh * price.amount;
    let mut working = start();
    working.step(format!(
        "{} W × 8766 h = {} kWh × {} = {} {} of electricity",
        number(loss_w, 0),
        number(kwh, 0),
        number(price.amount, 3),
        number(electricity, 0),
        price.currency
    ));
    working.assume("18 mm plywood, a 4 mm glass front, one air change an hour, a room at 20 °C; electricity may be off by a quarter either way.");
    let electricity = (electricity * (1.0 - UNCERTAINTY), electricity * (1.0 + UNCERTAINTY));
    let mut per_year = electricity;
    match grown.and_then(|stage| food_per_year(site, stage)) {
        Some((low, high)) => {
            working.step(format!(
                "food: {} to {} {}",
                number(low, 0),
                number(high, 0),
                price.currency
            ));
            per_year = (per_year.0 + low, per_year.1 + high);
        }
        None => working.assume("Food is left out: the site gives no price for it."),
    }
    working.assume("Lamps, vets, the animal and its set-up are left out.");
    Ok(RunningCost { per_year, electricity, currency: price.currency.clone(), working })
}

fn food_per_year(site: &Site, stage: &StageFeeding) -> Option<(f64, f64)> {
    let price = site.food_prices.get(stage.meal.as_deref()?)?;
    let (fewest, most) = stage.meals_per_year?;
    let (low_g, high_g) = stage.mass_g.unwrap_or((None, None));
    Some((fewest? * meal_price(price, low_g, 1.0)?, most? * meal_price(price, high_g, 1.0)?))
}

/// What is known of one animal's consumption.
pub struct Consumption<'a> {
    /// Its enclosure.
    pub housing: &'a Housing,
    /// What its heaters use in a month, kWh.
    pub heat_kwh_per_month: f64,
    /// What it eats, its mass and the days to the next meal.
    pub meal: Option<(&'a str, Option<f64>, f64)>,
    /// How many prey a meal is.
    pub count: f64,
}

/// Works out the running cost of one animal: its heaters, its lamps and its food.
///
/// # Errors
/// When the site gives no price of a kWh.
pub fn of_animal(site: &Site, consumption: &Consumption<'_>) -> Result<RunningCost, String> {
    let (price, _) = site.electricity.as_ref().ok_or("the site gives no price of a kWh")?;
    let mut working = start();
    let heat = consumption.heat_kwh_per_month * YEAR_DAYS / DAYS_PER_MONTH;
    let lamps: f64 = consumption.housing.lamps.iter().filter_map(lamp_kwh).sum();
    let electricity = (heat + lamps) * price.amount;
    working.step(format!(
        "heaters {} kWh + lamps {} kWh at {} = {} {}",
        number(heat, 0),
        number(lamps, 0),
        number(price.amount, 3),
        number(electricity, 0),
        price.currency
    ));
    let mut fixed = lamps * price.amount;
    for lamp in &consumption.housing.lamps {
        let (Some(new), Some(serves)) = (site.lamp_prices.get(&lamp.kind), lamp.replace_after)
        else {
            continue;
        };
        if let Some(each) = meal_price(new, None, 1.0) {
            fixed += each / serves.years();
            working.step(format!(
                "{}: {} {} every {} years",
                lamp.kind,
                number(each, 2),
                price.currency,
                number(serves.years(), 1)
            ));
        }
    }
    match consumption
        .meal
        .and_then(|(food, mass_g, days)| Some((site.food_prices.get(food)?, mass_g, days)))
    {
        Some((food, mass_g, days)) => {
            let each = meal_price(food, mass_g, consumption.count).unwrap_or(0.0);
            working.step(format!(
                "food: {} meals at {} {}",
                number(YEAR_DAYS / days, 0),
                number(each, 2),
                price.currency
            ));
            fixed += each * YEAR_DAYS / days;
        }
        None => working.assume("Food is left out: the site gives no price for it."),
    }
    let heated = heat * price.amount;
    working.assume("Heating may be off by a quarter either way. Vets are left out.");
    let per_year = (heated * (1.0 - UNCERTAINTY) + fixed, heated * (1.0 + UNCERTAINTY) + fixed);
    let lit = lamps * price.amount;
    let electricity = (heated * (1.0 - UNCERTAINTY) + lit, heated * (1.0 + UNCERTAINTY) + lit);
    Ok(RunningCost { per_year, electricity, currency: price.currency.clone(), working })
}

fn lamp_kwh(lamp: &Lamp) -> Option<f64> {
    let days = middle(lamp.hours.as_ref().map(|(hours, _)| ends(hours)))?;
    energy_kwh(lamp.power?.watts(), days * 24.0, YEAR_DAYS).ok()
}
