//! What the sources are cited as: the model's own words.

use hindsaddle_model::sources::Source;

/// Author, year and where a source was published.
pub fn citation(source: Source) -> &'static str {
    source.citation()
}
