//! The tree against the house rules.

#![allow(clippy::unwrap_used, reason = "a test that cannot go on has failed")]

mod layers;
mod sources;
mod text;

use std::path::{Path, PathBuf};

/// The root of the project.
fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap().to_path_buf()
}

/// Every file under a folder of the project with this extension, and its text.
fn files(folder: &str, extension: &str) -> Vec<(String, String)> {
    let mut found = Vec::new();
    let mut folders = vec![root().join(folder)];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(&folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|other| other == extension) {
                let name = path.strip_prefix(root()).unwrap().display().to_string();
                found.push((name, std::fs::read_to_string(&path).unwrap()));
            }
        }
    }
    assert!(!found.is_empty(), "{folder}");
    found.sort();
    found
}

/// What a command makes, and what is kept of the project's past: see `.gitignore`.
const NOT_OURS: [&str; 8] = [
    ".git",
    "target",
    "dist",
    "node_modules",
    ".tools/bin",
    ".tools/build",
    "tests/fuzz/target",
    "tests/fuzz/artifacts",
];

/// Every file of the project that is text, and its text.
fn texts() -> Vec<(String, String)> {
    let mut found = Vec::new();
    let mut folders = vec![root()];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(&folder).unwrap() {
            let path = entry.unwrap().path();
            let name = path.strip_prefix(root()).unwrap().display().to_string();
            if NOT_OURS.iter().any(|other| name == *other || name.ends_with(&format!("/{other}"))) {
                continue;
            }
            if path.is_dir() {
                folders.push(path);
            } else if let Ok(text) = std::fs::read_to_string(&path) {
                found.push((name, text));
            }
        }
    }
    found.sort();
    found
}

fn rust() -> Vec<(String, String)> {
    ["model", "app", "tests"].into_iter().flat_map(|folder| files(folder, "rs")).collect()
}
