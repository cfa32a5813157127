//! Tables as they come from sheets.

use super::*;

fn numbers(record: &Record) -> Vec<Option<f64>> {
    let value = |entry: &Entry| match entry {
        Entry::Number(value) => Some(*value),
        Entry::Text(_) => None,
    };
    record.heads_g.iter().map(value).collect()
}

#[test]
fn every_way_of_writing_the_same_table_reads_alike() {
    let expected = read_table(
        "unit\twater_l\thead_g\thead_g\n1\t20.5\t181.2\t\n2\t19\t150\t163\n",
        UnitSystem::Metric,
    );
    assert!(expected.problems.is_empty(), "{:?}", expected.problems);
    assert_eq!(numbers(&expected.records[0]), [Some(181.2), None]);
    assert_eq!(expected.records[0].water_l, Entry::Number(20.5));
    for text in [
        "Unit;Water (L);Head 1 (g);Head 2 (g)\r\n1;20,5;181,2;NA\r\n2;19;150;163\r\n",
        "unit,litres,head_1_g,head_2_g\n1,20.5,181.2,-\n\n2,19 L,150 g,163\n",
        "\u{feff}unit,water_l,mass_g,mass_g\n\"1\",\"20,5\",\"181,2\",\n2,19,150,163",
    ] {
        assert_eq!(read_table(text, UnitSystem::Metric), expected, "{text}");
    }
}

#[test]
fn without_headings_the_first_column_is_the_unit() {
    let read = read_table("A1\t150\t160\nA2\t140\n", UnitSystem::Metric);
    assert!(read.problems.is_empty());
    assert_eq!(read.records[1].unit.text(), "A2");
    assert_eq!(numbers(&read.records[1]), [Some(140.0), None]);
}

#[test]
fn one_line_for_each_head_may_count_the_heads() {
    let read = read_table("unit,head,mass_g\n1,1,150\n1,2,160\n", UnitSystem::Metric);
    assert!(read.problems.is_empty());
    assert_eq!(numbers(&read.records[0]), [Some(150.0)]);
}

#[test]
fn every_fault_names_its_place() {
    let read = read_table(
        "unit,colour,head_g\n1,red,heavy\n2,red,3 L,7\n\"3,red,100\n",
        UnitSystem::Metric,
    );
    let places: Vec<(usize, usize)> = read
        .problems
        .iter()
        .map(|it| (it.line, it.column))
        .collect();
    assert_eq!(places, [(1, 2), (2, 3), (3, 0), (3, 3), (4, 0)]);
    for text in ["", " \n\t\n", "unit,treatment\n1,2\n", "unit,head_g\n"] {
        assert_eq!(
            read_table(text, UnitSystem::Metric).problems.len(),
            1,
            "{text}"
        );
    }
}

#[test]
fn what_is_written_reads_back_and_holds_no_formula() {
    let mut trial = Trial {
        records: read_table(
            "unit,treatment,water_l,head_g,head_g\n1,\"a, b\",20,150,\n2,c,,1,2\n",
            UnitSystem::Metric,
        )
        .records,
        ..Trial::default()
    };
    assert_eq!(
        read_table(&write_table(&trial, UnitSystem::Metric), UnitSystem::Metric).records,
        trial.records
    );
    trial.records[0].unit = Name::from("=1+1");
    assert!(write_table(&trial, UnitSystem::Metric).contains("\n'=1+1,"));
}

#[test]
fn a_table_with_units_and_treatments_tells_a_layout() {
    use crate::trial::{example, solve_trial};
    let table = "unit,block,treatment,head_g\nN1,north,75 mm,150\nN1,north,75 mm,152\nN2,north,tall,171\nS1,south,tall,170\nS2,south,75 mm,149\n";
    let read = read_table(table, UnitSystem::Metric);
    assert!(read.problems.is_empty());
    let mut trial = example();
    read.lay_out(&mut trial);
    trial.records = read.records;
    let outcome = solve_trial(&trial).expect("sound");
    assert_eq!(outcome.blocks, ["north", "south"]);
    let units: Vec<(&str, usize, usize)> = outcome
        .units
        .iter()
        .map(|it| (it.unit.as_str(), it.treatment, it.block))
        .collect();
    assert_eq!(
        units,
        [("N1", 0, 0), ("N2", 1, 0), ("S1", 1, 1), ("S2", 0, 1)]
    );
    // The treatment that was there keeps its pipe; the other is new.
    assert_eq!(trial.treatments[0], example().treatments[0]);
    assert_eq!(trial.treatments[1].name, "tall");
    assert_eq!(outcome.reports[0].units[0].heads_g.len(), 2);

    for partly in ["unit,treatment,head_g\n1,a,3\n2,,4\n", "1,2\n2,3\n"] {
        assert!(
            read_table(partly, UnitSystem::Metric).units.is_empty(),
            "{partly}"
        );
    }
}

#[test]
fn ounces_and_gallons_are_read_by_their_headings_or_by_the_readers_units() {
    // Exact by definition (NIST SP 811, appendix B).
    const OUNCE: f64 = 28.349_523_125;
    const GALLON: f64 = 3.785_411_784;
    let us = UnitSystem::UsCustomary;
    // The last bits of a product.
    let close = |entry: &Entry, wanted: f64| match entry {
        Entry::Number(value) => assert!((value - wanted).abs() <= 1e-12 * wanted, "{value}"),
        Entry::Text(text) => panic!("{text}"),
    };
    for (text, units) in [
        ("unit,water_gal,head_1_oz\n1,2,5\n", UnitSystem::Metric),
        ("unidad;agua (gal);peso (oz)\n1;2;5\n", UnitSystem::Metric),
        ("unit,water,mass\n1,2,5\n", us),
    ] {
        let read = read_table(text, units);
        assert!(read.problems.is_empty(), "{text}");
        close(&read.records[0].water_l, 2.0 * GALLON);
        close(&read.records[0].heads_g[0], 5.0 * OUNCE);
    }
    let bare = read_table("1\t5\n", us);
    close(&bare.records[0].heads_g[0], 5.0 * OUNCE);
    // A heading that says grams means grams everywhere.
    let said = read_table("unit,head_g\n1,150\n", us);
    close(&said.records[0].heads_g[0], 150.0);
    let trial = Trial {
        records: read_table("unit,water_gal,head_oz\n1,2,5\n", us).records,
        ..Trial::default()
    };
    assert_eq!(
        write_table(&trial, us),
        "unit,treatment,water_gal,head_1_oz\n1,,2,5\n"
    );
}
