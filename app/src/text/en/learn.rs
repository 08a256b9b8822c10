//! Words of the fourth page: its parts, comparing, the first deer, practice, the teacher's link, sources.

use hindsaddle_model::anatomy::{Muscle, Side, View};
use hindsaddle_model::lesson::{Game, LessonError};
use hindsaddle_model::link::LinkError;
use hindsaddle_model::product::Product;
use hindsaddle_model::tables;

use super::super::words;
use super::{names, sentences};

/// Parts of the page.
pub const MUSCLES: &str = "Muscles";
/// See above.
pub const FIRST_DEER: &str = "First deer";
/// See above.
pub const PRACTICE: &str = "Practice";
/// See above.
pub const WORDS: &str = "Words";
/// See above.
pub const SOURCES: &str = "Sources";

// Muscles.

/// The list.
pub const WHICH_MUSCLE: &str = "Muscle";
/// Before one is chosen.
pub const NO_MUSCLE_YET: &str = "Tap any muscle of the deer, or choose one in the list, to read about it.";
/// The first choice of a list.
pub const CHOOSE_MUSCLE: &str = "Choose a muscle";
/// Compare with.
pub const COMPARE_WITH: &str = "Compare with";
/// Nothing to compare with.
pub const COMPARE_NONE: &str = "Nothing";
/// Heads of what is said of a muscle: its life, why it is tender, silverskin, fibres, knife, becomes.
pub const ABOUT_HEADS: [&str; 6] =
    ["In life", "Tender or tough", "Silverskin", "The grain", "The knife", "Wants to be"];
/// The head of why not what else.
pub const WHY_NOT_HEAD: &str = "Why not the others";
/// The head of a muscle's part of all the meat.
pub const SHARE_HEAD: &str = "Share of the meat";
/// Rows of the comparison.
pub const COMPARED: [&str; 6] =
    ["Tenderness", "Silverskin", "The grain", SHARE_HEAD, "Wants to be", "In life"];
/// Over the sources of a muscle.
pub const READ_FOR_THIS: &str = "Read for this";
/// How sure that is.
pub const LESSON_NOTE: &str = "What a muscle does and how it lies is general anatomy of hoofed animals, mostly from memory. Tenderness and silverskin are our judgement, helped by the studies named here, most of them of beef. Shares are estimates.";

/// "Muscle: Knuckle".
pub fn about_muscle(muscle: Muscle) -> String {
    format!("About {}", names::muscle(muscle).to_ascii_lowercase())
}

/// What the plate is here.
pub fn plate_of(species: &str, marked: Option<&str>) -> String {
    match marked {
        Some(muscle) => format!("The plate: {species}, {muscle} marked"),
        None => format!("The plate: {species}"),
    }
}

/// "Steak: …" with its reason.
pub fn why_not(product: Product, reason: &str) -> String {
    format!("{}: {reason}.", names::product(product))
}

/// "an estimate: about 11 %, 9.8 to 12.2 in 8 of 10 animals".
pub fn share(likely: &str, low: &str, high: &str) -> String {
    format!("an estimate: about {likely} %, {low} to {high} in 8 of 10 animals")
}

/// "4 of 5: heavy".
pub fn silver_score(score: u8) -> String {
    let word = match score {
        0 | 1 => "clean",
        2 => "little",
        3 => "some",
        4 => "heavy",
        _ => "very heavy",
    };
    format!("{score} of 5, {word}")
}

/// "4 of 5: tender".
pub fn tender_score(score: u8) -> String {
    let word = match score {
        0 | 1 => "tough",
        2 => "rather tough",
        3 => "medium",
        4 => "tender",
        _ => "very tender",
    };
    format!("{score} of 5, {word}")
}

/// What sets two muscles apart, in one sentence.
pub fn apart(one: Muscle, other: Muscle) -> String {
    if let Some(known) = super::mistaken(one, other) {
        return known.to_owned();
    }
    let (a, b) = (tables::muscle(one), tables::muscle(other));
    let name = |muscle: Muscle| names::muscle(muscle).to_ascii_lowercase();
    let (more, less) = if a.tenderness >= b.tenderness { (a, b) } else { (b, a) };
    let by = match more.tenderness - less.tenderness {
        0 => format!("The {} and the {} are about equally tender", name(one), name(other)),
        1 => format!("The {} is a little tenderer than the {}", name(more.muscle), name(less.muscle)),
        2 => format!("The {} is clearly tenderer than the {}", name(more.muscle), name(less.muscle)),
        _ => format!("The {} is far tenderer than the {}", name(more.muscle), name(less.muscle)),
    };
    let use_of = |row: &tables::MuscleRow| sentences::product_in_sentence(row.usual);
    if a.usual == b.usual {
        let (large, small) = if a.share >= b.share { (a, b) } else { (b, a) };
        if large.share > small.share * 1.5 {
            return format!(
                "{by}; both usually become {}, and the {} is the larger.",
                use_of(a),
                name(large.muscle)
            );
        }
        return format!("{by}, and both usually become {}.", use_of(a));
    }
    format!(
        "{by}: the {} usually becomes {}, the {} {}.",
        name(more.muscle),
        use_of(more),
        name(less.muscle),
        use_of(less)
    )
}

/// A picture of two muscles.
pub fn two_muscles(one: Muscle, other: Muscle) -> String {
    format!("The plate: 1 {}, 2 {}", names::muscle(one), names::muscle(other))
}

// The first deer.

/// A step of the first deer.
pub struct WalkWords {
    /// Its heading.
    pub name: &'static str,
    /// What to do.
    pub doing: &'static str,
    /// What to watch.
    pub watch: &'static str,
}

/// The ten steps, from the hanging deer to the labelled box.
pub const WALK: [WalkWords; 10] = [
    WalkWords {
        name: "Hang it cold and clean",
        doing: "Skinned, it hangs below 40 °F (4 °C). Pick off hair, and cut away what is dirty or bloodshot; don't wash it.",
        watch: "Keep the tag with the meat. If a disease test is asked for or advised, see to it now.",
    },
    WalkWords {
        name: "Take the tenderloins and the skirt",
        doing: "Reach inside, under the spine, and free the two tenderloins with the tip of the knife. Take the skirt if it is clean.",
        watch: "They lie bare and dry first, so they come first. Leave the knife flat along the bone.",
    },
    WalkWords {
        name: "Lift off the shoulders",
        doing: "Pull the fore leg away from the chest and cut between blade and ribs. No joint holds it: it comes off whole.",
        watch: "The thin cape over the blade comes along, or stays on the ribs; either way it is trim.",
    },
    WalkWords {
        name: "Take the backstraps",
        doing: "Cut along the spine from hip to neck, then in along the ribs, and roll the strap off in one piece. Then the other.",
        watch: "Let the blade scrape on the bone: what stays there is the best meat on the deer.",
    },
    WalkWords {
        name: "Clear neck, brisket, ribs and flank",
        doing: "Bone the neck as one roll or two halves, and take the chuck where the blade lay. Take brisket and flank off in sheets, and the strips between the ribs.",
        watch: "Cut away everything around the wound and what the guts touched. It goes out, never to the tub.",
    },
    WalkWords {
        name: "Take the hind legs off",
        doing: "Cut along the pelvis to the hip joint, open the joint with the tip of the knife, and lift the leg away.",
        watch: "A leg is heavy, and falls when the last sinew is cut: have a hand or a table under it.",
    },
    WalkWords {
        name: "Seam the legs apart",
        doing: "Follow the silver seams with fingers and knife tip. Top round, bottom round, eye, knuckle and sirloin come apart along them.",
        watch: "If you are cutting through meat, you have left the seam. The shank comes off last.",
    },
    WalkWords {
        name: "Cut, in the working order",
        doing: "Take the silverskin off, look for the grain, and cut across it. Each muscle after the other:",
        watch: "What waits goes back to the cold. The table card of this planner has every muscle in this order.",
    },
    WalkWords {
        name: "Fill the tub, and grind last",
        doing: "Ends, sheets and scraps fall into the tub as you go. When all else is wrapped, grind it, near freezing.",
        watch: "Trim out tendon and hard fat first: they clog the plate and they taste.",
    },
    WalkWords {
        name: "Wrap, label, freeze",
        doing: "Air out, wrap tight, and write on each package what it is, its weight, the day and the animal. Freeze it in one layer.",
        watch: "Few pounds a day, against the cold walls; stack when they are hard. That is the labelled box.",
    },
];

/// What the steps rest on.
pub const WALK_NOTE: &str =
    "The way it is commonly done, no source; its order at the table is that of this planner.";
/// The last step is done.
pub const WALK_END: &str =
    "That is the whole way. Plan your own deer next: the plan's page counts the packages before you cut.";
/// The picture of a step.
pub fn step_picture(view: &str, muscles: &[&str]) -> String {
    if muscles.is_empty() {
        return format!("The plate, {}", view.to_ascii_lowercase());
    }
    format!("The plate, {}: {} marked", view.to_ascii_lowercase(), muscles.join(", "))
}
/// Back to the first step.
pub const FROM_THE_START: &str = "From the start";
/// Over the plate of a step.
pub const WORKED_ON: &str = "Worked on here";

// Practice.

/// A game.
pub const fn game(game: Game) -> &'static str {
    match game {
        Game::Find => "Find the muscle",
        Game::Cut => "Which cut",
        Game::Knife => "Which stroke",
    }
}

/// What it is about.
pub const fn game_hint(game: Game) -> &'static str {
    match game {
        Game::Find => "A name is said: tap the muscle on the plate.",
        Game::Cut => "A muscle is marked: what does it want to be?",
        Game::Knife => "A muscle shows its fibres: which stroke crosses them?",
    }
}

/// Begin.
pub const START: &str = "Start";
/// Ten of all muscles.
pub const ROUND_HINT: &str = "Ten questions, in an order of their own. What is right or wrong is explained at once; nothing is timed, and the score stays on this device.";
/// On to the next.
pub const NEXT_QUESTION: &str = "Next question";
/// Before the summary.
pub const SEE_RESULT: &str = "See how it went";
/// Once more.
pub const ANOTHER_ROUND: &str = "Ten others";
/// A lesson once more.
pub const LESSON_AGAIN: &str = "The same questions again";
/// Away from the round.
pub const LEAVE_ROUND: &str = "Leave";
/// The places as a list.
pub const BY_WORDS: &str = "Or choose the place in words";
/// First choice of it.
pub const WHERE_IS_IT: &str = "Where is it?";
/// On the plate, before an answer.
pub const TAP_ANSWER: &str = "Tap it on the plate.";
/// On a phone, on the whole animal.
pub const TAP_CLOSER: &str = "Tap once to come closer, once more to answer.";
/// The strokes.
pub const STROKES: &str = "Strokes";
/// Their letters.
pub const STROKE_LETTERS: [&str; 3] = ["A", "B", "C"];
/// Over the score.
pub const SCORE: &str = "So far on this device";
/// Nothing yet.
pub const NO_SCORE: &str = "Nothing has been answered on this device yet.";
/// Take it away.
pub const FORGET_SCORE: &str = "Forget the score";
/// What to look at again.
pub const LOOK_AGAIN: &str = "Worth another look";
/// Nothing to look at again.
pub const ALL_KNOWN: &str = "You know them all.";

/// "Question 3 of 10".
pub fn question_of(at: usize, of: usize) -> String {
    format!("Question {at} of {of}")
}

/// What is asked.
pub fn asked(game: Game, muscle: Muscle) -> String {
    let name = names::muscle(muscle);
    match game {
        Game::Find => format!("Where is the {}?", name.to_ascii_lowercase()),
        Game::Cut => format!("{name}: what does it want to be?"),
        Game::Knife => format!("{name}: which stroke crosses the grain?"),
    }
}

/// The muscle was found.
pub fn found(muscle: Muscle) -> String {
    format!("Yes, that is the {}: {}.", names::muscle(muscle).to_ascii_lowercase(), super::place(muscle))
}

/// It was another.
pub fn found_other(tapped: Muscle, asked: Muscle) -> String {
    format!(
        "That is the {}. The {} is marked now: {}.",
        names::muscle(tapped).to_ascii_lowercase(),
        names::muscle(asked).to_ascii_lowercase(),
        super::place(asked)
    )
}

/// The usual product was named.
pub fn usual_cut(muscle: Muscle) -> String {
    format!("Yes. {}", super::wants(muscle))
}

/// A product that works, too.
pub fn works_too(product: Product, muscle: Muscle, mind: Option<&str>) -> String {
    let mind = mind.map(|mind| format!(" ({mind})")).unwrap_or_default();
    format!(
        "{} works, too{mind}. Its usual use: {}",
        names::product(product),
        words::lower(super::wants(muscle))
    )
}

/// A product that does not.
pub fn poor_cut(product: Product, muscle: Muscle, reason: &str) -> String {
    format!(
        "Not {}: {reason}. Better: {}",
        sentences::product_in_sentence(product),
        words::lower(super::wants(muscle))
    )
}

/// The right stroke.
pub fn right_stroke(muscle: Muscle) -> String {
    format!("Yes, square across: that makes the fibres short. {}", super::fibres(muscle))
}

/// Another stroke.
pub fn wrong_stroke(along: bool, right: &str, muscle: Muscle) -> String {
    let so = if along {
        "That runs along the fibres and leaves them long and stringy"
    } else {
        "That crosses them aslant and leaves them half as long again"
    };
    format!("{so}. {right} is square across. {}", super::fibres(muscle))
}

/// "8 of 10 right, 1 that works, too".
pub fn result(right: usize, too: usize, of: usize) -> String {
    match too {
        0 => format!("{right} of {of} right"),
        _ => format!("{right} of {of} right, and {too} that would work, too"),
    }
}

/// A place in words, for the plate.
pub fn place_name(muscle: Muscle) -> String {
    words::upper(super::place(muscle))
}

/// The picture of a question.
pub fn stroke_picture(muscle: Muscle) -> String {
    format!("{} with its fibres and three strokes of the knife", names::muscle(muscle))
}

/// How a stroke lies: level, upright, rising, falling.
pub const STROKE_LIES: [&str; 4] = ["level", "upright", "rising to the right", "falling to the right"];

/// A muscle on one side of the animal.
pub fn on_side(name: &str, side: Side) -> String {
    format!("{name}, {}", names::side(side).to_ascii_lowercase())
}

/// "Stroke A: upright".
pub fn stroke(letter: &str, lies: &str) -> String {
    format!("{letter}: {lies}")
}

// The teacher's link.

/// The card.
pub const FOR_A_CLASS: &str = "For a class: make a lesson";
/// What it is for.
pub const CLASS_LESSON_HINT: &str = "Tick muscles and games. Whoever opens the link is asked the same questions in the same order. Scores stay on each device: you see none of them.";
/// Games.
pub const GAMES: &str = "Games";
/// The side.
pub const SEEN_FROM: &str = "Seen from";
/// Wherever.
pub const ANY_SIDE: &str = "Wherever it shows best";
/// Shuffle.
pub const ORDER: &str = "Order of the questions";
/// Less and more.
pub const EARLIER_ORDER: &str = "the one before";
/// See above.
pub const NEXT_ORDER: &str = "another";
/// All ticks of a region.
pub const TICK_ALL: &str = "All";
/// None.
pub const TICK_NONE: &str = "None";
/// The link.
pub const LESSON_LINK: &str = "Link of the lesson";
/// Copy it.
pub const COPY_LESSON: &str = "Copy the lesson's link";
/// Look at it.
pub const OPEN_HERE: &str = "Open it here";
/// Sheets.
pub const LESSON_SHEETS: &str = "Worksheet and key of it";
/// The code.
pub const LESSON_CODE_ALT: &str = "The link of the lesson as a code to photograph";
/// It is on the clipboard.
pub const LESSON_COPIED: &str = "Copied. Send it to your class, or show them the code.";
/// Above a lesson that was opened.
pub const LESSON: &str = "Lesson";
/// Leave the lesson.
pub const CLOSE_LESSON: &str = "Leave the lesson";
/// The pages on paper.
pub const FIELD_GUIDE: &str = "Field guide";
/// Prints the field guide.
pub const PRINT_GUIDE: &str = "Print the field guide of it";

/// "12 questions about 6 muscles: Find the muscle, Which cut."
pub fn lesson_line(questions: usize, muscles: usize, games: &str, side: Option<View>) -> String {
    let side = side.map(|side| format!(", {}", names::view(side).to_ascii_lowercase())).unwrap_or_default();
    let muscle = if muscles == 1 { "muscle" } else { "muscles" };
    let question = if questions == 1 { "question" } else { "questions" };
    format!("{questions} {question} about {muscles} {muscle}{side}: {games}.")
}

/// Why there is no lesson yet.
pub fn lesson_trouble(error: LessonError) -> String {
    match error {
        LessonError::NoMuscle => "Tick at least one muscle.".into(),
        LessonError::NoGame => "Tick at least one game.".into(),
        LessonError::NothingToAsk => {
            "These muscles have no one grain to cut across. Tick another muscle or another game.".into()
        }
        LessonError::NotSeen(muscle) => {
            format!("{} is not seen from there. Untick it, or choose another side.", names::muscle(muscle))
        }
    }
}

/// Why the link of a lesson was not opened.
pub fn lesson_error(error: LinkError) -> &'static str {
    match error {
        LinkError::Newer => {
            "This lesson was made by a later version. Reload the page to update it, then open the link again."
        }
        LinkError::CutShort | LinkError::Empty => {
            "The end of this lesson's link is missing. Copy all of it and open it again."
        }
        LinkError::TooLong
        | LinkError::Unknown
        | LinkError::Character
        | LinkError::Mistyped
        | LinkError::Impossible
        | LinkError::Lesson => {
            "This lesson's link was mistyped or changed on the way. Ask your teacher for it again."
        }
    }
}
/// What can be done all the same.
pub const WITHOUT_LESSON: &str = "You can practise without it: choose a game below.";

// Words.

/// Search.
pub const FIND_WORD: &str = "Find a word";
/// Jump to a letter.
pub const LETTERS: &str = "Letters";
/// Nothing fits.
pub fn no_word(typed: &str) -> String {
    format!("No word here has \u{201c}{typed}\u{201d} in it. Try less of it.")
}
/// How many.
pub fn words_found(count: usize) -> String {
    if count == 1 { "1 word".into() } else { format!("{count} words") }
}

// Sources.

/// What the page of sources is.
pub const SOURCES_HINT: &str =
    "Every source of the planner: what kind it is, which figures rest on it, and how good those are.";
/// What is our own.
pub const JUDGEMENT_HINT: &str = "What is marked as judgement is ours: nobody measured it for us. The shares of the muscles are of that kind, and everything that counts packages rests on them.";
/// What the letters mean.
pub const GRADES: &str = "Grades";
/// A source without a row of its own.
pub const READ_BESIDE: &str = "Read beside the others, to set or check their figures";
/// The judgement mark.
pub const OURS: &str = "Our judgement";

/// What rests on a source.
pub const fn rests(rests: crate::views::sources::Rests) -> &'static str {
    use crate::views::sources::Rests;
    match rests {
        Rests::Shares => "Each muscle's share, size, tenderness and silverskin",
        Rests::Lessons => "Why a muscle is tender or tough",
        Rests::Yields => "What is left at each weighing",
        Rests::Weights => "Typical weights",
        Rests::Girth => "Weight from chest girth",
        Rests::Shifts => "What sex, age and season change",
        Rests::Losses => "Losses to shot, drying and bone",
        Rests::Portions => "How much a person eats",
        Rests::Keeping => "Months in the freezer",
        Rests::Holding => "Days in the refrigerator",
        Rests::Cooking => "Cooking temperature and loss",
        Rests::Thawing => "Thawing times",
        Rests::Room => "Room and daily load of a freezer",
        Rests::Heat => "Freezing times",
        Rests::Fat => "Fat of meat and mixes",
        Rests::Grinder => "Grinder and its cold",
        Rests::Wrap => "Paper, bags and rolls",
        Rests::Labels => "Label sheets",
        Rests::Scale => "What the scale teaches",
    }
}

/// "Months in the freezer (A)".
pub fn rests_on(rests: &str, grades: &str) -> String {
    format!("{rests} ({grades})")
}
