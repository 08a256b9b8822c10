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

#[test]
fn only_platform_touches_the_browser() {
    // What an event hands over is no way to the browser.
    let events = ["HtmlInputElement", "HtmlSelectElement", "KeyboardEvent", "PointerEvent"];
    for (name, text) in files("app/src", "rs") {
        if name.starts_with("app/src/platform/") {
            continue;
        }
        for line in text.lines() {
            let foreign =
                ["web_sys", "js_sys", "wasm_bindgen", "gloo::events"].iter().any(|word| line.contains(word));
            let excused = events.iter().any(|event| line.contains(event));
            assert!(!foreign || excused, "{name}: {line}");
        }
    }
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
