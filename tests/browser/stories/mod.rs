//! The stories, one file for each thing that a person sets out to do.

mod camp_without_signal;
mod go_to_the_freezer;
mod host_the_page;
mod learn_the_muscles;
mod meet_everyone;
mod never_lose;
mod open_the_page;
mod plan_an_animal;
mod print_the_labels;
mod read_in_spanish;
mod receive_a_plan;
mod share_a_plan;
mod think_ahead;
mod weigh_the_meat;
mod work_by_keyboard;
mod work_the_plate;
