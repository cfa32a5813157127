//! Salt tolerance of leafy crops.

use super::crops::CropKind;
use crate::science::salinity::SaltTolerance;
use crate::science::units::{ElectricalConductivity, Ratio, electrical_conductivity, ratio};

/// Where the figures come from: a guide to relative tolerance; climate and culture shift them.
pub const SOURCE: &str = "Maas (1990), Crop salt tolerance, in Tanji (ed.), Agricultural Salinity \
                          Assessment and Management, as tabulated by the U.S. Salinity Laboratory";

/// Salt tolerance of a crop in sodium chloride, as conductivity of the saturated paste's extract.
///
/// Lettuce: threshold 1.3 dS/m, 13 % of the yield per dS/m above it; spinach: 2.0 and 7.6. `None`
/// for crops that the table does not measure. It does not tell types of lettuce apart. Source:
/// [`SOURCE`].
///
/// ```
/// use slackwater::catalog::{crops::CropKind, salt_tolerance};
/// assert!(salt_tolerance::of(CropKind::RomaineLettuce).is_some());
/// assert!(salt_tolerance::of(CropKind::Basil).is_none());
/// ```
pub fn of(crop: CropKind) -> Option<SaltTolerance> {
    // dS/m, and percent of the yield per dS/m.
    let (threshold, slope) = match crop {
        CropKind::LeafLettuce | CropKind::ButterheadLettuce | CropKind::RomaineLettuce => {
            (1.3, 13.0)
        }
        CropKind::Spinach => (2.0, 7.6),
        CropKind::PakChoi
        | CropKind::LeafMustard
        | CropKind::Chard
        | CropKind::Basil
        | CropKind::Coriander
        | CropKind::Parsley => return None,
    };
    let per_metre = |decisiemens: f64| {
        ElectricalConductivity::new::<electrical_conductivity::siemens_per_meter>(
            decisiemens / 10.0,
        )
    };
    let slope = Ratio::new::<ratio::percent>(slope) / per_metre(1.0);
    SaltTolerance::new(per_metre(threshold), slope).ok()
}
