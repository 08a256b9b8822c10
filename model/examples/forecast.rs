//! Prints a forecast as JSON, from a link or from flags, so that scripts can use the model without a browser.
//!
//! ```text
//! cargo run -q -p hindsaddle-model --example forecast -- 1EgAGGaAaY...
//! cargo run -q -p hindsaddle-model --example forecast -- --species white_tailed --sex doe --age adult \
//!     --stage field_dressed --weight-lb 110 --use backstrap=roast:0.5,chop@0.5in:0.5 --not-recovered rib_meat
//! ```

use std::io::Write as _;
use std::process::ExitCode;

use hindsaddle_model::anatomy::{Muscle, Sides};
use hindsaddle_model::animal::{Age, Animal, AnimalError, Condition, Legs, Sex, Species, Stage, Weighed};
use hindsaddle_model::forecast::forecast;
use hindsaddle_model::plan::{Action, Division, Part, Plan};
use hindsaddle_model::product::{Cut, Product, RoastSize};
use hindsaddle_model::report::{Report, report};
use hindsaddle_model::season::Season;
use hindsaddle_model::units::{Length, Mass};
use hindsaddle_model::{link, rules::Refusal};

const USAGE: &str = "\
usage: forecast LINK
       forecast --species NAME [--sex buck|doe] [--age fawn|yearling|adult|old]
                [--condition ordinary|pre_rut|late_rut|nursing]
                [--stage live|field_dressed|hanging|deboned|girth|typical] [--legs on|off]
                [--weight-lb N | --weight-kg N | --girth-in N | --girth-cm N]
                [--use MUSCLE=CUT[@SIZE][:PART],...]... [--not-recovered MUSCLE]... [--people N]
  CUT is roast, steak, chop, stew, grind or discard; SIZE ends in in, mm, cm, lb, g or kg, or is whole;
  the PARTs of a muscle add up to 1";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    match season(&arguments) {
        Ok(season) => match json(&season) {
            // A reader that closes the pipe early has what it wanted.
            Ok(json) => {
                writeln!(std::io::stdout(), "{json}").map_or(ExitCode::FAILURE, |()| ExitCode::SUCCESS)
            }
            Err(error) => fail(&error.to_string()),
        },
        Err(problem) => fail(&problem),
    }
}

/// One animal's report, or a list of them for a season.
fn json(season: &Season) -> serde_json::Result<String> {
    let reports: Vec<Report> = season.animals().iter().map(|plan| report(plan, &forecast(plan))).collect();
    match reports.as_slice() {
        [one] => serde_json::to_string_pretty(one),
        several => serde_json::to_string_pretty(several),
    }
}

fn fail(problem: &str) -> ExitCode {
    eprintln!("forecast: {problem}\n{USAGE}");
    ExitCode::from(2)
}

/// What the flags say, before it is believed.
struct Flags {
    species: Option<Species>,
    sex: Sex,
    age: Age,
    condition: Condition,
    stage: Option<Stage>,
    legs: Legs,
    weight: Option<Mass>,
    girth: Option<Length>,
    uses: Vec<(Muscle, Division)>,
    not_recovered: Vec<Muscle>,
    people: Option<u8>,
}

fn season(arguments: &[String]) -> Result<Season, String> {
    match arguments {
        [] => Err("nothing to forecast".into()),
        [text] if !text.starts_with("--") => {
            link::read(text).map_err(|error| format!("this link cannot be read: {error:?}"))
        }
        _ => plan_from(flags(arguments)?).map(Season::from),
    }
}

fn flags(arguments: &[String]) -> Result<Flags, String> {
    let mut flags = Flags {
        species: None,
        sex: Sex::Doe,
        age: Age::Adult,
        condition: Condition::Ordinary,
        stage: None,
        legs: Legs::On,
        weight: None,
        girth: None,
        uses: Vec::new(),
        not_recovered: Vec::new(),
        people: None,
    };
    let mut rest = arguments.iter();
    while let Some(flag) = rest.next() {
        let value = rest.next().ok_or_else(|| format!("{flag} wants a value"))?;
        match flag.as_str() {
            "--species" => flags.species = Some(named("species", value, &Species::ALL, Species::id)?),
            "--sex" => flags.sex = named("sex", value, &Sex::ALL, Sex::id)?,
            "--age" => flags.age = named("age", value, &Age::ALL, Age::id)?,
            "--condition" => flags.condition = named("condition", value, &Condition::ALL, Condition::id)?,
            "--stage" => flags.stage = Some(named("stage", value, &Stage::ALL, Stage::id)?),
            "--legs" => {
                flags.legs = match value.as_str() {
                    "on" => Legs::On,
                    "off" => Legs::Off,
                    _ => return Err(format!("--legs is on or off, not {value}")),
                }
            }
            "--weight-lb" => flags.weight = Some(Mass::pounds(number(flag, value)?)),
            "--weight-kg" => flags.weight = Some(Mass::kilograms(number(flag, value)?)),
            "--girth-in" => flags.girth = Some(Length::inches(number(flag, value)?)),
            "--girth-cm" => flags.girth = Some(Length::cm(number(flag, value)?)),
            "--use" => flags.uses.push(muscle_use(value)?),
            "--not-recovered" => flags.not_recovered.push(named("muscle", value, &Muscle::ALL, Muscle::id)?),
            "--people" => {
                flags.people =
                    Some(value.parse().map_err(|_| format!("--people is a whole number, not {value}"))?);
            }
            _ => return Err(format!("there is no flag {flag}")),
        }
    }
    Ok(flags)
}

fn plan_from(flags: Flags) -> Result<Plan, String> {
    let species = flags.species.ok_or("--species is missing")?;
    let weight = || flags.weight.ok_or("this stage wants --weight-lb or --weight-kg");
    let stage = match (flags.stage, flags.weight, flags.girth) {
        (Some(stage), _, _) => stage,
        (None, None, None) => Stage::Typical,
        (None, None, Some(_)) => Stage::Girth,
        (None, Some(_), _) => return Err("a weight wants --stage: when was it weighed?".into()),
    };
    let weighed = match stage {
        Stage::Typical => Weighed::Typical,
        Stage::Live => Weighed::Live(weight()?),
        Stage::FieldDressed => Weighed::FieldDressed(weight()?, flags.legs),
        Stage::Hanging => Weighed::Hanging(weight()?),
        Stage::Deboned => Weighed::Deboned(weight()?),
        Stage::Girth => Weighed::Girth(flags.girth.ok_or("this stage wants --girth-in or --girth-cm")?),
    };
    let animal = Animal::new(species, flags.sex, flags.age, flags.condition, weighed)
        .map_err(|error| animal_problem(&error))?;
    let mut plan = Plan::new(animal);
    let mut actions: Vec<Action> = flags
        .uses
        .into_iter()
        .map(|(muscle, division)| Action::Divide { muscle, sides: Sides::Both, division })
        .collect();
    actions.extend(flags.not_recovered.into_iter().map(|muscle| Action::Recover { muscle, taken: false }));
    if let Some(people) = flags.people {
        actions.push(Action::SetTable { people, appetite: plan.packing().appetite });
    }
    for action in actions {
        plan = plan.apply(action).map_err(|refusal| refused(&refusal))?.plan;
    }
    Ok(plan)
}

fn named<T: Copy>(what: &str, value: &str, all: &[T], id: impl Fn(T) -> &'static str) -> Result<T, String> {
    all.iter().copied().find(|item| id(*item) == value).ok_or_else(|| {
        let names: Vec<&str> = all.iter().map(|item| id(*item)).collect();
        format!("there is no {what} {value}; it is one of {}", names.join(", "))
    })
}

fn number(flag: &str, value: &str) -> Result<f64, String> {
    value.parse().map_err(|_| format!("{flag} is a number, not {value}"))
}

/// `MUSCLE=CUT[@SIZE][:PART],...`
fn muscle_use(text: &str) -> Result<(Muscle, Division), String> {
    let (muscle, parts) = text.split_once('=').ok_or_else(|| format!("--use is MUSCLE=CUT, not {text}"))?;
    let muscle = named("muscle", muscle, &Muscle::ALL, Muscle::id)?;
    let mut division = Vec::new();
    for part in parts.split(',') {
        let (cut, share) = part.split_once(':').unwrap_or((part, "1"));
        let share = number("a part", share)?;
        if !(share > 0.0 && share <= 1.0) {
            return Err(format!("a part is above 0 and at most 1, not {share}"));
        }
        let (cut, size) = cut.split_once('@').map_or((cut, None), |(cut, size)| (cut, Some(size)));
        division.push(Part { percent: (share * 100.0).round() as u8, cut: sized(cut, size)? });
    }
    Ok((muscle, Division::new(division).map_err(|refusal| refused(&refusal))?))
}

fn sized(cut: &str, size: Option<&str>) -> Result<Cut, String> {
    if cut == "discard" {
        return Ok(Cut::Discard);
    }
    let product = named("cut", cut, &Product::ALL, Product::id)?;
    let Some(size) = size else { return Ok(Cut::usual(product)) };
    if size == "whole" && product == Product::Roast {
        return Ok(Cut::Roast(RoastSize::Whole));
    }
    let at = size.find(|c: char| c.is_ascii_alphabetic()).unwrap_or(size.len());
    let (value, unit) = size.split_at(at);
    let value = number("a size", value)?;
    let length = match unit {
        "in" => Some(Length::inches(value)),
        "mm" => Some(Length::mm(value)),
        "cm" => Some(Length::cm(value)),
        _ => None,
    };
    let mass = match unit {
        "lb" => Some(Mass::pounds(value)),
        "kg" => Some(Mass::kilograms(value)),
        "g" => Some(Mass::grams(value)),
        _ => None,
    };
    match (product, length, mass) {
        (Product::Roast, Some(length), _) => Ok(Cut::Roast(RoastSize::Length(length))),
        (Product::Roast, None, Some(mass)) => Ok(Cut::Roast(RoastSize::Weight(mass))),
        (Product::Steak, Some(length), _) => Ok(Cut::Steak(length)),
        (Product::Chop, Some(length), _) => Ok(Cut::Chop(length)),
        (Product::Stew, Some(length), _) => Ok(Cut::Stew(length)),
        _ => Err(format!("{cut} has no size {size}")),
    }
}

fn animal_problem(error: &AnimalError) -> String {
    match error {
        AnimalError::NotPositive => "the weight or girth is not a number above zero".into(),
        AnimalError::WeightOutOfRange { least, most } => format!(
            "no such animal: at that stage it weighs {:.1} to {:.1} kg ({:.0} to {:.0} lb)",
            least.to_kilograms(),
            most.to_kilograms(),
            least.to_pounds(),
            most.to_pounds()
        ),
        AnimalError::NoGirthTable => {
            "no girth table was published for this species and age; weigh it, or use --stage typical".into()
        }
        AnimalError::GirthOutOfRange { least, most } => format!(
            "the girth table runs from {:.0} to {:.0} cm ({:.0} to {:.0} in)",
            least.to_cm(),
            most.to_cm(),
            least.to_inches(),
            most.to_inches()
        ),
        AnimalError::ConditionDoesNotSuit => "that condition does not suit the sex or age".into(),
    }
}

fn refused(refusal: &Refusal) -> String {
    if let Refusal::Impossible { muscle, product, reason, instead } = refusal {
        let (muscle, product, instead) = (muscle.id(), product.id(), instead.id());
        format!("{muscle} cannot be {product}: {reason:?}; try {instead}")
    } else if let Refusal::PartsDoNotAddUp { total } = refusal {
        format!("the parts add up to {total} %, not 100")
    } else {
        format!("refused: {refusal:?}")
    }
}
