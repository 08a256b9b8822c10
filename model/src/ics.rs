//! Reminders as a calendar file (RFC 5545). The words are the caller's, and so is the time it was made: the
//! model has no clock.

use crate::dates::Date;
use crate::plan::Plan;

/// Which animal the entries are of, said by what stays when its cuts or the day of packing are corrected: so a
/// calendar replaces the entries it has, and does not have them twice.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Whose {
    species: &'static str,
    harvested: Option<Date>,
    tag: String,
    place: usize,
}

impl Whose {
    /// The animal of a plan, by its place in the season.
    pub fn of(plan: &Plan, place: usize) -> Self {
        let kitchen = plan.kitchen();
        let (species, tag) = (plan.animal().species().id(), kitchen.tag.clone());
        Self { species, harvested: kitchen.harvested, tag, place }
    }
}

/// The moment the file is made, in universal time.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stamp {
    /// Day.
    pub date: Date,
    /// Hour, 0 to 23.
    pub hour: u8,
    /// Minute, 0 to 59.
    pub minute: u8,
    /// Second, 0 to 59.
    pub second: u8,
}

/// An entry that lasts the day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reminder<'a> {
    /// What makes it this entry of its animal and no other, for ever.
    pub key: &'a str,
    /// The day.
    pub date: Date,
    /// One line.
    pub summary: &'a str,
    /// More; may be empty.
    pub description: &'a str,
}

/// The longest line, in octets without its end (RFC 5545, 3.1).
const LONGEST_LINE: usize = 75;

/// A calendar file. Whose the entries are is hashed, not written.
pub fn calendar(whose: &Whose, made: Stamp, reminders: &[Reminder]) -> String {
    let mut file = File::default();
    file.line("BEGIN:VCALENDAR");
    file.line("VERSION:2.0");
    file.line("PRODID:-//Hindsaddle//Best by//EN");
    file.line("CALSCALE:GREGORIAN");
    for reminder in reminders {
        file.line("BEGIN:VEVENT");
        file.line(&format!("UID:{}", uid(whose, reminder.key)));
        let (hour, minute, second) = (made.hour, made.minute, made.second);
        file.line(&format!("DTSTAMP:{}T{hour:02}{minute:02}{second:02}Z", digits(made.date)));
        file.line(&format!("DTSTART;VALUE=DATE:{}", digits(reminder.date)));
        file.line(&format!("DTEND;VALUE=DATE:{}", digits(reminder.date.plus_days(1))));
        file.line(&format!("SUMMARY:{}", escaped(reminder.summary)));
        if !reminder.description.is_empty() {
            file.line(&format!("DESCRIPTION:{}", escaped(reminder.description)));
        }
        file.line("TRANSP:TRANSPARENT");
        file.line("END:VEVENT");
    }
    file.line("END:VCALENDAR");
    file.text
}

/// The same for the same animal and key.
fn uid(whose: &Whose, key: &str) -> String {
    let crc = crc::Crc::<u64>::new(&crc::CRC_64_XZ);
    let mut digest = crc.digest();
    let harvested = whose.harvested.map(digits).unwrap_or_default();
    // No name holds a zero, so nothing can move from one part to the next.
    for part in [whose.species, &harvested, &whose.tag, &whose.place.to_string(), key] {
        digest.update(part.as_bytes());
        digest.update(&[0]);
    }
    format!("{:016x}@hindsaddle", digest.finalize())
}

fn digits(date: Date) -> String {
    format!("{:04}{:02}{:02}", date.year(), date.month(), date.day())
}

/// Text as RFC 5545, 3.3.11 wants it. Control characters other than the end of a line are left out.
fn escaped(text: &str) -> String {
    let mut escaped = String::new();
    let mut letters = text.chars().peekable();
    while let Some(letter) = letters.next() {
        match letter {
            '\\' => escaped.push_str("\\\\"),
            ';' => escaped.push_str("\\;"),
            ',' => escaped.push_str("\\,"),
            '\r' if letters.peek() == Some(&'\n') => {}
            '\n' | '\r' => escaped.push_str("\\n"),
            letter if letter.is_control() && letter != '\t' => {}
            letter => escaped.push(letter),
        }
    }
    escaped
}

#[derive(Default)]
struct File {
    text: String,
}

impl File {
    /// Writes a line, folded where it is too long, never inside a character.
    fn line(&mut self, line: &str) {
        let mut octets = 0;
        for letter in line.chars() {
            if octets + letter.len_utf8() > LONGEST_LINE {
                self.text.push_str("\r\n ");
                octets = 1;
            }
            self.text.push(letter);
            octets += letter.len_utf8();
        }
        self.text.push_str("\r\n");
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_long_line_is_folded_at_75_octets_between_characters() {
        let mut file = File::default();
        file.line(&"é".repeat(60));
        assert_eq!(file.text, format!("{}\r\n {}\r\n", "é".repeat(37), "é".repeat(23)));
    }

    #[test]
    fn text_is_escaped() {
        assert_eq!(escaped("a\\b;c,d\r\ne\u{7}\rf"), "a\\\\b\\;c\\,d\\ne\\nf");
    }
}
