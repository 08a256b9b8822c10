//! Mounts the page, in Spanish.

fn main() {
    yew::Renderer::<hindsaddle_app::app::App>::new().render();
}
