//! What the page warns of. The sentences are the text's.

/// A caution, by what it is about: no place in a list, so that a new one never says what another did.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Caution {
    /// What is tested, and what waits for the result.
    Testing,
    /// What is no meat.
    PartsLeftOut,
    /// No meat of two animals together.
    OneAnimal,
    /// The tag and the proof of sex.
    Tag,
    /// Selling and giving away.
    Selling,
    /// Meat around the bullet's path.
    BulletPath,
    /// Meat that gut contents touched.
    Gut,
    /// Cold fast.
    Cold,
    /// Ageing.
    Ageing,
    /// What it is cooked to.
    Cooking,
    /// The grinder and the knife.
    GrinderAndKnife,
    /// Freezing, and what the date means.
    Freezing,
    /// Thawing, and what a vacuum is not.
    Thawing,
    /// Cure and jerky.
    Cure,
    /// Organs.
    Organs,
}

impl Caution {
    /// Every one, in the order of the page that has them all.
    pub const ALL: [Caution; 15] = [
        Caution::Testing,
        Caution::PartsLeftOut,
        Caution::OneAnimal,
        Caution::Tag,
        Caution::Selling,
        Caution::BulletPath,
        Caution::Gut,
        Caution::Cold,
        Caution::Ageing,
        Caution::Cooking,
        Caution::GrinderAndKnife,
        Caution::Freezing,
        Caution::Thawing,
        Caution::Cure,
        Caution::Organs,
    ];
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::text;

    #[test]
    fn every_caution_is_on_the_page_once_under_a_name_of_its_own() {
        for (place, caution) in Caution::ALL.into_iter().enumerate() {
            assert_eq!(caution as usize, place, "{caution:?}");
            let about = |caution: &Caution| text::caution(*caution).0;
            let named = Caution::ALL.iter().filter(|other| about(other) == about(&caution)).count();
            assert_eq!(named, 1, "{caution:?}");
        }
    }
}
