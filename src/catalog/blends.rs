//! Dry soluble blends by grade. Every figure is that of a typical label: copy the figures from the
//! bag.

use super::keyed::keyed;
use crate::science::label::Label;
use crate::science::units::{Ratio, ratio};

keyed! {
    /// A dry blend, named by its grade N-P₂O₅-K₂O in percent of the mass, or the grower's own.
    BlendChoice {
        /// Rich in potassium, nearly all nitrogen as nitrate; used with calcium nitrate and
        /// magnesium sulfate.
        Grade8x15x36 = "8-15-36",
        /// A quarter of its nitrogen as ammonium, with magnesium and sulfur.
        Grade10x8x22 = "10-8-22",
        /// Low in phosphorus, with magnesium.
        Grade15x5x20 = "15-5-20",
        /// Half of its nitrogen as urea, which feeds slowly in still solution and which a
        /// conductivity meter does not see.
        Grade20x20x20 = "20-20-20",
        /// A blend whose label the grower copies.
        Own = "own",
    }
}

/// Where the figures of every blend come from.
const SOURCE: &str = "common practice, no source: typical label, copy the figures from the bag; \
                      calculated from a make-up of single salts";

/// The figures of a typical label, percent of the mass.
struct Figures {
    grade: (f64, f64, f64),
    nitrate_n: f64,
    ammonium_n: f64,
    urea_n: f64,
    mg: f64,
    s: f64,
    fe: f64,
    mn: f64,
    zn: f64,
    cu: f64,
    b: f64,
    mo: f64,
}

/// The trace elements of a blend made for water culture, and no major nutrient.
const TRACE: Figures = Figures {
    grade: (0.0, 0.0, 0.0),
    nitrate_n: 0.0,
    ammonium_n: 0.0,
    urea_n: 0.0,
    mg: 0.0,
    s: 0.0,
    fe: 0.40,
    mn: 0.20,
    zn: 0.05,
    cu: 0.05,
    b: 0.05,
    mo: 0.01,
};

impl BlendChoice {
    /// The typical figures. The make-up in front of each, percent of the mass, is checked by the
    /// tests below; the trace elements take another 2 to 5 %, the rest is moisture and filler.
    const fn figures(self) -> Option<Figures> {
        let figures = match self {
            // KNO3 57.0, KH2PO4 27.5, NH4H2PO4 1.1.
            Self::Grade8x15x36 => Figures {
                grade: (8.0, 15.0, 36.0),
                nitrate_n: 7.9,
                ammonium_n: 0.1,
                ..TRACE
            },
            // KNO3 35.9, KH2PO4 15.4, NH4NO3 14.4, MgSO4·7H2O 20.3.
            Self::Grade10x8x22 => Figures {
                grade: (10.0, 8.0, 22.0),
                nitrate_n: 7.5,
                ammonium_n: 2.5,
                mg: 2.0,
                s: 2.6,
                ..TRACE
            },
            // KNO3 36.0, KH2PO4 9.6, NH4NO3 22.4, Mg(NO3)2·6H2O 20.0.
            Self::Grade15x5x20 => Figures {
                grade: (15.0, 5.0, 20.0),
                nitrate_n: 11.1,
                ammonium_n: 3.9,
                mg: 1.9,
                ..TRACE
            },
            // KNO3 43.0, NH4H2PO4 32.5, urea 21.6; little room is left for trace elements.
            Self::Grade20x20x20 => Figures {
                grade: (20.0, 20.0, 20.0),
                nitrate_n: 6.0,
                ammonium_n: 3.9,
                urea_n: 10.1,
                fe: 0.10,
                mn: 0.05,
                zn: 0.05,
                cu: 0.05,
                b: 0.02,
                mo: 0.0005,
                ..TRACE
            },
            Self::Own => return None,
        };
        Some(figures)
    }

    /// The grade: total nitrogen, P₂O₅ and K₂O in percent of the mass, as printed on the bag;
    /// `None` for the grower's own.
    pub fn grade(self) -> Option<(f64, f64, f64)> {
        self.figures().map(|figures| figures.grade)
    }

    /// The figures of a typical label (mass fractions from 0 to 1); `None` for the grower's own.
    /// Blends of one grade differ in all figures but the grade: the bag decides.
    ///
    /// ```
    /// use slackwater::catalog::blends::BlendChoice;
    /// use slackwater::science::units::ratio::percent;
    /// let label = BlendChoice::Grade20x20x20.label();
    /// assert!(label.is_some_and(|label| label.problems().is_empty()));
    /// assert!(label.is_some_and(|label| label.urea_n.get::<percent>() > 10.0));
    /// ```
    pub fn label(self) -> Option<Label> {
        let figures = self.figures()?;
        let percent = Ratio::new::<ratio::percent>;
        Some(Label {
            total_n: Some(percent(figures.grade.0)),
            nitrate_n: percent(figures.nitrate_n),
            ammonium_n: percent(figures.ammonium_n),
            urea_n: percent(figures.urea_n),
            p2o5: percent(figures.grade.1),
            k2o: percent(figures.grade.2),
            // Calcium would precipitate with the phosphate of the same bag.
            ca: percent(0.0),
            mg: percent(figures.mg),
            s: percent(figures.s),
            fe: percent(figures.fe),
            mn: percent(figures.mn),
            zn: percent(figures.zn),
            cu: percent(figures.cu),
            b: percent(figures.b),
            mo: percent(figures.mo),
        })
    }

    /// Where the figures come from; `None` for the grower's own.
    pub fn source(self) -> Option<&'static str> {
        self.figures().map(|_| SOURCE)
    }
}

#[cfg(test)]
mod tests {
    use super::BlendChoice;
    use crate::catalog::Keyed;
    use crate::catalog::salts::Salt;
    use crate::science::formula::Formula;
    use crate::science::label::{Composition, NitrogenForms, Nutrient};
    use crate::science::units::{Ratio, ratio::percent};

    /// The label rounds each figure to 0.1 %, the grade down to a whole percent: an average make-up
    /// stays within 0.1 % of it.
    const ROUNDING: f64 = 0.1;

    /// Single salts that give the label, percent of the mass: major nutrients, then urea.
    fn make_up(blend: BlendChoice) -> Option<(&'static [(Salt, f64)], f64)> {
        let make_up: (&[(Salt, f64)], f64) = match blend {
            BlendChoice::Grade8x15x36 => (
                &[
                    (Salt::PotassiumNitrate, 57.0),
                    (Salt::MonopotassiumPhosphate, 27.5),
                    (Salt::MonoammoniumPhosphate, 1.1),
                ],
                0.0,
            ),
            BlendChoice::Grade10x8x22 => (
                &[
                    (Salt::PotassiumNitrate, 35.9),
                    (Salt::MonopotassiumPhosphate, 15.4),
                    (Salt::AmmoniumNitrate, 14.4),
                    (Salt::MagnesiumSulfate, 20.3),
                ],
                0.0,
            ),
            BlendChoice::Grade15x5x20 => (
                &[
                    (Salt::PotassiumNitrate, 36.0),
                    (Salt::MonopotassiumPhosphate, 9.6),
                    (Salt::AmmoniumNitrate, 22.4),
                    (Salt::MagnesiumNitrate, 20.0),
                ],
                0.0,
            ),
            BlendChoice::Grade20x20x20 => (
                &[
                    (Salt::PotassiumNitrate, 43.0),
                    (Salt::MonoammoniumPhosphate, 32.5),
                ],
                21.6,
            ),
            BlendChoice::Own => return None,
        };
        Some(make_up)
    }

    /// Salts and chelates that bring the trace elements of a label, percent of the mass.
    fn trace_salts(label: &Composition) -> Vec<(Salt, f64)> {
        [
            (Salt::IronEdta, Nutrient::Fe),
            (Salt::ManganeseSulfate, Nutrient::Mn),
            (Salt::ZincSulfate, Nutrient::Zn),
            (Salt::CopperSulfate, Nutrient::Cu),
            (Salt::BoricAcid, Nutrient::B),
            (Salt::SodiumMolybdate, Nutrient::Mo),
        ]
        .into_iter()
        .map(|(salt, trace)| {
            let share = label.fraction(trace) / salt.composition().fraction(trace);
            (salt, share.get::<percent>())
        })
        .collect()
    }

    #[test]
    fn every_label_can_be_made_of_single_salts() {
        let forms = NitrogenForms {
            urea: 2,
            ..NitrogenForms::default()
        };
        let urea = Formula::parse("CO(NH2)2").map(|it| Composition::from_formula(&it, forms));
        let Ok(Ok(urea)) = urea else {
            panic!("urea has a formula")
        };
        for &blend in BlendChoice::ALL {
            let Some((salts, urea_share)) = make_up(blend) else {
                assert_eq!(blend.label(), None);
                continue;
            };
            let label = blend.label().expect("a grade has a label");
            let label = Composition::from_label(&label)
                .unwrap_or_else(|problems| panic!("{blend:?}: {problems:?}"));
            let mut parts = vec![(urea, Ratio::new::<percent>(urea_share))];
            for (salt, share) in salts.iter().copied().chain(trace_salts(&label)) {
                parts.push((salt.composition(), Ratio::new::<percent>(share)));
            }
            let made = Composition::blend(&parts);
            let made = made.unwrap_or_else(|problem| panic!("{blend:?}: {problem:?}"));
            for nutrient in Nutrient::ALL {
                let difference = made.fraction(nutrient) - label.fraction(nutrient);
                // Sulfates of trace elements bring sulfur that such labels do not print; the
                // sodium of chelates is never printed.
                let unprinted = match nutrient {
                    Nutrient::S | Nutrient::Na => 0.2,
                    _ => 0.0,
                };
                let difference = difference.get::<percent>();
                assert!(
                    (-ROUNDING..=ROUNDING + unprinted).contains(&difference),
                    "{blend:?} {nutrient:?}: {difference} %"
                );
            }
        }
    }

    #[test]
    fn the_key_is_the_grade() {
        for &blend in BlendChoice::ALL {
            let named = blend.grade().map(|(n, p, k)| format!("{n}-{p}-{k}"));
            assert_eq!(blend.key(), named.as_deref().unwrap_or("own"));
            assert_eq!(blend.source().is_some(), named.is_some());
        }
    }
}
