//! How likely each adult length is, as a density on a grid: its quantiles and its shortest intervals.

/// The nodes of the grid while it is still being placed.
const ROUGH_NODES: usize = 17;

/// The nodes of the grid once it is placed. A bell curve then has some four nodes to a standard deviation.
const NODES: usize = 33;

/// A log density this far below its peak (one part in 22 000) is left off the grid.
const NEGLIGIBLE: f64 = 10.0;

/// A density over the logarithm of length, piecewise linear between evenly spaced nodes.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Marginal {
    low: f64,
    step: f64,
    density: Vec<f64>,
    below: Vec<f64>,
}

impl Marginal {
    /// Places a grid over `log_density`, which need not be normalised, and takes the density on it.
    ///
    /// `low` and `high` are a first guess of where it matters. `rough` may be a cheaper form of the same
    /// density: it serves to place the grid. `None` when the density is nowhere a number.
    pub(crate) fn over(
        (mut low, mut high): (f64, f64),
        mut rough: impl FnMut(f64) -> f64,
        mut log_density: impl FnMut(f64) -> f64,
    ) -> Option<Self> {
        for _ in 0..20 {
            let step = (high - low) / (ROUGH_NODES - 1) as f64;
            let values: Vec<f64> = (0..ROUGH_NODES).map(|i| rough(low + step * i as f64)).collect();
            let peak = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            if !peak.is_finite() {
                return None;
            }
            let first = values.iter().position(|&value| value > peak - NEGLIGIBLE)?;
            let last = values.iter().rposition(|&value| value > peak - NEGLIGIBLE)?;
            let (grow_down, grow_up) = (first == 0, last == ROUGH_NODES - 1);
            let tight = 2 * (last - first) >= ROUGH_NODES - 1;
            let from = low;
            low = from + step * (first as f64 - if grow_down { 6.0 } else { 1.0 });
            high = from + step * (last as f64 + if grow_up { 6.0 } else { 1.0 });
            if tight && !grow_down && !grow_up {
                break;
            }
        }
        let step = (high - low) / (NODES - 1) as f64;
        let values: Vec<f64> = (0..NODES).map(|i| log_density(low + step * i as f64)).collect();
        let peak = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        if !peak.is_finite() {
            return None;
        }
        Some(Self::normalised(low, step, values.iter().map(|v| libm::exp(v - peak)).collect()))
    }

    fn normalised(low: f64, step: f64, mut density: Vec<f64>) -> Self {
        let mut below = vec![0.0];
        let mut total = 0.0;
        for pair in density.windows(2) {
            total += step * (pair[0] + pair[1]) / 2.0;
            below.push(total);
        }
        density.iter_mut().for_each(|value| *value /= total);
        below.iter_mut().for_each(|value| *value /= total);
        Self { low, step, density, below }
    }

    /// The probability of a value below `at`.
    pub(crate) fn probability_below(&self, at: f64) -> f64 {
        let place = (at - self.low) / self.step;
        if place <= 0.0 {
            return 0.0;
        }
        let cell = place.floor() as usize;
        if cell + 1 >= self.density.len() {
            return 1.0;
        }
        let within = (place - cell as f64) * self.step;
        let slope = (self.density[cell + 1] - self.density[cell]) / self.step;
        self.below[cell] + within * (self.density[cell] + slope * within / 2.0)
    }

    /// The value below which `probability` lies.
    pub(crate) fn quantile(&self, probability: f64) -> f64 {
        let last = self.density.len() - 2;
        let cell = self.below.partition_point(|&b| b <= probability).saturating_sub(1).min(last);
        let here = self.density[cell];
        let slope = (self.density[cell + 1] - here) / self.step;
        let wanted = probability - self.below[cell];
        // The root of here·x + slope·x²/2 = wanted, in the form that does not cancel for a small slope.
        let root = (here * here + 2.0 * slope * wanted).max(0.0).sqrt();
        let within = if here + root > 0.0 { 2.0 * wanted / (here + root) } else { 0.0 };
        self.low + self.step * cell as f64 + within.clamp(0.0, self.step)
    }

    /// The shortest interval that holds `level`; for a density with one peak, all in it is likelier than
    /// anything outside.
    pub(crate) fn shortest_interval(&self, level: f64) -> (f64, f64) {
        let width = |below: f64| self.quantile(below + level) - self.quantile(below);
        // Golden section, since the width has one hollow where the density has one peak.
        let ratio = (5.0_f64.sqrt() - 1.0) / 2.0;
        let (mut left, mut right) = (0.0, 1.0 - level);
        let (mut a, mut b) = (right - ratio * (right - left), left + ratio * (right - left));
        let (mut width_a, mut width_b) = (width(a), width(b));
        for _ in 0..24 {
            if width_a <= width_b {
                (right, b, width_b) = (b, a, width_a);
                a = right - ratio * (right - left);
                width_a = width(a);
            } else {
                (left, a, width_a) = (a, b, width_b);
                b = left + ratio * (right - left);
                width_b = width(b);
            }
        }
        let below = (left + right) / 2.0;
        (self.quantile(below), self.quantile(below + level))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn bell(middle: f64, sd: f64) -> Marginal {
        let log_density = |x: f64| -0.5 * ((x - middle) / sd) * ((x - middle) / sd);
        Marginal::over((middle - 30.0 * sd, middle + sd), log_density, log_density)
            .expect("a density")
    }

    #[test]
    fn the_quantiles_of_a_bell_curve_are_those_of_the_tables() {
        let marginal = bell(5.0, 0.1);
        for (probability, deviations) in
            [(0.05, -1.6449), (0.5, 0.0), (0.95, 1.6449), (0.99, 2.3263)]
        {
            let got = (marginal.quantile(probability) - 5.0) / 0.1;
            assert!((got - deviations).abs() < 0.02, "{probability}: {got}");
            assert!((marginal.probability_below(5.0 + 0.1 * got) - probability).abs() < 1e-9);
        }
    }

    #[test]
    fn the_shortest_interval_of_a_bell_curve_is_the_middle_one() {
        let (low, high) = bell(2.0, 0.5).shortest_interval(0.9);
        assert!((low - (2.0 - 1.6449 * 0.5)).abs() < 0.01, "{low}");
        assert!((high - (2.0 + 1.6449 * 0.5)).abs() < 0.01, "{high}");
    }

    #[test]
    fn the_shortest_interval_of_a_falling_density_begins_where_it_begins() {
        let log_density = |x: f64| if x < 1.0 { -1e9 } else { -x };
        let marginal = Marginal::over((0.0, 12.0), log_density, log_density).expect("a density");
        let (low, high) = marginal.shortest_interval(0.9);
        // ln 10 holds nine tenths of an exponential; the grid rounds the cliff by a part of its step.
        assert!((0.7..1.1).contains(&low), "{low}");
        assert!((high - 1.0 - std::f64::consts::LN_10).abs() < 0.15, "{high}");
    }

    #[test]
    fn nothing_is_made_of_no_density() {
        assert_eq!(Marginal::over((0.0, 1.0), |_| f64::NEG_INFINITY, |_| 0.0), None);
    }
}
