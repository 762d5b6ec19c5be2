//! Reads a table of check values.

use std::collections::BTreeMap;
use std::path::Path;

/// One row of a table: the cell under each heading.
pub(crate) struct Row(BTreeMap<String, String>);

impl Row {
    /// The cell under `heading`, as it stands.
    pub(crate) fn text(&self, heading: &str) -> &str {
        self.0.get(heading).unwrap_or_else(|| panic!("no column {heading}"))
    }

    /// The cell under `heading` as a number.
    pub(crate) fn number(&self, heading: &str) -> f64 {
        self.text(heading)
            .parse()
            .unwrap_or_else(|_| panic!("{heading} holds {:?}, not a number", self.text(heading)))
    }
}

/// All rows of `tests/checks/<name>.csv`, each with a source.
pub(crate) fn rows(name: &str) -> Vec<Row> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/checks").join(name);
    let mut reader =
        csv::Reader::from_path(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
    let rows: Vec<Row> = reader
        .deserialize()
        .map(|row| Row(row.unwrap_or_else(|e| panic!("{}: {e}", path.display()))))
        .collect();
    assert!(!rows.is_empty(), "{name} is empty");
    for row in &rows {
        assert!(!row.text("source").is_empty(), "{name}: a row without a source");
    }
    rows
}

/// Checks `got` against `want` to within `relative` of it.
#[track_caller]
pub(crate) fn assert_relative(got: f64, want: f64, relative: f64, what: &str) {
    let error = if want == 0.0 { got.abs() } else { (got / want - 1.0).abs() };
    assert!(
        error <= relative,
        "{what}: got {got}, want {want}, off by {error:.3e}, allowed {relative:.0e}"
    );
}

/// Checks `got` against `want` to within `difference`.
#[track_caller]
pub(crate) fn assert_near(got: f64, want: f64, difference: f64, what: &str) {
    let error = (got - want).abs();
    assert!(
        error <= difference,
        "{what}: got {got}, want {want}, off by {error:.3e}, allowed {difference:.0e}"
    );
}
