//! The reader's language. A program speaks one, so that another is another program: `assets/boot.js` starts the one
//! that was chosen here, or that the browser asks for.

use super::{storage, window};

/// Opens the page again in the language of this code.
pub fn choose(code: &str) {
    storage::write(storage::LANGUAGE, code);
    if let Some(window) = window() {
        let _ = window.location().reload();
    }
}
