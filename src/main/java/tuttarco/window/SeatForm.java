package tuttarco.window;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import tuttarco.bow.Instrument;
import tuttarco.review.SeatsModel;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;

/** What is known of the chosen player, to be changed. */
final class SeatForm {
    /** No section has more desks (chosen). */
    private static final int MOST_DESKS = 99;

    private final SeatsModel model;
    private final JPanel view =
            new JPanel(new MigLayout("insets 0, gap 8 6", "[][grow, fill, sg][][grow, fill, sg]", ""));
    private final JTextField name = new JTextField();
    private final JSpinner desk = new JSpinner(new SpinnerNumberModel(1, 1, MOST_DESKS, 1));
    private final JComboBox<Place> place = new JComboBox<>(Place.values());
    private final JCheckBox leads = new JCheckBox("Leads the section");
    private final JComboBox<Instrument> plays = new JComboBox<>(Instrument.values());
    private final JComboBox<Optional<Facing>> faces = new JComboBox<>();
    private boolean showing;

    SeatForm(SeatsModel model) {
        this.model = model;
        List<Optional<Facing>> facings = new ArrayList<>(List.of(Optional.empty()));
        List.of(Facing.values()).forEach(f -> facings.add(Optional.of(f)));
        facings.forEach(faces::addItem);
        name.setName("seats-name");
        desk.setName("seats-desk");
        place.setName("seats-place");
        leads.setName("seats-leads");
        leads.setMnemonic('E');
        plays.setName("seats-plays");
        faces.setName("seats-faces");
        faces.setToolTipText("Where the chest points; say it only where the reading takes it wrongly");
        place.setRenderer(new WordRenderer<>(Place::word));
        plays.setRenderer(new WordRenderer<>(Instrument::word));
        faces.setRenderer(
                new WordRenderer<Optional<Facing>>(f -> f.map(SeatForm::words).orElse("as seen")));
        view.add(Labels.of("Name", name));
        view.add(name, "span, growx, wrap");
        view.add(Labels.of("Desk", desk));
        view.add(desk, "wmin 0");
        view.add(Labels.of("Place", place));
        view.add(place, "wmin 0, wrap");
        view.add(Labels.of("Plays", plays));
        view.add(plays, "wmin 0");
        view.add(Labels.of("Faces", faces));
        view.add(faces, "wmin 0, wrap");
        view.add(leads, "span");
        listen();
        model.onChange().add(this::show);
        show();
    }

    JComponent view() {
        return view;
    }

    private void listen() {
        name.addActionListener(e -> takeName());
        name.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                takeName();
            }
        });
        desk.addChangeListener(e -> unlessShowing(this::takeSeat));
        place.addActionListener(e -> unlessShowing(this::takeSeat));
        leads.addActionListener(e -> unlessShowing(() -> model.lead(leads.isSelected())));
        plays.addActionListener(e -> unlessShowing(() -> model.plays((Instrument) plays.getSelectedItem())));
        faces.addActionListener(e -> unlessShowing(() -> model.faces(faces.getItemAt(faces.getSelectedIndex()))));
    }

    private void unlessShowing(Runnable change) {
        if (!showing) {
            change.run();
        }
    }

    private void takeName() {
        chosen().filter(p -> !p.label().equals(name.getText())).ifPresent(p -> model.name(name.getText()));
    }

    private void takeSeat() {
        model.sits((Integer) desk.getValue(), (Place) place.getSelectedItem());
    }

    private Optional<Player> chosen() {
        OptionalInt index = model.chosenPlayer();
        return index.isPresent() ? Optional.of(model.seats().players().get(index.getAsInt())) : Optional.empty();
    }

    private void show() {
        showing = true;
        Optional<Player> chosen = chosen();
        for (JComponent part : List.of(name, desk, place, leads, plays, faces)) {
            part.setEnabled(chosen.isPresent());
        }
        String label = chosen.map(Player::label).orElse("");
        if (!name.getText().equals(label)) {
            name.setText(label);
        }
        chosen.ifPresent(p -> {
            desk.setValue(p.desk());
            place.setSelectedItem(p.place());
            plays.setSelectedItem(p.instrument());
            faces.setSelectedItem(p.facing());
        });
        leads.setSelected(chosen.map(Player::leader).orElse(false));
        showing = false;
    }

    /** Where a chest points, as somebody says it who looks at the picture. */
    private static String words(Facing facing) {
        return switch (facing) {
            case AWAY -> "away";
            case AWAY_RIGHT -> "away, to the right";
            case RIGHT -> "to the right";
            case CAMERA_RIGHT -> "to us, to the right";
            case CAMERA -> "to us";
            case CAMERA_LEFT -> "to us, to the left";
            case LEFT -> "to the left";
            case AWAY_LEFT -> "away, to the left";
        };
    }
}
