//! A plan as its receiver reads it: the work order first. Nothing of the reader's own changes until it is asked for.

use std::rc::Rc;

use hindsaddle_model::season::Season;
use yew::prelude::*;

use super::{PartProps, work_order};
use crate::app::{adopt, own, put_aside, received, use_shared};
use crate::components::controls::segments_of;
use crate::components::header::animals;
use crate::components::notice_bar;
use crate::platform::address;
use crate::store::{Msg, Notice, State, link_of};
use crate::text::{self, Units};
use crate::views::kitchen::all_packed;
use crate::views::tally_view;

/// The page.
#[component]
pub(super) fn Reading() -> Html {
    // Another link in the address is another plan to read.
    use_effect_with((), |()| {
        let listener = address::on_change(|_| address::reload());
        move || drop(listener)
    });
    let received = use_memo((), |()| received());
    match &*received {
        Ok(state) => html! { <Received state={Rc::new(state.clone())} /> },
        Err(notice) => html! {
            <div class="page kitchen">
                <header class="header"><div class="brand"><h1>{ text::RECEIVED }</h1></div></header>
                { notice_bar(Some(notice), Units::Pounds, &Callback::from(|message| if message == Msg::Quiet { go_home() })) }
                <main class="kitchen-part"><a class="tool" href="./#">{ text::TO_OWN_PLAN }</a></main>
            </div>
        },
    }
}

/// Properties of [`Received`].
#[derive(PartialEq, Properties)]
struct ReceivedProps {
    /// What the link says.
    state: Rc<State>,
}

/// A plan that could be read.
#[component]
fn Received(props: &ReceivedProps) -> Html {
    let opened = props.state.clone();
    let state = use_reducer(move || (*opened).clone());
    let (state, send) = use_shared(&state);
    let all = use_memo(state.season.clone(), |season| all_packed(season));
    let parts = PartProps { state: state.clone(), all, send: send.clone() };
    html! {
        <div class="page kitchen reading">
            <header class="header">
                <div class="brand"><h1>{ text::RECEIVED }</h1><p class="motto">{ text::animal_line(&state.plan, state.units) }</p></div>
                <div class="tools">{ segments_of(text::UNITS, &Units::ALL, text::weight_unit, state.units, &send.reform(Msg::Units)) }</div>
                { animals(&state, &send) }
            </header>
            { notice_bar(state.notice.as_ref(), state.units, &send) }
            <main class="kitchen-part">
                { work_order::view(&parts) }
                { packages(&state) }
                <p class="hint">{ text::READ_ONLY }{ " " }<a href={format!("learn.html#{}", state.link())}>{ text::WHERE_CUTS_ARE }</a></p>
            </main>
            { choices(&state.season, &send) }
        </div>
    }
}

/// What comes out, product by product.
fn packages(state: &State) -> Html {
    html! {
        <section class="card" aria-label={text::PACKAGES}>
            <h2>{ text::PACKAGES }</h2>
            <table class="plain">
                <thead><tr><th scope="col">{ text::BECOMES }</th><th scope="col">{ text::PACKAGES }</th><th scope="col">{ text::TAKE_HOME }</th></tr></thead>
                <tbody>{ for tally_view::products(&state.forecast, state.units).into_iter().map(|row| html! {
                    <tr key={row.product.id()}>
                        <th scope="row">{ text::product(row.product) }<span class="each">{ row.each }</span></th>
                        <td>{ row.packs }<span class="ends">{ " " }{ row.pack_ends }</span></td>
                        <td>{ row.mass }<span class="ends">{ " " }{ row.mass_ends }</span></td>
                    </tr>
                }) }</tbody>
            </table>
        </section>
    }
}

/// What the reader does with it: a bar where the thumb is.
fn choices(theirs: &Rc<Season>, send: &Callback<Msg>) -> Html {
    let mine = own();
    let open = {
        let (theirs, send) = (theirs.clone(), send.clone());
        Callback::from(move |_: MouseEvent| match adopt(&theirs) {
            Ok(()) => address::go(&address::of_plan(&link_of(&theirs, false))),
            Err(why) => send.emit(Msg::Say(why)),
        })
    };
    let home = Callback::from(|_: MouseEvent| go_home());
    let both = {
        let (theirs, send) = (theirs.clone(), send.clone());
        Callback::from(move |_: MouseEvent| {
            send.emit(Msg::Say(put_aside(&theirs).err().unwrap_or(Notice::BothKept)));
        })
    };
    let button = |label: &'static str, main: bool, onclick: &Callback<MouseEvent>| {
        html! { <button type="button" class={classes!("tool", main.then_some("main-action"))} onclick={onclick.clone()}>{ label }</button> }
    };
    html! {
        <section class="yours-or-theirs" aria-label={text::YOURS_OR_THEIRS}>
            { match mine {
                None => button(text::PLAN_ON, true, &open),
                Some(mine) if link_of(&mine, false) == link_of(theirs, false) => html! { <><p>{ text::IS_YOURS }</p>{ button(text::TO_OWN_PLAN, true, &home) }</> },
                Some(_) => html! {
                    <><p>{ text::HAVE_OWN }</p>{ button(text::KEEP_MINE, false, &home) }{ button(text::OPEN_THEIRS, true, &open) }{ button(text::KEEP_BOTH, false, &both) }</>
                },
            } }
        </section>
    }
}

/// To the plan of this browser.
fn go_home() {
    let link = own().map(|mine| link_of(&mine, false)).unwrap_or_default();
    address::go(&address::of_plan(&link));
}
