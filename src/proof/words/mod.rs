//! Markdown words, and what they say beside the figures.

pub(super) mod dose_in_words;
pub(super) mod figure_could_be_quoted;
pub(super) mod heading_missing;
pub(super) mod heading_unknown;
pub(super) mod link_nowhere;
pub(super) mod picture_without_description;
pub(super) mod prose_above_ceiling;
pub(super) mod prose_drift;
pub(super) mod quote_unknown;
pub(super) mod words_missing;

mod doses;
pub(super) mod headings;
mod links;
mod literals;
mod spelt;

#[cfg(test)]
mod laws {
    use proptest::prelude::*;

    /// Whether every span lies in the text, on whole characters.
    fn lies_in(text: &str, spans: impl IntoIterator<Item = std::ops::Range<usize>>) -> bool {
        spans.into_iter().all(|span| text.get(span).is_some())
    }

    proptest! {
        #[test]
        fn whatever_is_written_what_is_found_lies_in_it(
            text in r"([0-9]{1,3}|[ .,/µ°–-]|mg|kg|C|%|days|to |per |[{}`()!#<\[\]\n]|\PC){0,40}",
        ) {
            let literals = super::literals::literals(&text);
            prop_assert!(lies_in(&text, literals.into_iter().map(|literal| literal.span)));
            prop_assert!(lies_in(&text, super::links::links(&text).into_iter().map(|link| link.span)));
            prop_assert!(lies_in(&text, super::headings::headings(&text).into_iter().map(|h| h.span)));
            prop_assert!(lies_in(&text, super::doses::doses(&text)));
            prop_assert!(lies_in(&text, super::doses::amounts(&text)));
        }
    }
}
