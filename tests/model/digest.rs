//! The native half of "the same plan gives the same bits on every device"; tests/wasm is the other half.
//! `UPDATE_EXPECT=1` writes the file anew after a change of the model that was meant.

#[test]
fn this_machine_computes_the_bits_on_file() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/digests.txt");
    let now = hindsaddle_tests::digests();
    if std::env::var_os("UPDATE_EXPECT").is_some() {
        std::fs::write(path, &now).unwrap();
    }
    assert_eq!(now, std::fs::read_to_string(path).unwrap());
}
