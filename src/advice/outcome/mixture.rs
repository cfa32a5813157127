//! What is dissolved, and what the solution, the stocks and the raw water then are.

use serde::{Serialize, Serializer};

use crate::catalog::Keyed;
use crate::catalog::salts::Salt;
use crate::plan::AcidChoice;
use crate::science::label::Grade;
use crate::science::raw_water::Item;

/// What to dissolve.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Doses {
    /// For one container, in the order of mixing.
    pub doses: Vec<Dose>,
    /// The same for all containers together.
    pub doses_for_all: Vec<Dose>,
    /// Grams for each litre of solution, where nothing else is measured out.
    pub alone_g_per_l: Option<f64>,
    /// Conductivity of the finished solution at 25 °C, mS/cm.
    pub ec_ms_per_cm: f64,
    /// Conductivity of the raw water at 25 °C, mS/cm.
    pub raw_water_ec_ms_per_cm: f64,
    /// Elements in the finished solution, those of the raw water included, mg/L.
    pub elements_mg_per_l: Elements,
    /// How nitrogen is shared among its forms, mg/L.
    pub nitrogen_forms_mg_per_l: NitrogenForms,
    /// Each target of a recipe, and what the salts reach.
    pub targets: Vec<TargetReached>,
    /// Whether the solution was below the wanted pH before any acid.
    pub no_acid_needed: bool,
    /// Strengths at which this crop in this climate ends neither starved nor salty.
    pub fitting: Option<Fitting>,
    /// Price of the charge of one container, in the plan's currency; `None` without prices.
    pub cost: Option<Cost>,
}

/// One thing to measure out.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Dose {
    /// What.
    pub material: Material,
    /// By the scale, g.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mass_g: Option<f64>,
    /// By the jug, mL.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub volume_ml: Option<f64>,
    /// Whether it brings calcium, and so stays apart from sulfate and phosphate until diluted.
    pub brings_calcium: bool,
}

/// What is measured out.
#[derive(Clone, Debug, PartialEq)]
pub enum Material {
    /// The dry blend, by the grade of its label.
    Blend(Grade),
    /// Stock solution A.
    StockA,
    /// Stock solution B.
    StockB,
    /// Calcium nitrate, granular double salt.
    CalciumNitrateDoubleSalt,
    /// Calcium nitrate tetrahydrate.
    CalciumNitrateTetrahydrate,
    /// Magnesium sulfate heptahydrate.
    MagnesiumSulfate,
    /// A salt of the catalog.
    Salt(Salt),
    /// A salt by the grower's own formula.
    OwnSalt(String),
    /// An acid.
    Acid(AcidChoice),
}

impl Serialize for Material {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(match self {
            Self::Blend(_) => "blend",
            Self::StockA => "stock_a",
            Self::StockB => "stock_b",
            Self::CalciumNitrateDoubleSalt => "calcium_nitrate_double_salt",
            Self::CalciumNitrateTetrahydrate => "calcium_nitrate_tetrahydrate",
            Self::MagnesiumSulfate => "magnesium_sulfate",
            Self::Salt(salt) => salt.key(),
            Self::OwnSalt(formula) => formula,
            Self::Acid(acid) => acid.key(),
        })
    }
}

/// A target of a recipe.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct TargetReached {
    /// Chemical symbol.
    pub nutrient: &'static str,
    /// Form of nitrogen.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub form: Option<&'static str>,
    /// What the recipe asks, mg/L.
    pub target_mg_per_l: f64,
    /// What salts and raw water bring, mg/L.
    pub reached_mg_per_l: f64,
    /// Reached less asked, per cent of what is asked; `None` where nothing is asked.
    pub miss_pct: Option<f64>,
}

/// A span of strengths, mS/cm at 25 °C.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Fitting {
    /// Below this a nutrient that the mixture brings runs short before harvest.
    pub low_ms_per_cm: f64,
    /// Above this the solution is too strong at harvest.
    pub high_ms_per_cm: f64,
}

/// Prices, in the plan's currency.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Cost {
    /// The sign of the currency.
    pub currency: String,
    /// Of the charge of one container.
    pub charge: f64,
    /// Of one head.
    pub per_head: f64,
}

/// What a solution reads and holds.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SolutionOutcome {
    /// Conductivity at 25 °C, mS/cm.
    pub ec_ms_per_cm: f64,
    /// Conductivity at its own temperature, mS/cm.
    pub ec_at_temperature_ms_per_cm: f64,
    /// Its own temperature, °C.
    pub temperature_c: f64,
    /// pH at 25 °C, in contact with the air.
    pub ph: f64,
    /// Ionic strength, mol/kg.
    pub ionic_strength_mol_per_kg: f64,
    /// Species, the most abundant first.
    pub species: Vec<SpeciesAmount>,
    /// How close minerals are to falling out.
    pub saturation: Saturation,
}

/// How much there is of a species.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SpeciesAmount {
    /// Formula with charge.
    pub species: &'static str,
    /// mmol per kg of water.
    pub mmol_per_kg: f64,
}

/// Saturation indices: decimal logarithm of activity product over solubility product; above zero a
/// mineral can fall out. `None` where a part of it is lacking.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Saturation {
    /// Calcium sulfate dihydrate.
    pub gypsum: Option<f64>,
    /// Calcium hydrogen phosphate dihydrate.
    pub brushite: Option<f64>,
    /// Calcium carbonate.
    pub calcite: Option<f64>,
}

impl Saturation {
    /// The greatest of the indices.
    pub fn worst(&self) -> f64 {
        [self.gypsum, self.brushite, self.calcite]
            .into_iter()
            .flatten()
            .fold(f64::NEG_INFINITY, f64::max)
    }
}

/// A stock solution.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StockOutcome {
    /// A or B.
    pub material: Material,
    /// What each litre holds.
    pub contents: Vec<StockContent>,
    /// How close minerals are to falling out at the store's coldest.
    pub saturation: Saturation,
    /// How much of what dissolves at the store's coldest its salts take up together, per cent;
    /// above 100 it does not all dissolve.
    pub dissolving_pct: f64,
    /// Most of its present strength that stays clear, per cent: 100 where it is clear as it is;
    /// `None` where even the thinnest is not.
    pub strongest_pct: Option<f64>,
    /// Whether everything stays dissolved at the store's coldest.
    pub clear: bool,
    /// Containers that one batch serves.
    pub serves_containers: f64,
    /// Heads that one batch serves.
    pub serves_heads: f64,
}

/// One salt of a stock solution.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StockContent {
    /// Which.
    pub material: Material,
    /// Strength, g/L.
    pub g_per_l: f64,
    /// Most that dissolves at the store's coldest, g/L, alone; `None` for a blend of unknown
    /// salts.
    pub limit_g_per_l: Option<f64>,
}

/// Both stocks poured together undiluted, at the store's coldest.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StocksTogether {
    /// In equal volumes.
    #[serde(flatten)]
    pub saturation: Saturation,
    /// In other proportions, from little of stock A to much.
    pub mixtures: Vec<StockMixture>,
    /// How many times equal volumes must be thinned with water until nothing can fall out; 1 where
    /// nothing can anyway, `None` where even a thousandfold is not enough.
    pub clear_when_thinned_times: Option<f64>,
}

impl StocksTogether {
    /// The proportion in which most falls out; `None` where nothing falls out in any.
    pub fn worst(&self) -> Option<Saturation> {
        self.mixtures
            .iter()
            .map(|mixture| mixture.saturation)
            .chain([self.saturation])
            .max_by(|a, b| a.worst().total_cmp(&b.worst()))
            .filter(|worst| worst.worst() > 0.0)
    }
}

/// Both stocks in one proportion.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct StockMixture {
    /// Share of stock A by volume, per cent.
    pub stock_a_pct: f64,
    /// What is near to falling out.
    pub saturation: Saturation,
}

/// What is poured into a container before the fertilizer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum FirstWater {
    /// The raw water, to about half.
    Raw,
    /// Rain, or water as pure, to about half.
    Pure,
    /// All the rain, which is half of the water or more; the raw water fills up to the mark.
    Rain,
    /// All the rain, and raw water to about half.
    RainAndRaw,
}

/// The raw water.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WaterOutcome {
    /// Computed conductivity of the raw water at 25 °C, mS/cm.
    pub ec_ms_per_cm: f64,
    /// Rain among the water of one container, L.
    pub rain_l: f64,
    /// What is poured in first.
    pub first: FirstWater,
    /// Measured over computed conductivity, where an analysis gives both.
    pub ec_ratio: Option<f64>,
    /// Difference of cations and anions over their sum, per cent, of an analysis.
    pub charge_error_pct: Option<f64>,
    /// Whether the analysis is sound by both.
    pub analysis_is_sound: bool,
    /// Items outside 'no restriction'.
    pub restricted: Vec<WaterItem>,
    /// Share of raw water in a mixture with rain that no item restricts, per cent.
    pub raw_water_share_pct: Option<f64>,
}

/// One item of a raw water that is outside 'no restriction'.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct WaterItem {
    /// Which.
    #[serde(serialize_with = "item_key")]
    pub item: Item,
    /// What the water has, in the unit of the item.
    pub value: f64,
    /// No restriction up to this.
    pub limit: f64,
    /// Whether it is severe.
    pub severe: bool,
}

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "the signature that serde asks for"
)]
fn item_key<S: Serializer>(item: &Item, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(match item {
        Item::Salinity => "salinity_ds_per_m",
        Item::SodiumAdsorption => "sodium_adsorption_ratio",
        Item::ChlorideToxicity => "chloride_me_per_l",
        Item::Boron => "boron_mg_per_l",
        Item::NitrateNitrogen => "nitrate_n_mg_per_l",
        Item::Bicarbonate => "bicarbonate_me_per_l",
        Item::Ph => "ph",
        Item::Sodium => "sodium_mg_per_l",
        Item::Chloride => "chloride_mg_per_l",
        Item::Sulfate => "sulfate_mg_per_l",
        Item::Alkalinity => "alkalinity_mg_per_l_caco3",
        Item::Calcium => "calcium_mg_per_l",
        Item::Hardness => "hardness_mg_per_l_caco3",
    })
}

/// One more crop on the same solution.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct NextCrop {
    /// Which crop: 2 for the first one after.
    pub crop: u32,
    /// Raw water to add before it, L per container.
    pub refill_l: f64,
    /// Share of the first charge to add back, per cent: what its nitrogen needs.
    pub add_back_pct: f64,
    /// Conductivity then, mS/cm at 25 °C.
    pub ec_ms_per_cm: f64,
    /// Sodium then, mg/L.
    pub sodium_mg_per_l: f64,
    /// Chloride then, mg/L.
    pub chloride_mg_per_l: f64,
    /// Whether to drain and start anew instead.
    pub drain: bool,
}

/// Elements in solution, mg/L.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
#[expect(missing_docs, reason = "chemical symbols")]
pub struct Elements {
    pub n: f64,
    pub p: f64,
    pub k: f64,
    pub ca: f64,
    pub mg: f64,
    pub s: f64,
    pub fe: f64,
    pub mn: f64,
    pub zn: f64,
    pub cu: f64,
    pub b: f64,
    pub mo: f64,
}

/// Nitrogen by form, mg/L.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct NitrogenForms {
    /// As nitrate.
    pub nitrate: f64,
    /// As ammonium.
    pub ammonium: f64,
    /// As urea.
    pub urea: f64,
}
