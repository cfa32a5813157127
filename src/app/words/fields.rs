//! Labels of the fields, and how to measure what they ask for.

use crate::plan::Field;

/// The label above a field.
#[expect(
    clippy::too_many_lines,
    reason = "one line a field, all of them in one place"
)]
pub fn label(field: Field) -> String {
    match field {
        Field::Count => "How many such containers",
        Field::Height => "Inside height, floor to rim",
        Field::Diameter => "Inside diameter",
        Field::TopDiameter => "Inside diameter at the rim",
        Field::BottomDiameter => "Inside diameter at the floor",
        Field::Length => "Inside length",
        Field::Width => "Inside width",
        Field::BottomLength => "Inside length at the floor",
        Field::BottomWidth => "Inside width at the floor",
        Field::BodyHeight => "Height of the straight body",
        Field::ShoulderHeight => "Height of the sloping shoulder",
        Field::NeckDiameter => "Inside diameter of the neck",
        Field::NeckHeight => "Height of the neck",
        Field::CoverThickness => "Thickness of the cover",
        Field::PotHeight => "Net pot: height under the flange",
        Field::PotTopDiameter => "Net pot: diameter under the flange",
        Field::PotBottomDiameter => "Net pot: diameter at the foot",
        Field::PotFlangeDiameter => "Net pot: diameter over the flange",
        Field::PotImmersion => "Pot foot in solution at planting",
        Field::FillDepth => "Your own fill depth",
        Field::BoardLength => "Board length",
        Field::BoardWidth => "Board width",
        Field::BoardThickness => "Board thickness",
        Field::BoardCount => "Boards in one tank",
        Field::PipeOutsideDiameter => "Pipe: outside diameter",
        Field::PipeWall => "Pipe: wall thickness",
        Field::PipeCount => "Pipes side by side",
        Field::PipeSpacing => "Pipe to pipe, middle to middle",
        Field::PipeMaterial => "What the pipes are made of",
        Field::StandsOn => "The tank stands on",
        Field::LegCount => "Legs of the bench",
        Field::SupportRating => "What that is rated to carry",
        Field::FloorDrop => "Floor: one end lower by",
        Field::Timber => "Timber of the sides",
        Field::BraceSpacing => "Brace to brace along the sides",
        Field::LinerLayers => "Layers of liner",
        Field::CoverMaterial => "Material of the cover",
        Field::PropRows => "Rows of props under the cover",
        Field::EdgeDistance => "Middle of a hole to the edge",
        Field::SheetLength => "Stock sheet: length",
        Field::SheetWidth => "Stock sheet: width",
        Field::SheetPrice => "Price of a stock sheet",
        Field::PipePrice => "Price of a metre of pipe",
        Field::TimberPrice => "Price of a metre of timber",
        Field::LinerPrice => "Price of a square metre of liner",
        Field::PotPrice => "Price of a net pot",
        Field::PlantsPerContainer => "Plants in one container",
        Field::SpacingAcross => "Spacing across",
        Field::SpacingAlong => "Spacing along",
        Field::Date => "Date",
        Field::SeedlingAge => "Seedling age at transplanting",
        Field::TargetHead => "Head mass to harvest at",
        Field::GrowthFactor => "Growth factor",
        Field::WaterFactor => "Water factor",
        Field::People => "People to feed every week",
        Field::HeadsPerPersonWeek => "Heads for each of them a week",
        Field::TurnaroundDays => "Days to clean and refill between crops",
        Field::LabelNitrogen => "Total nitrogen (N)",
        Field::LabelNitrate => "Nitrate nitrogen",
        Field::LabelAmmonium => "Ammonium nitrogen",
        Field::LabelUrea => "Urea nitrogen",
        Field::LabelPhosphate => "Phosphate (P2O5)",
        Field::LabelPotash => "Potash (K2O)",
        Field::LabelCalcium | Field::WaterCalcium => "Calcium (Ca)",
        Field::LabelMagnesium | Field::WaterMagnesium => "Magnesium (Mg)",
        Field::LabelSulfur => "Sulfur (S)",
        Field::LabelIron => "Iron (Fe)",
        Field::LabelManganese => "Manganese (Mn)",
        Field::LabelZinc => "Zinc (Zn)",
        Field::LabelCopper => "Copper (Cu)",
        Field::LabelBoron => "Boron (B)",
        Field::LabelMolybdenum => "Molybdenum (Mo)",
        Field::TargetConductivity => "EC of the finished solution",
        Field::TargetNitrogen => "Nitrogen in the finished solution",
        Field::RawWaterConductivity => "EC of your raw water",
        Field::StockACalciumNitrate => "Stock A: calcium nitrate",
        Field::StockBBlend => "Stock B: blend",
        Field::StockBMagnesiumSulfate => "Stock B: magnesium sulfate",
        Field::WaterSodium => "Sodium (Na)",
        Field::WaterPotassium => "Potassium (K)",
        Field::WaterChloride => "Chloride (Cl)",
        Field::WaterSulfate => "Sulfate (SO4)",
        Field::WaterAlkalinity => "Alkalinity, as CaCO3",
        Field::WaterNitrate => "Nitrate (NO3)",
        Field::WaterPh => "pH of the water",
        Field::AcidStrength => "Strength of the acid, by mass",
        Field::AcidDensity => "Density of the acid, g/mL",
        Field::TargetPh => "pH to reach",
        Field::StockVolume => "Volume of each stock you make up",
        Field::StoreTemperature => "Coldest the store gets",
        Field::RecipeStrength => "Strength of the recipe",
        Field::CropsInARow => "Crops in a row on one charge",
        Field::PriceBlend => "Price of the blend",
        Field::PriceCalciumNitrate => "Price of calcium nitrate",
        Field::PriceMagnesiumSulfate => "Price of magnesium sulfate",
        Field::PriceAcid => "Price of the acid",
        Field::WaterKind => "What you know of your water",
        Field::Acid => "Acid",
        Field::Recipe => "Published solution",
        Field::Salts => "Salts on your shelf",
        Field::SaltChoice(index) => return format!("Salt {}", index + 1),
        Field::SaltPurity(index) => return format!("Purity of salt {}", index + 1),
        Field::SaltPrice(index) => return format!("Price of salt {}", index + 1),
        Field::Latitude => "Latitude",
        Field::Elevation => "Height above the sea",
        Field::TemperatureMin => "Coolest of the night",
        Field::TemperatureMax => "Warmest of the day",
        Field::Humidity => "Mean relative humidity",
        Field::SolarRadiation => "Solar radiation of a day, outdoors",
        Field::Sunshine => "Hours of bright sunshine a day",
        Field::LightThrough => "Light that passes the shelter",
        Field::LampFlux => "Photon flux at the leaves (PPFD)",
        Field::LampHours => "Lamp hours a day",
        Field::CarbonDioxide => "Carbon dioxide in the air",
        Field::Method => "How the plants stand",
        Field::Shape => "Shape of the container",
        Field::Foam => "Foam of the boards",
        Field::Pipe => "Pipe size",
        Field::PipeEnds => "Pipe ends",
        Field::CropKind => "Crop",
        Field::Pattern => "Pattern of the holes",
        Field::DateMeaning => "The date is the day of",
        Field::Dosing => "How you measure out",
        Field::Blend => "Blend, by its grade N-P2O5-K2O",
        Field::StrengthBy => "Set the strength by",
        Field::CalciumNitrate => "Kind of calcium nitrate",
        Field::ClimateKind => "A place and season like",
        Field::DaylightBy => "Light is known as",
        Field::Shelter => "Shelter",
        Field::MeasuredVolume(index) => return format!("Water in it, line {}", index + 1),
        Field::MeasuredDepth(index) => return format!("Depth read, line {}", index + 1),
        Field::Measured => "Water poured and depth read",
    }
    .to_owned()
}

/// Name of the button that takes a value one step up or down.
pub fn step_by(field: Field, up: bool) -> String {
    format!("{}: {}", label(field), if up { "more" } else { "less" })
}

/// How to find the value; empty where the label says it all.
#[expect(clippy::too_many_lines, reason = "one line for each field")]
pub const fn hint(field: Field) -> &'static str {
    match field {
        Field::Count => "All filled and planted alike.",
        Field::Height => "Stand a ruler on the floor inside and read it at the rim.",
        Field::Diameter | Field::TopDiameter | Field::BottomDiameter => {
            "Lay a tape across the widest line inside."
        }
        Field::Length | Field::Width => "Between the inner faces, liner in place.",
        Field::BottomLength | Field::BottomWidth => "The same, down at the floor.",
        Field::BodyHeight => "From the floor up to where it begins to narrow.",
        Field::ShoulderHeight => "From there up to where the neck begins.",
        Field::CoverThickness => "What the pots hang from. 0 if the pot hangs in the neck.",
        Field::PotHeight => "From the foot to the underside of the flange.",
        Field::PotFlangeDiameter => "The brim that keeps the pot from falling through.",
        Field::PotImmersion => "The lowest 2 to 3 cm (about 1 in) is usual.",
        Field::FillDepth => "Leave empty to have it worked out.",
        Field::BoardCount => "Those that float in one tank.",
        Field::PipeOutsideDiameter => {
            "Measure across the outside; a nominal size is not the true one."
        }
        Field::PipeSpacing => "Leave empty to spread them evenly over the width.",
        Field::EdgeDistance => "Leave empty for half the spacing.",
        Field::SupportRating => {
            "From the builder's or maker's papers. Leave empty if you do not know; then do not build there."
        }
        Field::FloorDrop => "Measure with a water level; 0.5 cm is a good floor.",
        Field::BraceSpacing => {
            "Corners count as braces. The solution pushes the sides out between them."
        }
        Field::PropRows => "Lengthwise, evenly between the sides; 0 for none.",
        Field::SheetLength | Field::SheetWidth => "As sold, before cutting.",
        Field::PipeCount => "They lie on the floor and carry the boards later.",
        Field::SpacingAcross | Field::SpacingAlong => {
            "From plant to plant. It is also the room that a head may take."
        }
        Field::Date => "Year-month-day, such as 2027-03-01.",
        Field::SeedlingAge => "Days from sowing. One to two weeks is usual.",
        Field::TargetHead => "Fresh, cut above the pot. 150 to 250 g is usual for lettuce.",
        Field::GrowthFactor => {
            "Start with 0.75. 1 is the published growth model, which runs ahead of growers without pumps."
        }
        Field::WaterFactor => "Start with 1. A crop that was followed teaches a better one.",
        Field::People => "Leave empty if you do not plant every week.",
        Field::TurnaroundDays => "Leave empty for 2 days.",
        Field::LabelNitrogen => {
            "Copy every line from the bag. What it does not list stays empty or 0."
        }
        Field::TargetConductivity => "1.2 to 1.8 mS/cm is usual for leafy greens in one charge.",
        Field::TargetNitrogen => "100 to 200 mg/L is usual for leafy greens.",
        Field::RawWaterConductivity => {
            "Read it with the meter. Rain about 0.02, many taps 0.2 to 0.6 mS/cm."
        }
        Field::WaterKind => "Not sure? A tap with its EC will do.",
        Field::WaterAlkalinity => {
            "From the report; where it gives bicarbonate, enter 0.82 times that."
        }
        Field::WaterSulfate => "Where the report gives S, enter 3 times that.",
        Field::WaterNitrate => "Where the report gives nitrate as N, enter 4.43 times that.",
        Field::Acid => {
            "Only where the pH would be too high. Never with unknown drain or battery acids."
        }
        Field::AcidStrength | Field::AcidDensity => "From the bottle's label.",
        Field::TargetPh => "5.5 to 6.5 suits leafy greens.",
        Field::StoreTemperature => "Salts fall out of strong stocks in the cold.",
        Field::RecipeStrength => {
            "Recipes were made for circulating systems; 50 to 80% suits one charge."
        }
        Field::CropsInARow => {
            "1 is the safe answer. More save water and salts, but sodium builds up."
        }
        Field::SheetPrice
        | Field::PipePrice
        | Field::TimberPrice
        | Field::LinerPrice
        | Field::PotPrice
        | Field::PriceBlend
        | Field::PriceCalciumNitrate
        | Field::PriceMagnesiumSulfate
        | Field::PriceAcid => "In any currency. Leave empty if you do not care.",
        Field::Salts => {
            "Choose from the list or type a formula, such as KNO3 or MgSO4.7H2O. Purity 100% unless the bag says less."
        }
        Field::StockACalciumNitrate => "120 g/L is usual.",
        Field::StockBBlend => "120 g/L of an 8-15-36 blend is usual.",
        Field::StockBMagnesiumSulfate => "The heptahydrate, Epsom salt. 72 g/L is usual.",
        Field::Latitude => "Degrees, north positive; south with a minus or an S.",
        Field::TemperatureMin | Field::TemperatureMax => {
            "Where the plants stand, mean of the season."
        }
        Field::Humidity => "Mean of day and night where the plants stand.",
        Field::SolarRadiation => "From a weather service, mean of the season.",
        Field::LightThrough => "Filled in from the shelter; change it if you measured it.",
        Field::LampFlux => "From the lamp's sheet or a quantum meter.",
        Field::CarbonDioxide => "About 420 ppm outdoors.",
        Field::ClimateKind => "Fills in the figures below. Change any of them.",
        Field::Blend => "Fills in a typical label below. Copy the figures from your own bag.",
        Field::Pipe => "True outside diameters, not nominal sizes.",
        Field::Shape => "Not sure? Choose 'measured' and pour water in with a jug.",
        Field::Measured => {
            "Pour in a known amount, read the depth, and go on. Three lines or more, each deeper than the one before."
        }
        _ => "",
    }
}
