//! Days between dates, and dates some days on.

use jiff::civil::Date;

/// Counts the days from one date to another; negative if the second is earlier.
pub fn days_between(from: Date, to: Date) -> i32 {
    from.until(to).map_or(0, |span| span.get_days())
}

/// The date so many days after another; a part of a day is dropped. None past the end of the calendar.
pub fn days_after(date: Date, days: f64) -> Option<Date> {
    let whole = days.floor();
    // Dates end within a few million days; anything else cannot be a date, and the cast stays exact.
    if !(-4e6..4e6).contains(&whole) {
        return None;
    }
    date.checked_add(jiff::Span::new().days(whole as i64)).ok()
}
