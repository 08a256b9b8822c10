//! The plan as a file.

use crate::platform::files;
use crate::store::{Msg, Notice, State};

/// Saves the plan as a file, its names with it if they travel; what is then to be said.
pub(in crate::components) fn save_plan(state: &State) -> Msg {
    Msg::Say(Notice::saved(files::save("hindsaddle-plan.txt", "text/plain", &format!("{}\n", state.link()))))
}
