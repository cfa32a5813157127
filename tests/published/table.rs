//! Reads the checked-in CSV tables: a header line, then rows; `#` starts a comment line.

use std::collections::BTreeMap;

/// One row of a table, by column name.
pub struct Row(BTreeMap<String, String>);

impl Row {
    /// The text in a column; a missing column is a fault of the test itself.
    pub fn text(&self, column: &str) -> &str {
        self.0
            .get(column)
            .unwrap_or_else(|| panic!("the table has no column '{column}'"))
    }

    /// The number in a column.
    pub fn number(&self, column: &str) -> f64 {
        let text = self.text(column);
        text.parse()
            .unwrap_or_else(|_| panic!("'{text}' in column '{column}' is no number"))
    }
}

/// All rows of a table whose every row names its source.
pub fn rows(csv: &str) -> Vec<Row> {
    let mut lines = csv
        .lines()
        .filter(|line| !line.trim().is_empty() && !line.starts_with('#'));
    let header: Vec<&str> = lines.next().unwrap_or_default().split(',').collect();
    assert!(
        header.contains(&"source"),
        "a table needs a 'source' column"
    );
    let rows: Vec<Row> = lines
        .map(|line| {
            let cells: Vec<&str> = line.split(',').collect();
            assert_eq!(cells.len(), header.len(), "a row of another width: {line}");
            let row = Row(header
                .iter()
                .zip(cells)
                .map(|(name, cell)| ((*name).to_owned(), cell.trim().to_owned()))
                .collect());
            assert!(!row.text("source").is_empty(), "no source: {line}");
            row
        })
        .collect();
    assert!(!rows.is_empty(), "an empty table proves nothing");
    rows
}
