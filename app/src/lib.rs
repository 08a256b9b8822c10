//! The page, as a library, so that its parts can be tested.
//!
//! `store` holds the state, `views` and `plate` turn it into plain values without yew or a browser,
//! `components` show those, `platform` is the browser, `text` is every sentence, and `app` puts them together.

pub mod app;
pub mod caution;
pub mod components;
pub mod kept;
mod look;
mod message;
mod notice;
pub mod plate;
pub mod platform;
pub mod store;
pub mod text;
pub mod views;
