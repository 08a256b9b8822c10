//! Someone works on the drawing itself: closer, painted, wounded, lifted, divided, named, saved, printed.

use crate::act;
use crate::find::{Name, Role, starting};
use crate::keys::Key;
use crate::page::{A4, LETTER, Page, Screen};
use crate::see;

fn tally(page: &Page) -> String {
    see::text(page, Role::Status, Name::from("Tally"))
}

/// Width of what is shown of the drawing, in its own units.
fn shown(page: &Page) -> f64 {
    page.script("document.querySelector('#plate').viewBox.baseVal.width").as_f64().expect("a number")
}

#[test]
fn a_brush_paints_one_muscle_after_another() {
    let page = Page::open(Screen::DESKTOP);
    let before = tally(&page);
    act::press(&page, Role::Button, "Paint");
    act::press(&page, Role::Button, "Grind");
    for muscle in ["Knuckle: ", "Backstrap: ", "Neck: "] {
        act::press(&page, Role::Button, starting(muscle));
    }
    see::shown(&page, Role::Button, starting("Knuckle: Grind"));
    see::shown(&page, Role::Button, starting("Backstrap: Grind"));
    see::shown(&page, Role::Button, starting("Neck: Grind"));
    for _ in 0..3 {
        act::press(&page, Role::Button, "Undo");
    }
    assert_eq!(tally(&page), before);
}

#[test]
fn a_wound_is_tapped_moved_enlarged_and_removed() {
    let page = Page::open(Screen::DESKTOP);
    let before = tally(&page);
    act::press(&page, Role::Button, "Wound");
    see::says(&page, Role::Region, Name::from("Wound"), "do not grind it");
    let rump = page.middle("#touch-knuckle");
    act::drag(&page, rump, rump);
    see::shown(&page, Role::Button, starting("Wound 1, left"));
    let wounded = see::next_text(&page, Role::Status, "Tally", &before);
    // By its handle and the keyboard: larger, then elsewhere, then gone.
    let handle = page.middle(".wound-handle path");
    let over_the_ribs = page.middle("#touch-rib_meat");
    act::drag(&page, handle, over_the_ribs);
    see::shown(&page, Role::Button, starting("Rib meat: Grind; to the tub; part of it spoiled"));
    let moved = see::next_text(&page, Role::Status, "Tally", &wounded);
    page.script("document.querySelector('.wound-handle').focus()");
    for _ in 0..4 {
        act::key(&page, Key::Letter('+'));
    }
    see::next_text(&page, Role::Status, "Tally", &moved);
    act::press(&page, Role::Button, "Remove wound 1");
    assert_eq!(tally(&page), before);
}

#[test]
fn lifting_layer_by_layer_shows_what_lies_beneath() {
    let page = Page::open(Screen::DESKTOP);
    act::press(&page, Role::Button, "Lift off");
    see::gone(&page, Role::Button, starting("Top round: "));
    page.script("document.querySelector('input[type=range]').focus()");
    act::key(&page, Key::End);
    see::says(&page, Role::Region, Name::from("Lift off"), "Neck, back and belly off too");
    see::shown(&page, Role::Button, starting("Tenderloin: "));
    see::gone(&page, Role::Button, starting("Sirloin: "));
    act::press(&page, Role::Button, starting("Top round: "));
    see::shown(&page, Role::Heading, "Top round");
}

#[test]
fn a_muscle_is_divided_by_dragging_its_handle_and_by_its_keys() {
    let page = Page::open(Screen::DESKTOP);
    act::press(&page, Role::Button, starting("Backstrap: "));
    let from = page.middle(".handle .knob");
    let to = page.middle("#touch-sirloin");
    act::drag(&page, from, (f64::midpoint(from.0, to.0), f64::midpoint(from.1, to.1)));
    see::shown(&page, Role::Heading, "Part 2");
    let first = see::value(&page, Role::Slider, starting("End of part 1"));
    page.script("document.querySelector('.handle').focus()");
    act::key(&page, Key::Right);
    let next = see::value(&page, Role::Slider, starting("End of part 1"));
    assert_ne!(first, next);
    // One drag and one key: two steps back to a whole muscle.
    act::press(&page, Role::Button, "Undo");
    act::press(&page, Role::Button, "Undo");
    see::gone(&page, Role::Heading, "Part 2");
}

#[test]
fn two_fingers_and_the_wheel_come_closer_and_the_way_back_is_a_tap() {
    let phone = Page::open(Screen::PHONE);
    let whole = shown(&phone);
    act::pinch(&phone, phone.middle("#plate"), 60.0, 180.0);
    let near = shown(&phone);
    assert!(near < whole / 2.0, "{near} of {whole}");
    act::press(&phone, Role::Button, "‹ Whole animal");
    assert_eq!(shown(&phone), whole);
    act::press(&phone, Role::Button, "Hind leg");
    assert!(shown(&phone) < whole);
    let desk = Page::open(Screen::DESKTOP);
    let whole = shown(&desk);
    act::wheel_with_control(&desk, desk.middle("#touch-backstrap"), -300.0);
    let near = desk.until("to be closer", || match shown(&desk) {
        width if width < whole => Ok(width),
        width => Err(format!("{width}")),
    });
    // One may drag what is closer; a drag decides nothing.
    let from = desk.middle("#plate");
    act::drag(&desk, from, (from.0 + 80.0, from.1));
    assert_eq!(shown(&desk), near);
    see::gone(&desk, Role::Button, "Close");
}

#[test]
fn names_are_written_beside_the_muscles_and_on_a_phone_in_a_key() {
    let desk = Page::open(Screen::DESKTOP);
    act::press(&desk, Role::Button, "Names");
    act::press(&desk, Role::Button, "Anatomical");
    let written = desk.script("[...document.querySelectorAll('.label text')].map(text => text.textContent)");
    assert!(written.as_array().unwrap().contains(&"M. infraspinatus".into()), "{written}");
    let phone = Page::open(Screen::PHONE);
    act::press(&phone, Role::Button, "Names");
    act::press(&phone, Role::Button, "Trade names");
    see::says(&phone, Role::Region, Name::from("Names"), "Backstrap");
}

#[test]
fn the_picture_is_saved_with_the_plan_on_it() {
    let page = Page::open(Screen::DESKTOP);
    let folder = std::env::temp_dir().join(format!("plate-{}", std::process::id()));
    std::fs::create_dir_all(&folder).unwrap();
    page.save_into(&folder);
    act::press(&page, Role::Button, "Save");
    act::press(&page, Role::Button, "Drawing (SVG)");
    see::says(&page, Role::Alert, Name::Any, "Saved");
    let drawing = page.until("the drawing among the files", || {
        let text = std::fs::read_to_string(folder.join("hindsaddle-plate.svg")).unwrap_or_default();
        if text.ends_with("</svg>") { Ok(text) } else { Err(format!("{} bytes", text.len())) }
    });
    let svg = roxmltree::Document::parse(&drawing).unwrap();
    let classes = |wanted: &str| {
        let nodes = svg.descendants().filter(|node| node.attribute("class") == Some(wanted));
        nodes.count()
    };
    assert!(classes("knife") > 8 && classes("touch") == 0, "{} {}", classes("knife"), classes("touch"));
    assert!(drawing.contains("--steak"), "the colours travel with the picture");
    act::press(&page, Role::Button, "Picture (PNG)");
    let picture = page.until("the picture among the files", || {
        match std::fs::read(folder.join("hindsaddle-plate.png")) {
            Ok(bytes) if bytes.ends_with(b"IEND\xaeB`\x82") => Ok(bytes),
            other => Err(format!("{:?} bytes", other.map(|bytes| bytes.len()))),
        }
    });
    // A PNG names its width behind the signature and the head of its first chunk.
    assert_eq!(&picture[..8], b"\x89PNG\r\n\x1a\n");
    assert_eq!(u32::from_be_bytes(picture[16..20].try_into().unwrap()), 2400);
    std::fs::remove_dir_all(&folder).unwrap();
}

#[test]
fn worksheet_and_key_print_on_one_page_each() {
    let page = Page::open(Screen::DESKTOP);
    for view in ["Outer side", "Inner side", "From above"] {
        act::press(&page, Role::Button, view);
        act::press(&page, Role::Button, "Save");
        act::press(&page, Role::Button, "Worksheet and key");
        see::shown(&page, Role::Heading, "Name the muscles");
        see::shown(&page, Role::Heading, "Name the muscles: answer key");
        for paper in [A4, LETTER] {
            assert_eq!(page.sheets(paper), 2, "{view} on {paper:?}");
        }
        act::press(&page, Role::Button, "Close");
        act::press(&page, Role::Button, "Save");
    }
}
