//! Sentences: refusals, advice, notices, summaries.

use hindsaddle_model::anatomy::{Muscle, Side};
use hindsaddle_model::animal::{Age, AnimalError, Sex, Stage, Weighed};
use hindsaddle_model::estimate::Estimate;
use hindsaddle_model::forecast::{Advice, Forecast, MuscleForecast, PackRow};
use hindsaddle_model::link::LinkError;
use hindsaddle_model::plan::{Division, Plan};
use hindsaddle_model::product::{Cut, Product, RoastSize};
use hindsaddle_model::rules::{Reason, Refusal};
use hindsaddle_model::sources::{Grade, Kind};
use hindsaddle_model::units::Mass;

use super::names;
use crate::text::numbers::{self, Units};

/// Shown under every forecast: muscle shares are estimates.
pub const ESTIMATES: &str = "Es solo una ayuda para planear. Las partes de los músculos son estimaciones: no se halló ninguna tabla de pesos de músculos de venado. Los márgenes abarcan 8 de cada 10 animales como el tuyo; la barra es la cuenta probable y la línea sobre ella, el margen. Tu agencia de fauna y tu departamento de salud deciden qué está permitido y qué es seguro.";

/// Why a use is poor or impossible, or what to mind.
pub fn reason(reason: Reason) -> &'static str {
    match reason {
        Reason::NoLoinShape => "una chuleta es una rebanada del lomo, y este músculo no tiene esa forma",
        Reason::CoarseAndTough => "es el músculo más duro del muslo, de fibra gruesa",
        Reason::ToughEnds => "las dos puntas son más firmes que el centro",
        Reason::SeamsInside => {
            "sepárala antes por sus costuras: envuelve cuatro músculos de distinta suavidad"
        }
        Reason::BestPiece => "es una de las mejores piezas, y así se desperdicia",
        Reason::TendonsStayHard => "sus tendones nunca se ablandan con calor rápido",
        Reason::TendonsClog => "quita antes los tendones, que tapan el disco",
        Reason::Scraps => "salen en trozos",
        Reason::SheetInside => "saca antes la lámina de nervio del centro",
        Reason::LooksTender => "parece filete y no lo es",
        Reason::InnerTendons => "tiene dentro láminas de tendón, peores en animales viejos",
        Reason::Thin => "le falta grosor para eso",
        Reason::SmallWithTendons => "es pequeño, con tendones en las dos puntas",
        Reason::ThinSheet => "la tela tiene pocos milímetros",
        Reason::ThinRopes => "salen en cuerdas delgadas",
        Reason::Layers => "son muchas capas con telas entre ellas",
        Reason::ToughHardFat => "es duro, con una grasa dura de mal sabor",
    }
}

/// Why a change was refused, and what to do instead.
pub fn refusal(refusal: &Refusal, units: Units) -> String {
    let mass = |mass: &Mass| numbers::mass(*mass, units);
    let length = |length: &hindsaddle_model::units::Length| numbers::length(*length, units);
    match refusal {
        Refusal::Animal(error) => animal_error(error, units),
        Refusal::Impossible { muscle, product, reason: why, instead } => format!(
            "{} no {} para {}: {}. Prueba con {}.",
            names::muscle(*muscle),
            if names::is_plural(*muscle) { "sirven" } else { "sirve" },
            product_in_sentence(*product),
            reason(*why),
            product_in_sentence(*instead)
        ),
        Refusal::ThicknessOutOfRange { least, most } => {
            format!(
                "Una rebanada mide de {} a {} de grosor. Pon un grosor entre los dos.",
                length(least),
                length(most)
            )
        }
        Refusal::LongerThanMuscle { muscle, length: long } => format!(
            "{}: aquí solo mide {} de largo. Elige algo más corto o más delgado.",
            names::muscle(*muscle),
            super::around(&numbers::rough_length(*long, units))
        ),
        Refusal::RoastWeightOutOfRange { least, most } => {
            format!(
                "Un asado pesa de {} a {}. Pon un peso entre los dos, o déjalo entero.",
                mass(least),
                mass(most)
            )
        }
        Refusal::RoastLengthOutOfRange { least, most } => {
            format!(
                "Un asado mide de {} a {} de largo. Pon un largo entre los dos.",
                length(least),
                length(most)
            )
        }
        Refusal::CubeOutOfRange { least, most } => {
            format!(
                "Un cubo de guiso mide de {} a {}. Pon un tamaño entre los dos.",
                length(least),
                length(most)
            )
        }
        Refusal::PartsDoNotAddUp { total } => {
            format!("Las partes suman {total} %, no 100. Cambia una de ellas.")
        }
        Refusal::EmptyPart => "Una parte necesita al menos 1 %. Quítala o hazla mayor.".into(),
        Refusal::TooManyParts { most } => {
            format!("Un músculo tiene como mucho {most} partes. Quita una antes.")
        }
        Refusal::NoLengthToDivide { muscle } => {
            format!("{}: son trozos, sin un largo que dividir.", names::muscle(*muscle))
        }
        Refusal::PeopleOutOfRange { most } => {
            format!("Los paquetes se hacen para entre 1 y {most} personas.")
        }
        Refusal::PiecesOutOfRange { most } => format!("Un paquete lleva de 1 a {most} piezas."),
        Refusal::PackWeightOutOfRange { least, most } => {
            format!("Un paquete pesa de {} a {}.", mass(least), mass(most))
        }
        Refusal::WeighingOutOfRange { most, .. } => {
            format!("Un peso llega hasta {}. Revisa el número y su unidad.", mass(most))
        }
        Refusal::HungTooLong { most } => format!(
            "El programa calcula hasta {most} días colgado; los consejos publicados no pasan de 5 a 7 días, a 40 °F (4 °C) o menos."
        ),
        Refusal::Kitchen(error) => super::kitchen_error(error, units),
        Refusal::TooManyWounds { most } => {
            format!("Hay {most} heridas marcadas, que es el máximo. Quita una antes, o muévela.")
        }
        Refusal::Wishes(error) => super::wish_error(error),
        Refusal::Partners(error) => super::partners_error(error),
        Refusal::TooManyAnimals { most } => super::season_full(*most),
        Refusal::WoundOffThePlate => "Una herida tiene que estar en el animal. Márcala otra vez.".into(),
        Refusal::Title { most } => format!("Un título tiene como mucho {most} caracteres simples."),
    }
}

/// Why an animal was not believed, and what is expected.
pub fn animal_error(error: &AnimalError, units: Units) -> String {
    match error {
        AnimalError::NotPositive => "Pon un número mayor que cero.".into(),
        AnimalError::WeightOutOfRange { least, most } => format!(
            "No hay animal así: pesado de ese modo da de {} a {}. Revisa el número, la unidad y cómo se pesó.",
            numbers::mass(*least, units),
            numbers::mass(*most, units)
        ),
        AnimalError::NoGirthTable => {
            "No hay tabla publicada de contorno para esta especie y edad. Pésalo, o elige «Sin pesar».".into()
        }
        AnimalError::GirthOutOfRange { least, most } => format!(
            "La tabla de contorno va de {} a {} {}. Mide otra vez, o pésalo.",
            numbers::girth_field(*least, units),
            numbers::girth_field(*most, units),
            numbers::girth_unit(units)
        ),
        AnimalError::ConditionDoesNotSuit => "Esa época no va con el sexo o la edad.".into(),
    }
}

/// What is wrong with a typed weight that is no number.
pub const NOT_A_NUMBER: &str = "Pon un número, como 110 o 49.9.";

/// Why a link was not opened.
pub fn link_error(error: LinkError) -> &'static str {
    match error {
        LinkError::Empty => "Este enlace no lleva nada. Tu plan sigue aquí.",
        LinkError::TooLong => "Este enlace es demasiado largo para ser un plan. Tu plan sigue aquí.",
        LinkError::Newer => {
            "Este enlace es de una versión posterior. Vuelve a cargar la página para actualizarla y abre otra vez el enlace. Tu plan sigue aquí."
        }
        LinkError::Unknown => "Este no es un enlace de este programa. Tu plan sigue aquí.",
        LinkError::Character => {
            "Este enlace lleva un carácter que ningún plan tiene: cambió en el camino. Pídelo otra vez. Tu plan sigue aquí."
        }
        LinkError::CutShort => {
            "A este enlace le falta el final. Cópialo entero y ábrelo otra vez. Tu plan sigue aquí."
        }
        LinkError::Mistyped => {
            "Este enlace está mal escrito o cambió en el camino. Pídelo otra vez. Tu plan sigue aquí."
        }
        LinkError::Impossible => {
            "El plan de este enlace no se puede hacer. Pídelo otra vez. Tu plan sigue aquí."
        }
        LinkError::Lesson => LESSON_HERE,
    }
}

/// A lesson that was opened where plans are.
pub const LESSON_HERE: &str = "Este es el enlace de una lección, no de un plan. Tu propio plan sigue aquí.";
/// The way to it.
pub const OPEN_LESSON: &str = "Abrir la lección";

/// Why what this browser remembered was not opened.
pub fn memory_error(error: LinkError) -> &'static str {
    match error {
        LinkError::Newer => {
            "El plan que recordaba este navegador es de una versión posterior. Vuelve a cargar la página para actualizarla. Su texto queda aparte en este navegador, y la página empieza con el ejemplo."
        }
        LinkError::Empty
        | LinkError::TooLong
        | LinkError::Unknown
        | LinkError::Character
        | LinkError::CutShort
        | LinkError::Mistyped
        | LinkError::Impossible
        | LinkError::Lesson => {
            "El plan que recordaba este navegador está dañado. Abre otra vez su enlace si lo tienes. Su texto queda aparte en este navegador, y la página empieza con el ejemplo."
        }
    }
}

/// Said after a link was opened over another plan.
pub const LINK_OPENED: &str = "Este es el plan del enlace. El tuyo está guardado: lo traes de vuelta con Deshacer, o desde Deseos, Planes guardados.";
/// Back to one's own.
pub const KEEP_MINE: &str = "Seguir con el mío";
/// The plan of the link it is.
pub const OPEN_THEIRS: &str = "Abrir el suyo";
/// One's own is open, the other on the list.
pub const KEEP_BOTH: &str = "Guardar los dos";
/// Said when it is.
pub const BOTH_KEPT: &str =
    "Los dos están guardados: el tuyo está abierto, el otro está en Deseos, Planes guardados.";
/// Said when a kept plan was opened.
pub const KEPT_OPENED: &str = "Abierto. El plan que estaba abierto también queda guardado: lo traes de vuelta con Deshacer, o desde esta lista.";
/// Said when another plan was opened and the one before it could not be kept.
pub const OPENED_UNKEPT: &str = "Abierto, pero el plan que estaba abierto no se pudo guardar: la lista está llena, o este navegador no lo permite. Lo traes de vuelta con Deshacer.";
/// Said when no more plans can be kept.
pub const KEPT_FULL: &str = "Hay 60 planes guardados y no caben más. Quita uno, o guarda este como archivo.";
/// Said when storage refuses.
pub const NOT_REMEMBERED: &str =
    "Este navegador no lo recordará. El plan está todo en la dirección: guarda el enlace.";
/// Said when a newer build waits.
pub const NEWER: &str = "Hay una versión nueva. Se abrirá sola la próxima vez; tu plan queda igual.";
/// Opens it.
pub const USE_NEWER: &str = "Abrirla ya";
/// Said after copying.
pub const COPIED: &str = "Enlace copiado. Quien lo abra verá este plan y estas cifras.";
/// Said when copying failed.
pub const NOT_COPIED: &str = "El navegador no dejó copiar el enlace. Cópialo de la barra de direcciones.";

/// What could not become a product when a whole region was given to it.
pub fn skipped(refusals: &[Refusal], product: Product) -> String {
    let stayed: Vec<&str> = refusals
        .iter()
        .filter_map(|refusal| {
            if let Refusal::Impossible { muscle, .. } = refusal { Some(names::muscle(*muscle)) } else { None }
        })
        .collect();
    format!("Quedó como estaba lo que no sirve para {}: {}.", product_in_sentence(product), stayed.join(", "))
}

/// A product inside a sentence.
pub fn product_in_sentence(product: Product) -> &'static str {
    match product {
        Product::Roast => "asado",
        Product::Steak => "bistecs",
        Product::Chop => "chuletas",
        Product::Stew => "guiso",
        Product::Grind => "molida",
    }
}

/// Something worth saying of a part.
pub fn advice(advice: &Advice, units: Units) -> String {
    match advice {
        Advice::Care(why) => format!("Cuidado: {}.", reason(*why)),
        Advice::Discouraged(why) => format!("No es el mejor uso: {}.", reason(*why)),
        Advice::NothingFits => {
            "No cabe ninguna pieza de ese tamaño: todo va a la tina. Hazla más delgada.".into()
        }
        Advice::SmallRoast(each) => format!(
            "Un asado de {} se seca fácil: con menos de 1 lb (450 g), bistecs o guiso convienen más. Criterio nuestro.",
            numbers::mass(*each, units)
        ),
        Advice::SmallFace(face) => format!(
            "Bistecs chicos: una cara de unos {} cm². Guiso o asado pueden convenir más. Criterio nuestro.",
            face.to_square_cm().round() as i64
        ),
        Advice::ThinMuscle(thick) => format!(
            "Solo {} de grosor en este animal: tiras, guiso o molida convienen más. Criterio nuestro.",
            super::around(&numbers::length(*thick, units))
        ),
    }
}

/// A cut with its size: "Steak, 1 in".
pub fn cut(cut: Cut, units: Units) -> String {
    match cut {
        Cut::Roast(RoastSize::Whole) => "Asado, entero".into(),
        Cut::Roast(RoastSize::Weight(weight)) => {
            format!("Asado, {}", super::around(&numbers::mass(weight, units)))
        }
        Cut::Roast(RoastSize::Length(length)) => {
            format!("Asado, {} de largo", numbers::length(length, units))
        }
        Cut::Steak(thick) => format!("Bistec, {}", numbers::length(thick, units)),
        Cut::Chop(thick) => format!("Chuleta, {}", numbers::length(thick, units)),
        Cut::Stew(edge) => format!("Guiso, cubos de {}", numbers::length(edge, units)),
        Cut::Grind => "Molida".into(),
        Cut::Discard => names::DISCARD.into(),
    }
}

/// What the parts of a muscle of one side become, in order: "Roast, whole + Grind".
pub fn cuts(division: &Division, joiner: &str, units: Units) -> String {
    division.parts().iter().map(|part| cut(part.cut, units)).collect::<Vec<_>>().join(joiner)
}

/// What a muscle becomes, said for each side where left and right differ.
pub fn muscle_cuts(plan: &Plan, muscle: Muscle, joiner: &str, units: Units) -> String {
    let cuts = |side: Side| cuts(plan.division(muscle, side), joiner, units);
    if plan.is_even(muscle) {
        cuts(Side::Left)
    } else {
        Side::ALL.map(|side| format!("{}: {}", names::side(side), cuts(side))).join("; ")
    }
}

/// "about 43": the middle of a count, said as an estimate where it has a range.
pub fn about(count: Estimate<u32>) -> String {
    match (count.low() == count.high(), count.likely()) {
        (true, likely) => likely.to_string(),
        (false, likely @ 0..2) => format!("cerca de {likely}"),
        (false, likely) => format!("unos {likely}"),
    }
}

/// "1 package", "3 packages".
pub fn packages(count: u32) -> &'static str {
    if count == 1 { "paquete" } else { "paquetes" }
}

/// What one cut of a muscle gives: "about 40 steaks of about 2 oz: 3 packages of 14, the last with 12".
pub fn pack_row(row: &PackRow, units: Units) -> String {
    let Some(product) = row.cut.product() else { return String::new() };
    let pieces = row.pieces;
    if pieces.likely() == 0 {
        return format!("sin {}", names::pieces(product, 0));
    }
    let each = row.mass.likely() / f64::from(pieces.likely());
    let counted = match numbers::count_ends(pieces) {
        Some(ends) => {
            let about = match (product, pieces.likely()) {
                (_, 0..2) => "cerca de",
                (Product::Chop, _) => "unas",
                (Product::Roast | Product::Steak | Product::Stew | Product::Grind, _) => "unos",
            };
            format!("{about} {} ({ends})", pieces.likely())
        }
        None => pieces.likely().to_string(),
    };
    let in_packs = match numbers::count_ends(row.packs) {
        Some(ends) => format!("{} ({ends})", row.packs.likely()),
        None => row.packs.likely().to_string(),
    };
    let short = match row.short {
        Some(short) if row.packs.likely() > 1 => format!(", el último con {short}"),
        Some(_) | None => String::new(),
    };
    let of = match row.a_pack.min(pieces.likely()) {
        1 => String::new(),
        a_pack => format!(" de {a_pack}"),
    };
    format!(
        "{counted} {} de {}: {in_packs} {}{of}{short}",
        names::pieces(product, pieces.likely()),
        super::around(&numbers::mass(each, units)),
        packages(row.packs.likely()),
    )
}

/// What a muscle gives, in one line for the list: "3 packages" or "to the tub".
pub fn muscle_result(muscle: &MuscleForecast, taken: bool) -> String {
    if !taken {
        return "sin aprovechar".into();
    }
    let mut parts = muscle.sides[0].iter().filter(|part| !part.spoiled);
    if let (Some(part), None) = (parts.next(), parts.next())
        && muscle.packs.is_empty()
    {
        return match part.cut {
            Cut::Stew(_) => "al guiso".into(),
            Cut::Discard => "se tira".into(),
            Cut::Grind | Cut::Roast(_) | Cut::Steak(_) | Cut::Chop(_) => "a la tina".into(),
        };
    }
    let packs: u32 = muscle.packs.iter().map(|row| row.packs.likely()).sum();
    if packs == 0 { "a la tina".into() } else { format!("{packs} {}", packages(packs)) }
}

/// The animal in one line: "White-tailed deer, doe, adult · 100 lb field-dressed".
pub fn animal_line(plan: &Plan, units: Units) -> String {
    let animal = plan.animal();
    let size = match animal.weighed() {
        Weighed::Typical => names::stage_short(Stage::Typical).to_owned(),
        Weighed::Girth(girth) => format!(
            "{} {} {}",
            numbers::girth_field(girth, units),
            numbers::girth_unit(units),
            names::stage_short(Stage::Girth)
        ),
        Weighed::Live(mass)
        | Weighed::FieldDressed(mass, _)
        | Weighed::Hanging(mass)
        | Weighed::Deboned(mass) => format!(
            "{} {} {}",
            numbers::weight_field(mass, units),
            numbers::weight_unit(units),
            names::stage_short(animal.weighed().stage())
        ),
    };
    format!(
        "{}, {}, {} · {size}",
        names::species(animal.species()),
        names::sex(animal.sex(), animal.species()).to_ascii_lowercase(),
        match (animal.age(), animal.sex()) {
            (Age::Fawn, _) => "cría",
            (Age::Yearling, _) => "de un año",
            (Age::Adult, Sex::Doe) => "adulta",
            (Age::Adult, Sex::Buck) => "adulto",
            (Age::Old, Sex::Doe) => "vieja",
            (Age::Old, Sex::Buck) => "viejo",
        }
    )
}

/// The whole tally in one sentence, for the live region and the bar.
pub fn tally(forecast: &Forecast, units: Units) -> String {
    let packs = forecast.packs;
    let ends = numbers::count_ends(packs).map(|ends| format!(" ({ends})")).unwrap_or_default();
    let take_home = numbers::mass_range(forecast.take_home, units);
    format!("{} {}{ends}; {take_home} para casa", about(packs), packages(packs.likely()))
}

/// How good a figure is.
pub fn grade(grade: Grade) -> &'static str {
    match grade {
        Grade::A => "A: medido, muchos animales",
        Grade::B => "B: medido, pocos animales, o de segunda mano",
        Grade::C => "C: una fuente débil, o derivado",
        Grade::D => "D: memoria, analogía o criterio",
    }
}

/// What kind of source.
pub fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Measured => "Estudio",
        Kind::Agency => "Texto de agencia o de extensión",
        Kind::Relayed => "Estudio, citado por otro texto",
        Kind::Weak => "Página débil",
        Kind::CommonPractice => "Práctica común",
        Kind::Judgement => "Criterio",
    }
}

/// What a package of loose meat is.
pub fn loose_pack(pack: &str, last: Option<&str>) -> String {
    match last {
        Some(last) => format!("{pack} cada uno, {last} en el último"),
        None => format!("{pack} cada uno"),
    }
}

/// What a package of whole cuts weighs on average.
pub fn whole_pack(mass: &str) -> String {
    format!("{} cada uno", super::around(mass))
}

/// The title of the working of all packages.
pub const ALL_PACKAGES: &str = "Paquetes";
/// Names of inputs.
pub const SHARES: &str = "Parte de la carne de cada músculo";
/// Field-dressed over live.
pub const DRESSED_OF_LIVE: &str = "Eviscerado, del peso vivo";
/// Hanging over dressed.
pub const HANGING_OF_DRESSED: &str = "En canal, del peso eviscerado";
/// Lean over hanging.
pub const LEAN_OF_HANGING: &str = "Deshuesado con cuidado, del peso en canal";
/// Bone in the rest.
pub const BONE_OF_REST: &str = "Hueso, de lo que no es magro";
/// Shot loss.
pub const LOST_TO_SHOT: &str = "Perdido por el tiro, de lo magro";
/// Left behind.
pub const LEFT_ON_BONES: &str = "Queda en los huesos, de lo que dejó el tiro";
/// Dried.
pub const DRIED: &str = "Merma al colgar, del resto";
/// The girth regression.
pub const GIRTH_TABLE: &str = "Peso por el contorno del pecho";
/// A typical weight.
pub const TYPICAL_WEIGHT: &str = "Peso típico de su clase";
/// A packing rule the reader chose.
pub const PACK_RULE: &str = "Un paquete";
/// Packed for the table.
pub const FOR_THE_TABLE: &str = "lo que pide la mesa";
/// How legs off are read.
pub const LEGS_WORKING: &str =
    "Se pesó sin la parte baja de las patas: primero se divide entre 0.96 (criterio, no se halló cifra).";
/// How marked wounds are reckoned.
pub const WOUNDS_WORKING: &str = "Marcaste heridas en la lámina: cada una quita la parte de cada músculo que queda dentro de ella en su lado, como lo dibuja la lámina, y la pérdida media de un tiro no se cuenta. Cómo se reparte el peso de un músculo por su área es criterio.";
/// How ranges are made.
pub const RANGE_WORKING: &str = "El margen abarca el 80 % central de mil escenarios fijos, cada uno con sus rendimientos, partes y tamaños. La cifra sola es el caso medio.";

/// How a line of the ledger is worked out.
pub fn line_working(line: hindsaddle_model::forecast::Line) -> &'static str {
    use hindsaddle_model::forecast::Line;
    match line {
        Line::Live => "Lo que se pesó, llevado al animal entero. Las líneas de abajo suman eso.",
        Line::Viscera => "Peso vivo menos peso eviscerado.",
        Line::HeadHideFeet => "Peso eviscerado menos peso en canal.",
        Line::Bone => {
            "El peso en canal menos la carne deshuesada con cuidado es hueso, grasa y telas, y merma; esto es el hueso, con los restos que se quedan en él."
        }
        Line::Trim => "Lo que no es magro, hueso ni merma: grasa, telas, telilla, tendón.",
        Line::Drying => "Agua perdida al cortar, y mientras colgó.",
        Line::Wound => {
            "Carne alrededor del trayecto de la bala o la flecha, y lo que tocaron las tripas. Se tira, nunca se muele."
        }
        Line::LeftBehind => "Carne que un cortador normal deja en los huesos.",
        Line::NotRecovered => "Grupos de músculos que no aprovechas. Su carne no va a ningún otro lado.",
        Line::Discarded => "Partes que decidiste tirar.",
        Line::TakeHome => {
            "Peso vivo × parte eviscerada × parte en canal × parte deshuesada con cuidado, menos el tiro, los huesos y la merma, menos lo que no se aprovecha o se tira."
        }
    }
}

/// How packages are counted.
pub fn packages_working() -> Vec<String> {
    [
        "Cada músculo recibe su parte de la carne y su largo en este animal, a escala de un venado de referencia por la raíz cúbica del peso en canal.",
        "Se corta a lo largo como elegiste. Bistecs y chuletas salen del tramo parejo; puntas, sobrantes y recortes van a la tina.",
        "Los cortes enteros se empacan por músculo, ambos lados juntos. El guiso y la molida se juntan. Un último paquete corto cuenta como uno.",
        RANGE_WORKING,
    ]
    .map(str::to_owned)
    .to_vec()
}

/// How packages of a product are counted.
pub fn product_working(product: Product) -> &'static str {
    match product {
        Product::Roast => {
            "Cada parte se divide en asados del largo o peso que elegiste; 2 % se recorta a la tina (criterio)."
        }
        Product::Steak | Product::Chop => {
            "Largo útil dividido entre el grosor más 1 mm por lo desigual del corte a mano; las dos puntas y 3 % de recorte van a la tina (criterio)."
        }
        Product::Stew => {
            "Todas las partes para guiso juntas, menos 2 % de recorte; un resto menor que un décimo de paquete se reparte."
        }
        Product::Grind => {
            "Todas las partes para moler, y cada punta, sobrante y recorte de los demás cortes; un resto menor que un décimo de paquete se reparte."
        }
    }
}

/// "± 45 %".
pub fn plus_minus(fraction: f64) -> String {
    format!("± {}", numbers::percent(fraction))
}

/// "72 % to 80 %".
pub fn span(low: &str, high: &str) -> String {
    format!("{low} a {high}")
}

/// Kind and citation of a source.
pub fn source(kind: &str, citation: &str) -> String {
    if citation.starts_with(kind) { citation.into() } else { format!("{kind}: {citation}") }
}

/// "Backstrap: about 40 steaks".
pub fn named(name: &str, what: &str) -> String {
    format!("{name}: {what}")
}

/// "Raw meat for each of 4 people".
pub fn portion_of(people: u8) -> String {
    if people == 1 {
        "Carne cruda para una persona".into()
    } else {
        format!("Carne cruda para cada una de {people} personas")
    }
}

/// "Packages of steak".
pub fn product_packages(product: Product) -> String {
    format!("Paquetes: {}", names::product(product).to_ascii_lowercase())
}

/// "10, 9 to 12; 12 lb, 9 to 13 lb".
pub fn product_answer(tally: &hindsaddle_model::forecast::Tally, units: Units) -> String {
    let ends = numbers::count_ends(tally.packs).map(|ends| format!(" ({ends})")).unwrap_or_default();
    let packs = tally.packs.likely();
    format!("{packs} {}{ends}, {}", packages(packs), numbers::mass_range(tally.mass, units))
}

/// "2 pieces each".
pub fn pieces_a_pack(pieces: u8) -> String {
    if pieces == 1 { "1 pieza cada uno".into() } else { format!("{pieces} piezas cada uno") }
}

/// "1 lb each".
pub fn weight_a_pack(weight: &str) -> String {
    format!("{weight} cada uno")
}

/// The plate in one sentence, for those who do not see it.
pub fn plate_summary(packs: Estimate<u32>) -> String {
    format!(
        "Lámina de los músculos del animal. El relleno de cada músculo es su corte; {} {} en total.",
        about(packs),
        packages(packs.likely())
    )
}

/// A muscle on the plate: "Backstrap, left: Steak, 1 in; 3 packages".
pub fn area(
    muscle: Muscle,
    side: Option<Side>,
    cuts: &str,
    result: &str,
    spoiled: bool,
    every_cut: bool,
) -> String {
    let side =
        side.map(|side| format!(", lado {}", names::side(side).to_ascii_lowercase())).unwrap_or_default();
    let spoiled = if spoiled { "; parte echada a perder por una herida" } else { "" };
    let drawn = if every_cut { "" } else { "; no se dibujan todos los cortes" };
    format!("{}{side}: {cuts}; {result}{spoiled}{drawn}", names::muscle(muscle))
}

/// What sex, age or season adds to a fraction.
pub fn adjusted(name: &str) -> String {
    format!("{name}: se añade por sexo, edad o época")
}

/// "+ 1 %" or "- 2 %" of a fraction.
pub fn added(fraction: f64) -> String {
    let sign = if fraction < 0.0 { '\u{2212}' } else { '+' };
    format!("{sign}\u{a0}{}", numbers::percent(fraction.abs()))
}
