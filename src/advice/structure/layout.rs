//! How holes and boards lie, and how they are cut from stock sheets.

use super::boards::{across, count};
use super::mm;
use crate::advice::outcome::{BoardPlace, HolePlace, LayoutOutcome, SheetPiece};
use crate::plan::{Boards, Build, Sound};
use crate::science::layout::{Piece, cut, hole_rows, holes};
use crate::science::units::Length;

/// Holes that are listed one by one; of more only the number is told.
const MOST_LISTED: u32 = 20_000;
/// Rest of a tank that is worth a strip of board, mm; less is closed with a flap.
const STRIP_FROM_MM: f64 = 50.0;
/// Stock sheets that are told piece by piece.
const MOST_SHEETS: u32 = 200;
/// Foam that is left around holes, mm, at least: common practice, no source.
pub const LEAST_FOAM_MM: f64 = 20.0;

/// The layout of a rectangular tank.
pub fn layout(sound: &Sound, build: &Build) -> LayoutOutcome {
    let boards = sound.container.boards.as_ref();
    let board = boards.map_or((build.inside.0, build.inside.1), |boards| {
        (boards.length, boards.width)
    });
    let crop = &sound.crop;
    let on_board = crop.plants_per_board.unwrap_or(crop.plants);
    let arrangement = crop.pattern.arrangement();
    // The plan's spacing is across, along.
    let spacing = (crop.spacing.1, crop.spacing.0);
    let places = if on_board <= MOST_LISTED {
        holes(board, spacing, crop.edge, arrangement)
    } else {
        Vec::new()
    };
    let hole = sound.container.pot.top_diameter;
    let (edge_left_mm, between_holes_mm) = foam(sound, build);
    let (laid, without) = boards.map_or_else(|| (Vec::new(), 0), laid);
    let cutting = cutting(sound, build, &laid);
    let (length, width, _) = build.inside;
    LayoutOutcome {
        board_length_mm: mm(board.0),
        board_width_mm: mm(board.1),
        hole_diameter_mm: mm(hole),
        holes: places
            .iter()
            .map(|&(x, y)| HolePlace {
                x_mm: mm(x),
                y_mm: mm(y),
            })
            .collect(),
        hole_count: crop.plants,
        plants_per_m2: f64::from(crop.plants) / (length * width).value,
        edge_left_mm,
        between_holes_mm,
        boards: if boards.is_some() {
            laid
        } else {
            cutting.laid.clone()
        },
        boards_without_place: without,
        sheet_mm: (mm(build.sheet.0), mm(build.sheet.1)),
        sheets: cutting.number,
        waste_pct: cutting.waste_pct(build),
        pieces: cutting.pieces,
        offcuts: cutting.offcuts,
    }
}

fn cutting(sound: &Sound, build: &Build, laid: &[BoardPlace]) -> Sheets {
    match &sound.container.boards {
        Some(boards) => board_cutting(boards, build, laid),
        None => cover_cutting(sound, build),
    }
}

/// Stock sheets needed; zero where a board or the cover cannot be cut from one.
pub fn sheets_needed(sound: &Sound, build: &Build) -> u32 {
    cutting(sound, build, &[]).number
}

/// Foam between a hole and the nearest edge, and between neighbouring holes, mm.
pub fn foam(sound: &Sound, build: &Build) -> (f64, Option<f64>) {
    let board = sound
        .container
        .boards
        .map_or((build.inside.0, build.inside.1), |boards| {
            (boards.length, boards.width)
        });
    let crop = &sound.crop;
    let hole = mm(sound.container.pot.top_diameter);
    let places = holes(
        board,
        (crop.spacing.1, crop.spacing.0),
        crop.edge,
        crop.pattern.arrangement(),
    );
    let edge = places
        .iter()
        .map(|&(x, y)| mm(x.min(board.0 - x).min(y).min(board.1 - y)))
        .fold(f64::INFINITY, f64::min);
    // The pattern repeats: the first holes of the first rows meet every kind of neighbour.
    let (columns, _) = hole_rows(
        board,
        (crop.spacing.1, crop.spacing.0),
        crop.edge,
        crop.pattern.arrangement(),
    );
    let near: Vec<_> = places
        .chunks(columns.max(1))
        .take(4)
        .flat_map(|row| row.iter().take(3))
        .collect();
    let mut between = f64::INFINITY;
    for (index, (x, y)) in near.iter().enumerate() {
        for (other_x, other_y) in &near[..index] {
            between = between.min(libm::hypot(mm(*x - *other_x), mm(*y - *other_y)));
        }
    }
    (
        if edge.is_finite() {
            edge - hole / 2.0
        } else {
            0.0
        },
        between.is_finite().then_some(between - hole),
    )
}

/// Boards in rows from one end, and how many find no place.
fn laid(boards: &Boards) -> (Vec<BoardPlace>, u32) {
    let columns = across(boards);
    let rows = count(boards.tank_length, boards.along());
    let placed = boards.count.min(columns.saturating_mul(rows));
    let (length, width) = (mm(boards.along()), mm(boards.across()));
    let slack = (mm(boards.tank_width) - width * f64::from(columns)) / (f64::from(columns) + 1.0);
    let mut places: Vec<BoardPlace> = (0..placed)
        .map(|index| BoardPlace {
            x_mm: f64::from(index / columns.max(1)) * length,
            y_mm: slack + f64::from(index % columns.max(1)) * (width + slack),
            length_mm: length,
            width_mm: width,
            strip: false,
        })
        .collect();
    let rows_used = placed.div_ceil(columns.max(1));
    let end = mm(boards.tank_length) - f64::from(rows_used) * length;
    if end >= STRIP_FROM_MM && rows_used == rows {
        // A few millimetres of room keep the strip from jamming.
        places.push(BoardPlace {
            x_mm: f64::from(rows_used) * length,
            y_mm: slack.min(5.0),
            length_mm: end - 5.0,
            width_mm: mm(boards.tank_width) - 2.0 * slack.min(5.0),
            strip: true,
        });
    }
    (places, boards.count - placed)
}

/// Pieces and offcuts over all sheets.
#[derive(Default)]
struct Sheets {
    number: u32,
    pieces: Vec<SheetPiece>,
    offcuts: Vec<SheetPiece>,
    laid: Vec<BoardPlace>,
    used_mm2: f64,
}

impl Sheets {
    fn waste_pct(&self, build: &Build) -> f64 {
        let all = f64::from(self.number) * mm(build.sheet.0) * mm(build.sheet.1);
        if all > 0.0 {
            (100.0 * (1.0 - self.used_mm2 / all)).max(0.0)
        } else {
            0.0
        }
    }

    /// Equal pieces, as many to a sheet as straight cuts get from it.
    fn equal(&mut self, build: &Build, piece: (Length, Length), wanted: u32) -> bool {
        let cutting = cut(build.sheet, piece);
        let each = u32::try_from(cutting.pieces.len()).unwrap_or(0);
        if each == 0 {
            return false;
        }
        let sheets = wanted.div_ceil(each);
        for sheet in 0..sheets {
            let number = self.number + sheet + 1;
            let here = (wanted - sheet * each).min(each) as usize;
            if sheet < MOST_SHEETS {
                let (cut_here, spare) = cutting.pieces.split_at(here);
                self.pieces
                    .extend(cut_here.iter().map(|it| on_sheet(number, it)));
                self.offcuts.extend(
                    cutting
                        .offcuts
                        .iter()
                        .chain(spare)
                        .map(|it| on_sheet(number, it)),
                );
            }
        }
        self.number += sheets;
        self.used_mm2 += f64::from(wanted) * mm(piece.0) * mm(piece.1);
        true
    }

    /// A strip from the offcut that it leaves least of, or from a new sheet; too long a strip in
    /// two halves.
    fn strip(&mut self, build: &Build, length: f64, width: f64, halvings: u32) {
        let fits = |offcut: &SheetPiece| {
            let upright = offcut.length_mm + 1e-6 >= length && offcut.width_mm + 1e-6 >= width;
            let turned = offcut.length_mm + 1e-6 >= width && offcut.width_mm + 1e-6 >= length;
            (upright || turned).then_some(upright)
        };
        let best = self
            .offcuts
            .iter()
            .enumerate()
            .filter_map(|(index, offcut)| {
                fits(offcut).map(|_| (index, offcut.length_mm * offcut.width_mm))
            })
            .min_by(|a, b| a.1.total_cmp(&b.1))
            .map(|(index, _)| index);
        let (index, upright) = if let Some(index) = best {
            (index, fits(&self.offcuts[index]).unwrap_or(true))
        } else {
            let sheet = SheetPiece {
                sheet: self.number + 1,
                x_mm: 0.0,
                y_mm: 0.0,
                length_mm: mm(build.sheet.0),
                width_mm: mm(build.sheet.1),
            };
            let Some(upright) = fits(&sheet) else {
                if halvings > 0 {
                    let (a, b) = if length >= width {
                        (length / 2.0, width)
                    } else {
                        (length, width / 2.0)
                    };
                    self.strip(build, a, b, halvings - 1);
                    self.strip(build, a, b, halvings - 1);
                }
                return;
            };
            self.number += 1;
            self.offcuts.push(sheet);
            (self.offcuts.len() - 1, upright)
        };
        let offcut = self.offcuts.swap_remove(index);
        let (along, across) = if upright {
            (length, width)
        } else {
            (width, length)
        };
        self.pieces.push(SheetPiece {
            length_mm: along,
            width_mm: across,
            ..offcut
        });
        self.used_mm2 += along * across;
        let (end, side) = (offcut.length_mm - along, offcut.width_mm - across);
        if end > 1e-6 {
            self.offcuts.push(SheetPiece {
                x_mm: offcut.x_mm + along,
                length_mm: end,
                ..offcut
            });
        }
        if side > 1e-6 {
            self.offcuts.push(SheetPiece {
                y_mm: offcut.y_mm + across,
                length_mm: along,
                width_mm: side,
                ..offcut
            });
        }
    }
}

fn on_sheet(sheet: u32, piece: &Piece) -> SheetPiece {
    SheetPiece {
        sheet,
        x_mm: mm(piece.x),
        y_mm: mm(piece.y),
        length_mm: mm(piece.length),
        width_mm: mm(piece.width),
    }
}

fn board_cutting(boards: &Boards, build: &Build, laid: &[BoardPlace]) -> Sheets {
    let mut sheets = Sheets::default();
    sheets.equal(build, (boards.length, boards.width), boards.count);
    for strip in laid.iter().filter(|place| place.strip) {
        sheets.strip(build, strip.length_mm, strip.width_mm, 6);
    }
    sheets
}

/// A fixed cover is cut between its columns of holes into pieces as long as a sheet gives.
fn cover_cutting(sound: &Sound, build: &Build) -> Sheets {
    let (length, width, _) = build.inside;
    let crop = &sound.crop;
    let (columns, _) = hole_rows(
        (length, width),
        (crop.spacing.1, crop.spacing.0),
        crop.edge,
        crop.pattern.arrangement(),
    );
    let mut sheets = Sheets::default();
    let (sheet_length, sheet_width) = build.sheet;
    let most = if width <= sheet_width {
        sheet_length
    } else if width <= sheet_length {
        sheet_width
    } else {
        return sheets;
    };
    let Ok(columns) = u32::try_from(columns) else {
        return sheets;
    };
    let pitch = length / f64::from(columns.max(1));
    // The whole cover where a sheet is long enough, else pieces of whole columns.
    let per_piece = if length <= most {
        columns.max(1)
    } else {
        count(most, pitch)
    };
    if per_piece == 0 {
        return sheets;
    }
    let whole = columns.max(1) / per_piece;
    let rest = columns.max(1) % per_piece;
    let piece = pitch * f64::from(per_piece);
    if !sheets.equal(build, (piece, width), whole) {
        return sheets;
    }
    let place = |x: Length, length: Length| BoardPlace {
        x_mm: mm(x),
        y_mm: 0.0,
        length_mm: mm(length),
        width_mm: mm(width),
        strip: false,
    };
    sheets.laid = (0..whole)
        .map(|index| place(piece * f64::from(index), piece))
        .collect();
    if rest > 0 {
        let last = pitch * f64::from(rest);
        sheets.strip(build, mm(last), mm(width), 0);
        sheets.laid.push(place(piece * f64::from(whole), last));
    }
    sheets
}
