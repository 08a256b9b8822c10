//! Mounts the second page: from the table to the freezer, in Spanish.

fn main() {
    yew::Renderer::<hindsaddle_app::components::KitchenPage>::new().render();
}
