//! What is taught of each muscle: where it lies without its name, its life, why it is tender or tough, its silverskin,
//! its fibres, and what it wants to be. Common practice and general anatomy, from memory, where no source is named.

use hindsaddle_model::anatomy::Muscle;

/// Where it lies, in words that do not name it: for asking where it is.
pub fn place(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => "lado interno del muslo, contra el de la otra pierna",
        Muscle::BottomRound => "lado externo del muslo, de la base de la cola a la rodilla",
        Muscle::EyeRound => "tira angosta por el borde trasero del muslo",
        Muscle::Knuckle => "frente del muslo, abrazada al fémur",
        Muscle::Sirloin => "tapa gruesa sobre el lado externo del hueso de la cadera",
        Muscle::TriTip => "triángulo que baja de la punta de la cadera por el borde delantero del muslo",
        Muscle::HindShank => "parte baja de la pata trasera, de la rodilla al corvejón",
        Muscle::PelvicTrim => "restos en el hueco de la pelvis y en la raíz de la cola",
        Muscle::Backstrap => "en el canal junto al espinazo, de la cadera a la base del cuello",
        Muscle::Tenderloin => "dentro del cuerpo, bajo el espinazo, en la cintura",
        Muscle::BackTrim => "tiras sobre los huesos del espinazo, bajo el músculo largo de la espalda",
        Muscle::FlatIron => "lado externo del omóplato, detrás de su cresta",
        Muscle::MockTender => "lado externo del omóplato, delante de su cresta",
        Muscle::Clod => "triángulo entre omóplato, brazo y codo",
        Muscle::UnderBlade => "lado interno del omóplato, hacia las costillas",
        Muscle::Arm => "frente del brazo, de la punta del hombro al codo",
        Muscle::ForeShank => "antebrazo, del codo a la muñeca",
        Muscle::Chuck => "entre el omóplato y las costillas, se ve al quitar la pata delantera",
        Muscle::Cape => "telas delgadas sobre lo alto del omóplato y las costillas de arriba",
        Muscle::NeckStraps => "lado de abajo del cuello, del cráneo al hombro y al esternón",
        Muscle::Neck => "detrás del cráneo, en capas sobre los huesos, hasta la cruz",
        Muscle::Brisket => "lado de abajo del tórax, entre las patas delanteras",
        Muscle::RibMeat => "entre las costillas y sobre ellas",
        Muscle::FlankSteak => "tira a lo largo del vientre, del esternón a la pelvis",
        Muscle::FlankSheets => "pared blanda del costado, de las últimas costillas a la punta de la cadera",
        Muscle::Skirt => "la pared entre pecho y vientre, por dentro",
    }
}

/// How it comes off the bones.
pub fn take_off(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "Abre la costura con la contracara desde el lado interno de la pierna, con los dedos y la punta del cuchillo; sepárala del fémur."
        }
        Muscle::BottomRound => {
            "Abre las costuras con la bola y el cuete, y despégala del fémur desde el extremo de la cola hacia abajo."
        }
        Muscle::EyeRound => "Sigue con la punta la costura alrededor del huso y sácalo entero.",
        Muscle::Knuckle => {
            "Corta a lo largo del fémur por ambos lados, luego bajo la rótula, y despréndela del hueso enrollándola."
        }
        Muscle::Sirloin => {
            "Corta a lo largo del hueso de la cadera, de su punta a la articulación, y despega la tapa del hueso."
        }
        Muscle::TriTip => {
            "Jala el triángulo del borde delantero del muslo; la costura se abre con la mano y la punta del cuchillo suelta su extremo."
        }
        Muscle::HindShank => {
            "Corta el tendón sobre el corvejón y raspa hacia arriba a lo largo del hueso hasta la rodilla."
        }
        Muscle::PelvicTrim => "Ráspalos en trozos del hueco de la pelvis; no toques la vejiga ni la tripa.",
        Muscle::Backstrap => {
            "Corta a lo largo del espinazo, de la cadera al pescuezo, luego por las costillas desde el lado, y saca la tira enrollándola."
        }
        Muscle::Tenderloin => {
            "Desde dentro, suelta ambos extremos con la punta y despégalo del espinazo con la mano."
        }
        Muscle::BackTrim => "Ya sin el lomo, raspa lo que queda entre las espinas del espinazo.",
        Muscle::FlatIron => {
            "Corta a lo largo de la cresta del omóplato y despégala del hueso, de la cresta hacia atrás."
        }
        Muscle::MockTender => "Corta por delante de la cresta y haz rodar el huso fuera de su canal.",
        Muscle::Clod => {
            "Corta por el borde trasero del omóplato y del brazo, y levanta la cuña hasta el codo."
        }
        Muscle::UnderBlade => "Voltea la paleta y despega raspando la tela de su cara interna.",
        Muscle::Arm => "Suéltalo en la punta del hombro y sigue el brazo hasta el codo.",
        Muscle::ForeShank => {
            "Corta alrededor de la muñeca, abre a lo largo del hueso y despega la carne hasta el codo."
        }
        Muscle::Chuck => {
            "Ya sin la pata delantera, corta a lo largo de los huesos del pescuezo y las primeras costillas, y sácalo en telas."
        }
        Muscle::Cape => "Levanta el borde sobre el omóplato y despega la tela; sale junto con la pata.",
        Muscle::NeckStraps => "Corta a cada lado de la tráquea y jala las tiras, de la quijada al esternón.",
        Muscle::Neck => {
            "Corta junto a los huesos del pescuezo, desde detrás del cráneo, y despega la carne en una sola pieza."
        }
        Muscle::Brisket => "Corta a lo largo del esternón y despega la pieza plana de las costillas.",
        Muscle::RibMeat => "Pasa la punta por ambos bordes de cada costilla y empuja las tiras hacia fuera.",
        Muscle::FlankSteak => "Busca el músculo plano en medio del vientre y jálalo fuera de su funda.",
        Muscle::FlankSheets => {
            "Corta a lo largo de la última costilla y la cadera, y toma las telas según se separan."
        }
        Muscle::Skirt => "Corta el borde rojo donde se sujeta a las costillas, si no salió con las vísceras.",
    }
}

/// What it did in life.
pub fn life(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "Llevaba la pata trasera hacia atrás y la sujetaba hacia la otra: el empuje de cada salto."
        }
        Muscle::BottomRound => "Estiraba cadera y corvejón al impulsarse, y trabajaba a cada paso.",
        Muscle::EyeRound => "Llevaba la pata trasera atrás y doblaba la rodilla.",
        Muscle::Knuckle => "Estiraba la rodilla: mantenía de pie al venado y lo recibía al caer.",
        Muscle::Sirloin => "Estiraba la cadera para el salto, más a ratos que todo el día.",
        Muscle::TriTip => "Llevaba el muslo adelante y tensaba su funda.",
        Muscle::HindShank => "Estiraba el corvejón y movía los dedos, por tendones largos, a cada paso.",
        Muscle::PelvicTrim => "Músculos chicos que giraban el muslo en su cuenca y movían la cola.",
        Muscle::Backstrap => {
            "Mantenía firme la espalda y la estiraba en el salto; andar y pastar le pedían poco."
        }
        Muscle::Tenderloin => "Llevaba la pata trasera adelante y doblaba la cintura, y poco más.",
        Muscle::BackTrim => "Músculos cortos que afirmaban cada hueso del espinazo contra el siguiente.",
        Muscle::FlatIron => "Sujetaba el hombro por fuera, más como correa que como motor.",
        Muscle::MockTender => "Estiraba el hombro y afirmaba la articulación a cada paso.",
        Muscle::Clod => "Estiraba el codo y cargaba el frente del venado siempre que estaba de pie.",
        Muscle::UnderBlade => "Sujetaba el hombro por dentro y llevaba la pata delantera atrás y adentro.",
        Muscle::Arm => "Doblaba el codo y levantaba la pata delantera para el paso siguiente.",
        Muscle::ForeShank => "Doblaba y estiraba muñeca y dedos, por tendones largos, a cada paso.",
        Muscle::Chuck => {
            "La hamaca en que cuelga el pecho entre las patas delanteras: el venado no tiene clavícula que lo cargue."
        }
        Muscle::Cape => "Alzaba y movía el omóplato, y llevaba la pata delantera atrás.",
        Muscle::NeckStraps => "Llevaban la pata delantera adelante y bajaban la cabeza.",
        Muscle::Neck => {
            "Cargaba, alzaba y giraba la cabeza todo el día; en un macho, también la cornamenta y las peleas."
        }
        Muscle::Brisket => "Llevaba las patas delanteras adentro y atrás, y ayudaba a cargar el pecho.",
        Muscle::RibMeat => "Movía las costillas a cada respiro.",
        Muscle::FlankSteak => "Cargaba el vientre y doblaba la espalda en el salto.",
        Muscle::FlankSheets => {
            "Tres telas que sostenían el vientre y ayudaban a soltar el aire y a torcer el cuerpo."
        }
        Muscle::Skirt => "El músculo de respirar: se movió en cada respiro de la vida del venado.",
    }
}

/// Why it is tender or tough.
pub fn tender(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => "Media: grande y magra, con pocas costuras. Se seca si pasa de término medio.",
        Muscle::BottomRound => "Dura: fibras gruesas en envolturas de nervio que engrosan con la edad.",
        Muscle::EyeRound => {
            "Medio: fino y parejo, pero con mucho nervio firme dentro. El centro es más tierno que las puntas."
        }
        Muscle::Knuckle => {
            "Tierna en conjunto: de sus cuatro músculos el del centro es el más tierno y el de fuera es duro."
        }
        Muscle::Sirloin => "Tierno: una de las cuatro mejores piezas, gruesa y con poco nervio.",
        Muscle::TriTip => "Tierno, pero delgado y chico salvo en los más grandes.",
        Muscle::HindShank => "Duro: tendón y nervio por todos lados, lo más nervudo de la pata trasera.",
        Muscle::PelvicTrim => "Duros, pero en trozos tan chicos que no importa.",
        Muscle::Backstrap => "Muy tierno: fibras largas y parejas, poco nervio, poco trabajo.",
        Muscle::Tenderloin => "Muy tierno: casi sin nervio y casi sin trabajo. Ningún músculo lo es más.",
        Muscle::BackTrim => "Medios, pero hebrosos: tiras cortas, cada una en su telilla.",
        Muscle::FlatIron => {
            "Tierna, de las más tiernas ya sin la lámina de nervio del centro; con ella, correosa."
        }
        Muscle::MockTender => "Duro: un cono firme con un tendón dentro, usado a cada paso.",
        Muscle::Clod => "Media: buena carne alrededor de láminas de tendón, más duras con la edad.",
        Muscle::UnderBlade => {
            "Medio: delgado, con telas que lo cruzan; el cordón del borde trasero es tierno."
        }
        Muscle::Arm => "Duro: músculos chicos que trabajan mucho, con tendones en las dos puntas.",
        Muscle::ForeShank => "Duro: la mitad es tendón, lo más nervudo del frente.",
        Muscle::Chuck => {
            "Medio: carne tierna entre dos láminas duras de tendón, y delgada en un venado chico."
        }
        Muscle::Cape => "Dura: telas de unos 5 mm que nunca descansan.",
        Muscle::NeckStraps => "Duras: cuerdas largas de fibra gruesa.",
        Muscle::Neck => "Duro: muchas capas con telas entre ellas, y mucho sabor.",
        Muscle::Brisket => "Duro: delgado y de fibra gruesa, con una grasa que se endurece y sabe mal.",
        Muscle::RibMeat => "Dura: pocos milímetros de carne entre hueso, telilla y sebo.",
        Muscle::FlankSteak => "Dura: fibras largas y gruesas, menos de 1 cm de grosor en un cola blanca.",
        Muscle::FlankSheets => "Duras: telas de 2 a 6 mm con telilla en ambas caras.",
        Muscle::Skirt => {
            "Media: fibras sueltas que aguantan un sellado rápido, pero delgada y llena de telilla."
        }
    }
}

/// Where its silverskin is.
pub fn silver(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => "Poca: la cubre como tapa un músculo delgado. Quítalo con su película.",
        Muscle::BottomRound => {
            "Mucha: una tela brillante cubre la cara externa. Mete el cuchillo debajo, con el filo inclinado hacia arriba."
        }
        Muscle::EyeRound => "Poca: una película alrededor del huso.",
        Muscle::Knuckle => {
            "Por dentro: telas brillantes separan sus cuatro músculos. Ábrela por ellas y limpia cada uno."
        }
        Muscle::Sirloin => "Poca: una película en la cara externa y una costura entre sus dos capas.",
        Muscle::TriTip => "Poca: por el borde delantero, donde pasa a la funda del muslo.",
        Muscle::HindShank => "Mucha: alrededor de cada vientre muscular, y tendón blanco en las dos puntas.",
        Muscle::PelvicTrim => "Algo, en cada trozo.",
        Muscle::Backstrap => {
            "Mucha pero sencilla: una sola tela gruesa hacia la piel, que sale de una sola pasada del cuchillo."
        }
        Muscle::Tenderloin => "Casi nada: una película, y la tira delgada del costado.",
        Muscle::BackTrim => "Mucha: alrededor de cada tira.",
        Muscle::FlatIron => {
            "Mucha: una película por fuera, y la lámina de dentro que la parte en dos mitades planas."
        }
        Muscle::MockTender => "Mucha: una tela dura por fuera, y un tendón por dentro hacia la articulación.",
        Muscle::Clod => {
            "Algo por fuera; por dentro, láminas de tendón entre sus cabezas, más gruesas en el codo."
        }
        Muscle::UnderBlade => "Algo: telas que lo cruzan y se juntan en el hombro.",
        Muscle::Arm => "Mucha: alrededor de cada músculo chico, con tendones en hombro y codo.",
        Muscle::ForeShank => {
            "Mucha: alrededor de cada vientre muscular, y tendones que siguen hasta los dedos."
        }
        Muscle::Chuck => "Dos láminas anchas de tendón, una en cada cara, con la carne en medio.",
        Muscle::Cape => "Algo: una película en ambas caras.",
        Muscle::NeckStraps => "Poca: una película alrededor de cada cuerda.",
        Muscle::Neck => "Mucha: telas entre las capas, y arriba el cordón amarillo de la nuca.",
        Muscle::Brisket => "Algo, con grasa como cera en las costuras: quítala bien.",
        Muscle::RibMeat => "Mucha: una piel dentro de las costillas, y telilla sobre cada tira.",
        Muscle::FlankSteak => "Algo: una película en ambas caras, y algunas bandas de tendón al través.",
        Muscle::FlankSheets => "Mucha: en ambas caras de cada una de las tres telas.",
        Muscle::Skirt => "Mucha: una piel dura en ambas caras. Quítala.",
    }
}

/// Which way its fibres run.
pub fn fibres(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "Del hueso de la nalga hacia abajo y adelante, a la cara interna de la rodilla; las de la tapa, casi rectas hacia abajo."
        }
        Muscle::BottomRound => {
            "De dos lados, como una pluma: sobre todo de la base de la cola hacia abajo y adelante, a la rodilla. Vuelve a mirar al cortar, que giran."
        }
        Muscle::EyeRound => "Rectas a lo largo del huso, del hueso de la nalga hacia abajo.",
        Muscle::Knuckle => "Rectas de cadera a rótula en el centro; a los lados se inclinan hacia dentro.",
        Muscle::Sirloin => {
            "De la punta de la cadera hacia atrás y abajo, a la articulación de la cadera; sus dos capas difieren un poco."
        }
        Muscle::TriTip => "En abanico desde la punta de la cadera hacia abajo. A medio corte, gira la pieza.",
        Muscle::HindShank => "En muchos vientres chicos, a lo largo de la canilla.",
        Muscle::PelvicTrim => "Para todos lados: cortas y mezcladas.",
        Muscle::Backstrap => {
            "Casi a lo largo de la espalda, inclinadas unos 10 grados hacia abajo y adelante."
        }
        Muscle::Tenderloin => {
            "A lo largo de la pieza, de las últimas costillas a la articulación de la cadera."
        }
        Muscle::BackTrim => "En tiras cortas, de 20 a 40 grados respecto al espinazo.",
        Muscle::FlatIron => "En dos mitades que se inclinan hacia la lámina del centro.",
        Muscle::MockTender => "A lo largo del cono, de lo alto del omóplato a la punta del hombro.",
        Muscle::Clod => "En abanico del borde trasero del omóplato, hacia abajo, al codo.",
        Muscle::UnderBlade => "En varios abanicos que se juntan en el hombro.",
        Muscle::Arm => "A lo largo del brazo, de la punta del hombro al codo.",
        Muscle::ForeShank => "Rectas a lo largo del antebrazo, del codo a la muñeca.",
        Muscle::Chuck => {
            "En abanico de lo alto del omóplato, hacia abajo a las costillas y hacia adelante al cuello."
        }
        Muscle::Cape => {
            "En abanicos: arriba, hacia la cresta del omóplato; atrás, de la espalda hacia adelante y abajo."
        }
        Muscle::NeckStraps => "A lo largo de las cuerdas, de detrás de la cabeza al hombro y al esternón.",
        Muscle::Neck => "A lo largo del cuello, en muchas capas.",
        Muscle::Brisket => {
            "La parte honda, a lo largo del esternón, hacia adelante y arriba; la de encima, recta al través."
        }
        Muscle::RibMeat => "En dos capas que se cruzan entre las costillas.",
        Muscle::FlankSteak => "Rectas a lo largo del vientre.",
        Muscle::FlankSheets => "Tres telas, tres direcciones.",
        Muscle::Skirt => "Cortas, rectas al través de la tira, de las costillas al centro.",
    }
}

/// What it wants to be, and why.
pub fn wants(muscle: Muscle) -> &'static str {
    match muscle {
        Muscle::TopRound => {
            "Bistecs al través de la fibra, o uno o dos asados enteros: alcanza para lo uno o lo otro."
        }
        Muscle::BottomRound => {
            "Un asado, cocido despacio; o rebanada delgada. Un bistec grueso a la parrilla decepciona."
        }
        Muscle::EyeRound => "Un asado chico de forma pareja, sin pasarlo de cocción y rebanado delgado.",
        Muscle::Knuckle => "Un asado; o sepárala por sus costuras, y la pieza del centro da buenos bistecs.",
        Muscle::Sirloin => "De tres a cinco bistecs, o un asado chico. A guiso o molida solo lo dañado.",
        Muscle::TriTip => "Un bistec, sellado entero. En un uapití es un asado.",
        Muscle::HindShank => {
            "Guiso, o chamorro entero a fuego lento: horas de calor húmedo vuelven gelatina su nervio."
        }
        Muscle::PelvicTrim => "Molida: sale en trozos.",
        Muscle::Backstrap => {
            "Bistecs o chuletas, a fuego fuerte y poco tiempo. En guiso o molido se desperdicia."
        }
        Muscle::Tenderloin => "Bistecs gruesos, o entero. Nada del venado necesita menos el molino.",
        Muscle::BackTrim => "Molida: hebras para la tina.",
        Muscle::FlatIron => "Dos bistecs planos, ya sin la lámina entre ellos.",
        Muscle::MockTender => "Guiso, o entero a fuego lento. Parece filete y no lo es.",
        Muscle::Clod => "Un asado de olla, hasta que se deshebre; o guiso.",
        Muscle::UnderBlade => "Guiso; guarda el cordón para la sartén.",
        Muscle::Arm => "Guiso: trozos chicos que piden tiempo.",
        Muscle::ForeShank => "Guiso, o chamorro con hueso a fuego lento.",
        Muscle::Chuck => "Guiso; en un uapití, un asado enrollado.",
        Muscle::Cape => "Molida: es demasiado delgada para algo entero.",
        Muscle::NeckStraps => "Guiso, en trozos cortos al través.",
        Muscle::Neck => "Un asado de olla deshuesado y enrollado, cocido y deshebrado.",
        Muscle::Brisket => "Molida, con la grasa bien quitada; uno grande puede ir a fuego lento.",
        Muscle::RibMeat => "Molida: tiras de entre los huesos.",
        Muscle::FlankSteak => {
            "Molida en un venado chico; en uno grande un bistec delgado, marinado, sellado y rebanado al través."
        }
        Muscle::FlankSheets => {
            "Molida, lo que esté limpio; aquí la mugre y la resequedad se llevan primero su parte."
        }
        Muscle::Skirt => {
            "Molida, o un bistec delgado, sellado rápido, de un venado grande, si el tiro no dio en las tripas."
        }
    }
}

/// What two muscles that are often taken for each other are told apart by.
pub fn mistaken(one: Muscle, other: Muscle) -> Option<&'static str> {
    let pair = if one <= other { (one, other) } else { (other, one) };
    Some(match pair {
        (Muscle::Backstrap, Muscle::Tenderloin) => {
            "El filete está dentro del cuerpo bajo el espinazo, el lomo, por fuera, encima; los dos son muy tiernos, y el lomo pesa cinco veces lo que el filete."
        }
        (Muscle::Tenderloin, Muscle::MockTender) => {
            "Se parecen en la tabla: el filete sale de dentro de la cintura y es lo más tierno, el juil, del frente del omóplato, y es duro."
        }
        (Muscle::EyeRound, Muscle::Tenderloin) => {
            "Los dos son husos: el cuete sale de atrás del muslo y es firme por dentro, el filete no."
        }
        (Muscle::TopRound, Muscle::BottomRound) => {
            "La cara es lo de dentro del muslo, limpia y medio tierna; la contracara, lo de fuera, de fibra gruesa bajo mucha telilla."
        }
        (Muscle::FlatIron, Muscle::MockTender) => {
            "La cresta del omóplato los separa: detrás, la plancha tierna con su lámina de nervio; delante, el juil duro."
        }
        (Muscle::Sirloin, Muscle::Backstrap) => {
            "El aguayón empieza donde acaba el lomo, en la cadera: más corto y grueso, con menos telilla, casi igual de tierno."
        }
        (Muscle::HindShank, Muscle::ForeShank) => {
            "La misma carne de la pata trasera y la delantera: ambos puro tendón, y el trasero pesa más del doble."
        }
        (Muscle::FlankSteak, Muscle::FlankSheets) => {
            "La falda es la única tira larga del vientre, de fibras rectas; las telas son las tres capas cruzadas del costado."
        }
        (Muscle::NeckStraps, Muscle::Neck) => {
            "Las tiras son las dos cuerdas bajo el cuello; el pescuezo está sobre los huesos en muchas capas y da un asado de olla."
        }
        (Muscle::Chuck, Muscle::Cape) => {
            "La tapa está sobre el omóplato y es una tela delgada; el diezmillo está debajo y es la hamaca que carga el pecho."
        }
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::tables;

    use super::*;
    use crate::text::es::names;

    #[test]
    fn a_place_does_not_name_its_muscle() {
        for muscle in Muscle::ALL {
            let name = names::muscle(muscle).to_lowercase();
            assert!(!place(muscle).to_lowercase().contains(&name), "{}", place(muscle));
        }
    }

    #[test]
    fn tenderness_and_silverskin_are_those_of_the_catalogue() {
        for muscle in Muscle::ALL {
            let row = tables::muscle(muscle);
            let expected = match row.tenderness {
                1 | 2 => "Dur",
                3 => "Medi",
                4 => "Tiern",
                _ => "Muy tierno",
            };
            assert!(tender(muscle).starts_with(expected), "{muscle:?}: {}", tender(muscle));
            assert_eq!(silver(muscle).starts_with("Mucha"), row.silverskin >= 4, "{}", silver(muscle));
        }
    }
}
