//! What is taught of each muscle: where it lies without its name, its life, why it is tender or tough, its silverskin,
//! its fibres, and what it wants to be. Common practice and general anatomy, from memory, where no source is named.

use hindsaddle_model::anatomy::Muscle;

/// Where it lies, in words that do not name it: for asking where it is.
pub fn place(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => "inside of the thigh, against its twin",
        Muscle::BottomRound => "outer face of the thigh, from the tail head to the knee",
        Muscle::EyeRound => "narrow strip down the back edge of the thigh",
        Muscle::Knuckle => "front of the thigh, wrapped on the thigh bone",
        Muscle::Sirloin => "thick cap on the outer face of the hip bone",
        Muscle::TriTip => "triangle from the hip point down the front edge of the thigh",
        Muscle::HindShank => "lower hind leg, from the knee to the hock",
        Muscle::PelvicTrim => "scraps in the bowl of the pelvis and at the root of the tail",
        Muscle::Backstrap => "in the groove beside the spine, from the hip to the base of the neck",
        Muscle::Tenderloin => "inside the body, under the spine of the loin",
        Muscle::BackTrim => "strips on the bones of the spine, under the long muscle of the back",
        Muscle::FlatIron => "outer face of the shoulder blade, behind its ridge",
        Muscle::MockTender => "outer face of the shoulder blade, in front of its ridge",
        Muscle::Clod => "triangle between shoulder blade, upper arm and elbow",
        Muscle::UnderBlade => "inner face of the shoulder blade, toward the ribs",
        Muscle::Arm => "front of the upper arm, from the point of the shoulder to the elbow",
        Muscle::ForeShank => "forearm, from the elbow to the wrist",
        Muscle::Chuck => "between the shoulder blade and the ribs, seen when the fore leg is off",
        Muscle::Cape => "thin sheets over the top of the blade and the upper ribs",
        Muscle::NeckStraps => "underside of the neck, from the skull to the shoulder and breastbone",
        Muscle::Neck => "behind the skull, in layers on the bones, down to the withers",
        Muscle::Brisket => "underside of the chest, between the fore legs",
        Muscle::RibMeat => "between and over the ribs",
        Muscle::FlankSteak => "strip along the belly, from the breastbone to the pelvis",
        Muscle::FlankSheets => "soft side wall, from the last ribs to the hip point",
        Muscle::Skirt => "the wall between chest and belly, inside",
    }
}

/// How it comes off the bones.
pub fn take_off(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "Open the seam between it and the bottom round from inside the leg with fingers and the knife's tip; free it from the thigh bone."
        }
        Muscle::BottomRound => {
            "Open the seams to knuckle and eye of round, then peel it off the thigh bone from the tail end down."
        }
        Muscle::EyeRound => "Follow the seam round the spindle with the tip and lift it out whole.",
        Muscle::Knuckle => {
            "Cut along the thigh bone on both sides, then under the kneecap, and roll it off the bone."
        }
        Muscle::Sirloin => {
            "Cut along the hip bone from the hook to the hip joint and lift the cap off the bone."
        }
        Muscle::TriTip => {
            "Pull the triangle off the front edge of the thigh; the seam opens by hand, the tip of the knife frees its point."
        }
        Muscle::HindShank => {
            "Cut through the tendon above the hock, then scrape upward along the bone to the knee."
        }
        Muscle::PelvicTrim => {
            "Scrape it out of the bowl of the pelvis in pieces; stay clear of bladder and gut."
        }
        Muscle::Backstrap => {
            "Cut along the spine from hip to neck, then in along the ribs from the side, and roll the strap off."
        }
        Muscle::Tenderloin => "From inside, free both ends with the tip and pull it off the spine by hand.",
        Muscle::BackTrim => "When the strap is off, scrape what is left between the spines of the back.",
        Muscle::FlatIron => "Cut along the ridge of the blade and peel it off the bone, back from the ridge.",
        Muscle::MockTender => "Cut along the front of the ridge and roll the spindle out of its groove.",
        Muscle::Clod => {
            "Cut along the back edge of the blade and the upper arm, and lift the wedge off down to the elbow."
        }
        Muscle::UnderBlade => "Turn the blade over and scrape the sheet off its inner face.",
        Muscle::Arm => "Cut it free at the point of the shoulder and follow the upper arm down to the elbow.",
        Muscle::ForeShank => {
            "Cut round the wrist, slit along the bone and peel the bellies off up to the elbow."
        }
        Muscle::Chuck => {
            "With the fore leg off, cut along the neck bones and the first ribs and lift it off in sheets."
        }
        Muscle::Cape => {
            "Lift the edge over the blade's top and peel the sheet off; it comes away as the leg does."
        }
        Muscle::NeckStraps => {
            "Cut along the windpipe on each side and pull the straps off from jaw to breastbone."
        }
        Muscle::Neck => {
            "Cut down beside the neck bones from behind the skull and peel the meat off in one slab."
        }
        Muscle::Brisket => "Cut along the breastbone and peel the flat piece back off the ribs.",
        Muscle::RibMeat => "Run the tip along both edges of each rib and push the strips out.",
        Muscle::FlankSteak => "Find the flat muscle along the belly's middle and pull it out of its sheath.",
        Muscle::FlankSheets => "Cut along the last rib and the hip, and take the sheets as they part.",
        Muscle::Skirt => {
            "Cut the red rim off where it is fast to the ribs, if it did not leave with the guts."
        }
    }
}

/// What it did in life.
pub fn life(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "It drove the hind leg back and held it in toward the other: the push of every bound."
        }
        Muscle::BottomRound => "It straightened hip and hock for the push-off, and worked at every step.",
        Muscle::EyeRound => "It drew the hind leg back and bent the knee.",
        Muscle::Knuckle => {
            "It straightened the knee: it kept the deer standing, and caught it when it landed."
        }
        Muscle::Sirloin => "It straightened the hip for the leap, in bursts more than all day long.",
        Muscle::TriTip => "It swung the thigh forward and kept the sheath of the thigh tight.",
        Muscle::HindShank => {
            "It straightened the hock and moved the toes, through long tendons, at every step."
        }
        Muscle::PelvicTrim => "Small muscles that turned the thigh in its socket and moved the tail.",
        Muscle::Backstrap => {
            "It held the back stiff and straightened it in the bound; walking and grazing asked little of it."
        }
        Muscle::Tenderloin => "It drew the hind leg forward and bent the loin, and did little else.",
        Muscle::BackTrim => "Short muscles that steadied each bone of the spine against the next.",
        Muscle::FlatIron => "It held the shoulder joint from outside, more like a strap than a motor.",
        Muscle::MockTender => "It straightened the shoulder and steadied the joint at every step.",
        Muscle::Clod => "It straightened the elbow and carried the front of the deer whenever it stood.",
        Muscle::UnderBlade => "It held the shoulder joint from inside and drew the fore leg back and in.",
        Muscle::Arm => "It bent the elbow and lifted the fore leg for the next step.",
        Muscle::ForeShank => "It bent and straightened wrist and toes, through long tendons, at every step.",
        Muscle::Chuck => {
            "The sling in which the chest hangs between the fore legs: deer have no collar bone to carry it."
        }
        Muscle::Cape => "It lifted and swung the blade, and pulled the fore leg back.",
        Muscle::NeckStraps => "They swung the fore leg forward and lowered the head.",
        Muscle::Neck => {
            "It carried, lifted and turned the head all day; in a buck, antlers and fights with it."
        }
        Muscle::Brisket => "It pulled the fore legs in and back, and helped to carry the chest.",
        Muscle::RibMeat => "It moved the ribs at every breath.",
        Muscle::FlankSteak => "It carried the belly and bent the back in the bound.",
        Muscle::FlankSheets => "Three sheets that held the belly in, and helped to breathe out and to twist.",
        Muscle::Skirt => "The muscle of breathing: it moved at every breath of the deer's life.",
    }
}

/// Why it is tender or tough.
pub fn tender(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "Medium: large and lean, with few seams. It dries out when it is cooked past medium."
        }
        Muscle::BottomRound => "Tough: coarse fibres in thick wraps of gristle that grow heavier with age.",
        Muscle::EyeRound => {
            "Medium: fine and even, but with much firm gristle inside. The middle is tenderer than its ends."
        }
        Muscle::Knuckle => {
            "Tender, taken together: of its four muscles the centre one is the tenderest, the outer one tough."
        }
        Muscle::Sirloin => "Tender: one of the four best pieces, thick and with little gristle.",
        Muscle::TriTip => "Tender, but thin and small on all but the largest deer.",
        Muscle::HindShank => "Tough: tendon and gristle through and through, the most of the hind leg.",
        Muscle::PelvicTrim => "Tough enough, and in pieces too small for it to matter.",
        Muscle::Backstrap => "Very tender: long even fibres, little gristle inside, little work.",
        Muscle::Tenderloin => "Very tender: hardly any gristle and hardly any work. No muscle is tenderer.",
        Muscle::BackTrim => "Medium, but stringy: short slips, each in its own silver.",
        Muscle::FlatIron => {
            "Tender, among the tenderest once the sheet of gristle in its middle is out; with it, chewy."
        }
        Muscle::MockTender => "Tough: a firm cone with a tendon in its core, worked at every step.",
        Muscle::Clod => "Medium: good meat around inner plates of tendon, which grow harder with age.",
        Muscle::UnderBlade => {
            "Medium: thin, with sheets across it; the little rope at its back edge is tender."
        }
        Muscle::Arm => "Tough: small muscles that work hard, with tendons at both ends.",
        Muscle::ForeShank => "Tough: half of it is tendon, the most gristle of the front.",
        Muscle::Chuck => "Medium: tender meat between two tough sheets of tendon, and thin on a small deer.",
        Muscle::Cape => "Tough: sheets about 5 mm thick that never rest.",
        Muscle::NeckStraps => "Tough: long ropes of coarse fibre.",
        Muscle::Neck => "Tough: many layers with sheets between them, and much flavour.",
        Muscle::Brisket => "Tough: coarse and thin, with a fat that sets hard and tastes.",
        Muscle::RibMeat => "Tough: a few millimetres of meat between bone, silver and tallow.",
        Muscle::FlankSteak => "Tough: long coarse fibres, under 1 cm thick on a white-tail.",
        Muscle::FlankSheets => "Tough: sheets of 2 to 6 mm with silver on both faces.",
        Muscle::Skirt => "Medium: loose fibres that take a quick sear, but thin and full of silver.",
    }
}

/// Where its silverskin is.
pub fn silver(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "Little: a thin cap of muscle lies over it like a lid. Lift that off with its film."
        }
        Muscle::BottomRound => {
            "Heavy: a bright sheet covers the outer face. Slide the knife under it, edge tilted up."
        }
        Muscle::EyeRound => "Little: a film around the spindle.",
        Muscle::Knuckle => "Inside: bright sheets part its four muscles. Open it along them and trim each.",
        Muscle::Sirloin => "Little: a film on the outer face, and one seam between its two layers.",
        Muscle::TriTip => "Little: along the front edge, where it runs into the sheath of the thigh.",
        Muscle::HindShank => "Heavy: around every one of its bellies, and white tendon at both ends.",
        Muscle::PelvicTrim => "Some, on every scrap.",
        Muscle::Backstrap => {
            "Heavy but simple: one thick sheet on the face toward the hide, off in one pull of the knife."
        }
        Muscle::Tenderloin => "Almost none: a film, and the thin strip at its side.",
        Muscle::BackTrim => "Heavy: around each slip.",
        Muscle::FlatIron => "Heavy: a film outside, and the sheet inside that parts it into two flat halves.",
        Muscle::MockTender => "Heavy: a tough sheet outside, and a tendon in the core toward the joint.",
        Muscle::Clod => "Some outside; inside, plates of tendon between its heads, thickest at the elbow.",
        Muscle::UnderBlade => "Some: sheets that cross it and close on the shoulder joint.",
        Muscle::Arm => "Heavy: around each small muscle, with tendons at shoulder and elbow.",
        Muscle::ForeShank => "Heavy: around every belly, and tendons that run on to the toes.",
        Muscle::Chuck => "Two broad sheets of tendon, one on each face, with the meat between them.",
        Muscle::Cape => "Some: a film on both faces.",
        Muscle::NeckStraps => "Little: a film around each rope.",
        Muscle::Neck => "Heavy: sheets between the layers, and the yellow cord of the nape above.",
        Muscle::Brisket => "Some, with waxy fat in the seams: trim that hard.",
        Muscle::RibMeat => "Heavy: a skin inside the ribs, and silver over each strip.",
        Muscle::FlankSteak => "Some: a film on both faces, and a few bands of tendon across it.",
        Muscle::FlankSheets => "Heavy: on both faces of each of the three sheets.",
        Muscle::Skirt => "Heavy: a tough skin on both faces. Peel it off.",
    }
}

/// Which way its fibres run.
pub fn fibres(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "From the pin bone down and forward to the inside of the knee; those of the cap almost straight down."
        }
        Muscle::BottomRound => {
            "Two-sided, like a feather: mainly from the tail head down and forward to the knee. Look again as you cut, it turns."
        }
        Muscle::EyeRound => "Straight along the spindle, from the pin bone down.",
        Muscle::Knuckle => "Straight from hip to kneecap in the centre; at the sides they slant in.",
        Muscle::Sirloin => {
            "From the hip point back and down to the hip joint; its two layers differ a little."
        }
        Muscle::TriTip => "In a fan from the hip point down. Turn the piece half-way through.",
        Muscle::HindShank => "In many small bellies, all along the shin.",
        Muscle::PelvicTrim => "Every way: short and mixed.",
        Muscle::Backstrap => "Nearly along the back, leaning about 10 degrees down and forward.",
        Muscle::Tenderloin => "Along the piece, from the last ribs back to the hip joint.",
        Muscle::BackTrim => "In short slips, 20 to 40 degrees to the spine.",
        Muscle::FlatIron => "In two halves that slant toward the sheet in the middle.",
        Muscle::MockTender => "Along the cone, from the top of the blade to the point of the shoulder.",
        Muscle::Clod => "In a fan from the back edge of the blade down to the elbow.",
        Muscle::UnderBlade => "In several fans that close on the shoulder joint.",
        Muscle::Arm => "Along the upper arm, from the point of the shoulder to the elbow.",
        Muscle::ForeShank => "Straight along the forearm, from elbow to wrist.",
        Muscle::Chuck => "In a fan from the top of the blade down to the ribs and forward to the neck.",
        Muscle::Cape => {
            "In fans: to the ridge of the blade above, and from the back forward and down behind it."
        }
        Muscle::NeckStraps => "Along the ropes, from behind the head to the shoulder and breastbone.",
        Muscle::Neck => "Along the neck, in many layers.",
        Muscle::Brisket => {
            "The deep part along the breastbone, forward and up; the surface part straight across."
        }
        Muscle::RibMeat => "In two layers between the ribs that cross each other.",
        Muscle::FlankSteak => "Straight along the belly.",
        Muscle::FlankSheets => "Three sheets, three directions.",
        Muscle::Skirt => "Short, straight across the strip, from the ribs to the centre.",
    }
}

/// What it wants to be, and why.
pub fn wants(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "Steaks across the grain, or one or two whole roasts: it is large enough for either."
        }
        Muscle::BottomRound => {
            "A roast, cooked slowly; or sliced thin. A thick grilled steak of it disappoints."
        }
        Muscle::EyeRound => "A small roast of even shape, not overcooked, and sliced thin.",
        Muscle::Knuckle => "A roast; or seam it apart, and the centre piece gives good steaks.",
        Muscle::Sirloin => "Three to five steaks, or a small roast. Stew or grind only what was damaged.",
        Muscle::TriTip => "One steak, seared whole. On an elk it is a roast.",
        Muscle::HindShank => "Stew, or a shank braised whole: hours of wet heat turn its gristle to jelly.",
        Muscle::PelvicTrim => "Grind: it comes off in scraps.",
        Muscle::Backstrap => "Steaks or chops, cooked hot and short. Stewed or ground it is wasted.",
        Muscle::Tenderloin => {
            "Thick steaks, or cooked whole. Nothing on the deer is less in need of a grinder."
        }
        Muscle::BackTrim => "Grind: strings for the tub.",
        Muscle::FlatIron => "Two flat steaks, once the sheet between them is filleted out.",
        Muscle::MockTender => "Stew, or braised whole. It looks like a tenderloin and is none.",
        Muscle::Clod => "A pot roast, cooked until it can be pulled; or stew.",
        Muscle::UnderBlade => "Stew; keep the little rope for the pan.",
        Muscle::Arm => "Stew: small pieces that need time.",
        Muscle::ForeShank => "Stew, or a shank braised on the bone.",
        Muscle::Chuck => "Stew; on an elk, a rolled roast.",
        Muscle::Cape => "Grind: it is too thin for anything whole.",
        Muscle::NeckStraps => "Stew, in short cross-cuts.",
        Muscle::Neck => "A boned and rolled pot roast, simmered and pulled.",
        Muscle::Brisket => "Grind, with the fat trimmed hard; a large one can be braised.",
        Muscle::RibMeat => "Grind: strips from between the bones.",
        Muscle::FlankSteak => {
            "Grind on a small deer; on a large one a thin steak, marinated, seared and sliced across."
        }
        Muscle::FlankSheets => "Grind what is clean; dirt and drying take their share here first.",
        Muscle::Skirt => "Grind, or a quick thin steak from a large deer, if the guts were not hit.",
    }
}

/// What two muscles that are often taken for each other are told apart by.
pub fn mistaken(one: Muscle, other: Muscle) -> Option<&'static str> {
    let pair = if one <= other { (one, other) } else { (other, one) };
    Some(match pair {
        (Muscle::Backstrap, Muscle::Tenderloin) => {
            "The tenderloin lies inside the body under the spine, the backstrap outside above it; both are very tender, and the backstrap is five times as heavy."
        }
        (Muscle::Tenderloin, Muscle::MockTender) => {
            "They look alike on the board: the tenderloin comes from inside the loin and is the tenderest piece, the mock tender from the front of the blade and is tough."
        }
        (Muscle::EyeRound, Muscle::Tenderloin) => {
            "Both are neat spindles: the eye of round comes from the back of the thigh and is firm inside, the tenderloin is not."
        }
        (Muscle::TopRound, Muscle::BottomRound) => {
            "The top round is the inside of the thigh, clean and medium-tender; the bottom round is the outside, coarse under heavy silver."
        }
        (Muscle::FlatIron, Muscle::MockTender) => {
            "The ridge of the shoulder blade parts them: behind it the tender flat iron with its inner sheet, in front of it the tough mock tender."
        }
        (Muscle::Sirloin, Muscle::Backstrap) => {
            "The sirloin begins where the backstrap ends, on the hip: shorter and thicker, with less silver, nearly as tender."
        }
        (Muscle::HindShank, Muscle::ForeShank) => {
            "The same kind of meat from the hind and the fore leg: both all tendon, the hind shank more than twice as heavy."
        }
        (Muscle::FlankSteak, Muscle::FlankSheets) => {
            "The flank steak is the one long strip of the belly line with straight fibres; the sheets are the three crossed layers of the side."
        }
        (Muscle::NeckStraps, Muscle::Neck) => {
            "The straps are the two ropes under the neck; the neck itself lies on the bones in many layers and makes a pot roast."
        }
        (Muscle::Chuck, Muscle::Cape) => {
            "The cape lies over the shoulder blade and is a thin sheet; the chuck lies under it and is the sling that carries the chest."
        }
        _ => return None,
    })
}
