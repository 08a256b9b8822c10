//! Reads the authored plate in assets/plate into constants. An SVG edited wrongly fails the build with the
//! file's and the path's name and what is wrong.

mod drawing;
mod path;
mod species;

use std::path::Path;

use drawing::Drawing;

/// The views, and the files of the figures that differ from the plate's own deer.
const VIEWS: [&str; 3] = ["outer", "inner", "above"];
const FIGURES: [&str; 8] = ["elk", "moose", "pronghorn", "caribou", "roe", "mule", "fallow", "sika"];

fn main() {
    match code() {
        Ok(code) => {
            let out = std::env::var("OUT_DIR").expect("cargo sets OUT_DIR");
            std::fs::write(Path::new(&out).join("plate.rs"), code).expect("OUT_DIR can be written");
        }
        Err(problem) => println!("cargo::error={problem}"),
    }
}

fn code() -> Result<String, String> {
    let mut code = String::new();
    let views = VIEWS.map(|file| (file, read(file)));
    let mut drawings = Vec::new();
    for (file, drawing) in views {
        let drawing = drawing?;
        let drawing = if file == "above" {
            drawing.left_half().map_err(|problem| said(file, &problem))?
        } else {
            drawing
        };
        code.push_str(&drawing.code(file).map_err(|problem| said(file, &problem))?);
        drawings.push(drawing);
    }
    let [outer, inner, above] = &drawings[..] else { return Err("there are three views".into()) };
    if outer.landmarks() != inner.landmarks() {
        return Err("assets/plate: outer.svg and inner.svg have not the same landmarks".into());
    }
    for figure in FIGURES {
        let file = format!("species/{figure}");
        let drawing = read(&file)?.left_half().map_err(|problem| said(&file, &problem))?;
        code.push_str(
            &species::code(figure, &drawing, outer, above).map_err(|problem| said(&file, &problem))?,
        );
    }
    Ok(code)
}

fn read(file: &str) -> Result<Drawing, String> {
    let path = format!("../assets/plate/{file}.svg");
    println!("cargo::rerun-if-changed={path}");
    std::fs::read_to_string(&path)
        .map_err(|error| error.to_string())
        .and_then(|text| Drawing::read(&text))
        .map_err(|problem| said(file, &problem))
}

fn said(file: &str, problem: &str) -> String {
    format!("assets/plate/{file}.svg: {problem}")
}
