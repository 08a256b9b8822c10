//! Words of the fourth page: its parts, comparing, the first deer, practice, the teacher's link, sources.

use hindsaddle_model::anatomy::{Muscle, Side, View};
use hindsaddle_model::lesson::{Game, LessonError};
use hindsaddle_model::link::LinkError;
use hindsaddle_model::product::Product;
use hindsaddle_model::tables;

use super::super::words;
use super::{names, sentences};

/// Parts of the page.
pub const MUSCLES: &str = "Músculos";
/// See above.
pub const FIRST_DEER: &str = "Primer venado";
/// See above.
pub const PRACTICE: &str = "Práctica";
/// See above.
pub const WORDS: &str = "Palabras";
/// See above.
pub const SOURCES: &str = "Fuentes";

// Muscles.

/// The list.
pub const WHICH_MUSCLE: &str = "Músculo";
/// Before one is chosen.
pub const NO_MUSCLE_YET: &str = "Toca un músculo del venado, o elige uno en la lista, para leer sobre él.";
/// The first choice of a list.
pub const CHOOSE_MUSCLE: &str = "Elige un músculo";
/// Compare with.
pub const COMPARE_WITH: &str = "Comparar con";
/// Nothing to compare with.
pub const COMPARE_NONE: &str = "Nada";
/// Heads of what is said of a muscle: its life, why it is tender, silverskin, fibres, knife, becomes.
pub const ABOUT_HEADS: [&str; 6] =
    ["En vida", "Tierno o duro", "Telilla", "La fibra", "El cuchillo", "Lo que conviene"];
/// The head of why not what else.
pub const WHY_NOT_HEAD: &str = "Por qué no lo demás";
/// The head of a muscle's part of all the meat.
pub const SHARE_HEAD: &str = "Parte de la carne";
/// Rows of the comparison.
pub const COMPARED: [&str; 6] = ["Suavidad", "Telilla", "La fibra", SHARE_HEAD, "Lo que conviene", "En vida"];
/// Over the sources of a muscle.
pub const READ_FOR_THIS: &str = "Leído para esto";
/// How sure that is.
pub const LESSON_NOTE: &str = "Lo que hace un músculo y cómo está puesto es anatomía general de animales de pezuña, casi todo de memoria. Suavidad y telilla son criterio nuestro, con ayuda de los estudios que aquí se nombran, la mayoría de res. Las partes son estimaciones.";

/// "Muscle: Knuckle".
pub fn about_muscle(muscle: Muscle) -> String {
    format!("Sobre {}", names::with_article(muscle))
}

/// What the plate is here.
pub fn plate_of(species: &str, marked: Option<&str>) -> String {
    match marked {
        Some(muscle) => format!("La lámina: {species}; marcado: {muscle}"),
        None => format!("La lámina: {species}"),
    }
}

/// "Steak: …" with its reason.
pub fn why_not(product: Product, reason: &str) -> String {
    format!("{}: {reason}.", names::product(product))
}

/// "an estimate: about 11 %, 9.8 to 12.2 in 8 of 10 animals".
pub fn share(likely: &str, low: &str, high: &str) -> String {
    format!("una estimación: cerca de {likely} %, de {low} a {high} en 8 de 10 animales")
}

/// "4 of 5: heavy".
pub fn silver_score(score: u8) -> String {
    let word = match score {
        0 | 1 => "casi nada",
        2 => "poca",
        3 => "algo",
        4 => "mucha",
        _ => "muchísima",
    };
    format!("{score} de 5, {word}")
}

/// "4 of 5: tender".
pub fn tender_score(score: u8) -> String {
    let word = match score {
        0 | 1 => "duro",
        2 => "algo duro",
        3 => "medio",
        4 => "tierno",
        _ => "muy tierno",
    };
    format!("{score} de 5, {word}")
}

/// What sets two muscles apart, in one sentence.
pub fn apart(one: Muscle, other: Muscle) -> String {
    if let Some(known) = super::mistaken(one, other) {
        return known.to_owned();
    }
    let (a, b) = (tables::muscle(one), tables::muscle(other));
    let name = names::with_article;
    let (more, less) = if a.tenderness >= b.tenderness { (a, b) } else { (b, a) };
    let by = match more.tenderness - less.tenderness {
        0 => format!("{} y {} tienen casi la misma suavidad", words::upper(&name(one)), name(other)),
        difference => {
            let much = match difference {
                1 => "un poco más",
                2 => "claramente más",
                _ => "mucho más",
            };
            let (is, tender) = match (names::is_plural(more.muscle), words::upper(&name(more.muscle))) {
                (false, named) if named.starts_with("La ") => ("es", "tierna"),
                (false, _) => ("es", "tierno"),
                (true, named) if named.starts_with("Las ") => ("son", "tiernas"),
                (true, _) => ("son", "tiernos"),
            };
            format!("{} {is} {much} {tender} que {}", words::upper(&name(more.muscle)), name(less.muscle))
        }
    };
    let use_of = |row: &tables::MuscleRow| sentences::product_in_sentence(row.usual);
    if a.usual == b.usual {
        let (large, small) = if a.share >= b.share { (a, b) } else { (b, a) };
        if large.share > small.share * 1.5 {
            return format!(
                "{by}; en los dos casos lo usual es hacer {}, y hay más carne en {}.",
                use_of(a),
                name(large.muscle)
            );
        }
        return format!("{by}, y en los dos casos lo usual es hacer {}.", use_of(a));
    }
    format!(
        "{by}: para {} lo usual es hacer {}, y para {}, {}.",
        name(more.muscle),
        use_of(more),
        name(less.muscle),
        use_of(less)
    )
}

/// A picture of two muscles.
pub fn two_muscles(one: Muscle, other: Muscle) -> String {
    format!("La lámina: 1 {}, 2 {}", names::muscle(one), names::muscle(other))
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
        name: "Cuélgalo frío y limpio",
        doing: "Sin piel, cuelga a menos de 40 °F (4 °C). Quita los pelos, y recorta y tira lo sucio o ensangrentado; no laves la carne.",
        watch: "Deja el cintillo con la carne. Si se pide o aconseja una prueba de enfermedad, hazla ahora.",
    },
    WalkWords {
        name: "Saca los filetes y la arrachera",
        doing: "Mete la mano por dentro, bajo el espinazo, y suelta los dos filetes con la punta del cuchillo. Saca la arrachera si está limpia.",
        watch: "Están al descubierto y se secan primero, por eso van primero. Lleva el cuchillo plano contra el hueso.",
    },
    WalkWords {
        name: "Quita las paletas",
        doing: "Aparta la pata delantera del pecho y corta entre omóplato y costillas. Ninguna articulación la sujeta: sale entera.",
        watch: "La tapa delgada sobre el omóplato sale con ella o se queda en las costillas; de todos modos es recorte.",
    },
    WalkWords {
        name: "Saca los lomos",
        doing: "Corta junto al espinazo de cadera a cuello, luego hacia dentro por las costillas, y saca la tira enrollándola, en una pieza. Luego la otra.",
        watch: "Deja que el filo raspe el hueso: lo que se queda ahí es la mejor carne del venado.",
    },
    WalkWords {
        name: "Limpia pescuezo, pecho, costillas y costado",
        doing: "Deshuesa el pescuezo en un rollo o dos mitades, y saca el diezmillo donde estaba el omóplato. Quita pecho y costado en telas, y las tiras entre las costillas.",
        watch: "Quita con el cuchillo todo lo que rodea la herida y lo que tocaron las tripas. Se tira, nunca va a la tina.",
    },
    WalkWords {
        name: "Quita las piernas",
        doing: "Corta junto a la pelvis hasta la articulación de la cadera, ábrela con la punta del cuchillo y levanta la pierna.",
        watch: "Una pierna pesa, y cae al cortar el último tendón: ten una mano o una mesa debajo.",
    },
    WalkWords {
        name: "Separa las piernas por sus costuras",
        doing: "Sigue las costuras plateadas con dedos y punta de cuchillo. Cara, contracara, cuete, bola y aguayón se separan por ellas.",
        watch: "Si estás cortando carne, te saliste de la costura. El chamorro sale al final.",
    },
    WalkWords {
        name: "Corta, por su orden",
        doing: "Quita la telilla, busca la fibra y corta al través. Un músculo tras otro:",
        watch: "Lo que espera vuelve al frío. La ficha de mesa de este programa lleva todos los músculos en este orden.",
    },
    WalkWords {
        name: "Llena la tina, y muele al final",
        doing: "Puntas, telas y trozos van cayendo a la tina. Cuando lo demás esté envuelto, muele lo de la tina, a punto de congelarse.",
        watch: "Quita antes el tendón y la grasa dura: tapan el disco y saben mal.",
    },
    WalkWords {
        name: "Envuelve, etiqueta, congela",
        doing: "Saca el aire, envuelve apretado y escribe en cada paquete qué es, su peso, el día y el animal. Congela en una capa.",
        watch: "Congela pocas libras al día, contra las paredes frías; apila los paquetes cuando estén duros. Esa es la caja etiquetada.",
    },
];

/// What the steps rest on.
pub const WALK_NOTE: &str = "Así se suele hacer, sin fuente; el orden en la mesa es el de este programa.";
/// The last step is done.
pub const WALK_END: &str =
    "Ese es todo el camino. Ahora planea tu venado: la página del plan cuenta los paquetes antes de cortar.";
/// The picture of a step.
pub fn step_picture(view: &str, muscles: &[&str]) -> String {
    if muscles.is_empty() {
        return format!("La lámina, {}", view.to_ascii_lowercase());
    }
    format!("La lámina, {}; marcado: {}", view.to_ascii_lowercase(), muscles.join(", "))
}
/// Back to the first step.
pub const FROM_THE_START: &str = "Desde el principio";
/// Over the plate of a step.
pub const WORKED_ON: &str = "Aquí se trabaja";

// Practice.

/// A game.
pub const fn game(game: Game) -> &'static str {
    match game {
        Game::Find => "Encuentra el músculo",
        Game::Cut => "Qué corte",
        Game::Knife => "Qué tajo",
    }
}

/// What it is about.
pub const fn game_hint(game: Game) -> &'static str {
    match game {
        Game::Find => "Se dice un nombre: toca el músculo en la lámina.",
        Game::Cut => "Se marca un músculo: ¿qué corte conviene?",
        Game::Knife => "Un músculo muestra sus fibras: ¿qué tajo las cruza?",
    }
}

/// Begin.
pub const START: &str = "Empezar";
/// Ten of all muscles.
pub const ROUND_HINT: &str = "Diez preguntas, en su propio orden. Cada acierto o error se explica al momento; nada va contra reloj, y la puntuación queda en este aparato.";
/// On to the next.
pub const NEXT_QUESTION: &str = "Siguiente pregunta";
/// Before the summary.
pub const SEE_RESULT: &str = "Ver cómo fue";
/// Once more.
pub const ANOTHER_ROUND: &str = "Otras diez";
/// A lesson once more.
pub const LESSON_AGAIN: &str = "Las mismas preguntas otra vez";
/// Away from the round.
pub const LEAVE_ROUND: &str = "Salir";
/// The places as a list.
pub const BY_WORDS: &str = "O elige el lugar con palabras";
/// First choice of it.
pub const WHERE_IS_IT: &str = "¿Dónde está?";
/// On the plate, before an answer.
pub const TAP_ANSWER: &str = "Tócalo en la lámina.";
/// On a phone, on the whole animal.
pub const TAP_CLOSER: &str = "Toca una vez para acercarte, otra para responder.";
/// The strokes.
pub const STROKES: &str = "Tajos";
/// Their letters.
pub const STROKE_LETTERS: [&str; 3] = ["A", "B", "C"];
/// Over the score.
pub const SCORE: &str = "Hasta ahora en este aparato";
/// Nothing yet.
pub const NO_SCORE: &str = "Todavía no se ha respondido nada en este aparato.";
/// Take it away.
pub const FORGET_SCORE: &str = "Olvidar la puntuación";
/// What to look at again.
pub const LOOK_AGAIN: &str = "Para repasar";
/// Nothing to look at again.
pub const ALL_KNOWN: &str = "Te los sabes todos.";

/// "Question 3 of 10".
pub fn question_of(at: usize, of: usize) -> String {
    format!("Pregunta {at} de {of}")
}

/// What is asked.
pub fn asked(game: Game, muscle: Muscle) -> String {
    let name = names::muscle(muscle);
    match game {
        Game::Find => {
            let is = if names::is_plural(muscle) { "están" } else { "está" };
            format!("¿Dónde {is} {}?", names::with_article(muscle))
        }
        Game::Cut => format!("{name}: ¿qué corte conviene?"),
        Game::Knife => format!("{name}: ¿qué tajo cruza la fibra?"),
    }
}

/// The muscle was found.
pub fn found(muscle: Muscle) -> String {
    format!("Sí, {}: {}.", are(muscle), super::place(muscle))
}

/// It was another.
pub fn found_other(tapped: Muscle, asked: Muscle) -> String {
    format!(
        "No, {}. Ahora la marca está en {}: {}.",
        are(tapped),
        names::with_article(asked),
        super::place(asked)
    )
}

fn are(muscle: Muscle) -> String {
    let are = if names::is_plural(muscle) { "son" } else { "es" };
    format!("{are} {}", names::with_article(muscle))
}

/// The usual product was named.
pub fn usual_cut(muscle: Muscle) -> String {
    format!("Sí. {}", super::wants(muscle))
}

/// A product that works, too.
pub fn works_too(product: Product, muscle: Muscle, mind: Option<&str>) -> String {
    let mind = mind.map(|mind| format!(" ({mind})")).unwrap_or_default();
    format!(
        "{} también sirve{mind}. Su uso normal: {}",
        names::product(product),
        words::lower(super::wants(muscle))
    )
}

/// A product that does not.
pub fn poor_cut(product: Product, muscle: Muscle, reason: &str) -> String {
    format!(
        "Para {} no: {reason}. Mejor: {}",
        sentences::product_in_sentence(product),
        words::lower(super::wants(muscle))
    )
}

/// The right stroke.
pub fn right_stroke(muscle: Muscle) -> String {
    format!("Sí, a escuadra: así las fibras quedan cortas. {}", super::fibres(muscle))
}

/// Another stroke.
pub fn wrong_stroke(along: bool, right: &str, muscle: Muscle) -> String {
    let so = if along {
        "Eso va a lo largo de las fibras y las deja largas y hebrosas"
    } else {
        "Eso las cruza en diagonal y las deja un 50 % más largas"
    };
    format!("{so}. {right} va a escuadra. {}", super::fibres(muscle))
}

/// "8 of 10 right, 1 that works, too".
pub fn result(right: usize, too: usize, of: usize) -> String {
    match too {
        0 => format!("{right} de {of} bien"),
        1 => format!("{right} de {of} bien, y 1 que también serviría"),
        _ => format!("{right} de {of} bien, y {too} que también servirían"),
    }
}

/// A place in words, for the plate.
pub fn place_name(muscle: Muscle) -> String {
    words::upper(super::place(muscle))
}

/// The picture of a question.
pub fn stroke_picture(muscle: Muscle) -> String {
    format!("{} con sus fibras y tres tajos de cuchillo", names::muscle(muscle))
}

/// How a stroke lies: level, upright, rising, falling.
pub const STROKE_LIES: [&str; 4] = ["horizontal", "vertical", "sube a la derecha", "baja a la derecha"];

/// A muscle on one side of the animal.
pub fn on_side(name: &str, side: Side) -> String {
    format!("{name}, lado {}", names::side(side).to_ascii_lowercase())
}

/// "Stroke A: upright".
pub fn stroke(letter: &str, lies: &str) -> String {
    format!("{letter}: {lies}")
}

// The teacher's link.

/// The card.
pub const FOR_A_CLASS: &str = "Para una clase: haz una lección";
/// What it is for.
pub const CLASS_LESSON_HINT: &str = "Marca músculos y juegos. A quien abra el enlace se le hacen las mismas preguntas en el mismo orden. La puntuación queda en cada aparato: tú no ves ninguna.";
/// Games.
pub const GAMES: &str = "Juegos";
/// The side.
pub const SEEN_FROM: &str = "Visto desde";
/// Wherever.
pub const ANY_SIDE: &str = "Donde mejor se vea";
/// Shuffle.
pub const ORDER: &str = "Orden de las preguntas";
/// Less and more.
pub const EARLIER_ORDER: &str = "el anterior";
/// See above.
pub const NEXT_ORDER: &str = "otro";
/// All ticks of a region.
pub const TICK_ALL: &str = "Todos";
/// None.
pub const TICK_NONE: &str = "Ninguno";
/// The link.
pub const LESSON_LINK: &str = "Enlace de la lección";
/// Copy it.
pub const COPY_LESSON: &str = "Copiar el enlace de la lección";
/// Look at it.
pub const OPEN_HERE: &str = "Abrirla aquí";
/// Sheets.
pub const LESSON_SHEETS: &str = "Hoja de trabajo y respuestas de la lección";
/// The code.
pub const LESSON_CODE_ALT: &str = "El enlace de la lección como código para fotografiar";
/// It is on the clipboard.
pub const LESSON_COPIED: &str = "Copiado. Envíalo a tu clase, o muéstrales el código.";
/// Above a lesson that was opened.
pub const LESSON: &str = "Lección";
/// Leave the lesson.
pub const CLOSE_LESSON: &str = "Salir de la lección";
/// The pages on paper.
pub const FIELD_GUIDE: &str = "Guía de campo";
/// Prints the field guide.
pub const PRINT_GUIDE: &str = "Imprimir la guía de campo de la lección";

/// "12 questions about 6 muscles: Find the muscle, Which cut."
pub fn lesson_line(questions: usize, muscles: usize, games: &str, side: Option<View>) -> String {
    let side = side.map(|side| format!(", {}", names::view(side).to_ascii_lowercase())).unwrap_or_default();
    let muscle = if muscles == 1 { "músculo" } else { "músculos" };
    let question = if questions == 1 { "pregunta" } else { "preguntas" };
    format!("{questions} {question} sobre {muscles} {muscle}{side}: {games}.")
}

/// Why there is no lesson yet.
pub fn lesson_trouble(error: LessonError) -> String {
    match error {
        LessonError::NoMuscle => "Marca al menos un músculo.".into(),
        LessonError::NoGame => "Marca al menos un juego.".into(),
        LessonError::NothingToAsk => {
            "La fibra de estos músculos no va en una sola dirección. Marca otro músculo u otro juego.".into()
        }
        LessonError::NotSeen(muscle) => {
            format!(
                "Desde ahí no se ve este músculo: {}. Quita su marca, o elige otro lado.",
                names::muscle(muscle)
            )
        }
    }
}

/// Why the link of a lesson was not opened.
pub fn lesson_error(error: LinkError) -> &'static str {
    match error {
        LinkError::Newer => {
            "Esta lección es de una versión posterior. Vuelve a cargar la página para actualizarla y abre otra vez el enlace."
        }
        LinkError::CutShort | LinkError::Empty => {
            "Al enlace de esta lección le falta el final. Cópialo entero y ábrelo otra vez."
        }
        LinkError::TooLong
        | LinkError::Unknown
        | LinkError::Character
        | LinkError::Mistyped
        | LinkError::Impossible
        | LinkError::Lesson => {
            "El enlace de esta lección está mal escrito o cambió en el camino. Pídeselo otra vez a tu maestro."
        }
    }
}
/// What can be done all the same.
pub const WITHOUT_LESSON: &str = "Puedes practicar sin ella: elige un juego abajo.";

// Words.

/// Search.
pub const FIND_WORD: &str = "Buscar una palabra";
/// Jump to a letter.
pub const LETTERS: &str = "Letras";
/// Nothing fits.
pub fn no_word(typed: &str) -> String {
    format!("Ninguna palabra lleva «{typed}». Prueba con menos letras.")
}
/// How many.
pub fn words_found(count: usize) -> String {
    if count == 1 { "1 palabra".into() } else { format!("{count} palabras") }
}

// Sources.

/// What the page of sources is.
pub const SOURCES_HINT: &str = "Todas las fuentes del programa: de qué clase es cada una, qué cifras se apoyan en ella y qué tan buenas son.";
/// What is our own.
pub const JUDGEMENT_HINT: &str = "Lo marcado como criterio es nuestro: nadie lo midió para nosotros. Las partes de los músculos son de esa clase, y en ellas se apoya todo lo que cuenta paquetes.";
/// What the letters mean.
pub const GRADES: &str = "Grados";
/// A source without a row of its own.
pub const READ_BESIDE: &str = "Leída junto a las demás, para fijar o revisar sus cifras";
/// The judgement mark.
pub const OURS: &str = "Criterio nuestro";

/// What rests on a source.
pub const fn rests(rests: crate::views::sources::Rests) -> &'static str {
    use crate::views::sources::Rests;
    match rests {
        Rests::Shares => "Parte, tamaño, suavidad y telilla de cada músculo",
        Rests::Lessons => "Por qué un músculo es tierno o duro",
        Rests::Yields => "Lo que queda en cada pesada",
        Rests::Weights => "Pesos típicos",
        Rests::Girth => "Peso por el contorno del pecho",
        Rests::Shifts => "Lo que cambian sexo, edad y época",
        Rests::Losses => "Pérdidas por tiro, merma y hueso",
        Rests::Portions => "Cuánto come una persona",
        Rests::Keeping => "Meses en el congelador",
        Rests::Holding => "Días en el refrigerador",
        Rests::Cooking => "Temperatura y pérdida al cocinar",
        Rests::Thawing => "Tiempos para descongelar",
        Rests::Room => "Espacio y carga diaria de un congelador",
        Rests::Heat => "Tiempos para congelar",
        Rests::Fat => "Grasa de carne y mezclas",
        Rests::Grinder => "El molino y su frío",
        Rests::Wrap => "Papel, bolsas y rollos",
        Rests::Labels => "Hojas de etiquetas",
        Rests::Scale => "Lo que enseña la báscula",
    }
}

/// "Months in the freezer (A)".
pub fn rests_on(rests: &str, grades: &str) -> String {
    format!("{rests} ({grades})")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn muscles_are_compared_in_their_gender_and_number() {
        for (one, other, said) in [
            (Muscle::Knuckle, Muscle::EyeRound, "La bola es "),
            (
                Muscle::Backstrap,
                Muscle::FlankSheets,
                "El lomo es mucho más tierno que las telas del costado: ",
            ),
            (Muscle::BackTrim, Muscle::Neck, "Los recortes del espinazo "),
        ] {
            let apart = apart(one, other);
            assert!(apart.starts_with(said), "{apart}");
        }
        assert_eq!(asked(Game::Find, Muscle::NeckStraps), "¿Dónde están las tiras del cuello?");
        assert!(found(Muscle::Knuckle).starts_with("Sí, es la bola: frente del muslo"));
    }
}
