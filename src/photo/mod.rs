//! Pictures: how large one is, whether it can be read at all, and how it is written anew for a page.
//!
//! A photo from a telephone or a camera holds more than a picture: where it was taken, when, with what, often a second small
//! picture of the whole scene. None of it is wanted on a page. So no byte of a photo is ever copied: [`look`] reads its
//! measures, [`prints`] decodes it, turns it upright and encodes it again in the sizes that pages use, as a JPEG that holds
//! nothing but the picture.
//!
//! Everything here is pure: bytes in, bytes out. The same bytes give the same prints.

use std::hash::{DefaultHasher, Hash as _, Hasher as _};
use std::io::Cursor;

use image::codecs::jpeg::JpegEncoder;
use image::imageops::FilterType;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, ImageFormat, ImageReader, Limits, RgbImage};

/// The longest side that a picture may have, in pixels: twice that of the largest cameras in common use.
pub const LONGEST_SIDE: u32 = 20_000;
/// The most pixels that a picture may have: 64 million. Decoded it then takes 200 MB at most.
pub const MOST_PIXELS: u64 = 64_000_000;
/// The most memory that decoding one picture may take, in bytes.
const MOST_MEMORY: u64 = 512 * 1024 * 1024;
/// The longer sides of the prints, in pixels: a narrow screen, a wide one, and paper at 300 dots to the inch and 10 cm.
const SIDES: [u32; 3] = [320, 640, 1280];
/// How faithful the prints are, of 100: above it files grow and nobody sees a difference.
const QUALITY: u8 = 80;
/// Counted up when prints come out otherwise for another reason than the measures above or the crates: all are made anew then.
const RECIPE: u32 = 1;

/// Why a picture cannot be used.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fault {
    /// It is no picture, whatever its name says.
    NotAPicture,
    /// It is a picture of a kind that is not read.
    KindNotRead(&'static str),
    /// It is larger than any photo: width and height in pixels.
    TooLarge(u32, u32),
    /// It begins like a picture and cannot be read to its end.
    Broken,
}

/// A picture's measures as it is seen, that is, once it has been turned upright.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Look {
    /// Width, pixels.
    pub width: u32,
    /// Height, pixels.
    pub height: u32,
}

/// A picture written anew in one size: a JPEG without anything beside the picture.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Print {
    /// Width, pixels.
    pub width: u32,
    /// Height, pixels.
    pub height: u32,
    /// The JPEG.
    pub bytes: Vec<u8>,
}

/// Reads how large a picture is, without decoding it.
///
/// # Errors
/// [`Fault`], where it could not be decoded or is too large to be.
///
/// # Examples
/// ```
/// use wardsheet::photo::{Fault, look};
/// assert_eq!(look(b"a shopping list, renamed"), Err(Fault::NotAPicture));
/// assert_eq!(look(b"GIF89a\x01\x00\x01\x00"), Err(Fault::KindNotRead("GIF")));
/// ```
pub fn look(bytes: &[u8]) -> Result<Look, Fault> {
    let mut decoder = decoder(bytes)?;
    let (width, height) = decoder.dimensions();
    let orientation = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    Ok(if on_its_side(orientation) {
        Look { width: height, height: width }
    } else {
        Look { width, height }
    })
}

/// The sizes in which a picture is printed, from the smallest up: width and height, pixels. A picture is never made larger.
///
/// # Examples
/// ```
/// use wardsheet::photo::{Look, sizes};
/// assert_eq!(sizes(Look { width: 4000, height: 3000 }), [(320, 240), (640, 480), (1280, 960)]);
/// assert_eq!(sizes(Look { width: 300, height: 500 }), [(192, 320), (300, 500)]);
/// ```
pub fn sizes(look: Look) -> Vec<(u32, u32)> {
    let longer = look.width.max(look.height);
    let scaled = |side: u32, to: u32| {
        let exact = (u64::from(side) * u64::from(to) + u64::from(longer) / 2) / u64::from(longer);
        u32::try_from(exact).unwrap_or(to).max(1)
    };
    let smaller = SIDES.into_iter().filter(|side| *side < longer);
    let mut sizes: Vec<(u32, u32)> =
        smaller.map(|side| (scaled(look.width, side), scaled(look.height, side))).collect();
    if sizes.len() < SIDES.len() {
        sizes.push((look.width, look.height));
    }
    sizes
}

/// A number that changes with a photo's bytes and with how prints are made: prints made from the same number are the same.
pub fn made_from(bytes: &[u8]) -> u64 {
    let mut hasher = DefaultHasher::new();
    (RECIPE, SIDES, QUALITY, env!("WARDSHEET_CRATES")).hash(&mut hasher);
    bytes.hash(&mut hasher);
    hasher.finish()
}

/// Decodes a picture, turns it upright and writes it anew in every size, from the smallest up.
///
/// What is transparent becomes white. Colours are taken as they stand in the file, without its colour profile.
///
/// # Errors
/// [`Fault`], where it cannot be decoded.
pub fn prints(bytes: &[u8]) -> Result<Vec<Print>, Fault> {
    let mut decoder = decoder(bytes)?;
    let orientation = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    let mut picture = DynamicImage::from_decoder(decoder).map_err(|_| Fault::Broken)?;
    picture.apply_orientation(orientation);
    let whole = on_white(picture);
    let look = Look { width: whole.width(), height: whole.height() };
    let mut prints = Vec::new();
    // From the largest down, each from the one before: the work then falls with the size.
    let mut from = whole;
    for (width, height) in sizes(look).into_iter().rev() {
        if (width, height) != (from.width(), from.height()) {
            // The triangle filter takes no sine, which differs by a bit between machines.
            from = image::imageops::resize(&from, width, height, FilterType::Triangle);
        }
        let mut bytes = Vec::new();
        JpegEncoder::new_with_quality(&mut bytes, QUALITY)
            .encode_image(&from)
            .map_err(|_| Fault::Broken)?;
        prints.push(Print { width, height, bytes });
    }
    prints.reverse();
    Ok(prints)
}

/// A decoder that has read the head of a picture and holds to the limits.
fn decoder(bytes: &[u8]) -> Result<impl ImageDecoder + '_, Fault> {
    let format = kind(bytes)?;
    let mut limits = Limits::default();
    limits.max_alloc = Some(MOST_MEMORY);
    let mut reader = ImageReader::with_format(Cursor::new(bytes), format);
    reader.limits(limits.clone());
    let mut decoder = reader.into_decoder().map_err(|_| Fault::Broken)?;
    let (width, height) = decoder.dimensions();
    let pixels = u64::from(width) * u64::from(height);
    if width.max(height) > LONGEST_SIDE || pixels > MOST_PIXELS {
        return Err(Fault::TooLarge(width, height));
    }
    if pixels == 0 {
        return Err(Fault::Broken);
    }
    limits.max_image_width = Some(LONGEST_SIDE);
    limits.max_image_height = Some(LONGEST_SIDE);
    decoder.set_limits(limits).map_err(|_| Fault::TooLarge(width, height))?;
    Ok(decoder)
}

/// What kind of picture the first bytes are those of. The name of the file says nothing.
fn kind(bytes: &[u8]) -> Result<ImageFormat, Fault> {
    // ISO/IEC 23008-12: a telephone's HEIC says so behind the word "ftyp".
    if bytes.get(4..8) == Some(b"ftyp".as_slice())
        && matches!(bytes.get(8..12), Some(b"heic" | b"heix" | b"hevc" | b"mif1" | b"msf1"))
    {
        return Err(Fault::KindNotRead("HEIC"));
    }
    match image::guess_format(bytes) {
        Ok(format @ (ImageFormat::Jpeg | ImageFormat::Png | ImageFormat::WebP)) => Ok(format),
        Ok(ImageFormat::Gif) => Err(Fault::KindNotRead("GIF")),
        Ok(ImageFormat::Tiff) => Err(Fault::KindNotRead("TIFF")),
        Ok(ImageFormat::Bmp) => Err(Fault::KindNotRead("BMP")),
        Ok(ImageFormat::Avif) => Err(Fault::KindNotRead("AVIF")),
        _ => Err(Fault::NotAPicture),
    }
}

fn on_its_side(orientation: Orientation) -> bool {
    matches!(
        orientation,
        Orientation::Rotate90
            | Orientation::Rotate270
            | Orientation::Rotate90FlipH
            | Orientation::Rotate270FlipH
    )
}

/// The picture in three channels, with white behind what is transparent.
fn on_white(picture: DynamicImage) -> RgbImage {
    if !picture.color().has_alpha() {
        return picture.into_rgb8();
    }
    let picture = picture.into_rgba8();
    RgbImage::from_fn(picture.width(), picture.height(), |x, y| {
        let [red, green, blue, alpha] = picture.get_pixel(x, y).0;
        let over = |part: u8| {
            let alpha = u16::from(alpha);
            let mixed = (u16::from(part) * alpha + 255 * (255 - alpha) + 127) / 255;
            u8::try_from(mixed).unwrap_or(u8::MAX)
        };
        image::Rgb([over(red), over(green), over(blue)])
    })
}

#[cfg(test)]
mod tests;
