//! Who may know whom: `model` knows no web, `views` and `plate` know no page, only `platform` knows the
//! browser.

use std::process::Command;

use super::{files, rust};

#[test]
fn the_model_depends_on_little() {
    let cargo = std::env::var("CARGO").unwrap_or_else(|_| "cargo".into());
    let tree = Command::new(cargo)
        .args([
            "tree",
            "--locked",
            "--offline",
            "-p",
            "hindsaddle-model",
            "-e",
            "normal",
            "--depth",
            "1",
            "--prefix",
            "none",
        ])
        .current_dir(super::root())
        .output()
        .unwrap();
    assert!(tree.status.success(), "{}", String::from_utf8_lossy(&tree.stderr));
    let tree = String::from_utf8(tree.stdout).unwrap();
    let names: Vec<&str> = tree.lines().skip(1).filter_map(|line| line.split(' ').next()).collect();
    assert_eq!(names, ["crc", "data-encoding", "libm", "serde", "time"]);
}

/// What is named of the browser outside `platform`.
const ALLOWED: [&str; 5] = [
    // What an event hands over is no way to the browser.
    "web_sys::HtmlInputElement",
    "web_sys::HtmlSelectElement",
    "web_sys::KeyboardEvent",
    "web_sys::PointerEvent",
    // A timer that ends with its owner: it belongs to the component that waits, and touches nothing.
    "gloo::timers::callback::Timeout",
];

#[test]
fn only_platform_touches_the_browser() {
    let mut seen = 0;
    for (file, text) in files("app/src", "rs").into_iter().filter(|(file, _)| !file.contains("/platform/")) {
        for name in names_of_the_browser(&text) {
            assert!(ALLOWED.contains(&name.as_str()), "{file}: {name}");
            seen += 1;
        }
    }
    assert!(seen > 0, "nothing is found where there is something");
}

#[test]
fn a_name_is_found_beside_one_that_is_allowed() {
    let text =
        "use web_sys::{HtmlInputElement, Window};\nlet now = js_sys::Date::now();\nuse gloo::events::*;";
    let found = ["web_sys::HtmlInputElement", "web_sys::Window", "js_sys::Date::now", "gloo::events::"];
    assert_eq!(names_of_the_browser(text), found);
}

/// Every path into a crate that knows the browser, those in one pair of braces one by one.
fn names_of_the_browser(text: &str) -> Vec<String> {
    let is_path = |letter: char| letter.is_alphanumeric() || letter == '_' || letter == ':';
    let mut names = Vec::new();
    for crate_name in ["web_sys", "js_sys", "wasm_bindgen", "gloo"] {
        for (at, _) in text.match_indices(crate_name) {
            if text[..at].ends_with(|letter: char| letter.is_alphanumeric() || letter == '_') {
                continue;
            }
            let rest = &text[at..];
            let (path, after) = rest.split_at(rest.find(|letter| !is_path(letter)).unwrap_or(rest.len()));
            match after.strip_prefix('{').and_then(|inside| inside.split_once('}')) {
                Some((inside, _)) => names.extend(
                    inside
                        .split(',')
                        .map(str::trim)
                        .filter(|name| !name.is_empty())
                        .map(|name| format!("{path}{name}")),
                ),
                None => names.push(path.to_owned()),
            }
        }
    }
    names
}

#[test]
fn views_plate_and_text_know_no_page() {
    for folder in ["app/src/views", "app/src/plate", "app/src/text"] {
        for (name, text) in files(folder, "rs") {
            assert!(!text.contains("yew::"), "{name}");
        }
    }
}

#[test]
fn the_model_reads_no_clock_and_no_chance() {
    for (name, text) in files("model/src", "rs") {
        for word in ["std::time", "std::env", "std::fs", "rand::", "getrandom"] {
            assert!(!text.contains(word), "{name}: {word}");
        }
    }
}

#[test]
fn every_file_says_what_it_owns() {
    for (name, text) in rust() {
        assert!(text.starts_with("//!"), "{name} begins without a //! line");
    }
}
