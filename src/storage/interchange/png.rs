//! A square code as a picture of dots: PNG, one bit a dot.

use crate::engine::numerics::saturating_u32;
use crc::{CRC_32_ISO_HDLC, Crc};
use miniz_oxide::deflate::compress_to_vec_zlib;

use super::square_code::SquareCode;

const CHECK: Crc<u32> = Crc::<u32>::new(&CRC_32_ISO_HDLC);
const SIGNATURE: [u8; 8] = [0x89, b'P', b'N', b'G', b'\r', b'\n', 0x1a, b'\n'];

/// The code as a PNG picture with its quiet margin, each square so many dots wide (at most 40).
///
/// Source: ISO/IEC 15948 (Portable Network Graphics).
#[must_use]
pub fn png(code: &SquareCode, dots: u8) -> Vec<u8> {
    let dots = u16::from(dots.clamp(1, 40));
    let side = (code.side + 2 * SquareCode::MARGIN) * dots;
    let mut file = SIGNATURE.to_vec();
    let mut head = Vec::new();
    head.extend(u32::from(side).to_be_bytes());
    head.extend(u32::from(side).to_be_bytes());
    // One bit a dot, grey, the only compression, filter and order there are.
    head.extend([1, 0, 0, 0, 0]);
    chunk(&mut file, *b"IHDR", &head);
    chunk(
        &mut file,
        *b"IDAT",
        &compress_to_vec_zlib(&rows(code, dots), 9),
    );
    chunk(&mut file, *b"IEND", &[]);
    file
}

/// Every row of dots: the filter, none, then eight dots a byte, light is 1.
fn rows(code: &SquareCode, dots: u16) -> Vec<u8> {
    let squares = code.side + 2 * SquareCode::MARGIN;
    let mut all = Vec::new();
    for row in 0..squares {
        let mut line = vec![0];
        let (mut byte, mut bits) = (0_u8, 0_u8);
        for column in 0..squares {
            let inside = |at: u16| at.checked_sub(SquareCode::MARGIN);
            let dark = match (inside(column), inside(row)) {
                (Some(column), Some(row)) => code.is_dark(column, row),
                _ => false,
            };
            for _ in 0..dots {
                byte = (byte << 1) | u8::from(!dark);
                bits += 1;
                if bits == 8 {
                    line.push(byte);
                    (byte, bits) = (0, 0);
                }
            }
        }
        if bits > 0 {
            line.push(byte << (8 - bits));
        }
        for _ in 0..dots {
            all.extend(&line);
        }
    }
    all
}

fn chunk(file: &mut Vec<u8>, kind: [u8; 4], data: &[u8]) {
    let length = saturating_u32(data.len());
    let mut body = kind.to_vec();
    body.extend(data);
    file.extend(length.to_be_bytes());
    file.extend(&body);
    file.extend(CHECK.checksum(&body).to_be_bytes());
}
