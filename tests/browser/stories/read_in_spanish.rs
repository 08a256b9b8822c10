//! A partner who reads Spanish opens the same link and works from the same plan.

use std::collections::BTreeSet;

use crate::act;
use crate::find::{Name, Role};
use crate::page::{Page, Screen};
use crate::see;

/// A plan that says much: a title is not in it, as that is the owner's own word.
#[track_caller]
fn a_link() -> String {
    let page = Page::open(Screen::DESKTOP);
    act::choose(&page, "Knuckle becomes", "Stew");
    page.fragment_of_plan()
}

/// The numbers of the tally, in their order.
fn numbers(text: &str) -> Vec<String> {
    let is_number = |letter: char| letter.is_ascii_digit() || letter == '.';
    text.split(|letter: char| !is_number(letter)).filter(|word| !word.is_empty()).map(str::to_owned).collect()
}

#[test]
fn the_same_link_opens_in_the_readers_language_with_the_same_numbers() {
    let link = a_link();
    let mine = Page::open_in_language(Screen::DESKTOP, "en-US", &link);
    let english = see::text(&mine, Role::Status, Name::from("Tally"));
    for asked in ["es", "es-MX,es;q=0.9,en;q=0.8", "fr,es"] {
        let theirs = Page::open_in_language(Screen::DESKTOP, asked, &link);
        let spanish = see::text(&theirs, Role::Status, Name::from("Cuenta"));
        assert_eq!(theirs.script("document.documentElement.lang"), "es");
        assert_eq!(numbers(&spanish), numbers(&english), "{spanish} and {english}");
        assert!(spanish.contains("para casa"), "{spanish}");
        act::press(&theirs, Role::Link, "Cortar y envolver");
        see::shown(&theirs, Role::Heading, "De la mesa al congelador");
        act::press(&theirs, Role::Link, "Deseos");
        see::shown(&theirs, Role::Heading, "Deseos y reparto");
    }
    let other = Page::open_in_language(Screen::PHONE, "fr-FR", &link);
    see::shown(&other, Role::Heading, "Hindsaddle");
    assert_eq!(other.script("document.documentElement.lang"), "en");
}

/// What is chosen in the page counts more than what the browser asks for, and stays; the plan stays, too.
#[test]
fn the_language_is_chosen_in_the_page() {
    let page = Page::open_in_language(Screen::DESKTOP, "en-US", "");
    act::choose(&page, "Knuckle becomes", "Stew");
    let before = see::text(&page, Role::Status, Name::from("Tally"));
    act::press(&page, Role::Button, "Espa\u{f1}ol");
    let spanish = see::text(&page, Role::Status, Name::from("Cuenta"));
    assert_eq!(numbers(&spanish), numbers(&before));
    page.reload();
    see::text(&page, Role::Status, Name::from("Cuenta"));
    act::press(&page, Role::Button, "English");
    assert_eq!(see::text(&page, Role::Status, Name::from("Tally")), before);
}

/// What the page shows and says, line by line, without numbers: what has two words of letters or more.
const LINES: &str = "(() => {
    const seen = new Set();
    const take = (text) => { for (const line of (text ?? '').split('\\n')) seen.add(line.trim()); };
    take(document.body.innerText);
    for (const named of document.querySelectorAll('[aria-label], [title], [placeholder]')) {
        for (const name of ['aria-label', 'title', 'placeholder']) take(named.getAttribute(name));
    }
    for (const option of document.querySelectorAll('option')) take(option.textContent);
    return [...seen].filter((line) => (line.match(/[A-Za-z\\u00c0-\\u00ff]{2,}/g) ?? []).length >= 2);
})()";

/// Opens everything that is folded, so that it is seen.
const UNFOLD: &str = "document.querySelectorAll('details').forEach((part) => { part.open = true; }); true";

fn lines(page: &Page) -> BTreeSet<String> {
    page.script(UNFOLD);
    page.settle();
    let lines = page.script(LINES);
    lines.as_array().expect("lines").iter().map(|line| line.as_str().expect("text").to_owned()).collect()
}

/// The other pages and their parts, in both languages.
const PARTS: &[(&str, &[&str], &[&str])] = &[
    (
        "kitchen.html",
        &["Grind", "Wrap", "Freeze", "Labels", "Work order", "Files", "Cautions"],
        &["Moler", "Envolver", "Congelar", "Etiquetas", "Orden de trabajo", "Archivos", "Avisos"],
    ),
    ("read.html", &[], &[]),
    (
        "ahead.html",
        &["Wishes", "Season", "Partners", "Compare", "Share", "Kept plans", "This device"],
        &[
            "Deseos",
            "Temporada",
            "Compa\u{f1}eros",
            "Comparar",
            "Compartir",
            "Planes guardados",
            "Este aparato",
        ],
    ),
    (
        "learn.html",
        &["First deer", "Practice", "Words", "Sources"],
        &["Primer venado", "Pr\u{e1}ctica", "Palabras", "Fuentes"],
    ),
];

/// The same states of all pages in both languages: no line is the same in both but for what has no other word.
#[test]
fn no_sentence_is_left_in_english() {
    let link = a_link();
    let english = Page::open_in_language(Screen::DESKTOP, "en", &link);
    let spanish = Page::open_in_language(Screen::DESKTOP, "es", &link);
    let mut of_english = lines(&english);
    let mut of_spanish = lines(&spanish);
    for (way, en, es) in PARTS {
        for (page, parts, found) in [(&english, en, &mut of_english), (&spanish, es, &mut of_spanish)] {
            page.script(&format!("location.href = '{way}' + location.hash; true"));
            see::shown(page, Role::Main, Name::Any);
            found.extend(lines(page));
            for part in *parts {
                act::press(page, Role::Button, *part);
                found.extend(lines(page));
            }
        }
    }
    assert!(of_spanish.len() > 150, "only {} lines were seen", of_spanish.len());
    let shared: Vec<&String> = of_spanish.intersection(&of_english).collect();
    // Muscles by their Latin names, sources by their titles, sizes of sheets.
    let is_no_word = |line: &&&String| {
        ["M. ", "Mm. "].iter().any(|begin| line.starts_with(begin))
            || line.contains(" mm")
            || line.contains("Diaphragma")
    };
    let left: Vec<&&String> = shared.iter().filter(|line| !is_no_word(line)).collect();
    assert!(left.is_empty(), "in English in both: {left:#?}");
}
