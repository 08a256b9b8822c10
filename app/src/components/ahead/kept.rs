//! Plans that were put aside: name them, open them, remove them. They stay on this device.

use std::rc::Rc;

use hindsaddle_model::link;
use yew::prelude::*;

use super::PartProps;
use crate::app::{put_aside, remember};
use crate::components::field::field;
use crate::kept::{self, Kept};
use crate::platform::storage;
use crate::store::{Msg, Notice};
use crate::text;

fn read() -> Vec<Kept> {
    kept::read(&storage::read(storage::KEPT).unwrap_or_default())
}

/// A name as it is kept.
fn clean(name: &str) -> String {
    name.chars().filter(|letter| !letter.is_control()).take(40).collect()
}

/// The card.
#[component]
pub(super) fn KeptPlans(props: &PartProps) -> Html {
    let list = use_state(read);
    // What was removed last, and where it was.
    let removed = use_state(|| None::<(usize, Kept)>);
    let store = {
        let (list, send) = (list.clone(), props.send.clone());
        move |now: Vec<Kept>| {
            remember(storage::KEPT, &kept::write(&now), &send);
            list.set(now);
        }
    };
    let on_keep = {
        let (list, season, send) = (list.clone(), props.state.season.clone(), props.send.clone());
        Callback::from(move |_: MouseEvent| {
            match put_aside(&season) {
                // Whoever keeps plans wants them to stay: now is the moment to ask the browser not to clear them.
                Ok(()) => storage::persist(|_| ()),
                Err(why) => send.emit(Msg::Say(why)),
            }
            list.set(read());
        })
    };
    let on_back = {
        let (removed, store) = (removed.clone(), store.clone());
        Callback::from(move |_: MouseEvent| {
            if let Some((place, kept)) = &*removed {
                let mut now = read();
                now.insert((*place).min(now.len()), kept.clone());
                store(now);
            }
            removed.set(None);
        })
    };
    let row = |(place, kept): (usize, &Kept)| {
        let (store_name, store_less, store_more) = (store.clone(), store.clone(), store.clone());
        let (removed, send) = (removed.clone(), props.send.clone());
        let on_name = Callback::from(move |name: String| {
            let mut now = read();
            if let Some(kept) = now.get_mut(place) {
                kept.name = clean(&name);
            }
            store_name(now);
        });
        let on_remove = Callback::from(move |_: MouseEvent| {
            let mut now = read();
            if place < now.len() {
                removed.set(Some((place, now.remove(place))));
                store_less(now);
            }
        });
        let on_copy = Callback::from(move |_: MouseEvent| {
            let now = read();
            let name = now.get(place).map_or_else(String::new, |kept| text::copy_of(&kept.name));
            match kept::with_copy(now, place, clean(&name)) {
                Some(now) => store_more(now),
                None => send.emit(Msg::Say(Notice::KeptFull)),
            }
        });
        let season = link::read(&kept.link);
        let on_open = {
            let (season, send, list) = (season.clone(), props.send.clone(), list.clone());
            let open = props.state.season.clone();
            Callback::from(move |_: MouseEvent| {
                // What has to go is put aside by itself, too; here the list shows it at once.
                let room = put_aside(&open);
                list.set(read());
                match &season {
                    Ok(season) => {
                        send.emit(Msg::Open(Rc::new(season.clone())));
                        send.emit(room.map_or_else(Msg::NotAside, |()| Msg::Say(Notice::KeptOpened)));
                    }
                    Err(error) => send.emit(Msg::Say(Notice::LinkRefused(*error))),
                }
            })
        };
        let line = season.map_or_else(
            |error| text::link_error(error).to_owned(),
            |season| text::season_line(&season, props.state.units),
        );
        html! {
            <li key={place} class="season-animal">
                { field(text::KEPT_NAME, "text", kept.name.clone(), "", &on_name) }
                <p>{ line }<span class="each">{ &kept.day }</span></p>
                <div class="row-tools">
                    <button type="button" class="tool" onclick={on_open}>{ text::OPEN_KEPT }</button>
                    <button type="button" class="tool" onclick={on_copy}>{ text::COPY_KEPT }</button>
                    <button type="button" class="tool" onclick={on_remove}>{ text::REMOVE }</button>
                </div>
            </li>
        }
    };
    html! {
        <section class="card" aria-label={text::KEPT_PLANS}>
            <h2>{ text::KEPT_PLANS }</h2>
            <p>{ text::KEPT_HINT }</p>
            <button type="button" class="tool wide" onclick={on_keep}>{ text::KEEP_THIS }</button>
            if removed.is_some() { <p>{ text::REMOVED }{ " " }<button type="button" class="tool" onclick={on_back}>{ text::BRING_BACK }</button></p> }
            <ul class="animals-list">{ for list.iter().enumerate().map(row) }</ul>
        </section>
    }
}
