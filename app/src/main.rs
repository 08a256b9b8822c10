//! Mounts the page.

fn main() {
    yew::Renderer::<hindsaddle_app::App>::new().render();
}
