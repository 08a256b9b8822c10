//! Mounts the third page: thinking ahead, in Spanish.

fn main() {
    yew::Renderer::<hindsaddle_app::components::AheadPage>::new().render();
}
