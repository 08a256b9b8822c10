//! Writes the first page as it is before anybody decided anything, by the code that draws it there. It stands in
//! index.html, so that the plate is seen before the program has arrived.

fn main() {
    let page = yew::ServerRenderer::<hindsaddle_app::app::App>::new().hydratable(false);
    println!("{}", futures_executor::block_on(page.render()));
}
