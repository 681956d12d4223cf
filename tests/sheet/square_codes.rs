//! Square codes against the table of the standard, and their pictures against their squares.

use softcrumb::sheet::examples;
use softcrumb::storage::interchange::{
    Level, LinkPart, SquareCode, SquareCodeError, png, shorter, square_code, svg,
};
use softcrumb::storage::link;

const TABLE: &str = include_str!("../published/data/qr_capacity.csv");

/// Bytes a version holds at the four levels, lowest first; side.
fn capacities() -> Vec<(u16, [usize; 4])> {
    let heads: Vec<&str> = TABLE.lines().next().unwrap().split(',').collect();
    let at = |name: &str| heads.iter().position(|head| *head == name).unwrap();
    let columns = ["L_bytes", "M_bytes", "Q_bytes", "H_bytes"].map(at);
    let side = at("modules_per_side");
    TABLE
        .lines()
        .skip(1)
        .map(|line| {
            let cells: Vec<&str> = line.split(',').collect();
            (
                cells[side].parse().unwrap(),
                columns.map(|column| cells[column].parse().unwrap()),
            )
        })
        .collect()
}

/// What the table says a text of so many bytes becomes: version, level, side.
fn wanted(bytes: usize) -> Option<(usize, Level, u16)> {
    let table = capacities();
    let smallest = |level: usize, most: usize| {
        let mut versions = table.iter().take(most);
        versions.position(|(_, holds)| holds[level] >= bytes)
    };
    let (at, least) = match smallest(1, 20) {
        Some(at) => (at, 1),
        None => (smallest(0, 30)?, 0),
    };
    let levels = [Level::Low, Level::Medium, Level::Quartile, Level::High];
    let level = (least..4)
        .rev()
        .find(|level| table[at].1[*level] >= bytes)
        .unwrap();
    Some((at + 1, levels[level], table[at].0))
}

/// Source: ISO/IEC 18004, table 7, every limit of it from both sides.
#[test]
fn every_limit_of_the_table_is_met_from_both_sides() {
    let limits = capacities().into_iter().flat_map(|(_, holds)| holds);
    let mut tried = 0;
    for bytes in limits.flat_map(|limit| [limit - 1, limit, limit + 1]) {
        let text = "a".repeat(bytes);
        match (square_code(&text), wanted(bytes)) {
            (Ok(code), Some((version, level, side))) => {
                let found = (usize::from(code.version), code.level, code.side);
                assert_eq!(found, (version, level, side), "{bytes} bytes");
                tried += 1;
            }
            (Err(SquareCodeError::TooLong { bytes: told, most }), None) => {
                assert_eq!((told, most), (bytes, SquareCode::MOST_BYTES));
            }
            (found, wanted) => panic!("{bytes}: {found:?} beside {wanted:?}"),
        }
    }
    assert!(tried > 250, "{tried}");
    assert_eq!(capacities()[29].1[0], SquareCode::MOST_BYTES);
    assert_eq!(square_code(""), Err(SquareCodeError::Empty));
}

fn of_example(at: usize) -> SquareCode {
    let (_, sheet) = examples().remove(at);
    let link = link::write(&sheet).unwrap();
    square_code(&format!("https://bread.example/#{link}")).unwrap()
}

/// Every example fits a code a phone reads at ease.
#[test]
fn the_examples_fit_a_code_that_is_read_at_ease() {
    for at in 0..4 {
        let code = of_example(at);
        assert!(
            code.version <= 20 && code.level >= Level::Medium,
            "{code:?}"
        );
    }
}

/// The path of the drawing, filled run by run, is the code again.
#[test]
fn the_drawing_holds_every_dark_square() {
    let code = of_example(0);
    let drawing = svg(&code);
    let whole = usize::from(code.side + 2 * SquareCode::MARGIN);
    assert!(drawing.contains(&format!("viewBox=\"0 0 {whole} {whole}\"")));
    let path = drawing
        .rsplit("d=\"")
        .next()
        .unwrap()
        .split('"')
        .next()
        .unwrap();
    let mut dark = vec![false; whole * whole];
    for run in path.split('M').skip(1) {
        let (place, rest) = run.split_once('h').unwrap();
        let (x, y) = place.split_once(' ').unwrap();
        let length: usize = rest.split('v').next().unwrap().parse().unwrap();
        let (x, y): (usize, usize) = (x.parse().unwrap(), y.parse().unwrap());
        for at in x..x + length {
            dark[y * whole + at] = true;
        }
    }
    for row in 0..code.side {
        for column in 0..code.side {
            let (x, y) = (column + SquareCode::MARGIN, row + SquareCode::MARGIN);
            let drawn = dark[usize::from(y) * whole + usize::from(x)];
            assert_eq!(drawn, code.is_dark(column, row));
        }
    }
    let margin = (0..whole).all(|at| !dark[at] && !dark[at * whole]);
    assert!(margin);
}

#[test]
fn the_picture_begins_as_every_png_does_and_has_the_right_size() {
    let code = of_example(0);
    for dots in [0, 1, 7, 255] {
        let picture = png(&code, dots);
        assert_eq!(picture[..8], [0x89, b'P', b'N', b'G', 13, 10, 26, 10]);
        let side = u32::from_be_bytes(picture[16..20].try_into().unwrap());
        let squares = u32::from(code.side + 2 * SquareCode::MARGIN);
        assert_eq!(side, squares * u32::from(dots.clamp(1, 40)));
    }
}

#[test]
fn what_to_leave_out_is_shown_with_what_it_saves() {
    let (_, mut sheet) = examples().remove(0);
    // These words compress badly.
    let note: String = (0_u32..2000)
        .filter_map(|n| char::from_u32(0x4e00 + n * 7919 % 20_000))
        .collect();
    sheet.note = note.chars().take(900).collect();
    let whole = link::write(&sheet).unwrap().len();
    let found = shorter(&sheet, 600);
    assert_eq!(found[0].component, LinkPart::Note);
    assert!(found[0].enough && found[0].saves > 1000, "{found:?}");
    for one in &found {
        let left = link::write(&one.component.left_out_of(&sheet))
            .unwrap()
            .len();
        assert_eq!(left + one.saves, whole);
    }
    assert!(found.is_sorted_by_key(|one| std::cmp::Reverse(one.saves)));
}
