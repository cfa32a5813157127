//! What leafy crops are made of: dry matter, and nutrients in the dry matter.

use super::crops::CropKind;
use crate::science::units::{Ratio, ratio};

/// Protein per nitrogen, by mass: the factor by which the analyses turn one into the other.
const PROTEIN_PER_NITROGEN: f64 = 6.25;

/// Nitrate nitrogen of leafy crops grown in solution, g per kg fresh: the middle of 0.2 to 0.6,
/// that is of 900 to 2700 mg of nitrate. From memory, for lettuce. Protein leaves it out.
const NITRATE_N: f64 = 0.4;

/// The ranges of sufficiency of lettuce.
const LETTUCE_RANGES: &str = "Hochmuth et al., UF/IFAS HS964/EP081, adequate range of the most \
                              recently matured leaf of lettuce; from memory, low confidence";

/// A range of contents in which the leaves of a crop are well fed (mass per dry mass).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sufficiency {
    /// Lower end (a ratio).
    pub low: Ratio,
    /// Upper end (a ratio).
    pub high: Ratio,
}

/// One nutrient in dry matter.
///
/// What a harvest removes comes from other sources and other tissue than the range, and can lie
/// below it: for potassium and calcium it mostly does (Hartz et al. 2007, `HortScience` 42:143,
/// found the published ranges of these two too high).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NutrientContent {
    /// What a harvest removes per dry mass (a ratio).
    pub typical: Ratio,
    /// The range of sufficiency, where one is known.
    pub sufficiency: Option<Sufficiency>,
}

/// Nutrients in the dry matter of a crop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TissueContent {
    /// Nitrogen, nitrate included.
    pub n: NutrientContent,
    /// Phosphorus.
    pub p: NutrientContent,
    /// Potassium.
    pub k: NutrientContent,
    /// Calcium.
    pub ca: NutrientContent,
    /// Magnesium.
    pub mg: NutrientContent,
    /// Where the typical contents come from. Nitrogen is protein / 6.25 of that source plus
    /// 0.4 g of nitrate N per kg fresh (from memory).
    pub typical_source: &'static str,
    /// Where the ranges come from, and how sure they are; `None` without ranges.
    pub range_source: Option<&'static str>,
}

/// Analysis of the fresh edible part, per 100 g: g of dry matter and of protein, mg of minerals.
struct Analysis {
    dry_matter: f64,
    protein: f64,
    p: f64,
    k: f64,
    ca: f64,
    mg: f64,
    source: &'static str,
}

/// An analysis from one line of figures, in the order of [`Analysis`].
const fn analysis(figures: [f64; 6], source: &'static str) -> Analysis {
    let [dry_matter, protein, p, k, ca, mg] = figures;
    Analysis {
        dry_matter,
        protein,
        p,
        k,
        ca,
        mg,
        source,
    }
}

/// The analysis of a crop. Dry matter is 100 less the water.
const fn analysis_of(crop: CropKind) -> Analysis {
    match crop {
        CropKind::LeafLettuce => analysis(
            [5.02, 1.36, 29.0, 194.0, 36.0, 13.0],
            "USDA SR 11253 (lettuce, green leaf, raw)",
        ),
        CropKind::ButterheadLettuce => analysis(
            [4.37, 1.35, 33.0, 238.0, 35.0, 13.0],
            "USDA SR 11250 (lettuce, butterhead, raw)",
        ),
        CropKind::RomaineLettuce => analysis(
            [5.39, 1.23, 30.0, 247.0, 33.0, 14.0],
            "USDA SR 11251 (lettuce, cos or romaine, raw)",
        ),
        CropKind::PakChoi => analysis(
            [4.68, 1.50, 37.0, 252.0, 105.0, 19.0],
            "USDA SR 11116 (cabbage, pak choi, raw)",
        ),
        CropKind::LeafMustard => analysis(
            [9.30, 2.86, 58.0, 384.0, 115.0, 32.0],
            "USDA SR 11270 (mustard greens, raw), from memory",
        ),
        CropKind::Spinach => analysis(
            [8.60, 2.86, 49.0, 558.0, 99.0, 79.0],
            "USDA SR 11457 (spinach, raw)",
        ),
        CropKind::Chard => analysis(
            [7.34, 1.80, 46.0, 379.0, 51.0, 81.0],
            "USDA SR 11147 (chard, raw)",
        ),
        CropKind::Basil => analysis(
            [7.94, 3.15, 56.0, 295.0, 177.0, 64.0],
            "USDA SR 02044 (basil, fresh), phosphorus and magnesium from memory",
        ),
        CropKind::Coriander => analysis(
            [7.79, 2.13, 48.0, 521.0, 67.0, 26.0],
            "USDA SR 11165 (coriander leaves, raw), minerals from memory",
        ),
        CropKind::Parsley => analysis(
            [12.29, 2.97, 58.0, 554.0, 138.0, 50.0],
            "USDA SR 11297 (parsley, fresh), water from memory",
        ),
    }
}

/// Nutrients in the dry matter of a crop (ratios, mass per dry mass): what the harvest of the
/// edible part removes and, for lettuce, the range of sufficiency.
///
/// ```
/// use slackwater::catalog::{crops::CropKind, tissue};
/// use slackwater::science::units::ratio::percent;
/// let nitrogen = tissue::of(CropKind::ButterheadLettuce).n.typical.get::<percent>();
/// assert!((nitrogen - 5.86).abs() < 0.01); // protein 4.94, nitrate 0.92
/// ```
pub fn of(crop: CropKind) -> TissueContent {
    let analysis = analysis_of(crop);
    let lettuce = matches!(
        crop,
        CropKind::LeafLettuce | CropKind::ButterheadLettuce | CropKind::RomaineLettuce
    );
    let content = |mg_per_100_g: f64, low: f64, high: f64| NutrientContent {
        typical: Ratio::new::<ratio::ratio>(mg_per_100_g / 1000.0 / analysis.dry_matter),
        sufficiency: lettuce.then(|| Sufficiency {
            low: Ratio::new::<ratio::percent>(low),
            high: Ratio::new::<ratio::percent>(high),
        }),
    };
    // g of protein per 100 g to mg of N, and g of nitrate N per kg to mg per 100 g.
    let nitrogen = analysis.protein / PROTEIN_PER_NITROGEN * 1000.0 + NITRATE_N * 100.0;
    TissueContent {
        n: content(nitrogen, 4.0, 6.0),
        p: content(analysis.p, 0.4, 0.8),
        k: content(analysis.k, 5.0, 7.0),
        ca: content(analysis.ca, 1.0, 2.0),
        mg: content(analysis.mg, 0.3, 0.6),
        typical_source: analysis.source,
        range_source: lettuce.then_some(LETTUCE_RANGES),
    }
}

/// Dry mass per fresh mass of a crop (a ratio): 100 % less the water of the analysis.
///
/// Lettuce grown in weak light runs lower, 3.2 to 3.6 % (Carotti et al. 2021, Frontiers in Plant
/// Science 11:592171); cool air raises it by a fifth (Gent 2016, Acta Horticulturae 1123:95).
pub fn dry_matter_content(crop: CropKind) -> Ratio {
    Ratio::new::<ratio::percent>(analysis_of(crop).dry_matter)
}

#[cfg(test)]
mod tests {
    use super::of;
    use crate::catalog::Keyed;
    use crate::catalog::crops::CropKind;
    use crate::science::units::ratio::percent;

    #[test]
    fn contents_are_of_the_order_of_plant_tissue() {
        // Marschner 2012, Mineral Nutrition of Higher Plants: adequate for growth are about N 1.5,
        // K 1, Ca 0.5, Mg 0.2, P 0.2 % of dry matter; leafy crops hold up to a few times that.
        for &crop in CropKind::ALL {
            let tissue = of(crop);
            for (content, adequate, times) in [
                (tissue.n, 1.5, 5.0),
                (tissue.p, 0.2, 5.0),
                (tissue.k, 1.0, 8.0),
                (tissue.ca, 0.5, 5.0),
                (tissue.mg, 0.2, 6.0),
            ] {
                let ratio = content.typical.get::<percent>() / adequate;
                assert!((1.0..times).contains(&ratio), "{crop:?}: {ratio}");
                if let Some(range) = content.sufficiency {
                    assert!(range.low < range.high);
                    assert!(content.typical.value > 0.5 * range.low.value);
                    assert!(content.typical.value < range.high.value);
                }
            }
            assert_eq!(
                tissue.range_source.is_some(),
                tissue.n.sufficiency.is_some()
            );
        }
    }
}
