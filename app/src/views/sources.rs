//! Every source: what kind it is, and which figures rest on it, read off the tables themselves.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::animal::{Age, Animal, Condition, Sex, Species};
use hindsaddle_model::plan::{Care, Shot};
use hindsaddle_model::sources::{Grade, Kind, Source};
use hindsaddle_model::tables::{self, Fact, Figure};

use super::teaching::read_for;
use crate::text;

/// What can rest on a source.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rests {
    /// The muscle catalogue.
    Shares,
    /// What is taught of a muscle.
    Lessons,
    /// Dressed, hanging and lean parts.
    Yields,
    /// Animals that were not weighed.
    Weights,
    /// Animals that were measured round the chest.
    Girth,
    /// Sex, age, season.
    Shifts,
    /// Shot, drying, bone, what stays on it.
    Losses,
    /// Portions.
    Portions,
    /// Months.
    Keeping,
    /// Days.
    Holding,
    /// Cooking.
    Cooking,
    /// Thawing.
    Thawing,
    /// Space and load.
    Room,
    /// Physics.
    Heat,
    /// Fat.
    Fat,
    /// Plates and temperatures.
    Grinder,
    /// Paper, bags, rolls.
    Wrap,
    /// Sheets of labels.
    Labels,
    /// Weighing.
    Scale,
}

/// A source as it is shown.
#[derive(Clone, Debug, PartialEq)]
pub struct SourceView {
    /// Which.
    pub source: Source,
    /// Its kind.
    pub kind: &'static str,
    /// What rests on it, with the grades of that.
    pub rests: Vec<String>,
    /// Whether it is our own judgement.
    pub is_ours: bool,
}

/// Every source, by kind, judgement last.
pub fn all() -> Vec<SourceView> {
    const KINDS: [Kind; 6] =
        [Kind::Measured, Kind::Agency, Kind::Relayed, Kind::Weak, Kind::CommonPractice, Kind::Judgement];
    let figures = figures();
    KINDS
        .into_iter()
        .flat_map(|kind| Source::ALL.iter().copied().filter(move |source| source.kind() == kind))
        .map(|source| SourceView {
            source,
            kind: text::kind(source.kind()),
            rests: rests(source, &figures),
            is_ours: source.kind() == Kind::Judgement,
        })
        .collect()
}

type Row = (Rests, Option<Grade>, Source);

fn rests(source: Source, figures: &[Row]) -> Vec<String> {
    // What rests on it, each kind once, with every grade that figures of that kind have.
    let mut kinds: Vec<(Rests, Vec<Grade>)> = Vec::new();
    for (rests, grade, _) in figures.iter().filter(|(_, _, other)| *other == source) {
        let place = kinds.iter().position(|(other, _)| other == rests).unwrap_or_else(|| {
            kinds.push((*rests, Vec::new()));
            kinds.len() - 1
        });
        if let Some(grade) = grade.filter(|grade| !kinds[place].1.contains(grade)) {
            kinds[place].1.push(grade);
        }
    }
    if kinds.is_empty() {
        return vec![text::READ_BESIDE.to_owned()];
    }
    let letter = |grade: &Grade| text::grade(*grade).get(..1).unwrap_or_default();
    kinds
        .into_iter()
        .map(|(rests, mut grades)| {
            grades.sort_unstable();
            let name = text::rests(rests);
            let letters: Vec<&str> = grades.iter().map(letter).collect();
            if letters.is_empty() { name.to_owned() } else { text::rests_on(name, &letters.join(", ")) }
        })
        .collect()
}

/// Every figure of the tables, as what it is for.
fn figures() -> Vec<Row> {
    let mut rows: Vec<Row> = Vec::new();
    of_the_animal(&mut rows);
    of_the_kitchen(&mut rows);
    rows
}

fn of_figure(rests: Rests, figure: &Figure) -> Row {
    (rests, Some(figure.grade), figure.source)
}

fn of_fact<T>(rests: Rests, fact: &Fact<T>) -> Row {
    (rests, Some(fact.grade), fact.source)
}

fn of_the_animal(rows: &mut Vec<Row>) {
    rows.extend(tables::MUSCLES.iter().map(|row| (Rests::Shares, Some(row.grade), row.source)));
    let read = Muscle::ALL.into_iter().flat_map(read_for);
    rows.extend(read.map(|source| (Rests::Lessons, None, *source)));
    for species in Species::ALL {
        rows.push(of_figure(Rests::Losses, &tables::non_lean(species).bone));
        let leg = tables::hind_leg(species);
        rows.push((Rests::Shares, Some(leg.grade), leg.source));
        for sex in Sex::ALL {
            let yields = tables::yields(species, sex);
            rows.extend(
                [&yields.dressed, &yields.hanging, &yields.lean].map(|one| of_figure(Rests::Yields, one)),
            );
            for age in Age::ALL {
                let (_, typical) = tables::typical_live(species, sex, age);
                rows.push((Rests::Weights, Some(typical.grade), typical.source));
            }
        }
        rows.extend(
            Age::ALL
                .into_iter()
                .filter_map(|age| tables::girth(species, age))
                .map(|row| (Rests::Girth, Some(row.grade), row.source)),
        );
    }
    for condition in Condition::ALL {
        let weight = tables::season_weight(condition);
        rows.push((Rests::Shifts, Some(weight.grade), weight.source));
    }
    for animal in animals() {
        let shifts = tables::shifts(&animal);
        let all = [shifts.dressed, shifts.hanging, shifts.lean];
        rows.extend(all.map(|shift| (Rests::Shifts, Some(shift.grade), shift.source)));
        let row = tables::share_row(&animal);
        rows.push((Rests::Shifts, Some(row.grade), row.source));
    }
    rows.extend(Shot::ALL.map(|shot| of_figure(Rests::Losses, tables::shot_loss(shot))));
    rows.extend(Care::ALL.map(|care| of_figure(Rests::Losses, tables::left_behind(care))));
    rows.push(of_figure(Rests::Losses, &tables::dried(7)));
    rows.push(of_figure(Rests::Girth, &tables::GIRTH_SPREAD));
    rows.push(of_figure(Rests::Weights, &tables::TYPICAL_SPREAD));
}

/// The example in every sex, age and season.
fn animals() -> Vec<Animal> {
    let example = Animal::example();
    let mut animals = Vec::new();
    for sex in Sex::ALL {
        for age in Age::ALL {
            for condition in Condition::ALL {
                animals.extend(Animal::new(example.species(), sex, age, condition, example.weighed()));
            }
        }
    }
    animals
}

fn of_the_kitchen(rows: &mut Vec<Row>) {
    rows.extend(tables::PORTIONS.iter().map(|row| (Rests::Portions, Some(row.grade), row.source)));
    rows.extend(tables::KEEPING.iter().map(|row| (Rests::Keeping, Some(row.grade), row.source)));
    rows.extend(tables::HOLDING.iter().map(|row| (Rests::Holding, Some(row.grade), row.source)));
    rows.extend(tables::COOK_TO.iter().map(|fact| of_fact(Rests::Cooking, fact)));
    rows.push(of_figure(Rests::Cooking, &tables::COOKED_YIELD));
    rows.extend(tables::THAW.iter().map(|row| (Rests::Thawing, Some(row.grade), row.source)));
    rows.extend(tables::SPACE.iter().map(|fact| of_fact(Rests::Room, fact)));
    rows.extend(tables::LOADS.iter().map(|row| (Rests::Room, Some(row.grade), row.source)));
    let heat = &tables::HEAT;
    rows.extend([
        of_fact(Rests::Heat, &heat.conductivity),
        of_fact(Rests::Heat, &heat.surface),
        of_fact(Rests::Heat, &heat.surface_at_best),
        of_fact(Rests::Heat, &heat.air),
        of_fact(Rests::Heat, &heat.freezing_point),
        of_fact(Rests::Heat, &heat.start),
        of_fact(Rests::Heat, &heat.density),
        of_fact(Rests::Heat, &heat.water),
        of_fact(Rests::Heat, &heat.latent_of_water),
        of_fact(Rests::Heat, &heat.above),
        of_fact(Rests::Heat, &heat.below),
        of_fact(Rests::Heat, &tables::THICKEST_PACK),
        of_fact(Rests::Fat, &tables::DEER_FAT),
        of_fact(Rests::Fat, &tables::FAT_LIMIT),
        of_figure(Rests::Fat, &tables::BURGER_FAT),
        of_figure(Rests::Fat, &tables::SAUSAGE_FAT),
        of_fact(Rests::Grinder, &tables::GRIND_BEST),
        of_fact(Rests::Grinder, &tables::GRIND_WARMEST),
        of_fact(Rests::Wrap, &tables::VACUUM_ALLOWANCE),
        of_fact(Rests::Wrap, &tables::FLAT_PACK),
        of_fact(Rests::Scale, &tables::SCALE_STEP),
        of_fact(Rests::Scale, &tables::SIDE_DIFFERENCE),
    ]);
    rows.extend(tables::FATS.iter().map(|row| of_fact(Rests::Fat, &row.content)));
    rows.extend(tables::PLATES.iter().map(|row| of_fact(Rests::Grinder, &row.hole)));
    rows.extend(tables::TURNS.iter().map(|row| (Rests::Wrap, Some(row.grade), row.source)));
    rows.extend(
        tables::PAPER_ROLLS.iter().chain(&tables::VACUUM_ROLLS).map(|fact| of_fact(Rests::Wrap, fact)),
    );
    rows.extend(tables::BAGS.iter().map(|row| (Rests::Wrap, Some(row.grade), row.source)));
    rows.extend(tables::GRIDS.iter().map(|fact| of_fact(Rests::Labels, fact)));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_source_is_on_the_page_with_what_rests_on_it() {
        let all = all();
        assert_eq!(all.len(), Source::ALL.len());
        for source in Source::ALL {
            let view = all.iter().find(|view| view.source == *source).unwrap_or_else(|| panic!("{source:?}"));
            assert!(!view.rests.is_empty(), "{source:?}");
            assert_eq!(view.is_ours, source.kind() == Kind::Judgement);
            assert_eq!(view.kind, text::kind(source.kind()));
        }
        // Most have a row of their own, and a few only stand beside others.
        let beside = all.iter().filter(|view| view.rests == [text::READ_BESIDE]).count();
        assert!(beside > 0 && beside * 5 < all.len(), "{beside}");
        let shares = all.iter().find(|view| view.source == Source::MuscleCatalogue).unwrap();
        assert!(shares.is_ours && shares.rests[0].ends_with("(B, C, D)"), "{:?}", shares.rests);
    }
}
