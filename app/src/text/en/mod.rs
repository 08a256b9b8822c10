//! English.

mod ahead;
mod kitchen;
mod labels;
mod names;
mod plate;
mod scale;
mod sentences;

pub use ahead::*;
pub use kitchen::*;
pub use labels::*;
pub use names::*;
pub use plate::*;
pub use scale::*;
pub use sentences::*;
