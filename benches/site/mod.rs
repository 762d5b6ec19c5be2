//! The site that the benches lay out: as many invented animals as they ask for, the same for the same number.

use std::fmt::Write as _;
use std::path::Path;

use jiff::ToSpan;
use jiff::civil::{Date, date};

/// The day that the sheets are for.
pub(crate) const TODAY: Date = date(2026, 11, 25);
/// How many lines the log of each animal has.
pub(crate) const LOG_LINES: usize = 200;
const SEED: u64 = 20_261_125;

/// The species of the invented animals, each with its food and its adult length and mass.
const SPECIES: [(&str, &str, f64, f64); 4] = [
    ("corn-snake", "mouse, adult", 120.0, 700.0),
    ("ball-python", "rat, small", 120.0, 1500.0),
    ("leopard-gecko", "cricket, large", 20.0, 60.0),
    ("bearded-dragon", "locust, medium", 45.0, 400.0),
];

/// Writes a site of invented animals, the same for the same number.
pub(crate) fn lay_out(folder: &Path, animals: usize) {
    let mut random = fastrand::Rng::with_seed(SEED);
    // What an earlier bench left is no part of this one.
    let _ = std::fs::remove_dir_all(folder);
    std::fs::create_dir_all(folder.join("animals")).expect("a folder for the site");
    std::fs::write(
        folder.join("wardsheet.toml"),
        "title = \"A bench site\"\nstandards = [\"at-2004\", \"de-1997\"]\n",
    )
    .expect("a file");
    for number in 0..animals {
        let (species, food, length_cm, mass_g) = SPECIES[number % SPECIES.len()];
        let publish = number % 4 == 0;
        let animal = format!(
            "name = \"Animal {number}\"\nspecies = \"{species}\"\nsex = \"female\"\nhatched = 2019-05-01\narrived = 2019-09-01\n\
             origin = \"Captive bred\"\nstatus = \"resident\"\npublish = {publish}\n\n\
             [enclosure]\ninside = \"150 x 80 x 100 cm\"\nwalls = \"plywood, 18 mm\"\nroom_day = \"20-22 C\"\nroom_night = \"17 C\"\n\n\
             [feeding]\nmeal = \"{food}\"\nevery = \"10 days\"\n"
        );
        std::fs::write(folder.join(format!("animals/animal-{number}.toml")), animal)
            .expect("a file");
        let log = log(&mut random, food, length_cm, mass_g);
        std::fs::write(folder.join(format!("animals/animal-{number}.csv")), log).expect("a file");
    }
}

/// A log that runs up to today: an animal that grows to its adult length, fed, weighed and measured by turns.
fn log(random: &mut fastrand::Rng, food: &str, length_cm: f64, mass_g: f64) -> String {
    let mut log = "date,what,value,outcome,note\n".to_owned();
    for line in 0..LOG_LINES {
        let days_ago = i32::try_from((LOG_LINES - line) * 10).expect("a few years");
        let day = TODAY - days_ago.days();
        let grown = 1.0 - 0.6 * libm::exp(-(line as f64) / 60.0);
        let measured = grown * (0.99 + 0.02 * random.f64());
        match line % 4 {
            0 => writeln!(log, "{day},weight,{:.1} g,,", mass_g * measured * measured * measured),
            1 => writeln!(log, "{day},length,{:.1} cm,,", length_cm * measured),
            2 => writeln!(log, "{day},shed,,complete,"),
            _ => writeln!(log, "{day},meal,\"{food} {:.1} g\",taken,", mass_g * measured * 0.05),
        }
        .expect("memory");
    }
    log
}
