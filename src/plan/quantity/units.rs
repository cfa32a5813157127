//! The units that may be typed for each kind of quantity.

use super::{Dimension, UnitSystem};

/// One way to write a quantity: `saved = typed × scale + offset`.
pub(super) struct Unit {
    /// How it is shown, then what else is understood; compared in lower case.
    pub names: &'static [&'static str],
    pub scale: f64,
    pub offset: f64,
}

const fn unit(names: &'static [&'static str], scale: f64) -> Unit {
    Unit {
        names,
        scale,
        offset: 0.0,
    }
}

// The factors of inch, foot, US gallon, ounce and pound are exact by definition (international
// yard and pound agreement of 1959; US gallon of 231 cubic inches).
const LITRES_PER_GALLON: f64 = 3.785_411_784;
const GRAMS_PER_OUNCE: f64 = 28.349_523_125;
const GRAMS_PER_POUND: f64 = GRAMS_PER_OUNCE * 16.0;
const METRES_PER_FOOT: f64 = 0.3048;
// A pound under the standard acceleration of gravity, 9.806 65 m/s², which is exact too.
const NEWTONS_PER_POUND_FORCE: f64 = 4.448_221_615_260_5;

const LENGTH: &[Unit] = &[
    unit(
        &[
            "cm",
            "centimetre",
            "centimetres",
            "centimeter",
            "centimeters",
            "centímetro",
            "centímetros",
        ],
        1.0,
    ),
    unit(
        &[
            "in", "inch", "inches", "\"", "”", "″", "pulg", "pulgada", "pulgadas",
        ],
        2.54,
    ),
    unit(
        &[
            "mm",
            "millimetre",
            "millimetres",
            "millimeter",
            "millimeters",
            "milímetro",
            "milímetros",
        ],
        0.1,
    ),
    unit(
        &["m", "metre", "metres", "meter", "meters", "metro", "metros"],
        100.0,
    ),
    unit(&["ft", "foot", "feet", "'", "’", "′", "pie", "pies"], 30.48),
];
const ELEVATION: &[Unit] = &[
    unit(
        &["m", "metre", "metres", "meter", "meters", "metro", "metros"],
        1.0,
    ),
    unit(
        &["ft", "foot", "feet", "'", "’", "′", "pie", "pies"],
        0.3048,
    ),
    unit(&["km"], 1000.0),
];
const VOLUME: &[Unit] = &[
    unit(
        &["L", "litre", "litres", "liter", "liters", "litro", "litros"],
        1.0,
    ),
    unit(
        &["gal", "gallon", "gallons", "galón", "galon", "galones"],
        LITRES_PER_GALLON,
    ),
    unit(
        &[
            "mL",
            "millilitre",
            "millilitres",
            "milliliter",
            "milliliters",
            "mililitro",
            "mililitros",
        ],
        0.001,
    ),
    unit(
        &["qt", "quart", "quarts", "cuarto", "cuartos"],
        LITRES_PER_GALLON / 4.0,
    ),
    unit(
        &["pt", "pint", "pints", "pinta", "pintas"],
        LITRES_PER_GALLON / 8.0,
    ),
    unit(
        &["fl oz", "floz", "oz líq", "oz líq.", "oz liq"],
        LITRES_PER_GALLON / 128.0,
    ),
    unit(&["m3", "m³"], 1000.0),
];
const MASS: &[Unit] = &[
    unit(&["g", "gram", "grams", "gramo", "gramos"], 1.0),
    unit(&["oz", "ounce", "ounces", "onza", "onzas"], GRAMS_PER_OUNCE),
    unit(
        &["kg", "kilogram", "kilograms", "kilogramo", "kilogramos"],
        1000.0,
    ),
    unit(
        &["lb", "lbs", "pound", "pounds", "libra", "libras"],
        GRAMS_PER_POUND,
    ),
    unit(&["mg"], 0.001),
];
const TEMPERATURE: &[Unit] = &[
    unit(&["°C", "c", "celsius"], 1.0),
    Unit {
        names: &["°F", "f", "fahrenheit"],
        scale: 5.0 / 9.0,
        offset: -160.0 / 9.0,
    },
];
const PERCENT: &[Unit] = &[unit(&["%", "percent", "per cent", "por ciento"], 1.0)];
const CONDUCTIVITY: &[Unit] = &[
    unit(&["mS/cm", "ms", "ds/m"], 1.0),
    unit(&["µS/cm", "μs/cm", "us/cm", "µs", "μs", "us"], 0.001),
];
const CONCENTRATION: &[Unit] = &[
    unit(&["mg/L", "ppm", "g/m3", "g/m³"], 1.0),
    unit(&["g/L"], 1000.0),
];
const STOCK_STRENGTH: &[Unit] = &[
    unit(&["g/L"], 1.0),
    unit(&["oz/gal"], GRAMS_PER_OUNCE / LITRES_PER_GALLON),
    unit(&["lb/gal"], GRAMS_PER_POUND / LITRES_PER_GALLON),
    unit(&["kg/L"], 1000.0),
];
const DAILY_RADIATION: &[Unit] = &[
    unit(&["MJ/m²", "mj/m2", "mj", "mj/m²/day", "mj/m2/day"], 1.0),
    unit(
        &["kWh/m²", "kwh/m2", "kwh", "kwh/m²/day", "kwh/m2/day"],
        3.6,
    ),
    // Mean power over 24 hours.
    unit(&["W/m²", "w/m2", "w"], 0.0864),
];
const PHOTON_FLUX: &[Unit] = &[unit(
    &[
        "µmol/m²/s",
        "μmol/m²/s",
        "umol/m2/s",
        "µmol",
        "μmol",
        "umol",
    ],
    1.0,
)];
const HOURS: &[Unit] = &[
    unit(&["h", "hour", "hours", "hr", "hora", "horas"], 1.0),
    unit(&["min", "minutes", "minutos"], 1.0 / 60.0),
];
const DAYS: &[Unit] = &[
    unit(&["days", "d", "day", "día", "días", "dia", "dias"], 1.0),
    unit(&["weeks", "week", "wk", "semana", "semanas"], 7.0),
];
const LATITUDE: &[Unit] = &[
    unit(&["°", "deg", "degrees", "n", "°n", "grados"], 1.0),
    unit(&["s", "°s"], -1.0),
];
const CARBON_DIOXIDE: &[Unit] = &[unit(&["ppm", "µmol/mol"], 1.0)];
const FLOOR_LOAD: &[Unit] = &[
    unit(&["kg/m²", "kg/m2"], 1.0),
    unit(
        &["lb/ft²", "lb/ft2", "psf", "lb/pie²", "lb/pie2"],
        GRAMS_PER_POUND / 1000.0 / (METRES_PER_FOOT * METRES_PER_FOOT),
    ),
];
const WATER_USE: &[Unit] = &[
    unit(&["L/kg"], 1.0),
    unit(&["gal/lb"], LITRES_PER_GALLON / (GRAMS_PER_POUND / 1000.0)),
];
const WEIGHT: &[Unit] = &[unit(&["kg"], 1.0), unit(&["lb"], GRAMS_PER_POUND / 1000.0)];
const SMALL_LENGTH: &[Unit] = &[
    unit(&["mm"], 1.0),
    unit(&["in", "\"", "”", "″", "pulg"], 25.4),
];
const AREA: &[Unit] = &[
    unit(&["m²", "m2"], 1.0),
    unit(
        &["ft²", "ft2", "sq ft", "pies²", "pies2", "pie²", "pie2"],
        METRES_PER_FOOT * METRES_PER_FOOT,
    ),
];
const DENSITY: &[Unit] = &[
    unit(&["kg/m³", "kg/m3"], 1.0),
    unit(
        &["lb/ft³", "lb/ft3", "lb/pie³", "lb/pie3"],
        GRAMS_PER_POUND / 1000.0 / (METRES_PER_FOOT * METRES_PER_FOOT * METRES_PER_FOOT),
    ),
];
const FORCE: &[Unit] = &[unit(&["N"], 1.0), unit(&["lbf"], NEWTONS_PER_POUND_FORCE)];
const MOMENT: &[Unit] = &[
    unit(&["N·m"], 1.0),
    unit(
        &["lbf·ft", "lbf·pie"],
        NEWTONS_PER_POUND_FORCE * METRES_PER_FOOT,
    ),
];
const STRESS: &[Unit] = &[
    unit(&["MPa"], 1.0),
    // A pound-force on a square inch.
    unit(&["psi"], NEWTONS_PER_POUND_FORCE / (25.4 * 25.4)),
];
const DAILY_LIGHT: &[Unit] = &[unit(&["mol/m²"], 1.0)];
// Prices are typed for the unit of the system; the fields themselves stay per kilogram, metre and
// square metre.
const PRICE: &[Unit] = &[
    unit(&["/kg"], 1.0),
    unit(&["/lb"], 1000.0 / GRAMS_PER_POUND),
];
const PRICE_OF_LENGTH: &[Unit] = &[
    unit(&["/m"], 1.0),
    unit(&["/ft", "/pie"], 1.0 / METRES_PER_FOOT),
];
const PRICE_OF_AREA: &[Unit] = &[
    unit(&["/m²", "/m2"], 1.0),
    unit(
        &["/ft²", "/ft2", "/pie²", "/pie2"],
        1.0 / (METRES_PER_FOOT * METRES_PER_FOOT),
    ),
];
const NO_UNIT: &[Unit] = &[unit(&[""], 1.0)];

/// A difference of two temperatures, K, in the degrees of a system, and their symbol.
pub fn temperature_difference(kelvin: f64, units: UnitSystem) -> (f64, &'static str) {
    let unit = match units {
        UnitSystem::Metric => &TEMPERATURE[0],
        UnitSystem::UsCustomary => &TEMPERATURE[1],
    };
    (kelvin / unit.scale, unit.names[0])
}

impl Dimension {
    /// The saved unit first, its US customary counterpart second where growers use one.
    pub(super) fn units(self) -> &'static [Unit] {
        match self {
            Self::Length => LENGTH,
            Self::Elevation | Self::Run => ELEVATION,
            Self::Volume => VOLUME,
            Self::Mass => MASS,
            Self::Temperature => TEMPERATURE,
            Self::Percent => PERCENT,
            Self::Conductivity => CONDUCTIVITY,
            Self::Concentration => CONCENTRATION,
            Self::StockStrength => STOCK_STRENGTH,
            Self::DailyRadiation => DAILY_RADIATION,
            Self::PhotonFlux => PHOTON_FLUX,
            Self::Hours => HOURS,
            Self::Days => DAYS,
            Self::Latitude => LATITUDE,
            Self::CarbonDioxide => CARBON_DIOXIDE,
            Self::FloorLoad => FLOOR_LOAD,
            Self::WaterUse => WATER_USE,
            Self::Weight => WEIGHT,
            Self::SmallLength => SMALL_LENGTH,
            Self::DailyLight => DAILY_LIGHT,
            Self::Price => PRICE,
            Self::PriceOfLength => PRICE_OF_LENGTH,
            Self::PriceOfArea => PRICE_OF_AREA,
            Self::Density => DENSITY,
            Self::Force => FORCE,
            Self::Moment => MOMENT,
            Self::Stress => STRESS,
            Self::Area => AREA,
            Self::Money | Self::Count | Self::Factor | Self::Date | Self::Fine => NO_UNIT,
        }
    }
}
