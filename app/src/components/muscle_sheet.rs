//! Deciding about one muscle: what it becomes, how thick, in how many parts, on which side.

use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::plan::{Action, Division, MOST_PARTS, Part};
use hindsaddle_model::product::Cut;
use hindsaddle_model::tables;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::controls::{Choosable, segments};
use super::opened::Opened;
use super::part_editor::{self, part_editor};
use super::still::{Still, still};
use crate::platform::focus;
use crate::store::{Msg, Notice, State};
use crate::text;
use crate::views::parts;

/// What is decided about.
struct Sheet<'a> {
    state: &'a State,
    muscle: Muscle,
    send: &'a Callback<Msg>,
}

/// The plate, which has to stay in sight over the sheet.
pub(super) const STAGE: &str = "stage";
const HEADING: &str = "sheet-heading";

/// The sheet.
pub fn muscle_sheet(state: &State, muscle: Muscle, send: &Callback<Msg>) -> Html {
    let sheet = Sheet { state, muscle, send };
    let forecast = &state.forecast.muscles[muscle.index()];
    let side = state.look.side;
    let taken = state.plan.is_recovered(muscle);
    let close = {
        let send = send.clone();
        Callback::from(move |_: MouseEvent| {
            send.emit(Msg::Pick(None));
            focus::focus(&format!("touch-{}", muscle.id()));
        })
    };
    let on_taken = {
        let send = send.clone();
        Callback::from(move |event: Event| {
            let taken = event.target_unchecked_into::<HtmlInputElement>().checked();
            send.emit(Msg::Act(Action::Recover { muscle, taken }));
        })
    };
    let on_sides = {
        let send = send.clone();
        Callback::from(move |place: usize| {
            send.emit(Msg::Sides(match place {
                0 => Sides::Both,
                1 => Sides::One(Side::Left),
                _ => Sides::One(Side::Right),
            }));
        })
    };
    let sides = vec![
        Choosable::new(text::BOTH),
        Choosable::new(text::side(Side::Left)),
        Choosable::new(text::side(Side::Right)),
    ];
    let chosen = match state.sides {
        Sides::Both => 0,
        Sides::One(Side::Left) => 1,
        Sides::One(Side::Right) => 2,
    };
    let length = forecast.length.map(|length| text::long(&text::rough_length(length, state.units)));
    html! {
        <section key={muscle.id()} class="sheet" aria-labelledby={HEADING}>
            <Opened focus={HEADING} reveal={STAGE} />
            <div class="card-head">
                <div>
                    <h2 id={HEADING} tabindex="-1">{ text::muscle(muscle) }</h2>
                    <p class="also">{ text::muscle_also(muscle) }</p>
                </div>
                <button type="button" class="tool" onclick={close}>{ text::CLOSE }</button>
            </div>
            <p class="answer">
                { text::both_sides(&text::mass_range(forecast.mass, state.units)) }
                if let Some(length) = length { { ", " }{ length } }
            </p>
            if taken {
                <ul class="results">
                    { for forecast.packs.iter().enumerate().map(|(place, row)| html! { <li key={place}>{ text::pack_row(row, state.units) }</li> }) }
                    if forecast.packs.is_empty() { <li>{ text::muscle_result(forecast, taken) }</li> }
                </ul>
                { part_list(&sheet, side) }
                { for forecast.sides[side.index()].iter().flat_map(|part| &part.advice).map(|advice| {
                    let words = text::advice(advice, state.units);
                    html! { <p key={words.clone()} class="advice">{ words }</p> }
                }) }
                { segments(text::SIDES, sides, Some(chosen), &on_sides) }
            }
            <label class="tick"><input type="checkbox" checked={taken} onchange={on_taken} />{ text::TAKEN }</label>
            { still(text::ABOUT, About(muscle)) }
        </section>
    }
}

/// What is to be known of it.
#[derive(PartialEq)]
struct About(Muscle);

impl Still for About {
    fn draw(&self) -> Html {
        let muscle = self.0;
        let row = tables::muscle(muscle);
        html! {
            <details class="about">
                <summary>{ text::ABOUT }</summary>
                <p>{ text::teach(muscle) }</p>
                <p><b>{ text::NEXT_TO }</b>{ ": " }{ text::touching(tables::touching(muscle)) }</p>
                <p><b>{ text::KNIFE }</b>{ ": " }{ text::knife(muscle) }</p>
                <p>{ text::TENDER }{ ": " }{ text::of_five(row.tenderness) }{ ". " }{ text::SILVERSKIN }{ ": " }{ text::of_five(row.silverskin) }{ "." }</p>
                <p class="latin">{ text::anatomical(muscle) }</p>
            </details>
        }
    }
}

/// A callback that makes other parts of `all` and sends them as the muscle's division, or says why they are none.
fn editing<T: 'static>(
    sheet: &Sheet,
    all: &[Part],
    edit: impl Fn(&[Part], T) -> Vec<Part> + 'static,
) -> Callback<T> {
    let (muscle, sides, all) = (sheet.muscle, sheet.state.sides, all.to_vec());
    sheet.send.reform(move |value: T| match Division::new(edit(&all, value)) {
        Ok(division) => Msg::Act(Action::Divide { muscle, sides, division }),
        Err(refusal) => Msg::Say(Notice::Refused(refusal)),
    })
}

fn part_list(sheet: &Sheet, side: Side) -> Html {
    let (state, muscle) = (sheet.state, sheet.muscle);
    let all = state.plan.division(muscle, side).parts();
    let many = all.len() > 1;
    let can_divide = tables::muscle(muscle).size.is_some() && all.len() < MOST_PARTS;
    let on_divide = editing(sheet, all, |all, _: MouseEvent| parts::split(all));
    html! {
        <>
            { for all.iter().enumerate().map(|(place, part)| {
                let on_cut = editing(sheet, all, move |all, cut: Cut| parts::recut(all, place, cut));
                let name = format!("{}-{place}", muscle.id()).into();
                let editor = part_editor(&part_editor::Part { muscle, cut: part.cut, name, units: state.units, on_cut });
                if many {
                    html! { <div key={place} class="part" role="group" aria-label={text::part(place + 1)}>{ part_head(sheet, all, place) }{ editor }</div> }
                } else {
                    editor
                }
            }) }
            if can_divide {
                <button type="button" class="tool wide" onclick={on_divide}>{ text::DIVIDE }</button>
            }
        </>
    }
}

fn part_head(sheet: &Sheet, all: &[Part], place: usize) -> Html {
    let on_percent = editing(sheet, all, move |all, event: Event| {
        let typed = text::typed(&event.target_unchecked_into::<HtmlInputElement>().value());
        parts::resized(all, place, typed.map_or(0, |number| number.max(0.0).min(100.0) as u8))
    });
    let on_join = editing(sheet, all, move |all, _: MouseEvent| parts::joined(all, place));
    html! {
        <div class="part-head">
            <h3>{ text::part(place + 1) }</h3>
            <label class="field small">
                <span class="field-label">{ text::PART_LENGTH }</span>
                <input type="number" min="1" max="99" inputmode="numeric" value={all[place].percent.to_string()} onchange={on_percent} />
            </label>
            <button type="button" class="tool" onclick={on_join}>{ text::REMOVE_PART }</button>
        </div>
    }
}
