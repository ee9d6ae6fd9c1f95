package tuttarco.seating;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tuttarco.pose.PeopleFinder;
import tuttarco.pose.Pose;
import tuttarco.video.Frame;

/**
 * Finds who stays in the picture over the whole clip. In two pictures everybody is looked for; whoever is found is looked
 * for again at the same place in all others.
 */
final class People {
    private People() {}

    /**
     * The people in pictures that are spread over a clip, each once.
     *
     * @throws InterruptedException if the thread was interrupted
     */
    static List<Person> in(List<Frame> pictures, PeopleFinder finder) throws InterruptedException {
        if (pictures.isEmpty()) {
            return List.of();
        }
        Frame early = pictures.get(pictures.size() / 4);
        Frame late = pictures.get(3 * pictures.size() / 4);
        List<Pose> found = new ArrayList<>(finder.in(early, List.of(), false));
        List<Pose> still =
                finder.again(late, found).stream().flatMap(Optional::stream).toList();
        List<Pose> later = finder.in(late, still, true);
        found.addAll(later.subList(still.size(), later.size()));
        List<List<Optional<Pose>>> byPicture = new ArrayList<>();
        for (Frame picture : pictures) {
            if (Thread.interrupted()) {
                throw new InterruptedException("the search for people was stopped");
            }
            byPicture.add(finder.again(picture, found));
        }
        return each(IntStream.range(0, found.size())
                .mapToObj(i -> new Person(byPicture.stream().map(p -> p.get(i)).toList()))
                .toList());
    }

    /** Those who stay, without the hands of others and without doubles; of two the more certain one is kept. */
    static List<Person> each(List<Person> found) {
        List<Person> staying = found.stream().filter(Person::stays).toList();
        List<Person> once = new ArrayList<>();
        staying.stream()
                .filter(p -> staying.stream().noneMatch(p::handOf))
                .sorted(Comparator.comparingDouble(Person::certainty).reversed())
                .filter(p -> once.stream().noneMatch(p::sameAs))
                .forEach(once::add);
        return List.copyOf(once);
    }
}
