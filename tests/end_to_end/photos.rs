//! Photos: decoded and written anew, without the place, the day and the camera that a telephone adds.

use std::io::Cursor;

use image::{ImageFormat, Rgb, RgbImage};

use crate::site::{Site, TODAY, Tree, ends_with, said, same, succeeds, tree};

/// Where the test's photo was taken, as EXIF writes it: degrees, minutes and hundredths of seconds, each over its divisor.
/// 54° 31' 12.34" north, 3° 6' 7.89" west: a lake without a house.
const NORTH: [(u32, u32); 3] = [(54, 1), (31, 1), (1234, 100)];
const WEST: [(u32, u32); 3] = [(3, 1), (6, 1), (789, 100)];
/// The camera and the day that it was taken.
const CAMERA: &str = "QUILLMERE BOX CAMERA";
const TAKEN: &str = "2025:07:04 05:06:07";

/// A photo of a drawing: a red left and a blue right half.
fn picture(width: u32, height: u32, format: ImageFormat) -> Vec<u8> {
    let picture = RgbImage::from_fn(width, height, |x, y| {
        let shade = u8::try_from(y % 40).unwrap_or(0);
        if x < width / 2 { Rgb([220, shade, shade]) } else { Rgb([shade, shade, 220]) }
    });
    let mut bytes = Cursor::new(Vec::new());
    image::DynamicImage::from(picture).write_to(&mut bytes, format).expect("a picture in memory");
    bytes.into_inner()
}

fn rationals(parts: [(u32, u32); 3]) -> Vec<u8> {
    parts
        .iter()
        .flat_map(|(above, below)| [above.to_be_bytes(), below.to_be_bytes()].concat())
        .collect()
}

/// A segment with the camera, the day, an orientation and a position: Exif 2.3, CIPA DC-008-2012, §4.5, 4.6.4 and 4.6.6.
fn exif(orientation: u16) -> Vec<u8> {
    let entry = |tag: u16, kind: u16, count: u32, value: [u8; 4]| {
        [&tag.to_be_bytes()[..], &kind.to_be_bytes(), &count.to_be_bytes(), &value].concat()
    };
    let at = |place: usize| u32::try_from(place).expect("short").to_be_bytes();
    let text = |text: &str| [text.as_bytes(), b"\0"].concat();
    let (camera, taken) = (text(CAMERA), text(TAKEN));
    let length = |text: &[u8]| u32::try_from(text.len()).expect("short");
    // Header, then four entries and the end of the first directory, its texts, then the directory of positions.
    let texts = 8 + 2 + 4 * 12 + 4;
    let positions = texts + camera.len() + taken.len();
    let numbers = positions + 2 + 4 * 12 + 4;
    let short = orientation.to_be_bytes();
    let mut tiff = b"MM\0*\0\0\0\x08\0\x04".to_vec();
    tiff.extend(entry(0x0110, 2, length(&camera), at(texts)));
    tiff.extend(entry(0x0112, 3, 1, [short[0], short[1], 0, 0]));
    tiff.extend(entry(0x0132, 2, length(&taken), at(texts + camera.len())));
    tiff.extend(entry(0x8825, 4, 1, at(positions)));
    tiff.extend([0; 4]);
    tiff.extend(camera.iter().chain(&taken));
    tiff.extend([0, 4]);
    tiff.extend(entry(1, 2, 2, *b"N\0\0\0"));
    tiff.extend(entry(2, 5, 3, at(numbers)));
    tiff.extend(entry(3, 2, 2, *b"W\0\0\0"));
    tiff.extend(entry(4, 5, 3, at(numbers + 24)));
    tiff.extend([0; 4]);
    tiff.extend(rationals(NORTH).into_iter().chain(rationals(WEST)));
    [b"Exif\0\0".as_slice(), &tiff].concat()
}

/// The photo as a camera saves it: the segment stands behind the first marker.
fn from_a_camera(orientation: u16) -> Vec<u8> {
    let jpeg = picture(900, 600, ImageFormat::Jpeg);
    let exif = exif(orientation);
    let length = u16::try_from(exif.len() + 2).expect("short").to_be_bytes();
    [&jpeg[..2], &[0xff, 0xe1], &length, &exif, &jpeg[2..]].concat()
}

fn holds(bytes: &[u8], part: &[u8]) -> bool {
    bytes.windows(part.len()).any(|window| window == part)
}

/// An example in which Juniper, who is published or not, has a photo of those bytes.
fn with_photo(name: &str, file: &str, bytes: &[u8], publish: bool) -> Site {
    let site = Site::example(name);
    site.put(&format!("photos/{file}"), bytes);
    site.edit("animals/juniper.toml", |animal| {
        animal.insert("publish".to_owned(), publish.into());
        animal.insert("photo".to_owned(), file.into());
        animal.insert("photo_shows".to_owned(), "Juniper before two coloured walls".into());
    });
    site
}

fn prints<'a>(files: &'a Tree, folder: &str) -> Vec<(&'a str, &'a [u8])> {
    let inside = files.iter().filter(|(path, _)| path.starts_with(folder));
    let prints = inside.filter(|(path, _)| path.ends_with(".jpg"));
    prints.map(|(path, bytes)| (path.as_str(), bytes.as_slice())).collect()
}

#[test]
fn where_when_and_with_what_a_photo_was_taken_is_in_no_byte_that_is_written() {
    let photo = from_a_camera(1);
    let told: [(&str, Vec<u8>); 5] = [
        ("the latitude", rationals(NORTH)),
        ("the longitude", rationals(WEST)),
        ("the camera", CAMERA.into()),
        ("the day", TAKEN.into()),
        ("an EXIF segment", b"Exif".to_vec()),
    ];
    for (what, bytes) in &told {
        assert!(holds(&photo, bytes), "the test's photo does not hold {what}");
    }
    let site = with_photo("photo-position", "IMG_7041.jpg", &photo, true);
    site.compile();
    let files = tree(&site.out());
    for part in ["public/animals/juniper/", "private/animals/juniper/"] {
        assert_eq!(prints(&files, part).len(), 3, "{part}");
    }
    for (path, written) in &files {
        for (what, bytes) in &told {
            assert!(!holds(written, bytes), "{path} holds {what}");
        }
        assert!(
            !path.contains("7041") && !holds(written, b"IMG_7041"),
            "{path} tells the photo's name"
        );
    }
}

#[test]
fn a_print_that_was_spoilt_or_removed_is_made_again_and_another_photo_gives_other_prints() {
    let photo = picture(900, 600, ImageFormat::Jpeg);
    let site = with_photo("photo-again", "juniper.jpg", &photo, true);
    site.compile();
    let first = tree(&site.out());
    let path = prints(&first, "public/animals/juniper/")[1].0.to_owned();
    site.compile();
    same(&tree(&site.out()), &first);
    let place = site.out().join(&path);
    std::fs::write(&place, b"no picture").expect("a file");
    site.compile();
    same(&tree(&site.out()), &first);
    std::fs::remove_file(&place).expect("it is there");
    site.compile();
    same(&tree(&site.out()), &first);
    site.put("photos/juniper.jpg", picture(900, 600, ImageFormat::Png));
    site.compile();
    let second = tree(&site.out());
    assert_eq!(first.keys().collect::<Vec<_>>(), second.keys().collect::<Vec<_>>());
    assert_ne!(first[&path], second[&path]);
}

#[test]
fn prints_that_stand_as_they_were_made_are_not_made_again() {
    use std::sync::Mutex;
    use wardsheet::compile::{Pages, check};
    use wardsheet::render::Look;
    use wardsheet::source::Folder;

    let photo = picture(900, 600, ImageFormat::Jpeg);
    let site = with_photo("photo-stands", "juniper.jpg", &photo, true);
    let out = site.out();
    let at = out.parent().expect("the folder of the site");
    let folder = Folder::find(Some(at), at).expect("a site");
    let (sources, read) = folder.read(&["builtin".to_owned()]).expect("its library is built in");
    let checked = check(&sources, read, TODAY.parse().expect("a day"));
    let look = Look::new(&sources).expect("the built-in templates");
    let pages = Pages::new(&sources, &checked, &look);
    let handed_on = |stand: bool| {
        let (asked, taken) = (Mutex::new(0), Mutex::new(0));
        let set = pages.each_but(
            |_| true,
            |files, _| {
                *asked.lock().expect("whole") += files.len();
                stand
            },
            |file| {
                *taken.lock().expect("whole") += usize::from(file.path.ends_with(".jpg"));
                Ok::<(), ()>(())
            },
        );
        assert!(set.is_ok());
        (asked.into_inner().expect("whole"), taken.into_inner().expect("whole"))
    };
    let (asked, taken) = handed_on(false);
    assert!(asked >= 6 && taken == asked, "{asked} asked for, {taken} made");
    assert_eq!(handed_on(true), (asked, 0));
}

#[test]
fn a_photo_taken_on_its_side_stands_upright() {
    // 8: the first row is the left side as it is seen, so the red left half comes to lie at the foot.
    let site = with_photo("photo-upright", "juniper.jpg", &from_a_camera(8), true);
    site.compile();
    let files = tree(&site.out());
    let (path, bytes) = prints(&files, "public/animals/juniper/")[0];
    let seen = image::load_from_memory(bytes).expect("a picture").into_rgb8();
    assert_eq!((seen.width(), seen.height()), (213, 320), "{path}");
    let [red, _, blue] = seen.get_pixel(100, 300).0;
    assert!(red > 180 && blue < 80, "the foot is not red: {red} {blue}");
}

#[test]
fn a_page_offers_every_size_with_its_measures_and_says_what_is_seen() {
    let photo = picture(1500, 1000, ImageFormat::Png);
    let site = with_photo("photo-page", "juniper.png", &photo, true);
    site.compile();
    for page in [
        "public/animals/juniper/index.html",
        "private/animals/juniper/handover.html",
        "private/animals/juniper/record.html",
    ] {
        let page = site.text(&format!("out/{page}"));
        let picture =
            crate::html::elements(&page).into_iter().find(|element| element.name == "img");
        let picture = picture.expect("a picture");
        let of = |name: &str| picture.attribute(name).unwrap_or_default();
        assert_eq!(of("alt"), "Juniper before two coloured walls");
        assert_eq!((of("width"), of("height")), ("1280", "853"));
        let sizes: Vec<&str> = of("srcset").split(',').map(str::trim).collect();
        assert_eq!(sizes.len(), 3, "{sizes:?}");
        for (size, width) in sizes.iter().zip([320, 640, 1280]) {
            assert!(size.ends_with(&format!("photo-{width}.jpg {width}w")), "{size}");
        }
    }
}

#[test]
fn the_photo_of_an_animal_that_is_not_published_stays_private() {
    let site = with_photo("photo-private", "juniper.jpg", &from_a_camera(1), false);
    // One that has gone is no longer on a public page either.
    site.put("photos/ditto.jpg", from_a_camera(1));
    site.edit("animals/ditto.toml", |animal| {
        animal.insert("publish".to_owned(), true.into());
        animal.insert("status".to_owned(), "rehomed".into());
        animal.insert("photo".to_owned(), "ditto.jpg".into());
        animal.insert("photo_shows".to_owned(), "Ditto".into());
    });
    site.compile();
    let files = tree(&site.out());
    for name in ["juniper", "ditto"] {
        assert_eq!(prints(&files, &format!("public/animals/{name}")), [], "{name}");
        assert_eq!(prints(&files, &format!("private/animals/{name}")).len(), 3, "{name}");
    }
}

#[test]
fn what_is_no_photo_is_found_where_it_is_named_and_nothing_is_written() {
    // The head of a picture of 3.6 thousand million pixels: ISO/IEC 15948 §5.2 and 11.2.2; the sum of the header is that of §D.
    let bomb =
        b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\xea\x60\0\0\xea\x60\x08\x02\0\0\0\x0f\xb0\xe2\x15\0\0\0\0IDAT\x35\xaf\x06\x1e";
    let broken = &picture(200, 100, ImageFormat::Png)[..80];
    let faults: [(&str, &[u8], &str, &str); 5] = [
        ("list.jpg", b"Tuesday: mice, ten\n", "photo-unreadable", "is not a picture"),
        ("bomb.png", bomb, "photo-too-large", "60000 by 60000 pixels"),
        ("telephone.heic", b"\0\0\0\x18ftypheic\0\0\0\0mif1", "photo-kind-not-read", "HEIC"),
        ("broken.png", broken, "photo-unreadable", "broken"),
        ("empty.webp", b"", "photo-unreadable", "is not a picture"),
    ];
    for (file, bytes, code, sentence) in faults {
        let site = with_photo("photo-faults", file, bytes, true);
        let output = site.try_compile();
        ends_with(&output, 1);
        let said = said(&output);
        for part in [code, sentence, file, "animals/juniper.toml:"] {
            assert!(said.contains(part), "{file}: {part} is not said:\n{said}");
        }
        assert!(!site.out().exists(), "{file}: something was written");
    }
}

#[test]
fn a_photo_that_is_missing_or_not_described_is_told_and_a_drawing_takes_its_place() {
    let site = Site::example("photo-missing");
    site.edit("animals/juniper.toml", |animal| {
        animal.insert("photo".to_owned(), "no-such.jpg".into());
        animal.remove("photo_shows");
    });
    let output = site.try_compile();
    succeeds(&output);
    let said = said(&output);
    assert!(said.contains("photo-missing") && said.contains("photo-without-description"), "{said}");
    let page = site.text("out/private/animals/juniper/handover.html");
    assert!(page.contains("No photo of Juniper yet") && !page.contains("<img"));
}

#[test]
fn a_photo_outside_the_folder_is_not_reached() {
    let site = Site::example("photo-outside");
    site.put("secret.jpg", from_a_camera(1));
    site.edit("animals/juniper.toml", |animal| {
        animal.insert("photo".to_owned(), "../secret.jpg".into());
    });
    let output = site.try_compile();
    assert!(said(&output).contains("photo-missing"), "{}", said(&output));
}

#[test]
fn a_photo_that_two_animals_share_stands_in_the_folders_of_both() {
    let site = with_photo("photo-shared", "juniper.jpg", &from_a_camera(1), true);
    let text = site.text("animals/juniper.toml").replacen("Juniper", "Linden", 1);
    site.put("animals/linden.toml", text.replace("000 000 000 000 001", "000 000 000 000 002"));
    site.compile();
    let files = tree(&site.out());
    let first = prints(&files, "public/animals/juniper/");
    assert!(!first.is_empty());
    for folder in ["public/animals/linden/", "private/animals/juniper/", "private/animals/linden/"]
    {
        let bytes = |prints: &[(&str, &[u8])]| -> Vec<Vec<u8>> {
            prints.iter().map(|(_, bytes)| bytes.to_vec()).collect()
        };
        assert_eq!(bytes(&prints(&files, folder)), bytes(&first), "{folder}");
    }
}

#[test]
fn the_same_photo_gives_the_same_bytes() {
    let site = with_photo("photo-same", "juniper.jpg", &from_a_camera(6), true);
    site.compile();
    let first = tree(&site.out());
    std::fs::remove_dir_all(site.out()).expect("the output can be removed");
    site.compile();
    same(&tree(&site.out()), &first);
}

#[test]
fn a_species_shows_its_photo_on_its_care_sheet() {
    let site = Site::example("photo-species");
    site.put("photos/corn.webp", picture(700, 500, ImageFormat::WebP));
    site.own_species("corn-snake", |species| {
        species.insert("photo".to_owned(), "corn.webp".into());
        species.insert("photo_shows".to_owned(), "A grown corn snake, drawn".into());
    });
    site.put(
        "species/corn-snake.md",
        std::fs::read(crate::site::project().join("species/corn-snake.md")).expect("its words"),
    );
    site.compile();
    assert_eq!(prints(&tree(&site.out()), "public/species/corn-snake/").len(), 3);
    assert!(
        site.text("out/public/species/corn-snake/index.html").contains("A grown corn snake, drawn")
    );
}
