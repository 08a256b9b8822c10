//! Mounts the fourth page: learning and teaching.

fn main() {
    yew::Renderer::<hindsaddle_app::components::LearnPage>::new().render();
}
