//! The ladder of prey sizes: which class a meal of a mass belongs to.

use crate::model::Site;
use crate::quantity::{Mass, Range};

/// The built-in ladder, in g. Mice: size classes named by several pages on feeder mice, collected in 2026 and rounded to whole
/// steps; rats: newborn 6–8 g and adult 250–350 g likewise, the classes between them common practice, no source.
const LADDER: [(&str, f64, f64); 10] = [
    ("mouse, pinky", 1.0, 3.0),
    ("mouse, fuzzy", 3.0, 7.0),
    ("mouse, hopper", 7.0, 13.0),
    ("mouse, weanling", 13.0, 18.0),
    ("mouse, adult", 18.0, 45.0),
    ("rat, pup", 6.0, 20.0),
    ("rat, weaned", 20.0, 60.0),
    ("rat, small", 60.0, 120.0),
    ("rat, medium", 120.0, 200.0),
    ("rat, large", 200.0, 350.0),
];

/// The class of prey of a kind (`mouse`, `rat`) whose mass holds `mass_g`: the site's own ladder before the built-in one.
///
/// # Examples
/// ```
/// use wardsheet::figures::prey::class;
/// use wardsheet::model::Site;
/// assert_eq!(class(&Site::default(), "mouse, adult", 5.0).as_deref(), Some("mouse, fuzzy"));
/// assert_eq!(class(&Site::default(), "greens", 5.0), None);
/// ```
pub fn class(site: &Site, meal: &str, mass_g: f64) -> Option<String> {
    let kind = |name: &str| name.split([',', ' ']).next().unwrap_or_default().to_lowercase();
    let wanted = kind(meal);
    let holds = |range: &Range<Mass>| range.contains(Mass::from_grams(mass_g));
    if !site.prey.is_empty() {
        return site
            .prey
            .iter()
            .find(|(name, range)| kind(name) == wanted && holds(range))
            .map(|(name, _)| name.clone());
    }
    let held = |(name, low, high): &&(&str, f64, f64)| {
        kind(name) == wanted && (*low..=*high).contains(&mass_g)
    };
    LADDER.iter().find(held).map(|(name, ..)| (*name).to_owned())
}
