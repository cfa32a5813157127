//! What is wrong with a plan: typed, with the limit that was broken, for the page to word.

use serde::Serialize;
use serde::ser::Serializer;

use super::Field;

/// One thing that keeps a plan from being worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct Problem {
    /// The field to mend; `None` where the document as a whole cannot be read.
    pub field: Option<Field>,
    /// What is wrong with it.
    pub kind: ProblemKind,
}

impl Problem {
    /// A problem of one field.
    pub const fn at(field: Field, kind: ProblemKind) -> Self {
        Self {
            field: Some(field),
            kind,
        }
    }
}

/// What is wrong. Numbers are in the unit of the field's JSON name.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ProblemKind {
    /// Nothing was entered and the field has no default.
    Missing,
    /// The text is no number.
    NotANumber {
        /// What stands there.
        got: String,
    },
    /// A number with a unit that this field does not know.
    UnknownUnit {
        /// What stands there.
        got: String,
    },
    /// One comma before three digits: decimal or thousands?
    CommaOrThousands {
        /// What stands there.
        got: String,
    },
    /// Larger than a number can be.
    TooLarge {
        /// What stands there.
        got: String,
    },
    /// Outside what can physically be or what the method covers.
    OutOfRange {
        /// What was given.
        got: f64,
        /// The least allowed.
        low: f64,
        /// The most allowed.
        high: f64,
    },
    /// A count with a fraction.
    NotWhole {
        /// What was given.
        got: f64,
    },
    /// A word that is not on the list.
    NotAChoice {
        /// What stands there.
        got: String,
        /// The keys that are allowed.
        allowed: Vec<&'static str>,
    },
    /// Neither a salt of the catalog nor a chemical formula.
    NotAFormula {
        /// What stands there.
        got: String,
    },
    /// No calendar date of the form year-month-day.
    NotADate {
        /// What stands there.
        got: String,
    },
    /// At odds with another field.
    Conflict {
        /// What was given.
        got: f64,
        /// What the other fields allow.
        rule: Rule,
        /// The limit that follows from them, in the unit of this field.
        limit: f64,
    },
    /// Too few, or not both rising, of the measured pairs.
    MeasuredPairs {
        /// How many usable pairs there are.
        got: usize,
        /// How many are needed.
        needed: usize,
    },
    /// The text is not a plan at all.
    NotAPlan {
        /// Line of the first fault, from 1; 0 where unknown.
        line: usize,
        /// Column of the first fault, from 1; 0 where unknown.
        column: usize,
    },
    /// Every field is within its limits, but together they lie where the models do not reach.
    BeyondModels,
    /// A plan saved by a later version.
    NewerVersion {
        /// Its version.
        got: u32,
        /// The latest that can be read.
        supported: u32,
    },
}

/// How two fields must agree. `limit` is named in [`ProblemKind::Conflict`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Rule {
    /// The neck is narrower than the body.
    NeckNarrowerThanBody,
    /// The pot is deeper than the cover is thick.
    PotReachesBelowCover,
    /// The pot narrows downwards, or is straight.
    PotNarrowsDownwards,
    /// The pot passes through the neck of the bottle.
    PotPassesNeck,
    /// The pots find room side by side in cover or board.
    PotsFitCover,
    /// The flange is wider than the pot's top, or the pot falls through.
    FlangeHoldsPot,
    /// The pot is immersed no deeper than it reaches below the cover.
    ImmersionWithinPot,
    /// The pot's foot stays above the floor.
    PotAboveFloor,
    /// The solution stays within the container.
    FillWithinContainer,
    /// The measured depths end at or below the rim.
    MeasuredWithinRim,
    /// Boards no longer than the tank.
    BoardsFitLength,
    /// Boards no wider than the tank.
    BoardsFitWidth,
    /// Boards together no larger than the tank.
    BoardsFitArea,
    /// The pipe leaves room for solution above it.
    PipeWithinTank,
    /// The pipes lie side by side in the tank.
    PipesFitWidth,
    /// Pipes this far apart lie within the tank.
    PipesReachWalls,
    /// The wall is thinner than half the pipe.
    WallWithinPipe,
    /// At least one plant fits at this spacing.
    OnePlantFits,
    /// The night is no warmer than the day.
    MinimumBelowMaximum,
    /// No more sunshine than daylight.
    SunshineWithinDaylight,
    /// No more radiation than arrives above the air.
    RadiationBelowExtraterrestrial,
    /// A salt of a stock dissolves at the store's coldest.
    DissolvesInStore,
    /// The target is above what the water brings.
    TargetAboveRawWater,
    /// The forms of nitrogen make up the total.
    NitrogenFormsMakeTotal,
    /// All parts of a label together are at most the whole.
    LabelWithinWhole,
    /// The blend adds something that conducts.
    BlendConducts,
    /// The blend adds nitrogen.
    BlendHasNitrogen,
}

impl Serialize for Problem {
    /// `{"field": "container.height_cm", "kind": "out_of_range", "got": …, "low": …, "high": …}`
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[derive(Serialize)]
        struct Flat<'a> {
            field: Option<String>,
            #[serde(flatten)]
            kind: &'a ProblemKind,
        }
        Flat {
            field: self.field.map(Field::path),
            kind: &self.kind,
        }
        .serialize(serializer)
    }
}
