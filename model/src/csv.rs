//! Rows as comma-separated text (RFC 4180) that is safe to open in a spreadsheet.

/// Every row ends with CRLF. A field that a spreadsheet would take for a formula begins with an apostrophe.
pub fn csv<R, F>(rows: R) -> String
where
    R: IntoIterator,
    R::Item: IntoIterator<Item = F>,
    F: AsRef<str>,
{
    let mut text = String::new();
    for row in rows {
        let mut fields = 0;
        let start = text.len();
        for field in row {
            if fields > 0 {
                text.push(',');
            }
            push_field(&mut text, &safe(field.as_ref()));
            fields += 1;
        }
        // A row of one empty field would be an empty line, which is no row.
        if fields > 0 && text.len() == start {
            text.push_str("\"\"");
        }
        text.push_str("\r\n");
    }
    text
}

/// The field as it is written: with an apostrophe before what would be a formula.
pub fn safe(field: &str) -> String {
    if field.starts_with(['=', '+', '-', '@', '\t', '\r']) { format!("'{field}") } else { field.to_owned() }
}

fn push_field(text: &mut String, field: &str) {
    let is_plain =
        !field.contains([',', '"', '\r', '\n']) && !field.starts_with(' ') && !field.ends_with(' ');
    if is_plain {
        text.push_str(field);
        return;
    }
    text.push('"');
    for letter in field.chars() {
        if letter == '"' {
            text.push('"');
        }
        text.push(letter);
    }
    text.push('"');
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_needs_quotes_has_them() {
        assert_eq!(
            csv([["plain", "a,b", "say \"when\"", "", " edge"]]),
            "plain,\"a,b\",\"say \"\"when\"\"\",,\" edge\"\r\n"
        );
        assert_eq!(csv([[""]]), "\"\"\r\n");
        assert_eq!(csv([["=1+1"], ["-x"]]), "'=1+1\r\n'-x\r\n");
    }
}
