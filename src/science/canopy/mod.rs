//! Transpiration and heat exchange of a leaf canopy: the energy balance of Graamans and others
//! (2017), in which a big leaf of the crop's total area exchanges vapour through stomata and
//! boundary layer, and sensible heat through the boundary layer.
//!
//! Net radiation is what the leaves absorb of the photosynthetically active radiation; thermal
//! radiation and storage of heat in the crop are left out, as in the source.
//!
//! Source: Graamans, van den Dobbelsteen, Meinen and Stanghellini (2017), Plant factories; crop
//! transpiration and energy balance, Agricultural Systems 153:138–147, Eqs 4–10.

mod balance;
mod resistance;
mod saturation;

pub use balance::{CanopyConditions, CanopyExchange, net_radiation, transpiration};
pub use resistance::{aerodynamic_resistance, stomatal_resistance};
pub use saturation::{Saturation, saturation};

/// Density of air, kg m⁻³: 1.2, the rounded value that reproduces the source's results.
const AIR_DENSITY: f64 = 1.2;
/// Specific heat of air at constant pressure, J kg⁻¹ K⁻¹.
const AIR_HEAT_CAPACITY: f64 = 1005.0;
/// Latent heat of evaporation of water, J g⁻¹: 2450 (FAO-56 rounds its 2.45 MJ kg⁻¹ alike).
const LATENT_HEAT: f64 = 2450.0;
/// Volumetric heat capacity of air, J m⁻³ K⁻¹.
const AIR_HEAT: f64 = AIR_DENSITY * AIR_HEAT_CAPACITY;

/// What was out of range.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Quantity {
    /// Air temperature, °C.
    Temperature,
    /// Relative humidity, dimensionless.
    RelativeHumidity,
    /// Photosynthetic photon flux density, µmol m⁻² s⁻¹.
    PhotonFlux,
    /// Photosynthetically active radiation, W m⁻².
    PhotosyntheticRadiation,
    /// Share of the radiation that the leaves reflect, dimensionless.
    Reflection,
    /// Share of the ground that the leaves cover, dimensionless.
    Cover,
    /// Net radiation of the canopy, W m⁻².
    NetRadiation,
    /// Vapour concentration deficit, g m⁻³.
    VapourDeficit,
    /// Slope of the saturation curve, dimensionless.
    SaturationSlope,
    /// Extinction coefficient of the canopy, dimensionless.
    /// Leaf area per ground area, dimensionless.
    LeafAreaIndex,
    /// Stomatal resistance, s m⁻¹.
    StomatalResistance,
    /// Aerodynamic resistance, s m⁻¹.
    AerodynamicResistance,
    /// Leaf diameter, m.
    LeafDiameter,
    /// Wind speed, m s⁻¹.
    Wind,
}

/// A quantity outside the range in which the model may be asked. NaN is outside every range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutOfRange {
    /// What was out of range, and so the unit of the three numbers.
    pub quantity: Quantity,
    /// The value met.
    pub got: f64,
    /// The lowest value allowed.
    pub low: f64,
    /// The highest value allowed.
    pub high: f64,
}

/// Accepts `low..=high`; NaN fails both comparisons.
#[inline]
fn within(quantity: Quantity, got: f64, low: f64, high: f64) -> Result<(), OutOfRange> {
    if got >= low && got <= high {
        return Ok(());
    }
    Err(OutOfRange {
        quantity,
        got,
        low,
        high,
    })
}
