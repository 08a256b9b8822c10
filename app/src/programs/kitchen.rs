//! Mounts the second page: from the table to the freezer.

fn main() {
    yew::Renderer::<hindsaddle_app::components::KitchenPage>::new().render();
}
