//! Where every figure comes from, and how far to trust it.
//!
//! A table row cannot be built without a [`Source`]; judgement is a source of its own, and is shown as such.

/// How good a figure is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// Measured on many animals, two sources agree.
    A,
    /// Measured on few animals, or relayed by another text.
    B,
    /// One weak source, or derived from other figures.
    C,
    /// Memory, analogy or judgement.
    D,
}

/// What kind of thing a source is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A study that measured animals or meat, read at least in part.
    Measured,
    /// A wildlife agency, extension service or training text.
    Agency,
    /// A study's figures as another text repeats them.
    Relayed,
    /// A weak page: a ranch, a forum, a magazine.
    Weak,
    /// What the trade does, without a source.
    CommonPractice,
    /// Our own judgement. Always shown as judgement.
    Judgement,
}

macro_rules! sources {
    ($($(#[$doc:meta])* $name:ident: $kind:ident, $citation:literal;)*) => {
        /// A source of figures.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum Source {
            $(#[doc = $citation] $name,)*
        }

        impl Source {
            /// Every source.
            pub const ALL: &'static [Source] = &[$(Source::$name,)*];

            /// Author, year and where it was published.
            pub const fn citation(self) -> &'static str {
                match self { $(Source::$name => $citation,)* }
            }

            /// What kind of thing it is.
            pub const fn kind(self) -> Kind {
                match self { $(Source::$name => Kind::$kind,)* }
            }
        }
    };
}

sources! {
    MinnesotaDeer: Agency, "Former Minnesota DNR area wildlife manager, Big Game Meat part 1, Cook County News Herald: 1,027 white-tailed deer weighed whole and dressed";
    NobleDeer: Agency, "Noble Research Institute 2012, Estimating Deer Weight from Field-dressed Weight: over 200 Oklahoma deer";
    SeafwaGirth: Measured, "SEAFWA 1976, Body Weight and Heart Girth in White-Tailed Deer from South Carolina: 316 adults, 229 fawns";
    WyomingElk: Relayed, "University of Wyoming B-594R, Elk Carcass: six bulls, six cows; as relayed by a hunting site";
    WyomingMule: Relayed, "University of Wyoming B-589R, mule deer carcass; as relayed by a hunting site";
    NorthDakotaLean: Measured, "Reed et al. 2019, Meat and Muscle Biology: mule deer, elk and moose dissected, shot loss 13.2, 16.6, 12.3 % of lean";
    AlbertaPronghorn: Measured, "Measurements, weights and carcass yields of pronghorns in Alberta: 1,210 dressed, 216 whole";
    ElkGirth: Measured, "Millspaugh and Brundige 1996, Estimating elk weight from chest girth: 19 whole, 57 dressed";
    MooseGirth: Measured, "Alaskan moose morphometrics (Franzmann et al.): weight = -245.3 + 3.14 girth, over 500 weighed";
    SwedishMoose: Measured, "Wallin, Cederlund and Pehrson 1996, Wildlife Biology 2:53: carcass 45 to 51 % of live weight";
    MooseLean: Measured, "Hansson and Malmfors 1978, Meat production from moose: 80 % lean in adults (dissected)";
    TanbaSika: Measured, "Yoshimura et al., Tanba sika deer: 35.6 and 35.7 % of live weight as meat";
    MasseyFallow: Measured, "Massey University thesis 1985, growth and carcass of male fallow deer: 24 animals";
    GermanRoe: Agency, "German hunter-training tables, Preisfindung Wildbret: one roe deer of 16.0 kg, closed to the gram";
    AustrianRoe: Agency, "Weidwerk, Zerwirken eines Rehes: one roe doe of 16.2 kg";
    SitkaText: Agency, "Agency wording on Sitka black-tailed deer: 100 lb live, 60 lb dressed, 35 lb meat; relayed by a lodge";
    HillRed: Measured, "Kay et al. 1981 (year from memory), Carcass characteristics of young red deer farmed on hill pasture";
    WildFallow: Measured, "Fitzhenry et al. 2019, Carcass composition and yields of wild fallow deer in South Africa";
    OhioDeer: Relayed, "Ohio DNR boneless yield, 48 % of field-dressed; relayed by a low-quality page";
    NewHampshireDeer: Agency, "New Hampshire Fish and Game, deer history: dressed bucks 65 to 180 lb, does 60 to 120 lb";
    WyomingMuleWeights: Agency, "Wyoming Game and Fish, How much meat can I get; and B-589R mean weights";
    BlackTailWeights: Weak, "Record-book page on Columbian black-tail weights, and agency text on Sitka deer";
    BritishColumbiaMoose: Measured, "Aitken et al. 2012, Alces 48:105: hanging weights of moose by age and sex";
    NorwegianReindeer: Agency, "Landbruksdirektoratet 2016: slaughter weights of reindeer";
    ScottishVenison: Agency, "Scottish Venison Partnership, Know your Venison: dressed weights of red, roe, fallow and sika";
    LithuanianRoe: Agency, "Lithuanian hunting association page on roe deer: 26 and 29 kg live";
    AxisRanch: Weak, "Ranch pages on axis deer weights";
    PronghornHanging: Weak, "A processor's public page on pronghorn hanging weights";
    RutWeights: Measured, "Strickland et al. 2017, Wildlife Society Bulletin 41:286: adult bucks lose 13.8 % over the season";
    MuscleCatalogue: Judgement, "Estimate for this planner: joint totals of fallow, rusa, roe and elk, split inside each joint as in cattle, sheep and zebra, fitted by hand; no deer muscle table was found";
    MuscleDensity: Measured, "Mendez and Keys 1960, as cited in Scientific Reports 2021: mammalian muscle 1.06 g/ml";
    RedDeerGrowth: Measured, "Wenham and Pennie, growth of individual muscles in red deer: spine and belly 1.08, distal fore limb 0.84";
    SheepSexShares: Measured, "Sheep and goat studies of sex and muscle distribution: hind share of females 1.055 of males";
    ImpalaShares: Measured, "Impala, Zimbabwe 2000: neck 69 against 51 g/kg, forequarter 279 against 259 g/kg, rams against ewes";
    MsuFreezer: Agency, "Michigan State University Extension, beginner's guide to freezer beef: steaks 3/4 to 1 in, roasts 3 to 4 lb, ground 1 to 2 lb";
    IowaPortions: Agency, "Iowa State University, portion control: 1 lb boneless serves 4";
    ExtensionPortions: Relayed, "Extension-service figure relayed by a blog: 3 servings a pound for boneless steaks, roasts, chops";
    CommonPractice: CommonPractice, "Common practice, no source";
    Analogy: Judgement, "By analogy with related species, or from memory; unverified";
    Judgement: Judgement, "Our judgement; no source";
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_source_has_a_citation_of_its_own() {
        for (index, source) in Source::ALL.iter().enumerate() {
            assert!(source.citation().len() > 15, "{source:?}");
            for other in &Source::ALL[..index] {
                assert_ne!(source.citation(), other.citation());
            }
        }
    }
}
