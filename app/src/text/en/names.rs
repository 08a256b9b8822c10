//! Names of things: muscles, products, species, stages.

use hindsaddle_model::anatomy::{Muscle, Region, Side, View};
use hindsaddle_model::animal::{Age, Condition, Sex, Species, Stage};
use hindsaddle_model::forecast::Line;
use hindsaddle_model::packing::Appetite;
use hindsaddle_model::plan::{Care, Shot};
use hindsaddle_model::product::Product;

/// What a muscle is called.
pub fn muscle(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => "Top round",
        Muscle::BottomRound => "Bottom round",
        Muscle::EyeRound => "Eye of round",
        Muscle::Knuckle => "Knuckle",
        Muscle::Sirloin => "Sirloin",
        Muscle::TriTip => "Tri-tip",
        Muscle::HindShank => "Hind shank",
        Muscle::PelvicTrim => "Hip trim",
        Muscle::Backstrap => "Backstrap",
        Muscle::Tenderloin => "Tenderloin",
        Muscle::BackTrim => "Back trim",
        Muscle::FlatIron => "Flat iron",
        Muscle::MockTender => "Mock tender",
        Muscle::Clod => "Shoulder clod",
        Muscle::UnderBlade => "Under-blade",
        Muscle::Arm => "Arm trim",
        Muscle::ForeShank => "Fore shank",
        Muscle::Chuck => "Chuck",
        Muscle::Cape => "Shoulder cape",
        Muscle::NeckStraps => "Neck straps",
        Muscle::Neck => "Neck",
        Muscle::Brisket => "Brisket",
        Muscle::RibMeat => "Rib meat",
        Muscle::FlankSteak => "Flank steak",
        Muscle::FlankSheets => "Flank sheets",
        Muscle::Skirt => "Skirt",
    }
}

/// What else it is called; empty if nothing.
pub fn muscle_also(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => "inside round, topside",
        Muscle::BottomRound => "outside round, flat, silverside",
        Muscle::EyeRound => "salmon cut",
        Muscle::Knuckle => "sirloin tip, football roast",
        Muscle::Sirloin => "rump, top butt",
        Muscle::HindShank => "with the heel",
        Muscle::Backstrap => "loin",
        Muscle::Tenderloin => "fillet, inner loin",
        Muscle::BackTrim => "spine strips, loin chain",
        Muscle::FlatIron => "top blade",
        Muscle::MockTender => "chuck tender",
        Muscle::Clod => "arm roast",
        Muscle::UnderBlade => "blade inside, petite tender",
        Muscle::Arm => "upper arm",
        Muscle::Chuck => "chuck flap",
        Muscle::Cape => "blade cap, lifter",
        Muscle::Skirt => "with the hanger",
        Muscle::TriTip
        | Muscle::PelvicTrim
        | Muscle::ForeShank
        | Muscle::NeckStraps
        | Muscle::Neck
        | Muscle::Brisket
        | Muscle::RibMeat
        | Muscle::FlankSteak
        | Muscle::FlankSheets => "",
    }
}

/// The muscles in it, as anatomists call them.
pub fn anatomical(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => "M. semimembranosus + adductor (+ gracilis cap, pectineus, sartorius)",
        Muscle::BottomRound => "M. gluteobiceps (biceps femoris)",
        Muscle::EyeRound => "M. semitendinosus",
        Muscle::Knuckle => "M. quadriceps femoris (rectus femoris, vastus lateralis, medialis, intermedius)",
        Muscle::Sirloin => "M. gluteus medius + accessorius + profundus (+ piriformis)",
        Muscle::TriTip => "M. tensor fasciae latae",
        Muscle::HindShank => {
            "M. gastrocnemius, soleus, flexor digitorum superficialis et profundi, tibialis cranialis, extensors, popliteus"
        }
        Muscle::PelvicTrim => "Mm. obturatorii, gemelli, quadratus femoris, coccygeus, tail-head muscles",
        Muscle::Backstrap => "M. longissimus thoracis et lumborum (+ spinalis at the front end)",
        Muscle::Tenderloin => "M. psoas major + minor + iliacus",
        Muscle::BackTrim => "Mm. multifidi, iliocostalis, longissimus cervicis (part), serratus dorsalis",
        Muscle::FlatIron => "M. infraspinatus",
        Muscle::MockTender => "M. supraspinatus",
        Muscle::Clod => "M. triceps brachii (long, lateral, medial heads) + tensor fasciae antebrachii",
        Muscle::UnderBlade => "M. subscapularis + teres major (+ coracobrachialis)",
        Muscle::Arm => "M. biceps brachii, brachialis, deltoideus, teres minor",
        Muscle::ForeShank => "M. extensor carpi radialis, digital flexors and extensors",
        Muscle::Chuck => "M. serratus ventralis + rhomboideus",
        Muscle::Cape => "M. trapezius + latissimus dorsi + omotransversarius",
        Muscle::NeckStraps => "M. brachiocephalicus + sternocephalicus",
        Muscle::Neck => {
            "M. splenius, semispinalis capitis (complexus), longissimus cervicis/capitis, longus colli, scalenus, intertransversarii"
        }
        Muscle::Brisket => "M. pectoralis profundus + superficialis",
        Muscle::RibMeat => "Mm. intercostales, (serratus dorsalis, transversus thoracis)",
        Muscle::FlankSteak => "M. rectus abdominis",
        Muscle::FlankSheets => {
            "M. obliquus externus + internus + transversus abdominis (+ cutaneus trunci rests)"
        }
        Muscle::Skirt => "Diaphragma (pars costalis, lumbalis)",
    }
}

/// One sentence to remember a muscle by.
pub fn teach(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "The big flat cushion on the inside of the thigh: take off the thin cap first, then cut the main muscle across."
        }
        Muscle::BottomRound => {
            "The outer wall of the thigh under a bright silver sheet: slow-roast it whole or slice it thin."
        }
        Muscle::EyeRound => {
            "A neat spindle that looks like a tenderloin but is not one: do not overcook it, and slice it thin."
        }
        Muscle::Knuckle => {
            "The football on the front of the thigh: open it along its silver seams and the centre piece is steak-tender."
        }
        Muscle::Sirloin => {
            "Where the backstrap ends the sirloin begins: a thick cap on the hip that eats like backstrap."
        }
        Muscle::TriTip => {
            "A small triangle hanging from the hip point; on an elk it is a dinner, on a small doe it is a snack or stir-fry."
        }
        Muscle::HindShank => {
            "The calf: full of silver now, but hours of gentle simmering turn that silver into silk."
        }
        Muscle::PelvicTrim => "The bits left in the bowl of the pelvis: perfect for the grinder.",
        Muscle::Backstrap => {
            "One long strap each side of the spine: peel off its one thick silver sheet, cut across, cook hot and short."
        }
        Muscle::Tenderloin => {
            "Hidden inside the belly under the spine: it does almost no work, so it is the most tender piece on the deer."
        }
        Muscle::BackTrim => {
            "The strings of meat that stay on the bone when the backstrap comes off: scrape them for the grinder."
        }
        Muscle::FlatIron => {
            "A tender shoulder steak with a sheet of gristle hidden inside like the page in a book: fillet it off and you have two flat steaks."
        }
        Muscle::MockTender => "Tenderloin-shaped, not tenderloin-tender: slow cook this little cone.",
        Muscle::Clod => "The biggest muscle of the front leg: pull it as a slow roast or cube it for stew.",
        Muscle::UnderBlade => {
            "Flip the shoulder over: this thin muscle hides against the ribs, and its little rope (teres major) is tender."
        }
        Muscle::Arm => "The deer's biceps: small, hard-working, made for the stew pot.",
        Muscle::ForeShank => "Forearm muscles, half tendon: braise until the gristle melts.",
        Muscle::Chuck => {
            "The sling that hangs the chest between the front legs: you cut through it when the shoulder comes off."
        }
        Muscle::Cape => "The thin cape over blade and ribs: peel it like a blanket, send it to the grinder.",
        Muscle::NeckStraps => "The ropes that swing the front leg forward: short cross-cuts make good stew.",
        Muscle::Neck => {
            "Many layers, much flavour: roll it, simmer it, pull it. On a rutting buck the neck can be a third bigger."
        }
        Muscle::Brisket => "Thin and tough with waxy fat: trim the fat hard, then grind or braise.",
        Muscle::RibMeat => "Finger-strips between thirteen ribs: worth ten minutes with a small knife.",
        Muscle::FlankSteak => {
            "Long straight fibres: marinate, sear, slice thin across. On a small deer just grind it."
        }
        Muscle::FlankSheets => "Three thin crossed sheets that hold the belly in: trim, peel, grind.",
        Muscle::Skirt => "The breathing muscle: usually leaves with the guts; keep it if it is clean.",
    }
}

/// Which way to cut it.
pub fn knife(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "Slice crosswise, parallel to the ground line of a hanging leg, i.e. square across the line pin bone - stifle."
        }
        Muscle::BottomRound => {
            "Find the grain first, it turns; cut square across the long axis, thin for steaks."
        }
        Muscle::EyeRound => "Straight across the spindle into coins.",
        Muscle::Knuckle => {
            "Whole: across the long axis; better: seam apart along the inner silver sheets, then across each."
        }
        Muscle::Sirloin => "Across that line, i.e. slices square to hip point - hip joint.",
        Muscle::TriTip => "Across the fan; turn the piece half-way.",
        Muscle::HindShank => "Cut the bundle across into discs (bone in or out); do not try steaks.",
        Muscle::PelvicTrim => "Cube small.",
        Muscle::Backstrap => "Straight down across the strap.",
        Muscle::Tenderloin => "Straight across, thick medallions.",
        Muscle::BackTrim => "Cube or grind.",
        Muscle::FlatIron => {
            "Split flat along the middle sheet, fillet it out, then cook whole and slice across."
        }
        Muscle::MockTender => "Across; braise whole first.",
        Muscle::Clod => "Across the fan, starting from the elbow tendon end.",
        Muscle::UnderBlade => "Across; usually cubes.",
        Muscle::Arm => "Across; cubes.",
        Muscle::ForeShank => "Across into discs or debone whole.",
        Muscle::Chuck => "Across, after turning with the fan.",
        Muscle::Cape => "Strips across, or grind.",
        Muscle::NeckStraps => "Cross-cut short lengths.",
        Muscle::Neck => "Whole roll cooked slow and pulled, or cubes.",
        Muscle::Brisket => "Across after long cooking.",
        Muscle::RibMeat => "Strip out for the grinder, or leave on the rack and braise.",
        Muscle::FlankSteak => "Thin, square across the length.",
        Muscle::FlankSheets => "Grind.",
        Muscle::Skirt => "Across the strip.",
    }
}

/// A region.
pub fn region(region: Region) -> &'static str {
    match region {
        Region::HindLeg => "Hind leg",
        Region::Back => "Back",
        Region::Shoulder => "Shoulder",
        Region::Neck => "Neck",
        Region::Belly => "Belly",
    }
}

/// A product, as a heading.
pub fn product(product: Product) -> &'static str {
    match product {
        Product::Roast => "Roast",
        Product::Steak => "Steak",
        Product::Chop => "Chop",
        Product::Stew => "Stew",
        Product::Grind => "Grind",
    }
}

/// A product's mark on the plate.
pub fn product_mark(product: Product) -> &'static str {
    match product {
        Product::Roast => "R",
        Product::Steak => "S",
        Product::Chop => "C",
        Product::Stew => "W",
        Product::Grind => "G",
    }
}

/// What meat that is thrown away is called.
pub const DISCARD: &str = "Discard";
/// Its mark.
pub const DISCARD_MARK: &str = "×";

/// The pieces of a product, for a count.
pub fn pieces(product: Product, count: u32) -> &'static str {
    match (product, count) {
        (Product::Roast, 1) => "roast",
        (Product::Roast, _) => "roasts",
        (Product::Steak, 1) => "steak",
        (Product::Steak, _) => "steaks",
        (Product::Chop, 1) => "chop",
        (Product::Chop, _) => "chops",
        (Product::Stew, 1) => "cube",
        (Product::Stew, _) => "cubes",
        (Product::Grind, _) => "ground meat",
    }
}

/// A view of the plate.
pub fn view(view: View) -> &'static str {
    match view {
        View::Outer => "Outer side",
        View::Inner => "Inner side",
        View::Above => "From above",
    }
}

/// A side of the animal.
pub fn side(side: Side) -> &'static str {
    match side {
        Side::Left => "Left",
        Side::Right => "Right",
    }
}

/// A species.
pub fn species(species: Species) -> &'static str {
    match species {
        Species::WhiteTailed => "White-tailed deer",
        Species::Mule => "Mule deer",
        Species::BlackTailed => "Black-tailed deer",
        Species::Elk => "Elk (wapiti)",
        Species::Moose => "Moose",
        Species::Pronghorn => "Pronghorn",
        Species::Caribou => "Caribou (reindeer)",
        Species::Red => "Red deer",
        Species::Roe => "Roe deer",
        Species::Fallow => "Fallow deer",
        Species::Sika => "Sika deer",
        Species::Axis => "Axis deer",
    }
}

/// Male or female, as hunters of the species say.
pub fn sex(sex: Sex, species: Species) -> &'static str {
    match (species, sex) {
        (Species::Elk | Species::Moose | Species::Caribou, Sex::Buck) => "Bull",
        (Species::Elk | Species::Moose | Species::Caribou, Sex::Doe) => "Cow",
        (Species::Red | Species::Sika, Sex::Buck) => "Stag",
        (Species::Red | Species::Sika, Sex::Doe) => "Hind",
        (_, Sex::Buck) => "Buck",
        (_, Sex::Doe) => "Doe",
    }
}

/// An age class.
pub fn age(age: Age) -> &'static str {
    match age {
        Age::Fawn => "Fawn or calf",
        Age::Yearling => "Yearling",
        Age::Adult => "Adult",
        Age::Old => "Old",
    }
}

/// A condition.
pub fn condition(condition: Condition) -> &'static str {
    match condition {
        Condition::Ordinary => "Nothing special",
        Condition::PreRut => "Before the rut",
        Condition::LateRut => "End of the rut",
        Condition::Nursing => "In milk or carrying",
    }
}

/// What was weighed.
pub fn stage(stage: Stage) -> &'static str {
    match stage {
        Stage::Live => "Live weight",
        Stage::FieldDressed => "Field-dressed weight",
        Stage::Hanging => "Hanging weight",
        Stage::Deboned => "Boneless meat on the table",
        Stage::Girth => "Chest girth",
        Stage::Typical => "Not weighed",
    }
}

/// What exactly has to be on the scale.
pub fn stage_hint(stage: Stage) -> &'static str {
    match stage {
        Stage::Live => "Whole animal, before anything is removed.",
        Stage::FieldDressed => "On the scale: all organs out, head and hide on.",
        Stage::Hanging => "On the scale: skinned, head and lower legs off.",
        Stage::Deboned => "Everything you mean to pack, off the bone.",
        Stage::Girth => "Around the chest, just behind the fore legs.",
        Stage::Typical => "A typical animal of its kind: expect almost half more or less.",
    }
}

/// A stage inside a sentence.
pub fn stage_short(stage: Stage) -> &'static str {
    match stage {
        Stage::Live => "live",
        Stage::FieldDressed => "field-dressed",
        Stage::Hanging => "hanging",
        Stage::Deboned => "boneless meat",
        Stage::Girth => "chest girth",
        Stage::Typical => "not weighed",
    }
}

/// How the shot was.
pub fn shot(shot: Shot) -> &'static str {
    match shot {
        Shot::Clean => "Clean: little spoiled",
        Shot::Usual => "Usual",
        Shot::Bad => "Bad: shoulder, haunch or gut",
    }
}

/// How the bones are cleaned.
pub fn care(care: Care) -> &'static str {
    match care {
        Care::Fussy => "Every scrap",
        Care::Usual => "Usual",
        Care::Hurried => "In a hurry",
    }
}

/// How hungry.
pub fn appetite(appetite: Appetite) -> &'static str {
    match appetite {
        Appetite::Light => "Light: 4 oz raw each",
        Appetite::Hearty => "Hearty: 1/3 lb raw each",
    }
}

/// A line of the ledger.
pub fn line(line: Line) -> &'static str {
    match line {
        Line::Live => "Live weight",
        Line::Viscera => "Organs",
        Line::HeadHideFeet => "Head, hide and feet",
        Line::Bone => "Bone",
        Line::Trim => "Fat, silverskin, tendon",
        Line::Drying => "Drying",
        Line::Wound => "Around a wound",
        Line::LeftBehind => "Left on the bones",
        Line::NotRecovered => "Not taken",
        Line::Discarded => "Discarded",
        Line::TakeHome => "Take-home",
    }
}
