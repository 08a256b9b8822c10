//! Mounts the fourth page: learning and teaching, in Spanish.

fn main() {
    yew::Renderer::<hindsaddle_app::components::LearnPage>::new().render();
}
