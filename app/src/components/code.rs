//! A text as a QR code (ISO/IEC 18004), as a drawing of its own.

use std::fmt::Write as _;

use qrcodegen::{QrCode, QrCodeEcc};

/// The drawing.
pub(super) struct Code {
    /// What of it is seen, with the four modules of quiet around that the standard asks for.
    pub view_box: String,
    /// A path of squares.
    pub modules: String,
}

impl Code {
    /// The code of a text; None if it is too long for one.
    pub(super) fn of(text: &str) -> Option<Self> {
        let code = QrCode::encode_text(text, QrCodeEcc::Low).ok()?;
        let mut modules = String::new();
        for y in 0..code.size() {
            for x in 0..code.size() {
                if code.get_module(x, y) {
                    let _ = write!(modules, "M{x} {y}h1v1h-1z");
                }
            }
        }
        Some(Self { view_box: format!("-4 -4 {0} {0}", code.size() + 8), modules })
    }
}
