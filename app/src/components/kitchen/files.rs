//! Files out and in: packages for a spreadsheet, the plan itself.

use std::rc::Rc;

use hindsaddle_model::csv::csv;
use hindsaddle_model::link::{self, LONGEST};
use yew::prelude::*;

use super::{PartProps, tick};
use crate::components::plan_file::save_plan;
use crate::platform::files;
use crate::store::{Msg, Notice};
use crate::text;
use crate::views::kitchen::rows;

/// The card.
pub(super) fn view(props: &PartProps) -> Html {
    let said = |saved: bool| Msg::Say(Notice::saved(saved));
    let all = props.all.clone();
    let save_csv = props.send.reform(move |_: MouseEvent| {
        said(files::save("hindsaddle-packages.csv", "text/csv", &csv(rows(&all))))
    });
    let state = props.state.clone();
    let on_plan = props.send.reform(move |_: MouseEvent| save_plan(&state));
    let on_names = props.send.reform(Msg::NamesTravel);
    let send = props.send.clone();
    let on_open = Callback::from(move |event: Event| {
        let send = send.clone();
        files::opened(&event, LONGEST as u32 * 2, move |text| {
            send.emit(match text.map(|text| link::read(&text)) {
                None => Msg::Say(Notice::FileTooLong),
                Some(Ok(season)) => Msg::Open(Rc::new(season)),
                Some(Err(error)) => Msg::Say(Notice::LinkRefused(error)),
            });
        });
    });
    html! {
        <section class="card" aria-label={text::FILES}>
            <h2>{ text::FILES }</h2>
            <p>{ text::FILES_HINT }</p>
            { tick(text::NAMES_TRAVEL, props.state.names_travel, &on_names) }
            <div class="saves">
                <button type="button" class="tool" onclick={save_csv}>{ text::SAVE_CSV }</button>
                <button type="button" class="tool" onclick={on_plan}>{ text::SAVE_PLAN }</button>
            </div>
            <label class="field"><span class="field-label">{ text::OPEN_PLAN }</span><input type="file" accept=".txt,text/plain" onchange={on_open} /></label>
        </section>
    }
}
