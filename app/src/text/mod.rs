//! Every sentence, name and number format of the page, in one place.
//!
//! Nothing else in the page writes words. A language is a folder; numbers are written alike in all of them, from
//! whole tenths, so that no float formatting is linked in; halves round up.

mod en;
mod numbers;
mod weights;

pub use en::*;
pub use numbers::*;
pub use weights::*;
