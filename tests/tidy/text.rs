//! Length of files, stray words, and the promises of DEVELOPERS.md.

use super::{root, rust, texts};

/// The house's own measure.
const MOST_LINES: usize = 400;

/// Files that are longer, each with the reason for which it is one.
const LONGER: [(&str, &str); 7] = [
    ("app/src/store.rs", "every message of the page and what it does, with its tests"),
    ("app/src/views/plate_view.rs", "a third of it is its tests"),
    ("model/src/link/v1.rs", "a frozen format: who writes it stands beside who reads it"),
    ("model/src/plan.rs", "every action on a plan and why it is refused"),
    ("model/src/planner/assignment.rs", "one search, which is read from beginning to end"),
    ("model/src/tables/muscles.rs", "a row for each muscle"),
    ("tests/browser/page.rs", "one page and all that is done to it"),
];

#[test]
fn files_are_short_enough_to_read() {
    let lengths: Vec<(String, usize)> =
        rust().into_iter().map(|(name, text)| (name, text.lines().count())).collect();
    for (name, lines) in &lengths {
        // Lists of sentences are as long as what there is to say.
        let may_be_longer =
            name.starts_with("app/src/text/") || LONGER.iter().any(|(longer, _)| longer == name);
        assert!(may_be_longer || *lines <= MOST_LINES, "{name}: {lines} lines");
    }
    for (name, _) in LONGER {
        let is_longer = lengths.iter().any(|(other, lines)| other == name && *lines > MOST_LINES);
        assert!(is_longer, "{name} needs to be excused no more");
    }
}

/// No function is longer than a page; a component is mostly markup, and a sentence for each muscle is a list,
/// which are let run a little longer.
#[test]
fn functions_are_short_enough_to_read() {
    let mut functions = 0;
    for (name, text) in rust() {
        let is_list = ["app/src/components/", "app/src/text/"].iter().any(|place| name.starts_with(place));
        let most = if is_list { 110 } else { 70 };
        let lines: Vec<&str> = text.lines().collect();
        for (start, line) in lines.iter().enumerate() {
            let code = line.trim_start();
            let is_function =
                ["fn ", "pub fn ", "pub(super) fn ", "pub(crate) fn ", "const fn ", "pub const fn "]
                    .iter()
                    .any(|opening| code.starts_with(opening));
            if !is_function || line.ends_with(['}', ';']) {
                continue;
            }
            // The formatter puts the closing brace below the first letter of the function.
            let close = format!("{}}}", &line[..line.len() - code.len()]);
            let end = lines[start..]
                .iter()
                .position(|line| *line == close)
                .unwrap_or_else(|| panic!("{name}: {line}"));
            assert!(end < most, "{name}: {code} has {} lines", end + 1);
            functions += 1;
        }
    }
    assert!(functions > 300, "{functions}");
}

#[test]
fn nothing_is_left_to_do_or_left_behind() {
    // Spelt in two halves, so that this file does not find itself.
    let words = [["TO", "DO"], ["FIX", "ME"], ["dbg", "!("], ["/ro", "ot/"], ["/wo", "rk/"], ["/tm", "p/"]]
        .map(|[a, b]| format!("{a}{b}"));
    let texts = texts();
    for name in ["README.md", ".dev/setup.sh", "assets/boot.js", "tests/serving/nginx.conf", "Cargo.toml"] {
        assert!(texts.iter().any(|(other, _)| other == name), "{name} is not looked at");
    }
    for (name, text) in texts {
        for word in &words {
            assert!(!text.contains(word.as_str()), "{name}: {word}");
        }
        assert!(!text.lines().any(|line| line.ends_with(' ')), "{name}: a blank at the end of a line");
    }
}

/// The invariants are numbered in one row, none without a guard.
#[test]
fn every_invariant_is_guarded_by_a_test_that_exists() {
    let guide = std::fs::read_to_string(root().join("DEVELOPERS.md")).unwrap();
    let (_, section) = guide.split_once("\n## Invariants\n").unwrap();
    let section = section.split("\n## ").next().unwrap();
    let mut count = 0;
    for line in section.lines().filter(|line| !line.is_empty()) {
        count += 1;
        assert!(line.starts_with(&format!("{count}. ")), "number {count} is wanted: {line}");
        let (_, guards) = line.split_once("Guarded by ").unwrap_or_else(|| panic!("no guard: {line}"));
        let names: Vec<&str> = guards.split('`').skip(1).step_by(2).collect();
        assert!(!names.is_empty(), "no guard: {line}");
        for name in names {
            let (file, function) = name.split_once("::").unwrap_or_else(|| panic!("{name}"));
            let text =
                std::fs::read_to_string(root().join(file)).unwrap_or_else(|_| panic!("{file} is not there"));
            // With its parenthesis, so that a longer name is not taken for it.
            assert!(text.contains(&format!("fn {function}(")), "{name}");
        }
    }
    assert!(count > 0);
}
