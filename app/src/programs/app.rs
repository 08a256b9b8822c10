//! Mounts the page.

fn main() {
    yew::Renderer::<hindsaddle_app::app::App>::new().render();
}
