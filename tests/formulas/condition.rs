//! Mass from length against the published fits.

use crate::table::{assert_relative, rows};
use wardsheet::figures::formula::condition::*;

#[test]
fn masses_are_those_of_the_published_fits() {
    let table = rows("mass_length_fits.csv");
    let row = |start: &str| {
        table.iter().find(|row| row.text("relation").starts_with(start)).expect("tabulated")
    };

    let corn_snake = row("Pantherophis guttatus");
    let fit = mass_length_fit("Pantherophis guttatus").expect("published");
    assert_eq!((fit.constant, fit.exponent), (corn_snake.number("a"), corn_snake.number("b")));
    assert_eq!(fit.major_axis, Some((corn_snake.number("b_SMA"), corn_snake.number("L0"))));
    // The major axis' exponent is that of the fit over the correlation.
    let major = corn_snake.number("b") / corn_snake.number("r");
    assert_relative(corn_snake.number("b_SMA"), major, 1e-7, "major axis");

    let kingsnake = row("Lampropeltis nigra");
    let fit = mass_length_fit("Lampropeltis nigra").expect("published");
    assert_eq!(kingsnake.text("a"), format!("{} / 0.0005", fit.constant));
    assert_eq!(kingsnake.text("b"), format!("{} / 2.95", fit.exponent));

    // Carapace in mm = 16.63 mass^0.34: the other way round it must return the carapace.
    assert!(row("Testudo graeca").text("source").contains("16.63 mass_g^0.34"));
    let fit = mass_length_fit("Testudo graeca").expect("published");
    for carapace_cm in [8.0, 14.0, 22.0] {
        let mass = fit.mass_g(carapace_cm).expect("in range");
        assert_relative(16.63 * libm::pow(mass, 0.34) / 10.0, carapace_cm, 1e-5, "carapace");
    }
}
