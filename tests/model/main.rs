//! The model against the outside, against its own laws, and against bad input.

mod animals;
mod digest;
mod laws;
mod ledger;
mod links;
mod oracle;
mod reference;
mod rules;
