//! Bytes as letters, with a checksum at their end.
//!
//! Base 32 in digits and capitals without I, L, O and U: five bits a letter, safe in an address,
//! untouched by programs that mark up messages, readable aloud; and QR codes pack such letters in
//! 5.5 bits where base64url costs them 8.

const LETTERS: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/// The letters of bytes and of their checksum.
pub(super) fn seal(mut bytes: Vec<u8>) -> String {
    let sum = checksum(&bytes);
    bytes.extend(sum.to_be_bytes());
    letters(&bytes)
}

/// The bytes of letters whose checksum fits; `None` for any other text.
pub(super) fn open(text: &str) -> Option<Vec<u8>> {
    let mut bytes = bytes(text)?;
    let length = bytes.len().checked_sub(4)?;
    let sum = bytes.split_off(length);
    (checksum(&bytes).to_be_bytes()[..] == sum[..]).then_some(bytes)
}

/// Bytes as letters; bits left over in the last letter are zero.
pub(super) fn letters(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len() * 8 / 5 + 1);
    let (mut held, mut bits) = (0_u32, 0);
    for byte in bytes {
        held = (held << 8) | u32::from(*byte);
        bits += 8;
        while bits >= 5 {
            bits -= 5;
            text.push(letter(held >> bits));
        }
        held &= (1 << bits) - 1;
    }
    if bits > 0 {
        text.push(letter(held << (5 - bits)));
    }
    text
}

fn letter(value: u32) -> char {
    char::from(LETTERS[(value & 31) as usize])
}

/// Letters as bytes. Small letters do as well; `None` where a letter is none of the 32, is one too
/// many, or where bits left over are not zero: each sequence of bytes has one text only.
pub(super) fn bytes(text: &str) -> Option<Vec<u8>> {
    let mut bytes = Vec::with_capacity(text.len() * 5 / 8);
    let (mut held, mut bits) = (0_u32, 0);
    for letter in text.bytes() {
        let upper = letter.to_ascii_uppercase();
        let value = LETTERS.iter().position(|known| *known == upper)?;
        held = (held << 5) | u32::try_from(value).ok()?;
        bits += 5;
        if bits >= 8 {
            bits -= 8;
            bytes.push(u8::try_from(held >> bits).ok()?);
            held &= (1 << bits) - 1;
        }
    }
    (bits < 5 && held == 0).then_some(bytes)
}

/// CRC-32 (ISO 3309, reflected polynomial 0xEDB88320): any change within 32 bits on end is found,
/// so any one changed letter is.
fn checksum(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(!0_u32, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| {
            (sum >> 1) ^ (0xEDB8_8320 * (sum & 1))
        })
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_checksum_has_its_published_value() {
        // The usual check value of CRC-32 (from memory): the digits 1 to 9.
        assert_eq!(checksum(b"123456789"), 0xCBF4_3926);
    }

    #[test]
    fn every_length_comes_back() {
        for length in 0..40_u8 {
            let bytes: Vec<u8> = (0..length)
                .map(|at| at.wrapping_mul(37).wrapping_add(201))
                .collect();
            let sealed = seal(bytes.clone());
            assert_eq!(open(&sealed), Some(bytes.clone()));
            assert_eq!(open(&sealed.to_lowercase()), Some(bytes));
        }
    }

    #[test]
    fn left_over_bits_are_zero() {
        assert_eq!(bytes("00"), Some(vec![0]));
        assert_eq!(bytes("01"), None);
        assert_eq!(bytes("000"), None, "a letter too many");
        assert_eq!(bytes("0U"), None);
    }
}
