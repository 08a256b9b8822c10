//! Mounts the third page: thinking ahead.

fn main() {
    yew::Renderer::<hindsaddle_app::components::AheadPage>::new().render();
}
