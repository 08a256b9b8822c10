//! Browser stories: what a person does with the built page, and what that person then sees.
//!
//! The words are `Page` (open, reload, go offline …), `act` (what is done), `see` (what is seen) and
//! `find` (which part of the page is meant: by its role and its accessible name, never by its markup).
//! Every word waits until the page is ready for it and fails if the page logged an error.
//!
//! They run with `bash .dev/test`, or, once that has built the page, with
//! `cargo test -p hindsaddle-tests --test browser`.

mod act;
mod driver;
mod find;
mod folder;
mod keys;
mod nginx;
mod page;
mod patience;
mod see;
mod server;
mod stories;
