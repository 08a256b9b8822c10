//! Every sentence, name and number format of the page, in one place.
//!
//! Nothing else in the page writes words. A program speaks one language: the feature `spanish` chooses `es` in the
//! place of `en`, and what one of them lacks does not compile there. Numbers are written from whole tenths, so that
//! no float formatting is linked in; halves round up.

#[cfg(not(feature = "spanish"))]
mod en;
#[cfg(feature = "spanish")]
mod es;
mod numbers;
mod weights;
mod words;

/// Every language there is a program in, and what it calls itself.
pub const LANGUAGES: [(&str, &str); 2] = [("en", "English"), ("es", "Espa\u{f1}ol")];

#[cfg(not(feature = "spanish"))]
pub use en::*;
#[cfg(feature = "spanish")]
pub use es::*;
pub use numbers::*;
pub use weights::*;
pub use words::*;
