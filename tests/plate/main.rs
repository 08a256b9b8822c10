//! The authored plate measured: proportions, borders, neighbours, grain, and the table the wounds use.

#![allow(clippy::unwrap_used, reason = "a test that cannot go on has failed")]

mod borders;
mod grain;
mod proportions;
mod read;
mod territory;
