//! The words of the trade, and the product's own, in the order of the alphabet.

/// Each word with what it means.
pub const GLOSSARY: [(&str, &str); 62] = [
    (
        "Ageing",
        "Letting meat hang cold for some days, so that it gets more tender. Not for meat that will be ground.",
    ),
    (
        "Backstrap",
        "The long muscle beside the spine, one each side: the outer loin. With the tenderloin the best of the deer.",
    ),
    ("Batch", "What is ground and mixed at one time: as much as the mixing tub takes."),
    (
        "Best by",
        "The day up to which frozen meat tastes as it should. It is about taste; safety depends on staying frozen.",
    ),
    (
        "Blade",
        "The shoulder blade: a flat bone with a ridge on its outer face. No joint ties it to the chest.",
    ),
    ("Boneless", "Off the bone. Boneless weight is what is left when every bone has been taken out."),
    ("Braise", "To cook slowly in a little liquid under a lid, until gristle turns to jelly."),
    ("Brisket", "The breast between the fore legs."),
    (
        "Butcher wrap",
        "Paper folded round the meat twice. The drugstore wrap goes round one and a half times.",
    ),
    ("Case, likely", "Every figure at its likeliest value. Ranges say how far off it may be."),
    ("Chop", "A slice of the loin, thinner than a steak. Without bone here."),
    (
        "Chronic wasting disease",
        "A deadly disease of deer, CWD for short. Where your agency asks or advises it, have the animal tested before anyone eats of it.",
    ),
    ("Cross-cut", "A slice straight across a leg or a rope of muscle."),
    (
        "Cure",
        "Salting with nitrite. The wrong dose makes people ill: follow a tested recipe and the packet. This planner computes none.",
    ),
    ("Debone", "To take the meat off the bones."),
    (
        "Discard",
        "What is thrown away: dirty, dried or bloodshot meat, and all around the wound. It is never ground.",
    ),
    ("Drying", "What meat loses by hanging: water, and a rind that is trimmed off."),
    ("Fibre", "The thread that muscle is made of. Many side by side are the grain."),
    ("Field-dressed", "With the guts out; head, hide and legs still on, or the legs off."),
    ("Flank", "The soft wall of the belly behind the ribs."),
    ("Freezer burn", "Dry grey spots where air got at frozen meat. It is safe and tastes stale."),
    ("Grade", "How good a figure is, from A, measured on many animals, to D, memory or judgement."),
    (
        "Grain",
        "The way the fibres of a muscle run. Cut across it and the fibres in each bite are short; cut along it and they are long and stringy.",
    ),
    ("Grind", "Meat put through the grinder: for burgers, sausage and sauces."),
    (
        "Gristle",
        "What holds muscle together and does not chew: sheets, films and cords. Slow wet heat softens it.",
    ),
    ("Hanging weight", "The weight of the animal as it hangs: skinned, head and lower legs off."),
    ("Haunch", "The hind leg with the rump."),
    ("Heel", "The upper part of the hind shank, tucked in between the rounds."),
    ("Hock", "The joint that points backward in the middle of the hind leg: an animal's ankle."),
    ("Kerf", "What a cut itself takes away. A knife takes next to nothing, a saw some millimetres."),
    ("Knife line", "A line on the plate where the knife goes, true to scale."),
    (
        "Knuckle",
        "The ball of four muscles on the front of the thigh; also sirloin tip. Not the joint of that name.",
    ),
    ("Live weight", "The weight of the whole animal before anything is taken off."),
    ("Loin", "The back between ribs and hip; as meat, the backstrap with the tenderloin."),
    ("Marinate", "To lay meat in oil, wine, vinegar or the like before cooking, in the refrigerator."),
    ("Package", "What is wrapped, labelled and frozen as one."),
    ("Partner", "Who shares the meat."),
    (
        "Pearson's square",
        "A way to find how much fat to add to lean meat so that the mix has the fat you want.",
    ),
    ("Pin bone", "The point of the pelvis beside the tail."),
    ("Plate", "The drawing of the animal, whose fill is the plan. Also the disc with holes in a grinder."),
    ("Pot roast", "A roast that is braised."),
    ("Range", "Low to high: eight of ten animals like yours end up inside it."),
    ("Roast", "A large piece cooked whole and carved."),
    ("Round", "The muscles of the thigh: top round inside, bottom round outside, eye of round behind."),
    ("Rut", "The mating season. Bucks have thick necks then, and eat little."),
    (
        "Seam",
        "The line where two muscles lie against each other. Following it with fingers and knife tip parts them without cutting meat.",
    ),
    ("Shank", "The lower leg: hind shank below the knee, fore shank below the elbow."),
    (
        "Share",
        "The part of all the meat that one muscle is. An estimate: no table of deer muscle weights was found.",
    ),
    (
        "Silverskin",
        "The tough bright sheet on a muscle. It does not soften in the pan, so it comes off: knife under it, edge tilted up.",
    ),
    ("Steak", "A slice across the grain of a large muscle, cooked hot and short."),
    ("Stew", "Cubes for slow wet heat."),
    ("Stifle", "The knee of the hind leg, high up at the belly."),
    (
        "Table card",
        "The page that stays with you at the table: one muscle after another, what it becomes, and a box for its weight.",
    ),
    ("Tag", "What the law ties to an animal. Keep it with the meat as long as your rules say."),
    ("Take-home", "All the meat that ends up in packages."),
    ("Tally", "The count of packages and weights."),
    ("Tenderloin", "The small muscle inside the body under the loin: the tenderest of all."),
    (
        "Tendon",
        "The cord by which a muscle pulls a bone. It clogs the grinder; hours of simmering soften it.",
    ),
    ("Trim", "Ends, edges and scraps. Clean trim goes to the tub."),
    ("Tub", "Where trim is gathered on its way to the grinder."),
    ("Withers", "The highest point of the back, over the shoulder blades."),
    (
        "Work order",
        "One page for whoever cuts: every muscle, what it becomes, and how many packages to expect.",
    ),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_words_stand_in_the_order_of_the_alphabet_each_once() {
        let words = GLOSSARY.map(|(word, _)| word.to_lowercase());
        assert!(words.is_sorted_by(|one, other| one < other), "{words:?}");
        for (word, says) in GLOSSARY {
            assert!(says.ends_with('.') && says.len() < 200, "{word}: {says}");
        }
    }

    /// The words of the trade and of the planner that it speaks in.
    #[test]
    fn every_word_that_is_used_is_there() {
        for word in [
            "Roast",
            "Steak",
            "Chop",
            "Stew",
            "Grind",
            "Trim",
            "Silverskin",
            "Hanging weight",
            "Field-dressed",
            "Backstrap",
            "Knuckle",
            "Work order",
            "Plate",
            "Knife line",
            "Tally",
            "Table card",
            "Tub",
            "Kerf",
            "Grain",
            "Pearson's square",
        ] {
            assert!(GLOSSARY.iter().any(|(other, _)| *other == word), "{word}");
        }
    }
}
