//! What the grower decides, the limits of every field, and the saved document.

mod check;
mod choice;
mod document;
mod entry;
mod examples;
mod field;
mod figure;
mod model;
mod pick;
mod presets;
mod problem;
mod quantity;

pub use check::{
    Boards, Climate, Container, Crop, Daylight, Fertilizer, Light, Mixture, Pipes, Pot, Rectangle,
    Sound, Strength, Unusual, check, read_text, used_fields,
};
pub use choice::{
    CalciumNitrate, DateMeaning, DaylightBy, Dosing, Method, Pattern, PipeEnds, Shape, StrengthBy,
};
pub use entry::Entry;
pub use examples::Example;
pub use field::{Field, Limits};
pub use figure::{Figure, figure, grams};
pub use model::{
    ClimatePlan, ContainerPlan, CropPlan, FertilizerPlan, LabelPlan, MeasuredPair, Plan, VERSION,
};
pub use pick::Pick;
pub use problem::{Problem, ProblemKind, Rule};
pub use quantity::{Dimension, NotRead, UnitSystem, significant};
