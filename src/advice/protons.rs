//! Whether feeding drives the pH up or down.

use serde::Serialize;

use super::mixing::Mixed;
use crate::catalog::tissue::TissueContent;
use crate::science::label::Nutrient;
use crate::science::proton_balance::{Drift, Uptake};
use crate::science::units::Ratio;
use crate::science::units::ratio::{percent, ratio};

/// The proton balance of uptake.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ProtonOutcome {
    /// Which way the pH goes.
    #[serde(serialize_with = "direction")]
    pub drift: Drift,
    /// Anions over cations taken up, by charge.
    pub anions_per_cation: f64,
    /// Ammonium in the nitrogen, per cent.
    pub ammonium_share_pct: f64,
    /// Share of ammonium at which the pH would hold, per cent; `None` where none would.
    pub steady_ammonium_share_pct: Option<f64>,
}

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "the signature that serde asks for"
)]
fn direction<S: serde::Serializer>(drift: &Drift, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(match drift {
        Drift::Rises => "rises",
        Drift::Steady => "steady",
        Drift::Falls => "falls",
    })
}

/// The balance of a crop that takes nitrogen in the forms in which the solution offers it, urea
/// left out. `None` without nitrogen.
pub(super) fn protons(tissue: &TissueContent, mixed: &Mixed) -> Option<ProtonOutcome> {
    let of = |nutrient| mixed.nutrients.of(nutrient).value;
    let (nitrate, ammonium) = (of(Nutrient::NitrateN), of(Nutrient::AmmoniumN));
    if nitrate + ammonium <= 0.0 {
        return None;
    }
    let ammonium_share = ammonium / (nitrate + ammonium);
    let nitrogen = tissue.n.typical;
    let balance = Uptake {
        nitrate_n: nitrogen * (1.0 - ammonium_share),
        ammonium_n: nitrogen * ammonium_share,
        p: tissue.p.typical,
        k: tissue.k.typical,
        ca: tissue.ca.typical,
        mg: tissue.mg.typical,
        ..Uptake::default()
    }
    .balance()
    .ok()?;
    Some(ProtonOutcome {
        drift: balance.drift(),
        anions_per_cation: balance.ratio()?.get::<ratio>(),
        ammonium_share_pct: Ratio::new::<ratio>(ammonium_share).get::<percent>(),
        steady_ammonium_share_pct: balance
            .steady_ammonium_share()
            .map(|share| share.get::<percent>()),
    })
}
