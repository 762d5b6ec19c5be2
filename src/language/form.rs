//! How numbers, quantities and dates are written in a language.

use jiff::civil::{Date, Weekday};

use super::Catalogue;

impl Catalogue {
    /// A quantity as it was printed, in the form of this language: its marks within numbers, its words for units and bounds.
    ///
    /// # Examples
    /// ```
    /// use wardsheet::language::Catalogue;
    /// let german = Catalogue::of("de").expect("there is a German catalogue");
    /// assert_eq!(german.figure("at least 1.5\u{a0}m".to_owned()), "mindestens 1,5\u{a0}m");
    /// ```
    pub fn figure(&self, printed: String) -> String {
        if self.is_as_printed() {
            return printed;
        }
        for (english, label) in [("at least ", "figure-at-least"), ("at most ", "figure-at-most")] {
            if let Some(rest) = printed.strip_prefix(english) {
                return self.tell(label, [("figure", self.parts(rest).into())]);
            }
        }
        self.parts(&printed)
    }

    /// Every word and number of a printed quantity in the form of this language; spaces and signs stay as they are.
    fn parts(&self, printed: &str) -> String {
        let mut text = String::with_capacity(printed.len() + 8);
        for part in printed.split_inclusive([' ', '\u{a0}', '–']) {
            let end = part.trim_end_matches([' ', '\u{a0}', '–']).len();
            let (word, gap) = part.split_at(end);
            if word.contains(|c: char| c.is_ascii_digit()) {
                self.marks(word, &mut text);
            } else if word.len() > 1 && word.chars().all(|c| c.is_ascii_lowercase()) {
                let known = self.find(&format!("unit-{word}"));
                text.push_str(known.as_deref().unwrap_or(word));
            } else {
                text.push_str(word);
            }
            text.push_str(gap);
        }
        text
    }

    /// A number with this language's marks; a point or a comma that does not stand between digits is none of them.
    fn marks(&self, number: &str, text: &mut String) {
        let bytes = number.as_bytes();
        let digit = |at: Option<&u8>| at.is_some_and(u8::is_ascii_digit);
        for (at, letter) in number.char_indices() {
            let between = at > 0 && digit(bytes.get(at - 1)) && digit(bytes.get(at + 1));
            match letter {
                '.' if between => text.push_str(&self.decimal_mark),
                ',' if between => text.push_str(&self.group_mark),
                _ => text.push(letter),
            }
        }
    }

    /// A date as it is read aloud: `25 November 2026`.
    pub fn long_date(&self, date: Date) -> String {
        let month = self.say(&format!("month-{}", date.month()));
        self.tell(
            "date-long",
            [
                ("day", i64::from(date.day()).into()),
                ("month", month.into()),
                ("year", date.year().to_string().into()),
            ],
        )
    }

    /// A date in a table or on a box to tick: `Wed 25 Nov`.
    pub fn short_date(&self, date: Date) -> String {
        let month = self.short_month(date.month());
        self.tell(
            "date-short",
            [
                ("weekday", self.short_weekday(date.weekday()).into()),
                ("day", i64::from(date.day()).into()),
                ("month", month.into()),
            ],
        )
    }

    /// A month by its number, shortened: `Nov`.
    pub fn short_month(&self, month: i8) -> String {
        self.say(&format!("month-short-{month}"))
    }

    /// A day of the week, shortened: `Wed`.
    pub fn short_weekday(&self, weekday: Weekday) -> String {
        self.say(&format!("weekday-short-{}", weekday.to_monday_one_offset()))
    }

    /// A day of the week: `Wednesday`.
    pub fn weekday(&self, weekday: Weekday) -> String {
        self.say(&format!("weekday-{}", weekday.to_monday_one_offset()))
    }
}
