//! Every sentence, name and number format of the page, in one place.
//!
//! Nothing else in the page writes words. Numbers are written from whole tenths, so that no float formatting
//! is linked in; halves round up.

mod ahead;
mod kitchen;
mod labels;
mod names;
mod numbers;
mod plate;
mod scale;
mod sentences;

pub use ahead::*;
pub use kitchen::*;
pub use labels::*;
pub use names::*;
pub use numbers::*;
pub use plate::*;
pub use scale::*;
pub use sentences::*;
