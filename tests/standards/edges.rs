//! Breakpoints hold exactly.

use crate::{
    AT, DE, carapace, floor, grown, reader::row, sides, snout_vent, total, unmeasured, young,
};
use wardsheet::figures::enclosure::{BodyLengths, Reason, minimum};

// Gutachten über Mindestanforderungen an die Haltung von Reptilien, Germany, 1997: the breakpoint runs backwards, and
// 150 cm itself is neither below nor above 1.5 m.
#[test]
fn a_boa_just_above_one_and_a_half_metres_is_asked_for_less_length() {
    let row = "boa-constrictor";
    sides(&grown(DE, row, total(149.0), 2), [149.0, 74.5, 111.75]);
    sides(&grown(DE, row, total(151.0), 2), [113.25, 75.5, 113.25]);
    let between = grown(DE, row, total(150.0), 2);
    sides(&between, [150.0, 75.0, 112.5]);
    assert_eq!(between.classes, [0, 1]);
    assert!(between.assumptions.iter().any(|line| line.contains("two classes")));
}

// 2. Tierhaltungsverordnung, Austria, 2004: "20-50" and "50-100" both contain 50.
#[test]
fn an_edge_that_two_classes_print_gives_the_larger_figure() {
    let row = "pantherophis-guttatus";
    floor(&young(AT, row, total(49.9), 1), 0.2);
    floor(&young(AT, row, total(50.0), 1), 0.5);
    assert_eq!(young(AT, row, total(50.0), 1).height_cm(), Some(40.0));
    floor(&young(AT, row, total(20.0), 1), 0.2);
    floor(&young(AT, row, total(5.0), 1), 0.1);
}

// The same ordinance, 2004: "adult" prints no length, so 100 cm stands in one class only.
#[test]
fn a_young_snake_of_exactly_100_cm_is_not_yet_in_the_class_for_adults() {
    let row = "python-regius";
    assert_eq!(young(AT, row, total(100.0), 1).classes, [1]);
    let longer = young(AT, row, total(101.0), 1);
    assert_eq!(longer.classes, [2]);
    assert!(longer.assumptions.iter().any(|line| line.contains("longer than the last class")));
}

// The same ordinance, 2004: a 90 cm adult Heterodon must go to "adult", and so must a short one.
#[test]
fn an_adult_is_given_the_class_for_adults_however_short() {
    for lengths in [total(90.0), total(30.0), unmeasured()] {
        floor(&grown(AT, "heterodon-platirhinos", lengths, 1), 0.5);
        floor(&grown(AT, "heterodon-nasicus", lengths, 1), 0.5);
    }
    floor(&young(AT, "heterodon-nasicus", total(30.0), 1), 0.2);
    assert!(minimum(&row(AT, "heterodon-nasicus"), &unmeasured(), false, 1).is_err());
}

// The same ordinance, 2004: "6-12 cm" and "over 12 cm" do not both contain 12.
#[test]
fn over_an_edge_does_not_hold_at_the_edge() {
    floor(&young(AT, "testudo-horsfieldii", carapace(12.0), 1), 1.0);
    floor(&young(AT, "testudo-horsfieldii", carapace(12.1), 1), 2.0);
    floor(&young(AT, "testudo-horsfieldii", carapace(6.0), 1), 1.0);
}

// The same ordinance, 2004: the general tables end at 2.5 m, salamanders at 30 cm.
#[test]
fn above_a_closed_last_class_there_is_no_figure() {
    let general = row(AT, "serpentes-ground-dwelling-to-2-5-m");
    floor(&minimum(&general, &total(250.0), true, 1).expect("covered"), 1.5);
    for adult in [true, false] {
        let reason = minimum(&general, &total(251.0), adult, 1).expect_err("too long");
        assert!(matches!(reason, Reason::NoClass { .. }), "{reason}");
    }
    floor(&young(AT, "caudata", total(30.0), 2), 0.9);
    assert_eq!(
        minimum(&row(AT, "caudata"), &total(30.1), true, 2).expect_err("too long").to_string(),
        "No class covers a total length of 30.1 cm; the last one ends at 30 cm."
    );
}

// The same ordinance, 2004: Python molurus pimbura has no class below 20 cm.
#[test]
fn below_the_first_class_the_first_holds() {
    let short = young(AT, "python-molurus-pimbura", total(15.0), 1);
    floor(&short, 0.4);
    assert!(short.assumptions.iter().any(|line| line.contains("below 20 cm")));
    let longer = young(AT, "python-molurus-pimbura", total(25.0), 1);
    assert!(longer.assumptions.iter().all(|line| !line.contains("below 20 cm")));
}

// The same ordinance, 2004: Varanus exanthematicus prints "up to 20" and "up to 40".
#[test]
fn two_classes_that_print_up_to_follow_each_other() {
    floor(&young(AT, "varanus-exanthematicus", total(20.0), 1), 0.5);
    floor(&young(AT, "varanus-exanthematicus", total(20.1), 1), 1.5);
}

// Directive 2010/63/EU, table 10, European Union, 2010: "over 5 to 10".
#[test]
fn a_clean_edge_belongs_to_the_lower_class() {
    assert_eq!(young("eu-2010-63", "testudines-aquatic", carapace(5.0), 1).classes, [0]);
    assert_eq!(young("eu-2010-63", "testudines-aquatic", carapace(5.01), 1).classes, [1]);
    assert_eq!(young("eu-2010-63", "testudines-aquatic", carapace(45.0), 1).classes, [5]);
}

// SJVFS 2019:15 (L80), Sweden, 2019: "11-15" and "16-20" leave 15.5 cm in a gap.
#[test]
fn a_length_in_a_gap_goes_to_the_larger_class() {
    let row = "sauria-tree-and-rock-dwelling";
    floor(&young("se-2019", row, total(15.0), 1), 0.06);
    floor(&young("se-2019", row, total(15.5), 1), 0.12);
    floor(&young("se-2019", row, total(16.0), 1), 0.12);
}

// Code of Practice for the Private Keeping of Reptiles, New South Wales, 2013: under 6 months, to 12, over 12.
#[test]
fn the_young_go_by_age_where_the_age_is_known() {
    let row = "morelia-spilota-cheynei";
    let aged = |months| BodyLengths { age_months: Some(months), ..unmeasured() };
    for (months, area) in [(5.9, 0.02), (6.0, 0.06), (12.0, 0.06), (12.1, 0.4)] {
        floor(&young("nsw-2013", row, aged(months), 1), area);
    }
    let unknown = young("nsw-2013", row, unmeasured(), 1);
    floor(&unknown, 0.4);
    assert!(unknown.assumptions.iter().any(|line| line.contains("age is not known")));
}

// 2. Tierhaltungsverordnung, Austria, 2004: the reptile annex never says which length it means.
#[test]
fn a_length_that_the_text_does_not_name_is_said_to_be_assumed() {
    let said = |found: wardsheet::figures::enclosure::Minimum| {
        found.assumptions.iter().any(|line| line.contains("does not say which length"))
    };
    assert!(said(young(AT, "pogona-vitticeps", total(25.0), 1)));
    assert!(said(young(AT, "testudo-horsfieldii", carapace(10.0), 1)));
    assert!(!said(grown(AT, "pogona-vitticeps", unmeasured(), 1)), "adult goes by no length");
    assert!(!said(young(AT, "boa-imperator", total(60.0), 1)));
    assert!(!said(grown(DE, "pogona", snout_vent(20.0), 1)));
}
