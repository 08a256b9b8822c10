//! Owns waiting: look again and again, until it is there or the time is up. Nothing else here may sleep.

use std::thread;
use std::time::{Duration, Instant};

const AT_MOST: Duration = Duration::from_secs(10);
const BETWEEN_LOOKS: Duration = Duration::from_millis(15);

/// Looks until `look` finds something. `Err` says what is seen instead, and is shown if the time is up.
pub(crate) fn until<T>(mut look: impl FnMut() -> Result<T, String>) -> Result<T, String> {
    #[expect(clippy::disallowed_methods, reason = "stories run on this machine, which has a clock")]
    let now = Instant::now;
    let started = now();
    loop {
        match look() {
            Ok(found) => return Ok(found),
            Err(seen) if now().duration_since(started) > AT_MOST => return Err(seen),
            Err(_) => thread::sleep(BETWEEN_LOOKS),
        }
    }
}
