//! The parameters of the lettuce growth model, with their published values.

use super::{OutOfRange, Quantity, within};

/// The parameters of the two-state lettuce growth model, as plain numbers in the units that the
/// source prints. Each field gives its symbol, published value, unit and the origin that the
/// paper states for it.
///
/// Valid ranges are checked when a model is made of them: see
/// [`GrowthModel::new`](super::GrowthModel::new).
///
/// Source: van Henten (1994), Validation of a dynamic lettuce growth model for greenhouse climate
/// control, Agricultural Systems 45:55–72, Eqs 1–10 and the parameter values given with them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GrowthParameters {
    /// cα, mass of carbohydrate per mass of carbon dioxide fixed: 0.68 (the molar ratio 30/44,
    /// rounded by the paper), dimensionless. Range 0–1.
    pub carbohydrate_per_carbon_dioxide: f64,
    /// cβ, structural mass formed per mass of non-structural material spent on it: 0.8,
    /// dimensionless (Sweeney and others 1981). The paper names 0.72 (van Keulen and others 1982)
    /// as the alternative. Range 0.01–1.
    pub growth_yield: f64,
    /// `c_gr,max`, relative growth rate of a saturated store at 20 °C: 5e-6 s⁻¹ (Van Holsteijn
    /// 1981). Range 0–1e-4.
    pub maximum_growth_rate: f64,
    /// cγ, weight of the structural mass in the saturation of growth: 1.0, dimensionless
    /// (Thornley and Hurd 1974; Sweeney and others 1981: 0.5–1.0). Range 0.01–100.
    pub growth_saturation: f64,
    /// `Q10,gr`, factor of growth per 10 °C: 1.6, dimensionless (Sweeney and others 1981). Range
    /// 0.1–10.
    pub growth_temperature_factor: f64,
    /// `c_resp,sht`, maintenance of the shoot at 25 °C: 3.47e-7 s⁻¹, which is 0.03 per day (van
    /// Keulen and others 1982). Range 0–1e-4.
    pub shoot_maintenance: f64,
    /// `c_resp,rt`, maintenance of the roots at 25 °C: 1.16e-7 s⁻¹, which is 0.01 per day (van
    /// Keulen and others 1982). Range 0–1e-4.
    pub root_maintenance: f64,
    /// cτ, share of the roots in the dry weight: 0.15, dimensionless, from soil-grown lettuce
    /// (Lorenz and Wiebe 1980). Range 0–1.
    pub root_fraction: f64,
    /// `Q10,resp`, factor of maintenance per 10 °C: 2.0, dimensionless (van Keulen and others
    /// 1982). Range 0.1–10.
    pub respiration_temperature_factor: f64,
    /// `c_k`, extinction coefficient of the canopy: 0.9, dimensionless, for planophile leaves
    /// (Goudriaan and Monteith 1990). Range 0–2.
    pub extinction: f64,
    /// `c_lar,s`, leaf area per structural shoot mass: 75e-3 m² g⁻¹ (Lorenz and Wiebe 1980). Range
    /// 0–1.
    pub leaf_area_ratio: f64,
    /// cω, mass concentration of carbon dioxide per part per million: 1.83e-3 g m⁻³ ppm⁻¹ (pure
    /// gas at 15 °C and 101.3 kPa). Range 0–0.01.
    pub carbon_dioxide_density: f64,
    /// cΓ, carbon dioxide compensation point at 20 °C: 40 ppm (Goudriaan and others 1985). Range
    /// 0–1000.
    pub compensation_point: f64,
    /// `Q10,Γ`, factor of the compensation point per 10 °C: 2.0, dimensionless (Goudriaan and
    /// others 1985). Range 0.1–10.
    pub compensation_temperature_factor: f64,
    /// cε, light use efficiency at very high carbon dioxide: 17.0e-6 g of carbon dioxide per J
    /// (Goudriaan and others 1985). Range 0–1e-3.
    pub light_use_efficiency: f64,
    /// `g_bnd`, boundary layer conductance: 0.007 m s⁻¹ (Stanghellini 1987: wind 0.1 m s⁻¹, leaf
    /// 5 K from the air, leaf length 0.075 m). Range 1e-6 to 1.
    pub boundary_layer_conductance: f64,
    /// `g_stm`, stomatal conductance: 0.005 m s⁻¹ (Stanghellini 1987). Range 1e-6 to 1.
    pub stomatal_conductance: f64,
    /// `c_car,1`, carboxylation conductance, factor of T²: −1.32e-5 m s⁻¹ °C⁻² (Goudriaan and
    /// others 1985). Range −1 to 1.
    pub carboxylation_quadratic: f64,
    /// `c_car,2`, carboxylation conductance, factor of T: 5.94e-4 m s⁻¹ °C⁻¹ (Goudriaan and others
    /// 1985). Range −1 to 1.
    pub carboxylation_linear: f64,
    /// `c_car,3`, carboxylation conductance, constant term: −2.64e-3 m s⁻¹ (Goudriaan and others
    /// 1985). Range −1 to 1.
    pub carboxylation_constant: f64,
    /// Multiplies gross photosynthesis: 1, dimensionless. **Not a parameter of the paper**: it is
    /// ours, to fit the model to another crop or to a grower's own harvests, and stands among the
    /// published values so that it can always be seen. Range 0–10.
    pub growth_factor: f64,
}

impl GrowthParameters {
    /// The parameters exactly as the paper prints them, and a [`growth_factor`](Self::growth_factor)
    /// of 1, which leaves the paper's equations as they are.
    ///
    /// Source: van Henten (1994), values with Eqs 1–10.
    ///
    /// ```
    /// use slackwater::science::growth::GrowthParameters;
    /// assert!((GrowthParameters::published().growth_yield - 0.8).abs() < 1e-12);
    /// ```
    pub fn published() -> Self {
        Self {
            carbohydrate_per_carbon_dioxide: 0.68,
            growth_yield: 0.8,
            maximum_growth_rate: 5e-6,
            growth_saturation: 1.0,
            growth_temperature_factor: 1.6,
            shoot_maintenance: 3.47e-7,
            root_maintenance: 1.16e-7,
            root_fraction: 0.15,
            respiration_temperature_factor: 2.0,
            extinction: 0.9,
            leaf_area_ratio: 75e-3,
            carbon_dioxide_density: 1.83e-3,
            compensation_point: 40.0,
            compensation_temperature_factor: 2.0,
            light_use_efficiency: 17.0e-6,
            boundary_layer_conductance: 0.007,
            stomatal_conductance: 0.005,
            carboxylation_quadratic: -1.32e-5,
            carboxylation_linear: 5.94e-4,
            carboxylation_constant: -2.64e-3,
            growth_factor: 1.0,
        }
    }

    /// The first parameter outside the range that its field states, if any.
    pub(super) fn check(&self) -> Result<(), OutOfRange> {
        let limits = [
            (
                "carbohydrate_per_carbon_dioxide",
                self.carbohydrate_per_carbon_dioxide,
                0.0,
                1.0,
            ),
            ("growth_yield", self.growth_yield, 0.01, 1.0),
            ("maximum_growth_rate", self.maximum_growth_rate, 0.0, 1e-4),
            ("growth_saturation", self.growth_saturation, 0.01, 100.0),
            (
                "growth_temperature_factor",
                self.growth_temperature_factor,
                0.1,
                10.0,
            ),
            ("shoot_maintenance", self.shoot_maintenance, 0.0, 1e-4),
            ("root_maintenance", self.root_maintenance, 0.0, 1e-4),
            ("root_fraction", self.root_fraction, 0.0, 1.0),
            (
                "respiration_temperature_factor",
                self.respiration_temperature_factor,
                0.1,
                10.0,
            ),
            ("extinction", self.extinction, 0.0, 2.0),
            ("leaf_area_ratio", self.leaf_area_ratio, 0.0, 1.0),
            (
                "carbon_dioxide_density",
                self.carbon_dioxide_density,
                0.0,
                0.01,
            ),
            ("compensation_point", self.compensation_point, 0.0, 1000.0),
            (
                "compensation_temperature_factor",
                self.compensation_temperature_factor,
                0.1,
                10.0,
            ),
            ("light_use_efficiency", self.light_use_efficiency, 0.0, 1e-3),
            (
                "boundary_layer_conductance",
                self.boundary_layer_conductance,
                1e-6,
                1.0,
            ),
            ("stomatal_conductance", self.stomatal_conductance, 1e-6, 1.0),
            (
                "carboxylation_quadratic",
                self.carboxylation_quadratic,
                -1.0,
                1.0,
            ),
            ("carboxylation_linear", self.carboxylation_linear, -1.0, 1.0),
            (
                "carboxylation_constant",
                self.carboxylation_constant,
                -1.0,
                1.0,
            ),
            ("growth_factor", self.growth_factor, 0.0, 10.0),
        ];
        limits.into_iter().try_for_each(|(name, got, low, high)| {
            within(Quantity::Parameter(name), got, low, high)
        })
    }
}
