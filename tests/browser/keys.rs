//! Owns the keyboard: which code goes with which key.

use serde_json::{Value, json};

/// A key that a story presses.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Key {
    Tab,
    Enter,
    Space,
    Escape,
    Up,
    Left,
    Right,
    End,
    Backspace,
    /// A letter with Control: undo is `Control('z')`.
    Control(char),
    /// A letter with Control and Shift.
    ControlShift(char),
    /// What types this character.
    Letter(char),
}

const CONTROL: u32 = 2;
const SHIFT: u32 = 8;

impl Key {
    /// The two events that pressing and letting go make.
    pub(crate) fn events(self) -> [Value; 2] {
        let (name, code, number, text, modifiers) = match self {
            Self::Tab => named("Tab", 9),
            Self::Enter => ("Enter".to_owned(), "Enter".to_owned(), 13, "\r".to_owned(), 0),
            Self::Space => (" ".to_owned(), "Space".to_owned(), 32, " ".to_owned(), 0),
            Self::Escape => named("Escape", 27),
            Self::Up => named("ArrowUp", 38),
            Self::Left => named("ArrowLeft", 37),
            Self::Right => named("ArrowRight", 39),
            Self::End => named("End", 35),
            Self::Backspace => named("Backspace", 8),
            Self::Control(letter) => with_letter(letter, CONTROL),
            Self::ControlShift(letter) => with_letter(letter.to_ascii_uppercase(), CONTROL | SHIFT),
            Self::Letter(letter) => (letter.to_string(), String::new(), 0, letter.to_string(), 0),
        };
        let event =
            json!({ "key": name, "code": code, "windowsVirtualKeyCode": number, "modifiers": modifiers });
        let mut down = event.clone();
        down["type"] = json!(if text.is_empty() { "rawKeyDown" } else { "keyDown" });
        down["text"] = json!(text);
        // Chromium leaves the editing shortcuts to the system, and here there is none.
        if matches!(self, Self::Control('a')) {
            down["commands"] = json!(["selectAll"]);
        }
        let mut up = event;
        up["type"] = json!("keyUp");
        [down, up]
    }
}

type Strokes = (String, String, u32, String, u32);

fn named(name: &str, number: u32) -> Strokes {
    (name.to_owned(), name.to_owned(), number, String::new(), 0)
}

fn with_letter(letter: char, modifiers: u32) -> Strokes {
    let upper = letter.to_ascii_uppercase();
    (letter.to_string(), format!("Key{upper}"), u32::from(upper), String::new(), modifiers)
}
