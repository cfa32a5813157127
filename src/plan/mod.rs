//! What the grower decides, the limits of every field, and the saved document.

mod check;
mod choice;
mod document;
mod entry;
mod examples;
mod field;
mod figure;
mod ions;
mod kept;
mod link;
pub(crate) mod members;
mod model;
pub mod notebook;
mod nudge;
mod pick;
mod presets;
mod problem;
mod quantity;
pub mod trial;
mod unknown;

pub use check::{
    AcidDose, Assumed, Boards, Build, BuildPrices, Climate, Container, Crop, Daylight, Fertilizer,
    FixedCover, Light, Mixture, Pipes, Pot, Prices, RawWater, Rectangle, ShelfSalt, Sound, Stocks,
    Strength, Unusual, check, read_text, used_fields,
};
pub(crate) use check::{reason, within};
pub use choice::{
    AcidChoice, CalciumNitrate, DateMeaning, DaylightBy, Dosing, Method, Pattern, PipeEnds, Shape,
    StandsOn, StrengthBy, WaterKind,
};
pub use document::quote_bare_words;
pub use entry::Entry;
pub use examples::Example;
pub use field::{Field, Limits};
pub use figure::{Figure, figure, grams};
pub use ions::{IONS, IonList, IonProblem, SoundIons};
pub use kept::{
    FileError, Kept, KeptBlend, KeptNotebook, KeptTrial, LONGEST_FILE, Materials, Store,
    notebooks_from_file, plans_from_file, plans_to_file, trials_from_file,
};
pub use link::{LINK_PATHS, LINK_WORDS, LONGEST_LINK, LinkError};
pub use model::{
    BuildPlan, ClimatePlan, ContainerPlan, CropPlan, FertilizerPlan, LabelPlan, MeasuredPair, Plan,
    SaltLine, VERSION, WaterPlan,
};
pub use pick::Pick;
pub use problem::{Problem, ProblemKind, Rule};
pub use quantity::{Dimension, NotRead, UnitSystem, double, significant, temperature_difference};
