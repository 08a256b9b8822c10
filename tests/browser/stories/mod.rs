//! The stories, one file for each thing that a person sets out to do.

mod open_the_page;
mod plan_an_animal;
mod work_the_plate;
