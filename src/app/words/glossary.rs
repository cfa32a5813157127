//! The words of the trade, as the page uses them.

use super::say::*;

/// A group of words that belong to one drawing.
pub struct Chapter {
    pub name: &'static str,
    /// What the drawing shows, for those who do not see it.
    pub drawing: &'static str,
    /// Word and meaning. The first words have a letter in the drawing, in order.
    pub terms: Vec<(&'static str, &'static str)>,
}

/// The chapters, in the order of their drawings.
pub fn chapters() -> [Chapter; 5] {
    [
        Chapter {
            name: chapter_container(),
            drawing: chapter_container_drawing(),
            terms: vec![
                (term_rim(), term_rim_meaning()),
                (term_cover(), term_cover_meaning()),
                (term_net_pot(), term_net_pot_meaning()),
                (term_fill_mark(), term_fill_mark_meaning()),
                (term_nutrient_solution(), term_nutrient_solution_meaning()),
                (term_moist_air_gap(), term_moist_air_gap_meaning()),
                (term_air_roots(), term_air_roots_meaning()),
                (term_water_roots(), term_water_roots_meaning()),
                (term_never_above(), term_never_above_meaning()),
                (term_head(), term_head_meaning()),
                (term_charge(), term_charge_meaning()),
            ],
        },
        Chapter {
            name: chapter_boards(),
            drawing: chapter_boards_drawing(),
            terms: vec![
                (term_floating_board(), term_floating_board_meaning()),
                (term_draught(), term_draught_meaning()),
                (term_pipe(), term_pipe_meaning()),
                (term_rest(), term_rest_meaning()),
                (term_sag(), term_sag_meaning()),
                (term_clear_gap(), term_clear_gap_meaning()),
            ],
        },
        Chapter {
            name: chapter_dissolved(),
            drawing: chapter_dissolved_drawing(),
            terms: vec![
                (term_grade(), term_grade_meaning()),
                (term_raw_water(), term_raw_water_meaning()),
                (term_stock_a(), term_stock_a_meaning()),
                (term_stock_b(), term_stock_b_meaning()),
                (term_ec(), term_ec_meaning()),
                (term_alkalinity(), term_alkalinity_meaning()),
                (term_chelate(), term_chelate_meaning()),
                (term_falls_out(), term_falls_out_meaning()),
            ],
        },
        Chapter {
            name: chapter_time(),
            drawing: chapter_time_drawing(),
            terms: vec![
                (term_seeding(), term_seeding_meaning()),
                (term_transplanting(), term_transplanting_meaning()),
                (term_harvest(), term_harvest_meaning()),
                (term_succession(), term_succession_meaning()),
                (term_factors(), term_factors_meaning()),
                (term_seasons(), term_seasons_meaning()),
            ],
        },
        Chapter {
            name: chapter_air(),
            drawing: chapter_air_drawing(),
            terms: vec![
                (term_solar_radiation(), term_solar_radiation_meaning()),
                (term_photon_flux(), term_photon_flux_meaning()),
                (term_water_given_off(), term_water_given_off_meaning()),
                (term_relative_humidity(), term_relative_humidity_meaning()),
                (term_shelter(), term_shelter_meaning()),
            ],
        },
    ]
}
