//! The sums in closed form and by quadrature against sums taken point by point.

use super::*;

fn datum(day: f64, length_cm: f64) -> Datum {
    Datum { day, length_cm, error_cm: 0.01 * length_cm }
}

fn problem(data: &[Datum]) -> PenalisedGrowth<'_> {
    let adult = AdultRange::new(110.0, 170.0).expect("a range");
    let rate = GrowthRate::from_years_to_maturity(2.5).expect("a rate");
    PenalisedGrowth { data, adult, rate, error_scale: 1.0 }
}

/// The adult lengths at 5, 50 and 95 %, by adding up the likelihood over a fine lattice of adult length, rate
/// and first length: no closed form, no quadrature, no fit.
fn quantiles_by_brute_force(
    problem: &PenalisedGrowth<'_>,
    (low_cm, high_cm): (f64, f64),
) -> [f64; 3] {
    let (adults, rates, firsts) = (120, 120, 120);
    let prior =
        |value: f64, middle: f64, sd: f64| -0.5 * (value - middle) * (value - middle) / (sd * sd);
    let first = problem.data[0];
    let mut mass = vec![0.0; adults];
    for (i, mass) in mass.iter_mut().enumerate() {
        let log_adult =
            libm::log(low_cm) + (i as f64 + 0.5) / adults as f64 * libm::log(high_cm / low_cm);
        let adult_cm = libm::exp(log_adult);
        for j in 0..rates {
            let deviations = -4.0 + 8.0 * (j as f64 + 0.5) / rates as f64;
            let log_rate = problem.rate.log_median + deviations * problem.rate.log_sd;
            let left: Vec<f64> = (0..problem.data.len())
                .map(|d| libm::exp(-libm::exp(log_rate) * problem.years(d)))
                .collect();
            for k in 0..firsts {
                let errors = -5.0 + 10.0 * (k as f64 + 0.5) / firsts as f64;
                let first_cm = first.length_cm + errors * first.error_cm;
                if first_cm > adult_cm {
                    continue;
                }
                let fit: f64 = (problem.data.iter().zip(&left))
                    .map(|(datum, left)| {
                        let length_cm = adult_cm - (adult_cm - first_cm) * left;
                        prior(length_cm, datum.length_cm, datum.error_cm)
                    })
                    .sum();
                *mass += libm::exp(
                    fit + prior(log_adult, problem.adult.log_middle, problem.adult.log_sd)
                        - 0.5 * deviations * deviations,
                );
            }
        }
    }
    let total: f64 = mass.iter().sum();
    [0.05, 0.5, 0.95].map(|share| {
        let mut below = 0.0;
        for (i, mass) in mass.iter().enumerate() {
            if below + mass >= share * total {
                let within = (share * total - below) / mass;
                let place = (i as f64 + within) / adults as f64;
                return low_cm * libm::pow(high_cm / low_cm, place);
            }
            below += mass;
        }
        high_cm
    })
}

#[test]
fn the_adult_length_is_as_likely_as_adding_up_all_curves_says() {
    for (data, span) in [
        (vec![datum(0.0, 92.0), datum(180.0, 104.0), datum(365.0, 111.5)], (105.0, 210.0)),
        (vec![datum(0.0, 60.0), datum(300.0, 85.0)], (85.0, 230.0)),
        (vec![datum(0.0, 141.0), datum(200.0, 143.0), datum(500.0, 142.5)], (135.0, 185.0)),
    ] {
        let problem = problem(&data);
        let best = problem_fit(&problem);
        let marginal = adult_length(&problem, &best).expect("a density");
        let wanted = quantiles_by_brute_force(&problem, span);
        for (share, wanted) in [0.05, 0.5, 0.95].into_iter().zip(wanted) {
            let got = libm::exp(marginal.quantile(share));
            assert!(
                (got / wanted - 1.0).abs() < 0.004,
                "{share}: {got} cm, by brute force {wanted} cm"
            );
        }
    }
}

fn problem_fit(problem: &PenalisedGrowth<'_>) -> Solution {
    PenalisedGrowth::solved(problem.data, problem.adult, problem.rate).1.expect("a fit")
}

#[test]
fn five_nodes_sum_powers_of_a_bell_curve_exactly() {
    // The integral of x^(2n) exp(-x²) is the root of pi times 1, 1/2, 3/4, 15/8, 105/16.
    for (power, exact) in [(0, 1.0), (2, 0.5), (4, 0.75), (6, 1.875), (8, 6.5625)] {
        let sum: f64 = HERMITE
            .iter()
            .map(|&(x, log_weight)| libm::exp(log_weight - x * x) * libm::pow(x, f64::from(power)))
            .sum();
        assert!(
            (sum / (exact * std::f64::consts::PI.sqrt()) - 1.0).abs() < 1e-12,
            "{power}: {sum}"
        );
    }
}

#[test]
fn the_tail_of_the_normal_distribution_has_no_seam() {
    for seam in [6.0, -20.0] {
        let (below, above) = (log_normal_below(seam - 1e-9), log_normal_below(seam + 1e-9));
        assert!(
            (below - above).abs() < 1e-4 * (1.0 + below.abs()),
            "{below} and {above} at {seam}"
        );
    }
    assert!((libm::exp(log_normal_below(0.0)) - 0.5).abs() < 1e-15);
}

#[test]
fn the_likeliest_curve_to_a_length_is_no_worse_than_its_neighbours() {
    let data = [datum(0.0, 92.0), datum(180.0, 104.0), datum(365.0, 111.5)];
    let problem = problem(&data);
    let mut likelihood = Likelihood::new(&problem, problem.rate.log_median);
    let log_adult = libm::log(135.0);
    let best = likelihood.likeliest_rate(log_adult).misfit;
    let log_rate = likelihood.log_rate;
    for step in [-0.2, -0.05, 0.05, 0.2] {
        assert!(likelihood.at(log_adult, log_rate + step).misfit > best);
    }
}
