//! The browser: the only place that touches it. Each function does one thing and cannot panic; what a browser
//! refuses comes back as `None`, `false` or an empty text.

pub mod address;
pub mod clipboard;
pub mod clock;
pub mod files;
pub mod focus;
pub mod install;
mod journal;
pub mod keys;
pub mod picture;
pub mod pointer;
pub mod screen;
pub mod share;
pub mod storage;
pub mod updates;
pub mod wake;

/// The window, where there is one: none while the page is written on another machine, before anyone opens it.
fn window() -> Option<web_sys::Window> {
    if cfg!(target_arch = "wasm32") { web_sys::window() } else { None }
}
