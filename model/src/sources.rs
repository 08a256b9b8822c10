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
    UmnGame: Agency, "University of Minnesota Extension, Freeze or Can Wild Game: ground and stew 2 to 3 months, roasts and steaks 8 to 12";
    MsuGame: Agency, "Michigan State University Extension, Be prepared for incoming venison, and 01600806 (1997): the same months as Minnesota";
    PennGame: Relayed, "C. Cutter, Penn State, in Public Opinion 2012: store nine to twelve months; cook to 160 degrees F";
    CsuGame: Agency, "Colorado State University Extension 6.504, Cutting Up a Big Game Carcass: eat within six months for best quality";
    GarrettColumn: Weak, "Garrett County Republican 2022, unsigned column: ground within three months, roasts or steaks within six to nine";
    ApplianceMonths: Relayed, "Appliance manual chart, provided by the USDA: wild game 8 to 12 months, ground 3 to 4";
    FdaStorage: Agency, "FDA Publication 00-2244 (archived): freezer months and refrigerator days of domestic meat";
    FoodSafetyGov: Relayed, "FoodSafety.gov storage times, as mirrored: freezer months and refrigerator days of domestic meat";
    FoodKeeper: Agency, "FSIS Food Keeper data v128 (2018): goat stew meat and pork chops 4 to 12 months, ground 3 to 4; no venison among the records read";
    ColumbiaText: Relayed, "An old text from British Columbia: organs 3 to 4 months";
    FsisBasics: Agency, "FSIS, Keep Food Safe basics (archived): raw whole cuts 3 to 5 days, ground and variety meats within 2, refrigerator at or below 40 degrees F";
    MichiganHealth: Relayed, "Michigan Department of Community Health, reprinted: freeze game not used within 3 to 5 days";
    WisconsinColumn: Weak, "La Crosse Tribune 2021, extension-type column: 2 to 3 days; game meats to 165 degrees F";
    UmnLoad: Agency, "University of Minnesota Extension 2017: 2 to 3 pounds of food per cubic foot in 24 hours; 40 to 60 for 20 cubic feet";
    ApplianceLoad: Relayed, "Appliance manual: no more than 2 to 3 pounds of fresh meat per cubic foot within 24 hours";
    ApplianceMeat: Relayed, "Appliance manual, based on USDA recommendations: meat 30, 36, 46 lb in 15, 18, 23 cubic feet; wrap one third longer than the distance round the food";
    NcStateSpace: Agency, "NC State, Fraser and Lackey 2004: one cubic foot holds up to 35 pounds of tightly fitted food";
    FarmSpace: Weak, "A farm's public page: 35 to 40 lb of cut and wrapped meat per cubic foot";
    RetailSpace: Weak, "A meat retailer's page: 30 to 32 lb of beef per cubic foot";
    NdsuWrap: Agency, "NDSU Extension FN613: drugstore wrap 1 1/2 times round, butcher wrap twice round; ends double-folded; freezer tape";
    VacuumPage: Weak, "A garden page on vacuum sealing: cut the bag about 3 in longer than the item";
    QuartPage: Weak, "A kitchen page: a quart freezer bag is about 7 by 8 in";
    FlatPackPage: Weak, "A sporting magazine: freeze ground meat flat, about 1 in thick";
    UsdaDeer: Agency, "USDA SR Legacy 17164, deer, raw: 2.42 percent fat (percent from memory, energy read)";
    UsdaBackfat: Agency, "USDA SR Legacy 10004, pork backfat, raw: 88.69 percent fat";
    UsdaBeefFat: Agency, "USDA SR Legacy, beef retail cuts, separable fat, raw: 70.9 percent fat (percent from memory, energy read)";
    UsdaPatty: Agency, "USDA FDC 172602, ground deer: a patty of 85 g cooked from 4 oz raw";
    BeefSlides: Weak, "A meat-science lecture: grind at 35 degrees F; ground beef at most 30 percent fat";
    PlatesPage: Weak, "A cooking page: plates of 3/8 in (10 mm), then 3/16 in (4.5 mm)";
    MsuSausage: Agency, "Michigan State University 01600616: 15 lb lean and 10 lb fat trim; 1/2 to 1 in plate, then 3/16 in";
    HunterBurger: Weak, "A magazine and hunters' figures: burger about 10 percent fat, sausage 20 to 30";
    FederalVenison: Relayed, "FoodSafety.gov chart, as quoted in public notes: venison 160 degrees F (71 degrees C)";
    MsuConsumers: Agency, "Michigan State University, chronic wasting disease, consumers: cook venison to 165 degrees F";
    CanadaCooking: Relayed, "Government of Canada table, as mirrored: game 74 degrees C (165 degrees F)";
    FsisThaw: Relayed, "FSIS wording on a seller's page: 24 hours in the refrigerator for each 5 lb; a pound of ground meat a full day";
    ThawPage: Weak, "A thawing guide: large roast 4 to 7 hours a pound, small roast 3 to 5, 1 in ground pack 24 h, 1 in steak 12 to 14 h";
    RanchThaw: Weak, "A cattle ranch's cooking page: large roast 4 to 7 hours a pound, small roast 3 to 5, 1/2 to 3/4 in steak 12 h, 1 to 1 1/2 in stew 24 h";
    PlankEquation: Relayed, "Plank's equation, Encyclopaedia of Food Science: slab P 1/2, R 1/8";
    HomeFreezers: Measured, "Anderson et al. 2004, International Journal of Refrigeration 27:63: 8 to 15 W/m2K while freezing in five household models";
    EarleProperties: Relayed, "Earle, Unit Operations, appendix 7: latent heat 335 kJ/kg of water; heat capacities by water content";
    AshraeMeat: Relayed, "ASHRAE table, mirrored: sirloin begins to freeze at 28.9 degrees F (-1.7 degrees C)";
    FrozenMeat: Relayed, "Meat Refrigeration, chapter 13: frozen lean conducts about 1.3 W/mK";
    NewZealandVenison: Agency, "Te Ara, New Zealand's government encyclopedia: venison cuts by tenderness";
    BeefShear: Measured, "Belew et al. 2003: shear force of 40 beef muscles (abstract)";
    BeefRound: Measured, "Senaratne et al. 2010: tenderness and fibres of the beef round (abstract)";
    BeefCollagen: Measured, "Collagen of beef joints 1986: shin 4.8, leg 4.2 percent";
    SpringbokShear: Measured, "Springbok 2019, Meat and Muscle Biology: shear force of six muscles";
    HartebeestShear: Measured, "Red hartebeest 2021, Foods: shear force by muscle";
    GuelphMuscles: Agency, "University of Guelph: where the muscles of a carcass lie";
    LabelSheets: CommonPractice, "Sheets as they are commonly sold, sizes from memory; measure yours";
    TradeSizes: CommonPractice, "Trade sizes and habits, from memory; unverified";
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
