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
        assert!(code.contains(&format!("Source::{source:?}")), "{source:?} is cited nowhere");
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
