//! The model against the outside, against its own laws, and against bad input.

#![allow(clippy::unwrap_used, reason = "a test that cannot go on has failed")]

mod animals;
mod assignment;
mod changes;
mod coverage;
mod damage;
mod dates;
mod deal;
mod digest;
mod doubts;
mod edits;
mod example;
mod files;
mod forecaster;
mod grinding;
mod kitchen;
mod labels;
mod laws;
mod ledger;
mod lessons;
mod limits;
mod links;
mod oracle;
mod own;
mod packages;
mod partners;
mod pieces;
mod planner;
mod reference;
mod rules;
mod scale;
mod season;
mod storage;
mod wounds;
