//! Steady heat loss of an enclosure that stands in a room.
//!
//! One mean air temperature inside, one in the room, and the two joined by six faces and the air that is
//! exchanged. Left out: the radiation of a basking spot, frames and gaps as thermal bridges, evaporation,
//! and heat stored for later. The air exchange is a guess in most homes. So a loss is good to a quarter
//! either way ([`UNCERTAINTY`]), which is what a choice of heater needs.

use super::domain::{OutOfRange, at_least, within};

/// The share by which a loss may be wrong either way (an estimate, no source).
pub const UNCERTAINTY: f64 = 0.25;

/// The heat that a cubic metre of air at 20 °C carries off per kelvin, in Wh/(m³ K): 1.2041 kg/m³ of 1006 J/(kg K).
const AIR_HEAT_WH_PER_M3_K: f64 = 1.2041 * 1006.0 / 3600.0;

/// Which way heat leaves through a face.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HeatFlow {
    /// Through a wall.
    Horizontal,
    /// Through the top.
    Up,
    /// Through the floor.
    Down,
}

impl HeatFlow {
    /// The surface resistance in m² K/W of one side of a face with a room on that side.
    ///
    /// An enclosure stands in a room, so its outside has a room's resistance too, not the weather's 0.04.
    ///
    /// Source: ISO 6946, conventional surface resistances; numbers read in two secondary texts.
    #[must_use]
    pub fn surface_resistance_m2_k_per_w(self) -> f64 {
        match self {
            Self::Horizontal => 0.13,
            Self::Up => 0.10,
            Self::Down => 0.17,
        }
    }
}

/// One layer of a face.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Layer {
    /// Its thickness.
    pub thickness_m: f64,
    /// Its conductivity in W/(m K).
    pub conductivity_w_per_m_k: f64,
}

impl Layer {
    /// The thermal resistance in m² K/W.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the thickness is not within 0 to 1 m or the conductivity within 0.01 to 500.
    pub fn resistance_m2_k_per_w(&self) -> Result<f64, OutOfRange> {
        within("thickness_m", self.thickness_m, 0.0, 1.0)?;
        within("conductivity_w_per_m_k", self.conductivity_w_per_m_k, 0.01, 500.0)?;
        Ok(self.thickness_m / self.conductivity_w_per_m_k)
    }
}

/// Returns the U-value in W/(m² K) of layers between a room and the inside.
///
/// The order of the layers does not matter. Valid for plane faces of even make.
///
/// # Errors
///
/// [`OutOfRange`] when a layer is not one.
///
/// # Example
///
/// A wall of 18 mm plywood:
///
/// ```
/// use wardsheet::figures::formula::heat::{HeatFlow, Layer, u_value_w_per_m2_k};
///
/// let plywood = Layer { thickness_m: 0.018, conductivity_w_per_m_k: 0.13 };
/// let u = u_value_w_per_m2_k(&[plywood], HeatFlow::Horizontal)?;
/// assert_eq!((u * 100.0).round() / 100.0, 2.51);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: ISO 6946, thermal transmittance of building elements.
pub fn u_value_w_per_m2_k(layers: &[Layer], flow: HeatFlow) -> Result<f64, OutOfRange> {
    let surface = flow.surface_resistance_m2_k_per_w();
    u_value_between_w_per_m2_k(surface, layers, surface)
}

/// Returns the U-value in W/(m² K) of layers between two surfaces of given resistance in m² K/W.
///
/// # Errors
///
/// [`OutOfRange`] when a layer is not one, or a surface's resistance is not within 0.01 to 1.
///
/// Source: ISO 6946, as [`u_value_w_per_m2_k`].
pub fn u_value_between_w_per_m2_k(
    inner_m2_k_per_w: f64,
    layers: &[Layer],
    outer_m2_k_per_w: f64,
) -> Result<f64, OutOfRange> {
    let mut resistance = within("inner_m2_k_per_w", inner_m2_k_per_w, 0.01, 1.0)?
        + within("outer_m2_k_per_w", outer_m2_k_per_w, 0.01, 1.0)?;
    for layer in layers {
        resistance += layer.resistance_m2_k_per_w()?;
    }
    Ok(1.0 / resistance)
}

/// What a face of an enclosure is, for its heat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Face<'a> {
    /// Layers, with the room behind them.
    ToRoom(&'a [Layer]),
    /// Nothing gets through: it stands on or against something just as warm.
    Adiabatic,
}

/// A box in a room: its inside dimensions, its faces and its air exchange.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatedBox<'a> {
    /// Inside length, along the front.
    pub length_m: f64,
    /// Inside width, from front to back.
    pub width_m: f64,
    /// Inside height.
    pub height_m: f64,
    /// The front.
    pub front: Face<'a>,
    /// The back.
    pub back: Face<'a>,
    /// Each of the two sides.
    pub sides: [Face<'a>; 2],
    /// The top.
    pub top: Face<'a>,
    /// The floor.
    pub floor: Face<'a>,
    /// How often an hour the air inside is exchanged with the room's.
    pub air_changes_per_h: f64,
}

/// The heat that an enclosure loses per kelvin of difference to its room, in W/K, part by part.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatLoss {
    /// Through the front.
    pub front_w_per_k: f64,
    /// Through the back.
    pub back_w_per_k: f64,
    /// Through both sides.
    pub sides_w_per_k: f64,
    /// Through the top.
    pub top_w_per_k: f64,
    /// Through the floor.
    pub floor_w_per_k: f64,
    /// With the air.
    pub air_w_per_k: f64,
}

impl HeatedBox<'_> {
    /// Returns the heat loss per kelvin, through each face and with the air.
    ///
    /// Areas are taken inside, as if the walls were thin; valid for sides of 1 cm to 20 m and up to 100 air
    /// changes an hour.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when a dimension, a layer or the air exchange is outside its range.
    ///
    /// Source: the steady balance H = Σ U A + ρ c n V, as in EN ISO 13789 (from memory), with U after ISO 6946.
    pub fn heat_loss(&self) -> Result<HeatLoss, OutOfRange> {
        let length_m = within("length_m", self.length_m, 0.01, 20.0)?;
        let width_m = within("width_m", self.width_m, 0.01, 20.0)?;
        let height_m = within("height_m", self.height_m, 0.01, 20.0)?;
        let air_changes = within("air_changes_per_h", self.air_changes_per_h, 0.0, 100.0)?;
        let through = |face: Face<'_>, area_m2: f64, flow| match face {
            Face::ToRoom(layers) => u_value_w_per_m2_k(layers, flow).map(|u| u * area_m2),
            Face::Adiabatic => Ok(0.0),
        };
        let (end_m2, long_m2, flat_m2) =
            (width_m * height_m, length_m * height_m, length_m * width_m);
        let volume_m3 = flat_m2 * height_m;
        Ok(HeatLoss {
            front_w_per_k: through(self.front, long_m2, HeatFlow::Horizontal)?,
            back_w_per_k: through(self.back, long_m2, HeatFlow::Horizontal)?,
            sides_w_per_k: through(self.sides[0], end_m2, HeatFlow::Horizontal)?
                + through(self.sides[1], end_m2, HeatFlow::Horizontal)?,
            top_w_per_k: through(self.top, flat_m2, HeatFlow::Up)?,
            floor_w_per_k: through(self.floor, flat_m2, HeatFlow::Down)?,
            air_w_per_k: AIR_HEAT_WH_PER_M3_K * air_changes * volume_m3,
        })
    }
}

impl HeatLoss {
    /// The whole loss per kelvin.
    #[must_use]
    pub fn total_w_per_k(&self) -> f64 {
        self.front_w_per_k
            + self.back_w_per_k
            + self.sides_w_per_k
            + self.top_w_per_k
            + self.floor_w_per_k
            + self.air_w_per_k
    }

    /// The power in W that holds the inside at `inside_c` in a room at `room_c`.
    ///
    /// Nought where the room is as warm or warmer: no heater is needed.
    #[must_use]
    pub fn power_w(&self, inside_c: f64, room_c: f64) -> f64 {
        self.total_w_per_k() * (inside_c - room_c).max(0.0)
    }

    /// The share of the loss that goes with the air.
    ///
    /// `None` for a box that loses nothing.
    #[must_use]
    pub fn air_share(&self) -> Option<f64> {
        let total = self.total_w_per_k();
        (total > 0.0).then(|| self.air_w_per_k / total)
    }

    /// How far above its room the inside settles with heaters of `power_w` on all the time, in K.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the power is negative, or the box loses nothing and would heat up for ever.
    ///
    /// Source: the same balance, solved for the temperature.
    pub fn rise_at_k(&self, power_w: f64) -> Result<f64, OutOfRange> {
        at_least("power_w", power_w, 0.0)?;
        let total = at_least("heat_loss_w_per_k", self.total_w_per_k(), f64::MIN_POSITIVE)?;
        Ok(power_w / total)
    }

    /// The room temperature in °C above which heaters of `power_w`, on all the time, pass `limit_c` inside.
    ///
    /// In a warmer room every heater has to be off: a thermostat that sticks would take the animal past its
    /// limit. It is a mean over the enclosure; under a heater it is hotter.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] as for [`HeatLoss::rise_at_k`].
    ///
    /// # Example
    ///
    /// ```
    /// use wardsheet::figures::formula::heat::{Face, HeatedBox, Layer};
    ///
    /// let glass = [Layer { thickness_m: 0.004, conductivity_w_per_m_k: 1.0 }];
    /// let face = Face::ToRoom(&glass);
    /// let tank = HeatedBox { length_m: 0.6, width_m: 0.3, height_m: 0.3, front: face, back: face,
    ///     sides: [face; 2], top: face, floor: face, air_changes_per_h: 2.0 };
    /// let loss = tank.heat_loss()?;
    /// assert_eq!(loss.all_off_above_room_c(34.0, 40.0)?.round(), 23.0);
    /// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
    /// ```
    pub fn all_off_above_room_c(&self, limit_c: f64, power_w: f64) -> Result<f64, OutOfRange> {
        within("limit_c", limit_c, -20.0, 100.0)?;
        Ok(limit_c - self.rise_at_k(power_w)?)
    }
}

#[cfg(test)]
mod tests;
