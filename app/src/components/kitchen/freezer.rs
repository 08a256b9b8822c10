//! The freezer: what goes in on which day, how long a package takes, and what to do if it cannot be done.

use hindsaddle_model::dates::Date;
use hindsaddle_model::freezer::{Arrival, Day, Freezer, LoadRule, Schedule, schedule};
use hindsaddle_model::heat::{Cold, Faces, is_too_thick};
use hindsaddle_model::product::Product;
use hindsaddle_model::thaw::thawing_time;
use hindsaddle_model::units::{Mass, Volume};
use yew::prelude::*;

use super::{PartProps, field};
use crate::components::controls::choice_of;
use crate::text;
use crate::views::kitchen::{arrivals, counted, first_day};

/// The card.
pub(super) fn view(props: &PartProps) -> Html {
    let freezer = props.state.plan.kitchen().freezer;
    let arrivals = arrivals(&props.all);
    html! {
        <section class="card" aria-label={text::FREEZER}>
            <h2>{ text::FREEZER }</h2>
            if props.all.len() > 1 { <p>{ text::for_all(counted(&props.all).count()) }</p> }
            { fields(props, freezer) }
            { match freezer {
                None => html! { <p>{ text::NO_FREEZER }</p> },
                Some(freezer) => match schedule(&arrivals, &freezer) {
                    Ok(plan) => days(props, &freezer, &arrivals, &plan),
                    Err(trouble) => html! { <p class="caution" role="alert">{ text::trouble(&trouble, props.state.units) }</p> },
                },
            } }
            <p class="hint">{ text::FREEZE_HINT }</p>
            { times(props) }
        </section>
    }
}

fn fields(props: &PartProps, freezer: Option<Freezer>) -> Html {
    let units = props.state.units;
    let shown = |volume: fn(&Freezer) -> Volume| {
        freezer.as_ref().map(|freezer| text::volume_field(volume(freezer), units)).unwrap_or_default()
    };
    let on_size = props.on(move |kitchen, typed: String| {
        kitchen.freezer = text::typed(&typed).map(|number| {
            let size = text::typed_volume(number, units);
            let pace = kitchen.freezer.map_or(LoadRule::Cautious, |freezer| freezer.pace);
            // Empty until somebody says that it is not.
            Freezer { size, free: size, pace }
        });
    });
    let on_free = props.on(move |kitchen, typed: String| {
        if let (Some(freezer), Some(number)) = (&mut kitchen.freezer, text::typed(&typed)) {
            freezer.free = text::typed_volume(number, units);
        }
    });
    let on_pace = props.on(|kitchen, pace: LoadRule| {
        if let Some(freezer) = &mut kitchen.freezer {
            freezer.pace = pace;
        }
    });
    let unit = text::volume_unit(units);
    html! {
        <div class="fields">
            { field(text::FREEZER_SIZE, "number", shown(|freezer| freezer.size), unit, &on_size) }
            if let Some(freezer) = freezer {
                { field(text::FREEZER_FREE, "number", shown(|freezer| freezer.free), unit, &on_free) }
                { choice_of(text::PACE, &LoadRule::ALL, text::load_rule, freezer.pace, &on_pace) }
            }
        </div>
    }
}

fn days(props: &PartProps, freezer: &Freezer, arrivals: &[Arrival], plan: &Schedule) -> Html {
    let first = first_day(&props.all);
    let units = props.state.units;
    let room = plan.room;
    let last = plan.days.last().map_or(Mass::ZERO, |day| day.frozen);
    html! {
        <>
            <p class="answer">{ text::room(room.low(), room.likely(), room.high(), freezer.daily_load(), units) }</p>
            <h3>{ text::SCHEDULE }</h3>
            <p class="hint">{ text::FILLING }</p>
            <table class="plain">
                <thead><tr><th scope="col">{ text::DAY }</th><td></td><th scope="col">{ text::GOES_IN }</th><th scope="col">{ text::WAITS }</th></tr></thead>
                <tbody>
                    { for plan.days.iter().map(|day| html! {
                        <tr key={day.day}>
                            <th scope="row">{ when(first, day.day) }</th>
                            <td>{ filling(freezer, day, last, plan.room.likely()) }</td>
                            <td>{ text::mass(day.mass, units) }<span class="each">{ contents(arrivals, day) }</span></td>
                            <td>{ if day.waiting > Mass::grams(1.0) { text::mass(day.waiting, units) } else { "\u{2013}".into() } }</td>
                        </tr>
                    }) }
                </tbody>
            </table>
        </>
    }
}

/// "1", or the date if the first day of packing is known.
fn when(first: Option<Date>, day: u16) -> String {
    match first {
        Some(first) => text::date(first.plus_days(day)),
        None => (day + 1).to_string(),
    }
}

/// "8 ground, 3 stew".
fn contents(arrivals: &[Arrival], day: &Day) -> String {
    let count = |product: Product| {
        day.packages.iter().filter(|index| arrivals[**index].package.product == product).count()
    };
    let parts: Vec<String> = Product::ALL
        .into_iter()
        .filter(|product| count(*product) > 0)
        .map(|product| format!("{} {}", count(product), text::product(product).to_ascii_lowercase()))
        .collect();
    parts.join(", ")
}

/// The freezer filling: what was in it, what is frozen by now, what goes in today.
fn filling(freezer: &Freezer, day: &Day, last: Mass, room: Volume) -> Html {
    let litres = |volume: Volume| volume.to_litres() / freezer.size.to_litres() * 100.0;
    let before = litres(freezer.size) - litres(freezer.free);
    // All of it takes `room`; a day takes its part of that.
    let part = |mass: Mass| if last > Mass::ZERO { litres(room) * (mass / last) } else { 0.0 };
    let (frozen, today) = (part(day.frozen - day.mass), part(day.mass));
    let height = |value: f64| (value.round() as i64).to_string();
    html! {
        <svg class="freezer" viewBox="0 0 60 104" width="40" height="69" aria-hidden="true">
            <rect class="freezer-wall" x="1" y="1" width="58" height="102" rx="6" />
            <rect class="freezer-old" x="5" y={height(102.0 - before)} width="50" height={height(before)} />
            <rect class="freezer-frozen" x="5" y={height(102.0 - before - frozen)} width="50" height={height(frozen)} />
            <rect class="freezer-today" x="5" y={height(102.0 - before - frozen - today)} width="50" height={height(today.max(1.0))} />
        </svg>
    }
}

/// How long the thickest package of each product takes to freeze, and the heaviest to thaw.
fn times(props: &PartProps) -> Html {
    let (cold, units) = (Cold::default(), props.state.units);
    let most = |product: Product| {
        let of = counted(&props.all).flat_map(|packed| packed.packages.iter().zip(&packed.wrapped));
        of.filter(|(package, _)| package.product == product)
            .map(|(package, wrapped)| (wrapped.shape.block.thickness, package.mass))
            .reduce(|(thick, heavy), (thickness, mass)| {
                (if thickness > thick { thickness } else { thick }, if mass > heavy { mass } else { heavy })
            })
    };
    let rows: Vec<_> =
        Product::ALL.into_iter().filter_map(|product| Some((product, most(product)?))).collect();
    html! {
        <>
            <h3>{ text::PACKAGE_TIMES }</h3>
            <table class="plain">
                <thead><tr><td></td><th scope="col">{ text::FREEZES }</th><th scope="col">{ text::THAWS }</th></tr></thead>
                <tbody>{ for rows.iter().map(|&(product, (thick, heavy))| html! {
                    <tr key={product.id()}>
                        <th scope="row">{ text::product(product) }</th>
                        <td>{ text::hours(cold.freezing_time(thick, Faces::Both)) }<span class="each">{ text::length(thick, units) }</span></td>
                        <td>{ text::hours_range(thawing_time(product, heavy)) }<span class="each">{ text::mass(heavy, units) }</span></td>
                    </tr>
                }) }</tbody>
            </table>
            if rows.iter().any(|(_, (thick, _))| is_too_thick(*thick)) { <p class="caution">{ text::TOO_THICK }</p> }
            <p class="hint">{ text::THAW_HINT }</p>
            <details class="about"><summary>{ text::HOW_COMPUTED }</summary><p class="hint">{ text::PLANK }</p></details>
        </>
    }
}
