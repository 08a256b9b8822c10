//! Someone shares a plan, and nothing that anybody had is lost by it.

use crate::act;
use crate::find::{Name, Role};
use crate::folder::Folder;
use crate::page::{Page, Screen};
use crate::see;
use crate::stories::print_the_labels::run;

fn at(page: &Page, part: &str) {
    act::press(page, Role::Link, "Wish & share");
    see::shown(page, Role::Heading, "Wishes and sharing");
    act::press(page, Role::Button, part);
}

/// What is in a picture of the screen, by `rqrr`.
fn read_by_another(picture: &std::path::Path) -> Vec<String> {
    let file = std::io::BufReader::new(std::fs::File::open(picture).expect("a picture"));
    let mut reader = png::Decoder::new(file).read_info().expect("a PNG");
    let mut pixels = vec![0; reader.output_buffer_size().expect("a size")];
    let frame = reader.next_frame(&mut pixels).expect("a frame");
    let each = frame.color_type.samples();
    let (width, height) = (frame.width as usize, frame.height as usize);
    // A code is black and white, so any channel will do.
    let grey = |x: usize, y: usize| pixels[(y * width + x) * each];
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(width, height, grey);
    image.detect_grids().iter().filter_map(|grid| grid.decode().ok()).map(|(_, text)| text).collect()
}

/// The code on the screen is read by `ZBar` and by `rqrr`, in the light and in the dark.
#[test]
fn the_code_on_the_screen_leads_to_the_plan() {
    for dark in [false, true] {
        let page = Page::open(Screen::PHONE);
        if dark {
            page.prefer_dark();
        }
        at(&page, "Share");
        // One who works from it reads it; one who plans on gets the plan itself.
        act::press(&page, Role::Button, if dark { "Who plans on" } else { "Who works from it" });
        see::says(&page, Role::Region, Name::from("Share"), "No title, owner, name or tag");
        see::no_sideways_scrolling(&page);
        let folder = Folder::new(if dark { "code-dark" } else { "code-light" });
        page.script("document.getElementById('code').scrollIntoView()");
        page.settle();
        let picture = folder.0.join("screen.png");
        page.screenshot(&picture.to_string_lossy());
        let leads_to = if dark { "/" } else { "/read.html" };
        let plan = page.script(&format!("location.origin + '{leads_to}' + location.hash"));
        let plan = plan.as_str().unwrap_or_default();
        assert!(plan.contains('#'), "{plan}");
        assert_eq!(run("zbarimg", &["--quiet", "--raw", "screen.png"], &folder.0).trim(), plan);
        assert_eq!(read_by_another(&picture), [plan]);
    }
}

#[test]
fn names_go_along_only_if_that_is_ticked() {
    let page = Page::open(Screen::DESKTOP);
    act::fill(&page, Role::Textbox, "Title of the plan", "north ridge doe");
    act::press(&page, Role::Heading, "Hindsaddle");
    at(&page, "Share");
    let silent = page.fragment();
    act::press(&page, Role::Checkbox, "Titles, names and tags, too");
    see::says(&page, Role::Region, Name::from("Share"), "(“north ridge doe”)");
    page.until("an address with the title", || {
        let now = page.fragment();
        if now.len() > silent.len() { Ok(()) } else { Err(now) }
    });
}

#[test]
fn a_link_takes_no_plan_away() {
    let page = Page::open(Screen::DESKTOP);
    act::choose(&page, "Knuckle becomes", "Stew");
    let mine = page.fragment_of_plan();
    act::choose(&page, "Knuckle becomes", "Grind");
    act::choose(&page, "Neck becomes", "Grind");
    let theirs = page.fragment_of_plan();
    page.go_to(&mine);
    see::says(&page, Role::Alert, Name::Any, "Yours is kept");
    // Undo is one way back; the list is the other, and outlives the window.
    at(&page, "Kept plans");
    act::fill(&page, Role::Textbox, "Name", "all ground");
    act::press(&page, Role::Heading, "Kept plans");
    page.reload();
    act::press(&page, Role::Button, "Kept plans");
    assert_eq!(see::value(&page, Role::Textbox, "Name"), "all ground");
    act::press(&page, Role::Button, "Remove");
    see::gone(&page, Role::Textbox, "Name");
    act::press(&page, Role::Button, "Bring it back");
    act::press(&page, Role::Button, "Open");
    page.until("the plan that was kept", || {
        let now = page.fragment();
        if now == theirs { Ok(()) } else { Err(now) }
    });
    // And the one that had to go for it is kept in its turn.
    assert_eq!(see::count(&page, Role::Button, "Open"), 2);
}

/// Sixty plans are kept: another is opened all the same, and what is said of one's own is true.
#[test]
fn a_full_list_is_said_and_undo_is_the_way_back() {
    let page = Page::open(Screen::DESKTOP);
    act::choose(&page, "Knuckle becomes", "Stew");
    let mine = page.fragment_of_plan();
    page.script("localStorage.setItem('hindsaddle.kept', Array.from({ length: 60 }, (_, place) => '2026-11-26\\t\\t' + place).join('\\n')); true");
    page.go_to("#1DCBVDKh____-izo");
    see::says(&page, Role::Alert, Name::Any, "could not be kept");
    act::press(&page, Role::Button, "Undo");
    assert_eq!(page.fragment_of_plan(), mine);
}
