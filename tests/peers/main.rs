//! Our side of the comparisons with general reference codes. The scripts in the folders beside this
//! file run these tests by name, read what they print and compare; run alone, they are ignored.

mod ensemble;
mod phreeqc;
