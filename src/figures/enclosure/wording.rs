//! Numbers and lists inside a line of working.

pub(super) use crate::quantity::decimals as number;

/// Writes a share of 1 as a percentage.
pub(super) fn percent(share: f64) -> String {
    format!("{} %", number(share * 100.0, 1))
}

/// Adds a line unless it is there already.
pub(super) fn add_once(lines: &mut Vec<String>, line: String) {
    if !lines.contains(&line) {
        lines.push(line);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_carry_no_idle_zeros() {
        assert_eq!(number(120.0, 1), "120");
        assert_eq!(number(112.5, 1), "112.5");
        assert_eq!(number(0.7875, 4), "0.7875");
        assert_eq!(number(100.0, 0), "100");
        assert_eq!(percent(0.2), "20 %");
    }
}
