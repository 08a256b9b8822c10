//! Links of lessons: round trips, one text for one lesson, damage, and fixtures that must open for ever.

use data_encoding::BASE64URL_NOPAD;
use hindsaddle_model::anatomy::{Muscle, View};
use hindsaddle_model::lesson::{Game, Lesson};
use hindsaddle_model::link::lesson::{is_lesson, read, write};
use hindsaddle_model::link::{self, LONGEST, LinkError};
use hindsaddle_model::tables;
use proptest::prelude::*;

const VIEWS: [Option<View>; 4] = [None, Some(View::Outer), Some(View::Inner), Some(View::Above)];

/// A lesson from the bits of numbers, where they say one.
fn lesson(view: u8, games: u8, muscles: u32, order: u8) -> Option<Lesson> {
    let view = VIEWS[usize::from(view % 4)];
    let games: Vec<Game> = Game::ALL.into_iter().filter(|game| games >> game.index() & 1 == 1).collect();
    let seen = |muscle: &Muscle| view.is_none_or(|view| tables::muscle(*muscle).views.contains(&view));
    let muscles: Vec<Muscle> =
        Muscle::ALL.into_iter().filter(|muscle| muscles >> muscle.index() & 1 == 1 && seen(muscle)).collect();
    Lesson::new(view, &games, &muscles, order).ok()
}

/// Bytes behind a right checksum.
fn signed(payload: &[u8]) -> String {
    let crc = crc::Crc::<u16>::new(&crc::CRC_16_IBM_SDLC);
    let mut digest = crc.digest();
    digest.update(b"L1");
    digest.update(payload);
    let bytes = [payload, &digest.finalize().to_be_bytes()].concat();
    format!("L1{}", BASE64URL_NOPAD.encode(&bytes))
}

fn payload(text: &str) -> Vec<u8> {
    let mut bytes = BASE64URL_NOPAD.decode(&text.as_bytes()[2..]).unwrap();
    bytes.truncate(bytes.len() - 2);
    bytes
}

proptest! {
    #[test]
    fn a_lesson_comes_back_whole_and_equal_lessons_have_equal_links(view: u8, games in 1_u8..8, muscles in 1_u32.., order: u8) {
        if let Some(lesson) = lesson(view, games, muscles, order) {
            let text = write(&lesson);
            prop_assert_eq!(text.len(), 12);
            prop_assert!(is_lesson(&text));
            prop_assert_eq!(read(&text), Ok(lesson.clone()));
            prop_assert_eq!(read(&format!(" #{text}. ")), Ok(lesson));
            prop_assert_eq!(link::read(&text), Err(LinkError::Lesson));
        }
    }

    #[test]
    fn any_text_is_refused_or_is_the_text_of_its_lesson(text in "\\PC*") {
        for text in [text.clone(), format!("L1{text}")] {
            if let Ok(lesson) = read(&text) {
                prop_assert!(text.contains(&write(&lesson)));
            }
        }
    }

    #[test]
    fn any_bits_behind_a_right_checksum_are_refused_or_are_the_text_of_their_lesson(bytes in proptest::collection::vec(any::<u8>(), 0..12)) {
        let text = signed(&bytes);
        match read(&text) {
            Ok(lesson) => prop_assert_eq!(write(&lesson), text),
            Err(error) => prop_assert!(matches!(error, LinkError::CutShort | LinkError::Impossible), "{error:?}"),
        }
    }
}

#[test]
fn every_slip_and_every_lost_end_is_refused() {
    let alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
    let text = write(&Lesson::new(None, &Game::ALL, &Muscle::ALL, 42).unwrap());
    for at in 0..text.len() {
        for other in alphabet.chars().filter(|other| !text[at..].starts_with(*other)) {
            let slipped = format!("{}{other}{}", &text[..at], &text[at + 1..]);
            let expected = match (at, other) {
                (0, _) | (1, 'A'..='Z' | 'a'..='z' | '0' | '-' | '_') => &[LinkError::Unknown][..],
                (1, _) => &[LinkError::Newer],
                _ => &[LinkError::Mistyped, LinkError::CutShort],
            };
            let refused = read(&slipped).expect_err(&slipped);
            assert!(expected.contains(&refused), "{slipped}: {refused:?}");
        }
        let expected = if at == 0 { LinkError::Empty } else { LinkError::CutShort };
        assert_eq!(read(&text[..at]), Err(expected), "{at}");
    }
}

#[test]
fn hostile_texts_are_refused_with_a_word() {
    let good = write(&Lesson::new(None, &[Game::Find], &[Muscle::Neck], 0).unwrap());
    for (text, error) in [
        ("", LinkError::Empty),
        ("L", LinkError::CutShort),
        ("L2abcdefgh", LinkError::Newer),
        ("1abc", LinkError::Unknown),
        ("Lorem ipsum", LinkError::Unknown),
        ("L1<img src=x onerror=alert(1)>", LinkError::Character),
        ("L1abc\u{202e}def", LinkError::Character),
    ] {
        assert_eq!(read(text), Err(error), "{text}");
    }
    assert_eq!(read(&"L".repeat(LONGEST + 1)), Err(LinkError::TooLong));
    // One bit too many, a byte too many, no muscle, no game, a muscle that is not seen from that side.
    let mut padded = payload(&good);
    *padded.last_mut().unwrap() |= 1;
    let longer = [payload(&good), vec![0]].concat();
    let unseen = [0b0110_0000, 0, 0b0000_1000, 0, 0];
    for bytes in
        [padded, longer, vec![0b0010_0000, 0, 0, 0, 0], vec![0, 0, 0b1000_0000, 0, 0], unseen.to_vec()]
    {
        assert_eq!(read(&signed(&bytes)), Err(LinkError::Impossible), "{bytes:?}");
    }
}

/// What a link says, in words that a fixture keeps.
fn dump(lesson: &Lesson) -> String {
    let questions: Vec<String> = lesson
        .questions()
        .iter()
        .map(|one| format!("{:?} {} {}", one.game, one.muscle.id(), one.chance))
        .collect();
    format!("{:?} order {}\n{}\n", lesson.view(), lesson.order(), questions.join("\n"))
}

/// A class sees the same questions in the same order, whenever and wherever a link is opened.
/// `UPDATE_EXPECT=1` writes only files that are not there.
#[test]
fn frozen_lessons_open_for_ever() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("links/lesson");
    let all = u32::MAX >> 6;
    let frozen = [
        (0, 7, all, 0),
        (1, 7, all, 1),
        (2, 7, all, 2),
        (3, 5, all, 255),
        (0, 1, 0x301, 9),
        (0, 6, 0x123_4567, 77),
    ];
    if std::env::var_os("UPDATE_EXPECT").is_some() {
        std::fs::create_dir_all(&folder).unwrap();
        for (place, (view, games, muscles, order)) in frozen.into_iter().enumerate() {
            let file = folder.join(format!("lesson-{place}.txt"));
            if !file.exists() {
                let lesson = lesson(view, games, muscles, order).unwrap();
                std::fs::write(file, format!("{}\n{}", write(&lesson), dump(&lesson))).unwrap();
            }
        }
    }
    let mut opened = 0;
    for entry in std::fs::read_dir(&folder).unwrap() {
        let path = entry.unwrap().path();
        let text = std::fs::read_to_string(&path).unwrap();
        let (link, said) = text.split_once('\n').unwrap();
        let lesson = read(link).unwrap_or_else(|error| panic!("{}: {error:?}", path.display()));
        assert_eq!(write(&lesson), link, "{}", path.display());
        assert_eq!(dump(&lesson), said, "{}", path.display());
        opened += 1;
    }
    assert!(opened >= frozen.len(), "{opened}");
}
