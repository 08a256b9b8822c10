//! Keeping lists of a few dozen in order. The library's sort is 5 to 16 kB of the page for each type it is used on.

/// Puts an item before the first that comes after it, or at the end.
pub(crate) fn put<T>(list: &mut Vec<T>, item: T, comes_after: impl FnMut(&T) -> bool) {
    let place = list.iter().position(comes_after).unwrap_or(list.len());
    list.insert(place, item);
}

/// Sorts a list; equal items stay as they stand.
pub(crate) fn sort<T>(list: &mut [T], is_before: impl Fn(&T, &T) -> bool) {
    for end in 1..list.len() {
        let mut at = end;
        while at > 0 && is_before(&list[at], &list[at - 1]) {
            list.swap(at, at - 1);
            at -= 1;
        }
    }
}
