//! Physical quantities used by the core: re-exports of `uom` (SI, `f64`) plus the few
//! combinations that `uom` does not name.
//!
//! Every public signature of the core carries its dimension in the type. Inside a function the
//! numbers are plain `f64` in the units that the function's source prints.

pub use uom::si::f64::{
    AmountOfSubstance, Angle, Area, ArealMassDensity, DiffusionCoefficient, ElectricalConductivity,
    Force, HeatFluxDensity, InverseVelocity, Length, LinearMassDensity, Mass, MassConcentration,
    MassDensity, MassFlux, MassRate, MolarConcentration, MolarFlux, MolarMass, Power, Pressure,
    RadiantExposure, Ratio, TemperatureInterval, ThermodynamicTemperature, Time, Velocity, Volume,
};
pub use uom::si::{
    amount_of_substance, angle, area, areal_mass_density, diffusion_coefficient,
    electrical_conductivity, force, heat_flux_density, inverse_velocity, length,
    linear_mass_density, mass, mass_concentration, mass_density, mass_flux, mass_rate,
    molar_concentration, molar_flux, molar_mass, power, pressure, radiant_exposure, ratio,
    temperature_interval, thermodynamic_temperature, time, velocity, volume,
};

use uom::si::{ISQ, Quantity, SI};
use uom::typenum::{N1, N2, P1, P2, P3, Z0};

/// Pressure per temperature, Pa K⁻¹: the slope of the saturation curve, the psychrometric constant.
pub type PressurePerTemperature = Quantity<ISQ<N1, P1, N2, Z0, N1, Z0, Z0>, SI<f64>, f64>;

/// Areal mass per time, kg m⁻² s⁻¹ (the same dimension as [`MassFlux`]): growth and respiration.
pub type ArealGrowthRate = MassFlux;

/// Force per length, N m⁻¹: the load of a beam, the pull of the solution on a metre of side, the
/// tension of a stretched sheet.
pub type ForcePerLength = Quantity<ISQ<Z0, P1, N2, Z0, Z0, Z0, Z0>, SI<f64>, f64>;

/// Bending moment, N m.
pub type BendingMoment = Quantity<ISQ<P2, P1, N2, Z0, Z0, Z0, Z0>, SI<f64>, f64>;

/// Bending stiffness of a cross-section, modulus times second moment of area, N m².
pub type FlexuralRigidity = Quantity<ISQ<P3, P1, N2, Z0, Z0, Z0, Z0>, SI<f64>, f64>;
