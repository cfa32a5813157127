//! Records in the order of the layout, a line for each unit, as a form or a sheet wants them.

use crate::plan::trial::{Name, Record};

use super::layout::Unit;

/// One record for each unit of the layout, whether anything was recorded of it or not, each with at
/// least `heads` places; behind them whatever belongs to no unit. `names` are those of the
/// treatments: a record's treatment is left out where it is the one of the layout.
pub fn sheet(records: &[Record], units: &[Unit], names: &[&str], heads: usize) -> Vec<Record> {
    let mut lines: Vec<Record> = units
        .iter()
        .map(|unit| Record {
            unit: Name(unit.unit.clone()),
            ..Record::default()
        })
        .collect();
    for record in records {
        let place = units
            .iter()
            .position(|unit| unit.unit == record.unit.text());
        let Some(place) = place else {
            lines.push(record.clone());
            continue;
        };
        let mut record = record.clone();
        if names.get(units[place].treatment) == Some(&record.treatment.text()) {
            record.treatment = Name::default();
        }
        join(&mut lines, place, record);
    }
    for line in lines.iter_mut().take(units.len()) {
        let places = line.heads_g.len().max(heads);
        line.heads_g.resize_with(places, Default::default);
    }
    lines
}

/// Records with those of a table in the place of what was recorded of the same units before.
pub fn joined(before: &[Record], table: Vec<Record>) -> Vec<Record> {
    let named = |record: &Record| {
        let unit = record.unit.text();
        !unit.is_empty() && table.iter().any(|line| line.unit.text() == unit)
    };
    let mut records: Vec<Record> = before.iter().filter(|it| !named(it)).cloned().collect();
    records.extend(table);
    records
}

/// Adds a record to the line of its unit. What contradicts the line stays a line of its own, for the
/// check to refuse.
fn join(lines: &mut Vec<Record>, place: usize, mut record: Record) {
    let line = &mut lines[place];
    line.heads_g.append(&mut record.heads_g);
    if line.treatment.text().is_empty() {
        line.treatment = std::mem::take(&mut record.treatment);
    }
    if line.water_l.is_blank() {
        line.water_l = std::mem::take(&mut record.water_l);
    }
    let same = |a: &Name, b: &Name| a.text().is_empty() || a.text() == b.text();
    let water = record.water_l.is_blank() || record.water_l == line.water_l;
    if !(water && same(&record.treatment, &line.treatment)) {
        lines.push(record);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::UnitSystem;
    use crate::trial::{example, read_table, solve_trial};

    #[test]
    fn one_line_for_each_head_becomes_one_for_each_unit() {
        let read = read_table(
            "unit,head_g,water_l\n2,180,9\n2,190,\n1,150,8\n2,NA,9\n",
            UnitSystem::Metric,
        );
        assert!(read.problems.is_empty());
        let outcome = solve_trial(&example()).expect("sound");
        let lines = sheet(&read.records, &outcome.units, &[], 4);
        assert_eq!(lines.len(), 12);
        let masses = |line: usize| -> Vec<Option<f64>> {
            let number = |entry: &crate::plan::Entry| match entry {
                crate::plan::Entry::Number(value) => Some(*value),
                crate::plan::Entry::Text(_) => None,
            };
            lines[line].heads_g.iter().map(number).collect()
        };
        assert_eq!(masses(0), [Some(150.0), None, None, None]);
        assert_eq!(masses(1), [Some(180.0), Some(190.0), None, None]);
        assert_eq!(lines[1].water_l, 9.0.into());
    }

    #[test]
    fn what_belongs_to_no_unit_and_what_contradicts_stays() {
        let read = read_table(
            "unit,treatment,water_l\n1,,8\n1,,9\n,75 mm,7\nx,,6\n",
            UnitSystem::Metric,
        );
        let outcome = solve_trial(&example()).expect("sound");
        let lines = sheet(&read.records, &outcome.units, &[], 0);
        assert_eq!(lines.len(), 15);
        let mut trial = example();
        trial.records = lines;
        // Litres twice, and a unit that is not there.
        assert_eq!(solve_trial(&trial).expect_err("refused").len(), 2);
    }

    #[test]
    fn a_table_replaces_its_own_units_and_no_others() {
        let before = example().records;
        let read = read_table("unit,head_g\n3,99\n3,98\n", UnitSystem::Metric);
        let records = joined(&before, read.records);
        assert_eq!(records.len(), 13);
        assert!(
            before
                .iter()
                .filter(|it| it.unit.text() != "3")
                .all(|it| records.contains(it))
        );
    }

    #[test]
    fn a_sheet_says_the_same_as_its_records() {
        let mut trial = example();
        let before = solve_trial(&trial).expect("sound");
        let names: Vec<&str> = before
            .treatments
            .iter()
            .map(|it| it.name.as_str())
            .collect();
        trial.records = sheet(&trial.records, &before.units, &names, 4);
        assert_eq!(solve_trial(&trial).expect("sound"), before);
    }
}
