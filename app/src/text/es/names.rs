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
        Muscle::TopRound => "Cara",
        Muscle::BottomRound => "Contracara",
        Muscle::EyeRound => "Cuete",
        Muscle::Knuckle => "Bola",
        Muscle::Sirloin => "Aguayón",
        Muscle::TriTip => "Empuje",
        Muscle::HindShank => "Chamorro trasero",
        Muscle::PelvicTrim => "Recortes de cadera",
        Muscle::Backstrap => "Lomo",
        Muscle::Tenderloin => "Filete",
        Muscle::BackTrim => "Recortes del espinazo",
        Muscle::FlatIron => "Plancha de paleta",
        Muscle::MockTender => "Juil",
        Muscle::Clod => "Planchuela",
        Muscle::UnderBlade => "Bajo paleta",
        Muscle::Arm => "Brazuelo",
        Muscle::ForeShank => "Chamorro delantero",
        Muscle::Chuck => "Diezmillo",
        Muscle::Cape => "Tapa de paleta",
        Muscle::NeckStraps => "Tiras del cuello",
        Muscle::Neck => "Pescuezo",
        Muscle::Brisket => "Pecho",
        Muscle::RibMeat => "Carne de costilla",
        Muscle::FlankSteak => "Falda",
        Muscle::FlankSheets => "Telas del costado",
        Muscle::Skirt => "Arrachera",
    }
}

/// What else it is called; empty if nothing.
pub fn muscle_also(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => "tapa, pulpa negra",
        Muscle::BottomRound => "contra, pulpa blanca",
        Muscle::EyeRound => "redondo, peceto",
        Muscle::Knuckle => "babilla, pulpa bola",
        Muscle::Sirloin => "cadera",
        Muscle::HindShank => "morcillo, con el talón",
        Muscle::Backstrap => "cinta de lomo",
        Muscle::Tenderloin => "solomillo, lomito",
        Muscle::BackTrim => "tiras del espinazo, cordón",
        Muscle::FlatIron => "marucha",
        Muscle::MockTender => "chingolo, falso filete",
        Muscle::Clod => "espaldilla",
        Muscle::UnderBlade => "lado interno de la paleta, filetillo",
        Muscle::Arm => "parte alta del brazo",
        Muscle::Chuck => "aguja",
        Muscle::Cape => "capa de la paleta",
        Muscle::Skirt => "entraña fina y gruesa",
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

/// A muscle inside a sentence, with its article: "la bola", "los recortes de cadera".
pub(super) fn with_article(of: Muscle) -> String {
    let article = match of {
        Muscle::TopRound
        | Muscle::BottomRound
        | Muscle::Knuckle
        | Muscle::FlatIron
        | Muscle::Clod
        | Muscle::Cape
        | Muscle::RibMeat
        | Muscle::FlankSteak
        | Muscle::Skirt => "la",
        Muscle::EyeRound
        | Muscle::Sirloin
        | Muscle::TriTip
        | Muscle::HindShank
        | Muscle::Backstrap
        | Muscle::Tenderloin
        | Muscle::MockTender
        | Muscle::UnderBlade
        | Muscle::Arm
        | Muscle::ForeShank
        | Muscle::Chuck
        | Muscle::Neck
        | Muscle::Brisket => "el",
        Muscle::PelvicTrim | Muscle::BackTrim => "los",
        Muscle::NeckStraps | Muscle::FlankSheets => "las",
    };
    format!("{article} {}", muscle(of).to_ascii_lowercase())
}

/// Whether its name is a plural.
pub(super) fn is_plural(of: Muscle) -> bool {
    matches!(of, Muscle::PelvicTrim | Muscle::BackTrim | Muscle::NeckStraps | Muscle::FlankSheets)
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
            "M. gastrocnemius, soleus, flexor digitorum superficialis et profundi, tibialis cranialis, extensores, popliteus"
        }
        Muscle::PelvicTrim => {
            "Mm. obturatorii, gemelli, quadratus femoris, coccygeus, músculos de la base de la cola"
        }
        Muscle::Backstrap => "M. longissimus thoracis et lumborum (+ spinalis en el extremo delantero)",
        Muscle::Tenderloin => "M. psoas major + minor + iliacus",
        Muscle::BackTrim => "Mm. multifidi, iliocostalis, longissimus cervicis (parte), serratus dorsalis",
        Muscle::FlatIron => "M. infraspinatus",
        Muscle::MockTender => "M. supraspinatus",
        Muscle::Clod => "M. triceps brachii (cabezas larga, lateral y medial) + tensor fasciae antebrachii",
        Muscle::UnderBlade => "M. subscapularis + teres major (+ coracobrachialis)",
        Muscle::Arm => "M. biceps brachii, brachialis, deltoideus, teres minor",
        Muscle::ForeShank => "M. extensor carpi radialis, flexores y extensores de los dedos",
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
            "M. obliquus externus + internus + transversus abdominis (+ restos de cutaneus trunci)"
        }
        Muscle::Skirt => "Diaphragma (pars costalis, lumbalis)",
    }
}

/// One sentence to remember a muscle by.
pub fn teach(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "El cojín grande y plano de la cara interna del muslo: quita primero la tapa delgada y luego corta el músculo principal al través."
        }
        Muscle::BottomRound => {
            "La pared externa del muslo, bajo una telilla brillante: ásala entera y despacio, o rebánala delgada."
        }
        Muscle::EyeRound => "Un huso que parece filete y no lo es: no lo cocines de más y rebánalo delgado.",
        Muscle::Knuckle => {
            "El balón del frente del muslo: ábrelo por sus costuras plateadas y la pieza del centro es tierna como para bistec."
        }
        Muscle::Sirloin => {
            "Donde acaba el lomo empieza el aguayón: una tapa gruesa sobre la cadera que se come como lomo."
        }
        Muscle::TriTip => {
            "Un triángulo pequeño que cuelga de la punta de la cadera; en un uapití es una cena, en una hembra chica es un bocado o un salteado."
        }
        Muscle::HindShank => {
            "La pantorrilla: ahora llena de telilla, pero horas de cocción suave la vuelven seda."
        }
        Muscle::PelvicTrim => "Los trozos que quedan en el hueco de la pelvis: perfectos para el molino.",
        Muscle::Backstrap => {
            "Una tira larga a cada lado del espinazo: quita su única telilla gruesa, corta al través, cocina a fuego fuerte y poco tiempo."
        }
        Muscle::Tenderloin => {
            "Escondido dentro del vientre, bajo el espinazo: casi no trabaja, por eso es la pieza más tierna del venado."
        }
        Muscle::BackTrim => {
            "Las hebras de carne que quedan en el hueso al sacar el lomo: ráspalas para el molino."
        }
        Muscle::FlatIron => {
            "Un bistec tierno de paleta con una lámina de nervio escondida como la hoja de un libro: sácala y tienes dos bistecs planos."
        }
        Muscle::MockTender => "Con forma de filete, pero no tan tierno: cocina despacio este pequeño cono.",
        Muscle::Clod => {
            "El músculo más grande de la pata delantera: ásalo despacio y deshébralo, o hazlo cubos para guiso."
        }
        Muscle::UnderBlade => {
            "Voltea la paleta: este músculo delgado se esconde contra las costillas, y su cordón (teres major) es tierno."
        }
        Muscle::Arm => "El bíceps del venado: pequeño, trabajador, hecho para la olla.",
        Muscle::ForeShank => {
            "Músculos del antebrazo, mitad tendón: cocínalos a fuego lento hasta que se derrita el nervio."
        }
        Muscle::Chuck => {
            "La hamaca en que cuelga el pecho entre las patas delanteras: la cortas al quitar la paleta."
        }
        Muscle::Cape => {
            "La capa delgada sobre la paleta y las costillas: quítala como una cobija y mándala al molino."
        }
        Muscle::NeckStraps => {
            "Las cuerdas que llevan la pata delantera al frente: en trozos cortos al través hacen buen guiso."
        }
        Muscle::Neck => {
            "Muchas capas, mucho sabor: enróllalo, cuécelo a fuego lento, deshébralo. En un macho en brama puede ser un tercio mayor."
        }
        Muscle::Brisket => {
            "Delgado y duro, con grasa como cera: quita bien la grasa y luego muele o cocina a fuego lento."
        }
        Muscle::RibMeat => {
            "Tiras como dedos entre trece costillas: valen diez minutos con un cuchillo chico."
        }
        Muscle::FlankSteak => {
            "Fibras largas y rectas: marina, sella, rebana delgado al través. En un venado chico, muélela."
        }
        Muscle::FlankSheets => {
            "Tres telas delgadas y cruzadas que sostienen el vientre: limpia, pela, muele."
        }
        Muscle::Skirt => "El músculo de respirar: suele irse con las tripas; guárdalo si está limpio.",
    }
}

/// Which way to cut it.
pub fn knife(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "Rebana al través, paralelo al suelo en una pierna colgada: a escuadra con la línea del hueso de la nalga a la rodilla."
        }
        Muscle::BottomRound => {
            "Busca primero la fibra, que gira; corta a escuadra con el eje largo, delgado para bistecs."
        }
        Muscle::EyeRound => "Recto al través del huso, en monedas.",
        Muscle::Knuckle => {
            "Entera: al través del eje largo; mejor: sepárala por sus telillas y luego corta cada pieza al través."
        }
        Muscle::Sirloin => {
            "Al través, en rebanadas a escuadra con la línea entre la punta y la articulación de la cadera."
        }
        Muscle::TriTip => "Al través del abanico; a medio corte, gira la pieza.",
        Muscle::HindShank => "Corta el haz al través en discos (con o sin hueso); no intentes bistecs.",
        Muscle::PelvicTrim => "En cubos chicos.",
        Muscle::Backstrap => "Recto hacia abajo, al través de la tira.",
        Muscle::Tenderloin => "Recto al través, medallones gruesos.",
        Muscle::BackTrim => "En cubos o molida.",
        Muscle::FlatIron => {
            "Ábrela plana por la lámina del centro y quita esa lámina; luego cocina la carne entera y rebánala al través."
        }
        Muscle::MockTender => "Al través; primero cocínalo entero a fuego lento.",
        Muscle::Clod => "Al través del abanico, desde el tendón del codo.",
        Muscle::UnderBlade => "Al través; casi siempre en cubos.",
        Muscle::Arm => "Al través; en cubos.",
        Muscle::ForeShank => "Al través en discos, o deshuésalo entero.",
        Muscle::Chuck => "Al través, girando con el abanico.",
        Muscle::Cape => "Tiras al través, o molida.",
        Muscle::NeckStraps => "En trozos cortos al través.",
        Muscle::Neck => "Un rollo entero cocido despacio y deshebrado, o cubos.",
        Muscle::Brisket => "Al través, después de cocción larga.",
        Muscle::RibMeat => "Saca las tiras para el molino, o déjalas en el costillar y cocina a fuego lento.",
        Muscle::FlankSteak => "Delgado, a escuadra con el largo.",
        Muscle::FlankSheets => "Molida.",
        Muscle::Skirt => "Al través de la tira.",
    }
}

/// A region.
pub fn region(region: Region) -> &'static str {
    match region {
        Region::HindLeg => "Pierna",
        Region::Back => "Espalda",
        Region::Shoulder => "Paleta",
        Region::Neck => "Pescuezo",
        Region::Belly => "Vientre",
    }
}

/// A product, as a heading.
pub fn product(product: Product) -> &'static str {
    match product {
        Product::Roast => "Asado",
        Product::Steak => "Bistec",
        Product::Chop => "Chuleta",
        Product::Stew => "Guiso",
        Product::Grind => "Molida",
    }
}

/// A product's mark on the plate.
pub fn product_mark(product: Product) -> &'static str {
    match product {
        Product::Roast => "A",
        Product::Steak => "B",
        Product::Chop => "C",
        Product::Stew => "G",
        Product::Grind => "M",
    }
}

/// What meat that is thrown away is called.
pub const DISCARD: &str = "Desecho";
/// Its mark.
pub const DISCARD_MARK: &str = "×";

/// The pieces of a product, for a count.
pub fn pieces(product: Product, count: u32) -> &'static str {
    match (product, count) {
        (Product::Roast, 1) => "asado",
        (Product::Roast, _) => "asados",
        (Product::Steak, 1) => "bistec",
        (Product::Steak, _) => "bistecs",
        (Product::Chop, 1) => "chuleta",
        (Product::Chop, _) => "chuletas",
        (Product::Stew, 1) => "cubo",
        (Product::Stew, _) => "cubos",
        (Product::Grind, _) => "carne molida",
    }
}

/// A view of the plate.
pub fn view(view: View) -> &'static str {
    match view {
        View::Outer => "Lado externo",
        View::Inner => "Lado interno",
        View::Above => "Desde arriba",
    }
}

/// A side of the animal.
pub fn side(side: Side) -> &'static str {
    match side {
        Side::Left => "Izquierdo",
        Side::Right => "Derecho",
    }
}

/// A species.
pub fn species(species: Species) -> &'static str {
    match species {
        Species::WhiteTailed => "Venado cola blanca",
        Species::Mule => "Venado bura",
        Species::BlackTailed => "Venado cola negra",
        Species::Elk => "Uapití (elk)",
        Species::Moose => "Alce (moose)",
        Species::Pronghorn => "Berrendo",
        Species::Caribou => "Caribú (reno)",
        Species::Red => "Ciervo rojo",
        Species::Roe => "Corzo",
        Species::Fallow => "Gamo",
        Species::Sika => "Ciervo sica",
        Species::Axis => "Ciervo axis",
    }
}

/// Male or female: the same for every species.
pub fn sex(sex: Sex, _: Species) -> &'static str {
    match sex {
        Sex::Buck => "Macho",
        Sex::Doe => "Hembra",
    }
}

/// An age class.
pub fn age(age: Age) -> &'static str {
    match age {
        Age::Fawn => "Cría",
        Age::Yearling => "De un año",
        Age::Adult => "Edad adulta",
        Age::Old => "Edad avanzada",
    }
}

/// A condition.
pub fn condition(condition: Condition) -> &'static str {
    match condition {
        Condition::Ordinary => "Nada especial",
        Condition::PreRut => "Antes de la brama",
        Condition::LateRut => "Fin de la brama",
        Condition::Nursing => "Con leche o preñada",
    }
}

/// What was weighed.
pub fn stage(stage: Stage) -> &'static str {
    match stage {
        Stage::Live => "Peso vivo",
        Stage::FieldDressed => "Peso eviscerado",
        Stage::Hanging => "Peso en canal",
        Stage::Deboned => "Carne sin hueso en la mesa",
        Stage::Girth => "Contorno del pecho",
        Stage::Typical => "Sin pesar",
    }
}

/// What exactly has to be on the scale.
pub fn stage_hint(stage: Stage) -> &'static str {
    match stage {
        Stage::Live => "Animal entero, antes de quitarle nada.",
        Stage::FieldDressed => "En la báscula: sin órganos, con cabeza y piel.",
        Stage::Hanging => "En la báscula: sin piel, sin cabeza ni patas.",
        Stage::Deboned => "Todo lo que vas a empacar, sin hueso.",
        Stage::Girth => "Alrededor del pecho, justo detrás de las patas delanteras.",
        Stage::Typical => "Un animal típico de su clase: cuenta con casi la mitad de más o de menos.",
    }
}

/// A stage inside a sentence.
pub fn stage_short(stage: Stage) -> &'static str {
    match stage {
        Stage::Live => "vivo",
        Stage::FieldDressed => "eviscerado",
        Stage::Hanging => "en canal",
        Stage::Deboned => "de carne sin hueso",
        Stage::Girth => "de contorno del pecho",
        Stage::Typical => "sin pesar",
    }
}

/// How the shot was.
pub fn shot(shot: Shot) -> &'static str {
    match shot {
        Shot::Clean => "Limpio: se perdió poco",
        Shot::Usual => "Normal",
        Shot::Bad => "Malo: paleta, anca o tripas",
    }
}

/// How the bones are cleaned.
pub fn care(care: Care) -> &'static str {
    match care {
        Care::Fussy => "Hasta el último trozo",
        Care::Usual => "Normal",
        Care::Hurried => "Con prisa",
    }
}

/// How hungry.
pub fn appetite(appetite: Appetite) -> &'static str {
    match appetite {
        Appetite::Light => "Poco: 4 oz crudas por persona",
        Appetite::Hearty => "Mucho: 1/3 lb cruda por persona",
    }
}

/// A line of the ledger.
pub fn line(line: Line) -> &'static str {
    match line {
        Line::Live => "Peso vivo",
        Line::Viscera => "Órganos",
        Line::HeadHideFeet => "Cabeza, piel y patas",
        Line::Bone => "Hueso",
        Line::Trim => "Grasa, telilla, tendón",
        Line::Drying => "Merma al secarse",
        Line::Wound => "Alrededor de una herida",
        Line::LeftBehind => "Queda en los huesos",
        Line::NotRecovered => "Sin aprovechar",
        Line::Discarded => "Desechado",
        Line::TakeHome => "Para casa",
    }
}
