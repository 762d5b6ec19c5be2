//! A spreadsheet's rows as lines of a log, read through a map. Nothing is left out without a word.

use crate::finding::FileId;
use crate::model::log::Entry;
use crate::model::map::{Column, LogColumn, Map};
use crate::model::word::Word;
use crate::quantity::{self, Length, Mass};
use crate::source::{Layer, Role, Sources};

use super::log::{entries, heading, line};
use super::map::{Row, Rows, number};
use super::moment;

/// What was made of a spreadsheet.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Import {
    /// How many rows it has, blank ones and the headings apart.
    pub rows: usize,
    /// Each column that is used: its heading, and what it is taken for.
    pub columns: Vec<(String, String)>,
    /// The headings that are not used.
    pub unused: Vec<String>,
    /// The lines that were understood, in the order of the rows.
    pub lines: Vec<ImportedLine>,
    /// What was not understood: the line of the spreadsheet, and why.
    pub left: Vec<(u64, String)>,
}

/// A line of a log that came from a row.
#[derive(Debug, Clone, PartialEq)]
pub struct ImportedLine {
    /// The line of the spreadsheet.
    pub from: u64,
    /// As it will stand in the log, without its end.
    pub written: String,
    /// What the log will read there.
    pub entry: Entry,
}

/// A column in use: where it stands, and the unit that belongs to it.
struct Used {
    what: LogColumn,
    number: usize,
    unit: Option<String>,
}

/// Reads a spreadsheet as lines of a log.
///
/// # Errors
/// Sentences about columns that the map names and the table does not have.
pub fn import(text: &str, map: &Map) -> Result<Import, Vec<String>> {
    let mut rows = Rows::open(map, text);
    let (mut faults, mut made) = (Vec::new(), Import::default());
    let mut find = |column: &Column| rows.column(column).map_err(|why| faults.push(why)).ok();
    let time: Vec<usize> = map.time.iter().filter_map(&mut find).collect();
    let placed: Vec<(LogColumn, usize)> =
        map.log.iter().filter_map(|(what, column)| Some((*what, find(column)?))).collect();
    if map.log.is_empty() {
        faults.push("the map has no table [log], which names the columns of a log".to_owned());
    }
    if !faults.is_empty() {
        return Err(faults);
    }
    let title = |number: usize| {
        rows.headings.get(number).cloned().unwrap_or_else(|| format!("column {}", number + 1))
    };
    let used: Vec<Used> = placed
        .into_iter()
        .map(|(what, number)| {
            let given = map.units.get(&what).cloned();
            Used { what, number, unit: given.or_else(|| unit_in(&title(number))) }
        })
        .collect();
    let of_time =
        time.iter().map(|number| (title(*number), format!("the date, as {}", map.form.written)));
    made.columns.extend(of_time);
    for one in &used {
        let unit = one.unit.as_ref().map(|unit| format!(", in {unit}")).unwrap_or_default();
        made.columns
            .push((title(one.number), format!("{}{unit}", one.what.spelling().replace('_', ", "))));
    }
    let is_used =
        |number: &usize| time.contains(number) || used.iter().any(|one| one.number == *number);
    made.unused = (0..rows.headings.len()).filter(|number| !is_used(number)).map(title).collect();
    while let Some(row) = rows.next() {
        made.rows += 1;
        let cells: Vec<&str> = time.iter().map(|column| row.cell(*column)).collect();
        let written = cells.join(" ");
        let Some(moment) = moment::read(&map.form, &written) else {
            made.left
                .push((row.line, format!("`{written}` is not of the form {}", map.form.written)));
            continue;
        };
        let before = (made.lines.len(), made.left.len());
        for cells in lines_of(map, &row, &used) {
            let (what, value, outcome, note) = match cells {
                Ok(cells) => cells,
                Err(why) => {
                    made.left.push((row.line, why));
                    continue;
                }
            };
            let written = line([&moment.date.to_string(), &what, &value, &outcome, &note]);
            match checked(&written) {
                Ok(entry) => made.lines.push(ImportedLine { from: row.line, written, entry }),
                Err(why) => made.left.push((row.line, why)),
            }
        }
        if before == (made.lines.len(), made.left.len()) {
            made.left.push((row.line, "nothing that a log records stands in this row".to_owned()));
        }
    }
    Ok(made)
}

/// The line as the log will read it, or what is wrong with it.
fn checked(written: &str) -> Result<Entry, String> {
    let mut alone = Sources::default();
    let text = format!("{}\n{written}\n", heading());
    let id = alone.add("the new line", Role::Log, "new", Layer::Own, text);
    debug_assert_eq!(id, FileId(0));
    let (mut read, found) = entries(&alone.files()[0]);
    match (read.pop(), found.into_iter().next()) {
        (Some(entry), None) => Ok(entry),
        (_, Some(finding)) => Err(finding.message),
        (None, None) => Err("this line cannot be read".to_owned()),
    }
}

/// What, value, outcome and note.
type Cells = (String, String, String, String);

/// The lines that one row makes, or why one of its cells makes none.
fn lines_of(map: &Map, row: &Row<'_>, used: &[Used]) -> Vec<Result<Cells, String>> {
    let of = |what: LogColumn| used.iter().find(|one| one.what == what);
    let cell = |what: LogColumn| of(what).map_or("", |one| row.cell(one.number));
    // The table's own word, where the map has one for it.
    let ours = |word: &str| {
        map.words.get(&word.to_lowercase()).cloned().unwrap_or_else(|| word.to_owned())
    };
    let note = cell(LogColumn::Note).to_owned();
    let mut made = Vec::new();
    let mut add = |what: &str, value: String, outcome: String| {
        made.push(Ok((what.to_owned(), value, outcome, note.clone())));
    };
    if of(LogColumn::What).is_some() {
        let what = ours(cell(LogColumn::What));
        if what.is_empty() {
            return made;
        }
        let value = of(LogColumn::Value);
        let given = cell(LogColumn::Value);
        let value = match what.as_str() {
            "weight" | "length" => {
                let kind = if what == "weight" { LogColumn::Weight } else { LogColumn::Length };
                let unit = map.units.get(&kind).or_else(|| value.and_then(|one| one.unit.as_ref()));
                measured(map, given, unit.map(String::as_str))
            }
            "meal" => ours(given),
            _ => with_points(map, given),
        };
        add(&what, value, ours(cell(LogColumn::Outcome)));
        return made;
    }
    for (what, name) in [(LogColumn::Weight, "weight"), (LogColumn::Length, "length")] {
        if let Some(one) = of(what).filter(|one| !row.cell(one.number).is_empty()) {
            add(name, measured(map, row.cell(one.number), one.unit.as_deref()), String::new());
        }
    }
    let meal = cell(LogColumn::Meal);
    if !meal.is_empty() {
        let unit = of(LogColumn::MealMass).and_then(|one| one.unit.as_deref());
        let mass = cell(LogColumn::MealMass);
        let mass = if mass.is_empty() { String::new() } else { measured(map, mass, unit) };
        let outcome = ours(cell(LogColumn::MealOutcome));
        add("meal", format!("{} {mass}", ours(meal)).trim().to_owned(), outcome);
    }
    let shed = cell(LogColumn::Shed);
    if !shed.is_empty() {
        add("shed", String::new(), ours(shed));
    }
    if meal.is_empty() {
        for what in [LogColumn::MealMass, LogColumn::MealOutcome] {
            let alone = cell(what);
            if !alone.is_empty() {
                let what = what.spelling().replace('_', ", ");
                made.push(Err(format!("`{alone}` ({what}) stands without a meal")));
            }
        }
    }
    let nothing = made.is_empty();
    if nothing && !note.is_empty() {
        made.push(Ok(("note".to_owned(), note, String::new(), String::new())));
    }
    made
}

/// A figure with its unit: the one in its cell, else the one of its column.
fn measured(map: &Map, cell: &str, unit: Option<&str>) -> String {
    match (number(map, cell), unit) {
        (Some(_), Some(unit)) => format!("{} {unit}", with_points(map, cell)),
        _ => with_points(map, cell),
    }
}

/// Numbers with a point before decimals, as a log writes them.
fn with_points(map: &Map, cell: &str) -> String {
    if !map.decimal_comma {
        return cell.to_owned();
    }
    let letters: Vec<char> = cell.chars().collect();
    let digit =
        |at: Option<usize>| at.and_then(|at| letters.get(at)).is_some_and(char::is_ascii_digit);
    let mut written = String::new();
    for (at, letter) in letters.iter().enumerate() {
        let inside = digit(at.checked_sub(1)) && digit(Some(at + 1));
        match letter {
            ',' if inside => written.push('.'),
            '.' if inside => {}
            letter => written.push(*letter),
        }
    }
    written
}

/// The unit that a heading names: `Weight (g)`, `Weight [g]`, `Weight in g`, `Weight, g`.
fn unit_in(heading: &str) -> Option<String> {
    let last = heading
        .trim()
        .trim_end_matches([')', ']'])
        .rsplit(['(', '[', ' ', ',', '/'])
        .next()
        .unwrap_or_default()
        .trim();
    let figure = format!("1 {last}");
    let known = quantity::parse_one::<Mass>(&figure).is_ok()
        || quantity::parse_one::<Length>(&figure).is_ok();
    (known && last != heading.trim()).then(|| last.to_owned())
}

#[cfg(test)]
mod tests {
    use super::{Import, import, unit_in};
    use crate::finding::FileId;
    use crate::parse::map_of;

    fn read(map: &str, text: &str) -> Import {
        let (map, found) = map_of(FileId(0), map);
        assert_eq!(found, vec![], "the map is sound");
        import(text, &map).expect("the columns are there")
    }

    fn lines(import: &Import) -> Vec<&str> {
        import.lines.iter().map(|line| line.written.as_str()).collect()
    }

    const COLUMNS: &str = "separator = \";\"\ndecimal = \",\"\ndate = \"DD.MM.YYYY\"\ntime = \"Datum\"\n\
        [log]\nweight = \"Gewicht (g)\"\nlength = \"Länge (cm)\"\nmeal = \"Futter\"\nmeal_mass = \"Futter (g)\"\n\
        meal_outcome = \"Wie\"\nshed = \"Häutung\"\nnote = \"Bemerkung\"\n\
        [words]\n\"gefressen\" = \"taken\"\n\"verweigert\" = \"refused\"\n\"ganz\" = \"complete\"\n\"Maus\" = \"mouse, adult\"\n";

    #[test]
    fn a_german_spreadsheet_with_one_column_for_each() {
        let text = "\u{feff}Datum;Gewicht (g);Länge (cm);Futter;Futter (g);Wie;Häutung;Bemerkung;Wetter\r\n\
            3.5.2024;1.452,5;;;;;;;warm\r\n\
            10.05.2024;;92,5;Maus;28;gefressen;;ruhig;\r\n\
            \r\n\
            17.05.2024;;;Maus;;verweigert;ganz;;kalt\r\n\
            18.05.2024;;;;;;;trinkt;\r\n";
        let import = read(COLUMNS, text);
        assert_eq!(
            lines(&import),
            [
                "2024-05-03,weight,1452.5 g,,",
                "2024-05-10,length,92.5 cm,,ruhig",
                "2024-05-10,meal,\"mouse, adult 28 g\",taken,ruhig",
                "2024-05-17,meal,\"mouse, adult\",refused,",
                "2024-05-17,shed,,complete,",
                "2024-05-18,note,trinkt,,"
            ]
        );
        assert_eq!(
            (import.rows, import.left.len(), import.unused),
            (4, 0, vec!["Wetter".to_owned()])
        );
    }

    #[test]
    fn every_row_that_is_not_understood_is_told_with_its_line() {
        let text = "Datum;Gewicht (g);Länge (cm);Futter;Futter (g);Wie;Häutung;Bemerkung\n\
            31.02.2024;450;;;;;;\n03.05.2024;schwer;;;;;;\n04.05.2024;;;;;;;\n05.05.2024;451;;;12;;;\n06.05.2024;;;Maus;;halb;;\n";
        let import = read(COLUMNS, text);
        assert_eq!(lines(&import), ["2024-05-05,weight,451 g,,"]);
        let told: Vec<u64> = import.left.iter().map(|(line, _)| *line).collect();
        assert_eq!(told, [2, 3, 4, 5, 6], "{:?}", import.left);
    }

    #[test]
    fn a_table_with_a_row_for_each_event() {
        let map = "date = \"MM/DD/YYYY\"\ntime = \"Date\"\n[log]\nwhat = \"Type\"\nvalue = \"Value\"\noutcome = \"Result\"\n\
            [units]\nweight = \"oz\"\n[words]\n\"fed\" = \"meal\"\n\"ate\" = \"taken\"\n";
        let text = "Date,Type,Value,Result\n05/03/2024,weight,16,\n05/04/2024,Fed,\"rat 80 g\",ate\n05/05/2024,sneeze,,\n";
        let import = read(map, text);
        assert_eq!(
            lines(&import),
            ["2024-05-03,weight,16 oz,,", "2024-05-04,meal,rat 80 g,taken,"]
        );
        assert_eq!(import.left, [(4, "`sneeze` is not something that a log records".to_owned())]);
    }

    #[test]
    fn a_column_that_is_not_there_is_told_with_the_nearest() {
        let (map, _) = map_of(FileId(0), "time = \"Date\"\n[log]\nweight = \"Wieght\"\n");
        let faults =
            import("Date,Weight\n2024-05-03,450 g\n", &map).expect_err("a column is missing");
        assert!(
            faults[0].contains("no column `Wieght`") && faults[0].contains("Weight"),
            "{faults:?}"
        );
    }

    #[test]
    fn a_unit_is_found_in_a_heading() {
        for heading in ["Weight (g)", "Gewicht [g]", "Gewicht in g", "Weight, g"] {
            assert_eq!(unit_in(heading).as_deref(), Some("g"), "{heading}");
        }
        assert_eq!(unit_in("Weight"), None);
        assert_eq!(unit_in("g"), None);
    }
}
