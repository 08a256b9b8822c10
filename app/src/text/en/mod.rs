//! English. `es` has the same items with the same signatures.

mod ahead;
mod citations;
mod glossary;
mod kitchen;
mod labels;
mod learn;
mod lessons;
mod names;
mod plate;
mod scale;
mod sentences;

pub use ahead::*;
pub use citations::*;
pub use glossary::*;
pub use kitchen::*;
pub use labels::*;
pub use learn::*;
pub use lessons::*;
pub use names::*;
pub use plate::*;
pub use scale::*;
pub use sentences::*;
