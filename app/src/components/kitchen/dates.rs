//! When it was killed and packed, whose it is, and until when it is at its best.

use hindsaddle_model::dates::{Keeps, best_by};
use hindsaddle_model::ics::{Reminder, Stamp, Whose, calendar};
use yew::prelude::*;

use super::{PartProps, field};
use crate::caution::Caution;
use crate::platform::{clock, files};
use crate::store::{Msg, Notice};
use crate::text;
use crate::views::kitchen::iso;

/// The card.
pub(super) fn view(props: &PartProps) -> Html {
    let kitchen = props.state.plan.kitchen();
    let shown = |date: Option<hindsaddle_model::dates::Date>| date.map(iso).unwrap_or_default();
    let on_harvested = props.on_date(|kitchen| &mut kitchen.harvested);
    let on_packed = props.on_date(|kitchen| &mut kitchen.packed);
    let on_owner = props.on(|kitchen, typed: String| kitchen.owner = typed);
    let on_tag = props.on(|kitchen, typed: String| kitchen.tag = typed);
    html! {
        <section class="card" aria-label={text::BEST_BY}>
            <div class="fields">
                { field(text::HARVESTED, "date", shown(kitchen.harvested), "", &on_harvested) }
                { field(text::PACKED_ON, "date", shown(kitchen.packed), "", &on_packed) }
                { field(text::OWNER, "text", kitchen.owner.clone(), "", &on_owner) }
                { field(text::TAG, "text", kitchen.tag.clone(), "", &on_tag) }
            </div>
            { table(props) }
            <p class="hint">{ text::QUALITY }</p>
            <p class="hint">{ text::caution(Caution::Testing).1 }</p>
            <p class="hint">{ text::caution(Caution::Selling).1 }{ " " }{ text::caution(Caution::Organs).1 }</p>
        </section>
    }
}

fn table(props: &PartProps) -> Html {
    let kitchen = props.state.plan.kitchen();
    let Some(packed) = kitchen.packed else { return html! { <p>{ text::NO_DATE }</p> } };
    let forms = props.packed().forms();
    let rows: Vec<_> = forms
        .iter()
        .filter_map(|form| best_by(*form, packed, kitchen.harvested).ok().map(|until| (*form, until)))
        .collect();
    let save = {
        let (send, whose) = (props.send.clone(), Whose::of(&props.state.plan, props.state.at));
        let dates: Vec<(Keeps, hindsaddle_model::dates::Date)> =
            rows.iter().map(|(form, until)| (*form, until.label)).collect();
        Callback::from(move |_: MouseEvent| {
            let (year, month, day, [hour, minute, second]) = clock::now_utc();
            // A clock that is decades off is no reason to give no file: it only says when the file was made.
            let date = hindsaddle_model::dates::Date::new(year, month, day).unwrap_or(packed);
            let words: Vec<String> = dates.iter().map(|(form, _)| text::reminder(*form)).collect();
            let reminders: Vec<Reminder> = dates
                .iter()
                .zip(&words)
                .map(|((form, date), summary)| Reminder {
                    key: form.id(),
                    date: *date,
                    summary,
                    description: text::QUALITY,
                })
                .collect();
            let text = calendar(&whose, Stamp { date, hour, minute, second }, &reminders);
            let saved = files::save("hindsaddle.ics", "text/calendar", &text);
            send.emit(Msg::Say(Notice::saved(saved)));
        })
    };
    html! {
        <>
            <h3>{ text::BEST_BY }</h3>
            <ul class="best-by">
                { for rows.iter().map(|(form, until)| html! {
                    <li key={text::keeps(*form)}>
                        <b>{ text::keeps(*form) }</b>{ ": " }{ text::date(until.label) }
                        <details>
                            <summary>{ text::INPUTS }</summary>
                            <ul>{ for until.sources.iter().map(|source| html! {
                                <li key={text::citation(source.row.source)}>{ text::months(source.row.months) }{ ": " }{ text::citation(source.row.source) }</li>
                            }) }</ul>
                        </details>
                    </li>
                }) }
            </ul>
            <button type="button" class="tool" onclick={save}>{ text::SAVE_CALENDAR }</button>
        </>
    }
}
