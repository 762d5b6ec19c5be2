//! Days with something due as a calendar that telephones and computers read: iCalendar, RFC 5545.

use jiff::civil::Date;

use crate::sheets::sitter_days::{Event, Repeat};

/// A line is folded after so many bytes, RFC 5545 §3.1.
const LONGEST: usize = 75;

/// Writes a calendar of whole days. `as_of` stands for the moment of writing and `revision` for the number of the entries'
/// revision, so that the same input gives the same bytes.
pub fn calendar(events: &[Event], name: &str, as_of: Date, revision: u32) -> String {
    let mut lines = vec![
        "BEGIN:VCALENDAR".to_owned(),
        "VERSION:2.0".to_owned(),
        "PRODID:-//wardsheet//care sheets//EN".to_owned(),
        "CALSCALE:GREGORIAN".to_owned(),
        "METHOD:PUBLISH".to_owned(),
        format!("NAME:{}", escaped(name)),
    ];
    for event in events {
        let next = event.date.tomorrow().unwrap_or(event.date);
        lines.extend([
            "BEGIN:VEVENT".to_owned(),
            format!("UID:{}", event.uid),
            format!("DTSTAMP:{}T000000Z", plain(as_of)),
            format!("SEQUENCE:{revision}"),
            format!("DTSTART;VALUE=DATE:{}", plain(event.date)),
            format!("DTEND;VALUE=DATE:{}", plain(next)),
        ]);
        lines.extend(event.repeat.map(|Repeat { every_days, times }| {
            format!("RRULE:FREQ=DAILY;INTERVAL={every_days};COUNT={times}")
        }));
        lines.extend([
            format!("SUMMARY:{}", escaped(&event.title)),
            format!("DESCRIPTION:{}", escaped(&event.text)),
            "TRANSP:TRANSPARENT".to_owned(),
            "END:VEVENT".to_owned(),
        ]);
    }
    lines.push("END:VCALENDAR".to_owned());
    lines.iter().map(|line| folded(line) + "\r\n").collect()
}

fn plain(date: Date) -> String {
    date.to_string().replace('-', "")
}

/// Text as RFC 5545 §3.3.11 writes it.
fn escaped(text: &str) -> String {
    let text = text.replace('\\', "\\\\").replace(';', "\\;").replace(',', "\\,");
    let text = text.replace("\r\n", "\\n").replace(['\n', '\r'], "\\n");
    // Control characters have no place in a calendar, RFC 5545 §3.1.
    text.replace(|letter: char| letter.is_control(), " ")
}

/// A line of at most 75 bytes, continued on lines that begin with a space; no letter is cut in two.
fn folded(line: &str) -> String {
    let mut folded = String::new();
    let mut length = 0;
    for letter in line.chars() {
        if length + letter.len_utf8() > LONGEST {
            folded.push_str("\r\n ");
            length = 1;
        }
        folded.push(letter);
        length += letter.len_utf8();
    }
    folded
}

#[cfg(test)]
mod tests {
    use super::{calendar, escaped, folded};
    use crate::sheets::sitter_days::Event;
    use jiff::civil::date;

    #[test]
    fn text_is_escaped_and_folded() {
        assert_eq!(escaped("mouse, adult; 26\\g\nthawed"), "mouse\\, adult\\; 26\\\\g\\nthawed");
        let long = "é".repeat(100);
        let lines: Vec<&str> = long.split("\r\n").collect();
        assert_eq!(lines.len(), 1);
        let text = folded(&long);
        assert!(text.split("\r\n").all(|line| line.len() <= 75), "{text}");
        assert_eq!(text.replace("\r\n ", ""), long);
    }

    /// RFC 5545 §3.6.1: the end of an all-day event is the day after it.
    #[test]
    fn an_event_is_one_whole_day() {
        let event = Event {
            uid: "2026-12-31.juniper.meal@wardsheet".to_owned(),
            date: date(2026, 12, 31),
            title: "Feed Juniper".to_owned(),
            text: "mouse".to_owned(),
            repeat: None,
        };
        let text = calendar(&[event], "Sitter", date(2026, 11, 25), 7);
        assert!(
            text.contains("DTSTART;VALUE=DATE:20261231\r\nDTEND;VALUE=DATE:20270101\r\n"),
            "{text}"
        );
        assert!(text.contains("DTSTAMP:20261125T000000Z\r\n"));
        assert!(text.starts_with("BEGIN:VCALENDAR\r\n") && text.ends_with("END:VCALENDAR\r\n"));
        assert!(!text.replace("\r\n", "").contains('\n'));
    }
}
