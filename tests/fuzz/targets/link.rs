//! Any bytes as a link, as a lesson and as a file of own figures: as they are, and as the payload of each version behind a
//! right checksum, which a fuzzer would not find by itself. Nothing panics; what opens is written again as the same text,
//! and can be forecast, packed, ordered and dealt.

#![no_main]

use data_encoding::BASE64URL_NOPAD;
use hindsaddle_model::deal::deal;
use hindsaddle_model::forecast::forecast;
use hindsaddle_model::link::{Names, lesson, read, write};
use hindsaddle_model::order::working_order;
use hindsaddle_model::own;
use hindsaddle_model::packages::packages;
use hindsaddle_model::report::report;
use libfuzzer_sys::fuzz_target;

const CRC: crc::Crc<u16> = crc::Crc::<u16>::new(&crc::CRC_16_IBM_SDLC);

fn signed(version: &str, payload: &[u8]) -> String {
    let mut digest = CRC.digest();
    if version != "1" {
        digest.update(version.as_bytes());
    }
    digest.update(payload);
    let bytes = [payload, &digest.finalize().to_be_bytes()].concat();
    format!("{version}{}", BASE64URL_NOPAD.encode(&bytes))
}

fn open(text: &str) {
    if let Ok(season) = read(text) {
        let again = write(&season, Names::Included);
        assert!(text.contains(&again), "{text} is written as {again}");
        for plan in season.animals() {
            let expected = forecast(plan);
            assert!(expected.take_home.low() <= expected.take_home.high());
            report(plan, &expected);
            working_order(plan);
            deal(&packages(&expected, None), season.partners());
        }
    }
    if let Ok(class) = lesson::read(text) {
        let again = lesson::write(&class);
        assert!(text.contains(&again), "{text} is written as {again}");
    }
    let animals = own::read(text);
    assert_eq!(own::read(&own::write(&animals)), animals);
}

fuzz_target!(|bytes: &[u8]| {
    if let Ok(text) = std::str::from_utf8(bytes) {
        open(text);
    }
    for version in ["1", "2", "3", "L1"] {
        open(&signed(version, bytes));
    }
});
