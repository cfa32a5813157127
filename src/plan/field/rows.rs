//! What becomes of the lines of the table of fields.

/// Where the limits come from: physical sense and what the models cover decide `low` and `high`;
/// the usual bounds are common practice, no source.
macro_rules! fields {
    (
        numbers { $($(#[$meta:meta])* $name:ident = $($at:ident).+, $dimension:ident, $low:literal ..= $high:literal, usual $usual_low:literal ..= $usual_high:literal;)+ }
        choices { $($(#[$choice_meta:meta])* $choice:ident = $($choice_at:ident).+;)+ }
    ) => {
        /// A field of a plan.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub enum Field {
            $($(#[$meta])* $name,)+
            $($(#[$choice_meta])* $choice,)+
            /// Litres of the measured pair with this index.
            MeasuredVolume(u8),
            /// Depth of the measured pair with this index.
            MeasuredDepth(u8),
            /// The measured pairs together.
            Measured,
            /// The salt on the shelf with this index.
            SaltChoice(u8),
            /// Its purity.
            SaltPurity(u8),
            /// Its price.
            SaltPrice(u8),
            /// The salts together.
            Salts,
        }

        impl Field {
            /// All fields except the measured pairs, in the order of the forms.
            pub const ALL: &'static [Self] = &[$(Self::$name,)+ $(Self::$choice,)+];

            /// The path of the field in a plan document, such as `container.height_cm`.
            pub fn path(self) -> String {
                let dotted = match self {
                    $(Self::$name => concat!($(stringify!($at), "."),+),)+
                    $(Self::$choice => concat!($(stringify!($choice_at), "."),+),)+
                    _ => "",
                };
                if let Some(path) = dotted.strip_suffix('.') {
                    return path.to_owned();
                }
                match self {
                    Self::MeasuredVolume(index) => format!("container.measured[{index}].volume_l"),
                    Self::MeasuredDepth(index) => format!("container.measured[{index}].depth_cm"),
                    Self::Measured => "container.measured".to_owned(),
                    Self::SaltChoice(index) => format!("fertilizer.salts[{index}].salt"),
                    Self::SaltPurity(index) => format!("fertilizer.salts[{index}].purity_pct"),
                    Self::SaltPrice(index) => format!("fertilizer.salts[{index}].price_per_kg"),
                    _ => "fertilizer.salts".to_owned(),
                }
            }

            /// The place of a numeric field among all. Not inlined: the table of limits would become a
            /// piece of program for each field, which weighs far more.
            #[inline(never)]
            const fn place(self) -> usize {
                enum Place {
                    $($name,)+
                }
                match self {
                    $(Self::$name => Place::$name as usize,)+
                    _ => 0,
                }
            }

            /// The limits of a numeric field; `None` for a choice.
            pub const fn limits(self) -> Option<Limits> {
                const TABLE: &[Limits] = &[$(Limits {
                    dimension: Dimension::$dimension,
                    low: $low,
                    high: $high,
                    usual_low: $usual_low,
                    usual_high: $usual_high,
                },)+];
                match self {
                    $(Self::$name)|+ => Some(TABLE[self.place()]),
                    Self::MeasuredVolume(_) => Some(Limits {
                        dimension: Dimension::Volume,
                        low: 0.0,
                        high: 100_000.0,
                        usual_low: 0.0,
                        usual_high: 100_000.0,
                    }),
                    Self::MeasuredDepth(_) => Some(Limits {
                        dimension: Dimension::Length,
                        low: 0.0,
                        high: 300.0,
                        usual_low: 0.0,
                        usual_high: 300.0,
                    }),
                    Self::SaltPurity(_) => Some(Limits {
                        dimension: Dimension::Percent,
                        low: 1.0,
                        high: 100.0,
                        usual_low: 1.0,
                        usual_high: 100.0,
                    }),
                    Self::SaltPrice(_) => Some(Limits {
                        dimension: Dimension::Price,
                        low: 0.0,
                        high: 1_000_000.0,
                        usual_low: 0.0,
                        usual_high: 1_000_000.0,
                    }),
                    $(Self::$choice => None,)+
                    Self::Measured | Self::SaltChoice(_) | Self::Salts => None,
                }
            }

            /// The entry of a numeric field; `None` for a choice and for a measured pair that
            /// does not exist.
            pub fn entry(self, plan: &Plan) -> Option<&Entry> {
                match self {
                    $(Self::$name => Some(&plan.$($at).+),)+
                    Self::MeasuredVolume(index) => pair(plan, index).map(|pair| &pair.volume_l),
                    Self::MeasuredDepth(index) => pair(plan, index).map(|pair| &pair.depth_cm),
                    Self::SaltPurity(index) => line(plan, index).map(|line| &line.purity_pct),
                    Self::SaltPrice(index) => line(plan, index).map(|line| &line.price_per_kg),
                    $(Self::$choice => None,)+
                    Self::Measured | Self::SaltChoice(_) | Self::Salts => None,
                }
            }

            /// The entry of a numeric field, to be changed; as [`Self::entry`].
            pub fn entry_mut(self, plan: &mut Plan) -> Option<&mut Entry> {
                match self {
                    $(Self::$name => Some(&mut plan.$($at).+),)+
                    Self::MeasuredVolume(index) => plan
                        .container
                        .measured
                        .get_mut(usize::from(index))
                        .map(|pair| &mut pair.volume_l),
                    Self::MeasuredDepth(index) => plan
                        .container
                        .measured
                        .get_mut(usize::from(index))
                        .map(|pair| &mut pair.depth_cm),
                    Self::SaltPurity(index) => plan
                        .fertilizer
                        .salts
                        .get_mut(usize::from(index))
                        .map(|line| &mut line.purity_pct),
                    Self::SaltPrice(index) => plan
                        .fertilizer
                        .salts
                        .get_mut(usize::from(index))
                        .map(|line| &mut line.price_per_kg),
                    $(Self::$choice => None,)+
                    Self::Measured | Self::SaltChoice(_) | Self::Salts => None,
                }
            }
        }
    };
}

pub(super) use fields;
