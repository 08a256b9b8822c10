//! The state of the page as plain values for the components. No yew, no browser; tested on the host.

pub mod explain;
pub mod kitchen;
pub mod label_text;
pub mod labels;
pub mod parts;
pub mod plate_view;
pub mod scale;
pub mod season;
pub mod sizes;
pub mod tally_view;
pub mod wounds;
