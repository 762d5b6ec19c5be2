//! Sizes to build, enclosures to check, and several standards at once.

use crate::{AT, DE, carapace, floor, grown, snout_vent, total, unmeasured, young};
use wardsheet::figures::enclosure::{BodyLengths, Fit, Shortfall, build_cm, fits, strictest};

#[test]
fn sides_are_rounded_up_to_the_next_ten_centimetres() {
    let snake = build_cm(&grown(DE, "pantherophis-guttatus", total(150.0), 1)).expect("sides");
    assert_eq!(snake.inside_cm, [150.0, 80.0, 150.0]);
    assert!(snake.assumptions.is_empty());
    // A third of 120 cm is 40 cm exactly, whatever the last bit says.
    let python = build_cm(&grown("uk-rspca", "python-regius", total(120.0), 1)).expect("sides");
    assert_eq!(python.inside_cm, [120.0, 40.0, 40.0]);
}

#[test]
fn an_area_becomes_a_floor_twice_as_long_as_wide() {
    let snakes = build_cm(&grown(AT, "pantherophis-guttatus", unmeasured(), 4)).expect("an area");
    assert_eq!(snakes.inside_cm, [170.0, 90.0, 60.0]);
    assert!(snakes.assumptions.iter().any(|line| line.contains("twice as long")));
    let gecko = build_cm(&grown(AT, "eublepharis-macularius", unmeasured(), 1)).expect("an area");
    assert_eq!(gecko.inside_cm, [100.0, 50.0, 40.0]);
}

#[test]
fn what_the_standard_leaves_open_is_said() {
    let tortoise = build_cm(&grown(DE, "testudo-hermanni", carapace(25.0), 2)).expect("sides");
    assert_eq!(tortoise.inside_cm, [200.0, 100.0, 50.0]);
    assert!(tortoise.assumptions.iter().any(|line| line.contains("half the width")));
    // 300 l at 40 cm deep cover 0.75 m², and 0.05 m² of land lie beside them.
    let slider =
        build_cm(&young(AT, "trachemys-scripta-elegans", carapace(9.0), 1)).expect("water");
    assert_eq!(slider.inside_cm, [130.0, 70.0, 70.0]);
    assert!(slider.assumptions.iter().any(|line| line.contains("no depth")));
    // The shortest side of a floor known only by its area is kept.
    let dragon =
        build_cm(&grown("nsw-2013", "pogona-vitticeps", snout_vent(55.0), 1)).expect("an area");
    assert_eq!(dragon.inside_cm[1], 60.0);
}

#[test]
fn length_and_width_are_interchangeable_and_each_shortfall_is_named() {
    let needed = grown(DE, "pantherophis-guttatus", total(120.0), 1);
    assert_eq!(fits([120.0, 60.0, 120.0], &needed), Fit::Enough);
    assert_eq!(fits([60.0, 120.0, 120.0], &needed), Fit::Enough);
    let Fit::Short(short) = fits([100.0, 70.0, 119.0], &needed) else { panic!("it is too short") };
    assert_eq!(
        short,
        [
            Shortfall::Length { needed_cm: 120.0, inside_cm: 100.0 },
            Shortfall::Height { needed_cm: 120.0, inside_cm: 119.0 }
        ]
    );
    assert_eq!(short[0].by(), 20.0);
    assert_eq!(short[0].to_string(), "length 100 cm, short of 120 cm by 20 cm");
}

// Code of Practice for the Private Keeping of Reptiles, New South Wales, 2013: 1.3 x 0.6 m is printed for five adults.
#[test]
fn the_printed_1_3_by_0_6_m_falls_short_of_five_bearded_dragons() {
    let five = grown("nsw-2013", "pogona-vitticeps", snout_vent(22.0), 5);
    let Fit::Short(short) = fits([130.0, 60.0, 60.0], &five) else {
        panic!("0.78 m² is not 0.7875 m²")
    };
    assert_eq!(short[0].to_string(), "floor 0.78 m², short of 0.7875 m² by 0.0075 m²");
    assert_eq!(fits([132.0, 60.0, 60.0], &five), Fit::Enough);
}

// Gutachten über Mindestanforderungen an die Haltung von Reptilien, Germany, 1997: 4/3/5 or 5/3/4.
#[test]
fn either_layout_of_a_water_dragon_satisfies() {
    let dragon = grown(DE, "physignathus-cocincinus", snout_vent(20.0), 1);
    assert_eq!(dragon.shapes().count(), 2);
    assert_eq!(fits([80.0, 60.0, 100.0], &dragon), Fit::Enough);
    assert_eq!(fits([100.0, 60.0, 80.0], &dragon), Fit::Enough);
    let Fit::Short(short) = fits([99.0, 60.0, 80.0], &dragon) else {
        panic!("it satisfies neither")
    };
    assert_eq!(short, [Shortfall::Length { needed_cm: 100.0, inside_cm: 99.0 }]);
}

#[test]
fn water_must_have_room() {
    let slider = young(AT, "trachemys-scripta-elegans", carapace(9.0), 1);
    assert_eq!(fits([100.0, 60.0, 50.0], &slider), Fit::Enough);
    assert_eq!(
        fits([100.0, 50.0, 50.0], &slider),
        Fit::Short(vec![Shortfall::Water { needed_l: 300.0, inside_l: 250.0 }])
    );
    let axolotl = grown(AT, "caudata", total(20.0), 1);
    assert_eq!(
        fits([100.0, 50.0, 15.0], &axolotl),
        Fit::Short(vec![Shortfall::WaterDepth { needed_cm: 20.0, inside_cm: 15.0 }])
    );
}

#[test]
fn the_strictest_of_several_takes_the_largest_of_each_figure() {
    let lengths = BodyLengths { snout_vent_cm: Some(20.0), ..total(45.0) };
    let german = grown(DE, "pogona", lengths, 1);
    let austrian = grown(AT, "pogona-vitticeps", lengths, 1);
    let english = grown("uk-rspca", "pogona-vitticeps", lengths, 1);
    let all = strictest(&[german.clone(), austrian.clone(), english]).expect("three minima");
    assert_eq!(all.shape.length_width_cm, Some([120.0, 80.0]));
    floor(&all, 1.0);
    assert_eq!(all.height_cm(), Some(80.0));
    let built = build_cm(&all).expect("sides").inside_cm;
    assert_eq!(built, [130.0, 80.0, 80.0]);
    assert_eq!(fits(built, &german), Fit::Enough);
    assert_eq!(fits(built, &austrian), Fit::Enough);
    assert_eq!(strictest(&[]), None);
}

#[test]
fn alternatives_survive_a_combination_where_they_still_differ() {
    let iguana = grown(DE, "iguana-iguana", snout_vent(40.0), 1);
    let advice = grown("de-tvt", "iguana-iguana", unmeasured(), 1);
    // The second standard asks for 250 x 150 x 200 cm, more than either layout but for nothing: one is left.
    let both = strictest(&[iguana.clone(), advice]).expect("two minima");
    assert_eq!(both.sides_cm(), Some([250.0, 150.0, 200.0]));
    assert!(both.alternatives.is_empty());
    let alone = strictest(std::slice::from_ref(&iguana)).expect("one minimum");
    assert_eq!(alone.alternatives.len(), 1);
}
