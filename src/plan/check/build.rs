//! How a rectangular tank is built.

use super::container::Container;
use super::reader::Reader;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::timber::Timber;
use crate::plan::{Field, Method, Shape, StandsOn};
use crate::science::units::areal_mass_density::kilogram_per_square_meter;
use crate::science::units::length::centimeter;
use crate::science::units::{ArealMassDensity, Length};

/// A rectangular tank as something to build.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Build {
    /// Inner length, width and height.
    pub inside: (Length, Length, Length),
    /// What it stands on.
    pub stands_on: StandsOn,
    /// Legs of its bench, where it stands on one.
    pub legs: Option<u32>,
    /// What floor or bench is rated to carry, where that is known.
    pub rating: Option<ArealMassDensity>,
    /// How much lower one end of the floor lies.
    pub floor_drop: Length,
    /// The timber of the sides.
    pub timber: Timber,
    /// From brace to brace.
    pub brace_spacing: Length,
    /// Layers of liner.
    pub liner_layers: u32,
    /// The fixed cover, where there is one.
    pub cover: Option<FixedCover>,
    /// Length and width of the sheets that boards or cover are cut from.
    pub sheet: (Length, Length),
    /// Prices, where given.
    pub prices: BuildPrices,
}

/// A cover that rests on the sides.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FixedCover {
    /// What it is made of.
    pub material: CoverMaterial,
    /// Thickness.
    pub thickness: Length,
    /// Rows of props lengthwise under it.
    pub prop_rows: u32,
}

/// Prices in the plan's own currency.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct BuildPrices {
    /// Of a sheet for boards or cover.
    pub sheet: Option<f64>,
    /// Of a metre of pipe.
    pub pipe_per_m: Option<f64>,
    /// Of a metre of timber.
    pub timber_per_m: Option<f64>,
    /// Of a square metre of liner.
    pub liner_per_m2: Option<f64>,
    /// Of a net pot.
    pub pot: Option<f64>,
}

/// `Some(None)` for containers that nobody builds of timber and liner.
#[expect(
    clippy::option_option,
    reason = "outside: whether it could be read; inside: whether there is one"
)]
pub(super) fn read(reader: &mut Reader, container: Option<&Container>) -> Option<Option<Build>> {
    let plan = &reader.plan.build;
    let method = reader.plan.container.method.known();
    let tank = matches!(method, Some(Method::CoveredTank | Method::FloatingBoards));
    let shape = reader.plan.container.shape.known();
    if !tank || shape != Some(Shape::Rectangular) {
        return Some(None);
    }
    let floats = method == Some(Method::FloatingBoards);
    let stands_on = reader.choice_or(Field::StandsOn, &plan.stands_on, StandsOn::Ground);
    let legs = if stands_on == Some(StandsOn::Bench) {
        reader.whole(Field::LegCount).map(Some)
    } else {
        Some(None)
    };
    let rating = if stands_on == Some(StandsOn::Ground) {
        Some(None)
    } else {
        reader.optional(Field::SupportRating)
    };
    let floor_drop = reader.number(Field::FloorDrop);
    let timber = reader.choice_or(Field::Timber, &plan.timber, Timber::Metric47x200);
    let brace_spacing = reader.number(Field::BraceSpacing);
    let liner_layers = reader.whole(Field::LinerLayers);
    let (cover, prop_rows) = if floats {
        (None, None)
    } else {
        (
            reader.choice_or(
                Field::CoverMaterial,
                &plan.cover,
                CoverMaterial::ExtrudedFoam,
            ),
            reader.whole(Field::PropRows),
        )
    };
    let sheet = (
        reader.number(Field::SheetLength),
        reader.number(Field::SheetWidth),
    );
    // All are read before any of them ends the reading, so that all problems come at once.
    let [sheet_price, timber_per_m, liner_per_m2, pot] = [
        Field::SheetPrice,
        Field::TimberPrice,
        Field::LinerPrice,
        Field::PotPrice,
    ]
    .map(|field| reader.optional(field));
    let pipe_per_m = if floats {
        reader.optional(Field::PipePrice)
    } else {
        Some(None)
    };
    let prices = BuildPrices {
        sheet: sheet_price?,
        pipe_per_m: pipe_per_m?,
        timber_per_m: timber_per_m?,
        liner_per_m2: liner_per_m2?,
        pot: pot?,
    };
    let cm = Length::new::<centimeter>;
    let container = container?;
    Some(Some(Build {
        inside: (
            cm(reader.plan_number(Field::Length)?),
            cm(reader.plan_number(Field::Width)?),
            container.vessel.depth_max(),
        ),
        stands_on: stands_on?,
        legs: legs?,
        rating: rating?.map(ArealMassDensity::new::<kilogram_per_square_meter>),
        floor_drop: cm(floor_drop?),
        timber: timber?,
        brace_spacing: cm(brace_spacing?),
        liner_layers: liner_layers?,
        cover: if floats {
            None
        } else {
            Some(FixedCover {
                material: cover?,
                thickness: container.cover_thickness,
                prop_rows: prop_rows?,
            })
        },
        sheet: (cm(sheet.0?), cm(sheet.1?)),
        prices,
    }))
}
