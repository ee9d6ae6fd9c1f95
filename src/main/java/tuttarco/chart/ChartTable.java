package tuttarco.chart;

import java.util.List;

/** A table with a caption; each row has one cell a heading, and the first cell names the row. */
public record ChartTable(String caption, List<String> headings, List<List<String>> rows) {
    public ChartTable {
        headings = List.copyOf(headings);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != headings.size()) {
                throw new IllegalArgumentException("a row has one cell a heading: " + row);
            }
        }
    }
}
