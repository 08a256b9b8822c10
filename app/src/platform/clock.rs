//! The clock of this device.

use web_sys::js_sys::Date;

/// Year, month (1 to 12) and day where the reader is.
pub fn today() -> (i32, u8, u8) {
    let now = Date::new_0();
    (now.get_full_year().cast_signed(), now.get_month() as u8 + 1, now.get_date() as u8)
}

/// The day where the reader is, as files have it: 2026-11-25 (ISO 8601).
pub fn day() -> String {
    let (year, month, day) = today();
    format!("{year}-{month:02}-{day:02}")
}

/// Year, month, day, hour, minute and second in universal time.
pub fn now_utc() -> (i32, u8, u8, [u8; 3]) {
    let now = Date::new_0();
    let time = [now.get_utc_hours(), now.get_utc_minutes(), now.get_utc_seconds()];
    (
        now.get_utc_full_year().cast_signed(),
        now.get_utc_month() as u8 + 1,
        now.get_utc_date() as u8,
        time.map(|part| part as u8),
    )
}
