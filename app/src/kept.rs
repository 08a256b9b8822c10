//! Plans that were put aside: by the reader, or because a link took their place. A list of lines, the latest first;
//! no browser here.

use crate::notice::Notice;

/// The most that are kept. The oldest are never dropped for a new one: the reader decides.
pub const MOST_KEPT: usize = 60;

/// One of them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Kept {
    /// The day it was put aside, as files have it.
    pub day: String,
    /// What the reader calls it; empty if nothing.
    pub name: String,
    /// The link, names included.
    pub link: String,
}

/// The list in a text. A line that is not understood is kept as a link that will not open.
pub fn read(text: &str) -> Vec<Kept> {
    let line = |line: &str| {
        let mut parts = line.splitn(3, '\t').map(str::to_owned);
        let (day, name) = (parts.next().unwrap_or_default(), parts.next().unwrap_or_default());
        Kept { day, name, link: parts.next().unwrap_or_default() }
    };
    text.lines().filter(|text| !text.is_empty()).map(line).collect()
}

/// The text of a list.
pub fn write(list: &[Kept]) -> String {
    let lines: Vec<String> =
        list.iter().map(|kept| format!("{}\t{}\t{}", kept.day, kept.name, kept.link)).collect();
    lines.join("\n")
}

/// The list with a plan put in front. None if it is full; a plan that is there already stays where it is.
pub fn with(mut list: Vec<Kept>, day: &str, link: &str) -> Option<Vec<Kept>> {
    if list.iter().any(|kept| kept.link == link) {
        return Some(list);
    }
    if list.len() >= MOST_KEPT {
        return None;
    }
    list.insert(0, Kept { day: day.to_owned(), name: String::new(), link: link.to_owned() });
    Some(list)
}

/// Puts a plan in front of the list in `text`, and has `write` remember it.
///
/// # Errors
/// What is to be said: there is no room, or `write` was refused.
pub fn put(text: &str, day: &str, link: &str, write: impl FnOnce(&str) -> bool) -> Result<(), Notice> {
    let list = with(read(text), day, link).ok_or(Notice::KeptFull)?;
    if write(&self::write(&list)) { Ok(()) } else { Err(Notice::NotRemembered) }
}

/// The list with a copy of the plan at a place behind it, under a name of its own. None if it is full.
pub fn with_copy(mut list: Vec<Kept>, place: usize, name: String) -> Option<Vec<Kept>> {
    let copied = list.get(place)?.clone();
    if list.len() >= MOST_KEPT {
        return None;
    }
    list.insert(place + 1, Kept { name, ..copied });
    Some(list)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_copy_stands_behind_its_plan_and_a_full_list_takes_none() {
        let list = with(with(Vec::new(), "2026-11-25", "1abc").unwrap(), "2026-11-26", "1def").unwrap();
        let copied = with_copy(list.clone(), 0, "again".to_owned()).unwrap();
        assert_eq!(copied[0], list[0]);
        assert_eq!(copied[1], Kept { name: "again".to_owned(), ..list[0].clone() });
        assert_eq!(copied[2], list[1]);
        assert_eq!(with_copy(list, 2, String::new()), None);
        let full: Vec<Kept> = (0..MOST_KEPT).map(|_| copied[0].clone()).collect();
        assert_eq!(with_copy(full, 0, String::new()), None);
    }

    #[test]
    fn a_list_comes_back_and_a_plan_is_in_it_once() {
        let one = with(Vec::new(), "2026-11-25", "1abc").unwrap();
        let two = with(one.clone(), "2026-11-26", "1def").unwrap();
        assert_eq!(two.iter().map(|kept| kept.link.as_str()).collect::<Vec<_>>(), ["1def", "1abc"]);
        assert_eq!(with(two.clone(), "2026-11-27", "1abc"), Some(two.clone()));
        assert_eq!(read(&write(&two)), two);
        assert_eq!(read("nonsense").len(), 1);
    }

    #[test]
    fn what_cannot_be_kept_says_why() {
        let full: Vec<String> = (0..MOST_KEPT).map(|number| format!("\t\t{number}")).collect();
        let full = full.join("\n");
        assert_eq!(put(&full, "", "one more", |_| true), Err(Notice::KeptFull));
        assert_eq!(put(&full, "", "7", |_| true), Ok(()), "it is there already");
        assert_eq!(put("", "", "1abc", |_| false), Err(Notice::NotRemembered));
        let mut kept = String::new();
        let write = |text: &str| {
            text.clone_into(&mut kept);
            true
        };
        assert_eq!(put("", "2026-11-26", "1abc", write), Ok(()));
        assert_eq!(kept, "2026-11-26\t\t1abc");
    }

    #[test]
    fn a_full_list_drops_nothing() {
        let mut list = Vec::new();
        for number in 0..MOST_KEPT {
            list = with(list, "", &number.to_string()).unwrap();
        }
        assert_eq!(with(list.clone(), "", "one more"), None);
        assert_eq!(with(list.clone(), "", "7"), Some(list));
    }
}
