use image::{ImageFormat, Rgb, RgbImage, Rgba, RgbaImage};

use super::{Fault, Look, look, prints, sizes};

fn encoded(picture: &image::DynamicImage, format: ImageFormat) -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    picture.write_to(&mut bytes, format).expect("a picture in memory");
    bytes.into_inner()
}

/// Red on the left, blue on the right.
fn two_halves(width: u32, height: u32) -> image::DynamicImage {
    RgbImage::from_fn(width, height, |x, _| {
        if x < width / 2 { Rgb([250, 10, 10]) } else { Rgb([10, 10, 250]) }
    })
    .into()
}

/// Puts an EXIF segment with an orientation behind the first marker of a JPEG: Exif 2.3, CIPA DC-008-2012, §4.5.2 and 4.6.4.
fn turned(jpeg: &[u8], orientation: u8) -> Vec<u8> {
    let mut exif = b"Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0".to_vec();
    exif.extend([orientation, 0, 0, 0, 0, 0, 0]);
    let length = u16::try_from(exif.len() + 2).expect("short").to_be_bytes();
    [&jpeg[..2], &[0xff, 0xe1], &length, &exif, &jpeg[2..]].concat()
}

/// The first bytes of a PNG: signature, header and the empty beginning of its data, ISO/IEC 15948 §5.2, 11.2.2
/// and 11.2.4, with the check sum of §D.
fn png_head(width: u32, height: u32) -> Vec<u8> {
    let mut header = b"IHDR".to_vec();
    header.extend(width.to_be_bytes());
    header.extend(height.to_be_bytes());
    header.extend([8, 2, 0, 0, 0]);
    let sum = header.iter().fold(u32::MAX, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| {
            if sum & 1 == 1 { (sum >> 1) ^ 0xedb8_8320 } else { sum >> 1 }
        })
    });
    [
        b"\x89PNG\r\n\x1a\n\0\0\0\x0d".as_slice(),
        &header,
        &(!sum).to_be_bytes(),
        b"\0\0\0\0IDAT\x35\xaf\x06\x1e",
    ]
    .concat()
}

fn colour(print: &super::Print, x: u32, y: u32) -> [u8; 3] {
    let picture = image::load_from_memory(&print.bytes).expect("a print is a picture");
    assert_eq!((picture.width(), picture.height()), (print.width, print.height));
    picture.into_rgb8().get_pixel(x, y).0
}

fn is_red([red, _, blue]: [u8; 3]) -> bool {
    red > 200 && blue < 60
}

#[test]
fn every_kind_that_is_read_gives_prints_in_falling_sizes() {
    for format in [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP] {
        let bytes = encoded(&two_halves(1600, 1200), format);
        assert_eq!(look(&bytes), Ok(Look { width: 1600, height: 1200 }));
        let made = prints(&bytes).expect("it can be decoded");
        let widths: Vec<_> = made.iter().map(|print| (print.width, print.height)).collect();
        assert_eq!(widths, [(320, 240), (640, 480), (1280, 960)], "{format:?}");
        for print in &made {
            assert!(print.bytes.starts_with(&[0xff, 0xd8]), "it is no JPEG");
            assert!(is_red(colour(print, 10, 10)) && !is_red(colour(print, print.width - 10, 10)));
        }
    }
}

#[test]
fn a_photo_is_turned_upright_before_its_orientation_is_dropped() {
    let bytes = encoded(&two_halves(400, 200), ImageFormat::Jpeg);
    // 6: the first row is the right side as it is seen, so what was on the left is on top.
    let bytes = turned(&bytes, 6);
    assert_eq!(look(&bytes), Ok(Look { width: 200, height: 400 }));
    let made = prints(&bytes).expect("it can be decoded");
    let largest = made.last().expect("a print");
    assert_eq!((largest.width, largest.height), (200, 400));
    assert!(is_red(colour(largest, 100, 20)) && !is_red(colour(largest, 100, 380)));
    // 3: upside down.
    let upside_down = turned(&encoded(&two_halves(400, 200), ImageFormat::Jpeg), 3);
    let made = prints(&upside_down).expect("it can be decoded");
    assert!(!is_red(colour(&made[0], 10, 10)) && is_red(colour(&made[0], 300, 10)));
}

#[test]
fn a_print_holds_no_segment_but_those_of_the_picture() {
    let bytes = turned(&encoded(&two_halves(900, 700), ImageFormat::Jpeg), 1);
    for print in prints(&bytes).expect("it can be decoded") {
        let mut at = 2;
        // ITU-T T.81, table B.1: E1 to EF are an application's own, FE is a comment. E0 is the frame that every JPEG file has.
        while print.bytes[at + 1] != 0xda {
            let marker = print.bytes[at + 1];
            assert!(!(0xe1..=0xef).contains(&marker) && marker != 0xfe, "segment {marker:x}");
            at += 2 + usize::from(u16::from_be_bytes([print.bytes[at + 2], print.bytes[at + 3]]));
        }
    }
}

#[test]
fn what_is_transparent_becomes_white() {
    let clear = RgbaImage::from_pixel(64, 64, Rgba([0, 0, 0, 0]));
    let made = prints(&encoded(&clear.into(), ImageFormat::Png)).expect("it can be decoded");
    assert!(colour(&made[0], 30, 30).iter().all(|part| *part > 250));
}

#[test]
fn a_tiny_file_that_claims_an_enormous_picture_is_not_decoded() {
    for (width, height) in [(60_000, 60_000), (1, 40_000), (19_000, 19_000)] {
        let bomb = png_head(width, height);
        assert!(bomb.len() < 100);
        assert_eq!(look(&bomb), Err(Fault::TooLarge(width, height)));
        assert_eq!(prints(&bomb), Err(Fault::TooLarge(width, height)));
    }
}

#[test]
fn what_is_no_picture_or_of_another_kind_is_told_apart() {
    assert_eq!(look(b""), Err(Fault::NotAPicture));
    assert_eq!(look(b"weights of the week\n"), Err(Fault::NotAPicture));
    assert_eq!(look(b"\0\0\0\x18ftypheic\0\0\0\0"), Err(Fault::KindNotRead("HEIC")));
    assert_eq!(look(b"II*\0\x08\0\0\0"), Err(Fault::KindNotRead("TIFF")));
    assert_eq!(look(b"\x89PNG\r\n\x1a\n"), Err(Fault::Broken));
    assert_eq!(look(&png_head(0, 10)), Err(Fault::Broken));
    // The head is whole and the picture is not there.
    assert_eq!(look(&png_head(100, 100)), Ok(Look { width: 100, height: 100 }));
    assert_eq!(prints(&png_head(100, 100)), Err(Fault::Broken));
}

#[test]
fn no_picture_is_made_larger_and_none_loses_a_side() {
    assert_eq!(sizes(Look { width: 40, height: 30 }), [(40, 30)]);
    assert_eq!(sizes(Look { width: 1280, height: 1 }), [(320, 1), (640, 1), (1280, 1)]);
    assert_eq!(sizes(Look { width: 320, height: 320 }), [(320, 320)]);
}

#[test]
fn the_same_photo_gives_the_same_bytes() {
    let bytes = encoded(&two_halves(700, 500), ImageFormat::Png);
    assert_eq!(prints(&bytes), prints(&bytes));
}
