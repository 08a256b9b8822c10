//! Every source is used, and every row of a table names one.

use hindsaddle_model::sources::{Kind, Source};

use super::files;

#[test]
fn every_source_is_cited() {
    let code: String = files("model/src", "rs")
        .into_iter()
        .chain(files("app/src", "rs"))
        .filter(|(name, _)| name != "model/src/sources.rs")
        .map(|(_, text)| text)
        .collect();
    for source in Source::ALL {
        let name = format!("Source::{source:?}");
        // A longer name that begins alike is another source.
        let goes_on = |rest: &str| rest.starts_with(|letter: char| letter.is_alphanumeric() || letter == '_');
        let is_cited = code.match_indices(&name).any(|(at, _)| !goes_on(&code[at + name.len()..]));
        assert!(is_cited, "{source:?} is cited nowhere");
    }
}

#[test]
fn judgement_says_that_it_is_judgement() {
    for source in Source::ALL {
        let citation = source.citation().to_lowercase();
        let admits = ["judgement", "estimate", "analogy"].iter().any(|word| citation.contains(word));
        assert_eq!(source.kind() == Kind::Judgement, admits, "{citation}");
    }
}
