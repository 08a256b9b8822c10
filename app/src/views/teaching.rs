//! What is taught of a muscle, and of two side by side.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::ensemble::COVERED_DEVIATIONS;
use hindsaddle_model::product::Product;
use hindsaddle_model::rules::{Verdict, verdict};
use hindsaddle_model::sources::Source;
use hindsaddle_model::tables;

use crate::text;

/// What is said of a muscle, heading by heading.
pub fn about(muscle: Muscle) -> [(&'static str, &'static str); 7] {
    let [life, tender, silver, fibres, knife, wants] = text::ABOUT_HEADS;
    [
        (life, text::life(muscle)),
        (tender, text::tender(muscle)),
        (silver, text::silver(muscle)),
        (fibres, text::fibres(muscle)),
        (text::TAKE_OFF, text::take_off(muscle)),
        (knife, text::knife(muscle)),
        (wants, text::wants(muscle)),
    ]
}

/// Why it is not, or not well, what it could be made into.
pub fn why_not(muscle: Muscle) -> Vec<String> {
    Product::ALL
        .into_iter()
        .filter_map(|product| match verdict(muscle, product) {
            Verdict::Discouraged(reason) | Verdict::Impossible(reason) => {
                Some(text::why_not(product, text::reason(reason)))
            }
            Verdict::Allowed(_) => None,
        })
        .collect()
}

/// Its part of all the meat, with the range of 8 of 10 animals.
pub fn share(muscle: Muscle) -> String {
    let row = tables::muscle(muscle);
    let off = COVERED_DEVIATIONS * row.share_sd;
    text::share(
        &text::one_decimal(row.share),
        &text::one_decimal(row.share - off),
        &text::one_decimal(row.share + off),
    )
}

/// Two muscles row by row: the row's name, and what each has there.
pub fn compared(one: Muscle, other: Muscle) -> Vec<(&'static str, [String; 2])> {
    let both = [one, other];
    let [tenderness, silver, grain, part, wants, life] = text::COMPARED;
    vec![
        (tenderness, both.map(|muscle| text::tender_score(tables::muscle(muscle).tenderness))),
        (silver, both.map(|muscle| text::silver_score(tables::muscle(muscle).silverskin))),
        (grain, both.map(|muscle| text::fibres(muscle).to_owned())),
        (part, both.map(share)),
        (wants, both.map(|muscle| text::wants(muscle).to_owned())),
        (life, both.map(|muscle| text::life(muscle).to_owned())),
    ]
}

/// What was read of a muscle's tenderness and place, beside our own judgement; empty where nothing was found.
pub fn read_for(muscle: Muscle) -> &'static [Source] {
    match muscle {
        Muscle::TopRound => &[Source::NewZealandVenison, Source::BeefRound, Source::HartebeestShear],
        Muscle::BottomRound => &[Source::NewZealandVenison, Source::BeefRound],
        Muscle::EyeRound => &[Source::BeefRound],
        Muscle::Knuckle => &[Source::NewZealandVenison, Source::BeefShear, Source::BeefRound],
        Muscle::Sirloin | Muscle::Backstrap | Muscle::Tenderloin | Muscle::FlankSteak => {
            &[Source::NewZealandVenison, Source::BeefShear]
        }
        Muscle::HindShank => &[Source::NewZealandVenison, Source::BeefCollagen],
        Muscle::FlatIron => &[Source::SpringbokShear, Source::HartebeestShear, Source::BeefShear],
        Muscle::Clod | Muscle::UnderBlade | Muscle::Chuck => &[Source::BeefShear, Source::GuelphMuscles],
        Muscle::ForeShank => &[Source::BeefShear, Source::BeefCollagen],
        Muscle::TriTip
        | Muscle::MockTender
        | Muscle::Arm
        | Muscle::Cape
        | Muscle::Neck
        | Muscle::Brisket
        | Muscle::FlankSheets
        | Muscle::Skirt => &[Source::BeefShear],
        Muscle::PelvicTrim | Muscle::BackTrim | Muscle::NeckStraps | Muscle::RibMeat => &[],
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Every muscle has every sentence, a sentence of its own, and none so long that nobody reads it.
    #[test]
    fn every_muscle_has_every_sentence() {
        let mut life = Vec::new();
        for muscle in Muscle::ALL {
            for (about, says) in about(muscle) {
                assert!(says.len() > 5 && says.ends_with('.'), "{muscle:?} {about}: {says}");
                assert!(says.matches(". ").count() < 3 && says.len() < 200, "{muscle:?} {about}: {says}");
            }
            assert!(!text::place(muscle).is_empty() && !text::place(muscle).ends_with('.'), "{muscle:?}");
            life.push(text::life(muscle));
            let poor = Product::ALL
                .into_iter()
                .filter(|product| !matches!(verdict(muscle, *product), Verdict::Allowed(_)));
            assert_eq!(why_not(muscle).len(), poor.count(), "{muscle:?}");
        }
        life.sort_unstable();
        life.dedup();
        assert_eq!(life.len(), Muscle::COUNT);
    }

    /// The words for tender and tough follow the catalogue, as those for silverskin do, and a muscle is said to want
    /// what the catalogue usually makes of it.
    #[test]
    fn the_sentences_say_what_the_catalogue_says() {
        for muscle in Muscle::ALL {
            let row = tables::muscle(muscle);
            let tender = text::tender(muscle);
            let expected = match row.tenderness {
                1 | 2 => "Tough",
                3 => "Medium",
                4 => "Tender",
                _ => "Very tender",
            };
            assert!(tender.starts_with(expected), "{muscle:?}: {tender}");
            let silver = text::silver(muscle);
            assert_eq!(silver.starts_with("Heavy"), row.silverskin >= 4, "{muscle:?}: {silver}");
            let word = match row.usual {
                Product::Roast => "roast",
                Product::Steak => "steak",
                Product::Chop => "chop",
                Product::Stew => "stew",
                Product::Grind => "grind",
            };
            let wants = text::wants(muscle).to_lowercase();
            let first = wants.split([';', '.', ',', ':']).next().unwrap();
            assert!(first.contains(word), "{muscle:?}: {wants}");
        }
    }

    #[test]
    fn any_two_muscles_are_set_apart_in_one_sentence() {
        for one in Muscle::ALL {
            for other in Muscle::ALL.into_iter().filter(|other| *other != one) {
                let says = text::apart(one, other);
                assert!(says.ends_with('.') && !says.contains(". "), "{says}");
                assert!(says.len() < 220, "{says}");
                assert_eq!(compared(one, other).len(), text::COMPARED.len());
            }
        }
        let says = text::apart(Muscle::Sirloin, Muscle::Clod);
        assert_eq!(
            says,
            "The sirloin is a little tenderer than the shoulder clod: the sirloin usually becomes steaks, the shoulder clod a roast."
        );
        assert_eq!(share(Muscle::TopRound), "an estimate: about 11 %, 9.8 to 12.2 in 8 of 10 animals");
    }
}
