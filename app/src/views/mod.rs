//! The state of the page as plain values for the components. No yew, no browser; tested on the host.

pub mod draft;
pub mod explain;
pub mod kitchen;
pub mod label_text;
pub mod labels;
pub mod lesson_plate;
pub mod parts;
pub mod plate_view;
pub mod practice;
pub mod scale;
pub mod season;
pub mod sizes;
pub mod sources;
pub mod tally_view;
pub mod teaching;
pub mod walk;
pub mod wounds;
