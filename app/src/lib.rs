//! The page, as a library, so that its parts can be tested.

use yew::prelude::*;

/// The whole page.
#[component]
pub fn App() -> Html {
    html! { <h1>{ "Hindsaddle" }</h1> }
}
