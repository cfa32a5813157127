//! The glossary at the foot of the page, with its drawings.

use leptos::prelude::*;
use wasm_split_helpers::wasm_split;

use super::browser;
use super::browser::dom::{Node, action, el, given, several};
use super::browser::part::{Missing, part};
use super::forms::heading_id;
use super::results::fold;
use super::state::app;
use super::words::{self, Chapter};

/// A path of a drawing: its class, and its outline in a box of 320 by 150.
type Path = (&'static str, &'static str);

/// What a drawing is made of, and where its letters stand.
struct Drawing {
    paths: &'static [Path],
    letters: &'static [(u16, u16)],
}

const LINE: &str = "sketch-line";
const WATER: &str = "sketch-water";
const LEAF: &str = "sketch-leaf";
const ROOT: &str = "sketch-root";
const BOARD: &str = "sketch-board";

/// A drawing for each chapter.
static DRAWINGS: [Drawing; 5] = [
    // A bucket at planting and near harvest.
    Drawing {
        paths: &[
            (WATER, "M25 46H135L127 138H33zM192 104H292L289 138H195z"),
            (BOARD, "M16 28h128v7h-128zM178 28h128v7h-128z"),
            (LINE, "M24 35l9 103h94l9-103M186 35l9 103h94l9-103"),
            (LINE, "M68 35l5 16h14l5-16M230 35l5 16h14l5-16"),
            (
                LEAF,
                "M80 28q-8-3-9-10q8 0 9 7q1-7 9-7q-1 7-9 10zM242 28q-34-2-38-22q22-2 36 14q-4-14 2-18q8 4 4 18q12-16 34-14q-4 20-38 22z",
            ),
            (
                ROOT,
                "M78 51v8M82 51v8M236 51q-10 10-8 24M240 51q-4 12-2 26M246 51q8 10 6 22M250 51q10 10 12 22",
            ),
            (ROOT, "M238 60q-6 50-14 72M242 60v74M247 60q4 50 12 70"),
        ],
        letters: &[
            (12, 42),
            (128, 31),
            (81, 42),
            (121, 46),
            (54, 96),
            (208, 72),
            (270, 66),
            (270, 122),
        ],
    },
    // A board afloat, and at rest.
    Drawing {
        paths: &[
            (WATER, "M16 62h132v74h-132zM172 98h132v38h-132z"),
            (BOARD, "M28 50h108v18h-108zM184 78h108v18h-108z"),
            (LINE, "M14 30v108h136v-108M170 30v108h136v-108"),
            (
                LINE,
                "M82 116m-20 0a20 20 0 1 0 40 0a20 20 0 1 0-40 0M238 116m-20 0a20 20 0 1 0 40 0a20 20 0 1 0-40 0",
            ),
            (
                LEAF,
                "M82 50q-8-3-9-10q8 0 9 7q1-7 9-7q-1 7-9 10zM238 78q-28-2-32-20q18-2 30 12q-3-12 2-16q7 4 3 16q11-14 29-12q-4 18-32 20z",
            ),
        ],
        letters: &[(46, 59), (124, 68), (82, 116), (238, 96)],
    },
    // A bag, a jug, two stocks.
    Drawing {
        paths: &[
            (
                WATER,
                "M128 78h50l-4 58h-42zM226 90h28v46h-28zM276 90h28v46h-28z",
            ),
            (
                LINE,
                "M24 40q6-6 12 0t12 0t12 0t12 0t12 0v96h-60zM34 74h40M34 84h28",
            ),
            (LINE, "M124 56h56l-6 80h-44zM180 66q18 2 14 24q-2 14-17 16"),
            (
                LINE,
                "M234 54h12v16q8 4 8 14v52h-28v-52q0-10 8-14zM284 54h12v16q8 4 8 14v52h-28v-52q0-10 8-14z",
            ),
        ],
        letters: &[(54, 108), (152, 106), (240, 112), (290, 112)],
    },
    // Seed, seedling, head.
    Drawing {
        paths: &[
            (
                LINE,
                "M20 124h284M40 118v12M130 118v12M272 118v12M298 119l8 5l-8 5",
            ),
            (
                LEAF,
                "M34 104q6-9 12 0q-6 6-12 0zM130 84q-12-4-14-14q12 0 14 10q2-10 14-10q-2 10-14 14zM272 78q-36-2-40-28q22-2 38 18q-4-18 2-24q8 6 4 24q14-20 38-18q-4 26-42 28z",
            ),
            (LINE, "M118 84h24l-5 20h-14zM260 78h24l-5 20h-14z"),
            (
                ROOT,
                "M126 104v8M134 104v8M266 98q-4 8-4 16M272 98v18M278 98q4 8 4 16",
            ),
        ],
        letters: &[(40, 142), (130, 142), (272, 142)],
    },
    // Sun, lamp, leaf.
    Drawing {
        paths: &[
            (
                LINE,
                "M62 40m-16 0a16 16 0 1 0 32 0a16 16 0 1 0-32 0M62 12v6M62 62v6M34 40h6M84 40h6M42 20l4 4M78 56l4 4M82 20l-4 4M46 56l-4 4",
            ),
            (
                LINE,
                "M232 22h60l8 16h-76zM240 46l-8 14M262 46v16M284 46l8 14",
            ),
            (
                LEAF,
                "M160 132q-52-6-58-46q40-2 56 32q-4-26 2-38q10 12 6 38q16-34 52-32q-6 40-58 46z",
            ),
            (
                LINE,
                "M120 76q6-8 0-16t0-16M160 72q6-8 0-16t0-16M200 76q6-8 0-16t0-16",
            ),
        ],
        letters: &[(96, 18), (216, 60), (178, 52)],
    },
];

/// The fold.
pub fn glossary() -> Node {
    fold("fold glossary", words::glossary(), || {
        part(fetch_glossary, chapters, || ())
    })
    .id("glossary")
}

#[wasm_split(glossary, fallible, preload(fetch_glossary))]
fn chapters() -> Result<Node, Missing> {
    let all = words::chapters()
        .into_iter()
        .zip(&DRAWINGS)
        .map(|(chapter, drawing)| {
            let meanings = chapter
                .terms
                .iter()
                .enumerate()
                .map(|(place, &(term, meaning))| {
                    let letter = (place < drawing.letters.len()).then(|| {
                        el("span")
                            .class("letter")
                            .attr("aria-hidden", "true")
                            .child(letter(place))
                    });
                    several()
                        .child(el("dt").child(letter).child(term))
                        .child(el("dd").child(meaning))
                });
            el("section")
                .class("chapter")
                .child(el("h3").child(chapter.name))
                .child(drawn(drawing, &chapter))
                .child(el("dl").child(meanings.collect::<Node>()))
        });
    let app = app();
    Ok(several()
        .child(el("p").class("hint").child(words::glossary_more()))
        .child(given(
            move || app.plan_is_open(),
            move || {
                el("p")
                    .class("back")
                    .child(action("", words::back_to_plan(), move || {
                        browser::focus(&heading_id(app.step.get_untracked()));
                    }))
            },
        ))
        .child(el("div").class("chapters").child(all.collect::<Node>())))
}

fn letter(place: usize) -> String {
    // No drawing has more letters than the alphabet.
    char::from(b'a' + u8::try_from(place % 26).unwrap_or(0)).to_string()
}

fn drawn(drawing: &Drawing, chapter: &Chapter) -> Node {
    let path = |&(class, outline): &Path| el("path").class(class).attr("d", outline);
    let mark = |(place, &(x, y)): (usize, &(u16, u16))| {
        several()
            .child(
                el("circle")
                    .class("letter-spot")
                    .attr("cx", x.to_string())
                    .attr("cy", y.to_string())
                    .attr("r", "8"),
            )
            .child(
                el("text")
                    .class("letter-text")
                    .attr("x", x.to_string())
                    .attr("y", (y + 4).to_string())
                    .child(letter(place)),
            )
    };
    el("svg")
        .class("sketch")
        .attr("role", "img")
        .attr("aria-label", chapter.drawing)
        .attr("viewBox", "0 0 320 150")
        .child(drawing.paths.iter().map(path).collect::<Node>())
        .child(
            drawing
                .letters
                .iter()
                .enumerate()
                .map(mark)
                .collect::<Node>(),
        )
}
