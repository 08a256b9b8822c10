//! How a number was worked out: steps, inputs with their spread, grade and source.

use hindsaddle_model::animal::{Animal, Legs, Weighed};
use hindsaddle_model::forecast::Line;
use hindsaddle_model::packing::PackBy;
use hindsaddle_model::product::Product;
use hindsaddle_model::sources::{Grade, Source};
use hindsaddle_model::tables::{self, Figure};

use crate::store::{State, Topic};
use crate::text::{self, Units};

/// One input.
#[derive(Clone, Debug, PartialEq)]
pub struct Input {
    /// What it is.
    pub name: String,
    /// Its middle: "76 %".
    pub value: String,
    /// Its spread: "72 to 80 %".
    pub spread: String,
    /// How good it is.
    pub grade: &'static str,
    /// What kind of source, and which.
    pub source: String,
}

/// How one number was worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct Working {
    /// What the number is.
    pub title: String,
    /// The number with its range.
    pub answer: String,
    /// The way to it, in sentences.
    pub steps: Vec<String>,
    /// What went in.
    pub inputs: Vec<Input>,
}

/// The working of a topic.
pub fn explain(state: &State, topic: Topic) -> Working {
    match topic {
        Topic::Line(line) => explain_line(state, line),
        Topic::Product(product) => explain_product(state, product),
        Topic::Packages => Working {
            title: text::ALL_PACKAGES.into(),
            answer: text::tally(&state.forecast, state.units),
            steps: learned(state).chain(text::packages_working()).collect(),
            inputs: vec![input(text::SHARES, None, Grade::C, Source::MuscleCatalogue)],
        },
    }
}

fn explain_line(state: &State, line: Line) -> Working {
    let mass = state.forecast.ledger.iter().find(|(other, _)| *other == line).map(|(_, mass)| *mass);
    Working {
        title: text::line(line).into(),
        answer: mass.map(|mass| text::mass_range(mass, state.units)).unwrap_or_default(),
        steps: steps(state, line),
        inputs: inputs(state, line),
    }
}

fn steps(state: &State, line: Line) -> Vec<String> {
    let mut steps = vec![text::line_working(line).to_owned()];
    if matches!(line, Line::Wound | Line::TakeHome) && !state.plan.wounds().is_empty() {
        steps.push(text::WOUNDS_WORKING.into());
    }
    if let Weighed::FieldDressed(_, Legs::Off) = state.plan.animal().weighed() {
        steps.push(text::LEGS_WORKING.into());
    }
    steps.extend(learned(state));
    steps.push(text::RANGE_WORKING.into());
    steps
}

/// What the plan knows beside the table.
fn learned(state: &State) -> impl Iterator<Item = String> {
    let weighed = (!state.plan.weighings().is_empty()).then(|| text::WEIGHED_WORKING.into());
    let own = (!state.plan.own().is_table()).then(|| text::OWN_WORKING.into());
    weighed.into_iter().chain(own)
}

fn inputs(state: &State, line: Line) -> Vec<Input> {
    let plan = &state.plan;
    let animal = plan.animal();
    let row = tables::yields(animal.species(), animal.sex());
    let losses = plan.losses();
    let dressed = || figure(text::DRESSED_OF_LIVE, &row.dressed);
    let hanging = || figure(text::HANGING_OF_DRESSED, &row.hanging);
    let lean = || figure(text::LEAN_OF_HANGING, &row.lean);
    let bone = || figure(text::BONE_OF_REST, &tables::non_lean(animal.species()).bone);
    let shot = || figure(text::LOST_TO_SHOT, tables::shot_loss(losses.shot));
    // Marked wounds stand in for the average of the shot.
    let marked = !plan.wounds().is_empty();
    let left = || figure(text::LEFT_ON_BONES, tables::left_behind(losses.care));
    let dried = || figure(text::DRIED, &tables::dried(losses.hung_days));
    let mut inputs = match line {
        Line::Live | Line::Viscera => vec![dressed()],
        Line::HeadHideFeet => vec![hanging()],
        Line::Bone | Line::Trim => vec![lean(), bone()],
        Line::Drying => vec![lean(), bone(), dried()],
        Line::Wound if marked => vec![input(text::SHARES, None, Grade::C, Source::MuscleCatalogue)],
        Line::Wound => vec![shot()],
        Line::LeftBehind => vec![left()],
        Line::NotRecovered | Line::Discarded => {
            vec![input(text::SHARES, None, Grade::C, Source::MuscleCatalogue)]
        }
        Line::TakeHome if marked => vec![dressed(), hanging(), lean(), left(), dried()],
        Line::TakeHome => vec![dressed(), hanging(), lean(), shot(), left(), dried()],
    };
    inputs.extend(adjustments(animal, line));
    if let Some(size) = size_input(state, line) {
        inputs.insert(0, size);
    }
    inputs
}

/// What sex, age and season add to the fractions that a line is made of.
fn adjustments(animal: &Animal, line: Line) -> Vec<Input> {
    let shifts = tables::shifts(animal);
    let dressed = (text::DRESSED_OF_LIVE, shifts.dressed);
    let hanging = (text::HANGING_OF_DRESSED, shifts.hanging);
    let lean = (text::LEAN_OF_HANGING, shifts.lean);
    let used = match line {
        Line::Live | Line::Viscera => vec![dressed],
        Line::HeadHideFeet => vec![hanging],
        Line::Bone | Line::Trim | Line::Drying => vec![lean],
        Line::TakeHome => vec![dressed, hanging, lean],
        Line::Wound | Line::LeftBehind | Line::NotRecovered | Line::Discarded => Vec::new(),
    };
    used.into_iter()
        .filter(|(_, shift)| shift.by != 0.0)
        .map(|(name, shift)| Input {
            value: text::added(shift.by),
            ..input(&text::adjusted(name), None, shift.grade, shift.source)
        })
        .collect()
}

/// The girth or the typical weight, where the animal was not weighed.
fn size_input(state: &State, line: Line) -> Option<Input> {
    let animal = state.plan.animal();
    match animal.weighed() {
        Weighed::Girth(_) => tables::girth(animal.species(), animal.age())
            .map(|row| input(text::GIRTH_TABLE, Some(&tables::GIRTH_SPREAD), row.grade, row.source)),
        Weighed::Typical => {
            let (_, row) = tables::typical_live(animal.species(), animal.sex(), animal.age());
            Some(input(text::TYPICAL_WEIGHT, Some(&tables::TYPICAL_SPREAD), row.grade, row.source))
        }
        Weighed::Live(_) | Weighed::FieldDressed(..) | Weighed::Hanging(_) | Weighed::Deboned(_) => None,
    }
    .filter(|_| matches!(line, Line::Live | Line::TakeHome))
}

fn figure(name: &str, figure: &Figure) -> Input {
    input(name, Some(figure), figure.grade, figure.source)
}

fn input(name: &str, figure: Option<&Figure>, grade: Grade, source: Source) -> Input {
    let (value, spread) = match figure.map(|figure| figure.spread) {
        Some(spread) if spread.likely() == 0.0 && spread.high() > 0.0 => {
            (String::new(), text::plus_minus(spread.high()))
        }
        Some(spread) => (
            text::percent(spread.likely()),
            text::span(&text::percent(spread.low()), &text::percent(spread.high())),
        ),
        None => (String::new(), String::new()),
    };
    Input {
        name: name.into(),
        value,
        spread,
        grade: text::grade(grade),
        source: text::source(text::kind(source.kind()), text::citation(source)),
    }
}

fn explain_product(state: &State, product: Product) -> Working {
    let tally = &state.forecast.tallies[product as usize];
    let packing = state.plan.packing();
    let rows = state.forecast.muscles.iter().flat_map(|muscle| &muscle.packs);
    let mut steps: Vec<String> = vec![text::product_working(product).to_owned()];
    steps.extend(learned(state));
    steps.extend(
        rows.filter(|row| row.cut.product() == Some(product))
            .map(|row| text::named(text::muscle(row.muscle), &text::pack_row(row, state.units))),
    );
    let rule = packing.rule(product);
    let inputs = match rule {
        PackBy::Table => {
            let portion = tables::portion(packing.appetite);
            vec![Input {
                value: text::mass(portion.raw, state.units),
                ..input(&text::portion_of(packing.people), None, portion.grade, portion.source)
            }]
        }
        PackBy::Pieces(_) | PackBy::Weight(_) => {
            vec![Input {
                value: pack_rule(rule, state.units),
                ..input(text::PACK_RULE, None, Grade::D, Source::CommonPractice)
            }]
        }
    };
    Working {
        title: text::product_packages(product),
        answer: text::product_answer(tally, state.units),
        steps,
        inputs,
    }
}

/// How a product is packed, in words.
pub fn pack_rule(rule: PackBy, units: Units) -> String {
    match rule {
        PackBy::Table => text::FOR_THE_TABLE.into(),
        PackBy::Pieces(pieces) => text::pieces_a_pack(pieces),
        PackBy::Weight(weight) => text::weight_a_pack(&text::mass(weight, units)),
    }
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::animal::{Age, Condition, Sex, Species};
    use hindsaddle_model::plan::Plan;

    use super::*;

    #[test]
    fn every_number_has_an_answer_steps_and_sourced_inputs() {
        let state = State::new(Plan::new(Animal::example()).into(), None, Units::Pounds, None);
        let lines = Line::ALL.into_iter().map(Topic::Line);
        let products = Product::ALL.into_iter().map(Topic::Product);
        for topic in lines.chain(products).chain([Topic::Packages]) {
            let working = explain(&state, topic);
            assert!(!working.answer.is_empty() && !working.steps.is_empty(), "{topic:?}");
            assert!(!working.inputs.is_empty(), "{topic:?}");
            assert!(working.inputs.iter().all(|input| input.source.len() > 20), "{topic:?}");
        }
    }

    #[test]
    fn an_adjusted_fraction_says_that_it_is_adjusted() {
        let old =
            Animal::new(Species::Mule, Sex::Buck, Age::Old, Condition::LateRut, Weighed::Typical).unwrap();
        let state = State::new(Plan::new(old).into(), None, Units::Pounds, None);
        let working = explain(&state, Topic::Line(Line::TakeHome));
        let added: Vec<&str> = working
            .inputs
            .iter()
            .filter(|input| input.name.ends_with("season"))
            .map(|input| input.value.as_str())
            .collect();
        assert_eq!(added, ["+\u{a0}2 %", "\u{2212}\u{a0}1 %"]);
    }
}
