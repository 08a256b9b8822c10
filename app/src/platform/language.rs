//! The reader's language. A program speaks one, so that another is another program: `assets/boot.js` starts the one
//! that was chosen here, or that the browser asks for.

use super::{address, storage};

/// Opens the page again in the language of this code.
pub fn choose(code: &str) {
    storage::write(storage::LANGUAGE, code);
    address::reload();
}
