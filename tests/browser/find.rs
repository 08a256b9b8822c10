//! Owns which part of the page is meant: by role and accessible name, as a screen reader says them, and by
//! nothing else. What the accessibility tree leaves out does not exist for a story.

use serde_json::{Value, json};

use crate::page::Page;

/// What a part of the page is to its user.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Role {
    Alert,
    Button,
    Checkbox,
    Combobox,
    Heading,
    Image,
    Link,
    ListItem,
    Main,
    Radio,
    Region,
    Slider,
    Status,
    Term,
    Textbox,
    /// The line of a `<details>` that opens and closes it.
    Disclosure,
}

impl Role {
    /// Chromium's word for it.
    const fn in_devtools(self) -> &'static str {
        match self {
            Self::Alert => "alert",
            Self::Button => "button",
            Self::Checkbox => "checkbox",
            Self::Combobox => "combobox",
            Self::Heading => "heading",
            Self::Image => "image",
            Self::Link => "link",
            Self::ListItem => "listitem",
            Self::Main => "main",
            Self::Radio => "radio",
            Self::Region => "region",
            Self::Slider => "slider",
            Self::Status => "status",
            Self::Term => "term",
            Self::Textbox => "textbox",
            Self::Disclosure => "DisclosureTriangle",
        }
    }
}

/// The accessible name that is meant. A plain `&str` means exactly that name.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Name<'a> {
    Exactly(&'a str),
    Starting(&'a str),
    Any,
}

/// A name that begins so, for names that also say a state: `starting("Backstrap, left")`.
pub(crate) const fn starting(beginning: &str) -> Name<'_> {
    Name::Starting(beginning)
}

impl<'a> From<&'a str> for Name<'a> {
    fn from(name: &'a str) -> Self {
        Self::Exactly(name)
    }
}

impl<'a> From<&'a String> for Name<'a> {
    fn from(name: &'a String) -> Self {
        Self::Exactly(name)
    }
}

impl Name<'_> {
    fn fits(self, name: &str) -> bool {
        match self {
            Self::Exactly(wanted) => name == wanted,
            Self::Starting(beginning) => name.starts_with(beginning),
            Self::Any => true,
        }
    }
}

/// A part of the page, as it was when it was found.
pub(crate) struct Found {
    pub(crate) name: String,
    /// What stands in it, for fields.
    pub(crate) value: String,
    node: Value,
}

impl Found {
    /// A state such as `pressed`, `checked`, `disabled`, `expanded` or `focused`; absent is false.
    pub(crate) fn is(&self, state: &str) -> bool {
        self.state(state).is_some_and(|value| value == &json!(true) || value == &json!("true"))
    }

    fn state(&self, state: &str) -> Option<&Value> {
        let states = self.node["properties"].as_array()?;
        states.iter().find(|property| property["name"] == state).map(|property| &property["value"]["value"])
    }

    /// Calls a JavaScript function whose `this` is the element.
    pub(crate) fn call(&self, page: &Page, function: &str, arguments: &[Value]) -> Result<Value, String> {
        let object =
            page.try_devtools("DOM.resolveNode", &json!({ "backendNodeId": self.node["backendDOMNodeId"] }))?;
        let arguments: Vec<Value> = arguments.iter().map(|value| json!({ "value": value })).collect();
        let answer = page.try_devtools(
            "Runtime.callFunctionOn",
            &json!({
                "objectId": object["object"]["objectId"], "functionDeclaration": function, "arguments": arguments,
                "returnByValue": true, "awaitPromise": true, "userGesture": true,
            }),
        )?;
        let thrown = &answer["exceptionDetails"];
        if thrown.is_null() {
            return Ok(answer["result"]["value"].clone());
        }
        Err(thrown["exception"]["description"].as_str().unwrap_or("it threw").to_owned())
    }
}

/// All that fit, in the order of the page, without waiting.
pub(crate) fn all(page: &Page, role: Role, name: Name) -> Result<Vec<Found>, String> {
    let root = page.try_devtools("DOM.getDocument", &json!({ "depth": 0 }))?;
    let query = json!({ "backendNodeId": root["root"]["backendNodeId"], "role": role.in_devtools() });
    let answer = page.try_devtools("Accessibility.queryAXTree", &query)?;
    let nodes = answer["nodes"].as_array().map(Vec::as_slice).unwrap_or_default();
    let text = |value: &Value| match &value["value"] {
        Value::String(text) => text.clone(),
        Value::Number(number) => number.to_string(),
        Value::Null | Value::Bool(_) | Value::Array(_) | Value::Object(_) => String::new(),
    };
    Ok(nodes
        .iter()
        .filter(|node| node["ignored"] != true)
        .map(|node| Found { name: text(&node["name"]), value: text(&node["value"]), node: node.clone() })
        .filter(|found| name.fits(&found.name))
        .collect())
}

/// The one that fits, without waiting; `Err` says what there is instead.
pub(crate) fn one(page: &Page, role: Role, name: Name) -> Result<Found, String> {
    let found = all(page, role, name)?;
    if found.is_empty() {
        let others: Vec<String> = all(page, role, Name::Any)?.into_iter().map(|other| other.name).collect();
        return Err(format!("there is no {role:?} {name:?}, but these: {others:?}"));
    }
    only(found, role, name)
}

fn only(mut found: Vec<Found>, role: Role, name: Name) -> Result<Found, String> {
    let count = found.len();
    match found.pop() {
        Some(found) if count == 1 => Ok(found),
        Some(_) | None => Err(format!("there are {count} of {role:?} {name:?}")),
    }
}
