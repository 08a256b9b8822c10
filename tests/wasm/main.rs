//! The same forecasts in a browser: every number bit for bit as on the machine that wrote tests/digests.txt.

#![cfg(target_arch = "wasm32")]

use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn a_browser_computes_the_same_bits() {
    let (here, there) = (hindsaddle_tests::digests(), include_str!("../digests.txt"));
    for (here, there) in here.lines().zip(there.lines()) {
        assert_eq!(here, there);
    }
    assert_eq!(here.lines().count(), there.lines().count());
    assert!(here.lines().count() as u64 > hindsaddle_tests::DIGESTED);
}
