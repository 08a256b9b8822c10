//! Numbers to bits and back, most significant bit first.

/// Bits on their way into a link.
#[derive(Default)]
pub(super) struct Writer {
    bytes: Vec<u8>,
    filled: u32,
}

impl Writer {
    /// Appends the low `width` bits of `value`.
    pub(super) fn put(&mut self, value: u32, width: u32) {
        debug_assert!(width == 32 || value < 1 << width, "{value} does not fit in {width} bits");
        for bit in (0..width).rev() {
            if self.filled == 0 {
                self.bytes.push(0);
            }
            if value >> bit & 1 == 1
                && let Some(last) = self.bytes.last_mut()
            {
                *last |= 0x80 >> self.filled;
            }
            self.filled = (self.filled + 1) % 8;
        }
    }

    /// Appends one bit.
    pub(super) fn flag(&mut self, value: bool) {
        self.put(u32::from(value), 1);
    }

    /// The bytes, the last one filled up with zeros.
    pub(super) fn into_bytes(self) -> Vec<u8> {
        self.bytes
    }
}

/// The bits ran out.
#[derive(Debug)]
pub(super) struct Ended;

/// Bits on their way out of a link.
pub(super) struct Reader<'a> {
    bytes: &'a [u8],
    at: usize,
}

impl<'a> Reader<'a> {
    pub(super) fn new(bytes: &'a [u8]) -> Self {
        Self { bytes, at: 0 }
    }

    /// The next `width` bits as a number.
    pub(super) fn take(&mut self, width: u32) -> Result<u32, Ended> {
        let mut value = 0;
        for _ in 0..width {
            let byte = self.bytes.get(self.at / 8).ok_or(Ended)?;
            value = value << 1 | u32::from(byte >> (7 - self.at % 8) & 1);
            self.at += 1;
        }
        Ok(value)
    }

    /// The next bit.
    pub(super) fn flag(&mut self) -> Result<bool, Ended> {
        Ok(self.take(1)? == 1)
    }

    /// How many bytes have been begun.
    pub(super) fn bytes_read(&self) -> usize {
        self.at.div_ceil(8)
    }
}
