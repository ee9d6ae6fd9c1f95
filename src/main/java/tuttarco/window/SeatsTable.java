package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import tuttarco.review.Seats;
import tuttarco.review.SeatsModel;
import tuttarco.review.SeatsModel.Pick;
import tuttarco.seats.Player;

/** The players in a list, and after them those who may be players; in step with the picture. */
final class SeatsTable {
    private static final List<String> COLUMNS = List.of("Desk", "Place", "Name", "Leads", "Plays");
    private static final int[] WIDTHS_PX = {40, 64, 150, 48, 60};

    private final SeatsModel model;
    private final Rows rows = new Rows();
    private final JTable table = new JTable(rows);
    private final JScrollPane view = new JScrollPane(table);
    private Seats shown = new Seats(List.of(), List.of());
    private boolean showing;

    SeatsTable(SeatsModel model) {
        this.model = model;
        table.setName("seats-table");
        table.getAccessibleContext().setAccessibleName("Players");
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setFillsViewportHeight(true);
        table.getTableHeader().setReorderingAllowed(false);
        DefaultTableCellRenderer cell = new DefaultTableCellRenderer();
        cell.putClientProperty("html.disable", true);
        table.setDefaultRenderer(Object.class, cell);
        for (int i = 0; i < WIDTHS_PX.length; i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(UIScale.scale(WIDTHS_PX[i]));
        }
        // Tab leaves the table rather than going through its cells
        table.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        table.setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        table.getSelectionModel().addListSelectionListener(e -> {
            if (!showing && !e.getValueIsAdjusting()) {
                model.choose(pick(table.getSelectedRow()));
            }
        });
        model.onChange().add(this::show);
        show();
    }

    JComponent view() {
        return view;
    }

    JTable table() {
        return table;
    }

    private Pick pick(int row) {
        int players = model.seats().players().size();
        if (row < 0) {
            return new Pick.Nobody();
        }
        return row < players ? new Pick.Sitting(row) : new Pick.Doubt(row - players);
    }

    private void show() {
        showing = true;
        if (!model.seats().equals(shown)) {
            shown = model.seats();
            rows.fireTableDataChanged();
        }
        int row = row();
        if (row < 0) {
            table.clearSelection();
        } else if (table.getSelectedRow() != row) {
            table.setRowSelectionInterval(row, row);
            table.scrollRectToVisible(table.getCellRect(row, 0, true));
        }
        showing = false;
    }

    private int row() {
        if (model.pick() instanceof Pick.Sitting sitting) {
            return sitting.index();
        }
        return model.pick() instanceof Pick.Doubt doubt ? shown.players().size() + doubt.index() : -1;
    }

    private final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return shown == null ? 0 : shown.players().size() + shown.doubtful().size();
        }

        @Override
        public int getColumnCount() {
            return COLUMNS.size();
        }

        @Override
        public String getColumnName(int column) {
            return COLUMNS.get(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            if (row >= shown.players().size()) {
                return List.of(
                                "?",
                                String.valueOf(row - shown.players().size() + 1),
                                "bows or not? Enter takes",
                                "",
                                "")
                        .get(column);
            }
            Player p = shown.players().get(row);
            return List.of(
                            String.valueOf(p.desk()),
                            p.place().word(),
                            p.label(),
                            p.leader() ? "leads" : "",
                            p.instrument().word())
                    .get(column);
        }
    }
}
