//! Every field of a plan: its path in the document, what it measures, and its limits.
//!
//! Long, because one table has a line for each field.

mod rows;

use serde::{Serialize, Serializer};

use super::model::Plan;
use super::quantity::Dimension;
use super::{Entry, MeasuredPair, SaltLine};
use rows::fields;

/// What a field takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// The kind of quantity, which fixes the unit of the numbers below.
    pub dimension: Dimension,
    /// The least that is accepted.
    pub low: f64,
    /// The most that is accepted.
    pub high: f64,
    /// The least that is usual; less than this gets a caution.
    pub usual_low: f64,
    /// The most that is usual; more than this gets a caution.
    pub usual_high: f64,
}

impl Serialize for Field {
    /// The path of the field.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.path())
    }
}

fn line(plan: &Plan, index: u8) -> Option<&SaltLine> {
    plan.fertilizer.salts.get(usize::from(index))
}

fn pair(plan: &Plan, index: u8) -> Option<&MeasuredPair> {
    plan.container.measured.get(usize::from(index))
}

fields! {
    numbers {
        /// How many identical containers.
        Count = container.count, Count, 1.0..=10_000.0, usual 1.0..=1000.0;
        /// Inner height, floor to rim.
        Height = container.height_cm, Length, 3.0..=300.0, usual 8.0..=130.0;
        /// Inner diameter of a cylinder, or of a bottle's body.
        Diameter = container.diameter_cm, Length, 3.0..=500.0, usual 8.0..=150.0;
        /// Inner diameter at the rim of a tapered round vessel.
        TopDiameter = container.top_diameter_cm, Length, 3.0..=500.0, usual 8.0..=150.0;
        /// Inner diameter at the floor of a tapered round vessel.
        BottomDiameter = container.bottom_diameter_cm, Length, 3.0..=500.0, usual 8.0..=150.0;
        /// Inner length (at the rim where the walls slope).
        Length = container.length_cm, Length, 5.0..=10_000.0, usual 20.0..=3000.0;
        /// Inner width (at the rim where the walls slope).
        Width = container.width_cm, Length, 5.0..=1000.0, usual 15.0..=250.0;
        /// Inner length at the floor where the walls slope.
        BottomLength = container.bottom_length_cm, Length, 5.0..=10_000.0, usual 20.0..=3000.0;
        /// Inner width at the floor where the walls slope.
        BottomWidth = container.bottom_width_cm, Length, 5.0..=1000.0, usual 15.0..=250.0;
        /// Height of a bottle's straight body.
        BodyHeight = container.body_height_cm, Length, 3.0..=200.0, usual 8.0..=60.0;
        /// Height of a bottle's shoulder.
        ShoulderHeight = container.shoulder_height_cm, Length, 0.0..=60.0, usual 0.0..=20.0;
        /// Inner diameter of a bottle's neck.
        NeckDiameter = container.neck_diameter_cm, Length, 1.0..=100.0, usual 2.0..=15.0;
        /// Height of a bottle's neck.
        NeckHeight = container.neck_height_cm, Length, 0.0..=60.0, usual 0.0..=12.0;
        /// Thickness of the cover that the pots hang from.
        CoverThickness = container.cover_thickness_cm, Length, 0.0..=20.0, usual 0.0..=5.0;
        /// Height of a net pot from its foot to the underside of its flange.
        PotHeight = container.pot_height_cm, Length, 2.0..=40.0, usual 4.0..=15.0;
        /// Diameter of a net pot just below its flange.
        PotTopDiameter = container.pot_top_diameter_cm, Length, 1.0..=40.0, usual 3.0..=15.0;
        /// Diameter of a net pot at its foot.
        PotBottomDiameter = container.pot_bottom_diameter_cm, Length, 0.5..=40.0, usual 2.0..=12.0;
        /// Outer diameter of a net pot's flange.
        PotFlangeDiameter = container.pot_flange_diameter_cm, Length, 1.0..=60.0, usual 4.0..=18.0;
        /// How deep a pot's foot stands in the solution at planting.
        PotImmersion = container.pot_immersion_cm, Length, 0.2..=20.0, usual 2.0..=3.0;
        /// Own depth of fill before pots or boards go in; empty: worked out.
        FillDepth = container.fill_depth_cm, Length, 1.0..=300.0, usual 5.0..=130.0;
        /// Length of one board.
        BoardLength = container.board_length_cm, Length, 10.0..=500.0, usual 30.0..=250.0;
        /// Width of one board.
        BoardWidth = container.board_width_cm, Length, 10.0..=500.0, usual 30.0..=125.0;
        /// Thickness of the boards.
        BoardThickness = container.board_thickness_cm, Length, 0.5..=20.0, usual 2.0..=5.0;
        /// Boards in one tank.
        BoardCount = container.board_count, Count, 1.0..=2000.0, usual 1.0..=200.0;
        /// Own outside diameter of the pipes.
        PipeOutsideDiameter = container.pipe_outside_diameter_cm, Length, 1.0..=50.0, usual 6.0..=17.0;
        /// Own wall thickness of the pipes.
        PipeWall = container.pipe_wall_cm, Length, 0.05..=5.0, usual 0.1..=1.0;
        /// Pipes lying side by side along the tank.
        PipeCount = container.pipe_count, Count, 1.0..=50.0, usual 2.0..=6.0;
        /// From the middle of one pipe to the next; empty: spread evenly.
        PipeSpacing = container.pipe_spacing_cm, Length, 2.0..=1000.0, usual 15.0..=150.0;

        /// Legs of the bench that carries one tank.
        LegCount = build.leg_count, Count, 2.0..=500.0, usual 4.0..=40.0;
        /// What the floor or bench is rated to carry; empty: not known.
        SupportRating = build.support_rating_kg_per_m2, FloorLoad, 1.0..=20000.0, usual 50.0..=5000.0;
        /// How much lower one end of the floor lies than the other.
        FloorDrop = build.floor_drop_cm, Length, 0.0..=50.0, usual 0.0..=2.0;
        /// From brace to brace along the sides.
        BraceSpacing = build.brace_spacing_cm, Length, 10.0..=1000.0, usual 30.0..=250.0;
        /// Layers of the liner.
        LinerLayers = build.liner_layers, Count, 1.0..=6.0, usual 1.0..=2.0;
        /// Rows of props under a cover, lengthwise between the sides.
        PropRows = build.prop_rows, Count, 0.0..=40.0, usual 0.0..=4.0;
        /// From the middle of a hole to the edge of its board, at least; empty: half the spacing.
        EdgeDistance = build.edge_distance_cm, Length, 1.0..=100.0, usual 4.0..=20.0;
        /// Length of the sheets that boards or cover are cut from.
        SheetLength = build.sheet_length_cm, Length, 20.0..=2000.0, usual 60.0..=400.0;
        /// Width of these sheets.
        SheetWidth = build.sheet_width_cm, Length, 20.0..=1000.0, usual 30.0..=210.0;
        /// Price of one such sheet.
        SheetPrice = build.sheet_price, Money, 0.0..=1_000_000.0, usual 0.0..=1_000_000.0;
        /// Price of a metre of pipe.
        PipePrice = build.pipe_price_per_m, PriceOfLength, 0.0..=1_000_000.0, usual 0.0..=1_000_000.0;
        /// Price of a metre of timber.
        TimberPrice = build.timber_price_per_m, PriceOfLength, 0.0..=1_000_000.0, usual 0.0..=1_000_000.0;
        /// Price of a square metre of liner.
        LinerPrice = build.liner_price_per_m2, PriceOfArea, 0.0..=1_000_000.0, usual 0.0..=1_000_000.0;
        /// Price of a net pot.
        PotPrice = build.pot_price, Money, 0.0..=1_000_000.0, usual 0.0..=1_000_000.0;

        /// Plants in one bottle or bucket.
        PlantsPerContainer = crop.plants_per_container, Count, 1.0..=1000.0, usual 1.0..=12.0;
        /// Spacing of the plants across.
        SpacingAcross = crop.spacing_across_cm, Length, 3.0..=100.0, usual 20.0..=30.0;
        /// Spacing of the plants along.
        SpacingAlong = crop.spacing_along_cm, Length, 3.0..=100.0, usual 20.0..=30.0;
        /// Date of transplanting or of seeding, year-month-day.
        Date = crop.date, Date, 0.0..=0.0, usual 0.0..=0.0;
        /// Days from seeding to transplanting.
        SeedlingAge = crop.seedling_age_days, Days, 3.0..=60.0, usual 7.0..=21.0;
        /// Fresh mass of a head at which it is harvested.
        TargetHead = crop.target_head_g, Mass, 5.0..=2000.0, usual 100.0..=300.0;
        /// Multiplies the model's gross photosynthesis.
        GrowthFactor = crop.growth_factor, Factor, 0.1..=2.0, usual 0.5..=1.2;
        /// Multiplies the water that the crop draws: 1 unless a crop before taught otherwise.
        WaterFactor = crop.water_factor, Factor, 0.1..=5.0, usual 0.5..=2.0;
        /// People who want heads every week; empty: no succession.
        People = crop.people, Count, 1.0..=100_000.0, usual 1.0..=2000.0;
        /// Heads that each of them eats in a week.
        HeadsPerPersonWeek = crop.heads_per_person_week, Factor, 0.05..=50.0, usual 0.2..=7.0;
        /// Days between the end of a harvest and the next planting; empty: two.
        TurnaroundDays = crop.turnaround_days, Days, 0.0..=60.0, usual 1.0..=7.0;

        /// Total nitrogen of the blend.
        LabelNitrogen = fertilizer.label.nitrogen_pct, Percent, 0.0..=100.0, usual 0.0..=46.0;
        /// Nitrogen as nitrate.
        LabelNitrate = fertilizer.label.nitrate_n_pct, Percent, 0.0..=100.0, usual 0.0..=35.0;
        /// Nitrogen as ammonium.
        LabelAmmonium = fertilizer.label.ammonium_n_pct, Percent, 0.0..=100.0, usual 0.0..=27.0;
        /// Nitrogen as urea.
        LabelUrea = fertilizer.label.urea_n_pct, Percent, 0.0..=100.0, usual 0.0..=46.0;
        /// Phosphate, as P2O5.
        LabelPhosphate = fertilizer.label.p2o5_pct, Percent, 0.0..=100.0, usual 0.0..=61.0;
        /// Potash, as K2O.
        LabelPotash = fertilizer.label.k2o_pct, Percent, 0.0..=100.0, usual 0.0..=62.0;
        /// Calcium.
        LabelCalcium = fertilizer.label.ca_pct, Percent, 0.0..=100.0, usual 0.0..=20.0;
        /// Magnesium.
        LabelMagnesium = fertilizer.label.mg_pct, Percent, 0.0..=100.0, usual 0.0..=10.0;
        /// Sulfur.
        LabelSulfur = fertilizer.label.s_pct, Percent, 0.0..=100.0, usual 0.0..=25.0;
        /// Iron.
        LabelIron = fertilizer.label.fe_pct, Percent, 0.0..=100.0, usual 0.0..=1.0;
        /// Manganese.
        LabelManganese = fertilizer.label.mn_pct, Percent, 0.0..=100.0, usual 0.0..=1.0;
        /// Zinc.
        LabelZinc = fertilizer.label.zn_pct, Percent, 0.0..=100.0, usual 0.0..=1.0;
        /// Copper.
        LabelCopper = fertilizer.label.cu_pct, Percent, 0.0..=100.0, usual 0.0..=1.0;
        /// Boron.
        LabelBoron = fertilizer.label.b_pct, Percent, 0.0..=100.0, usual 0.0..=1.0;
        /// Molybdenum.
        LabelMolybdenum = fertilizer.label.mo_pct, Percent, 0.0..=100.0, usual 0.0..=0.1;
        /// Target electrical conductivity of the finished solution.
        TargetConductivity = fertilizer.target_ec_ms_per_cm, Conductivity, 0.2..=8.0, usual 0.8..=2.5;
        /// Target nitrogen of the finished solution.
        TargetNitrogen = fertilizer.target_n_mg_per_l, Concentration, 5.0..=1000.0, usual 80.0..=200.0;
        /// Electrical conductivity of the raw water.
        RawWaterConductivity = fertilizer.raw_water_ec_ms_per_cm, Conductivity, 0.0..=5.0, usual 0.0..=0.7;
        /// Rain or other nearly pure water in the water that is filled in.
        RainShare = fertilizer.rain_pct, Percent, 0.0..=100.0, usual 0.0..=100.0;
        /// Calcium nitrate in stock solution A.
        StockACalciumNitrate = fertilizer.stock_a_calcium_nitrate_g_per_l, StockStrength, 1.0..=1000.0, usual 60.0..=250.0;
        /// Blend in stock solution B.
        StockBBlend = fertilizer.stock_b_blend_g_per_l, StockStrength, 1.0..=500.0, usual 60.0..=200.0;
        /// Magnesium sulfate heptahydrate in stock solution B.
        StockBMagnesiumSulfate = fertilizer.stock_b_magnesium_sulfate_g_per_l, StockStrength, 0.0..=500.0, usual 0.0..=150.0;

        /// Calcium of the raw water.
        WaterCalcium = fertilizer.water.ca_mg_per_l, Concentration, 0.0..=800.0, usual 0.0..=120.0;
        /// Magnesium of the raw water.
        WaterMagnesium = fertilizer.water.mg_mg_per_l, Concentration, 0.0..=400.0, usual 0.0..=40.0;
        /// Sodium of the raw water.
        WaterSodium = fertilizer.water.na_mg_per_l, Concentration, 0.0..=1200.0, usual 0.0..=50.0;
        /// Potassium of the raw water.
        WaterPotassium = fertilizer.water.k_mg_per_l, Concentration, 0.0..=300.0, usual 0.0..=10.0;
        /// Chloride of the raw water.
        WaterChloride = fertilizer.water.cl_mg_per_l, Concentration, 0.0..=2000.0, usual 0.0..=70.0;
        /// Sulfate of the raw water, as SO4.
        WaterSulfate = fertilizer.water.so4_mg_per_l, Concentration, 0.0..=2000.0, usual 0.0..=100.0;
        /// Alkalinity of the raw water, as `CaCO3`.
        WaterAlkalinity = fertilizer.water.alkalinity_mg_per_l_caco3, Concentration, 0.0..=1000.0, usual 0.0..=150.0;
        /// Nitrate of the raw water, as NO3.
        WaterNitrate = fertilizer.water.no3_mg_per_l, Concentration, 0.0..=900.0, usual 0.0..=45.0;
        /// pH of the raw water.
        WaterPh = fertilizer.water.ph, Fine, 3.0..=11.0, usual 6.0..=8.5;
        /// Strength of the acid by mass.
        AcidStrength = fertilizer.acid_pct, Percent, 1.0..=100.0, usual 5.0..=100.0;
        /// Density of the acid.
        AcidDensity = fertilizer.acid_density_g_per_ml, Fine, 0.9..=2.0, usual 1.0..=1.85;
        /// pH that the acid brings the solution to.
        TargetPh = fertilizer.target_ph, Fine, 4.0..=7.5, usual 5.5..=6.5;
        /// Volume of each stock solution that is made up.
        StockVolume = fertilizer.stock_volume_l, Volume, 0.1..=10_000.0, usual 1.0..=1000.0;
        /// Coldest temperature of the store of the stocks.
        StoreTemperature = fertilizer.store_temperature_c, Temperature, 0.0..=40.0, usual 5.0..=30.0;
        /// Strength of the published solution.
        RecipeStrength = fertilizer.recipe_strength_pct, Percent, 5.0..=300.0, usual 40.0..=120.0;
        /// Crops that grow on one charge, one after another.
        CropsInARow = fertilizer.crops_in_a_row, Count, 1.0..=5.0, usual 1.0..=3.0;
        /// Price of a kilogram of blend.
        PriceBlend = fertilizer.blend_price_per_kg, Price, 0.0..=1_000_000.0, usual 0.0..=1_000_000.0;
        /// Price of a kilogram of calcium nitrate.
        PriceCalciumNitrate = fertilizer.calcium_nitrate_price_per_kg, Price, 0.0..=1_000_000.0, usual 0.0..=1_000_000.0;
        /// Price of a kilogram of magnesium sulfate.
        PriceMagnesiumSulfate = fertilizer.magnesium_sulfate_price_per_kg, Price, 0.0..=1_000_000.0, usual 0.0..=1_000_000.0;
        /// Price of a kilogram of acid.
        PriceAcid = fertilizer.acid_price_per_kg, Price, 0.0..=1_000_000.0, usual 0.0..=1_000_000.0;

        /// Latitude, north positive.
        Latitude = climate.latitude_deg, Latitude, -90.0..=90.0, usual -60.0..=60.0;
        /// Height above sea level.
        Elevation = climate.elevation_m, Elevation, -430.0..=5000.0, usual 0.0..=3000.0;
        /// Lowest air temperature of the day.
        TemperatureMin = climate.temperature_min_c, Temperature, -5.0..=40.0, usual 5.0..=27.0;
        /// Highest air temperature of the day.
        TemperatureMax = climate.temperature_max_c, Temperature, 0.0..=50.0, usual 14.0..=35.0;
        /// Mean relative humidity of the day.
        Humidity = climate.humidity_pct, Percent, 1.0..=100.0, usual 30.0..=95.0;
        /// Solar radiation of the day, outside any shelter.
        SolarRadiation = climate.solar_mj_per_m2, DailyRadiation, 0.1..=45.0, usual 5.0..=30.0;
        /// Bright sunshine of the day.
        Sunshine = climate.sunshine_h, Hours, 0.0..=24.0, usual 1.0..=14.0;
        /// Share of the light that passes the shelter.
        LightThrough = climate.light_through_pct, Percent, 1.0..=100.0, usual 15.0..=95.0;
        /// Photon flux density under the lamps.
        LampFlux = climate.lamp_ppfd_umol_per_m2_s, PhotonFlux, 10.0..=2000.0, usual 100.0..=600.0;
        /// Lamp hours of a day.
        LampHours = climate.lamp_hours_h, Hours, 1.0..=24.0, usual 10.0..=18.0;
        /// Carbon dioxide of the air.
        CarbonDioxide = climate.co2_ppm, CarbonDioxide, 150.0..=2000.0, usual 350.0..=1200.0;
    }
    choices {
        /// How the plants stand over the solution.
        Method = container.method;
        /// The vessel's shape.
        Shape = container.shape;
        /// The boards' foam.
        Foam = container.foam;
        /// The pipe's standard size.
        Pipe = container.pipe;
        /// Open or capped pipes.
        PipeEnds = container.pipe_ends;
        /// What the pipes are made of.
        PipeMaterial = container.pipe_material;
        /// What the tank stands on.
        StandsOn = build.stands_on;
        /// The timber of the sides.
        Timber = build.timber;
        /// What a covered tank is covered with.
        CoverMaterial = build.cover;
        /// The crop.
        CropKind = crop.kind;
        /// Pattern of the holes.
        Pattern = crop.pattern;
        /// Meaning of the date.
        DateMeaning = crop.date_meaning;
        /// Dry blend or stocks.
        Dosing = fertilizer.dosing;
        /// The blend.
        Blend = fertilizer.blend;
        /// What is known of the raw water.
        WaterKind = fertilizer.water_kind;
        /// The acid.
        Acid = fertilizer.acid;
        /// The published solution.
        Recipe = fertilizer.recipe;
        /// EC or nitrogen as the target.
        StrengthBy = fertilizer.strength_by;
        /// Which calcium nitrate.
        CalciumNitrate = fertilizer.calcium_nitrate;
        /// The kind of climate.
        ClimateKind = climate.kind;
        /// How daylight is known.
        DaylightBy = climate.daylight_by;
        /// The shelter.
        Shelter = climate.shelter;
    }
}

impl Field {
    /// Whether the field may stay empty.
    pub const fn optional(self) -> bool {
        matches!(
            self,
            Self::FillDepth
                | Self::People
                | Self::TurnaroundDays
                | Self::PipeSpacing
                | Self::SupportRating
                | Self::EdgeDistance
                | Self::SheetPrice
                | Self::PipePrice
                | Self::TimberPrice
                | Self::LinerPrice
                | Self::PotPrice
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_path_exists_in_the_saved_document() {
        let json = serde_json::to_value(Plan::default()).expect("plans serialise");
        for field in Field::ALL {
            let pointer = format!("/{}", field.path().replace('.', "/"));
            assert!(json.pointer(&pointer).is_some(), "{pointer}");
        }
    }

    #[test]
    fn usual_bounds_lie_within_the_hard_ones() {
        for limits in Field::ALL.iter().filter_map(|field| field.limits()) {
            assert!(limits.low <= limits.usual_low && limits.usual_low <= limits.usual_high);
            assert!(limits.usual_high <= limits.high);
        }
    }
}
