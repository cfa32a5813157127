//! Names of the choices.

use crate::catalog::blends::BlendChoice;
use crate::catalog::climates::ClimateChoice;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::crops::CropKind;
use crate::catalog::foams::Foam;
use crate::catalog::pipes::{PipeChoice, PipeMaterial, Series};
use crate::catalog::pots::PotChoice;
use crate::catalog::recipes::RecipeChoice;
use crate::catalog::salts::Salt;
use crate::catalog::shelters::Shelter;
use crate::catalog::timber::{Timber, TimberSeries};
use crate::catalog::vessels::VesselChoice;
use crate::plan::{
    AcidChoice, CalciumNitrate, DateMeaning, DaylightBy, Dosing, Entry, LabelPlan, Method, Pattern,
    PipeEnds, Shape, StandsOn, StrengthBy, WaterKind, significant,
};

/// A choice that has a name.
pub trait Worded {
    /// Its name.
    fn word(self) -> String;
}

/// Names as plain texts.
macro_rules! words {
    ($type:ty { $($item:ident => $word:literal,)+ }) => {
        impl Worded for $type {
            fn word(self) -> String {
                match self { $(Self::$item => $word,)+ }.to_owned()
            }
        }
    };
}

words!(Method {
    Bottle => "One plant in a bottle",
    Bucket => "Several in a bucket",
    CoveredTank => "Covered tank",
    FloatingBoards => "Floating boards on pipes",
});

words!(Shape {
    Cylinder => "Round, straight walls",
    TaperedRound => "Round, tapered (most buckets)",
    Rectangular => "Box, straight walls",
    TaperedRectangular => "Box, sloping walls (most storage boxes)",
    Bottle => "Bottle with shoulder and neck",
    Measured => "Measured with a jug",
});

words!(Pattern {
    Square => "Rows in line",
    Staggered => "Every other row shifted",
    Hexagonal => "Hexagonal, all neighbours alike",
});

words!(DateMeaning {
    Transplanting => "transplanting",
    Seeding => "seeding",
});

words!(Dosing {
    DryBlend => "A dry blend, weighed",
    Stocks => "Stock solutions A and B",
    Salts => "Single salts, to a published solution",
});

words!(WaterKind {
    Rain => "Rain, or as pure",
    Tap => "A tap, only its EC",
    Analysis => "A full analysis",
});

words!(AcidChoice {
    None => "None",
    Nitric => "Nitric acid",
    Phosphoric => "Phosphoric acid",
    Sulfuric => "Sulfuric acid",
    Citric => "Citric acid (powder)",
});

words!(RecipeChoice {
    HoaglandArnon1 => "Hoagland and Arnon 1950, no. 1",
    HoaglandArnon2 => "Hoagland and Arnon 1950, no. 2",
    Steiner => "Steiner 1984, universal",
    SonneveldStraverLettuce => "Sonneveld and Straver 1994, lettuce",
    ModifiedSonneveld => "Mattson and Peters 2014, leafy greens",
});

words!(Salt {
    CalciumNitrate => "Calcium nitrate tetrahydrate",
    CalciumAmmoniumNitrate => "Calcium nitrate, granular (15.5-0-0)",
    PotassiumNitrate => "Potassium nitrate",
    MonopotassiumPhosphate => "Monopotassium phosphate",
    MonoammoniumPhosphate => "Monoammonium phosphate",
    MagnesiumSulfate => "Magnesium sulfate (Epsom salt)",
    MagnesiumNitrate => "Magnesium nitrate hexahydrate",
    PotassiumSulfate => "Potassium sulfate",
    AmmoniumNitrate => "Ammonium nitrate",
    AmmoniumSulfate => "Ammonium sulfate",
    PotassiumChloride => "Potassium chloride",
    CalciumChloride => "Calcium chloride dihydrate",
    BoricAcid => "Boric acid",
    Borax => "Borax",
    ManganeseSulfate => "Manganese sulfate monohydrate",
    ZincSulfate => "Zinc sulfate heptahydrate",
    CopperSulfate => "Copper sulfate pentahydrate",
    SodiumMolybdate => "Sodium molybdate dihydrate",
    IronSulfate => "Iron(II) sulfate heptahydrate",
    IronEdta => "Iron chelate, EDTA",
    IronDtpa => "Iron chelate, DTPA",
    IronEddha => "Iron chelate, EDDHA",
});

words!(StrengthBy {
    Conductivity => "EC (needs a meter)",
    Nitrogen => "Nitrogen (needs a scale only)",
});

words!(CalciumNitrate {
    DoubleSalt => "Granular, 15.5-0-0 with ammonium",
    Tetrahydrate => "Crystals, tetrahydrate",
});

words!(DaylightBy {
    Radiation => "Solar radiation",
    Sunshine => "Hours of sunshine",
});

words!(PipeEnds {
    Open => "Open: solution fills them",
    Capped => "Capped with air: they want to float, weigh them down",
    Flooded => "Filled, then capped",
});

words!(PipeMaterial {
    Pvc => "PVC",
    Polyethylene => "Polyethylene (HDPE)",
    Polypropylene => "Polypropylene",
    Abs => "ABS",
});

words!(StandsOn {
    Ground => "Firm level ground",
    Slab => "A ground slab of a building",
    Bench => "A bench or table",
    UpperFloor => "A floor with a room or air below",
    BalconyOrRoof => "A balcony, deck or roof",
});

words!(CoverMaterial {
    ExtrudedFoam => "Extruded foam",
    ExpandedFoam => "Expanded (beaded) foam",
    Plywood => "Plywood",
    RigidPlastic => "Rigid plastic sheet",
    Fabric => "Fabric or film stretched on a frame",
});

impl Worded for Timber {
    fn word(self) -> String {
        let figures = self.figures();
        let (thick, wide) = figures.nominal;
        match figures.series {
            TimberSeries::Metric => format!("{thick} × {wide} mm"),
            TimberSeries::UsDressed => format!(
                "{thick} × {wide} in nominal (truly {} × {} mm)",
                figures.thickness_mm, figures.width_mm
            ),
        }
    }
}

words!(CropKind {
    LeafLettuce => "Leaf lettuce",
    ButterheadLettuce => "Butterhead lettuce",
    RomaineLettuce => "Romaine lettuce",
    PakChoi => "Pak choi (not validated)",
    LeafMustard => "Leaf mustard (not validated)",
    Spinach => "Spinach (not validated)",
    Chard => "Chard (not validated)",
    Basil => "Basil (not validated)",
    Coriander => "Coriander (not validated)",
    Parsley => "Parsley (not validated)",
});

words!(Shelter {
    RainCover => "Outdoors under a clear roof, open sides",
    PlasticShelter => "Tunnel or house of plastic film",
    Greenhouse => "Glass greenhouse",
    Windowsill => "Indoors at a bright window",
    Lamps => "Indoors under lamps",
});

words!(ClimateChoice {
    UplandCoolHumid => "Upland, cool and humid",
    TemperateLateSummer => "Temperate, late summer to autumn",
    TemperateSpring => "Temperate, spring",
    MaritimeSummer => "Cool coast, summer",
    MildHumidCoast => "Mild humid coast, a porch",
    TropicalLowland => "Tropical lowland, hot and humid",
    TropicalHighland => "Tropical highland, dry season",
    DrySummer => "Inland, hot dry summer",
    DesertWinter => "Desert, winter",
    SubtropicalWinter => "Subtropics, winter",
    RoomUnderLamps => "A room under lamps",
    Own => "My own figures",
});

words!(Foam {
    ExtrudedX => "Extruded, 21 kg/m³ (type X)",
    ExtrudedIv => "Extruded, 25 kg/m³ (type IV, usual)",
    ExtrudedVi => "Extruded, 29 kg/m³ (type VI)",
    ExpandedI => "Expanded beads, 15 kg/m³ (type I)",
    ExpandedViii => "Expanded beads, 18 kg/m³ (type VIII)",
    ExpandedIi => "Expanded beads, 22 kg/m³ (type II)",
    ExpandedIx => "Expanded beads, 29 kg/m³ (type IX)",
});

words!(PotChoice {
    Small => "about 5 cm (2 in) wide, 5 cm deep",
    Medium => "about 7.5 cm (3 in) wide, 7.5 cm deep",
    Deep => "about 7.5 cm (3 in) wide, 10 cm deep",
});

words!(VesselChoice {
    Bottle4 => "4 L bottle with a wide neck",
    CutBottle2 => "2 L bottle, top cut off",
    Bucket19 => "19 L (5 gal) bucket",
    Box45 => "45 L storage box",
    Tank240 => "2.4 × 1.2 m frame, lined",
    Tank720 => "7.35 × 1.25 m frame, lined",
});

impl Worded for BlendChoice {
    fn word(self) -> String {
        match self.grade() {
            Some((nitrogen, phosphate, potash)) => format!("{nitrogen}-{phosphate}-{potash}"),
            None => "Another: I copy its label".to_owned(),
        }
    }
}

impl Worded for PipeChoice {
    fn word(self) -> String {
        let Some(pipe) = self.pipe() else {
            return "Another: I measure it".to_owned();
        };
        let nominal = significant(pipe.nominal, 4);
        match pipe.series {
            Series::Metric => format!("{nominal} mm"),
            Series::Inch => format!("{nominal} in, schedule 40"),
            Series::InchDrain => format!("{nominal} in, sewer and drain"),
        }
    }
}

/// First line of a list that fills in measures.
pub const PRESET_VESSEL: &str = "Fill in the measures of…";
/// First line of the list of pots.
pub const PRESET_POT: &str = "Fill in a common net pot…";
/// Label of the list of common containers.
pub const LABEL_PRESET_VESSEL: &str = "Common containers";
/// Label of the list of common pots.
pub const LABEL_PRESET_POT: &str = "Common net pots";
/// A choice that is not on the list.
pub fn unknown_choice(text: &str) -> String {
    if text.is_empty() {
        "Choose…".to_owned()
    } else {
        format!("'{text}' (not known)")
    }
}
/// Button.
pub const ADD_LINE: &str = "Add a line";
/// Button.
pub const REMOVE_LINE: &str = "Remove the last line";
/// Over the blends that were kept.
pub const KEPT_BLENDS: &str = "Blends you keep, for all plans";
/// Button that writes a kept blend into the plan.
pub fn take_blend(name: &str) -> String {
    format!("Use {name}")
}
/// Button.
pub const FORGET: &str = "Forget";
/// Name of the button that forgets a blend.
pub fn forget_blend(name: &str) -> String {
    format!("Forget the blend {name}")
}
/// Label of a kept blend's name.
pub const BLEND_NAME: &str = "Name to keep this label under";
/// Button.
pub const KEEP_BLEND: &str = "Keep this label for all plans";
/// Button where one of that name is kept.
pub const KEEP_AGAIN: &str = "Keep it anew";
/// Button.
pub const KEEP_SALT: &str = "Keep this salt for all plans";
/// Button.
pub const FORGET_SALT: &str = "Keep this salt no longer";

/// The grade of a label, as its lines were typed.
pub fn grade(label: &LabelPlan) -> String {
    [&label.nitrogen_pct, &label.p2o5_pct, &label.k2o_pct]
        .map(|entry| match entry {
            Entry::Number(value) => significant(*value, 3),
            Entry::Text(text) if text.trim().is_empty() => "0".to_owned(),
            Entry::Text(text) => text.trim().to_owned(),
        })
        .join("-")
}
/// Button beside a date.
pub const TODAY: &str = "Today";
/// Name of the calendar button beside a date.
pub const PICK_DATE: &str = "Pick the date from a calendar";
/// Groups of fields.
pub const GROUP_VESSEL: &str = "The container";
/// Groups of fields.
pub const GROUP_POT: &str = "Cover and net pots";
/// Groups of fields.
pub const GROUP_POT_BOARDS: &str = "Net pots";
/// Groups of fields.
pub const GROUP_BOARDS: &str = "Boards";
/// Groups of fields.
pub const GROUP_PIPES: &str = "Pipes";
/// Groups of fields.
pub const GROUP_FILL: &str = "Fill";
/// Groups of fields.
pub const GROUP_PLANTS: &str = "Plants";
/// Groups of fields.
pub const GROUP_DATES: &str = "Dates";
/// Groups of fields.
pub const GROUP_HARVEST: &str = "Harvest";
/// Groups of fields.
pub const GROUP_WATER: &str = "Raw water";
/// Groups of fields.
pub const GROUP_BLEND: &str = "Blend";
/// Groups of fields.
pub const GROUP_STRENGTH: &str = "Strength";
/// Groups of fields.
pub const GROUP_STOCKS: &str = "Stock solutions";
/// Folded group of fields.
pub const GROUP_LABEL: &str = "What the label says, % by mass";
/// Groups of fields.
pub const GROUP_RECIPE: &str = "Recipe and salts";
/// Folded group of fields.
pub const GROUP_ACID: &str = "Acid for the pH";
/// Folded group of fields.
pub const GROUP_MORE: &str = "More crops on one charge, and prices";
/// Label of the currency.
pub const CURRENCY: &str = "Sign of your currency";
/// First line of a list of salts.
pub const CHOOSE_SALT: &str = "Choose, or type a formula beside";
/// Label beside a list of salts.
pub const OWN_FORMULA: &str = "Own formula";
/// Groups of fields.
pub const GROUP_PLACE: &str = "Place and season";
/// Groups of fields.
pub const GROUP_AIR: &str = "Air";
/// Groups of fields.
pub const GROUP_LIGHT: &str = "Light";
