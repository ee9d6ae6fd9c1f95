package tuttarco.seats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DeskLabelsTest {
    private record Sits(String label, int desk, Place place) implements AtDesk {}

    private static final Sits ANN = new Sits("Ann", 1, Place.OUTSIDE);

    @Test
    void twoAtOnePlaceAreToldApart() {
        DeskLabels labels =
                new DeskLabels(List.of(ANN, new Sits("Bo", 2, Place.INSIDE), new Sits("Cy", 2, Place.INSIDE), ANN));
        assertEquals("Desk 1 outside", labels.of("Ann"));
        assertEquals("Desk 2 inside", labels.of("Bo"));
        assertEquals("Desk 2 inside 2", labels.of("Cy"));
        assertEquals("Somebody", labels.of("Dee"));
        assertEquals(Optional.empty(), labels.note());
    }

    /** Whose label is a place keeps it only while sitting there. */
    @Test
    void labelsThatSoundLikePlacesAreNotBelieved() {
        DeskLabels labels =
                new DeskLabels(List.of(new Sits("Desk 1 outside", 2, Place.INSIDE), new Sits("Bo", 1, Place.OUTSIDE)));
        assertEquals("Desk 2 inside", labels.of("Desk 1 outside"));
        assertEquals("Desk 1 outside", labels.of("Bo"));
    }

    @Test
    void whoMovedIsCalledByTheFirstPlaceGiven() {
        DeskLabels labels = new DeskLabels(List.of(ANN, new Sits("Ann", 3, Place.INSIDE)));
        assertEquals("Desk 1 outside", labels.of("Ann"));
        assertEquals(true, labels.note().isPresent());
    }
}
