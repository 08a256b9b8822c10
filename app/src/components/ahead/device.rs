//! This device: what is kept on it and where, putting the page among its programs, and forgetting all of it.

use yew::prelude::*;

use super::PartProps;
use crate::platform::{address, install, storage};
use crate::text;

/// What `text::HELD` names, in its order.
const HELD: [&str; 8] = [
    storage::PLAN,
    storage::KEPT,
    storage::TABLE,
    storage::LABELS,
    storage::HAVE,
    storage::OWN,
    storage::PRACTICE,
    storage::SET_ASIDE,
];

/// The card.
#[component]
pub(super) fn Device(props: &PartProps) -> Html {
    let steady = use_state(|| None::<bool>);
    let sure = use_state(|| false);
    let offered = use_state(install::is_offered);
    {
        let offered = offered.clone();
        use_effect_with((), move |()| {
            let listener = install::on_offer(move || offered.set(install::is_offered()));
            move || drop(listener)
        });
    }
    let persist =
        |steady: UseStateHandle<Option<bool>>| storage::persist(move |agreed| steady.set(Some(agreed)));
    let on_persist = {
        let steady = steady.clone();
        Callback::from(move |_: MouseEvent| persist(steady.clone()))
    };
    let on_install = {
        let (offered, steady) = (offered.clone(), steady.clone());
        Callback::from(move |_: MouseEvent| {
            install::ask();
            offered.set(false);
            persist(steady.clone());
        })
    };
    let to = |value: bool| {
        let sure = sure.clone();
        Callback::from(move |_: MouseEvent| sure.set(value))
    };
    let held = storage::held();
    let size = |name: &str| held.iter().find(|(held, _)| held == name).map_or(0, |(_, size)| *size);
    html! {
        <section class="card" aria-label={text::DEVICE}>
            <h2>{ text::DEVICE }</h2>
            <h3>{ text::WHAT_IS_WHERE }</h3>
            <table class="plain">
                <tbody>{ for HELD.iter().zip(text::HELD).map(|(name, what)| html! {
                    <tr key={what}><th scope="row">{ what }</th><td>{ text::characters(size(name)) }</td></tr>
                }) }</tbody>
            </table>
            <ul class="plain-list">{ for text::WHERE_THINGS_ARE.iter().map(|line| html! { <li key={*line}>{ *line }</li> }) }</ul>
            { match *steady {
                None => html! { <button type="button" class="tool" onclick={on_persist}>{ text::ASK_TO_KEEP }</button> },
                Some(agreed) => html! { <p role="status">{ if agreed { text::WILL_KEEP } else { text::WILL_NOT_KEEP } }</p> },
            } }
            <h3>{ text::INSTALL_HEAD }</h3>
            if install::is_installed() {
                <p>{ text::IS_INSTALLED }</p>
            } else if *offered {
                <p>{ text::INSTALL_HINT }</p>
                <button type="button" class="tool main-action" onclick={on_install}>{ text::INSTALL }</button>
            } else {
                <p>{ text::INSTALL_BY_HAND }</p>
            }
            <h3>{ text::FORGET_HEAD }</h3>
            if *sure {
                <p class="caution">{ text::FORGET_SURE }</p>
                <div class="row-tools">
                    <button type="button" class="tool" onclick={|_: MouseEvent| storage::forget(|| address::go(&address::of_plan("")))}>{ text::FORGET_ALL }</button>
                    <button type="button" class="tool" onclick={to(false)}>{ text::FORGET_NOT }</button>
                </div>
            } else {
                <p>{ text::FORGET_HINT }{ " " }<a href={format!("kitchen.html#{}", props.state.link())}>{ text::way(2) }</a></p>
                <button type="button" class="tool" onclick={to(true)}>{ text::FORGET_ASK }</button>
            }
        </section>
    }
}
